package leadlamp.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a reading that is off by a unit or by a slip of the pen may have meant. */
class SlipsTest {
    private static Unit unit(String word) {
        return Units.named(word).orElseThrow();
    }

    @Test
    void a_torque_in_pounds_and_feet_written_as_newton_metres_is_found() {
        // 20 lbf.ft is 27.1 N·m: the sheet asks 27, the record says 20 N·m.
        assertThat(Slips.unitMeant(20, unit("N·m"), 27, 0.03)).map(Unit::word).contains("lbf.ft");
    }

    @Test
    void thou_written_as_millimetres_and_hundredths_of_a_metre_are_found() {
        assertThat(Slips.unitMeant(0.002, unit("mm"), 50e-6, 0.03)).map(Unit::word).contains("thou");
        assertThat(Slips.unitMeant(0.008, unit("mm"), 0.080, 0.01)).map(Unit::word).contains("cm");
    }

    @Test
    void a_value_that_suits_its_sheet_or_no_unit_at_all_is_left_alone() {
        assertThat(Slips.unitMeant(27.2, unit("N·m"), 27, 0.03)).isEmpty();
        assertThat(Slips.unitMeant(50, unit("N·m"), 27, 0.03)).isEmpty();
        assertThat(Slips.unitMeant(-20, unit("N·m"), 27, 0.03)).isEmpty();
        assertThat(Slips.unitMeant(0, unit("N·m"), 27, 0.03)).isEmpty();
        assertThat(Slips.unitMeant(363.15, unit("°C"), 305.37, 0.01)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({ "47.893, 47.983, 0.005, 47.983", "4.7983, 47.983, 0.005, 47.983", "479.83, 47.983, 0.005, 47.983",
        "47.938, 47.983, 0.002, 47.983", "47.83, 47.983, 0.005, 47.983", "57.983, 47.983, 0.005, 47.983",
        "47.9983, 47.983, 0.005, 47.983" })
    void one_slip_of_the_pen_leads_back_to_the_set(String written, double median, double within, String meant) {
        assertThat(Slips.figureMeant(written, median, within)).contains(meant);
    }

    @Test
    void two_slips_or_no_figure_near_lead_nowhere() {
        assertThat(Slips.figureMeant("12.345", 47.983, 0.005)).isEqualTo(Optional.empty());
        assertThat(Slips.figureMeant("-0.10", 0.10, 0.001)).contains("0.10");
    }

    @Test
    void a_value_as_far_from_its_sheet_as_may_be_is_left_alone_too() {
        assertThat(Slips.unitMeant(1.5, unit("m"), 1.0, 0.5)).as("at the edge itself").isEmpty();
        assertThat(Slips.unitMeant(1.51, unit("m"), 1.0, 0.5)).as("no unit brings it nearer").isEmpty();
    }

    @Test
    void a_temperature_is_never_taken_for_another_unit() {
        assertThat(Slips.unitMeant(90, unit("K"), 363.15, 0.5)).isEmpty();
    }

    @Test
    void a_negative_value_is_held_against_a_negative_sheet() {
        assertThat(Slips.unitMeant(-0.002, unit("mm"), -50e-6, 0.03)).map(Unit::word).contains("thou");
    }
}
