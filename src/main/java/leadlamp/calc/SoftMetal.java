package leadlamp.calc;

import java.util.OptionalDouble;

/**
 * Strength of the soft castings that threads are cut in, for an estimate where nobody gives the casting's own. From memory:
 * materials handbooks, sand and gravity castings, shear strength about two thirds of the tensile strength.
 */
public final class SoftMetal {
    /** How far a casting may lie from its family's figure, as a share, 95 %. Common practice, no source. */
    public static final double DOUBT = 0.35;
    private static final double ALUMINIUM = 140e6;
    private static final double MAGNESIUM = 110e6;

    private SoftMetal() {
    }

    /** Shear strength of a casting of this metal, Pa; empty for what is not soft. */
    public static OptionalDouble shear(String metal) {
        return switch (metal) {
            case "aluminium" -> OptionalDouble.of(ALUMINIUM);
            case "magnesium" -> OptionalDouble.of(MAGNESIUM);
            default -> OptionalDouble.empty();
        };
    }
}
