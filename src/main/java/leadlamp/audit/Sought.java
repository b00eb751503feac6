package leadlamp.audit;

import java.util.List;

/**
 * What the rule of a way seeks of one word that it needs. It is the same wherever the check is asked, so a way works it out once.
 *
 * @param places the places that the rule quotes; empty where it ties the word to the place asked
 * @param sides  the sides of a limit that the rule asks of a reading
 * @param all    those that all rules of the check ask of it
 * @param left   whether it asks of a sign that it was left so: what was seen as found then meets no need
 */
record Sought(List<String> places, Sides sides, Sides all, boolean left) {
    static Sought of(Check check, Way way, String word, Need need) {
        Sides sides = Sides.NONE;
        Sides all = Sides.NONE;
        if (need.kind() == Need.Kind.READING) {
            // `any reading` is what the rule binds; a named reading is what it quotes.
            String quantity = word.startsWith(Need.ANY_READING) ? Need.ANY_READING : need.word();
            sides = Sides.of(way, quantity);
            all = sides.verdict() ? Sides.of(check, quantity) : Sides.NONE;
        }
        return new Sought(Named.quotedPlaces(way, word), sides, all, need.kind() == Need.Kind.SIGN && left(way, need));
    }

    private static boolean left(Way way, Need need) {
        for (Way.Pattern pattern : way.patterns()) {
            if (pattern.fact().equals("Seen") && pattern.flags().contains("left") && pattern.quoted("sign").contains(need.what())) {
                return true;
            }
        }
        return false;
    }
}
