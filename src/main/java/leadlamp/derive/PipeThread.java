package leadlamp.derive;

import java.util.Locale;
import java.util.Optional;

/**
 * A pipe thread by the ways in which the trade writes it: `1/4 NPT`, `NPT 1/4`, `R 1/4`, `Rc1/4`, `G 1/4`, `1/8 taper`.
 *
 * @param family `npt`, `bsp taper`, `bsp` (parallel) or `taper` where the family is not told
 * @param size   as `1/4`
 * @param inside whether its letters are those of a hole
 */
record PipeThread(String family, String size, boolean inside) {
    private static final String NPT = "npt";
    private static final String BSP_TAPER = "bsp taper";
    private static final String BSP = "bsp";
    private static final String TAPER = "taper";

    /** Empty where the text names no pipe thread. */
    static Optional<PipeThread> named(String text) {
        StringBuilder letters = new StringBuilder();
        StringBuilder size = new StringBuilder();
        for (char c : text.toLowerCase(Locale.ROOT).toCharArray()) {
            if (c >= '0' && c <= '9' || c == '/' || c == '-') {
                size.append(c);
            } else if (c >= 'a' && c <= 'z') {
                letters.append(c);
            }
        }
        String family = switch (letters.toString()) {
            case "npt", "nptf" -> NPT;
            case "r", "rc", "bspt", "bsptaper", "taperbsp" -> BSP_TAPER;
            case "g", "rp", "bsp", "bspp", "bspparallel" -> BSP;
            case "taper" -> TAPER;
            default -> "";
        };
        return family.isEmpty() || size.isEmpty() ? Optional.empty()
                : Optional.of(new PipeThread(family, size.toString(), letters.toString().equals("rc") || letters.toString().equals("rp")));
    }

    boolean taper() {
        return !family.equals(BSP);
    }

    /**
     * Whether a plug of the one belongs into a hole of the other. A taper plug in the parallel hole Rp is a joint of the standard.
     *
     * @see "ISO 7-1, taper outside with taper or parallel inside (from memory)"
     */
    static boolean fits(String plug, String hole) {
        Optional<PipeThread> has = named(plug);
        Optional<PipeThread> wants = named(hole);
        if (has.isEmpty() || wants.isEmpty() || !has.get().size.equals(wants.get().size)) {
            return false;
        }
        String one = has.get().family;
        String other = wants.get().family;
        boolean unnamed = one.equals(TAPER) && wants.get().taper() || other.equals(TAPER) && has.get().taper();
        return one.equals(other) || unnamed || one.equals(BSP_TAPER) && other.equals(BSP) && wants.get().inside;
    }
}
