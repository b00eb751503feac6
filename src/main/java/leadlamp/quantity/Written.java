package leadlamp.quantity;

/**
 * A value as it was written: plain, a range, a bound, one figure of several places, or no figure.
 *
 * @param form    how it was written
 * @param low     low end, SI; minus infinity where it is open; NaN where there is no figure
 * @param high    high end, SI; plus infinity where it is open; NaN where there is no figure
 * @param unit    unit as written, in which it is printed
 * @param figures decimals as written
 * @param text    as written
 */
public record Written(Form form, double low, double high, Unit unit, int figures, String text) {

    /** How a value may be written. */
    public enum Form {
        PLAIN, RANGE, UNDER, OVER, LEAST, MOST, MEAN, ALIKE_WITHIN, UNKNOWN, NOT_READ, GOOD
    }

    /** Whether it has a figure. */
    public boolean figure() {
        return !Double.isNaN(low);
    }
}
