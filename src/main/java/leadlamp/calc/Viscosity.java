package leadlamp.calc;

/** Viscosity of oil over temperature, and its index. Kinematic viscosities in m²/s, dynamic in Pa·s. */
public final class Viscosity {
    private static final double TO_MM2 = 1e6;

    private Viscosity() {
    }

    /**
     * The straight line on which an oil's viscosity runs: log log (ν + 0.7) = a − b · log T, ν in mm²/s, T in K.
     *
     * @param a constant A
     * @param b constant B
     * @see "ASTM D341"
     */
    public record Law(double a, double b) {
        /** Kinematic viscosity at a temperature, m²/s. */
        public double at(double temperature) {
            Argument.aboveZero("temperature of the oil", temperature);
            double mm2 = Math.pow(10, Math.pow(10, a - b * Math.log10(temperature))) - 0.7;
            return mm2 / TO_MM2;
        }
    }

    /**
     * The line through two viscosities.
     *
     * @param viscosityOne   viscosity at the lower temperature, m²/s; above 0.3e-6
     * @param temperatureOne lower temperature, K; above zero
     * @param viscosityTwo   viscosity at the higher temperature, m²/s; above 0.3e-6, below the other
     * @param temperatureTwo higher temperature, K; above the lower
     * @return line
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "ASTM D341"
     */
    public static Law through(double viscosityOne, double temperatureOne, double viscosityTwo, double temperatureTwo) {
        enough("viscosity at the lower temperature", viscosityOne);
        enough("viscosity at the higher temperature", viscosityTwo);
        Argument.aboveZero("lower temperature", temperatureOne);
        Argument.aboveZero("higher temperature", temperatureTwo);
        if (temperatureTwo <= temperatureOne) {
            throw new IllegalArgumentException("The higher temperature must be above the lower.");
        }
        if (viscosityTwo >= viscosityOne) {
            throw new IllegalArgumentException("Oil must be thinner at the higher temperature.");
        }
        double one = Math.log10(Math.log10(viscosityOne * TO_MM2 + 0.7));
        double two = Math.log10(Math.log10(viscosityTwo * TO_MM2 + 0.7));
        double b = (one - two) / (Math.log10(temperatureTwo) - Math.log10(temperatureOne));
        return new Law(one + b * Math.log10(temperatureOne), b);
    }

    /**
     * Viscosity index where it is 100 or below.
     *
     * <p>100 · (L − U) / (L − H).
     *
     * @param at40 viscosity at 40 °C, m²/s; above zero
     * @param low  L, of the oil of index 0 with the same viscosity at 100 °C, m²/s; above H
     * @param high H, of the oil of index 100 with the same viscosity at 100 °C, m²/s; above zero
     * @return index, not rounded
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "ASTM D2270, procedure A"
     */
    public static double index(double at40, double low, double high) {
        Argument.aboveZero("viscosity at 40 degrees", at40);
        Argument.aboveZero("viscosity H", high);
        Argument.finite("viscosity L", low);
        if (low <= high) {
            throw new IllegalArgumentException("The viscosity L must be above H.");
        }
        return 100 * (low - at40) / (low - high);
    }

    /**
     * Viscosity index where it is 100 or above.
     *
     * <p>(10ᴺ − 1) / 0.00715 + 100, N = (log H − log U) / log Y.
     *
     * @param at40  viscosity at 40 °C, m²/s; above zero
     * @param at100 viscosity at 100 °C, m²/s; above 1e-6
     * @param high  H, of the oil of index 100 with the same viscosity at 100 °C, m²/s; above zero
     * @return index, not rounded
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "ASTM D2270, procedure B"
     */
    public static double indexAbove100(double at40, double at100, double high) {
        return (Math.pow(10, indexPower(at40, at100, high)) - 1) / 0.00715 + 100;
    }

    /** The power N of procedure B. */
    static double indexPower(double at40, double at100, double high) {
        Argument.aboveZero("viscosity at 40 degrees", at40);
        Argument.aboveZero("viscosity H", high);
        Argument.finite("viscosity at 100 degrees", at100);
        if (at100 * TO_MM2 <= 1) {
            throw new IllegalArgumentException("The viscosity at 100 degrees must be above 1 mm2/s.");
        }
        return (Math.log10(high) - Math.log10(at40)) / Math.log10(at100 * TO_MM2);
    }

    /**
     * L of an oil of 70 mm²/s or more at 100 °C; thinner oils have it in the standard's table.
     *
     * @param at100 viscosity at 100 °C, m²/s; at least 70e-6
     * @return L, m²/s
     * @throws IllegalArgumentException if the oil is thinner
     * @see "ASTM D2270, 6.2"
     */
    public static double lowOf(double at100) {
        double y = thick(at100);
        return (0.8353 * y * y + 14.67 * y - 216) / TO_MM2;
    }

    /**
     * H of an oil of 70 mm²/s or more at 100 °C; thinner oils have it in the standard's table.
     *
     * @param at100 viscosity at 100 °C, m²/s; at least 70e-6
     * @return H, m²/s
     * @throws IllegalArgumentException if the oil is thinner
     * @see "ASTM D2270, 6.2"
     */
    public static double highOf(double at100) {
        double y = thick(at100);
        return (0.1684 * y * y + 11.85 * y - 97) / TO_MM2;
    }

    /** Dynamic viscosity, Pa·s, of a kinematic one, m²/s, and a density, kg/m³, both above zero. */
    public static double dynamic(double kinematic, double density) {
        Argument.aboveZero("kinematic viscosity", kinematic);
        Argument.aboveZero("density of the oil", density);
        return kinematic * density;
    }

    /** Kinematic viscosity, m²/s, of a dynamic one, Pa·s, and a density, kg/m³, both above zero. */
    public static double kinematic(double dynamic, double density) {
        Argument.aboveZero("dynamic viscosity", dynamic);
        Argument.aboveZero("density of the oil", density);
        return dynamic / density;
    }

    /** Least viscosity at 40 °C of an ISO VG class of this middle viscosity, m²/s, above zero (ISO 3448). */
    public static double leastOfClass(double middle) {
        Argument.aboveZero("viscosity of the class", middle);
        return 0.9 * middle;
    }

    /** Greatest viscosity at 40 °C of an ISO VG class of this middle viscosity, m²/s, above zero (ISO 3448). */
    public static double mostOfClass(double middle) {
        Argument.aboveZero("viscosity of the class", middle);
        return 1.1 * middle;
    }

    private static double thick(double at100) {
        Argument.finite("viscosity at 100 degrees", at100);
        double y = at100 * TO_MM2;
        if (y < 70 * (1 - 1e-12)) {
            throw new IllegalArgumentException("The viscosity at 100 degrees must be at least 70 mm2/s.");
        }
        return y;
    }

    private static void enough(String name, double viscosity) {
        Argument.finite(name, viscosity);
        if (viscosity * TO_MM2 <= 0.3) {
            throw new IllegalArgumentException("The " + name + " must be above 0.3 mm2/s.");
        }
    }
}
