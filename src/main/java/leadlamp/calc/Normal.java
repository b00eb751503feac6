package leadlamp.calc;

/**
 * The normal distribution with mean 0 and standard deviation 1, to better than 1e-14.
 *
 * <p>Near the middle by its series, in the tails by a continued fraction, so that small probabilities keep their
 * figures.
 */
public final class Normal {
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    private Normal() {
    }

    /** Density at z. */
    public static double density(double z) {
        Argument.finite("distance in standard uncertainties", z);
        return Math.exp(-z * z / 2) / ROOT_TWO_PI;
    }

    /**
     * Probability of lying below z.
     *
     * @param z distance from the mean in standard deviations; infinities are taken
     * @return probability, 0 to 1
     * @throws IllegalArgumentException if z is not a number
     * @see "Handbook of Mathematical Functions, 26.2.10 and 26.2.14 (from memory)"
     */
    public static double below(double z) {
        if (Double.isNaN(z)) {
            throw new IllegalArgumentException("The distance in standard uncertainties must be a number.");
        }
        double far = Math.abs(z);
        if (far > 40) {
            return z < 0 ? 0 : 1;
        }
        if (far < 3) {
            double term = z;
            double sum = z;
            for (int k = 3; Math.abs(term) > 1e-18; k += 2) {
                term *= z * z / k;
                sum += term;
            }
            return 0.5 + density(z) * sum;
        }
        double tail = density(far) / fraction(far);
        return z < 0 ? tail : 1 - tail;
    }

    /** far + 1/(far + 2/(far + 3/(far + ...))), worked from the inside. */
    private static double fraction(double far) {
        double value = far;
        for (int k = 120; k > 0; k--) {
            value = far + k / value;
        }
        return value;
    }

    /**
     * Distance below which this probability lies.
     *
     * @param probability above 0, below 1
     * @return z
     * @throws IllegalArgumentException if the probability is outside
     */
    public static double quantile(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("The probability must lie between 0 and 100 %, ends left out.");
        }
        if (probability == 0.5) {
            return 0;
        }
        double tail = Math.min(probability, 1 - probability);
        double low = -40;
        double high = 0;
        double z = -Math.sqrt(Math.max(0, -2 * Math.log(tail) - 1));
        for (int i = 0; i < 200; i++) {
            double error = below(z) - tail;
            if (error > 0) {
                high = z;
            } else {
                low = z;
            }
            double next = z - error / density(z);
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            }
            if (Math.abs(next - z) <= 1e-15 * Math.abs(z)) {
                z = next;
                break;
            }
            z = next;
        }
        return probability < 0.5 ? z : -z;
    }
}
