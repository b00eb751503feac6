package leadlamp.report.draw;

import java.util.List;

/**
 * The bolts of a joint on their positions, each with its turn in the order of tightening.
 *
 * @param holes x to the right and y upwards, in whatever unit they share
 */
public record BoltPlan(String title, String text, List<Hole> holes) implements Picture {

    /**
     * One bolt.
     *
     * @param name its number on the sheet
     * @param turn its turn, from 1; 0 where the sheet gives no order
     */
    public record Hole(String name, double x, double y, int turn) {
    }

    private static final int WIDTH = 340;
    private static final double MARGIN = 30;
    private static final double RADIUS = 13;
    private static final double FLATTEST = 90;
    private static final double TALLEST = 300;

    @Override
    public String svg() {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Hole hole : holes) {
            left = Math.min(left, hole.x);
            right = Math.max(right, hole.x);
            low = Math.min(low, hole.y);
            high = Math.max(high, hole.y);
        }
        double wide = Math.max(right - left, 1e-9);
        double tall = Math.max(high - low, 1e-9);
        double scale = Math.min((WIDTH - 2 * MARGIN) / wide, TALLEST / tall);
        double height = Math.max(FLATTEST, tall * scale + 2 * MARGIN + RADIUS);
        Svg svg = new Svg(this, WIDTH, height);
        svg.box("cell", 2, 2, WIDTH - 4, height - 4);
        for (Hole hole : holes) {
            double x = MARGIN + (hole.x - left) * scale;
            double y = height - MARGIN - RADIUS - (hole.y - low) * scale;
            svg.circle("ahead", x, y, RADIUS);
            svg.text("numbers", "middle", x, y + 5, hole.turn == 0 ? "" : Integer.toString(hole.turn));
            svg.text("label", "middle", x, y + RADIUS + 13, "bolt " + hole.name);
        }
        return svg.close();
    }
}
