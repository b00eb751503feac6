package leadlamp.derive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.Gauge;
import leadlamp.record.Statement;
import leadlamp.words.GaugeKind;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * What the doubt of a reading is made of. The parts have names, so that a gauge that took two readings is one source in
 * their difference, and the micrometer that a bore gauge was set with is one source with the shafts that it measured.
 *
 * <ul>
 * <li>A {@code doubt} in the reading's own entry is all of it (95 %) and goes before any gauge's.
 * <li>A gauge of the record with a {@code doubt}: that is {@code calibration of GAUGE}, half of it being its standard
 * uncertainty, shared by all that it read. Each reading adds its own part: the step of the scale (a rectangle of half a step to
 * either side) and the hand and eye that read it ({@code repeats} as a rectangle as wide as their spread; where none is given,
 * one step to either side).
 * <li>A gauge without a {@code doubt} has the usual doubt of its kind. Nobody knows how much of that is the gauge's own
 * and how much the hand's, so half of its variance is taken as shared and half as each reading's own (common practice, no
 * source). The same holds for a gauge with a {@code doubt} and no {@code resolution}.
 * <li>A gauge that is named by its kind alone, or not at all, is taken for one gauge within a quantity, and for another
 * one in another quantity: nobody said that it was the same.
 * <li>{@code set with} adds the calibration of that gauge. Where the usual doubt is taken, which covers the setting, the
 * setting's part is taken out of the shared half instead.
 * <li>A maker's figure is rounded: a rectangle of half of its last figure to either side. A count has no doubt.
 * <li>A size of a part that has run, told in the part's entry and not who read it with what, has the usual doubt and is rounded.
 * </ul>
 */
final class GaugeDoubts {
    /** How the name of a reading's own part begins. */
    static final String READING = "reading of ";
    static final String MULTIPLIER = "torque multiplier";
    private static final double ROOT_2 = Math.sqrt(2);
    private static final double ROOT_3 = Math.sqrt(3);
    private static final int LONGEST_CHAIN = 4;

    private final Build build;
    private final Vocabulary words;
    private final Map<String, Optional<Amount>> usual = new HashMap<>();

    GaugeDoubts(Build build, Vocabulary words) {
        this.build = build;
        this.words = words;
    }

    /**
     * The doubt of one end of a reading.
     *
     * @param parts standard uncertainty by source, SI
     * @param usual whether it rests on the usual doubt of a kind of gauge
     * @param gauge the gauge, as named; else the kind that is taken
     */
    record Doubt(SortedMap<String, Double> parts, boolean usual, String gauge) {
    }

    /** The doubt of a reading that has this size. */
    Doubt of(Quantity quantity, Statement read, double si) {
        return of(quantity, read, si, 1);
    }

    /** The doubt of a reading that a multiplier made so many times what its wrench was set to. */
    Doubt of(Quantity quantity, Statement read, double si, double times) {
        String name = read.what().isEmpty() ? quantity.name() : quantity.name() + " " + read.what();
        String reading = READING + name + (read.at().equals("engine") ? "" : " at " + read.at());
        String named = String.join(" and ", read.gauges());
        SortedMap<String, Double> parts = new TreeMap<>();
        Optional<Amount> own = Optional.ofNullable(read.asides().get("doubt"))
                .flatMap(text -> Amount.read(text, quantity.dimension()));
        if (own.isPresent() && own.get().suits(quantity.dimension())) {
            add(parts, reading, own.get().expanded(si) / 2);
            return new Doubt(parts, false, named.isEmpty() ? quantity.gauge().orElse("") : named);
        }
        List<String> gauges = fitting(read.gauges(), quantity.dimension());
        if (gauges.isEmpty()) {
            Doubt usual = withoutGauge(quantity, read, si, reading, parts, named);
            if (read.asides().containsKey(Statement.OF_PART)) {
                add(parts, reading, halfLast(read.value()) / ROOT_3);
            }
            return usual;
        }
        boolean usualTaken = false;
        for (String gauge : gauges) {
            usualTaken |= take(gauge, quantity, read, si, times, reading, parts);
        }
        return new Doubt(parts, usualTaken, named);
    }

    private Doubt withoutGauge(Quantity quantity, Statement read, double si, String reading, SortedMap<String, Double> parts,
            String named) {
        Optional<Amount> stated = quantity.doubt().flatMap(text -> Amount.read(text, quantity.dimension()));
        if (stated.isPresent()) {
            shareOut(parts, "the usual reading of " + quantity.name(), reading, stated.get().expanded(si) / 2);
            return new Doubt(parts, true, named.isEmpty() ? quantity.gauge().orElse("") : named);
        }
        String kind = usualGauge(quantity, 0);
        Optional<Amount> amount = kind.isEmpty() ? Optional.empty() : usualOf(kind, quantity.dimension());
        if (amount.isPresent() && amount.get().suits(quantity.dimension())) {
            unnamed(kind, amount.get(), quantity, read, si, reading, parts);
            return new Doubt(parts, amount.get().form() != Amount.Form.AS_WRITTEN, named.isEmpty() ? kind : named);
        }
        add(parts, reading, halfLast(read.value()) / ROOT_3);
        return new Doubt(parts, true, named);
    }

    /** The gauge that such a reading is usually taken with; of a derived value, that of the first reading behind it. */
    private String usualGauge(Quantity quantity, int depth) {
        if (quantity.gauge().isPresent()) {
            return quantity.gauge().get();
        }
        if (depth < LONGEST_CHAIN) {
            for (String from : quantity.from()) {
                Optional<Quantity> first = words.quantity(from);
                if (first.isPresent()) {
                    return first.get().dimension() == quantity.dimension() ? usualGauge(first.get(), depth + 1) : "";
                }
            }
        }
        return "";
    }

    /** Of several gauges named together, those whose doubt is of this dimension; where none is, those that give a share. */
    private List<String> fitting(List<String> named, Dimension dimension) {
        List<String> exact = new ArrayList<>();
        List<String> shares = new ArrayList<>();
        for (String name : named) {
            Optional<Amount> amount = amountOf(name, dimension);
            if (amount.isEmpty() || !amount.get().suits(dimension)) {
                continue;
            }
            (amount.get().form() == Amount.Form.OF_READING ? shares : exact).add(name);
        }
        return exact.isEmpty() ? shares : exact;
    }

    private Optional<Amount> amountOf(String name, Dimension dimension) {
        Gauge gauge = build.gauges().get(name);
        if (gauge == null) {
            return usualOf(name, dimension);
        }
        if (gauge.doubt().isPresent()) {
            return Optional.of(Amount.of(gauge.doubt().get(), dimension));
        }
        Optional<Amount> all = Optional.empty();
        for (String kind : gauge.kinds()) {
            Optional<Amount> one = usualOf(kind, dimension);
            if (one.isPresent() && one.get().suits(dimension)) {
                all = Optional.of(all.isPresent() ? together(all.get(), one.get()) : one.get());
            }
        }
        return all;
    }

    private static Amount together(Amount one, Amount other) {
        return one.form() == other.form() ? new Amount(one.form(), Math.hypot(one.amount(), other.amount()), one.dimension(),
                Math.hypot(one.small(), other.small()), Math.max(one.upTo(), other.upTo())) : one;
    }

    private Optional<Amount> usualOf(String kind, Dimension dimension) {
        return usual.computeIfAbsent(kind + '|' + dimension.word(),
                k -> words.gauge(kind).map(GaugeKind::doubt).flatMap(text -> Amount.read(text, dimension)));
    }

    /** Adds the parts of one gauge; whether the usual doubt of its kind was taken. */
    private boolean take(String name, Quantity quantity, Statement read, double si, double multiplied, String reading,
            SortedMap<String, Double> parts) {
        Gauge gauge = build.gauges().get(name);
        Amount amount = amountOf(name, quantity.dimension()).orElseThrow();
        double times = gauge != null && gauge.kinds().contains(MULTIPLIER) ? 1 : multiplied;
        if (gauge == null) {
            unnamed(name, amount, quantity, read, si, reading, parts);
            return amount.form() == Amount.Form.ABSOLUTE || amount.form() == Amount.Form.OF_READING;
        }
        if (rounded(amount, quantity, read, reading, parts)) {
            return false;
        }
        double all = amount.expanded(si / times) * times / 2;
        double step = gauge.resolution().filter(r -> r.unit().dimension() == quantity.dimension())
                .map(r -> Math.abs(r.high() - r.unit().offset())).orElse(0.0);
        double hand = gauge.repeats().filter(r -> r.unit().dimension() == quantity.dimension())
                .map(r -> Math.abs(r.high() - r.unit().offset()) / 2).orElse(step) / ROOT_3;
        double ofReading = Math.hypot(step / 2 / ROOT_3, hand);
        boolean certified = gauge.doubt().isPresent();
        double shared = certified && step > 0 ? all : all / ROOT_2;
        ofReading = certified && step > 0 ? ofReading : Math.max(all / ROOT_2, ofReading);
        if (gauge.setWith().isPresent()) {
            SortedMap<String, Double> setting = new TreeMap<>();
            set(gauge.setWith().get(), quantity.dimension(), si, setting, 0);
            double set = root(setting);
            if (!certified) {
                double scale = set > shared ? shared / set : 1;
                setting.replaceAll((source, part) -> part * scale);
                shared = Math.sqrt(Math.max(0, shared * shared - set * set * scale * scale));
            }
            setting.forEach((source, part) -> add(parts, source, part));
        }
        add(parts, "calibration of " + name, shared);
        add(parts, reading, ofReading);
        return !certified;
    }

    /** The calibration of what a gauge was set with, and of what that was set with. */
    private void set(String with, Dimension dimension, double si, SortedMap<String, Double> parts, int depth) {
        Optional<Amount> amount = amountOf(with, dimension).filter(a -> a.suits(dimension));
        if (amount.isEmpty() || depth == LONGEST_CHAIN) {
            return;
        }
        Gauge gauge = build.gauges().get(with);
        boolean certified = gauge != null && gauge.doubt().isPresent() && gauge.resolution().isPresent();
        double all = amount.get().expanded(si) / 2;
        add(parts, "calibration of " + with, certified || gauge == null ? all : all / ROOT_2);
        if (gauge != null && gauge.setWith().isPresent()) {
            set(gauge.setWith().get(), dimension, si, parts, depth + 1);
        }
    }

    private void unnamed(String kind, Amount amount, Quantity quantity, Statement read, double si, String reading,
            SortedMap<String, Double> parts) {
        if (!rounded(amount, quantity, read, reading, parts)) {
            shareOut(parts, "the usual " + kind + " for " + quantity.name(), reading, amount.expanded(si) / 2);
        }
    }

    /** Doubt that rests on how the figure was written; whether it does. */
    private static boolean rounded(Amount amount, Quantity quantity, Statement read, String reading,
            SortedMap<String, Double> parts) {
        if (amount.form() == Amount.Form.HALF_LAST_FIGURE
                || amount.form() == Amount.Form.AS_WRITTEN && quantity.dimension() != Dimension.COUNT) {
            if (quantity.dimension() != Dimension.COUNT) {
                add(parts, reading, halfLast(read.value()) / ROOT_3);
            }
            return true;
        }
        return amount.form() == Amount.Form.AS_WRITTEN;
    }

    private static void shareOut(SortedMap<String, Double> parts, String shared, String own, double all) {
        add(parts, shared, all / ROOT_2);
        add(parts, own, all / ROOT_2);
    }

    /** Half a unit of the last figure that was written, SI. */
    static double halfLast(Optional<Written> written) {
        return written.map(w -> 0.5 * Math.pow(10, -w.figures()) * w.unit().factor()).orElse(0.0);
    }

    private static void add(SortedMap<String, Double> parts, String source, double part) {
        if (part > 0) {
            parts.merge(source, part, Math::hypot);
        }
    }

    private static double root(SortedMap<String, Double> parts) {
        double sum = 0;
        for (double part : parts.values()) {
            sum += part * part;
        }
        return Math.sqrt(sum);
    }
}
