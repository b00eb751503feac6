package leadlamp.calc;

/**
 * Straight line through readings by least squares, such as oil pressure over speed or a loss over hours.
 *
 * @param intercept          value where the other quantity is zero
 * @param slope              rise for each unit of it
 * @param interceptDoubt     standard uncertainty of the intercept
 * @param slopeDoubt         standard uncertainty of the slope
 * @param correlation        correlation of both
 * @param sumOfSquares       sum of the squared departures
 * @see "JCGM 100, H.3"
 */
public record Line(double intercept, double slope, double interceptDoubt, double slopeDoubt, double correlation,
        double sumOfSquares) {

    /**
     * The line through readings.
     *
     * @param x where they were taken; at least three, not all alike
     * @param y readings, as many
     * @throws IllegalArgumentException if there are too few, or all were taken at one place
     */
    public static Line through(double[] x, double[] y) {
        Argument.two("readings", x);
        Argument.two("readings", y);
        if (x.length != y.length || x.length < 3) {
            throw new IllegalArgumentException("A line needs at least three readings, each with its place.");
        }
        int n = x.length;
        double middle = Sets.mean(x);
        double height = Sets.mean(y);
        double across = 0;
        double both = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double off = x[i] - middle;
            across += off * off;
            both += off * (y[i] - height);
            squares += x[i] * x[i];
        }
        if (across == 0) {
            throw new IllegalArgumentException("All readings were taken at one place: no line goes through them.");
        }
        double slope = both / across;
        double intercept = height - slope * middle;
        double left = 0;
        for (int i = 0; i < n; i++) {
            double off = y[i] - intercept - slope * x[i];
            left += off * off;
        }
        double variance = left / (n - 2);
        return new Line(intercept, slope, Math.sqrt(variance * squares / (n * across)), Math.sqrt(variance / across),
                squares == 0 ? 0 : -middle * Math.sqrt(n / squares), left);
    }

    /** Value of the line. */
    public double at(double x) {
        return intercept + slope * x;
    }

    /** Standard uncertainty of the line there, scatter of a single reading left out. */
    public double doubtAt(double x) {
        double square = interceptDoubt * interceptDoubt + x * x * slopeDoubt * slopeDoubt
                + 2 * x * interceptDoubt * slopeDoubt * correlation;
        return Math.sqrt(Math.max(0, square));
    }
}
