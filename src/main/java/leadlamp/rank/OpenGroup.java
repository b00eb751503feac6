package leadlamp.rank;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import leadlamp.audit.Gap;

/**
 * Open questions that hang on one and the same thing.
 *
 * @param want    what would settle most of them
 * @param places  where it is wanted
 * @param answers the open questions, worst first
 * @param also    what some of them want beside it
 */
public record OpenGroup(Want want, List<String> places, List<Ranked> answers, List<Want> also) {

    /** Each open question once, under what would settle most; the group with the worst question first. */
    static List<OpenGroup> of(List<Ranked> open) {
        List<Ranked> left = new ArrayList<>(open);
        List<OpenGroup> groups = new ArrayList<>();
        while (!left.isEmpty()) {
            Map<Want, List<Ranked>> byWant = new TreeMap<>();
            for (Ranked question : left) {
                for (Want want : wants(question)) {
                    byWant.computeIfAbsent(want, w -> new ArrayList<>()).add(question);
                }
            }
            if (byWant.isEmpty()) {
                throw new IllegalStateException("An open question names nothing that it lacks: " + left.get(0).ask());
            }
            Want best = null;
            for (Map.Entry<Want, List<Ranked>> each : byWant.entrySet()) {
                if (best == null || Order.OPEN_LISTS.compare(each.getValue(), byWant.get(best)) < 0) {
                    best = each.getKey();
                }
            }
            List<Ranked> answers = byWant.get(best);
            groups.add(group(best, answers));
            left = without(left, best);
        }
        groups.sort((one, other) -> Order.OPEN.compare(one.answers.get(0), other.answers.get(0)));
        return List.copyOf(groups);
    }

    private static List<Ranked> without(List<Ranked> open, Want settled) {
        List<Ranked> left = new ArrayList<>();
        for (Ranked question : open) {
            if (!wants(question).contains(settled)) {
                left.add(question);
            }
        }
        return left;
    }

    private static OpenGroup group(Want want, List<Ranked> answers) {
        TreeSet<Want> also = new TreeSet<>();
        for (Ranked answer : answers) {
            also.addAll(wants(answer));
        }
        also.remove(want);
        return new OpenGroup(want, places(want, answers), List.copyOf(answers), List.copyOf(also));
    }

    /** Where it is wanted, in the order of the places. */
    static List<String> places(Want want, List<Ranked> answers) {
        TreeSet<String> places = new TreeSet<>(Order::natural);
        for (Ranked answer : answers) {
            for (Gap gap : answer.gaps()) {
                for (Want wanted : Want.of(gap)) {
                    if (wanted.compareTo(want) == 0) {
                        places.addAll(gap.places());
                    }
                }
            }
        }
        return List.copyOf(places);
    }

    /** All that this question wants. */
    static Collection<Want> wants(Ranked question) {
        TreeSet<Want> wants = new TreeSet<>();
        for (Gap gap : question.gaps()) {
            wants.addAll(Want.of(gap));
        }
        return wants;
    }
}
