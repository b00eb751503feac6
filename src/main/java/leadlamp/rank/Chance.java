package leadlamp.rank;

/**
 * The last chance to put a thing right, or to see it, before it is closed in.
 *
 * @param step     the first step that closes it; empty where no step does
 * @param standing where that step stands
 * @param order    how far off it is, by the graph of the steps
 */
public record Chance(String step, Standing standing, int order) implements Comparable<Chance> {
    /** Where the closing step stands; in the order in which it presses. */
    public enum Standing {
        /** The next step closes it, or a step before that one. */
        NEXT,
        /** It is closed already, and each further step buries it deeper. */
        PASSED,
        /** A later step closes it. */
        LATER,
        /** No step closes it. */
        NONE
    }

    /** No step closes it. */
    public static Chance none() {
        return new Chance("", Standing.NONE, Integer.MAX_VALUE);
    }

    /** Whether it must be settled before the next step. */
    public boolean pressing() {
        return standing == Standing.NEXT || standing == Standing.PASSED;
    }

    @Override
    public int compareTo(Chance other) {
        int byStanding = standing.compareTo(other.standing);
        if (byStanding != 0) {
            return byStanding;
        }
        return order != other.order ? Integer.compare(order, other.order) : step.compareTo(other.step);
    }
}
