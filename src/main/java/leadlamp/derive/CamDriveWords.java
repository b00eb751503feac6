package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.calc.Drives;
import leadlamp.facts.Value;
import leadlamp.quantity.Estimate;
import leadlamp.record.LimitLine;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.words.Part;

/**
 * Words of the cam drive: what a record makes a question of, and what was seen or told of parts that the sheet's routes name. A part
 * of a route is asked of by its whole name (`belt idler low`), while the record tells of it where it stands (`low`).
 */
final class CamDriveWords {
    private static final double TWICE = 2;
    /** Turns after which paint can serve as a proof: those of one round of the cams. */
    private static final double ONE_ROUND = 2;
    private static final String BELT = "timing belt";
    private static final String OLD_BELT = "old timing belt";
    private static final String CHAIN = "timing chain";
    private static final String DAMPER = "crank damper";
    private static final String COMPANION = "belt companion";
    private static final String TENSIONER = "drive tensioner";
    private static final String GEAR = "drive gear";
    private static final String SHAFT = "timed shaft";
    private static final String DRIVE = "timing drive";
    private static final List<String> RUN = List.of("kept", "second-hand", "repaired", "there");
    private static final List<String> GONE = List.of("missing", "deleted");
    private static final List<String> YES_NO = List.of("yes", "no");
    /** States of a part that is the same one that was looked at when it came in. */
    private static final List<String> SAME = List.of("kept", "there");
    /** What no later look takes away from a part that stays and was not worked on. */
    private static final List<String> STAYS = List.of("cracked", "broken", "bent", "stepped", "worn", "teeth damaged", "edge wear", "frayed", "torn",
            "hard", "rubber lost", "melted");
    private static final List<String> BEARING_SIGNS = List.of("noise", "tight", "cracked", "broken", "worn", "heat colour");
    private static final List<String> WEEP_SIGNS = List.of("leak", "wet", "coolant", "salt crust");

    private final Telling tells;
    private final Site site;
    private final Optional<HowFar> howFar;

    private CamDriveWords(Telling tells) {
        this.tells = tells;
        this.site = tells.site;
        this.howFar = site.howFar();
    }

    /** The words, as subject and property, and what each may say. */
    static Map<String, List<String>> names() {
        Map<String, List<String>> names = new TreeMap<>();
        names.put("cam gear seat in question", List.of("home-made", "looked"));
        names.put("cam gear seat", List.of("home", "gap at face"));
        names.put("cam gear clamp", List.of("sound", "oil", "moved"));
        for (String part : List.of("cam gear pin", "cam phaser", "crank nose", "crank key", "crank gear", "friction washer", BELT, OLD_BELT, "belt cover",
                "belt guide plate", "locking pin")) {
            names.put(part + " shows", List.of("sound", "new", "kinked", "cracked", "broken", "bent", "rubs", "edge wear", "teeth damaged",
                    "cut away", "fretting", "hammered", "play", "oil", "stepped", "worn", "witness mark", "frayed", "torn", "soft", "hard", "rubber lost",
                    "melted", "burnt"));
        }
        names.put("timing belt distance against sheet", List.of("inside", "over"));
        names.put("drive tensioner firm", List.of("holds", "soft", "sticks", "cracked", "broken"));
        names.put("camshaft timing proof", List.of("measured", "left out", "failed", "not proved", "before the drive"));
        names.put("camshaft stands as set", YES_NO);
        names.put("crank key in question", List.of("kept", "looked", "missing"));
        names.put("joint holds crank gear", List.of("yes"));
        names.put("joint friction washer", List.of("wanted", "not listed"));
        names.put("joint grip limit", List.of("given", "none"));
        names.put("timing mark in question", List.of("read", "ring on rubber", "slipped"));
        names.put("crank damper in question", List.of("kept", "looked"));
        names.put("crank damper ring", List.of("rubber", "fluid", "solid"));
        names.put("crank damper runout limit", List.of("given", "none"));
        names.put("timing belt wetting", List.of("oil", "coolant", "fuel", "wet"));
        names.put("timing belt leak source", List.of("renewed", "kept"));
        names.put("timing belt bath", List.of("oil"));
        names.put("old timing belt width limit", List.of("given", "none"));
        names.put("timing belt tension in question", List.of("note", "deflection", "force", "heat"));
        names.put("timing belt tension by", List.of("meter", "note"));
        names.put("timing belt set at", List.of("as sheet", "hot", "cold", "warm"));
        names.put("timing belt make in question", List.of("read", "not the maker's"));
        names.put("timing belt teeth against sheet", List.of("same", "other"));
        names.put("timing belt form against gears", List.of("same", "other"));
        names.put("belt companion there", YES_NO);
        names.put("belt companion roll in question", List.of("kept", "looked"));
        names.put("belt companion role", List.of("roller", "pump"));
        names.put("belt companion turning", List.of("even", "new", "rough turning", "play", "noise", "tight", "cracked", "broken", "worn",
                "heat colour"));
        names.put("belt companion weep", List.of("dry", "new", "weeps"));
        names.put("drive tensioner travel in question", List.of("window", "travel", "pointer"));
        names.put("drive tensioner set", List.of("pointer right", "pointer off", "by extension"));
        names.put("drive tensioner works", List.of("fixed", "spring", "ratchet", "sealed", "oil-fed", "untold"));
        names.put("drive tensioner seal", List.of("dry", "new", "leaks"));
        names.put("drive tensioner release", List.of("wanted", "not wanted"));
        names.put("drive tensioner released", List.of("yes", "left out", "before the drive"));
        names.put("drive tensioner sink limit", List.of("given", "none"));
        names.put("timing drive paint", List.of("meets", "off", "off and moved"));
        names.put("timing drive paint comes back", List.of("every round", "seldom"));
        names.put("timing drive proof", List.of("fixed marks", "measured", "paint alone"));
        names.put("timing drive marks", List.of("meet", "off", "measured"));
        names.put("timing drive first turn", List.of("by hand", "by starter", "hard stop", "before the drive"));
        names.put("camshaft grind", List.of("as sheet", "other"));
        names.put("camshaft measured", List.of("yes", "no"));
        names.put("camshaft timing in question", List.of("face cut", "gasket", "cam changed", "gear changed"));
        names.put("valve room in question", List.of("cams moved since"));
        names.put("cam phaser in question", List.of("told"));
        names.put("timed shaft in question", List.of("told"));
        names.put("cam phaser lock", List.of("locked", "unlocked"));
        names.put("cam phaser play limit", List.of("given", "none"));
        names.put("timing chain growth in question", List.of("kept", "read"));
        names.put("timing chain lag", List.of("reckoned", "not reckoned"));
        names.put("drive gear teeth in question", List.of("new belt", "new chain"));
        names.put("drive gear teeth", List.of("even", "teeth damaged", "worn", "pitted", "corroded", "broken", "cracked", "grooved", "scored", "stepped"));
        names.put("timed shaft role", List.of("balance shaft", "other"));
        names.put("timed shaft marks", List.of("meet", "off", "out"));
        names.put("balance shaft out", List.of("yes"));
        names.put("balance shaft mate", List.of("still turning", "out", "none"));
        names.put("balance shaft turns the pump", List.of("yes", "no"));
        names.put("chain guide wear in question", List.of("kept", "looked", "read"));
        names.put("chain guide groove", List.of("none", "read"));
        names.put("joining link in question", List.of("told"));
        names.put("joining link spread limit", List.of("given", "none"));
        return names;
    }

    static void all(Telling tells) {
        CamDriveWords words = new CamDriveWords(tells);
        for (String gear : tells.places("each cam gear with a pin", "cam gear pin length")) {
            words.seat(gear);
            words.shows("cam gear pin", gear, false, List.of("cracked", "broken"), "bent", "stepped", "hammered", "worn");
        }
        words.formed("each adjustable cam gear", "adjustable").forEach(words::clamp);
        words.crankKey();
        words.shows("locking pin", Place.ENGINE, false, List.of("bent"), "broken", "cracked", "worn");
        words.crankJoint();
        words.damper();
        for (String belt : words.site.places("each belt drive").orElse(List.of())) {
            words.bath(belt);
            words.shows(BELT, belt, false, List.of("kinked", "cracked", "edge wear", "teeth damaged"), "frayed", "torn", "soft", "hard", "rubber lost", "melted");
            words.distance(belt);
            words.tension(belt);
            words.make(belt);
        }
        for (String belt : words.site.places("each dry belt").orElse(List.of())) {
            words.wetting(belt);
            words.shows("belt cover", belt, true, List.of("cut away", "cracked"), "broken", "torn", "melted", "rubs", "burnt");
        }
        for (String plate : words.site.places("each guide plate").orElse(List.of())) {
            words.shows("belt guide plate", plate, true, List.of("rubs", "bent"), "cracked", "broken");
        }
        words.site.places("each belt companion").orElse(List.of()).forEach(words::companion);
        words.site.places("each tensioner").orElse(List.of()).forEach(words::tensioner);
        words.site.places("each timing drive").orElse(List.of()).forEach(words::proof);
        tells.places("each camshaft", "camshaft lobe centre").forEach(words::camshaft);
        words.valveRoom();
        words.phasers();
        words.site.places("each chain drive").orElse(List.of()).forEach(words::chain);
        words.site.places("each gear on a shaft").orElse(List.of()).forEach(words::gear);
        words.site.places("each timed shaft").orElse(List.of()).forEach(words::timedShaft);
        words.balanceShafts();
    }

    // --- what places the gears

    private void seat(String gear) {
        String what = "seat in question";
        tells.say("cam gear", gear, what, "home-made", tells.word(List.of("cam gear pin"), gear, "origin", "home-made"));
        Optional<Statement> gap = look("cam gear", gear, "gap at face");
        tells.say("cam gear", gear, what, "looked", gap);
        tells.say("cam gear", gear, "seat", isSeen(gap) ? "gap at face" : "home", gap);
        if (gap.isEmpty()) {
            tells.lack("cam gear seat", gear, "cam gear gap at face");
        }
    }

    /** Rim and hub of an adjustable gear as they go together: oil that was found there and wiped off is no fault. */
    private void clamp(String gear) {
        Optional<Statement> oil = look("cam gear", gear, "oil").or(() -> look("adjustable cam gear", gear, "oil"));
        Optional<Statement> moved = look("cam gear", gear, "moved").or(() -> look("adjustable cam gear", gear, "moved"));
        if (isSeen(oil) || isSeen(moved)) {
            tells.say("cam gear", gear, "clamp", isSeen(moved) ? "moved" : "oil", isSeen(moved) ? moved : oil);
        } else if (oil.isPresent() && moved.isPresent()) {
            tells.say("cam gear", gear, "clamp", "sound", List.of(oil.get().where(), moved.get().where()));
        } else {
            lackSigns("cam gear clamp", gear, "cam gear", oil, "oil", moved, "moved");
        }
    }

    /**
     * What a part shows as it goes together. What was found on the one that came out is no fault of a new one, and a look at the old
     * one proves nothing of it.
     */
    private void shows(String part, String at, boolean newIsSound, List<String> signs, String... more) {
        String named = part.equals(BELT) ? belt(at) : part;
        Optional<Statement> state = state(named, at);
        List<Where> looked = new ArrayList<>();
        List<String> lacks = new ArrayList<>();
        List<String> all = new ArrayList<>(signs);
        all.addAll(List.of(more));
        for (String sign : all) {
            Optional<Statement> look = shown(named, at, sign, state);
            if (isSeen(look)) {
                tells.say(part, at, "shows", sign, look);
                return;
            }
            look.ifPresent(s -> looked.add(s.where()));
            if (look.isEmpty() && signs.contains(sign)) {
                lacks.add(named + " " + sign);
            }
        }
        if (fresh(state).isPresent() && newIsSound) {
            tells.say(part, at, "shows", "new", state);
        } else if (lacks.isEmpty()) {
            tells.say(part, at, "shows", "sound", looked);
        } else {
            tells.lack(part + " shows", at, lacks.toArray(new String[0]));
        }
    }

    /**
     * The look that tells of a sign as the part goes together. Of one that stays, what never heals counts whenever it was seen; of one
     * that was worked on, what was found before counts no more.
     */
    private Optional<Statement> shown(String part, String at, String sign, Optional<Statement> state) {
        boolean same = state.filter(s -> SAME.contains(s.says())).isPresent();
        Optional<Statement> stays = same && STAYS.contains(sign)
                ? ever(part.equals(BELT) ? List.of(part, OLD_BELT) : List.of(part), at, sign) : Optional.empty();
        if (stays.isPresent()) {
            return stays;
        }
        boolean mended = state.filter(s -> s.says().equals("repaired")).isPresent();
        return fresh(state).isPresent() || mended ? look(part, at, sign) : lookAtAnyTime(part, at, sign);
    }

    private static Optional<Statement> fresh(Optional<Statement> state) {
        return state.filter(s -> s.says().equals("new") || s.says().equals("ready"));
    }

    /** How far a belt that stays has run, beside what the sheet lets it run. */
    private void distance(String belt) {
        Optional<Statement> run = site.word(belt(belt), belt, "distance").filter(s -> s.value().isPresent());
        Optional<Statement> most = DriveLines.line(site, belt, "change after distance").filter(s -> s.value().isPresent());
        boolean stays = state(belt(belt), belt).filter(s -> RUN.contains(s.says())).isPresent();
        if (stays && run.isPresent() && most.isPresent()) {
            boolean over = run.get().value().get().low() > most.get().value().get().high();
            tells.say(BELT, belt, "distance against sheet", over ? "over" : "inside", run.get().told().orElse(""),
                    List.of(run.get().where(), most.get().where()));
        }
    }

    private void crankKey() {
        String engine = Place.ENGINE;
        // A belt is changed without the gear coming off; the key is a question where it went on again in this build.
        Optional<Statement> fitted = site.word("steps", engine, "crank gear fitted").filter(s -> !s.says().equals("planned"));
        tells.say("crank key", engine, "in question", "kept", fitted.flatMap(f -> tells.word(List.of("crank key"), engine, "state",
                RUN.toArray(new String[0]))));
        tells.say("crank key", engine, "in question", "looked", tells.looked(List.of("crank key", "crank nose"), engine, "hammered", "fretting"));
        tells.say("crank key", engine, "in question", "missing", tells.word(List.of("crank key"), engine, "state", "missing"));
        tells.say("crank key", engine, "in question", "looked", tells.seen(List.of("crank gear", "crank key", "crank nose"), engine, "fretting", "hammered",
                "play", "witness mark", "cracked", "broken", "bent", "stepped", "worn"));
        shows("crank key", engine, true, List.of("hammered"), "cracked", "broken", "bent", "stepped", "worn");
        Optional<Statement> whole = Optional.empty();
        String shows = "sound";
        for (String sign : List.of("witness mark", "fretting", "hammered", "play", "cracked")) {
            Optional<Statement> look = shown("crank gear", engine, sign, state("crank gear", engine));
            if (isSeen(look)) {
                shows = sign;
                whole = look;
                break;
            }
            whole = whole.isPresent() ? whole : look;
        }
        tells.say("crank gear", engine, "shows", shows, whole);
        boolean otherShaft = tells.word(List.of("crankshaft"), engine, "state", "new", "second-hand").isPresent()
                || tells.machined(List.of("crank nose"), engine, "turn", "grind", "weld", "bore", "mill").isPresent();
        nose(otherShaft);
        shows("friction washer", engine, false, List.of("oil"));
    }

    /** The nose of the shaft that goes in: what was found on another one, or before it was repaired, is past. */
    private void nose(boolean other) {
        String engine = Place.ENGINE;
        String part = "crank nose";
        Optional<Statement> fretting = other ? look(part, engine, "fretting") : lookAtAnyTime(part, engine, "fretting");
        Optional<Statement> hammered = other ? look(part, engine, "hammered") : lookAtAnyTime(part, engine, "hammered");
        Optional<Statement> hurt = Optional.empty();
        for (String sign : List.of("cracked", "broken", "worn", "stepped")) {
            Optional<Statement> look = other ? look(part, engine, sign) : lookAtAnyTime(part, engine, sign);
            hurt = hurt.or(() -> look.filter(s -> s.form() == Statement.Form.SEEN));
        }
        if (isSeen(fretting) || isSeen(hammered) || hurt.isPresent()) {
            Optional<Statement> sign = isSeen(hammered) ? hammered : isSeen(fretting) ? fretting : hurt;
            tells.say(part, engine, "shows", sign.get().what(), sign);
        } else if (fretting.isPresent() && hammered.isPresent()) {
            tells.say(part, engine, "shows", "sound", List.of(fretting.get().where(), hammered.get().where()));
        } else {
            lackSigns("crank nose shows", engine, part, fretting, "fretting", hammered, "hammered");
        }
    }

    /** The joint whose clamp holds the crank gear: the one that the sheet's line of the gear names, else the one named after it. */
    private void crankJoint() {
        Optional<Statement> bolt = site.sheet("crank gear", Place.ENGINE, "bolt");
        for (String joint : Joints.joints(site, "each joint with a torque")) {
            boolean named = bolt.isPresent() ? bolt.get().says().equals(joint)
                    : joint.startsWith("crank pulley to") || joint.startsWith("crank gear to") || joint.startsWith("crank damper to");
            if (named) {
                List<Where> where = bolt.map(b -> List.of(b.where())).orElse(List.of());
                tells.say("joint", joint, "holds crank gear", "yes", where);
                Optional<Statement> washer = site.sheet("friction washer", Place.ENGINE, "renew always");
                tells.say("joint", joint, "friction washer", washer.isPresent() ? "wanted" : "not listed", washer.map(w -> List.of(w.where()))
                        .orElse(where));
                limit("joint", joint, "grip limit", "crank pulley grip");
            }
        }
    }

    private void damper() {
        String engine = Place.ENGINE;
        Optional<Statement> state = state(DAMPER, engine).filter(s -> RUN.contains(s.says()));
        Optional<Statement> form = site.word(DAMPER, engine, "form").filter(s -> !s.says().equals("unknown"))
                .or(() -> site.sheet("layout", engine, DAMPER));
        String ring = form.map(Statement::says).orElse("rubber");
        tells.say(DAMPER, engine, "in question", "kept", state);
        for (String sign : List.of("cracked", "soft", "moved", "dented", "leak", "torn", "hard", "broken")) {
            Optional<Statement> look = look(DAMPER, engine, sign);
            if (look.isPresent()) {
                tells.say(DAMPER, engine, "in question", "looked", look);
                break;
            }
        }
        tells.say(DAMPER, engine, "ring", ring, form.or(() -> state).map(s -> List.of(s.where())).orElse(List.of()));
        limit(DAMPER, engine, "runout limit", "crank damper runout");
        tells.sayBy("timing mark", engine, "in question", "read", tells.reading(engine, "timing mark reading", "timing mark error",
                "crankshaft stop reading before"));
        if (ring.equals("rubber")) {
            tells.say("timing mark", engine, "in question", "ring on rubber", state);
        }
        tells.say("timing mark", engine, "in question", "slipped", tells.seen(List.of(DAMPER), engine, "moved", "witness mark")
                .or(() -> tells.past("damper slipped")));
    }

    // --- belts

    private void bath(String belt) {
        tells.say(BELT, belt, "bath", "oil", DriveLines.line(site, belt, "runs").filter(s -> s.says().equals("in oil")));
        limit(OLD_BELT, belt, "width limit", "old timing belt width");
        List<Where> looked = new ArrayList<>();
        List<String> lacks = new ArrayList<>();
        for (String sign : List.of("cracked", "soft", "rubber lost", "frayed", "torn", "teeth damaged")) {
            Optional<Statement> look = lookAtAnyTime(OLD_BELT, belt, sign).or(() -> asFound(BELT, belt, sign));
            if (isSeen(look)) {
                tells.say(OLD_BELT, belt, "shows", sign, look);
                return;
            }
            look.ifPresent(s -> looked.add(s.where()));
            if (look.isEmpty() && List.of("cracked", "soft", "rubber lost").contains(sign)) {
                lacks.add(OLD_BELT + " " + sign);
            }
        }
        if (lacks.isEmpty()) {
            tells.say(OLD_BELT, belt, "shows", "sound", looked);
        } else {
            tells.lack(OLD_BELT + " shows", belt, lacks.toArray(new String[0]));
        }
    }

    private void wetting(String belt) {
        Optional<Statement> wet = Optional.empty();
        for (String sign : List.of("coolant", "fuel", "oil", "wet")) {
            wet = wet.or(() -> ever(List.of(BELT, "old timing belt", "belt cover"), belt, sign));
        }
        if (wet.isEmpty()) {
            return;
        }
        tells.say(BELT, belt, "wetting", wet.get().what(), wet);
        source(belt, wet.get().what());
    }

    /** Seals and pumps that this wet may have come from: one renewed is a cure; all of them kept is none. */
    private void source(String belt, String wet) {
        List<String> must = new ArrayList<>();
        List<String> may = new ArrayList<>();
        if (wet.equals("oil") || wet.equals("wet")) {
            for (String seal : site.places("each shaft seal").orElse(List.of())) {
                if (seal.startsWith("cam seal") || seal.equals("front crank seal")) {
                    must.add(seal);
                }
            }
            may.add("cam cover gasket");
        }
        if (wet.equals("coolant") || wet.equals("wet")) {
            must.add("water pump");
            may.addAll(List.of("coolant pipe seal", "thermostat housing"));
        }
        if (wet.equals("fuel")) {
            must.add("fuel hose");
            may.addAll(List.of("fuel pump", "injection pump"));
        }
        List<Where> kept = new ArrayList<>();
        List<String> lacks = new ArrayList<>();
        for (String name : must) {
            Optional<PartsAged.Piece> piece = PartsAged.piece(site, name);
            Optional<Statement> state = piece.flatMap(p -> state(p.part(), p.at()));
            if (state.filter(s -> cures(s.says())).isPresent()) {
                tells.say(BELT, belt, "leak source", "renewed", state);
                return;
            }
            if (state.filter(s -> RUN.contains(s.says())).isPresent()) {
                kept.add(state.get().where());
            } else {
                String lack = piece.map(PartsAged.Piece::part).orElse(name) + " state";
                if (!lacks.contains(lack)) {
                    lacks.add(lack);
                }
            }
        }
        for (String name : may) {
            Optional<Statement> state = tells.word(List.of(name), Place.ENGINE, "state", "new", "repaired", "ready");
            if (state.isPresent()) {
                tells.say(BELT, belt, "leak source", "renewed", state);
                return;
            }
        }
        if (lacks.isEmpty() && !kept.isEmpty()) {
            tells.say(BELT, belt, "leak source", "kept", kept);
        } else {
            tells.lack("timing belt leak source", belt, lacks.isEmpty() ? new String[] {"front crank seal state"} : lacks.toArray(new String[0]));
        }
    }

    private static boolean cures(String state) {
        return state.equals("new") || state.equals("repaired") || state.equals("ready");
    }

    /** By what the sheet wants the tension read, and at which heat. */
    private void tension(String belt) {
        String what = "tension in question";
        Map<String, String> ways = new TreeMap<>(Map.of("timing belt deflection", "deflection", "timing belt span frequency", "note",
                "timing belt tension", "force"));
        for (LimitLine line : site.build.sheet().limits()) {
            String way = ways.get(line.quantity());
            if (way == null || !line.at().isEmpty() && !site.store.covers(line.at(), belt)) {
                continue;
            }
            tells.say(BELT, belt, what, way, List.of(line.line()));
            if (line.when().equals("cold") || line.when().equals("hot")) {
                tells.say(BELT, belt, what, "heat", List.of(line.line()));
                heat(belt, line);
            }
        }
        Optional<Value> meter = tells.reading(belt, "timing belt tension");
        Optional<Value> note = meter.isPresent() ? Optional.empty() : tells.value(belt, "belt tension from note");
        tells.sayBy(BELT, belt, "tension by", "meter", meter);
        tells.sayBy(BELT, belt, "tension by", "note", note);
        if (meter.isEmpty() && note.isEmpty()) {
            tells.lack("timing belt tension by", belt, "timing belt tension");
        }
    }

    /** A reading that says nothing of the heat is taken to suit. */
    private void heat(String belt, LimitLine line) {
        Optional<Value> read = tells.reading(belt, line.quantity());
        if (read.isEmpty()) {
            tells.lack("timing belt set at", belt, line.quantity());
            return;
        }
        Optional<Statement> state = site.word(line.quantity(), belt, "state")
                .filter(s -> List.of("cold", "hot", "warm").contains(s.says()) && !s.says().equals(line.when()));
        List<Where> where = new ArrayList<>(state.map(s -> List.of(s.where())).orElse(read.get().places()));
        where.add(line.line());
        tells.say(BELT, belt, "set at", state.map(Statement::says).orElse("as sheet"), where);
    }

    /** Teeth, width and form of a belt are a question where they were read, or where it is not sold for this engine. */
    private void make(String belt) {
        tells.sayBy(BELT, belt, "make in question", "read", tells.reading(belt, "timing belt teeth", "timing belt width"));
        tells.say(BELT, belt, "make in question", "not the maker's", tells.word(List.of(BELT), belt, "origin", "uprated", "other engine",
                "home-made", "unknown"));
        teeth(belt);
        Optional<Statement> own = told(site.word(BELT, belt, "tooth form"));
        List<Statement> gears = new ArrayList<>();
        for (String gear : List.of("cam gear", "crank gear")) {
            for (Statement s : site.said(gear)) {
                if (s.what().equals("tooth form") && !s.says().equals("unknown")) {
                    gears.add(s);
                }
            }
        }
        if (own.isPresent() && !gears.isEmpty()) {
            // One gear of another form is enough.
            Statement beside = gears.get(0);
            for (int i = 1; i < gears.size() && alike(own.get().says(), beside.says()); i++) {
                beside = gears.get(i);
            }
            beside = alike(own.get().says(), beside.says()) ? gears.get(0) : beside;
            tells.say(BELT, belt, "form against gears", alike(own.get().says(), beside.says()) ? "same" : "other",
                    List.of(own.get().where(), beside.where()));
        }
    }

    private static Optional<Statement> told(Optional<Statement> word) {
        return word.filter(s -> !s.says().equals("unknown"));
    }

    private static boolean alike(String one, String other) {
        return shape(one).equals(shape(other));
    }

    /** The two families of toothed belts have several names each. */
    private static String shape(String text) {
        String letters = Telling.letters(text);
        if (List.of("round", "rounded", "curved", "curvilinear", "roundtooth", "roundteeth", "halfround").contains(letters)) {
            return "round";
        }
        return List.of("straight", "trapezoidal", "trapezoid", "trapezium", "flat", "square").contains(letters) ? "straight" : letters;
    }

    /** Counted teeth of the belt and of its gears beside the sheet's. */
    private void teeth(String belt) {
        String what = "teeth against sheet";
        Optional<Value> own = tells.reading(belt, "timing belt teeth");
        Optional<Statement> sheet = DriveLines.line(site, belt, "teeth timing belt").filter(s -> s.value().isPresent());
        if (own.isEmpty() || sheet.isEmpty()) {
            tells.lack("timing belt " + what, belt, own.isEmpty() ? "timing belt teeth" : "sheet drive teeth");
            return;
        }
        List<Where> where = new ArrayList<>(own.get().places());
        where.add(sheet.get().where());
        boolean other = count(own.get()) != Math.round(sheet.get().value().get().high());
        Optional<Statement> gear = DriveLines.line(site, belt, "teeth cam gear").filter(s -> s.value().isPresent());
        for (Value counted : gear.isPresent() ? site.store.of("cam gear teeth") : List.<Value>of()) {
            if (!other && counted.told().isEmpty() && counted.low().isPresent() && count(counted) != Math.round(gear.get().value().get().high())) {
                other = true;
                where = new ArrayList<>(counted.places());
                where.add(gear.get().where());
            }
        }
        tells.say(BELT, belt, what, other ? "other" : "same", where);
    }

    private static long count(Value counted) {
        return Math.round(counted.low().map(Estimate::value).orElse(0.0));
    }

    // --- what lives with a belt

    private void companion(String name) {
        Optional<PartsAged.Piece> piece = PartsAged.piece(site, name);
        if (piece.isEmpty()) {
            return;
        }
        String part = piece.get().part();
        List<String> at = List.of(piece.get().at(), name);
        // What is not there has no age; that it is missing is asked elsewhere.
        tells.say(COMPANION, name, "there", state(part, piece.get().at()).filter(s -> GONE.contains(s.says())).isPresent() ? "no" : "yes",
                state(part, piece.get().at()));
        String role = part.endsWith("pump") ? "pump" : part.equals("belt tensioner") || part.equals("belt idler") ? "roller" : "";
        if (role.isEmpty()) {
            return;
        }
        Optional<Statement> state = state(part, piece.get().at());
        Optional<Statement> fresh = fresh(state);
        boolean same = state.filter(s -> SAME.contains(s.says())).isPresent();
        Optional<Statement> rough = lookOf(part, at, "rough turning", same);
        Optional<Statement> play = lookOf(part, at, "play", same);
        Optional<Statement> worse = firstSeen(part, at, BEARING_SIGNS, same);
        Optional<Statement> leak = lookOf(part, at, "leak", same);
        Optional<Statement> wet = role.equals("pump") ? firstSeen(part, at, WEEP_SIGNS, same) : leak.filter(s -> s.form() == Statement.Form.SEEN);
        tells.say(COMPANION, name, "role", role, state.map(s -> List.of(s.where())).orElse(List.of()));
        tells.say(COMPANION, name, "roll in question", "kept", state.filter(s -> RUN.contains(s.says())));
        tells.say(COMPANION, name, "roll in question", "looked", rough.or(() -> play).or(() -> worse).or(() -> role.equals("pump") ? wet.or(() -> leak)
                : Optional.empty()));
        if (isSeen(rough) || isSeen(play) || worse.isPresent()) {
            Optional<Statement> sign = isSeen(rough) ? rough : isSeen(play) ? play : worse;
            tells.say(COMPANION, name, "turning", sign.get().what(), sign);
        } else if (fresh.isPresent()) {
            tells.say(COMPANION, name, "turning", "new", fresh);
        } else if (rough.isPresent() && play.isPresent()) {
            tells.say(COMPANION, name, "turning", "even", List.of(rough.get().where(), play.get().where()));
        } else {
            lackSigns("belt companion turning", name, part, rough, "rough turning", play, "play");
        }
        if (wet.isPresent()) {
            tells.say(COMPANION, name, "weep", "weeps", wet);
        } else if (fresh.isPresent() || leak.isPresent()) {
            tells.say(COMPANION, name, "weep", fresh.isPresent() ? "new" : "dry", fresh.or(() -> leak));
        } else {
            tells.lack("belt companion weep", name, part + " leak");
        }
    }

    /** The last look as the part goes together; of one that stays, the look at it as it came in where there is no later one. */
    private Optional<Statement> lookOf(String part, List<String> at, String sign, boolean same) {
        return look(part, at, sign).or(() -> same ? asFound(part, at.get(0), sign) : Optional.empty());
    }

    private Optional<Statement> firstSeen(String part, List<String> at, List<String> signs, boolean same) {
        for (String sign : signs) {
            Optional<Statement> look = lookOf(part, at, sign, same);
            if (isSeen(look)) {
                return look;
            }
        }
        return Optional.empty();
    }

    private void lackSigns(String word, String at, String part, Optional<Statement> one, String first, Optional<Statement> other, String second) {
        List<String> lacks = new ArrayList<>();
        if (one.isEmpty()) {
            lacks.add(part + " " + first);
        }
        if (other.isEmpty()) {
            lacks.add(part + " " + second);
        }
        tells.lack(word, at, lacks.toArray(new String[0]));
    }

    private void tensioner(String place) {
        Optional<String> drive = DriveLines.ofTensioner(site, place);
        String part = drive.filter(d -> DriveLines.kind(site, d).equals("chain")).isPresent() ? "chain tensioner" : "belt tensioner";
        List<String> at = drive.map(d -> List.of(place, d)).orElse(List.of(place));
        travel(place, part, at, drive);
        works(place, part, at, drive);
    }

    private void travel(String place, String part, List<String> at, Optional<String> drive) {
        String what = "travel in question";
        Optional<Statement> window = line(drive, "tensioner extension most").or(() -> line(drive, "tensioner extension least"));
        tells.say(TENSIONER, place, what, "window", window);
        if (window.isEmpty()) {
            tells.say(TENSIONER, place, what, "travel", line(drive, "tensioner travel"));
        }
        Optional<Statement> pointer = look(part, at, "pointer off");
        tells.say(TENSIONER, place, what, "pointer", pointer);
        tells.say(TENSIONER, place, "set", isSeen(pointer) ? "pointer off" : "pointer right", pointer);
        Optional<Value> extension = Optional.empty();
        for (String one : at) {
            extension = extension.or(() -> tells.reading(one, part + " extension"));
        }
        tells.sayBy(TENSIONER, place, "set", "by extension", extension);
        if (pointer.isEmpty() && extension.isEmpty()) {
            tells.lack("drive tensioner set", place, part + " extension");
        }
    }

    private void works(String place, String part, List<String> at, Optional<String> drive) {
        Optional<Statement> state = Optional.empty();
        Optional<Statement> form = Optional.empty();
        for (String one : at) {
            state = state.or(() -> state(part, one));
            form = form.or(() -> told(PartsAged.word(site, part, one, "form")));
        }
        form = form.or(() -> line(drive, "tensioner form"));
        String works = form.map(Statement::says).orElse("untold");
        if (works.equals("hydraulic")) {
            works = part.equals("belt tensioner") ? "sealed" : "oil-fed";
        }
        tells.say(TENSIONER, place, "works", works, form.map(s -> List.of(s.where())).orElse(List.of()));
        Optional<Statement> leak = look(part, at, "leak");
        Optional<Statement> wet = firstSeen(part, at, List.of("leak", "oil", "wet"), false);
        Optional<Statement> fresh = fresh(state);
        Optional<Statement> holds = Optional.empty();
        boolean weak = false;
        for (String sign : List.of("soft", "sticks", "cracked", "broken")) {
            Optional<Statement> look = look(part, at, sign);
            if (isSeen(look)) {
                tells.say(TENSIONER, place, "firm", sign, look);
                weak = true;
            }
            holds = holds.isPresent() ? holds : look;
        }
        if (!weak) {
            tells.say(TENSIONER, place, "firm", "holds", holds);
        }
        if (wet.isPresent()) {
            tells.say(TENSIONER, place, "seal", "leaks", wet);
        } else if (fresh.isPresent() || leak.isPresent()) {
            tells.say(TENSIONER, place, "seal", fresh.isPresent() ? "new" : "dry", fresh.or(() -> leak));
        } else {
            tells.lack("drive tensioner seal", place, part + " leak");
        }
        limit(TENSIONER, place, "sink limit", part + " leak-down time");
        Optional<Statement> noPin = line(drive, "tensioner locking pin").filter(s -> s.says().equals("none"));
        boolean notWanted = works.equals("fixed") || noPin.isPresent();
        tells.say(TENSIONER, place, "release", notWanted ? "not wanted" : "wanted", noPin.or(lineOf(form)).map(s -> List.of(s.where()))
                .orElse(List.of()));
        released(place, firstSeen(part, at, List.of("locked", "left in"), false).or(() -> look(part, at, "locked")));
    }

    /** By the step, the latest where there are several; else by whether the pin was seen in its hole. */
    private void released(String place, Optional<Statement> pin) {
        Optional<Statement> step = latest("tensioner released", place);
        if (step.isPresent()) {
            boolean not = List.of("left out", "failed", "not proved").contains(step.get().says());
            boolean early = laid(place).filter(l -> tells.before(step.get(), l)).isPresent();
            tells.say(TENSIONER, place, "released", not ? "left out" : early ? "before the drive" : "yes", step);
        } else if (pin.isPresent()) {
            tells.say(TENSIONER, place, "released", isSeen(pin) ? "left out" : "yes", pin);
        } else {
            tells.lack("drive tensioner released", place, "steps tensioner released");
        }
    }

    /** The step as it was done last: by its day, else as it stands last in the record. */
    private Optional<Statement> latest(String step, String place) {
        Optional<Statement> last = step(step, place);
        for (Statement s : site.said("steps")) {
            boolean said = s.what().equals(step) && !List.of("next", "planned", "unknown").contains(s.says());
            if (said && last.isPresent() && (s.at().equals(Place.ENGINE) || site.related(s.at(), place)) && tells.before(last.get(), s)) {
                last = Optional.of(s);
            }
        }
        return last;
    }

    private static java.util.function.Supplier<Optional<Statement>> lineOf(Optional<Statement> form) {
        return () -> form;
    }

    // --- the proof of the timing

    private void proof(String place) {
        Optional<Statement> paint = look(BELT, place, "marks off").or(() -> look(CHAIN, place, "marks off"));
        Optional<Statement> gears = gearMarks(place);
        Optional<Value> timing = tells.value(place, "cam timing error");
        Optional<Statement> measured = step("cam timing measured", place).filter(s -> s.says().equals("done") || s.says().equals("passed"));
        List<Where> byDisc = timing.map(Value::places).or(() -> measured.map(s -> List.of(s.where()))).orElse(List.of());
        if (isSeen(gears)) {
            tells.say(DRIVE, place, "marks", "off", gears);
        } else if (gears.isPresent()) {
            tells.say(DRIVE, place, "marks", "meet", gears);
        } else if (!byDisc.isEmpty()) {
            tells.say(DRIVE, place, "marks", "measured", byDisc);
        } else if (open("turned by hand").isPresent()) {
            tells.say(DRIVE, place, "marks", "unknown", open("turned by hand"));
        } else {
            tells.lack("timing drive marks", place, turned(place).isPresent() ? "cam gear marks off" : "steps turned by hand");
        }
        firstTurn(place);
        if (paint.isEmpty()) {
            return;
        }
        Optional<Statement> moved = step("timing drive moved", place).filter(s -> s.says().equals("done") || s.says().equals("passed"));
        if (isSeen(paint) && moved.isPresent()) {
            tells.say(DRIVE, place, "paint", "off and moved", List.of(paint.get().where(), moved.get().where()));
        } else {
            tells.say(DRIVE, place, "paint", isSeen(paint) ? "off" : "meets", paint);
        }
        if (gears.isPresent()) {
            tells.say(DRIVE, place, "proof", "fixed marks", gears);
        } else if (!byDisc.isEmpty()) {
            tells.say(DRIVE, place, "proof", "measured", byDisc);
        } else {
            tells.say(DRIVE, place, "proof", "paint alone", paint);
        }
        comesBack(place);
    }

    /** Marks of gear against casting; of all that were looked at, one that does not meet counts. */
    private Optional<Statement> gearMarks(String place) {
        Optional<Statement> met = Optional.empty();
        for (String part : List.of("cam gear", "crank gear", "timing gear", "idler gear")) {
            Optional<Statement> look = look(part, place, "marks off");
            if (isSeen(look)) {
                return look;
            }
            met = met.or(() -> look);
        }
        return met;
    }

    /** After how many turns paint on belt or chain stands at the gears again: as the sheet says, else by the teeth. */
    private void comesBack(String place) {
        String what = "paint comes back";
        for (Statement drives : site.sheetLines("drive")) {
            String drive = drives.at();
            boolean here = drives.what().equals("drives") && drives.says().equals("camshafts")
                    && (place.equals(Place.ENGINE) || site.related(drive, place) || (" " + drive + " ").contains(" " + place + " "));
            if (!here) {
                continue;
            }
            Optional<Statement> marks = DriveLines.line(site, drive, "marks");
            if (marks.isPresent()) {
                tells.say(DRIVE, place, what, marks.get().says().equals("every turn") ? "every round" : "seldom", marks);
                return;
            }
            Optional<Statement> links = DriveLines.line(site, drive, "links").or(() -> DriveLines.line(site, drive, "teeth timing belt"));
            Optional<Statement> crank = DriveLines.line(site, drive, "teeth crank gear");
            int teeth = links.map(s -> (int) PartsAged.number(s.says())).orElse(0);
            int gear = crank.map(s -> (int) PartsAged.number(s.says())).orElse(0);
            if (teeth > 0 && gear > 0) {
                tells.say(DRIVE, place, what, Drives.markReturn(teeth, gear) > ONE_ROUND ? "seldom" : "every round",
                        List.of(links.get().where(), crank.get().where()));
                return;
            }
        }
        tells.lack("timing drive " + what, place, "sheet drive marks");
    }

    private void firstTurn(String place) {
        String what = "first turn";
        Optional<Statement> turned = turned(place);
        Optional<Statement> starter = look("engine", Place.ENGINE, "turned by starter");
        Optional<Statement> stop = look("engine", Place.ENGINE, "hard stop");
        if (isSeen(starter)) {
            tells.say(DRIVE, place, what, "by starter", starter);
        } else if (isSeen(stop) && !provedTightSince(turned.orElse(stop.get()))) {
            tells.say(DRIVE, place, what, "hard stop", stop);
        } else if (turned.isPresent() && laid(place).filter(l -> tells.before(turned.get(), l)).isPresent()) {
            tells.say(DRIVE, place, what, "before the drive", turned);
        } else if (turned.isPresent()) {
            tells.say(DRIVE, place, what, "by hand", turned);
        } else if (open("turned by hand").isPresent()) {
            tells.say(DRIVE, place, what, "unknown", open("turned by hand"));
        } else {
            tells.lack("timing drive " + what, place, "steps turned by hand");
        }
    }

    /** The step after which the drive lies as it does now: fitted, or moved after that. */
    private Optional<Statement> laid(String place) {
        Optional<Statement> laid = step("timing drive fitted", place).filter(s -> s.says().equals("done") || s.says().equals("passed"));
        Optional<Statement> moved = step("timing drive moved", place).filter(s -> s.says().equals("done") || s.says().equals("passed"));
        return moved.filter(m -> laid.isEmpty() || !tells.before(m, laid.get())).or(() -> laid);
    }

    private Optional<Statement> turned(String place) {
        return step("turned by hand", place).filter(s -> s.says().equals("done") || s.says().equals("passed"));
    }

    private boolean provedTightSince(Statement turned) {
        for (Statement s : site.said("steps")) {
            if (s.what().equals("valve leak tested") && s.says().equals("passed") && !tells.before(s, turned)) {
                return true;
            }
        }
        return false;
    }

    // --- the camshafts

    private void camshaft(String cam) {
        Optional<Statement> other = tells.word(List.of("camshaft"), cam, "origin", "uprated", "other engine", "home-made")
                .or(() -> tells.machined(List.of("camshaft", "cam lobe"), cam, "grind", "weld"));
        tells.say("camshaft", cam, "grind", other.isPresent() ? "other" : "as sheet", other.map(s -> List.of(s.where())).orElse(List.of()));
        Optional<Statement> step = step("cam timing measured", cam).filter(s -> s.says().equals("done") || s.says().equals("passed"));
        Optional<Value> disc = tells.value(cam, "cam timing error").or(() -> tells.reading(cam, "camshaft lobe centre", "cam gear setting"));
        tells.say("camshaft", cam, "measured", disc.isPresent() || step.isPresent() ? "yes" : "no",
                disc.map(Value::places).or(() -> step.map(s -> List.of(s.where()))).orElse(List.of()));
        timingProof(cam, disc);
        asSet(cam);
        String what = "timing in question";
        String kind = DriveLines.ofCamshafts(site).map(d -> DriveLines.kind(site, d)).orElse("");
        boolean moves = site.sheet("layout", Place.ENGINE, "valve gear").filter(s -> s.says().equals("overhead cam")).isPresent()
                && (kind.equals("belt") || kind.equals("chain"));
        if (moves) {
            for (Statement s : site.said("machining")) {
                if ((s.what().equals("head face") || s.what().equals("block face")) && !List.of("none", "clean").contains(s.says())) {
                    tells.say("camshaft", cam, what, "face cut", Optional.of(s));
                    break;
                }
            }
            Optional<Value> fitted = tells.reading(Place.ENGINE, "head gasket compressed thickness");
            Optional<Double> standard = site.sheet("standard", Place.ENGINE, "head gasket compressed thickness").flatMap(Statement::value)
                    .map(w -> w.high());
            tells.sayBy("camshaft", cam, what, "gasket", fitted.filter(v -> standard.isPresent() && v.low().isPresent()
                    && v.low().get().value() != standard.get()));
        }
        tells.say("camshaft", cam, what, "cam changed", tells.word(List.of("camshaft"), cam, "state", "new", "second-hand").or(() -> other));
        tells.say("camshaft", cam, what, "gear changed", tells.word(List.of("cam gear", "adjustable cam gear"), cam, "state", "new", "second-hand")
                .or(() -> site.sheet("cam gear", cam, "form").filter(s -> s.says().equals("adjustable")).isPresent() ? Optional.empty()
                        : tells.word(List.of("cam gear"), cam, "form", "adjustable")));
    }

    /** A reading proves the timing as well as the step that says so; neither does before the drive lies as it does now. */
    private void timingProof(String cam, Optional<Value> disc) {
        String what = "timing proof";
        Optional<Statement> step = step("cam timing measured", cam);
        boolean done = step.filter(s -> s.says().equals("done") || s.says().equals("passed")).isPresent();
        if (disc.isPresent()) {
            tells.sayBy("camshaft", cam, what, "measured", disc);
        } else if (done && laid(cam).filter(l -> tells.before(step.get(), l)).isPresent()) {
            tells.say("camshaft", cam, what, "before the drive", step);
        } else if (step.isPresent()) {
            tells.say("camshaft", cam, what, done ? "measured" : step.get().says(), step);
        } else if (open("cam timing measured").isPresent()) {
            tells.say("camshaft", cam, what, "unknown", open("cam timing measured"));
        } else {
            tells.lack("camshaft timing proof", cam, "steps cam timing measured");
        }
    }

    /** Whether a camshaft with an adjustable gear stands where the gear was set, within the sheet's tolerance; without one it is taken so. */
    private void asSet(String cam) {
        Optional<Value> set = tells.reading(cam, "cam gear setting").filter(v -> v.low().isPresent());
        Optional<Value> error = set.flatMap(v -> tells.value(cam, "cam timing error")).filter(v -> v.low().isPresent() && v.high().isPresent());
        if (error.isEmpty()) {
            return;
        }
        double most = site.sheet("timing", Place.ENGINE, "cam timing tolerance").flatMap(Statement::value).map(w -> w.high())
                .orElse(Double.POSITIVE_INFINITY);
        double at = set.get().low().get().value();
        boolean off = InQuestion.surely(error.get().low(), at + most, false) || InQuestion.surely(error.get().high(), at - most, true);
        List<Where> where = new ArrayList<>(error.get().places());
        where.addAll(set.get().places());
        tells.say("camshaft", cam, "stands as set", off ? "no" : "yes", where);
    }

    /** A room that was read before the gear was set as it is now. */
    private void valveRoom() {
        List<Statement> rooms = new ArrayList<>();
        List<Statement> settings = new ArrayList<>();
        for (Statement s : site.build.statements()) {
            if (s.form() == Statement.Form.READ && s.what().isEmpty()) {
                if (s.of().equals("valve piston clearance")) {
                    rooms.add(s);
                } else if (s.of().equals("cam gear setting")) {
                    settings.add(s);
                }
            }
        }
        if (rooms.isEmpty() || settings.isEmpty()) {
            return;
        }
        for (String valve : tells.places("each valve", "valve piston clearance")) {
            Statement room = last(rooms, valve);
            Statement setting = last(settings, valve);
            if (room != null && setting != null && tells.before(room, setting)) {
                tells.say("valve", valve, "room in question", "cams moved since", List.of(room.where(), setting.where()));
            }
        }
    }

    private Statement last(List<Statement> read, String place) {
        Statement last = null;
        for (Statement s : read) {
            last = site.store.covers(s.at(), place) ? s : last;
        }
        return last;
    }

    /** Cam gears of a form, on the sheet or in the record. */
    private List<String> formed(String group, String form) {
        List<String> places = new ArrayList<>(site.places(group).orElse(List.of()));
        for (Statement s : site.said("cam gear")) {
            if (s.what().equals("form") && s.says().equals(form) && !places.contains(s.at())) {
                places.add(s.at());
            }
        }
        return places;
    }

    private void phasers() {
        for (String place : formed("each cam phaser", "phaser")) {
            Optional<Statement> free = look("cam phaser", place, "unlocked");
            Optional<Statement> locked = look("cam phaser", place, "locked").filter(s -> s.form() == Statement.Form.SEEN);
            tells.say("cam phaser", place, "in question", "told", List.of());
            shows("cam phaser", place, true, List.of("play"));
            if (isSeen(free)) {
                tells.say("cam phaser", place, "lock", "unlocked", free);
            } else if (locked.isPresent() || free.isPresent()) {
                tells.say("cam phaser", place, "lock", "locked", locked.or(() -> free));
            } else {
                tells.lack("cam phaser lock", place, "cam phaser locked");
            }
            limit("cam phaser", place, "play limit", "cam phaser free play");
        }
    }

    // --- chains and gears

    private void chain(String chain) {
        tells.say(CHAIN, chain, "growth in question", "kept", state(CHAIN, chain).filter(s -> RUN.contains(s.says())));
        tells.sayBy(CHAIN, chain, "growth in question", "read", tells.reading(chain, "timing chain length over links", "chain elongation"));
        boolean reckoned = DriveLines.line(site, chain, "run length").isPresent() && DriveLines.line(site, chain, "pitch").isPresent()
                && DriveLines.ofCamshafts(site).isPresent();
        tells.say(CHAIN, chain, "lag", reckoned ? "reckoned" : "not reckoned", List.of());

        String guide = "chain guide";
        tells.say(guide, chain, "wear in question", "kept", state(guide, chain).filter(s -> RUN.contains(s.says())));
        if (fresh(state(guide, chain)).isEmpty()) {
            tells.say(guide, chain, "wear in question", "looked", tells.looked(List.of(guide), chain, "cracked", "broken", "worn", "grooved", "melted", "torn"));
        }
        Optional<Value> depth = tells.reading(chain, "chain guide groove depth");
        tells.sayBy(guide, chain, "wear in question", "read", depth);
        Optional<Statement> worn = look(guide, chain, "grooved").or(() -> look(guide, chain, "worn"));
        if (depth.isPresent()) {
            tells.sayBy(guide, chain, "groove", "read", depth);
        } else if (worn.isPresent() && !isSeen(worn)) {
            tells.say(guide, chain, "groove", "none", worn);
        } else {
            tells.lack("chain guide groove", chain, "chain guide groove depth");
        }

        String link = "joining link";
        Optional<Statement> told = tells.word(List.of(link), chain, "form").or(() -> tells.word(List.of(link), chain, "state"))
                .or(() -> tells.word(List.of(CHAIN), chain, "form", "joined"));
        tells.say(link, chain, "in question", "told", told.or(() -> tells.seen(List.of(link), chain, "wrong way round", "cracked", "broken", "play")));
        limit(link, chain, "spread limit", "joining link rivet spread");
    }

    /** A gear that has run, under a new belt or chain. */
    private void gear(String name) {
        Optional<PartsAged.Piece> piece = PartsAged.piece(site, name);
        if (piece.isEmpty()) {
            return;
        }
        String part = piece.get().part();
        Optional<Statement> state = state(part, piece.get().at()).filter(s -> RUN.contains(s.says()));
        if (state.isEmpty()) {
            return;
        }
        for (Statement route : site.sheetLines("drive")) {
            if (!route.what().equals("route") || !(", " + route.says() + ",").contains(", " + name + ",")) {
                continue;
            }
            String kind = DriveLines.kind(site, route.at());
            if (kind.equals("belt") || kind.equals("chain")) {
                tells.say(GEAR, name, "teeth in question", "new " + kind, state(kind.equals("belt") ? BELT : CHAIN, route.at())
                        .filter(s -> s.says().equals("new") || s.says().equals("ready")));
            }
        }
        List<String> at = at(piece.get(), name);
        boolean another = state.get().says().equals("second-hand");
        for (String sign : List.of("teeth damaged", "worn", "pitted", "corroded", "broken", "cracked", "grooved", "scored", "stepped")) {
            Optional<Statement> seen = another ? look(part, at, sign).filter(s -> s.form() == Statement.Form.SEEN)
                    : ever(List.of(part), piece.get().at(), sign);
            if (seen.isPresent()) {
                tells.say(GEAR, name, "teeth", sign, seen);
                return;
            }
        }
        Optional<Statement> looked = look(part, at, "teeth damaged").or(() -> look(part, at, "worn"));
        if (looked.isPresent()) {
            tells.say(GEAR, name, "teeth", "even", looked);
        } else {
            tells.lack("drive gear teeth", name, part + " teeth damaged");
        }
    }

    private static List<String> at(PartsAged.Piece piece, String name) {
        return List.of(piece.at(), name);
    }

    private void timedShaft(String name) {
        Optional<PartsAged.Piece> piece = PartsAged.piece(site, name);
        if (piece.isEmpty()) {
            return;
        }
        String part = piece.get().part();
        String at = piece.get().at();
        tells.say(SHAFT, name, "role", part.equals("balance shaft") ? part : "other", List.of());
        // A belt is changed without these shafts being touched; they are a question where the record speaks of them or of a strip.
        tells.say(SHAFT, name, "in question", "told", state(part, at).or(() -> look(part, List.of(at, name), "marks off"))
                .or(() -> site.word("steps", Place.ENGINE, "balance phase proved")).or(() -> site.word("steps", Place.ENGINE, "engine stripped")));
        Optional<Statement> gone = state(part, at).filter(s -> GONE.contains(s.says()));
        if (gone.isPresent()) {
            tells.say(SHAFT, name, "marks", "out", gone);
            return;
        }
        Optional<Statement> marks = look(part, List.of(at, name), "marks off");
        if (marks.isPresent()) {
            tells.say(SHAFT, name, "marks", isSeen(marks) ? "off" : "meet", marks);
            return;
        }
        Optional<Value> phase = part.equals("balance shaft") ? tells.reading(at, "balance shaft phase error") : Optional.empty();
        double half = phase.isPresent() ? halfTooth() : 0;
        if (half > 0 && phase.get().low().isPresent() && phase.get().high().isPresent()) {
            if (InQuestion.surely(phase.get().low(), half, false)) {
                tells.sayBy(SHAFT, name, "marks", "off", phase);
                return;
            }
            if (InQuestion.surely(phase.get().high(), half, true)) {
                tells.sayBy(SHAFT, name, "marks", "meet", phase);
                return;
            }
        }
        // Before the drive is laid there is no mark to look at.
        boolean laid = howFar.flatMap(far -> far.stands("timing drive fitted")).filter(s -> s.equals("done")).isPresent();
        tells.lack("timed shaft marks", name, laid ? part + " marks off" : "steps timing drive fitted");
    }

    /** Half a tooth of the gears that turn the balance shafts, as an angle of the shaft; nought where the sheet does not count them. */
    private double halfTooth() {
        for (Statement s : site.sheetLines("drive")) {
            if (s.what().equals("teeth balance gear") && s.value().isPresent() && s.value().get().high() >= 1) {
                return Math.PI / s.value().get().high();
            }
        }
        return 0;
    }

    private void balanceShafts() {
        List<String> shafts = site.places("each balance shaft").orElse(List.of());
        for (String shaft : shafts) {
            Optional<Statement> out = out(shaft);
            if (out.isEmpty()) {
                continue;
            }
            tells.say("balance shaft", shaft, "out", "yes", out);
            mate(shaft, shafts, out.get());
            pump(shaft, out.get());
        }
    }

    private Optional<Statement> out(String shaft) {
        return state("balance shaft", shaft).filter(s -> GONE.contains(s.says()));
    }

    private void mate(String shaft, List<String> shafts, Statement out) {
        if (shafts.size() < 2) {
            tells.say("balance shaft", shaft, "mate", "none", List.of(out.where()));
            return;
        }
        List<Where> where = new ArrayList<>(List.of(out.where()));
        for (String other : shafts) {
            Optional<Statement> state = other.equals(shaft) ? Optional.empty() : state("balance shaft", other);
            if (other.equals(shaft)) {
                continue;
            }
            if (state.isEmpty()) {
                tells.lack("balance shaft mate", shaft, "balance shaft state");
                return;
            }
            where.add(state.get().where());
            if (!GONE.contains(state.get().says())) {
                tells.say("balance shaft", shaft, "mate", "still turning", where);
                return;
            }
        }
        tells.say("balance shaft", shaft, "mate", "out", where);
    }

    private void pump(String shaft, Statement out) {
        Optional<Statement> route = Optional.empty();
        for (Statement s : site.sheetLines("drive")) {
            if (s.what().equals("drives") && s.says().equals("oil pump")) {
                route = DriveLines.line(site, s.at(), "route");
            }
        }
        if (route.isEmpty()) {
            tells.lack("balance shaft turns the pump", shaft, "sheet drive route");
            return;
        }
        tells.say("balance shaft", shaft, "turns the pump", route.get().says().contains("balance shaft") ? "yes" : "no",
                List.of(route.get().where(), out.where()));
    }

    // --- how it is told

    /** The part that runs in a belt drive: the timing belt, or one that has a name of its own, such as the balance belt. */
    private String belt(String drive) {
        return site.words.part(drive).filter(p -> p.kind().equals(BELT)).map(Part::name).orElse(BELT);
    }

    private Optional<Statement> state(String part, String at) {
        return PartsAged.word(site, part, at, "state");
    }

    private Optional<Statement> line(Optional<String> drive, String what) {
        return drive.flatMap(d -> DriveLines.line(site, d, what));
    }

    /** A step of this drive or of the engine; what is merely planned says nothing. */
    private Optional<Statement> step(String step, String place) {
        Optional<Statement> found = Optional.empty();
        for (Statement s : site.said("steps")) {
            boolean said = !List.of("next", "planned", "unknown").contains(s.says());
            if (s.what().equals(step) && said && (s.at().equals(Place.ENGINE) || place.equals(Place.ENGINE) || site.related(s.at(), place))) {
                found = Optional.of(s);
            }
        }
        return found;
    }

    /** A step of which nobody knows whether it was done. */
    private Optional<Statement> open(String step) {
        return site.word("steps", Place.ENGINE, step).filter(s -> s.says().equals("unknown"));
    }

    private static boolean isSeen(Optional<Statement> look) {
        return look.isPresent() && look.get().form() == Statement.Form.SEEN;
    }

    private Optional<Statement> look(String part, String at, String sign) {
        return look(part, List.of(at), sign);
    }

    /** The last look for a sign as the part goes together; one of another's word counts only where it was seen. */
    private Optional<Statement> look(String part, List<String> at, String sign) {
        Optional<Statement> last = Optional.empty();
        for (Statement s : tells.signs(part, sign)) {
            boolean counts = s.told().isEmpty() || s.form() == Statement.Form.SEEN;
            if (counts && !s.asides().getOrDefault("as", "").equals("found") && stands(part, s.at(), at)) {
                last = Optional.of(s);
            }
        }
        return last;
    }

    /** The last look for a sign, as the part was found or as it goes together. */
    private Optional<Statement> lookAtAnyTime(String part, String at, String sign) {
        Optional<Statement> last = Optional.empty();
        for (Statement s : tells.signs(part, sign)) {
            boolean counts = s.told().isEmpty() || s.form() == Statement.Form.SEEN;
            last = counts && stands(part, s.at(), List.of(at)) ? Optional.of(s) : last;
        }
        return last;
    }

    /** The last look for a sign on the part as it came in: on the one that came out, where another one goes in. */
    private Optional<Statement> asFound(String part, String at, String sign) {
        Optional<Statement> last = Optional.empty();
        for (Statement s : tells.signs(part, sign)) {
            boolean counts = s.told().isEmpty() || s.form() == Statement.Form.SEEN;
            last = counts && s.asides().getOrDefault("as", "").equals("found") && stands(part, s.at(), List.of(at)) ? Optional.of(s) : last;
        }
        return last;
    }

    /** A sign seen on one of the parts at any time. */
    private Optional<Statement> ever(List<String> parts, String at, String sign) {
        for (String part : parts) {
            for (Statement s : tells.signs(part, sign)) {
                if (s.form() == Statement.Form.SEEN && stands(part, s.at(), List.of(at))) {
                    return Optional.of(s);
                }
            }
        }
        return Optional.empty();
    }

    private boolean stands(String part, String said, List<String> at) {
        for (String one : at) {
            if (one.equals(Place.ENGINE) || said.equals(Place.ENGINE) || said.equals(part + " " + one) || site.related(said, one)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the sheet, or the supplier of the part, gives a limit. */
    private void limit(String of, String at, String what, String quantity) {
        List<Where> where = new ArrayList<>();
        for (List<LimitLine> lines : List.of(site.build.sheet().limits(), site.build.limits())) {
            for (LimitLine line : lines) {
                if (line.quantity().equals(quantity) && (line.at().isEmpty() || at.equals(Place.ENGINE) || site.related(line.at(), at))) {
                    where.add(line.line());
                }
            }
        }
        tells.say(of, at, what, where.isEmpty() ? "none" : "given", where);
    }
}
