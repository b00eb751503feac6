package leadlamp.report.draw;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One value with its doubt against its limits, or all places of one quantity side by side. Narrow enough for a phone.
 *
 * @param title     the quantity
 * @param text      the same in words
 * @param marks     a line a place
 * @param least     least allowed, in the unit of the values
 * @param most      most allowed, in the same
 * @param leastText the least as text, with its unit
 * @param mostText  the most as text, with its unit
 */
public record Window(String title, String text, List<Mark> marks, OptionalDouble least, OptionalDouble most,
        String leastText, String mostText) implements Picture {

    /** How a value stands against its limit; each has its own shape as well as its own word. */
    public enum Standing {
        WITHIN("within"), OUTSIDE("outside"), UNDECIDED("undecided");

        private final String word;

        Standing(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * One value.
     *
     * @param place    where
     * @param low      low end, in the unit of the drawing; the same as high for a plain value
     * @param high     high end
     * @param doubt    expanded doubt at each end
     * @param text     as text, with unit and doubt
     * @param standing against the limit
     * @param note     a second line; empty where there is none
     */
    public record Mark(String place, double low, double high, double doubt, String text, Standing standing, String note) {
        public Mark(String place, double low, double high, double doubt, String text, Standing standing) {
            this(place, low, high, doubt, text, standing, "");
        }

        private double row() {
            return note.isEmpty() ? ROW : ROW + LINE;
        }
    }

    private static final int WIDTH = 340;
    private static final double LEFT = 8;
    private static final double RIGHT = WIDTH - LEFT;
    private static final double TOP = 38;
    private static final double ROW = 38;
    private static final double LINE = 15;
    private static final double LANE = 20;

    @Override
    public String svg() {
        double bottom = TOP + 4;
        for (Mark mark : marks) {
            bottom += mark.row();
        }
        Svg svg = new Svg(this, WIDTH, bottom + 8);
        Scale scale = scale();
        double from = least.isPresent() ? scale.x(least.getAsDouble()) : LEFT;
        double to = most.isPresent() ? scale.x(most.getAsDouble()) : RIGHT;
        svg.box("outside", LEFT, TOP, RIGHT - LEFT, bottom - TOP);
        svg.box("inside", from, TOP, to - from, bottom - TOP);
        // Each on a line of its own, so that they never meet, and leaning inwards, so that they never leave the drawing.
        if (least.isPresent()) {
            limit(svg, from, TOP - 24, "least " + leastText);
        }
        if (most.isPresent()) {
            limit(svg, to, TOP - 9, "most " + mostText);
        }
        double y = TOP;
        for (Mark mark : marks) {
            svg.text("label", "start", LEFT + 4, y + 15,
                    mark.place + ": " + mark.text + ", " + mark.standing.word);
            if (!mark.note.isEmpty()) {
                svg.text("label", "start", LEFT + 4, y + 15 + LINE, mark.note);
            }
            y += mark.row();
            // The limits cross the lane of the mark and never its words.
            if (least.isPresent()) {
                svg.line("limit", from, y - LANE, from, y);
            }
            if (most.isPresent()) {
                svg.line("limit", to, y - LANE, to, y);
            }
            mark(svg, mark, scale, y - 11);
        }
        return svg.close();
    }

    private static void limit(Svg svg, double x, double y, String text) {
        boolean left = x < WIDTH / 2.0;
        svg.line("limit", x, y - 10, x, TOP);
        svg.text("label", left ? "start" : "end", left ? x + 5 : x - 5, y, text);
    }

    private static void mark(Svg svg, Mark mark, Scale scale, double y) {
        double low = scale.x(mark.low);
        double high = scale.x(mark.high);
        double first = scale.x(mark.low - mark.doubt);
        double last = scale.x(mark.high + mark.doubt);
        svg.line("doubt", first, y, last, y);
        if (mark.doubt > 0) {
            svg.line("doubt", first, y - 4, first, y + 4);
            svg.line("doubt", last, y - 4, last, y + 4);
        }
        if (high > low) {
            svg.line("spread", low, y, high, y);
        }
        double x = (low + high) / 2;
        switch (mark.standing) {
            case WITHIN -> svg.circle("within", x, y, 4.5);
            case OUTSIDE -> svg.shape("bad", x - 6, y + 5, x + 6, y + 5, x, y - 6);
            case UNDECIDED -> svg.shape("open", x - 6, y, x, y - 6, x + 6, y, x, y + 6);
        }
    }

    private Scale scale() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Mark mark : marks) {
            low = Math.min(low, mark.low - mark.doubt);
            high = Math.max(high, mark.high + mark.doubt);
        }
        if (least.isPresent()) {
            low = Math.min(low, least.getAsDouble());
            high = Math.max(high, least.getAsDouble());
        }
        if (most.isPresent()) {
            low = Math.min(low, most.getAsDouble());
            high = Math.max(high, most.getAsDouble());
        }
        double room = high > low ? (high - low) * 0.15 : Math.max(Math.abs(high), 1) * 0.1;
        return new Scale(low - room, high + room);
    }

    private record Scale(double low, double high) {
        double x(double value) {
            return LEFT + (RIGHT - LEFT) * (value - low) / (high - low);
        }
    }
}
