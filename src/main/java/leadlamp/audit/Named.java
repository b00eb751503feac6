package leadlamp.audit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The words that a pattern of a rule reads, as `needs` and `heeds` call them. */
final class Named {
    private Named() {
    }

    /** The words of one pattern; several where it quotes several. */
    static Set<String> by(Way.Pattern pattern) {
        List<String> of = pattern.quoted("of").isEmpty() ? pattern.quoted("kind") : pattern.quoted("of");
        Set<String> words = new LinkedHashSet<>();
        switch (pattern.fact()) {
            case "Condition" -> pattern.quoted("name").forEach(n -> words.add("condition " + n));
            case "Value", "Verdict" -> words.addAll(of.isEmpty() ? List.of(Need.ANY_READING) : of);
            case "Seen", "NotSeen" -> cross(of.isEmpty() ? List.of("any part") : of, pattern.quoted("sign"), Need.ANY_SIGN,
                    words);
            case "OnSheet" -> {
                Set<String> lines = new LinkedHashSet<>();
                cross(of.isEmpty() ? List.of(Need.ANY_PART) : of, pattern.quoted("what"), "", lines);
                lines.forEach(w -> words.add("sheet " + once(w)));
            }
            case "Stated" -> stated(of, pattern.quoted("what"), words);
            default -> {
            }
        }
        return words;
    }

    private static void stated(List<String> of, List<String> what, Set<String> words) {
        if (what.isEmpty() && of.size() == 1) {
            switch (of.get(0)) {
                case "steps" -> words.add("any step");
                case "machining" -> words.add("any machining");
                case "protection" -> words.add("any protection");
                default -> words.add(of.get(0) + " any");
            }
            return;
        }
        cross(of.isEmpty() ? List.of(Need.ANY_PART) : of, what, "", words);
    }

    private static void cross(List<String> of, List<String> what, String without, Set<String> words) {
        List<String> second = what.isEmpty() ? List.of(without) : what;
        for (String one : of) {
            for (String other : second) {
                if (one.equals("any part") && other.equals(Need.ANY_SIGN)) {
                    words.add(Need.ANY_SIGN);
                } else {
                    words.add(other.isEmpty() ? one : one + " " + other);
                }
            }
        }
    }

    /** A line of the sheet that is a section of its own is named once: `valves can touch pistons`. */
    private static String once(String line) {
        int half = line.length() / 2;
        return line.length() % 2 == 1 && line.charAt(half) == ' '
                && line.substring(0, half).equals(line.substring(half + 1)) ? line.substring(0, half) : line;
    }

    /** The places that the way's patterns of this word quote; empty where a rule ties it to the place asked. */
    static List<String> quotedPlaces(Way way, String word) {
        List<String> places = new ArrayList<>();
        for (Way.Pattern pattern : way.patterns()) {
            if (by(pattern).contains(word)) {
                List<String> at = pattern.quoted("at");
                if (at.isEmpty()) {
                    return List.of();
                }
                for (String place : at) {
                    if (!places.contains(place)) {
                        places.add(place);
                    }
                }
            }
        }
        return places;
    }
}
