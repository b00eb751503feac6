package leadlamp.teach;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.record.EngineSheet;
import leadlamp.record.Place;
import leadlamp.words.Name;
import leadlamp.words.Names;
import leadlamp.words.Part;
import leadlamp.words.Property;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** The lines of a record in which the answer of a look is written, laid out for one engine. */
final class Forms {
    private static final String BLANK = "...";
    private static final int FEW = 6;
    private final EngineSheet sheet;
    private final Vocabulary words;

    Forms(EngineSheet sheet, Vocabulary words) {
        this.sheet = sheet;
        this.words = words;
    }

    /** Whether this engine has what the word speaks of; where the sheet does not settle it, it may have. */
    boolean has(String word) {
        if (lacks(word, "belt", "each belt drive") || lacks(word, "chain", "each chain drive")) {
            return false;
        }
        Optional<Name> name = Names.resolve(word, words);
        if (name.isEmpty()) {
            return false;
        }
        if (name.get() instanceof Name.QuantityName reading) {
            return places(reading.quantity()).map(p -> !p.isEmpty()).orElse(true);
        }
        return words.part(name.get().of()).filter(p -> p.name().equals(name.get().of())).flatMap(sheet.layout()::places)
                .map(p -> !p.isEmpty()).orElse(true);
    }

    private boolean lacks(String word, String kind, String group) {
        return (word.startsWith(kind + " ") || word.startsWith("timing " + kind)) && sheet.layout().places(group)
                .map(List::isEmpty).orElse(false);
    }

    /** The places of a reading; empty where the sheet does not settle them. */
    Optional<List<String>> places(String quantity) {
        return words.quantity(quantity).flatMap(q -> sheet.layout().places(q.group()));
    }

    /** The lines, with the sections that they stand in. */
    List<String> lines(Look look) {
        Map<String, List<String>> sections = new LinkedHashMap<>();
        Map<String, List<String>> signs = new LinkedHashMap<>();
        Map<String, List<String>> of = new LinkedHashMap<>();
        for (String word : look.record()) {
            if (!has(word)) {
                continue;
            }
            Name name = Names.resolve(word, words).orElseThrow();
            if (name instanceof Name.QuantityName reading) {
                put(sections, "measurements", reading(reading.quantity()));
            } else if (name instanceof Name.SignOf sign) {
                boolean sound = words.sign(sign.what()).map(s -> s.sound()).orElse(false);
                if (sound) {
                    put(sections, "observations", "- { " + sign.of() + ": " + sign.what() + at(sign.of()) + " }");
                } else {
                    signs.computeIfAbsent(sign.of(), s -> new ArrayList<>()).add(sign.what());
                }
            } else if (name instanceof Name.SectionWord section) {
                put(sections, section.of(), section.of().equals("steps") ? "- { " + section.what() + ": DATE, result: " + BLANK + " }"
                        : section.what() + ": " + BLANK);
            } else if (name instanceof Name.JointWord joint) {
                of.computeIfAbsent("JOINT", j -> new ArrayList<>()).add(joint.what());
            } else {
                of.computeIfAbsent(name.of(), p -> new ArrayList<>()).add(name.what());
            }
        }
        of.forEach((part, all) -> put(sections, part.equals("JOINT") ? "fasteners" : "parts", part(part, all)));
        signs.forEach((part, all) -> put(sections, "observations", "- { " + part + ": clear, of: "
                + (all.size() == 1 ? all.get(0) : "[" + String.join(", ", all) + "]") + at(part)
                + " }   # or, for what is there: { " + part + ": " + all.get(0) + " }"));
        List<String> lines = new ArrayList<>();
        sections.forEach((section, entries) -> {
            lines.add(section + ":");
            entries.forEach(entry -> lines.add("  " + entry));
        });
        return lines;
    }

    private static void put(Map<String, List<String>> sections, String section, String line) {
        sections.computeIfAbsent(section, s -> new ArrayList<>()).add(line);
    }

    private String at(String part) {
        Optional<List<String>> places = words.part(part).flatMap(sheet.layout()::places);
        return places.isEmpty() || places.get().equals(List.of(Place.ENGINE)) ? "" : ", at: each";
    }

    private String part(String part, List<String> properties) {
        if (part.equals("JOINT")) {
            return "- { JOINT: as found, bolts: " + BLANK + " }";
        }
        StringBuilder line = new StringBuilder("- { ").append(part).append(": there");
        for (String property : properties) {
            if (!property.equals("state")) {
                line.append(", ").append(property).append(": ").append(choice(part, property));
            }
        }
        return line.append(at(part)).append(" }").append(properties.contains("state") ? "   # or missing" : "").toString();
    }

    private String choice(String part, String what) {
        Optional<Property> property = words.property("parts", what);
        if (property.isEmpty()) {
            return BLANK;
        }
        Map<String, String> values = property.get().perPart().getOrDefault(part, property.get().values());
        List<String> all = new ArrayList<>(new TreeMap<>(values).keySet());
        return all.isEmpty() ? BLANK : String.join(" | ", all);
    }

    private String reading(String word) {
        Quantity quantity = words.quantity(word).orElseThrow();
        String gauge = quantity.gauge().map(g -> ", with: " + g).orElse("");
        List<String> places = places(word).orElse(List.of(Place.ENGINE));
        boolean numbers = places.stream().allMatch(p -> p.matches("[0-9]+"));
        if (numbers && places.size() <= FEW && !places.isEmpty()) {
            return "- { " + word + ": [" + String.join(", ", Collections.nCopies(places.size(), BLANK)) + "], unit: "
                    + YamlText.word(quantity.unit().word()) + gauge + " }";
        }
        return "- { " + word + ": " + BLANK + " " + quantity.unit().word() + (places.equals(List.of(Place.ENGINE)) ? ""
                : ", at: " + (places.isEmpty() ? BLANK : places.get(0))) + gauge + " }";
    }

    /** The part a word speaks of. */
    Optional<Part> part(String word) {
        return Names.resolve(word, words).flatMap(n -> words.part(n.of()));
    }
}
