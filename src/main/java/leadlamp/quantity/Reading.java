package leadlamp.quantity;

import java.util.Locale;
import java.util.Optional;
import leadlamp.quantity.Written.Form;

/**
 * Takes a value apart as it was written: first the words around it (`from ... to`, `under`, `least`, `unknown`), then
 * the figures, then the unit.
 */
public final class Reading {
    /** More than any figure of an engine has, in whatever unit. */
    private static final double MOST = 1e12;
    private static final Phrase[] PREFIXES = {
        // The longer phrase before the shorter one that it begins with.
        new Phrase("alike within", Form.ALIKE_WITHIN),
        new Phrase("no more than", Form.UNDER), new Phrase("not more than", Form.UNDER),
        new Phrase("no less than", Form.OVER), new Phrase("not less than", Form.OVER),
        new Phrase("less than", Form.UNDER), new Phrase("more than", Form.OVER),
        new Phrase("at most", Form.UNDER), new Phrase("at least", Form.OVER),
        new Phrase("up to", Form.UNDER), new Phrase("within", Form.UNDER),
        new Phrase("under", Form.UNDER), new Phrase("below", Form.UNDER),
        new Phrase("over", Form.OVER), new Phrase("above", Form.OVER),
        new Phrase("least", Form.LEAST), new Phrase("smallest", Form.LEAST), new Phrase("lowest", Form.LEAST),
        new Phrase("most", Form.MOST), new Phrase("greatest", Form.MOST), new Phrase("largest", Form.MOST),
        new Phrase("highest", Form.MOST), new Phrase("mean", Form.MEAN), new Phrase("average", Form.MEAN),
        new Phrase("<=", Form.UNDER), new Phrase(">=", Form.OVER), new Phrase("<", Form.UNDER),
        new Phrase(">", Form.OVER), new Phrase("≤", Form.UNDER), new Phrase("≥", Form.OVER),
    };
    private static final String[] EITHER_WAY = { "±", "+/-", "+-", "+ -", "plus or minus" };
    private static final double[] TENS = { 1e-9, 1e-8, 1e-7, 1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 1e-1, 1, 1e1, 1e2, 1e3, 1e4,
        1e5, 1e6, 1e7, 1e8, 1e9 };
    private static final String[] TENS_WRITTEN = { "e-9", "e-8", "e-7", "e-6", "e-5", "e-4", "e-3", "e-2", "e-1", "",
        "e1", "e2", "e3", "e4", "e5", "e6", "e7", "e8", "e9" };
    private static final String SINGLE_FRACTIONS = "½¼¾⅛⅜⅝⅞";
    private static final double[] SINGLE_FRACTION = { 0.5, 0.25, 0.75, 0.125, 0.375, 0.625, 0.875 };

    /** What became of a value. */
    public sealed interface Result permits Read, Unread {
    }

    /** It was read. */
    public record Read(Written written) implements Result {
    }

    /**
     * It could not be read.
     *
     * @param offset   where in the text the trouble stands
     * @param length   how many characters are meant
     * @param what     what is wrong, one sentence
     * @param expected what was expected, one sentence
     * @param nearest  what may have been meant
     */
    public record Unread(int offset, int length, String what, String expected, Optional<String> nearest)
            implements Result {
    }

    private record Phrase(String words, Form form) {
    }

    /** One figure with what stands behind it. Text carries the figures as written, without their sign's spaces. */
    private record Figure(double plain, String digits, int decimals, boolean fraction, int from, int to) {
    }

    private static final class Refused extends Exception {
        private static final long serialVersionUID = 1;
        private final transient Unread why;

        Refused(Unread why) {
            super(null, null, false, false);
            this.why = why;
        }
    }

    private final String text;
    private final Dimension dimension;
    private final Optional<Unit> row;
    private int at;

    private Reading(String text, Dimension dimension, Optional<Unit> row) {
        this.text = text;
        this.dimension = dimension;
        this.row = row;
    }

    /**
     * Reads a value.
     *
     * @param text      as written
     * @param dimension what it is of
     * @param row       unit of its row or table, if that has one; a unit of its own goes before
     */
    public static Result read(String text, Dimension dimension, Optional<Unit> row) {
        return read(text, dimension, row, Optional.empty());
    }

    /**
     * Reads a value that may say `worst`.
     *
     * @param worst what `worst` means of this quantity, {@link Form#LEAST} or {@link Form#MOST}; empty where either may
     *     hurt
     */
    public static Result read(String text, Dimension dimension, Optional<Unit> row, Optional<Form> worst) {
        Reading reading = new Reading(text, dimension, row);
        try {
            return new Read(reading.value(worst));
        } catch (Refused refused) {
            return refused.why;
        }
    }

    private Written value(Optional<Form> worst) throws Refused {
        skipSpace();
        if (at == text.length()) {
            throw refuse(0, text.length(), "There is no value.", Optional.empty());
        }
        char first = text.charAt(at);
        if (digit(first) || first == '-' || first == '+' || first == '.' || first == '−') {
            return plainOrRange(false);
        }
        if (says("unknown")) {
            return none(Form.UNKNOWN);
        }
        if (says("not read")) {
            return none(Form.NOT_READ);
        }
        if (says("good")) {
            return none(Form.GOOD);
        }
        if (take("from") || take("between")) {
            return plainOrRange(true);
        }
        if (take("worst")) {
            if (worst.isEmpty()) {
                throw refuse(wordStart("worst"), 5, "\"worst\" may mean the least or the greatest here.",
                        "Write least or most.", Optional.empty());
            }
            return one(worst.get());
        }
        for (Phrase prefix : PREFIXES) {
            if (take(prefix.words())) {
                return one(prefix.form());
            }
        }
        return plainOrRange(false);
    }

    private int wordStart(String word) {
        return text.toLowerCase(Locale.ROOT).indexOf(word);
    }

    private Written none(Form form) {
        Unit unit = row.isPresent() && row.get().dimension() == dimension ? row.get() : Units.usual(dimension);
        return new Written(form, Double.NaN, Double.NaN, unit, 0, text);
    }

    /** A single figure behind a word. */
    private Written one(Form form) throws Refused {
        Figure figure = figure();
        int end = endOfUnit(false);
        Unit unit = unit(end, figure);
        at = end;
        nothingMore();
        double si = si(figure, unit);
        return switch (form) {
            case UNDER -> new Written(form, Double.NEGATIVE_INFINITY, si, unit, figure.decimals(), text);
            case OVER -> new Written(form, si, Double.POSITIVE_INFINITY, unit, figure.decimals(), text);
            default -> new Written(form, si, si, unit, figure.decimals(), text);
        };
    }

    private Written plainOrRange(boolean range) throws Refused {
        Figure first = figure();
        int unitFrom = at;
        int end = endOfUnit(true);
        int after = end;
        at = end;
        skipSpace();
        if (at == text.length()) {
            if (range) {
                throw refuse(0, text.length(), "A range has two ends.", "Write it as: from 0.02 to 0.03 mm.",
                        Optional.empty());
            }
            at = unitFrom;
            Unit unit = unit(end, first);
            double si = si(first, unit);
            return new Written(Form.PLAIN, si, si, unit, first.decimals(), text);
        }
        boolean eitherWay = false;
        for (String words : EITHER_WAY) {
            if (take(words)) {
                eitherWay = true;
                break;
            }
        }
        boolean said = !eitherWay && (take("to") || take("and"));
        if (!eitherWay && !said) {
            at++; // the dash that the unit ended at
        }
        Figure second = figure();
        int secondUnitFrom = at;
        int secondEnd = endOfUnit(false);
        boolean secondNamed = !text.substring(secondUnitFrom, secondEnd).isBlank();
        boolean firstNamed = !text.substring(unitFrom, after).isBlank();

        if (eitherWay && secondNamed && dimension != Dimension.SHARE && dimension != Dimension.VOLUME_SHARE
                && dimension != Dimension.MASS_SHARE && text.substring(secondUnitFrom, secondEnd).strip().equals("%")) {
            at = unitFrom;
            Unit unit = unit(after, first);
            double middle = si(first, unit);
            double part = Math.abs(middle) * Math.abs(second.plain()) / 100;
            at = secondEnd;
            nothingMore();
            return range(middle - part, middle + part, unit, first.decimals() + second.decimals());
        }
        at = secondUnitFrom;
        if (dimension == Dimension.NUMBER && said && !range && !secondNamed && second.plain() == 1) {
            // 10.5 to 1 is a ratio, not a range
            at = secondEnd;
            nothingMore();
            return new Written(Form.PLAIN, first.plain(), first.plain(), Units.usual(dimension), first.decimals(),
                    text);
        }
        Unit secondUnit;
        Unit firstUnit;
        if (secondNamed || !firstNamed) {
            secondUnit = unit(secondEnd, second);
            at = unitFrom;
            firstUnit = firstNamed ? unit(after, first) : secondUnit;
            fractionSuits(first, firstUnit);
        } else {
            at = unitFrom;
            firstUnit = unit(after, first);
            secondUnit = firstUnit;
            fractionSuits(second, secondUnit);
        }
        at = secondEnd;
        nothingMore();
        int decimals = Math.max(first.decimals(), second.decimals());
        if (eitherWay) {
            double middle = si(first, firstUnit);
            // A difference of temperatures has no zero of its own.
            double part = Math.abs(second.plain() * secondUnit.factor());
            if (firstUnit.word().equals(secondUnit.word()) && firstUnit.offset() == 0) {
                return range(shifted(first, second, -1, firstUnit), shifted(first, second, 1, firstUnit), firstUnit,
                        decimals);
            }
            return range(middle - part, middle + part, firstUnit, decimals);
        }
        double one = si(first, firstUnit);
        double other = si(second, secondUnit);
        return range(Math.min(one, other), Math.max(one, other), secondUnit, decimals);
    }

    /** Middle and part added as they were written, so that 18 ± 1 ends at 19 to the last digit. */
    private static double shifted(Figure middle, Figure part, int way, Unit unit) {
        double scale = Math.pow(10, Math.max(middle.decimals(), part.decimals()));
        double sum = (Math.rint(middle.plain() * scale) + way * Math.abs(Math.rint(part.plain() * scale))) / scale;
        return scaled(Double.toString(sum), sum, unit);
    }

    private Written range(double low, double high, Unit unit, int decimals) {
        return new Written(Form.RANGE, low, high, unit, decimals, text);
    }

    /** One figure: 0.05, -0.1, .5, 1/4, 1 3/8. */
    private Figure figure() throws Refused {
        skipSpace();
        int from = at;
        boolean minus = false;
        if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '−' || text.charAt(at) == '+')) {
            minus = text.charAt(at) != '+';
            at++;
            skipSpace();
        }
        int digits = at;
        int point = -1;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (digit(c)) {
                at++;
            } else if (c == '.' && point < 0 && (nextIsDigit(at) || at > digits)) {
                point = at++;
            } else {
                break;
            }
        }
        int end = at;
        if (at < text.length() && text.charAt(at) == ',' && nextIsDigit(at)) {
            throw comma(digits);
        }
        if (end == digits || end == digits + 1 && point == digits) {
            int single = at < text.length() ? SINGLE_FRACTIONS.indexOf(text.charAt(at)) : -1;
            if (single >= 0) {
                at++;
                return fraction(minus, SINGLE_FRACTION[single], from);
            }
            throw refuse(from, Math.max(1, text.length() - from), "\"" + text.substring(from).strip()
                    + "\" has no figure where one should stand.", Optional.empty());
        }
        if (at < text.length() && text.charAt(at) == '.' && nextIsDigit(at)) {
            throw refuse(digits, text.length() - digits, "There are two points in one figure.", Optional.empty());
        }
        double plain = Double.parseDouble(text.substring(digits, end));
        if (plain > MOST) {
            throw refuse(digits, end - digits, "That figure is larger than anything at the bench.", Optional.empty());
        }
        if (point < 0 && at < text.length()) {
            Figure fraction = fractionBehind(minus, plain, from);
            if (fraction != null) {
                return fraction;
            }
        }
        int decimals = point < 0 ? 0 : end - point - 1;
        String written = text.substring(digits, end);
        return new Figure(minus ? -plain : plain, minus ? "-".concat(written) : written, decimals, false, from, at);
    }

    /** A fraction that goes on from a whole figure, or begins with it; null where there is none. */
    private Figure fractionBehind(boolean minus, double whole, int from) throws Refused {
        char c = text.charAt(at);
        int single = SINGLE_FRACTIONS.indexOf(c);
        if (single >= 0) {
            at++;
            return fraction(minus, whole + SINGLE_FRACTION[single], from);
        }
        if (c == '/' && nextIsDigit(at)) {
            at++;
            return fraction(minus, whole / under(from), from);
        }
        if (!space(c) && c != '-') {
            return null;
        }
        int look = at;
        while (look < text.length() && space(text.charAt(look))) {
            look++;
        }
        if (look < text.length() && text.charAt(look) == '-') {
            look++;
        }
        if (look < text.length() && SINGLE_FRACTIONS.indexOf(text.charAt(look)) >= 0) {
            at = look + 1;
            return fraction(minus, whole + SINGLE_FRACTION[SINGLE_FRACTIONS.indexOf(text.charAt(look))], from);
        }
        int start = look;
        while (look < text.length() && digit(text.charAt(look))) {
            look++;
        }
        if (look == start || look == text.length() || text.charAt(look) != '/' || !nextIsDigit(look)) {
            return null;
        }
        double over = Double.parseDouble(text.substring(start, look));
        at = look + 1;
        return fraction(minus, whole + over / under(from), from);
    }

    private double under(int from) throws Refused {
        int start = at;
        while (at < text.length() && digit(text.charAt(at))) {
            at++;
        }
        double under = Double.parseDouble(text.substring(start, at));
        if (!(under == 2 || under == 4 || under == 8 || under == 16 || under == 32 || under == 64 || under == 128)) {
            throw refuse(from, at - from, "\"" + text.substring(from, at) + "\" is not a fraction of an inch.",
                    "A fraction is of halves, quarters, eighths, down to 64ths. Anything else is written with a point.",
                    Optional.empty());
        }
        return under;
    }

    private Figure fraction(boolean minus, double value, int from) {
        double signed = minus ? -value : value;
        return new Figure(signed, Double.toString(signed), 3, true, from, at);
    }

    /** Where the unit that begins here ends: at the word or sign that joins a second figure, or at the end. */
    private int endOfUnit(boolean second) {
        if (!second) {
            return text.length();
        }
        for (int i = at; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '±' || c == '+') {
                return i;
            }
            if ((c == '-' || c == '–') && i + 1 < text.length() && joinsFigure(i + 1)) {
                return i;
            }
            if ((i == at || space(text.charAt(i - 1)))
                    && (wordAt("to", i) || wordAt("and", i) || wordAt("plus or minus", i))) {
                return i;
            }
        }
        return text.length();
    }

    private boolean joinsFigure(int i) {
        int look = i;
        while (look < text.length() && space(text.charAt(look))) {
            look++;
        }
        return look < text.length()
                && (digit(text.charAt(look)) || text.charAt(look) == '.' || text.charAt(look) == '-');
    }

    /** The unit between here and the end given, or the row's, or none where the value is a plain number. */
    private Unit unit(int end, Figure figure) throws Refused {
        int from = at;
        while (from < end && space(text.charAt(from))) {
            from++;
        }
        int to = end;
        while (to > from && space(text.charAt(to - 1))) {
            to--;
        }
        Unit unit;
        if (from == to) {
            unit = without(figure);
        } else {
            String word = text.substring(from, to);
            Optional<Unit> named = Units.named(word, dimension);
            if (named.isEmpty()) {
                throw unknown(word, from, figure);
            }
            unit = named.get();
        }
        fractionSuits(figure, unit);
        return unit;
    }

    private Unit without(Figure figure) throws Refused {
        if (row.isPresent()) {
            Unit unit = row.get();
            if (unit.dimension() == dimension) {
                return unit;
            }
            Optional<Unit> same = Units.named(unit.word(), dimension);
            if (same.isPresent()) {
                return same.get();
            }
            throw refuse(figure.from(), figure.to() - figure.from(), "Its row is in " + unit.word() + ", "
                    + article(unit.dimension()) + ".", Optional.empty());
        }
        Optional<Unit> number = Units.named("", dimension);
        if (number.isEmpty()) {
            throw refuse(figure.from(), figure.to() - figure.from(), "\""
                    + text.substring(figure.from(), figure.to()) + "\" has no unit.", Optional.empty());
        }
        return number.get();
    }

    private Refused unknown(String word, int from, Figure figure) {
        for (int i = 1; i < word.length(); i++) {
            if (digit(word.charAt(i)) && (space(word.charAt(i - 1)) || word.charAt(i - 1) == ',')) {
                return refuse(figure.from(), from + word.length() - figure.from(), "More than one figure stands here.",
                        Optional.empty());
            }
        }
        if (digit(word.charAt(0))) {
            return refuse(figure.from(), from + word.length() - figure.from(), "More than one figure stands here.",
                    Optional.empty());
        }
        int power = powerOfTen(from);
        if (power > from) {
            return refuse(figure.from(), power - figure.from(), "A figure is written out, without a power of ten.", Optional.empty());
        }
        if (dimension == Dimension.CRANK_ANGLE && Units.named(word, Dimension.ANGLE).isPresent()) {
            return refuse(from, word.length(), "\"" + word + "\" does not say of which shaft.",
                    "Write crank deg for degrees of the crankshaft, or cam deg for degrees of the camshaft.",
                    Optional.of("crank deg"));
        }
        Optional<Unit> other = Units.named(word);
        if (other.isPresent()) {
            return refuse(from, word.length(), "\"" + word + "\" is " + article(other.get().dimension())
                    + "; this is " + article(dimension) + ".", Optional.empty());
        }
        return refuse(from, word.length(), "\"" + word + "\" is not a unit of " + dimension.word() + ".",
                Units.nearest(word, dimension));
    }

    /** Where a power of ten that begins here ends, as in 1.5e-3; here itself where there is none. */
    private int powerOfTen(int from) {
        int end = from + 1;
        if (text.charAt(from) != 'e' && text.charAt(from) != 'E') {
            return from;
        }
        if (end < text.length() && (text.charAt(end) == '-' || text.charAt(end) == '+')) {
            end++;
        }
        int digits = end;
        while (end < text.length() && digit(text.charAt(end))) {
            end++;
        }
        return end > digits ? end : from;
    }

    private void fractionSuits(Figure figure, Unit unit) throws Refused {
        if (figure.fraction() && !unit.word().equals("in") && !unit.word().equals("ft") && !unit.word().equals("turns")
                && dimension != Dimension.COUNT) {
            throw refuse(figure.from(), figure.to() - figure.from(), "A fraction is read of inches alone.",
                    "Write the figure with a point.", Optional.empty());
        }
    }

    private void nothingMore() throws Refused {
        skipSpace();
        if (at < text.length()) {
            throw refuse(at, text.length() - at, "\"" + text.substring(at).strip() + "\" was not understood.",
                    Optional.empty());
        }
    }

    private double si(Figure figure, Unit unit) throws Refused {
        double si = scaled(figure.digits(), figure.plain(), unit);
        if (dimension == Dimension.TEMPERATURE && si < -1e-9) {
            throw refuse(figure.from(), figure.to() - figure.from(), "That is colder than absolute zero.",
                    Optional.empty());
        }
        return si;
    }

    /** Powers of ten are moved in the text, so that 0.06 mm and 60 µm are the same number to the last digit. */
    private static double scaled(String digits, double plain, Unit unit) {
        double factor = unit.factor();
        if (unit.offset() == 0) {
            if (factor == 1) {
                return plain;
            }
            for (int i = 0; i < TENS.length; i++) {
                if (TENS[i] == factor && digits.indexOf('E') < 0) {
                    return Double.parseDouble(digits.concat(TENS_WRITTEN[i]));
                }
            }
        }
        return unit.toSi(plain);
    }

    private Refused comma(int digits) {
        int end = at + 1;
        while (end < text.length() && digit(text.charAt(end))) {
            end++;
        }
        boolean decimal = end - at - 1 != 3;
        String meant = text.substring(0, at) + "." + text.substring(at + 1);
        return refuse(digits, end - digits, "A comma stands in the figure.",
                "Decimals are written with a point, and nothing stands between thousands.",
                decimal ? Optional.of(meant.strip()) : Optional.empty());
    }

    private Refused refuse(int offset, int length, String what, Optional<String> nearest) {
        StringBuilder expected = new StringBuilder();
        var words = Units.words(dimension);
        if (words.isEmpty()) {
            expected.append("A plain number is wanted.");
        } else {
            String name = article(dimension);
            expected.append(Character.toUpperCase(name.charAt(0))).append(name, 1, name.length())
                    .append(" is written with its unit: ").append(String.join(", ", words)).append('.');
        }
        return refuse(offset, length, what, expected.toString(), nearest);
    }

    private static Refused refuse(int offset, int length, String what, String expected, Optional<String> nearest) {
        return new Refused(new Unread(offset, length, what, expected, nearest));
    }

    private static String article(Dimension dimension) {
        return switch (dimension) {
            case AREA, ANGLE, ACCELERATION, INDUCTANCE, UNBALANCE -> "an " + dimension.word();
            case STIFFNESS, HARDNESS, VISCOSITY, MASS_PER_VOLUME -> dimension.word();
            default -> "a " + dimension.word();
        };
    }

    /** Whether the whole rest is this phrase. */
    private boolean says(String phrase) {
        int end = text.length();
        while (end > at && space(text.charAt(end - 1))) {
            end--;
        }
        return end - at == phrase.length() && text.regionMatches(true, at, phrase, 0, phrase.length());
    }

    /** Takes this phrase if it stands here. */
    private boolean take(String phrase) {
        if (!wordAt(phrase, at)) {
            return false;
        }
        at += phrase.length();
        skipSpace();
        return true;
    }

    private boolean wordAt(String phrase, int from) {
        if (!text.regionMatches(true, from, phrase, 0, phrase.length())) {
            return false;
        }
        int end = from + phrase.length();
        return !Character.isLetter(phrase.charAt(phrase.length() - 1)) || end == text.length()
                || !Character.isLetter(text.charAt(end));
    }

    private boolean nextIsDigit(int i) {
        return i + 1 < text.length() && digit(text.charAt(i + 1));
    }

    private void skipSpace() {
        while (at < text.length() && space(text.charAt(at))) {
            at++;
        }
    }

    private static boolean space(char c) {
        return c == ' ' || c == '\t' || c == '\u00a0' || c == '\u202f' || c == '\u2009';
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }
}
