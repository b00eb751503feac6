package leadlamp.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** What a case expects of a check at a place. */
public sealed interface Expected {

    /** Found, in these ways and no others. */
    record FoundBy(List<String> ways) implements Expected {
        public FoundBy {
            ways = List.copyOf(new TreeSet<>(ways));
        }

        @Override
        public String toString() {
            return "found by " + String.join(", ", ways);
        }
    }

    /** Clear. */
    record IsClear() implements Expected {
        @Override
        public String toString() {
            return "clear";
        }
    }

    /** Cannot tell, for these reasons and no others. */
    record Untold(List<Gap.Why> gaps) implements Expected {
        public Untold {
            gaps = List.copyOf(new TreeSet<>(gaps));
        }

        @Override
        public String toString() {
            List<String> words = new ArrayList<>();
            gaps.forEach(g -> words.add(g.word()));
            return "cannot tell (" + String.join(", ", words) + ")";
        }
    }

    /** Not asked there. */
    record NotAsked() implements Expected {
        @Override
        public String toString() {
            return "not asked";
        }
    }

    /** Holds: of a condition. */
    record Holds(boolean so) implements Expected {
        @Override
        public String toString() {
            return so ? "holds" : "does not hold";
        }
    }

    /** Read from a page; empty where it is none of these. */
    static Optional<Expected> read(String text) {
        switch (text) {
            case "clear":
                return Optional.of(new IsClear());
            case "not asked":
                return Optional.of(new NotAsked());
            case "holds":
                return Optional.of(new Holds(true));
            case "does not hold":
                return Optional.of(new Holds(false));
            default:
                break;
        }
        if (text.startsWith("found by ")) {
            List<String> ways = words(text.substring(9));
            return ways.isEmpty() ? Optional.empty() : Optional.of(new FoundBy(ways));
        }
        if (text.startsWith("cannot tell (") && text.endsWith(")")) {
            List<Gap.Why> gaps = new ArrayList<>();
            for (String word : words(text.substring(13, text.length() - 1))) {
                Optional<Gap.Why> why = why(word);
                if (why.isEmpty()) {
                    return Optional.empty();
                }
                gaps.add(why.get());
            }
            return gaps.isEmpty() ? Optional.empty() : Optional.of(new Untold(gaps));
        }
        return Optional.empty();
    }

    /** What an answer comes to. */
    static Expected of(Answer answer) {
        if (answer instanceof Answer.Found found) {
            List<String> ways = new ArrayList<>();
            found.findings().forEach(f -> ways.add(f.way()));
            return new FoundBy(ways);
        }
        if (answer instanceof Answer.CannotTell untold) {
            List<Gap.Why> gaps = new ArrayList<>();
            untold.gaps().forEach(g -> gaps.add(g.why()));
            return new Untold(gaps);
        }
        return new IsClear();
    }

    private static Optional<Gap.Why> why(String word) {
        for (Gap.Why why : Gap.Why.values()) {
            if (why.word().equals(word)) {
                return Optional.of(why);
            }
        }
        return Optional.empty();
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        for (String word : text.split(",")) {
            if (!word.isBlank()) {
                words.add(word.strip());
            }
        }
        return words;
    }
}
