package leadlamp.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leadlamp.facts.Verdict;
import leadlamp.facts.Verdict.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Of several readings of one cylinder the worst stands for it, side by side. */
class WorstOfSeveralTest {
    private static final Shop BORE = Shop.limits("cylinder bore: { least: 79.99 mm, most: 80.05 mm }");

    private static Verdict at(String sizes, String places) {
        return BORE.measured("- { cylinder bore: [" + sizes + "], unit: mm, at: [" + places + "], doubt: 0.002 mm }").at("cylinder bore", "1");
    }

    @ParameterizedTest
    @ValueSource(strings = { "80.020, 80.040, 80.090", "80.090, 80.020, 80.040", "80.040, 80.090, 80.020" })
    void the_widest_is_the_value_wherever_it_stands_in_the_row(String sizes) {
        Verdict verdict = at(sizes, "1 top thrust, 1 mid thrust, 1 bottom thrust");
        assertThat(verdict.value().low().orElseThrow().value()).isCloseTo(0.08009, within(1e-12));
        assertThat(verdict.most().orElseThrow().standing()).isEqualTo(Standing.OUTSIDE);
        assertThat(verdict.least().orElseThrow().standing()).isEqualTo(Standing.WITHIN);
    }

    @Test
    void each_side_has_the_worst_of_its_own() {
        Verdict verdict = at("79.980, 80.020, 80.090", "1 top thrust, 1 mid thrust, 1 bottom thrust");
        assertThat(verdict.least().orElseThrow().standing()).isEqualTo(Standing.OUTSIDE);
        assertThat(verdict.most().orElseThrow().standing()).isEqualTo(Standing.OUTSIDE);
    }

    @Test
    void an_open_side_is_worse_than_one_within_and_better_than_one_outside() {
        assertThat(at("80.020, 80.0495", "1 top thrust, 1 mid thrust").most().orElseThrow().standing()).isEqualTo(Standing.UNDECIDED);
        assertThat(at("80.0495, 80.060", "1 top thrust, 1 mid thrust").most().orElseThrow().standing()).isEqualTo(Standing.OUTSIDE);
        assertThat(at("80.0495, 80.0505", "1 top thrust, 1 mid thrust").most().orElseThrow().outside()).as("of two open ones the likelier to be outside")
                .isCloseTo(0.6915, within(1e-3));
    }

    @ParameterizedTest
    @ValueSource(strings = { "80.090, 80.120", "80.070, 80.300" })
    void of_two_outside_the_farther_stands_for_both_whatever_its_name(String sizes) {
        assertThat(at(sizes, "1 bottom thrust, 1 top thrust").value().at()).isEqualTo("1 top thrust");
    }

    @Test
    void one_far_outside_by_a_coarse_gauge_goes_before_one_just_outside_by_a_fine_one() {
        Verdict verdict = BORE.measured("""
                - { cylinder bore: 80.10 mm, at: 1 top thrust, doubt: 0.04 mm }
                - { cylinder bore: 80.06 mm, at: 1 bottom thrust, doubt: 0.001 mm }
                """).at("cylinder bore", "1");
        assertThat(verdict.value().at()).isEqualTo("1 top thrust");
    }

    @Test
    void how_far_outside_counts_from_the_side_that_is_broken() {
        assertThat(at("79.900, 80.060", "1 top thrust, 1 bottom thrust").value().at()).isEqualTo("1 top thrust");
        assertThat(at("79.985, 80.090", "1 bottom thrust, 1 top thrust").value().at()).isEqualTo("1 top thrust");
    }

    @ParameterizedTest
    @ValueSource(strings = { "1 top thrust, 1 bottom thrust", "1 bottom thrust, 1 top thrust" })
    void of_two_alike_the_first_place_by_name_stands_for_both(String places) {
        assertThat(at("80.090, 80.090", places).value().at()).isEqualTo("1 bottom thrust");
    }

    @Test
    void the_odds_far_from_a_limit_are_none_or_all_and_near_it_those_of_the_normal_curve() {
        assertThat(at("80.020", "1 top thrust").most().orElseThrow().outside()).isZero();
        assertThat(at("80.090", "1 top thrust").most().orElseThrow().outside()).isEqualTo(1);
        assertThat(at("80.049", "1 top thrust").most().orElseThrow().outside()).as("one standard uncertainty inside").isCloseTo(0.158655, within(1e-5));
        assertThat(at("79.989", "1 top thrust").least().orElseThrow().outside()).as("one outside").isCloseTo(0.841345, within(1e-5));
        assertThat(at("80.049", "1 top thrust").most().orElseThrow().expanded()).isCloseTo(2e-6, within(1e-12));
    }
}
