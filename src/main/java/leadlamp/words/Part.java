package leadlamp.words;

import java.util.List;

/**
 * A part of an engine.
 *
 * @param system topic it belongs to
 * @param group  where it lives in sets: `engine`, `each cylinder`
 * @param strip  level that reaches it, 0 to 4
 * @param kinds  the kind, its kind, and so on; empty where it has none
 * @param goesWith the part that this face or end goes and comes with; empty where it is a part of its own
 * @param runsIn what is cut where this part is found tight in it; empty where nothing is
 * @param keyedBy the key that carries it round; empty where none does
 * @param keepsIn the fluid that a seal keeps in which is named by this part; empty where that says nothing
 */
public record Part(String name, String gloss, String system, String group, int strip, List<String> kinds, String goesWith,
        String runsIn, String keyedBy, String keepsIn) {
    /** The kind that a fact carries: the outermost one, its own name where it has none. */
    public String kind() {
        return kinds.isEmpty() ? name : kinds.get(kinds.size() - 1);
    }
}
