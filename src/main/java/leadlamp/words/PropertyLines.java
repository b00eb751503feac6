package leadlamp.words;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.quantity.Dimension;

/** The properties, section by section, with what refers to another resolved. */
final class PropertyLines {
    private static final String FILE = "properties.yaml";
    /** Keys of a property; any other key with words under it is a property of a section below. */
    private static final Set<String> OWN = Set.of("values", "also", "takes", "gloss", "of", "see", "note", "words",
            "written", "kinds", "sized");
    /** A word of a sheet's line that has no list of its own. */
    private static final String LINE = "line";

    private final Map<String, Map<String, Property>> sections = new LinkedHashMap<>();
    private final List<Runnable> references = new ArrayList<>();

    PropertyLines(Map<String, Object> file) {
        file.forEach((section, value) -> section(section, new Line(FILE, section, value)));
        references.forEach(Runnable::run);
        named();
    }

    List<Property> all() {
        List<Property> all = new ArrayList<>();
        sections.values().forEach(section -> all.addAll(section.values()));
        return all;
    }

    Map<String, Integer> table() {
        Map<String, Integer> table = new TreeMap<>();
        int index = 0;
        for (var section : sections.entrySet()) {
            for (String name : section.getValue().keySet()) {
                table.put(key(section.getKey(), name), index++);
            }
        }
        return table;
    }

    static String key(String section, String name) {
        return Index.key(section) + ": " + Index.key(name);
    }

    /** For each section the numbers of its properties. */
    List<List<Integer>> sections() {
        List<List<Integer>> numbers = new ArrayList<>();
        int index = 0;
        for (var section : sections.values()) {
            List<Integer> own = new ArrayList<>();
            for (int i = 0; i < section.size(); i++) {
                own.add(index++);
            }
            numbers.add(own);
        }
        return numbers;
    }

    Map<String, Integer> sectionTable() {
        Map<String, Integer> table = new TreeMap<>();
        for (String section : sections.keySet()) {
            table.put(Index.key(section), table.size());
        }
        return table;
    }

    /** The values of a property; none where it is not there. */
    Set<String> values(String section, String name) {
        Property property = sections.getOrDefault(section, Map.of()).get(name);
        return property == null ? Set.of() : property.values().keySet();
    }

    Set<String> partsNamed() {
        Set<String> parts = new LinkedHashSet<>();
        for (Property property : all()) {
            parts.addAll(property.of());
            parts.addAll(property.perPart().keySet());
        }
        return parts;
    }

    private void section(String section, Line lines) {
        sections.computeIfAbsent(section, s -> new LinkedHashMap<>());
        for (String name : lines.keys()) {
            Object value = lines.map().get(name);
            if (section.equals("measurements") && name.equals("aside")) {
                Line asides = new Line(FILE, name, value);
                asides.map().forEach((aside, takes) -> add(section, aside, Map.of(), Map.of(), String.valueOf(takes), "taken at"));
            } else if (section.equals("sheet") && name.equals("names")) {
                new Line(FILE, name, value).list().forEach(word -> add(section, word, Map.of(), Map.of(), "words", ""));
            } else if (section.equals("protection") && name.equals("names")) {
                add(section, name, glossed(new Line(FILE, name, value).map()), Map.of(), "", "what may guard the engine");
            } else {
                property(section, name, new Line(FILE, section + ": " + name, value));
            }
        }
    }

    private void property(String section, String name, Line line) {
        Map<String, Object> map = line.map();
        for (String key : map.keySet()) {
            if (!OWN.contains(key) && !(map.get(key) instanceof Map)) {
                throw new VocabularyException(FILE, "\"" + section + ": " + name + "\" has a key that is not known, \"" + key + "\"");
            }
        }
        Map<String, String> values = values(line, map);
        List<String> of = map.get("of") instanceof Map ? List.of() : line.list("of");
        Map<String, Map<String, String>> perPart = new LinkedHashMap<>();
        if (map.get("of") instanceof Map) {
            line.line("of").map().forEach((part, forms) -> perPart.put(part, glossed(new Line(FILE, part, forms).map())));
        }
        String gloss = line.text("gloss", line.text("note", ""));
        String takes = line.text("takes", line.text("written", ""));
        String below = below(section, name);
        for (String key : map.keySet()) {
            if (!OWN.contains(key)) {
                sections.computeIfAbsent(below, s -> new LinkedHashMap<>());
                property(below, key, new Line(FILE, below + ": " + key, map.get(key)));
            }
        }
        if (map.get("words") instanceof List) {
            sections.computeIfAbsent(below, s -> new LinkedHashMap<>());
            for (String word : line.list("words")) {
                if (!sections.get(below).containsKey(word)) {
                    add(below, word, Map.of(), Map.of(), LINE, "");
                }
            }
        }
        if (takes.isEmpty() && values.isEmpty() && perPart.isEmpty() && sections.containsKey(below)) {
            takes = LINE;
        }
        put(new Property(section, name, values, texts(line, "also"), takes, gloss, of,
                Collections.unmodifiableMap(perPart), lists(line, "kinds"), lists(line, "sized")));
        String see = line.text("see", "");
        if (!see.isEmpty()) {
            references.add(() -> refer(section, name, see));
        }
        if (map.get("values") instanceof Map<?, ?> under && under.get("see") instanceof String elsewhere) {
            references.add(() -> refer(section, name, elsewhere));
        }
    }

    private static Map<String, String> values(Line line, Map<String, Object> map) {
        if (map.get("values") instanceof Map<?, ?> values && !values.containsKey("see")) {
            return glossed(line.line("values").map());
        }
        return map.get("words") instanceof Map ? glossed(line.line("words").map()) : Map.of();
    }

    private static Map<String, String> texts(Line line, String key) {
        // Other words for a value stand with it; a list of them belongs to no single value and is prose.
        return line.map().get(key) instanceof Map ? glossed(line.line(key).map()) : Map.of();
    }

    private static Map<String, String> glossed(Map<String, Object> map) {
        Map<String, String> texts = new LinkedHashMap<>();
        map.forEach((word, gloss) -> texts.put(word, String.valueOf(gloss)));
        return Collections.unmodifiableMap(texts);
    }

    private static String below(String section, String name) {
        return section.equals("fasteners") && name.equals("threads") ? name : section + " " + name;
    }

    private void add(String section, String name, Map<String, String> values, Map<String, String> also, String takes,
            String gloss) {
        put(Property.plain(section, name, values, also, takes, gloss, List.of(), Map.of()));
    }

    private void put(Property property) {
        sections.computeIfAbsent(property.section(), s -> new LinkedHashMap<>()).put(property.name(), property);
    }

    /** Takes over what stands elsewhere: `parts form` is one property, `protection` a whole section. */
    private void refer(String section, String name, String see) {
        Property own = sections.get(section).get(name);
        if (sections.containsKey(see)) {
            String below = below(section, name);
            Map<String, Property> all = sections.get(see);
            all.values().forEach(p -> put(p.in(below, p.name())));
            put(new Property(section, name, own.values(), own.also(), LINE, own.gloss(), own.of(), own.perPart(), own.kinds(), own.sized()));
            return;
        }
        int blank = see.indexOf(' ');
        Property other = blank < 0 ? null
                : sections.getOrDefault(see.substring(0, blank), Map.of()).get(see.substring(blank + 1));
        if (other == null) {
            throw new VocabularyException(FILE, "\"" + section + ": " + name + "\" refers to \"" + see + "\", which is not there");
        }
        put(new Property(section, name, other.values(), other.also(), own.takes().isEmpty() ? other.takes() : own.takes(),
                own.gloss().isEmpty() ? other.gloss() : own.gloss(), own.of(), other.perPart(), other.kinds(), own.sized()));
    }

    /** Lists under words of their own: `kinds`, `sized`. */
    private static Map<String, List<String>> lists(Line line, String key) {
        Line lists = line.line(key);
        Map<String, List<String>> all = new LinkedHashMap<>();
        for (String word : lists.keys()) {
            all.put(word, lists.list(word));
        }
        return Collections.unmodifiableMap(all);
    }

    /** A word named that is not there must be told by whoever builds, or it would be looked for for ever in vain. */
    private void named() {
        for (Property property : all()) {
            String who = property.section() + ": " + property.name();
            property.kinds().forEach((kind, values) -> values.forEach(value -> need(property.values().containsKey(value), who, value)));
            property.also().forEach((word, meant) -> need(property.values().containsKey(meant)
                    || property.perPart().values().stream().anyMatch(list -> list.containsKey(meant)), who, meant));
            Map<String, Property> lines = sections.getOrDefault(below(property.section(), property.name()), Map.of());
            property.sized().forEach((dimension, sized) -> {
                need(dimension.equals(Property.AS_READ) || Dimension.named(dimension).isPresent(), who, dimension);
                sized.forEach(one -> need(one.equals(Property.EACH_LINE) || lines.containsKey(one), who, one));
            });
        }
    }

    private static void need(boolean holds, String who, String word) {
        if (!holds) {
            throw new VocabularyException(FILE, "\"" + who + "\" names \"" + word + "\", which is not there");
        }
    }
}
