package leadlamp.judge;

import java.util.Optional;

/** What a name or a place is marked with: as found, as trial, one of several. */
final class Marks {
    private static final String FOUND = " as found";
    private static final String TRIAL = " as trial";

    private Marks() {
    }

    static boolean trial(String of) {
        return of.endsWith(TRIAL);
    }

    static boolean found(String of) {
        return of.endsWith(FOUND);
    }

    /** The quantity whose limits hold for what was found as well. */
    static String unmarked(String of) {
        return found(of) ? of.substring(0, of.length() - FOUND.length()) : of;
    }

    /** Whether it is not told which of several places is meant. */
    static boolean untold(String place) {
        return place.startsWith("one of ") || place.startsWith("some of ");
    }

    /**
     * What a longer place stands on, for sheets that do not say how many there are: the cylinder, its big end or the main bearing
     * of `1 top thrust`, `big end 1 at 90`, `main 2 upper`.
     */
    static Optional<String> trunk(String place) {
        if (place.startsWith("main ")) {
            return number(place, 5).map(n -> "main " + n);
        }
        if (place.startsWith("big end ")) {
            return number(place, 8).map(n -> "big end " + n);
        }
        return number(place, 0);
    }

    /** The cylinder that a place belongs to: 1 of `1 first` and of `big end 1`; none of a main bearing. */
    static Optional<String> cylinder(String place) {
        return place.startsWith("big end ") ? number(place, 8) : number(place, 0);
    }

    private static Optional<String> number(String place, int from) {
        int to = from;
        while (to < place.length() && Character.isDigit(place.charAt(to))) {
            to++;
        }
        boolean whole = to > from && (to == place.length() || place.charAt(to) == ' ');
        return whole && !place.startsWith(" and ", to) ? Optional.of(place.substring(from, to)) : Optional.empty();
    }

    /** The joint of a bolt's place: `head to block` of `head to block 7`. */
    static Optional<String> joint(String place) {
        int blank = place.lastIndexOf(' ');
        return place.contains(" to ") && blank > 0 && number(place, blank + 1).isPresent() ? Optional.of(place.substring(0, blank))
                : Optional.empty();
    }
}
