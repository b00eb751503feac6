package leadlamp.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlamp.derive.Readings;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.facts.Verdict.Side;
import leadlamp.facts.Verdict.Standing;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.Gauge;
import leadlamp.record.Place;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** Which gauge would settle what is undecided, were the same figure read with it. */
public final class Gauges {
    /** What reads the same thing finer, the nearest first (common practice, no source). */
    private static final Map<String, List<String>> FINER = Map.of(
            "rule", List.of("vernier", "micrometer"), "vernier", List.of("micrometer"), "depth rule", List.of("depth micrometer"),
            "inside micrometer", List.of("bore gauge"), "plastic gauge", List.of("bore gauge"), "clay", List.of("lead wire"),
            "jug", List.of("burette"), "beam wrench", List.of("dial wrench"), "infra-red thermometer", List.of("thermometer"));

    private final Build build;
    private final Vocabulary words;
    private List<Value> readings;

    private Gauges(Build build, Vocabulary words) {
        this.build = build;
        this.words = words;
    }

    /** A side that the doubt leaves open: how far the value lies from it, and the end that lies there. */
    private record Open(Estimate end, double room, String chief) {
    }

    /** For the verdicts on one build. */
    public static Gauges of(Build build, Vocabulary words) {
        return new Gauges(build, words);
    }

    /**
     * The gauge that would settle an undecided verdict: the finest fit one of the record's own, by its name there; else the kind
     * of gauge that would, by its name in the vocabulary. Empty where none would, or where it is not for doubt that the
     * verdict is undecided.
     */
    public Optional<String> settling(Verdict verdict) {
        Value value = verdict.value();
        List<Open> open = new ArrayList<>();
        if (!open(verdict.least(), value.low(), verdict.limit().least(), true, open)
                || !open(verdict.most(), value.high(), verdict.limit().most(), false, open) || open.isEmpty()
                || !value.told().isEmpty()) {
            return Optional.empty();
        }
        Optional<Value> chief = chief(open.get(0).chief(), value);
        Optional<Quantity> quantity = chief.flatMap(c -> words.quantity(Marks.unmarked(c.of())));
        if (quantity.isEmpty()) {
            return Optional.empty();
        }
        return own(chief.get(), quantity.get(), open).or(() -> kind(chief.get(), quantity.get(), open));
    }

    /** Takes a side that is open for doubt; whether the side is not open for another reason, which no gauge would settle. */
    private static boolean open(Optional<Side> side, Optional<Estimate> end, OptionalDouble limit, boolean least, List<Open> open) {
        if (side.isEmpty() || side.get().standing() != Standing.UNDECIDED) {
            return true;
        }
        if (end.isEmpty() || limit.isEmpty() || Judge.standing(end.get(), limit.getAsDouble(), least) != Standing.UNDECIDED) {
            return false;
        }
        open.add(new Open(end.get(), Math.abs(end.get().value() - limit.getAsDouble()), side.get().chiefSource()));
        return true;
    }

    private Optional<String> own(Value reading, Quantity quantity, List<Open> open) {
        String best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Gauge gauge : build.gauges().values()) {
            if (gauge.name().equals(reading.gauge()) || !fits(gauge, quantity) || !reaches(gauge, reading)) {
                continue;
            }
            OptionalDouble doubt = doubt(gauge.name(), reading, quantity);
            if (doubt.isPresent() && settles(doubt.getAsDouble(), reading, open) && (doubt.getAsDouble() < least
                    || doubt.getAsDouble() == least && gauge.name().compareTo(best) < 0)) {
                best = gauge.name();
                least = doubt.getAsDouble();
            }
        }
        return Optional.ofNullable(best);
    }

    private Optional<String> kind(Value reading, Quantity quantity, List<Open> open) {
        for (String kind : kinds(quantity)) {
            OptionalDouble doubt = words.gauge(kind).isPresent() ? doubt(kind, reading, quantity) : OptionalDouble.empty();
            if (!kind.equals(reading.gauge()) && doubt.isPresent() && settles(doubt.getAsDouble(), reading, open)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /** Kinds of gauge that read such a thing: the usual one, then finer ones. */
    private static List<String> kinds(Quantity quantity) {
        List<String> kinds = new ArrayList<>();
        if (quantity.gauge().isPresent()) {
            kinds.add(quantity.gauge().get());
            kinds.addAll(FINER.getOrDefault(quantity.gauge().get(), List.of()));
        }
        return kinds;
    }

    private static boolean fits(Gauge gauge, Quantity quantity) {
        for (String kind : kinds(quantity)) {
            if (gauge.kinds().contains(kind)) {
                return true;
            }
        }
        return false;
    }

    /** Whether what was read lies within what is marked on the gauge. */
    private static boolean reaches(Gauge gauge, Value reading) {
        if (gauge.range().isEmpty() || gauge.range().get().unit().dimension() != reading.unit().dimension()) {
            return true;
        }
        Written range = gauge.range().get();
        double read = size(reading);
        return read >= range.low() && read <= range.high();
    }

    private static double size(Value reading) {
        return reading.low().or(reading::high).orElseThrow().value();
    }

    /** The standard uncertainty of the reading with another gauge; empty where that gauge does not read such a thing. */
    private OptionalDouble doubt(String gauge, Value reading, Quantity quantity) {
        return Readings.doubtWith(build, words, quantity, gauge, size(reading), reading.unit());
    }

    /** Whether a reading with this doubt would leave no side open: it takes the place of all that the old reading brings. */
    private static boolean settles(double doubt, Value reading, List<Open> open) {
        Map<String, Double> old = reading.low().or(reading::high).orElseThrow().doubt();
        for (Open side : open) {
            double rest = 0;
            double weight = 1;
            for (Map.Entry<String, Double> part : side.end().doubt().entrySet()) {
                double own = old.getOrDefault(part.getKey(), 0.0);
                if (own == 0) {
                    rest += part.getValue() * part.getValue();
                } else if (part.getKey().equals(side.chief())) {
                    weight = part.getValue() / own;
                }
            }
            if (Judge.COVERAGE * Math.sqrt(rest + weight * weight * doubt * doubt) > side.room()) {
                return false;
            }
        }
        return true;
    }

    /** The reading whose doubt weighs most: the value itself, or one of those that it was worked out from. */
    private Optional<Value> chief(String source, Value value) {
        if (!value.derived()) {
            return Optional.of(value);
        }
        if (readings == null) {
            readings = Readings.of(build, words);
        }
        for (Value reading : readings) {
            Optional<Estimate> end = reading.low().or(reading::high);
            if (end.isEmpty() || !end.get().doubt().containsKey(source) || !behind(reading, value)) {
                continue;
            }
            String own = "reading of " + reading.of() + (reading.at().equals(Place.ENGINE) ? "" : " at " + reading.at());
            if (source.equals(own) || !source.startsWith("reading of ")) {
                return Optional.of(reading);
            }
        }
        return Optional.empty();
    }

    private static boolean behind(Value reading, Value value) {
        for (var where : reading.places()) {
            for (var place : value.places()) {
                if (place.compareTo(where) == 0) {
                    return true;
                }
            }
        }
        return false;
    }
}
