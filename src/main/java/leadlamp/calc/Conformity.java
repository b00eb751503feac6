package leadlamp.calc;

/**
 * A value with its doubt held against limits: proven within, proven outside, or neither, and how likely it is within.
 *
 * <p>A limit that is not there is an infinity: minus infinity for the least, plus infinity for the most.
 *
 * @see "ISO 14253-1, decision rules"
 * @see "JCGM 106, clauses 7 and 8"
 */
public final class Conformity {
    private Conformity() {
    }

    /** What the doubt leaves of a verdict. */
    public enum Zone {
        WITHIN, BELOW, ABOVE, UNDECIDED
    }

    /**
     * The zone in which a value lies.
     *
     * <p>Within where value ± U lies inside both limits, ends counted; below or above where all of it lies outside.
     * A value on the edge would be told by its last digits, so a millionth of a millionth of it is let pass.
     *
     * @param value    value
     * @param expanded expanded uncertainty U, or a one-sided guard band; not below zero
     * @param least    least allowed; minus infinity where there is none
     * @param most     most allowed; plus infinity where there is none
     * @return zone
     * @throws IllegalArgumentException if an argument is outside the range above, or the most is below the least
     */
    public static Zone zone(double value, double expanded, double least, double most) {
        Argument.finite("value", value);
        Argument.notBelowZero("uncertainty", expanded);
        limits(least, most);
        double slack = 1e-12 * (Math.abs(value) + expanded);
        if (value + expanded < least - slack) {
            return Zone.BELOW;
        }
        if (value - expanded > most + slack) {
            return Zone.ABOVE;
        }
        if (value - expanded >= least - slack && value + expanded <= most + slack) {
            return Zone.WITHIN;
        }
        return Zone.UNDECIDED;
    }

    /**
     * Probability that a value lies within its limits.
     *
     * <p>Φ((most − value)/u) − Φ((least − value)/u); without doubt it is 0 or 1.
     *
     * @param value    value
     * @param standard standard uncertainty u; not below zero
     * @param least    least allowed; minus infinity where there is none
     * @param most     most allowed; plus infinity where there is none
     * @return probability, 0 to 1
     * @throws IllegalArgumentException if an argument is outside the range above, or the most is below the least
     * @see "JCGM 106, 7.3 to 7.5"
     */
    public static double probability(double value, double standard, double least, double most) {
        Argument.finite("value", value);
        Argument.notBelowZero("standard uncertainty", standard);
        limits(least, most);
        if (standard == 0) {
            return value >= least && value <= most ? 1 : 0;
        }
        double low = (least - value) / standard;
        double high = (most - value) / standard;
        // Both tails are worked on the side where they are small, so that none is lost in a difference of ones.
        return low > 0 ? Normal.below(-low) - Normal.below(-high) : Normal.below(high) - Normal.below(low);
    }

    /**
     * Guard band that proves a one-sided limit with this probability.
     *
     * <p>g = z · u, z the normal quantile.
     *
     * @param standard    standard uncertainty u; not below zero
     * @param probability probability wanted; from a half, below 1
     * @return guard band, in the unit of u
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "JCGM 106, 8.3"
     */
    public static double guardBand(double standard, double probability) {
        Argument.notBelowZero("standard uncertainty", standard);
        if (!(probability >= 0.5 && probability < 1)) {
            throw new IllegalArgumentException("The probability wanted must lie from 50 % to below 100 %.");
        }
        return standard * Normal.quantile(probability);
    }

    /**
     * Acceptance limit that makes sure, with this probability, that a limit is exceeded, the doubt growing with the
     * value.
     *
     * <p>limit / (1 − z · relative standard uncertainty).
     *
     * @param limit       limit; above zero
     * @param relative    relative standard uncertainty; from 0, below 1
     * @param probability probability wanted; from a half, below 1
     * @return value from which the limit is exceeded, in the unit of the limit
     * @throws IllegalArgumentException if an argument is outside the range above or the doubt is too great
     * @see "JCGM 106, 8.3.3, speed limit"
     */
    public static double surelyAbove(double limit, double relative, double probability) {
        Argument.aboveZero("limit", limit);
        Argument.belowOne("relative standard uncertainty", relative);
        double band = guardBand(relative, probability);
        if (band >= 1) {
            throw new IllegalArgumentException("The relative standard uncertainty is too great for that probability.");
        }
        return limit / (1 - band);
    }

    /**
     * Greatest probability of taking for within what is outside, with a guard band on one limit.
     *
     * <p>1 − Φ(2 · band), band in expanded uncertainties of twice the standard one.
     *
     * @param band guard band over the expanded uncertainty (k = 2); not below zero
     * @return probability
     * @throws IllegalArgumentException if the band is below zero or not finite
     * @see "ILAC-G8, table 1"
     */
    public static double falseAccept(double band) {
        Argument.notBelowZero("guard band", band);
        return Normal.below(-2 * band);
    }

    /**
     * Readings whose mean would settle a value that is too near its limit.
     *
     * <p>n = (z · spread / room)², rounded up; what the gauge itself may be off by does not shrink with n.
     *
     * @param room     distance from the limit, less what the gauge may be off by; above zero
     * @param spread   standard deviation of one reading; not below zero
     * @param factor   one-sided coverage factor; above zero
     * @return readings, at least 1
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "JCGM 100, 4.2.3"
     */
    public static int readingsToSettle(double room, double spread, double factor) {
        Argument.aboveZero("room to the limit", room);
        Argument.notBelowZero("standard deviation of one reading", spread);
        Argument.aboveZero("coverage factor", factor);
        double readings = factor * spread / room;
        return (int) Math.min(1e6, Math.max(1, Math.ceil(readings * readings - 1e-9)));
    }

    /**
     * Half of the tolerance over the expanded uncertainty: below four the gauge is coarse for its work.
     *
     * @param least    least allowed; finite
     * @param most     most allowed; finite, above the least
     * @param expanded expanded uncertainty; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double gaugeRatio(double least, double most, double expanded) {
        Argument.finite("least allowed", least);
        Argument.finite("most allowed", most);
        Argument.aboveZero("uncertainty", expanded);
        if (most <= least) {
            throw new IllegalArgumentException("The most allowed must be above the least.");
        }
        return (most - least) / 2 / expanded;
    }

    private static void limits(double least, double most) {
        if (Double.isNaN(least) || Double.isNaN(most)) {
            throw new IllegalArgumentException("A limit must be a number.");
        }
        if (most < least) {
            throw new IllegalArgumentException("The most allowed must not be below the least.");
        }
    }
}
