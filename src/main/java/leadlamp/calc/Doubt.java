package leadlamp.calc;

import java.util.function.ToDoubleFunction;

/** Standard uncertainties: from what is known of a source, and several of them together. */
public final class Doubt {
    private Doubt() {
    }

    /** Of an expanded uncertainty and its coverage factor (JCGM 100, 4.3.3). */
    public static double ofExpanded(double expanded, double factor) {
        Argument.notBelowZero("expanded uncertainty", expanded);
        Argument.aboveZero("coverage factor", factor);
        return expanded / factor;
    }

    /** Of half an interval that holds this share of a normal distribution, above 0 and below 1 (JCGM 100, 4.3.4). */
    public static double ofLevel(double halfWidth, double level) {
        Argument.notBelowZero("half width", halfWidth);
        return halfWidth / coverageFactor(level);
    }

    /** Of bounds that hold the value with an even chance (JCGM 100, 4.3.5). */
    public static double ofEvenChance(double halfWidth) {
        return ofLevel(halfWidth, 0.5);
    }

    /** Of bounds within which nothing more is known: half width over √3 (JCGM 100, 4.3.7). */
    public static double rectangular(double halfWidth) {
        Argument.notBelowZero("half width", halfWidth);
        return halfWidth / Math.sqrt(3);
    }

    /** Of bounds that lie unequally about the value: their distance over √12 (JCGM 100, 4.3.8). */
    public static double unequal(double lower, double upper) {
        Argument.finite("lower bound", lower);
        Argument.finite("upper bound", upper);
        return rectangular((upper - lower) / 2);
    }

    /** Of bounds with the middle likelier: half width over √6 (JCGM 100, 4.3.9). */
    public static double triangular(double halfWidth) {
        Argument.notBelowZero("half width", halfWidth);
        return halfWidth / Math.sqrt(6);
    }

    /** Of a swing to and fro: half width over √2 (JCGM 100, H.1.3.4). */
    public static double arcsine(double halfWidth) {
        Argument.notBelowZero("half width", halfWidth);
        return halfWidth / Math.sqrt(2);
    }

    /** Of a digital or marked step: the step over √12 (JCGM 100, F.2.2.1). */
    public static double ofStep(double step) {
        Argument.notBelowZero("resolution", step);
        return step / Math.sqrt(12);
    }

    /** Of the mean of repeated readings: their standard deviation over the root of their count (JCGM 100, 4.2.3). */
    public static double ofMean(double... readings) {
        return Sets.standardDeviation(readings) / Math.sqrt(readings.length);
    }

    /** Root of the sum of squares of parts that have nothing to do with each other (JCGM 100, 5.1.2). */
    public static double combined(double... parts) {
        Argument.some("parts of doubt", parts);
        double sum = 0;
        for (double part : parts) {
            sum += part * part;
        }
        return Math.sqrt(sum);
    }

    /**
     * Parts that hang together.
     *
     * <p>√(Σ Σ part i · part j · correlation i j).
     *
     * @param parts        sensitivity times standard uncertainty of each source, signed
     * @param correlations correlation of each with each, -1 to 1, ones on the diagonal
     * @return standard uncertainty
     * @throws IllegalArgumentException if the table does not suit the parts
     * @see "JCGM 100, 5.2.2"
     */
    public static double correlated(double[] parts, double[][] correlations) {
        return Math.sqrt(Math.max(0, shared(parts, parts, correlations)));
    }

    /** Correlation of two results that rest on the same sources (JCGM 100, H.2.3). */
    public static double correlation(double[] one, double[] other, double[][] correlations) {
        double both = correlated(one, correlations) * correlated(other, correlations);
        if (both == 0) {
            throw new IllegalArgumentException("A result without doubt has no correlation.");
        }
        return shared(one, other, correlations) / both;
    }

    private static double shared(double[] one, double[] other, double[][] correlations) {
        Argument.some("parts of doubt", one);
        Argument.some("parts of doubt", other);
        if (correlations.length != one.length || one.length != other.length) {
            throw new IllegalArgumentException("The table of correlations must have a row for each part of doubt.");
        }
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            if (correlations[i].length != one.length) {
                throw new IllegalArgumentException("The table of correlations must have a column for each part.");
            }
            for (int j = 0; j < other.length; j++) {
                sum += one[i] * other[j] * correlations[i][j];
            }
        }
        return sum;
    }

    /**
     * Effective degrees of freedom.
     *
     * <p>u⁴ / Σ (part⁴ / freedom), infinity where no part has a finite one.
     *
     * @param parts   parts of doubt
     * @param freedom degrees of freedom of each; above zero, infinity is taken
     * @return degrees of freedom
     * @throws IllegalArgumentException if the two do not suit each other
     * @see "JCGM 100, G.4.1, Welch and Satterthwaite"
     */
    public static double freedom(double[] parts, double[] freedom) {
        Argument.some("parts of doubt", parts);
        if (parts.length != freedom.length) {
            throw new IllegalArgumentException("Each part of doubt must have its degrees of freedom.");
        }
        double below = 0;
        double squares = 0;
        for (int i = 0; i < parts.length; i++) {
            if (!(freedom[i] > 0)) {
                throw new IllegalArgumentException("The degrees of freedom must be above zero.");
            }
            double square = parts[i] * parts[i];
            squares += square;
            below += square * square / freedom[i];
        }
        return below == 0 ? Double.POSITIVE_INFINITY : squares * squares / below;
    }

    /** Factor that holds this share of a normal distribution, above 0 and below 1, both tails left out alike. */
    public static double coverageFactor(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("The level must lie between 0 and 100 %, ends left out.");
        }
        return Normal.quantile((1 + level) / 2);
    }

    /**
     * How much a result moves for one standard uncertainty of one input: half the difference of the results at its two
     * ends, which is its sensitivity times its standard uncertainty.
     *
     * @param formula  pure function of all inputs
     * @param inputs   inputs
     * @param which    which of them is moved
     * @param standard its standard uncertainty; not below zero
     * @return part of doubt, signed, in the unit of the result
     * @throws IllegalArgumentException if there is no such input, or the formula refuses
     * @see "JCGM 100, 5.1.3, note 2"
     */
    public static double part(ToDoubleFunction<double[]> formula, double[] inputs, int which, double standard) {
        Argument.some("inputs", inputs);
        Argument.notBelowZero("standard uncertainty", standard);
        if (which < 0 || which >= inputs.length) {
            throw new IllegalArgumentException("There is no such input.");
        }
        double[] moved = inputs.clone();
        moved[which] = inputs[which] + standard;
        double above = formula.applyAsDouble(moved);
        moved[which] = inputs[which] - standard;
        return (above - formula.applyAsDouble(moved)) / 2;
    }
}
