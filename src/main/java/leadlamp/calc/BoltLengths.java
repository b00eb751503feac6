package leadlamp.calc;

import java.util.Arrays;

/** Lengths of the bolts of one joint against those that it is meant to have. */
public final class BoltLengths {
    /**
     * Bolts that differ by no more than this are of one length, m: lengths in stock step by more. Common practice, no source.
     */
    private static final double STEP = 0.002;

    /** How two lengths stand. */
    public enum Held {
        /** One length. */
        SAME,
        /** Two lengths. */
        OTHER,
        /** The doubt leaves it open. */
        OPEN
    }

    private BoltLengths() {
    }

    /**
     * Whether two lengths are one, their doubt with them.
     *
     * @param one   m; above zero
     * @param other m; above zero
     * @param doubt expanded doubt of their difference, m; not below zero
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static Held held(double one, double other, double doubt) {
        Argument.aboveZero("length of a bolt", one);
        Argument.aboveZero("length of a bolt", other);
        Argument.notBelowZero("doubt of the length", doubt);
        double apart = Math.abs(one - other);
        return apart + doubt <= STEP ? Held.SAME : apart - doubt > STEP ? Held.OTHER : Held.OPEN;
    }

    /**
     * Whether two sets of bolts have the same number of each length, whichever hole each stands in.
     *
     * @param one   m; each above zero
     * @param other m; each above zero
     * @throws IllegalArgumentException if a length is not above zero or not finite
     * @see "definition"
     */
    public static boolean sameCounts(double[] one, double[] other) {
        if (one.length != other.length) {
            return false;
        }
        double[] first = one.clone();
        double[] second = other.clone();
        Arrays.sort(first);
        Arrays.sort(second);
        for (int i = 0; i < first.length; i++) {
            if (held(first[i], second[i], 0) == Held.OTHER) {
                return false;
            }
        }
        return true;
    }
}
