package leadlamp.teach;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leadlamp.audit.Audit;
import leadlamp.facts.Fact;
import leadlamp.facts.Seen;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Estimate;
import leadlamp.report.Amounts;
import leadlamp.report.Wording;

/**
 * Compression and leak-down read across the cylinders: how each stands to the best, which stand apart from the rest by more
 * than the doubt of the readings, whether these are neighbours, and what oil in the cylinder does. What it makes of that is
 * common practice, no source; no number of its own decides.
 */
final class Cylinders {
    private static final double COVERAGE = 2;
    /** Of so many readings fewer than two orders in a hundred come of themselves so: 2 of 120. */
    private static final int IN_ORDER = 5;
    private static final String COMPRESSION = "engine compression";
    private static final String WET = "engine compression wet";
    private static final String LEAK = "engine leak-down";
    private static final String RISE = "compression rise wet";

    private final Audit audit;

    /**
     * One table.
     *
     * @param title what was read
     * @param rows  cylinder, reading, how it stands to the best, and against its limit
     * @param reads what can be read from it, a sentence each
     */
    record Table(String title, List<List<String>> rows, List<String> reads) {
    }

    private Cylinders(Audit audit) {
        this.audit = audit;
    }

    /** The tables of what was read. */
    static List<Table> of(Audit audit) {
        Cylinders cylinders = new Cylinders(audit);
        List<Table> tables = new ArrayList<>();
        cylinders.compression().ifPresent(tables::add);
        cylinders.leakDown().ifPresent(tables::add);
        return tables;
    }

    /** The worse reading of each cylinder, worst first. */
    private static List<Value> worstOfEach(List<Value> worstFirst) {
        Map<String, Value> each = new LinkedHashMap<>();
        worstFirst.forEach(value -> each.putIfAbsent(value.at(), value));
        return new ArrayList<>(each.values());
    }

    private static void again(List<Value> all, List<String> reads) {
        Map<String, List<String>> each = new TreeMap<>(Comparator.comparingInt(Integer::parseInt));
        all.forEach(value -> each.computeIfAbsent(value.at(), at -> new ArrayList<>()).add(Amounts.of(value)));
        each.forEach((at, read) -> {
            if (read.size() > 1) {
                reads.add("Cylinder " + at + " was read more than once (" + Wording.join(read) + "); the worse is used.");
            }
        });
    }

    /** What the two tables say together of one cylinder. */
    private void together(List<Value> low, List<String> reads) {
        List<Value> leak = worstOfEach(leaks());
        if (leak.isEmpty()) {
            return;
        }
        List<String> leaking = places(apart(leak));
        for (Value value : low) {
            if (!leaking.contains(value.at()) && leak.stream().anyMatch(l -> l.at().equals(value.at()))) {
                reads.add("Cylinder " + value.at() + " is low, and holds air no worse than its mates at rest: look at what opens its"
                        + " valves, lobe, follower and lash, and read it again.");
            }
        }
        List<String> lowAt = places(low);
        for (String at : leaking) {
            if (!lowAt.contains(at) && read(COMPRESSION).stream().anyMatch(v -> v.at().equals(at))) {
                reads.add("Cylinder " + at + " leaks at rest, and pumps no worse than its mates: carbon under a valve, or the gaps of its"
                        + " rings in line. Read it again after a run.");
            }
        }
    }

    private static List<String> places(List<Value> values) {
        List<String> at = new ArrayList<>();
        values.forEach(value -> at.add(value.at()));
        return at;
    }

    private List<Value> leaks() {
        List<Value> leak = read(LEAK);
        leak.sort(Comparator.comparingDouble(Cylinders::si).reversed());
        return leak;
    }

    /** All alike, and all beyond the limit: one cause for all, or the test itself. */
    private void allOutside(List<Value> values, List<Value> apart, String because, List<String> reads) {
        int outside = 0;
        for (Value value : values) {
            outside += audit.verdicts().stream().anyMatch(v -> v.value().equals(value) && v.isOutside()) ? 1 : 0;
        }
        if (values.size() > 1 && outside == values.size() && apart.isEmpty()) {
            reads.add("All cylinders are alike, and all are outside the limit. " + because);
        }
    }

    /** Readings that fall, or rise, from the first cylinder to the last are seldom the engine's. */
    private static void inOrder(List<Value> values, List<String> reads) {
        List<Value> sorted = new ArrayList<>(values);
        sorted.sort(Comparator.comparingInt(v -> Integer.parseInt(v.at())));
        boolean falling = true;
        boolean rising = true;
        for (int i = 1; i < sorted.size(); i++) {
            falling &= si(sorted.get(i)) < si(sorted.get(i - 1));
            rising &= si(sorted.get(i)) > si(sorted.get(i - 1));
        }
        if (sorted.size() >= IN_ORDER && (falling || rising)) {
            reads.add("The readings " + (falling ? "fall" : "rise") + " from the first cylinder to the last. A battery that tires, or an engine"
                    + " that cools, reads so: read the first one again before you believe the last.");
        }
    }

    private Optional<Table> compression() {
        List<Value> dry = read(COMPRESSION);
        if (dry.isEmpty()) {
            return Optional.empty();
        }
        dry.sort(Comparator.comparingDouble(Cylinders::si));
        List<Value> all = List.copyOf(dry);
        dry = worstOfEach(dry);
        List<String> reads = new ArrayList<>(spread("compression balance", "Lowest over highest"));
        again(all, reads);
        List<Value> apart = apart(dry);
        List<Value> backwards = new ArrayList<>(dry);
        Collections.reverse(backwards);
        List<Value> high = apart.isEmpty() ? apart(backwards) : List.of();
        if (high.isEmpty()) {
            apart(apart, dry, "lower", reads);
        } else {
            reads.add(cylinders(high) + (high.size() == 1 ? " stands" : " stand") + " above the rest: "
                    + difference(high.get(high.size() - 1), backwards.get(high.size())) + " higher than the next, which is more than the doubt."
                    + " Oil or carbon in it, or another piston or chamber, reads so; do not call the rest low by it.");
        }
        allOutside(dry, apart, "Look first at what reaches them all: tester, throttle open, speed of the starter, cam timing, lash.", reads);
        inOrder(dry, reads);
        wet(apart, reads);
        together(apart, reads);
        conditions(dry, COMPRESSION, reads);
        return Optional.of(new Table("Compression", rows(all, dry.get(dry.size() - 1), "below the highest"), List.copyOf(reads)));
    }

    private Optional<Table> leakDown() {
        List<Value> all = leaks();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        List<Value> leak = worstOfEach(all);
        List<String> reads = new ArrayList<>(spread("leak-down spread", "Worst less best"));
        again(all, reads);
        List<Value> apart = apart(leak);
        apart(apart, leak, "higher", reads);
        allOutside(leak, apart, "Look first at the tester and its zero, and at what they all share: a cold engine, rings of one age.", reads);
        air(reads);
        conditions(leak, LEAK, reads);
        return Optional.of(new Table("Leak-down", rows(all, leak.get(leak.size() - 1), "above the lowest"), List.copyOf(reads)));
    }

    /** Plain readings of the builder's own, a cylinder each. */
    private List<Value> read(String quantity) {
        List<Value> values = new ArrayList<>();
        for (Value value : audit.values()) {
            if (value.of().equals(quantity) && value.plain() && !value.derived() && value.told().isEmpty()
                    && value.at().matches("[0-9]+")) {
                values.add(value);
            }
        }
        return values;
    }

    private static double si(Value value) {
        return value.low().orElseThrow().value();
    }

    private List<List<String>> rows(List<Value> worstFirst, Value best, String how) {
        List<Value> sorted = new ArrayList<>(worstFirst);
        sorted.sort(Comparator.comparingInt(v -> Integer.parseInt(v.at())));
        List<List<String>> rows = new ArrayList<>();
        for (Value value : sorted) {
            String standing = "";
            for (Verdict verdict : audit.verdicts()) {
                if (verdict.value().equals(value)) {
                    standing = Wording.standing(verdict) + "; " + Amounts.sides(verdict);
                }
            }
            rows.add(List.of(value.at(), Amounts.of(value), value == best ? "the best" : difference(best, value) + " " + how,
                    standing));
        }
        return List.copyOf(rows);
    }

    /** How far two readings lie apart, with the doubt of the difference: a shared gauge's error cancels. */
    private static String difference(Value one, Value other) {
        Estimate apart = minus(one.low().orElseThrow(), other.low().orElseThrow());
        Estimate plus = apart.value() < 0 ? minus(other.low().orElseThrow(), one.low().orElseThrow()) : apart;
        return Amounts.of(new Value(one.of(), one.kind(), one.at(), Optional.of(plus), Optional.of(plus), one.unit(), one.figures(),
                "", false, "", "", new TreeMap<>(), List.of()));
    }

    private static Estimate minus(Estimate one, Estimate other) {
        SortedMap<String, Double> doubt = new TreeMap<>(one.doubt());
        other.doubt().forEach((source, part) -> doubt.merge(source, -part, Double::sum));
        return new Estimate(one.value() - other.value(), one.dimension(), doubt);
    }

    private static boolean proven(Estimate difference) {
        return Math.abs(difference.value()) > COVERAGE * difference.standardUncertainty();
    }

    /**
     * The worst, as far as the widest gap in the row: where that gap is more than its doubt and more than what the rest
     * differ among themselves, and no more than half stand below it.
     */
    private static List<Value> apart(List<Value> worstFirst) {
        int widest = -1;
        double gap = 0;
        for (int i = 0; i + 1 < worstFirst.size() && (i + 1) * 2 <= worstFirst.size(); i++) {
            double here = Math.abs(si(worstFirst.get(i + 1)) - si(worstFirst.get(i)));
            if (here > gap) {
                gap = here;
                widest = i;
            }
        }
        if (widest < 0) {
            return List.of();
        }
        Value last = worstFirst.get(widest);
        Value next = worstFirst.get(widest + 1);
        double rest = Math.abs(si(worstFirst.get(worstFirst.size() - 1)) - si(next));
        return proven(minus(last.low().orElseThrow(), next.low().orElseThrow())) && gap > rest
                ? worstFirst.subList(0, widest + 1) : List.of();
    }

    private void apart(List<Value> apart, List<Value> all, String how, List<String> reads) {
        if (all.size() < 2) {
            return;
        }
        if (apart.isEmpty()) {
            reads.add("No cylinder stands apart from the rest by more than the doubt of the readings and the others' own spread.");
            return;
        }
        Value last = apart.get(apart.size() - 1);
        Value next = all.get(apart.size());
        reads.add(cylinders(apart) + (apart.size() == 1 ? " stands" : " stand") + " apart: " + difference(last, next) + " " + how
                + " than the next, which is more than the doubt.");
        if (apart.size() == 1) {
            reads.add("It stands alone: look for its cause in that cylinder, its valves, rings and bore.");
        } else if (apart.size() == 2 && neighbours(apart)) {
            reads.add("They are neighbours: look first at the gasket and the faces between them.");
        } else {
            reads.add("They are not two neighbours: look for a cause in each, and for one that reaches them all.");
        }
    }

    private boolean neighbours(List<Value> two) {
        List<String> at = new ArrayList<>(List.of(two.get(0).at(), two.get(1).at()));
        at.sort(Comparator.comparingInt(Integer::parseInt));
        String pair = at.get(0) + " and " + at.get(1);
        return audit.build().sheet().layout().places("each pair of cylinders").orElse(List.of()).contains(pair);
    }

    private void wet(List<Value> apart, List<String> reads) {
        List<Value> rises = new ArrayList<>();
        for (Value value : audit.values()) {
            if (value.of().equals(RISE) && value.plain() && value.derived() && value.told().isEmpty()) {
                rises.add(value);
            }
        }
        if (rises.isEmpty()) {
            reads.add(read(WET).isEmpty() ? "Nothing is read wet, with oil in the cylinder: rings cannot be told from valves by it."
                    : "What is read wet cannot be laid beside what is read dry.");
            return;
        }
        List<String> low = new ArrayList<>();
        apart.forEach(value -> low.add(value.at()));
        Value mates = null;
        for (Value rise : rises) {
            if (!low.contains(rise.at()) && (mates == null || si(rise) > si(mates))) {
                mates = rise;
            }
        }
        for (Value rise : rises) {
            if (low.contains(rise.at()) && mates != null) {
                Estimate more = minus(rise.low().orElseThrow(), mates.low().orElseThrow());
                boolean lifts = more.value() > 0 && proven(more);
                reads.add("Oil lifts cylinder " + rise.at() + " by " + Amounts.of(rise) + ", its mates by "
                        + Amounts.of(mates) + " at most: " + (lifts ? "rings or bore leak."
                        : "not more than its mates, so look at a valve, the gasket or a hole before the rings."));
            } else if (low.contains(rise.at())) {
                reads.add("Oil lifts cylinder " + rise.at() + " by " + Amounts.of(rise) + ", and none of its mates was read wet. A sound"
                        + " cylinder is lifted too: read one of them with the same oil before you blame the rings.");
            }
        }
        if (apart.isEmpty() && mates != null) {
            reads.add("Oil lifts the compression by " + Amounts.of(mates) + " at most (cylinder " + mates.at() + ").");
        }
    }

    /** A derived value of the whole engine, with its sum and how it stands. */
    private List<String> spread(String quantity, String label) {
        for (Value value : audit.values()) {
            if (value.of().equals(quantity)) {
                String against = ", no limit known";
                for (Verdict verdict : audit.verdicts()) {
                    if (verdict.value().equals(value)) {
                        against = ", " + Wording.standing(verdict) + "; " + Amounts.sides(verdict);
                    }
                }
                return List.of(label + ": " + Amounts.of(value) + against + " (" + value.sum() + ").");
            }
        }
        return List.of();
    }

    private void air(List<String> reads) {
        for (Fact fact : audit.facts()) {
            if (fact instanceof Seen seen && seen.sign().equals("air heard")) {
                String what = switch (seen.of()) {
                    case "intake port" -> "the intake valve";
                    case "exhaust port" -> "the exhaust valve";
                    case "radiator", "coolant", "header tank" -> "the gasket or a crack";
                    case "oil filler cap", "breather" -> "the rings";
                    default -> "what lies between";
                };
                reads.add("Air is heard at the " + Wording.subject(seen.of(), seen.at()) + ": look at " + what + ".");
            }
        }
    }

    private void conditions(List<Value> values, String quantity, List<String> reads) {
        List<String> missing = new ArrayList<>(audit.build().sheet().layout().places("each cylinder").orElse(List.of()));
        List<String> states = new ArrayList<>();
        List<String> loose = new ArrayList<>();
        for (Value value : audit.values()) {
            if (value.of().equals(quantity) && !value.derived() && missing.contains(value.at())
                    && values.stream().noneMatch(v -> v.at().equals(value.at()))) {
                loose.add(value.at());
            }
        }
        missing.removeAll(loose);
        if (!loose.isEmpty()) {
            reads.add("Cylinder " + Wording.join(loose) + " is not read to one figure of the builder's own, and is left out of the comparison.");
        }
        for (Value value : values) {
            missing.remove(value.at());
            String state = value.asides().getOrDefault("state", "");
            if (!states.contains(state)) {
                states.add(state);
            }
        }
        if (!missing.isEmpty()) {
            reads.add("Not read: cylinder " + Wording.join(missing) + ".");
        }
        if (states.size() > 1) {
            reads.add("The readings were taken in unlike states (" + String.join(", ", states) + "); they cannot be compared well.");
        } else if (states.contains("cold")) {
            reads.add("All " + (quantity.equals(LEAK) ? "leak-down" : "compression") + " was read cold: compare the cylinders with each"
                    + " other, and be slow to compare them with a figure for a hot engine.");
        }
    }

    private static String cylinders(List<Value> values) {
        List<String> at = new ArrayList<>();
        values.forEach(value -> at.add(value.at()));
        at.sort(Comparator.comparingInt(Integer::parseInt));
        return (at.size() == 1 ? "Cylinder " : "Cylinders ") + Wording.join(at);
    }
}
