package leadlamp.record;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import leadlamp.calc.Threads;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import leadlamp.words.Property;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** Which lines of a sheet's sections are sizes, and of what: a slip in one must not pass for a line that is merely words. */
final class SheetSizes {
    private final Vocabulary words;
    private final Map<String, Map<String, List<String>>> sections = new HashMap<>();

    SheetSizes(Vocabulary words) {
        this.words = words;
    }

    /** What a line is a size of, by the vocabulary's `sized` of its section; empty where it may be words. */
    Optional<Dimension> of(String section, String what) {
        Map<String, List<String>> sizes = sections.get(section);
        if (sizes == null) {
            sizes = words.property("sheet", section).map(Property::sized).orElse(Map.of());
            sections.put(section, sizes);
        }
        String others = "";
        for (Map.Entry<String, List<String>> size : sizes.entrySet()) {
            if (size.getValue().contains(what)) {
                return Dimension.named(size.getKey());
            }
            others = size.getValue().contains(Property.EACH_LINE) ? size.getKey() : others;
        }
        return others.equals(Property.AS_READ) ? words.quantity(what).map(Quantity::dimension) : Dimension.named(others);
    }

    /** The size; where a figure stands there that is none, the sheet is told so and nothing is taken. */
    static Optional<Written> read(String what, Node.Scalar said, Dimension dimension, Complaints complaints) {
        Reading.Result result = Reading.read(said.text(), dimension, Optional.empty());
        if (result instanceof Reading.Read read) {
            return read.written().figure() ? Optional.of(read.written()) : Optional.empty();
        }
        if (figure(said.text())) {
            Reading.Unread unread = (Reading.Unread) result;
            complaints.add(SheetReader.moved(said.where(), unread.offset()), unread.length(), unread.what(), unread.expected(), unread.nearest(),
                    "The line was kept as words; what is worked out from the sheet's " + what + " is left out.");
        }
        return Optional.empty();
    }

    /** A thread that cannot be cut, or a family that is not known, is told; a taper is known by name alone. */
    static void thread(Node.Scalar said, Complaints complaints) {
        String text = said.text();
        if (figure(text) && !text.toLowerCase(Locale.ROOT).contains("taper") && Threads.named(text).isEmpty()) {
            complaints.add(said.where(), text.length(), "\"" + text + "\" is no thread that can be cut.", "As M8x1.25 or 5/16-18.",
                    Optional.empty(), "The line was kept as words; nothing is worked out from this thread.");
        }
    }

    /** Whether a figure was meant: it has a digit, or it is what a computer writes where it has none. */
    private static boolean figure(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) >= '0' && text.charAt(i) <= '9') {
                return true;
            }
        }
        String plain = text.toLowerCase(Locale.ROOT).replace(".", "").replace("-", "").replace("+", "");
        return plain.equals("nan") || plain.equals("inf") || plain.equals("infinity");
    }
}
