package leadlamp.audit;

import static leadlamp.audit.Small.answers;
import static leadlamp.audit.Small.said;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import leadlamp.record.EngineSheet;
import org.junit.jupiter.api.Test;

class AsksTest {
    private static final EngineSheet SILENT = Small.sheet("sheet: thin", "from: invented for this test");

    @Test
    void a_hollow_pin_written_down_is_found_however_thin_the_sheet() {
        Map<String, Answer> answers = CaseRunner.byQuestion(Small.audit(SILENT,
                "parts: [{ cam gear pin: new, at: intake, form: hollow }]"));

        assertThat(said(answers.get("pin at intake"))).isEqualTo("found by form");
        assertThat(said(answers.get("pin at engine"))).isEqualTo("cannot tell (sheet silent)");
    }

    @Test
    void what_the_sheet_shows_to_be_none_is_not_asked() {
        EngineSheet sheet = Small.sheet("sheet: thin",
                "layout: { arrangement: in-line, cylinders: 2, main bearings: 3, mains: roller, big ends: roller }");

        assertThat(CaseRunner.byQuestion(Small.audit(sheet, "use: { duty: road }")).keySet())
                .noneMatch(question -> question.startsWith("bearing at "));
    }

    @Test
    void longer_places_that_a_record_names_are_cut_to_those_of_the_group() {
        Map<String, Answer> answers = CaseRunner.byQuestion(Small.audit(SILENT,
                "measurements:",
                "  - cylinder bore:",
                "      at: [top thrust, top pin]",
                "      1: [80.01, 80.02]",
                "      2: [80.01, 80.02]",
                "    unit: mm"));

        assertThat(answers.keySet().stream().filter(q -> q.startsWith("skirt at "))).containsExactly("skirt at 1", "skirt at 2",
                "skirt at engine");
    }

    @Test
    void known_not_to_hold_is_not_asked_and_not_known_is_asked() {
        assertThat(answers("parts: [{ timing belt: kept }]")).doesNotContainKey("belt at belt tensioner");
        assertThat(answers("parts: [{ timing belt: new }]")).containsKey("belt at belt tensioner");
        assertThat(answers("use: { duty: road }")).containsKey("belt at belt tensioner");
        assertThat(answers("parts: [{ timing belt: unknown }]")).containsKey("belt at belt tensioner");
        assertThat(answers("parts: [{ timing belt: kept, told by: seller }]")).containsKey("belt at belt tensioner");
    }

    @Test
    void a_condition_that_is_settled_is_no_longer_asked_for() {
        assertThat(answers("use: { duty: road }")).doesNotContainKey("field at engine");
        assertThat(CaseRunner.byQuestion(Small.audit(SILENT, "use: { duty: road }"))).containsKey("field at engine");
        assertThat(CaseRunner.byQuestion(Small.audit(Small.sheet("sheet: thin", "layout: { liners: wet }"), "use: { duty: road }")))
                .containsKey("field at engine");
    }

    @Test
    void a_need_on_a_condition_is_a_need_on_all_that_settles_it() {
        String road = "use: { duty: road }";

        assertThat(said(answers(road).get("liner-seals at engine"))).isEqualTo("clear");
        assertThat(said(CaseRunner.byQuestion(Small.audit(Small.sheet("sheet: thin", "layout: { liners: wet }"), road))
                .get("liner-seals at engine"))).isEqualTo("found by wet");
        assertThat(said(CaseRunner.byQuestion(Small.audit(SILENT, road)).get("liner-seals at engine")))
                .isEqualTo("cannot tell (sheet silent)");
    }

    @Test
    void a_step_is_asked_of_once_it_is_done_or_next() {
        assertThat(answers("stage: head set down")).containsKey("dried at engine");
        assertThat(answers("stage: head gasket laid", "steps: [{ next: head set down }]")).containsKey("dried at engine");
        assertThat(answers("stage: engine stripped", "steps: [{ next: parts washed }]")).doesNotContainKey("dried at engine");
    }

    @Test
    void a_group_of_parts_asks_each_part_by_name_and_place() {
        Map<String, Answer> answers = answers("parts:", "  - { crankshaft: kept, origin: maker's }",
                "  - { connecting rod: second-hand, at: 2, origin: home-made }", "  - { camshaft: kept, at: intake }",
                "  - { oil pump: new }");

        assertThat(said(answers.get("origin at crankshaft"))).isEqualTo("clear");
        assertThat(said(answers.get("origin at connecting rod at 2"))).isEqualTo("found by copied");
        assertThat(said(answers.get("origin at camshaft at intake"))).startsWith("cannot tell");
        assertThat(answers).doesNotContainKey("origin at oil pump");
    }

    @Test
    void a_joint_that_only_the_record_names_is_asked_too() {
        Map<String, Answer> answers = answers("fasteners:",
                "  - { dipstick tube to bracket: 10 N·m, threads: { lubricant: engine oil } }");

        assertThat(said(answers.get("oiled at dipstick tube to bracket"))).isEqualTo("found by oiled");
        assertThat(answers).containsKey("oiled at rod cap to rod 2").doesNotContainKey("oiled at rod cap to rod");
    }

    @Test
    void a_joint_without_a_known_torque_says_so() {
        String next = "steps: [{ next: sump fitted }]";

        assertThat(said(answers("fasteners: [{ oil pump to block: by hand, threads: { lubricant: dry } }]", next)
                .get("oiled at oil pump to block"))).isEqualTo("cannot tell (unknown)");
        assertThat(said(answers("fasteners: [{ oil pump to block: as found, threads: { lubricant: dry } }]", next)
                .get("oiled at oil pump to block"))).isEqualTo("cannot tell (as found only)");
        assertThat(said(answers("fasteners: [{ oil pump to block: not yet, meant: 23 N·m, threads: { lubricant: dry } }]", next)
                .get("oiled at oil pump to block"))).isEqualTo("cannot tell (not recorded)");
    }
}
