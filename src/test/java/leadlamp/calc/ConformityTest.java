package leadlamp.calc;

import static leadlamp.calc.Conformity.Zone.ABOVE;
import static leadlamp.calc.Conformity.Zone.BELOW;
import static leadlamp.calc.Conformity.Zone.UNDECIDED;
import static leadlamp.calc.Conformity.Zone.WITHIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Verdicts under doubt, and doubt itself. */
class ConformityTest {
    private static final double NONE_BELOW = Double.NEGATIVE_INFINITY;
    private static final double NONE_ABOVE = Double.POSITIVE_INFINITY;

    @Test
    void the_four_zones_of_a_limit_with_two_sides() {
        assertThat(Conformity.zone(5, 1, 0, 10)).isEqualTo(WITHIN);
        assertThat(Conformity.zone(9.5, 1, 0, 10)).isEqualTo(UNDECIDED);
        assertThat(Conformity.zone(10.5, 1, 0, 10)).isEqualTo(UNDECIDED);
        assertThat(Conformity.zone(11.5, 1, 0, 10)).isEqualTo(ABOVE);
        assertThat(Conformity.zone(0.5, 1, 0, 10)).isEqualTo(UNDECIDED);
        assertThat(Conformity.zone(-1.5, 1, 0, 10)).isEqualTo(BELOW);
        assertThat(Conformity.zone(5, 6, 0, 10)).isEqualTo(UNDECIDED);
    }

    @Test
    void the_edge_of_a_zone_counts_to_the_inside_though_doubles_are_not_exact() {
        assertThat(Conformity.zone(0.1 + 0.2, 0, NONE_BELOW, 0.3)).isEqualTo(WITHIN);
        assertThat(Conformity.zone(0.3 - 0.1, 0, 0.2, NONE_ABOVE)).isEqualTo(WITHIN);
        assertThat(Conformity.zone(10, 0, 10, 10)).isEqualTo(WITHIN);
        assertThat(Conformity.zone(0.09, 0.01, NONE_BELOW, 0.1)).isEqualTo(WITHIN);
        assertThat(Conformity.zone(0.11, 0.01, NONE_BELOW, 0.1)).isEqualTo(UNDECIDED);
        assertThat(Conformity.zone(10.000001, 0, NONE_BELOW, 10)).isEqualTo(ABOVE);
        assertThat(Conformity.zone(9.999999, 0, 10, NONE_ABOVE)).isEqualTo(BELOW);
    }

    @Test
    void without_doubt_the_probability_is_all_or_nothing() {
        assertThat(Conformity.probability(5, 0, 0, 10)).isEqualTo(1);
        assertThat(Conformity.probability(10, 0, 0, 10)).isEqualTo(1);
        assertThat(Conformity.probability(0, 0, 0, 10)).isEqualTo(1);
        assertThat(Conformity.probability(11, 0, 0, 10)).isZero();
        assertThat(Conformity.probability(-1, 0, 0, 10)).isZero();
        assertThat(Conformity.zone(5, 0, NONE_BELOW, NONE_ABOVE)).isEqualTo(WITHIN);
    }

    @Property(seed = "20260314")
    void what_lies_within_above_and_below_is_everything(
            @ForAll @Scale(6) @DoubleRange(min = -20, max = 20) double value,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 5) double doubt) {
        double within = Conformity.probability(value, doubt, -3, 4);
        double below = Conformity.probability(value, doubt, NONE_BELOW, -3);
        double above = Conformity.probability(value, doubt, 4, NONE_ABOVE);
        assertThat(within + below + above).isCloseTo(1, within(1e-13));
        assertThat(within).isBetween(0.0, 1.0);
    }

    @Property(seed = "20260314")
    void a_value_moved_towards_its_limit_is_never_likelier_to_hold(
            @ForAll @Scale(6) @DoubleRange(min = -5, max = 5) double value,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 5) double nearer,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 5) double doubt) {
        assertThat(Conformity.probability(value + nearer, doubt, NONE_BELOW, 6))
                .isLessThanOrEqualTo(Conformity.probability(value, doubt, NONE_BELOW, 6));
    }

    @Property(seed = "20260314")
    void a_value_and_its_mirror_hold_alike(@ForAll @Scale(6) @DoubleRange(min = -9, max = 9) double value,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 5) double doubt) {
        assertThat(Conformity.probability(value, doubt, -2, 7))
                .isCloseTo(Conformity.probability(-value, doubt, -7, 2), within(1e-14));
    }

    @Property(seed = "20260314")
    void a_value_within_by_its_guard_band_holds_with_that_probability_at_least(
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 0.999) double level,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 2) double u) {
        double band = Conformity.guardBand(u, level);
        assertThat(Conformity.probability(10 - band, u, NONE_BELOW, 10)).isCloseTo(level, within(1e-12));
        assertThat(Conformity.zone(10 - band, band, NONE_BELOW, 10)).isEqualTo(WITHIN);
    }

    @Test
    void the_small_side_of_a_far_value_keeps_its_figures() {
        double far = Conformity.probability(20, 1, NONE_BELOW, 5);
        assertThat(far).isPositive().isCloseTo(3.67e-51, within(0.01e-51));
        assertThat(Conformity.probability(-20, 1, -5, NONE_ABOVE)).isCloseTo(far, within(1e-60));
    }

    @Test
    void four_times_the_spread_wants_sixteen_times_the_readings() {
        assertThat(Conformity.readingsToSettle(1, 1, 2)).isEqualTo(4);
        assertThat(Conformity.readingsToSettle(1, 4, 2)).isEqualTo(64);
        assertThat(Conformity.readingsToSettle(10, 1, 2)).isEqualTo(1);
        assertThat(Conformity.readingsToSettle(1, 0, 2)).isEqualTo(1);
        assertThat(Conformity.readingsToSettle(0.9, 1, 2)).isEqualTo(5);
        assertThat(Conformity.readingsToSettle(1e-9, 1, 2)).isEqualTo(1000000);
    }

    @Test
    void a_gauge_is_fine_enough_when_half_the_tolerance_holds_its_doubt_four_times() {
        assertThat(Conformity.gaugeRatio(0.02, 0.06, 0.005)).isCloseTo(4, within(1e-12));
        assertThat(Conformity.gaugeRatio(0, 10, 1)).isEqualTo(5);
    }

    @Test
    void the_doubt_of_the_guide_has_its_shapes() {
        assertThat(Doubt.rectangular(3)).isCloseTo(Math.sqrt(3), within(1e-12));
        assertThat(Doubt.triangular(6)).isCloseTo(Math.sqrt(6), within(1e-12));
        assertThat(Doubt.arcsine(2)).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(Doubt.ofStep(0.01)).isCloseTo(0.00288675, within(1e-8));
        assertThat(Doubt.unequal(1, 3)).isCloseTo(Doubt.rectangular(1), within(1e-15));
        assertThat(Doubt.ofExpanded(0.006, 2)).isEqualTo(0.003);
        assertThat(Doubt.ofLevel(1.959964, 0.95)).isCloseTo(1, within(1e-6));
        assertThat(Doubt.ofMean(1, 2, 3, 4)).isCloseTo(Math.sqrt(5.0 / 3) / 2, within(1e-12));
        assertThat(Doubt.combined(3, 4)).isEqualTo(5);
    }

    @Test
    void parts_that_hang_together_add_up_or_cancel() {
        double[][] same = { { 1, 1 }, { 1, 1 } };
        assertThat(Doubt.correlated(new double[] { 3, 4 }, same)).isEqualTo(7);
        assertThat(Doubt.correlated(new double[] { 3, -3 }, same)).isZero();
        double[][] none = { { 1, 0 }, { 0, 1 } };
        assertThat(Doubt.correlated(new double[] { 3, 4 }, none)).isEqualTo(5);
        assertThat(Doubt.correlation(new double[] { 1, 0 }, new double[] { 1, 0 }, none)).isEqualTo(1);
        assertThat(Doubt.correlation(new double[] { 1, 0 }, new double[] { 0, 1 }, none)).isZero();
    }

    @Test
    void degrees_of_freedom_are_those_of_the_one_part_that_weighs() {
        assertThat(Doubt.freedom(new double[] { 1, 0 }, new double[] { 7, 3 })).isEqualTo(7);
        assertThat(Doubt.freedom(new double[] { 1, 1 }, new double[] { 5, 5 })).isEqualTo(10);
        assertThat(Doubt.freedom(new double[] { 1 }, new double[] { Double.POSITIVE_INFINITY })).isInfinite();
    }

    @Test
    void the_part_of_an_input_is_its_slope_times_its_doubt() {
        double[] at = { 3, 5 };
        assertThat(Doubt.part(x -> x[0] * x[1], at, 0, 0.1)).isCloseTo(0.5, within(1e-12));
        assertThat(Doubt.part(x -> x[0] * x[1], at, 1, 0.1)).isCloseTo(0.3, within(1e-12));
        assertThat(Doubt.part(x -> x[0] - x[1], at, 1, 0.1)).isCloseTo(-0.1, within(1e-12));
        assertThat(at).containsExactly(3, 5);
    }

    @Test
    void a_line_through_points_that_lie_on_one_has_no_doubt() {
        Line line = Line.through(new double[] { 0, 1, 2, 4 }, new double[] { 1, 3, 5, 9 });
        assertThat(line.slope()).isCloseTo(2, within(1e-12));
        assertThat(line.intercept()).isCloseTo(1, within(1e-12));
        assertThat(line.slopeDoubt()).isCloseTo(0, within(1e-12));
        assertThat(line.sumOfSquares()).isCloseTo(0, within(1e-20));
        assertThat(line.at(10)).isCloseTo(21, within(1e-12));
        assertThat(line.doubtAt(10)).isCloseTo(0, within(1e-9));
        assertThat(Line.through(new double[] { -1, 0, 1 }, new double[] { 1, 2, 4 }).correlation())
                .isCloseTo(0, within(1e-12));
    }

    @Test
    void readings_that_all_agree_are_likelier_with_a_coarse_gauge_and_few_of_them() {
        assertThat(Chance.allAgree(2, 1, 100)).isCloseTo(1, within(1e-9));
        assertThat(Chance.allAgree(4, 1, 1)).isLessThan(Chance.allAgree(3, 1, 1));
        assertThat(Chance.allAgree(3, 1, 2)).isGreaterThan(Chance.allAgree(3, 1, 1));
        // Two readings that scatter over many steps agree by step over 2√π of the scatter.
        assertThat(Chance.allAgree(2, 1, 0.01)).isCloseTo(0.01 / (2 * Math.sqrt(Math.PI)), within(1e-5));
    }

    @Test
    void the_chances_of_plain_cases_are_plain() {
        assertThat(Chance.atLeast(0, 5, 0.2)).isEqualTo(1);
        assertThat(Chance.atLeast(3, 5, 1)).isEqualTo(1);
        assertThat(Chance.atLeast(1, 5, 0)).isZero();
        assertThat(Chance.atLeast(2, 2, 0.2)).isCloseTo(0.04, within(1e-12));
        assertThat(Chance.isNominal(0.04, 0.01)).isEqualTo(0.25);
        assertThat(Chance.isNominal(0.01, 0.04)).isEqualTo(1);
        assertThat(Chance.restSound(0, 0, 1)).isEqualTo(0.5);
        assertThat(Chance.restSound(4, 4, 1)).isCloseTo(5.0 / 6, within(1e-12));
        assertThat(Chance.restSound(2, 4, 2)).isCloseTo(3.0 / 6 * 4 / 7, within(1e-12));
        assertThat(Chance.restSound(2, 4, 0)).isEqualTo(1);
    }
}
