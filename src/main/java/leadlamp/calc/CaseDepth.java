package leadlamp.calc;

import java.util.Optional;

/**
 * How deep the hard skin of a crankshaft's journals is, by the way it was hardened, for when the sheet is silent. From memory:
 * heat treatment handbooks.
 *
 * @param least least depth that is usual, m
 * @param most  greatest depth that is usual, m
 */
public record CaseDepth(double least, double most) {
    /** The skin that a way of hardening gives; empty for a journal that is hard right through, and for a way that is not known. */
    public static Optional<CaseDepth> named(String hardening) {
        return switch (hardening) {
            case "salt bath" -> Optional.of(new CaseDepth(0.010e-3, 0.020e-3));
            case "nitrided" -> Optional.of(new CaseDepth(0.3e-3, 0.5e-3));
            case "induction" -> Optional.of(new CaseDepth(1.5e-3, 3.0e-3));
            default -> Optional.empty();
        };
    }
}
