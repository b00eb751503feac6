package leadlamp.calc;

import java.util.Locale;
import java.util.Optional;

/**
 * An engine oil grade and what the standard says of it. `5W-40` has both a winter and a hot grade, `30` only the hot
 * one, `10W` only the winter one.
 *
 * @param name   as it is written: `5W-40`
 * @param winter number of the winter grade; -1 where there is none
 * @param hot    number of the hot grade; -1 where there is none
 * @see "SAE J300, edition of 2015, table 1"
 */
public record OilGrade(String name, int winter, int hot) {
    // winter grade, cranking at °C, most mPa·s, pumping at °C, most mPa·s, least mm²/s at 100 °C
    private static final double[][] WINTER = { { 0, -35, 6200, -40, 60000, 3.8 }, { 5, -30, 6600, -35, 60000, 3.8 },
        { 10, -25, 7000, -30, 60000, 4.1 }, { 15, -20, 7000, -25, 60000, 5.6 }, { 20, -15, 9500, -20, 60000, 5.6 },
        { 25, -10, 13000, -15, 60000, 9.3 } };
    // hot grade, at least mm²/s at 100 °C, below mm²/s, least mPa·s at 150 °C under high shear
    private static final double[][] HOT = { { 8, 4.0, 6.1, 1.7 }, { 12, 5.0, 7.1, 2.0 }, { 16, 6.1, 8.2, 2.3 },
        { 20, 6.9, 9.3, 2.6 }, { 30, 9.3, 12.5, 2.9 }, { 40, 12.5, 16.3, 3.7 }, { 50, 16.3, 21.9, 3.7 },
        { 60, 21.9, 26.1, 3.7 } };
    private static final double ZERO_CELSIUS = 273.15;

    /** The grade among these words (`5W-40`, `5w40`, `SAE 30`); empty where there is none. */
    public static Optional<OilGrade> named(String words) {
        for (String word : words.strip().split("[\\s,;]+")) {
            String plain = word.toUpperCase(Locale.ROOT).replace("-", "").replace("/", "");
            if (plain.startsWith("SAE")) {
                plain = plain.substring(3);
            }
            int w = plain.indexOf('W');
            int winter = w < 0 ? -1 : number(plain.substring(0, w));
            int hot = w < 0 ? number(plain) : w == plain.length() - 1 ? -1 : number(plain.substring(w + 1));
            boolean sound = w < 0 ? row(HOT, hot) != null
                    : row(WINTER, winter) != null && (w == plain.length() - 1 || row(HOT, hot) != null);
            if (sound) {
                return Optional.of(new OilGrade((winter < 0 ? "" : winter + "W") + (winter < 0 || hot < 0 ? "" : "-")
                        + (hot < 0 ? "" : Integer.toString(hot)), winter, hot));
            }
        }
        return Optional.empty();
    }

    private static int number(String digits) {
        if (digits.isEmpty() || digits.length() > 2) {
            return -1;
        }
        for (int i = 0; i < digits.length(); i++) {
            if (digits.charAt(i) < '0' || digits.charAt(i) > '9') {
                return -1;
            }
        }
        return Integer.parseInt(digits);
    }

    private static double[] row(double[][] table, int grade) {
        for (double[] row : table) {
            if (row[0] == grade) {
                return row;
            }
        }
        return null;
    }

    /** Whether it has a winter grade. */
    public boolean forWinter() {
        return winter >= 0;
    }

    /** Temperature at which its cranking viscosity is limited, K. */
    public double crankingTemperature() {
        return winterRow()[1] + ZERO_CELSIUS;
    }

    /** Greatest cranking viscosity there, Pa·s. */
    public double mostCranking() {
        return winterRow()[2] / 1000;
    }

    /** Lowest temperature at which it is sure to reach the pump, K. */
    public double pumpingTemperature() {
        return winterRow()[3] + ZERO_CELSIUS;
    }

    /** Greatest pumping viscosity there, Pa·s. */
    public double mostPumping() {
        return winterRow()[4] / 1000;
    }

    /** Least kinematic viscosity at 100 °C, m²/s; of both grades the greater. */
    public double leastAt100() {
        double least = hot < 0 ? winterRow()[5] : hotRow()[1];
        return least / 1e6;
    }

    /** Kinematic viscosity at 100 °C that it stays below, m²/s; plus infinity for a winter grade alone. */
    public double belowAt100() {
        return hot < 0 ? Double.POSITIVE_INFINITY : hotRow()[2] / 1e6;
    }

    /** Least viscosity at 150 °C under high shear, Pa·s. */
    public double leastHighShear() {
        // 40 grades that are light when cold may be thinner: 0W, 5W and 10W.
        boolean light = hot == 40 && winter >= 0 && winter <= 10;
        return (light ? 3.5 : hotRow()[3]) / 1000;
    }

    /**
     * The thickest that an oil of this grade can be at a low temperature: through its greatest cranking viscosity and
     * the top of its band at 100 °C.
     *
     * @param temperature temperature, K; from the cranking temperature to 373.15
     * @param density     density of the oil, kg/m³; above zero
     * @return kinematic viscosity, m²/s; an upper bound
     * @throws IllegalArgumentException if the grade lacks a winter or hot number, or the temperature is outside
     * @see "SAE J300 and ASTM D341"
     */
    public double mostAt(double temperature, double density) {
        Argument.aboveZero("temperature of the oil", temperature);
        if (temperature < crankingTemperature() - 1e-9 || temperature > ZERO_CELSIUS + 100) {
            throw new IllegalArgumentException("Of " + name + " the viscosity is bounded only from its cranking"
                    + " temperature to 100 degrees Celsius.");
        }
        return Viscosity.through(Viscosity.kinematic(mostCranking(), density), crankingTemperature(), belowAt100Known(),
                ZERO_CELSIUS + 100).at(temperature);
    }

    private double belowAt100Known() {
        return hotRow()[2] / 1e6;
    }

    private double[] winterRow() {
        double[] row = row(WINTER, winter);
        if (row == null) {
            throw new IllegalArgumentException("The oil grade " + name + " has no winter number.");
        }
        return row;
    }

    private double[] hotRow() {
        double[] row = row(HOT, hot);
        if (row == null) {
            throw new IllegalArgumentException("The oil grade " + name + " has no hot number.");
        }
        return row;
    }
}
