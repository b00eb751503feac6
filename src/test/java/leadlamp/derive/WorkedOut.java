package leadlamp.derive;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import leadlamp.words.Quantity;

/** Prints, topic by topic, how many of the derived quantities of the vocabulary are worked out, and which are not. */
final class WorkedOut {
    private static final Map<String, Function<String, Derived>> TOPICS = topics();

    private WorkedOut() {
    }

    private static Map<String, Function<String, Derived>> topics() {
        Map<String, Function<String, Derived>> topics = new TreeMap<>();
        topics.put("bottom end", BottomEnd::entry);
        topics.put("head", Head::entry);
        topics.put("valve gear", ValveGear::entry);
        topics.put("cam drive", CamDrive::entry);
        topics.put("fasteners", Fasteners::entry);
        topics.put("sealing", Sealing::entry);
        topics.put("lubrication", Lubrication::entry);
        topics.put("cooling", Cooling::entry);
        topics.put("breathing", Breathing::entry);
        topics.put("fuel and spark", FuelAndSpark::entry);
        topics.put("sensing", Sensing::entry);
        topics.put("clutch", Clutch::entry);
        topics.put("workshop and start-up", Workshop::entry);
        topics.put("ages", Ages::entry);
        topics.put("against the sheet", Against::entry);
        return topics;
    }

    /** The topic whose table has the quantity; `of readings` where it is worked out of all readings together. */
    static String topic(String name) {
        for (Map.Entry<String, Function<String, Derived>> topic : TOPICS.entrySet()) {
            if (topic.getValue().apply(name) != null) {
                return topic.getKey();
            }
        }
        return TableTest.OF_READINGS.contains(name) ? "of readings" : "";
    }

    public static void main(String[] none) {
        List<String> derived = Bench.WORDS.quantities().stream().filter(Quantity::derived).map(Quantity::name).toList();
        Map<String, Integer> count = new TreeMap<>();
        int worked = 0;
        for (String name : derived) {
            String topic = topic(name);
            if (topic.isEmpty()) {
                System.out.println("not worked out: " + name);
            } else {
                count.merge(topic, 1, Integer::sum);
                worked++;
            }
        }
        count.forEach((topic, n) -> System.out.println(String.format(Locale.ROOT, "%-22s %4d", topic, n)));
        System.out.println(String.format(Locale.ROOT, "%-22s %4d of %d", "all", worked, derived.size()));
    }
}
