package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.calc.Bores;
import leadlamp.calc.CrankTrain;
import leadlamp.facts.Value;
import leadlamp.quantity.Estimate;
import leadlamp.record.LimitLine;
import leadlamp.record.Place;
import leadlamp.record.Statement;

/**
 * What a record makes a question of in the bottom end, and by what: a part that was read, changed, hurt or brought from elsewhere.
 * Of what nothing is told nothing is said, so that a short record is not asked about a crankshaft that it never opened.
 */
final class InQuestion {
    private static final double TWICE = 2;
    private static final String[] FROM_ELSEWHERE = {"uprated", "other engine", "home-made"};
    private static final String[] USED = {"kept", "second-hand", "repaired"};
    private static final String[] WEAR = {"edge wear", "scored", "wiped", "fatigued", "copper showing"};
    private static final List<String> CRANKSHAFT = List.of("crankshaft");
    private static final List<String> ROD = List.of("connecting rod");
    private static final List<String> PISTON = List.of("piston");

    private final Telling tells;
    private final Site site;

    private InQuestion(Telling tells) {
        this.tells = tells;
        this.site = tells.site;
    }

    /** The words, as subject and property, and what each may say. */
    static Map<String, List<String>> names() {
        Map<String, List<String>> names = new TreeMap<>();
        names.put("cylinder finish in question", List.of("new rings"));
        names.put("cylinder wall in question", List.of("bored", "read"));
        names.put("piston alloy against sheet", List.of("other"));
        names.put("piston ring groove in question", List.of("old groove", "read"));
        names.put("connecting rod straightness in question", List.of("read", "shock", "second-hand", "bent seen"));
        names.put("connecting rod swing", List.of("changed", "as sheet"));
        names.put("piston weights in question", List.of("weighed", "odd one"));
        names.put("connecting rod weights in question", List.of("weighed", "odd one"));
        names.put("gudgeon pin fit in question", List.of("read", "second-hand"));
        names.put("plain bearing shells in question", List.of("fitted", "housing read"));
        names.put("plain bearing clearance in question", List.of("by sizes alone"));
        names.put("plain bearing shell size in question", List.of("marked", "ground", "second-hand"));
        names.put("plain bearing journal in question", List.of("read", "scored", "second-hand"));
        names.put("plain bearing journal size in question", List.of("ground", "least given"));
        names.put("plain bearing fillet in question", List.of("ground", "other shells"));
        names.put("plain bearing bolts changed", List.of("yes"));
        names.put("plain bearing old shells told", List.of("yes"));
        names.put("main bearing run-out in question", List.of("read", "second-hand", "worked on", "shock"));
        names.put("main bearing line in question", List.of("read", "ran hot", "bearing failed", "line bored", "new cap"));
        names.put("rod cap load in question", List.of("stretch", "rev limit", "piston", "bolts"));
        names.put("rod cap side room in question", List.of("read", "rod told"));
        names.put("crankshaft end float in question", List.of("read", "crankshaft told"));
        names.put("rotating assembly balance in question", List.of("weighted part", "bob weight"));
        names.put("crankshaft line bore in question", List.of("line bored", "caps cut"));
        names.put("crankshaft strength in question", List.of("heat", "cracked", "shock", "straightened", "odd journal", "competition"));
        return names;
    }

    static void all(Telling tells) {
        InQuestion question = new InQuestion(tells);
        List<String> cylinders = tells.places("each cylinder", "cylinder bore", "piston height", "connecting rod bend");
        for (String cylinder : cylinders) {
            question.finish(cylinder);
            question.wall(cylinder);
            question.alloy(cylinder);
            question.straightness(cylinder);
            question.swing(cylinder);
            question.pin(cylinder);
        }
        for (String ring : tells.places("each piston ring", "piston ring side clearance", "piston groove width")) {
            question.groove(ring);
        }
        for (String bearing : tells.places("each plain bearing", "plain bearing clearance", "journal diameter", "bearing housing bore")) {
            question.bearing(bearing);
        }
        List<String> mains = tells.places("each main bearing", "main journal runout");
        for (int i = 0; i < mains.size(); i++) {
            question.runout(mains.get(i), i > 0 && i < mains.size() - 1);
        }
        for (String bigEnd : tells.places("each big end", "rod bolt stretch", "connecting rod side clearance")) {
            question.capLoad(bigEnd);
            question.sideRoom(bigEnd);
        }
        question.weights("piston", cylinders);
        question.weights("connecting rod", cylinders);
        question.endFloat();
        question.balance();
        question.lineBore();
        question.strength();
    }

    // --- cylinders, pistons, rods

    private void finish(String cylinder) {
        tells.say("cylinder", cylinder, "finish in question", "new rings", tells.word(List.of("piston ring"), cylinder, "state", "new"));
    }

    private void wall(String cylinder) {
        Optional<Statement> liners = site.sheet("layout", Place.ENGINE, "liners").filter(s -> !s.says().equals("none"));
        if (liners.isPresent()) {
            return;
        }
        String what = "wall in question";
        tells.say("cylinder", cylinder, what, "bored", tells.machined(List.of("cylinder"), cylinder, "bore"));
        Optional<Value> over = tells.value(cylinder, "cylinder oversize").filter(v -> surely(v.low(), Bores.ANOTHER_SIZE, false));
        tells.sayBy("cylinder", cylinder, what, "bored", over);
        tells.sayBy("cylinder", cylinder, what, "read", tells.reading(cylinder, "cylinder wall"));
    }

    private void alloy(String cylinder) {
        String what = "alloy against sheet";
        tells.say("piston", cylinder, what, "other", tells.word(PISTON, cylinder, "form").filter(s -> !s.says().equals("unknown")
                && !s.says().equals(PistonAlloys.form(site))));
        tells.say("piston", cylinder, what, "other", tells.word(PISTON, cylinder, "alloy", "low silicon", "middle silicon", "high silicon")
                .filter(s -> !s.says().equals(PistonAlloys.alloy(site))));
    }

    private void straightness(String cylinder) {
        String what = "straightness in question";
        tells.sayBy("connecting rod", cylinder, what, "read", tells.reading(cylinder, "connecting rod bend", "connecting rod twist"));
        tells.say("connecting rod", cylinder, what, "shock", tells.seen(List.of("cylinder"), cylinder, "coolant", "fuel"));
        tells.say("connecting rod", cylinder, what, "shock", tells.seen(List.of("piston crown"), cylinder, "valve print"));
        tells.say("connecting rod", cylinder, what, "shock", tells.past("cylinder locked by fluid", "valve struck piston", "object in a cylinder"));
        tells.say("connecting rod", cylinder, what, "second-hand", tells.word(ROD, cylinder, "state", "second-hand"));
        tells.say("connecting rod", cylinder, what, "bent seen", tells.seen(ROD, cylinder, "bent"));
    }

    private void swing(String cylinder) {
        Optional<Statement> changed = tells.word(List.of("connecting rod", "piston", "crankshaft", "rod bolt"), cylinder, "origin", FROM_ELSEWHERE);
        Optional<Value> stroke = tells.reading(Place.ENGINE, "crankshaft stroke").filter(v -> site.sheet("standard", Place.ENGINE, "stroke")
                .flatMap(s -> s.value()).map(s -> surely(v.low(), s.high() + Bores.ANOTHER_SIZE, false)
                        || surely(v.high(), s.low() - Bores.ANOTHER_SIZE, true)).orElse(false));
        Optional<Statement> jet = site.sheet("layout", Place.ENGINE, "piston jets").filter(s -> s.says().equals("none"))
                .flatMap(s -> tells.word(List.of("piston jet"), cylinder, "state", "new", "second-hand"));
        tells.say("connecting rod", cylinder, "swing", "changed", changed.or(() -> jet));
        if (changed.isEmpty() && jet.isEmpty()) {
            tells.sayBy("connecting rod", cylinder, "swing", "changed", stroke);
            if (stroke.isEmpty()) {
                tells.sayBy("connecting rod", cylinder, "swing", "as sheet", tells.reading(cylinder, "connecting rod gap to block"));
            }
        }
    }

    private void pin(String cylinder) {
        tells.sayBy("gudgeon pin", cylinder, "fit in question", "read", tells.reading(cylinder, "gudgeon pin diameter",
                "gudgeon pin clearance in piston", "gudgeon pin clearance in rod"));
        tells.say("gudgeon pin", cylinder, "fit in question", "second-hand", tells.word(List.of("gudgeon pin"), cylinder, "state", "second-hand"));
    }

    private void groove(String ring) {
        String what = "groove in question";
        int blank = ring.indexOf(' ');
        String cylinder = blank < 0 ? ring : ring.substring(0, blank);
        tells.sayBy("piston ring", ring, what, "read", tells.reading(ring, "piston ring side clearance", "piston groove width"));
        // An oil ring of rails and spacer has no room to be read.
        if (!ring.endsWith(" oil") && tells.word(List.of("piston ring"), ring, "state", "new").isPresent()) {
            tells.say("piston ring", ring, what, "old groove", tells.word(PISTON, cylinder, "state", USED));
        }
    }

    // --- bearings

    private void bearing(String at) {
        String of = Bearing.bearing(at);
        List<String> shells = Bearing.shells(at);
        List<String> journals = new ArrayList<>(Bearing.journals(at));
        tells.say(of, at, "shells in question", "fitted", tells.word(shells, at, "state", "new", "kept", "second-hand", "repaired"));
        tells.sayBy(of, at, "shells in question", "housing read", tells.reading(at, "bearing housing bore"));

        Optional<Statement> marked = tells.word(shells, at, "size mark").or(() -> tells.word(shells, at, "undersize"));
        Optional<Statement> elsewhere = tells.word(shells, at, "state", "second-hand");
        tells.sayBy(of, at, "journal in question", "read", tells.reading(at, "journal diameter"));
        tells.say(of, at, "journal in question", "scored", tells.seen(journals, at, "scored"));
        tells.say(of, at, "journal in question", "second-hand", tells.word(CRANKSHAFT, Place.ENGINE, "state", "second-hand"));
        journals.add("crankshaft");
        Optional<Statement> ground = tells.machined(journals, at, "grind");
        if (tells.value(at, "plain bearing clearance").isEmpty()) {
            tells.sayBy(of, at, "clearance in question", "by sizes alone", tells.value(at, of + " clearance by sizes"));
        }
        tells.say(of, at, "shell size in question", "marked", marked);
        tells.say(of, at, "shell size in question", "ground", ground);
        tells.say(of, at, "shell size in question", "second-hand", elsewhere);

        Optional<Value> under = tells.value(at, "journal undersize").filter(v -> surely(v.low(), Bores.ANOTHER_SIZE, false));
        tells.say(of, at, "journal size in question", "ground", ground);
        tells.sayBy(of, at, "journal size in question", "ground", under);
        if (leastOnSheet(at)) {
            tells.sayBy(of, at, "journal size in question", "least given", tells.reading(at, "journal diameter"));
        }

        tells.say(of, at, "fillet in question", "ground", ground);
        tells.say(of, at, "fillet in question", "other shells", tells.word(shells, at, "origin", "pattern", "uprated", "other engine", "home-made"));
        tells.say(of, at, "bolts changed", "yes", boltsChanged(tells, at));
        tells.say(of, at, "old shells told", "yes", tells.looked(shells, at, WEAR));
        if (Bearing.isMain(at)) {
            line(at);
        }
    }

    private boolean leastOnSheet(String at) {
        for (String journal : List.of(Bearing.journals(at).get(0) + " diameter", "journal diameter")) {
            for (LimitLine line : site.build.sheet().limits()) {
                if (line.quantity().equals(journal) && line.least().isPresent() && (line.at().isEmpty() || site.store.covers(line.at(), at))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The step or part that tells of other bolts, or of another kind, at the cap of a bearing. */
    static Optional<Statement> boltsChanged(Telling tells, String at) {
        List<String> of = Bearing.isMain(at) ? List.of("main cap to block", "main cap", Place.ENGINE)
                : List.of("rod cap to rod", "rod bolt", "connecting rod", "rod cap", Place.ENGINE);
        for (Statement s : tells.site.said("steps")) {
            boolean there = of.contains(s.at()) || s.at().startsWith("rod cap to rod ") && tells.site.related(s.at(), "rod cap to rod "
                    + Bearing.cylinder(at)) && !Bearing.isMain(at);
            if (s.what().equals("bolts changed") && s.says().equals("done") && there) {
                return Optional.of(s);
            }
        }
        return Bearing.isMain(at) ? Optional.empty() : tells.word(List.of("rod bolt"), at, "origin", "pattern", "uprated", "other engine");
    }

    private void line(String main) {
        String of = "main bearing";
        String what = "line in question";
        tells.sayBy(of, main, what, "read", tells.reading(main, "main housing line"));
        tells.say(of, main, what, "ran hot", tells.past("overheated"));
        tells.say(of, main, what, "bearing failed", tells.past("bearing shell turned", "oil starved"));
        tells.say(of, main, what, "bearing failed", tells.seen(Bearing.shells(main), main, "wiped", "moved", "copper showing"));
        tells.say(of, main, what, "line bored", tells.machined(List.of("main housing"), main, "line bore", "line hone"));
        tells.say(of, main, what, "new cap", tells.word(List.of("main cap"), main, "state", "new", "second-hand"));
    }

    // --- crankshaft

    private void runout(String main, boolean inner) {
        String of = "main bearing";
        String what = "run-out in question";
        tells.sayBy(of, main, what, "read", tells.reading(main, "main journal runout"));
        if (inner) {
            tells.say(of, main, what, "second-hand", tells.word(CRANKSHAFT, Place.ENGINE, "state", "second-hand"));
            tells.say(of, main, what, "worked on", tells.machined(List.of("crankshaft", "main journal"), main, "grind", "straighten", "weld"));
            tells.say(of, main, what, "shock", tells.past("bearing shell turned", "dropped or struck", "rod through the side"));
        }
    }

    private void capLoad(String bigEnd) {
        String what = "load in question";
        String cylinder = Bearing.cylinder(bigEnd);
        tells.sayBy("rod cap", bigEnd, what, "stretch", tells.reading(bigEnd, "rod bolt stretch"));
        Optional<Statement> asked = site.word("use", Place.ENGINE, "rev limit").filter(s -> s.value().isPresent() && s.value().get().figure());
        Optional<Double> sheet = site.sheet("output", Place.ENGINE, "rev limit").flatMap(Statement::value).map(w -> w.high());
        tells.say("rod cap", bigEnd, what, "rev limit", asked.filter(s -> sheet.isPresent()
                && s.value().get().high() > sheet.get() * (1 + 1e-9)));
        tells.say("rod cap", bigEnd, what, "piston", tells.word(PISTON, cylinder, "origin", FROM_ELSEWHERE));
        tells.say("rod cap", bigEnd, what, "bolts", tells.word(List.of("rod bolt"), bigEnd, "origin", "pattern", "uprated", "other engine"));
    }

    private void sideRoom(String bigEnd) {
        String what = "side room in question";
        tells.sayBy("rod cap", bigEnd, what, "read", tells.reading(bigEnd, "connecting rod side clearance", "connecting rod width"));
        tells.say("rod cap", bigEnd, what, "rod told", tells.word(ROD, Bearing.cylinder(bigEnd), "state", "new", "kept", "second-hand", "repaired"));
    }

    private void endFloat() {
        String what = "end float in question";
        tells.sayBy("crankshaft", Place.ENGINE, what, "read", tells.reading(Place.ENGINE, "crankshaft end float"));
        tells.say("crankshaft", Place.ENGINE, what, "crankshaft told", tells.word(CRANKSHAFT, Place.ENGINE, "state", "new", "kept", "second-hand",
                "repaired"));
    }

    /** At least one was weighed, or one stands out by where it came from, what it is, or that it alone was renewed. */
    private void weights(String part, List<String> cylinders) {
        String what = "weights in question";
        String weighed = part.equals("piston") ? "piston mass" : "connecting rod big end mass";
        for (String cylinder : cylinders) {
            Optional<Value> mass = tells.reading(cylinder, weighed, part.equals("piston") ? "piston mass" : "connecting rod small end mass");
            if (mass.isPresent()) {
                tells.sayBy(part, Place.ENGINE, what, "weighed", mass);
                break;
            }
        }
        tells.sayBy(part, Place.ENGINE, what, "weighed", tells.value(Place.ENGINE, weighed + " spread"));
        for (String property : List.of("state", "origin", "supplier", "oversize", "number")) {
            String first = "";
            int told = 0;
            Optional<Statement> odd = Optional.empty();
            for (String cylinder : cylinders) {
                Optional<Statement> word = site.word(part, cylinder, property).filter(s -> !s.says().equals("unknown"));
                if (word.isPresent()) {
                    odd = told > 0 && !word.get().says().equals(first) ? word : odd;
                    first = told == 0 ? word.get().says() : first;
                    told++;
                }
            }
            if (odd.isPresent()) {
                tells.say(part, Place.ENGINE, what, "odd one", odd);
                return;
            }
        }
    }

    private void balance() {
        String of = "rotating assembly";
        String what = "balance in question";
        tells.say(of, Place.ENGINE, what, "weighted part", BottomEndWords.weightedPart(tells, "changed", "changed since", "other engine").map(w -> w.by()));
        if (site.sheet("balance", Place.ENGINE, "share").isPresent()) {
            tells.sayBy(of, Place.ENGINE, what, "bob weight", tells.reading(Place.ENGINE, "piston mass"));
        }
    }

    private void lineBore() {
        Optional<Value> rise = tells.value(Place.ENGINE, "crankshaft centre rise");
        if (rise.isPresent() && rise.get().high().map(e -> e.value() < CrankTrain.RISE_WORTH_FOLLOWING).orElse(false)) {
            return;
        }
        String what = "line bore in question";
        tells.say("crankshaft", Place.ENGINE, what, "line bored", BottomEndWords.lineBored(tells));
        tells.say("crankshaft", Place.ENGINE, what, "caps cut", BottomEndWords.capsCut(tells));
    }

    private void strength() {
        String what = "strength in question";
        String engine = Place.ENGINE;
        boolean another = tells.word(CRANKSHAFT, engine, "state", "new", "second-hand", "ready").isPresent();
        tells.say("crankshaft", engine, what, "heat", tells.seen(List.of("journal", "main journal", "crankpin"), engine, "heat colour")
                .filter(s -> !another || !asFound(s)));
        tells.say("crankshaft", engine, what, "cracked", tells.seen(CRANKSHAFT, engine, "cracked").filter(s -> !another || !asFound(s)));
        tells.say("crankshaft", engine, what, "shock", tells.past("over-revved", "bearing shell turned", "piston seized hot", "dropped or struck",
                "cylinder locked by fluid", "rod through the side"));
        tells.say("crankshaft", engine, what, "straightened", tells.machined(CRANKSHAFT, engine, "straighten", "weld"));
        for (String bearing : tells.places("each plain bearing", "journal diameter")) {
            Optional<Value> difference = tells.value(bearing, Bearing.isMain(bearing) ? "main journal size difference" : "crankpin size difference");
            if (difference.isPresent() && surely(difference.get().high(), -Bores.ANOTHER_SIZE, true)) {
                tells.sayBy("crankshaft", engine, what, "odd journal", difference);
            }
        }
        if (tells.word(CRANKSHAFT, engine, "state", "kept", "second-hand", "repaired").isPresent()) {
            for (Statement s : site.said("use")) {
                if (s.what().equals("duty") && s.says().equals("competition")) {
                    tells.say("crankshaft", engine, what, "competition", Optional.of(s));
                }
            }
        }
    }

    private static boolean asFound(Statement s) {
        return s.asides().getOrDefault("as", "").equals("found");
    }

    /** Whether an end lies beyond a size with all of its doubt. */
    static boolean surely(Optional<Estimate> end, double size, boolean below) {
        return end.isPresent() && (below ? end.get().value() + TWICE * end.get().standardUncertainty() < size
                : end.get().value() - TWICE * end.get().standardUncertainty() > size);
    }
}
