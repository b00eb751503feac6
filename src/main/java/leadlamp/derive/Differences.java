package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.facts.Value;
import leadlamp.quantity.Estimate;
import leadlamp.record.Where;

/** One plain value less another, its doubt source by source. */
final class Differences {
    private Differences() {
    }

    /** Adds the places that are not there yet. */
    static void join(List<Where> where, List<Where> others) {
        for (Where other : others) {
            if (!where.contains(other)) {
                where.add(other);
            }
        }
    }

    /** By whom they were told: the first that is not the builder's own; empty where all are. */
    static String told(List<Value> values) {
        for (Value value : values) {
            if (!value.told().isEmpty()) {
                return value.told();
            }
        }
        return "";
    }

    static Value of(String name, Value one, Value other) {
        Estimate a = one.low().orElseThrow();
        Estimate b = other.low().orElseThrow();
        TreeMap<String, Double> doubt = new TreeMap<>(a.doubt());
        b.doubt().forEach((source, part) -> doubt.merge(source, -part, Double::sum));
        Optional<Estimate> difference = Optional.of(new Estimate(a.value() - b.value(), a.dimension(), doubt));
        List<Where> where = new ArrayList<>(one.places());
        join(where, other.places());
        return new Value(name, name, one.at(), difference, difference, one.unit(), one.figures(), "", one.usual() || other.usual(), "",
                one.told().isEmpty() ? other.told() : one.told(), one.asides(), where);
    }
}
