package leadlamp.quantity;

/**
 * A unit: SI = written x factor + offset.
 *
 * @param word      as printed: `mm`, `N·m`, `lbf.ft`
 * @param factor    SI units in one of it; above zero
 * @param offset    SI value of its zero; only for temperatures
 */
public record Unit(String word, Dimension dimension, double factor, double offset) {
    /** A value of this unit in SI. */
    public double toSi(double written) {
        return written * factor + offset;
    }

    /** An SI value in this unit. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }
}
