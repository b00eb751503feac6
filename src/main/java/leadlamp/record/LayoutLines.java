package leadlamp.record;

import java.util.ArrayList;
import java.util.List;

/** The lines of an engine sheet, asked for by their keys. A line that is not there is an empty text or list. */
final class LayoutLines {
    static final int UNKNOWN = -1;

    private final Node.Fields tree;

    LayoutLines(Node.Fields tree) {
        this.tree = tree;
    }

    private Node node(String... keys) {
        Node node = tree;
        for (String key : keys) {
            if (!(node instanceof Node.Fields fields)) {
                return null;
            }
            node = null;
            for (Node.Field field : fields.fields()) {
                if (field.key().equals(key)) {
                    node = field.value();
                    break;
                }
            }
        }
        return node;
    }

    boolean has(String... keys) {
        return node(keys) != null;
    }

    String text(String... keys) {
        return node(keys) instanceof Node.Scalar scalar ? scalar.text().strip() : "";
    }

    /** Whether the line says that there is none. */
    boolean none(String... keys) {
        return text(keys).equals("none");
    }

    /** A list, or one word that stands for a list of one; empty for `none`. */
    List<String> list(String... keys) {
        List<String> texts = new ArrayList<>();
        Node node = node(keys);
        if (node instanceof Node.Scalar scalar && !scalar.text().strip().equals("none")) {
            texts.add(scalar.text().strip());
        } else if (node instanceof Node.Items items) {
            for (Node item : items.items()) {
                if (item instanceof Node.Scalar scalar) {
                    texts.add(scalar.text().strip());
                }
            }
        }
        return texts;
    }

    /** The keys under a line, in their order. */
    List<String> keys(String... keys) {
        List<String> names = new ArrayList<>();
        if (node(keys) instanceof Node.Fields fields) {
            for (Node.Field field : fields.fields()) {
                if (!field.key().equals("note")) {
                    names.add(field.key());
                }
            }
        }
        return names;
    }

    /** The lines of a list of lines. */
    List<LayoutLines> lines(String... keys) {
        List<LayoutLines> lines = new ArrayList<>();
        if (node(keys) instanceof Node.Items items) {
            for (Node item : items.items()) {
                if (item instanceof Node.Fields fields) {
                    lines.add(new LayoutLines(fields));
                }
            }
        }
        return lines;
    }

    /** A count; 0 for `none`, {@link #UNKNOWN} where the line is not there or is no count. */
    int count(String... keys) {
        String text = text(keys);
        if (text.equals("none")) {
            return 0;
        }
        if (text.isEmpty() || text.length() > 3) {
            return UNKNOWN;
        }
        int count = 0;
        for (int i = 0; i < text.length(); i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                return UNKNOWN;
            }
            count = 10 * count + digit;
        }
        return count;
    }

    /** Places 1 to a count, each behind a word; null where the count is not known. */
    static List<String> numbered(String before, int count) {
        if (count < 0) {
            return null;
        }
        List<String> places = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            places.add(before.concat(String.valueOf(i)));
        }
        return places;
    }
}
