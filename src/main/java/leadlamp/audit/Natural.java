package leadlamp.audit;

/** Words by their letters, numbers by their size: `2 intake` before `10 intake`. */
final class Natural {
    private Natural() {
    }

    static int compare(String one, String other) {
        int i = 0;
        int k = 0;
        while (i < one.length() && k < other.length()) {
            if (digit(one.charAt(i)) && digit(other.charAt(k))) {
                int endOne = end(one, i);
                int endOther = end(other, k);
                int byLength = Integer.compare(endOne - i, endOther - k);
                int byDigits = byLength != 0 ? byLength
                        : one.substring(i, endOne).compareTo(other.substring(k, endOther));
                if (byDigits != 0) {
                    return byDigits;
                }
                i = endOne;
                k = endOther;
            } else if (one.charAt(i) != other.charAt(k)) {
                return Character.compare(one.charAt(i), other.charAt(k));
            } else {
                i++;
                k++;
            }
        }
        return Integer.compare(one.length() - i, other.length() - k);
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
