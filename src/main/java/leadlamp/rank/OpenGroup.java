package leadlamp.rank;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Open questions that hang on one and the same thing.
 *
 * @param want    what would settle most of them
 * @param details of a look, what it is for
 * @param places  where it is wanted
 * @param answers the open questions, worst first
 * @param also    what some of them want beside it
 */
public record OpenGroup(Want want, List<String> details, List<String> places, List<Ranked> answers, List<Also> also) {

    /** What is wanted beside, with what a look is for. */
    public record Also(Want want, List<String> details) {
    }

    /** Each open question once, under what would settle most; the group with the worst question first. */
    static List<OpenGroup> of(List<Ranked> open, Wants wants) {
        List<Ranked> left = new ArrayList<>(open);
        List<OpenGroup> groups = new ArrayList<>();
        while (!left.isEmpty()) {
            Map<Want, List<Ranked>> byWant = new TreeMap<>();
            for (Ranked question : left) {
                for (Want want : wants.of(question)) {
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
            groups.add(group(best, byWant.get(best), wants));
            left = without(left, best, wants);
        }
        groups = sheet(joined(groups));
        groups.sort((one, other) -> Order.OPEN.compare(one.answers.get(0), other.answers.get(0)));
        return List.copyOf(groups);
    }

    /** What the engine sheet lacks is one look into the maker's book. */
    private static List<OpenGroup> sheet(List<OpenGroup> groups) {
        List<OpenGroup> others = new ArrayList<>();
        List<OpenGroup> lines = new ArrayList<>();
        for (OpenGroup group : groups) {
            (group.want.how() == Want.How.SHEET ? lines : others).add(group);
        }
        if (lines.size() < 2) {
            return groups;
        }
        lines.sort((one, other) -> Order.OPEN.compare(one.answers.get(0), other.answers.get(0)));
        List<Ranked> answers = new ArrayList<>();
        TreeMap<Want, Also> also = new TreeMap<>();
        for (OpenGroup line : lines) {
            answers.addAll(line.answers);
            if (line != lines.get(0)) {
                also.put(line.want, new Also(line.want, line.details));
            }
            for (Also other : line.also) {
                also.put(other.want, other);
            }
        }
        also.remove(lines.get(0).want);
        answers.sort(Order.OPEN);
        others.add(new OpenGroup(lines.get(0).want, lines.get(0).details, lines.get(0).places, List.copyOf(answers), List.copyOf(also.values())));
        return others;
    }

    /** Joints of which the same is wanted become one group, with the joints for its places. */
    private static List<OpenGroup> joined(List<OpenGroup> groups) {
        Map<String, List<OpenGroup>> alike = new LinkedHashMap<>();
        for (OpenGroup group : groups) {
            String key = group.want.how() == Want.How.JOINT ? String.join(",", group.details) + '\n' + beside(group) : group.want.how() + group.want.word();
            alike.computeIfAbsent(key, k -> new ArrayList<>()).add(group);
        }
        List<OpenGroup> joined = new ArrayList<>();
        for (List<OpenGroup> same : alike.values()) {
            joined.add(same.size() == 1 ? same.get(0) : joints(same));
        }
        return joined;
    }

    private static String beside(OpenGroup group) {
        StringBuilder text = new StringBuilder();
        for (Also other : group.also) {
            text.append(other.want.how()).append(other.want.word()).append('\n');
        }
        return text.toString();
    }

    private static OpenGroup joints(List<OpenGroup> groups) {
        TreeSet<String> joints = new TreeSet<>(Order::natural);
        List<Ranked> answers = new ArrayList<>();
        for (OpenGroup group : groups) {
            joints.add(group.want.word());
            answers.addAll(group.answers);
        }
        answers.sort(Order.OPEN);
        OpenGroup first = groups.get(0);
        return new OpenGroup(Wants.JOINTS, first.details, List.copyOf(joints), List.copyOf(answers), first.also);
    }

    private static List<Ranked> without(List<Ranked> open, Want settled, Wants wants) {
        List<Ranked> left = new ArrayList<>();
        for (Ranked question : open) {
            if (!wants.of(question).contains(settled)) {
                left.add(question);
            }
        }
        return left;
    }

    private static OpenGroup group(Want want, List<Ranked> answers, Wants wants) {
        TreeSet<Want> others = new TreeSet<>();
        for (Ranked answer : answers) {
            others.addAll(wants.of(answer));
        }
        others.remove(want);
        List<Also> also = new ArrayList<>();
        Set<String> ofJoints = new TreeSet<>();
        for (Want other : others) {
            List<String> details = wants.details(other, answers);
            boolean joint = other.how() == Want.How.JOINT;
            if (!joint || ofJoints.add(details.toString())) {
                also.add(new Also(joint ? Wants.JOINTS : other, details));
            }
        }
        return new OpenGroup(want, wants.details(want, answers), wants.places(want, answers), List.copyOf(answers),
                List.copyOf(also));
    }
}
