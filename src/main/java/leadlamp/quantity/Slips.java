package leadlamp.quantity;

import java.util.Optional;
import java.util.TreeSet;

/** Slips of pen and unit: what a reading may have been meant to say. Prompts to look, never a correction. */
public final class Slips {
    private Slips() {
    }

    /**
     * The unit that the figure would suit if its unit was a slip: the one in which it comes nearest to a nominal size.
     *
     * @param si      value as it was read, SI; not nothing
     * @param written unit as written
     * @param nominal what the sheet says, SI; of the same sign
     * @param within  how near it must come, as a share of the nominal; above zero
     * @return another unit of the same dimension, if it fits so well and the written one does not
     */
    public static Optional<Unit> unitMeant(double si, Unit written, double nominal, double within) {
        if (!(si * nominal > 0) || off(si, nominal) <= within || written.offset() != 0) {
            return Optional.empty();
        }
        Optional<Unit> best = Optional.empty();
        double least = within;
        for (Unit unit : Units.all(written.dimension())) {
            double meant = unit.toSi(written.fromSi(si));
            if (unit.offset() == 0 && off(meant, nominal) <= least) {
                least = off(meant, nominal);
                best = Optional.of(unit);
            }
        }
        return best;
    }

    private static double off(double value, double nominal) {
        return Math.abs(value / nominal - 1);
    }

    /**
     * The figure that one slip of the pen makes of the written one: two neighbours swapped, one digit wrong, too many
     * or left out, the point moved by one place.
     *
     * @param figure  figure as written, without its unit; digits and at most one point
     * @param wanted  where the others of its set lie, in the same unit
     * @param within  how near it must come, in that unit; not below zero
     * @return the nearest such figure, if one is so near
     */
    public static Optional<String> figureMeant(String figure, double wanted, double within) {
        String best = null;
        double least = within;
        for (String other : oneSlip(figure)) {
            double off = Math.abs(Double.parseDouble(other) - wanted);
            if (off < least || best == null && off == least) {
                least = off;
                best = other;
            }
        }
        return Optional.ofNullable(best);
    }

    private static TreeSet<String> oneSlip(String figure) {
        TreeSet<String> others = new TreeSet<>();
        int length = figure.length();
        for (int i = 0; i < length; i++) {
            char c = figure.charAt(i);
            if (i + 1 < length && figure.charAt(i + 1) != c) {
                // Swapping a digit with the point is the point moved by one place.
                add(others, figure.substring(0, i) + figure.charAt(i + 1) + c + figure.substring(i + 2));
            }
            if (c != '.') {
                add(others, figure.substring(0, i) + figure.substring(i + 1));
            }
            for (char digit = '0'; digit <= '9'; digit++) {
                add(others, figure.substring(0, i) + digit + figure.substring(i));
                if (c != '.') {
                    add(others, figure.substring(0, i) + digit + figure.substring(i + 1));
                }
            }
        }
        others.remove(figure);
        return others;
    }

    private static void add(TreeSet<String> others, String figure) {
        if (!figure.isEmpty() && !figure.equals(".") && !figure.startsWith("-.") && !figure.equals("-")) {
            try {
                Double.parseDouble(figure);
                others.add(figure);
            } catch (NumberFormatException noFigure) {
                // A swap that puts the sign inside is no figure.
            }
        }
    }
}
