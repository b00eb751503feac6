package leadlamp.audit;

import static leadlamp.audit.Small.answers;
import static leadlamp.audit.Small.said;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import leadlamp.facts.Verdict;
import leadlamp.record.EngineSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnswersTest {
    private static final String NEXT = "steps: [{ next: cam gears fitted }]";

    @Test
    void a_hollow_pin_is_found_and_the_other_pin_is_not_cleared_by_it() {
        Map<String, Answer> answers = answers(
                "parts: [{ cam gear pin: new, at: intake, form: hollow }]",
                "measurements: [{ cam gear pin diameter: 5.000 mm, at: intake, with: micrometer }]", NEXT);

        assertThat(said(answers.get("pin at intake"))).isEqualTo("found by form");
        assertThat(said(answers.get("pin at exhaust"))).isEqualTo("cannot tell (not recorded)");
    }

    @Test
    void a_pin_with_all_that_is_needed_is_clear_and_keeps_its_grounds_and_margins() {
        Answer.Clear clear = (Answer.Clear) answers(
                "parts: [{ cam gear pin: new, at: intake, form: solid }]",
                "measurements: [{ cam gear pin diameter: 5.000 mm, at: intake, with: micrometer }]").get("pin at intake");

        assertThat(clear.grounds()).hasSize(2);
        assertThat(clear.margins()).extracting(Verdict::of).containsExactly("cam gear pin diameter");
    }

    @Test
    void one_measured_bore_never_clears_the_others() {
        Map<String, Answer> answers = answers("measurements:", "  - { piston clearance: 0.040 mm, at: 1, with: micrometer }");

        assertThat(said(answers.get("clearance at 1"))).isEqualTo("clear");
        assertThat(said(answers.get("clearance at 2"))).startsWith("cannot tell");
        assertThat(said(answers.get("clearance at 3"))).startsWith("cannot tell");
    }

    @Test
    void a_derived_value_that_is_missing_asks_for_the_readings_behind_it() {
        Answer.CannotTell open = (Answer.CannotTell) answers(
                "measurements: [{ piston skirt diameter: 79.960 mm, at: 2, with: micrometer }]").get("clearance at 2");

        assertThat(open.gaps().get(0).readings()).containsExactly("cylinder bore");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "piston clearance: 0.040 mm, at: 1, told by: invoice         | only told",
        "piston clearance: good, at: 1                               | figure not kept",
        "piston clearance: unknown, at: 1                            | unknown",
        "piston clearance: 0.040 mm, at: 1, as: found                | as found only",
        "'piston clearance: 0.040 mm, at: { one of: [1, 2] }'        | which one not told",
        "piston clearance: 0.040 furlongs, at: 1                     | not readable",
        "piston clearance: under 0.050 mm, at: 1, with: micrometer   | one side only",
        "piston clearance: 0.0255 mm, at: 1, with: micrometer        | too coarse",
    })
    void a_gap_says_why(String entry, String why) {
        Answer answer = answers("measurements: [{ " + entry + " }]", "steps: [{ next: pistons fitted }]").get("clearance at 1");

        assertThat(said(answer)).isEqualTo("cannot tell (" + why + ")");
    }

    @Test
    void what_is_too_coarse_says_how_likely_it_is_outside_and_what_blurs_it() {
        Answer.CannotTell open = (Answer.CannotTell) answers(
                "measurements: [{ piston clearance: 0.0255 mm, at: 1, with: micrometer }]").get("clearance at 1");
        Gap gap = open.gaps().get(0);

        assertThat(gap.outside().orElseThrow()).isBetween(0.2, 0.5);
        assertThat(gap.chief()).isNotEmpty();
    }

    @Test
    void a_bound_clears_the_side_that_it_proves() {
        Map<String, Answer> answers = answers("measurements: [{ piston clearance: under 0.050 mm, at: 1, with: micrometer }]");
        Answer.CannotTell open = (Answer.CannotTell) answers.get("clearance at 1");

        assertThat(open.gaps()).extracting(Gap::way).containsExactly("tight");
    }

    @Test
    void without_a_limit_nothing_can_be_told() {
        EngineSheet sheet = Small.sheet("sheet: thin", "layout: { cylinders: 2, arrangement: in-line }");
        Map<String, Answer> answers = CaseRunner.byQuestion(Small.audit(sheet,
                "measurements: [{ piston clearance: 0.040 mm, at: 1, with: micrometer }]"));

        assertThat(said(answers.get("clearance at 1"))).isEqualTo("cannot tell (no limit)");
    }

    @Test
    void a_value_of_a_kind_meets_a_need_on_the_kind() {
        Map<String, Answer> answers = answers("measurements: [{ main bearing clearance: 0.038 mm, at: 2, with: micrometer }]",
                "steps: [{ next: crankshaft laid }]");

        assertThat(said(answers.get("bearing at main 2"))).isEqualTo("clear");
        assertThat(said(answers.get("bearing at main 3"))).isEqualTo("cannot tell (not recorded)");
    }

    @Test
    void a_sign_that_was_looked_for_or_is_ruled_out_meets_the_need() {
        assertThat(said(answers("observations: [{ piston skirt: clear, of: scuffed, at: 1 }]").get("skirt at 1"))).isEqualTo("clear");
        assertThat(said(answers("observations: [{ piston skirt: scuffed, at: 1 }]").get("skirt at 1"))).isEqualTo("found by scuffed");
        assertThat(said(answers("observations: [{ piston skirt: scuffed, at: 1, pattern: edge }]").get("skirt at 1")))
                .isEqualTo("clear");
        assertThat(said(answers("observations: [{ piston skirt: unknown, at: 1, note: oily }]",
                "steps: [{ next: pistons fitted }]").get("skirt at 1"))).isEqualTo("cannot tell (unknown)");
    }

    @Test
    void a_fault_that_was_only_told_is_found_and_a_pass_that_was_only_told_is_none() {
        assertThat(said(answers("observations: [{ piston skirt: scuffed, at: 1, told by: seller }]").get("skirt at 1")))
                .isEqualTo("found by scuffed");
        assertThat(said(answers("observations: [{ piston skirt: clear, of: scuffed, at: 1, told by: seller }]").get("skirt at 1")))
                .startsWith("cannot tell");
    }

    @Test
    void at_one_of_two_places_only_what_the_record_says_there_is_asked() {
        Map<String, Answer> answers = answers("observations: [{ piston skirt: scuffed, at: { one of: [1, 2] } }]",
                "steps: [{ next: bought or refused }]");

        assertThat(said(answers.get("skirt at one of 1, 2"))).isEqualTo("found by scuffed");
        assertThat(said(answers.get("skirt at 1"))).isEqualTo("cannot tell (which one not told)");
        assertThat(said(answers.get("skirt at 3"))).isEqualTo("cannot tell (not recorded)");
        assertThat(answers).doesNotContainKey("clearance at one of 1, 2");
    }

    @Test
    void a_step_left_out_or_unknown_meets_no_need_on_it() {
        String stage = "stage: head set down";

        assertThat(said(answers(stage, "steps: [{ bolt holes dried: 2026-03-14 }]").get("dried at engine"))).isEqualTo("clear");
        assertThat(said(answers(stage, "steps: [{ bolt holes dried: left out }]").get("dried at engine"))).isEqualTo("found by wet");
        assertThat(said(answers(stage, "steps: [{ bolt holes dried: unknown }]").get("dried at engine")))
                .isEqualTo("cannot tell (unknown)");
        assertThat(said(answers(stage).get("dried at engine"))).isEqualTo("cannot tell (not recorded)");
    }

    @Test
    void a_finding_that_rests_on_a_step_left_out_does_not_call_it_open_as_well() {
        Answer.Found left = (Answer.Found) answers("stage: head set down", "steps: [{ bolt holes dried: left out }]").get("dried at engine");

        assertThat(left.gaps()).isEmpty();
    }

    @Test
    void what_no_step_at_hand_closes_is_due_later() {
        Answer.CannotTell early = (Answer.CannotTell) answers("stage: engine stripped", "steps: [{ next: parts washed }]")
                .get("pin at intake");
        Answer.CannotTell now = (Answer.CannotTell) answers("stage: cams fitted", NEXT).get("pin at intake");
        Answer.CannotTell missed = (Answer.CannotTell) answers("stage: cam gears fitted").get("pin at intake");
        Answer.CannotTell price = (Answer.CannotTell) answers("steps: [{ next: bought or refused }]").get("pin at intake");

        assertThat(early.later()).isTrue();
        assertThat(early.gaps()).extracting(Gap::why).containsOnly(Gap.Why.DUE_LATER);
        assertThat(List.of(now.later(), missed.later(), price.later())).containsOnly(false);
        assertThat(now.gaps()).extracting(Gap::why).containsOnly(Gap.Why.NOT_RECORDED);
    }

    @Test
    void the_last_chance_is_the_first_step_that_closes_a_need_and_is_not_behind() {
        assertThat(chance("pin at intake", "stage: cams fitted", NEXT))
                .isEqualTo(new LastChance("cam gears fitted", LastChance.Standing.NEXT));
        assertThat(chance("pin at intake", "stage: cam gears fitted").standing()).isEqualTo(LastChance.Standing.PASSED);
        assertThat(chance("oiled at oil pump to block", "stage: engine stripped", "steps: [{ next: parts washed }]"))
                .isEqualTo(new LastChance("sump fitted", LastChance.Standing.LATER));
    }

    private static LastChance chance(String question, String... record) {
        Audit audit = Small.audit(Small.TARN, record);
        return audit.lastChance(CaseRunner.byQuestion(audit).get(question));
    }
}
