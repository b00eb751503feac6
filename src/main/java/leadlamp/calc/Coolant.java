package leadlamp.calc;

/** Boiling and freezing of water and of its mixtures with glycol. */
public final class Coolant {
    // IAPWS-IF97, region 4, table 34
    private static final double[] N = { 0, 0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2,
        0.12020824702470e5, -0.32325550322333e7, 0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6,
        -0.23855557567849, 0.65017534844798e3 };

    private Coolant() {
    }

    /** What is mixed with the water: pairs of share by volume and °C. */
    public enum Glycol {
        /** Both tables: US Army TM 5-3895-382-24. */
        ETHYLENE(new double[] { 0, 0, 0.3, -15, 0.4, -24, 0.5, -37, 0.6, -57 },
                new double[] { 0, 100, 0.3, 104, 0.4, 106, 0.5, 108, 0.6, 111 }),
        /** Freezing: Lange's Handbook of Chemistry, which promises less than the manual; boiling: the same manual. */
        PROPYLENE(new double[] { 0, 0, 0.1, -2.2, 0.2, -6.7, 0.3, -12.8, 0.4, -20.6, 0.5, -33.3 },
                new double[] { 0, 100, 0.3, 102, 0.4, 104, 0.5, 106, 0.6, 107 });

        private final double[] freezing;
        private final double[] boiling;

        Glycol(double[] freezing, double[] boiling) {
            this.freezing = freezing;
            this.boiling = boiling;
        }
    }

    /**
     * Pressure at which water boils at a temperature.
     *
     * @param temperature temperature, K; 273.15 to 647.096
     * @return absolute pressure, Pa
     * @throws IllegalArgumentException if the temperature is outside
     * @see "IAPWS-IF97, equation 30"
     */
    public static double waterPressure(double temperature) {
        Argument.finite("temperature of the water", temperature);
        if (temperature < 273.15 || temperature > 647.096) {
            throw new IllegalArgumentException(
                    "The temperature of the water must lie from 0 to 373.9 degrees Celsius.");
        }
        double theta = temperature + N[9] / (temperature - N[10]);
        double a = theta * theta + N[1] * theta + N[2];
        double b = N[3] * theta * theta + N[4] * theta + N[5];
        double c = N[6] * theta * theta + N[7] * theta + N[8];
        double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
        return Math.pow(root, 4) * 1e6;
    }

    /**
     * Temperature at which water boils under a pressure.
     *
     * @param pressure absolute pressure, Pa; 611.213 to 22.064e6
     * @return temperature, K
     * @throws IllegalArgumentException if the pressure is outside
     * @see "IAPWS-IF97, equation 31"
     */
    public static double waterBoils(double pressure) {
        Argument.finite("pressure on the water", pressure);
        if (pressure < 611.213 || pressure > 22.064e6) {
            throw new IllegalArgumentException("The pressure on the water must lie from 0.0061 to 220 bar.");
        }
        double beta = Math.pow(pressure / 1e6, 0.25);
        double e = beta * beta + N[3] * beta + N[6];
        double f = N[1] * beta * beta + N[4] * beta + N[7];
        double g = N[2] * beta * beta + N[5] * beta + N[8];
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double sum = N[10] + d;
        return (sum - Math.sqrt(sum * sum - 4 * (N[9] + N[10] * d))) / 2;
    }

    /**
     * Temperature at which a mixture boils under its cap.
     *
     * <p>That of water at the absolute pressure, and what the glycol adds at sea level without a cap.
     *
     * @param glycol      what is mixed in
     * @param share       share by volume; 0 to 0.6
     * @param airPressure air pressure, Pa; above zero
     * @param cap         opening pressure of the cap, gauge, Pa; not below zero
     * @return temperature, K; about 1 K
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "IAPWS-IF97 and US Army TM 5-3895-382-24"
     */
    public static double boils(Glycol glycol, double share, double airPressure, double cap) {
        Argument.aboveZero("air pressure", airPressure);
        Argument.notBelowZero("opening pressure of the cap", cap);
        return waterBoils(airPressure + cap) + between(glycol.boiling, share) - 100;
    }

    /**
     * Temperature at which a mixture begins to freeze, straight between the table's shares.
     *
     * <p>Tables differ by up to 6 K at the strong end; a refractometer's own scale wins.
     *
     * @param glycol what is mixed in
     * @param share  share by volume; from 0 to the table's end, 0.6 for ethylene and 0.5 for propylene glycol
     * @return temperature, K; about 1 K at the table's shares
     * @throws IllegalArgumentException if the share is outside
     * @see "US Army TM 5-3895-382-24 and Lange's Handbook of Chemistry, table 5.13"
     */
    public static double freezes(Glycol glycol, double share) {
        return between(glycol.freezing, share) + 273.15;
    }

    private static double between(double[] table, double share) {
        double last = table[table.length - 2];
        Argument.finite("share of glycol", share);
        if (share < 0 || share > last + 1e-12) {
            throw new IllegalArgumentException("The share of glycol must lie from 0 to " + Math.round(last * 100)
                    + " %: the table ends there.");
        }
        int i = 2;
        while (i < table.length - 2 && share > table[i]) {
            i += 2;
        }
        return table[i - 1] + (table[i + 1] - table[i - 1]) * (share - table[i - 2]) / (table[i] - table[i - 2]);
    }
}
