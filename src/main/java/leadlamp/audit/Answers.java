package leadlamp.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import leadlamp.facts.Ask;
import leadlamp.facts.Fact;
import leadlamp.facts.Stated;
import leadlamp.record.EngineSheet;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.words.Vocabulary;

/** Where a question gets its answer: found, clear, or cannot tell. Nothing else decides between the last two. */
final class Answers {
    private static final String HIDDEN_BY = "hidden by";

    private final Needs needs;
    private final Asks asks;
    private final Progress progress;
    private final Vocabulary words;
    private final Map<Ask, List<Finding>> findings = new HashMap<>();
    private final List<Statement> hiding = new ArrayList<>();
    private final Map<String, Map<String, List<String>>> closing = new HashMap<>();
    private final Map<String, List<String>> closed = new HashMap<>();
    private final boolean everyChance;

    /** @param everyChance whether the last chance is wanted of what is clear too, of which only the full lists tell it */
    Answers(Needs needs, Asks asks, Progress progress, Vocabulary words, EngineSheet sheet, List<Finding> found, boolean everyChance) {
        this.everyChance = everyChance;
        this.needs = needs;
        this.asks = asks;
        this.progress = progress;
        this.words = words;
        for (Finding finding : found) {
            List<Finding> here = findings.get(finding.ask());
            if (here == null) {
                here = new ArrayList<>();
                findings.put(finding.ask(), here);
            }
            here.add(finding);
        }
        for (Statement line : sheet.statements()) {
            if (line.what().equals(HIDDEN_BY) && !line.at().equals(Place.ENGINE)) {
                hiding.add(line);
            }
        }
    }

    /** An answer and its last chance. */
    record Told(Answer answer, LastChance chance) {
    }

    /** The answer to a question. */
    Told answer(Asks.Question question) {
        Check check = question.check();
        Ask ask = question.ask();
        List<Finding> found = new ArrayList<>();
        Needs.Met met = new Needs.Met();
        List<Open> open = new ArrayList<>();
        List<Way> asked = new ArrayList<>();
        for (Way way : check.ways()) {
            if (asks.holds(way.applies(), ask) == Asks.Holds.NO) {
                continue;
            }
            asked.add(way);
            for (Finding finding : findings.getOrDefault(ask, List.of())) {
                if (finding.way().equals(way.name())) {
                    found.add(finding);
                }
            }
            for (Needs.Unmet unmet : needs.unmet(check, way, ask, met)) {
                open.add(new Open(way, unmet));
            }
        }
        boolean clear = found.isEmpty() && open.isEmpty() && !question.silent();
        LastChance chance = clear && !everyChance ? LastChance.NONE : chance(check, asked, ask);
        boolean allDue = progress.allDue() || chance.due();
        boolean later = !allDue;
        List<Gap> gaps = new ArrayList<>();
        for (Open one : open) {
            boolean due = allDue || due(one.unmet);
            later &= !due;
            gaps.add(gap(one.way, one.unmet, due));
        }
        if (question.silent()) {
            gaps.clear();
            gaps.add(new Gap(Gap.Why.SHEET_SILENT, check.askedOf(), List.of(Place.ENGINE), List.of(check.askedOf()),
                    OptionalDouble.empty(), "", check.ways().get(0).name()));
        }
        if (!found.isEmpty()) {
            gaps.removeIf(gap -> saysSo(found, gap));
            return new Told(new Answer.Found(check, ask, List.copyOf(found), List.copyOf(gaps)), chance);
        }
        if (gaps.isEmpty()) {
            if (met.grounds().isEmpty() && met.margins().isEmpty()) {
                check.ways().forEach(way -> asks.against(way.applies(), ask).forEach(met::ground));
            }
            return new Told(new Answer.Clear(check, ask, List.copyOf(met.grounds()), List.copyOf(met.margins())), chance);
        }
        return new Told(new Answer.CannotTell(check, ask, List.copyOf(gaps), later), chance);
    }

    /** Whether a finding rests on the very step that was left out: then it has said so already. */
    private static boolean saysSo(List<Finding> found, Gap gap) {
        if (gap.why() != Gap.Why.LEFT_OUT) {
            return false;
        }
        for (Finding finding : found) {
            for (Fact fact : finding.evidence()) {
                if (fact instanceof Stated said && said.says().equals(Needs.LEFT_OUT) && gap.need().equals(said.of() + " " + said.what())) {
                    return true;
                }
            }
        }
        return false;
    }

    private record Open(Way way, Needs.Unmet unmet) {
    }

    /** What is merely not recorded yet, and need not be, says so in place of that. */
    private static Gap gap(Way way, Needs.Unmet unmet, boolean due) {
        Needs.Lack lack = unmet.lack();
        Gap.Why why = lack.why() == Gap.Why.NOT_RECORDED && !due ? Gap.Why.DUE_LATER : lack.why();
        return new Gap(why, unmet.need().word(), List.copyOf(unmet.places()), lack.readings(), lack.outside(), lack.chief(), way.name());
    }

    /** Whether a step that is due now, or one that is behind, closes what is missing. */
    private boolean due(Needs.Unmet unmet) {
        if (unmet.need().kind() == Need.Kind.STEP && progress.behind(unmet.need().what())) {
            return true;
        }
        // Of what is worked out, only the readings that are not there yet can be closed too soon.
        boolean itself = unmet.lack().readings().isEmpty() || unmet.lack().readings().contains(unmet.need().word());
        for (String place : unmet.places()) {
            if (itself && pressing(closing(unmet.need(), place))) {
                return true;
            }
            for (String reading : unmet.lack().readings()) {
                Optional<Need> behind = reading.equals(unmet.need().word()) ? Optional.empty()
                        : needs.need(reading, new Ask("", "", place));
                if (behind.isPresent() && pressing(closing(behind.get(), place))) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean pressing(List<String> closing) {
        for (String step : closing) {
            if (progress.behind(step) || progress.dueNow(step)) {
                return true;
            }
        }
        return false;
    }

    /** The first step not yet behind that closes a need of the check there, or the page's own step where that is sooner. */
    private LastChance chance(Check check, List<Way> asked, Ask ask) {
        String first = "";
        String passed = "";
        for (Way way : asked) {
            List<String> words = way.needs();
            for (int i = 0; i < words.size(); i++) {
                Optional<Need> need = needs.need(words.get(i), ask);
                if (need.isEmpty()) {
                    continue;
                }
                for (String place : needs.wanted(need.get(), ask.at(), way.sought(check, i, need.get()).places())) {
                    for (String step : closing(need.get(), place)) {
                        if (progress.behind(step)) {
                            passed = passed.isEmpty() || progress.order(step) > progress.order(passed) ? step : passed;
                        } else if (first.isEmpty() || progress.order(step) < progress.order(first)) {
                            first = step;
                        }
                    }
                }
            }
        }
        String own = check.lastChance().orElse("");
        if (!own.isEmpty()) {
            if (progress.behind(own)) {
                return new LastChance(own, LastChance.Standing.PASSED);
            }
            if (first.isEmpty() || progress.order(own) < progress.order(first)) {
                first = own;
            }
        }
        if (first.isEmpty()) {
            return passed.isEmpty() ? LastChance.NONE : new LastChance(passed, LastChance.Standing.PASSED);
        }
        return new LastChance(first, progress.dueNow(first) ? LastChance.Standing.NEXT : LastChance.Standing.LATER);
    }

    /** The steps that close a need at a place: by the graph, and by what the sheet says of a joint, plug or seal. */
    private List<String> closing(Need need, String place) {
        boolean joint = need.of().equals("joint") || need.of().startsWith("joint ");
        if (place.equals(Place.ENGINE) || !isClosed(need) || hiding.isEmpty() && !joint) {
            return closing(need);
        }
        Map<String, List<String>> byPlace = closing.get(need.word());
        if (byPlace == null) {
            byPlace = new HashMap<>();
            closing.put(need.word(), byPlace);
        }
        List<String> steps = byPlace.get(place);
        if (steps == null) {
            steps = joint ? progress.closing("joint " + place) : hidden(closing(need), place);
            byPlace.put(place, steps);
        }
        return steps;
    }

    /** Whether steps close what the need names, and not what follows a step or what nobody can close. */
    private static boolean isClosed(Need need) {
        return switch (need.kind()) {
            case READING, WORD, SIGN -> true;
            default -> false;
        };
    }

    /** These steps and those that hide the place. */
    private List<String> hidden(List<String> steps, String place) {
        Set<String> all = null;
        Place asked = Place.of(place);
        for (Statement line : hiding) {
            if (Place.of(line.at()).covers(asked)) {
                all = all == null ? new LinkedHashSet<>(steps) : all;
                all.add(line.says());
            }
        }
        return all == null ? steps : List.copyOf(all);
    }

    /** The steps that close it wherever it is. */
    private List<String> closing(Need need) {
        List<String> steps = closed.get(need.word());
        if (steps == null) {
            steps = find(need);
            closed.put(need.word(), steps);
        }
        return steps;
    }

    private List<String> find(Need need) {
        if (need.kind() == Need.Kind.STEP) {
            return progress.following(need.what());
        }
        if (!isClosed(need)) {
            return List.of();
        }
        if (need.kind() == Need.Kind.SIGN) {
            return progress.closing(need.of() + " " + need.what());
        }
        if (need.of().equals("machining") || need.of().equals("observations")) {
            return progress.closing(Need.partOf(need.what(), words));
        }
        return need.kind() == Need.Kind.READING || words.part(need.subject()).isPresent()
                || words.quantity(need.subject()).isPresent() ? progress.closing(need.subject()) : List.of();
    }
}
