package leadlamp.words;

import java.util.List;
import java.util.Map;

/**
 * A word that an entry may carry.
 *
 * @param section section of the record or sheet it stands in
 * @param name    the key
 * @param values  words taken, with their gloss; empty where it takes something else alone
 * @param also    other words taken for a value
 * @param takes   what else may stand there (`length`, `date`, `words`, `count` ...); empty where only the values
 * @param gloss   what it means
 * @param of      parts that may have it; empty where any
 * @param perPart part to its own short list, for `form`
 * @param kinds   values that mean one thing to the work, under the word for it: `takes metal off`
 * @param sized   of a section of the sheet: dimension to the lines that must be sizes of it, {@link #EACH_LINE} for all others
 */
public record Property(String section, String name, Map<String, String> values, Map<String, String> also, String takes,
        String gloss, List<String> of, Map<String, Map<String, String>> perPart, Map<String, List<String>> kinds,
        Map<String, List<String>> sized) {
    /** Stands for every line that is not named. */
    public static final String EACH_LINE = "each line";
    /** In place of a dimension: that of the reading which the line is called after. */
    public static final String AS_READ = "as read";

    /** A property with no kinds of values and no lines that must be sizes. */
    static Property plain(String section, String name, Map<String, String> values, Map<String, String> also, String takes, String gloss,
            List<String> of, Map<String, Map<String, String>> perPart) {
        return new Property(section, name, values, also, takes, gloss, of, perPart, Map.of(), Map.of());
    }

    /** The same property in another section. */
    Property in(String section, String name) {
        return new Property(section, name, values, also, takes, gloss, of, perPart, kinds, sized);
    }

    /** Whether the value is among those of this kind. */
    public boolean is(String kind, String value) {
        return kinds.getOrDefault(kind, List.of()).contains(value);
    }
}
