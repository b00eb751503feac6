package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.calc.Threads;
import leadlamp.calc.Tightening;
import leadlamp.calc.TorqueFactor;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import leadlamp.record.LimitLine;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.words.Part;

/**
 * Words of joints: torque, angle, friction, thread and count beside the sheet's, and what a record makes a question of at a joint.
 * Of what nothing is told nothing is said, so that a short record is not asked about locks, studs or inserts that it never names.
 */
final class FastenerWords {
    private static final String JOINT = "joint";
    private static final List<String> BOLTS = List.of("bolt", "head bolt", "rod bolt", "stud", "head stud");
    private static final List<String> STUDS = List.of("stud", "head stud", "barrel stud");
    private static final List<String> DOWELS = List.of("dowel", "head dowel", "flywheel dowel", "cover dowel", "gearbox dowel");
    private static final List<String> WASHERS = List.of("washer", "head bolt washer");
    private static final List<String> HOLES = List.of("threaded hole", "head bolt hole");
    private static final List<String> OVER_A_COATING = List.of("oil", "light oil", "engine oil", "assembly paste", "moly paste", "copper paste", "grease");
    private static final List<String> OLD = List.of("kept", "second-hand", "repaired");
    private static final double TWICE = 2;
    private static final String[] HERE = {"new", "kept", "second-hand", "repaired", "there", "ready"};
    /** A pattern bolt is made to the maker's figure; these are not. */
    private static final List<String> OF_OTHERS = List.of("uprated", "home-made", "other engine");

    private final Telling tells;
    private final Site site;

    private FastenerWords(Telling tells) {
        this.tells = tells;
        this.site = tells.site;
    }

    /** The words, as subject and property, and what each may say. */
    static Map<String, List<String>> names() {
        Map<String, List<String>> names = new TreeMap<>();
        names.put("joint lubricant against sheet", List.of("same", "slicker", "drier", "head face dry", "over coating", "not compared"));
        names.put("joint torque against sheet", List.of("as sheet", "over", "under", "over supplier", "under supplier", "earlier stage",
                "pound-foot", "pound-inch", "kilogram-metre"));
        names.put("joint angle against sheet", List.of("as sheet", "short", "over"));
        names.put("joint applied against sheet", List.of("as sheet", "over", "under"));
        names.put("joint thread against sheet", List.of("same", "other"));
        names.put("joint bolts against sheet", List.of("all", "fewer", "one missing"));
        names.put("joint bolts going in", List.of("new", "kept", "second-hand", "repaired"));
        names.put("joint bolts renewed", List.of("always", "not listed"));
        names.put("joint bolt broke", List.of("yes", "no"));
        names.put("joint drag", List.of("added"));
        names.put("joint keyed", List.of("yes"));
        names.put("joint locker against sheet", List.of("asked", "not asked"));
        names.put("joint tightening in question", List.of("torque", "band", "angle", "order"));
        names.put("joint unit in question", List.of("torque"));
        names.put("joint torque limits in question", List.of("given"));
        names.put("joint bolt lengths in question", List.of("new lengths", "mates"));
        names.put("joint fastener in question", List.of("other make", "studs for bolts"));
        names.put("joint lock in question", List.of("drag read", "lock told"));
        names.put("joint castle nut in question", List.of("split pin"));
        names.put("joint studs in question", List.of("height read", "nut read", "looked"));
        names.put("joint hole mouths in question", List.of("read", "looked"));
        names.put("joint insert in question", List.of("length read", "depth read", "looked"));
        names.put("joint seat in question", List.of("washer told", "washer form", "looked"));
        names.put("joint film in question", List.of("read", "looked"));
        names.put("joint location in question", List.of("dowel told", "dowel read", "shank read"));
        names.put("joint hard bolts in question", List.of("plated", "worked on"));
        names.put("joint thread in question", List.of("gauged", "looked", "told"));
        names.put("joint past in question", List.of("face looked", "bolt looked"));
        return names;
    }

    static void all(Telling tells) {
        FastenerWords words = new FastenerWords(tells);
        for (String joint : Joints.joints(tells.site, "each joint")) {
            words.lubricant(joint);
            words.locker(joint);
            words.torque(joint);
            words.angle(joint);
            words.applied(joint);
            words.thread(joint);
            words.bolts(joint);
            words.goingIn(joint);
            words.inQuestion(joint);
        }
    }

    // --- beside the sheet

    /** By the usual figures of both, for their means: the scatter of one bolt is another matter than a wrong film on all of them. */
    private void lubricant(String joint) {
        String what = "lubricant against sheet";
        Optional<Statement> sheet = site.sheet(JOINT, joint, "lubricant");
        if (sheet.isEmpty()) {
            return;
        }
        Optional<Statement> own = site.word(JOINT, joint, "lubricant").filter(s -> !s.says().equals("unknown"));
        if (own.isEmpty()) {
            tells.lack("joint " + what, joint, "joint lubricant");
            return;
        }
        if (sheet.get().says().equals("as supplied") && OVER_A_COATING.contains(own.get().says())) {
            tells.say(JOINT, joint, what, "over coating", List.of(own.get().where(), sheet.get().where()));
            return;
        }
        Optional<TorqueFactor> has = TorqueFactor.ofLubricant(own.get().says());
        Optional<TorqueFactor> asks = TorqueFactor.ofLubricant(sheet.get().says());
        List<Where> where = List.of(own.get().where(), sheet.get().where());
        boolean locker = locked(site.word(JOINT, joint, "thread-locker")) || locked(site.sheet(JOINT, joint, "thread-locker"));
        if (locker || has.isEmpty() || asks.isEmpty()) {
            tells.say(JOINT, joint, what, own.get().says().equals(sheet.get().says()) ? "same" : "not compared", where);
            return;
        }
        Optional<Statement> head = site.word(JOINT, joint, "under head").filter(s -> s.says().equals("dry"));
        String says = switch (Tightening.clamp(has.get().usual(), asks.get().usual())) {
            case OVER -> "slicker";
            case UNDER -> "drier";
            default -> head.isPresent() && !sheet.get().says().equals("dry") ? "head face dry" : "same";
        };
        tells.say(JOINT, joint, what, says, says.equals("head face dry") ? List.of(head.get().where(), sheet.get().where()) : where);
    }

    /** Whether the sheet wants locker there; where it names neither locker nor thread state nobody can say what its torque is for. */
    private void locker(String joint) {
        String what = "locker against sheet";
        Optional<Statement> own = site.word(JOINT, joint, "thread-locker").filter(s -> !s.says().equals("unknown"));
        if (own.isEmpty()) {
            return;
        }
        Optional<Statement> sheet = site.sheet(JOINT, joint, "thread-locker").filter(s -> !s.says().equals("none"));
        Optional<Statement> film = site.sheet(JOINT, joint, "lubricant");
        if (sheet.isEmpty() && film.isEmpty()) {
            tells.lack("joint " + what, joint, "sheet joint lubricant");
            return;
        }
        tells.say(JOINT, joint, what, sheet.isPresent() ? "asked" : "not asked", own.get().told().orElse(""),
                List.of(own.get().where(), sheet.or(() -> film).get().where()));
    }

    private static boolean locked(Optional<Statement> locker) {
        return locker.filter(s -> !s.says().equals("none") && !s.says().equals("patch") && !s.says().equals("unknown")).isPresent();
    }

    private void torque(String joint) {
        String what = "torque against sheet";
        Optional<Statement> sheet = site.sheet(JOINT, joint, "torque");
        Optional<Written> asked = sheet.flatMap(FastenerWords::written);
        Optional<LimitLine> supplied = bySupplier(joint);
        if (asked.isEmpty() && supplied.isEmpty()) {
            return;
        }
        Optional<Value> read = closed(joint);
        if (read.isEmpty()) {
            tells.lack("joint " + what, joint, "joint torque");
            return;
        }
        double drag = tells.reading(joint, "bolt running torque").flatMap(Value::high).map(Estimate::value).orElse(0.0);
        Estimate least = read.get().low().orElseThrow();
        Estimate greatest = read.get().high().orElseThrow();
        boolean under = supplied.isPresent() ? underBand(least, supplied.get())
                : stands(joint, least, asked.get(), drag) == Tightening.Stands.UNDER;
        boolean over = supplied.isPresent() ? overBand(greatest, supplied.get(), drag)
                : stands(joint, greatest, asked.get(), drag) == Tightening.Stands.OVER;
        double has = least.value();
        String says = "as sheet";
        if (under || over) {
            String off = (under ? "under" : "over") + (supplied.isPresent() ? " supplier" : "");
            boolean besideSheet = asked.isPresent() && read.get().plain() && has > 0 && Tightening.torque(has, asked.get().high()) != Tightening.Stands.AS_ASKED;
            says = !besideSheet ? off : earlierStage(joint, has) ? "earlier stage"
                    : Tightening.mistakenUnit(has, asked.get().high()).orElse(off);
        }
        List<Where> where = new ArrayList<>(read.get().places());
        where.add(supplied.isPresent() ? supplied.get().line() : sheet.get().where());
        tells.say(JOINT, joint, what, says, where);
        if (drag > 0 && asked.isPresent() && Tightening.torque(has, asked.get().low() + drag) == Tightening.Stands.AS_ASKED) {
            tells.say(JOINT, joint, "drag", "added", where);
        }
    }

    /** Beside a figure or a band; what the thread drags may be in it, and a wrench may be worse than most. */
    private Tightening.Stands stands(String joint, Estimate has, Written asked, double drag) {
        double torque = has.value();
        if (torque <= 0 || inside(torque, limit(joint, "least"), limit(joint, "most"))) {
            return Tightening.Stands.AS_ASKED;
        }
        double doubt = TWICE * has.standardUncertainty();
        boolean under = Tightening.torque(torque, asked.low()) == Tightening.Stands.UNDER && torque + doubt < asked.low();
        boolean over = Tightening.torque(torque, asked.high() + drag) == Tightening.Stands.OVER && torque - doubt > asked.high() + drag;
        return under ? Tightening.Stands.UNDER : over ? Tightening.Stands.OVER : Tightening.Stands.AS_ASKED;
    }

    private static boolean inside(double torque, Optional<Double> least, Optional<Double> most) {
        return least.isPresent() && most.isPresent() && torque >= least.get() && torque <= most.get();
    }

    /** The band that came with the bolts: it goes before the sheet's figure, which is for the maker's bolts, and binds as that would. */
    private Optional<LimitLine> bySupplier(String joint) {
        for (LimitLine line : site.build.limits()) {
            if (ofJoint(line, joint) && (line.least().isPresent() || line.most().isPresent())) {
                return Optional.of(line);
            }
        }
        return Optional.empty();
    }

    private static boolean underBand(Estimate torque, LimitLine band) {
        return band.least().isPresent() && torque.value() + TWICE * torque.standardUncertainty() < band.least().get().low();
    }

    /** What the thread drags may be in the torque besides. */
    private static boolean overBand(Estimate torque, LimitLine band, double drag) {
        return band.most().isPresent() && torque.value() - TWICE * torque.standardUncertainty() > band.most().get().high() + drag;
    }

    private boolean ofJoint(LimitLine line, String joint) {
        return line.quantity().equals("joint torque") && (line.at().isEmpty() || standsAt(line.at(), joint));
    }

    /** Whether a bolt's place lies in the joint; those of a rod stand at its big end. */
    private boolean standsAt(String at, String joint) {
        return site.related(at, joint) || joint.startsWith("rod cap to rod") && Fasteners.rodJoint(site, at).filter(joint::equals).isPresent();
    }

    /** A figure of the sheet, or its band. */
    private static Optional<Written> written(Statement sheet) {
        return sheet.value().or(() -> Reading.read(sheet.says(), Dimension.TORQUE, Optional.empty())
                instanceof Reading.Read band ? Optional.of(band.written()) : Optional.empty());
    }

    /** The torque as told with both of its ends, in one's own hand. */
    private Optional<Value> closed(String joint) {
        return site.store.at("joint torque", joint).filter(v -> v.low().isPresent() && v.high().isPresent() && v.told().isEmpty());
    }

    private Optional<Double> limit(String joint, String side) {
        return site.sheet(JOINT, joint, "torque limits " + side).flatMap(Statement::value).map(Written::high);
    }

    /** Whether the torque is that of a stage before the last. */
    private boolean earlierStage(String joint, double torque) {
        Optional<Statement> stages = site.sheet(JOINT, joint, "stages");
        if (stages.isEmpty()) {
            return false;
        }
        for (String stage : stages.get().says().replace("[", "").replace("]", "").split(",")) {
            var read = leadlamp.quantity.Reading.read(stage.strip(), leadlamp.quantity.Dimension.TORQUE, Optional.empty());
            if (read instanceof leadlamp.quantity.Reading.Read figure
                    && Tightening.torque(torque, figure.written().high()) == Tightening.Stands.AS_ASKED) {
                return true;
            }
        }
        return false;
    }

    private void angle(String joint) {
        String what = "angle against sheet";
        Optional<Statement> sheet = site.sheet(JOINT, joint, "angle").filter(s -> s.value().isPresent());
        if (sheet.isEmpty()) {
            return;
        }
        Optional<Value> read = plain("joint angle", joint);
        if (read.isEmpty()) {
            tells.lack("joint " + what, joint, "joint angle");
            return;
        }
        String says = switch (Tightening.angle(si(read.get()), sheet.get().value().get().high())) {
            case UNDER -> "short";
            case OVER -> "over";
            default -> "as sheet";
        };
        List<Where> where = new ArrayList<>(read.get().places());
        where.add(sheet.get().where());
        tells.say(JOINT, joint, what, says, where);
    }

    /** What reached the bolt past an adaptor in line with the wrench. */
    private void applied(String joint) {
        String what = "applied against sheet";
        Optional<Statement> adaptor = site.word(JOINT, joint, "adaptor");
        Optional<Statement> sheet = site.sheet(JOINT, joint, "torque").filter(s -> s.value().isPresent());
        if (adaptor.isEmpty() || sheet.isEmpty()) {
            return;
        }
        if (adaptor.get().says().equals("square")) {
            tells.say(JOINT, joint, what, "as sheet", List.of(adaptor.get().where()));
            return;
        }
        Optional<Value> reached = tells.value(joint, "applied torque").filter(Value::plain);
        if (reached.isEmpty()) {
            tells.lack("joint " + what, joint, "joint setting", "wrench length");
            return;
        }
        String says = switch (Tightening.torque(si(reached.get()), sheet.get().value().get().high())) {
            case UNDER -> "under";
            case OVER -> "over";
            default -> "as sheet";
        };
        List<Where> where = new ArrayList<>(reached.get().places());
        where.add(sheet.get().where());
        tells.say(JOINT, joint, what, says, where);
    }

    private void thread(String joint) {
        Optional<Statement> own = site.word(JOINT, joint, "thread").filter(s -> !s.says().equals("unknown"));
        Optional<Statement> sheet = site.sheet(JOINT, joint, "thread");
        if (own.isEmpty() || sheet.isEmpty()) {
            return;
        }
        boolean same = own.get().says().equals(sheet.get().says())
                || Threads.named(own.get().says()).isPresent() && Threads.named(own.get().says()).equals(Threads.named(sheet.get().says()));
        tells.say(JOINT, joint, "thread against sheet", same ? "same" : "other", List.of(own.get().where(), sheet.get().where()));
    }

    private void bolts(String joint) {
        Optional<Statement> gone = bolt(joint, "state", List.of("missing", "deleted"));
        if (gone.isPresent()) {
            tells.say(JOINT, joint, "bolts against sheet", "one missing", gone);
            return;
        }
        Optional<Statement> own = site.word(JOINT, joint, "bolts").filter(s -> !s.says().equals("unknown"));
        Optional<Statement> sheet = site.sheet(JOINT, joint, "bolts").filter(s -> s.value().isPresent());
        if (own.isEmpty() || sheet.isEmpty()) {
            return;
        }
        boolean fewer = own.get().value().map(v -> v.high() < sheet.get().value().get().low()).orElse(false);
        tells.say(JOINT, joint, "bolts against sheet", fewer ? "fewer" : "all", List.of(own.get().where(), sheet.get().where()));
    }

    /** What a bolt of the joint is told to be, under whichever of its names; one of these where some are named, else the last word. */
    private Optional<Statement> bolt(String joint, String what, List<String> wanted) {
        Statement last = null;
        for (String part : BOLTS) {
            for (Statement s : site.said(part)) {
                if (s.what().equals(what) && wanted.contains(s.says()) && !s.at().equals(Place.ENGINE) && standsAt(s.at(), joint)) {
                    last = s;
                }
            }
        }
        return Optional.ofNullable(last);
    }

    /** Whether old bolts go in; whether the sheet wants new ones each time; whether one broke. */
    private void goingIn(String joint) {
        Optional<Statement> state = bolt(joint, "state", OLD).or(() -> bolt(joint, "state", List.of("new")));
        tells.say(JOINT, joint, "bolts going in", state.map(Statement::says).orElse(""), state);
        if (state.isEmpty()) {
            tells.lack("joint bolts going in", joint, joint.startsWith("rod cap to rod") ? "rod bolt state" : joint.startsWith("head to block")
                    ? "head bolt state" : "bolt state");
        }
        Optional<Statement> always = site.sheet(JOINT, joint, "renew always")
                .or(() -> site.sheet(JOINT, joint, "uses").filter(s -> s.value().map(v -> v.high() <= 1).orElse(false)));
        tells.say(JOINT, joint, "bolts renewed", always.isPresent() ? "always" : "not listed", always.or(() -> state));
        Statement broke = null;
        for (String part : BOLTS) {
            for (Statement s : tells.signs(part, "broken")) {
                if (standsAt(s.at(), joint) && (broke == null || s.form() == Statement.Form.SEEN)) {
                    broke = s;
                }
            }
        }
        if (broke != null) {
            tells.say(JOINT, joint, "bolt broke", broke.form() == Statement.Form.SEEN ? "yes" : "no", Optional.of(broke));
        }
    }

    /** A part that stands on a key of the record is carried round by it. */
    private void keyed(String joint) {
        int to = joint.indexOf(" to ");
        Optional<Part> part = to < 0 ? Optional.empty() : site.words.part(joint.substring(0, to));
        if (part.isPresent() && !part.get().keyedBy().isEmpty()) {
            tells.say(JOINT, joint, "keyed", "yes", tells.word(List.of(part.get().keyedBy()), Place.ENGINE, "state", HERE));
        }
    }

    // --- what is a question at a joint

    private void inQuestion(String joint) {
        keyed(joint);
        // The sheet's figure is for its bolts; studs have one of their own, and it is known only where it came with them.
        boolean studs = studsForBolts(joint).isPresent();
        boolean onSheet = site.sheet(JOINT, joint, "torque").isPresent();
        boolean band = bySupplier(joint).isPresent();
        if (onSheet && !studs || band) {
            tells.sayBy(JOINT, joint, "tightening in question", onSheet ? "torque" : "band", closed(joint));
        }
        if (onSheet && (!studs || band)) {
            tells.sayBy(JOINT, joint, "unit in question", "torque", closed(joint));
        }
        if (onSheet && !studs) {
            Optional<Value> torque = closed(joint);
            if (site.sheet(JOINT, joint, "angle").isPresent()) {
                tells.sayBy(JOINT, joint, "tightening in question", "angle", torque);
            }
            if (site.sheet(JOINT, joint, "sequence").isPresent()) {
                tells.sayBy(JOINT, joint, "tightening in question", "order", torque);
            }
        }
        tells.say(JOINT, joint, "torque limits in question", "given", site.sheet(JOINT, joint, "torque limits least")
                .or(() -> site.sheet(JOINT, joint, "torque limits most")));
        Optional<Value> free = tells.reading(joint, "bolt free length");
        Optional<Value> asNew = tells.reading(joint, "bolt length as new");
        if (asNew.isPresent()) {
            tells.sayBy(JOINT, joint, "bolt lengths in question", "new lengths", asNew);
        } else if (site.either(JOINT, joint, "lengths").isEmpty() && site.store.within("bolt free length", joint).size() > 2) {
            tells.sayBy(JOINT, joint, "bolt lengths in question", "mates", free);
        }
        if (site.sheet(JOINT, joint, "angle").isPresent()) {
            tells.say(JOINT, joint, "fastener in question", "other make", bolt(joint, "origin", OF_OTHERS));
        }
        if (site.sheet(JOINT, joint, "torque").isPresent()) {
            tells.say(JOINT, joint, "fastener in question", "studs for bolts", studsForBolts(joint));
        }
        tells.sayBy(JOINT, joint, "lock in question", "drag read", tells.reading(joint, "bolt running torque"));
        tells.say(JOINT, joint, "lock in question", "lock told", tells.word(List.of("locking part"), joint, "state", HERE));
        tells.say(JOINT, joint, "castle nut in question", "split pin", site.sheet(JOINT, joint, "locking")
                .or(() -> site.word(JOINT, joint, "locking")).filter(s -> s.says().equals("split pin")));
        tells.sayBy(JOINT, joint, "studs in question", "height read", tells.reading(joint, "stud protrusion"));
        tells.sayBy(JOINT, joint, "studs in question", "nut read", tells.reading(joint, "nut height"));
        tells.say(JOINT, joint, "studs in question", "looked", tells.looked(STUDS, joint, "moved"));
        tells.sayBy(JOINT, joint, "hole mouths in question", "read", tells.reading(joint, "threaded hole lip height"));
        tells.say(JOINT, joint, "hole mouths in question", "looked", tells.looked(HOLES, joint, "raised lip"));
        tells.sayBy(JOINT, joint, "insert in question", "length read", tells.reading(joint, "thread insert length"));
        tells.sayBy(JOINT, joint, "insert in question", "depth read", tells.reading(joint, "thread insert depth below face"));
        tells.say(JOINT, joint, "insert in question", "looked", tells.looked(List.of("thread insert"), joint, "left in"));
        tells.say(JOINT, joint, "seat in question", "washer told", site.sheet(JOINT, joint, "washer").isEmpty() ? Optional.empty()
                : site.word(JOINT, joint, "washer"));
        tells.say(JOINT, joint, "seat in question", "washer form", tells.word(WASHERS, joint, "form"));
        tells.say(JOINT, joint, "seat in question", "looked", tells.looked(List.of("joint face"), joint, "bolt hole sunk"));
        tells.sayBy(JOINT, joint, "film in question", "read", tells.reading(joint, "joint face coating thickness"));
        tells.say(JOINT, joint, "film in question", "looked", tells.looked(List.of("joint face"), joint, "paint"));
        tells.say(JOINT, joint, "location in question", "dowel told", tells.word(DOWELS, joint, "state"));
        tells.sayBy(JOINT, joint, "location in question", "dowel read", exact("dowel protrusion", joint));
        tells.sayBy(JOINT, joint, "location in question", "shank read", tells.reading(joint, "bolt shank diameter"));
        hardBolts(joint);
        tells.sayBy(JOINT, joint, "thread in question", "gauged", tells.reading(joint, "threaded hole not-go turns"));
        tells.say(JOINT, joint, "thread in question", "looked", tells.looked(HOLES, joint, "bolt rock"));
        tells.say(JOINT, joint, "thread in question", "told", site.sheet(JOINT, joint, "thread").isEmpty() ? Optional.empty()
                : site.word(JOINT, joint, "thread"));
        tells.say(JOINT, joint, "past in question", "face looked", tells.looked(List.of("joint face"), joint, "fretting"));
        tells.say(JOINT, joint, "past in question", "bolt looked", tells.looked(BOLTS, joint, "broken"));
    }

    /** Studs told at this very joint, where the sheet has bolts. */
    private Optional<Statement> studsForBolts(String joint) {
        if (site.sheet(JOINT, joint, "studs").isPresent()) {
            return Optional.empty();
        }
        for (String part : List.of("stud", "head stud")) {
            for (Statement s : site.said(part)) {
                if (s.what().equals("state") && List.of(HERE).contains(s.says()) && !s.at().equals(Place.ENGINE) && site.related(s.at(), joint)) {
                    return Optional.of(s);
                }
            }
        }
        return Optional.empty();
    }

    /** Bolts so hard that plating or acid may make them brittle, and plated or put in a bath. */
    private void hardBolts(String joint) {
        Optional<Statement> boltClass = site.either(JOINT, joint, "class");
        if (boltClass.isEmpty()) {
            return;
        }
        if (boltClass.get().says().equals("12.9")) {
            tells.say(JOINT, joint, "hard bolts in question", "plated", site.word(JOINT, joint, "finish")
                    .filter(s -> s.says().equals("zinc") || s.says().equals("nickel")));
        }
        if (boltClass.get().says().equals("12.9") || boltClass.get().says().equals("10.9")) {
            tells.say(JOINT, joint, "hard bolts in question", "worked on", tells.machined(BOLTS, joint, "plate", "bath"));
        }
    }

    /** A reading of the joint's own kind: dowels of the head have readings, and questions, of their own. */
    private Optional<Value> exact(String quantity, String joint) {
        return tells.reading(joint, quantity).filter(v -> v.of().equals(quantity));
    }

    private Optional<Value> plain(String quantity, String joint) {
        return site.store.at(quantity, joint).filter(v -> v.plain() && v.told().isEmpty());
    }

    private static double si(Value value) {
        return value.low().orElseThrow().value();
    }
}
