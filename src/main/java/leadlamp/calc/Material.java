package leadlamp.calc;

import java.util.Optional;

/**
 * A metal and what heat and load do to it. These are figures of the kind, for an estimate: an alloy's own sheet wins.
 *
 * @param name           word of the vocabulary, or a kind of piston alloy
 * @param expansion      linear expansion near room heat, 1/K
 * @param expansionDoubt half width within which the kind's alloys lie, 1/K
 * @param modulus        modulus of elasticity, Pa
 * @param density        density, kg/m³
 * @param poisson        Poisson ratio
 * @param basis          where the figures stand
 */
public record Material(String name, double expansion, double expansionDoubt, double modulus, double density,
        double poisson, String basis) {
    private static final String CHART =
            "expansion: a published chart by material; the rest from memory: materials handbooks";
    private static final String MEMORY = "from memory: materials handbooks";

    /** The metal of this word; empty for what is no metal or is none that is known. */
    public static Optional<Material> named(String word) {
        return switch (word) {
            case "steel" -> Optional.of(new Material(word, 12.0e-6, 0.8e-6, 205e9, 7850, 0.30, CHART));
            case "stainless" -> Optional.of(new Material(word, 17.0e-6, 1.0e-6, 193e9, 7900, 0.30, CHART));
            case "cast iron" -> Optional.of(new Material(word, 10.5e-6, 1.0e-6, 110e9, 7200, 0.26, CHART));
            case "aluminium" -> Optional.of(new Material(word, 23.0e-6, 2.0e-6, 70e9, 2700, 0.33, CHART));
            case "magnesium" -> Optional.of(new Material(word, 26.0e-6, 1.0e-6, 45e9, 1800, 0.29, MEMORY));
            case "titanium" -> Optional.of(new Material(word, 8.6e-6, 0.5e-6, 114e9, 4430, 0.33, CHART));
            case "bronze" -> Optional.of(new Material(word, 18.0e-6, 1.0e-6, 110e9, 8800, 0.34, CHART));
            case "copper" -> Optional.of(new Material(word, 17.0e-6, 0.5e-6, 120e9, 8960, 0.34, CHART));
            case "sintered" -> Optional.of(new Material(word, 12.0e-6, 1.0e-6, 130e9, 6800, 0.28, MEMORY));
            case "zinc" -> Optional.of(new Material(word, 27.0e-6, 1.0e-6, 85e9, 6600, 0.30, MEMORY));
            case "cast piston alloy" -> Optional.of(
                    new Material(word, 20.5e-6, 0.5e-6, 80e9, 2700, 0.33, "from memory: piston makers' handbooks"));
            // Forged alloys with little and with much silicon lie this far apart.
            case "forged piston alloy" -> Optional.of(
                    new Material(word, 20.85e-6, 1.45e-6, 75e9, 2750, 0.33, "from memory: ASM Handbook, volume 2"));
            case "cast piston, middle silicon" -> Optional.of(
                    new Material(word, 20.5e-6, 0.5e-6, 80e9, 2700, 0.33, "from memory: piston makers' handbooks, eutectic alloy"));
            case "cast piston, high silicon" -> Optional.of(
                    new Material(word, 18.5e-6, 0.5e-6, 84e9, 2680, 0.33, "from memory: piston makers' handbooks, hypereutectic alloy"));
            case "forged piston, low silicon" -> Optional.of(
                    new Material(word, 22.3e-6, 0.3e-6, 74e9, 2760, 0.33, "from memory: ASM Handbook, volume 2, alloy 2618"));
            case "forged piston, middle silicon" -> Optional.of(
                    new Material(word, 19.4e-6, 0.3e-6, 79e9, 2680, 0.33, "from memory: ASM Handbook, volume 2, alloy 4032"));
            default -> Optional.empty();
        };
    }
}
