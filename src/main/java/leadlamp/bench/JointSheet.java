package leadlamp.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.calc.Wrenches;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.Gauge;
import leadlamp.record.Node;
import leadlamp.report.Page;
import leadlamp.report.draw.BoltPlan;

/** The tightening sheet of one joint. */
final class JointSheet {
    /** More bolts than this are ticked as one. */
    private static final int MOST_ROWS = 30;
    /** Lengths of an extension worth printing, in hundredths of the wrench. */
    private static final int[] EXTENSIONS = {10, 20, 30};

    private final Build build;
    private final String joint;

    JointSheet(Build build, String joint) {
        this.build = build;
        this.joint = joint;
    }

    void write(Page page) {
        page.raw("<section class=\"card\">\n").element("<h2>", joint, "</h2>");
        page.raw("<dl>\n");
        for (String what : List.of("bolts", "thread", "class", "into", "holes", "washer", "uses", "each")) {
            scalar(what).ifPresent(says -> entry(page, what, says));
        }
        entry(page, "thread state", below("threads").map(JointSheet::said).orElse("the sheet does not say"));
        entry(page, "before the bolt goes in", preparation());
        below("lengths").ifPresent(lengths -> entry(page, "lengths by hole", said(lengths)));
        entry(page, "wrench that suits", wrenches());
        page.raw("</dl>\n");
        plan().ifPresent(page::picture);
        table(page);
        extension(page);
        page.raw("</section>\n");
    }

    /** What is done to hole and thread, from what the sheet says of both; common practice, no source. */
    private String preparation() {
        List<String> said = new ArrayList<>();
        boolean blind = scalar("holes").filter("blind"::equals).isPresent();
        said.add(blind ? "hole dry and empty to its bottom: a lamp, a rod, air" : "thread of hole and bolt clean");
        if (scalar("uses").filter("1"::equals).isPresent()) {
            said.add("new bolts: the sheet uses them once");
        }
        return String.join("; ", said);
    }

    /** What to set where an extension stands in line with the wrench. At a right angle the torque is set as it stands. */
    private void extension(Page page) {
        List<Written> torques = new ArrayList<>();
        for (String stage : stages()) {
            if (Reading.read(stage, Dimension.TORQUE, Optional.empty()) instanceof Reading.Read read && read.written().figure()) {
                torques.add(read.written());
            }
        }
        if (torques.isEmpty()) {
            return;
        }
        page.raw("<table class=\"small\">\n<caption>Set on the wrench with an extension in line, by the extension's length as a share of the"
                + " wrench's, grip to square</caption>\n<thead><tr><th scope=\"col\">Torque</th>");
        for (int percent : EXTENSIONS) {
            page.raw("<th scope=\"col\">" + percent + " %</th>");
        }
        page.raw("<th scope=\"col\">yours</th></tr></thead>\n<tbody>\n");
        for (Written torque : torques) {
            page.raw("<tr><th scope=\"row\">").text(torque.text()).raw("</th>");
            for (int percent : EXTENSIONS) {
                page.raw("<td>").text(setting(torque, percent / 100.0)).raw("</td>");
            }
            page.raw("<td class=\"write\"></td></tr>\n");
        }
        page.raw("</tbody>\n</table>\n<p class=\"soft\">set = torque × wrench ÷ (wrench + extension)</p>\n");
    }

    private static String setting(Written torque, double share) {
        double set = torque.unit().fromSi(Wrenches.settingFor(torque.low(), 1, share));
        return BigDecimal.valueOf(set).setScale(Math.max(1, torque.figures()), RoundingMode.HALF_UP).toPlainString() + " "
                + torque.unit().word();
    }

    private static void entry(Page page, String word, String says) {
        page.element("<dt>", word, "</dt>").element("<dd>", says, "</dd>");
    }

    private void table(Page page) {
        List<String> stages = stages();
        page.raw("<table>\n<thead><tr><th scope=\"col\">Bolt</th>");
        for (String stage : stages.isEmpty() ? List.of("torque: the sheet gives none") : stages) {
            page.raw("<th scope=\"col\">").text(stage).raw("</th>");
        }
        page.raw("<th scope=\"col\">Marked</th></tr></thead>\n<tbody>\n");
        for (String bolt : bolts()) {
            page.raw("<tr><th scope=\"row\">").text(bolt).raw("</th>");
            for (int i = 0; i <= Math.max(1, stages.size()); i++) {
                page.raw("<td class=\"tick\"></td>");
            }
            page.raw("</tr>\n");
        }
        page.raw("</tbody>\n</table>\n");
    }

    /** In the order of the sequence; else by number; else all as one. */
    private List<String> bolts() {
        List<String> sequence = sequence();
        if (!sequence.isEmpty()) {
            List<String> rows = new ArrayList<>();
            for (int i = 0; i < sequence.size(); i++) {
                rows.add((i + 1) + ". bolt " + sequence.get(i));
            }
            return rows;
        }
        int count = count(scalar("bolts").orElse(""));
        if (count == 0 || count > MOST_ROWS) {
            return List.of(count == 0 ? "all" : "all " + count);
        }
        List<String> rows = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            rows.add("bolt " + i);
        }
        return rows;
    }

    private static int count(String text) {
        int count = 0;
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9' || i > 3) {
                return 0;
            }
            count = count * 10 + text.charAt(i) - '0';
        }
        return count;
    }

    private List<String> sequence() {
        return below("sequence").filter(Node.Items.class::isInstance).map(JointSheet::scalars).orElse(List.of());
    }

    private List<String> stages() {
        Optional<Node> stages = below("stages");
        return (stages.isPresent() ? stages : below("torque")).map(JointSheet::scalars).orElse(List.of());
    }

    // --- the wrench

    private String wrenches() {
        List<String> suits = new ArrayList<>();
        for (Gauge gauge : new TreeMap<>(build.gauges()).values()) {
            boolean wrench = gauge.kinds().stream().anyMatch(kind -> kind.endsWith("wrench"));
            if (wrench && gauge.range().isPresent() && covers(gauge.range().get())) {
                suits.add(gauge.name() + " (" + gauge.range().get().text() + ")");
            }
        }
        return suits.isEmpty() ? "none of the record's wrenches has a range that takes in every stage"
                : String.join(", ", suits);
    }

    private boolean covers(Written range) {
        boolean any = false;
        for (String stage : stages()) {
            if (Reading.read(stage, Dimension.TORQUE, Optional.empty()) instanceof Reading.Read read
                    && read.written().figure()) {
                any = true;
                if (read.written().low() < range.low() || read.written().high() > range.high()) {
                    return false;
                }
            }
        }
        return any;
    }

    // --- the drawing

    private Optional<BoltPlan> plan() {
        Optional<Node> positions = below("positions");
        if (positions.isEmpty() || !(positions.get() instanceof Node.Fields fields)) {
            return Optional.empty();
        }
        List<String> sequence = sequence();
        List<BoltPlan.Hole> holes = new ArrayList<>();
        Map<Integer, String> turns = new TreeMap<>();
        for (Node.Field field : fields.fields()) {
            List<String> at = scalars(field.value());
            if (at.size() == 2) {
                try {
                    int turn = sequence.indexOf(field.key()) + 1;
                    holes.add(new BoltPlan.Hole(field.key(), Double.parseDouble(at.get(0)),
                            Double.parseDouble(at.get(1)), turn));
                    turns.put(turn, field.key());
                } catch (NumberFormatException noFigure) {
                    return Optional.empty();
                }
            }
        }
        List<String> said = new ArrayList<>();
        turns.forEach((turn, bolt) -> said.add(turn == 0 ? "bolt " + bolt + " has no turn" : turn + " is bolt " + bolt));
        return holes.isEmpty() ? Optional.empty()
                : Optional.of(new BoltPlan("Order of " + joint, String.join(", ", said) + ".", List.copyOf(holes)));
    }

    // --- the sheet's tree

    private Optional<Node> below(String key) {
        return build.sheet().below("joints", joint, key);
    }

    private Optional<String> scalar(String key) {
        return below(key).filter(Node.Scalar.class::isInstance).map(node -> ((Node.Scalar) node).text());
    }

    private static List<String> scalars(Node node) {
        List<String> texts = new ArrayList<>();
        if (node instanceof Node.Scalar scalar) {
            texts.add(scalar.text());
        } else if (node instanceof Node.Items items) {
            items.items().forEach(item -> texts.addAll(scalars(item)));
        }
        return texts;
    }

    private static String said(Node node) {
        if (node instanceof Node.Fields fields) {
            List<String> parts = new ArrayList<>();
            fields.fields().forEach(field -> parts.add(field.key() + ": " + said(field.value())));
            return String.join(", ", parts);
        }
        return String.join(", ", scalars(node));
    }
}
