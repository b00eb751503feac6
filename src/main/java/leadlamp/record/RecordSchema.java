package leadlamp.record;

import static leadlamp.record.Schema.ANY;
import static leadlamp.record.Schema.EMPTY;
import static leadlamp.record.Schema.TEXT;
import static leadlamp.record.Schema.anyOf;
import static leadlamp.record.Schema.described;
import static leadlamp.record.Schema.lines;
import static leadlamp.record.Schema.listOf;
import static leadlamp.record.Schema.of;
import static leadlamp.record.Schema.oneOf;
import static leadlamp.record.Schema.oneOrMore;
import static leadlamp.record.Schema.pattern;
import static leadlamp.record.Schema.ref;
import static leadlamp.record.Schema.words;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import leadlamp.quantity.Dimension;
import leadlamp.words.Part;
import leadlamp.words.Property;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * The JSON Schema of a build record, made from the vocabulary, so that an editor of YAML completes the words and shows what
 * they mean. It says what the reader says, as far as a schema can: which word is the first of an entry, which places an engine
 * has and which units suit a reading only the reader knows. Words are wanted as the vocabulary writes them; the reader takes
 * capitals as well.
 */
public final class RecordSchema {
    /** The schema on the class path. */
    public static final String RESOURCE = "/leadlamp/schema/record.json";

    private final Vocabulary words;
    private final Forms forms;
    private final Map<String, Quantity> quantities;

    private RecordSchema(Vocabulary words) {
        this.words = words;
        this.forms = new Forms(words);
        this.quantities = forms.quantities();
    }

    /** Writes it. */
    public static void write(Vocabulary words, OutputStream out) throws IOException {
        Schema.write(new RecordSchema(words).schema(), out);
    }

    private Map<String, Object> schema() {
        Map<String, Object> sections = new LinkedHashMap<>();
        sections.put("build", described("what this build is", build()));
        sections.put("engine", described("path of the engine sheet, from the record's own folder", pattern(".")));
        sections.put("use", described("what the engine is for", lines(withNote(own("use")))));
        sections.put("stage", described("the furthest steps done", anyOf(EMPTY, oneOrMore(ref("step")))));
        sections.put("gauges", described("what you measure with, each under a name of your own", gauges()));
        sections.put("machining", described("what was taken off, and `none` of what was left", entries(machining())));
        sections.put("measurements", described("a value, a row or a table of each reading", entries(measurements())));
        sections.put("parts", described("each part and its state", entries(parts())));
        sections.put("fasteners", described("each joint and its torque", entries(fasteners())));
        sections.put("observations", described("what was seen, or `clear` of what was looked for", entries(observations())));
        sections.put("steps", described("each step with its date", entries(steps())));
        sections.put("protection", described("what is there to save the engine", protection()));
        sections.put("photos", described("photographs, each under a name of your own", photos()));
        sections.put("accepted", described("findings that the builder lives with", entries(accepted())));
        sections.put("note", ANY);
        Map<String, Object> definitions = forms.definitions();
        definitions.put("reading", reading());
        definitions.put("state", forms.value(words.property("parts", "state").orElseThrow()));
        definitions.put("machined", forms.value(words.property("machining", "by").orElseThrow()));
        definitions.put("seen", oneOrMore(anyOf(ref("sign"), words(Map.of("clear", "looked, and none of `of` was seen",
                "unknown", "seen, and there is no word for it")))));
        definitions.put("done", anyOf(EMPTY, ref("date"), words(Map.of("done", "done, the date is not known",
                "passed", "done and passed, the date is not known", "failed", "done and failed", "not proved", "tried and not proved",
                "left out", "not done", "unknown", "nobody can say"))));
        definitions.put("limit", SheetSchema.limit());
        return of("$schema", Schema.DRAFT, "$id", "urn:leadlamp:record", "title", "Build record",
                "description", "A build record of Leadlamp, made from its vocabulary.", "type", "object", "required", List.of("engine"),
                "properties", sections, "additionalProperties", false, "definitions", definitions);
    }

    private static Map<String, Object> entries(Map<String, Object> entry) {
        return of("type", List.of("array", "null"), "items", entry);
    }

    // --- lines with names

    /** The words of a section of lines, which carry no words of an entry. */
    private Map<String, Object> own(String section) {
        Map<String, Object> own = new LinkedHashMap<>();
        for (Property property : words.properties(section)) {
            own.put(property.name(), forms.value(property));
        }
        return own;
    }

    private static Map<String, Object> withNote(Map<String, Object> lines) {
        lines.putIfAbsent("note", described("your own words", ANY));
        return lines;
    }

    private Map<String, Object> build() {
        Map<String, Object> lines = withNote(own("build"));
        lines.put("name", described("what you call it", TEXT));
        Map<String, String> past = new TreeMap<>(words.events());
        past.put("none told", "asked, and nothing was told");
        lines.put("past", described("what the engine has been through", oneOrMore(words(past))));
        return lines(lines);
    }

    private Map<String, Object> gauges() {
        Map<String, Object> lines = withNote(own("gauges"));
        for (String size : List.of("resolution", "doubt", "range", "repeats", "ratio", "period", "uses")) {
            lines.computeIfPresent(size, (k, v) -> described(glossOf("gauges", size),
                    of("type", List.of("string", "number"), "pattern", "\\d")));
        }
        for (String date : List.of("checked", "dropped")) {
            lines.computeIfPresent(date, (k, v) -> described(glossOf("gauges", date), ref("date")));
        }
        lines.put("kind", described(glossOf("gauges", "kind"), oneOrMore(ref("gauge"))));
        return of("type", List.of("object", "null"), "additionalProperties", of("type", "object", "properties", lines,
                "additionalProperties", false));
    }

    private String glossOf(String section, String word) {
        return words.property(section, word).map(Forms::gloss).orElse("");
    }

    private Map<String, Object> protection() {
        Property names = words.property("protection", "names").orElseThrow();
        Map<String, Object> lines = withNote(own("protection"));
        lines.remove("names");
        lines.replaceAll((word, any) -> words.property("protection", word).filter(p -> !p.values().isEmpty()).isPresent() ? any : ANY);
        Map<String, Object> known = new LinkedHashMap<>();
        names.values().forEach((name, gloss) -> known.put(name, described(gloss, anyOf(TEXT, of("type", "object", "properties", lines,
                "additionalProperties", false)))));
        return lines(withNote(known));
    }

    private static Map<String, Object> photos() {
        return of("type", List.of("object", "null"), "additionalProperties", of("type", "object", "required", List.of("file"),
                "properties", of("file", described("its path from the record's folder", TEXT), "of", described("what it shows", TEXT),
                        "at", TEXT, "date", TEXT, "note", ANY), "additionalProperties", false));
    }

    private static Map<String, Object> accepted() {
        return of("type", "object", "required", List.of("check", "reason", "who"), "properties", of("check",
                described("the name of the check, as the report gives it", TEXT), "at", TEXT, "reason", TEXT, "who", TEXT,
                "until", ref("date"), "note", ANY), "additionalProperties", false);
    }

    // --- entries

    /** An entry of a thing, which is its first word. The long form names it under a word of its own. */
    private Map<String, Object> entry(Map<String, Object> words, Map<String, Object> things, Map<String, Object> patterns, String longForm) {
        Map<String, Object> all = new LinkedHashMap<>(words);
        things.forEach((name, thing) -> all.merge(name, thing, RecordSchema::either));
        Set<String> rest = new TreeSet<>(words.keySet());
        rest.remove(longForm);
        rest.removeAll(things.keySet());
        List<Object> begins = new ArrayList<>();
        begins.add(of("required", List.of(longForm)));
        begins.add(of("not", of("propertyNames", of("enum", List.copyOf(rest)))));
        return of("type", "object", "minProperties", 1, "properties", all, "patternProperties", patterns, "additionalProperties", false,
                "anyOf", begins);
    }

    /** A word of the entry that is the name of a thing as well may be either. */
    private static Object either(Object word, Object thing) {
        return of("description", ((Map<?, ?>) thing).get("description"), "anyOf", List.of(word, thing));
    }

    /** Every part by name with its gloss, and by a pattern its other words. */
    private Map<String, Object> partsTo(String definition) {
        Map<String, Object> things = new LinkedHashMap<>();
        forms.partGlosses().forEach((part, gloss) -> things.put(part, described(gloss, ref(definition))));
        return things;
    }

    private Map<String, Object> otherParts(String definition) {
        return of(oneOf(forms.others(Vocabulary.Kind.PART), true), ref(definition));
    }

    private Map<String, Object> parts() {
        Map<String, Object> known = forms.properties("parts");
        known.put("part", described("long form: the part", ref("part")));
        known.put("with", described("what the figures of the part were read with: a gauge of the record, or a kind", oneOrMore(TEXT)));
        known.put("limits", described("the limits that came with the part", of("type", "object", "additionalProperties",
                oneOrMore(ref("limit")))));
        // A figure of a part is named by the reading's word alone.
        Set<String> figures = new TreeSet<>();
        for (Quantity quantity : quantities.values()) {
            if (!quantity.of().isEmpty()) {
                figures.add(quantity.what());
            }
        }
        for (String figure : figures) {
            known.putIfAbsent(figure, of("type", List.of("string", "number"), "pattern", "\\d|^(unknown|good|not read)$"));
        }
        Map<String, Object> entry = entry(known, partsTo("state"), otherParts("state"), "part");
        List<Object> own = ownForms();
        if (!own.isEmpty()) {
            entry.put("allOf", own);
        }
        return entry;
    }

    /** A part that has a short list of forms takes only those. */
    private List<Object> ownForms() {
        List<Object> own = new ArrayList<>();
        for (Property property : words.properties("parts")) {
            Map<Map<String, String>, List<Object>> parts = new LinkedHashMap<>();
            for (Part part : words.parts()) {
                Map<String, String> list = property.perPart().get(part.name());
                for (String kind : part.kinds()) {
                    list = list == null ? property.perPart().get(kind) : list;
                }
                if (list != null) {
                    parts.computeIfAbsent(list, l -> new ArrayList<>()).add(of("required", List.of(part.name())));
                }
            }
            parts.forEach((list, begin) -> own.add(of("if", of("anyOf", begin), "then",
                    of("properties", of(property.name(), forms.value(property, list))))));
        }
        return own;
    }

    private Map<String, Object> machining() {
        Map<String, Object> known = forms.properties("machining");
        known.put("of", described("long form: the part or face", ref("part")));
        return entry(known, partsTo("machined"), otherParts("machined"), "of");
    }

    private Map<String, Object> observations() {
        Map<String, Object> known = forms.properties("observations");
        known.put("sign", described("long form: what was seen", ref("seen")));
        known.put("what", described("long form: what was seen", ref("seen")));
        known.put("of", described("the signs that were looked for; in the long form the part", oneOrMore(anyOf(ref("sign"), ref("part")))));
        known.put("with", described("what it was looked at or measured with: a gauge of the record, or a kind", oneOrMore(TEXT)));
        Map<String, Object> entry = entry(known, partsTo("seen"), otherParts("seen"), "of");
        entry.put("allOf", List.of(anyOf(of("required", List.of("of")), of("additionalProperties", of("not", of("const", "clear"))))));
        return entry;
    }

    private Map<String, Object> steps() {
        Map<String, Object> known = forms.properties("steps");
        Map<String, Object> things = new LinkedHashMap<>();
        forms.stepGlosses().forEach((step, gloss) -> things.put(step, described(gloss, ref("done"))));
        known.put("next", described("the step that you mean to do next", oneOrMore(ref("step"))));
        known.put("planned", described("steps that are planned", oneOrMore(ref("step"))));
        known.put("done", described("long form: the step", ref("step")));
        known.put("of", described("which one, where a step is done more than once", oneOrMore(TEXT)));
        Map<String, Object> entry = entry(known, things, of(oneOf(forms.others(Vocabulary.Kind.STEP), false), ref("done")), "done");
        entry.put("anyOf", List.of(of("required", List.of("next")), of("required", List.of("planned")), of("required", List.of("done")),
                ((List<?>) entry.get("anyOf")).get(1)));
        return entry;
    }

    // --- joints

    /** The joints are the sheet's, so any other word is taken for one if a torque stands after it. */
    private Map<String, Object> fasteners() {
        Map<String, Object> known = forms.properties("fasteners");
        Map<String, Object> threads = new LinkedHashMap<>();
        for (Property property : words.properties("threads")) {
            threads.put(property.name(), oneOrMore(forms.value(property)));
        }
        known.put("threads", described("of hole and bolt as left", of("type", "object", "properties", threads, "additionalProperties", false)));
        known.put("lengths", described("a length for each position", of("type", "object", "additionalProperties", pattern("\\d"))));
        known.put("with", described("the wrench: a gauge of the record, or a kind", oneOrMore(TEXT)));
        known.put("joint", described("long form: the joint", TEXT));
        known.put("torque", described("long form: its torque", torque()));
        known.put("stages", described("long form: its stages", torque()));
        return of("type", "object", "minProperties", 1, "properties", known, "additionalProperties", torque());
    }

    private static Map<String, Object> torque() {
        return oneOrMore(pattern("\\d\\s*\\S*[A-Za-z·°]|^(as found|by hand|not yet|unknown|not read)$"));
    }

    // --- readings

    private Map<String, Object> measurements() {
        Map<String, Object> known = forms.properties("measurements", "measurements aside");
        known.put("with", described("a gauge of the record, or a kind; a list of those used together", oneOrMore(TEXT)));
        known.put("unit", described("of all values of the row or table", TEXT));
        known.put("of", described("long form: the part", TEXT));
        known.put("what", described("long form: what was read", TEXT));
        known.put("value", described("long form: the value", ref("reading")));
        known.put("values", described("long form: the values", ref("reading")));
        Map<String, Object> things = new LinkedHashMap<>();
        Map<String, Object> bare = new LinkedHashMap<>();
        quantities.forEach((name, quantity) -> {
            things.put(name, described(gloss(quantity), ref("reading")));
            if (quantity.dimension() == Dimension.COUNT || quantity.dimension() == Dimension.NUMBER) {
                bare.put(name, true);
            }
        });
        known.keySet().forEach(word -> bare.put(word, true));
        Map<String, Object> patterns = new LinkedHashMap<>();
        forms.otherQuantities(quantities).forEach(pattern -> patterns.put(pattern, ref("reading")));
        Map<String, Object> entry = entry(known, things, patterns, "of");
        // Where no unit is said of the row, each figure has its own.
        entry.put("if", of("not", of("required", List.of("unit"))));
        entry.put("then", of("properties", bare, "additionalProperties", of("not", anyOf(of("type", "number"),
                of("type", "array", "contains", of("type", "number"))))));
        return entry;
    }

    private static String gloss(Quantity quantity) {
        return quantity.gloss() + (quantity.unit().word().isEmpty() ? "" : "; in " + quantity.unit().word() + " or the like")
                + quantity.gauge().map(gauge -> "; usual gauge: " + gauge).orElse("");
    }

    /** One figure, a row of them, or a table with the places at its head. */
    private static Map<String, Object> reading() {
        Map<String, Object> figure = anyOf(of("type", "number"), pattern("\\d|^(unknown|good|not read)$"));
        return anyOf(of("type", "number"), pattern("\\d|^(unknown|good|not read)$"), listOf(figure), of("type", "object", "properties",
                of("at", ref("place")), "additionalProperties", anyOf(of("type", "number"), pattern("\\d|^(unknown|good|not read)$"),
                        listOf(figure))));
    }
}
