package leadlamp.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import leadlamp.audit.Gap;
import leadlamp.facts.Ask;
import leadlamp.facts.LimitUsed;
import leadlamp.rank.Handmade;
import leadlamp.rank.Want;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WordingTest {
    private final Wording wording = new Wording(Handmade.WORDS);

    @Test
    void a_bare_number_is_that_of_a_cylinder_unless_the_group_says_otherwise() {
        assertThat(Wording.place("each cylinder", "1")).isEqualTo("cylinder 1");
        assertThat(Wording.place("each valve", "1 intake front")).isEqualTo("cylinder 1 intake front");
        assertThat(Wording.place("each friction disc", "2")).isEqualTo("friction disc 2");
        assertThat(Wording.place("each main bearing", "main 2")).isEqualTo("main 2");
    }

    @Test
    void what_is_asked_of_stands_before_its_place() {
        assertThat(Wording.place("each reading", new Ask("c", "cylinder bore", "1"))).isEqualTo(
                "cylinder bore at cylinder 1");
        assertThat(Wording.place("each kept part", new Ask("c", "water pump", "engine"))).isEqualTo("water pump");
        assertThat(Wording.place("each gauge", new Ask("c", "wrench A", "wrench A"))).isEqualTo("wrench A");
    }

    @Test
    void several_places_say_their_common_word_once() {
        assertThat(Wording.places(List.of("1", "2", "3"))).isEqualTo("cylinder 1, 2 and 3");
        assertThat(Wording.places(List.of("main 1", "main 2"))).isEqualTo("main 1 and 2");
        assertThat(Wording.places(List.of("big end 1", "main 2"))).isEqualTo("big end 1 and main 2");
        assertThat(Wording.places(List.of("intake", "exhaust"))).isEqualTo("intake and exhaust");
        assertThat(Wording.places(List.of("1 exhaust", "1 intake", "2 exhaust", "2 intake"))).isEqualTo(
                "cylinder 1 and 2, each exhaust and intake");
        assertThat(Wording.places(List.of("1 exhaust", "1 intake", "2 intake"))).isEqualTo(
                "cylinder 1 exhaust and intake; 2 intake");
        assertThat(Wording.places(List.of("main cap to block", "rod cap to rod 1", "rod cap to rod 2"))).isEqualTo(
                "main cap to block; rod cap to rod 1 and 2");
        assertThat(Wording.places(List.of("big end 3 1", "big end 3 2"))).isEqualTo("big end 3 1 and 2");
        assertThat(Wording.places(List.of("1", "1 exhaust", "1 intake", "2", "2 exhaust", "2 intake"))).isEqualTo(
                "cylinder 1 and 2; 1 and 2, each exhaust and intake");
        assertThat(Wording.places(List.of("engine"))).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Gap.Why.class)
    void every_kind_of_gap_is_said_in_words(Gap.Why why) {
        assertThat(Wording.gap(Handmade.gap(why, "cam gear pin form", OptionalDouble.empty(), "intake")))
                .contains("cam gear pin form").contains("intake").doesNotContain("_");
    }

    @Test
    void a_gap_behind_a_worked_out_value_names_the_readings() {
        Gap gap = new Gap(Gap.Why.NOT_RECORDED, "main bearing clearance", List.of("main 2"),
                List.of("main journal diameter", "main bearing bore with shells"), OptionalDouble.empty(), "", "form");

        assertThat(Wording.gap(gap)).isEqualTo("main bearing clearance at main 2 is not recorded; it wants main "
                + "journal diameter and main bearing bore with shells");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "crankpin diameter          | Measure crankpin diameter",
        "joint face gap             | Measure joint face gap",
        "joint torque               | Write down of the joint: torque",
        "gallery plug count         | Count: gallery plug count",
        "steps valve leak tested    | Do this step, or write down that it was done: valve leak tested",
        "use duty                   | Write down under use: duty",
        "gauge kind                 | Write down under gauges: kind"})
    void what_is_wanted_is_an_order_that_can_be_carried_out(String word, String order) {
        assertThat(wording.want(new Want(Want.How.RECORD, word), List.of())).isEqualTo(order);
    }

    @Test
    void one_look_is_for_all_signs_and_words_of_a_part() {
        assertThat(wording.want(new Want(Want.How.LOOK, "cylinder"), List.of("coolant", "fuel"))).isEqualTo(
                "Look at cylinder for these signs: coolant and fuel");
        assertThat(wording.want(new Want(Want.How.LOOK, "cam gear pin"), List.of("cracked", "form", "origin")))
                .isEqualTo("Look at cam gear pin for these signs: cracked; write down its form and origin");
        assertThat(wording.want(new Want(Want.How.JOINT, "sump to block"), List.of("lubricant")))
                .isEqualTo("Write down of the joint sump to block: lubricant");
    }

    @Test
    void a_trades_number_is_never_taken_for_the_sheets() {
        assertThat(Wording.whose(Handmade.limit(OptionalDouble.of(1), OptionalDouble.empty(), LimitUsed.Whose.TRADE)))
                .isEqualTo("the trade's number, for the sheet is silent: common practice, no source");
        assertThat(Wording.whose(Handmade.limit(OptionalDouble.of(1), OptionalDouble.empty(), LimitUsed.Whose.SHEET)))
                .isEqualTo("from the engine sheet, Tarn 12");
    }
}
