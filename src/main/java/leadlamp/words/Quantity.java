package leadlamp.words;

import java.util.List;
import java.util.Optional;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;

/**
 * A reading or a derived value.
 *
 * @param of      the part it is read of; empty for a derived value that names none
 * @param what    the reading's own words
 * @param kind    the quantity that a rule on the whole kind matches; its own name where it has none
 * @param group   its places
 * @param forms   longer forms of place, as `NUMBER HEIGHT DIRECTION`; empty where the group is all
 * @param gauge   the usual gauge
 * @param doubt   usual doubt where the gauge's is of another dimension, as written
 * @param harm    least, most, both or none
 * @param derived whether it stands under `derived`
 * @param from    what it is worked out from
 */
public record Quantity(String name, String of, String what, String kind, Dimension dimension, Unit unit, String group,
        List<String> forms, Optional<String> gauge, Optional<String> doubt, String harm, boolean derived,
        List<String> from, String gloss) {
}
