package leadlamp.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlamp.quantity.Written;
import leadlamp.record.EngineSheet;
import leadlamp.record.LimitLine;
import leadlamp.record.Node;
import leadlamp.record.Statement;
import leadlamp.record.WorkOrder;
import leadlamp.words.Part;
import leadlamp.words.Property;
import leadlamp.words.Quantity;
import leadlamp.words.StepGraph;
import leadlamp.words.Vocabulary;

/**
 * A new build record for an engine, laid out section by section. Every entry stands behind a `#` and says unknown: taken
 * out of its comment it is a whole entry, left in it says nothing.
 */
public final class NewRecord {
    private static final String ENGINE = "engine";
    private static final String OFF = "#  ";
    /** Where the comment of a line begins, so that the eye can run down it. */
    private static final int COMMENT = 64;
    /** So many words are named in a comment; the vocabulary has the rest. */
    private static final int WORDS = 12;

    private final EngineSheet sheet;
    private final Vocabulary words;
    private final StringBuilder out = new StringBuilder(16_384);

    private NewRecord(EngineSheet sheet, Vocabulary words) {
        this.sheet = sheet;
        this.words = words;
    }

    /**
     * The text of the record.
     *
     * @param path the engine sheet, as seen from the folder of the record
     */
    public static String of(EngineSheet sheet, String path, Vocabulary words) {
        NewRecord record = new NewRecord(sheet, words);
        record.top(path);
        record.gauges();
        record.machining();
        record.measurements();
        record.parts();
        record.fasteners();
        record.observations();
        record.steps();
        record.protection();
        return record.out.toString();
    }

    private void top(String path) {
        String name = sheet.name().isEmpty() ? path : sheet.name();
        line("# A build record for the engine " + oneLine(name) + ". Nothing is filled in yet.");
        line("#");
        line("# Take the # away from a line when you know what it asks, and put what you know in place of `unknown`.");
        line("# Leave a line as it is, or throw it away, and it says nothing. `unknown` without its # says: looked, could not tell.");
        line("# A value carries its unit: mm, thou, N·m, lbf.ft, bar, psi. `at: each` is every place; `at: 2` is one.");
        line("# An editor that knows YAML schemas completes the words: see README, \"In an editor\".");
        line("# `with:` names the gauge. `note:` may stand in any entry. `told by: owner` says that it is not your own knowledge.");
        line("");
        line("build:");
        line("  name: " + quoted(name + ", new record"));
        property("  ", "build", "purpose");
        property("  ", "build", "arrived");
        property("  ", "build", "last opened");
        line("engine: " + quoted(path));
        line("");
        line("#use:");
        for (Property property : words.properties("use")) {
            property("  ", "use", property.name());
        }
        line("");
        comment("#stage: engine stripped", "the furthest step done, in the words of steps below");
    }

    private void property(String indent, String section, String name) {
        words.property(section, name).ifPresent(p -> comment("#" + indent + p.name() + ": unknown", says(p)));
    }

    private static String says(Property property) {
        String taken = property.values().isEmpty() ? property.takes() : named(property.values().keySet());
        return property.gloss().isEmpty() ? taken : taken + "; " + property.gloss();
    }

    private static String named(Set<String> words) {
        List<String> named = new ArrayList<>(words);
        return named.size() <= WORDS ? String.join(" | ", named)
                : String.join(" | ", named.subList(0, WORDS)) + " | ...";
    }

    // --- what it was measured and worked with

    private void gauges() {
        section("gauges", "what you measure with, under a name of your own");
        line("#  micrometer 25-50: { kind: micrometer, resolution: 0.001 mm, checked: 2026-01-05 }");
        line("#  wrench A: { kind: click wrench, range: from 20 to 110 N·m, checked: 2026-01-05 }");
    }

    private void machining() {
        section("machining", "what was taken off, and `none` of what was looked at and left");
        for (String face : List.of("block face", "head face", "cylinder", "crankshaft")) {
            comment(OFF + "- { " + face + ": unknown" + each(face) + " }", words.property("machining", "by")
                    .map(p -> named(p.values().keySet())).orElse(""));
        }
    }

    private void measurements() {
        section("measurements", "what the engine sheet sets a limit for");
        Set<String> done = new LinkedHashSet<>();
        Map<String, String> limits = new LinkedHashMap<>();
        for (LimitLine limit : sheet.limits()) {
            words.quantity(limit.quantity()).ifPresent(q -> limits.merge(q.name(), said(limit), (a, b) -> a + "; " + b));
        }
        for (Map.Entry<String, String> limit : limits.entrySet()) {
            Quantity quantity = words.quantity(limit.getKey()).orElseThrow();
            if (quantity.derived()) {
                for (String reading : quantity.from()) {
                    words.quantity(reading).filter(q -> !q.derived())
                            .ifPresent(q -> measurement(q, "for " + quantity.name() + ": " + limit.getValue(), done));
                }
            } else {
                measurement(quantity, limit.getValue(), done);
            }
        }
    }

    private void measurement(Quantity quantity, String why, Set<String> done) {
        if (done.add(quantity.name())) {
            String at = quantity.group().equals(ENGINE) ? "" : ", at: each";
            String with = quantity.gauge().map(g -> ", with: " + g).orElse("");
            comment(OFF + "- { " + quantity.name() + ": unknown" + at + with + " }", why);
        }
    }

    private static String said(LimitLine limit) {
        List<String> parts = new ArrayList<>();
        if (!limit.at().isEmpty()) {
            parts.add(limit.at());
        }
        limit.standard().map(Written::text).ifPresent(t -> parts.add("standard " + t));
        limit.least().map(Written::text).ifPresent(t -> parts.add("least " + t));
        limit.most().map(Written::text).ifPresent(t -> parts.add("most " + t));
        return String.join(" ", parts);
    }

    // --- parts, joints, looks

    private void parts() {
        section("parts", "each part: " + words.property("parts", "state").map(p -> named(p.values().keySet()))
                .orElse(""));
        for (Part part : here()) {
            StringBuilder entry = new StringBuilder(OFF + "- { ").append(part.name()).append(": unknown")
                    .append(each(part.name()));
            Optional<Property> form = words.property("parts", "form");
            Map<String, String> forms = form.map(f -> f.perPart().getOrDefault(part.name(), Map.of())).orElse(Map.of());
            comment(entry.append(" }").toString(), forms.isEmpty() ? part.gloss()
                    : part.gloss() + "; form: " + named(forms.keySet()));
        }
    }

    /** Parts that this engine shows: those in sets of known size, and those that its sheet names. */
    private List<Part> here() {
        Set<String> named = new LinkedHashSet<>();
        for (Statement line : sheet.statements()) {
            named.add(line.of());
        }
        sheet.below("renew always", "parts").filter(Node.Items.class::isInstance).map(Node.Items.class::cast)
                .ifPresent(list -> list.items().forEach(item -> {
                    if (item instanceof Node.Scalar word) {
                        words.part(word.text()).ifPresent(p -> named.add(p.name()));
                    }
                }));
        List<Part> here = new ArrayList<>();
        for (Part part : words.parts()) {
            boolean set = !part.group().equals(ENGINE)
                    && sheet.layout().places(part).map(places -> !places.isEmpty()).orElse(false);
            if (set || named.contains(part.name())) {
                here.add(part);
            }
        }
        return here;
    }

    private String each(String part) {
        Optional<Part> known = words.part(part);
        boolean several = known.isPresent() && !known.get().group().equals(ENGINE)
                && sheet.layout().places(known.get().group()).map(places -> places.size() > 1).orElse(true);
        return several ? ", at: each" : "";
    }

    private void fasteners() {
        section("fasteners", "each joint: its torque or stages; or as found | by hand | not yet");
        for (String joint : sheet.names("joints")) {
            boolean many = sheet.below("joints", joint, "each").isPresent();
            comment(OFF + "- { " + quoted(joint) + ": unknown" + (many ? ", at: each" : "")
                    + ", threads: { condition: unknown, thread-locker: unknown, lubricant: unknown } }",
                    "sheet: " + torque(joint));
        }
    }

    private String torque(String joint) {
        Optional<Node> stages = sheet.below("joints", joint, "stages");
        Optional<Node> torque = stages.isPresent() ? stages : sheet.below("joints", joint, "torque");
        List<String> said = new ArrayList<>();
        torque.ifPresent(node -> scalars(node, said));
        return said.isEmpty() ? "no torque" : String.join(", ", said);
    }

    private static void scalars(Node node, List<String> said) {
        if (node instanceof Node.Scalar scalar) {
            said.add(scalar.text());
        } else if (node instanceof Node.Items items) {
            items.items().forEach(item -> scalars(item, said));
        }
    }

    private void observations() {
        section("observations", "a sign that was seen, or `clear` of the signs that were looked for");
        line("#  - { sump: clear, of: [metal, plastic, sealant inside] }");
        line("#  - { oil filter: unknown, note: what was seen that has no word }");
    }

    private void steps() {
        line("");
        comment("steps:", "each with its date, or done; `left out` says that it was not done");
        StepGraph graph = WorkOrder.of(sheet, words);
        for (String step : graph.steps()) {
            comment(OFF + "- { " + step + ": unknown }", words.step(step).map(s -> s.gloss()).orElse(""));
        }
        comment("  - next: " + first(graph), "the step that you mean to do next: what it closes is due now");
    }

    /** The first step that an engine that comes in is before. */
    private static String first(StepGraph graph) {
        return graph.steps().contains("engine stripped") ? "engine stripped" : graph.steps().get(0);
    }

    private void protection() {
        section("protection", "what is really there to save the engine; none where there is none");
        for (Property property : words.properties("protection")) {
            if (property.name().endsWith(" cut") || property.name().endsWith(" lamp")) {
                property("  ", "protection", property.name());
            }
        }
    }

    // --- lines

    private void section(String name, String gloss) {
        line("");
        comment("#" + name + ":", gloss);
    }

    private void comment(String text, String comment) {
        if (comment.isEmpty()) {
            line(text);
        } else {
            line(text + " ".repeat(Math.max(1, COMMENT - text.length())) + "# " + oneLine(comment));
        }
    }

    private static String oneLine(String text) {
        return text.replace('\n', ' ').replace('\r', ' ');
    }

    /** As a scalar that stays what it is: quoted where a sign in it would steer the reader. */
    private static String quoted(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean plain = Character.isLetterOrDigit(c) || c == ' ' && i > 0 && i + 1 < text.length()
                    || "-_./,()".indexOf(c) >= 0 && i > 0;
            if (!plain) {
                return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", " ") + '"';
            }
        }
        return text.isEmpty() ? "\"\"" : text;
    }

    private void line(String text) {
        out.append(text).append('\n');
    }
}
