package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.facts.Value;
import leadlamp.record.LimitLine;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/**
 * What a record makes a question of in the valve gear, and by what: a part that was read, changed, hurt, moved or brought from
 * elsewhere. Of what nothing is told nothing is said, so that a change of belt is not asked about springs that it never saw.
 */
final class ValveGearQuestions {
    /** Made to another drawing than the part that the sheet speaks of. */
    static final String[] OTHER = {"uprated", "other engine", "home-made"};
    /** The same, and copies of it. */
    static final String[] NOT_MAKERS = {"uprated", "other engine", "home-made", "pattern"};
    private static final String[] CUT = {"cut", "grind", "mill", "turn", "insert", "bore"};
    private static final String[] STRUCK = {"valve struck piston", "timing drive jumped", "timing drive parted", "timed wrong"};
    private static final List<String> CAMSHAFT = List.of("camshaft");
    private static final List<String> SPRING = List.of("valve spring");
    private static final List<String> VALVE = List.of("valve");
    private static final List<String> SEAT = List.of("valve seat");
    private static final List<String> GUIDE = List.of("valve guide");
    private static final List<String> INSERT = List.of("seat insert");
    private static final List<String> RETAINER = List.of("spring retainer");
    private static final List<String> COLLET = List.of("collet");
    private static final List<String> SEAL = List.of("valve stem seal");
    private static final List<String> FOLLOWER = List.of("cam follower");
    private static final List<String> LOBE = List.of("cam lobe");
    private static final List<String> ADJUSTER = List.of("lash adjuster");
    private static final List<String> ROCKER = List.of("rocker");
    private static final List<String> PUSHROD = List.of("pushrod");
    private static final List<String> CAM_CAP = List.of("cam cap");

    private final Telling tells;
    private final Site site;

    private ValveGearQuestions(Telling tells) {
        this.tells = tells;
        this.site = tells.site;
    }

    /** The words, as subject and property, and what each may say. */
    static Map<String, List<String>> names() {
        Map<String, List<String>> names = new TreeMap<>();
        names.put("valve contact in question", List.of("read", "faces cut", "camshaft", "setting", "piston", "valve", "seat", "lift", "trial"));
        names.put("valve meeting in question", List.of("read", "camshaft", "larger valve"));
        names.put("valve seat work", List.of("seat cut", "valve renewed", "insert renewed", "tip ground"));
        names.put("valve guide fit in question", List.of("read", "guide renewed", "second-hand", "rocked"));
        names.put("valve seating in question", List.of("valve told", "valves out", "seat worked", "contact told", "test told"));
        names.put("valve depth in question", List.of("read", "seat cut", "head cut", "valve renewed", "insert renewed"));
        names.put("valve soundness in question", List.of("kept", "second-hand", "looked", "met a piston"));
        names.put("valve margin in question", List.of("read", "ground", "second-hand"));
        names.put("valve runout in question", List.of("read", "second-hand", "met a piston"));
        names.put("valve opening in question", List.of("read"));
        names.put("lash adjuster reach in question", List.of("read", "faces cut", "seat work", "camshaft", "rocker", "pushrod"));
        names.put("lash adjuster priming in question", List.of("told", "cams out"));
        names.put("lash adjuster set in question", List.of("renewed", "second-hand", "hole read", "leak-down read", "form told", "mixed"));
        names.put("valve spring bind in question", List.of("read", "spring", "camshaft", "rocker", "shim", "lift"));
        names.put("valve spring load in question", List.of("read", "second-hand", "spring"));
        names.put("valve spring length in question", List.of("read", "second-hand"));
        names.put("valve spring height in question", List.of("read", "seat cut"));
        names.put("valve spring lean in question", List.of("read", "second-hand"));
        names.put("valve spring revs in question", List.of("rev limit", "camshaft", "rated"));
        names.put("spring retainer gap in question", List.of("read", "guide renewed", "seal", "retainer", "camshaft", "rocker", "lift", "struck"));
        names.put("collet hold in question", List.of("other make", "second-hand"));
        names.put("collet marks in question", List.of("looked"));
        names.put("cam follower lobe in question", List.of("follower told", "looked"));
        names.put("camshaft mates in question", List.of("new lobes", "other lobes", "followers told"));
        names.put("valve setting in question", List.of("heat told", "step told"));
        names.put("cam follower fit in question", List.of("read", "second-hand"));
        names.put("cam follower freedom in question", List.of("looked"));
        names.put("cam lobe lift in question", List.of("read", "second-hand"));
        names.put("cam lobe marks in question", List.of("looked"));
        names.put("rocker change in question", List.of("ratio", "lift", "rocker", "tip looked", "rub looked", "sweep read"));
        names.put("rocker bush in question", List.of("read", "second-hand"));
        names.put("rocker marks in question", List.of("looked"));
        names.put("rocker shaft marks in question", List.of("looked"));
        names.put("pushrod truth in question", List.of("read", "second-hand", "looked"));
        names.put("pushrod size in question", List.of("read"));
        names.put("cam bearing fit in question", List.of("read", "hole seen"));
        names.put("cam cap places in question", List.of("told"));
        names.put("camshaft float in question", List.of("read", "plate renewed"));
        names.put("camshaft crack test", List.of("passed", "failed"));
        names.put("camshaft truth in question", List.of("read", "second-hand", "shock", "seen", "crack test"));
        names.put("camshaft oiling in question", List.of("cams out", "rockers out"));
        return names;
    }

    static void all(Telling tells) {
        ValveGearQuestions question = new ValveGearQuestions(tells);
        for (String cylinder : tells.places("each cylinder", "valve to valve gap")) {
            question.meeting(cylinder);
        }
        for (String valve : tells.places("each valve", "valve piston clearance", "valve stem diameter", "valve spring seat load", "cam lobe height",
                "valve lash")) {
            question.room(valve);
            question.seatWork(valve);
            question.guide(valve);
            question.depth(valve);
            question.soundness(valve);
            question.travel(valve);
            question.load(valve);
            question.retainer(valve);
            question.collet(valve);
            question.follower(valve);
            question.lobe(valve);
            question.rocker(valve);
        }
        for (String adjuster : tells.places("each lash adjuster", "lash adjuster preload")) {
            question.reach(adjuster);
            question.priming(adjuster);
        }
        question.adjusters();
        question.seating();
        question.setting();
        question.revs();
        for (String pushrod : tells.places("each pushrod", "pushrod length", "pushrod runout")) {
            question.pushrod(pushrod);
        }
        for (String bearing : tells.places("each cam bearing", "cam bearing clearance", "cam bearing bore")) {
            question.camBearing(bearing);
        }
        for (String camshaft : tells.places("each camshaft", "camshaft end float")) {
            question.camFloat(camshaft);
            question.camTruth(camshaft);
            question.mates(camshaft);
            tells.say("rocker shaft", camshaft, "marks in question", "looked", tells.looked(List.of("rocker shaft"), camshaft, "stepped", "worn", "grooved")
                    .or(() -> tells.seen(List.of("rocker shaft"), camshaft, "scored", "cracked")));
        }
        tells.say("camshaft", Place.ENGINE, "oiling in question", "cams out", step(tells, "cams fitted"));
        tells.say("camshaft", Place.ENGINE, "oiling in question", "rockers out", step(tells, "rockers fitted"));
    }

    // --- valves, seats, guides

    private void meeting(String cylinder) {
        String what = "meeting in question";
        Optional<Value> gap = tells.value(cylinder, "valve to valve gap");
        tells.sayBy("valve", cylinder, what, "read", gap);
        // Valves that stand parallel and apart, as most do, can only be asked about where the sheet speaks of the room between them.
        if (gap.isEmpty() && limited(site, "valve to valve gap", cylinder)) {
            tells.say("valve", cylinder, what, "camshaft", otherCamshaft(tells, Place.ENGINE));
            tells.say("valve", cylinder, what, "larger valve", tells.word(VALVE, cylinder, "origin", OTHER));
        }
    }

    private void room(String valve) {
        String what = "contact in question";
        tells.sayBy("valve", valve, what, "read", tells.reading(valve, "valve piston clearance", "valve pocket room"));
        tells.say("valve", valve, what, "faces cut", tells.machined(List.of("head face", "block face"), valve, CUT));
        tells.say("valve", valve, what, "camshaft", otherCamshaft(tells, valve).or(() -> groundCamshaft(tells, valve)));
        tells.sayBy("valve", valve, what, "setting", tells.reading(valve, "cam gear setting"));
        tells.say("valve", valve, what, "piston", tells.word(List.of("piston"), valve, "origin", OTHER));
        tells.say("valve", valve, what, "valve", tells.word(VALVE, valve, "origin", OTHER));
        tells.say("valve", valve, what, "seat", tells.machined(SEAT, valve, CUT));
        tells.say("valve", valve, what, "lift", liftOver(valve));
        tells.say("valve", valve, what, "trial", step(tells, "valve room checked"));
    }

    private void seatWork(String valve) {
        String what = "seat work";
        tells.say("valve", valve, what, "seat cut", tells.machined(SEAT, valve, CUT));
        tells.say("valve", valve, what, "valve renewed", tells.word(VALVE, valve, "state", "new", "second-hand"));
        tells.say("valve", valve, what, "insert renewed", tells.word(INSERT, valve, "state", "new", "second-hand"));
        tells.say("valve", valve, what, "tip ground", tells.machined(List.of("valve tip"), valve, "grind", "cut", "hand"));
    }

    private void guide(String valve) {
        String what = "fit in question";
        tells.sayBy("valve guide", valve, what, "read", tells.reading(valve, "valve guide bore", "valve stem diameter", "valve stem clearance"));
        tells.say("valve guide", valve, what, "guide renewed", tells.word(GUIDE, valve, "state", "new")
                .or(() -> tells.machined(GUIDE, valve, "bore", "hone", "drill", "cut")));
        tells.say("valve guide", valve, what, "second-hand", tells.word(VALVE, valve, "state", "second-hand"));
        tells.sayBy("valve guide", valve, what, "rocked", tells.reading(valve, "valve rock"));
    }

    private void seating() {
        String engine = Place.ENGINE;
        String what = "seating in question";
        tells.say("valve", engine, what, "valve told", tells.word(VALVE, engine, "state", "new", "kept", "second-hand", "repaired"));
        tells.say("valve", engine, what, "valves out", step(tells, "valves fitted"));
        tells.say("valve", engine, what, "seat worked", tells.machined(SEAT, engine, "cut", "grind", "lap", "insert"));
        tells.say("valve", engine, what, "contact told", contact(engine));
        tells.say("valve", engine, what, "test told", step(tells, "valve leak tested"));
    }

    private void setting() {
        String what = "setting in question";
        tells.say("valve", Place.ENGINE, what, "step told", step(tells, "lash set"));
        for (Statement s : site.said("valve lash")) {
            if (s.what().equals("state")) {
                tells.say("valve", Place.ENGINE, what, "heat told", Optional.of(s));
                return;
            }
        }
    }

    private Optional<Statement> contact(String valve) {
        return tells.seen(List.of("piston crown", "valve pocket"), valve, "valve print").or(() -> tells.past(STRUCK));
    }

    private void depth(String valve) {
        String what = "depth in question";
        if (limited(site, "valve recession", valve) || ValveMates.read(site, "valve recession", valve)) {
            tells.sayBy("valve", valve, what, "read", tells.reading(valve, "valve recession"));
        }
        // A head whose sheet gives no depth is told by stem height and spring height instead.
        if (limited(site, "valve recession", valve)) {
            tells.say("valve", valve, what, "seat cut", tells.machined(SEAT, valve, CUT));
            tells.say("valve", valve, what, "head cut", tells.machined(List.of("head face"), valve, CUT));
            tells.say("valve", valve, what, "valve renewed", tells.word(VALVE, valve, "state", "new", "second-hand"));
            tells.say("valve", valve, what, "insert renewed", tells.word(INSERT, valve, "state", "new", "second-hand"));
        }
    }

    private void soundness(String valve) {
        Optional<Statement> secondHand = tells.word(VALVE, valve, "state", "second-hand");
        tells.sayBy("valve", valve, "margin in question", "read", tells.reading(valve, "valve margin"));
        tells.say("valve", valve, "margin in question", "ground", tells.machined(VALVE, valve, "grind", "cut", "turn"));
        tells.say("valve", valve, "margin in question", "second-hand", secondHand);
        tells.sayBy("valve", valve, "runout in question", "read", tells.reading(valve, "valve face runout"));
        tells.say("valve", valve, "runout in question", "second-hand", secondHand);
        tells.say("valve", valve, "runout in question", "met a piston", contact(valve));
        String what = "soundness in question";
        tells.say("valve", valve, what, "second-hand", secondHand);
        tells.say("valve", valve, what, "met a piston", contact(valve));
        tells.say("valve", valve, what, "looked", tells.looked(VALVE, valve, "burnt", "dished", "bent", "cracked", "necked", "stepped")
                .or(() -> tells.seen(VALVE, valve, "worn", "scored", "broken", "pitted"))
                .or(() -> tells.seen(List.of("valve tip"), valve, "worn", "dished", "hammered", "broken")));
        // A valve that has held its leak test is neither burnt nor bent.
        if (!proved(valve)) {
            tells.say("valve", valve, what, "kept", tells.word(VALVE, valve, "state", "kept"));
        }
        if (limited(site, "valve lift", valve)) {
            tells.sayBy("valve", valve, "opening in question", "read", tells.reading(valve, "valve lift"));
        }
    }

    private boolean proved(String valve) {
        for (Statement s : site.said("steps")) {
            if (s.what().equals("valve leak tested") && s.says().equals("passed") && s.told().isEmpty() && site.related(s.at(), valve)) {
                return true;
            }
        }
        return false;
    }

    // --- springs and what holds them

    private void travel(String valve) {
        String what = "bind in question";
        tells.sayBy("valve spring", valve, what, "read", tells.reading(valve, "valve spring solid height", "spring bind margin",
                "inner valve spring solid height"));
        tells.say("valve spring", valve, what, "spring", tells.word(SPRING, valve, "origin", NOT_MAKERS));
        tells.say("valve spring", valve, what, "camshaft", otherCamshaft(tells, valve));
        tells.say("valve spring", valve, what, "rocker", tells.word(ROCKER, valve, "origin", OTHER));
        tells.say("valve spring", valve, what, "shim", tells.word(List.of("spring shim"), valve, "state", "new"));
        tells.say("valve spring", valve, what, "lift", liftOver(valve));
    }

    private void load(String valve) {
        Optional<Statement> secondHand = tells.word(SPRING, valve, "state", "second-hand");
        if (limited(site, "valve spring seat load", valve) || ValveMates.read(site, "valve spring seat load", valve)) {
            tells.sayBy("valve spring", valve, "load in question", "read", tells.reading(valve, "valve spring seat load"));
        }
        if (limited(site, "valve spring seat load", valve)) {
            tells.say("valve spring", valve, "load in question", "second-hand", secondHand);
            tells.say("valve spring", valve, "load in question", "spring", tells.word(SPRING, valve, "origin", NOT_MAKERS));
        }
        if (limited(site, "valve spring free length", valve)) {
            tells.sayBy("valve spring", valve, "length in question", "read", tells.reading(valve, "valve spring free length"));
            tells.say("valve spring", valve, "length in question", "second-hand", secondHand);
        }
        if (limited(site, "valve spring installed height", valve)) {
            tells.sayBy("valve spring", valve, "height in question", "read", tells.reading(valve, "valve spring installed height"));
            tells.say("valve spring", valve, "height in question", "seat cut", tells.machined(SEAT, valve, CUT));
        }
        tells.sayBy("valve spring", valve, "lean in question", "read", tells.reading(valve, "valve spring out of square"));
        tells.say("valve spring", valve, "lean in question", "second-hand", secondHand);
    }

    private void revs() {
        String engine = Place.ENGINE;
        String what = "revs in question";
        tells.say("valve spring", engine, what, "rev limit", ValveGearWords.raised(site));
        tells.say("valve spring", engine, what, "camshaft", otherCamshaft(tells, engine));
        tells.sayBy("valve spring", engine, what, "rated", tells.reading(engine, "valve spring rated speed", "camshaft rated speed"));
    }

    private void retainer(String valve) {
        String what = "gap in question";
        tells.sayBy("spring retainer", valve, what, "read", tells.reading(valve, "spring retainer height over seal", "retainer to seal gap"));
        tells.say("spring retainer", valve, what, "guide renewed", tells.word(GUIDE, valve, "state", "new"));
        tells.say("spring retainer", valve, what, "seal", tells.word(SEAL, valve, "origin", NOT_MAKERS));
        tells.say("spring retainer", valve, what, "retainer", tells.word(RETAINER, valve, "origin", NOT_MAKERS)
                .or(() -> tells.word(COLLET, valve, "origin", NOT_MAKERS)));
        tells.say("spring retainer", valve, what, "camshaft", otherCamshaft(tells, valve));
        tells.say("spring retainer", valve, what, "rocker", tells.word(ROCKER, valve, "origin", OTHER));
        tells.say("spring retainer", valve, what, "lift", liftOver(valve));
        tells.say("spring retainer", valve, what, "struck", tells.seen(SEAL, valve, "dented", "broken", "hammered"));
    }

    private void collet(String valve) {
        String what = "hold in question";
        tells.say("collet", valve, what, "other make", tells.word(COLLET, valve, "origin", NOT_MAKERS)
                .or(() -> tells.word(RETAINER, valve, "origin", NOT_MAKERS)).or(() -> tells.word(VALVE, valve, "origin", NOT_MAKERS)));
        tells.say("collet", valve, what, "second-hand", tells.word(COLLET, valve, "state", "second-hand"));
        tells.say("collet", valve, "marks in question", "looked", tells.looked(COLLET, valve, "worn", "stepped", "cracked", "wrong way round", "rubs")
                .or(() -> tells.looked(RETAINER, valve, "cracked", "pulled through", "worn"))
                .or(() -> tells.seen(COLLET, valve, "broken", "pulled through"))
                .or(() -> tells.seen(RETAINER, valve, "broken", "stepped", "bent")));
    }

    // --- lobes, followers, rockers, pushrods

    /** Only where something slides on the lobe: a roller may run on a new lobe, a flat face may not. */
    private void follower(String valve) {
        String of = "cam follower";
        if (slides(valve)) {
            tells.say(of, valve, "lobe in question", "follower told", tells.word(FOLLOWER, valve, "state", "kept", "second-hand", "repaired"));
            tells.say(of, valve, "lobe in question", "looked", tells.seen(FOLLOWER, valve, "worn", "dished"));
        }
        tells.sayBy(of, valve, "fit in question", "read", tells.reading(valve, "cam follower bore", "cam follower diameter", "follower clearance"));
        tells.say(of, valve, "fit in question", "second-hand", tells.word(FOLLOWER, valve, "state", "second-hand"));
        tells.say(of, valve, "lobe in question", "looked", tells.seen(FOLLOWER, valve, "pitted", "scuffed", "not turning", "cracked", "broken", "scored"));
        tells.say(of, valve, "freedom in question", "looked", tells.looked(FOLLOWER, valve, "sticks", "tight")
                .or(() -> tells.seen(FOLLOWER, valve, "rough turning", "play")));
    }

    private void mates(String camshaft) {
        if (slides(camshaft)) {
            String what = "mates in question";
            tells.say("camshaft", camshaft, what, "new lobes", tells.word(CAMSHAFT, camshaft, "state", "new").or(() -> groundCamshaft(tells, camshaft)));
            tells.say("camshaft", camshaft, what, "other lobes", tells.word(CAMSHAFT, camshaft, "state", "second-hand")
                    .or(() -> otherCamshaft(tells, camshaft)));
            tells.say("camshaft", camshaft, what, "followers told", tells.word(FOLLOWER, camshaft, "state", "new", "kept", "second-hand", "repaired"));
        }
    }

    private boolean slides(String place) {
        Optional<Statement> form = tells.word(FOLLOWER, place, "form", "flat", "roller");
        Optional<Statement> sheet = site.sheet("layout", Place.ENGINE, "followers");
        return form.or(() -> sheet).map(s -> s.says().equals("flat")).orElse(false);
    }

    private void lobe(String valve) {
        boolean own = otherCamshaft(tells, valve).isEmpty() && groundCamshaft(tells, valve).isEmpty() && limited(site, "cam lobe height", valve);
        if (own || ValveMates.read(site, "cam lobe height", valve)) {
            tells.sayBy("cam lobe", valve, "lift in question", "read", tells.reading(valve, "cam lobe height"));
        }
        tells.say("cam lobe", valve, "lift in question", "second-hand", tells.word(CAMSHAFT, valve, "state", "second-hand"));
        tells.say("cam lobe", valve, "marks in question", "looked", tells.looked(LOBE, valve, "worn", "pitted", "scuffed", "edge wear", "cracked")
                .or(() -> tells.seen(LOBE, valve, "scored", "rusty", "broken", "dented")));
    }

    private void rocker(String valve) {
        boolean pushrods = site.sheet("layout", Place.ENGINE, "valve gear").map(s -> s.says().equals("pushrod")).orElse(false);
        boolean rockers = pushrods || site.sheet("layout", Place.ENGINE, "rockers").map(s -> s.says().equals("fitted")).orElse(false);
        if (!rockers) {
            return;
        }
        String change = "change in question";
        tells.sayBy("rocker", valve, change, "ratio", tells.reading(valve, "rocker ratio"));
        tells.say("rocker", valve, change, "lift", liftOver(valve).or(() -> otherCamshaft(tells, valve)));
        tells.say("rocker", valve, change, "rocker", tells.word(ROCKER, valve, "origin", OTHER));
        tells.say("rocker", valve, change, "tip looked", tells.looked(List.of("valve tip"), valve, "contact misplaced"));
        tells.say("rocker", valve, change, "rub looked", tells.looked(List.of("rocker", "pushrod"), valve, "rubs"));
        tells.sayBy("rocker", valve, change, "sweep read", tells.reading(valve, "valve tip sweep width"));
        String bush = "bush in question";
        tells.sayBy("rocker", valve, bush, "read", tells.reading(valve, "rocker bore", "rocker shaft diameter", "rocker clearance"));
        tells.say("rocker", valve, bush, "second-hand", tells.word(List.of("rocker", "rocker shaft"), valve, "state", "second-hand"));
        tells.say("rocker", valve, "marks in question", "looked", tells.looked(ROCKER, valve, "worn", "grooved")
                .or(() -> tells.seen(ROCKER, valve, "pitted", "scuffed", "cracked", "broken", "bent")));
    }

    private void pushrod(String pushrod) {
        String what = "truth in question";
        tells.sayBy("pushrod", pushrod, what, "read", tells.reading(pushrod, "pushrod runout"));
        tells.say("pushrod", pushrod, what, "second-hand", tells.word(PUSHROD, pushrod, "state", "second-hand"));
        tells.say("pushrod", pushrod, what, "looked", tells.looked(PUSHROD, pushrod, "bent", "worn", "blocked")
                .or(() -> tells.seen(PUSHROD, pushrod, "cracked", "broken")));
        if (limited(site, "pushrod length", pushrod)) {
            tells.sayBy("pushrod", pushrod, "size in question", "read", tells.reading(pushrod, "pushrod length"));
        }
    }

    // --- hydraulic adjusters

    private void reach(String adjuster) {
        String what = "reach in question";
        tells.sayBy("lash adjuster", adjuster, what, "read", tells.reading(adjuster, "lash adjuster preload"));
        boolean inBlock = site.sheet("layout", Place.ENGINE, "valve gear").map(s -> s.says().equals("pushrod")).orElse(false);
        if (inBlock) {
            // Only a camshaft that stays in the block feels what head and block lose.
            tells.say("lash adjuster", adjuster, what, "faces cut", tells.machined(List.of("head face", "block face"), adjuster, CUT));
            tells.say("lash adjuster", adjuster, what, "pushrod", tells.word(PUSHROD, adjuster, "origin", NOT_MAKERS));
        }
        tells.say("lash adjuster", adjuster, what, "seat work", tells.machined(SEAT, adjuster, CUT)
                .or(() -> tells.word(VALVE, adjuster, "origin", NOT_MAKERS)));
        tells.say("lash adjuster", adjuster, what, "camshaft", otherCamshaft(tells, adjuster).or(() -> groundCamshaft(tells, adjuster)));
        tells.say("lash adjuster", adjuster, what, "rocker", tells.word(ROCKER, adjuster, "origin", OTHER));
    }

    private void priming(String adjuster) {
        String what = "priming in question";
        tells.say("lash adjuster", adjuster, what, "told", tells.word(ADJUSTER, adjuster, "state", "new", "kept", "second-hand", "repaired"));
        tells.say("lash adjuster", adjuster, what, "cams out", step(tells, "cams fitted"));
    }

    private void adjusters() {
        boolean hydraulic = site.sheet("layout", Place.ENGINE, "lash").map(s -> s.says().equals("hydraulic")).orElse(false);
        if (!hydraulic) {
            return;
        }
        String of = "lash adjuster";
        String what = "set in question";
        String engine = Place.ENGINE;
        tells.say(of, engine, what, "renewed", tells.word(ADJUSTER, engine, "state", "new"));
        tells.say(of, engine, what, "second-hand", tells.word(ADJUSTER, engine, "state", "second-hand"));
        tells.sayBy(of, engine, what, "hole read", tells.reading(engine, "lash adjuster bleed hole"));
        tells.sayBy(of, engine, what, "leak-down read", tells.reading(engine, "lash adjuster leak-down time"));
        tells.say(of, engine, what, "form told", tells.word(ADJUSTER, engine, "form"));
        tells.say(of, engine, what, "mixed", tells.seen(ADJUSTER, engine, "mixed places"));
    }

    // --- camshafts

    private void camBearing(String bearing) {
        String what = "fit in question";
        tells.sayBy("cam bearing", bearing, what, "read", tells.reading(bearing, "cam bearing clearance", "cam bearing bore",
                "camshaft journal diameter"));
        tells.say("cam bearing", bearing, what, "hole seen", tells.seen(List.of("cam bearing"), bearing, "hole covered",
                "scored", "scuffed", "wiped", "cracked"));
        tells.say("cam cap", bearing, "places in question", "told", tells.word(CAM_CAP, bearing, "state", "kept", "new", "second-hand", "repaired")
                .or(() -> tells.seen(CAM_CAP, bearing, "mixed places", "wrong way round", "cracked", "broken")));
    }

    private void camFloat(String camshaft) {
        String what = "float in question";
        tells.sayBy("camshaft", camshaft, what, "read", tells.reading(camshaft, "camshaft end float"));
        tells.say("camshaft", camshaft, what, "plate renewed", plateWork(tells, camshaft));
    }

    /** A camshaft that is looked at and whole makes no question; one that came from elsewhere or through a blow does. */
    private void camTruth(String camshaft) {
        String what = "truth in question";
        tells.sayBy("camshaft", camshaft, what, "read", tells.reading(camshaft, "camshaft runout"));
        tells.say("camshaft", camshaft, what, "second-hand", tells.word(CAMSHAFT, camshaft, "state", "second-hand"));
        if (tells.word(CAMSHAFT, camshaft, "state", "new").isEmpty()) {
            tells.say("camshaft", camshaft, what, "shock", tells.past("timing drive parted", "drive part seized"));
        }
        tells.say("camshaft", camshaft, what, "seen", tells.seen(CAMSHAFT, camshaft, "bent", "cracked", "broken", "tight"));
        crackTest(camshaft);
    }

    /** What a camshaft's test came to; one that goes in new is another. */
    private void crackTest(String camshaft) {
        for (Statement s : site.said("steps")) {
            boolean its = s.at().equals("camshaft") || s.at().equals("camshaft " + camshaft);
            if (!s.what().equals("crack tested") || !its || s.told().isPresent() || tells.word(CAMSHAFT, camshaft, "state", "new").isPresent()) {
                continue;
            }
            if (s.says().equals("failed")) {
                tells.say("camshaft", camshaft, "crack test", "failed", Optional.of(s));
                tells.say("camshaft", camshaft, "truth in question", "crack test", Optional.of(s));
            } else if (s.says().equals("passed")) {
                tells.say("camshaft", camshaft, "crack test", "passed", Optional.of(s));
            }
        }
    }

    static Optional<Statement> plateWork(Telling tells, String camshaft) {
        return tells.word(List.of("cam thrust plate"), camshaft, "state", "new", "second-hand", "repaired")
                .or(() -> tells.machined(List.of("cam thrust plate"), camshaft, "grind", "lap", "mill", "hand", "turn"));
    }

    // --- what several ask

    /** A camshaft with lobes of another drawing than the sheet's. */
    static Optional<Statement> otherCamshaft(Telling tells, String place) {
        return tells.word(CAMSHAFT, place, "origin", OTHER);
    }

    /** A camshaft whose lobes were ground again, by which it loses base circle. */
    static Optional<Statement> groundCamshaft(Telling tells, String place) {
        return tells.machined(List.of("camshaft", "cam lobe"), place, "grind");
    }

    private Optional<Statement> liftOver(String valve) {
        return ValveGear.liftOver(site, valve);
    }

    /** A step of the work that the record speaks of as done, failed, next or planned. */
    static Optional<Statement> step(Telling tells, String step) {
        for (Statement s : tells.site.said("steps")) {
            if (s.what().equals(step) && !s.says().equals("planned")) {
                return Optional.of(s);
            }
        }
        return Optional.empty();
    }

    /** Whether sheet or supplier gives a quantity a limit at a place. */
    static boolean limited(Site site, String quantity, String place) {
        return !limits(site, quantity, place).isEmpty();
    }

    /** The lines of sheet and supplier that give a quantity a limit at a place. */
    static List<Where> limits(Site site, String quantity, String place) {
        List<Where> where = new ArrayList<>();
        for (List<LimitLine> lines : List.of(site.build.sheet().limits(), site.build.limits())) {
            for (LimitLine line : lines) {
                if (line.quantity().equals(quantity) && (line.least().isPresent() || line.most().isPresent())
                        && (line.at().isEmpty() || site.related(line.at(), place))) {
                    where.add(line.line());
                }
            }
        }
        return where;
    }
}
