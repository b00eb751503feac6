package leadlamp.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leadlamp.record.Build;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/** The text of the lines of record and sheet. */
final class Lines {
    private final Map<String, Map<Long, String>> byFile = new HashMap<>();

    Lines(Build build) {
        add(build.statements());
        add(build.sheet().statements());
    }

    private void add(List<Statement> statements) {
        for (Statement statement : statements) {
            byFile.computeIfAbsent(statement.where().file(), f -> new HashMap<>())
                    .putIfAbsent(key(statement.where()), statement.text());
        }
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
