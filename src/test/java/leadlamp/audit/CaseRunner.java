package leadlamp.audit;

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
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import leadlamp.facts.Ask;
import leadlamp.facts.Condition;
import leadlamp.record.Build;
import leadlamp.record.EngineSheet;
import leadlamp.record.LimitLine;
import leadlamp.record.Node;
import leadlamp.record.Place;
import leadlamp.record.Problem;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.record.Yaml;

/**
 * Runs cases by the ordinary path: the full build is read once, the case's change is laid over it word by word, the whole
 * rulebase runs, and the answers are held against what the case expects and, for all else, against the full build's own.
 */
public final class CaseRunner {
    private final RulesFolder folder;
    private final Path builds;
    private final ConcurrentMap<String, Base> bases = new ConcurrentHashMap<>();
    private final ConcurrentMap<Where, Outcome> outcomes = new ConcurrentHashMap<>();

    /**
     * A full build.
     *
     * @param tree  the record's tree
     * @param build read
     * @param audit what the whole rulebase says of it
     */
    public record Base(Node.Fields tree, List<String> lines, Build build, Audit audit) {
    }

    /**
     * What came of a case.
     *
     * @param wrong   what is not as it should be, one line each
     * @param changes the words of facts in which it differs from its full build
     */
    public record Outcome(List<String> wrong, Set<String> changes) {
    }

    /** @param builds folder of the full builds */
    public CaseRunner(RulesFolder folder, Path builds) {
        this.folder = folder;
        this.builds = builds;
    }

    /** A full build, read and audited once. */
    public Base base(String file) {
        return bases.computeIfAbsent(file, this::read);
    }

    private Base read(String file) {
        Yaml.File yaml = Yaml.read(builds.resolve(file), file);
        Node.Fields tree = yaml.tree().orElseThrow(() -> new IllegalArgumentException(file + ": " + yaml.problems()));
        Build build = folder.records().read(builds.resolve(file)).build().orElseThrow();
        return new Base(tree, yaml.lines(), build, folder.auditor().audit(build));
    }

    /** Runs a case, once. */
    public Outcome run(Case example) {
        Outcome known = outcomes.get(example.where());
        if (known == null) {
            known = outcome(example);
            outcomes.put(example.where(), known);
        }
        return known;
    }

    private Outcome outcome(Case example) {
        Base base = base(example.build());
        List<String> wrong = new ArrayList<>();
        Build changed = changed(example, base, wrong);
        Audit audit = folder.auditor().audit(changed);
        if (folder.auditor().check(example.of()).isEmpty()) {
            condition(example, audit, wrong);
        }
        compare(example, base.audit(), audit, wrong);
        return new Outcome(List.copyOf(wrong), Erasing.moved(base.audit(), audit));
    }

    private static void condition(Case example, Audit audit, List<String> wrong) {
        boolean holds = audit.conditions().stream().map(Condition::name).anyMatch(example.of()::equals);
        for (Expected expected : example.expect().values()) {
            if (expected instanceof Expected.Holds should && should.so() != holds) {
                wrong.add("the condition " + (holds ? "holds" : "does not hold") + ", expected: " + should);
            }
        }
    }

    /**
     * A check of each reading, each part or each entry is asked of an entry that the case adds, and no longer of one that it
     * takes away. Where nothing is found of it, that is no change.
     */
    private static boolean cameOrWent(Answer was, Answer is) {
        return (was == null || is == null) && !(was instanceof Answer.Found) && !(is instanceof Answer.Found);
    }

    private void compare(Case example, Audit before, Audit after, List<String> wrong) {
        Map<String, Answer> was = byQuestion(before);
        Map<String, Answer> is = byQuestion(after);
        Map<String, Expected> expected = new TreeMap<>();
        if (folder.auditor().check(example.of()).isPresent()) {
            example.expect().forEach((place, answer) -> expected.put(key(example.of(), place), answer));
        }
        example.also().forEach((check, places) -> places.forEach((place, answer) -> expected.put(key(check, place), answer)));
        expected.forEach((question, answer) -> {
            Expected got = is.containsKey(question) ? Expected.of(is.get(question)) : new Expected.NotAsked();
            if (!got.equals(answer)) {
                wrong.add(question + " is " + told(is.get(question)) + ", expected: " + answer);
            }
        });
        Set<String> all = new TreeSet<>(was.keySet());
        all.addAll(is.keySet());
        for (String question : all) {
            if (!expected.containsKey(question) && !signature(was.get(question)).equals(signature(is.get(question)))
                    && !cameOrWent(was.get(question), is.get(question))) {
                wrong.add(question + " is now " + told(is.get(question)) + ", was " + told(was.get(question)));
            }
        }
    }

    private static String key(String check, String place) {
        return check + " at " + place;
    }

    /** Answers by check and place, as a case names them: a group of parts or readings has `what at place`. */
    public static Map<String, Answer> byQuestion(Audit audit) {
        Map<String, Answer> answers = new TreeMap<>();
        for (Answer answer : audit.answers()) {
            answers.put(key(answer.check().id(), place(answer.ask())), answer);
        }
        return answers;
    }

    static String place(Ask ask) {
        return ask.of().isEmpty() ? ask.at() : ask.at().equals(Place.ENGINE) || ask.at().equals(ask.of()) ? ask.of()
                : ask.of() + " at " + ask.at();
    }

    /** Outcome, ways and gaps: what may not change unsaid. Rank may. */
    public static String signature(Answer answer) {
        if (answer == null) {
            return "not asked";
        }
        StringBuilder text = new StringBuilder(Expected.of(answer).toString());
        List<Gap> gaps = answer instanceof Answer.CannotTell open ? open.gaps()
                : answer instanceof Answer.Found found ? found.gaps() : List.of();
        Set<String> words = new TreeSet<>();
        gaps.forEach(g -> words.add(g.way() + ": " + g.need() + " " + g.why().word()));
        return text.append(' ').append(words).toString();
    }

    /** An answer in words, with what it rests on, for whoever mends a case. */
    public static String told(Answer answer) {
        if (answer == null) {
            return "not asked";
        }
        StringBuilder text = new StringBuilder(Expected.of(answer).toString());
        List<Gap> gaps = answer instanceof Answer.CannotTell open ? open.gaps()
                : answer instanceof Answer.Found found ? found.gaps() : List.of();
        for (Gap gap : gaps) {
            text.append("\n        way ").append(gap.way()).append(" needs ").append(gap.need()).append(" at ")
                    .append(String.join(", ", gap.places())).append(": ").append(gap.why().word());
            if (!gap.readings().equals(List.of(gap.need()))) {
                text.append(", for want of ").append(String.join(", ", gap.readings()));
            }
        }
        if (answer instanceof Answer.Found found) {
            for (Finding finding : found.findings()) {
                text.append("\n        way ").append(finding.way()).append(": ").append(finding.evidence());
            }
        }
        return text.toString();
    }

    /** The build that a case makes of its full build. */
    public Build changed(Case example) {
        List<String> wrong = new ArrayList<>();
        Build changed = changed(example, base(example.build()), wrong);
        return changed;
    }

    private Build changed(Case example, Base base, List<String> wrong) {
        Build build = base.build();
        List<String> ofSheet = new ArrayList<>();
        List<String> ofRecord = new ArrayList<>();
        for (String word : example.erase()) {
            (word.startsWith("sheet ") || word.startsWith("limit ") ? ofSheet : ofRecord).add(word);
        }
        if (!example.sheet().fields().isEmpty() || !ofSheet.isEmpty()) {
            EngineSheet sheet = sheet(build.sheet(), example, ofSheet, wrong);
            build = folder.records().build(base.tree(), build.file(), base.lines(), List.of(), sheet, build.bytes());
        }
        if (!example.change().fields().isEmpty()) {
            build = lay(example, base, build, wrong);
        }
        for (String word : ofRecord) {
            List<Statement> before = build.statements();
            build = erased(build, word);
            if (build.statements().equals(before)) {
                wrong.add("nothing is erased by \"" + word + "\"");
            }
        }
        return build;
    }

    // --- the sheet

    private EngineSheet sheet(EngineSheet sheet, Case example, List<String> erase, List<String> wrong) {
        Node.Fields tree = merged(sheet.tree(), example.sheet());
        List<String> lines = Yaml.read(builds.resolve(sheet.file()), sheet.file()).lines();
        EngineSheet changed = folder.records().sheet(tree, sheet.file(), lines);
        if (changed.problems().size() > sheet.problems().size()) {
            changed.problems().forEach(p -> wrong.add("the sheet: " + p.where() + ": " + p.what()));
        }
        for (String word : erase) {
            Set<Where> gone = new HashSet<>();
            if (word.startsWith("limit ")) {
                for (LimitLine line : changed.limits()) {
                    if (line.quantity().equals(word.substring(6))) {
                        gone.add(line.line());
                    }
                }
            } else {
                for (Statement line : changed.statements()) {
                    if (names(line, word)) {
                        gone.add(line.where());
                    }
                }
            }
            if (gone.isEmpty()) {
                wrong.add("nothing is erased by \"" + word + "\"");
            }
            changed = folder.records().sheet((Node.Fields) without(changed.tree(), gone), sheet.file(), lines);
        }
        return changed;
    }

    private static Node without(Node node, Set<Where> gone) {
        if (!(node instanceof Node.Fields fields)) {
            return node;
        }
        List<Node.Field> kept = new ArrayList<>();
        for (Node.Field field : fields.fields()) {
            if (!gone.contains(field.where()) && !gone.contains(field.value().where()) && !holds(field.value(), gone)) {
                kept.add(new Node.Field(field.key(), field.where(), without(field.value(), gone)));
            }
        }
        return new Node.Fields(kept, fields.where());
    }

    private static boolean holds(Node node, Set<Where> gone) {
        if (node instanceof Node.Items items) {
            for (Node item : items.items()) {
                if (gone.contains(item.where())) {
                    return true;
                }
            }
        }
        return false;
    }

    /** One tree laid over another: maps are laid over key by key, all else is put in place of what stood there. */
    static Node.Fields merged(Node.Fields under, Node.Fields over) {
        Map<String, Node.Field> fields = new LinkedHashMap<>();
        under.fields().forEach(f -> fields.put(f.key(), f));
        for (Node.Field field : over.fields()) {
            Node.Field before = fields.get(field.key());
            fields.put(field.key(), before != null && before.value() instanceof Node.Fields map
                    && field.value() instanceof Node.Fields more
                    ? new Node.Field(field.key(), before.where(), merged(map, more)) : field);
        }
        return new Node.Fields(List.copyOf(fields.values()), under.where());
    }

    // --- the record

    private Build lay(Case example, Base base, Build build, List<String> wrong) {
        List<String> lines = Yaml.read(folder.path().resolve(example.file().substring(example.file().indexOf('/') + 1)),
                example.file()).lines();
        Build change = folder.records().build(withGauges(example.change(), base.tree()), example.file(), lines, List.of(),
                build.sheet(), "");
        Set<Where> ofSheet = new HashSet<>();
        build.sheet().problems().forEach(p -> ofSheet.add(p.where()));
        for (Problem problem : change.problems()) {
            if (!ofSheet.contains(problem.where()) && !expectsUnreadable(example)) {
                wrong.add("the change: " + problem.where() + ": " + problem.what() + " " + problem.expected());
            }
        }
        List<Statement> over = new ArrayList<>();
        for (Statement s : change.statements()) {
            if (s.where().file().equals(example.file())) {
                over.add(withRest(s, build.statements()));
            }
        }
        Set<String> next = new HashSet<>();
        over.stream().filter(s -> s.of().equals("steps") && (s.says().equals("next") || s.says().equals("planned")))
                .forEach(s -> next.add(s.says()));
        List<Statement> kept = new ArrayList<>();
        for (Statement s : build.statements()) {
            boolean otherNext = s.of().equals("steps") && next.contains(s.says());
            boolean otherStage = s.of().equals("stage") && !change.stage().isEmpty();
            if (!otherNext && !otherStage && !replaced(s, over, change.leftOut())) {
                kept.add(s);
            }
        }
        kept.addAll(over);
        List<LimitLine> limits = new ArrayList<>();
        for (LimitLine line : build.limits()) {
            if (change.limits().stream().noneMatch(l -> l.quantity().equals(line.quantity()) && l.at().equals(line.at()))) {
                limits.add(line);
            }
        }
        limits.addAll(change.limits());
        return new Build(build.file(), build.name(), build.sheet(), List.copyOf(kept), List.copyOf(limits), change.gauges(),
                change.stage().isEmpty() ? build.stage() : change.stage(), both(build.accepted(), change.accepted()),
                both(build.photos(), change.photos()), both(build.problems(), change.problems()),
                both(build.leftOut(), change.leftOut()), build.bytes());
    }

    /** A reading that is changed keeps its gauge, and what it was taken at, where the change says nothing of them. */
    private static Statement withRest(Statement s, List<Statement> before) {
        if (s.form() != Statement.Form.READ || label(s)) {
            return s;
        }
        for (Statement b : before) {
            if (b.key().equals(s.key()) && !label(b)) {
                Map<String, String> asides = new TreeMap<>(b.asides());
                asides.putAll(s.asides());
                return new Statement(s.form(), s.of(), s.at(), s.what(), s.says(), s.value(),
                        s.gauges().isEmpty() ? b.gauges() : s.gauges(), asides, s.told(), s.where(), s.text());
            }
        }
        return s;
    }

    private static <T> List<T> both(List<T> one, List<T> other) {
        List<T> both = new ArrayList<>(one);
        both.addAll(other);
        return List.copyOf(both);
    }

    private static boolean expectsUnreadable(Case example) {
        Collection<Expected> all = new ArrayList<>(example.expect().values());
        example.also().values().forEach(m -> all.addAll(m.values()));
        return all.stream().anyMatch(e -> e instanceof Expected.Untold open && open.gaps().contains(Gap.Why.NOT_READABLE));
    }

    /** The change with the gauges of the full build, so that a reading may name one. */
    private static Node.Fields withGauges(Node.Fields change, Node.Fields tree) {
        Optional<Node.Field> gauges = tree.fields().stream().filter(f -> f.key().equals("gauges")).findFirst();
        if (gauges.isEmpty()) {
            return change;
        }
        Node.Fields all = new Node.Fields(List.of(gauges.get()), tree.where());
        return merged(all, change);
    }

    /** Whether something of the change says the same thing of the same place, or of a place that this one belongs to. */
    private static boolean replaced(Statement s, List<Statement> over, List<Statement.Key> unreadable) {
        for (Statement o : over) {
            if (o.key().form() == s.key().form() && o.of().equals(s.of()) && o.what().equals(s.what())
                    && label(o) == label(s) && takes(o.at(), s.at())) {
                return true;
            }
        }
        for (Statement.Key key : unreadable) {
            if (key.form() == s.key().form() && key.of().equals(s.of()) && key.what().equals(s.what())
                    && takes(key.at(), s.at())) {
                return true;
            }
        }
        // A torque takes the place of `not yet`, and the other way round.
        for (Statement o : over) {
            if ((o.of().equals("joint torque") && s.of().equals("joint") && s.what().equals("torque said")
                    || s.of().equals("joint torque") && o.of().equals("joint") && o.what().equals("torque said")
                    || s.of().equals(o.of()) && (o.what().equals("figure") && s.form() == Statement.Form.READ
                            || s.what().equals("figure") && o.form() == Statement.Form.READ)) && takes(o.at(), s.at())) {
                return true;
            }
        }
        return false;
    }

    private static boolean label(Statement s) {
        return s.gauges().equals(List.of("label"));
    }

    private static boolean takes(String over, String under) {
        return over.equals(under) || !over.equals(Place.ENGINE) && !under.startsWith("one of ") && !under.startsWith("some of ")
                && Place.covers(over, under);
    }

    // --- erasing

    /**
     * The build without what a word names: `cam gear pin form at intake`, or `use duty` wherever it is said. With `gauge` after a
     * reading (`joint torque gauge at oil pump to block`) the reading stays and its gauge goes.
     */
    public static Build erased(Build build, String word) {
        List<Statement> kept = new ArrayList<>();
        int gauge = word.indexOf(" gauge");
        String read = gauge < 0 || word.startsWith("gauge ") ? "" : word.substring(0, gauge) + word.substring(gauge + 6);
        for (Statement s : build.statements()) {
            if (s.form() == Statement.Form.READ && !read.isEmpty() && names(s, read)) {
                kept.add(new Statement(s.form(), s.of(), s.at(), s.what(), s.says(), s.value(), List.of(), s.asides(), s.told(),
                        s.where(), s.text()));
            } else if (!names(s, word)) {
                kept.add(s);
            }
        }
        boolean stage = word.startsWith("stage ");
        List<String> stages = new ArrayList<>(build.stage());
        stages.removeIf(s -> stage && word.equals("stage " + s));
        return new Build(build.file(), build.name(), build.sheet(), List.copyOf(kept), build.limits(), build.gauges(),
                List.copyOf(stages), build.accepted(), build.photos(), build.problems(), build.leftOut(), build.bytes());
    }

    /** The word by which needs and cases call a statement. */
    public static String word(Statement s) {
        return switch (s.form()) {
            case READ -> s.what().isEmpty() ? s.of() : s.of() + " " + s.what();
            case ON_SHEET -> s.of().equals(s.what()) ? "sheet " + s.of() : "sheet " + s.of() + " " + s.what();
            default -> s.of() + " " + s.what();
        };
    }

    private static boolean names(Statement s, String word) {
        String own = word(s);
        return word.equals(own) || word.startsWith(own + " at ") && takes(word.substring(own.length() + 4), s.at());
    }
}
