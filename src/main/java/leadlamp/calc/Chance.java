package leadlamp.calc;

/** How likely a pattern in the readings is by luck alone: prompts to look, never verdicts. */
public final class Chance {
    private Chance() {
    }

    /**
     * Chance that all readings of a set agree to the last step, each with its own scatter.
     *
     * <p>Σ over steps of (share in the step)ⁿ, the true value in the middle of a step, where agreement is likeliest.
     *
     * @param readings how many; at least 2
     * @param scatter  standard deviation of a reading, m or any unit; above zero
     * @param step     step of the gauge in the same unit; above zero
     * @return probability
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "normal distribution"
     */
    public static double allAgree(int readings, double scatter, double step) {
        Argument.atLeast("number of readings", readings, 2);
        Argument.aboveZero("scatter of a reading", scatter);
        Argument.aboveZero("resolution", step);
        double half = step / scatter / 2;
        double sum = Math.pow(Conformity.probability(0, 1, -half, half), readings);
        for (int k = 1; k < 100000; k++) {
            double share = Conformity.probability(0, 1, (2 * k - 1) * half, (2 * k + 1) * half);
            double more = 2 * Math.pow(share, readings);
            sum += more;
            if (more < 1e-18 * sum) {
                break;
            }
        }
        return Math.min(1, sum);
    }

    /**
     * Chance of at least so many out of n when each has the same chance, as of noughts and fives for a last digit.
     *
     * <p>Σ from k to n of n! / (i! · (n − i)!) · pⁱ · (1 − p)ⁿ⁻ⁱ.
     *
     * @param least how many at least; from 0 to n
     * @param of    n; at least 1
     * @param each  chance of each; from 0 to 1
     * @return probability
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "binomial distribution"
     */
    public static double atLeast(int least, int of, double each) {
        Argument.atLeast("number of readings", of, 1);
        Argument.atLeast("count", least, 0);
        Argument.share("chance of each", each);
        if (least > of) {
            throw new IllegalArgumentException("The count must not be above the number of readings.");
        }
        if (least == 0 || each == 1) {
            return 1;
        }
        if (each == 0) {
            return 0;
        }
        double sum = 0;
        for (int i = of; i >= least; i--) {
            sum += Math.exp(StudentT.logGamma(of + 1) - StudentT.logGamma(i + 1) - StudentT.logGamma(of - i + 1)
                    + i * Math.log(each) + (of - i) * Math.log1p(-each));
        }
        return Math.min(1, sum);
    }

    /**
     * Chance that a reading shows the sheet's own figure.
     *
     * @param tolerance whole width of the sheet's band; above zero
     * @param step      step of the gauge; above zero
     * @return probability, at most 1
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "even distribution over the band"
     */
    public static double isNominal(double tolerance, double step) {
        Argument.aboveZero("tolerance", tolerance);
        Argument.aboveZero("resolution", step);
        return Math.min(1, step / tolerance);
    }

    /**
     * Chance that all joints still unopened are sound, from those that were opened.
     *
     * <p>Π for i from 0 of (good + 1 + i) / (opened + 2 + i).
     *
     * @param good     how many of the opened were good; at least 0
     * @param opened   how many were opened; not below the good
     * @param unopened how many are left; at least 0
     * @return probability
     * @throws IllegalArgumentException if an argument is outside the range above
     * @see "rule of succession"
     */
    public static double restSound(int good, int opened, int unopened) {
        Argument.atLeast("number of good joints", good, 0);
        Argument.atLeast("number of unopened joints", unopened, 0);
        if (opened < good) {
            throw new IllegalArgumentException("No more joints can be good than were opened.");
        }
        double chance = 1;
        for (int i = 0; i < unopened; i++) {
            chance *= (good + 1.0 + i) / (opened + 2.0 + i);
        }
        return chance;
    }
}
