package leadlamp.calc;

import java.util.Locale;
import java.util.Optional;
import leadlamp.calc.ScrewThread.Family;

/**
 * Threads by their designation, and the sizes that follow from diameter and pitch.
 *
 * <p>A designation without a pitch means the coarse thread of its family: `M8` is `M8x1.25`, `5/16 UNC` is `5/16-18`.
 * `UNC`, `UNF`, `BSW` and `BSF` may stand behind an inch size with or without its threads per inch; without a family an
 * inch thread is Unified. Taper and pipe threads are not read: they hold nothing by their preload.
 */
public final class Threads {
    private static final double INCH = 0.0254;

    // ISO 261, coarse series: diameter and pitch, mm (from memory; the sizes of ISO 898-1 agree)
    private static final double[] COARSE = { 1.6, 0.35, 2, 0.4, 2.5, 0.45, 3, 0.5, 3.5, 0.6, 4, 0.7, 5, 0.8, 6, 1, 7, 1,
        8, 1.25, 10, 1.5, 12, 1.75, 14, 2, 16, 2, 18, 2.5, 20, 2.5, 22, 2.5, 24, 3, 27, 3, 30, 3.5, 33, 3.5, 36, 4 };
    // ASME B1.1 (from memory): size in 1/16 inch, coarse, fine, threads per inch
    private static final int[] UNIFIED = { 4, 20, 28, 5, 18, 24, 6, 16, 24, 7, 14, 20, 8, 13, 20, 9, 12, 18, 10, 11, 18,
        12, 10, 16, 14, 9, 14, 16, 8, 12 };
    // ASME B1.1 (from memory): numbered size, coarse, fine, threads per inch
    private static final int[] NUMBERED = { 4, 40, 48, 5, 40, 44, 6, 32, 40, 8, 32, 36, 10, 24, 32, 12, 24, 28 };
    // BS 84 (from memory): size in 1/16 inch, coarse (BSW), fine (BSF), threads per inch
    private static final int[] WHITWORTH = { 3, 24, 32, 4, 20, 26, 5, 18, 22, 6, 16, 20, 7, 14, 18, 8, 12, 16, 9, 12, 16,
        10, 11, 14, 12, 10, 12, 14, 9, 11, 16, 8, 10 };

    private Threads() {
    }

    /**
     * Tensile stress area of an ISO metric thread.
     *
     * <p>A = π/4 · (d − 0.9382 · P)²: the mean of pitch diameter and core diameter.
     *
     * @param diameter nominal diameter, m; above zero
     * @param pitch    pitch, m; above zero and below 0.4 of the diameter
     * @return area, m²
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "ISO 898-1, nominal stress area"
     */
    public static double stressArea(double diameter, double pitch) {
        return metric(diameter, pitch).stressArea();
    }

    /**
     * Pitch diameter of an ISO metric thread.
     *
     * <p>d − 0.6495 · P.
     *
     * @param diameter nominal diameter, m; above zero
     * @param pitch    pitch, m; above zero and below 0.4 of the diameter
     * @return diameter, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "ISO 724"
     */
    public static double pitchDiameter(double diameter, double pitch) {
        return metric(diameter, pitch).pitchDiameter();
    }

    private static ScrewThread metric(double diameter, double pitch) {
        return new ScrewThread("", Family.METRIC, diameter, pitch);
    }

    /** The thread of this designation; empty where it is none that is known. */
    public static Optional<ScrewThread> named(String designation) {
        String plain = designation.strip().toUpperCase(Locale.ROOT).replace('×', 'X').replace(',', '.');
        try {
            if (plain.startsWith("M")) {
                return metric(plain.substring(1).strip());
            }
            return inch(plain);
        } catch (IllegalArgumentException unread) {
            return Optional.empty();
        }
    }

    private static Optional<ScrewThread> metric(String sizes) {
        String kept = sizes;
        int tolerance = kept.indexOf('-');
        if (tolerance >= 0) {
            kept = kept.substring(0, tolerance).strip();
        }
        int by = kept.indexOf('X');
        double diameter = Double.parseDouble(by < 0 ? kept : kept.substring(0, by).strip());
        double pitch = by < 0 ? coarse(diameter) : Double.parseDouble(kept.substring(by + 1).strip());
        if (pitch <= 0) {
            return Optional.empty();
        }
        String name = "M" + trimmed(diameter) + "x" + trimmed(pitch);
        return Optional.of(new ScrewThread(name, Family.METRIC, diameter / 1000, pitch / 1000));
    }

    private static double coarse(double diameter) {
        for (int i = 0; i < COARSE.length; i += 2) {
            if (COARSE[i] == diameter) {
                return COARSE[i + 1];
            }
        }
        return 0;
    }

    private static Optional<ScrewThread> inch(String designation) {
        String series = "";
        String sizes = designation.replace("\"", "").replace("IN", "");
        for (String known : new String[] { "UNEF", "UNC", "UNF", "UN", "BSW", "BSF", "WHITWORTH" }) {
            int at = sizes.indexOf(known);
            if (at >= 0) {
                series = known;
                sizes = sizes.substring(0, at) + sizes.substring(at + known.length());
                break;
            }
        }
        int tolerance = sizes.lastIndexOf('-');
        if (tolerance > 0 && tolerance != sizes.indexOf('-') && Character.isLetter(sizes.charAt(sizes.length() - 1))) {
            sizes = sizes.substring(0, tolerance);
        }
        sizes = sizes.replace("TPI", "").replace(" X ", "-").strip();
        boolean numbered = sizes.startsWith("#") || sizes.startsWith("NO");
        if (numbered) {
            sizes = sizes.substring(sizes.startsWith("#") ? 1 : 2).replace(".", "").strip();
        }
        int threads = 0;
        int dash = sizes.lastIndexOf('-');
        if (dash > 0 && sizes.indexOf('/', dash) < 0) {
            threads = Integer.parseInt(sizes.substring(dash + 1).strip());
            sizes = sizes.substring(0, dash).strip();
            if (threads <= 0) {
                return Optional.empty();
            }
        } else if (series.isEmpty()) {
            return Optional.empty();
        }
        boolean whitworth = series.startsWith("BS") || series.equals("WHITWORTH");
        boolean fine = series.equals("UNF") || series.equals("BSF");
        // A plain whole number with its threads is a numbered size: 10-32.
        numbered = numbered || sizes.indexOf('/') < 0 && sizes.indexOf('.') < 0 && Integer.parseInt(sizes) > 2;
        double diameter = numbered ? 0.060 + 0.013 * Integer.parseInt(sizes) : fraction(sizes);
        if (threads == 0) {
            threads = tabled(numbered ? NUMBERED : whitworth ? WHITWORTH : UNIFIED,
                    numbered ? Integer.parseInt(sizes) : diameter * 16, fine);
        }
        if (threads == 0 || !numbered && Math.rint(diameter * 64) != diameter * 64) {
            return Optional.empty();
        }
        String name = (numbered ? "#" : "") + sizes + "-" + threads + (series.isEmpty() ? "" : " " + series);
        return Optional.of(new ScrewThread(name, whitworth ? Family.WHITWORTH : Family.UNIFIED, diameter * INCH,
                INCH / threads));
    }

    private static int tabled(int[] table, double size, boolean fine) {
        for (int i = 0; i < table.length; i += 3) {
            if (table[i] == size) {
                return table[i + (fine ? 2 : 1)];
            }
        }
        return 0;
    }

    private static double fraction(String written) {
        String kept = written.strip();
        double whole = 0;
        int gap = Math.max(kept.indexOf(' '), kept.indexOf('-'));
        if (gap > 0) {
            whole = Integer.parseInt(kept.substring(0, gap));
            kept = kept.substring(gap + 1).strip();
        }
        int over = kept.indexOf('/');
        if (over < 0) {
            return whole + Double.parseDouble(kept);
        }
        return whole + (double) Integer.parseInt(kept.substring(0, over)) / Integer.parseInt(kept.substring(over + 1));
    }

    private static String trimmed(double size) {
        return size == Math.rint(size) ? Long.toString((long) size) : Double.toString(size);
    }
}
