package leadlamp.calc;

/** Student's t distribution: the coverage that few repeated readings give. */
public final class StudentT {
    private StudentT() {
    }

    /**
     * Probability of lying below t.
     *
     * @param t       value
     * @param freedom degrees of freedom; above zero, need not be whole
     * @return probability, 0 to 1
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Handbook of Mathematical Functions, 26.7.1 (from memory)"
     */
    public static double below(double t, double freedom) {
        Argument.finite("value of t", t);
        Argument.aboveZero("degrees of freedom", freedom);
        double square = t * t;
        double tails = square < freedom
                ? 1 - beta(square / (freedom + square), 0.5, freedom / 2)
                : beta(freedom / (freedom + square), freedom / 2, 0.5);
        return t < 0 ? tails / 2 : 1 - tails / 2;
    }

    /**
     * Coverage factor that holds a share of the distribution, both tails left out alike.
     *
     * @param level   share that is held; above 0, below 1
     * @param freedom degrees of freedom; above zero, need not be whole
     * @return factor
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "JCGM 100, table G.2"
     */
    public static double factor(double level, double freedom) {
        Argument.aboveZero("degrees of freedom", freedom);
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("The level must lie between 0 and 100 %, ends left out.");
        }
        double low = 0;
        double high = 1;
        while (2 * below(high, freedom) - 1 < level && high < 1e12) {
            high *= 2;
        }
        for (int i = 0; i < 200 && high - low > 1e-15 * high; i++) {
            double middle = (low + high) / 2;
            if (2 * below(middle, freedom) - 1 < level) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Incomplete beta function over the whole, by its continued fraction from the side where that is quick. */
    private static double beta(double x, double a, double b) {
        if (x <= 0) {
            return 0;
        }
        if (x >= 1) {
            return 1;
        }
        if (x > (a + 1) / (a + b + 2)) {
            return 1 - beta(1 - x, b, a);
        }
        double front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b)) / a;
        double c = 1;
        double d = 1 / floor(1 - (a + b) * x / (a + 1));
        double value = d;
        for (int m = 1; m < 500; m++) {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / floor(1 + even * d);
            c = floor(1 + even / c);
            value *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / floor(1 + odd * d);
            c = floor(1 + odd / c);
            double change = d * c;
            value *= change;
            if (Math.abs(change - 1) < 1e-16) {
                break;
            }
        }
        return front * value;
    }

    /** Keeps a divisor of the fraction from nothing. */
    private static double floor(double value) {
        return Math.abs(value) < 1e-300 ? 1e-300 : value;
    }

    /** Logarithm of the gamma function: Stirling's series once the argument has been carried above 15. */
    static double logGamma(double x) {
        double carried = x;
        double product = 0;
        while (carried < 15) {
            product += Math.log(carried);
            carried += 1;
        }
        double inverse = 1 / carried;
        double square = inverse * inverse;
        double series = inverse * (1.0 / 12 - square * (1.0 / 360 - square * (1.0 / 1260 - square * (1.0 / 1680
                - square * (1.0 / 1188 - square * 691.0 / 360360)))));
        return (carried - 0.5) * Math.log(carried) - carried + Math.log(2 * Math.PI) / 2 + series - product;
    }
}
