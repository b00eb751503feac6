package leadlamp.calc;

import java.util.Optional;

/**
 * Torque over clamp force and diameter, by what is on the thread. Trade figures: the locker's, paste's or maker's own
 * sheet wins.
 *
 * @param low   low side
 * @param usual usual figure
 * @param high  high side
 * @param basis where it stands
 */
public record TorqueFactor(double low, double usual, double high, String basis) {
    private static final String TRADE = "common practice, no source";

    /** The factor for a lubricant of the vocabulary; empty where it sets none (`as supplied`). */
    public static Optional<TorqueFactor> ofLubricant(String lubricant) {
        return switch (lubricant) {
            case "dry" -> factor(0.16, 0.20, 0.25);
            case "light oil" -> factor(0.14, 0.16, 0.18);
            case "engine oil", "oil" -> factor(0.13, 0.15, 0.18);
            case "assembly paste", "moly paste" -> factor(0.10, 0.12, 0.13);
            case "copper paste", "grease" -> factor(0.12, 0.14, 0.18);
            default -> Optional.empty();
        };
    }

    /** The factor of wet thread-locker, whatever its strength. */
    public static TorqueFactor ofThreadLocker() {
        return new TorqueFactor(0.14, 0.18, 0.20, TRADE);
    }

    /** The factor of paste sealer on the thread. */
    public static TorqueFactor ofSealer() {
        return new TorqueFactor(0.12, 0.15, 0.18, TRADE);
    }

    /** The factor for a thread's condition; empty where it is sound or sets none. */
    public static Optional<TorqueFactor> ofCondition(String condition) {
        return switch (condition) {
            case "rusty", "galled", "dirty", "painted", "residue" -> factor(0.20, 0.30, 0.40);
            default -> Optional.empty();
        };
    }

    private static Optional<TorqueFactor> factor(double low, double usual, double high) {
        return Optional.of(new TorqueFactor(low, usual, high, TRADE));
    }
}
