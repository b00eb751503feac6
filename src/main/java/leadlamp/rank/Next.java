package leadlamp.rank;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.audit.Severity;
import leadlamp.facts.Ask;
import leadlamp.words.Vocabulary;

/**
 * What to settle next.
 *
 * @param putRight what was found and the next step would close in, or an earlier one has; worst first
 * @param after    what was found and can wait for a later step; worst first
 * @param settle   open questions due before the next step, by what would settle most
 * @param best     the single reading or look that settles the most and worst open questions
 * @param second   the next best, for comparison
 */
public record Next(List<Ranked> putRight, List<Ranked> after, List<OpenGroup> settle, Optional<Choice> best,
        Optional<Choice> second) {

    /**
     * One reading or look, and what it is worth.
     *
     * @param want    what to do
     * @param details of a look, what it is for
     * @param places  where
     * @param settles open questions that want nothing else, worst first
     * @param helps   open questions that want something beside it, worst first
     */
    public record Choice(Want want, List<String> details, List<String> places, List<Ranked> settles, List<Ranked> helps) {
        /** How many of those that it settles are of this severity. */
        public int settles(Severity severity) {
            return count(settles, severity);
        }

        private static int count(List<Ranked> questions, Severity severity) {
            int count = 0;
            for (Ranked question : questions) {
                if (question.worst() == severity) {
                    count++;
                }
            }
            return count;
        }

        /**
         * Whether this is worth more: first by what it settles, worst harm first, then by what it helps; in both what can
         * still be got at comes before what is closed in.
         */
        boolean worthMoreThan(Choice other) {
            int[] worth = { compare(open(settles), open(other.settles)), compare(settles, other.settles),
                compare(open(helps), open(other.helps)), compare(helps, other.helps) };
            for (int each : worth) {
                if (each != 0) {
                    return each > 0;
                }
            }
            return false;
        }

        /** Those that no step has closed in yet: what is closed in already costs a strip-down. */
        private static List<Ranked> open(List<Ranked> questions) {
            List<Ranked> open = new ArrayList<>();
            for (Ranked question : questions) {
                if (question.chance().standing() != Chance.Standing.PASSED) {
                    open.add(question);
                }
            }
            return open;
        }

        private static int compare(List<Ranked> one, List<Ranked> other) {
            for (Severity severity : Severity.values()) {
                int difference = Integer.compare(count(one, severity), count(other, severity));
                if (difference != 0) {
                    return difference;
                }
            }
            return 0;
        }
    }

    /** What to settle next in this ranking. Where nothing is due, or nothing recorded yet, what is due later is weighed too. */
    public static Next of(Ranking ranking, Vocabulary words) {
        List<Ranked> putRight = new ArrayList<>();
        List<Ranked> after = new ArrayList<>();
        for (Ranked found : ranking.found()) {
            (found.chance().standing() == Chance.Standing.LATER ? after : putRight).add(found);
        }
        List<Choice> choices = choices(weighed(ranking), new Wants(words));
        Optional<Choice> best = best(choices);
        best.ifPresent(choices::remove);
        return new Next(List.copyOf(putRight), List.copyOf(after), ranking.groups(), best, best(choices));
    }

    private static List<Ranked> weighed(Ranking ranking) {
        if (!ranking.blank()) {
            return ranking.open().isEmpty() ? ranking.later() : ours(ranking);
        }
        List<Ranked> all = new ArrayList<>(ranking.open());
        all.addAll(ranking.later());
        return all;
    }

    /** What this work reached; where nothing of that is open, all that is. */
    private static List<Ranked> ours(Ranking ranking) {
        if (ranking.groups().isEmpty()) {
            return ranking.open();
        }
        Set<Ask> beyond = new HashSet<>();
        for (OpenGroup group : ranking.beyond()) {
            for (Ranked question : group.answers()) {
                beyond.add(question.ask());
            }
        }
        List<Ranked> ours = new ArrayList<>();
        for (Ranked question : ranking.open()) {
            if (!beyond.contains(question.ask())) {
                ours.add(question);
            }
        }
        return ours;
    }

    private static List<Choice> choices(List<Ranked> open, Wants all) {
        Map<Want, List<Ranked>> settles = new TreeMap<>();
        Map<Want, List<Ranked>> helps = new TreeMap<>();
        for (Ranked question : open) {
            Collection<Want> wants = all.of(question);
            for (Want want : wants) {
                (wants.size() == 1 ? settles : helps).computeIfAbsent(want, w -> new ArrayList<>()).add(question);
                (wants.size() == 1 ? helps : settles).computeIfAbsent(want, w -> new ArrayList<>());
            }
        }
        List<Choice> choices = new ArrayList<>();
        for (Map.Entry<Want, List<Ranked>> each : settles.entrySet()) {
            List<Ranked> helped = helps.get(each.getKey());
            List<Ranked> both = new ArrayList<>(each.getValue());
            both.addAll(helped);
            choices.add(new Choice(each.getKey(), all.details(each.getKey(), both), all.places(each.getKey(), both),
                    List.copyOf(each.getValue()), List.copyOf(helped)));
        }
        return choices;
    }

    /** The first of the best in the order of the wants, so that it is the same on every machine. */
    private static Optional<Choice> best(List<Choice> choices) {
        Choice best = null;
        for (Choice choice : choices) {
            if (best == null || choice.worthMoreThan(best)) {
                best = choice;
            }
        }
        return Optional.ofNullable(best);
    }
}
