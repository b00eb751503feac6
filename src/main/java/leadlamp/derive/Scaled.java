package leadlamp.derive;

import java.util.Optional;
import java.util.TreeMap;
import leadlamp.facts.Value;
import leadlamp.quantity.Estimate;

/** A value times a plain number, its doubt with it. */
final class Scaled {
    private Scaled() {
    }

    static Value by(Value value, double factor, String name, String place) {
        Optional<Estimate> low = value.low().map(e -> by(e, factor));
        Optional<Estimate> high = value.plain() ? low : value.high().map(e -> by(e, factor));
        return new Value(name, name, place, factor < 0 ? high : low, factor < 0 ? low : high, value.unit(), value.figures(), value.gauge(),
                value.usual(), "", value.told(), value.asides(), value.places());
    }

    private static Estimate by(Estimate end, double factor) {
        TreeMap<String, Double> doubt = new TreeMap<>(end.doubt());
        doubt.replaceAll((source, part) -> part * factor);
        return new Estimate(end.value() * factor, end.dimension(), doubt);
    }
}
