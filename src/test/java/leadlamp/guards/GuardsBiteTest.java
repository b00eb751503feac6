package leadlamp.guards;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import leadlamp.audit.Case;
import leadlamp.audit.CaseRunner;
import leadlamp.audit.Erasing;
import leadlamp.audit.RulesFolder;
import org.junit.jupiter.api.Test;

/** Each guard is shown a fault that was planted for it, and must see that one and not the sound check beside it. */
class GuardsBiteTest {
    private static final Path PLANTED = Path.of("src/test/resources/leadlamp/guards/planted");
    private static final RulesFolder FOLDER = RulesFolder.of(PLANTED, Path.of("rules/vocabulary"));
    private static final CaseRunner CASES = new CaseRunner(FOLDER, Path.of("sample-builds"));
    private static final String BUILD = "full-sound-tarn-12.yaml";

    @Test
    void a_page_with_faults_is_told_all_of_them_at_once() {
        List<String> faults = ofCheck(RulesAndPages.pages(FOLDER), "half-page");

        assertThat(faults).anyMatch(f -> f.contains("no `basis`"));
        assertThat(faults).anyMatch(f -> f.contains("\"each cam geer\" is no group") && f.contains("each cam gear"));
        assertThat(faults).anyMatch(f -> f.contains("\"cam gear pin from\"") && f.contains("cam gear pin form"));
        assertThat(faults).anyMatch(f -> f.contains("\"Catastrofic\"") && f.contains("Catastrophic"));
        assertThat(faults).anyMatch(f -> f.contains("\"colour\" is no key"));
        assertThat(faults).anyMatch(f -> f.contains("no `caution`"));
        assertThat(ofCheck(RulesAndPages.pages(FOLDER), "sound-one")).isEmpty();
    }

    @Test
    void a_rule_without_a_page_and_a_way_without_a_rule_are_seen() {
        List<String> faults = RulesAndPages.pairs(FOLDER);

        assertThat(faults).anyMatch(f -> f.contains("without-page.drl has no page"));
        assertThat(faults).anyMatch(f -> f.contains("half-page.yaml has no rule"));
        assertThat(faults).contains("misspelt: lost has no rule", "misspelt: worn is a rule and no way of the page");
        assertThat(ofCheck(faults, "sound-one")).isEmpty();
    }

    @Test
    void a_word_that_a_rule_reads_and_its_page_does_not_say_is_seen() {
        assertThat(RulesAndPages.needs(FOLDER)).contains("reads-unsaid: form reads \"use duty\" and neither needs nor heeds it");
        assertThat(ofCheck(RulesAndPages.needs(FOLDER), "sound-one")).isEmpty();
    }

    @Test
    void a_page_that_needs_nothing_is_seen() {
        assertThat(RulesAndPages.needNothing(FOLDER)).contains("needs-nothing needs nothing, and so is clear where nobody looked");
        assertThat(ofCheck(RulesAndPages.needNothing(FOLDER), "sound-one")).isEmpty();
    }

    @Test
    void a_name_that_no_rule_binds_is_seen() {
        assertThat(RulesAndPages.sentences(FOLDER)).containsExactly("misspelt: form says {shape}: nothing binds $shape");
    }

    @Test
    void a_misspelt_word_is_seen_with_its_place_and_the_nearest() {
        List<String> faults = QuotedWords.faults(FOLDER);

        assertThat(faults).anyMatch(f -> f.contains("misspelt.drl:9:") && f.contains("\"holow\"") && f.contains("Nearest: hollow"));
        assertThat(faults).anyMatch(f -> f.contains("\"wron\"") && f.contains("Nearest: worn"));
        assertThat(ofCheck(faults, "sound-one")).isEmpty();
    }

    @Test
    void order_control_numbers_and_unlike_are_seen() {
        List<String> faults = RuleTexts.faults(FOLDER);

        assertThat(faults).anyMatch(f -> f.contains("ordered.drl:7") && f.contains("salience"));
        assertThat(faults).anyMatch(f -> f.contains("ordered.drl:11") && f.contains("a number stands in a rule"));
        assertThat(faults).anyMatch(f -> f.contains("ordered.drl:10") && f.contains("`!`"));
        assertThat(ofCheck(faults, "sound-one")).isEmpty();
    }

    @Test
    void a_match_on_what_a_rule_found_is_seen() {
        assertThat(RuleTexts.of("second-hand.drl", "rule \"x\"\nwhen\n    Finding( way == \"form\" )\nthen\nend\n")).hasSize(1);
        assertThat(RuleTexts.of("words.drl", "rule \"x: salience 10\"\nwhen\n    Ask( check == \"no-loop 7\" )\nthen\nend\n")).isEmpty();
    }

    @Test
    void a_way_without_a_case_or_a_near_miss_is_seen() {
        List<String> faults = Ways.faults(FOLDER, CASES);

        assertThat(faults).contains("false-alarm: no case is found by form", "false-alarm: form has no near miss",
                "reads-unsaid: no case is found by form");
        assertThat(ofCheck(faults, "sound-one")).isEmpty();
    }

    @Test
    void a_false_alarm_on_a_full_build_is_seen() {
        assertThat(FullBuilds.faults(CASES.base(BUILD))).anyMatch(f -> f.startsWith("false-alarm at engine is found by form"));
    }

    @Test
    void a_case_that_expects_what_does_not_come_is_seen() {
        assertThat(ran("a hollow pin")).isEmpty();
        assertThat(ran("this maker fits hollow pins")).isEmpty();
        assertThat(ran("a wrong expectation")).anyMatch(f -> f.contains("intake is found by form") && f.endsWith("expected: clear"));
    }

    @Test
    void a_case_that_changes_more_than_it_says_is_seen() {
        assertThat(ran("a change that says nothing of what else it moves"))
                .anyMatch(f -> f.startsWith("sound-one at exhaust is now found by form"));
    }

    @Test
    void a_case_whose_change_cannot_be_read_is_seen() {
        assertThat(ran("a misspelt change")).anyMatch(f -> f.startsWith("the change: ") && f.contains("holow"));
    }

    @Test
    void a_check_that_moves_with_a_word_it_does_not_heed_is_seen() {
        List<String> faults = new Erasing(FOLDER).strangers(List.of("use duty at engine"), CASES.base(BUILD));

        assertThat(faults).isNotEmpty().allMatch(f -> f.contains("reads-unsaid at "));
    }

    @Test
    void a_package_that_looks_ahead_is_seen() {
        assertThat(Packages.faults(Path.of("src/test/resources/leadlamp/guards/house"))).containsExactly(
                "leadlamp/report/Page.java names leadlamp.build, which stands after report",
                "leadlamp/words/Back.java names leadlamp.report, which stands after words");
    }

    @Test
    void a_field_that_the_rule_language_trips_over_is_seen() {
        assertThat(Facts.faults(Tripping.class)).hasSize(3);
    }

    @Test
    void a_basis_that_names_nothing_is_seen() {
        assertThat(RulesAndPages.basis("common practice, no source")).isTrue();
        assertThat(RulesAndPages.basis("from memory: ISO 8752")).isTrue();
        assertThat(RulesAndPages.basis("The ring maker's data sheet, page 4")).isTrue();
        assertThat(RulesAndPages.basis("common practice")).isFalse();
        assertThat(RulesAndPages.basis("from memory")).isFalse();
        assertThat(RulesAndPages.basis("")).isFalse();
        assertThat(RulesAndPages.basis("known")).isFalse();
    }

    private record Tripping(String alpha, String in, String dex, String form) {
    }

    private static List<String> ran(String name) {
        Case example = FOLDER.cases().stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
        return CASES.run(example).wrong();
    }

    private static List<String> ofCheck(List<String> faults, String check) {
        return faults.stream().filter(f -> f.contains(check)).toList();
    }
}
