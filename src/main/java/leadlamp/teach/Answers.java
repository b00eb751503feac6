package leadlamp.teach;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import leadlamp.record.Node;
import leadlamp.record.Problem;
import leadlamp.record.Where;
import leadlamp.record.Yaml;
import leadlamp.words.Vocabulary;

/**
 * What an apprentice would stop for, read from an answer file. Whatever of it cannot be taken is told with its place; the file
 * itself is never written to.
 *
 * @param exercise   the exercise that it says it answers
 * @param apprentice who answers; may be empty
 * @param entries    what can be marked
 * @param problems   what cannot be taken
 */
public record Answers(String exercise, String apprentice, List<Entry> entries, List<Problem> problems) {
    private static final List<String> TOP = List.of("exercise", "apprentice", "stop for");
    private static final List<String> KEYS = List.of("line", "check", "at", "why");
    private static final String KEPT = "The entry was not marked; what you wrote stays in the file.";

    /**
     * One thing to stop for.
     *
     * @param line  of the record; 0 where none is named
     * @param check its name; empty where none is named
     * @param at    where; may be empty
     * @param why   in the apprentice's words
     */
    record Entry(int line, String check, String at, String why, Where where) {
    }

    /**
     * Reads a file.
     *
     * @param file   the answer file
     * @param id     what the exercise beside it is called
     * @param lines  how many lines its record has
     * @param checks the checks that there are
     */
    public static Answers of(Yaml.File file, String name, String id, int lines, Collection<String> checks) {
        Reading reading = new Reading(file, lines, checks);
        return reading.answers(name, id);
    }

    private static final class Reading {
        private final Yaml.File file;
        private final int lines;
        private final Collection<String> checks;
        private final List<Problem> problems = new ArrayList<>();

        Reading(Yaml.File file, int lines, Collection<String> checks) {
            this.file = file;
            this.lines = lines;
            this.checks = checks;
            problems.addAll(file.problems());
        }

        Answers answers(String name, String id) {
            if (file.tree().isEmpty()) {
                return new Answers("", "", List.of(), List.copyOf(problems));
            }
            Node.Fields tree = file.tree().get();
            for (Node.Field field : tree.fields()) {
                if (!TOP.contains(field.key())) {
                    problem(field.where(), field.key().length(), "\"" + field.key() + "\" is no part of an answer file.",
                            "It has: " + String.join(", ", TOP) + ".", Vocabulary.nearest(field.key(), TOP), "");
                }
            }
            String exercise = text(tree, "exercise");
            if (!exercise.equals(id)) {
                problem(tree.get("exercise").map(Node::where).orElse(new Where(name, 0, 0)), exercise.length(),
                        exercise.isEmpty() ? "The answers do not say which exercise they belong to."
                                : "These are the answers to another exercise, " + exercise + ".",
                        "The record beside them is exercise " + id + ".", Optional.empty(),
                        "Nothing was marked; what you wrote stays in the file.");
                return new Answers(exercise, text(tree, "apprentice"), List.of(), List.copyOf(problems));
            }
            List<Entry> entries = new ArrayList<>();
            Optional<Node> list = tree.get("stop for");
            if (list.isPresent() && list.get() instanceof Node.Items items) {
                for (Node item : items.items()) {
                    entry(item).ifPresent(entries::add);
                }
            } else if (list.isPresent() && !(list.get() instanceof Node.Scalar none && none.text().isEmpty())) {
                problem(list.get().where(), 0, "`stop for` is a list.", "Each entry begins `- { line: ..., check: ... }`.",
                        Optional.empty(), "Nothing was marked; what you wrote stays in the file.");
            }
            return new Answers(exercise, text(tree, "apprentice"), List.copyOf(entries), List.copyOf(problems));
        }

        private Optional<Entry> entry(Node item) {
            if (!(item instanceof Node.Fields fields)) {
                problem(item.where(), 0, "This is no entry.", "As { line: 120, check: '', at: '', why: '' }.", Optional.empty(), KEPT);
                return Optional.empty();
            }
            for (Node.Field field : fields.fields()) {
                if (!KEYS.contains(field.key())) {
                    problem(field.where(), field.key().length(), "\"" + field.key() + "\" is no key of an answer.",
                            "An answer has: " + String.join(", ", KEYS) + ".", Vocabulary.nearest(field.key(), KEYS),
                            "The rest of the entry was read.");
                }
            }
            String line = text(fields, "line");
            String check = text(fields, "check");
            if (line.isEmpty() && check.isEmpty()) {
                if (!text(fields, "why").isEmpty() || !text(fields, "at").isEmpty()) {
                    problem(fields.where(), 0, "The answer names neither a line nor a check.",
                            "One of them is enough: the line of the record that shows it.", Optional.empty(), KEPT);
                }
                return Optional.empty();
            }
            int number = 0;
            if (!line.isEmpty()) {
                boolean figures = line.length() < 8 && line.chars().allMatch(c -> c >= '0' && c <= '9');
                number = figures ? Integer.parseInt(line) : 0;
                if (number < 1 || number > lines) {
                    problem(fields.get("line").orElseThrow().where(), line.length(), figures ? "The record has no line " + line + "."
                            : "\"" + line + "\" is no number of a line.", "Its lines go from 1 to " + lines + ".", Optional.empty(), KEPT);
                    return Optional.empty();
                }
            }
            if (!check.isEmpty() && !checks.contains(check)) {
                problem(fields.get("check").orElseThrow().where(), check.length(), "There is no check \"" + check + "\".",
                        line.isEmpty() ? "Leave it out and name the line where you do not know it." : "",
                        Vocabulary.nearest(check, checks), line.isEmpty() ? KEPT : "The entry was marked by its line.");
                if (line.isEmpty()) {
                    return Optional.empty();
                }
                check = "";
            }
            return Optional.of(new Entry(number, check, text(fields, "at"), text(fields, "why"), fields.where()));
        }

        private static String text(Node.Fields fields, String key) {
            return fields.get(key).filter(Node.Scalar.class::isInstance).map(n -> ((Node.Scalar) n).text()).orElse("");
        }

        private void problem(Where where, int length, String what, String expected, Optional<String> nearest, String rest) {
            problems.add(new Problem(where, length, file.line(where.line()), what, expected, nearest, rest));
        }
    }
}
