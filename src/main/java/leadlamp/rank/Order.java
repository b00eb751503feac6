package leadlamp.rank;

import java.util.Comparator;
import java.util.List;

/** The orders of the lists. Each is total: two answers are never of one check, subject and place. */
public final class Order {
    private static final Comparator<Ranked> BY_PLACE = Comparator
            .comparing((Ranked r) -> r.check().topic())
            .thenComparing(r -> r.check().id())
            .thenComparing(r -> r.ask().of(), Order::natural)
            .thenComparing(r -> r.ask().at(), Order::natural);

    /** Level, harm to a person, certainty, last chance; then topic, check and place. */
    static final Comparator<Ranked> FOUND = Comparator
            .comparing((Ranked r) -> r.weights().get(0).level())
            .thenComparing(r -> !r.person())
            .thenComparing(r -> r.certainty().orElse(Certainty.INFERRED))
            .thenComparing(Ranked::chance)
            .thenComparing(BY_PLACE);

    /** Worst harm, harm to a person, probability of being outside, last chance; then topic, check and place. */
    static final Comparator<Ranked> OPEN = Comparator
            .comparing(Ranked::worst)
            .thenComparing(r -> !r.person())
            .thenComparing(r -> -r.outside())
            .thenComparing(Ranked::chance)
            .thenComparing(BY_PLACE);

    static final Comparator<Ranked> CLEAR = BY_PLACE;

    /** The longer list of open questions first; of two as long, that with the worst question. */
    static final Comparator<List<Ranked>> OPEN_LISTS = Comparator
            .comparing((List<Ranked> list) -> -list.size())
            .thenComparing(list -> list.get(0), OPEN);

    private Order() {
    }

    /** Words by their letters, numbers by their size: `2 intake` before `10 intake`. */
    public static int natural(String one, String other) {
        int i = 0;
        int j = 0;
        while (i < one.length() && j < other.length()) {
            if (digit(one.charAt(i)) && digit(other.charAt(j))) {
                int endOne = end(one, i);
                int endOther = end(other, j);
                int byLength = Integer.compare(endOne - i, endOther - j);
                int byDigits = byLength != 0 ? byLength
                        : one.substring(i, endOne).compareTo(other.substring(j, endOther));
                if (byDigits != 0) {
                    return byDigits;
                }
                i = endOne;
                j = endOther;
            } else if (one.charAt(i) != other.charAt(j)) {
                return Character.compare(one.charAt(i), other.charAt(j));
            } else {
                i++;
                j++;
            }
        }
        return Integer.compare(one.length() - i, other.length() - j);
    }

    private static int end(String text, int from) {
        int end = from;
        while (end < text.length() && digit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }
}
