package leadlamp.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlamp.derive.Readings;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.facts.Verdict.Side;
import leadlamp.facts.Verdict.Standing;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.Gauge;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** Which gauge of the record's own list would settle what is undecided, were the same figure read with it. */
public final class Gauges {
    private static final double TWICE = 2;
    private static final String READING = "reading of ";
    private static final String USUAL = " for ";

    private Gauges() {
    }

    /**
     * Gauges that would settle a verdict, the finest first.
     *
     * @param verdict  what is undecided
     * @param readings the readings of the record, with their doubts
     * @param build    the record
     * @param words    the vocabulary
     */
    public static List<String> settling(Verdict verdict, List<Value> readings, Build build, Vocabulary words) {
        Optional<Side> open = verdict.least().filter(s -> s.standing() == Standing.UNDECIDED)
                .or(() -> verdict.most().filter(s -> s.standing() == Standing.UNDECIDED));
        if (open.isEmpty() || !verdict.value().told().isEmpty()) {
            return List.of();
        }
        boolean least = verdict.least().filter(s -> s.standing() == Standing.UNDECIDED).isPresent();
        Optional<Estimate> end = least ? verdict.value().low() : verdict.value().high();
        OptionalDouble limit = least ? verdict.limit().least() : verdict.limit().most();
        if (end.isEmpty() || limit.isEmpty()) {
            return List.of();
        }
        Optional<Value> chief = chief(open.get().chiefSource(), verdict.value(), readings);
        if (chief.isEmpty()) {
            return List.of();
        }
        Optional<Quantity> quantity = words.quantity(chief.get().of());
        Optional<Estimate> read = chief.get().low().or(chief.get()::high);
        if (quantity.isEmpty() || read.isEmpty()) {
            return List.of();
        }
        double rest = 0;
        double weight = 1;
        for (Map.Entry<String, Double> part : end.get().doubt().entrySet()) {
            Double own = read.get().doubt().get(part.getKey());
            if (own == null || own == 0) {
                rest += part.getValue() * part.getValue();
            } else if (part.getKey().equals(open.get().chiefSource())) {
                weight = Math.abs(part.getValue() / own);
            }
        }
        double room = Math.abs(end.get().value() - limit.getAsDouble());
        record Fine(String name, double doubt) {
        }
        List<Fine> settling = new ArrayList<>();
        for (Gauge gauge : build.gauges().values()) {
            if (gauge.name().equals(chief.get().gauge()) || !reads(gauge, quantity.get(), chief.get(), read.get().value())) {
                continue;
            }
            OptionalDouble doubt = Readings.doubtWith(build, words, quantity.get(), gauge.name(), read.get().value(), chief.get().unit());
            if (doubt.isPresent()) {
                double all = Math.sqrt(rest + weight * weight * doubt.getAsDouble() * doubt.getAsDouble());
                if (TWICE * all <= room) {
                    settling.add(new Fine(gauge.name(), doubt.getAsDouble()));
                }
            }
        }
        settling.sort(Comparator.comparingDouble(Fine::doubt).thenComparing(Fine::name));
        return settling.stream().map(Fine::name).toList();
    }

    /** The reading that the chief source of doubt belongs to. */
    private static Optional<Value> chief(String source, Value value, List<Value> readings) {
        if (!value.derived()) {
            return Optional.of(value);
        }
        for (Value reading : readings) {
            boolean behind = false;
            for (var where : reading.places()) {
                behind |= value.places().contains(where);
            }
            if (!behind) {
                continue;
            }
            String name = READING + reading.of() + (reading.at().equals("engine") ? "" : " at " + reading.at());
            boolean shared = reading.low().or(reading::high).map(e -> e.doubt().containsKey(source)).orElse(false);
            if (source.equals(name) || shared && (source.startsWith("calibration of ") || source.endsWith(USUAL + reading.of()))) {
                return Optional.of(reading);
            }
        }
        return Optional.empty();
    }

    /** Whether a gauge reads such a thing: of the kind it is usually read with, and the figure within its range. */
    private static boolean reads(Gauge gauge, Quantity quantity, Value reading, double si) {
        boolean kind = quantity.gauge().map(gauge.kinds()::contains).orElse(false);
        if (!kind) {
            return false;
        }
        Optional<Written> range = gauge.range().filter(r -> r.unit().dimension() == quantity.dimension()
                || r.unit().dimension() == Dimension.LENGTH && reading.unit().dimension() == Dimension.LENGTH);
        return range.isEmpty() || si >= range.get().low() && si <= range.get().high();
    }
}
