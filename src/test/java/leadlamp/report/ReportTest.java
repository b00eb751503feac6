package leadlamp.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Locale;
import leadlamp.report.ReportModel.Group;
import leadlamp.report.ReportModel.Item;
import org.junit.jupiter.api.Test;

class ReportTest {
    private final ReportModel report = Example.report();

    @Test
    void the_first_sentence_says_what_stands_before_the_next_step() {
        assertThat(report.standing().sentence()).isEqualTo("Before timing drive fitted: 3 findings to put right, 2 of "
                + "them High, 1 can hurt somebody; 5 open questions to settle. 1 thing in the files could not be read "
                + "and was left out.");
    }

    @Test
    void of_a_build_with_nothing_found_it_promises_nothing() {
        assertThat(Example.quiet().standing().sentence()).isEqualTo("Before timing drive fitted: nothing found, and no "
                + "question that is due is open. The record says no more than that.");
    }

    @Test
    void no_report_ever_calls_an_engine_safe() {
        for (ReportModel model : List.of(report, Example.quiet())) {
            for (String text : List.of(TerminalWriter.full(model, 80, false), HtmlWriter.page(model))) {
                assertThat(text.toLowerCase(Locale.ROOT)).doesNotContain("safe to", "is safe", "ready to start",
                        "all clear");
            }
        }
    }

    @Test
    void the_first_things_are_what_the_next_step_closes_then_what_settles_most_then_what_can_wait() {
        assertThat(report.standing().first()).extracting(f -> f.anchor()).containsExactly("found-1", "found-3",
                "found-4", "settle-1", "settle-2");
    }

    @Test
    void a_finding_carries_its_line_and_what_it_says() {
        Item pin = report.found().get(0);

        assertThat(pin.check()).isEqualTo("cam-gear-pin-hollow");
        assertThat(pin.evidence()).singleElement().satisfies(line -> {
            assertThat(line.where().line()).isEqualTo(31);
            assertThat(line.says()).isEqualTo("- { cam gear pin: kept, at: intake, form: hollow }");
        });
        assertThat(pin.text()).isEqualTo("The pin of the intake cam gear is hollow.");
        assertThat(pin.byWhen()).isEqualTo("Before timing drive fitted, which comes next.");
    }

    @Test
    void the_reason_of_a_shift_is_told_with_its_line() {
        assertThat(report.found().get(0).weighing()).containsExactly("Catastrophic and Probable is High.",
                "The likelihood goes one step up, from Occasional to Probable: rev limit raised "
                        + "(spring-rebuild.yaml line 12).");
    }

    @Test
    void a_joint_says_whose_harm_it_is() {
        assertThat(report.found().get(1).weighing()).containsExactly("Catastrophic, which the sheet says of this joint "
                + "if it lets go, and Occasional is High.");
    }

    @Test
    void a_fault_that_was_told_says_who_told_it() {
        assertThat(report.found().get(3).text()).endsWith("Told by: owner; not seen in this build.");
        assertThat(report.found().get(3).certainty()).contains("inferred");
    }

    @Test
    void a_finding_on_a_trade_number_says_so() {
        assertThat(report.found().get(2).text()).contains("4.97 mm (the trade's number, the sheet is silent)");
        assertThat(report.found().get(2).measures()).containsExactly("cam gear pin diameter at exhaust: 4.90 ± 0.006 "
                + "mm, by micrometer 0-25; least 4.97 mm, the trade's number, for the sheet is silent: common "
                + "practice, no source.");
    }

    @Test
    void a_coarse_reading_asks_for_the_doubt_that_would_decide_it() {
        Group group = report.groups().get(0);

        assertThat(group.todo()).isEqualTo("Measure again with a doubt under 0.002 mm: main bearing clearance");
        assertThat(group.at()).isEqualTo("main 2");
        assertThat(group.items().get(0).text()).contains("the chance that it is outside is 42 %");
    }

    @Test
    void one_reading_settles_several_questions_and_each_stands_once() {
        Group group = report.groups().get(2);

        assertThat(group.todo()).isEqualTo("Measure main journal diameter");
        assertThat(group.at()).isEqualTo("main 3 and 4");
        assertThat(group.asked()).extracting(q -> q.check(), q -> q.places()).containsExactly(
                tuple("bearing-oil-clearance", "main 3 and 4"),
                tuple("journal-taper", "main 4"));
        assertThat(report.groups()).extracting(g -> g.items().size()).containsExactly(1, 1, 3);
        assertThat(report.open()).hasSize(5);
    }

    @Test
    void an_acceptance_of_nothing_is_remarked() {
        assertThat(report.remarks()).containsExactly("Under accepted, line 90: no-such-finding at 3 was not found, so "
                + "there is nothing to accept there.");
    }

    @Test
    void a_worked_out_value_keeps_its_sum_and_whose_limit_it_has() {
        assertThat(report.worked()).hasSize(2);
        assertThat(report.worked().get(1).verdict()).isEqualTo("undecided");
        assertThat(report.worked().get(1).sum()).isEqualTo("48.022 - 47.985 = 0.057 mm");
        assertThat(report.worked().get(1).whose()).isEqualTo("sheet");
        assertThat(report.worked().get(1).most()).isEqualTo("0.055");
    }

    @Test
    void each_picture_says_in_words_what_it_shows() {
        assertThat(report.found().get(2).pictures().get(0).text()).isEqualTo("exhaust 4.90 ± 0.006 mm, outside. "
                + "Limit: least 4.97 mm.");
        assertThat(report.matrix().orElseThrow().text()).startsWith("finding 1 is Catastrophic and Probable;");
        assertThat(report.ladder().orElseThrow().text()).contains("timing drive fitted (next): last chance: 2 findings");
    }

    @Test
    void all_places_of_one_limit_stand_side_by_side() {
        Item clearance = report.open().stream().filter(i -> i.at().equals("main 2")).findFirst().orElseThrow();

        assertThat(clearance.pictures()).singleElement()
                .satisfies(p -> assertThat(p.text()).contains("main 1").contains("main 2").contains("undecided"));
    }
}
