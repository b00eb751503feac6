package leadlamp.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import leadlamp.facts.Ask;
import leadlamp.facts.Condition;
import leadlamp.facts.Fact;
import leadlamp.facts.NotSeen;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.record.Build;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.words.Part;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** What comes of a record from which something is taken away, one word at one place each. */
public final class Erasing {
    /** The facts of the full builds, which are held against others again and again. */
    private static final Map<Audit, Map<String, List<Fact>>> FACTS = Collections.synchronizedMap(new IdentityHashMap<>());

    private final RulesFolder folder;
    private final Vocabulary words;
    private final Map<String, PlaceForm> forms = new ConcurrentHashMap<>();
    private final Set<String> tried = ConcurrentHashMap.newKeySet();

    public Erasing(RulesFolder folder) {
        this.folder = folder;
        this.words = folder.words();
    }

    /**
     * Silence is no pass: no needed word, taken away, makes its check clear at a place for which the case expects an answer.
     *
     * @return what went clear, one line each
     */
    public List<String> passes(Case example, CaseRunner runner) {
        List<String> faults = new ArrayList<>();
        Optional<Check> check = folder.auditor().check(example.of());
        if (check.isEmpty()) {
            return faults;
        }
        Build build = runner.changed(example);
        Audit audit = folder.auditor().audit(build);
        Map<String, Answer> before = CaseRunner.byQuestion(audit);
        for (Map.Entry<String, Expected> expected : example.expect().entrySet()) {
            Answer answer = before.get(example.of() + " at " + expected.getKey());
            if (answer == null || expected.getValue() instanceof Expected.NotAsked) {
                continue;
            }
            CaseRunner.Base base = runner.base(example.build());
            boolean asBefore = CaseRunner.signature(answer).equals(CaseRunner.signature(
                    CaseRunner.byQuestion(base.audit()).get(example.of() + " at " + expected.getKey())));
            Auditor quick = folder.auditor(check.get());
            boolean same = CaseRunner.signature(answer).equals(CaseRunner.signature(
                    CaseRunner.byQuestion(quick.audit(build)).get(example.of() + " at " + expected.getKey())));
            for (String word : needed(check.get(), answer.ask(), audit)) {
                // Where neither the answer nor the word is the case's own doing, the full build is tried in its place, once.
                if (asBefore && !runner.run(example).changes().contains(word) && !tried.add(example.build() + " " + example.of()
                        + " at " + expected.getKey() + ": " + word)) {
                    continue;
                }
                Build less = without(build, word, answer.ask().at(), audit);
                if (less.statements().size() == build.statements().size()) {
                    continue;
                }
                Audit after = (same ? quick : folder.auditor()).audit(less);
                Answer now = CaseRunner.byQuestion(after).get(example.of() + " at " + expected.getKey());
                if (now instanceof Answer.Clear && same) {
                    after = folder.auditor().audit(less);
                    now = CaseRunner.byQuestion(after).get(example.of() + " at " + expected.getKey());
                }
                if (now instanceof Answer.Clear && !stillMet(word, answer.ask(), after)) {
                    faults.add(example + ": with \"" + word + "\" taken away, " + expected.getKey() + " is clear");
                }
            }
        }
        return faults;
    }

    /** The words that the ways which apply there need. */
    private Set<String> needed(Check check, Ask ask, Audit audit) {
        Asks asks = asks(audit);
        Set<String> needed = new LinkedHashSet<>();
        for (Way way : check.ways()) {
            if (asks.holds(way.applies(), ask) != Asks.Holds.NO) {
                needed.addAll(way.needs());
            }
        }
        return needed;
    }

    private Asks asks(Audit audit) {
        Recorded recorded = new Recorded(audit.facts(), audit.build().leftOut(), words);
        Groups groups = new Groups(audit.build(), audit.facts(), words);
        Map<String, ConditionPage> conditions = new HashMap<>();
        folder.conditions().forEach(c -> conditions.put(c.name(), c));
        Needs needs = new Needs(recorded, groups, words, List.of(), new HashMap<>(), conditions);
        return new Asks(groups, recorded, needs, new Work(audit.build(), words), conditions);
    }

    /** The build without what meets a need at a place: what says it, and all that it was worked out from. */
    private Build without(Build build, String word, String at, Audit audit) {
        Optional<Need> need = Need.of(word, words);
        if (need.isEmpty() || need.get().kind() == Need.Kind.SHEET || need.get().kind() == Need.Kind.ANY) {
            return build;
        }
        Set<Object> lines = new HashSet<>();
        for (Fact fact : audit.facts()) {
            if (fact instanceof Value value && value.derived() && (value.of().equals(word) || value.kind().equals(word))
                    && Place.related(value.at(), at)) {
                lines.addAll(value.places());
            }
        }
        List<Statement> kept = new ArrayList<>();
        for (Statement s : build.statements()) {
            boolean said = (CaseRunner.word(s).equals(word) || kindWord(s).equals(word)) && Place.related(s.at(), at);
            if (!said && !(lines.contains(s.where()) && s.form() == Statement.Form.READ)) {
                kept.add(s);
            }
        }
        return with(build, kept, build.stage());
    }

    /** A need may be met twice over: read and worked out, or by what holds of all. */
    private boolean stillMet(String word, Ask ask, Audit audit) {
        Set<String> there = new HashSet<>();
        for (Fact fact : audit.facts()) {
            if (Place.related(fact.at(), ask.at()) || fact.at().equals(Place.ENGINE)) {
                there.addAll(words(fact));
            }
        }
        if (there.contains(word)) {
            return true;
        }
        Optional<Need> need = Need.of(word, words);
        if (need.isPresent() && need.get().kind() == Need.Kind.SIGN) {
            Optional<Part> part = words.part(need.get().of());
            for (String kind : part.map(Part::kinds).orElse(List.of())) {
                if (there.contains(kind + " " + need.get().what())) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Each statement of a full build, taken away once, changes no answer of a check that neither needs nor heeds it, be it
     * straight or by way of what was worked out or of a condition.
     *
     * @return what changed unexplained, one line each
     */
    public List<String> strangers(Collection<String> words, CaseRunner.Base base) {
        List<String> faults = strangers(Set.copyOf(words), base);
        if (faults.isEmpty() || words.size() == 1) {
            return faults;
        }
        // Many that are taken away together are only quicker: which one it was is told one by one.
        List<String> told = new ArrayList<>();
        words.forEach(word -> told.addAll(strangers(Set.of(word), base)));
        return told.isEmpty() ? faults : told;
    }

    private List<String> strangers(Set<String> erased, CaseRunner.Base base) {
        List<String> faults = new ArrayList<>();
        Build less = erased(base.build(), erased);
        Audit after = folder.auditor().audit(less);
        Map<String, Answer> was = CaseRunner.byQuestion(base.audit());
        Map<String, Answer> is = CaseRunner.byQuestion(after);
        Set<String> changed = new TreeSet<>();
        for (String question : union(was.keySet(), is.keySet())) {
            if (!CaseRunner.signature(was.get(question)).equals(CaseRunner.signature(is.get(question)))) {
                changed.add(question);
            }
        }
        if (changed.isEmpty()) {
            return faults;
        }
        Set<String> moved = moved(base.audit(), after);
        for (Statement s : base.build().statements()) {
            if (names(s, erased)) {
                moved.add(CaseRunner.word(s));
                moved.add(kindWord(s));
            }
        }
        boolean ofTheWork = erased.stream().anyMatch(word -> word.startsWith("steps ") || word.startsWith("stage "));
        for (String question : changed) {
            Answer before = was.get(question);
            Answer now = is.get(question);
            Check check = (before == null ? now : before).check();
            String group = check.askedOf();
            boolean explained = reads(check, (before == null ? now : before).ask()).stream().anyMatch(moved::contains);
            boolean asked = (ofTheWork || erased.stream().anyMatch(word -> named(word, group)) || group.startsWith("each part") || !group.equals("engine") && before == null)
                    && !(now instanceof Answer.Clear);
            // What a question is asked of (a reading, a part) is gone, and so the question is.
            boolean gone = now == null && !before.ask().of().isEmpty()
                    && erased.stream().anyMatch(word -> word.startsWith(before.ask().of() + " "));
            if (!explained && !asked && !gone) {
                faults.add("without \"" + String.join("\", \"", new TreeSet<>(erased)) + "\", " + question + " is " + CaseRunner.told(now) + ", was " + CaseRunner.told(before));
            }
        }
        return faults;
    }

    /** What is taken away together: one word at one place of its group. */
    public Collection<String> words(Build build) {
        Map<String, String> words = new LinkedHashMap<>();
        for (Statement s : build.statements()) {
            words.put(CaseRunner.word(s) + " at " + place(s), "");
        }
        return words.keySet();
    }

    private String place(Statement s) {
        if (Untold.is(s.at()) || s.at().equals(Place.ENGINE)) {
            return s.at();
        }
        Optional<Quantity> quantity = words.quantity(s.of());
        String group = quantity.isPresent() ? quantity.get().group() : words.part(s.of()).map(Part::group).orElse("");
        if (group.isEmpty() || group.equals("engine")) {
            return s.at();
        }
        return forms.computeIfAbsent(group, g -> new PlaceForm(words.groups().getOrDefault(g, ""))).cut(s.at());
    }

    private Build erased(Build build, Set<String> words) {
        List<Statement> kept = new ArrayList<>();
        for (Statement s : build.statements()) {
            if (!names(s, words)) {
                kept.add(s);
            }
        }
        List<String> stage = new ArrayList<>(build.stage());
        stage.removeIf(step -> words.contains("stage " + step + " at engine"));
        return with(build, kept, stage);
    }

    private boolean names(Statement s, Set<String> words) {
        return words.contains(CaseRunner.word(s) + " at " + place(s));
    }

    private static Build with(Build build, List<Statement> statements, List<String> stage) {
        return new Build(build.file(), build.name(), build.sheet(), List.copyOf(statements), build.limits(), build.gauges(),
                List.copyOf(stage), build.accepted(), build.photos(), build.problems(), build.leftOut(), build.bytes());
    }

    private static Set<String> union(Set<String> one, Set<String> other) {
        Set<String> union = new TreeSet<>(one);
        union.addAll(other);
        return union;
    }

    /** Whether a word is of what lives in the group, so that it may name a place of it. */
    private boolean named(String word, String group) {
        String text = word.substring(0, word.lastIndexOf(" at "));
        for (int end = text.length(); end > 0; end = text.lastIndexOf(' ', end - 1)) {
            String name = text.substring(0, end);
            Optional<Part> part = words.part(name);
            if (part.isPresent() && part.get().group().equals(group)) {
                return true;
            }
        }
        return words.quantity(text).map(q -> q.group().equals(group)).orElse(false)
                || text.startsWith("joint") && group.startsWith("each joint");
    }

    /** The words of facts that two audits do not share. */
    static Set<String> moved(Audit before, Audit after) {
        Map<String, List<Fact>> one = FACTS.computeIfAbsent(before, Erasing::byName);
        Map<String, List<Fact>> other = byName(after);
        Set<String> moved = new TreeSet<>();
        Set<String> names = new HashSet<>(one.keySet());
        names.addAll(other.keySet());
        for (String name : names) {
            List<Fact> was = one.getOrDefault(name, List.of());
            List<Fact> is = other.getOrDefault(name, List.of());
            if (!was.equals(is)) {
                was.stream().filter(f -> !is.contains(f)).forEach(f -> moved.addAll(words(f)));
                is.stream().filter(f -> !was.contains(f)).forEach(f -> moved.addAll(words(f)));
            }
        }
        return moved;
    }

    private static Map<String, List<Fact>> byName(Audit audit) {
        Map<String, List<Fact>> facts = new HashMap<>();
        for (Fact fact : audit.facts()) {
            facts.computeIfAbsent(fact.getClass().getSimpleName() + " " + Groups.subject(fact) + " " + fact.at(), n -> new ArrayList<>())
                    .add(fact);
        }
        return facts;
    }

    /** The words by which needs call a fact. */
    static Set<String> words(Fact fact) {
        Set<String> words = new TreeSet<>();
        if (fact instanceof Stated said) {
            words.add(said.of() + " " + said.what());
            words.add(said.kind() + " " + said.what());
        } else if (fact instanceof Seen seen) {
            words.add(seen.of() + " " + seen.sign());
            words.add(seen.kind() + " " + seen.sign());
        } else if (fact instanceof NotSeen clear) {
            words.add(clear.of() + " " + clear.sign());
            words.add(clear.kind() + " " + clear.sign());
        } else if (fact instanceof OnSheet line) {
            words.add(line.of().equals(line.what()) ? "sheet " + line.of() : "sheet " + line.of() + " " + line.what());
            words.add("sheet " + line.kind() + " " + line.what());
        } else if (fact instanceof Value value) {
            words.add(value.of());
            words.add(value.kind());
        } else if (fact instanceof Verdict verdict) {
            words.add(verdict.of());
            words.add(verdict.kind());
        } else if (fact instanceof Condition condition) {
            words.add("condition " + condition.name());
        }
        return words;
    }

    private String kindWord(Statement s) {
        String kind = new FactsOf(words).kind(s.of());
        return s.form() == Statement.Form.READ ? kind : kind + " " + s.what();
    }

    /** The words that a check needs or heeds, by its ways, by what it applies to, and by what stands in place of a figure. */
    Set<String> reads(Check check, Ask ask) {
        Set<String> declared = new TreeSet<>(check.applies().keySet());
        for (Way way : check.ways()) {
            declared.addAll(way.needs());
            declared.addAll(way.heeds());
            declared.addAll(way.applies().keySet());
        }
        Set<String> reads = new TreeSet<>();
        for (String word : declared) {
            Optional<Need> need = Need.of(word, words);
            if (need.isEmpty()) {
                continue;
            }
            Optional<Need> here = need.get().at(ask, words);
            String name = here.map(Need::word).orElse(word);
            reads.add(name);
            reads.add(name + " figure");
            reads.add(name + " as found");
            if (name.equals("joint torque")) {
                reads.add("joint torque said");
            }
            here.filter(n -> n.kind() == Need.Kind.SIGN).ifPresent(n -> reads.add("observations " + n.of()));
            here.filter(n -> n.kind() == Need.Kind.SIGN).flatMap(n -> words.part(n.of())).ifPresent(p -> p.kinds()
                    .forEach(k -> reads.add(k + " " + here.get().what())));
            here.filter(n -> n.kind() == Need.Kind.WORD).ifPresent(n -> {
                reads.add(n.of() + " as found " + n.what());
                for (int end = n.what().lastIndexOf(' '); end > 0; end = n.what().lastIndexOf(' ', end - 1)) {
                    reads.add(n.of() + " " + n.what().substring(0, end));
                }
            });
            if (here.isPresent() && here.get().kind() == Need.Kind.CONDITION) {
                folder.conditions().stream().filter(c -> c.name().equals(here.get().of())).forEach(c -> {
                    reads.addAll(c.reads());
                    reads.addAll(c.settledBy());
                });
            }
            if (here.isPresent() && here.get().kind() == Need.Kind.READING) {
                behind(here.get().of(), reads, 0);
            }
        }
        return reads;
    }

    private void behind(String quantity, Set<String> reads, int depth) {
        for (String from : words.quantity(quantity).map(Quantity::from).orElse(List.of())) {
            reads.add(from);
            reads.add(from + " figure");
            if (depth < 5) {
                behind(from, reads, depth + 1);
            }
        }
    }
}
