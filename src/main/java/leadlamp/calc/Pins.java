package leadlamp.calc;

import java.util.OptionalDouble;

/** Printed shear strength of pins by form, for pins that carry a gear: what tube gives away against a solid pin. */
public final class Pins {
    private static final double[] DOWEL = { 3, 14.8, 4, 26.4, 5, 41.2, 6, 59.4, 8, 105, 10, 165, 12, 238 };
    private static final double[] SLOTTED = { 3, 6.32, 4, 11.24, 5, 17.54, 6, 26.04, 8, 42.76, 10, 70.16 };
    private static final double[] SLOTTED_LIGHT = { 3, 3.5, 4, 8, 5, 10.4, 6, 18, 8, 24 };
    private static final double[] COILED = { 3, 7.6, 4, 13.5, 5, 20, 6, 30, 8, 53 };

    private Pins() {
    }

    /**
     * Double shear strength of a hardened solid dowel.
     *
     * @param diameter nominal diameter, m; 3, 4, 5, 6, 8, 10 or 12 mm
     * @return force, N; empty for a size that the table does not have
     * @see "ASME B18.8.5M, machine dowel pins, shear strength"
     */
    public static OptionalDouble dowel(double diameter) {
        return printed(DOWEL, diameter);
    }

    /**
     * Least double shear strength of a slotted heavy spring pin.
     *
     * @param diameter nominal diameter, m; 3, 4, 5, 6, 8 or 10 mm
     * @return force, N; empty for a size that the table does not have
     * @see "ISO 8752, table 1"
     */
    public static OptionalDouble slotted(double diameter) {
        return printed(SLOTTED, diameter);
    }

    /**
     * Double shear strength of a slotted light spring pin.
     *
     * @param diameter nominal diameter, m; 3, 4, 5, 6 or 8 mm
     * @return force, N; empty for a size that the table does not have
     * @see "ISO 13337 (formerly DIN 7346)"
     */
    public static OptionalDouble slottedLight(double diameter) {
        return printed(SLOTTED_LIGHT, diameter);
    }

    /**
     * Least double shear strength of a coiled heavy spring pin.
     *
     * @param diameter nominal diameter, m; 3, 4, 5, 6 or 8 mm
     * @return force, N; empty for a size that the table does not have
     * @see "ISO 8748"
     */
    public static OptionalDouble coiled(double diameter) {
        return printed(COILED, diameter);
    }

    private static OptionalDouble printed(double[] table, double diameter) {
        Argument.aboveZero("pin diameter", diameter);
        double millimetres = Math.rint(diameter * 1e6) / 1e3;
        for (int i = 0; i < table.length; i += 2) {
            if (table[i] == millimetres) {
                return OptionalDouble.of(table[i + 1] * 1000);
            }
        }
        return OptionalDouble.empty();
    }
}
