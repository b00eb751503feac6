package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import leadlamp.record.LimitLine;
import leadlamp.record.Node;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/**
 * Words of the valve gear that come of a comparison: a lash and the heat that its figure is meant for, two dates, a follower and
 * its lobe, a rev limit and the speed that somebody rates the springs for. Where the comparison is open nothing is said.
 */
final class ValveGearWords {
    private static final double TWICE = 2;

    private final Telling tells;
    private final Site site;

    private ValveGearWords(Telling tells) {
        this.tells = tells;
        this.site = tells.site;
    }

    /** The words, as subject and property, and what each may say. */
    static Map<String, List<String>> names() {
        Map<String, List<String>> names = new TreeMap<>();
        names.put("valve heat at setting", List.of("as sheet", "hot by cold figure", "cold by hot figure"));
        names.put("valve leak test", List.of("after seat work", "before seat work"));
        names.put("valve leak test since", List.of("passed"));
        names.put("valve leak test told", List.of("made", "left out"));
        names.put("valve lash since work", List.of("after", "before"));
        names.put("lash shim size made", List.of("yes", "no"));
        names.put("lash adjuster likeness", List.of("alike", "two forms", "two makes"));
        names.put("valve spring load judged by", List.of("limit", "mates"));
        names.put("valve depth judged by", List.of("limit", "mates"));
        names.put("spring retainer depth judged by", List.of("limit", "mates"));
        names.put("valve spring speed rating", List.of("enough", "too low", "reckoned", "unproved"));
        names.put("collet against valve", List.of("same", "other"));
        names.put("camshaft mates", List.of("own lobes", "both new", "old on new", "old on ground", "old on other"));
        names.put("cam lobe lift judged by", List.of("limit", "sisters"));
        names.put("pushrod length judged by", List.of("limit", "wanted", "screw"));
        names.put("camshaft float since plate", List.of("after", "before"));
        names.put("camshaft oil arrived", List.of("yes", "no"));
        return names;
    }

    static void all(Telling tells) {
        ValveGearWords words = new ValveGearWords(tells);
        for (String valve : tells.places("each valve", "valve piston clearance", "valve stem diameter", "valve spring seat load", "cam lobe height",
                "valve lash")) {
            words.lashSinceWork(valve);
            words.shimMade(valve);
            words.judgedBy(valve);
            words.grooves(valve);
            words.liftJudgedBy(valve);
        }
        words.leakTest();
        words.leakTestTold();
        words.set();
        words.heat();
        words.rating();
        for (String pushrod : tells.places("each pushrod", "pushrod length", "pushrod runout")) {
            words.lengthJudgedBy(pushrod);
        }
        for (String camshaft : tells.places("each camshaft", "camshaft end float")) {
            words.floatSincePlate(camshaft);
            words.mates(camshaft);
        }
        words.oilArrived();
    }

    // --- the leak test

    /** A test that failed and was passed later is past; a test is of the faces as they were when it was made. */
    private void leakTest() {
        List<Statement> tests = new ArrayList<>();
        for (Statement s : site.said("steps")) {
            if (s.what().equals("valve leak tested") && List.of("passed", "failed", "not proved").contains(s.says()) && s.told().isEmpty()) {
                tests.add(s);
            }
        }
        List<Statement> passed = new ArrayList<>();
        for (Statement test : tests) {
            if (test.says().equals("passed")) {
                passed.add(test);
                continue;
            }
            for (Statement later : tests) {
                boolean since = tests.indexOf(later) > tests.indexOf(test) ? !tells.before(later, test) : tells.before(test, later);
                if (later.says().equals("passed") && since && site.store.covers(later.at(), test.at())) {
                    tells.say("valve", test.at(), "leak test since", "passed", Optional.of(later));
                }
            }
        }
        for (Statement work : site.said("machining")) {
            boolean faces = List.of("valve seat", "valve", "seat insert").contains(work.what())
                    && List.of("cut", "grind", "lap", "insert", "press", "hand").contains(work.says());
            List<Where> where = new ArrayList<>(List.of(work.where()));
            boolean before = faces && !passed.isEmpty();
            for (Statement test : faces ? passed : List.<Statement>of()) {
                if (site.related(test.at(), work.at())) {
                    before &= tells.before(test, work);
                    where.add(test.where());
                }
            }
            if (where.size() > 1) {
                tells.say("valve", work.at(), "leak test", before ? "before seat work" : "after seat work", where);
            }
        }
    }

    /** One test of all, or one of each head, cylinder or valve by itself. */
    private void leakTestTold() {
        String what = "leak test told";
        List<String> open = new ArrayList<>(site.places("each valve").orElse(List.of(Place.ENGINE)));
        for (Statement s : site.said("steps")) {
            if (s.what().equals("valve leak tested") && !List.of("next", "planned", "unknown").contains(s.says())) {
                tells.say("valve", s.at(), what, s.says().equals("left out") ? "left out" : "made", Optional.of(s));
                open.removeIf(valve -> site.store.covers(s.at(), valve));
            }
        }
        for (String valve : open) {
            tells.lack("valve leak test told", valve, "steps valve leak tested");
        }
    }

    // --- lash

    /** Only where a reading says its heat and the sheet gives its figure for the other one alone. */
    private void heat() {
        List<Where> off = new ArrayList<>();
        List<Where> right = new ArrayList<>();
        String says = "as sheet";
        for (Statement state : site.said("valve lash")) {
            boolean readHot = state.says().equals("hot");
            if (!state.what().equals("state") || !readHot && !state.says().equals("cold") || state.told().isPresent() || readAgain(state)) {
                continue;
            }
            boolean same = false;
            boolean other = false;
            for (LimitLine line : site.build.sheet().limits()) {
                if (line.quantity().equals("valve lash") && (line.at().isEmpty() || site.related(line.at(), state.at()))) {
                    other |= line.when().equals(readHot ? "cold" : "hot");
                    same |= !line.when().equals(readHot ? "cold" : "hot");
                }
            }
            if (other && !same) {
                says = readHot ? "hot by cold figure" : "cold by hot figure";
                off.add(state.where());
            } else if (same) {
                right.add(state.where());
            }
        }
        if (!off.isEmpty() || !right.isEmpty()) {
            tells.say("valve", Place.ENGINE, "heat at setting", says, off.isEmpty() ? right : off);
        }
    }

    /** Whether the lash there was read again at the other heat, further down the record. */
    private boolean readAgain(Statement state) {
        boolean passed = false;
        for (Statement other : site.said("valve lash")) {
            passed |= other.where().equals(state.where());
            if (passed && other.what().equals("state") && !other.says().equals(state.says()) && other.told().isEmpty()
                    && site.store.covers(other.at(), state.at())) {
                return true;
            }
        }
        return false;
    }

    /** What bears no date was read of the parts as they are. */
    private void lashSinceWork(String valve) {
        List<Statement> work = new ArrayList<>();
        List<Statement> read = new ArrayList<>();
        for (Statement s : site.about("machining")) {
            if (s.form() == Statement.Form.STATED && List.of("valve seat", "valve", "valve tip").contains(s.what())
                    && List.of("cut", "grind", "insert", "hand").contains(s.says()) && site.related(s.at(), valve)) {
                work.add(s);
            }
        }
        for (Statement s : site.about("valve lash")) {
            if (s.form() == Statement.Form.READ && s.what().isEmpty() && s.told().isEmpty() && site.related(s.at(), valve)) {
                read.add(s);
            }
        }
        if (read.isEmpty()) {
            tells.lack("valve lash since work", valve, "valve lash");
            return;
        }
        boolean before = false;
        List<Where> where = new ArrayList<>();
        for (Statement cut : work) {
            boolean after = false;
            for (Statement lash : read) {
                after |= !tells.before(lash, cut);
            }
            before |= !after;
            where.add(cut.where());
        }
        read.forEach(s -> where.add(s.where()));
        tells.say("valve", valve, "lash since work", before ? "before" : "after", where);
    }

    /** Whether the shim that is wanted lies among the sizes that the sheet lists. */
    private void shimMade(String valve) {
        Optional<Node> sizes = site.build.sheet().below("choose", "lash shim").filter(n -> n instanceof Node.Fields)
                .flatMap(n -> ((Node.Fields) n).get("sizes"));
        Optional<Value> wanted = tells.value(valve, "lash shim wanted").filter(v -> v.low().isPresent() && v.high().isPresent());
        if (sizes.isEmpty() || wanted.isEmpty()) {
            return;
        }
        double thinnest = Double.POSITIVE_INFINITY;
        double thickest = Double.NEGATIVE_INFINITY;
        List<String> texts = new ArrayList<>();
        if (sizes.get() instanceof Node.Scalar one) {
            texts.add(one.text());
        } else if (sizes.get() instanceof Node.Items items) {
            for (Node item : items.items()) {
                if (item instanceof Node.Scalar one) {
                    texts.add(one.text());
                }
            }
        }
        for (String text : texts) {
            if (Reading.read(text, Dimension.LENGTH, Optional.empty()) instanceof Reading.Read read) {
                thinnest = Math.min(thinnest, read.written().low());
                thickest = Math.max(thickest, read.written().high());
            }
        }
        if (thinnest > thickest) {
            return;
        }
        boolean none = surely(wanted.get().high(), thinnest, true) || surely(wanted.get().low(), thickest, false);
        tells.sayBy("lash shim", valve, "size made", none ? "no" : "yes", wanted);
    }

    // --- hydraulic adjusters

    /** Those of one side beside each other; the sheet may have other ones for the other side. */
    private void set() {
        Optional<List<String>> places = site.places("each lash adjuster");
        if (places.isEmpty()) {
            return;
        }
        String says = "";
        List<Where> where = new ArrayList<>();
        for (String property : List.of("form", "number", "origin", "supplier")) {
            Map<String, Statement> first = new TreeMap<>();
            for (String place : places.get()) {
                Optional<Statement> word = site.word("lash adjuster", place, property).filter(s -> s.told().isEmpty() && !s.says().equals("unknown"));
                Optional<Statement> state = site.word("lash adjuster", place, "state");
                if (word.isEmpty() || state.map(s -> s.says().equals("scrapped")).orElse(false)) {
                    continue;
                }
                Statement mate = first.putIfAbsent(place.contains(" exhaust") ? "exhaust" : "intake", word.get());
                if (mate != null && !Telling.letters(mate.says()).equals(Telling.letters(word.get().says()))) {
                    boolean form = property.equals("form") || property.equals("number");
                    says = form ? "two forms" : says.isEmpty() ? "two makes" : says;
                    where.add(mate.where());
                    where.add(word.get().where());
                } else if (says.isEmpty() && where.isEmpty()) {
                    where.add(word.get().where());
                }
            }
        }
        if (where.isEmpty()) {
            tells.lack("lash adjuster likeness", Place.ENGINE, "lash adjuster form");
            return;
        }
        tells.say("lash adjuster", Place.ENGINE, "likeness", says.isEmpty() ? "alike" : says, where);
    }

    // --- springs and collets

    /** What a reading is held against: a limit where anybody gives one, else its mates where there are such. */
    private void judgedBy(String valve) {
        judgedBy("valve spring", valve, "load judged by", "valve spring seat load", true);
        judgedBy("valve", valve, "depth judged by", "valve recession", false);
        judgedBy("spring retainer", valve, "depth judged by", "spring retainer depth", true);
    }

    private void judgedBy(String of, String valve, String what, String quantity, boolean ofReadings) {
        Optional<Value> read = tells.reading(valve, quantity);
        if (ValveGearQuestions.limited(site, quantity, valve)) {
            if (ofReadings) {
                tells.sayBy(of, valve, what, "limit", read);
            } else {
                tells.say(of, valve, what, "limit", ValveGearQuestions.limits(site, quantity, valve));
            }
        } else if (read.isPresent() && ValveMates.read(site, quantity, valve)) {
            tells.sayBy(of, valve, what, "mates", read);
        }
    }

    /** The rev limit in use, where it lies above the sheet's. */
    static Optional<Statement> raised(Site site) {
        Optional<Statement> asked = site.word("use", Place.ENGINE, "rev limit").filter(s -> s.value().isPresent() && s.value().get().figure());
        Optional<Double> sheet = site.sheet("output", Place.ENGINE, "rev limit").flatMap(Statement::value).map(Written::high);
        return asked.filter(s -> sheet.isPresent() && s.value().get().high() > sheet.get() * (1 + 1e-9));
    }

    /** The speed that the makers of springs and camshaft rate them for; else what can be reckoned; else that nobody answers for it. */
    private void rating() {
        String word = "valve spring speed rating";
        String engine = Place.ENGINE;
        Optional<Statement> asked = site.word("use", engine, "rev limit").filter(s -> s.value().isPresent() && s.value().get().figure());
        if (asked.isEmpty()) {
            tells.lack(word, engine, "use rev limit");
            return;
        }
        double revs = asked.get().value().get().high();
        List<Where> where = new ArrayList<>(List.of(asked.get().where()));
        boolean rated = false;
        boolean low = false;
        for (String quantity : List.of("valve spring rated speed", "camshaft rated speed")) {
            for (Value speed : site.store.of(quantity)) {
                if (speed.told().isEmpty() && speed.low().isPresent() && !Store.untold(speed.at())) {
                    rated = true;
                    low |= speed.low().get().value() < revs * (1 - 1e-9);
                    Differences.join(where, speed.places());
                }
            }
        }
        if (rated) {
            tells.say("valve spring", engine, "speed rating", low ? "too low" : "enough", where);
            return;
        }
        Optional<Value> margin = tells.value(engine, "weakest valve spring margin");
        boolean whole = true;
        for (String valve : site.places("each valve").orElse(List.of())) {
            whole &= tells.value(valve, "valve spring margin against standard").isPresent();
        }
        if (margin.isPresent() && whole) {
            tells.sayBy("valve spring", engine, "speed rating", "reckoned", margin);
            return;
        }
        Optional<Statement> makers = tells.word(List.of("valve spring"), engine, "origin", "maker's");
        if (raised(site).isPresent() && makers.isPresent()) {
            where.add(makers.get().where());
            tells.say("valve spring", engine, "speed rating", "unproved", where);
            return;
        }
        tells.lack(word, engine, "valve spring rated speed");
    }

    private void grooves(String valve) {
        Optional<Statement> collet = form("collet", valve);
        Optional<Statement> stem = form("valve", valve);
        if (collet.isEmpty() || stem.isEmpty()) {
            tells.lack("collet against valve", valve, collet.isEmpty() ? "collet form" : "valve form");
            return;
        }
        tells.say("collet", valve, "against valve", collet.get().says().equals(stem.get().says()) ? "same" : "other",
                List.of(collet.get().where(), stem.get().where()));
    }

    private Optional<Statement> form(String part, String valve) {
        return site.word(part, valve, "form").filter(s -> s.told().isEmpty() && !s.says().equals("unknown"));
    }

    // --- lobes and followers

    /** What the followers of a camshaft meet. Those that were ground together with the lobes are as good as new. */
    private void mates(String camshaft) {
        Optional<Statement> used = tells.word(List.of("cam follower"), camshaft, "state", "kept", "second-hand", "repaired");
        Optional<Statement> follower = used.or(() -> tells.word(List.of("cam follower"), camshaft, "state", "new"));
        Optional<Statement> ground = tells.machined(List.of("cam follower"), camshaft, "grind", "lap");
        Optional<Statement> lobes = ValveGearQuestions.groundCamshaft(tells, camshaft);
        Optional<Statement> state = tells.word(List.of("camshaft"), camshaft, "state", "new", "kept", "second-hand", "repaired");
        if (follower.isEmpty() || state.isEmpty() && lobes.isEmpty()) {
            tells.lack("camshaft mates", camshaft, follower.isEmpty() ? "cam follower state" : "camshaft state");
            return;
        }
        Statement by = lobes.or(() -> state).get();
        boolean fresh = state.map(s -> s.says().equals("new")).orElse(false);
        boolean strange = state.map(s -> s.says().equals("second-hand")).orElse(false)
                || ValveGearQuestions.otherCamshaft(tells, camshaft).isPresent() || follower.get().says().equals("second-hand");
        String says = used.isEmpty() || ground.isPresent() ? "both new" : lobes.isPresent() ? "old on ground" : fresh ? "old on new"
                : strange ? "old on other" : "own lobes";
        if (follower.get().told().isPresent() || by.told().isPresent()) {
            tells.say("camshaft", camshaft, "mates", says, follower.get().told().isPresent() ? follower : Optional.of(by));
        } else {
            tells.say("camshaft", camshaft, "mates", says, List.of(follower.get().where(), by.where()));
        }
    }

    /** The sheet's height is that of its own camshaft, never of one with other lobes or with lobes that were ground again. */
    private void liftJudgedBy(String valve) {
        Optional<Value> height = tells.reading(valve, "cam lobe height");
        boolean own = ValveGearQuestions.otherCamshaft(tells, valve).isEmpty() && ValveGearQuestions.groundCamshaft(tells, valve).isEmpty()
                && ValveGearQuestions.limited(site, "cam lobe height", valve);
        tells.sayBy("cam lobe", valve, "lift judged by", own ? "limit" : "sisters", height);
    }

    // --- pushrods

    /** A screw at the rocker takes up what a pushrod lacks; where faces were cut the sheet's length is no longer the one wanted. */
    private void lengthJudgedBy(String pushrod) {
        Optional<Value> length = tells.reading(pushrod, "pushrod length");
        boolean cut = tells.machined(List.of("head face", "block face", "valve seat"), pushrod, "mill", "grind", "cut").isPresent()
                || tells.word(List.of("pushrod"), pushrod, "origin", ValveGearQuestions.OTHER).isPresent();
        boolean solid = site.sheet("layout", Place.ENGINE, "lash").map(s -> s.says().equals("solid")).orElse(false);
        tells.sayBy("pushrod", pushrod, "length judged by", !cut ? "limit" : solid ? "screw" : "wanted", length);
    }

    // --- camshafts

    private void floatSincePlate(String camshaft) {
        Optional<Statement> work = ValveGearQuestions.plateWork(tells, camshaft);
        if (work.isEmpty()) {
            return;
        }
        List<Where> where = new ArrayList<>(List.of(work.get().where()));
        boolean read = false;
        boolean after = false;
        for (Statement s : site.about("camshaft end float")) {
            if (s.form() == Statement.Form.READ && s.what().isEmpty() && s.told().isEmpty()
                    && site.related(s.at(), camshaft)) {
                read = true;
                after |= !tells.before(s, work.get());
                where.add(s.where());
            }
        }
        if (!read) {
            tells.lack("camshaft float since plate", camshaft, "camshaft end float");
            return;
        }
        tells.say("camshaft", camshaft, "float since plate", after ? "after" : "before", where);
    }

    /** Looked for while the engine was primed, and seen or not. */
    private void oilArrived() {
        Optional<Statement> none = Optional.empty();
        Optional<Statement> seen = Optional.empty();
        boolean again = false;
        for (Statement s : site.build.statements()) {
            boolean looked = s.form() == Statement.Form.SEEN || s.form() == Statement.Form.NOT_SEEN;
            if (looked && s.what().equals("oil seen") && s.told().isEmpty() && List.of("rocker", "camshaft", "cam follower").contains(s.of())) {
                none = s.form() == Statement.Form.NOT_SEEN ? Optional.of(s) : none;
                seen = s.form() == Statement.Form.SEEN ? Optional.of(s) : seen;
                // Dry at first, and oil came when it was primed longer.
                again = s.form() == Statement.Form.SEEN && none.isPresent() && site.store.covers(s.at(), none.get().at());
            }
        }
        tells.say("camshaft", Place.ENGINE, "oil arrived", none.isPresent() && !again ? "no" : "yes", none.isPresent() && !again ? none : seen);
    }

    private static boolean surely(Optional<Estimate> end, double size, boolean below) {
        return end.isPresent() && (below ? end.get().value() + TWICE * end.get().standardUncertainty() < size
                : end.get().value() - TWICE * end.get().standardUncertainty() > size);
    }
}
