package leadlamp.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlamp.audit.Answer;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Dimension;
import leadlamp.rank.Ranked;
import leadlamp.report.ReportModel.ClearItem;
import leadlamp.report.ReportModel.Topic;

/** What is clear, a line a topic. */
public final class Topics {
    private Topics() {
    }

    /** The answers and their items stand in the same order. */
    static List<Topic> of(List<Ranked> clear, List<ClearItem> items) {
        Map<String, List<Integer>> byTopic = new TreeMap<>();
        Map<String, Verdict> closest = new TreeMap<>();
        Map<String, Double> least = new HashMap<>();
        for (int i = 0; i < clear.size(); i++) {
            String topic = clear.get(i).check().topic();
            List<Integer> of = byTopic.get(topic);
            if (of == null) {
                of = new ArrayList<>();
                byTopic.put(topic, of);
            }
            of.add(i);
            for (Verdict margin : ((Answer.Clear) clear.get(i).answer()).margins()) {
                double room = Margin.room(margin);
                Double known = least.get(topic);
                if ((known == null || room < known) && tells(margin)) {
                    closest.put(topic, margin);
                    least.put(topic, room);
                }
            }
        }
        List<Topic> topics = new ArrayList<>();
        for (Map.Entry<String, List<Integer>> topic : byTopic.entrySet()) {
            Verdict margin = closest.get(topic.getKey());
            topics.add(new Topic(topic.getKey(), topic.getValue().size(), margin == null ? ""
                    : Wording.subject(margin.of(), margin.at()) + ", " + Amounts.of(margin) + "; "
                            + Amounts.sides(margin),
                    new Later<>(() -> at(topic.getValue(), items))));
        }
        return List.copyOf(topics);
    }

    private static List<ClearItem> at(List<Integer> places, List<ClearItem> items) {
        List<ClearItem> at = new ArrayList<>(places.size());
        places.forEach(place -> at.add(items.get(place)));
        return at;
    }

    /** What is outside was asked of by another check, and a count is never close: it is right or it is not. */
    private static boolean tells(Verdict margin) {
        return Wording.standing(margin).equals("within") && margin.value().unit().dimension() != Dimension.COUNT;
    }

    /** `fuel-and-spark` said: `Fuel and spark`. */
    public static String said(String topic) {
        String words = topic.replace('-', ' ');
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
