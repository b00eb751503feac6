package leadlamp.derive;

import static leadlamp.derive.Bench.doubt;
import static leadlamp.derive.Bench.in;
import static leadlamp.derive.Bench.reading;
import static leadlamp.derive.Bench.readings;
import static leadlamp.derive.Bench.upTo;
import static leadlamp.derive.Bench.value;
import static leadlamp.derive.Bench.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leadlamp.facts.Value;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a line of the record reads, and the doubt that it brings. */
class ReadingsTest {
    private static final String GAUGES = """
            gauges:
              micrometer 25-50: { kind: micrometer, resolution: 0.001 mm, doubt: 0.004 mm }
              micrometer 50-75: { kind: micrometer, resolution: 0.001 mm, doubt: 0.004 mm }
              bore gauge A: { kind: bore gauge, resolution: 0.001 mm, doubt: 0.006 mm, set with: micrometer 25-50 }
            """;
    /** A step of a micrometre: a rectangle of half a step, and the hand's rectangle of one step; in millimetres. */
    private static final double OWN = Math.hypot(0.0005, 0.001) / Math.sqrt(3);

    private static Value only(String measurement) {
        List<Value> values = worked("measurements: [" + measurement + "]").readings();
        assertThat(values).hasSize(1);
        return values.get(0);
    }

    private static double doubtOf(String measurement) {
        return doubt(only(measurement));
    }

    @Test
    void a_gauge_with_a_certificate_brings_its_calibration_and_each_reading_its_step_and_its_hand() {
        Value value = reading(worked(GAUGES + "measurements: [{ main journal diameter: 47.985 mm, at: main 1, with: micrometer 25-50 }]"),
                "main journal diameter");
        assertThat(value.usual()).isFalse();
        assertThat(value.gauge()).isEqualTo("micrometer 25-50");
        assertThat(value.low().orElseThrow().doubt()).containsOnlyKeys("calibration of micrometer 25-50",
                "reading of main journal diameter at main 1");
        assertThat(doubt(value)).isCloseTo(2 * Math.hypot(0.002, OWN), within(1e-9));
    }

    @Test
    void a_bore_gauge_and_the_micrometer_that_it_was_set_with_share_the_micrometers_error() {
        String clearance = """
                measurements:
                  - { main bearing bore with shells: 48.022 mm, at: main 1, with: bore gauge A }
                  - { main journal diameter: 47.985 mm, at: main 1, with: %s }
                """;
        Value shared = value(worked(GAUGES + clearance.formatted("micrometer 25-50")), "main bearing clearance", "main 1");
        assertThat(in(shared)).isCloseTo(0.037, within(1e-9));
        assertThat(doubt(shared)).as("what both share is in neither").isCloseTo(2 * Math.sqrt(0.003 * 0.003 + 2 * OWN * OWN), within(1e-6));
        Value strangers = value(worked(GAUGES + clearance.formatted("micrometer 50-75")), "main bearing clearance", "main 1");
        assertThat(doubt(strangers)).as("two micrometers and a bore gauge")
                .isCloseTo(2 * Math.sqrt(0.003 * 0.003 + 2 * 0.002 * 0.002 + 2 * OWN * OWN), within(1e-6));
    }

    @Test
    void a_gauge_is_one_source_in_a_difference_of_its_own_readings() {
        Value taper = value(worked(GAUGES + """
                measurements:
                  - { main journal diameter: [47.985, 47.981], unit: mm, at: [main 1 front at 0, main 1 rear at 0], with: micrometer 25-50 }
                """), "main journal taper", "main 1");
        assertThat(in(taper)).isCloseTo(0.004, within(1e-9));
        assertThat(doubt(taper)).isCloseTo(2 * Math.sqrt(2) * OWN, within(1e-6));
    }

    @Test
    void a_gauge_named_by_its_kind_is_one_gauge_within_a_quantity_and_another_in_another() {
        Derivation.Worked worked = worked("""
                measurements:
                  - { main bearing bore with shells: 48.022 mm, at: main 1, with: bore gauge }
                  - { main journal diameter: [47.985, 47.981], unit: mm, at: [main 1 front at 0, main 1 rear at 0], with: micrometer }
                """);
        Value reading = readings(worked, "main journal diameter").get(0);
        assertThat(reading.usual()).isTrue();
        assertThat(doubt(reading)).as("usual doubt of a micrometer").isCloseTo(0.006, within(1e-9));
        assertThat(doubt(value(worked, "main journal taper", "main 1"))).as("half of the variance is the gauge's own, and cancels")
                .isCloseTo(0.006, within(1e-6));
        assertThat(doubt(value(worked, "main bearing clearance", "main 1"))).isCloseTo(Math.hypot(0.008, 0.006), within(1e-6));
    }

    @Test
    void without_a_gauge_the_usual_one_of_the_quantity_is_taken() {
        Value value = only("{ piston skirt diameter: 79.961 mm, at: 1 }");
        assertThat(value.gauge()).isEqualTo("micrometer");
        assertThat(value.usual()).isTrue();
        assertThat(doubt(value)).isCloseTo(0.006, within(1e-9));
    }

    @Test
    void a_size_in_the_entry_of_a_part_that_has_run_has_the_usual_doubt_and_is_rounded_as_it_was_written() {
        Value rough = reading(worked("parts: [{ cam gear pin: kept, at: intake, diameter: 5.0 mm }]"), "cam gear pin diameter");
        assertThat(rough.gauge()).isEqualTo("micrometer");
        assertThat(rough.usual()).isTrue();
        assertThat(doubt(rough)).isCloseTo(2 * Math.hypot(0.003, 0.05 / Math.sqrt(3)), within(1e-9));
        Value fine = reading(worked("parts: [{ cam gear pin: kept, at: intake, diameter: 4.980 mm }]"), "cam gear pin diameter");
        assertThat(doubt(fine)).as("finer than its gauge it is not").isCloseTo(2 * Math.hypot(0.003, 0.0005 / Math.sqrt(3)), within(1e-9));
        Value named = reading(worked("parts: [{ cam gear pin: kept, at: intake, diameter: 4.98 mm, with: vernier }]"), "cam gear pin diameter");
        assertThat(doubt(named)).isCloseTo(0.05, within(1e-9));
    }

    @Test
    void a_size_of_a_new_part_is_what_its_box_says() {
        Value boxed = reading(worked("parts: [{ cam gear pin: new, at: intake, diameter: 5.00 mm }]"), "cam gear pin diameter");
        assertThat(boxed.gauge()).isEqualTo("label");
        assertThat(doubt(boxed)).isCloseTo(2 * 0.005 / Math.sqrt(3), within(1e-9));
    }

    @Test
    void a_reading_under_measurements_goes_before_the_figure_of_the_part() {
        for (String state : List.of("new", "kept")) {
            Value read = reading(worked("parts: [{ cam gear pin: " + state + ", at: intake, diameter: 5.00 mm }]\nmeasurements: [{ cam gear pin "
                    + "diameter: 4.96 mm, at: intake, with: micrometer }]"), "cam gear pin diameter");
            assertThat(in(read)).as(state).isCloseTo(4.96, within(1e-9));
        }
    }

    @Test
    void a_readings_own_doubt_goes_before_any_gauges() {
        Value value = reading(worked(GAUGES + "measurements: [{ main journal diameter: 47.985 mm, at: main 1, with: micrometer 25-50, "
                + "doubt: 0.02 mm }]"), "main journal diameter");
        assertThat(doubt(value)).isCloseTo(0.02, within(1e-9));
        assertThat(value.low().orElseThrow().doubt()).containsOnlyKeys("reading of main journal diameter at main 1");
        assertThat(value.usual()).isFalse();
    }

    @Test
    void doubts_may_be_a_share_of_the_reading_points_or_half_of_the_last_figure() {
        assertThat(doubtOf("{ valve spring seat load: 200 N, at: 1 intake front, with: spring tester }")).as("5 % of it").isCloseTo(10, within(1e-9));
        assertThat(doubtOf("{ engine leak-down: 7 %, at: 1, with: leak-down tester }")).as("3 points of per cent").isCloseTo(3, within(1e-9));
        assertThat(doubtOf("{ head gasket compressed thickness: 1.10 mm, with: label }")).as("a rectangle of 0.005 mm to either side")
                .isCloseTo(2 * 0.005 / Math.sqrt(3), within(1e-9));
    }

    @Test
    void what_was_counted_has_no_doubt() {
        Value teeth = only("{ timing belt teeth: 124, at: timing belt }");
        assertThat(in(teeth)).isEqualTo(124);
        assertThat(doubt(teeth)).isZero();
    }

    @Test
    void a_torque_through_a_multiplier_is_the_setting_times_its_ratio() {
        Value torque = reading(worked("""
                gauges:
                  wrench A: { kind: click wrench, range: from 5 to 25 N·m }
                  multiplier: { kind: torque multiplier, ratio: 5, doubt: 5 % }
                fasteners: [{ main cap to block: 55 N·m, with: [wrench A, multiplier], setting: 11 N·m }]
                """), "joint torque");
        assertThat(in(torque)).isCloseTo(55, within(1e-9));
        assertThat(doubt(torque)).as("4 % of the wrench and 5 % of the multiplier").isCloseTo(55 * Math.hypot(0.04, 0.05), within(1e-6));
    }

    /** From memory: ISO 6789-1:2017. The edge itself is a small torque. */
    @ParameterizedTest(name = "{0} at {1} N·m has {2} %")
    @CsvSource({ "click wrench, 2, 6", "click wrench, 8, 6", "click wrench, 9.999, 6", "click wrench, 10, 6", "click wrench, 10.001, 4",
            "click wrench, 27, 4", "dial wrench, 10, 6", "dial wrench, 10.1, 4", "beam wrench, 9, 6", "beam wrench, 90, 6",
            "torque driver, 3, 6", "torque driver, 12, 6" })
    void a_torque_tool_has_the_deviation_that_its_class_permits(String tool, double torque, double share) {
        String line = "{ sump to block: " + torque + " N·m, with: %s }";
        Value named = reading(worked("fasteners: [" + line.formatted(tool) + "]"), "joint torque");
        assertThat(doubt(named)).as("by its kind alone").isCloseTo(torque * share / 100, within(1e-9));
        Value own = reading(worked("gauges: { wrench A: { kind: " + tool + " } }\nfasteners: [" + line.formatted("wrench A") + "]"),
                "joint torque");
        assertThat(own.usual()).isTrue();
        assertThat(doubt(own)).as("of a wrench of the record").isCloseTo(torque * share / 100, within(1e-9));
    }

    @Test
    void ten_newton_metres_are_ten_in_whatever_unit_they_are_written() {
        assertThat(doubt(reading(worked("fasteners: [{ sump to block: 88.5 lbf.in, with: click wrench }]"), "joint torque")))
                .as("9.9992 N·m").isCloseTo(88.5 * 0.06, within(1e-9));
        assertThat(doubt(reading(worked("fasteners: [{ sump to block: 88.6 lbf.in, with: click wrench }]"), "joint torque")))
                .as("10.0105 N·m").isCloseTo(88.6 * 0.04, within(1e-9));
    }

    @Test
    void a_wrench_that_has_a_doubt_of_its_own_keeps_it_at_every_torque() {
        Value small = reading(worked("gauges: { wrench A: { kind: click wrench, doubt: 3 % } }\n"
                + "fasteners: [{ sump to block: 8 N·m, with: wrench A }]"), "joint torque");
        assertThat(small.usual()).isFalse();
        assertThat(doubt(small)).isCloseTo(8 * 0.03, within(1e-9));
    }

    @Test
    void a_wrench_before_a_multiplier_has_the_doubt_of_what_it_was_set_to() {
        Value torque = reading(worked("""
                gauges:
                  wrench A: { kind: click wrench, range: from 5 to 25 N·m }
                  multiplier: { kind: torque multiplier, ratio: 6, doubt: 5 % }
                fasteners: [{ main cap to block: 54 N·m, with: [wrench A, multiplier], setting: 9 N·m }]
                """), "joint torque");
        assertThat(in(torque)).isCloseTo(54, within(1e-9));
        assertThat(doubt(torque)).as("6 % of the wrench at 9 N·m and 5 % of the multiplier").isCloseTo(54 * Math.hypot(0.06, 0.05), within(1e-6));
    }

    @Test
    void a_multiplier_without_a_sound_ratio_multiplies_nothing() {
        for (String ratio : List.of("0", "-4")) {
            Value torque = reading(worked("""
                    gauges:
                      wrench A: { kind: click wrench }
                      multiplier: { kind: torque multiplier, ratio: %s, doubt: 5 %% }
                    fasteners: [{ main cap to block: 54 N·m, with: [wrench A, multiplier], setting: 9 N·m }]
                    """.formatted(ratio)), "joint torque");
            assertThat(in(torque)).as("ratio " + ratio).isCloseTo(54, within(1e-9));
        }
    }

    @Test
    void a_makers_figure_gives_way_to_a_reading() {
        Derivation.Worked worked = worked("""
                parts: [{ head gasket: new, compressed thickness: 1.10 mm }]
                measurements: [{ head gasket compressed thickness: 1.13 mm, with: micrometer }]
                """);
        assertThat(in(reading(worked, "head gasket compressed thickness"))).isCloseTo(1.13, within(1e-9));
    }

    @Test
    void a_makers_figure_stands_where_the_reading_was_only_told() {
        Derivation.Worked worked = worked("""
                parts: [{ head gasket: new, compressed thickness: 1.10 mm }]
                measurements: [{ head gasket compressed thickness: 1.13 mm, told by: owner }]
                """);
        assertThat(readings(worked, "head gasket compressed thickness")).extracting(Bench::in).contains(1.10);
    }

    @Test
    void a_range_of_one_place_is_one_value_with_two_ends() {
        Value value = only("{ crankshaft end float: from 0.08 to 0.09 mm, with: dial gauge }");
        assertThat(in(value)).isCloseTo(0.08, within(1e-9));
        assertThat(upTo(value)).isCloseTo(0.09, within(1e-9));
        assertThat(value.asides()).doesNotContainKey(Readings.SAID);
    }

    @Test
    void a_bound_leaves_the_other_end_open() {
        Value under = only("{ crankshaft end float: under 0.05 mm, with: dial gauge }");
        assertThat(under.low()).isEmpty();
        assertThat(upTo(under)).isCloseTo(0.05, within(1e-9));
        Value over = only("{ crankshaft end float: over 0.05 mm, with: dial gauge }");
        assertThat(over.high()).isEmpty();
        assertThat(in(over)).isCloseTo(0.05, within(1e-9));
    }

    @Test
    void a_range_of_several_places_is_a_range_at_each_and_its_ends_stand_at_one_of_them() {
        List<Value> values = readings(worked("measurements: [{ engine compression: from 12.5 to 13.2 bar, at: each, with: compression tester }]"),
                "engine compression");
        assertThat(values).extracting(Value::at).containsExactly("1", "2", "3", "one of each", "one of each");
        assertThat(values.get(0).asides()).containsEntry(Readings.SAID, Readings.RANGE_OF_SEVERAL);
        assertThat(in(values.get(0))).isCloseTo(12.5, within(1e-9));
        assertThat(upTo(values.get(0))).isCloseTo(13.2, within(1e-9));
        assertThat(values.get(3).plain()).isTrue();
        assertThat(in(values.get(3))).isCloseTo(12.5, within(1e-9));
        assertThat(in(values.get(4))).isCloseTo(13.2, within(1e-9));
    }

    @Test
    void the_least_of_several_places_is_a_bound_at_each_and_a_plain_value_at_one_of_them() {
        List<Value> values = readings(worked("measurements: [{ valve margin: least 1.1 mm, at: [1 intake, 1 exhaust], with: vernier }]"),
                "valve margin");
        assertThat(values).filteredOn(v -> !v.at().startsWith("one of")).hasSize(2).allSatisfy(v -> {
            assertThat(in(v)).isCloseTo(1.1, within(1e-9));
            assertThat(v.high()).isEmpty();
        });
        assertThat(values).filteredOn(v -> v.at().startsWith("one of")).singleElement().satisfies(v -> {
            assertThat(v.plain()).isTrue();
            assertThat(in(v)).isCloseTo(1.1, within(1e-9));
        });
    }

    @Test
    void the_greatest_of_several_places_is_a_bound_from_above() {
        List<Value> values = readings(worked("measurements: [{ engine compression: most 12.9 bar, at: each, with: compression tester }]"),
                "engine compression");
        assertThat(values.get(0).low()).isEmpty();
        assertThat(upTo(values.get(0))).isCloseTo(12.9, within(1e-9));
        assertThat(values.get(3).at()).isEqualTo("one of each");
    }

    @Test
    void a_mean_of_several_places_proves_no_place() {
        List<Value> values = readings(worked("measurements: [{ cylinder bore: mean 80.001 mm, at: each, with: bore gauge }]"), "cylinder bore");
        assertThat(values).singleElement().satisfies(v -> {
            assertThat(v.at()).isEqualTo("one of each");
            assertThat(v.asides()).containsEntry(Readings.SAID, Readings.MEAN);
        });
    }

    @Test
    void alike_within_bounds_the_spread_and_no_size() {
        Derivation.Worked worked = worked("measurements: [{ combustion chamber volume: alike within 0.4 cm3, at: each, with: burette }]");
        assertThat(readings(worked, "combustion chamber volume")).isEmpty();
        Value spread = value(worked, "combustion chamber volume spread", "engine");
        assertThat(spread.low()).isEmpty();
        assertThat(upTo(spread)).isCloseTo(0.4, within(1e-9));
    }

    @Test
    void what_was_found_has_a_name_of_its_own_and_works_nothing_out() {
        Derivation.Worked worked = worked("""
                measurements:
                  - { cylinder bore: 80.30 mm, at: 1, with: bore gauge, as: found }
                  - { piston skirt diameter: 79.96 mm, at: 1 }
                """);
        assertThat(reading(worked, "cylinder bore as found").at()).isEqualTo("1");
        assertThat(Bench.values(worked, "piston clearance")).isEmpty();
        assertThat(Bench.lacks(worked, "piston clearance", "1")).containsExactly("cylinder bore");
    }

    @Test
    void what_was_told_says_who_told_it() {
        assertThat(only("{ crankshaft end float: 0.10 mm, told by: invoice }").told()).isEqualTo("invoice");
    }

    @Test
    void a_reading_keeps_what_it_was_taken_at() {
        assertThat(only("{ engine oil pressure: 3.6 bar, at: main gallery, speed: 3000 rpm, oil temperature: 90 °C }").asides())
                .containsEntry("speed", "3000 rpm").containsEntry("oil temperature", "90 °C");
    }
}
