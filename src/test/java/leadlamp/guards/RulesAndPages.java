package leadlamp.guards;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import leadlamp.audit.Check;
import leadlamp.audit.ConditionPage;
import leadlamp.audit.RulebaseRule;
import leadlamp.audit.RuleWords;
import leadlamp.audit.RulesFolder;
import leadlamp.audit.Way;
import leadlamp.build.RuleReader;

/** What holds between a page and the rules beside it. Each guard gives its faults, one line each. */
final class RulesAndPages {
    private RulesAndPages() {
    }

    /** A page has a rule file beside it, and a rule file a page; a way has one rule, and a rule a way. */
    static List<String> pairs(RulesFolder folder) {
        List<String> faults = new ArrayList<>();
        for (Path topic : RulesFolder.folders(folder.path())) {
            for (Path page : RulesFolder.files(topic, ".yaml")) {
                if (!page.endsWith("limits.yaml") && !Files.exists(twin(page, ".drl"))) {
                    faults.add(name(folder, page) + " has no rule beside it");
                }
            }
            for (Path rule : RulesFolder.files(topic, ".drl")) {
                if (!Files.exists(twin(rule, ".yaml"))) {
                    faults.add(name(folder, rule) + " has no page beside it");
                }
            }
        }
        for (Check check : folder.checks()) {
            Set<String> ways = new TreeSet<>();
            check.ways().forEach(w -> ways.add(w.name()));
            Set<String> ruled = new TreeSet<>();
            for (RuleReader.Rule rule : rules(folder, check.topic(), check.id())) {
                if (!ruled.add(rule.rule().way())) {
                    faults.add(check.id() + ": " + rule.rule().way() + " has two rules");
                }
            }
            difference(ways, ruled).forEach(w -> faults.add(check.id() + ": " + w + " has no rule"));
            difference(ruled, ways).forEach(w -> faults.add(check.id() + ": " + w + " is a rule and no way of the page"));
        }
        return faults;
    }

    /** What a rule reads is what its way needs or heeds, and no more; what it reads only under `not` is never needed. */
    static List<String> needs(RulesFolder folder) {
        List<String> faults = new ArrayList<>();
        for (Check check : folder.checks()) {
            for (Way way : check.ways()) {
                Set<String> declared = new TreeSet<>(way.needs());
                declared.addAll(way.heeds());
                Set<String> read = RuleWords.all(way.patterns());
                String name = check.id() + ": " + way.name();
                difference(read, declared).forEach(w -> faults.add(name + " reads \"" + w + "\" and neither needs nor heeds it"));
                difference(declared, read).forEach(w -> faults.add(name + " declares \"" + w + "\" and its rule does not read it"));
                Set<String> both = new TreeSet<>(way.needs());
                both.retainAll(way.heeds());
                both.forEach(w -> faults.add(name + " both needs and heeds \"" + w + "\""));
                for (String word : way.needs()) {
                    if (read.contains(word) && !RuleWords.positive(way.patterns()).contains(word)) {
                        faults.add(name + " needs \"" + word + "\", which its rule only reads under `not`");
                    }
                }
            }
        }
        for (ConditionPage page : folder.conditions()) {
            Set<String> read = RuleWords.all(page.patterns());
            Set<String> declared = new TreeSet<>(page.reads());
            difference(read, declared).forEach(w -> faults.add(page.name() + " reads \"" + w + "\", which its page does not say"));
            difference(declared, read).forEach(w -> faults.add(page.name() + " declares \"" + w + "\" and its rules do not read it"));
        }
        return faults;
    }

    /** A page of which no way needs anything can never say that it cannot tell: it would be clear where nobody looked. */
    static List<String> needNothing(RulesFolder folder) {
        List<String> faults = new ArrayList<>();
        for (Check check : folder.checks()) {
            if (check.ways().stream().allMatch(way -> way.needs().isEmpty())) {
                faults.add(check.id() + " needs nothing, and so is clear where nobody looked");
            }
        }
        return faults;
    }

    /** Every `{name}` of a sentence is bound by the rule of its way. */
    static List<String> sentences(RulesFolder folder) {
        List<String> faults = new ArrayList<>();
        for (Check check : folder.checks()) {
            for (RuleReader.Rule rule : rules(folder, check.topic(), check.id())) {
                for (Way way : check.ways()) {
                    if (way.name().equals(rule.rule().way())) {
                        for (String name : names(way.found())) {
                            unbound(name, rule.rule()).ifPresent(why -> faults.add(check.id() + ": " + way.name() + " says {" + name
                                    + "}: " + why));
                        }
                    }
                }
            }
        }
        return faults;
    }

    private static java.util.Optional<String> unbound(String name, RulebaseRule rule) {
        if (name.equals("place") || name.equals("of")) {
            return java.util.Optional.empty();
        }
        Set<String> bound = new HashSet<>();
        int verdicts = 0;
        int values = 0;
        Set<String> quantities = new HashSet<>();
        for (RulebaseRule.Clause clause : rule.clauses()) {
            for (RulebaseRule.Match match : clause.matches()) {
                if (clause.sort() != RulebaseRule.Sort.THERE) {
                    continue;
                }
                for (RulebaseRule.Test test : match.tests()) {
                    if (test instanceof RulebaseRule.Test.Name named) {
                        bound.add(named.variable().substring(1));
                    } else if (test instanceof RulebaseRule.Test.Says says && match.fact().equals("Verdict")
                            && (says.field().equals("of") || says.field().equals("kind"))) {
                        quantities.addAll(says.words());
                    }
                }
                verdicts += match.fact().equals("Verdict") ? 1 : 0;
                values += match.fact().equals("Value") ? 1 : 0;
            }
        }
        if (bound.contains(name)) {
            return java.util.Optional.empty();
        }
        int of = name.indexOf(" of ");
        String what = of < 0 ? name : name.substring(0, of);
        if (!Set.of("value", "limit", "band", "gauge", "spot").contains(what)) {
            return java.util.Optional.of("nothing binds $" + name);
        }
        if (of < 0) {
            boolean plainValue = verdicts == 0 && values == 1 && !what.equals("limit");
            return verdicts == 1 || plainValue ? java.util.Optional.empty()
                    : java.util.Optional.of("its rule matches " + verdicts + " verdicts, not one");
        }
        return quantities.contains(name.substring(of + 4)) ? java.util.Optional.empty()
                : java.util.Optional.of("its rule matches no verdict on " + name.substring(of + 4));
    }

    private static List<String> names(String sentence) {
        List<String> names = new ArrayList<>();
        for (int open = sentence.indexOf('{'); open >= 0; open = sentence.indexOf('{', open + 1)) {
            int close = sentence.indexOf('}', open);
            names.add(close < 0 ? sentence.substring(open) : sentence.substring(open + 1, close).strip());
        }
        return names;
    }

    /** A page says how bad and how likely, how it ends, what to do, and on what that rests. */
    static List<String> pages(RulesFolder folder) {
        List<String> faults = new ArrayList<>();
        folder.problems().forEach(p -> faults.add(p.where() + ": " + p.what() + " " + p.expected()
                + p.nearest().map(n -> " Nearest word: " + n + ".").orElse("")));
        for (Check check : folder.checks()) {
            if (!basis(check.basis())) {
                faults.add(check.id() + " names no basis: \"" + check.basis() + "\"");
            }
            if (check.chain().size() < 2) {
                faults.add(check.id() + " does not say how it ends: its chain has " + check.chain().size() + " link");
            }
            if (!check.question().endsWith("?")) {
                faults.add(check.id() + " asks nothing: its question ends without a question mark");
            }
            if (check.person() && !check.caution().contains("manual") && !check.caution().contains("maker")) {
                faults.add(check.id() + " can hurt somebody, and its caution does not defer to the maker's manual");
            }
        }
        return faults;
    }

    /** Whether a basis says where something comes from. */
    static boolean basis(String basis) {
        return basis.startsWith("common practice, no source")
                || basis.startsWith("from memory: ") && basis.length() > 16
                || !basis.startsWith("from memory") && !basis.startsWith("common practice") && basis.length() >= 8
                        && basis.indexOf(' ') > 0;
    }

    static List<RuleReader.Rule> rules(RulesFolder folder, String topic, String check) {
        RuleReader.Read read = folder.rules().get(topic + "/" + check + ".drl");
        return read == null ? List.of() : read.rules();
    }

    private static Set<String> difference(Set<String> one, Set<String> other) {
        Set<String> difference = new TreeSet<>(one);
        difference.removeAll(other);
        return difference;
    }

    private static Path twin(Path file, String ending) {
        String name = file.getFileName().toString();
        return file.resolveSibling(name.substring(0, name.lastIndexOf('.')) + ending);
    }

    private static String name(RulesFolder folder, Path file) {
        return folder.path().relativize(file).toString();
    }
}
