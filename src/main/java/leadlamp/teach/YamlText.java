package leadlamp.teach;

import java.util.ArrayList;
import java.util.List;
import leadlamp.record.Node;

/** Writes a tree as a person would write it in a record: a line an entry. */
final class YamlText {
    private static final String FLOW = ",[]{}";
    private static final String FIRST = "&*!|>'\"%@`-?:#";

    private YamlText() {
    }

    /** Sections of a record or sheet, as lines. */
    static List<String> lines(Node.Fields sections) {
        List<String> lines = new ArrayList<>();
        for (Node.Field section : sections.fields()) {
            if (section.value() instanceof Node.Items items && !items.items().isEmpty()
                    && items.items().stream().allMatch(Node.Fields.class::isInstance)) {
                lines.add(word(section.key()) + ":");
                items.items().forEach(item -> lines.add("  - " + flow(item)));
            } else if (section.value() instanceof Node.Fields fields && !fields.fields().isEmpty()) {
                lines.add(word(section.key()) + ":");
                fields.fields().forEach(f -> lines.add("  " + word(f.key()) + ": " + flow(f.value())));
            } else {
                lines.add(word(section.key()) + ": " + flow(section.value()));
            }
        }
        return lines;
    }

    /** In one line, in braces and brackets. */
    static String flow(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return word(scalar.text());
        }
        List<String> parts = new ArrayList<>();
        if (node instanceof Node.Items items) {
            items.items().forEach(item -> parts.add(flow(item)));
            return "[" + String.join(", ", parts) + "]";
        }
        ((Node.Fields) node).fields().forEach(f -> parts.add(word(f.key()) + ": " + flow(f.value())));
        return "{ " + String.join(", ", parts) + " }";
    }

    /** A scalar, in quotes where it would else be read as something other. */
    static String word(String text) {
        boolean plain = !text.isEmpty() && FIRST.indexOf(text.charAt(0)) < 0 && !text.endsWith(":")
                && !text.contains(": ") && !text.contains(" #") && text.equals(text.strip());
        boolean number = text.length() > 1 && text.charAt(0) == '-' && Character.isDigit(text.charAt(1));
        for (int i = 0; i < text.length() && (plain || number); i++) {
            char c = text.charAt(i);
            if (FLOW.indexOf(c) >= 0 || c < ' ') {
                plain = false;
                number = false;
            }
        }
        return plain || number ? text : "'" + text.replace("'", "''") + "'";
    }
}
