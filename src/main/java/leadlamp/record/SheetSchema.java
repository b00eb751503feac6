package leadlamp.record;

import static leadlamp.record.Schema.ANY;
import static leadlamp.record.Schema.anyOf;
import static leadlamp.record.Schema.described;
import static leadlamp.record.Schema.of;
import static leadlamp.record.Schema.oneOf;
import static leadlamp.record.Schema.oneOrMore;
import static leadlamp.record.Schema.pattern;
import static leadlamp.record.Schema.ref;

import java.io.IOException;
import java.io.OutputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import leadlamp.words.Property;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * The JSON Schema of an engine sheet, made from the vocabulary. The reader keeps what stands after a line as it is, so the
 * words that a line may say are offered and nothing else is refused.
 */
public final class SheetSchema {
    /** The schema on the class path. */
    public static final String RESOURCE = "/leadlamp/schema/sheet.json";

    private final Vocabulary words;
    private final Forms forms;

    private SheetSchema(Vocabulary words) {
        this.words = words;
        this.forms = new Forms(words);
    }

    /** Writes it. */
    public static void write(Vocabulary words, OutputStream out) throws IOException {
        Schema.write(new SheetSchema(words).schema(), out);
    }

    private Map<String, Object> schema() {
        Map<String, Object> sections = new LinkedHashMap<>();
        for (String section : new TreeSet<>(SheetReader.KNOWN)) {
            sections.put(section, section(section));
        }
        sections.put("sheet", described("the engine's name", Schema.TEXT));
        sections.put("from", described("the manual and page that it was copied from", ANY));
        sections.put("limits", described("the maker's limits, a line a reading", limits()));
        sections.put("joints", described("every joint: bolts, threads, torque, order", joints()));
        sections.put("renew always", described("what is new at every build", renewAlways()));
        sections.put("way round", described("how each part points", partLines(ANY)));
        Map<String, Object> definitions = forms.definitions();
        definitions.put("limit", limit());
        return of("$schema", Schema.DRAFT, "$id", "urn:leadlamp:sheet", "title", "Engine sheet",
                "description", "An engine sheet of Leadlamp, made from its vocabulary.", "type", "object", "properties", sections,
                "additionalProperties", false, "definitions", definitions);
    }

    // --- sections

    private Map<String, Object> section(String section) {
        if (List.of("order", "choose", "note", "from", "sheet", "protection", "valves can touch pistons", "engine mass on the stand")
                .contains(section) || words.properties("sheet " + section).isEmpty()) {
            return ANY;
        }
        if (section.equals("gears")) {
            Map<String, Object> gear = known(section);
            gear.put("pin", ANY);
            return named(anyOf(of("not", of("type", "object")), closed(gear)));
        }
        Map<String, Object> lines = known(section);
        if (SheetReader.NAMED.contains(section)) {
            return named(anyOf(of("not", of("type", "object")), closed(lines)));
        }
        Map<String, Object> closed = closed(lines);
        if (List.of("standard", "materials", "masses").contains(section)) {
            closed.put("patternProperties", section.equals("standard") ? quantities(ANY) : of(oneOf(forms.others(Vocabulary.Kind.PART), true), ANY));
        }
        return anyOf(of("not", of("type", "object")), closed);
    }

    private static Map<String, Object> closed(Map<String, Object> lines) {
        return of("type", "object", "properties", lines, "additionalProperties", false);
    }

    /** Lines under names of the sheet's own. */
    private static Map<String, Object> named(Map<String, Object> line) {
        return of("type", List.of("object", "null", "string"), "properties", of("note", ANY), "additionalProperties", line);
    }

    /** The words that a line of the section may have; what it may say is offered. */
    private Map<String, Object> known(String section) {
        Map<String, Object> known = new LinkedHashMap<>();
        for (Property property : words.properties("sheet " + section)) {
            known.put(property.name(), offered(property));
        }
        for (String any : List.of("note", "from", "at", "who", "told by", "as")) {
            known.putIfAbsent(any, ANY);
        }
        return known;
    }

    private static Map<String, Object> offered(Property property) {
        String gloss = Forms.gloss(property);
        return property.values().isEmpty() ? described(gloss, ANY) : described(gloss, anyOf(Schema.words(property.values()), ANY));
    }

    private Map<String, Object> quantities(Map<String, Object> value) {
        Map<String, Object> patterns = new LinkedHashMap<>();
        forms.otherQuantities(forms.quantities()).forEach(pattern -> patterns.put(pattern, value));
        return patterns;
    }

    private Map<String, Object> partLines(Map<String, Object> value) {
        Map<String, Object> parts = new LinkedHashMap<>();
        forms.partGlosses().forEach((part, gloss) -> parts.put(part, described(gloss, value)));
        parts.put("note", ANY);
        return of("type", List.of("object", "null", "string"), "properties", parts, "patternProperties",
                of(oneOf(forms.others(Vocabulary.Kind.PART), true), value), "additionalProperties", false);
    }

    private Map<String, Object> renewAlways() {
        return of("type", List.of("object", "null", "string"), "properties", of("bolts of", described("joints whose bolts are new each time", ANY),
                "parts", described("parts that are new each time", oneOrMore(ref("part"))), "note", ANY), "additionalProperties",
                oneOrMore(ref("part")));
    }

    // --- limits

    private Map<String, Object> limits() {
        Map<String, Object> lines = new LinkedHashMap<>();
        for (Quantity quantity : forms.quantities().values()) {
            lines.put(quantity.name(), described(quantity.gloss(), oneOrMore(ref("limit"))));
        }
        lines.put("note", ANY);
        return of("type", List.of("object", "null"), "properties", lines, "patternProperties", quantities(oneOrMore(ref("limit"))),
                "additionalProperties", false);
    }

    /** One line of limits. */
    static Map<String, Object> limit() {
        Map<String, Object> size = of("type", List.of("string", "number"), "pattern", "\\d");
        Map<String, Object> words = new LinkedHashMap<>();
        words.put("standard", described("the size meant", size));
        words.put("least", described("least allowed", size));
        words.put("most", described("most allowed", size));
        words.put("either way", described("of `standard`: least and most in one word", size));
        words.put("times", described("the reading that least and most are shares of", Schema.TEXT));
        words.put("where", described("words of the record that must hold", ANY));
        for (String word : List.of("at", "when", "span", "at radius", "speed", "oil temperature", "temperature", "for", "load", "note")) {
            words.put(word, ANY);
        }
        return closed(words);
    }

    // --- joints

    private Map<String, Object> joints() {
        Map<String, Object> lines = known("joints");
        for (Property property : words.properties("fasteners")) {
            lines.putIfAbsent(property.name(), offered(property));
        }
        for (String line : List.of("threads", "gasket", "lengths", "positions", "rows", "torque", "stretch", "torque limits",
                "bolt length limit")) {
            lines.putIfAbsent(line, ANY);
        }
        lines.put("stages", described("torque and angle, one after the other", oneOrMore(pattern("\\d\\s*\\S*[A-Za-z·°]"))));
        return of("type", List.of("object", "null"), "properties", of("note", ANY), "additionalProperties", closed(lines));
    }
}
