package leadlamp.audit;

import java.util.Optional;
import java.util.Set;
import leadlamp.facts.Ask;
import leadlamp.record.Place;
import leadlamp.words.Name;
import leadlamp.words.Names;
import leadlamp.words.Part;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * A word of `needs`, `heeds`, `applies` and conditions, taken apart: the name of a fact, made from its fields.
 *
 * @param word  as written: `cam gear pin form`, `piston skirt scuffed`, `sheet joint lubricant`
 * @param kind  what kind of fact it names
 * @param of    subject: part, joint, quantity or section; `any part` and the like for a word of what the group runs over
 * @param what  property, sign or step; for a READING its mark (`as found`), else empty
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
    /** Sections of the engine sheet whose lines have names: a sensor, a plug. */
    private static final Set<String> LINES_BY_NAME = Set.of("drive", "plugs", "seals", "jets", "sealants", "sensors",
            "lives", "timed shafts");

    /** Taken apart; empty where the vocabulary has no such word. */
    static Optional<Need> of(String word, Vocabulary words) {
        return Names.resolve(word, words).map(name -> of(word, name, words));
    }

    private static Need of(String word, Name name, Vocabulary words) {
        if (name instanceof Name.QuantityName reading) {
            return new Need(word, Kind.READING, reading.quantity(), reading.mark(), ofQuantity(reading.quantity(), words));
        }
        if (name instanceof Name.JointTorque) {
            return new Need(word, Kind.READING, word, "", ofQuantity(word, words));
        }
        if (name instanceof Name.SignOf sign) {
            return new Need(word, Kind.SIGN, sign.of(), sign.what(), ofPart(sign.of(), words));
        }
        if (name instanceof Name.SheetWord line) {
            return new Need(word, Kind.SHEET, line.of(), line.what(), line.of().equals("joint") ? "each joint"
                    : LINES_BY_NAME.contains(line.of()) ? "" : ofPart(line.of(), words));
        }
        if (name instanceof Name.ConditionName) {
            return new Need(word, Kind.CONDITION, name.of(), "", Place.ENGINE);
        }
        if (name instanceof Name.AnyWord) {
            return new Need(word, Kind.ANY, name.of(), name.what(), Place.ENGINE);
        }
        if (name instanceof Name.SectionWord section) {
            return switch (section.of()) {
                case "steps" -> new Need(word, Kind.STEP, "steps", section.what(), Place.ENGINE);
                case "gauge" -> new Need(word, Kind.WORD, "gauge", section.what(), "each gauge");
                case "machining", "observations" -> new Need(word, Kind.WORD, section.of(), section.what(),
                        ofPart(partOf(section.what(), words), words));
                default -> new Need(word, Kind.WORD, section.of(), section.what(), Place.ENGINE);
            };
        }
        if (name instanceof Name.JointWord) {
            return new Need(word, Kind.WORD, name.of(), name.what(), "each joint");
        }
        String subject = unmarked(name.of());
        return new Need(word, Kind.WORD, name.of(), name.what(), name instanceof Name.ReadingAside
                ? ofQuantity(subject, words) : ofPart(subject, words));
    }

    private static String ofQuantity(String quantity, Vocabulary words) {
        return words.quantity(quantity).map(Quantity::group).orElse(Place.ENGINE);
    }

    private static String ofPart(String part, Vocabulary words) {
        return words.part(part).filter(p -> p.name().equals(part)).map(Part::group).orElse(Place.ENGINE);
    }

    /** The part that `block face removed` is said of. */
    static String partOf(String text, Vocabulary words) {
        for (int end = text.length(); end > 0; end = text.lastIndexOf(' ', end - 1)) {
            String part = text.substring(0, end);
            if (words.part(part).filter(p -> p.name().equals(part)).isPresent()) {
                return part;
            }
        }
        return text;
    }

    private static String unmarked(String of) {
        return of.endsWith(FactsOf.AS_FOUND) ? of.substring(0, of.length() - FactsOf.AS_FOUND.length())
                : of.endsWith(FactsOf.AS_TRIAL) ? of.substring(0, of.length() - FactsOf.AS_TRIAL.length()) : of;
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
        String before = switch (of) {
            case "any step" -> "steps ";
            case "any machining" -> "machining ";
            case "any protection" -> "protection ";
            default -> "";
        };
        return of(before + ask.of() + (what.isEmpty() ? "" : " " + what), words);
    }

    /** The part or reading that it is said of, without its mark. */
    String subject() {
        return unmarked(of);
    }

    /** Whether this names a reading as it was found, or a part that came out. */
    boolean asFound() {
        return what.equals("as found") || of.endsWith(FactsOf.AS_FOUND);
    }
}
