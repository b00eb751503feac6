package leadlamp.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.record.Where;

/**
 * A value held against the one limit that applies, kept by side.
 *
 * @param of      the quantity
 * @param kind    the kind of the quantity, its own name where it has none
 * @param at      the place
 * @param least   how it stands against the least; absent where the limit has none or the value says nothing of that side
 * @param most    how it stands against the most; likewise
 * @param value   the value
 * @param limit   the limit
 */
public record Verdict(String of, String kind, String at, Optional<Side> least, Optional<Side> most, Value value,
        LimitUsed limit) implements Fact {

    /** How a value stands against one side of its limit. */
    public enum Standing {
        WITHIN, OUTSIDE, UNDECIDED
    }

    /**
     * One side.
     *
     * @param standing    proven within, proven outside, or undecided
     * @param outside     probability of being outside, 0 to 1
     * @param expanded    expanded uncertainty at that end, SI
     * @param chiefSource the source of doubt that weighs most; empty where there is none
     */
    public record Side(Standing standing, double outside, double expanded, String chiefSource) {
    }

    @Override
    public String told() {
        return value.told();
    }

    /** Proven below the least. */
    public boolean isBelow() {
        return least.isPresent() && least.get().standing() == Standing.OUTSIDE;
    }

    /** Proven above the most. */
    public boolean isAbove() {
        return most.isPresent() && most.get().standing() == Standing.OUTSIDE;
    }

    /** Proven outside, on whichever side. */
    public boolean isOutside() {
        return isBelow() || isAbove();
    }

    /** Proven within on every side that the limit has. */
    public boolean isWithin() {
        return (least.isPresent() || most.isPresent()) && within(least, limit.least().isPresent())
                && within(most, limit.most().isPresent());
    }

    private static boolean within(Optional<Side> side, boolean limited) {
        return side.isPresent() ? side.get().standing() == Standing.WITHIN : !limited;
    }

    @Override
    public List<Where> places() {
        List<Where> all = new ArrayList<>(value.places());
        limit.where().filter(w -> !all.contains(w)).ifPresent(all::add);
        return List.copyOf(all);
    }
}
