package leadlamp.guards;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import leadlamp.audit.Case;
import leadlamp.audit.CaseRunner;
import leadlamp.audit.Erasing;
import leadlamp.audit.RulesFolder;
import leadlamp.audit.Shuffling;
import leadlamp.facts.Ask;
import leadlamp.facts.Condition;
import leadlamp.facts.NotSeen;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** Written once, over the folders: what holds of every check, present and future. */
@Execution(ExecutionMode.CONCURRENT)
class GuardsTest {
    private static final Path BUILDS = Path.of("sample-builds");
    private static final RulesFolder RULES = RulesFolder.project();
    private static final CaseRunner CASES = new CaseRunner(RULES, BUILDS);
    /** So many words are taken away at once; one by one only where the many show a fault. */
    private static final int TOGETHER = 16;

    @Test
    void every_page_is_whole_and_names_its_basis() {
        assertThat(RulesAndPages.pages(RULES)).isEmpty();
    }

    @Test
    void every_page_has_its_rules_and_every_rule_its_page() {
        assertThat(RulesAndPages.pairs(RULES)).isEmpty();
    }

    @Test
    void every_rule_reads_what_its_way_needs_or_heeds_and_no_more() {
        assertThat(RulesAndPages.needs(RULES)).isEmpty();
    }

    @Test
    void every_name_in_a_sentence_is_bound_by_its_rule() {
        assertThat(RulesAndPages.sentences(RULES)).isEmpty();
    }

    @Test
    void every_page_needs_something() {
        assertThat(RulesAndPages.needNothing(RULES)).isEmpty();
    }

    @Test
    void every_quoted_word_is_in_the_vocabulary_and_in_its_place() {
        assertThat(QuotedWords.faults(RULES)).isEmpty();
    }

    @Test
    void no_rule_controls_an_order_matches_a_finding_or_holds_a_number() {
        assertThat(RuleTexts.faults(RULES)).isEmpty();
    }

    @Test
    void every_way_has_a_case_that_fires_and_a_near_miss() {
        assertThat(Ways.faults(RULES, CASES)).isEmpty();
    }

    @Test
    void every_number_of_the_trade_names_its_basis() {
        assertThat(Trade.basis(RULES)).isEmpty();
    }

    @Test
    void every_number_of_the_trade_yields_to_the_sheet() {
        assertThat(Trade.yields(RULES, CASES.base(FullBuilds.files(BUILDS).get(0)).build())).isEmpty();
    }

    @Test
    void packages_keep_their_direction() {
        assertThat(Packages.faults(Path.of("src/main/java"))).isEmpty();
    }

    @Test
    void fields_of_facts_have_names_that_a_rule_can_bear() {
        assertThat(Facts.faults(Ask.class, Stated.class, Seen.class, NotSeen.class, OnSheet.class, Value.class, Verdict.class,
                Condition.class)).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> everything_asked_of_a_full_build_is_clear_or_due_later() {
        return FullBuilds.files(BUILDS).stream().map(file -> DynamicTest.dynamicTest(file,
                () -> assertThat(FullBuilds.faults(CASES.base(file))).isEmpty()));
    }

    @TestFactory
    Stream<DynamicTest> facts_in_any_order_give_the_same_answers() {
        return FullBuilds.files(BUILDS).stream().map(file -> DynamicTest.dynamicTest(file,
                () -> assertThat(Shuffling.faults(RULES, CASES.base(file).build())).isEmpty()));
    }

    @TestFactory
    Stream<DynamicTest> a_case_changes_only_what_it_says() {
        return RULES.cases().stream().map(example -> DynamicTest.dynamicTest(example.toString(), example.file().isEmpty() ? null
                : Path.of(example.file()).toUri(), () -> assertThat(CASES.run(example).wrong()).as(example.where().toString()).isEmpty()));
    }

    @TestFactory
    Stream<DynamicTest> an_erased_word_never_turns_into_a_pass() {
        Erasing erasing = new Erasing(RULES);
        return RULES.cases().stream().map(example -> DynamicTest.dynamicTest(example.toString(),
                () -> assertThat(erasing.passes(example, CASES)).as(example.where().toString()).isEmpty()));
    }

    @TestFactory
    Stream<DynamicTest> an_erased_word_changes_only_the_checks_that_need_or_heed_it() {
        Erasing erasing = new Erasing(RULES);
        List<DynamicTest> tests = new ArrayList<>();
        for (String file : FullBuilds.files(BUILDS)) {
            Collection<String> words = erasing.words(CASES.base(file).build());
            for (List<String> some : inParts(words)) {
                tests.add(DynamicTest.dynamicTest(file + ": " + some.get(0) + " and what follows",
                        () -> assertThat(erasing.strangers(some, CASES.base(file))).isEmpty()));
            }
        }
        return tests.stream();
    }

    private static List<List<String>> inParts(Collection<String> words) {
        List<String> all = new ArrayList<>(words);
        List<List<String>> parts = new ArrayList<>();
        for (int i = 0; i < all.size(); i += TOGETHER) {
            parts.add(all.subList(i, Math.min(all.size(), i + TOGETHER)));
        }
        return parts;
    }

    static List<Case> cases() {
        return RULES.cases();
    }
}
