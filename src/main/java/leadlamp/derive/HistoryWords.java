package leadlamp.derive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.facts.Stated;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/**
 * Words that lay what an earlier hand left beside what stands there now: a home-made part and the signs at its place, a bodge and
 * the joints behind the same cover, a broken spring and its mates, a piston that failed and what was read to find out why.
 */
final class HistoryWords {
    private static final String ENGINE = "engine";
    private static final String JOINT = "joint";
    private static final String[] MOVED = {"fretting", "hammered", "play", "moved", "broken", "witness mark"};
    /** Pins and keys have a question of their own; a gasket that somebody cut carries nothing. */
    private static final List<String> ASKED_APART = List.of("cam gear pin", "crank key", "gasket");
    private static final String[] USED = {"kept", "second-hand", "repaired"};
    private static final List<String> SERIOUS = List.of("Catastrophic", "Critical");
    private static final int FAMILY = 2;

    private final Telling tells;
    private final Site site;

    private HistoryWords(Telling tells) {
        this.tells = tells;
        this.site = tells.site;
    }

    /** The words, as subject and property, and what each may say. */
    static Map<String, List<String>> names() {
        Map<String, List<String>> names = new TreeMap<>();
        names.put("engine home-made in question", List.of("told"));
        names.put("engine home-made place", List.of("failed before", "no sign"));
        names.put("engine home-made where it failed", List.of());
        names.put("engine overspeed in question", List.of("read", "told"));
        names.put("joint bodge beside it", List.of("family", "joint that matters"));
        names.put("piston failed by", List.of("melted", "land broken", "seized"));
        names.put("piston failure cause", List.of("mixture", "spark", "room", "jet"));
        names.put("valve spring mate broke", List.of("yes"));
        names.put("valve spring proof beside it", List.of("read", "not read"));
        return names;
    }

    static void all(Telling tells) {
        HistoryWords words = new HistoryWords(tells);
        words.homeMade();
        words.overspeed();
        words.bodges();
        for (String cylinder : tells.places("each cylinder", "cylinder bore")) {
            words.piston(cylinder);
        }
        words.springs();
    }

    // --- a home-made part, and whether its place has failed before

    private void homeMade() {
        List<Statement> made = new ArrayList<>();
        for (Statement s : site.build.statements()) {
            if (s.form() == Statement.Form.STATED && s.what().equals("origin") && s.says().equals("home-made")
                    && !s.of().endsWith(" as found") && !ASKED_APART.contains(s.of())) {
                made.add(s);
            }
        }
        if (made.isEmpty()) {
            return;
        }
        tells.say(ENGINE, Place.ENGINE, "home-made in question", "told", Optional.of(made.get(0)));
        List<Where> looked = new ArrayList<>();
        boolean all = true;
        boolean failed = false;
        for (Statement part : made) {
            Optional<Statement> sign = sign(part, true);
            if (sign.isPresent()) {
                failed = true;
                String place = part.at().equals(Place.ENGINE) ? "" : " at " + part.at();
                tells.say(ENGINE, Place.ENGINE, "home-made where it failed", part.of() + place,
                        List.of(part.where(), sign.get().where()));
                looked.add(sign.get().where());
            } else {
                Optional<Statement> clear = sign(part, false);
                all &= clear.isPresent();
                clear.ifPresent(s -> looked.add(s.where()));
            }
        }
        if (failed || all) {
            tells.say(ENGINE, Place.ENGINE, "home-made place", failed ? "failed before" : "no sign", looked);
        } else {
            tells.lack("engine home-made place", Place.ENGINE, made.get(0).of() + " play");
        }
    }

    /** What was seen where the part stands, or looked for there: of the part itself, or of what it touches at that place. */
    private Optional<Statement> sign(Statement part, boolean seen) {
        for (Statement s : site.build.statements()) {
            boolean look = s.form() == Statement.Form.SEEN || !seen && s.form() == Statement.Form.NOT_SEEN && s.told().isEmpty();
            boolean there = s.of().equals(part.of()) && site.related(s.at(), part.at())
                    || !part.at().equals(Place.ENGINE) && s.at().equals(part.at());
            if (look && there && List.of(MOVED).contains(s.what())) {
                return Optional.of(s);
            }
        }
        return Optional.empty();
    }

    // --- speed

    private void overspeed() {
        Optional<Statement> read = Optional.empty();
        for (Statement s : site.build.statements()) {
            if (read.isEmpty() && s.form() == Statement.Form.READ && s.of().equals("engine highest speed")) {
                read = Optional.of(s);
            }
        }
        tells.say(ENGINE, Place.ENGINE, "overspeed in question", "read", read);
        if (read.isEmpty()) {
            tells.say(ENGINE, Place.ENGINE, "overspeed in question", "told", tells.past("over-revved"));
        }
    }

    // --- bodges behind one cover

    /** Two bodges behind one cover, or one on a joint that matters: each other joint behind that cover is one of that hand's. */
    private void bodges() {
        Map<String, List<String>> behind = new TreeMap<>();
        for (String joint : Joints.joints(site, "each joint with a torque")) {
            site.sheet(JOINT, joint, "hidden by").ifPresent(s -> behind.computeIfAbsent(s.says(), c -> new ArrayList<>()).add(joint));
        }
        List<Statement> marks = behind.isEmpty() ? List.of() : marks();
        for (List<String> joints : behind.values()) {
            Map<String, Set<Where>> found = new HashMap<>();
            boolean serious = false;
            int many = 0;
            for (String joint : joints) {
                Set<Where> own = bodgesAt(joint, marks);
                many += own.size();
                if (!own.isEmpty()) {
                    found.put(joint, own);
                    serious |= site.sheet(JOINT, joint, "harm if it lets go").map(s -> SERIOUS.contains(s.says())).orElse(false);
                }
            }
            for (String joint : many >= FAMILY || serious ? joints : List.<String>of()) {
                Set<Where> where = new LinkedHashSet<>();
                found.forEach((other, lines) -> {
                    if (!other.equals(joint)) {
                        where.addAll(lines);
                    }
                });
                if (!where.isEmpty()) {
                    List<Where> sorted = new ArrayList<>(where);
                    sorted.sort(null);
                    tells.say(JOINT, joint, "bodge beside it", serious ? "joint that matters" : "family", sorted);
                }
            }
        }
    }

    /** What a careless hand may leave, wherever it is. A home-made part that goes in new is of this builder's own hand. */
    private List<Statement> marks() {
        List<Statement> marks = new ArrayList<>();
        for (Statement s : site.build.statements()) {
            boolean sign = s.form() == Statement.Form.SEEN && List.of("tool marks", "sealant in layers").contains(s.what());
            boolean stated = s.form() == Statement.Form.STATED && !s.at().equals(Place.ENGINE);
            boolean insert = stated && s.of().equals(JOINT) && s.what().equals("condition") && s.says().equals("repaired");
            boolean homeMade = stated && s.what().equals("origin") && s.says().equals("home-made")
                    && site.word(s.of(), s.at(), "state").filter(state -> List.of("new", "ready").contains(state.says())).isEmpty();
            if (sign && !s.at().equals(Place.ENGINE) || insert || homeMade) {
                marks.add(s);
            }
        }
        return marks;
    }

    /** Those of them that are left at a joint. What the sheet itself has there is none. */
    private Set<Where> bodgesAt(String joint, List<Statement> marks) {
        Set<Where> bodges = new LinkedHashSet<>();
        for (Statement s : marks) {
            boolean bySheet = s.what().equals("condition") && site.sheet(JOINT, joint, "condition").isPresent();
            if (!bySheet && site.related(s.at(), joint)) {
                bodges.add(s.where());
            }
        }
        Optional<Stated> lengths = tells.told(JOINT, joint, "lengths against sheet").filter(s -> !s.says().equals("same"));
        lengths.ifPresent(s -> bodges.add(s.places().get(0)));
        return bodges;
    }

    // --- a piston that was renewed

    private void piston(String cylinder) {
        Optional<Statement> fresh = tells.word(List.of("piston"), cylinder, "state", "new");
        if (fresh.isEmpty()) {
            return;
        }
        tells.say("piston", cylinder, "failed by", "melted", tells.seen(List.of("piston crown"), cylinder, "melted"));
        tells.say("piston", cylinder, "failed by", "land broken", tells.seen(List.of("ring land"), cylinder, "broken", "cracked"));
        tells.say("piston", cylinder, "failed by", "seized", tells.seen(List.of("piston skirt"), cylinder, "scuffed"));
        tells.sayBy("piston", cylinder, "failure cause", "mixture", tells.reading(cylinder, "injector flow", "exhaust mixture"));
        tells.sayBy("piston", cylinder, "failure cause", "room", tells.value(cylinder, "piston clearance"));
        tells.say("piston", cylinder, "failure cause", "jet", tells.looked(List.of("piston jet"), cylinder, "blocked", "bent", "broken"));
        tells.sayBy("piston", cylinder, "failure cause", "spark", tells.reading(Place.ENGINE, "engine ignition timing"));
    }

    // --- springs beside a broken one

    private void springs() {
        List<Statement> broken = new ArrayList<>();
        for (Statement s : tells.signs("valve spring", "broken")) {
            if (s.form() == Statement.Form.SEEN) {
                broken.add(s);
            }
        }
        if (broken.isEmpty()) {
            return;
        }
        for (String valve : tells.places("each valve", "valve spring seat load", "valve spring free length")) {
            List<Where> mates = new ArrayList<>();
            for (Statement s : broken) {
                if (!site.related(s.at(), valve)) {
                    mates.add(s.where());
                }
            }
            Optional<Statement> stays = tells.word(List.of("valve spring"), valve, "state", USED);
            if (mates.isEmpty() || stays.isEmpty()) {
                continue;
            }
            tells.say("valve spring", valve, "mate broke", "yes", mates);
            Optional<Statement> said = tells.word(List.of("valve spring seat load", "valve spring free length"), valve, "figure", "not read");
            Optional<Statement> cracks = tells.looked(List.of("valve spring"), valve, "cracked");
            if (tells.reading(valve, "valve spring seat load", "valve spring free length", "valve spring open load").isPresent()) {
                tells.sayBy("valve spring", valve, "proof beside it", "read",
                        tells.reading(valve, "valve spring seat load", "valve spring free length", "valve spring open load"));
            } else if (cracks.isPresent()) {
                tells.say("valve spring", valve, "proof beside it", "read", cracks);
            } else if (said.isPresent()) {
                tells.say("valve spring", valve, "proof beside it", "not read", said);
            } else {
                tells.lack("valve spring proof beside it", valve, "valve spring seat load");
            }
        }
    }
}
