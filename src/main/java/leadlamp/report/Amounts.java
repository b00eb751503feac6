package leadlamp.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Unit;

/** Values, doubts and limits as text: in the record's own units, with the decimals that were written. */
public final class Amounts {
    /** Expanded uncertainty at about 95 % is twice the standard one (JCGM 100, 6.3.3). */
    private static final double COVERAGE = 2;
    /** A doubt is given to two figures at most (JCGM 100, 7.2.6), and to one where that one is no 1 or 2. */
    private static final MathContext ONE_FIGURE = new MathContext(1, RoundingMode.HALF_UP);
    private static final MathContext TWO_FIGURES = new MathContext(2, RoundingMode.HALF_UP);
    private static final char SMALL_FIGURE = '3';
    /** A limit may be written with so many more decimals than the reading. */
    private static final int MORE_DECIMALS = 3;
    private static final double SAME = 1e-9;

    private Amounts() {
    }

    /** `4.90 ± 0.006 mm`, `from 0.08 to 0.09 ± 0.02 mm`, `under 0.05 mm`. */
    public static String of(Value value) {
        return of(value, Optional.empty(), Optional.empty());
    }

    /** The value of a verdict, with the doubt that it was judged by. */
    public static String of(Verdict verdict) {
        return of(verdict.value(), verdict.least(), verdict.most());
    }

    private static String of(Value value, Optional<Verdict.Side> least, Optional<Verdict.Side> most) {
        Unit unit = value.unit();
        double doubtLow = least.map(Verdict.Side::expanded).orElse(doubt(value.low()));
        double doubtHigh = most.map(Verdict.Side::expanded).orElse(doubt(value.high()));
        double doubt = Math.max(doubtLow, doubtHigh);
        StringBuilder text = new StringBuilder();
        if (value.plain()) {
            text.append(end(value.low(), value));
        } else if (value.low().isPresent() && value.high().isPresent()) {
            text.append("from ").append(end(value.low(), value)).append(" to ").append(end(value.high(), value));
        } else if (value.high().isPresent()) {
            text.append("under ").append(end(value.high(), value));
        } else if (value.low().isPresent()) {
            text.append("over ").append(end(value.low(), value));
        } else {
            return "no figure";
        }
        if (doubt > 0) {
            text.append(" ± ").append(doubt(doubt / unit.factor()));
        }
        return unit(text.toString(), unit);
    }

    /** The limit, on the sides that it has: `least 4.97 mm`, `0.02 to 0.05 mm`, `most 0.05 mm`. */
    public static String sides(Verdict verdict) {
        return sides(verdict.limit(), verdict.value().unit(), verdict.value().figures());
    }

    private static String sides(LimitUsed limit, Unit unit, int figures) {
        if (limit.least().isPresent() && limit.most().isPresent()) {
            return unit("from " + exact(limit.least(), unit, figures) + " to " + exact(limit.most(), unit, figures),
                    unit);
        }
        if (limit.least().isPresent()) {
            return unit("least " + exact(limit.least(), unit, figures), unit);
        }
        return limit.most().isPresent() ? unit("most " + exact(limit.most(), unit, figures), unit) : "no limit";
    }

    /** The one side of the limit that a sentence speaks of: that which the value breaks, else the nearer one. */
    static String side(Verdict verdict) {
        Unit unit = verdict.value().unit();
        int figures = verdict.value().figures();
        LimitUsed limit = verdict.limit();
        boolean both = limit.least().isPresent() && limit.most().isPresent();
        if (both && !verdict.isBelow() && !verdict.isAbove()) {
            return sides(verdict);
        }
        OptionalDouble side = verdict.isBelow() || limit.most().isEmpty() ? limit.least() : limit.most();
        return side.isPresent() ? unit(exact(side, unit, figures), unit) : "no limit";
    }

    /** One side of a limit. */
    static String limit(double si, Unit unit, int figures) {
        return unit(exact(OptionalDouble.of(si), unit, figures), unit);
    }

    /** An expanded doubt in this unit, with it. */
    static String doubt(double si, Unit unit) {
        return unit(doubt(si / unit.factor()), unit);
    }

    /** A doubt without its unit. */
    static String bare(double written) {
        return doubt(written);
    }

    /** One side of a limit without its unit. */
    static String bareLimit(double si, Unit unit, int figures) {
        return exact(OptionalDouble.of(si), unit, figures);
    }

    /** Expanded uncertainty of an end; 0 where it is open. */
    static double doubt(Optional<Estimate> end) {
        return end.map(e -> COVERAGE * e.standardUncertainty()).orElse(0.0);
    }

    /** A figure with this many decimals. */
    static String number(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(Math.max(0, decimals), RoundingMode.HALF_UP).toPlainString();
    }

    /** A probability in words: `40 %`, `less than 1 %`. */
    static String share(double probability) {
        double percent = probability * 100;
        if (percent < 1) {
            return "less than 1 %";
        }
        return percent > 99 ? "more than 99 %" : number(percent, 0) + " %";
    }

    private static String end(Optional<Estimate> end, Value value) {
        return number(value.unit().fromSi(end.orElseThrow().value()), value.figures());
    }

    private static String doubt(double written) {
        BigDecimal two = BigDecimal.valueOf(written).round(TWO_FIGURES);
        boolean small = two.unscaledValue().toString().charAt(0) < SMALL_FIGURE;
        BigDecimal rounded = (small ? two : two.round(ONE_FIGURE)).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
    }

    /** As written where it was written in this unit; from another unit with one decimal more than the reading has. */
    private static String exact(OptionalDouble si, Unit unit, int figures) {
        double written = unit.fromSi(si.getAsDouble());
        int least = Math.max(0, figures);
        for (int decimals = least; decimals <= least + MORE_DECIMALS; decimals++) {
            if (Math.abs(Double.parseDouble(number(written, decimals)) - written)
                    <= SAME * Math.max(1, Math.abs(written))) {
                return number(written, decimals);
            }
        }
        return number(written, least + 1);
    }

    private static String unit(String figures, Unit unit) {
        return unit.word().isEmpty() ? figures : figures + " " + unit.word();
    }
}
