package leadlamp.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import leadlamp.derive.Missing;
import leadlamp.facts.Ask;
import leadlamp.facts.Fact;
import leadlamp.facts.NotSeen;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.record.Place;
import leadlamp.words.Part;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * What a way needs, and what of it is not there.
 *
 * <p>Where a need is wanted: at all places of its own group where the check is asked of the whole engine; else at those
 * related to the place asked, and at all of them where none is related. A group that the sheet does not settle has the
 * places that the record names. A need of a group that the sheet shows to be empty is void. So one measured bore never
 * clears five others.
 */
final class Needs {
    private static final String FIGURE = " figure";
    /** What is said of a step that was not done. It meets no need, and yet it was recorded. */
    static final String LEFT_OUT = "left out";
    private static final int DEEPEST = 4;
    private static final int FEW = 8;
    private static final Ask ENGINE = new Ask("", "", Place.ENGINE);
    private static final Sought NO_RULE = new Sought(List.of(), Sides.NONE, Sides.NONE, false);

    private final Recorded recorded;
    private final Groups groups;
    private final Vocabulary words;
    private final Map<String, ConditionPage> conditions;
    private final Map<String, List<Missing>> missing = new HashMap<>();
    private final Map<String, Optional<Need>> taken;
    private final Map<String, Wanted> wanted = new HashMap<>();

    /** Where a need of a group is wanted: at which of its places, and of those at which for a place asked. */
    private static final class Wanted {
        private final List<String> places;
        private final boolean settled;
        private final Map<String, List<String>> byPlace = new HashMap<>();

        Wanted(List<String> places, boolean settled) {
            this.places = places;
            this.settled = settled;
        }
    }

    /**
     * Why a need is not met at one place.
     *
     * @param readings what would settle it
     */
    record Lack(Gap.Why why, List<String> readings, OptionalDouble outside, String chief) {
        static Lack of(Gap.Why why, String reading) {
            return new Lack(why, List.of(reading), OptionalDouble.empty(), "");
        }

        /** Whether another place lacks the same, so that both can be told together. */
        boolean alike(Lack other) {
            return why == other.why && readings.equals(other.readings) && outside.isEmpty() && other.outside.isEmpty();
        }
    }

    /**
     * A need that is not met.
     *
     * @param places where, in the order of the group
     */
    record Unmet(Need need, Lack lack, List<String> places) {
    }

    /** What met the needs of an answer. */
    static final class Met {
        private final List<Fact> grounds = new ArrayList<>();
        private final List<Verdict> margins = new ArrayList<>();

        /** Made once there are so many that to look through them takes longer. */
        private Map<Fact, Boolean> known;

        /** Each once, in the order in which the needs were met. */
        List<Fact> grounds() {
            return grounds;
        }

        List<Verdict> margins() {
            return margins;
        }

        void ground(Fact fact) {
            if (fresh(fact, grounds)) {
                grounds.add(fact);
            }
        }

        private void margin(Verdict verdict) {
            if (fresh(verdict, margins)) {
                margins.add(verdict);
            }
        }

        private boolean fresh(Fact fact, List<? extends Fact> among) {
            if (known == null && among.size() < FEW) {
                for (Fact one : among) {
                    if (one == fact) {
                        return false;
                    }
                }
                return true;
            }
            if (known == null) {
                known = new IdentityHashMap<>();
                grounds.forEach(ground -> known.put(ground, true));
                margins.forEach(margin -> known.put(margin, true));
            }
            return known.put(fact, true) == null;
        }
    }

    /**
     * @param taken words taken apart already; more are added
     */
    Needs(Recorded recorded, Groups groups, Vocabulary words, Collection<Missing> missing,
            Map<String, Optional<Need>> taken, Map<String, ConditionPage> conditions) {
        this.conditions = conditions;
        this.recorded = recorded;
        this.groups = groups;
        this.words = words;
        this.taken = taken;
        for (Missing lacking : missing) {
            this.missing.computeIfAbsent(lacking.quantity(), q -> new ArrayList<>()).add(lacking);
            words.quantity(lacking.quantity()).filter(q -> !q.kind().equals(q.name()))
                    .ifPresent(q -> this.missing.computeIfAbsent(q.kind(), k -> new ArrayList<>()).add(lacking));
        }
    }

    /** A word taken apart, for this ask; empty where it names nothing here. */
    Optional<Need> need(String word, Ask ask) {
        Optional<Need> need = taken.get(word);
        if (need == null) {
            need = Need.of(word, words);
            taken.put(word, need);
        }
        if (need.isPresent() && need.get().kind() == Need.Kind.ANY) {
            return need.get().at(ask, words);
        }
        return need;
    }

    /** What a way lacks at the place asked; what meets its needs is put into {@code met}. */
    List<Unmet> unmet(Check check, Way way, Ask ask, Met met) {
        List<Unmet> unmet = new ArrayList<>();
        List<String> needs = way.needs();
        for (int i = 0; i < needs.size(); i++) {
            Optional<Need> need = need(needs.get(i), ask);
            if (need.isPresent() && need.get().kind() == Need.Kind.CONDITION) {
                settle(need.get(), unmet, met);
            } else if (need.isPresent()) {
                unmet.addAll(unmet(need.get(), ask, way.sought(check, i, need.get()), met));
            }
        }
        return unmet;
    }

    /** A condition that does not hold is known not to once all that settles it is known; what is lacking for that is lacking here. */
    private void settle(Need condition, List<Unmet> unmet, Met met) {
        ConditionPage page = conditions.get(condition.of());
        if (page == null || !recorded.of(condition.word()).isEmpty()) {
            return;
        }
        for (String word : page.settledBy()) {
            Optional<Need> need = need(word, ENGINE);
            if (need.isPresent() && need.get().kind() != Need.Kind.CONDITION) {
                unmet.addAll(unmet(need.get(), ENGINE, NO_RULE, met));
            }
        }
    }

    /** Whether something of this name is known at the place asked, whatever it says. */
    boolean known(Need need, Ask ask) {
        return unmet(need, ask, NO_RULE, new Met()).isEmpty();
    }

    private List<Unmet> unmet(Need need, Ask ask, Sought sought, Met met) {
        List<Unmet> unmet = List.of();
        for (String place : wanted(need, ask.at(), sought.places())) {
            Lack lack = lack(need, place, sought, met);
            if (lack != null) {
                unmet = unmet.isEmpty() ? new ArrayList<>() : unmet;
                Unmet same = null;
                for (Unmet one : unmet) {
                    same = one.lack().alike(lack) ? one : same;
                }
                if (same == null) {
                    same = new Unmet(need, lack, new ArrayList<>());
                    unmet.add(same);
                }
                same.places().add(place);
            }
        }
        return unmet;
    }

    /** The places at which a need is wanted. */
    List<String> wanted(Need need, String asked, List<String> quoted) {
        if (!quoted.isEmpty()) {
            return quoted;
        }
        if (need.kind() == Need.Kind.STEP || need.kind() == Need.Kind.CONDITION || need.group().isEmpty()) {
            return List.of(asked);
        }
        Wanted of = wanted.get(need.word());
        if (of == null) {
            Groups.Members members = groups.of(need.group());
            of = new Wanted(own(need, members.places()), members.settled());
            wanted.put(need.word(), of);
        }
        List<String> places = of.byPlace.get(asked);
        if (places == null) {
            places = find(need, asked, of);
            of.byPlace.put(asked, places);
        }
        return places;
    }

    private List<String> find(Need need, String asked, Wanted of) {
        if (of.places.isEmpty()) {
            return of.settled ? List.of() : List.of(asked);
        }
        if (asked.equals(Place.ENGINE)) {
            return of.places;
        }
        if (Untold.is(asked)) {
            return untold(need, asked, of.places);
        }
        List<String> related = new ArrayList<>(4);
        Place here = Place.of(asked);
        for (String place : of.places) {
            if (here.related(Place.of(place))) {
                related.add(place);
            }
        }
        return related.isEmpty() ? of.places : related;
    }

    /** Where a group holds several parts by their names (seals, sensors), a need on one of them is wanted at its own. */
    private List<String> own(Need need, List<String> places) {
        if (places.contains(need.subject())) {
            return List.of(need.subject());
        }
        Optional<Part> part = need.kind() == Need.Kind.READING ? words.quantity(need.of()).flatMap(q -> words.part(q.of()))
                : words.part(need.subject());
        if (part.isEmpty() || !part.get().group().equals(need.group())) {
            return places;
        }
        Optional<List<String>> own = groups.places(part.get());
        if (own.isEmpty() || own.get().size() == places.size()) {
            return places;
        }
        List<String> kept = new ArrayList<>(places);
        kept.retainAll(own.get());
        return kept.isEmpty() ? places : kept;
    }

    /** Asked of one place that is not told which: what stands there itself, else what stands at all that it may be. */
    private List<String> untold(Need need, String asked, List<String> places) {
        for (Fact fact : recorded.of(need.word())) {
            if (fact.at().equals(asked)) {
                return List.of(asked);
            }
        }
        List<String> among = new ArrayList<>();
        for (String place : places) {
            if (Untold.mayBe(asked, place)) {
                among.add(place);
            }
        }
        return among.isEmpty() ? places : among;
    }

    private static boolean stands(Fact fact, String place) {
        return standsAt(fact.at(), place);
    }

    /** Whether what is said at one place stands at the other: the same, a shorter or a longer one; of an untold place only itself. */
    static boolean standsAt(String at, String place) {
        return Untold.is(at) ? at.equals(place) : Place.related(at, place);
    }

    /** Why the need is not met there; null where it is. */
    private Lack lack(Need need, String place, Sought sought, Met met) {
        return switch (need.kind()) {
            case READING -> reading(need, place, sought.sides(), sought.all(), met);
            case WORD -> word(need, place, met);
            case STEP -> step(need, place, met);
            case SIGN -> sign(need, place, met, sought.left());
            case SHEET -> sheet(need, place, met);
            case CONDITION, ANY -> null;
        };
    }

    // --- readings and what is worked out of them

    private Lack reading(Need need, String place, Sides sides, Sides all, Met met) {
        List<Value> own = new ArrayList<>();
        boolean told = false;
        for (Fact fact : recorded.near(need.word(), place)) {
            if (fact instanceof Value value) {
                if (value.told().isEmpty()) {
                    own.add(value);
                } else {
                    told = true;
                }
            }
        }
        if (own.isEmpty()) {
            return told && !foundTold(need, place, sides) ? Lack.of(Gap.Why.ONLY_TOLD, need.word())
                    : told ? null : noReading(need, place, 0);
        }
        Lack lack = sides.verdict() ? verdict(need, place, own, sides, all, met) : null;
        if (lack == null) {
            own.forEach(met::ground);
        }
        return lack;
    }

    /** Whether what was told is outside: the rule finds it, or something excuses it. */
    private boolean foundTold(Need need, String place, Sides sides) {
        for (Verdict verdict : recorded.verdictsNear(need.word(), place)) {
            if (sides.least() && verdict.isBelow() || sides.most() && verdict.isAbove()) {
                return true;
            }
        }
        return false;
    }

    private Lack verdict(Need need, String place, List<Value> own, Sides sides, Sides all, Met met) {
        List<Verdict> there = new ArrayList<>();
        List<Verdict> near = new ArrayList<>();
        for (Verdict verdict : recorded.verdictsNear(need.word(), place)) {
            if (verdict.value().told().isEmpty()) {
                near.add(verdict);
                if (verdict.at().equals(place)) {
                    there.add(verdict);
                }
            }
        }
        List<Verdict> verdicts = there.isEmpty() ? near : there;
        boolean asks = false;
        boolean elsewhere = false;
        Lack lack = null;
        for (Verdict verdict : verdicts) {
            boolean least = verdict.limit().least().isPresent();
            boolean most = verdict.limit().most().isPresent();
            elsewhere |= least && all.least() || most && all.most();
            if (sides.least() && least) {
                asks = true;
                lack = worse(lack, side(need, verdict.least()));
            }
            if (sides.most() && most) {
                asks = true;
                lack = worse(lack, side(need, verdict.most()));
            }
        }
        if (!asks && !elsewhere) {
            return Lack.of(verdicts.isEmpty() && oneSided(own, sides) ? Gap.Why.ONE_SIDE_ONLY : Gap.Why.NO_LIMIT, need.word());
        }
        if (lack == null) {
            verdicts.forEach(met::margin);
        }
        return lack;
    }

    /** A bound says nothing of the side at which it is open, and then there is no verdict at all. */
    private static boolean oneSided(List<Value> values, Sides sides) {
        for (Value value : values) {
            if (sides.least() && value.low().isEmpty() || sides.most() && value.high().isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private Lack side(Need need, Optional<Verdict.Side> side) {
        if (side.isEmpty()) {
            return Lack.of(Gap.Why.ONE_SIDE_ONLY, need.word());
        }
        if (side.get().standing() == Verdict.Standing.UNDECIDED) {
            return new Lack(Gap.Why.TOO_COARSE, readingsBehind(need.of()), OptionalDouble.of(side.get().outside()),
                    side.get().chiefSource());
        }
        return null;
    }

    private static Lack worse(Lack one, Lack other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return other.outside().orElse(0) > one.outside().orElse(0) ? other : one;
    }

    /** The readings that a quantity is worked out from, down to those that are read; the quantity itself where it is read. */
    private List<String> readingsBehind(String name) {
        Set<String> readings = new LinkedHashSet<>();
        behind(name, readings, 0);
        return readings.isEmpty() ? List.of(name) : List.copyOf(readings);
    }

    private void behind(String name, Set<String> readings, int depth) {
        Optional<Quantity> quantity = words.quantity(name);
        if (quantity.isEmpty()) {
            return;
        }
        if (quantity.get().from().isEmpty() || depth == DEEPEST || read(name)) {
            readings.add(name);
            return;
        }
        for (String from : quantity.get().from()) {
            behind(from, readings, depth + 1);
        }
    }

    private boolean read(String name) {
        for (Fact fact : recorded.of(name)) {
            if (fact instanceof Value value && !value.derived()) {
                return true;
            }
        }
        return false;
    }

    private Lack noReading(Need need, String place, int depth) {
        String word = need.word();
        Gap.Why said = said(need, place);
        if (said != null) {
            return Lack.of(said, word);
        }
        Lack behind = depth < DEEPEST ? worked(need, place, depth) : null;
        return behind == null ? Lack.of(Gap.Why.NOT_RECORDED, word) : behind;
    }

    /** What the record says in place of the figure; null where it says nothing. */
    private Gap.Why said(Need need, String place) {
        String word = need.word();
        if (near(recorded.leftOut(word), place)) {
            return Gap.Why.NOT_READABLE;
        }
        for (Fact fact : recorded.near(word + FIGURE, place)) {
            if (fact instanceof Stated figure) {
                return switch (figure.says()) {
                    case "good" -> figure.told().isEmpty() ? Gap.Why.FIGURE_NOT_KEPT : Gap.Why.ONLY_TOLD;
                    case "unknown" -> Gap.Why.UNKNOWN;
                    default -> Gap.Why.NOT_RECORDED;
                };
            }
        }
        if (word.equals("joint torque")) {
            for (Fact fact : recorded.near("joint torque said", place)) {
                if (fact instanceof Stated torque) {
                    return torque.says().equals("not yet") ? Gap.Why.NOT_RECORDED
                            : torque.says().equals("as found") ? Gap.Why.AS_FOUND_ONLY : Gap.Why.UNKNOWN;
                }
            }
        }
        if (whichNotTold(recorded.of(word), place)) {
            return Gap.Why.WHICH_ONE_NOT_TOLD;
        }
        if (need.what().isEmpty()) {
            if (!recorded.near(word + FactsOf.AS_FOUND, place).isEmpty()) {
                return Gap.Why.AS_FOUND_ONLY;
            }
        }
        return null;
    }

    /** Why a value could not be worked out: by the readings that it lacks. */
    private Lack worked(Need need, String place, int depth) {
        Optional<Quantity> quantity = words.quantity(need.of());
        if (quantity.isEmpty() || !need.what().isEmpty()
                || quantity.get().from().isEmpty() && !missing.containsKey(need.of())) {
            return null;
        }
        Set<String> readings = lackingAt(need.of(), place);
        if (readings.isEmpty()) {
            behind(need.of(), readings, 0);
            readings.removeIf(reading -> there(reading, place));
        }
        return readings.isEmpty() ? null : behind(need, readings, place, depth);
    }

    private boolean there(String reading, String place) {
        boolean elsewhere = false;
        boolean related = false;
        for (Fact fact : recorded.of(reading)) {
            if (fact instanceof Value value && value.told().isEmpty()) {
                if (stands(value, place)) {
                    return true;
                }
                elsewhere = true;
            }
        }
        Optional<Need> need = need(reading, new Ask("", "", place));
        for (String wanted : need.isPresent() ? wanted(need.get(), place, List.of()) : List.<String>of()) {
            related |= Place.related(wanted, place);
        }
        return elsewhere && !related;
    }

    /** What a sum lacks at a place. */
    private Set<String> lackingAt(String name, String place) {
        Set<String> readings = new LinkedHashSet<>();
        for (Missing lacking : missing.getOrDefault(name, List.of())) {
            if (Place.related(lacking.at(), place)) {
                readings.addAll(lacking.readings());
            }
        }
        return readings;
    }

    /** Whether nothing is lacking for a word but a finer reading. */
    private boolean coarse(String name, String place) {
        for (Missing lacking : missing.getOrDefault(name, List.of())) {
            if (lacking.coarse() && Place.related(lacking.at(), place)) {
                return true;
            }
        }
        return false;
    }

    /** By the readings that are lacking: the first of them for which the record gives a reason gives it. */
    private Lack behind(Need need, Set<String> readings, String place, int depth) {
        Gap.Why why = coarse(need.word(), place) ? Gap.Why.TOO_COARSE : null;
        boolean sheet = true;
        for (String reading : readings) {
            sheet &= reading.startsWith("sheet ");
            Optional<Need> behind = reading.startsWith("sheet ") || reading.equals(need.word()) ? Optional.empty()
                    : need(reading, new Ask("", "", place));
            if (why == null && behind.isPresent()) {
                why = switch (behind.get().kind()) {
                    case READING -> whyNot(behind.get(), place, depth);
                    case WORD, STEP, SIGN -> whyNoWord(behind.get(), place);
                    case SHEET, CONDITION, ANY -> null;
                };
            }
        }
        return new Lack(sheet ? Gap.Why.SHEET_SILENT : why == null ? Gap.Why.NOT_RECORDED : why,
                List.copyOf(readings), OptionalDouble.empty(), "");
    }

    private Gap.Why whyNoWord(Need word, String place) {
        for (String where : wanted(word, place, List.of())) {
            Lack lack = lack(word, where, NO_RULE, new Met());
            if (lack != null && lack.why() != Gap.Why.NOT_RECORDED) {
                return lack.why();
            }
        }
        return null;
    }

    private Gap.Why whyNot(Need reading, String place, int depth) {
        for (String where : wanted(reading, place, List.of())) {
            boolean told = false;
            boolean there = false;
            for (Fact fact : recorded.of(reading.word())) {
                if (fact instanceof Value value && stands(value, where)) {
                    there |= value.told().isEmpty();
                    told = true;
                }
            }
            Gap.Why why = there ? null : told ? Gap.Why.ONLY_TOLD : noReading(reading, where, depth + 1).why();
            if (why != null && why != Gap.Why.NOT_RECORDED) {
                return why;
            }
        }
        return null;
    }

    // --- words

    private Lack word(Need need, String place, Met met) {
        boolean told = false;
        boolean unknown = false;
        boolean there = false;
        for (Fact fact : recorded.near(need.word(), place)) {
            if (fact instanceof Stated said) {
                if (!said.told().isEmpty()) {
                    told = true;
                } else if (said.says().equals("unknown")) {
                    unknown = true;
                } else if (says(need, said)) {
                    met.ground(said);
                    there = true;
                }
            }
        }
        if (there || besideNoSign(need, place, met)) {
            return null;
        }
        Gap.Why why = told ? Gap.Why.ONLY_TOLD : unknown ? Gap.Why.UNKNOWN : said(need, place);
        if (why == null && !need.asFound() && words.part(need.of()).isPresent()
                && stands(need.of() + FactsOf.AS_FOUND + " " + need.what(), place)) {
            why = Gap.Why.AS_FOUND_ONLY;
        }
        Set<String> readings = why == null ? lackingAt(need.word(), place) : Set.of();
        return readings.isEmpty() ? Lack.of(why == null ? Gap.Why.NOT_RECORDED : why, need.word())
                : behind(need, readings, place, 0);
    }

    private boolean stands(String word, String place) {
        return !recorded.near(word, place).isEmpty();
    }

    /** A part that is there, bought or thrown away has said nothing of the state that it goes in with. */
    private static boolean says(Need need, Stated said) {
        return !need.what().equals("state") || !said.says().equals("there") && !said.says().equals("ready")
                && !said.says().equals("scrapped");
    }

    /** A word beside a sign (`scuffed pattern`) is not wanted where the sign was looked for and is not there. */
    private boolean besideNoSign(Need need, String place, Met met) {
        String what = need.what();
        for (int end = what.lastIndexOf(' '); end > 0; end = what.lastIndexOf(' ', end - 1)) {
            String sign = what.substring(0, end);
            if (words.sign(sign).isPresent()) {
                for (Fact fact : recorded.of(need.of() + " " + sign)) {
                    if (fact instanceof NotSeen && stands(fact, place)) {
                        met.ground(fact);
                        return true;
                    }
                }
            }
        }
        return false;
    }

    // --- steps

    private Lack step(Need need, String place, Met met) {
        boolean told = false;
        boolean unknown = false;
        boolean leftOut = false;
        for (Fact fact : recorded.of(need.word())) {
            if (!(fact instanceof Stated said) || !ofThis(said, place)) {
                continue;
            }
            if (!said.told().isEmpty()) {
                told = true;
                continue;
            }
            switch (said.says()) {
                case "unknown" -> unknown = true;
                case LEFT_OUT -> leftOut = true;
                case "next", "planned" -> {
                }
                default -> {
                    met.ground(said);
                    return null;
                }
            }
        }
        return Lack.of(leftOut ? Gap.Why.LEFT_OUT : told ? Gap.Why.ONLY_TOLD : unknown ? Gap.Why.UNKNOWN
                : Gap.Why.NOT_RECORDED, need.word());
    }

    /** Whether a step's line is about this place: said of the engine, of it, or of a part that is no place. */
    private boolean ofThis(Stated said, String place) {
        return place.equals(Place.ENGINE) || Place.related(said.at(), place)
                || !words.part(place).isPresent() && words.part(said.at()).isPresent() && !said.at().contains(" to ");
    }

    // --- signs

    private Lack sign(Need need, String place, Met met, boolean left) {
        boolean told = false;
        boolean looked = false;
        boolean found = false;
        for (Fact fact : recorded.near(need.word(), place)) {
            if (fact instanceof Seen seen && !seen.told().isEmpty()) {
                told = true;
            } else if (left && fact instanceof Seen seen && !seen.isLeft()) {
                found = true;
            } else {
                met.ground(fact);
                looked = true;
            }
        }
        if (looked || clearOfKind(need, place, met)) {
            return null;
        }
        Gap.Why why = found ? Gap.Why.AS_FOUND_ONLY : told ? Gap.Why.ONLY_TOLD : null;
        if (why == null && whichNotTold(recorded.of(need.word()), place)) {
            why = Gap.Why.WHICH_ONE_NOT_TOLD;
        }
        if (why == null && near(recorded.leftOut(need.word()), place)) {
            why = Gap.Why.NOT_READABLE;
        }
        if (why == null) {
            for (Fact fact : recorded.of("observations " + need.of())) {
                if (fact instanceof Stated said && said.says().equals("unknown") && stands(said, place)) {
                    why = Gap.Why.UNKNOWN;
                }
            }
        }
        return Lack.of(why == null ? Gap.Why.NOT_RECORDED : why, need.word());
    }

    /** A sign that was looked for on `shell` and is not there is not on the main shell either. */
    private boolean clearOfKind(Need need, String place, Met met) {
        Optional<Part> part = words.part(need.of());
        if (part.isEmpty()) {
            return false;
        }
        for (String kind : part.get().kinds()) {
            for (Fact fact : recorded.of(kind + " " + need.what())) {
                if (fact instanceof NotSeen clear && clear.of().equals(kind) && stands(clear, place)) {
                    met.ground(clear);
                    return true;
                }
            }
        }
        return false;
    }

    // --- the sheet

    private Lack sheet(Need need, String place, Met met) {
        List<Fact> there = recorded.near(need.word(), place);
        if (!there.isEmpty()) {
            met.ground(there.get(0));
            return null;
        }
        return Lack.of(Gap.Why.SHEET_SILENT, need.word());
    }

    private static boolean whichNotTold(List<Fact> facts, String place) {
        for (Fact fact : facts) {
            if (Untold.mayBe(fact.at(), place)) {
                return true;
            }
        }
        return false;
    }

    private static boolean near(List<String> places, String place) {
        for (String one : places) {
            if (Place.related(one, place) || Untold.mayBe(one, place)) {
                return true;
            }
        }
        return false;
    }
}
