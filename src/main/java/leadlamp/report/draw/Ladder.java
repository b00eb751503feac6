package leadlamp.report.draw;

import java.util.List;

/**
 * The steps of the work with what each is the last chance for.
 *
 * @param rungs first step at the top
 */
public record Ladder(String title, String text, List<Rung> rungs) implements Picture {

    /** Where a step stands; each has its own shape. */
    public enum Standing {
        BEHIND, NEXT, AHEAD
    }

    /**
     * One step.
     *
     * @param step     its name, or how many are left out of the drawing
     * @param standing where it stands
     * @param note     what it is the last chance for; may be empty
     */
    public record Rung(String step, Standing standing, String note) {
    }

    private static final int WIDTH = 340;
    private static final double RAIL = 16;
    private static final double ROW = 24;
    private static final double NOTE = 15;

    @Override
    public String svg() {
        double height = 0;
        double last = 0;
        for (Rung rung : rungs) {
            last = height;
            height += rung.note.isEmpty() ? ROW : ROW + NOTE;
        }
        Svg svg = new Svg(this, WIDTH, height + 4);
        svg.line("rail", RAIL, ROW / 2, RAIL, last + ROW / 2);
        double y = ROW / 2;
        for (Rung rung : rungs) {
            boolean next = rung.standing == Standing.NEXT;
            switch (rung.standing) {
                case BEHIND -> svg.circle("within", RAIL, y, 5);
                case NEXT -> svg.shape("next", RAIL - 7, y - 8, RAIL + 11, y, RAIL - 7, y + 8);
                case AHEAD -> svg.circle("ahead", RAIL, y, 5);
            }
            svg.text(next ? "label strong" : "label", "start", RAIL + 18, y + 4,
                    next ? rung.step + " (next)" : rung.step);
            if (!rung.note.isEmpty()) {
                svg.text("label", "start", RAIL + 18, y + 4 + NOTE, rung.note);
            }
            y += rung.note.isEmpty() ? ROW : ROW + NOTE;
        }
        return svg.close();
    }
}
