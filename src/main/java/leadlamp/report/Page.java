package leadlamp.report;

/** Puts a page together. Whatever comes from a record goes through {@link #text}. */
final class Page {
    private final StringBuilder out = new StringBuilder(32_768);

    /** Markup of our own, as it is. */
    Page raw(String markup) {
        out.append(markup);
        return this;
    }

    /** Text, which stays text. */
    Page text(String text) {
        String plain = Plain.of(text);
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            switch (c) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.append(c);
            }
        }
        return this;
    }

    /** An element that holds text alone; nothing where there is no text. */
    Page element(String open, String text, String close) {
        return text.isEmpty() ? this : raw(open).text(text).raw(close).raw("\n");
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
