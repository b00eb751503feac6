package leadlamp.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import leadlamp.words.Vocabulary;

/** What is wrong in one file, gathered while it is read. */
final class Complaints {
    private final List<String> lines;
    private final List<Problem> problems = new ArrayList<>();

    Complaints(List<String> lines) {
        this.lines = lines;
    }

    List<Problem> all() {
        List<Problem> sorted = new ArrayList<>(problems);
        sorted.sort((a, b) -> a.where().compareTo(b.where()));
        return List.copyOf(sorted);
    }

    void take(Collection<Problem> others) {
        problems.addAll(others);
    }

    String line(Where where) {
        return where.line() >= 1 && where.line() <= lines.size() ? lines.get(where.line() - 1) : "";
    }

    void add(Where where, int length, String what, String expected, Optional<String> nearest, String rest) {
        problems.add(new Problem(where, length, line(where), what, expected, nearest, rest));
    }

    /** A word that is not known: the nearest that is, and the first few that may stand there. */
    void unknown(Where where, String word, String what, Collection<String> known, String lead, String rest) {
        Optional<String> nearest = Vocabulary.nearest(word, known);
        add(where, word.length(), what, known.isEmpty() ? "" : lead + some(known), nearest, rest);
    }

    /** The words in a row; of many only as many as a person reads. */
    static String some(Collection<String> words) {
        StringBuilder row = new StringBuilder();
        int count = 0;
        for (String word : words) {
            if (count == 14) {
                row.append(" and ").append(words.size() - count).append(" more");
                break;
            }
            row.append(count == 0 ? "" : ", ").append(word);
            count++;
        }
        return row.append('.').toString();
    }
}
