package leadlamp.derive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.facts.Value;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.words.Listed;

/**
 * Words of joints as seals: gaskets, sealant, faces, wet threads, washers. They say what was put where, beside what the sheet asks,
 * and what a record makes a question of. Of a joint of which nothing is told nothing is said.
 */
final class SealingWords {
    static final List<String> HERE = List.of("new", "kept", "second-hand", "repaired", "there", "ready");
    static final List<String> GONE = List.of("missing", "deleted");
    private static final String JOINT = "joint";
    private static final String GASKET = "gasket";
    private static final String SEALANT = "sealant";
    private static final String WASHER = "sealing washer";
    private static final String FACE = "joint face";
    /** Longer than a common sealant takes to cure, s (common practice, no source). */
    private static final double TWO_DAYS = 172_800;

    private final Telling tells;
    private final Site site;
    private final List<Statement> signs;
    private final Map<String, List<Statement>> bySign = new HashMap<>();

    private SealingWords(Telling tells) {
        this.tells = tells;
        this.site = tells.site;
        this.signs = tells.signs();
        for (Statement s : signs) {
            List<Statement> same = bySign.get(s.what());
            if (same == null) {
                same = new ArrayList<>();
                bySign.put(s.what(), same);
            }
            same.add(s);
        }
    }

    /** The words, as subject and property, and what each may say; an empty list where that is the record's own. */
    static Map<String, List<String>> names() {
        Map<String, List<String>> names = new TreeMap<>();
        names.put("gasket sort", List.of());
        names.put("gasket sealant", List.of("not wanted", "wanted", "grips dry", "takes it", "in its place", "dabs"));
        names.put("gasket sealant told", List.of("there"));
        names.put("gasket thickness in question", List.of("told"));
        names.put("gasket over passages", List.of("open", "hole covered", "wrong way round"));
        names.put("gasket over passages told", List.of("there"));
        names.put("sealant amount in question", List.of("bead read", "face read", "looked"));
        names.put("sealant closing told", List.of("times", "days", "parted"));
        names.put("sealant since parted", List.of("laid afresh", "not laid afresh"));
        names.put("sealant cure told", List.of("waited", "by dates"));
        names.put("sealant harm in question", List.of("sensor", "fuel"));
        names.put("joint layer told", List.of("sealant", "gasket"));
        names.put("joint bearing layer", List.of("thin", "thick", "gasket"));
        names.put("joint scratch in question", List.of("looked"));
        names.put("joint sealing scratch", List.of("none", "along", "across"));
        names.put("joint cover holes", List.of("flat", "dished"));
        names.put("joint step in question", List.of("read", "cut", "parted"));
        names.put("joint wet thread in question", List.of("told", "tightened"));
        names.put("joint wet thread", List.of("sealed as sheet", "sealed", "by locker", "bare"));
        names.put("sealing washer use in question", List.of("told", "tightened"));
        names.put("sealing washer count against sheet", List.of("all", "fewer"));
        return names;
    }

    private static boolean anyRelated(List<String> joints, String at) {
        for (String joint : joints) {
            if (Place.related(joint, at)) {
                return true;
            }
        }
        return false;
    }

    static void all(Telling tells) {
        SealingWords words = new SealingWords(tells);
        List<String> joints = new ArrayList<>(Joints.joints(tells.site, "each joint"));
        for (String part : List.of(SEALANT, GASKET, WASHER)) {
            for (Statement s : tells.site.said(part)) {
                if (!s.at().equals(Place.ENGINE) && !anyRelated(joints, s.at())) {
                    joints.add(s.at());
                }
            }
        }
        for (String joint : joints) {
            words.gasket(joint);
            words.sealant(joint);
            words.bearing(joint);
            words.face(joint);
            words.step(joint);
            words.wetThread(joint);
            words.washer(joint);
        }
    }

    // --- gaskets

    /** The last word that the record has of a part at a joint, not of what came out; of the joint's own gasket also without a place. */
    private Optional<Statement> last(List<String> parts, String joint, String... what) {
        Statement last = null;
        for (String part : parts) {
            for (Statement s : site.said(part)) {
                if (List.of(what).contains(s.what()) && at(part, s, joint)) {
                    last = s;
                }
            }
        }
        return Optional.ofNullable(last);
    }

    private static boolean at(String part, Statement s, String joint) {
        boolean shared = part.equals(GASKET) || part.equals(SEALANT) || part.equals(WASHER) || part.equals(FACE);
        return s.at().equals(Place.ENGINE) ? !shared : Place.related(s.at(), joint);
    }

    /** A sign looked for on one of the parts as it goes together; of several the one that was seen, else the last. */
    private Optional<Statement> sign(List<String> parts, String joint, String... signs) {
        Statement last = null;
        List<String> wanted = List.of(signs);
        for (Statement s : signs.length == 1 ? bySign.getOrDefault(signs[0], List.of()) : this.signs) {
            if (wanted.contains(s.what()) && parts.contains(s.of()) && at(s.of(), s, joint) && (last == null || !seen(last) || seen(s) || last.what().equals(s.what()))) {
                last = s;
            }
        }
        return Optional.ofNullable(last);
    }

    private static boolean seen(Statement s) {
        return s.form() == Statement.Form.SEEN;
    }

    /** What the joint's gasket is called: the sheet's own part, and a gasket named by its joint. */
    private List<String> gaskets(String joint) {
        Optional<Statement> part = site.sheet(JOINT, joint, "gasket part");
        return part.isEmpty() || part.get().says().equals(GASKET) ? List.of(GASKET) : List.of(GASKET, part.get().says());
    }

    private void gasket(String joint) {
        List<String> parts = gaskets(joint);
        Optional<Statement> state = last(parts, joint, "state");
        boolean onSheet = site.sheet(JOINT, joint, "gasket part").isPresent() || site.sheet(JOINT, joint, "gasket type").isPresent();
        if (parts.contains(WASHER) || !onSheet && state.isEmpty()) {
            return;
        }
        Optional<Statement> sort = last(parts, joint, "type", "form").filter(s -> !s.says().equals("unknown"))
                .or(() -> site.sheet(JOINT, joint, "gasket type"));
        sort.ifPresent(s -> tells.say(GASKET, joint, "sort", s.says(), sort));
        sealantOn(joint, parts, state, sort);
        if (site.sheet(JOINT, joint, "gasket sets").isPresent()) {
            tells.say(GASKET, joint, "thickness in question", "told", state.filter(s -> HERE.contains(s.says())));
        }
        if (site.sheet(JOINT, joint, "passages").isPresent() && state.filter(s -> HERE.contains(s.says())).isPresent()) {
            passages(joint, parts, state);
        }
    }

    private void sealantOn(String joint, List<String> parts, Optional<Statement> state, Optional<Statement> sort) {
        Optional<Statement> sealant = last(List.of(SEALANT), joint, "state").filter(s -> HERE.contains(s.says()))
                .or(() -> last(parts, joint, "fitted").filter(s -> s.says().equals("sealed")));
        if (sealant.isEmpty()) {
            return;
        }
        tells.say(GASKET, joint, "sealant told", "there", sealant);
        String what = "sealant";
        Optional<Statement> dry = site.sheet(JOINT, joint, "gasket dry");
        Optional<Statement> asks = site.sheet(JOINT, joint, "sealant").or(() -> dry.filter(s -> s.says().equals("sealant")));
        if (state.filter(s -> GONE.contains(s.says())).isPresent()) {
            both(joint, what, "in its place", sealant.get(), state.get());
        } else if (last(List.of(SEALANT), joint, "laid").filter(s -> s.says().equals("dabs")).isPresent()) {
            both(joint, what, "dabs", sealant.get(), last(List.of(SEALANT), joint, "laid").get());
        } else if (asks.isPresent()) {
            both(joint, what, "wanted", sealant.get(), asks.get());
        } else if (dry.filter(s -> s.says().equals("dry")).isPresent()) {
            both(joint, what, "not wanted", sealant.get(), dry.get());
        } else if (sort.isEmpty()) {
            tells.lack("gasket sealant", joint, "gasket type");
        } else {
            boolean grips = List.of("rubber on steel", "moulded rubber").contains(sort.get().says());
            both(joint, what, grips ? "grips dry" : "takes it", sealant.get(), sort.get());
        }
    }

    private void both(String joint, String what, String says, Statement one, Statement other) {
        tells.say(GASKET, joint, what, says, one.told().orElse(""), List.of(one.where(), other.where()));
    }

    private void passages(String joint, List<String> parts, Optional<Statement> state) {
        tells.say(GASKET, joint, "over passages told", "there", state);
        Optional<Statement> covered = sign(parts, joint, "hole covered");
        Optional<Statement> turned = sign(parts, joint, "wrong way round");
        if (covered.filter(SealingWords::seen).isPresent()) {
            tells.say(GASKET, joint, "over passages", "hole covered", covered);
        } else if (turned.filter(SealingWords::seen).isPresent()) {
            tells.say(GASKET, joint, "over passages", "wrong way round", turned);
        } else if (covered.isPresent()) {
            tells.say(GASKET, joint, "over passages", "open", covered);
        } else {
            tells.lack("gasket over passages", joint, "gasket hole covered");
        }
    }

    // --- sealant

    private void sealant(String joint) {
        Optional<Statement> state = last(List.of(SEALANT), joint, "state");
        if (state.isEmpty() && site.sheet(JOINT, joint, "sealant").isEmpty()) {
            return;
        }
        Optional<Value> bead = tells.reading(joint, "sealant bead diameter").filter(v -> !v.at().equals(Place.ENGINE));
        tells.sayBy(SEALANT, joint, "amount in question", "bead read", bead);
        if (tells.reading(joint, "joint face width").isPresent() && tells.reading(joint, "joint face gap").isPresent()) {
            tells.sayBy(SEALANT, joint, "amount in question", "face read", bead);
        }
        tells.say(SEALANT, joint, "amount in question", "looked", sign(List.of(FACE), joint, "sealant inside"));
        closing(joint);
        harm(joint);
    }

    private void closing(String joint) {
        Optional<Statement> laid = step("sealant laid", joint).filter(SealingWords::dated);
        Optional<Statement> closed = step("joint closed", joint).filter(SealingWords::dated);
        Optional<Statement> parted = step("joint parted", joint).filter(SealingWords::dated);
        if (laid.isPresent() && closed.isPresent()) {
            boolean times = told(tells.value(joint, "sealant open time"), joint, Double.POSITIVE_INFINITY);
            boolean days = tells.before(laid.get(), closed.get());
            if (times || days) {
                tells.say(SEALANT, joint, "closing told", times ? "times" : "days", closed);
            }
        }
        if (parted.isPresent()) {
            tells.say(SEALANT, joint, "closing told", "parted", parted);
            if (laid.isEmpty()) {
                tells.lack("sealant since parted", joint, "steps sealant laid");
            } else {
                Optional<Boolean> old = older(laid.get(), parted.get());
                if (old.isEmpty()) {
                    tells.lack("sealant since parted", joint, "steps sealant laid");
                } else {
                    tells.say(SEALANT, joint, "since parted", old.get() ? "not laid afresh" : "laid afresh",
                            List.of(laid.get().where(), parted.get().where()));
                }
            }
        }
        Optional<Statement> filled = step("oil filled", Place.ENGINE).or(() -> step("oil primed", Place.ENGINE))
                .or(() -> step("first start", Place.ENGINE)).filter(SealingWords::dated);
        if (closed.isPresent() && filled.isPresent() && told(tells.value(joint, "sealant cure time"), joint, TWO_DAYS)) {
            Optional<Statement> cured = step("sealant cured", joint).filter(s -> dated(s) && !tells.before(filled.get(), s));
            tells.say(SEALANT, joint, "cure told", cured.isPresent() ? "waited" : "by dates", cured.isPresent() ? cured : closed);
        }
    }

    /** Whether one step is older than another: by their days, on one day by their hours, else by their order in the record. */
    private Optional<Boolean> older(Statement one, Statement other) {
        if (tells.before(one, other) || tells.before(other, one)) {
            return Optional.of(tells.before(one, other));
        }
        String early = one.asides().getOrDefault("time", "");
        String late = other.asides().getOrDefault("time", "");
        if (!early.isEmpty() && !late.isEmpty() && early.length() == late.length()) {
            return Optional.of(early.compareTo(late) < 0);
        }
        boolean sameFile = one.where().file().equals(other.where().file());
        return sameFile ? Optional.of(one.where().line() < other.where().line()) : Optional.empty();
    }

    private boolean mixtureSensor() {
        for (Statement s : site.sheetLines("sensors")) {
            if (s.at().startsWith("mixture sensor")) {
                return true;
            }
        }
        return false;
    }

    private void harm(String joint) {
        String what = "harm in question";
        Optional<Statement> silicone = last(List.of(SEALANT), joint, "form").filter(s -> s.says().equals("silicone"));
        if (silicone.isEmpty()) {
            return;
        }
        boolean sensor = tells.word(List.of("mixture sensor", "catalyst"), Place.ENGINE, "state", HERE.toArray(new String[0])).isPresent()
                || mixtureSensor();
        if (sensor) {
            tells.say(SEALANT, joint, what, "sensor", silicone);
        }
        tells.say(SEALANT, joint, what, "fuel", site.sheet(JOINT, joint, "wetted by").filter(s -> s.says().equals("fuel")));
    }

    /** Whether a time is told sharply enough to be held against hours: with the times of day, or many days long. */
    static boolean told(Optional<Value> time, String place, double longest) {
        return time.filter(v -> v.at().equals(place) && v.low().isPresent() && (v.plain() || v.low().get().value() >= longest)).isPresent();
    }

    /** The last line of a step that was done there. */
    private Optional<Statement> step(String step, String place) {
        Statement last = null;
        for (Statement s : site.said("steps")) {
            boolean done = s.says().equals("done") || s.says().equals("passed");
            if (s.what().equals(step) && s.at().equals(place) && done) {
                last = s;
            }
        }
        return Optional.ofNullable(last);
    }

    private static boolean dated(Statement s) {
        return s.asides().containsKey("date");
    }

    /** What lies between two halves of a bearing. */
    private void bearing(String joint) {
        if (site.sheet(JOINT, joint, "halves of").isEmpty()) {
            return;
        }
        Optional<Statement> sealant = last(List.of(SEALANT), joint, "state").filter(s -> HERE.contains(s.says()));
        Optional<Statement> gasket = last(List.of(GASKET), joint, "state").filter(s -> HERE.contains(s.says()));
        tells.say(JOINT, joint, "layer told", "sealant", sealant);
        tells.say(JOINT, joint, "layer told", "gasket", gasket);
        String what = "bearing layer";
        if (gasket.isPresent() && site.sheet(JOINT, joint, "gasket part").isEmpty() && site.sheet(JOINT, joint, "gasket type").isEmpty()) {
            tells.say(JOINT, joint, what, "gasket", gasket);
        } else if (sealant.isPresent()) {
            Optional<Statement> form = last(List.of(SEALANT), joint, "form").filter(s -> !s.says().equals("unknown"));
            if (form.isEmpty()) {
                tells.lack("joint bearing layer", joint, "sealant form");
            } else {
                boolean thick = form.get().says().equals("silicone") && !siliconeOnSheet(joint);
                tells.say(JOINT, joint, what, thick ? "thick" : "thin", form);
            }
        } else {
            tells.say(JOINT, joint, what, "thin", gasket);
        }
    }

    private boolean siliconeOnSheet(String joint) {
        Optional<Statement> named = site.sheet(JOINT, joint, "sealant");
        return named.isPresent() && (named.get().says().contains("silicone") || site.sheet("sealants", named.get().says(), "form")
                .filter(s -> s.says().equals("silicone")).isPresent());
    }

    // --- faces

    private void face(String joint) {
        Optional<Statement> scored = sign(List.of(FACE), joint, "scored");
        tells.say(JOINT, joint, "scratch in question", "looked", scored);
        if (scored.isPresent()) {
            Optional<Statement> pattern = last(List.of(FACE), joint, "scored pattern").filter(s -> !s.says().equals("unknown"));
            if (!seen(scored.get())) {
                tells.say(JOINT, joint, "sealing scratch", "none", scored);
            } else if (pattern.isEmpty()) {
                tells.lack("joint sealing scratch", joint, "joint face scored pattern");
            } else {
                tells.say(JOINT, joint, "sealing scratch", pattern.get().says().equals("across") ? "across" : "along", pattern);
            }
        }
        int to = joint.indexOf(" to ");
        List<String> covers = to < 0 ? List.of(FACE) : List.of(FACE, joint.substring(0, to));
        sign(covers, joint, "dished").ifPresent(s -> tells.say(JOINT, joint, "cover holes", seen(s) ? "dished" : "flat", Optional.of(s)));
    }

    /** What makes a question of the step where parts meet under a third. */
    private void step(String joint) {
        Optional<Statement> edges = site.sheet(JOINT, joint, "edges of");
        if (edges.isEmpty()) {
            return;
        }
        String what = "step in question";
        tells.sayBy(JOINT, joint, what, "read", tells.reading(joint, "joint face step").filter(v -> !v.at().equals(Place.ENGINE)));
        site.sheet(JOINT, joint, "meets").ifPresent(face -> tells.say(JOINT, joint, what, "cut",
                tells.machined(List.of(face.says()), Place.ENGINE, tells.faceCuts())));
        for (String edge : Listed.in(edges.get().says())) {
            Optional<Value> torque = tells.reading(edge, "joint torque").filter(v -> Place.related(v.at(), edge));
            if (torque.isPresent()) {
                tells.sayBy(JOINT, joint, what, "parted", torque);
                return;
            }
        }
    }

    // --- bolts and washers that hold a fluid

    private void wetThread(String joint) {
        if (site.sheet(JOINT, joint, "holes").filter(s -> s.says().contains("wet")).isEmpty()) {
            return;
        }
        Optional<Statement> sealer = site.word(JOINT, joint, "sealant").filter(s -> !s.says().equals("unknown"));
        Optional<Statement> locker = site.word(JOINT, joint, "thread-locker").filter(s -> !s.says().equals("unknown"));
        boolean locked = locker.isPresent() && !locker.get().says().equals("none");
        tells.say(JOINT, joint, "wet thread in question", "told", sealer);
        tells.sayBy(JOINT, joint, "wet thread in question", "tightened", tells.reading(joint, "joint torque"));
        boolean sheetSeals = site.sheet(JOINT, joint, "sealant").isPresent();
        boolean sheetLocks = site.sheet(JOINT, joint, "thread-locker").filter(s -> !s.says().equals("none")).isPresent();
        String what = "wet thread";
        if (sealer.isPresent() && !sealer.get().says().equals("none")) {
            tells.say(JOINT, joint, what, sheetSeals ? "sealed as sheet" : "sealed", sealer);
        } else if (locked) {
            tells.say(JOINT, joint, what, sheetLocks ? "sealed as sheet" : "by locker", locker);
        } else if (sealer.isPresent()) {
            tells.say(JOINT, joint, what, "bare", sealer);
        } else {
            tells.lack("joint wet thread", joint, "joint sealant");
        }
    }

    private void washer(String joint) {
        boolean onSheet = site.sheet(JOINT, joint, "gasket part").filter(s -> s.says().equals(WASHER)).isPresent();
        Optional<Statement> state = last(List.of(WASHER), joint, "state");
        if (!onSheet && state.isEmpty()) {
            return;
        }
        tells.say(WASHER, joint, "use in question", "told", state);
        tells.sayBy(WASHER, joint, "use in question", "tightened", tells.reading(joint, "joint torque").filter(v -> !v.at().equals(Place.ENGINE)));
        Optional<Statement> wants = site.sheet(JOINT, joint, "gasket count").filter(s -> s.value().isPresent());
        Optional<Statement> has = last(List.of(WASHER), joint, "count").filter(s -> s.value().isPresent());
        if (wants.isPresent() && has.isPresent()) {
            boolean fewer = has.get().value().get().high() < wants.get().value().get().low();
            tells.say(WASHER, joint, "count against sheet", fewer ? "fewer" : "all", has.get().told().orElse(""),
                    List.of(has.get().where(), wants.get().where()));
        }
    }
}
