package leadlamp.derive;

import static leadlamp.derive.Bench.doubt;
import static leadlamp.derive.Bench.in;
import static leadlamp.derive.Bench.said;
import static leadlamp.derive.Bench.upTo;
import static leadlamp.derive.Bench.value;
import static leadlamp.derive.Bench.values;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leadlamp.facts.Value;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The sums of the invented sound build, Tarn 12, from its record to the figure: each was worked by another program from the same
 * readings, and is asked for to the last place that it was written to.
 */
class SoundBuildTest {
    private static final Derivation.Worked TARN = Bench.full("full-sound-tarn-12.yaml");

    @ParameterizedTest
    @CsvSource({"1, 10.45", "2, 10.42", "3, 10.46"})
    void each_cylinder_has_its_ratio_with_a_doubt_of_a_tenth(String cylinder, double ratio) {
        Value value = value(TARN, "compression ratio", cylinder);
        assertThat(in(value)).isCloseTo(ratio, within(0.0051));
        assertThat(doubt(value)).isCloseTo(0.10, within(0.005));
    }

    @Test
    void the_ratios_lie_within_four_hundredths_of_one_another() {
        Value spread = value(TARN, "compression ratio spread", "engine");
        assertThat(in(spread)).isCloseTo(0.04, within(0.0051));
        assertThat(spread.sum()).isEqualTo("highest 10.46 - lowest 10.42 = 0.04");
    }

    @Test
    void the_sum_of_a_ratio_can_be_done_again_on_paper() {
        assertThat(value(TARN, "compression ratio", "1").sum()).startsWith("chamber 32.30 cm3 + gasket 5.74 cm3 + deck 0.50 cm3 "
                + "+ crown 4.00 cm3 = 42.54 cm3; (swept 402.16 cm3 + 42.54 cm3) / 42.54 cm3 = 10.45");
    }

    @ParameterizedTest
    @CsvSource({"1, 1.20", "2, 1.21", "3, 1.19"})
    void the_piston_stays_1_20_below_the_head(String cylinder, double gap) {
        Value value = value(TARN, "piston to head gap", cylinder);
        assertThat(in(value)).isCloseTo(gap, within(1e-9));
        assertThat(doubt(value)).isCloseTo(0.02, within(0.005));
    }

    @Test
    void the_sum_of_a_gap_is_gasket_and_depth() {
        assertThat(value(TARN, "piston to head gap", "1").sum()).isEqualTo("1.10 mm + 0.10 mm = 1.20 mm");
    }

    @ParameterizedTest
    @CsvSource({"main 1, 0.037, 0.039", "main 2, 0.037, 0.039", "main 3, 0.039, 0.040", "main 4, 0.036, 0.038"})
    void a_main_bearing_has_the_clearances_of_its_bore_over_its_four_readings(String main, double least, double most) {
        Value value = value(TARN, "main bearing clearance", main);
        assertThat(in(value)).isCloseTo(least, within(1e-9));
        assertThat(upTo(value)).isCloseTo(most, within(1e-9));
        assertThat(doubt(value)).as("0.007 with the gauges taken as strangers; the shared setting takes a little off").isBetween(0.006, 0.007);
    }

    @Test
    void the_sum_of_a_clearance_is_bore_less_journal_at_both_ends() {
        assertThat(value(TARN, "main bearing clearance", "main 1").sum()).isEqualTo("bore 48.022 mm - journal 47.985 mm = 0.037 mm; "
                + "bore 48.022 mm - journal 47.983 mm = 0.039 mm");
    }

    @Test
    void every_big_end_has_0_038_to_0_040() {
        List<Value> values = values(TARN, "big-end bearing clearance");
        assertThat(values).hasSize(3);
        for (Value value : values) {
            assertThat(in(value)).isCloseTo(0.038, within(1e-9));
            assertThat(upTo(value)).isCloseTo(0.040, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 0.041", "2, 0.039", "3, 0.040"})
    void a_piston_has_the_clearance_of_the_least_bore_in_its_travel(String cylinder, double clearance) {
        Value value = value(TARN, "piston clearance", cylinder);
        assertThat(in(value)).isCloseTo(clearance, within(1e-9));
        assertThat(doubt(value)).isBetween(0.006, 0.007);
    }

    @Test
    void bores_taper_by_four_thousandths_at_most_and_are_out_of_round_by_two() {
        assertThat(values(TARN, "cylinder taper")).allSatisfy(v -> assertThat(upTo(v)).isLessThanOrEqualTo(0.004 + 1e-9));
        assertThat(values(TARN, "cylinder ovality")).allSatisfy(v -> assertThat(upTo(v)).isLessThanOrEqualTo(0.002 + 1e-9));
    }

    @Test
    void a_gudgeon_pin_has_0_012_in_the_piston_and_0_017_in_the_rod() {
        assertThat(values(TARN, "gudgeon pin clearance in piston")).allSatisfy(v -> assertThat(in(v)).isCloseTo(0.012, within(1e-9)));
        assertThat(values(TARN, "gudgeon pin clearance in rod")).allSatisfy(v -> assertThat(in(v)).isCloseTo(0.017, within(1e-9)));
        assertThat(values(TARN, "gudgeon pin end float")).allSatisfy(v -> assertThat(in(v)).isBetween(0.4 - 1e-9, 0.6 + 1e-9));
    }

    @Test
    void valve_stems_have_their_clearances() {
        List<Value> values = values(TARN, "valve stem clearance");
        assertThat(values).filteredOn(v -> v.at().contains("intake")).hasSize(6)
                .allSatisfy(v -> assertThat(in(v)).isBetween(0.038 - 1e-9, 0.042 + 1e-9));
        assertThat(values).filteredOn(v -> v.at().contains("exhaust")).hasSize(6)
                .allSatisfy(v -> assertThat(in(v)).isBetween(0.049 - 1e-9, 0.053 + 1e-9));
    }

    @Test
    void pistons_with_their_pins_weigh_alike_within_four_tenths_of_a_gram() {
        assertThat(in(value(TARN, "piston mass spread", "engine"))).isCloseTo(0.4, within(1e-9));
    }

    @Test
    void two_tenths_of_cut_in_all_ask_for_two_tenths_of_gasket() {
        assertThat(in(value(TARN, "head height lost", "engine"))).isCloseTo(0.10, within(1e-9));
        assertThat(in(value(TARN, "head cut not in record", "engine"))).isCloseTo(0, within(1e-9));
        assertThat(in(value(TARN, "cam drop", "engine"))).isCloseTo(0, within(1e-9));
        assertThat(said(TARN, "head gasket", "engine", "class wanted")).containsExactly("two notches");
        assertThat(said(TARN, "head gasket", "engine", "class against wanted")).containsExactly("same");
    }

    @Test
    void marks_of_housing_and_journal_ask_for_red_shells() {
        for (int main = 1; main <= 4; main++) {
            assertThat(said(TARN, "main shell", "main " + main, "class wanted")).containsExactly("red");
        }
    }

    @Test
    void the_fire_ring_of_the_widest_chamfer_has_three_tenths_of_room() {
        List<Value> rooms = values(TARN, "fire ring room");
        assertThat(rooms).hasSize(3);
        assertThat(rooms.stream().mapToDouble(Bench::in).min().orElseThrow()).isCloseTo(0.30, within(0.005));
    }

    @Test
    void head_bolts_hold_by_more_than_two_diameters_and_keep_room_below() {
        Value first = value(TARN, "engaged length", "head to block 1");
        assertThat(in(first)).as("26 mm stand in the block, the first three of them in the counterbore").isCloseTo(23, within(1e-9));
        assertThat(in(value(TARN, "engagement in diameters", "head to block 1"))).isCloseTo(2.3, within(1e-9));
        assertThat(values(TARN, "hole bottom room")).filteredOn(v -> v.at().startsWith("head to block"))
                .allSatisfy(v -> assertThat(in(v)).isGreaterThanOrEqualTo(7.9 - 1e-9));
    }

    @ParameterizedTest
    @CsvSource({"main cap to block, 36667, 76", "rod cap to rod 1, 25000, 77", "head to block, 26667, 52", "cam cap to head, 8333, 71",
        "oil pump to block, 14375, 68", "balance gear to balance shaft, 15972, 75", "cam gear to camshaft intake, 37500, 74"})
    void a_bolt_is_loaded_by_its_torque_to_a_share_of_its_proof_load(String joint, double newtons, double share) {
        assertThat(in(value(TARN, "clamp force at stated threads", joint))).isCloseTo(newtons, within(1.0));
        assertThat(in(value(TARN, "proof share", joint))).isCloseTo(share, within(0.6));
    }

    @Test
    void rod_bolts_are_read_by_their_stretch() {
        Value stress = value(TARN, "rod bolt stress", "big end 1 1");
        assertThat(in(stress)).isCloseTo(666, within(0.5));
        assertThat(stress.sum()).isEqualTo("205 GPa x 0.13 mm / 40 mm = 666 MPa");
    }

    @Test
    void wrenches_are_used_inside_their_ranges() {
        assertThat(values(TARN, "torque share of range")).isNotEmpty().allSatisfy(v -> {
            assertThat(in(v)).isGreaterThan(20);
            assertThat(upTo(v)).isLessThan(100);
        });
    }

    @Test
    void gears_sit_on_their_shafts() {
        assertThat(values(TARN, "cam gear seat gap")).hasSize(2).allSatisfy(v -> assertThat(in(v)).as("room left").isCloseTo(-1.0, within(1e-9)));
        assertThat(values(TARN, "cam gear rock")).allSatisfy(v -> assertThat(in(v)).isLessThan(2));
    }

    @Test
    void sealing_rings_are_squeezed_by_22_9_and_22_5_per_cent() {
        assertThat(in(value(TARN, "sealing ring squeeze", "pick-up seal"))).isCloseTo(22.9, within(0.05));
        assertThat(in(value(TARN, "sealing ring squeeze", "coolant pipe rear"))).isCloseTo(22.5, within(0.05));
    }

    @Test
    void the_balance_grade_allows_130_gram_millimetres() {
        assertThat(in(value(TARN, "allowed unbalance", "engine"))).isCloseTo(130, within(0.5));
    }

    @Test
    void the_clutch_carries_178_at_the_lower_friction() {
        assertThat(in(value(TARN, "clutch capacity", "engine"))).isCloseTo(178, within(0.51));
    }

    @Test
    void the_mean_piston_speed_is_19_2_metres_a_second() {
        assertThat(in(value(TARN, "mean piston speed", "engine"))).isCloseTo(19.2, within(1e-9));
    }

    @Test
    void nothing_is_refused() {
        assertThat(TARN.problems()).isEmpty();
    }

    @Test
    void every_value_has_a_sum_that_ends_in_its_figure() {
        assertThat(TARN.derived()).allSatisfy(v -> assertThat(v.sum()).as(v.of() + " at " + v.at()).contains(" = "));
    }

    @Test
    void every_value_names_the_lines_it_comes_from() {
        assertThat(TARN.derived()).allSatisfy(v -> assertThat(v.places()).as(v.of() + " at " + v.at()).isNotEmpty());
    }
}
