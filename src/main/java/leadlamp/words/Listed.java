package leadlamp.words;

import java.util.ArrayList;
import java.util.List;

/** Words that stand in one text with commas between them, as a sheet writes a route or a record the places meant. */
public final class Listed {
    private static final String BETWEEN = ", ";

    private Listed() {
    }

    /** The words, in order; one alone is a list of one. A pattern would do, and take longer to make than to use at a first start. */
    public static List<String> in(String text) {
        List<String> words = new ArrayList<>(4);
        int start = 0;
        for (int end = text.indexOf(BETWEEN); end >= 0; end = text.indexOf(BETWEEN, start)) {
            words.add(text.substring(start, end));
            start = end + BETWEEN.length();
        }
        words.add(text.substring(start));
        return words;
    }
}
