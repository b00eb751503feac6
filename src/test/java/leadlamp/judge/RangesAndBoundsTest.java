package leadlamp.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leadlamp.facts.Verdict;
import org.junit.jupiter.api.Test;

/** What a range, a bound, one figure of several places, a told figure and a figure as found prove, and what not. */
class RangesAndBoundsTest {
    private static final Shop FLOAT = Shop.limits("crankshaft end float: { least: 0.06 mm, most: 0.25 mm }\n");
    private static final Shop TIP_GAP = Shop.limits("oil pump tip gap: { most: 0.18 mm }\n");
    private static final Shop RING_GAP = Shop.limits("piston ring end gap: { least: 0.30 mm, most: 0.50 mm }\n");
    private static final Shop MARGIN = Shop.limits("valve margin: { least: 0.8 mm }\n");

    @Test
    void a_plain_reading_is_within_or_outside_only_with_all_of_its_doubt() {
        // The usual doubt of a dial gauge is 0.02 mm.
        assertThat(FLOAT.measured("- { crankshaft end float: 0.14 mm, with: dial gauge }").on("crankshaft end float")).isEqualTo("within, within");
        assertThat(FLOAT.measured("- { crankshaft end float: 0.24 mm, with: dial gauge }").on("crankshaft end float")).isEqualTo("within, undecided");
        assertThat(FLOAT.measured("- { crankshaft end float: 0.26 mm, with: dial gauge }").on("crankshaft end float")).isEqualTo("within, undecided");
        assertThat(FLOAT.measured("- { crankshaft end float: 0.28 mm, with: dial gauge }").on("crankshaft end float")).isEqualTo("within, above");
        assertThat(FLOAT.measured("- { crankshaft end float: 0.03 mm, with: dial gauge }").on("crankshaft end float")).isEqualTo("below, within");
    }

    @Test
    void a_value_between_two_limits_nearer_than_its_doubt_to_both_is_undecided_on_both_sides() {
        Shop narrow = Shop.limits("crankshaft end float: { least: 0.13 mm, most: 0.15 mm }\n");
        assertThat(narrow.measured("- { crankshaft end float: 0.14 mm, with: dial gauge }").on("crankshaft end float"))
                .isEqualTo("undecided, undecided");
    }

    @Test
    void a_range_at_one_place_is_within_only_if_both_ends_are() {
        assertThat(TIP_GAP.measured("- { oil pump tip gap: from 0.08 to 0.09 mm, with: feeler gauge }").on("oil pump tip gap")).isEqualTo("within");
        assertThat(TIP_GAP.measured("- { oil pump tip gap: from 0.08 to 0.17 mm, with: feeler gauge }").on("oil pump tip gap")).isEqualTo("undecided");
    }

    @Test
    void of_a_range_at_one_single_place_one_end_outside_is_enough() {
        assertThat(TIP_GAP.measured("- { oil pump tip gap: from 0.08 to 0.21 mm, with: feeler gauge }").on("oil pump tip gap")).isEqualTo("above");
    }

    @Test
    void the_ends_of_a_range_over_several_places_were_met_somewhere_among_them() {
        Shop.Judged judged = RING_GAP.measured("- { piston ring end gap: from 0.20 to 0.36 mm, at: each first, with: feeler gauge }");
        for (String place : List.of("1 first", "2 first", "3 first")) {
            assertThat(judged.on("piston ring end gap", place)).as(place).isEqualTo("undecided, within");
        }
        assertThat(judged.all("piston ring end gap", "one of 1 first, 2 first, 3 first").stream().map(Shop.Judged::inWords))
                .containsExactlyInAnyOrder("below, within", "within, within");
    }

    @Test
    void a_range_over_several_places_that_is_outside_at_both_ends_is_outside_at_each() {
        Shop.Judged judged = RING_GAP.measured("- { piston ring end gap: from 0.20 to 0.25 mm, at: each first, with: feeler gauge }");
        assertThat(judged.on("piston ring end gap", "2 first")).isEqualTo("below, within");
    }

    @Test
    void a_bound_proves_its_own_side_and_is_silent_on_the_other() {
        Shop.Judged under = Shop.limits("crankshaft end float: { least: 0.02 mm, most: 0.06 mm }\n")
                .measured("- { crankshaft end float: under 0.05 mm, doubt: 0.001 mm }");
        assertThat(under.on("crankshaft end float")).isEqualTo("silent, within");
    }

    @Test
    void a_bound_beyond_the_limit_may_still_be_inside() {
        Shop.Judged under = Shop.limits("crankshaft end float: { most: 0.04 mm }\n")
                .measured("- { crankshaft end float: under 0.05 mm, doubt: 0.001 mm }");
        assertThat(under.on("crankshaft end float")).isEqualTo("undecided");
        assertThat(under.at("crankshaft end float", "engine").most().orElseThrow().outside()).isEqualTo(0.5);
    }

    @Test
    void a_bound_that_leaves_only_what_is_too_little_is_below() {
        Shop.Judged under = Shop.limits("crankshaft end float: { least: 0.06 mm, most: 0.25 mm }\n")
                .measured("- { crankshaft end float: under 0.03 mm, doubt: 0.001 mm }");
        assertThat(under.on("crankshaft end float")).isEqualTo("below, within");
    }

    @Test
    void where_a_limit_has_only_the_side_that_a_bound_leaves_open_there_is_no_verdict() {
        Shop.Judged over = Shop.limits("crankshaft end float: { most: 0.25 mm }\n")
                .measured("- { crankshaft end float: over 0.05 mm, doubt: 0.001 mm }");
        assertThat(over.verdicts()).isEmpty();
    }

    @Test
    void the_least_of_several_places_is_a_bound_at_each_and_plain_at_one_of_them() {
        Shop.Judged judged = MARGIN.measured("- { valve margin: least 1.1 mm, at: each, with: vernier }");
        assertThat(judged.on("valve margin", "2 exhaust")).isEqualTo("within");
        assertThat(judged.on("valve margin", "one of each")).isEqualTo("within");
    }

    @Test
    void a_least_of_several_places_that_is_too_little_is_below_at_one_of_them_and_undecided_at_each() {
        Shop.Judged judged = MARGIN.measured("- { valve margin: least 0.6 mm, at: each, with: vernier }");
        assertThat(judged.on("valve margin", "2 exhaust")).isEqualTo("undecided");
        assertThat(judged.on("valve margin", "one of each")).isEqualTo("below");
    }

    @Test
    void the_greatest_of_several_places_says_nothing_of_a_least() {
        Shop.Judged judged = RING_GAP.measured("- { piston ring end gap: most 0.45 mm, at: each first, with: feeler gauge }");
        assertThat(judged.on("piston ring end gap", "1 first")).isEqualTo("silent, within");
    }

    @Test
    void a_least_of_one_place_was_met_there() {
        Shop.Judged judged = MARGIN.measured("- { valve margin: least 0.6 mm, at: 1 intake, with: vernier }");
        assertThat(judged.on("valve margin", "1 intake")).isEqualTo("below");
    }

    @Test
    void a_mean_inside_proves_no_place() {
        Shop.Judged judged = RING_GAP.measured("- { piston ring end gap: mean 0.40 mm, at: each first, with: feeler gauge }");
        assertThat(judged.on("piston ring end gap", "one of 1 first, 2 first, 3 first")).isEqualTo("undecided, undecided");
        assertThat(judged.on("piston ring end gap", "1 first")).isEqualTo("none");
    }

    @Test
    void a_mean_outside_is_outside_at_one_of_the_places() {
        Shop.Judged judged = RING_GAP.measured("- { piston ring end gap: mean 0.60 mm, at: each first, with: feeler gauge }");
        assertThat(judged.on("piston ring end gap", "one of 1 first, 2 first, 3 first")).isEqualTo("undecided, above");
    }

    @Test
    void alike_within_says_nothing_of_any_one_place() {
        Shop size = Shop.limits("combustion chamber volume: { least: 30 cm3 }\n");
        Shop.Judged judged = size.measured("- { combustion chamber volume: alike within 0.3 cm3, at: each, with: burette }");
        assertThat(judged.verdicts().stream().map(Verdict::of)).doesNotContain("combustion chamber volume");
    }

    @Test
    void what_was_told_proves_nothing_inside() {
        Shop.Judged judged = FLOAT.measured("- { crankshaft end float: 0.14 mm, told by: owner }");
        assertThat(judged.on("crankshaft end float")).isEqualTo("undecided, undecided");
    }

    @Test
    void a_fault_that_was_told_is_outside_and_the_value_says_who_told_it() {
        Shop.Judged judged = FLOAT.measured("- { crankshaft end float: 0.40 mm, told by: owner }");
        assertThat(judged.on("crankshaft end float")).isEqualTo("undecided, above");
        assertThat(judged.at("crankshaft end float", "engine").value().told()).isEqualTo("owner");
    }

    @Test
    void what_was_found_is_held_against_the_limits_of_the_quantity_under_its_own_name() {
        Shop.Judged judged = FLOAT.measured("- { crankshaft end float: 0.40 mm, as: found, with: dial gauge }");
        assertThat(judged.on("crankshaft end float as found")).isEqualTo("within, above");
        assertThat(judged.on("crankshaft end float")).isEqualTo("none");
    }

    @Test
    void a_trial_is_held_against_no_limit() {
        assertThat(FLOAT.measured("- { crankshaft end float: 0.40 mm, as: trial, with: dial gauge }").verdicts()).isEmpty();
    }

    @Test
    void what_was_only_read_and_found_good_has_no_verdict() {
        assertThat(FLOAT.measured("- { crankshaft end float: good }").verdicts()).isEmpty();
    }

    @Test
    void a_derived_value_of_one_place_is_worked_at_both_ends_and_each_must_hold() {
        Shop gap = Shop.limits("piston to head gap: { least: 0.90 mm, most: 1.40 mm }\n");
        String gasket = "- { head gasket compressed thickness: 1.10 mm, with: micrometer }\n";
        assertThat(gap.measured(gasket + "- { piston height: from -0.12 to -0.08 mm, at: each, with: dial gauge }")
                .on("piston to head gap", "one of 1, 2, 3")).isEqualTo("none");
        assertThat(gap.measured(gasket + "- { piston height: from -0.12 to -0.08 mm, at: 1, with: dial gauge }").on("piston to head gap", "1"))
                .isEqualTo("within, within");
        assertThat(gap.measured(gasket + "- { piston height: from -0.12 to 0.40 mm, at: 1, with: dial gauge }").on("piston to head gap", "1"))
                .isEqualTo("below, within");
        assertThat(gap.measured(gasket + "- { piston height: from -0.12 to 0.40 mm, at: each, with: dial gauge }").on("piston to head gap", "1"))
                .as("of several places nobody knows which piston stands so high").isEqualTo("undecided, within");
    }

    @Test
    void an_open_end_of_a_reading_stays_open_in_what_is_worked_from_it() {
        Shop gap = Shop.limits("piston to head gap: { least: 0.90 mm, most: 1.40 mm }\n");
        Shop.Judged judged = gap.measured("""
                - { head gasket compressed thickness: 1.10 mm, with: micrometer }
                - { piston height: under -0.05 mm, at: 1, with: dial gauge }
                """);
        assertThat(judged.on("piston to head gap", "1")).isEqualTo("within, silent");
    }
}
