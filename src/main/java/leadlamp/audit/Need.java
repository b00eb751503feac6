package leadlamp.audit;

import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import leadlamp.facts.Ask;
import leadlamp.record.Place;
import leadlamp.words.Part;
import leadlamp.words.Property;
import leadlamp.words.Quantity;
import leadlamp.words.Sign;
import leadlamp.words.Vocabulary;

/**
 * A word of `needs`, `heeds`, `applies` and conditions, taken apart: the name of a fact, made from its fields.
 *
 * @param word  as written: `cam gear pin form`, `piston skirt scuffed`, `sheet joint lubricant`
 * @param kind  what kind of fact it names
 * @param of    subject: part, joint, quantity or section; empty for `any ...`
 * @param what  property, sign or step; for a READING its mark (`as found`), else empty; for `any ...` the rest
 * @param group the group whose places it is wanted at; empty where it is wanted at the place asked
 */
record Need(String word, Kind kind, String of, String what, String group) {

    /** Kinds of fact that a word can name. */
    enum Kind {
        /** A value, read or worked out. */
        READING,
        /** A word said of a part, joint, section, gauge, or of a reading. */
        WORD,
        /** A step of the work. */
        STEP,
        /** A sign seen, or looked for and not there. */
        SIGN,
        /** A line of the engine sheet. */
        SHEET,
        /** A named condition. */
        CONDITION,
        /** A word of whatever the group runs over: `any part origin`, `any reading`, `any sign`. */
        ANY
    }

    static final String ANY_PART = "any part";
    static final String ANY_READING = "any reading";
    static final String ANY_SIGN = "any sign";
    private static final Set<String> SECTIONS = Set.of("use", "build", "machining", "protection", "gauge",
            "observations");
    /** Sections of the engine sheet whose lines have names: a sensor, a plug. */
    private static final Set<String> LINES_BY_NAME = Set.of("drive", "plugs", "seals", "jets", "sealants", "sensors",
            "lives", "timed shafts");
    private static final Set<String> MARKS = Set.of("as found", "as trial");

    /** Taken apart; empty where the vocabulary has no such word. */
    static Optional<Need> of(String word, Vocabulary words) {
        if (word.startsWith("sheet ")) {
            return Optional.of(sheet(word, word.substring(6), words));
        }
        if (word.startsWith("condition ")) {
            String name = word.substring(10);
            return words.conditions().containsKey(name)
                    ? Optional.of(new Need(word, Kind.CONDITION, name, "", Place.ENGINE)) : Optional.empty();
        }
        if (word.startsWith("any ")) {
            return Optional.of(new Need(word, Kind.ANY, "", word.substring(4), Place.ENGINE));
        }
        Optional<Need> reading = reading(word, word, "", words);
        if (reading.isPresent()) {
            return reading;
        }
        for (String mark : MARKS) {
            if (word.endsWith(" " + mark)) {
                Optional<Need> marked = reading(word, word.substring(0, word.length() - mark.length() - 1), mark, words);
                if (marked.isPresent()) {
                    return marked;
                }
            }
        }
        int first = word.indexOf(' ');
        if (first > 0) {
            Optional<Need> section = section(word, word.substring(0, first), word.substring(first + 1), words);
            if (section.isPresent()) {
                return section;
            }
        }
        for (int end = word.lastIndexOf(' '); end > 0; end = word.lastIndexOf(' ', end - 1)) {
            Optional<Need> found = split(word, word.substring(0, end), word.substring(end + 1), words);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<Need> reading(String word, String name, String mark, Vocabulary words) {
        Optional<Quantity> quantity = words.quantity(name);
        if (quantity.isPresent() && quantity.get().name().equals(name)) {
            return Optional.of(new Need(word, Kind.READING, name, mark, quantity.get().group()));
        }
        return Optional.empty();
    }

    private static Optional<Need> section(String word, String section, String rest, Vocabulary words) {
        if (section.equals("steps")) {
            return words.step(rest).filter(s -> s.name().equals(rest))
                    .map(s -> new Need(word, Kind.STEP, "steps", rest, Place.ENGINE));
        }
        if (section.equals("joint")) {
            return jointHas(rest, words)
                    ? Optional.of(new Need(word, Kind.WORD, "joint", rest, "each joint")) : Optional.empty();
        }
        if (!SECTIONS.contains(section)) {
            return Optional.empty();
        }
        if (section.equals("gauge")) {
            return words.property("gauges", rest).isPresent() || words.property("gauge", rest).isPresent()
                    || rest.equals("kind") ? Optional.of(new Need(word, Kind.WORD, section, rest, "each gauge"))
                    : Optional.empty();
        }
        if (section.equals("machining") || section.equals("observations")) {
            Optional<Part> part = words.part(rest).filter(p -> p.name().equals(rest));
            return part.map(p -> new Need(word, Kind.WORD, section, rest, p.group()));
        }
        if (section.equals("protection") || words.property(section, rest).isPresent()) {
            return Optional.of(new Need(word, Kind.WORD, section, rest, Place.ENGINE));
        }
        return Optional.empty();
    }

    private static boolean jointHas(String what, Vocabulary words) {
        return what.equals("torque said") || what.equals("meant") || words.property("fasteners", what).isPresent()
                || words.property("threads", what).isPresent() || words.property("parts", what).isPresent();
    }

    private static Optional<Need> split(String word, String of, String what, Vocabulary words) {
        boolean asFound = of.endsWith(" as found");
        String name = asFound ? of.substring(0, of.length() - 9) : of;
        Optional<Part> part = words.part(name).filter(p -> p.name().equals(name));
        if (part.isPresent()) {
            String group = part.get().group();
            if (partHas(part.get(), what, words)) {
                return Optional.of(new Need(word, Kind.WORD, of, what, group));
            }
            if (!asFound && isSign(what, words)) {
                return Optional.of(new Need(word, Kind.SIGN, of, what, group));
            }
            if (!asFound && aside(what, words)) {
                return Optional.of(new Need(word, Kind.WORD, of, what, group));
            }
        }
        Optional<Quantity> quantity = words.quantity(of).filter(q -> q.name().equals(of));
        if (quantity.isPresent() && (what.equals("figure") || what.equals("state")
                || words.property("measurements", what).isPresent())) {
            return Optional.of(new Need(word, Kind.WORD, of, what, quantity.get().group()));
        }
        return Optional.empty();
    }

    /** Whether a part may have this word; a short list of parts binds, but for the kinds of the part. */
    private static boolean partHas(Part part, String what, Vocabulary words) {
        if (what.equals("class wanted") || what.equals("size wanted")) {
            return true;
        }
        Optional<Property> property = words.property("parts", what).filter(p -> p.name().equals(what));
        if (property.isEmpty()) {
            return false;
        }
        Collection<String> of = property.get().of();
        if (of.isEmpty() || of.contains(part.name())) {
            return true;
        }
        for (String kind : part.kinds()) {
            if (of.contains(kind)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isSign(String what, Vocabulary words) {
        return words.sign(what).filter(s -> s.name().equals(what)).isPresent();
    }

    /** `scuffed pattern`: a word that stands beside a sign. */
    private static boolean aside(String what, Vocabulary words) {
        for (int end = what.lastIndexOf(' '); end > 0; end = what.lastIndexOf(' ', end - 1)) {
            Optional<Sign> sign = words.sign(what.substring(0, end));
            String rest = what.substring(end + 1);
            if (sign.isPresent() && sign.get().name().equals(what.substring(0, end))
                    && (rest.equals("as") || words.property("observations", rest).isPresent())) {
                return true;
            }
        }
        return false;
    }

    private static Need sheet(String word, String rest, Vocabulary words) {
        if (rest.startsWith("joint ")) {
            return new Need(word, Kind.SHEET, "joint", rest.substring(6), "each joint");
        }
        for (int end = rest.lastIndexOf(' '); end > 0; end = rest.lastIndexOf(' ', end - 1)) {
            String name = rest.substring(0, end);
            Optional<Part> part = words.part(name).filter(p -> p.name().equals(name));
            if (part.isPresent() && words.properties("sheet " + name).isEmpty()) {
                return new Need(word, Kind.SHEET, name, rest.substring(end + 1), part.get().group());
            }
        }
        for (String named : LINES_BY_NAME) {
            if (rest.startsWith(named + " ")) {
                return new Need(word, Kind.SHEET, named, rest.substring(named.length() + 1), "");
            }
        }
        int first = rest.indexOf(' ');
        return first < 0 ? new Need(word, Kind.SHEET, rest, "", Place.ENGINE)
                : new Need(word, Kind.SHEET, rest.substring(0, first), rest.substring(first + 1), Place.ENGINE);
    }

    /**
     * The word that `any ...` stands for where the group runs over parts, readings, signs or steps. A word of another
     * kind stands for itself.
     */
    Optional<Need> at(Ask ask, Vocabulary words) {
        if (kind != Kind.ANY) {
            return Optional.of(this);
        }
        if (ask.of().isEmpty()) {
            return Optional.empty();
        }
        String rest = word.startsWith(ANY_PART) ? word.substring(ANY_PART.length())
                : word.startsWith(ANY_READING) ? word.substring(ANY_READING.length())
                : word.startsWith(ANY_SIGN) ? word.substring(ANY_SIGN.length())
                : word.startsWith("any step") ? word.substring(8)
                : word.startsWith("any machining") ? word.substring(13)
                : word.startsWith("any protection") ? word.substring(14) : " " + what;
        String before = word.startsWith("any step") ? "steps " : word.startsWith("any machining") ? "machining "
                : word.startsWith("any protection") ? "protection " : "";
        return of(before + ask.of() + rest, words);
    }

    /** Whether this names a reading as it was found, or a part that came out. */
    boolean asFound() {
        return what.equals("as found") || of.endsWith(" as found");
    }
}
