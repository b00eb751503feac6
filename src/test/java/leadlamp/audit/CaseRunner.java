package leadlamp.audit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import leadlamp.facts.Ask;
import leadlamp.facts.Condition;
import leadlamp.record.Build;
import leadlamp.record.Node;
import leadlamp.record.Place;
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
        return changed(example, base(example.build()), new ArrayList<>());
    }

    private Build changed(Case example, Base base, List<String> wrong) {
        String sheet = base.build().sheet().file();
        List<String> page = Yaml.read(folder.path().resolve(example.file().substring(example.file().indexOf('/') + 1)),
                example.file()).lines();
        return new Overlay(folder.records()).changed(example, page, new Overlay.Base(base.tree(), base.lines(),
                Yaml.read(builds.resolve(sheet), sheet).lines(), base.build()), wrong);
    }

    /** What the overlay takes away by this word. */
    public static Build erased(Build build, String word) {
        return Overlay.erased(build, word);
    }

    /** The word by which needs and cases call a statement. */
    public static String word(Statement s) {
        return Overlay.word(s);
    }
}
