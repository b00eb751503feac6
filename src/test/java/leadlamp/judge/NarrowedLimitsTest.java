package leadlamp.judge;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines that hold for some sizes, times and places alone, and shares of other sizes. */
class NarrowedLimitsTest {
    private static Shop byBore(String over) {
        return Shop.silent().trade("""
                piston clearance:
                  - { most: 0.10 mm, for: { cylinder bore: %s }, kind: reason to look, basis: "common practice, no source" }
                """.formatted(over));
    }

    private static Shop.Judged bore(String over, String bore) {
        return byBore(over).measured("- { piston clearance: 0.05 mm, at: 1, with: feeler gauge }\n- { cylinder bore: " + bore + " }");
    }

    @ParameterizedTest(name = "{0}, bore {1}: {2}")
    @CsvSource(delimiter = '|', value = {
        "over 75 mm  | 80.00 mm, at: 1                          | within",
        "over 85 mm  | 80.00 mm, at: 1                          | none",
        "over 80 mm  | 80.00 mm, at: 1                          | none",
        "under 85 mm | 80.00 mm, at: 1                          | within",
        "under 75 mm | 80.00 mm, at: 1                          | none",
        "under 80 mm | 80.00 mm, at: 1                          | none",
        "recorded    | 80.00 mm, at: 1                          | within",
        "over 75 mm  | 80.00 mm, at: 2                          | none",
        "over 75 mm  | '80.00 mm, at: 1, told by: owner'        | none",
        "over 75 mm  | 'from 74 to 80 mm, at: 1'                | none",
        "over 75 mm  | 'from 76 to 80 mm, at: 1'                | within",
        "under 85 mm | 'from 76 to 90 mm, at: 1'                | none",
        "over 75 mm  | 'under 80 mm, at: 1'                     | none",
    })
    void a_line_may_hold_from_a_size_on(String wanted, String bore, String verdict) {
        assertThat(bore(wanted, bore).on("piston clearance", "1")).isEqualTo(verdict);
    }

    @Test
    void of_two_sizes_at_one_place_both_must_be_beyond() {
        Shop shop = byBore("over 80 mm");
        String clearance = "- { piston clearance: 0.05 mm, at: 1, with: feeler gauge }\n";
        assertThat(shop.measured(clearance + "- { cylinder bore: [80.01, 80.02], unit: mm, at: [1 top thrust, 1 mid thrust] }").on("piston clearance", "1"))
                .isEqualTo("within");
        assertThat(shop.measured(clearance + "- { cylinder bore: [80.01, 79.98], unit: mm, at: [1 top thrust, 1 mid thrust] }").on("piston clearance", "1"))
                .isEqualTo("none");
    }

    @ParameterizedTest(name = "{0}, boost {1}: {2}")
    @CsvSource({ "over 0.8 bar, 1.0 bar, above", "over 0.8 bar, 0.8 bar, none", "over 0.8 bar, 60 kPa, none", "under 0.8 bar, 0.5 bar, above",
        "under 0.8 bar, 0.8 bar, none", "over 0.8 bar, unknown, none" })
    void a_line_may_go_by_a_size_said_in_words(String wanted, String boost, String verdict) {
        Shop.Judged judged = Shop.silent().trade("""
                piston clearance:
                  - { most: 0.02 mm, for: { use boost: %s }, kind: reason to look, basis: "common practice, no source" }
                """.formatted(wanted)).record("use: { boost: " + boost + " }\nmeasurements: [{ piston clearance: 0.08 mm, at: 1, with: feeler gauge }]");
        assertThat(judged.on("piston clearance", "1")).isEqualTo(verdict);
    }

    @ParameterizedTest(name = "for {0}: {1}")
    @CsvSource(delimiter = '|', value = { "', for: 10 min' | within", "', for: 15 min' | within", "', for: 5 min' | none", "'' | within" })
    void a_fall_over_a_time_is_not_shown_by_a_shorter_one(String taken, String verdict) {
        Shop.Judged judged = Shop.limits("water jacket pressure fall: { most: 0.10 bar, for: 10 min }\n")
                .measured("- { water jacket pressure fall: 0.02 bar, with: pressure gauge" + taken + " }");
        assertThat(judged.on("water jacket pressure fall")).isEqualTo(verdict);
        if (taken.isEmpty()) {
            assertThat(judged.at("water jacket pressure fall", "engine").limit().note()).isEqualTo("it is taken that it was read for 10 min");
        }
    }

    @Test
    void a_share_is_of_the_mean_of_what_was_read_within_the_place() {
        Shop shop = Shop.silent().trade("""
                main bearing clearance:
                  - { most: 0.1 %, times: main journal diameter, kind: reason to look, basis: "common practice, no source" }
                """);
        Shop.Judged judged = shop.measured("""
                - { main bearing clearance: 0.04 mm, at: main 1, with: plastic gauge }
                - { main journal diameter: [47.98, 48.02], unit: mm, at: [main 1 front, main 1 rear], with: micrometer }
                """);
        assertThat(judged.limit("main bearing clearance", "main 1")).isEqualTo("most 0.048 mm, trade, reason to look");
    }

    @Test
    void a_share_of_a_range_is_of_its_middle_and_one_of_an_open_bound_is_no_limit() {
        Shop shop = Shop.silent().trade("""
                main bearing clearance:
                  - { most: 0.1 %, times: main journal diameter, kind: reason to look, basis: "common practice, no source" }
                """);
        String clearance = "- { main bearing clearance: 0.04 mm, at: main 1, with: plastic gauge }\n";
        assertThat(shop.measured(clearance + "- { main journal diameter: from 46 to 50 mm, at: main 1 }").limit("main bearing clearance", "main 1"))
                .isEqualTo("most 0.048 mm, trade, reason to look");
        assertThat(shop.measured(clearance + "- { main journal diameter: over 46 mm, at: main 1 }").on("main bearing clearance", "main 1")).isEqualTo("none");
    }

    @Test
    void a_share_of_what_nobody_read_is_of_the_sheet_s_standard_under_limits_at_its_place() {
        Shop shop = Shop.limits("main journal diameter: [{ at: main 1, standard: 48.00 mm }, { at: main 2, standard: 50.00 mm }]\n").trade("""
                main bearing clearance:
                  - { most: 0.1 %, times: main journal diameter, kind: reason to look, basis: "common practice, no source" }
                """);
        Shop.Judged judged = shop.measured("- { main bearing clearance: [0.04, 0.04, 0.04], unit: mm, at: [main 1, main 2, main 3], with: plastic gauge }");
        assertThat(judged.limit("main bearing clearance", "main 1")).isEqualTo("most 0.048 mm, trade, reason to look");
        assertThat(judged.limit("main bearing clearance", "main 2")).isEqualTo("most 0.05 mm, trade, reason to look");
        assertThat(judged.on("main bearing clearance", "main 3")).isEqualTo("none");
    }

    @Test
    void of_two_lines_that_may_hold_the_worse_probability_of_being_outside_is_told() {
        Shop.Judged judged = Shop.limits("""
                piston clearance:
                  - { when: cold, most: 0.060 mm }
                  - { when: hot, most: 0.062 mm }
                """).measured("- { piston clearance: 0.061 mm, at: 1, doubt: 0.010 mm }");
        double outside = judged.at("piston clearance", "1").most().orElseThrow().outside();
        // A normal curve a fifth of its standard deviation beyond the nearer limit.
        assertThat(outside).isCloseTo(0.5793, org.assertj.core.api.Assertions.within(1e-4));
    }

    @Test
    void where_one_of_two_lines_has_no_such_side_its_side_is_open() {
        Shop.Judged judged = Shop.limits("""
                piston clearance:
                  - { when: cold, least: 0.02 mm, most: 0.06 mm }
                  - { when: hot, most: 0.08 mm }
                """).measured("- { piston clearance: 0.04 mm, at: 1, doubt: 0.002 mm }");
        assertThat(judged.at("piston clearance", "1").least().orElseThrow().standing()).isEqualTo(leadlamp.facts.Verdict.Standing.UNDECIDED);
        assertThat(judged.at("piston clearance", "1").least().orElseThrow().outside()).isEqualTo(0.5);
        assertThat(judged.at("piston clearance", "1").limit().note()).contains("it is open which of several limits applies");
    }

    @Test
    void where_one_line_says_outside_and_the_other_within_nothing_is_proven_and_the_odds_are_the_mean() {
        Shop.Judged judged = Shop.limits("""
                piston clearance:
                  - { when: cold, most: 0.02 mm }
                  - { when: hot, most: 0.08 mm }
                """).measured("- { piston clearance: 0.04 mm, at: 1, doubt: 0.002 mm }");
        assertThat(judged.at("piston clearance", "1").most().orElseThrow().standing()).isEqualTo(leadlamp.facts.Verdict.Standing.UNDECIDED);
        assertThat(judged.at("piston clearance", "1").most().orElseThrow().outside()).isCloseTo(0.5, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(judged.at("piston clearance", "1").most().orElseThrow().expanded()).isCloseTo(2e-6, org.assertj.core.api.Assertions.within(1e-12));
    }

    @ParameterizedTest(name = "{0} mm, doubt {1} mm: {2}")
    @CsvSource({ "0.060, 0.010, 0.5", "0.055, 0.010, 0.158655", "0.065, 0.010, 0.841345", "0.010, 0.010, 0", "0.110, 0.010, 1", "0.060, 0.000, 0",
        "0.061, 0.000, 1" })
    void the_odds_of_being_outside_are_those_of_the_normal_curve(double read, double doubt, double odds) {
        Shop.Judged judged = Shop.limits("piston clearance: { most: 0.060 mm }\n").measured("- { piston clearance: " + read + " mm, at: 1, doubt: " + doubt + " mm }");
        assertThat(judged.at("piston clearance", "1").most().orElseThrow().outside()).isCloseTo(odds, org.assertj.core.api.Assertions.within(1e-5));
        assertThat(judged.at("piston clearance", "1").most().orElseThrow().expanded()).isCloseTo(doubt / 1000, org.assertj.core.api.Assertions.within(1e-12));
    }

    @Test
    void in_a_vee_a_limit_of_a_bank_holds_for_its_cylinders() {
        String vee = """
                sheet: Vee, invented
                layout: { arrangement: vee, cylinders: 4, banks: { left: [1, 2], right: [3, 4] }, main bearings: 3, valve gear: overhead cam }
                limits: { piston clearance: [{ at: left, most: 0.05 mm }, { at: right, most: 0.07 mm }] }
                """;
        Shop.Judged judged = Shop.whole(vee).measured("- { piston clearance: 0.04 mm, at: 1, with: feeler gauge }\n"
                + "- { piston clearance: 0.04 mm, at: 4, with: feeler gauge }");
        assertThat(judged.limit("piston clearance", "1")).isEqualTo("most 0.05 mm, sheet");
        assertThat(judged.limit("piston clearance", "4")).isEqualTo("most 0.07 mm, sheet");
    }

    @Test
    void where_the_sheet_does_not_say_how_many_there_are_the_worst_stands_at_what_they_stand_on() {
        String thin = """
                sheet: Thin, invented
                layout: { arrangement: in-line }
                limits: { cylinder bore: { most: 80.05 mm }, main journal diameter: { least: 47.95 mm }, crankpin diameter: { least: 41.95 mm } }
                """;
        Shop.Judged judged = Shop.whole(thin).measured("""
                - { cylinder bore: [80.01, 80.09], unit: mm, at: [1 top thrust, 1 mid thrust], with: bore gauge }
                - { main journal diameter: [47.99, 47.90], unit: mm, at: [main 2 front, main 2 rear], with: micrometer }
                - { crankpin diameter: [41.99, 41.90], unit: mm, at: [big end 1 front, big end 1 rear], with: micrometer }
                """);
        assertThat(judged.on("cylinder bore", "1")).isEqualTo("above");
        assertThat(judged.on("main journal diameter", "main 2")).isEqualTo("below");
        assertThat(judged.on("crankpin diameter", "big end 1")).isEqualTo("below");
    }

    @Test
    void the_bolts_of_a_rod_are_judged_at_their_joint_too() {
        Shop.Judged judged = Shop.sheet("joints: { rod cap to rod: { bolts: 6, torque: 30 N·m, stretch: { least: 0.10 mm, most: 0.16 mm } } }\n").measured("""
                - { rod bolt stretch: [0.13, 0.19], unit: mm, at: [big end 1 1, big end 1 2], with: micrometer }
                """);
        assertThat(judged.on("rod bolt stretch", "big end 1 2")).isEqualTo("within, above");
        assertThat(judged.on("rod bolt stretch", "rod cap to rod 1")).isEqualTo("within, above");
    }

    @Test
    void a_place_that_may_be_one_of_two_with_limits_of_their_own_takes_them_both() {
        Shop.Judged judged = Shop.limits("piston clearance: [{ at: 1, most: 0.05 mm }, { at: 2, most: 0.07 mm }]\n")
                .measured("- { piston clearance: 0.06 mm, at: { one of: [1, 2] }, doubt: 0.002 mm }");
        assertThat(judged.on("piston clearance", "one of 1, 2")).isEqualTo("undecided");
        assertThat(Shop.limits("piston clearance: [{ at: 1, most: 0.05 mm }, { at: 2, most: 0.05 mm }]\n")
                .measured("- { piston clearance: 0.06 mm, at: { one of: [1, 2] }, doubt: 0.002 mm }").on("piston clearance", "one of 1, 2")).isEqualTo("above");
        assertThat(Shop.limits("piston clearance: [{ at: 1, most: 0.05 mm }]\n")
                .measured("- { piston clearance: 0.06 mm, at: { one of: [1, 2] }, doubt: 0.002 mm }").on("piston clearance", "one of 1, 2"))
                .as("of cylinder 2 nobody knows a limit").isEqualTo("none");
    }

    @Test
    void the_years_of_a_drive_may_be_written_with_their_unit() {
        String drive = """
                drive:
                  timing belt: { kind: belt, drives: camshafts, route: [crank gear, cam gear intake, belt tensioner], change after: { years: 3 } }
                """;
        Shop.Judged judged = Shop.sheet(drive).record("""
                parts: [{ timing belt: kept, at: timing belt, age: 40 months }]
                steps: [{ belt fitted: 2026-04-12 }]
                """);
        assertThat(judged.on("timing belt years", "timing belt")).isEqualTo("above");
    }

    @Test
    void a_winding_is_held_against_its_line_at_the_heat_it_was_read_at() {
        String sensors = "sensors: { crank sensor: { kind: coil, resistance: { least: 800 ohm, most: 1000 ohm }, at: 20 °C } }\n";
        assertThat(Shop.sheet(sensors).measured("- { crank sensor resistance: 900 ohm, temperature: 20 °C, with: multimeter }").on("crank sensor resistance"))
                .isEqualTo("within, within");
        assertThat(Shop.sheet(sensors).measured("- { crank sensor resistance: 900 ohm, temperature: 80 °C, with: multimeter }").on("crank sensor resistance"))
                .isEqualTo("none");
    }
}
