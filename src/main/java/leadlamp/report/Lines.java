package leadlamp.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.LimitLine;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/** The text of the lines of record and sheet. */
final class Lines {
    /** A longer line is shown in part, with so much before what is meant. */
    private static final int MOST = 140;
    private static final int BEFORE = 40;

    private final Map<String, Map<Long, String>> byFile = new HashMap<>();

    Lines(Build build) {
        add(build.statements());
        add(build.sheet().statements());
        limits(build.limits());
        limits(build.sheet().limits());
    }

    /** A line of limits has no text of its own at hand; it is said again. */
    private void limits(List<LimitLine> limits) {
        for (LimitLine limit : limits) {
            StringBuilder text = new StringBuilder(limit.quantity());
            String before = ": ";
            before = part(text, before, "at", limit.at());
            before = part(text, before, "standard", limit.standard().map(Written::text).orElse(""));
            before = part(text, before, "least", limit.least().map(Written::text).orElse(""));
            part(text, before, "most", limit.most().map(Written::text).orElse(""));
            put(limit.line(), text.toString());
        }
    }

    private static String part(StringBuilder text, String before, String word, String value) {
        if (value.isEmpty()) {
            return before;
        }
        text.append(before).append(word).append(' ').append(value);
        return ", ";
    }

    private void add(List<Statement> statements) {
        for (Statement statement : statements) {
            put(statement.where(), statement.text());
        }
    }

    private void put(Where where, String text) {
        byFile.computeIfAbsent(where.file(), f -> new HashMap<>()).putIfAbsent(key(where), text);
    }

    /** What stands there; empty where no entry begins there. */
    String at(Where where) {
        Map<Long, String> file = byFile.get(where.file());
        String text = file == null ? null : file.get(key(where));
        return text == null ? "" : cut(text, where.column());
    }

    /** A long line is cut to what stands round the column that is meant; gaps before a remark are closed. */
    static String cut(String line, int column) {
        String text = line.strip();
        if (text.length() <= MOST) {
            return squeezed(text);
        }
        int meant = Math.max(0, Math.min(column - 1 - (line.length() - line.stripLeading().length()), text.length() - 1));
        int from = meant <= BEFORE ? 0 : text.lastIndexOf(' ', meant - BEFORE) + 1;
        int end = text.length() <= from + MOST ? text.length() : text.lastIndexOf(' ', from + MOST);
        end = end <= meant ? text.length() : end;
        return squeezed((from > 0 ? "... " : "") + text.substring(from, end) + (end < text.length() ? " ..." : ""));
    }

    private static String squeezed(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            boolean gap = i > 1 && text.charAt(i) == ' ' && text.charAt(i - 1) == ' ' && text.charAt(i - 2) == ' ';
            if (!gap) {
                out.append(text.charAt(i));
            }
        }
        return out.toString();
    }

    private static Long key(Where where) {
        return (long) where.line() << 32 | where.column();
    }
}
