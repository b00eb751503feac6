package leadlamp.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.facts.Ask;
import leadlamp.facts.Fact;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.record.Place;

/** Which checks are asked, of what and where. */
final class Asks {
    private static final String RECORDED = "recorded";

    private final Groups groups;
    private final Recorded recorded;
    private final Needs needs;
    private final Progress progress;
    private final Map<String, ConditionPage> conditions;
    private final Map<String, Holds> settled = new HashMap<>();
    private final Map<String, Map<String, List<Fact>>> here = new HashMap<>();

    /** Whether words hold, as far as the record tells. */
    enum Holds {
        YES, NO, OPEN
    }

    /**
     * One question asked.
     *
     * @param silent whether it stands for places that the sheet does not give
     */
    record Question(Check check, Ask ask, boolean silent) {
    }

    Asks(Groups groups, Recorded recorded, Needs needs, Progress progress, Map<String, ConditionPage> conditions) {
        this.groups = groups;
        this.recorded = recorded;
        this.needs = needs;
        this.progress = progress;
        this.conditions = conditions;
    }

    /** All questions, check by check, each at its places in the order of the sheet. */
    List<Question> all(List<Check> checks) {
        List<Question> all = new ArrayList<>();
        for (Check check : checks) {
            Groups.Members members = groups.of(check.askedOf());
            boolean ofEngine = false;
            for (Groups.Spot spot : members.spots()) {
                ofEngine |= spot.of().isEmpty() && spot.at().equals(Place.ENGINE);
                if (Untold.is(spot.at()) && !speaksOf(check, spot)) {
                    continue;
                }
                add(check, new Ask(check.id(), spot.of(), spot.at()), false, all);
            }
            if (!members.settled() && !ofEngine) {
                add(check, new Ask(check.id(), "", Place.ENGINE), true, all);
            }
        }
        return all;
    }

    private void add(Check check, Ask ask, boolean silent, List<Question> all) {
        if (holds(check.applies(), ask) != Holds.NO) {
            all.add(new Question(check, ask, silent));
        }
    }

    /** Whether the record says, at this place of which it is not told which it is, anything that the check wants to know. */
    private boolean speaksOf(Check check, Groups.Spot spot) {
        Ask ask = new Ask(check.id(), spot.of(), spot.at());
        for (Way way : check.ways()) {
            for (String word : way.needs()) {
                Optional<Need> need = needs.need(word, ask);
                if (need.isPresent()) {
                    for (Fact fact : recorded.of(need.get().word())) {
                        if (fact.at().equals(spot.at())) {
                            return true;
                        }
                    }
                }
            }
        }
        return false;
    }

    /** Whether all words of an `applies` hold where it is asked: one known not to hold is enough for no. */
    Holds holds(Map<String, List<String>> applies, Ask ask) {
        Holds all = Holds.YES;
        for (Map.Entry<String, List<String>> each : applies.entrySet()) {
            Holds one = holds(each.getKey(), each.getValue(), ask);
            if (one == Holds.NO) {
                return Holds.NO;
            }
            if (one == Holds.OPEN) {
                all = Holds.OPEN;
            }
        }
        return all;
    }

    /** The facts by which words of an `applies` are known not to hold there: what is clear because of them rests on them. */
    List<Fact> against(Map<String, List<String>> applies, Ask ask) {
        List<Fact> against = new ArrayList<>();
        for (Map.Entry<String, List<String>> each : applies.entrySet()) {
            Optional<Need> need = needs.need(each.getKey(), ask);
            if (need.isEmpty() || holds(each.getKey(), each.getValue(), ask) != Holds.NO) {
                continue;
            }
            if (need.get().kind() == Need.Kind.CONDITION) {
                ConditionPage page = conditions.get(need.get().of());
                page.settledBy().forEach(word -> against.addAll(recorded.of(word)));
                continue;
            }
            List<String> wanted = needs.wanted(need.get(), ask.at(), List.of());
            for (Fact fact : recorded.of(need.get().word())) {
                if (here(fact.at(), ask.at(), wanted)) {
                    against.add(fact);
                }
            }
        }
        return against;
    }

    private Holds holds(String word, List<String> says, Ask ask) {
        Optional<Need> need = needs.need(word, ask);
        if (need.isEmpty()) {
            return Holds.OPEN;
        }
        if (need.get().kind() == Need.Kind.CONDITION) {
            return condition(need.get().of());
        }
        boolean any = says.contains(RECORDED);
        boolean recordedHere = false;
        boolean leftOut = false;
        for (Fact fact : here(need.get(), ask)) {
            recordedHere = true;
            leftOut |= said(fact).equals(Needs.LEFT_OUT);
            if (any || says.contains(said(fact))) {
                return Holds.YES;
            }
        }
        if (any) {
            return Holds.NO;
        }
        if (need.get().kind() == Need.Kind.STEP && !recordedHere) {
            return step(need.get().what(), says);
        }
        if (need.get().kind() == Need.Kind.STEP && leftOut) {
            // It meets no need on the step, and yet it tells for certain that the step was not done.
            return Holds.NO;
        }
        return needs.known(need.get(), ask) ? Holds.NO : Holds.OPEN;
    }

    /** What is recorded of a word and concerns the place asked. Many checks ask for one word at one place. */
    private List<Fact> here(Need need, Ask ask) {
        if (!ask.of().isEmpty()) {
            return find(need, ask);
        }
        Map<String, List<Fact>> byPlace = here.get(need.word());
        if (byPlace == null) {
            byPlace = new HashMap<>();
            here.put(need.word(), byPlace);
        }
        List<Fact> facts = byPlace.get(ask.at());
        if (facts == null) {
            facts = find(need, ask);
            byPlace.put(ask.at(), facts);
        }
        return facts;
    }

    private List<Fact> find(Need need, Ask ask) {
        List<Fact> all = recorded.of(need.word(), ask.of());
        if (all.isEmpty()) {
            return all;
        }
        List<String> wanted = needs.wanted(need, ask.at(), List.of());
        List<Fact> facts = new ArrayList<>(4);
        String last = "";
        boolean concerns = false;
        for (Fact fact : all) {
            if (!fact.at().equals(last)) {
                last = fact.at();
                concerns = here(last, ask.at(), wanted);
            }
            if (concerns) {
                facts.add(fact);
            }
        }
        return facts;
    }

    /** Whether what stands at a place concerns the place asked: it is one of those at which the word is wanted. */
    private static boolean here(String at, String asked, List<String> wanted) {
        boolean untold = Untold.is(at);
        Place there = Place.of(at);
        if (there.related(Place.of(asked)) || untold && Untold.mayBe(at, asked)) {
            return true;
        }
        for (String place : wanted) {
            if (there.related(Place.of(place)) || untold && Untold.mayBe(at, place)) {
                return true;
            }
        }
        return false;
    }

    private static String said(Fact fact) {
        if (fact instanceof Stated said) {
            return said.says();
        }
        if (fact instanceof OnSheet line) {
            return line.says();
        }
        return fact instanceof Seen ? "seen" : "";
    }

    /** A step without a line of its own: by how far the work is, where the record tells that. */
    private Holds step(String step, List<String> says) {
        if (progress.behind(step)) {
            return says.contains("done") ? Holds.YES : Holds.OPEN;
        }
        return progress.dueNow(step) && says.contains("next") ? Holds.YES : Holds.NO;
    }

    /** Whether a condition holds: known not to once all that settles it is known. */
    Holds condition(String name) {
        Holds known = settled.get(name);
        if (known == null) {
            known = settle(name);
            settled.put(name, known);
        }
        return known;
    }

    private Holds settle(String name) {
        if (!recorded.of("condition " + name).isEmpty()) {
            return Holds.YES;
        }
        ConditionPage page = conditions.get(name);
        if (page == null) {
            return Holds.OPEN;
        }
        Ask engine = new Ask("", "", Place.ENGINE);
        for (String word : page.settledBy()) {
            Optional<Need> need = needs.need(word, engine);
            if (need.isEmpty() || need.get().kind() != Need.Kind.CONDITION && !needs.known(need.get(), engine)) {
                return Holds.OPEN;
            }
        }
        return Holds.NO;
    }
}
