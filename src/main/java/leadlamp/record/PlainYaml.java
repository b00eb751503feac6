package leadlamp.record;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the plain part of YAML in which records are written: maps and lists, by indent or in brackets, and words on one line. A whole
 * YAML parser costs a first start more than all the rest of reading. This one never says what is wrong: where it meets what it does
 * not know for certain it gives nothing, and {@link FullYaml} reads the file and tells. To give nothing is only slow; to give another
 * tree than the parser, or a tree of what the parser refuses, is a fault.
 *
 * <p>It runs before anything is compiled: hence an array, tight loops and few calls. Within, null stands for "not known for certain".
 */
final class PlainYaml {
    /** Far more than a record holds, and less than the parser takes. */
    private static final int MOST_CHARACTERS = 1_000_000;
    /** The parser looks 1024 characters ahead for the colon after a key. */
    private static final int LONGEST_KEY = 1000;
    /** So many keys are looked through one by one sooner than put into a set. */
    private static final int FEW_KEYS = 16;

    private final String file;
    private final String text;
    private final char[] chars;
    private final int end;
    private final List<String> lines = new ArrayList<>();

    /** The character to be read next. */
    private int next;
    private int line = 1;
    private int lineStart;
    /** Where {@link #skip} stopped: the column from 0, and -1 at the end of the text, which is less than any indent. */
    private int column;
    /** Whether a line ended on the way. */
    private boolean newLine;
    /** Whether the last word read is one that stands for nothing. */
    private boolean isNothing;
    /** Whether something was stepped over that is not plain. */
    private boolean doubtful;

    private PlainYaml(String text, char[] chars, String file) {
        this.file = file;
        this.text = text;
        this.chars = chars;
        this.end = text.length();
    }

    /**
     * Reads a text.
     *
     * @param text  without a byte order mark
     * @param chars its characters, and perhaps more after them
     * @param name  what messages call the file
     * @return what {@link FullYaml} reads from it; empty where that is not known for certain
     */
    static Optional<Yaml.File> read(String text, char[] chars, String name) {
        if (text.length() > MOST_CHARACTERS) {
            return Optional.empty();
        }
        PlainYaml yaml = new PlainYaml(text, chars, name);
        yaml.doubtful = yaml.isSeparator();
        yaml.skip();
        Node tree = yaml.column < 0 ? null : yaml.block(0, true);
        boolean isAll = yaml.column < 0;
        if (!isAll || yaml.doubtful || !(tree instanceof Node.Fields fields)) {
            return Optional.empty();
        }
        yaml.lines.add(text.substring(yaml.lineStart));
        return Optional.of(new Yaml.File(Optional.of(fields), List.of(), List.copyOf(yaml.lines), Fingerprint.NONE));
    }

    /** Steps over blanks, comments and line ends to what comes next. */
    private void skip() {
        char[] chars = this.chars;
        int at = next;
        newLine = false;
        while (true) {
            while (at < end && chars[at] == ' ') {
                at++;
            }
            if (at < end && chars[at] == '#') {
                while (++at < end && chars[at] >= ' ') {
                    if (chars[at] > '~' && isDoubtful(chars[at])) {
                        doubtful = true;
                    }
                }
            }
            int stop = at;
            if (at + 1 < end && chars[at] == '\r' && chars[at + 1] == '\n') {
                at++;
            }
            if (at == end || chars[at] != '\n') {
                next = stop;
                column = at == end ? -1 : stop - lineStart;
                return;
            }
            lines.add(text.substring(lineStart, stop));
            lineStart = ++at;
            line++;
            newLine = true;
            if (isSeparator()) {
                doubtful = true;
            }
        }
    }

    /** Whether the line begins as one between two documents, or as an instruction to the parser. */
    private boolean isSeparator() {
        int at = lineStart;
        if (at == end) {
            return false;
        }
        char first = chars[at];
        return first == '%' || (first == '-' || first == '.') && at + 2 < end && chars[at + 1] == first && chars[at + 2] == first;
    }

    /** Whether the parser might take a character above `~` for no text, for a line end, or for two. */
    private static boolean isDoubtful(char c) {
        return c < '\u00A0' || c > '\uD7FF' || c == '\u2028' || c == '\u2029';
    }

    private Where here() {
        return new Where(file, line, next - lineStart + 1);
    }

    /** Whether an item of a list begins here. */
    private boolean isDash() {
        return next < end && chars[next] == '-' && (next + 1 == end || chars[next + 1] <= ' ');
    }

    /**
     * What begins here, with all its lines. What comes next then stands at the indent of something around it, which goes on with it. If
     * it does not, nothing does, and it is left over at the end.
     *
     * @param fresh whether a map or a list may begin here, as they may not on the line of a key
     */
    private Node block(int depth, boolean fresh) {
        if (fresh && isDash()) {
            return list(depth);
        }
        int start = next;
        int indent = column;
        Node node = inLine(depth, false);
        if (node == null) {
            return null;
        }
        if (fresh && isColon(start)) {
            return node instanceof Node.Scalar key && !isNothing ? map(depth, indent, key) : null;
        }
        skip();
        // Behind a bracket closed on a later line the next word could by chance stand at an indent.
        return newLine || column < 0 ? node : null;
    }

    /** A word, or what stands in brackets. */
    private Node inLine(int depth, boolean inBrackets) {
        char first = chars[next];
        if (first == '[' || first == '{') {
            return brackets(depth, first == '{');
        }
        Where where = here();
        String word = word(inBrackets);
        return word == null ? null : new Node.Scalar(isNothing ? "" : word, where);
    }

    /** A map whose first key has been read, and its colon. */
    private Node map(int depth, int indent, Node.Scalar first) {
        List<Node.Field> fields = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        Where where = first.where();
        String key = first.text();
        while (true) {
            Node value = value(depth + 1, indent, true);
            if (value == null || !add(fields, seen, new Node.Field(key, where, value))) {
                return null;
            }
            if (column != indent) {
                return new Node.Fields(List.copyOf(fields), first.where());
            }
            int start = next;
            where = here();
            key = word(false);
            if (key == null || !isColon(start)) {
                return null;
            }
        }
    }

    /** A list by its dashes, which may stand right below the key of the map around them. */
    private Node list(int depth) {
        List<Node> items = new ArrayList<>();
        Where where = here();
        int indent = column;
        do {
            next++;
            Node item = value(depth + 1, indent, false);
            if (item == null) {
                return null;
            }
            items.add(item);
        } while (column == indent && isDash());
        return new Node.Items(List.copyOf(items), where);
    }

    /** What stands behind a colon or a dash, or below it. */
    private Node value(int depth, int indent, boolean ofKey) {
        if (depth > Yaml.DEEPEST) {
            return null;
        }
        int line = this.line;
        int behind = next - lineStart + 1;
        skip();
        if (column > indent) {
            return block(depth, newLine || !ofKey);
        }
        if (ofKey && column == indent && isDash()) {
            return list(depth);
        }
        return new Node.Scalar("", new Where(file, line, behind));
    }

    /** A map or a list in brackets, over as many lines as it takes. */
    private Node brackets(int depth, boolean isMap) {
        Where where = here();
        char close = isMap ? '}' : ']';
        List<Node> items = new ArrayList<>();
        List<Node.Field> fields = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        next++;
        skip();
        while (column >= 0 && chars[next] != close) {
            if (depth == Yaml.DEEPEST) {
                return null;
            }
            if (isMap) {
                int start = next;
                Where at = here();
                String key = word(true);
                if (key == null || !isColon(start)) {
                    return null;
                }
                Where behind = here();
                skip();
                if (column < 0) {
                    return null;
                }
                boolean empty = chars[next] == ',' || chars[next] == close;
                Node value = empty ? new Node.Scalar("", behind) : inLine(depth + 1, true);
                if (value == null || !add(fields, seen, new Node.Field(key, at, value))) {
                    return null;
                }
            } else {
                Node item = inLine(depth + 1, true);
                if (item == null) {
                    return null;
                }
                items.add(item);
            }
            skip();
            if (column < 0) {
                return null;
            }
            if (chars[next] == ',') {
                next++;
                skip();
            } else if (chars[next] != close) {
                return null;
            }
        }
        if (column < 0) {
            return null;
        }
        next++;
        return isMap ? new Node.Fields(List.copyOf(fields), where) : new Node.Items(List.copyOf(items), where);
    }

    /** Whether a colon makes the word before it a key; then it is stepped over. */
    private boolean isColon(int start) {
        while (next < end && chars[next] == ' ') {
            next++;
        }
        if (next == end || chars[next] != ':' || next + 1 < end && chars[next + 1] > ' ' || next - start > LONGEST_KEY) {
            return false;
        }
        next++;
        return true;
    }

    /** A word or several, with or without quotes, on one line. */
    private String word(boolean inBrackets) {
        char first = chars[next];
        return first == '"' || first == '\'' ? quoted(first) : plain(first, inBrackets);
    }

    private String quoted(char quote) {
        isNothing = false;
        int start = next + 1;
        boolean twice = false;
        int at = start;
        for (; at < end; at++) {
            char c = chars[at];
            if (c == quote) {
                if (quote == '"' || at + 1 == end || chars[at + 1] != '\'') {
                    break;
                }
                twice = true;
                at++;
            } else if (c < ' ' || c == '\\' && quote == '"' || c > '~' && isDoubtful(c)) {
                return null;
            }
        }
        if (at == end) {
            return null;
        }
        next = at + 1;
        String word = text.substring(start, at);
        return (twice ? word.replace("''", "'") : word).strip();
    }

    private String plain(char first, boolean inBrackets) {
        char[] chars = this.chars;
        int start = next;
        if (!mayBegin(first) || first == '-' && (start + 1 == end || chars[start + 1] <= ' ')) {
            return null;
        }
        int at = start;
        for (; at < end; at++) {
            char c = chars[at];
            if (c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == ' ') {
                continue;
            }
            if (c < ' ') {
                break;
            }
            if (c == ':') {
                char behind = at + 1 == end ? '\n' : chars[at + 1];
                if (behind <= ' ') {
                    break;
                }
                if (inBrackets && isBracket(behind)) {
                    return null;
                }
            } else if (c == '#') {
                if (chars[at - 1] == ' ') {
                    break;
                }
            } else if (inBrackets && (isBracket(c) || c == '?')) {
                break;
            } else if (c > '~' && isDoubtful(c)) {
                return null;
            }
        }
        next = at;
        while (chars[at - 1] == ' ') {
            at--;
        }
        String word = text.substring(start, at);
        isNothing = first == '~' ? at == start + 1
                : at == start + 4 && (first == 'n' || first == 'N') && (word.equals("null") || word.equals("Null") || word.equals("NULL"));
        // Other blanks than those of YAML are not part of a word either.
        return first > '~' || chars[at - 1] > '~' ? word.strip() : word;
    }

    /** Whether a word without quotes may begin with a character. */
    private static boolean mayBegin(char c) {
        if (c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c >= 'A' && c <= 'Z') {
            return true;
        }
        return c > ' ' && "?:,[]{}#&*!|>'\"%@`".indexOf(c) < 0;
    }

    private static boolean isBracket(char c) {
        return c == ',' || c == ']' || c == '}' || c == '[' || c == '{';
    }

    /** Adds a field; not where its key stands there already. */
    private static boolean add(List<Node.Field> fields, Set<String> seen, Node.Field field) {
        int many = fields.size();
        if (many < FEW_KEYS) {
            for (int i = 0; i < many; i++) {
                if (fields.get(i).key().equals(field.key())) {
                    return false;
                }
            }
        } else {
            for (int i = seen.size(); i < many; i++) {
                seen.add(fields.get(i).key());
            }
            if (!seen.add(field.key())) {
                return false;
            }
        }
        return fields.add(field);
    }
}
