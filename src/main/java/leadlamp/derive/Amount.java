package leadlamp.derive;

import java.util.Optional;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.quantity.Written;

/**
 * A doubt as the vocabulary or a builder writes it: {@code 0.006 mm}, {@code 4 %} (of the reading), {@code 6 % up to 10 N·m, 4 %
 * above}, {@code 3 points} (of per cent), {@code half of the last figure}, {@code as written}.
 *
 * @param form      how it is meant
 * @param amount    SI, or a share of the reading
 * @param dimension what an absolute one is of; a plain number serves any
 * @param small     the amount of a small reading, one of no more than {@code upTo}
 * @param upTo      SI; below nought where all readings have the one amount
 */
record Amount(Form form, double amount, Dimension dimension, double small, double upTo) {
    enum Form {
        ABSOLUTE, OF_READING, HALF_LAST_FIGURE, AS_WRITTEN
    }

    private static final String UP_TO = " up to ";
    private static final String ABOVE = " above";
    private static final Amount HALF_LAST = new Amount(Form.HALF_LAST_FIGURE, 0, Dimension.NUMBER);
    private static final Amount WRITTEN = new Amount(Form.AS_WRITTEN, 0, Dimension.NUMBER);

    Amount(Form form, double amount, Dimension dimension) {
        this(form, amount, dimension, amount, -1);
    }

    /** Reads the text for a reading of this dimension; empty where it cannot be a doubt of that. */
    static Optional<Amount> read(String text, Dimension of) {
        String words = text.strip();
        int upTo = words.indexOf(UP_TO);
        return upTo < 0 ? one(words, of) : two(words.substring(0, upTo), words.substring(upTo + UP_TO.length()), of);
    }

    /** {@code 6 % up to 10 N·m, 4 % above}: one amount for small readings and another for the rest. */
    private static Optional<Amount> two(String small, String rest, Dimension of) {
        int comma = rest.indexOf(", ");
        if (comma < 0 || !rest.endsWith(ABOVE)) {
            return Optional.empty();
        }
        Optional<Amount> below = one(small, of);
        Optional<Amount> edge = one(rest.substring(0, comma), of);
        Optional<Amount> above = one(rest.substring(comma + 2, rest.length() - ABOVE.length()), of);
        if (below.isEmpty() || edge.isEmpty() || above.isEmpty() || below.get().form() != above.get().form()
                || edge.get().form() != Form.ABSOLUTE || edge.get().dimension() != of) {
            return Optional.empty();
        }
        return Optional.of(new Amount(above.get().form(), above.get().amount(), above.get().dimension(), below.get().amount(),
                edge.get().amount()));
    }

    private static Optional<Amount> one(String words, Dimension of) {
        if (words.equals("half of the last figure")) {
            return Optional.of(HALF_LAST);
        }
        if (words.equals("as written")) {
            return Optional.of(WRITTEN);
        }
        if (words.startsWith("±")) {
            words = words.substring(1).strip();
        }
        int end = 0;
        while (end < words.length() && (Character.isDigit(words.charAt(end)) || words.charAt(end) == '.')) {
            end++;
        }
        if (end == 0) {
            return Optional.empty();
        }
        double number;
        try {
            number = Double.parseDouble(words.substring(0, end));
        } catch (NumberFormatException none) {
            return Optional.empty();
        }
        String unit = words.substring(end).strip();
        if (unit.isEmpty()) {
            return Optional.of(new Amount(Form.ABSOLUTE, number, Dimension.NUMBER));
        }
        if (unit.equals("%")) {
            return Optional.of(new Amount(Form.OF_READING, number / 100, of));
        }
        if (unit.equals("points") || unit.equals("point")) {
            return Optional.of(new Amount(Form.ABSOLUTE, number / 100, of));
        }
        if (of == Dimension.COUNT || of == Dimension.NUMBER) {
            return Optional.of(new Amount(Form.ABSOLUTE, number, of));
        }
        Optional<Unit> known = Units.named(unit, of);
        if (known.isEmpty()) {
            known = Units.named(unit);
        }
        return known.map(u -> new Amount(Form.ABSOLUTE, number * u.factor(), sense(u.dimension(), of)));
    }

    /** A doubt that the reader has read already, as on a gauge's line. */
    static Amount of(Written written, Dimension of) {
        double amount = Math.abs(written.high() - written.unit().offset());
        if (written.unit().dimension() == Dimension.SHARE) {
            return new Amount(Form.OF_READING, amount, of);
        }
        return new Amount(Form.ABSOLUTE, amount, sense(written.unit().dimension(), of));
    }

    /** A doubt in degrees serves a temperature and a difference of two alike, and plain degrees serve the crankshaft's. */
    private static Dimension sense(Dimension written, Dimension of) {
        boolean heat = written == Dimension.TEMPERATURE || written == Dimension.TEMPERATURE_DIFFERENCE;
        boolean heatWanted = of == Dimension.TEMPERATURE || of == Dimension.TEMPERATURE_DIFFERENCE;
        boolean turn = written == Dimension.ANGLE || written == Dimension.CRANK_ANGLE;
        boolean turnWanted = of == Dimension.ANGLE || of == Dimension.CRANK_ANGLE;
        return heat && heatWanted || turn && turnWanted ? of : written;
    }

    /** Whether a reading of this dimension can have it. */
    boolean suits(Dimension of) {
        return form != Form.ABSOLUTE || dimension == of || dimension == Dimension.NUMBER
                && (of == Dimension.NUMBER || of == Dimension.COUNT);
    }

    /** Expanded doubt of a reading, SI; what rests on the last figure alone is worked out by the caller. */
    double expanded(double reading) {
        double share = Math.abs(reading) <= upTo ? small : amount;
        return form == Form.OF_READING ? Math.abs(reading) * share : share;
    }
}
