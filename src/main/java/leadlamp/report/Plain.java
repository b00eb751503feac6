package leadlamp.report;

/** Text from a record, made harmless: what would steer a terminal or hide in a page is shown, not obeyed. */
public final class Plain {
    private static final String HEX = "0123456789ABCDEF";

    private Plain() {
    }

    /** The same text with each control or direction character spelt out, as `\u001B`; most texts have none. */
    public static String of(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (steers(text, i)) {
                return spelt(text);
            }
        }
        return text;
    }

    private static String spelt(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\t') {
                out.append(' ');
            } else if (steers(text, i)) {
                out.append(number(c));
            } else {
                out.append(c);
            }
        }
        return out.toString();
    }

    /** A character by its number. */
    static String number(char c) {
        return "\\u" + HEX.charAt(c >> 12 & 15) + HEX.charAt(c >> 8 & 15) + HEX.charAt(c >> 4 & 15) + HEX.charAt(c & 15);
    }

    /** Also halves of a pair that stand alone. */
    private static boolean steers(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        if (Character.isLowSurrogate(c)) {
            return i == 0 || !Character.isHighSurrogate(text.charAt(i - 1));
        }
        return steers(c);
    }

    /** Control characters, marks of line and direction, and what has no width. */
    static boolean steers(char c) {
        return c < ' ' || c >= 0x7F && c < 0xA0 || c == 0x061C || c == 0x200B || c >= 0x200E && c <= 0x200F
                || c >= 0x2028 && c <= 0x202E || c >= 0x2060 && c <= 0x206F || c == 0xFEFF || c >= 0xFFF9 && c <= 0xFFFB;
    }
}
