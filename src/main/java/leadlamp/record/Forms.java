package leadlamp.record;

import static leadlamp.record.Schema.ANY;
import static leadlamp.record.Schema.TEXT;
import static leadlamp.record.Schema.anyOf;
import static leadlamp.record.Schema.described;
import static leadlamp.record.Schema.of;
import static leadlamp.record.Schema.oneOf;
import static leadlamp.record.Schema.oneOrMore;
import static leadlamp.record.Schema.pattern;
import static leadlamp.record.Schema.ref;
import static leadlamp.record.Schema.words;

import java.util.ArrayList;
import java.util.Collection;
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
import leadlamp.words.Sign;
import leadlamp.words.Step;
import leadlamp.words.Vocabulary;

/** What record and sheet share in their schemas: names, words, values, dates and places as the readers take them. */
final class Forms {
    private static final String DATE = "^\\d{4}(-\\d{2}(-\\d{2})?)?$|^(spring|summer|autumn|winter) \\d{4}$|^\\d{1,3} (month|year)s? ago$";

    private final Vocabulary words;

    Forms(Vocabulary words) {
        this.words = words;
    }

    /** What other schemas point at. */
    Map<String, Object> definitions() {
        Map<String, Object> definitions = new LinkedHashMap<>();
        definitions.put("date", anyOf(pattern(DATE), of("type", "integer", "minimum", 1000, "maximum", 9999)));
        definitions.put("place", anyOf(TEXT, Schema.listOf(TEXT), of("type", "object", "minProperties", 1, "maxProperties", 1,
                "properties", of("one of", oneOrMore(TEXT), "some of", oneOrMore(TEXT)), "additionalProperties", false)));
        definitions.put("part", anyOf(words(partGlosses()), pattern(oneOf(others(Vocabulary.Kind.PART), true))));
        definitions.put("sign", anyOf(words(signGlosses()), pattern(oneOf(others(Vocabulary.Kind.SIGN), false))));
        definitions.put("step", anyOf(words(stepGlosses()), pattern(oneOf(others(Vocabulary.Kind.STEP), false))));
        definitions.put("gauge", anyOf(words(gaugeGlosses()), pattern(oneOf(others(Vocabulary.Kind.GAUGE), true))));
        definitions.put("figure", pattern("\\d"));
        return definitions;
    }

    // --- names

    Map<String, String> partGlosses() {
        Map<String, String> glosses = new TreeMap<>();
        for (Part part : words.parts()) {
            glosses.put(part.name(), part.gloss());
        }
        return glosses;
    }

    Map<String, String> signGlosses() {
        Map<String, String> glosses = new TreeMap<>();
        for (Sign sign : words.signs()) {
            glosses.put(sign.name(), sign.gloss());
        }
        return glosses;
    }

    Map<String, String> stepGlosses() {
        Map<String, String> glosses = new TreeMap<>();
        for (Step step : words.steps()) {
            glosses.put(step.name(), step.gloss());
        }
        return glosses;
    }

    private Map<String, String> gaugeGlosses() {
        Map<String, String> glosses = new TreeMap<>();
        words.gauges().forEach(gauge -> glosses.put(gauge.name(), gauge.gloss()));
        return glosses;
    }

    /** Other words for the names of a kind, and the names themselves where a plural of them is taken. */
    Collection<String> others(Vocabulary.Kind kind) {
        return words.spellings(kind).keySet();
    }

    /** All readings by name: those that have a line of their own and those that a kind lends to its members. */
    Map<String, Quantity> quantities() {
        Map<String, Quantity> all = new TreeMap<>();
        Map<String, List<Quantity>> ofKind = new TreeMap<>();
        for (Quantity quantity : words.quantities()) {
            all.put(quantity.name(), quantity);
            if (!quantity.derived()) {
                ofKind.computeIfAbsent(quantity.of(), k -> new ArrayList<>()).add(quantity);
            }
        }
        for (Part part : words.parts()) {
            for (String kind : part.kinds()) {
                for (Quantity lender : ofKind.getOrDefault(kind, List.of())) {
                    words.quantity(part.name() + " " + lender.what()).ifPresent(q -> all.putIfAbsent(q.name(), q));
                }
            }
        }
        return all;
    }

    /** Patterns of the other ways to name a reading: by a synonym of its own, or by one of its part's. */
    List<String> otherQuantities(Map<String, Quantity> quantities) {
        List<String> patterns = new ArrayList<>();
        patterns.add(oneOf(others(Vocabulary.Kind.QUANTITY), true));
        Map<String, Set<String>> spelt = new TreeMap<>();
        words.spellings(Vocabulary.Kind.PART).forEach((word, part) -> spelt.computeIfAbsent(part, p -> new TreeSet<>()).add(word));
        Map<String, Set<String>> whats = new TreeMap<>();
        for (Quantity quantity : quantities.values()) {
            whats.computeIfAbsent(quantity.of(), p -> new TreeSet<>()).add(quantity.what());
        }
        // A reading may be named by a word of its own behind the part's: `piston size`.
        words.spellings(Vocabulary.Kind.QUANTITY).forEach((word, name) -> {
            String of = words.quantity(name).map(Quantity::of).orElse("");
            if (!of.isEmpty() && word.startsWith(of + " ")) {
                whats.computeIfAbsent(of, p -> new TreeSet<>()).add(word.substring(of.length() + 1));
            }
        });
        for (Part part : words.parts()) {
            Set<String> mine = new TreeSet<>(whats.getOrDefault(part.name(), Set.of()));
            part.kinds().forEach(kind -> mine.addAll(whats.getOrDefault(kind, Set.of())));
            Set<String> names = spelt.getOrDefault(part.name(), Set.of());
            if (!mine.isEmpty() && names.size() > 0) {
                String part8 = oneOf(names, true);
                patterns.add(part8.substring(0, part8.length() - 1) + " " + oneOf(mine, true).substring(1));
            }
        }
        return patterns;
    }

    // --- values

    /** What may stand after a word of an entry. */
    Map<String, Object> value(Property property) {
        Map<String, String> all = new LinkedHashMap<>(property.values());
        property.perPart().values().forEach(all::putAll);
        return value(property, all);
    }

    Map<String, Object> value(Property property, Map<String, String> values) {
        List<Object> ways = new ArrayList<>();
        Map<String, String> taken = new LinkedHashMap<>(values);
        property.also().forEach((word, meant) -> {
            if (values.containsKey(meant)) {
                taken.putIfAbsent(word, "the same as " + meant);
            }
        });
        taken.putIfAbsent("unknown", "looked, and could not tell");
        ways.add(words(taken));
        String takes = property.takes();
        Dimension dimension = EntryReader.dimension(takes);
        if (takes.isEmpty() && !values.isEmpty()) {
            ways.add(Schema.listOf(words(taken)));
        } else if (dimension != null) {
            ways.add(dimension == Dimension.COUNT || dimension == Dimension.NUMBER
                    ? of("type", List.of("number", "string"), "pattern", "\\d") : pattern("\\d|^(idle|good|not read)$"));
        } else if (takes.equals("date")) {
            ways.add(ref("date"));
        } else {
            ways.add(of("not", anyOf(Schema.EMPTY, of("const", ""))));
        }
        return described(gloss(property), of("anyOf", ways));
    }

    static String gloss(Property property) {
        String takes = property.takes();
        return property.gloss().isEmpty() ? takes : takes.isEmpty() ? property.gloss() : property.gloss() + " (" + takes + ")";
    }

    /** The words of a section, each with what it may say, and the words that any entry may carry. */
    Map<String, Object> properties(String... sections) {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (String section : sections) {
            for (Property property : words.properties(section)) {
                properties.putIfAbsent(property.name(), value(property));
            }
        }
        properties.put("at", described("where: a place, a list of places, each, or { one of: [places] }", ref("place")));
        properties.put("note", described("your own words; they are printed and never judged", ANY));
        properties.put("who", described("who did it or read it", ANY));
        words.property("any entry", "told by").ifPresent(told -> properties.put("told by", value(told)));
        words.property("any entry", "as").ifPresent(as -> properties.putIfAbsent("as", value(as)));
        return properties;
    }
}
