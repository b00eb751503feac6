package leadlamp.derive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.facts.Redone;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Unit;
import leadlamp.record.Where;
import leadlamp.words.Quantity;

/**
 * One sum at one place. What each source of doubt does to the result is a central difference over the formula itself, the step
 * being the source's own standard uncertainty, so that a formula that bends within its doubt is taken at its mean slope. The
 * parts are kept source by source (JCGM 100, first order). Where a figure has two ends, the result's low end takes each figure's end by the sign of its
 * slope; an end that is open stays open.
 */
final class Working {
    private static final double OPEN_END = 1e3;

    private final Derived entry;
    private final Quantity quantity;
    private final String place;
    private final List<Slot> slots;
    private final In in;
    private final List<Figure> figures = new ArrayList<>();

    /** One figure of one slot, as it is tried. */
    private static final class Figure {
        private final int slot;
        private final int index;
        private final Value value;
        private double now;

        Figure(int slot, int index, Value value) {
            this.slot = slot;
            this.index = index;
            this.value = value;
        }

        double middle() {
            if (value.low().isPresent() && value.high().isPresent()) {
                return value.plain() ? value.low().get().value()
                        : (value.low().get().value() + value.high().get().value()) / 2;
            }
            return value.low().isPresent() ? value.low().get().value() : value.high().map(Estimate::value).orElse(Double.NaN);
        }

        /** The doubt at the end that is being tried. */
        Optional<Estimate> nearest() {
            if (value.low().isEmpty() || value.high().isEmpty()) {
                return value.low().isPresent() ? value.low() : value.high();
            }
            double toLow = Math.abs(now - value.low().get().value());
            double toHigh = Math.abs(now - value.high().get().value());
            return toLow <= toHigh ? value.low() : value.high();
        }
    }

    Working(Derived entry, Quantity quantity, String place, List<Slot> slots) {
        this.entry = entry;
        this.quantity = quantity;
        this.place = place;
        this.slots = slots;
        this.in = new In(place, slots);
        for (int s = 0; s < slots.size(); s++) {
            List<Value> values = slots.get(s).values();
            for (int i = 0; i < values.size(); i++) {
                figures.add(new Figure(s, i, values.get(i)));
            }
        }
    }

    /**
     * The value.
     *
     * @throws IllegalArgumentException where the formula refuses its figures
     */
    Value value() {
        boolean plain = true;
        for (Figure f : figures) {
            set(f, f.middle());
            plain &= f.value.plain();
        }
        double middle = result();
        Redone sum;
        Optional<Estimate> low;
        Optional<Estimate> high;
        Unit unit = unit();
        int decimals = decimals(unit, middle);
        if (plain) {
            low = Optional.of(new Estimate(middle, quantity.dimension(), doubts(middle)));
            high = low;
            double[] figures = now();
            sum = Redone.when(() -> told(figures, middle, unit, decimals));
        } else {
            double[] slope = new double[figures.size()];
            boolean[] up = new boolean[figures.size()];
            boolean[] down = new boolean[figures.size()];
            for (int i = 0; i < slope.length; i++) {
                Figure f = figures.get(i);
                if (!f.value.plain()) {
                    slope[i] = slope(f, middle, spread(f));
                    openEffects(f, middle, slope[i], i, up, down);
                }
            }
            low = end(slope, false, up, down);
            double[] figuresLow = now();
            high = end(slope, true, up, down);
            double[] figuresHigh = now();
            sum = Redone.when(() -> told(low, figuresLow, unit, decimals) + (low.isPresent() && high.isPresent() ? "; " : "")
                    + told(high, figuresHigh, unit, decimals));
        }
        return new Value(quantity.name(), quantity.kind(), place, low, high, unit, decimals, "", usual(), sum, told(), asides(),
                places());
    }

    /** The figures as they are set now. */
    private double[] now() {
        double[] now = new double[figures.size()];
        for (int i = 0; i < now.length; i++) {
            now[i] = figures.get(i).now;
        }
        return now;
    }

    private String told(Optional<Estimate> end, double[] now, Unit unit, int decimals) {
        return end.isEmpty() ? "" : told(now, end.get().value(), unit, decimals);
    }

    /** The sum of these figures in words. */
    private String told(double[] now, double result, Unit unit, int decimals) {
        for (int i = 0; i < now.length; i++) {
            set(figures.get(i), now[i]);
        }
        return entry.sum().of(in, result) + " = " + Figures.text(result, unit, decimals);
    }

    private double result() {
        double result = entry.formula().of(in);
        if (Double.isNaN(result) || Double.isInfinite(result)) {
            throw new IllegalArgumentException("nothing finite comes of these figures");
        }
        return result;
    }

    private void set(Figure f, double si) {
        f.now = si;
        in.set(f.slot, f.index, si);
    }

    /** How far a figure with two ends, or one, is moved to see which way the result goes. */
    private static double spread(Figure f) {
        double half = f.value.low().isPresent() && f.value.high().isPresent()
                ? (f.value.high().get().value() - f.value.low().get().value()) / 2 : 0;
        double doubt = f.nearest().map(Estimate::standardUncertainty).orElse(0.0);
        return Math.max(Math.max(half, doubt), Math.max(Math.abs(f.now) * 1e-6, 1e-12));
    }

    private double slope(Figure f, double here, double step) {
        double was = f.now;
        double above;
        double below;
        double width = 0;
        try {
            set(f, was + step);
            above = result();
            width += step;
        } catch (IllegalArgumentException outside) {
            above = here;
        }
        try {
            set(f, was - step);
            below = result();
            width += step;
        } catch (IllegalArgumentException outside) {
            below = here;
        }
        set(f, was);
        return width == 0 ? 0 : (above - below) / width;
    }

    /** A greatest or least of many may not feel a small move of a figure whose far end is open, and yet hang on it. */
    private void openEffects(Figure f, double middle, double slope, int i, boolean[] up, boolean[] down) {
        boolean openHigh = f.value.high().isEmpty();
        boolean openLow = f.value.low().isEmpty();
        if (!openHigh && !openLow) {
            return;
        }
        if (slope != 0) {
            boolean rises = slope > 0;
            up[i] = openHigh && rises || openLow && !rises;
            down[i] = openLow && rises || openHigh && !rises;
            return;
        }
        double was = f.now;
        double far = OPEN_END * (Math.abs(was) + 1);
        try {
            set(f, openHigh ? was + far : was - far);
            double there = result();
            up[i] = there > middle;
            down[i] = there < middle;
        } catch (IllegalArgumentException outside) {
            up[i] = true;
            down[i] = true;
        }
        set(f, was);
    }

    private Optional<Estimate> end(double[] slope, boolean highEnd, boolean[] up, boolean[] down) {
        for (int i = 0; i < slope.length; i++) {
            if (highEnd ? up[i] : down[i]) {
                return Optional.empty();
            }
        }
        for (int i = 0; i < slope.length; i++) {
            Figure f = figures.get(i);
            boolean takeHigh = slope[i] > 0 == highEnd;
            Optional<Estimate> end = f.value.plain() || slope[i] == 0 ? Optional.empty() : takeHigh ? f.value.high() : f.value.low();
            set(f, end.map(Estimate::value).orElse(f.middle()));
        }
        double result = result();
        return Optional.of(new Estimate(result, quantity.dimension(), doubts(result)));
    }

    /**
     * The doubt that each source brings: half of the difference that the result makes when every figure is moved at once by
     * what that source can do to it, up and down. So the error of one gauge moves all that it read together, and a least of
     * many readings moves with it once, not once for each.
     */
    private TreeMap<String, Double> doubts(double result) {
        Map<String, List<Push>> pushes = new HashMap<>();
        for (Figure f : figures) {
            Optional<Estimate> end = f.nearest();
            if (end.isPresent()) {
                for (Map.Entry<String, Double> part : end.get().doubt().entrySet()) {
                    List<Push> same = pushes.get(part.getKey());
                    if (same == null) {
                        same = new ArrayList<>(2);
                        pushes.put(part.getKey(), same);
                    }
                    same.add(new Push(f, f.now, part.getValue()));
                }
            }
        }
        // No source is tried upon another, so their order is of no matter.
        TreeMap<String, Double> doubts = new TreeMap<>();
        for (Map.Entry<String, List<Push>> source : pushes.entrySet()) {
            double above = moved(source.getValue(), 1);
            double below = moved(source.getValue(), -1);
            double part = Double.isNaN(above) ? Double.isNaN(below) ? 0 : result - below
                    : Double.isNaN(below) ? above - result : turns(above, result, below) ? greater(above - result, result - below)
                    : (above - below) / 2;
            if (part != 0) {
                doubts.put(source.getKey(), part);
            }
            for (Push push : source.getValue()) {
                set(push.figure, push.at);
            }
        }
        return doubts;
    }

    /** Whether the result turns over here, as a difference without a sign does at nought: then the mean of both ways would hide the doubt. */
    private static boolean turns(double above, double result, double below) {
        return above > result && below > result || above < result && below < result;
    }

    private static double greater(double one, double other) {
        return Math.abs(one) >= Math.abs(other) ? one : other;
    }

    /** What one source of doubt can do to one figure. */
    private record Push(Figure figure, double at, double part) {
    }

    private double moved(List<Push> pushes, int way) {
        for (Push push : pushes) {
            set(push.figure, push.at + way * push.part);
        }
        try {
            return result();
        } catch (IllegalArgumentException outside) {
            return Double.NaN;
        }
    }

    /** The record's own unit: that of the first figure of the same dimension; else the vocabulary's. */
    private Unit unit() {
        if (entry.unit().isPresent()) {
            return entry.unit().get();
        }
        if (!entry.unitLike().isEmpty()) {
            for (Slot slot : slots) {
                if (slot.name().equals(entry.unitLike()) && slot.values().get(0).unit().dimension() == quantity.dimension()) {
                    return slot.values().get(0).unit();
                }
            }
        }
        if (!plainNumber(quantity.dimension())) {
            for (Figure f : figures) {
                if (f.value.unit().dimension() == quantity.dimension()) {
                    return inch(f.value.unit()) == inch(quantity.unit()) ? quantity.unit() : f.value.unit();
                }
            }
        }
        return quantity.unit();
    }

    private static boolean plainNumber(Dimension dimension) {
        return dimension == Dimension.NUMBER || dimension == Dimension.COUNT || dimension == Dimension.SHARE;
    }

    /** Whether a unit is of the inch and pound family: such a record is answered in its own unit. */
    private static boolean inch(Unit unit) {
        double metric = unit.factor();
        while (metric < 0.999_999) {
            metric *= 10;
        }
        while (metric > 9.999_99) {
            metric /= 10;
        }
        return Math.abs(metric - 1) > 1e-6;
    }

    private int decimals(Unit unit, double result) {
        if (entry.figures() >= 0) {
            return Math.max(0, entry.figures() + finerUnit(unit));
        }
        int most = -1;
        if (!plainNumber(quantity.dimension())) {
            for (Figure f : figures) {
                if (f.value.unit().dimension() == quantity.dimension()) {
                    int shift = (int) Math.round(Math.log10(unit.factor() / f.value.unit().factor()));
                    most = Math.max(most, Math.max(0, f.value.figures() + shift));
                }
            }
        }
        return most >= 0 ? most + (entry.isFiner() ? 1 : 0) : Figures.decimalsFor(unit.fromSi(result), 3);
    }

    /** Decimals more that an inch wants than a millimetre. */
    private int finerUnit(Unit unit) {
        return switch (unit.dimension()) {
            case LENGTH, AREA, VOLUME -> (int) Math.round(Math.log10(unit.factor() / quantity.unit().factor()));
            default -> 0;
        };
    }

    private boolean usual() {
        for (Figure f : figures) {
            if (f.value.usual()) {
                return true;
            }
        }
        return false;
    }

    private String told() {
        for (Figure f : figures) {
            if (!f.value.told().isEmpty()) {
                return f.value.told();
            }
        }
        return "";
    }

    /** What the first figure was taken at, where all of its readings agree. */
    private Map<String, String> asides() {
        Map<String, String> asides = new TreeMap<>();
        List<Value> first = slots.isEmpty() ? List.of() : slots.get(0).values();
        for (Value value : first) {
            if (value == first.get(0)) {
                asides.putAll(value.asides());
            } else {
                asides.entrySet().removeIf(aside -> !aside.getValue().equals(value.asides().get(aside.getKey())));
            }
        }
        asides.keySet().removeIf(key -> key.equals("doubt") || key.equals("note") || key.equals("with") || key.equals("who")
                || key.equals(Readings.SAID));
        for (Figure f : figures) {
            String said = f.value.asides().get(Readings.SAID);
            if (said != null && !said.equals(Readings.END_MET)) {
                asides.put(Readings.SAID, said);
            }
        }
        return asides.isEmpty() ? Map.of() : Map.copyOf(asides);
    }

    private List<Where> places() {
        List<Where> places = new ArrayList<>();
        Set<Where> seen = new HashSet<>();
        for (Figure f : figures) {
            for (Where where : f.value.places()) {
                if (seen.add(where)) {
                    places.add(where);
                }
            }
        }
        return places;
    }

    List<Slot> slots() {
        return slots;
    }

    /** The figures as they went in, for a message; of many in one slot the one that it is about. */
    String inWords(Optional<Value> suspect) {
        StringBuilder words = new StringBuilder();
        for (Slot slot : slots) {
            Value shown = slot.values().get(0);
            for (Value value : slot.values()) {
                if (suspect.isPresent() && suspect.get() == value) {
                    shown = value;
                }
            }
            words.append(words.length() == 0 ? "" : ", ").append(slot.name()).append(' ')
                    .append(Figures.text(shown.low().or(shown::high).map(Estimate::value).orElse(0.0), shown.unit(), shown.figures()));
        }
        return words.toString();
    }

    /**
     * The reading that a refusal points to: the one that the refusal names, or that is nothing or less where that may not be;
     * else the first that has a line.
     */
    Optional<Value> suspect(String refusal) {
        int must = refusal.indexOf(" must");
        List<String> named = List.of((must < 0 ? "" : refusal.substring(0, must).toLowerCase(Locale.ROOT)).split(" "));
        Value best = null;
        int most = -1;
        for (Slot slot : slots) {
            int alike = 0;
            for (String word : slot.name().split(" ")) {
                alike += named.contains(word) ? 2 : 0;
            }
            for (Value value : slot.values()) {
                int weight = alike + (value.low().or(value::high).map(Estimate::value).orElse(1.0) <= 0 ? 3 : 0);
                if (!value.places().isEmpty() && weight > most) {
                    most = weight;
                    best = value;
                }
            }
        }
        return Optional.ofNullable(best);
    }
}
