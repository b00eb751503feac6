package leadlamp.audit;

import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;

/** The words that rules read, for guards that stand outside this package. */
public final class RuleWords {
    private RuleWords() {
    }

    /** Of all patterns. */
    public static Set<String> all(Collection<Way.Pattern> patterns) {
        Set<String> words = new TreeSet<>();
        patterns.forEach(p -> words.addAll(Named.by(p)));
        return words;
    }

    /** Of the patterns that do not stand under `not`. */
    public static Set<String> positive(Collection<Way.Pattern> patterns) {
        Set<String> words = new TreeSet<>();
        patterns.stream().filter(p -> !p.negated()).forEach(p -> words.addAll(Named.by(p)));
        return words;
    }
}
