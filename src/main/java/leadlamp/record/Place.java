package leadlamp.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A place taken apart: `1 intake front` is cylinder 1, side intake, end front. Big end 1 is that of cylinder 1; main 1
 * belongs to no cylinder. A place covers another when all that it says holds of the other as well; `engine` covers all.
 */
public final class Place {
    /** The one place of what an engine has once. */
    public static final String ENGINE = "engine";

    private static final Map<String, String> AXIS = Map.ofEntries(
            Map.entry("intake", "side"), Map.entry("exhaust", "side"), Map.entry("left", "bank"), Map.entry("right", "bank"),
            Map.entry("front", "end"), Map.entry("rear", "end"), Map.entry("middle", "end"), Map.entry("upper", "half"),
            Map.entry("lower", "half"), Map.entry("first", "ring"), Map.entry("second", "ring"), Map.entry("oil", "ring"),
            Map.entry("unworn", "height"), Map.entry("top", "height"), Map.entry("mid", "height"),
            Map.entry("bottom", "height"), Map.entry("thrust", "direction"), Map.entry("pin", "direction"),
            Map.entry("inside", "spot"), Map.entry("outside", "spot"), Map.entry("edge", "spot"),
            Map.entry("across", "spot"), Map.entry("lengthwise", "spot"), Map.entry("base", "spot"), Map.entry("boost", "spot"),
            Map.entry("held", "spot"));
    private static final Set<String> SPOTS = Set.of("hot place", "cool place", "pump end", "far end", "main gallery", "far point");
    private static final List<String> ORDER = List.of("main", "big end", "cylinder", "bank", "side", "number", "end", "half",
            "ring", "height", "direction", "spot", "quarter", "angle", "bolt");
    private static final Map<String, Place> KNOWN = new ConcurrentHashMap<>();

    /** All that it says, by the alphabet, one object a word: places are held against one another many thousand times an audit. */
    private final String[] each;
    /** A mark for each word, one of sixty-four: a place with a mark that another lacks says something that the other does not. */
    private final long marks;
    private String ordered;
    private List<String> words;

    private Place(List<String> says) {
        this.each = says.toArray(new String[0]);
        long all = 0;
        for (int i = 0; i < each.length; i++) {
            each[i] = each[i].intern();
            all |= 1L << each[i].hashCode();
        }
        this.marks = all;
    }

    /** The words of a place, in order. */
    public static List<String> words(String at) {
        // As with its order: threads may both part it, into the same words.
        Place place = of(at);
        if (place.words == null) {
            place.words = List.copyOf(parted(at));
        }
        return place.words;
    }

    private static List<String> parted(String at) {
        List<String> words = new ArrayList<>(4);
        int start = 0;
        for (int blank = at.indexOf(' '); blank >= 0; blank = at.indexOf(' ', start)) {
            words.add(at.substring(start, blank));
            start = blank + 1;
        }
        words.add(at.substring(start));
        return words;
    }

    /** Whether all that the other says holds of this one as well. */
    private boolean holds(Place other) {
        if ((other.marks & ~marks) != 0) {
            return false;
        }
        int i = 0;
        for (String word : other.each) {
            while (i < each.length && each[i] != word) {
                i++;
            }
            if (i++ >= each.length) {
                return false;
            }
        }
        return true;
    }

    /** A place as it was met last, by its text: most questions are about the same few hundred. Threads may overwrite each other's. */
    private static final Met[] MET = new Met[2048];

    private record Met(String text, Place place) {
    }

    /** A place by its text. */
    public static Place of(String text) {
        int slot = text.hashCode() & MET.length - 1;
        Met met = MET[slot];
        if (met != null && (met.text == text || met.text.equals(text))) {
            return met.place;
        }
        Place known = KNOWN.get(text);
        if (known == null) {
            known = new Place(parse(text));
            if (KNOWN.size() < 100_000) {
                KNOWN.put(text, known);
            }
        }
        MET[slot] = new Met(text, known);
        return known;
    }

    /** Whether what holds at the shorter place holds at the longer one too; a place covers itself. */
    public static boolean covers(String shorter, String longer) {
        // Each word of the shorter place stands in the longer one too, so its text is no longer than that.
        return shorter.equals(longer) || shorter.equals(ENGINE)
                || shorter.length() <= longer.length() && !longer.equals(ENGINE) && of(longer).holds(of(shorter));
    }

    /** Whether what holds here holds at the longer place too, for whoever holds one place against many. */
    public boolean covers(Place longer) {
        return this == longer || longer.holds(this);
    }

    /** Whether one of the shorter places covers the longer one. */
    public static boolean covered(Iterable<String> shorter, String longer) {
        for (String one : shorter) {
            if (covers(one, longer)) {
                return true;
            }
        }
        return false;
    }

    /** Whether one of the two covers the other. */
    public static boolean related(String one, String other) {
        if (one.equals(other) || one.equals(ENGINE) || other.equals(ENGINE)) {
            return true;
        }
        int longer = one.length() - other.length();
        return longer >= 0 && of(one).holds(of(other)) || longer <= 0 && of(other).holds(of(one));
    }

    /** Whether one of the two covers the other, for whoever holds one place against many. */
    public boolean related(Place other) {
        return this == other || holds(other) || other.holds(this);
    }

    /**
     * The place with its words big to small: number, bank, side, end, half, ring, height, direction, angle. A name stays
     * as it is.
     */
    public static String inOrder(String text) {
        if (text.startsWith("one of ") || text.startsWith("some of ") || text.indexOf(' ') < 0) {
            return text;
        }
        // The same few hundred places again and again. Threads may both put one in order; it comes out the same.
        Place place = of(text);
        if (place.ordered == null) {
            place.ordered = ordered(text, place.each);
        }
        return place.ordered;
    }

    private static String ordered(String text, String[] says) {
        StringBuilder ordered = new StringBuilder();
        boolean ofBigEnd = false;
        int taken = 0;
        for (String axis : ORDER) {
            for (String word : says) {
                if (word.startsWith(axis) && word.length() > axis.length() && word.charAt(axis.length()) == ' ') {
                    // What belongs to a big end belongs to its cylinder too, which its text does not say again.
                    if (!(ofBigEnd && axis.equals("cylinder"))) {
                        if (taken > 0) {
                            ordered.append(' ');
                        }
                        ordered.append(written(axis, word.substring(axis.length() + 1)));
                    }
                    ofBigEnd |= axis.equals("big end");
                    taken++;
                }
            }
        }
        return taken == says.length && taken > 0 ? ordered.toString() : text;
    }

    private static String written(String axis, String word) {
        return switch (axis) {
            case "main", "big end" -> axis + " " + word;
            case "angle" -> "at " + word;
            case "quarter" -> word + " o'clock";
            default -> word;
        };
    }

    /**
     * Whether the longer place is a part of the shorter one: it may add the end, half or direction of what is there, and
     * never a number, which is that of another thing: a cylinder, a bearing. Only what has a name has numbers of its own.
     */
    static boolean divides(String shorter, String longer) {
        List<String> known = List.of(of(shorter).each);
        boolean named = !isOfWords(shorter);
        for (String word : of(longer).each) {
            if (!known.contains(word) && (word.startsWith("cylinder ") || word.startsWith("main ") || word.startsWith("big end ")
                    || word.startsWith("number ") && !named)) {
                return false;
            }
        }
        return true;
    }

    /** Whether the text is made of words of place alone, and not the name of something. */
    static boolean isOfWords(String text) {
        for (String word : of(text).each) {
            if (word.startsWith("name ") || word.startsWith("rest ")) {
                return false;
            }
        }
        return true;
    }

    private static List<String> parse(String text) {
        List<String> says = new ArrayList<>(4);
        if (text.equals(ENGINE)) {
            return says;
        }
        if (text.startsWith("one of ") || text.startsWith("some of ")) {
            says.add("untold ".concat(text));
            return says;
        }
        List<String> words = parted(text);
        int to = words.indexOf("to");
        if (to > 0 && to + 1 < words.size()) {
            int end = to + 2;
            while (end < words.size() && !isAxis(words.get(end)) && !isNumber(words.get(end))) {
                end++;
            }
            add(says, "name", joined(words, 0, end));
            int rest = end;
            if (words.size() == rest + 2 && words.get(rest + 1).equals("side")) {
                add(says, "row", joined(words, rest, words.size()));
                return says;
            }
            if (rest < words.size() && isNumber(words.get(rest))) {
                add(says, "number", words.get(rest++));
            }
            if (!axes(words, rest, says, true)) {
                add(says, "rest", joined(words, rest, words.size()));
            }
            return says;
        }
        if (!axes(words, 0, says, false)) {
            says.clear();
            says.add("name ".concat(text));
        }
        return says;
    }

    private static String joined(List<String> words, int from, int to) {
        return String.join(" ", words.subList(from, to));
    }

    /** What a place says stands by the alphabet, each once. */
    private static void add(List<String> says, String axis, String word) {
        String said = word.isEmpty() ? axis : axis.concat(" ").concat(word);
        int at = says.size();
        while (at > 0 && says.get(at - 1).compareTo(said) >= 0) {
            at--;
        }
        if (at == says.size() || !says.get(at).equals(said)) {
            says.add(at, said);
        }
    }

    /** Takes the words from there on as axis words; false where one of them is none. */
    private static boolean axes(List<String> words, int from, List<String> says, boolean named) {
        List<String> found = new ArrayList<>(8);
        for (int i = from; i < words.size(); i++) {
            String word = words.get(i);
            String next = i + 1 < words.size() ? words.get(i + 1) : "";
            if (word.equals("main") && isNumber(next)) {
                put(found, "main", next);
                i++;
            } else if (word.equals("big") && next.equals("end") && i + 2 < words.size() && isNumber(words.get(i + 2))) {
                put(found, "big end", words.get(i + 2));
                put(found, "cylinder", words.get(i + 2));
                i += 2;
            } else if (word.equals("at") && isNumber(next)) {
                put(found, "angle", next);
                i++;
            } else if (isNumber(word)) {
                put(found, named || i > from ? (find(found, "big end") < found.size() ? "bolt" : "number") : "cylinder", word);
            } else if (word.equals("and") && isNumber(next)) {
                put(found, "and", next);
                i++;
            } else if (next.equals("o'clock")) {
                put(found, "quarter", word);
                i++;
            } else if (!next.isEmpty() && SPOTS.contains(word.concat(" ").concat(next))) {
                put(found, "spot", word.concat(" ").concat(next));
                i++;
            } else {
                String axis = AXIS.get(word);
                if (axis == null || find(found, axis) < found.size()) {
                    return false;
                }
                put(found, axis, word);
            }
        }
        tell(found, says);
        return true;
    }

    private static void tell(List<String> found, List<String> says) {
        int and = find(found, "and");
        if (and < found.size() && find(found, "cylinder") < found.size()) {
            // Two neighbours: what concerns either concerns the pair, so the pair belongs to both.
            for (String axis : List.of("cylinder", "big end")) {
                int at = find(found, axis);
                if (at < found.size()) {
                    add(says, axis, found.get(at + 1));
                    add(says, axis, found.get(and + 1));
                }
            }
            add(says, "pair", "");
            return;
        }
        for (int i = 0; i < found.size(); i += 2) {
            add(says, found.get(i), found.get(i + 1));
        }
    }

    /** Axes and their words by turns: where an axis stands, or past the end. */
    private static int find(List<String> found, String axis) {
        int at = 0;
        while (at < found.size() && !found.get(at).equals(axis)) {
            at += 2;
        }
        return at;
    }

    /** The last word of an axis holds. */
    private static void put(List<String> found, String axis, String word) {
        int at = find(found, axis);
        if (at < found.size()) {
            found.set(at + 1, word);
        } else {
            found.add(axis);
            found.add(word);
        }
    }

    private static boolean isAxis(String word) {
        return AXIS.containsKey(word);
    }

    private static boolean isNumber(String word) {
        if (word.isEmpty()) {
            return false;
        }
        for (int i = 0; i < word.length(); i++) {
            if (!Character.isDigit(word.charAt(i)) && !(i > 0 && word.charAt(i) == '.')) {
                return false;
            }
        }
        return true;
    }
}
