package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.calc.Bores;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.record.LimitLine;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/**
 * Words of the bottom end that come of a comparison: two halves of a bearing, two ways of reading one clearance, two dates, a cause
 * and what was read to find it. Where the comparison is open nothing is said, and what leaves it open is what is lacking.
 */
final class BottomEndWords {
    private static final double TWICE = 2;
    private static final String CRANKSHAFT = "crankshaft";

    private static final List<String> BIG_ENDS_SHUT = List.of("rod caps tight", "short block assembled", "sump fitted", "engine assembled", "oil filled", "first start");
    private static final List<String> MAINS_SHUT = List.of("crankshaft laid", "pistons fitted", "rod caps tight", "short block assembled", "sump fitted",
            "engine assembled", "oil filled", "first start");

    private final Telling tells;
    private final Site site;

    private BottomEndWords(Telling tells) {
        this.tells = tells;
        this.site = tells.site;
    }

    /** The words, as subject and property, and what each may say. */
    static Map<String, List<String>> names() {
        Map<String, List<String>> names = new TreeMap<>();
        names.put("plain bearing shell halves", List.of("alike", "differ"));
        names.put("plain bearing strip against sizes", List.of("agree", "differ"));
        names.put("plain bearing housing limit", List.of("given", "none"));
        names.put("plain bearing housing since bolts", List.of("read after", "read before"));
        names.put("plain bearing cause read", List.of("alignment", "housing", "line", "clearance", "feed"));
        for (String cause : List.of("edge wear", "scoring", "wiping", "fatigue", "copper")) {
            names.put("plain bearing " + cause + " followed", List.of("yes", "no", "no sign"));
        }
        names.put("main bearing feed hole", List.of("fitted", "none"));
        names.put("main bearing film", List.of("left", "used up"));
        names.put("rotating assembly weighted part", List.of("none", "kept", "changed", "changed since", "other engine"));
        for (String what : List.of("piston height", "cam drive", "gearbox")) {
            names.put("crankshaft " + what + " since line bore", List.of("after", "before"));
        }
        names.put("crankshaft seal housing since line bore", List.of("after", "before", "left out"));
        names.put("crankshaft crack test", List.of("passed", "failed", "before the cut", "left out"));
        return names;
    }

    static void all(Telling tells) {
        BottomEndWords words = new BottomEndWords(tells);
        for (String bearing : tells.places("each plain bearing", "plain bearing clearance", "journal diameter", "bearing housing bore")) {
            words.housingLimit(bearing);
            words.halves(bearing);
            words.strip(bearing);
            words.sinceBolts(bearing);
            words.causes(bearing);
            if (Bearing.isMain(bearing)) {
                words.feedHole(bearing);
            }
        }
        for (String main : tells.places("each main bearing", "main journal runout")) {
            words.film(main);
        }
        Optional<Weighted> weighted = weightedPart(tells, "none", "kept", "changed", "changed since", "other engine");
        weighted.ifPresent(w -> tells.say("rotating assembly", Place.ENGINE, "weighted part", w.says(), Optional.of(w.by())));
        if (weighted.isEmpty()) {
            tells.lack("rotating assembly weighted part", Place.ENGINE, "sheet balance weights");
        }
        words.sinceLineBore();
        words.crackTest();
    }

    // --- bearings

    private void housingLimit(String bearing) {
        List<Where> where = new ArrayList<>();
        for (LimitLine line : site.build.sheet().limits()) {
            boolean own = line.quantity().equals(Bearing.housing(bearing) + " bore") || line.quantity().equals("bearing housing bore");
            if (own && line.most().isPresent() && (line.at().isEmpty() || site.store.covers(line.at(), bearing))) {
                where.add(line.line());
            }
        }
        tells.say(Bearing.bearing(bearing), bearing, "housing limit", where.isEmpty() ? "none" : "given", where);
    }

    /** By the size that each half is marked with; one mark told of the bearing is that of both. */
    private void halves(String bearing) {
        Optional<Double> upper = Optional.empty();
        Optional<Double> lower = Optional.empty();
        List<Where> where = new ArrayList<>();
        for (String shell : Bearing.shells(bearing)) {
            for (Statement s : site.said(shell)) {
                if (!s.what().equals("size mark") || !s.told().isEmpty() || !site.related(s.at(), bearing)) {
                    continue;
                }
                Optional<Double> size = CrankSizes.undersize(s.says());
                where.add(s.where());
                if (size.isPresent()) {
                    upper = s.at().endsWith(" lower") ? upper : size;
                    lower = s.at().endsWith(" upper") ? lower : size;
                }
            }
        }
        if (upper.isEmpty() || lower.isEmpty()) {
            tells.lack("plain bearing shell halves", bearing, "shell size mark");
            return;
        }
        boolean differ = Math.abs(upper.get() - lower.get()) > Bores.ANOTHER_SIZE;
        tells.say(Bearing.bearing(bearing), bearing, "shell halves", differ ? "differ" : "alike", where);
    }

    /** A strip against micrometer and bore gauge: with the shells in, or by housing and walls. */
    private void strip(String bearing) {
        Optional<Value> strip = CrankSizes.ofStrip(site, bearing);
        if (strip.isEmpty()) {
            return;
        }
        String quantity = strip.get().of();
        Optional<Stated> ways = tells.told(quantity, bearing, "two ways");
        Optional<Value> difference = tells.value(bearing, Bearing.bearing(bearing) + " method difference").filter(Value::plain);
        boolean apart = difference.flatMap(Value::low).map(e -> Math.abs(e.value()) > TWICE * e.standardUncertainty()).orElse(false);
        if (ways.isEmpty() && difference.isEmpty()) {
            return;
        }
        boolean differ = apart || ways.map(w -> w.says().equals("differ")).orElse(false);
        List<Where> where = new ArrayList<>(strip.get().places());
        ways.ifPresent(w -> Differences.join(where, w.places()));
        difference.ifPresent(v -> Differences.join(where, v.places()));
        tells.say(Bearing.bearing(bearing), bearing, "strip against sizes", differ ? "differ" : "agree", where);
    }

    /** Whether the housing was sized or read with the bolts that it has now; what bears no date was read of the parts as they are. */
    private void sinceBolts(String bearing) {
        Optional<Statement> change = InQuestion.boltsChanged(tells, bearing);
        if (change.isEmpty()) {
            return;
        }
        List<Statement> evidence = new ArrayList<>();
        String bore = Bearing.housing(bearing) + " bore";
        for (Statement s : site.build.statements()) {
            boolean read = s.form() == Statement.Form.READ && s.of().equals(bore) && s.what().isEmpty();
            boolean sized = s.form() == Statement.Form.STATED && s.of().equals("machining") && (s.what().equals(Bearing.housing(bearing))
                    || !Bearing.isMain(bearing) && s.what().equals("connecting rod"))
                    && List.of("resize", "bore", "hone", "line bore", "line hone", "grind").contains(s.says());
            boolean step = !Bearing.isMain(bearing) && s.of().equals("steps") && s.what().equals("rods resized") && s.says().equals("done");
            if ((read || sized) && s.told().isEmpty() && site.related(s.at(), bearing) || step) {
                evidence.add(s);
            }
        }
        if (evidence.isEmpty()) {
            tells.lack("plain bearing housing since bolts", bearing, bore);
            return;
        }
        List<Where> where = new ArrayList<>();
        boolean after = false;
        for (Statement s : evidence) {
            after |= !tells.before(s, change.get());
            where.add(s.where());
        }
        where.add(change.get().where());
        tells.say(Bearing.bearing(bearing), bearing, "housing since bolts", after ? "read after" : "read before", where);
    }

    /** What was read or looked at of all that can hurt a shell. */
    private void causes(String bearing) {
        String of = Bearing.bearing(bearing);
        String what = "cause read";
        Optional<Value> taper = tells.value(bearing, "journal taper");
        Optional<Value> bend = Bearing.isMain(bearing) ? Optional.empty() : tells.reading(Bearing.cylinder(bearing), "connecting rod bend");
        tells.sayBy(of, bearing, what, "alignment", taper.or(() -> bend));
        tells.sayBy(of, bearing, what, "housing", tells.reading(bearing, "bearing housing bore"));
        tells.sayBy(of, bearing, what, "clearance", tells.value(bearing, "plain bearing clearance"));
        if (Bearing.isMain(bearing)) {
            tells.sayBy(of, bearing, what, "line", tells.reading(bearing, "main housing line"));
        }
        tells.say(of, bearing, what, "feed", tells.looked(Bearing.shells(bearing), bearing, "hole covered"));
        followed(bearing, "edge wear", "edge wear", List.of("alignment"), "journal diameter");
        followed(bearing, "wiping", "wiped", List.of("feed"), "shell hole covered");
        followed(bearing, "fatigue", "fatigued", List.of("clearance"), "plain bearing clearance");
        followed(bearing, "copper", "copper showing", List.of("clearance"), "plain bearing clearance");
        dirt(bearing);
    }

    /** What a sign accuses was read, or the bearing was shut again without; before that it may still be read, and nothing is wrong yet. */
    private void followed(String bearing, String sign, String seen, List<String> causes, String reading) {
        String of = Bearing.bearing(bearing);
        Optional<Statement> there = tells.seen(Bearing.shells(bearing), bearing, seen);
        List<Stated> read = tells.all(of, bearing, "cause read", causes);
        if (there.isEmpty()) {
            tells.say(of, bearing, sign + " followed", "no sign", List.of());
        } else if (!read.isEmpty()) {
            tells.say(of, bearing, sign + " followed", "yes", read.get(0).places());
        } else if (shut(bearing).isPresent()) {
            tells.say(of, bearing, sign + " followed", "no", shut(bearing));
        } else {
            tells.lack(of + " " + sign + " followed", bearing, reading);
        }
    }

    /** Lines cut by dirt ask for brushed oilways. */
    private void dirt(String bearing) {
        String of = Bearing.bearing(bearing);
        String what = "scoring followed";
        Optional<Statement> brushed = Optional.empty();
        for (Statement s : site.said("steps")) {
            if (s.what().equals("oilways brushed") && !List.of("next", "planned", "unknown").contains(s.says())) {
                brushed = Optional.of(s);
            }
        }
        Optional<Statement> there = tells.seen(Bearing.shells(bearing), bearing, "scored", "embedded grit");
        if (there.isEmpty()) {
            tells.say(of, bearing, what, "no sign", List.of());
        } else if (brushed.isPresent()) {
            tells.say(of, bearing, what, List.of("done", "passed").contains(brushed.get().says()) ? "yes" : "no", brushed);
        } else {
            tells.lack(of + " " + what, bearing, "steps oilways brushed");
        }
    }

    /** The step that shut the bearing again, or one after it. */
    private Optional<Statement> shut(String bearing) {
        List<String> after = Bearing.isMain(bearing) ? MAINS_SHUT : BIG_ENDS_SHUT;
        for (String section : List.of("steps", "stage")) {
            for (Statement s : site.said(section)) {
                if (after.contains(s.what()) && List.of("done", "passed").contains(s.says())) {
                    return Optional.of(s);
                }
            }
        }
        return Optional.empty();
    }

    /** Whether the half that the block feeds has its hole. A cap half without one is as it should be. */
    private void feedHole(String main) {
        Optional<Statement> fed = Optional.empty();
        for (Statement s : site.said("main shell")) {
            if (s.what().equals("oil hole") && s.told().isEmpty() && !s.at().endsWith(" lower") && site.related(s.at(), main)
                    && !s.says().equals("unknown")) {
                fed = Optional.of(s);
            }
        }
        if (fed.isEmpty()) {
            tells.lack("main bearing feed hole", main, "main shell oil hole");
            return;
        }
        tells.say("main bearing", main, "feed hole", fed.get().says(), fed);
    }

    /** Whether the bow of the crankshaft takes all of the oil clearance, whatever the doubt. */
    private void film(String main) {
        Optional<Value> share = tells.value(main, "bow share of clearance").filter(v -> v.low().isPresent());
        if (share.isEmpty()) {
            tells.lack("main bearing film", main, "main bearing clearance");
            return;
        }
        tells.sayBy("main bearing", main, "film", InQuestion.surely(share.get().low(), 1, false) ? "used up" : "left", share);
    }

    // --- crankshaft

    /** What became of a part outside the crankshaft that carries balance weight. */
    record Weighted(String says, Statement by) {
    }

    /** By the sheet's list of such parts; empty where it has none, or where what became of them is not one of these. */
    static Optional<Weighted> weightedPart(Telling tells, String... wanted) {
        Optional<Statement> list = tells.site.sheet("balance", Place.ENGINE, "weights");
        if (list.isEmpty()) {
            return Optional.empty();
        }
        Weighted found = new Weighted(list.get().says().equals("none") ? "none" : "kept", list.get());
        for (String name : list.get().says().equals("none") ? new String[0] : list.get().says().split(",")) {
            List<String> part = List.of(name.strip());
            Optional<Statement> other = tells.word(part, Place.ENGINE, "origin", "other engine", "home-made");
            Optional<Statement> changed = tells.word(part, Place.ENGINE, "state", "new", "second-hand")
                    .or(() -> tells.machined(part, Place.ENGINE, "turn", "mill", "drill", "cut", "hand"));
            if (other.isPresent()) {
                found = new Weighted("other engine", other.get());
                break;
            }
            if (changed.isPresent() && !found.says().equals("changed since")) {
                found = new Weighted(balancedBefore(tells, changed.get()) ? "changed since" : "changed", changed.get());
            }
        }
        return List.of(wanted).contains(found.says()) ? Optional.of(found) : Optional.empty();
    }

    /** Whether the assembly was balanced, and surely only before that. */
    private static boolean balancedBefore(Telling tells, Statement changed) {
        boolean before = false;
        for (Statement s : tells.site.said("steps")) {
            if (s.what().equals("assembly balanced") && (s.says().equals("done") || s.says().equals("passed"))) {
                before = tells.before(s, changed);
            }
        }
        return before;
    }

    static Optional<Statement> lineBored(Telling tells) {
        return tells.machined(List.of("main housing"), Place.ENGINE, "line bore", "line hone");
    }

    static Optional<Statement> capsCut(Telling tells) {
        return tells.machined(List.of("main cap"), Place.ENGINE, "mill", "grind", "cut", "turn", "lap", "hand");
    }

    /** What the crankshaft takes along when it rises, and whether each was read again. */
    private void sinceLineBore() {
        Optional<Statement> bored = lineBored(tells).or(() -> capsCut(tells));
        if (bored.isEmpty()) {
            return;
        }
        since("piston height", bored.get(), read("piston height"), "piston height");
        List<String> drive = drive();
        since("cam drive", bored.get(), read(drive.toArray(new String[0])), drive.get(0));
        since("gearbox", bored.get(), read("bell housing bore runout"), "bell housing bore runout");
        List<Statement> centred = new ArrayList<>();
        for (Statement s : site.said("steps")) {
            if (s.what().equals("seal housing centred") && s.told().isEmpty()) {
                if (s.says().equals("left out")) {
                    tells.say(CRANKSHAFT, Place.ENGINE, "seal housing since line bore", "left out", List.of(s.where(), bored.get().where()));
                    return;
                }
                if (s.says().equals("done")) {
                    centred.add(s);
                }
            }
        }
        since("seal housing", bored.get(), centred, "steps seal housing centred");
    }

    /** The readings that a drive of its kind feels a rise in. */
    private List<String> drive() {
        return switch (DriveLines.ofCamshafts(site).map(d -> DriveLines.kind(site, d)).orElse("")) {
            case "gear" -> List.of("timing gear backlash");
            case "belt" -> List.of("belt tensioner extension", "timing belt tension");
            case "chain" -> List.of("timing chain slack");
            default -> List.of("timing chain slack", "timing gear backlash", "belt tensioner extension", "timing belt tension");
        };
    }

    private List<Statement> read(String... quantities) {
        List<Statement> read = new ArrayList<>();
        for (Statement s : site.build.statements()) {
            if (s.form() == Statement.Form.READ && s.what().isEmpty() && s.told().isEmpty() && List.of(quantities).contains(s.of())) {
                read.add(s);
            }
        }
        return read;
    }

    private void since(String what, Statement bored, List<Statement> read, String lacks) {
        String word = what + " since line bore";
        if (read.isEmpty()) {
            tells.lack("crankshaft " + word, Place.ENGINE, lacks);
            return;
        }
        Statement last = read.get(0);
        for (Statement s : read) {
            last = tells.before(last, bored) && !tells.before(s, bored) ? s : last;
        }
        tells.say(CRANKSHAFT, Place.ENGINE, word, tells.before(last, bored) ? "before" : "after", List.of(last.where(), bored.where()));
    }

    /** A test after the last cut counts; one before it does not, for grinding and trueing crack what was whole. */
    private void crackTest() {
        boolean another = tells.word(List.of(CRANKSHAFT), Place.ENGINE, "state", "new", "second-hand", "ready").isPresent();
        Optional<Statement> crack = Optional.empty();
        for (Statement s : tells.signs(CRANKSHAFT, "cracked")) {
            if (crack.isEmpty() && s.form() == Statement.Form.SEEN && !(another && s.asides().getOrDefault("as", "").equals("found"))) {
                crack = Optional.of(s);
            }
        }
        Optional<Statement> cut = Optional.empty();
        Optional<Statement> test = Optional.empty();
        for (Statement s : site.said("machining")) {
            boolean own = List.of(CRANKSHAFT, "main journal", "crankpin").contains(s.what());
            if (own && List.of("grind", "straighten", "weld").contains(s.says())) {
                cut = cut.isPresent() && tells.before(s, cut.get()) ? cut : Optional.of(s);
            } else if (s.what().equals(CRANKSHAFT) && s.says().equals("crack test") && s.told().isEmpty()) {
                test = Optional.of(s);
            }
        }
        Optional<Statement> step = Optional.empty();
        for (Statement s : site.said("steps")) {
            if (s.what().equals("crack tested") && (s.at().equals(CRANKSHAFT) || s.at().equals(Place.ENGINE)) && s.told().isEmpty()
                    && !List.of("planned", "next", "unknown").contains(s.says())) {
                step = Optional.of(s);
            }
        }
        String result = step.map(Statement::says).orElse("");
        if (crack.isPresent() || result.equals("failed")) {
            say("failed", crack.isPresent() ? crack.get() : step.get());
        } else if (result.equals("left out") && test.isEmpty()) {
            say("left out", step.get());
        } else if (step.isPresent() || test.isPresent()) {
            Statement by = step.isPresent() && !result.equals("left out") ? step.get() : test.get();
            boolean older = cut.isPresent() && tells.before(by, cut.get())
                    && (test.isEmpty() || tells.before(test.get(), cut.get()));
            tells.say(CRANKSHAFT, Place.ENGINE, "crack test", older ? "before the cut" : "passed", older ? List.of(by.where(), cut.get().where())
                    : List.of(by.where()));
        } else {
            tells.lack("crankshaft crack test", Place.ENGINE, "steps crack tested");
        }
    }

    private void say(String says, Statement by) {
        tells.say(CRANKSHAFT, Place.ENGINE, "crack test", says, List.of(by.where()));
    }
}
