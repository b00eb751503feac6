package leadlamp.words;

import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads the names that checks and conditions use into the word of record or sheet that they mean. Only a word's own name
 * is taken, never a synonym, for these names are compared with what a rule quotes.
 */
public final class Names {
    private static final Set<String> SECTIONS = Set.of("use", "build", "steps", "machining", "protection", "observations",
            "gauge");
    /** Words that the reader writes where no torque, or no figure, was given. */
    private static final String TORQUE_SAID = "torque said";
    private static final String FIGURE = "figure";
    private static final String WORKED_OUT = "worked out";
    /** Words that are printed and never judged. */
    private static final Set<String> ASIDE = Set.of("note", "who", "photo");

    private Names() {
    }

    /** What a name means; empty where it is no name. */
    public static Optional<Name> resolve(String name, Vocabulary words) {
        Optional<Quantity> quantity = quantity(name, words);
        if (quantity.isPresent()) {
            return Optional.of(name.equals("joint torque") ? new Name.JointTorque() : new Name.QuantityName(name, ""));
        }
        int blank = name.indexOf(' ');
        if (blank < 0) {
            return Optional.empty();
        }
        String first = name.substring(0, blank);
        String rest = name.substring(blank + 1);
        if (first.equals("condition")) {
            return words.conditions().containsKey(rest) ? Optional.of(new Name.ConditionName(rest)) : Optional.empty();
        }
        if (first.equals("sheet")) {
            return sheet(rest, words);
        }
        if (first.equals("any")) {
            return any(rest, words);
        }
        if (SECTIONS.contains(first)) {
            return section(first, rest, words) || workedOut(first, rest, words) ? Optional.of(new Name.SectionWord(first, rest)) : Optional.empty();
        }
        if (first.equals("joint") && (ofJoint(rest, words) || workedOut("joint", rest, words))) {
            return Optional.of(new Name.JointWord(rest));
        }
        Optional<Name> read = reading(name, words);
        return read.isPresent() ? read : part(name, words);
    }

    /**
     * The nearest name to one that is none: nearest word of the part, reading or section that it begins with, else the
     * nearest reading or condition.
     */
    public static Optional<String> nearest(String name, Vocabulary words) {
        Set<String> candidates = new TreeSet<>();
        int blank = name.indexOf(' ');
        String first = blank < 0 ? name : name.substring(0, blank);
        if (first.equals("condition")) {
            words.conditions().keySet().forEach(c -> candidates.add("condition " + c));
        } else if (SECTIONS.contains(first)) {
            words.properties(first.equals("gauge") ? "gauges" : first).forEach(p -> candidates.add(first + " " + p.name()));
            words.properties(WORKED_OUT + " of " + first).forEach(p -> candidates.add(first + " " + p.name()));
            if (first.equals("steps")) {
                words.steps().forEach(s -> candidates.add("steps " + s.name()));
            } else if (first.equals("protection")) {
                protections(words).forEach(p -> candidates.add("protection " + p));
            } else if (first.equals("machining") || first.equals("observations")) {
                words.parts().forEach(p -> candidates.add(first + " " + p.name()));
            }
        } else if (first.equals("sheet")) {
            sheetNames(name.substring(first.length()).strip(), words, candidates);
        } else {
            words.quantities().forEach(q -> candidates.add(q.name()));
            for (int i = name.lastIndexOf(' '); i > 0; i = name.lastIndexOf(' ', i - 1)) {
                words.part(name.substring(0, i)).ifPresent(part -> wordsOf(part, words, candidates));
            }
            if (first.equals("joint")) {
                words.properties("fasteners").forEach(p -> candidates.add("joint " + p.name()));
                words.properties("threads").forEach(p -> candidates.add("joint " + p.name()));
                words.properties(WORKED_OUT + " of joint").forEach(p -> candidates.add("joint " + p.name()));
            }
        }
        return Nearest.of(name, candidates);
    }

    private static void wordsOf(Part part, Vocabulary words, Set<String> candidates) {
        words.properties("parts").forEach(p -> candidates.add(part.name() + " " + p.name()));
        words.signs().forEach(s -> candidates.add(part.name() + " " + s.name()));
    }

    private static void sheetNames(String rest, Vocabulary words, Set<String> candidates) {
        for (Property top : words.properties("sheet")) {
            words.properties("sheet " + top.name()).forEach(p -> candidates.add("sheet " + top.name() + " " + p.name()));
        }
        words.properties("threads").forEach(p -> candidates.add("sheet joint " + p.name()));
        words.properties("sheet joints").forEach(p -> candidates.add("sheet joint " + p.name()));
        for (int i = rest.lastIndexOf(' '); i > 0; i = rest.lastIndexOf(' ', i - 1)) {
            words.part(rest.substring(0, i)).ifPresent(part -> words.properties("parts")
                    .forEach(p -> candidates.add("sheet " + part.name() + " " + p.name())));
        }
    }

    private static Optional<Quantity> quantity(String name, Vocabulary words) {
        return words.quantity(name).filter(q -> q.name().equals(name));
    }

    private static boolean named(String part, Vocabulary words) {
        Optional<Part> known = words.part(part);
        return known.isPresent() && known.get().name().equals(part);
    }

    private static boolean own(String section, String word, Vocabulary words) {
        Optional<Property> property = words.property(section, word);
        return property.isPresent() && property.get().name().equals(word) && property.get().section().equals(section)
                && !ASIDE.contains(word);
    }

    private static boolean ofJoint(String word, Vocabulary words) {
        return word.equals(TORQUE_SAID) || own("fasteners", word, words) && !word.equals("threads")
                || own("threads", word, words);
    }

    /** A word that is never written but worked out of a section or of a joint: `use rev limit over sheet`. */
    private static boolean workedOut(String of, String word, Vocabulary words) {
        return own(WORKED_OUT + " of " + of, word, words);
    }

    /** A word of whatever the group runs over, with a word that such a thing may have. */
    private static Optional<Name> any(String rest, Vocabulary words) {
        int blank = rest.indexOf(' ');
        String of = blank < 0 ? rest : rest.substring(0, blank);
        String what = blank < 0 ? "" : rest.substring(blank + 1);
        boolean known;
        switch (of) {
            case "part":
                known = own("parts", what, words) || own(WORKED_OUT, what, words) || what.equals("any sign") || named(words.sign(what), what);
                break;
            case "reading":
                known = what.isEmpty() || what.equals(FIGURE) || own("measurements", what, words);
                break;
            case "sign":
                known = what.isEmpty() || own("observations", what, words);
                break;
            case "step", "machining", "protection":
                known = what.isEmpty() || own(of.equals("step") ? "steps" : of, what, words);
                break;
            default:
                known = false;
        }
        return known ? Optional.of(new Name.AnyWord("any " + of, what)) : Optional.empty();
    }

    private static boolean named(Optional<Sign> sign, String name) {
        return sign.isPresent() && sign.get().name().equals(name);
    }

    private static boolean section(String section, String rest, Vocabulary words) {
        switch (section) {
            case "gauge":
                return own("gauges", rest, words);
            case "steps":
                return step(rest, words) || rest.equals("next") || rest.equals("planned");
            case "protection":
                return begins(rest, protections(words), "protection", words);
            case "machining":
                return ofPart(rest, "machining", words);
            case "observations":
                return named(rest, words);
            default:
                return own(section, rest, words);
        }
    }

    private static boolean step(String rest, Vocabulary words) {
        Optional<Step> step = words.step(rest);
        return step.isPresent() && step.get().name().equals(rest);
    }

    private static Collection<String> protections(Vocabulary words) {
        Optional<Property> names = words.property("protection", "names");
        return names.isPresent() ? names.get().values().keySet() : Set.of();
    }

    /** One of the names, alone or with a word of the section after it: `rev cut`, `rev cut proved`. */
    private static boolean begins(String text, Collection<String> names, String section, Vocabulary words) {
        if (names.contains(text)) {
            return true;
        }
        for (int i = text.indexOf(' '); i > 0; i = text.indexOf(' ', i + 1)) {
            if (names.contains(text.substring(0, i)) && own(section, text.substring(i + 1), words)) {
                return true;
            }
        }
        return false;
    }

    /** A part, alone or with a word of the section after it: `block face`, `block face removed`. */
    private static boolean ofPart(String text, String section, Vocabulary words) {
        if (named(text, words)) {
            return true;
        }
        for (int i = text.lastIndexOf(' '); i > 0; i = text.lastIndexOf(' ', i - 1)) {
            if (named(text.substring(0, i), words) && own(section, text.substring(i + 1), words)) {
                return true;
            }
        }
        return false;
    }

    /** A reading that was marked, or what stands beside it. */
    private static Optional<Name> reading(String name, Vocabulary words) {
        for (int i = name.lastIndexOf(' '); i > 0; i = name.lastIndexOf(' ', i - 1)) {
            String before = name.substring(0, i);
            if (quantity(before, words).isPresent()) {
                String rest = name.substring(i + 1);
                if (rest.equals("as found") || rest.equals("as trial")) {
                    return Optional.of(new Name.QuantityName(before, rest));
                }
                String aside = rest.startsWith("as found ") || rest.startsWith("as trial ") ? rest.substring(9) : rest;
                if (aside.equals(FIGURE) || own("measurements", aside, words)) {
                    String of = aside.length() == rest.length() ? before : before + " " + rest.substring(0, 8);
                    return Optional.of(new Name.ReadingAside(of, aside));
                }
            }
        }
        return Optional.empty();
    }

    /** A part with one of its words, a sign, or what stands beside a sign. */
    private static Optional<Name> part(String name, Vocabulary words) {
        for (int i = name.lastIndexOf(' '); i > 0; i = name.lastIndexOf(' ', i - 1)) {
            String part = name.substring(0, i);
            if (named(part, words)) {
                String rest = name.substring(i + 1);
                boolean found = rest.startsWith("as found ");
                String word = found ? rest.substring(9) : rest;
                if (ofPart(words.part(part).orElseThrow(), word, words)) {
                    return Optional.of(new Name.PartWord(found ? part + " as found" : part, word));
                }
                Optional<Name> sign = sign(part, rest, words);
                if (sign.isPresent()) {
                    return sign;
                }
            }
        }
        return Optional.empty();
    }

    private static boolean ofPart(Part part, String word, Vocabulary words) {
        if (own(WORKED_OUT, word, words)) {
            return allows(words.property(WORKED_OUT, word).orElseThrow().of(), part);
        }
        if (!own("parts", word, words)) {
            return false;
        }
        Property property = words.property("parts", word).orElseThrow();
        return allows(property.of(), part) && allows(property.perPart().keySet(), part);
    }

    private static boolean allows(Collection<String> of, Part part) {
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

    private static Optional<Name> sign(String part, String text, Vocabulary words) {
        Optional<Sign> sign = words.sign(text);
        if (sign.isPresent() && sign.get().name().equals(text)) {
            return Optional.of(new Name.SignOf(part, text));
        }
        for (int i = text.lastIndexOf(' '); i > 0; i = text.lastIndexOf(' ', i - 1)) {
            String before = text.substring(0, i);
            String aside = text.substring(i + 1);
            sign = words.sign(before);
            if (sign.isPresent() && sign.get().name().equals(before)
                    && (aside.equals("as") || own("observations", aside, words))) {
                return Optional.of(new Name.SignAside(part, before, aside));
            }
        }
        return Optional.empty();
    }

    private static Optional<Name> sheet(String text, Vocabulary words) {
        if (own("sheet", text, words)) {
            return Optional.of(new Name.SheetWord(text, section("sheet " + text, words) ? "" : text));
        }
        if (text.startsWith("joint ")) {
            String word = text.substring(6);
            if (ofJoint(word, words) || below("sheet joints", word, words) || word.equals("renew always") || word.equals("length")) {
                return Optional.of(new Name.SheetWord("joint", word));
            }
        }
        for (int i = text.lastIndexOf(' '); i > 0; i = text.lastIndexOf(' ', i - 1)) {
            String of = text.substring(0, i);
            String what = text.substring(i + 1);
            if (own("sheet", of, words) && (below("sheet " + of, what, words) || ofSection(of, what, words))) {
                return Optional.of(new Name.SheetWord(of, what));
            }
            if (named(of, words) && ofSheetPart(words.part(of).orElseThrow(), what, words)) {
                return Optional.of(new Name.SheetWord(of, what));
            }
        }
        return Optional.empty();
    }

    private static boolean section(String section, Vocabulary words) {
        return !words.properties(section).isEmpty();
    }

    /** A line of a section, or of one below it: `fuel burns` under `layout`. */
    private static boolean below(String section, String word, Vocabulary words) {
        if (own(section, word, words)) {
            return true;
        }
        for (int i = word.indexOf(' '); i > 0; i = word.indexOf(' ', i + 1)) {
            if (below(section + " " + word.substring(0, i), word.substring(i + 1), words)) {
                return true;
            }
        }
        return false;
    }

    /** Lines that are named by a reading, a part or a guard. */
    private static boolean ofSection(String section, String what, Vocabulary words) {
        switch (section) {
            case "standard":
                return quantity(what, words).isPresent();
            case "limits":
                return quantity(what, words).isPresent();
            case "materials", "masses", "choose", "way round":
                return named(what, words);
            case "protection":
                return begins(what, protections(words), "protection", words);
            default:
                return false;
        }
    }

    private static boolean ofSheetPart(Part part, String word, Vocabulary words) {
        return ofPart(part, word, words) || word.equals("renew always") || quantity(part.name() + " " + word, words).isPresent()
                || own("sheet gears", word, words) || own("sheet plugs", word, words) || own("sheet seals", word, words)
                || own("sheet sensors", word, words);
    }
}
