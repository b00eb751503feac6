package leadlamp.derive;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.Gauge;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * The values that a record says, each with its doubt by source.
 *
 * <p>One figure that was said of several places is not known of any one of them. It gives a bound or a range at each, which
 * carries the aside {@value #SAID}, and plain values at {@code one of} those places, for there its ends were met.
 */
public final class Readings {
    /** The aside of a value that was not written plainly: how its figure was said. The judge reads it. */
    public static final String SAID = "said as";
    /** The ends of the readings of several places; of each place alone only that it lies between. */
    public static final String RANGE_OF_SEVERAL = "range of several places";
    /** The least or greatest of several places; of each place alone only that it is no less, or no more. */
    public static final String BOUND_OF_SEVERAL = "bound of several places";
    /** The least or greatest of the readings taken at this one place: its end was met. */
    public static final String END_MET = "end that was met";
    /** A mean, which proves no place. */
    public static final String MEAN = "mean";

    private final Build build;
    private final Vocabulary words;
    private final GaugeDoubts doubts;
    private final List<Value> values = new ArrayList<>();
    private final List<Value> alike = new ArrayList<>();

    private Readings(Build build, Vocabulary words) {
        this.build = build;
        this.words = words;
        this.doubts = new GaugeDoubts(build, words);
    }

    /** The record's values, in the order in which they were written. */
    public static List<Value> of(Build build, Vocabulary words) {
        return read(build, words).values;
    }

    static Readings read(Build build, Vocabulary words) {
        Readings readings = new Readings(build, words);
        readings.all();
        return readings;
    }

    List<Value> values() {
        return values;
    }

    /** Bounds on a spread alone (`alike within 0.01 mm`), under the name and at the first place of what was read. */
    List<Value> alike() {
        return alike;
    }

    /** One entry: its line and what it reads. */
    private record Entry(Where where, String of, String what, String text) {
        // Written by hand: what the compiler makes of a record costs milliseconds at its first call.
        @Override
        public boolean equals(Object other) {
            return other instanceof Entry entry && where.equals(entry.where) && of.equals(entry.of) && what.equals(entry.what)
                    && text.equals(entry.text);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * where.hashCode() + of.hashCode()) + text.hashCode();
        }
    }

    private void all() {
        Set<Statement.Key> measured = new HashSet<>();
        Map<Entry, List<Statement>> several = new LinkedHashMap<>();
        for (Statement s : build.statements()) {
            if (s.form() != Statement.Form.READ || s.value().isEmpty()) {
                continue;
            }
            if (!s.inPartsEntry() && s.told().isEmpty() && s.value().get().figure()) {
                measured.add(s.key());
            }
            if (overPlaces(s.value().get().form())) {
                several.computeIfAbsent(entry(s), e -> new ArrayList<>()).add(s);
            }
        }
        Set<Entry> done = new HashSet<>();
        for (Statement s : build.statements()) {
            if (s.form() != Statement.Form.READ || s.value().isEmpty() || !s.value().get().figure()
                    || s.inPartsEntry() && measured.contains(s.key())) {
                continue;
            }
            Optional<Quantity> quantity = words.quantity(s.of());
            if (quantity.isEmpty()) {
                continue;
            }
            List<Statement> together = overPlaces(s.value().get().form()) ? several.get(entry(s)) : List.of(s);
            if (together.size() == 1) {
                one(quantity.get(), s);
            } else if (done.add(entry(s))) {
                several(quantity.get(), together);
            }
        }
    }

    private static Entry entry(Statement s) {
        return new Entry(s.where(), s.of(), s.what(), s.value().map(Written::text).orElse(""));
    }

    private static boolean overPlaces(Written.Form form) {
        return switch (form) {
            case RANGE, LEAST, MOST, MEAN, ALIKE_WITHIN -> true;
            default -> false;
        };
    }

    /** A figure said of one place. */
    private void one(Quantity quantity, Statement s) {
        Written w = s.value().get();
        switch (w.form()) {
            case RANGE -> add(quantity, s, s.at(), w.low(), w.high(), "");
            case UNDER -> add(quantity, s, s.at(), Double.NEGATIVE_INFINITY, w.high(), "");
            case OVER -> add(quantity, s, s.at(), w.low(), Double.POSITIVE_INFINITY, "");
            case LEAST -> add(quantity, s, s.at(), figure(w), Double.POSITIVE_INFINITY, END_MET);
            case MOST -> add(quantity, s, s.at(), Double.NEGATIVE_INFINITY, figure(w), END_MET);
            case MEAN -> add(quantity, s, s.at(), figure(w), figure(w), MEAN);
            case ALIKE_WITHIN -> alike(quantity, s);
            default -> add(quantity, s, s.at(), w.low(), w.high(), "");
        }
    }

    /** A figure said of several places at once. */
    private void several(Quantity quantity, List<Statement> places) {
        Statement first = places.get(0);
        Written w = first.value().get();
        String among = among(quantity, places);
        switch (w.form()) {
            case RANGE -> {
                for (Statement s : places) {
                    add(quantity, s, s.at(), w.low(), w.high(), RANGE_OF_SEVERAL);
                }
                add(quantity, first, among, w.low(), w.low(), "");
                add(quantity, first, among, w.high(), w.high(), "");
            }
            case LEAST -> {
                for (Statement s : places) {
                    add(quantity, s, s.at(), figure(w), Double.POSITIVE_INFINITY, BOUND_OF_SEVERAL);
                }
                add(quantity, first, among, figure(w), figure(w), "");
            }
            case MOST -> {
                for (Statement s : places) {
                    add(quantity, s, s.at(), Double.NEGATIVE_INFINITY, figure(w), BOUND_OF_SEVERAL);
                }
                add(quantity, first, among, figure(w), figure(w), "");
            }
            case MEAN -> add(quantity, first, among, figure(w), figure(w), MEAN);
            default -> alike(quantity, first);
        }
    }

    /** Two readings of one gauge lie apart: its calibration is in both, and what each reading adds is there twice. */
    private void alike(Quantity quantity, Statement s) {
        Written w = s.value().get();
        GaugeDoubts.Doubt doubt = doubts.of(quantity, s, figure(w));
        TreeMap<String, Double> parts = new TreeMap<>();
        doubt.parts().forEach((source, part) -> {
            if (source.startsWith(GaugeDoubts.READING)) {
                parts.put(source, part * Math.sqrt(2));
            }
        });
        alike.add(new Value(quantity.name(), quantity.kind(), s.at(), Optional.empty(), Optional.of(new Estimate(figure(w), w.unit().dimension(),
                parts)), w.unit(), w.figures(), doubt.gauge(), doubt.usual(), w.text(), s.told().orElse(""), s.asides(), List.of(s.where())));
    }

    /** The one figure of a form that has one. */
    private static double figure(Written w) {
        return Double.isInfinite(w.low()) ? w.high() : w.low();
    }

    private String among(Quantity quantity, List<Statement> places) {
        Set<String> at = new LinkedHashSet<>();
        for (Statement s : places) {
            at.add(s.at());
        }
        Optional<List<String>> all = build.sheet().layout().places(quantity.group());
        return all.isPresent() && at.equals(new LinkedHashSet<>(all.get())) ? "one of each" : "one of " + String.join(", ", at);
    }

    private void add(Quantity quantity, Statement s, String at, double low, double high, String said) {
        Written w = s.value().get();
        Optional<Multiplied> multiplied = multiplied(s);
        double times = 1;
        if (multiplied.isPresent()) {
            low = multiplied.get().setting() * multiplied.get().ratio();
            high = low;
            times = multiplied.get().ratio();
        }
        GaugeDoubts.Doubt lowDoubt = doubts.of(quantity, s, Double.isInfinite(low) ? high : low, times);
        GaugeDoubts.Doubt highDoubt = low == high ? lowDoubt : doubts.of(quantity, s, Double.isInfinite(high) ? low : high, times);
        Dimension dimension = w.unit().dimension();
        Optional<Estimate> from = Double.isInfinite(low) ? Optional.empty()
                : Optional.of(new Estimate(low, dimension, lowDoubt.parts()));
        Optional<Estimate> to = low == high ? from : Double.isInfinite(high) ? Optional.empty()
                : Optional.of(new Estimate(high, dimension, highDoubt.parts()));
        Map<String, String> asides = s.asides();
        if (!said.isEmpty()) {
            asides = new TreeMap<>(asides);
            asides.put(SAID, said);
            asides = Collections.unmodifiableMap(asides);
        }
        String of = s.what().isEmpty() ? quantity.name() : quantity.name() + " " + s.what();
        String kind = s.what().isEmpty() ? quantity.kind() : quantity.kind() + " " + s.what();
        values.add(new Value(of, kind, at, from, to, w.unit(), w.figures(), lowDoubt.gauge(), lowDoubt.usual(), "",
                s.told().orElse(""), asides, List.of(s.where())));
    }

    private record Multiplied(double setting, double ratio) {
    }

    /** A torque through a multiplier: what the wrench was set to, times the ratio on the multiplier's line. */
    private Optional<Multiplied> multiplied(Statement s) {
        if (!s.of().equals("joint torque") || s.gauges().size() < 2) {
            return Optional.empty();
        }
        for (String name : s.gauges()) {
            Gauge gauge = build.gauges().get(name);
            if (gauge != null && gauge.kinds().contains(GaugeDoubts.MULTIPLIER)) {
                String ratio = gauge.asides().get("ratio");
                Optional<Written> setting = setting(s.at());
                if (ratio != null && setting.isPresent()) {
                    try {
                        double times = Double.parseDouble(ratio);
                        return times > 0 && times < Double.POSITIVE_INFINITY ? Optional.of(new Multiplied(setting.get().low(), times))
                                : Optional.empty();
                    } catch (NumberFormatException none) {
                        return Optional.empty();
                    }
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Written> setting(String joint) {
        for (Statement s : build.statements()) {
            if (s.of().equals("joint setting") && s.at().equals(joint) && s.value().isPresent()) {
                return s.value().filter(w -> w.form() == Written.Form.PLAIN);
            }
        }
        return Optional.empty();
    }

    /**
     * The standard uncertainty that one reading of a quantity would have with another gauge of the record, shared part and
     * own part together; empty where that gauge does not read it.
     */
    public static OptionalDouble doubtWith(Build build, Vocabulary words, Quantity quantity, String gauge, double si, Unit unit) {
        GaugeDoubts doubts = new GaugeDoubts(build, words);
        Written as = new Written(Written.Form.PLAIN, si, si, unit, 6, "");
        Statement read = new Statement(Statement.Form.READ, quantity.name(), "engine", "", "", Optional.of(as), List.of(gauge), Map.of(),
                Optional.empty(), new Where("", 0, 0), "");
        GaugeDoubts.Doubt doubt = doubts.of(quantity, read, si);
        if (doubt.parts().isEmpty() || !doubt.gauge().equals(gauge)) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        for (double part : doubt.parts().values()) {
            sum += part * part;
        }
        return OptionalDouble.of(Math.sqrt(sum));
    }
}
