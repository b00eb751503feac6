package leadlamp.derive;

import java.math.BigDecimal;
import java.math.RoundingMode;
import leadlamp.quantity.Unit;

/** Figures as text, in the unit of the record, the same whatever the locale. */
final class Figures {
    private Figures() {
    }

    /** A figure with its unit: {@code 47.985 mm}; a number has none. */
    static String text(double si, Unit unit, int decimals) {
        String figure = plain(unit.fromSi(si), decimals);
        return unit.word().isEmpty() ? figure : figure + " " + unit.word();
    }

    /** A difference or a doubt: a step of 2 °C is no point of the scale, so the unit's zero is left out of it. */
    static String step(double si, Unit unit, int decimals) {
        String figure = plain(si / unit.factor(), decimals);
        return unit.word().isEmpty() ? figure : figure + " " + unit.word();
    }

    /** A plain figure with so many decimals. */
    static String plain(double value, int decimals) {
        if (decimals >= 0 && decimals < TENS.length && Math.abs(value) < 1e9) {
            double scaled = Math.abs(value) * TENS[decimals];
            double below = Math.floor(scaled);
            // How far over the half it is, rounded but once, so that its sign is that of the exact figure: a half goes up.
            double over = Math.fma(Math.abs(value), TENS[decimals], -(below + 0.5));
            long whole = (long) (over >= 0 ? below + 1 : below);
            return digits(value < 0 && whole != 0, whole, decimals);
        }
        BigDecimal rounded = new BigDecimal(value).setScale(Math.max(0, decimals), RoundingMode.HALF_UP);
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
    }

    private static final double[] TENS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};

    private static String digits(boolean minus, long whole, int decimals) {
        String figures = Long.toString(whole);
        StringBuilder text = new StringBuilder(figures.length() + 4);
        if (minus) {
            text.append('-');
        }
        if (decimals == 0) {
            return text.append(figures).toString();
        }
        for (int i = figures.length(); i <= decimals; i++) {
            text.append('0');
        }
        text.append(figures);
        return text.insert(text.length() - decimals, '.').toString();
    }

    /** Decimals that show so many figures of a value of this size; none for what is large. */
    static int decimalsFor(double value, int significant) {
        double size = Math.abs(value);
        if (!(size > 0) || Double.isInfinite(size)) {
            return 0;
        }
        int whole = (int) Math.floor(Math.log10(size)) + 1;
        return Math.max(0, Math.min(6, significant - whole));
    }
}
