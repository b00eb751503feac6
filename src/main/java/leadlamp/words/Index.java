package leadlamp.words;

import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Words on their way into a table: a name beats a synonym, and a synonym of two things settles neither. */
final class Index {
    private final Map<String, Integer> names = new TreeMap<>();
    private final Map<String, Set<Integer>> synonyms = new TreeMap<>();

    static String key(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }

    void name(String word, int index) {
        names.put(key(word), index);
    }

    void synonym(String word, int index) {
        synonyms.computeIfAbsent(key(word), w -> new LinkedHashSet<>()).add(index);
    }

    boolean knows(String word) {
        return settled().containsKey(key(word));
    }

    Map<String, Integer> settled() {
        Map<String, Integer> all = new TreeMap<>(names);
        synonyms.forEach((word, of) -> {
            if (of.size() == 1) {
                all.putIfAbsent(word, of.iterator().next());
            }
        });
        return all;
    }

    /** Synonyms that stand under several things and are no name. */
    Map<String, Set<Integer>> shared() {
        Map<String, Set<Integer>> shared = new TreeMap<>();
        synonyms.forEach((word, of) -> {
            if (of.size() > 1 && !names.containsKey(word)) {
                shared.put(word, of);
            }
        });
        return shared;
    }
}
