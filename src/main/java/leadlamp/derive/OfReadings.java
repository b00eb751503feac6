package leadlamp.derive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import leadlamp.calc.Chance;
import leadlamp.calc.Conformity;
import leadlamp.calc.Sets;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.record.Gauge;
import leadlamp.record.LimitLine;
import leadlamp.record.Place;
import leadlamp.record.Where;
import leadlamp.words.Quantity;

/**
 * What the readings say of themselves and of their gauges: whether a gauge is fine enough for its tolerance, whether a reading is
 * near its nominal size, how a set scatters, and how likely it is that it agrees so well or ends so often in a nought or a five. The
 * kind of such a value is the quantity that was read.
 */
final class OfReadings {
    private static final double TWICE = 2;
    private static final Unit NUMBER = Units.si(Dimension.NUMBER);
    private static final Unit PERCENT = Units.usual(Dimension.SHARE);
    private static final int LEAST_SET = 3;
    /** Chance that an honest last digit is a nought or a five. */
    private static final double ROUND_DIGIT = 0.2;

    private final Site site;
    private final List<Value> out = new ArrayList<>();
    private final Predicate<String> wanted;
    private List<Map<String, List<LimitLine>>> bands;

    private OfReadings(Site site, Predicate<String> wanted) {
        this.site = site;
        this.wanted = wanted;
    }

    /** Those of the values that are wanted, in the order of the readings. */
    static List<Value> of(Site site, List<Value> readings, Predicate<String> wanted) {
        OfReadings of = new OfReadings(site, wanted);
        boolean ratio = wanted.test("gauge ratio");
        boolean nominal = wanted.test("reading over nominal");
        boolean set = wanted.test("reading spread") || wanted.test("same readings chance") || wanted.test("round digits chance");
        if (!ratio && !nominal && !set) {
            return of.out;
        }
        Map<String, List<Value>> sets = new LinkedHashMap<>();
        Map<String, Value> ratios = new LinkedHashMap<>();
        Map<String, Value> nominals = new LinkedHashMap<>();
        for (Value reading : readings) {
            if (reading.of().endsWith(" as found") || reading.of().endsWith(" as trial") || Store.untold(reading.at())
                    || !reading.told().isEmpty()) {
                continue;
            }
            Optional<Quantity> quantity = site.words.quantity(reading.of());
            if (quantity.isEmpty()) {
                continue;
            }
            String place = of.groupPlace(quantity.get(), reading.at());
            if (ratio) {
                of.ratio(reading, quantity.get(), place).ifPresent(v -> ratios.merge(reading.of() + "|" + place, v,
                    (a, b) -> a.low().orElseThrow().value() <= b.low().orElseThrow().value() ? a : b));
            }
            if (nominal) {
                of.nominal(reading, quantity.get(), place).ifPresent(v -> nominals.putIfAbsent(reading.of() + "|" + place, v));
            }
            if (set && reading.plain() && reading.unit().dimension() != Dimension.COUNT) {
                sets.computeIfAbsent(reading.of(), q -> new ArrayList<>()).add(reading);
            }
        }
        of.out.addAll(ratios.values());
        of.out.addAll(nominals.values());
        sets.values().forEach(of::set);
        return of.out;
    }

    /** The place of the quantity's group that a longer place belongs to. */
    private String groupPlace(Quantity quantity, String at) {
        for (String place : site.places(quantity.group()).orElse(List.of())) {
            if (site.store.covers(place, at)) {
                return place;
            }
        }
        return quantity.group().equals(Place.ENGINE) ? Place.ENGINE : at;
    }

    /** Half of the tolerance over the doubt, where supplier or sheet gives both sides. */
    private Optional<Value> ratio(Value reading, Quantity quantity, String place) {
        Optional<Estimate> end = reading.low().or(reading::high);
        if (end.isEmpty() || end.get().standardUncertainty() <= 0 || reading.gauge().equals("label")) {
            return Optional.empty();
        }
        Optional<LimitLine> band = band(quantity, reading.at());
        if (band.isEmpty()) {
            return Optional.empty();
        }
        double expanded = TWICE * end.get().standardUncertainty();
        double least = band.get().least().get().low();
        double most = band.get().most().get().high();
        if (!(most > least)) {
            return Optional.empty();
        }
        double ratio = Conformity.gaugeRatio(least, most, expanded);
        Unit unit = reading.unit();
        String sum = "half of (" + Figures.text(most, unit, reading.figures()) + " - " + Figures.text(least, unit, reading.figures()) + ") / doubt "
                + Figures.step(expanded, unit, Figures.decimalsFor(expanded / unit.factor(), 2)) + " = " + Figures.plain(ratio, 1);
        return Optional.of(value("gauge ratio", reading.of(), place, ratio, NUMBER, 1, reading.usual(), sum, List.of(reading.places().get(0),
                band.get().line())));
    }

    private Optional<LimitLine> band(Quantity quantity, String at) {
        for (Map<String, List<LimitLine>> hand : bands()) {
            for (String name : List.of(quantity.name(), quantity.kind())) {
                LimitLine best = null;
                for (LimitLine line : hand.getOrDefault(name, List.of())) {
                    if ((line.at().isEmpty() || site.store.covers(line.at(), at)) && (best == null || !line.at().isEmpty())) {
                        best = line;
                    }
                }
                if (best != null) {
                    return Optional.of(best);
                }
            }
        }
        return Optional.empty();
    }

    /** Lines with both sides, by quantity: the suppliers', then the sheet's. */
    private List<Map<String, List<LimitLine>>> bands() {
        if (bands == null) {
            bands = new ArrayList<>();
            for (List<LimitLine> lines : List.of(site.build.limits(), site.build.sheet().limits())) {
                Map<String, List<LimitLine>> byQuantity = new HashMap<>();
                for (LimitLine line : lines) {
                    if (line.least().isPresent() && line.most().isPresent() && line.times().isEmpty() && line.where().isEmpty()
                            && !line.asides().containsKey("speed")) {
                        byQuantity.computeIfAbsent(line.quantity(), q -> new ArrayList<>()).add(line);
                    }
                }
                bands.add(byQuantity);
            }
        }
        return bands;
    }

    /** A reading over its nominal size, by which a slip of a digit or a unit shows. */
    private Optional<Value> nominal(Value reading, Quantity quantity, String place) {
        Optional<LimitLine> standard = site.standard(quantity, reading.at());
        if (standard.isEmpty() || !reading.plain() || standard.get().standard().get().low() == 0
                || standard.get().standard().get().low() != standard.get().standard().get().high()) {
            return Optional.empty();
        }
        double size = standard.get().standard().get().low();
        double ratio = reading.low().get().value() / size;
        String sum = Figures.text(reading.low().get().value(), reading.unit(), reading.figures()) + " / standard "
                + Figures.text(size, standard.get().standard().get().unit(), standard.get().standard().get().figures()) + " = "
                + Figures.plain(ratio, 4);
        return Optional.of(value("reading over nominal", reading.of(), place, ratio, NUMBER, 4, false, sum, List.of(reading.places().get(0),
                standard.get().line())));
    }

    private void set(List<Value> set) {
        if (set.size() < LEAST_SET) {
            return;
        }
        Value first = set.get(0);
        double[] readings = new double[set.size()];
        List<Where> where = new ArrayList<>();
        double own = 0;
        int digits = 0;
        int round = 0;
        for (int i = 0; i < readings.length; i++) {
            Value v = set.get(i);
            readings[i] = v.low().get().value();
            for (Map.Entry<String, Double> part : v.low().get().doubt().entrySet()) {
                own = part.getKey().startsWith(GaugeDoubts.READING) ? Math.max(own, Math.abs(part.getValue())) : own;
            }
            long last = Math.round(Math.abs(v.unit().fromSi(readings[i])) * Math.pow(10, v.figures()));
            digits++;
            round += last % 5 == 0 ? 1 : 0;
            if (!where.contains(v.places().get(0))) {
                where.add(v.places().get(0));
            }
        }
        double mean = Sets.mean(readings);
        double spread = Sets.spread(readings);
        if (mean != 0 && wanted.test("reading spread")) {
            double share = Math.abs(spread / mean);
            out.add(value("reading spread", first.of(), Place.ENGINE, share, PERCENT, 2, false, "(" + show(Sets.greatest(readings), first) + " - "
                    + (Sets.least(readings) < 0 ? "(" + show(Sets.least(readings), first) + ")" : show(Sets.least(readings), first)) + ") / mean "
                    + show(Math.abs(mean), first) + " = " + Figures.text(share, PERCENT, 2), where));
        }
        double step = Math.max(resolution(first), Math.pow(10, -first.figures()) * first.unit().factor());
        boolean alike = spread < step / 2;
        if (own > 0 && wanted.test("same readings chance")) {
            double chance = alike ? Chance.allAgree(readings.length, own, step) : 1;
            out.add(value("same readings chance", first.of(), Place.ENGINE, chance, PERCENT, 1, false, alike ? readings.length
                    + " readings agree to the last step, each with a scatter of its own = " + Figures.text(chance, PERCENT, 1)
                    : "the readings differ, as readings do = 100.0 %", where));
        }
        if (!wanted.test("round digits chance")) {
            return;
        }
        double chance = Chance.atLeast(round, digits, ROUND_DIGIT);
        out.add(value("round digits chance", first.of(), Place.ENGINE, chance, PERCENT, 1, false, round + " of " + digits
                + " last figures are a nought or a five = " + Figures.text(chance, PERCENT, 1), where));
    }

    private double resolution(Value reading) {
        Gauge gauge = site.build.gauges().get(reading.gauge());
        return gauge == null ? 0 : gauge.resolution().filter(r -> r.unit().dimension() == reading.unit().dimension())
                .map(r -> Math.abs(r.high() - r.unit().offset())).orElse(0.0);
    }

    private static String show(double si, Value like) {
        return Figures.text(si, like.unit(), like.figures());
    }

    private static Value value(String of, String kind, String at, double si, Unit unit, int figures, boolean usual, String sum, List<Where> where) {
        Optional<Estimate> end = Optional.of(new Estimate(si, unit.dimension(), new TreeMap<>()));
        return new Value(of, kind, at, end, end, unit, figures, "", usual, sum, "", Map.of(), List.copyOf(where));
    }
}
