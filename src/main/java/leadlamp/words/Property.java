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
 */
public record Property(String section, String name, Map<String, String> values, Map<String, String> also, String takes,
        String gloss, List<String> of, Map<String, Map<String, String>> perPart) {
}
