package leadlamp.report.draw;

import java.util.List;
import java.util.Locale;

/**
 * The findings in the risk matrix, each by its number.
 *
 * @param severities  the columns, worst first
 * @param likelihoods the rows, likeliest first
 * @param cells       level of each cell, row by row
 * @param marks       the findings
 */
public record RiskMatrix(String title, String text, List<String> severities, List<String> likelihoods,
        List<List<String>> cells, List<Mark> marks) implements Picture {

    /** One finding: its number, and its row and column counted from 0. */
    public record Mark(int number, int row, int column) {
    }

    private static final int WIDTH = 340;
    private static final double LEFT = 74;
    private static final double TOP = 28;
    private static final double ROW = 40;
    private static final int MOST = 4;

    @Override
    public String svg() {
        Svg svg = new Svg(this, WIDTH, TOP + ROW * likelihoods.size() + 4);
        double column = (WIDTH - LEFT - 4) / severities.size();
        for (int c = 0; c < severities.size(); c++) {
            svg.text("label", "middle", LEFT + column * (c + 0.5), TOP - 10, severities.get(c));
        }
        for (int r = 0; r < likelihoods.size(); r++) {
            svg.text("label", "end", LEFT - 6, TOP + ROW * (r + 0.5) + 4, likelihoods.get(r));
            for (int c = 0; c < severities.size(); c++) {
                double x = LEFT + column * c;
                double y = TOP + ROW * r;
                String level = cells.get(r).get(c);
                svg.box("cell " + level.toLowerCase(Locale.ROOT), x, y, column, ROW);
                svg.text("level", "start", x + 5, y + 14, level);
                svg.text("numbers", "start", x + 5, y + 32, numbers(r, c));
            }
        }
        return svg.close();
    }

    private String numbers(int row, int column) {
        StringBuilder text = new StringBuilder();
        int count = 0;
        for (Mark mark : marks) {
            if (mark.row == row && mark.column == column) {
                count++;
                if (count <= MOST) {
                    text.append(count == 1 ? "" : " ").append(mark.number);
                }
            }
        }
        return count > MOST ? text.append(" +").append(count - MOST).toString() : text.toString();
    }
}
