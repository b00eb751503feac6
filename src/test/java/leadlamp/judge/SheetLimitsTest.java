package leadlamp.judge;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Limits that a sheet gives outside `limits`, and the period of a gauge. */
class SheetLimitsTest {
    private static final Shop JOINTS = Shop.sheet("""
            joints:
              head to block:
                bolts: 8
                thread: M10x1.25
                class: '10.9'
                torque: 40 N·m
                torque limits: { least: 38 N·m, most: 42 N·m }
                uses: 1
                bolt length limit: { most: 111 mm }
                stretch: { least: 0.20 mm, most: 0.30 mm }
              rod cap to rod:
                each: connecting rod
                bolts: 2
                thread: M8x1
                torque: 30 N·m
                stretch: { least: 0.10 mm, most: 0.16 mm }
                bolt length limit: { most: 45 mm }
            """);

    @Test
    void bolts_may_be_tightened_as_often_as_the_joint_s_line_says() {
        assertThat(JOINTS.record("fasteners: [{ head to block: 40 N·m, uses: 1 }]").on("joint uses", "head to block")).isEqualTo("within");
        assertThat(JOINTS.record("fasteners: [{ head to block: 40 N·m, uses: 2 }]").on("joint uses", "head to block")).isEqualTo("above");
    }

    @Test
    void every_bolt_of_a_joint_is_to_be_marked() {
        assertThat(JOINTS.record("fasteners: [{ head to block: 40 N·m, marked: 8 }]").on("joint marked", "head to block")).isEqualTo("within");
        assertThat(JOINTS.record("fasteners: [{ head to block: 40 N·m, marked: 7 }]").on("joint marked", "head to block")).isEqualTo("below");
        assertThat(JOINTS.record("fasteners: [{ rod cap to rod: 30 N·m, at: each, marked: 2 }]").on("joint marked", "rod cap to rod 3"))
                .as("of a joint of each rod the bolts of one rod count").isEqualTo("within");
    }

    @Test
    void a_torque_is_held_against_the_joint_s_own_limits() {
        String torque = "gauges: { wrench A: { kind: click wrench, doubt: 1 %% } }\nfasteners: [{ head to block: %s N·m, with: wrench A }]";
        assertThat(JOINTS.record(torque.formatted("40")).on("joint torque", "head to block")).isEqualTo("within, within");
        assertThat(JOINTS.record(torque.formatted("50")).on("joint torque", "head to block")).isEqualTo("within, above");
    }

    @Test
    void head_bolts_are_as_long_as_the_joint_allows_them() {
        Shop.Judged judged = JOINTS.measured("- { head bolt free length: [110.2, 111.4], unit: mm, at: [head to block 1, head to block 2], doubt: 0.1 mm }");
        assertThat(judged.on("head bolt free length", "head to block 1")).isEqualTo("within");
        assertThat(judged.on("head bolt free length", "head to block 2")).isEqualTo("above");
        assertThat(judged.on("head bolt free length", "head to block")).as("the worst bolt stands at the joint").isEqualTo("above");
    }

    @Test
    void rod_bolts_have_the_stretch_and_the_length_of_their_joint() {
        Shop.Judged judged = JOINTS.measured("""
                - { rod bolt stretch: 0.13 mm, at: big end 1 1, with: bolt micrometer }
                - { rod bolt stretch: 0.25 mm, at: big end 2 1, with: bolt micrometer }
                - { rod bolt free length: 45.3 mm, at: big end 1 2, doubt: 0.1 mm }
                """);
        assertThat(judged.on("rod bolt stretch", "big end 1 1")).isEqualTo("within, within");
        assertThat(judged.on("rod bolt stretch", "big end 2 1")).isEqualTo("within, above");
        assertThat(judged.limit("rod bolt stretch", "big end 2 1")).isEqualTo("0.1 to 0.16 mm, sheet");
        assertThat(judged.on("rod bolt free length", "big end 1 2")).isEqualTo("above");
    }

    private static final Shop BELT = Shop.sheet("""
            drive:
              timing belt:
                kind: belt
                drives: camshafts
                route: [crank gear, water pump, cam gear exhaust, cam gear intake, belt idler low, belt tensioner]
                change after: { years: 3, distance: 60000 km }
                shares the belt: [water pump, belt idler low, belt tensioner]
                tensioner: { form: spring, extension: { least: 6 mm, most: 12 mm } }
            lives:
              belt tensioner: { years: 3 }
              water pump: { years: 6 }
            """).trade("""
            companion age at next change:
              - { most: 125 %, times: belt interval, kind: reason to look, basis: "common practice, no source" }
            timing belt years:
              - { most: 5 years, kind: reason to look, basis: "common practice, no source" }
            """);

    @Test
    void a_companion_of_the_belt_may_be_as_old_at_the_next_change_as_its_life_on_the_sheet() {
        Shop.Judged judged = BELT.record("""
                parts:
                  - { timing belt: new, date made: 2025-11 }
                  - { belt tensioner: kept, age: 2 years }
                  - { water pump: kept, age: 2 years }
                  - { belt idler: kept, at: low, age: 2 years }
                steps: [{ engine stripped: 2026-01-10 }]
                """);
        assertThat(limit(judged, "belt tensioner")).isEqualTo("most 3 years, sheet: above");
        assertThat(limit(judged, "water pump")).isEqualTo("most 6 years, sheet: within");
        assertThat(limit(judged, "belt idler")).as("the sheet gives it no life").isEqualTo("most 3.75 years, trade, reason to look: above");
    }

    private static String limit(Shop.Judged judged, String part) {
        return judged.verdicts().stream().filter(v -> v.of().equals("companion age at next change") && (v.kind().equals(part) || v.at().startsWith(part)))
                .map(v -> judged.limit(v.of(), v.at()) + ": " + Shop.Judged.inWords(v)).findFirst().orElse("none");
    }

    @Test
    void a_belt_may_run_as_long_as_the_drive_says() {
        Shop.Judged judged = BELT.record("""
                parts: [{ timing belt: kept, age: 4 years }]
                steps: [{ engine stripped: 2026-01-10 }]
                """);
        assertThat(judged.limit("timing belt years", "timing belt")).isEqualTo("most 3 years, sheet");
        assertThat(judged.on("timing belt years", "timing belt")).isEqualTo("above");
    }

    @Test
    void a_tensioner_stands_within_its_extension() {
        assertThat(BELT.measured("- { belt tensioner extension: 14 mm, with: vernier }").verdicts().stream()
                .filter(v -> v.of().equals("belt tensioner extension")).map(Shop.Judged::inWords)).containsExactly("within, above");
    }

    @Test
    void cams_may_be_out_either_way_by_the_timing_tolerance_and_gears_may_rock_by_it() {
        Shop shop = Shop.sheet("timing: { cam timing tolerance: 2 crank deg }\n");
        assertThat(shop.measured("- { cam timing error: -3.5 crank deg, at: intake, doubt: 1 crank deg }").on("cam timing error", "intake"))
                .isEqualTo("below, within");
        assertThat(shop.measured("- { cam timing error: 0.5 crank deg, at: intake, doubt: 1 crank deg }").on("cam timing error", "intake"))
                .isEqualTo("within, within");
        assertThat(shop.measured("- { cam gear rock: 3.5 crank deg, at: intake, doubt: 1 crank deg }").on("cam gear rock", "intake")).isEqualTo("above");
    }

    @Test
    void a_winding_is_held_against_the_sensor_s_line() {
        Shop shop = Shop.sheet("""
                sensors:
                  crank sensor: { kind: trigger, form: coil, resistance: { least: 800 ohm, most: 1200 ohm }, at: 20 °C }
                """);
        assertThat(shop.measured("- { crank sensor resistance: 950 ohm, with: multimeter }").verdicts().stream()
                .filter(v -> v.of().equals("crank sensor resistance")).map(v -> Shop.Judged.inWords(v) + ", " + v.limit().note()))
                .containsExactly("within, within, it is taken that it was read at 20 °C");
        Shop.Judged warm = shop.measured("""
                - { crank sensor resistance: 1290 ohm, with: multimeter }
                - { crank sensor temperature: 80 °C, with: thermometer }
                """);
        assertThat(warm.verdicts().stream().filter(v -> v.of().equals("sensor resistance corrected")).map(Shop.Judged::inWords))
                .as("1290 ohm at 80 degrees are 1044 at 20").containsExactly("within, within");
    }

    @Test
    void a_coolant_is_as_strong_as_the_sheet_wants_it() {
        Shop shop = Shop.sheet("coolant: { volume: 5.0 l, share: { least: 35 %, most: 60 % } }\n");
        assertThat(shop.measured("- { coolant concentration: 25 %, with: refractometer }").on("coolant concentration")).isEqualTo("below, within");
    }

    @Test
    void a_gauge_s_own_period_beats_the_trade_s() {
        Shop shop = Shop.silent().trade("""
                gauge check age:
                  - { most: 1 year, kind: reason to look, basis: "common practice, no source" }
                """);
        Shop.Judged judged = shop.record("""
                gauges:
                  micrometer: { kind: micrometer, checked: 2024-06-01, period: 2 years }
                  vernier:    { kind: vernier, checked: 2024-06-01 }
                steps: [{ engine stripped: 2026-01-10 }]
                """);
        assertThat(judged.on("gauge check age", "micrometer")).isEqualTo("within");
        assertThat(judged.on("gauge check age", "vernier")).isEqualTo("above");
        assertThat(judged.at("gauge check age", "vernier").limit().reason()).isTrue();
        assertThat(judged.at("gauge check age", "micrometer").limit().basis()).isEqualTo("the period of the gauge itself");
    }

    @Test
    void what_the_sheet_says_under_limits_goes_before_what_it_says_elsewhere() {
        Shop shop = Shop.sheet("""
                timing: { cam timing tolerance: 2 crank deg }
                limits:
                  cam gear rock: { most: 1 crank deg }
                """);
        assertThat(shop.measured("- { cam gear rock: 0.5 crank deg, at: intake, doubt: 0.1 crank deg }").limit("cam gear rock", "intake"))
                .isEqualTo("most 1 crank deg, sheet");
    }
}
