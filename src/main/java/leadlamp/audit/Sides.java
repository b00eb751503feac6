package leadlamp.audit;

import java.util.List;

/**
 * The sides of a limit that a way's rule asks of a quantity.
 *
 * @param verdict whether it asks for a verdict at all
 * @param least   whether being below is asked
 * @param most    whether being above is asked
 */
record Sides(boolean verdict, boolean least, boolean most) {
    static final Sides NONE = new Sides(false, false, false);

    /** Of one way. */
    static Sides of(Way way, String quantity) {
        boolean verdict = false;
        boolean least = false;
        boolean most = false;
        for (Way.Pattern pattern : way.patterns()) {
            if (pattern.fact().equals("Verdict") && names(pattern, quantity)) {
                verdict = true;
                List<String> flags = pattern.flags();
                boolean both = flags.isEmpty() || flags.contains("outside");
                least |= both || flags.contains("below");
                most |= both || flags.contains("above");
            }
        }
        return verdict ? new Sides(true, least, most) : NONE;
    }

    /** Of all ways of a check together. */
    static Sides of(Check check, String quantity) {
        Sides all = NONE;
        for (Way way : check.ways()) {
            Sides one = of(way, quantity);
            all = new Sides(all.verdict || one.verdict, all.least || one.least, all.most || one.most);
        }
        return all;
    }

    private static boolean names(Way.Pattern pattern, String quantity) {
        List<String> of = pattern.quoted("of");
        List<String> kind = pattern.quoted("kind");
        return of.contains(quantity) || kind.contains(quantity) || of.isEmpty() && kind.isEmpty();
    }
}
