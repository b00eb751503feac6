package leadlamp.audit;

import java.util.List;
import leadlamp.record.Place;
import leadlamp.words.Listed;

/** Places of which it is not told which one is meant: `one of 1, 2`, `some of each`. */
final class Untold {
    private Untold() {
    }

    static boolean is(String place) {
        // Asked of hundreds of places, of which hardly one begins so.
        char first = place.isEmpty() ? ' ' : place.charAt(0);
        return first == 'o' && place.startsWith("one of ") || first == 's' && place.startsWith("some of ");
    }

    /** Whether one of the places among which it is not told may be this one. */
    static boolean mayBe(String untold, String place) {
        if (!is(untold)) {
            return false;
        }
        String rest = untold.substring(untold.indexOf(" of ") + 4);
        if (rest.equals("each")) {
            return true;
        }
        for (String one : Listed.in(rest)) {
            if (Place.related(one, place)) {
                return true;
            }
        }
        return false;
    }

    /** The places among which it is not told; empty for `each`. */
    static List<String> among(String untold) {
        String rest = untold.substring(untold.indexOf(" of ") + 4);
        return rest.equals("each") ? List.of() : Listed.in(rest);
    }
}
