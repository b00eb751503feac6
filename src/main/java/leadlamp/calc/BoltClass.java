package leadlamp.calc;

import java.util.Optional;

/**
 * Least strength of a bolt's class, Pa.
 *
 * @param name    as it is stamped
 * @param tensile least tensile strength
 * @param yield   least 0.2 % yield strength
 * @param proof   proof stress
 * @param basis   where the figures stand
 */
public record BoltClass(String name, double tensile, double yield, double proof, String basis) {

    /**
     * The class of this name at this thread diameter; empty for a class that is not known, or that sets no strength by
     * itself (`titanium` goes by its alloy).
     *
     * <p>Class 8.8 is stronger above 16 mm. For stainless bolts the standard sets no proof stress: nine tenths of the
     * yield strength is taken here, as the steel classes have it, rounded down.
     *
     * @param diameter thread diameter, m; above zero
     * @throws IllegalArgumentException if the diameter is not above zero
     */
    public static Optional<BoltClass> named(String name, double diameter) {
        Argument.aboveZero("thread diameter", diameter);
        return switch (name) {
            case "8.8" -> Optional.of(diameter <= 0.016
                    ? new BoltClass(name, 800e6, 640e6, 580e6, "from memory: ISO 898-1")
                    : new BoltClass(name, 830e6, 660e6, 600e6, "ISO 898-1"));
            case "9.8" -> Optional.of(new BoltClass(name, 900e6, 720e6, 650e6, "from memory: ISO 898-1"));
            case "10.9" -> Optional.of(new BoltClass(name, 1040e6, 940e6, 830e6, "ISO 898-1"));
            case "12.9" -> Optional.of(new BoltClass(name, 1220e6, 1100e6, 970e6, "ISO 898-1"));
            case "stainless 70" -> Optional.of(new BoltClass(name, 700e6, 450e6, 405e6, "from memory: ISO 3506-1"));
            case "stainless 80" -> Optional.of(new BoltClass(name, 800e6, 600e6, 540e6, "from memory: ISO 3506-1"));
            default -> Optional.empty();
        };
    }
}
