package leadlamp.record;

import java.util.Optional;
import java.util.Set;
import leadlamp.words.Vocabulary;

/**
 * Tells what a name with ` to ` in it is: a joint of the sheet, a place of one (`head to block 7`), a joint that the sheet
 * lacks (`oil cooler to bracket`), or none of these: a reading of the vocabulary (`piston to head gap`), or a joint of the
 * sheet with something after it that is neither a place nor, with what goes before, a part.
 */
final class JointNames {
    private static final String TO = " to ";

    private final Vocabulary words;
    private final Set<String> listed;
    private final Set<String> places;

    /**
     * @param listed joints of the sheet
     * @param places names of the sheet that are places, rows of a joint among them
     */
    JointNames(Vocabulary words, Set<String> listed, Set<String> places) {
        this.words = words;
        this.listed = listed;
        this.places = places;
    }

    boolean listed(String name) {
        return listed.contains(name);
    }

    /** Whether it is a bolt, a row or a corner of a joint of the sheet. */
    boolean placeOfListed(String name) {
        return begins(name).isPresent() && (places.contains(name) || Places.ofName(name, listed));
    }

    /** Whether it is a joint that the sheet lacks. */
    boolean ofItsOwn(String name) {
        return name.contains(TO) && !listed.contains(name) && !reading(name)
                && (begins(name).isEmpty() || words.part(name.substring(name.lastIndexOf(TO) + TO.length())).isPresent())
                && Vocabulary.nearest(name, listed).isEmpty();
    }

    boolean reading(String name) {
        return words.quantity(name).isPresent();
    }

    /** The joint of the sheet that the name begins with. */
    Optional<String> begins(String name) {
        String longest = "";
        for (String joint : listed) {
            if (joint.length() > longest.length() && name.startsWith(joint + " ")) {
                longest = joint;
            }
        }
        return longest.isEmpty() ? Optional.empty() : Optional.of(longest);
    }
}
