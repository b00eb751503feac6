package leadlamp.report;

import java.util.ArrayList;
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
        Map<String, List<ClearItem>> byTopic = new TreeMap<>();
        Map<String, Verdict> closest = new TreeMap<>();
        for (int i = 0; i < items.size(); i++) {
            String topic = items.get(i).topic();
            byTopic.computeIfAbsent(topic, t -> new ArrayList<>()).add(items.get(i));
            for (Verdict margin : ((Answer.Clear) clear.get(i).answer()).margins()) {
                Verdict known = closest.get(topic);
                if (tells(margin) && (known == null || Margin.room(margin) < Margin.room(known))) {
                    closest.put(topic, margin);
                }
            }
        }
        List<Topic> topics = new ArrayList<>();
        for (Map.Entry<String, List<ClearItem>> topic : byTopic.entrySet()) {
            Verdict margin = closest.get(topic.getKey());
            topics.add(new Topic(topic.getKey(), topic.getValue().size(), margin == null ? ""
                    : Wording.subject(margin.of(), margin.at()) + ", " + Amounts.of(margin) + "; "
                            + Amounts.sides(margin),
                    List.copyOf(topic.getValue())));
        }
        return List.copyOf(topics);
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
