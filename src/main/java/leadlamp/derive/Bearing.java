package leadlamp.derive;

import java.util.List;

/** The parts of one plain bearing, by its place: `main 2`, `big end 2`. */
final class Bearing {
    private static final String BIG_END = "big end ";

    private Bearing() {
    }

    static boolean isMain(String place) {
        return place.startsWith("main ");
    }

    static List<String> shells(String place) {
        return List.of(isMain(place) ? "main shell" : "big-end shell", "shell");
    }

    static List<String> journals(String place) {
        return List.of(isMain(place) ? "main journal" : "crankpin", "journal");
    }

    static String bearing(String place) {
        return isMain(place) ? "main bearing" : "big-end bearing";
    }

    static String housing(String place) {
        return isMain(place) ? "main housing" : "big-end housing";
    }

    /** The bearing that a half of it belongs to: `main 2` of `main 2 upper`. */
    static String of(String half) {
        return half.endsWith(" upper") || half.endsWith(" lower") ? half.substring(0, half.lastIndexOf(' ')) : half;
    }

    /** Cylinder of a big end; the place itself where it is none. */
    static String cylinder(String place) {
        return place.startsWith(BIG_END) ? place.substring(BIG_END.length()) : place;
    }
}
