package leadlamp.audit;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import leadlamp.record.Node;
import leadlamp.record.Problem;
import leadlamp.record.Where;
import leadlamp.record.Yaml;
import leadlamp.words.Name;
import leadlamp.words.Names;
import leadlamp.words.Part;
import leadlamp.words.Property;
import leadlamp.words.Sign;
import leadlamp.words.Vocabulary;

/**
 * The pages of the past, `rules/past/signs.yaml` and `rules/past/events.yaml`, read when the project is built and in tests.
 * From them come the rules: for each thing that shows a sign one that finds it where nothing makes it innocent, and one for
 * each thing that does; for each event that a sign speaks of, one that says so.
 */
public final class PastPages {
    private static final List<String> SIGN_KEYS = List.of("sign", "looks like", "shown by", "family", "set aside", "supports",
            "against", "basis");
    private static final List<String> EVENT_KEYS = List.of("word", "event", "claim", "when", "by hand", "after this", "severity",
            "contradicted by", "hidden", "also check", "renew", "else", "basis");
    private static final List<String> HIDDEN_KEYS = List.of("damage", "look", "looked", "unless");
    private static final List<String> ELSE_KEYS = List.of("event", "tell apart");
    private static final List<String> ASIDE_KEYS = List.of("when", "because");
    private static final List<String> WEIGHTS = List.of("strong", "weak");
    private static final List<String> FLAGS = List.of("above", "below", "outside", "within");
    private static final String ANYTHING = "anything ";
    private static final String SAME = "same";
    private static final String RECORDED = "recorded";

    private final Vocabulary words;
    private final Set<String> kinds = new HashSet<>();
    private final List<PastSign> signs = new ArrayList<>();
    private final List<PastEvent> events = new ArrayList<>();
    private final List<RulebaseRule> rules = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private Yaml.File yaml;

    private PastPages(Vocabulary words) {
        this.words = words;
        for (Part part : words.parts()) {
            kinds.addAll(part.kinds());
        }
    }

    /** No signs and no events. */
    static PastPages none(Vocabulary words) {
        return new PastPages(words);
    }

    /** Reads both pages. A folder without them has no past. */
    public static PastPages ofFolder(Path rules, Vocabulary words) {
        PastPages pages = new PastPages(words);
        Path folder = rules.resolve("past");
        if (Files.isDirectory(folder)) {
            String name = rules.getFileName() + "/past/";
            Yaml.File events = Yaml.read(folder.resolve("events.yaml"), name + "events.yaml");
            Yaml.File signs = Yaml.read(folder.resolve("signs.yaml"), name + "signs.yaml");
            pages.read(signs, events);
        }
        return pages;
    }

    public List<PastSign> signs() {
        return signs;
    }

    public List<PastEvent> events() {
        return events;
    }

    public List<RulebaseRule> rules() {
        return rules;
    }

    /** All that is wrong, in the order of the files. */
    public List<Problem> problems() {
        return problems;
    }

    /** Writes the compiled form of signs and events. */
    public void compile(OutputStream pages, OutputStream rulebase) throws IOException {
        PastFile.write(signs, events, pages);
        RulebaseFile.write(rules, rulebase);
    }

    private void read(Yaml.File signFile, Yaml.File eventFile) {
        Set<String> eventIds = keys(eventFile);
        yaml = signFile;
        problems.addAll(yaml.problems());
        for (Node.Field field : fields(yaml)) {
            sign(field, eventIds);
        }
        yaml = eventFile;
        problems.addAll(yaml.problems());
        for (Node.Field field : fields(yaml)) {
            event(field, eventIds);
        }
        for (String id : eventIds) {
            ring(id);
        }
        problems.sort((a, b) -> a.where().compareTo(b.where()));
    }

    private static List<Node.Field> fields(Yaml.File file) {
        return file.tree().isPresent() ? file.tree().get().fields() : List.of();
    }

    private static Set<String> keys(Yaml.File file) {
        Set<String> keys = new LinkedHashSet<>();
        fields(file).forEach(f -> keys.add(f.key()));
        return keys;
    }

    // --- signs

    private void sign(Node.Field field, Set<String> eventIds) {
        Optional<Node.Fields> page = page(field, SIGN_KEYS, "A sign of the past", List.of("sign", "looks like", "shown by", "basis"));
        if (page.isEmpty()) {
            return;
        }
        Node.Fields lines = page.get();
        String id = field.key();
        List<String> because = new ArrayList<>();
        List<Node.Fields> innocent = new ArrayList<>();
        for (Node item : items(lines, "set aside")) {
            if (item instanceof Node.Fields aside) {
                keys(aside, ASIDE_KEYS, "What sets a sign aside");
                because.add(text(aside, "because"));
                aside.get("when").filter(Node.Fields.class::isInstance).ifPresent(w -> innocent.add((Node.Fields) w));
            }
        }
        List<String> shown = new ArrayList<>();
        int number = 0;
        for (Node item : items(lines, "shown by")) {
            shown.add(said(item));
            rulesOf(id, ++number, item, innocent);
        }
        String family = text(lines, "family");
        signs.add(new PastSign(id, text(lines, "sign"), text(lines, "looks like"), List.copyOf(shown), family.isEmpty() ? id : family,
                List.copyOf(because), text(lines, "basis")));
        weights(id, lines, "supports", Past.STRONGLY_FOR, Past.WEAKLY_FOR, eventIds);
        weights(id, lines, "against", Past.STRONGLY_AGAINST, Past.WEAKLY_AGAINST, eventIds);
        if (lines.get("supports").isEmpty() && lines.get("against").isEmpty()) {
            problem(field.where(), id.length(), "The sign speaks of no event.", "`supports` or `against`.", Optional.empty());
        }
    }

    private void weights(String sign, Node.Fields lines, String key, String strongly, String weakly, Set<String> eventIds) {
        if (lines.get(key).isEmpty() || !(lines.get(key).get() instanceof Node.Fields weights)) {
            return;
        }
        keys(weights, WEIGHTS, "What a sign speaks of");
        for (String weight : WEIGHTS) {
            for (Node item : items(weights, weight)) {
                if (item instanceof Node.Scalar event && known(event, eventIds, "is no event of events.yaml")) {
                    rules.add(new RulebaseRule(event.text(), (weight.equals("strong") ? strongly : weakly) + sign,
                            RulebaseRule.Stage.EVENT, List.of(there(new RulebaseRule.Match("Shown", "", List.of(
                                    new RulebaseRule.Test.Says("sign", List.of(sign)), new RulebaseRule.Test.Name("$at", "at")))))));
                }
            }
        }
    }

    /** A word with what it says, or a reading with how it stands. */
    private record Clause(Node.Scalar word, List<String> says) {
    }

    private static List<Clause> clauses(Node item) {
        List<Clause> clauses = new ArrayList<>();
        if (item instanceof Node.Scalar scalar) {
            clauses.add(new Clause(scalar, List.of()));
        } else if (item instanceof Node.Fields fields) {
            for (Node.Field field : fields.fields()) {
                List<String> says = new ArrayList<>();
                if (field.value() instanceof Node.Scalar scalar) {
                    says.add(scalar.text());
                } else if (field.value() instanceof Node.Items list) {
                    list.items().forEach(i -> says.add(i instanceof Node.Scalar s ? s.text() : ""));
                }
                clauses.add(new Clause(new Node.Scalar(field.key(), field.where()), says));
            }
        }
        return clauses;
    }

    private static String said(Node item) {
        List<String> said = new ArrayList<>();
        for (Clause clause : clauses(item)) {
            said.add(clause.word.text() + (clause.says.isEmpty() ? "" : ": " + String.join(" or ", clause.says)));
        }
        return String.join(" and ", said);
    }

    private void rulesOf(String sign, int number, Node item, List<Node.Fields> innocent) {
        List<RulebaseRule.Clause> shown = new ArrayList<>();
        String first = "";
        for (Clause clause : clauses(item)) {
            Optional<RulebaseRule.Match> match = match(clause, shown.isEmpty(), false);
            if (match.isEmpty()) {
                return;
            }
            shown.add(there(match.get()));
            first = first.isEmpty() ? clause.word.text() : first;
        }
        if (shown.isEmpty()) {
            problem(item.where(), 0, "This shows no sign.", "A word of the record.", Optional.empty());
            return;
        }
        List<RulebaseRule.Clause> standing = new ArrayList<>(shown);
        int reason = 0;
        for (Node.Fields when : innocent) {
            reason++;
            List<RulebaseRule.Match> all = new ArrayList<>();
            boolean meant = true;
            for (Clause clause : clauses(when)) {
                meant &= !clause.says.equals(List.of(SAME)) || clause.word.text().equals("sheet " + first);
                match(clause, false, true).ifPresent(all::add);
            }
            if (meant && !all.isEmpty()) {
                standing.add(new RulebaseRule.Clause(RulebaseRule.Sort.NOT, List.copyOf(all)));
                List<RulebaseRule.Clause> aside = new ArrayList<>(shown);
                all.forEach(m -> aside.add(there(m)));
                rules.add(new RulebaseRule(sign, Past.SET_ASIDE + " " + number + " by " + reason, RulebaseRule.Stage.SIGN,
                        List.copyOf(aside)));
            }
        }
        rules.add(new RulebaseRule(sign, Past.SHOWN + " " + number, RulebaseRule.Stage.SIGN, List.copyOf(standing)));
    }

    private static RulebaseRule.Clause there(RulebaseRule.Match match) {
        return new RulebaseRule.Clause(RulebaseRule.Sort.THERE, List.of(match));
    }

    /** The pattern of one clause. The first names the place and the word; the others stand near it. */
    private Optional<RulebaseRule.Match> match(Clause clause, boolean first, boolean excuse) {
        List<RulebaseRule.Test> tests = new ArrayList<>();
        String fact;
        String word = clause.word.text();
        boolean asked = !clause.says.isEmpty() && !clause.says.equals(List.of(RECORDED));
        if (word.startsWith(ANYTHING)) {
            Optional<Sign> sign = words.sign(word.substring(ANYTHING.length()));
            if (sign.isEmpty() || !sign.get().name().equals(word.substring(ANYTHING.length()))) {
                List<String> names = new ArrayList<>();
                words.signs().forEach(s -> names.add(ANYTHING + s.name()));
                problem(clause.word.where(), word.length(), "\"" + word + "\" names no sign.", "", Vocabulary.nearest(word, names));
                return Optional.empty();
            }
            fact = "Seen";
            tests.add(says("sign", sign.get().name()));
            sound(sign.get(), tests);
        } else {
            Optional<Name> name = Names.resolve(word, words);
            if (name.isEmpty()) {
                problem(clause.word.where(), word.length(), "\"" + word + "\" is the name of no fact.", "", Names.nearest(word, words));
                return Optional.empty();
            }
            if (name.get() instanceof Name.SignOf sign) {
                fact = "Seen";
                tests.add(says(field(sign.of()), sign.of()));
                tests.add(says("sign", sign.what()));
                words.sign(sign.what()).ifPresent(s -> sound(s, tests));
            } else if (name.get() instanceof Name.QuantityName reading) {
                fact = "Verdict";
                if (clause.says.size() != 1 || !FLAGS.contains(clause.says.get(0))) {
                    problem(clause.word.where(), word.length(), "Nothing says how \"" + word + "\" stands to its limit.",
                            String.join(", ", FLAGS) + ".", clause.says.isEmpty() ? Optional.empty()
                                    : Vocabulary.nearest(clause.says.get(0), FLAGS));
                    return Optional.empty();
                }
                tests.add(says("of", reading.quantity()));
                tests.add(new RulebaseRule.Test.Flag(clause.says.get(0)));
            } else {
                boolean sheet = name.get() instanceof Name.SheetWord;
                fact = sheet ? "OnSheet" : "Stated";
                Said said = said(name.get());
                tests.add(says(said.field, said.of));
                tests.add(says("what", said.what));
                if (asked && clause.says.equals(List.of(SAME))) {
                    tests.add(new RulebaseRule.Test.Same("says", "$says"));
                } else if (asked) {
                    allowed(clause, said);
                    tests.add(new RulebaseRule.Test.Says("says", clause.says));
                } else if (clause.says.isEmpty()) {
                    problem(clause.word.where(), word.length(), "Nothing says what \"" + word + "\" must be.", "A list of its words.",
                            Optional.empty());
                    return Optional.empty();
                }
                if (first) {
                    tests.add(new RulebaseRule.Test.Name("$says", "says"));
                }
            }
        }
        tests.add(first ? new RulebaseRule.Test.Name("$at", "at") : new RulebaseRule.Test.Tie("near", "$at"));
        return Optional.of(new RulebaseRule.Match(fact, "", List.copyOf(tests)));
    }

    /** What speaks for the engine counts only where the builder has seen it. */
    private static void sound(Sign sign, List<RulebaseRule.Test> tests) {
        if (sign.sound()) {
            tests.add(says("told", ""));
        }
    }

    private static RulebaseRule.Test says(String field, String word) {
        return new RulebaseRule.Test.Says(field, List.of(word));
    }

    private String field(String of) {
        return kinds.contains(of) ? "kind" : "of";
    }

    /** What a word is said of. */
    private record Said(String field, String of, String what, List<String> sections) {
    }

    private Said said(Name name) {
        if (name instanceof Name.SheetWord line) {
            return new Said(field(line.of()), line.of(), line.what(), List.of());
        }
        if (name instanceof Name.JointWord joint) {
            return new Said("of", "joint", joint.what(), List.of("worked out of joint", "threads", "fasteners"));
        }
        if (name instanceof Name.SectionWord section) {
            return new Said("of", section.of(), section.what(), section.of().equals("machining") ? List.of("machining by")
                    : List.of(section.of()));
        }
        if (name instanceof Name.SignAside aside) {
            return new Said(field(aside.of()), aside.of(), aside.sign() + " " + aside.aside(), List.of("observations " + aside.aside()));
        }
        if (name instanceof Name.PartWord part) {
            return new Said(field(part.of()), part.of(), part.what(), List.of("parts", "worked out"));
        }
        return new Said("of", name.of(), name.what(), List.of());
    }

    /** Whether a word may say what it is asked to say. */
    private void allowed(Clause clause, Said said) {
        Optional<Property> property = Optional.empty();
        for (String section : said.sections) {
            if (property.isEmpty() && section.equals("machining by")) {
                property = words.property("machining", "by");
            } else if (property.isEmpty() && section.startsWith("observations ")) {
                property = words.property("observations", section.substring("observations ".length()));
            } else if (property.isEmpty()) {
                property = words.property(section, said.what);
            }
        }
        Set<String> known = new TreeSet<>();
        if (said.of.equals("steps")) {
            known.addAll(List.of("done", "passed", "failed", "not proved", "left out"));
        } else if (property.isPresent()) {
            known.addAll(property.get().values().keySet());
            Map<String, String> ofPart = property.get().perPart().get(said.of);
            if (ofPart != null) {
                known.addAll(ofPart.keySet());
            }
        }
        for (String says : clause.says) {
            if (!known.isEmpty() && !known.contains(says)) {
                problem(clause.word.where(), clause.word.text().length(), "\"" + clause.word.text() + "\" never says \"" + says + "\".",
                        "It says " + String.join(", ", known) + ".", Vocabulary.nearest(says, known));
            }
        }
    }

    // --- events

    private void event(Node.Field field, Set<String> eventIds) {
        Optional<Node.Fields> page = page(field, EVENT_KEYS, "An event of the past", List.of("word", "event", "when", "severity",
                "contradicted by", "hidden", "else", "basis"));
        if (page.isEmpty()) {
            return;
        }
        Node.Fields lines = page.get();
        String id = field.key();
        String word = text(lines, "word");
        if (!word.isEmpty() && !words.events().containsKey(word)) {
            problem(lines.get("word").orElseThrow().where(), word.length(), "\"" + word + "\" is no event of the vocabulary.", "",
                    Vocabulary.nearest(word, words.events().keySet()));
        } else {
            rules.add(new RulebaseRule(id, Voice.TOLD, RulebaseRule.Stage.EVENT, List.of(there(new RulebaseRule.Match("Stated", "",
                    List.of(says("of", "build"), says("what", "past"), says("says", word)))))));
        }
        List<String> leads = new ArrayList<>();
        for (Node item : items(lines, "after this")) {
            if (item instanceof Node.Scalar next && known(next, eventIds, "is no event")) {
                leads.add(next.text());
            }
        }
        Optional<PastEvent.When> when = one(lines, "when", "is no part of an engine's life", PastEvent.When.values(), PastEvent.When::word);
        Optional<Severity> severity = one(lines, "severity", "is no severity", Severity.values(), Severity::word);
        List<PastEvent.Hidden> hidden = new ArrayList<>();
        for (Node item : items(lines, "hidden")) {
            if (item instanceof Node.Fields damage) {
                keys(damage, HIDDEN_KEYS, "Hidden damage");
                hidden.add(new PastEvent.Hidden(text(damage, "damage"), text(damage, "look"), looked(items(damage, "looked")),
                        looked(damage.get("unless").map(List::of).orElse(List.of()))));
            }
        }
        List<PastEvent.Else> elses = new ArrayList<>();
        for (Node item : items(lines, "else")) {
            if (item instanceof Node.Fields other) {
                keys(other, ELSE_KEYS, "Another explanation");
                if (other.get("event").isPresent() && other.get("event").get() instanceof Node.Scalar event
                        && known(event, eventIds, "is no event")) {
                    elses.add(new PastEvent.Else(event.text(), text(other, "tell apart")));
                }
            }
        }
        if (when.isPresent() && severity.isPresent()) {
            events.add(new PastEvent(id, word, text(lines, "event"), text(lines, "claim").equals("true"), when.get(),
                    text(lines, "by hand").equals("true"), List.copyOf(leads), severity.get(), list(lines, "contradicted by"),
                    List.copyOf(hidden), list(lines, "also check"), list(lines, "renew"), List.copyOf(elses), text(lines, "basis")));
        }
    }

    private List<PastEvent.Looked> looked(List<Node> items) {
        List<PastEvent.Looked> all = new ArrayList<>();
        for (Node item : items) {
            for (Clause clause : clauses(item)) {
                String word = clause.word.text();
                Optional<Name> name = Names.resolve(word, words);
                if (name.isEmpty()) {
                    problem(clause.word.where(), word.length(), "\"" + word + "\" is the name of no fact.", "", Names.nearest(word, words));
                } else if (name.get() instanceof Name.SignOf sign) {
                    all.add(new PastEvent.Looked(word, "Seen", sign.of(), sign.what(), List.of(),
                            !words.sign(sign.what()).orElseThrow().sound()));
                } else if (name.get() instanceof Name.QuantityName reading) {
                    all.add(new PastEvent.Looked(word, "Value", reading.quantity(), "", List.of(), false));
                } else {
                    Said said = said(name.get());
                    List<String> says = clause.says.isEmpty() && said.of.equals("steps") ? List.of("done", "passed", "failed") : clause.says;
                    all.add(new PastEvent.Looked(word, name.get() instanceof Name.SheetWord ? "OnSheet" : "Stated", said.of, said.what, says,
                            false));
                }
            }
        }
        return List.copyOf(all);
    }

    /** An event that, by a chain of others, leads to itself would have no place in time. */
    private void ring(String id) {
        Set<String> reached = new TreeSet<>();
        List<String> ahead = new ArrayList<>(leads(id));
        while (!ahead.isEmpty()) {
            String next = ahead.remove(0);
            if (next.equals(id)) {
                problems.add(new Problem(new Where("rules/past/events.yaml", 0, 0), 0, "", "\"" + id + "\" leads round to itself.",
                        "What leads to what has no ring.", Optional.empty(), ""));
                return;
            }
            if (reached.add(next)) {
                ahead.addAll(leads(next));
            }
        }
    }

    private List<String> leads(String id) {
        for (PastEvent event : events) {
            if (event.id().equals(id)) {
                return event.leadsTo();
            }
        }
        return List.of();
    }

    // --- the form of a page

    private Optional<Node.Fields> page(Node.Field field, List<String> keys, String what, List<String> wanted) {
        if (!(field.value() instanceof Node.Fields lines)) {
            problem(field.where(), field.key().length(), "\"" + field.key() + "\" has no lines.", what + " may have: "
                    + String.join(", ", keys) + ".", Optional.empty());
            return Optional.empty();
        }
        keys(lines, keys, what);
        for (String key : wanted) {
            if (lines.get(key).isEmpty() || lines.get(key).get() instanceof Node.Scalar scalar && scalar.text().isEmpty()) {
                problem(field.where(), field.key().length(), "\"" + field.key() + "\" has no `" + key + "`.", "", Optional.empty());
            }
        }
        return Optional.of(lines);
    }

    private <T> Optional<T> one(Node.Fields lines, String key, String what, T[] all, Function<T, String> word) {
        Map<String, T> known = new LinkedHashMap<>();
        for (T one : all) {
            known.put(word.apply(one), one);
        }
        String text = text(lines, key);
        if (!text.isEmpty() && !known.containsKey(text)) {
            problem(lines.get(key).orElseThrow().where(), text.length(), "\"" + text + "\" " + what + ".", "It is one of "
                    + String.join(", ", known.keySet()) + ".", Vocabulary.nearest(text, known.keySet()));
        }
        return Optional.ofNullable(known.get(text));
    }

    private boolean known(Node.Scalar word, Collection<String> all, String what) {
        if (all.contains(word.text())) {
            return true;
        }
        problem(word.where(), word.text().length(), "\"" + word.text() + "\" " + what + ".", "", Vocabulary.nearest(word.text(), all));
        return false;
    }

    private void keys(Node.Fields fields, List<String> known, String what) {
        for (Node.Field field : fields.fields()) {
            if (!known.contains(field.key())) {
                problem(field.where(), field.key().length(), "\"" + field.key() + "\" is no key of a page.", what + " may have: "
                        + String.join(", ", known) + ".", Vocabulary.nearest(field.key(), known));
            }
        }
    }

    private static String text(Node.Fields fields, String key) {
        return fields.get(key).filter(Node.Scalar.class::isInstance).map(n -> ((Node.Scalar) n).text()).orElse("");
    }

    private static List<String> list(Node.Fields fields, String key) {
        List<String> texts = new ArrayList<>();
        items(fields, key).forEach(i -> texts.add(i instanceof Node.Scalar s ? s.text() : ""));
        return List.copyOf(texts);
    }

    private static List<Node> items(Node.Fields fields, String key) {
        Optional<Node> node = fields.get(key);
        return node.isPresent() && node.get() instanceof Node.Items list ? list.items() : List.of();
    }

    private void problem(Where where, int length, String what, String expected, Optional<String> nearest) {
        problems.add(new Problem(where, length, yaml.line(where.line()), what, expected, nearest, ""));
    }
}
