package leadlamp.teach;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.audit.Check;
import leadlamp.audit.Way;
import leadlamp.words.GaugeKind;
import leadlamp.words.Name;
import leadlamp.words.Names;
import leadlamp.words.Property;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** Says of each word that a check wants how it is read or seen, and with which gauge. */
final class Measuring {
    private static final int MANY = 8;
    private final Vocabulary words;

    /**
     * One word that is wanted.
     *
     * @param word  as the record has it
     * @param how   how it is come by
     * @param gauge its gauge, with the usual doubt; empty where it wants none
     */
    record Want(String word, String how, String gauge) {
    }

    Measuring(Vocabulary words) {
        this.words = words;
    }

    /** What the ways of a check want, each once, and the readings behind what is worked out. */
    List<Want> of(Check check) {
        List<String> wanted = new ArrayList<>();
        for (Way way : check.ways()) {
            for (String need : way.needs()) {
                add(need, wanted);
            }
        }
        List<Want> wants = new ArrayList<>();
        for (String word : wanted) {
            wants.add(want(word));
        }
        return wants;
    }

    private void add(String word, List<String> wanted) {
        if (wanted.contains(word)) {
            return;
        }
        wanted.add(word);
        Optional<Quantity> quantity = words.quantity(word);
        if (quantity.isPresent() && quantity.get().name().equals(word)) {
            for (String from : quantity.get().from()) {
                add(from, wanted);
            }
        }
    }

    private Want want(String word) {
        Optional<Name> name = Names.resolve(word, words);
        if (name.isEmpty()) {
            return new Want(word, "", "");
        }
        if (name.get() instanceof Name.QuantityName reading) {
            return reading(word, words.quantity(reading.quantity()).orElseThrow());
        }
        if (name.get() instanceof Name.JointTorque) {
            return new Want(word, "the torque at the last stage, as read off the wrench", gauge("click wrench"));
        }
        if (name.get() instanceof Name.SignOf sign) {
            return new Want(word, "look: " + words.sign(sign.what()).map(s -> s.gloss()).orElse(sign.what())
                    + "; where it is not there, write `clear` of it", "");
        }
        if (name.get() instanceof Name.SheetWord) {
            return new Want(word, "from the engine sheet, which is copied from the maker's manual", "");
        }
        if (name.get() instanceof Name.SectionWord section && section.of().equals("steps")) {
            return new Want(word, "the step, written with its date: " + words.step(section.what()).map(s -> s.gloss())
                    .orElse(section.what()), "");
        }
        if (name.get() instanceof Name.ConditionName) {
            return new Want(word, "worked out from the whole record", "");
        }
        return new Want(word, property(name.get()), "");
    }

    /** Sections of words that are never written: each is worked out of what is. */
    private Optional<String> workedOut(Name name) {
        List<String> sections = name instanceof Name.JointWord ? List.of("worked out of joint")
                : List.of("worked out of " + name.of(), "worked out");
        for (String section : sections) {
            Optional<Property> property = words.property(section, name.what());
            if (property.isPresent()) {
                Map<String, String> values = new TreeMap<>(property.get().perPart().getOrDefault(name.of(), property.get().values()));
                List<String> told = new ArrayList<>();
                values.forEach((value, gloss) -> told.add(value + (gloss.isEmpty() || gloss.equals(value) ? "" : " (" + gloss + ")")));
                String gloss = property.get().gloss();
                return Optional.of("never written; worked out from the rest of the record" + (gloss.isEmpty() ? "" : ": " + gloss)
                        + (told.isEmpty() ? "" : "; " + (told.size() > MANY ? String.join(", ", values.keySet()) : String.join(", ", told))));
            }
        }
        return Optional.empty();
    }

    private String property(Name name) {
        Optional<String> worked = workedOut(name);
        if (worked.isPresent()) {
            return worked.get();
        }
        if (name.of().equals("machining") && name instanceof Name.SectionWord) {
            return "what was done to it, under `machining`: " + words.property("machining", "by").map(by -> said(by, name.of())).orElse("words");
        }
        List<String> sections = name instanceof Name.JointWord ? List.of("fasteners", "threads", "sheet joints", "any entry")
                : List.of(name.of(), "parts", "fasteners", "threads", "measurements", "observations", "gauges",
                        "any entry");
        for (String section : sections) {
            Optional<Property> property = words.property(section, name.what());
            if (property.isPresent()) {
                return said(property.get(), name.of());
            }
        }
        return "written in words";
    }

    private static String said(Property property, String of) {
        List<String> values = new ArrayList<>(new TreeMap<>(property.perPart().containsKey(of) ? property.perPart().get(of)
                : property.values()).keySet());
        String gloss = property.gloss();
        if (values.isEmpty()) {
            return gloss.isEmpty() ? "written as: " + (property.takes().isEmpty() ? "words" : property.takes())
                    : gloss + (property.takes().isEmpty() ? "" : " (" + property.takes() + ")");
        }
        return (gloss.isEmpty() ? "" : gloss + "; ") + "one of: " + (values.size() > MANY
                ? String.join(", ", values.subList(0, MANY)) + " and others" : String.join(", ", values));
    }

    private Want reading(String word, Quantity quantity) {
        if (quantity.derived() && !quantity.from().isEmpty()) {
            String direct = quantity.gauge().map(g -> "; it may be read straight as well").orElse("");
            return new Want(word, quantity.gloss() + "; worked out from " + String.join(", ", quantity.from()) + direct,
                    quantity.gauge().map(this::gauge).orElse(""));
        }
        return new Want(word, quantity.gloss(), quantity.gauge().map(this::gauge).orElse(""));
    }

    /** A gauge with its usual doubt. */
    String gauge(String kind) {
        Optional<GaugeKind> gauge = words.gauge(kind);
        return gauge.map(g -> g.name() + (g.doubt().isEmpty() ? "" : ", usual doubt " + g.doubt() + " (" + g.basis() + ")"))
                .orElse(kind);
    }
}
