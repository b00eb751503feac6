package leadlamp.audit;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.record.Node;
import leadlamp.record.Problem;
import leadlamp.record.Where;
import leadlamp.record.Yaml;
import leadlamp.words.Names;
import leadlamp.words.Vocabulary;

/** Reads one page, of a check or of a condition, and says all that is wrong with it at once. */
final class PageReader {
    private static final List<String> CHECK_KEYS = List.of("question", "asked-of", "applies", "ways", "severity",
            "likelihood", "shifts", "chain", "do", "also-check", "settle-with", "person", "caution", "teaches", "basis",
            "also-covers", "last-chance", "cases");
    private static final List<String> CHECK_WANTS = List.of("question", "asked-of", "ways", "severity", "likelihood",
            "chain", "do", "person", "basis");
    private static final List<String> WAY_KEYS = List.of("needs", "heeds", "found", "applies", "severity", "likelihood");
    private static final List<String> CONDITION_KEYS = List.of("reads", "settled by", "why", "cases");
    private static final List<String> CASE_KEYS = List.of("name", "build", "change", "sheet", "erase", "expect", "also");

    private final String file;
    private final String topic;
    private final String id;
    private final Path rule;
    private final Vocabulary words;
    private final CheckPages.Patterns patternsOf;
    private final Yaml.File yaml;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Case> cases = new ArrayList<>();

    PageReader(Path page, String file, String topic, Vocabulary words, CheckPages.Patterns patternsOf) {
        this.file = file;
        this.topic = topic;
        String name = page.getFileName().toString();
        this.id = name.substring(0, name.length() - ".yaml".length());
        this.rule = page.resolveSibling(id + ".drl");
        this.words = words;
        this.patternsOf = patternsOf;
        this.yaml = Yaml.read(page, file);
        problems.addAll(yaml.problems());
    }

    String id() {
        return id;
    }

    List<Case> cases() {
        return cases;
    }

    List<Problem> problems() {
        return problems;
    }

    /** Something that concerns the page as a whole. */
    void refuse(String what, String expected) {
        problems.add(new Problem(new Where(file, 0, 0), 0, "", what, expected, Optional.empty(), ""));
    }

    /** The page of a check; empty where something of it is missing or wrong. */
    Optional<Check> check() {
        if (yaml.tree().isEmpty()) {
            return Optional.empty();
        }
        Node.Fields page = yaml.tree().get();
        keys(page, CHECK_KEYS, "A page of a check");
        for (String wanted : CHECK_WANTS) {
            if (page.get(wanted).isEmpty()) {
                problem(page.where(), 0, "The page has no `" + wanted + "`.", "", Optional.empty());
            }
        }
        last(page, "cases");
        String askedOf = text(page, "asked-of");
        if (!askedOf.isEmpty() && !words.groups().containsKey(askedOf)) {
            unknown(page.get("asked-of").orElseThrow().where(), askedOf, "is no group of places", words.groups().keySet());
        }
        boolean person = text(page, "person").equals("true");
        if (page.get("person").isPresent() && !person && !text(page, "person").equals("false")) {
            problem(page.get("person").get().where(), 0, "`person` is true or false.", "", Optional.empty());
        }
        if (person && text(page, "caution").isEmpty()) {
            problem(page.where(), 0, "It can hurt somebody, and there is no `caution`.",
                    "One sentence that says what hurts and defers to the manual.", Optional.empty());
        }
        if (page.get("basis").isPresent() && text(page, "basis").isEmpty()) {
            problem(page.get("basis").get().where(), 0, "The basis is empty.",
                    "A source, `from memory: ...`, or `common practice, no source`.", Optional.empty());
        }
        if (page.get("chain").isPresent() && list(page, "chain").isEmpty()) {
            problem(page.get("chain").get().where(), 0, "The chain says nothing.", "How it ends, link by link.",
                    Optional.empty());
        }
        Optional<String> last = Optional.of(text(page, "last-chance")).filter(s -> !s.isEmpty());
        if (last.isPresent() && words.step(last.get()).filter(s -> s.name().equals(last.get())).isEmpty()) {
            List<String> steps = new ArrayList<>();
            words.steps().forEach(s -> steps.add(s.name()));
            unknown(page.get("last-chance").orElseThrow().where(), last.get(), "is no step", steps);
        }
        Map<String, List<String>> applies = applies(page.get("applies"));
        Map<String, Integer> shifts = shifts(page.get("shifts"));
        List<Way> ways = ways(page.get("ways"));
        Optional<Severity> severity = severity(page);
        Optional<Likelihood> likelihood = likelihood(page);
        cases(page.get("cases"), false, names(ways));
        if (!problems.isEmpty() || severity.isEmpty() || likelihood.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Check(id, topic, text(page, "question"), askedOf, applies, ways, severity.get(),
                likelihood.get(), shifts, list(page, "chain"), text(page, "do"), list(page, "also-check"),
                text(page, "settle-with"), person, text(page, "caution"), text(page, "teaches"), text(page, "basis"),
                list(page, "also-covers"), last));
    }

    /** The page of a condition; empty where something of it is missing or wrong. */
    Optional<ConditionPage> condition() {
        if (yaml.tree().isEmpty()) {
            return Optional.empty();
        }
        Node.Fields page = yaml.tree().get();
        keys(page, CONDITION_KEYS, "A page of a condition");
        last(page, "cases");
        String name = conditionName();
        if (!words.conditions().containsKey(name)) {
            refuse("\"" + name + "\" is no condition of the vocabulary.",
                    Vocabulary.nearest(name, words.conditions().keySet()).map(n -> "Nearest: " + n + ".").orElse(""));
        }
        for (String wanted : List.of("reads", "why")) {
            if (page.get(wanted).isEmpty()) {
                problem(page.where(), 0, "The page has no `" + wanted + "`.", "", Optional.empty());
            }
        }
        List<String> reads = needWords(page, "reads");
        List<String> settled = needWords(page, "settled by");
        cases(page.get("cases"), true, List.of());
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        Map<String, List<Way.Pattern>> patterns = Files.exists(rule) ? patternsOf.of(rule) : Map.of();
        return Optional.of(new ConditionPage(name, reads, settled.isEmpty() ? reads : settled, text(page, "why"),
                patterns.getOrDefault(name, List.of())));
    }

    /** The condition that the file is named after; its own hyphens stand in the file's name like its blanks. */
    private String conditionName() {
        return words.conditions().keySet().stream().filter(c -> c.replace(' ', '-').equals(id)).findFirst()
                .orElse(id.replace('-', ' '));
    }

    private List<Way> ways(Optional<Node> node) {
        List<Way> ways = new ArrayList<>();
        if (node.isEmpty()) {
            return ways;
        }
        if (!(node.get() instanceof Node.Fields fields) || fields.fields().isEmpty()) {
            problem(node.get().where(), 0, "`ways` wants a name for each way, and its lines below.", "", Optional.empty());
            return ways;
        }
        Map<String, List<Way.Pattern>> patterns = Files.exists(rule) ? patternsOf.of(rule) : Map.of();
        for (Node.Field field : fields.fields()) {
            if (!(field.value() instanceof Node.Fields way)) {
                problem(field.where(), field.key().length(), "The way \"" + field.key() + "\" has no lines.",
                        "needs, heeds, found.", Optional.empty());
                continue;
            }
            keys(way, WAY_KEYS, "A way");
            if (text(way, "found").isEmpty()) {
                problem(field.where(), field.key().length(), "The way \"" + field.key() + "\" has no sentence.",
                        "`found:` and what the reader is told.", Optional.empty());
            }
            ways.add(new Way(field.key(), needWords(way, "needs"), needWords(way, "heeds"), text(way, "found"),
                    applies(way.get("applies")), way.get("severity").isPresent() ? severity(way) : Optional.empty(),
                    way.get("likelihood").isPresent() ? likelihood(way) : Optional.empty(),
                    patterns.getOrDefault(field.key(), List.of())));
        }
        return ways;
    }

    private static List<String> names(List<Way> ways) {
        List<String> names = new ArrayList<>();
        ways.forEach(w -> names.add(w.name()));
        return names;
    }

    private List<String> needWords(Node.Fields fields, String key) {
        List<String> read = new ArrayList<>();
        for (Node.Scalar scalar : scalars(fields, key)) {
            if (known(scalar)) {
                read.add(scalar.text());
            }
        }
        return read;
    }

    /** Whether the vocabulary has the word; what is wrong is said. */
    private boolean known(Node.Scalar scalar) {
        if (Need.of(scalar.text(), words).isPresent()) {
            return true;
        }
        problem(scalar.where(), scalar.text().length(), "\"" + scalar.text() + "\" is the name of no fact.", "",
                Names.nearest(scalar.text(), words));
        return false;
    }

    private Map<String, List<String>> applies(Optional<Node> node) {
        Map<String, List<String>> applies = new LinkedHashMap<>();
        if (node.isEmpty()) {
            return applies;
        }
        if (!(node.get() instanceof Node.Fields fields)) {
            problem(node.get().where(), 0, "`applies` wants words and what they must say.",
                    "As { camshaft state: [new] }.", Optional.empty());
            return applies;
        }
        for (Node.Field field : fields.fields()) {
            if (!known(new Node.Scalar(field.key(), field.where()))) {
                continue;
            }
            List<String> says = new ArrayList<>();
            for (Node.Scalar scalar : scalars(fields, field.key())) {
                says.add(scalar.text());
            }
            if (says.isEmpty()) {
                problem(field.where(), field.key().length(), "Nothing says what \"" + field.key() + "\" must be.",
                        "A list of its words, or [recorded].", Optional.empty());
            }
            if (field.key().startsWith("condition ") && !says.equals(List.of("holds"))) {
                problem(field.where(), field.key().length(), "A condition can only hold.", "Write [holds].", Optional.empty());
            }
            applies.put(field.key(), List.copyOf(says));
        }
        return applies;
    }

    private Map<String, Integer> shifts(Optional<Node> node) {
        Map<String, Integer> shifts = new TreeMap<>();
        if (node.isPresent() && node.get() instanceof Node.Fields fields) {
            for (Node.Field field : fields.fields()) {
                if (!words.conditions().containsKey(field.key())) {
                    unknown(field.where(), field.key(), "is no condition", words.conditions().keySet());
                }
                String by = field.value() instanceof Node.Scalar scalar ? scalar.text() : "";
                if (by.equals("+1") || by.equals("1")) {
                    shifts.put(field.key(), 1);
                } else if (by.equals("-1")) {
                    shifts.put(field.key(), -1);
                } else {
                    problem(field.value().where(), by.length(), "A condition moves a likelihood one step.", "+1 or -1.",
                            Optional.empty());
                }
            }
        }
        return shifts;
    }

    private Optional<Severity> severity(Node.Fields fields) {
        String word = text(fields, "severity");
        List<String> known = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            if (severity.word().equals(word)) {
                return Optional.of(severity);
            }
            known.add(severity.word());
        }
        if (!word.isEmpty()) {
            unknown(fields.get("severity").orElseThrow().where(), word, "is no severity", known);
        }
        return Optional.empty();
    }

    private Optional<Likelihood> likelihood(Node.Fields fields) {
        String word = text(fields, "likelihood");
        List<String> known = new ArrayList<>();
        for (Likelihood likelihood : Likelihood.values()) {
            if (likelihood.word().equals(word)) {
                return Optional.of(likelihood);
            }
            known.add(likelihood.word());
        }
        if (!word.isEmpty()) {
            unknown(fields.get("likelihood").orElseThrow().where(), word, "is no likelihood", known);
        }
        return Optional.empty();
    }

    private void cases(Optional<Node> node, boolean condition, List<String> ways) {
        if (node.isEmpty()) {
            return;
        }
        if (!(node.get() instanceof Node.Items items)) {
            problem(node.get().where(), 0, "`cases` is a list.", "Each begins `- name:`.", Optional.empty());
            return;
        }
        Set<String> seen = new HashSet<>();
        for (Node item : items.items()) {
            if (!(item instanceof Node.Fields fields)) {
                problem(item.where(), 0, "This is no case.", "It begins `- name:`.", Optional.empty());
                continue;
            }
            keys(fields, CASE_KEYS, "A case");
            String name = text(fields, "name");
            if (name.isEmpty() || !fields.fields().get(0).key().equals("name")) {
                problem(fields.where(), 0, "A case begins with its `name`.", "", Optional.empty());
            }
            if (!seen.add(name)) {
                problem(fields.where(), 0, "Two cases of this page have the name \"" + name + "\".", "", Optional.empty());
            }
            Map<String, Expected> expect = new LinkedHashMap<>();
            fields.get("expect").ifPresentOrElse(e -> expect.putAll(expected(e, condition, ways)),
                    () -> problem(fields.where(), 0, "The case expects nothing.", "`expect: { place: ... }`.",
                            Optional.empty()));
            Map<String, Map<String, Expected>> also = new LinkedHashMap<>();
            if (fields.get("also").isPresent() && fields.get("also").get() instanceof Node.Fields others) {
                for (Node.Field other : others.fields()) {
                    also.put(other.key(), expected(other.value(), false, List.of()));
                }
            }
            List<String> erase = new ArrayList<>();
            scalars(fields, "erase").forEach(s -> erase.add(s.text()));
            String build = text(fields, "build");
            cases.add(new Case(condition ? conditionName() : id, name,
                    build.isEmpty() ? CheckPages.USUAL_BUILD : build.endsWith(".yaml") ? build : build + ".yaml",
                    map(fields, "change"), map(fields, "sheet"), List.copyOf(erase), expect, also, file, fields.where()));
        }
    }

    private Map<String, Expected> expected(Node node, boolean condition, List<String> ways) {
        Map<String, Expected> expected = new LinkedHashMap<>();
        if (condition && node instanceof Node.Scalar scalar) {
            Expected.read(scalar.text()).filter(Expected.Holds.class::isInstance).ifPresentOrElse(
                    e -> expected.put(leadlamp.record.Place.ENGINE, e),
                    () -> problem(scalar.where(), scalar.text().length(), "\"" + scalar.text() + "\" is nothing that a condition does.",
                            "holds, or does not hold.", Optional.empty()));
            return expected;
        }
        if (!(node instanceof Node.Fields fields)) {
            problem(node.where(), 0, "Each place wants its answer.", "{ intake: clear }.", Optional.empty());
            return expected;
        }
        for (Node.Field field : fields.fields()) {
            String text = field.value() instanceof Node.Scalar scalar ? scalar.text() : "";
            Optional<Expected> read = Expected.read(text);
            if (read.isEmpty() || read.get() instanceof Expected.Holds != condition) {
                problem(field.value().where(), text.length(), "\"" + text + "\" is no answer.", condition
                        ? "holds, or does not hold."
                        : "`found by WAY`, `clear`, `cannot tell (GAP)` with a gap of record-forms, or `not asked`.",
                        Optional.empty());
                continue;
            }
            if (read.get() instanceof Expected.FoundBy found && !ways.isEmpty()) {
                for (String way : found.ways()) {
                    if (!ways.contains(way)) {
                        unknown(field.value().where(), way, "is no way of this check", ways);
                    }
                }
            }
            expected.put(field.key(), read.get());
        }
        return expected;
    }

    private Node.Fields map(Node.Fields fields, String key) {
        Optional<Node> node = fields.get(key);
        if (node.isEmpty()) {
            return new Node.Fields(List.of(), fields.where());
        }
        if (node.get() instanceof Node.Fields map) {
            return map;
        }
        problem(node.get().where(), 0, "`" + key + "` has sections, as a record has.", "", Optional.empty());
        return new Node.Fields(List.of(), fields.where());
    }

    private void keys(Node.Fields fields, List<String> known, String what) {
        for (Node.Field field : fields.fields()) {
            if (!known.contains(field.key())) {
                problem(field.where(), field.key().length(), "\"" + field.key() + "\" is no key of a page.",
                        what + " may have: " + String.join(", ", known) + ".", Vocabulary.nearest(field.key(), known));
            }
        }
    }

    private void last(Node.Fields page, String key) {
        int size = page.fields().size();
        for (int i = 0; i < size - 1; i++) {
            if (page.fields().get(i).key().equals(key)) {
                problem(page.fields().get(i + 1).where(), 0, "`" + key + "` comes last on a page.", "", Optional.empty());
            }
        }
    }

    private static String text(Node.Fields fields, String key) {
        return fields.get(key).filter(Node.Scalar.class::isInstance).map(n -> ((Node.Scalar) n).text()).orElse("");
    }

    private static List<String> list(Node.Fields fields, String key) {
        List<String> texts = new ArrayList<>();
        scalars(fields, key).forEach(s -> texts.add(s.text()));
        return texts;
    }

    private static List<Node.Scalar> scalars(Node.Fields fields, String key) {
        List<Node.Scalar> scalars = new ArrayList<>();
        Optional<Node> node = fields.get(key);
        if (node.isPresent() && node.get() instanceof Node.Scalar scalar && !scalar.text().isEmpty()) {
            scalars.add(scalar);
        } else if (node.isPresent() && node.get() instanceof Node.Items items) {
            for (Node item : items.items()) {
                if (item instanceof Node.Scalar scalar) {
                    scalars.add(scalar);
                }
            }
        }
        return scalars;
    }

    private void unknown(Where where, String word, String what, Collection<String> known) {
        problem(where, word.length(), "\"" + word + "\" " + what + ".", "", Vocabulary.nearest(word, known));
    }

    private void problem(Where where, int length, String what, String expected, Optional<String> nearest) {
        problems.add(new Problem(where, length, yaml.line(where.line()), what, expected, nearest, ""));
    }
}
