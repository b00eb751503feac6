package leadlamp.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import leadlamp.audit.Rulebase;
import leadlamp.audit.RulebaseRule;
import leadlamp.facts.Ask;
import leadlamp.facts.Condition;
import leadlamp.facts.Fact;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.record.Where;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Rules are not run the way that Drools' own compiler would have them run: what they say is little enough to be built into
 * its model straight away. Here every rule goes both ways, over facts made of its own words, and must find the same.
 */
class EveryRuleByTwoCompilersTest {
    private static final List<String> PLACES = List.of("engine", "1", "2", "1 intake", "intake", "exhaust", "main 1",
            "sump to block");
    private static List<RulebaseRule> rules;
    private static Rulebase ours;
    private static UsualCompiler usualChecks;
    private static UsualCompiler usualConditions;

    @BeforeAll
    static void read_all_rules() throws IOException {
        Map<String, String> files = new LinkedHashMap<>();
        for (Path file : CompileKnowledge.files(Path.of("rules"), ".drl")) {
            files.put(file.toString(), Files.readString(file));
        }
        rules = new ArrayList<>();
        files.forEach((file, text) -> RuleReader.read(file, text).rules().forEach(rule -> rules.add(rule.rule())));
        ours = RuleReader.rulebase(files);
        Map<String, String> settings = new LinkedHashMap<>(files);
        settings.keySet().removeIf(file -> !file.contains("conditions"));
        files.keySet().removeAll(settings.keySet());
        usualChecks = new UsualCompiler(files);
        usualConditions = new UsualCompiler(settings);
    }

    @Test
    void both_find_the_same() {
        int found = 0;
        for (int round = 0; round < 12; round++) {
            Random dice = new Random(round);
            List<Ask> asks = new ArrayList<>();
            List<Fact> facts = new ArrayList<>();
            for (RulebaseRule rule : rules) {
                if (!rule.sets() && dice.nextInt(3) == 0) {
                    asks.add(new Ask(rule.check(), dice.nextBoolean() ? "" : "piston", PLACES.get(dice.nextInt(PLACES.size()))));
                    make(rule, asks.get(asks.size() - 1).at(), dice, facts);
                }
            }
            var expected = usualChecks.findings(asks, facts).all();
            assertThat(ours.run(asks, facts)).as("round %s", round).isEqualTo(expected);
            found += expected.size();
        }
        assertThat(found).as("what was found in all").isGreaterThan(rules.size());
    }

    @Test
    void both_set_the_same_conditions() {
        int held = 0;
        for (int round = 0; round < 20; round++) {
            Random dice = new Random(round);
            List<Fact> facts = new ArrayList<>();
            for (RulebaseRule rule : rules) {
                if (rule.sets() && dice.nextInt(3) == 0) {
                    make(rule, "engine", dice, facts);
                }
            }
            List<Condition> expected = usualConditions.conditions(facts).all();
            assertThat(ours.conditions(facts)).as("round %s", round).isEqualTo(expected);
            held += expected.size();
        }
        assertThat(held).isPositive();
    }

    /** Facts for the patterns of a rule: most that it asks for, few that it does not want. */
    private static void make(RulebaseRule rule, String place, Random dice, List<Fact> facts) {
        for (RulebaseRule.Clause clause : rule.clauses()) {
            for (RulebaseRule.Match match : clause.matches()) {
                boolean make = clause.sort() == RulebaseRule.Sort.NOT ? dice.nextInt(3) == 0 : dice.nextInt(12) > 0;
                if (make && !match.fact().equals("Ask")) {
                    facts.add(fact(match, dice.nextInt(5) == 0 ? PLACES.get(dice.nextInt(PLACES.size())) : place, dice,
                            facts.size() + 1));
                }
            }
        }
    }

    private static Fact fact(RulebaseRule.Match match, String place, Random dice, int line) {
        Map<String, String> says = new LinkedHashMap<>();
        int side = 0;
        for (RulebaseRule.Test test : match.tests()) {
            if (test instanceof RulebaseRule.Test.Says asked) {
                says.put(asked.field(), asked.words().get(dice.nextInt(asked.words().size())));
            } else if (test instanceof RulebaseRule.Test.Flag flag) {
                side = flag.flag().equals("above") || flag.flag().equals("outside") && dice.nextBoolean() ? 1 : -1;
            }
        }
        String of = says.getOrDefault("of", "piston");
        String kind = says.getOrDefault("kind", of);
        String at = says.getOrDefault("at", place);
        String told = says.getOrDefault("told", "");
        List<Where> where = List.of(new Where("record.yaml", line, 3));
        return switch (match.fact()) {
            case "Stated" -> new Stated(of, kind, at, says.getOrDefault("what", "state"), says.getOrDefault("says", "kept"),
                    told, Map.of(), where);
            case "Seen" -> new Seen(of, kind, at, says.getOrDefault("sign", "worn"), told, Map.of(), where);
            case "OnSheet" -> new OnSheet(of, kind, at, says.getOrDefault("what", "state"), says.getOrDefault("says", "kept"),
                    where);
            case "Condition" -> new Condition(says.getOrDefault("name", "boosted"), where);
            case "Value" -> FactsMade.value(of, kind, at, line);
            default -> FactsMade.verdict(of, kind, at, line, dice.nextInt(4) == 0 ? -side : side);
        };
    }
}
