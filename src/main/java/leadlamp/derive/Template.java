package leadlamp.derive;

/** A sum's words with its figures put in. */
final class Template {
    private Template() {
    }

    static String fill(String words, In in) {
        StringBuilder out = new StringBuilder(words.length() + 40);
        int at = 0;
        while (at < words.length()) {
            char c = words.charAt(at);
            if (c == '[') {
                int end = words.indexOf(']', at);
                String inside = words.substring(at + 1, end);
                if (whole(inside, in)) {
                    out.append(fill(inside, in));
                }
                at = end + 1;
            } else if (c == '{') {
                int end = words.indexOf('}', at);
                put(out, in.show(words.substring(at + 1, end)));
                at = end + 1;
            } else {
                int end = at + 1;
                while (end < words.length() && words.charAt(end) != '[' && words.charAt(end) != '{') {
                    end++;
                }
                out.append(words, at, end);
                at = end;
            }
        }
        return out.toString();
    }

    private static boolean whole(String inside, In in) {
        for (int at = inside.indexOf('{'); at >= 0; at = inside.indexOf('{', at + 1)) {
            if (!in.has(inside.substring(at + 1, inside.indexOf('}', at)))) {
                return false;
            }
        }
        return true;
    }

    /** A figure below nought after a minus is an addition, as a builder would write it. */
    private static void put(StringBuilder out, String figure) {
        int length = out.length();
        if (figure.startsWith("-") && length >= 2 && out.charAt(length - 1) == ' ') {
            char sign = out.charAt(length - 2);
            if ((sign == '-' || sign == '+') && (length < 3 || out.charAt(length - 3) == ' ')) {
                out.setCharAt(length - 2, sign == '-' ? '+' : '-');
                out.append(figure, 1, figure.length());
                return;
            }
            if (sign == 'x' || sign == '/') {
                out.append('(').append(figure).append(')');
                return;
            }
        }
        out.append(figure);
    }
}
