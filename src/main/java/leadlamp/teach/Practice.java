package leadlamp.teach;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.record.Node;
import leadlamp.record.Problem;
import leadlamp.record.Where;
import leadlamp.record.Yaml;
import leadlamp.words.Vocabulary;

/**
 * What an apprentice has practised, in a file that is theirs. A check that was missed comes again with the next exercise; one
 * that was found comes after 1, 2, 4, 8 and then always 16 exercises, twice as far each time it is found in a row. It is
 * counted in exercises, not in days.
 *
 * @param exercises ids of the exercises marked, in their order
 * @param checks    by the name of the check
 * @param problems  what of the file could not be read
 */
public record Practice(List<String> exercises, Map<String, Entry> checks, List<Problem> problems) {
    private static final int FURTHEST = 16;
    private static final List<String> KEYS = List.of("found", "missed", "in a row", "due");

    /**
     * A check practised.
     *
     * @param found  how often it was found
     * @param missed how often it was missed
     * @param row    how often it was found in a row, until now
     * @param due    with which exercise it comes again, counted from the first
     */
    record Entry(int found, int missed, int row, int due) {
    }

    public static Practice none() {
        return new Practice(List.of(), Map.of(), List.of());
    }

    /** Reads the file. */
    public static Practice of(Yaml.File file, Collection<String> known) {
        List<Problem> problems = new ArrayList<>(file.problems());
        List<String> exercises = new ArrayList<>();
        Map<String, Entry> checks = new TreeMap<>();
        if (file.tree().isPresent()) {
            for (Node.Field field : file.tree().get().fields()) {
                if (field.key().equals("exercises") && field.value() instanceof Node.Items items) {
                    items.items().forEach(item -> exercises.add(item instanceof Node.Scalar id ? id.text() : ""));
                } else if (field.key().equals("checks") && field.value() instanceof Node.Fields fields) {
                    for (Node.Field check : fields.fields()) {
                        if (!known.contains(check.key())) {
                            problems.add(problem(file, check.where(), check.key(), "There is no check \"" + check.key() + "\".",
                                    Vocabulary.nearest(check.key(), known)));
                        }
                        entry(check, file, problems).ifPresent(entry -> checks.put(check.key(), entry));
                    }
                } else if (!(field.value() instanceof Node.Scalar none && none.text().isEmpty())) {
                    problems.add(problem(file, field.where(), field.key(), "\"" + field.key() + "\" is no part of a practice file.",
                            Vocabulary.nearest(field.key(), List.of("exercises", "checks"))));
                }
            }
        }
        return new Practice(List.copyOf(exercises), checks, List.copyOf(problems));
    }

    private static Optional<Entry> entry(Node.Field check, Yaml.File file, List<Problem> problems) {
        if (!(check.value() instanceof Node.Fields fields)) {
            problems.add(problem(file, check.where(), check.key(), "The check has no figures.", Optional.empty()));
            return Optional.empty();
        }
        int[] figures = new int[KEYS.size()];
        for (Node.Field field : fields.fields()) {
            int key = KEYS.indexOf(field.key());
            String text = field.value() instanceof Node.Scalar scalar ? scalar.text() : "";
            if (key < 0 || text.isEmpty() || text.length() > 6 || !text.chars().allMatch(c -> c >= '0' && c <= '9')) {
                problems.add(problem(file, field.where(), field.key(), key < 0 ? "\"" + field.key() + "\" is no figure of a check."
                        : "\"" + text + "\" is no count.", Vocabulary.nearest(field.key(), KEYS)));
                return Optional.empty();
            }
            figures[key] = Integer.parseInt(text);
        }
        return Optional.of(new Entry(figures[0], figures[1], figures[2], figures[3]));
    }

    private static Problem problem(Yaml.File file, Where where, String word, String what, Optional<String> nearest) {
        return new Problem(where, word.length(), file.line(where.line()), what, "", nearest,
                "The file was left as it is; mend this place and mark again.");
    }

    /** The same with one more exercise in it; the same where that was counted before. */
    public Practice with(String exercise, List<Marking.Seen> seen) {
        if (exercises.contains(exercise)) {
            return this;
        }
        List<String> now = new ArrayList<>(exercises);
        now.add(exercise);
        Map<String, Entry> after = new TreeMap<>(checks);
        for (Marking.Seen one : seen) {
            Entry was = after.getOrDefault(one.check(), new Entry(0, 0, 0, 0));
            int row = one.found() ? was.row() + 1 : 0;
            after.put(one.check(), new Entry(was.found() + (one.found() ? 1 : 0), was.missed() + (one.found() ? 0 : 1), row,
                    now.size() + interval(row)));
        }
        return new Practice(List.copyOf(now), after, problems);
    }

    /** After so many exercises it comes again. */
    static int interval(int row) {
        return row == 0 ? 1 : Math.min(FURTHEST, 1 << Math.min(row - 1, 10));
    }

    /** Checks to practise with the next exercise, missed most first. */
    public List<String> due() {
        List<String> due = new ArrayList<>();
        checks.forEach((check, entry) -> {
            if (entry.due() <= exercises.size() + 1) {
                due.add(check);
            }
        });
        due.sort((a, b) -> {
            int byRow = Integer.compare(checks.get(a).row(), checks.get(b).row());
            int byMissed = Integer.compare(checks.get(b).missed(), checks.get(a).missed());
            return byRow != 0 ? byRow : byMissed != 0 ? byMissed : a.compareTo(b);
        });
        return due;
    }

    /** The file. */
    public String text() {
        StringBuilder text = new StringBuilder("""
                # What I practised. This file is yours: change it as you like.
                # A check that was missed comes again with the next exercise. One that was found comes after 1, 2, 4, 8, then always
                # 16 exercises, twice as far each time it is found in a row. `due` is the number of the exercise it comes with.
                """);
        text.append("exercises: [").append(String.join(", ", exercises.stream().map(YamlText::word).toList())).append("]\n");
        text.append("checks:\n");
        new TreeMap<>(checks).forEach((check, entry) -> text.append("  ").append(check).append(": { found: ").append(entry.found())
                .append(", missed: ").append(entry.missed()).append(", in a row: ").append(entry.row()).append(", due: ")
                .append(entry.due()).append(" }\n"));
        return text.toString();
    }
}
