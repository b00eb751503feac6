package leadlamp.rank;

import java.util.Comparator;
import java.util.List;

/** The orders of the lists. Each is total: two answers are never of one check, subject and place. */
public final class Order {
    // Put together by hand: comparators that the Java library chains are made anew at each start, which costs more than the sort.

    /** Topic, check and place. */
    static final Comparator<Ranked> CLEAR = Order::byPlace;

    /** Level, harm to a person, certainty, last chance; then topic, check and place. */
    static final Comparator<Ranked> FOUND = Order::found;

    /** Worst harm, harm to a person, probability of being outside, last chance; then topic, check and place. */
    static final Comparator<Ranked> OPEN = Order::open;

    /** The longer list of open questions first; of two as long, that with the worst question. */
    static final Comparator<List<Ranked>> OPEN_LISTS = (one, other) -> one.size() != other.size()
            ? Integer.compare(other.size(), one.size()) : open(one.get(0), other.get(0));

    private Order() {
    }

    private static int found(Ranked one, Ranked other) {
        int order = one.weights().get(0).level().compareTo(other.weights().get(0).level());
        order = order != 0 ? order : Boolean.compare(other.person(), one.person());
        order = order != 0 ? order : one.certainty().orElse(Certainty.INFERRED).compareTo(other.certainty().orElse(Certainty.INFERRED));
        order = order != 0 ? order : one.chance().compareTo(other.chance());
        return order != 0 ? order : byPlace(one, other);
    }

    private static int open(Ranked one, Ranked other) {
        int order = one.worst().compareTo(other.worst());
        order = order != 0 ? order : Boolean.compare(other.person(), one.person());
        order = order != 0 ? order : Double.compare(-one.outside(), -other.outside());
        order = order != 0 ? order : one.chance().compareTo(other.chance());
        return order != 0 ? order : byPlace(one, other);
    }

    private static int byPlace(Ranked one, Ranked other) {
        int order = one.check().topic().compareTo(other.check().topic());
        order = order != 0 ? order : one.check().id().compareTo(other.check().id());
        order = order != 0 ? order : natural(one.ask().of(), other.ask().of());
        return order != 0 ? order : natural(one.ask().at(), other.ask().at());
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
