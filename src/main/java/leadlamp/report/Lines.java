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
        return text == null ? "" : text.strip();
    }

    private static Long key(Where where) {
        return (long) where.line() << 32 | where.column();
    }
}
