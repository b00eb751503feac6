package leadlamp.report.draw;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes one drawing. Text is escaped here and nowhere else; figures are the same on every machine. */
final class Svg {
    private final StringBuilder out = new StringBuilder(2048);

    Svg(Picture picture, int width, double height) {
        out.append("<svg class=\"picture\" role=\"img\" viewBox=\"0 0 ").append(width).append(' ').append(figure(height))
                .append("\" width=\"").append(width).append("\" height=\"").append(figure(height)).append("\"><title>");
        escape(picture.title() + ": " + picture.text());
        out.append("</title>");
    }

    Svg line(String css, double x1, double y1, double x2, double y2) {
        out.append("<line class=\"").append(css).append('"');
        return at("x1", x1).at("y1", y1).at("x2", x2).at("y2", y2).end();
    }

    Svg box(String css, double x, double y, double width, double height) {
        out.append("<rect class=\"").append(css).append('"');
        return at("x", x).at("y", y).at("width", Math.max(0, width)).at("height", Math.max(0, height)).end();
    }

    Svg circle(String css, double x, double y, double radius) {
        out.append("<circle class=\"").append(css).append('"');
        return at("cx", x).at("cy", y).at("r", radius).end();
    }

    /** A closed outline through pairs of x and y. */
    Svg shape(String css, double... points) {
        out.append("<polygon class=\"").append(css).append("\" points=\"");
        for (int i = 0; i < points.length; i++) {
            out.append(i == 0 ? "" : i % 2 == 0 ? " " : ",").append(figure(points[i]));
        }
        out.append("\"/>");
        return this;
    }

    /** Text that starts (`start`), stands over (`middle`) or ends (`end`) at x. */
    Svg text(String css, String anchor, double x, double y, String text) {
        out.append("<text class=\"").append(css).append("\" text-anchor=\"").append(anchor).append('"');
        at("x", x).at("y", y);
        out.append('>');
        escape(text);
        out.append("</text>");
        return this;
    }

    String close() {
        return out.append("</svg>").toString();
    }

    private Svg at(String name, double value) {
        out.append(' ').append(name).append("=\"").append(figure(value)).append('"');
        return this;
    }

    private Svg end() {
        out.append("/>");
        return this;
    }

    private void escape(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                case '"' -> out.append("&quot;");
                default -> out.append(c);
            }
        }
    }

    /** To a tenth of a unit: finer is not seen. */
    static String figure(double value) {
        return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }
}
