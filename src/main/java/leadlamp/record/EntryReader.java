package leadlamp.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import leadlamp.record.Statement.Form;
import leadlamp.words.Part;
import leadlamp.words.Property;
import leadlamp.words.Quantity;
import leadlamp.words.Sign;
import leadlamp.words.Vocabulary;

/** What the entries of all sections share: their subject, the words after it, and the messages about them. */
abstract class EntryReader {
    final Gathered gathered;
    final Vocabulary words;
    final Complaints complaints;
    final Places places;

    EntryReader(Gathered gathered) {
        this.gathered = gathered;
        this.words = gathered.words;
        this.complaints = gathered.complaints;
        this.places = gathered.places;
    }

    record Subject(String word, Where where, Node value, String mainKey) {
        Node.Scalar scalar() {
            return value instanceof Node.Scalar scalar ? scalar : new Node.Scalar(SheetReader.flat(value), value.where());
        }
    }

    /** One word said: under which key, what, its size, and the quantity that a maker's figure is of. */
    record Said(String what, String says, Optional<Written> value, Optional<String> figureOf, Where where) {
    }

    record Rest(List<Said> said, Map<String, String> asides, Optional<String> told) {
        /** What it says under this word. */
        Optional<String> says(String what) {
            for (Said one : said) {
                if (one.what().equals(what)) {
                    return Optional.of(one.says());
                }
            }
            return Optional.empty();
        }
    }

    List<Node.Fields> entries(String section, boolean complain) {
        List<Node.Fields> entries = new ArrayList<>();
        Optional<Node> node = gathered.tree.get(section);
        if (node.isEmpty()) {
            return entries;
        }
        if (!(node.get() instanceof Node.Items items)) {
            if (complain && !(node.get() instanceof Node.Scalar s && s.text().isEmpty())) {
                complaints.add(node.get().where(), 0, "`" + section + "` is a list of entries.",
                        "Each begins with a dash: `- { ... }`.", Optional.empty(), "The section was left out.");
            }
            return entries;
        }
        for (Node item : items.items()) {
            if (item instanceof Node.Fields fields && !fields.fields().isEmpty()) {
                entries.add(fields);
            } else if (complain) {
                complaints.add(item.where(), 0, "This is no entry.", "As { the part or reading: what is said of it, at: ... }.",
                        Optional.empty(), "It was left out.");
            }
        }
        return entries;
    }

    /** The subject of an entry: its first key, or in the long form what stands after it. Null where it is wrong. */
    Subject subject(Node.Fields entry, String longKey, String... mainKeys) {
        Node.Field first = entry.fields().get(0);
        if (first.key().equals(longKey)) {
            for (String key : mainKeys) {
                Optional<Node> value = entry.get(key);
                if (value.isPresent()) {
                    return new Subject(SheetReader.flat(first.value()), first.value().where(), value.get(), key);
                }
            }
            return new Subject(SheetReader.flat(first.value()), first.value().where(), new Node.Scalar("", first.value().where()), mainKeys[0]);
        }
        return new Subject(first.key(), first.where(), first.value(), first.key());
    }

    /** All words of an entry after its subject. */
    Rest rest(Node.Fields entry, Subject subject, String section, String about, List<String> sections) {
        List<Said> said = new ArrayList<>();
        Map<String, String> asides = new TreeMap<>();
        Optional<String> told = Optional.empty();
        boolean first = true;
        for (Node.Field field : entry.fields()) {
            String key = field.key();
            if (first || key.equals(subject.mainKey())) {
                first = false;
                continue;
            }
            boolean own = key.equals("at") || key.equals("with") && !section.equals("machining") && !section.equals("steps")
                    || key.equals("unit") && section.equals("measurements") || key.equals("what") && section.equals("measurements")
                    || (key.equals("threads") || key.equals("lengths")) && section.equals("fasteners")
                    || key.equals("limits") && section.equals("parts") || key.equals("of") && section.equals("observations")
                    || key.equals("of") && section.equals("steps");
            if (own) {
                continue;
            }
            if (key.equals("note") || key.equals("who")) {
                asides.put(key, SheetReader.flat(field.value()));
                continue;
            }
            if (key.equals("told by")) {
                Property by = words.property("any entry", "told by").orElseThrow();
                told = value(by, scalar(field), "", about, "").map(Said::says);
                if (told.isEmpty()) {
                    told = Optional.of("somebody");
                }
                continue;
            }
            if (key.equals("as")) {
                value(words.property("any entry", "as").orElseThrow(), scalar(field), "", about, "as")
                        .ifPresent(v -> said.add(new Said("as", v.says(), Optional.empty(), Optional.empty(), field.where())));
                continue;
            }
            Optional<Property> property = Optional.empty();
            for (String each : sections) {
                property = property.isPresent() ? property : words.property(each, key);
            }
            if (property.isEmpty() && section.equals("parts")) {
                Optional<Quantity> figure = words.quantity(about + " " + key);
                if (figure.isPresent()) {
                    Reading.Result result = Reading.read(scalar(field).text(), figure.get().dimension(), Optional.empty());
                    if (result instanceof Reading.Read read && read.written().figure()) {
                        said.add(new Said(key, scalar(field).text(), Optional.of(read.written()), Optional.of(figure.get().name()),
                                field.value().where()));
                    } else if (result instanceof Reading.Unread unread) {
                        complaints.add(SheetReader.moved(field.value().where(), unread.offset()), unread.length(), unread.what(),
                                unread.expected(), unread.nearest(), "The rest of \"" + about + "\" was read.");
                    }
                    continue;
                }
            }
            if (property.isEmpty()) {
                noProperty(field, about, sections, "The rest of \"" + about + "\" was read.");
                continue;
            }
            for (Node.Scalar item : field.value() instanceof Node.Items && !property.get().values().isEmpty()
                    ? SheetReader.scalars(field.value()) : List.of(scalar(field))) {
                Optional<Said> one = value(property.get(), item, about, about, "");
                if (one.isPresent()) {
                    said.add(one.get());
                    if (section.equals("measurements")) {
                        asides.put(one.get().what(), one.get().says());
                    }
                } else {
                    gathered.leftOut.add(new Statement.Key(Form.STATED, section.equals("fasteners") ? "joint" : about, Place.ENGINE, property.get().name()));
                }
            }
        }
        return new Rest(List.copyOf(said), Collections.unmodifiableMap(asides), told);
    }

    static Node.Scalar scalar(Node.Field field) {
        return field.value() instanceof Node.Scalar scalar ? scalar : new Node.Scalar(SheetReader.flat(field.value()), field.value().where());
    }

    /** The word of a property, put for its synonym, with its size where it takes one. Empty where it is wrong, which has been said. */
    Optional<Said> value(Property property, Node.Scalar item, String part, String about, String what) {
        String text = item.text();
        String lower = text.toLowerCase(Locale.ROOT);
        String key = what.isEmpty() ? property.name() : what;
        if (lower.equals("unknown")) {
            return Optional.of(new Said(key, "unknown", Optional.empty(), Optional.empty(), item.where()));
        }
        Map<String, String> values = property.values();
        if (!property.perPart().isEmpty()) {
            values = valuesFor(property, part);
        }
        if (values.containsKey(text) || values.containsKey(lower)) {
            return Optional.of(new Said(key, values.containsKey(text) ? text : lower, Optional.empty(), Optional.empty(), item.where()));
        }
        String meant = property.also().get(lower);
        if (meant != null && values.containsKey(meant)) {
            return Optional.of(new Said(key, meant, Optional.empty(), Optional.empty(), item.where()));
        }
        String takes = property.takes();
        if (takes.isEmpty() && !values.isEmpty()) {
            complaints.unknown(item.where(), text, "\"" + text + "\" is not a word for " + key + " of " + about + ".", values.keySet(),
                    "It may be: ", "The rest of \"" + about + "\" was read; checks that need its " + key + " say \"cannot tell\".");
            return Optional.empty();
        }
        Dimension dimension = dimension(takes);
        if (dimension == Dimension.SPEED && lower.equals("idle")) {
            return Optional.of(new Said(key, lower, Optional.empty(), Optional.empty(), item.where()));
        }
        if (dimension != null) {
            Reading.Result result = Reading.read(text, dimension, Optional.empty());
            if (result instanceof Reading.Unread unread) {
                if (!values.isEmpty() && Vocabulary.nearest(text, values.keySet()).isPresent()) {
                    complaints.unknown(item.where(), text, "\"" + text + "\" is not a word for " + key + " of " + about + ".",
                            values.keySet(), "It may be: ", "The rest of \"" + about + "\" was read.");
                } else {
                    complaints.add(SheetReader.moved(item.where(), unread.offset()), unread.length(), unread.what(), unread.expected(),
                            unread.nearest(), "The rest of \"" + about + "\" was read; checks that need its " + key + " say \"cannot tell\".");
                }
                return Optional.empty();
            }
            Written written = ((Reading.Read) result).written();
            return Optional.of(new Said(key, text, written.figure() ? Optional.of(written) : Optional.empty(), Optional.empty(), item.where()));
        }
        if (takes.equals("date") && Dates.read(text).isEmpty()) {
            noDate(text, item.where(), "The rest of \"" + about + "\" was read.");
            return Optional.empty();
        }
        if (text.isEmpty()) {
            complaints.add(item.where(), 0, "Nothing is written after `" + key + "`.", property.gloss(), Optional.empty(),
                    "The rest of \"" + about + "\" was read.");
            return Optional.empty();
        }
        if (property.name().equals("thread") && property.section().equals("fasteners")) {
            SheetSizes.thread(item, complaints);
        }
        return Optional.of(new Said(key, text, SheetReader.anyValue(text), Optional.empty(), item.where()));
    }

    /** The short list of this part or of the nearest kind that has one; else all words of all lists. */
    Map<String, String> valuesFor(Property property, String part) {
        return valuesFor(property, part, words);
    }

    static Map<String, String> valuesFor(Property property, String part, Vocabulary words) {
        if (property.perPart().containsKey(part)) {
            return property.perPart().get(part);
        }
        for (String kind : words.part(part).map(Part::kinds).orElse(List.of())) {
            if (property.perPart().containsKey(kind)) {
                return property.perPart().get(kind);
            }
        }
        Map<String, String> all = new TreeMap<>(property.values());
        property.perPart().values().forEach(all::putAll);
        return all;
    }

    static Dimension dimension(String takes) {
        return switch (takes) {
            case "length" -> Dimension.LENGTH;
            case "torque" -> Dimension.TORQUE;
            case "pressure" -> Dimension.PRESSURE;
            case "power" -> Dimension.POWER;
            case "speed" -> Dimension.SPEED;
            case "angle" -> Dimension.ANGLE;
            case "mass" -> Dimension.MASS;
            case "force" -> Dimension.FORCE;
            case "volume" -> Dimension.VOLUME;
            case "temperature" -> Dimension.TEMPERATURE;
            case "share" -> Dimension.SHARE;
            case "volume share" -> Dimension.VOLUME_SHARE;
            case "acceleration" -> Dimension.ACCELERATION;
            case "frequency" -> Dimension.FREQUENCY;
            case "count" -> Dimension.COUNT;
            case "number" -> Dimension.NUMBER;
            case "years or months", "years", "months", "hours" -> Dimension.TIME;
            case "km or miles" -> Dimension.LENGTH;
            default -> null;
        };
    }

    Optional<Written> anySize(String text) {
        if (text.startsWith("from ")) {
            int to = text.indexOf(" to ");
            if (to > 0) {
                Optional<Written> end = SheetReader.anyValue(text.substring(to + 4));
                if (end.isPresent() && Reading.read(text, end.get().unit().dimension(), Optional.empty()) instanceof Reading.Read read) {
                    return Optional.of(read.written());
                }
            }
            return Optional.empty();
        }
        return SheetReader.anyValue(text);
    }

    void state(String of, String at, String what, String says, Optional<Written> value, Map<String, String> asides,
            Optional<String> told, Where where) {
        gathered.statements.add(new Statement(Form.STATED, of, at, what, says, value, List.of(), asides, told, where, complaints.line(where)));
    }

    List<String> gaugesOf(Optional<Node> with) {
        return gaugesOf(with, "The reading was kept with the usual doubt of its kind.");
    }

    /** The same, and what is said of the rest where one is not known. */
    List<String> gaugesOf(Optional<Node> with, String rest) {
        List<String> names = new ArrayList<>();
        if (with.isPresent()) {
            for (Node.Scalar item : SheetReader.scalars(with.get())) {
                String text = item.text();
                if (gathered.gauges.containsKey(text)) {
                    names.add(text);
                } else if (words.gauge(text).isPresent()) {
                    names.add(words.gauge(text).get().name());
                } else {
                    List<String> known = new ArrayList<>(gathered.gauges.keySet());
                    known.addAll(gaugeNames());
                    complaints.unknown(item.where(), text, "\"" + text + "\" is no gauge of this record, and no kind of gauge.", known,
                            "Gauges of the record: ", rest);
                }
            }
        }
        return List.copyOf(names);
    }

    List<String> gaugeNames() {
        List<String> names = new ArrayList<>();
        words.gauges().forEach(g -> names.add(g.name()));
        return names;
    }

    boolean once(Where where) {
        return gathered.complainedOf.add(where);
    }

    void wantsLines(Node.Field section) {
        if (!(section.value() instanceof Node.Scalar s && s.text().isEmpty())) {
            complaints.add(section.value().where(), 0, "`" + section.key() + "` wants lines of its own.", "As `name: value`, one a line.",
                    Optional.empty(), "The section was left out.");
        }
    }

    void noPart(Subject subject) {
        Collection<String> meanings = words.meanings(subject.word());
        if (!meanings.isEmpty()) {
            complaints.add(subject.where(), subject.word().length(), "\"" + subject.word() + "\" may mean two things.",
                    "Write one of: " + Complaints.some(meanings), Optional.empty(), "The entry was left out.");
            return;
        }
        List<String> names = new ArrayList<>();
        words.parts().forEach(p -> names.add(p.name()));
        Optional<String> nearest = Vocabulary.nearest(subject.word(), names);
        complaints.add(subject.where(), subject.word().length(), "\"" + subject.word() + "\" is no part that is known.",
                "The first word of an entry is the part.", nearest, "The entry was left out.");
    }

    void noQuantity(String word, Where where) {
        Collection<String> meanings = words.meanings(word);
        if (!meanings.isEmpty()) {
            complaints.add(where, word.length(), "\"" + word + "\" may mean two things.", "Write one of: " + Complaints.some(meanings),
                    Optional.empty(), "The entry was left out.");
            return;
        }
        List<String> names = new ArrayList<>();
        words.quantities().forEach(q -> names.add(q.name()));
        Optional<String> nearest = Vocabulary.nearest(word, names);
        String expected = "A reading is named by the part and what was read, as `main journal diameter`.";
        for (int end = word.lastIndexOf(' '); end > 0 && nearest.isEmpty(); end = word.lastIndexOf(' ', end - 1)) {
            Optional<Part> part = words.part(word.substring(0, end));
            if (part.isPresent()) {
                Set<String> of = new LinkedHashSet<>();
                for (Quantity quantity : words.quantities()) {
                    if (quantity.of().equals(part.get().name())) {
                        of.add(quantity.name());
                    }
                }
                if (!of.isEmpty()) {
                    expected = "Readings of " + part.get().name() + ": " + Complaints.some(of);
                }
                break;
            }
        }
        complaints.add(where, word.length(), "\"" + word + "\" is no reading that is known.", expected, nearest, "The entry was left out.");
    }

    void noSign(Node.Scalar item, Part part) {
        List<String> all = new ArrayList<>();
        Set<String> usual = new LinkedHashSet<>();
        for (Sign sign : words.signs()) {
            all.add(sign.name());
            if (sign.parts().contains(part.name()) || sign.parts().stream().anyMatch(part.kinds()::contains)) {
                usual.add(sign.name());
            }
        }
        complaints.add(item.where(), item.text().length(), "\"" + item.text() + "\" is no sign that is known.",
                usual.isEmpty() ? "A sign, or `clear` and the signs that were looked for." : "Signs of " + part.name() + ": " + Complaints.some(usual),
                Vocabulary.nearest(item.text(), all), "The sign was left out. What has no word is written `unknown` with a note.");
    }

    void noStep(String word, Where where, String rest) {
        List<String> names = new ArrayList<>();
        words.steps().forEach(s -> names.add(s.name()));
        complaints.add(where, word.length(), "\"" + word + "\" is no step that is known.", "", Vocabulary.nearest(word, names), rest);
    }

    void noDate(String text, Where where, String rest) {
        complaints.add(where, text.length(), "\"" + text + "\" is no date.", "As 2026-03-14, 2026-03, 2026, spring 2026 or 4 months ago.",
                Optional.empty(), rest);
    }

    void noProperty(Node.Field field, String about, List<String> sections, String rest) {
        Set<String> can = new LinkedHashSet<>();
        for (String section : sections) {
            for (Property property : words.properties(section)) {
                if (property.of().isEmpty() || property.of().contains(about)) {
                    can.add(property.name());
                }
            }
        }
        if (!once(field.where())) {
            return;
        }
        if (field.value() instanceof Node.Scalar alone && alone.text().isEmpty() && Vocabulary.nearest(field.key(), can).isEmpty()) {
            complaints.add(field.where(), field.key().length(), "\"" + field.key() + "\" stands alone after a comma.",
                    "Inside { } a comma ends what stands before it. If this belongs to those words, put them in quotes.", Optional.empty(), rest);
            return;
        }
        complaints.unknown(field.where(), field.key(), "\"" + field.key() + "\" is not something that " + about + " can have.", can,
                "It can have: ", rest);
    }
}
