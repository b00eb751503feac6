package leadlamp.report.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jgrapht.alg.drawing.BarycenterGreedyTwoLayeredBipartiteLayout2D;
import org.jgrapht.alg.drawing.model.Box2D;
import org.jgrapht.alg.drawing.model.MapLayoutModel2D;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;

/**
 * Signs, events and what follows, in three columns. The events keep their order; signs and damage stand as near to the
 * events that they belong to as the others leave room, so that few lines cross.
 *
 * @param left    first column
 * @param middle  second column, in its order
 * @param right   third column
 * @param in      lines from the first column to the second
 * @param between arrows inside the second column, downwards
 * @param out     lines from the second column to the third
 */
public record Graph(String title, String text, List<String> left, List<String> middle, List<String> right, List<Edge> in,
        List<Edge> between, List<Edge> out) implements Picture {

    /** How a line is drawn; told apart by its stroke, never by colour. */
    public enum Line {
        STRONG("strongly"), WEAK("weakly"), AGAINST("against");

        private final String css;

        Line(String css) {
            this.css = css;
        }
    }

    /** A line from one box to another, by their numbers. */
    public record Edge(int from, int to, Line line) {
    }

    private static final int WIDTH = 720;
    private static final double BOX = 196;
    private static final double[] COLUMNS = {2, 262, 522};
    private static final double ROW = 15;
    private static final double GAP = 12;
    private static final double PAD = 8;
    private static final int LETTERS = 29;
    private static final double LANE = 9;

    /** A box with its text taken apart, and where its top stands. */
    private static final class Box {
        private final List<String> rows;
        private final double height;
        private double top;

        Box(String text) {
            this.rows = rows(text);
            this.height = rows.size() * ROW + PAD;
        }

        double middle() {
            return top + height / 2;
        }
    }

    @Override
    public String svg() {
        List<Box> events = boxes(middle);
        List<Box> signs = boxes(left);
        List<Box> damage = boxes(right);
        double tallest = Math.max(tall(events), Math.max(tall(signs), tall(damage)));
        double room = events.isEmpty() ? 0 : (tallest - tall(events)) / events.size();
        double y = 2;
        for (Box event : events) {
            event.top = y + room / 2;
            y += event.height + GAP + room;
        }
        List<Edge> back = new ArrayList<>();
        out.forEach(e -> back.add(new Edge(e.to, e.from, e.line)));
        double height = Math.max(tallest, Math.max(beside(signs, in, events), beside(damage, back, events))) + 4;
        Svg svg = new Svg(this, WIDTH, height);
        for (Edge edge : in) {
            svg.line(edge.line.css, COLUMNS[0] + BOX, signs.get(edge.from).middle(), COLUMNS[1], events.get(edge.to).middle());
        }
        for (Edge edge : out) {
            svg.line(edge.line.css, COLUMNS[1] + BOX, events.get(edge.from).middle(), COLUMNS[2], damage.get(edge.to).middle());
        }
        arrows(svg, events);
        draw(svg, "cell", 0, signs);
        draw(svg, "cell high", 1, events);
        draw(svg, "cell", 2, damage);
        return svg.close();
    }

    /** Each arrow runs in a lane of its own right of the events. */
    private void arrows(Svg svg, List<Box> events) {
        double lane = LANE;
        for (Edge edge : between) {
            double x = COLUMNS[1] + BOX;
            double from = events.get(edge.from).middle() + PAD / 2;
            double to = events.get(edge.to).middle() - PAD / 2;
            svg.line("strongly", x, from, x + lane, from);
            svg.line("strongly", x + lane, from, x + lane, to);
            svg.line("strongly", x + lane, to, x, to);
            svg.shape("within", x, to, x + PAD, to - PAD / 2, x + PAD, to + PAD / 2);
            lane = lane + LANE > COLUMNS[2] - COLUMNS[1] - BOX - LANE ? LANE : lane + LANE;
        }
    }

    private static void draw(Svg svg, String css, int column, List<Box> boxes) {
        for (Box box : boxes) {
            svg.box(css, COLUMNS[column], box.top, BOX, box.height);
            double y = box.top + ROW;
            for (String row : box.rows) {
                svg.text("label", "start", COLUMNS[column] + PAD, y, row);
                y += ROW;
            }
        }
    }

    private static List<Box> boxes(List<String> texts) {
        List<Box> boxes = new ArrayList<>();
        texts.forEach(t -> boxes.add(new Box(t)));
        return boxes;
    }

    private static double tall(List<Box> boxes) {
        double tall = 0;
        for (Box box : boxes) {
            tall += box.height + GAP;
        }
        return tall;
    }

    /**
     * The order in which boxes stand beside their events so that few lines cross: by the mean of those events, by the layout of two
     * layers of which one keeps its order.
     */
    private static List<Integer> order(int boxes, List<Edge> edges, int events) {
        SimpleGraph<Integer, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
        Set<Integer> fixed = new LinkedHashSet<>();
        for (int event = 0; event < events; event++) {
            graph.addVertex(boxes + event);
            fixed.add(boxes + event);
        }
        List<Integer> order = new ArrayList<>();
        for (int box = 0; box < boxes; box++) {
            graph.addVertex(box);
            order.add(box);
        }
        for (Edge edge : edges) {
            graph.addEdge(edge.from, boxes + edge.to);
        }
        if (events > 0 && boxes > 0) {
            MapLayoutModel2D<Integer> layout = new MapLayoutModel2D<>(new Box2D(1, 1));
            new BarycenterGreedyTwoLayeredBipartiteLayout2D<Integer, DefaultEdge>(fixed, Comparator.naturalOrder(), true)
                    .layout(graph, layout);
            order.sort(Comparator.comparingDouble((Integer box) -> layout.get(box).getY()).thenComparing(box -> box));
        }
        return order;
    }

    /** Stands the boxes beside the mean of the events that they belong to, none over another; gives the lowest end. */
    private static double beside(List<Box> boxes, List<Edge> edges, List<Box> events) {
        double[] wanted = new double[boxes.size()];
        double all = 0;
        for (int i = 0; i < boxes.size(); i++) {
            double sum = 0;
            int count = 0;
            for (Edge edge : edges) {
                if (edge.from == i) {
                    sum += events.get(edge.to).middle();
                    count++;
                }
            }
            wanted[i] = count == 0 ? 0 : sum / count;
            all += boxes.get(i).height + GAP;
        }
        List<Integer> order = order(boxes.size(), edges, events.size());
        double bottom = 2;
        for (int i : order) {
            Box box = boxes.get(i);
            box.top = Math.max(bottom, wanted[i] - box.height / 2);
            bottom = box.top + box.height + GAP;
        }
        // What was pushed down past the end of the events goes up again as far as there is room above.
        double end = Math.max(all, events.isEmpty() ? 0 : events.get(events.size() - 1).top + events.get(events.size() - 1).height + GAP);
        double floor = Math.min(bottom, Math.max(end, all));
        for (int k = order.size() - 1; k >= 0; k--) {
            Box box = boxes.get(order.get(k));
            box.top = Math.max(2, Math.min(box.top, floor - GAP - box.height));
            floor = box.top;
        }
        double lowest = 2;
        for (int i : order) {
            Box box = boxes.get(i);
            box.top = Math.max(box.top, lowest);
            lowest = box.top + box.height + GAP;
        }
        return lowest;
    }

    private static List<String> rows(String text) {
        List<String> rows = new ArrayList<>();
        StringBuilder row = new StringBuilder();
        for (String word : text.split(" ")) {
            if (row.length() > 0 && row.length() + 1 + word.length() > LETTERS) {
                rows.add(row.toString());
                row.setLength(0);
            }
            row.append(row.length() == 0 ? "" : " ").append(word);
        }
        rows.add(row.toString());
        return rows;
    }
}
