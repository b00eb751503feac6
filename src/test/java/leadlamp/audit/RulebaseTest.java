package leadlamp.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import leadlamp.build.RuleReader;
import leadlamp.facts.Ask;
import leadlamp.facts.Condition;
import leadlamp.facts.Fact;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.record.Where;
import org.junit.jupiter.api.Test;

class RulebaseTest {
    private static final String PIN = rules("cam-drive/pin", """
            rule "pin: form"
            when
                Ask( check == "pin", $gear : at )
                Stated( of == "cam gear pin", at == $gear, what == "form", $form : says, says in ( "hollow", "slotted" ) )
                not OnSheet( of == "cam gear pin", at == $gear, what == "form", says == $form )
            then
                findings.found( drools.getMatch() );
            end
            rule "pin: loose"
            when
                Ask( check == "pin", $gear : at )
                Seen( of == "cam gear", near( $gear ), sign == "play" )
                Condition( name == "boosted" )
            then
                findings.found( drools.getMatch() );
            end
            """);
    private static final String BOOSTED = """
            package leadlamp.rules.conditions;
            import leadlamp.facts.*;
            global leadlamp.audit.Conditions conditions;
            rule "boosted: sheet"
            when
                OnSheet( of == "layout", what == "turbocharger" )
            then
                conditions.holds( drools.getMatch() );
            end
            rule "boosted: use"
            when
                Stated( of == "use", what == "boost" )
            then
                conditions.holds( drools.getMatch() );
            end
            """;
    private static final Stated HOLLOW = stated("cam gear pin", "intake", "form", "hollow", 7);
    private static final Ask AT_INTAKE = new Ask("pin", "", "intake");
    private static final Ask AT_EXHAUST = new Ask("pin", "", "exhaust");

    private static String rules(String path, String rules) {
        return "package leadlamp.rules." + path.substring(0, path.indexOf('/')).replace('-', '_')
                + ";\nimport leadlamp.facts.*;\nglobal leadlamp.audit.Findings findings;\n" + rules;
    }

    private static Stated stated(String of, String at, String what, String says, int line) {
        return new Stated(of, of, at, what, says, "", Map.of(), List.of(new Where("record.yaml", line, 3)));
    }

    private static Rulebase pins() {
        return RuleReader.rulebase(Map.of("rules/cam-drive/pin.drl", PIN, "rules/conditions/boosted.drl", BOOSTED));
    }

    @Test
    void what_matched_is_the_evidence_and_what_the_rule_named_is_bound() {
        assertThat(pins().run(List.of(AT_INTAKE, AT_EXHAUST), List.of(HOLLOW))).containsExactly(
                new Finding(AT_INTAKE, "form", List.of(HOLLOW), Map.of("gear", "intake", "form", "hollow")));
    }

    @Test
    void what_the_sheet_allows_is_not_found() {
        OnSheet allowed = new OnSheet("cam gear pin", "cam gear pin", "intake", "form", "hollow", List.of());
        assertThat(pins().run(List.of(AT_INTAKE), List.of(HOLLOW, allowed))).isEmpty();
    }

    @Test
    void a_condition_has_the_lines_of_all_that_set_it() {
        OnSheet turbo = new OnSheet("layout", "layout", "engine", "turbocharger", "1", List.of(new Where("sheet.yaml", 4, 1)));
        Stated boost = stated("use", "engine", "boost", "0.8 bar", 3);
        List<Condition> holding = pins().conditions(List.of(turbo, boost));
        assertThat(holding).containsExactly(new Condition("boosted",
                List.of(new Where("record.yaml", 3, 3), new Where("sheet.yaml", 4, 1))));
    }

    @Test
    void a_rule_may_rest_on_a_condition() {
        Seen play = new Seen("cam gear", "cam gear", "intake", "play", "", Map.of(), List.of(new Where("record.yaml", 9, 3)));
        Condition boosted = new Condition("boosted", List.of(new Where("record.yaml", 3, 3)));
        assertThat(pins().run(List.of(AT_INTAKE), List.of(play))).isEmpty();
        assertThat(pins().run(List.of(AT_INTAKE), List.of(play, boosted))).extracting(Finding::evidence)
                .containsExactly(List.of(boosted, play));
    }

    @Test
    void facts_put_in_shuffled_are_found_in_the_same_order() {
        List<Ask> asks = new ArrayList<>();
        List<Fact> facts = new ArrayList<>();
        for (int i = 1; i <= 12; i++) {
            String at = "main " + i;
            asks.add(new Ask("pin", "", at));
            facts.add(stated("cam gear pin", at, "form", i % 2 == 0 ? "hollow" : "slotted", 40 - i));
            facts.add(new Seen("cam gear", "cam gear", at, "play", "", Map.of(), List.of(new Where("record.yaml", i, 1))));
        }
        facts.add(new Condition("boosted", List.of()));
        List<Finding> first = pins().run(asks, facts);
        assertThat(first).hasSize(24);
        for (int seed = 0; seed < 5; seed++) {
            Collections.shuffle(asks, new Random(seed));
            Collections.shuffle(facts, new Random(seed + 99));
            assertThat(pins().run(asks, facts)).isEqualTo(first);
        }
    }

    @Test
    void the_same_thing_written_twice_is_found_once() {
        assertThat(pins().run(List.of(AT_INTAKE), List.of(HOLLOW, stated("cam gear pin", "intake", "form", "hollow", 7))))
                .hasSize(1);
    }

    private static List<RulebaseRule> pinRules() {
        List<RulebaseRule> rules = new ArrayList<>();
        RuleReader.read("rules/cam-drive/pin.drl", PIN).rules().forEach(rule -> rules.add(rule.rule()));
        return rules;
    }

    @Test
    void only_rules_that_can_fire_are_loaded_and_only_the_facts_they_ask_for() {
        RulebaseFile file = RulebaseFile.of(pinRules());
        Stated other = stated("piston", "1", "state", "new", 3);
        RulebaseFile.Chosen chosen = file.canFire(false, List.of(AT_INTAKE, HOLLOW, other));
        assertThat(file.rules(chosen.rules())).containsExactly(pinRules().get(0));
        assertThat(chosen.facts()).containsExactly(AT_INTAKE, HOLLOW);
        assertThat(file.canFire(false, List.of(AT_INTAKE, other)).rules()).isEmpty();
        assertThat(file.canFire(true, List.of(AT_INTAKE, HOLLOW)).rules()).isEmpty();
    }

    @Test
    void rules_that_are_kept_from_the_last_audit_find_the_same_again() {
        Rulebase rulebase = pins();
        Seen play = new Seen("cam gear", "cam gear", "engine", "play", "", Map.of(), List.of(new Where("record.yaml", 9, 3)));
        List<Fact> facts = List.of(HOLLOW, play, new Condition("boosted", List.of()), stated("piston", "1", "state", "new", 2));
        List<Finding> first = rulebase.run(List.of(AT_INTAKE, AT_EXHAUST), facts);
        assertThat(first).hasSize(3);
        for (int i = 0; i < 3; i++) {
            assertThat(rulebase.run(List.of(AT_INTAKE), List.of(HOLLOW))).hasSize(1);
            assertThat(rulebase.run(List.of(AT_INTAKE, AT_EXHAUST), facts)).isEqualTo(first);
        }
    }

    @Test
    void threads_may_share_it() throws Exception {
        Rulebase rulebase = pins();
        List<Finding> expected = rulebase.run(List.of(AT_INTAKE), List.of(HOLLOW));
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Callable<List<Finding>>> work = Collections.nCopies(200, () -> rulebase.run(List.of(AT_INTAKE), List.of(HOLLOW)));
            for (Future<List<Finding>> done : threads.invokeAll(work)) {
                assertThat(done.get()).isEqualTo(expected);
            }
        } finally {
            threads.shutdown();
        }
    }

    @Test
    void warming_up_finds_nothing_and_fails_nothing() {
        Rulebase.warmUp();
    }
}
