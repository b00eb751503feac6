package leadlamp.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which limit applies: whose it is, where it holds, for what words and for which reading. */
class LimitsTest {
    private static final String RING_FIRST = "- { piston ring end gap: 0.42 mm, at: 1 first, with: feeler gauge }";

    @Test
    void the_sheet_beats_the_trade() {
        Shop shop = Shop.limits("piston ring end gap: { least: 0.25 mm, most: 0.50 mm }\n").trade("""
                piston ring end gap:
                  - { at: first, least: 0.60 mm, kind: reason to look, basis: "common practice, no source" }
                """);
        assertThat(shop.measured(RING_FIRST).limit("piston ring end gap", "1 first")).isEqualTo("0.25 to 0.5 mm, sheet");
    }

    @Test
    void a_supplier_beats_the_sheet_for_that_part() {
        Shop shop = Shop.limits("piston ring end gap: { least: 0.25 mm, most: 0.40 mm }\n");
        Shop.Judged judged = shop.record("""
                parts:
                  - piston ring: new
                    at: each
                    limits: { piston ring end gap: [{ at: first, least: 0.36 mm, most: 0.50 mm }] }
                measurements:
                  - { piston ring end gap: 0.42 mm, at: [1 first, 1 second], with: feeler gauge }
                """);
        assertThat(judged.limit("piston ring end gap", "1 first")).isEqualTo("0.36 to 0.5 mm, supplier");
        assertThat(judged.limit("piston ring end gap", "1 second")).as("the supplier says nothing of it").isEqualTo("0.25 to 0.4 mm, sheet");
    }

    @Test
    void what_came_with_one_piston_says_nothing_of_its_mates() {
        Shop shop = Shop.limits("piston clearance: { least: 0.03 mm, most: 0.06 mm }\n");
        Shop.Judged judged = shop.record("""
                parts: [{ piston: new, at: 2, limits: { piston clearance: { least: 0.08 mm, most: 0.10 mm } } }]
                measurements: [{ piston clearance: [0.045, 0.045, 0.045], unit: mm, with: feeler gauge }]
                """);
        assertThat(judged.limit("piston clearance", "1")).isEqualTo("0.03 to 0.06 mm, sheet");
        assertThat(judged.limit("piston clearance", "2")).isEqualTo("0.08 to 0.1 mm, supplier");
        assertThat(judged.limit("piston clearance", "3")).isEqualTo("0.03 to 0.06 mm, sheet");
    }

    @Test
    void what_came_with_each_disc_limits_the_stack_that_an_engine_has_once() {
        Shop.Judged judged = Shop.silent().record("""
                parts: [{ piston: new, at: [1, 2], limits: { piston mass spread: { most: 2 g } } }]
                measurements: [{ piston mass spread: 1 g, with: scales }]
                """);
        assertThat(judged.limit("piston mass spread", "engine")).isEqualTo("most 2 g, supplier");
    }

    @Test
    void a_share_of_the_length_of_a_bolt_is_one_of_a_head_bolt() {
        Shop shop = Shop.sheet("joints: { head to block: { bolts: 8, torque: 60 N·m } }\n").trade("""
                bolt length difference:
                  - { most: 0.3 %, times: bolt free length, kind: reason to look, basis: "common practice, no source" }
                """);
        Shop.Judged judged = shop.measured("""
                - { head bolt free length: 100.00 mm, at: head to block 1, with: micrometer }
                - { head bolt free length: 100.00 mm, at: head to block 2, with: micrometer }
                - { head bolt free length: 101.00 mm, at: head to block 3, with: micrometer }
                """);
        assertThat(judged.on("bolt length difference", "head to block")).isEqualTo("above");
    }

    @Test
    void a_reading_at_idle_is_held_against_the_line_for_idle() {
        Shop shop = Shop.limits("engine oil pressure: [{ speed: idle, least: 1 bar }, { speed: 3000 rpm, least: 3.5 bar }]\n");
        assertThat(shop.measured("- { engine oil pressure: 2 bar, at: main gallery, speed: idle, with: pressure gauge }").limit("engine oil pressure",
                "main gallery")).isEqualTo("least 1 bar, sheet");
        assertThat(shop.measured("- { engine oil pressure: 2 bar, at: main gallery, speed: 3200 rpm, with: pressure gauge }").limit(
                "engine oil pressure", "main gallery")).isEqualTo("least 3.5 bar, sheet");
    }

    @Test
    void what_came_with_a_new_part_says_nothing_of_the_one_that_was_found() {
        Shop.Judged judged = Shop.limits("piston ring end gap: { least: 0.25 mm, most: 0.40 mm }\n").record("""
                parts: [{ piston ring: new, at: each, limits: { piston ring end gap: { least: 0.36 mm, most: 0.50 mm } } }]
                measurements: [{ piston ring end gap: 0.42 mm, at: 1 first, as: found, with: feeler gauge }]
                """);
        assertThat(judged.limit("piston ring end gap as found", "1 first")).isEqualTo("0.25 to 0.4 mm, sheet");
    }

    @Test
    void where_the_sheet_is_silent_the_trade_s_number_stands_with_its_basis() {
        Shop shop = Shop.silent().trade("""
                piston ring end gap:
                  - { at: first, least: 0.30 mm, kind: reason to look, basis: "common practice, no source" }
                """);
        Shop.Judged judged = shop.measured(RING_FIRST);
        assertThat(judged.limit("piston ring end gap", "1 first")).isEqualTo("least 0.3 mm, trade, reason to look");
        assertThat(judged.at("piston ring end gap", "1 first").limit().basis()).isEqualTo("common practice, no source");
        assertThat(judged.at("piston ring end gap", "1 first").limit().where()).isEmpty();
    }

    @Test
    void a_limit_of_the_sheet_knows_its_line() {
        Shop.Judged judged = Shop.limits("crankshaft end float: { most: 0.25 mm }\n").measured("- { crankshaft end float: 0.14 mm }");
        assertThat(judged.at("crankshaft end float", "engine").limit().where().orElseThrow().file()).isEqualTo("sheet.yaml");
        assertThat(judged.at("crankshaft end float", "engine").places()).hasSize(2);
    }

    @Test
    void where_nobody_has_a_number_there_is_no_verdict() {
        assertThat(Shop.silent().measured(RING_FIRST).verdicts()).isEmpty();
    }

    @Test
    void a_size_is_no_limit() {
        assertThat(Shop.limits("cylinder bore: { standard: 80.00 mm }\n").measured("- { cylinder bore: 81 mm, at: 1 }").verdicts()).isEmpty();
    }

    @Test
    void a_line_holds_at_its_place_and_at_longer_ones_alone() {
        Shop shop = Shop.limits("""
                valve stem clearance:
                  - { at: intake, least: 0.020 mm, most: 0.060 mm }
                  - { at: exhaust, least: 0.030 mm, most: 0.070 mm }
                """);
        Shop.Judged judged = shop.measured("- { valve stem clearance: 0.050 mm, at: [1 intake, 2 exhaust], doubt: 0.005 mm }");
        assertThat(judged.limit("valve stem clearance", "1 intake")).isEqualTo("0.02 to 0.06 mm, sheet");
        assertThat(judged.limit("valve stem clearance", "2 exhaust")).isEqualTo("0.03 to 0.07 mm, sheet");
    }

    @Test
    void of_two_lines_that_hold_the_more_particular_stands() {
        Shop shop = Shop.limits("""
                valve stem clearance:
                  - { most: 0.060 mm }
                  - { at: exhaust, most: 0.070 mm }
                """);
        Shop.Judged judged = shop.measured("- { valve stem clearance: 0.050 mm, at: [1 intake, 2 exhaust], doubt: 0.005 mm }");
        assertThat(judged.limit("valve stem clearance", "1 intake")).isEqualTo("most 0.06 mm, sheet");
        assertThat(judged.limit("valve stem clearance", "2 exhaust")).isEqualTo("most 0.07 mm, sheet");
    }

    @Test
    void two_lines_of_a_sheet_that_both_hold_are_one_limit_and_the_narrower_of_each_side() {
        Shop shop = Shop.limits("""
                crankshaft end float:
                  - { least: 0.06 mm, most: 0.30 mm }
                  - { most: 0.25 mm }
                """);
        assertThat(shop.measured("- { crankshaft end float: 0.14 mm }").limit("crankshaft end float", "engine")).isEqualTo("0.06 to 0.25 mm, sheet");
    }

    @Test
    void either_way_is_a_least_and_a_most() {
        Shop.Judged judged = Shop.limits("relief valve opening pressure: { standard: 5.0 bar, either way: 0.5 bar }\n")
                .measured("- { relief valve opening pressure: 5.2 bar, with: pressure gauge }");
        assertThat(judged.limit("relief valve opening pressure", "engine")).isEqualTo("4.5 to 5.5 bar, sheet");
    }

    @Test
    void a_limit_of_the_kind_serves_its_members_and_yields_to_their_own() {
        Shop shop = Shop.limits("""
                plain bearing clearance: { least: 0.020 mm, most: 0.060 mm }
                main bearing clearance: { least: 0.025 mm, most: 0.055 mm }
                """);
        Shop.Judged judged = shop.measured("""
                - { main bearing clearance: 0.040 mm, at: each, doubt: 0.005 mm }
                - { big-end bearing clearance: 0.040 mm, at: each, doubt: 0.005 mm }
                - { cam bearing clearance: 0.040 mm, at: intake 1, doubt: 0.005 mm }
                """);
        assertThat(judged.limit("main bearing clearance", "main 2")).isEqualTo("0.025 to 0.055 mm, sheet");
        assertThat(judged.limit("big-end bearing clearance", "big end 2")).isEqualTo("0.02 to 0.06 mm, sheet");
        assertThat(judged.limit("cam bearing clearance", "intake 1")).isEqualTo("0.02 to 0.06 mm, sheet");
    }

    @Test
    void a_limit_of_the_sheet_for_the_kind_beats_the_trade_s_for_the_member() {
        Shop shop = Shop.limits("plain bearing clearance: { least: 0.020 mm, most: 0.060 mm }\n").trade("""
                main bearing clearance:
                  - { most: 0.10 mm, kind: reason to look, basis: "common practice, no source" }
                """);
        assertThat(shop.measured("- { main bearing clearance: 0.040 mm, at: main 1, doubt: 0.005 mm }").limit("main bearing clearance", "main 1"))
                .isEqualTo("0.02 to 0.06 mm, sheet");
    }

    @Test
    void a_value_put_right_is_held_against_the_limit_of_the_reading_it_puts_right() {
        Shop shop = Shop.limits("valve piston clearance:\n  - { at: intake, least: 1.8 mm }\n  - { at: exhaust, least: 2.2 mm }\n");
        Shop.Judged judged = shop.record("""
                machining: [{ head face: none }, { block face: none }]
                measurements:
                  - { trial gasket thickness: 1.10 mm, with: micrometer }
                  - { head gasket compressed thickness: 1.20 mm, with: micrometer }
                  - { valve piston clearance: 2.6 mm, at: 1 intake, with: clay }
                """);
        assertThat(judged.on("valve piston clearance corrected", "1 intake")).isEqualTo("within");
        assertThat(judged.limit("valve piston clearance corrected", "1 intake")).isEqualTo("least 1.8 mm, sheet");
    }

    // --- words

    private static final Shop FLYWHEEL = Shop.limits("""
            flywheel face runout:
              - { most: 0.10 mm, at radius: 90 mm, where: { flywheel material: steel } }
              - { most: 0.15 mm, at radius: 90 mm, where: { flywheel material: cast iron } }
            """);
    private static final String RUNOUT = "\nmeasurements:\n  - { flywheel face runout: %s mm, at radius: 90 mm, with: dial gauge }\n";

    @Test
    void a_line_for_one_material_holds_where_the_record_says_so() {
        Shop.Judged judged = FLYWHEEL.record("parts: [{ flywheel: kept, material: cast iron }]" + RUNOUT.formatted("0.12"));
        assertThat(judged.limit("flywheel face runout", "engine")).isEqualTo("most 0.15 mm, sheet");
        assertThat(judged.on("flywheel face runout")).isEqualTo("within");
    }

    @Test
    void where_it_is_open_which_of_two_lines_holds_a_verdict_stands_only_if_both_give_it() {
        assertThat(FLYWHEEL.record(RUNOUT.formatted("0.05")).on("flywheel face runout")).isEqualTo("within");
        assertThat(FLYWHEEL.record(RUNOUT.formatted("0.12")).on("flywheel face runout")).isEqualTo("undecided");
        assertThat(FLYWHEEL.record(RUNOUT.formatted("0.20")).on("flywheel face runout")).isEqualTo("above");
        assertThat(FLYWHEEL.record(RUNOUT.formatted("0.05")).at("flywheel face runout", "engine").limit().note()).contains("it is open which");
    }

    @Test
    void a_word_that_was_only_told_or_is_unknown_leaves_it_open() {
        assertThat(FLYWHEEL.record("parts: [{ flywheel: kept, material: cast iron, told by: seller }]" + RUNOUT.formatted("0.12"))
                .on("flywheel face runout")).isEqualTo("undecided");
        assertThat(FLYWHEEL.record("parts: [{ flywheel: kept, material: unknown }]" + RUNOUT.formatted("0.12"))
                .on("flywheel face runout")).isEqualTo("undecided");
    }

    @Test
    void where_neither_line_holds_there_is_no_limit() {
        assertThat(FLYWHEEL.record("parts: [{ flywheel: kept, material: aluminium }]" + RUNOUT.formatted("0.05")).verdicts()).isEmpty();
    }

    @Test
    void one_line_of_which_nobody_knows_whether_it_holds_is_no_limit() {
        Shop shop = Shop.silent().trade("""
                piston clearance:
                  - { least: 0.02 mm, most: 0.06 mm, for: { piston form: cast }, kind: reason to look, basis: "common practice, no source" }
                """);
        String reading = "measurements: [{ piston clearance: 0.04 mm, at: 1, doubt: 0.005 mm }]";
        assertThat(shop.record(reading).verdicts()).isEmpty();
        assertThat(shop.record("parts: [{ piston: new, form: cast, at: each }]\n" + reading).on("piston clearance", "1")).isEqualTo("within, within");
        assertThat(shop.record("parts: [{ piston: new, form: forged, at: each }]\n" + reading).verdicts()).isEmpty();
    }

    @Test
    void a_more_particular_line_that_may_hold_leaves_the_plain_one_open() {
        Shop shop = Shop.silent().trade("""
                piston ring end gap:
                  - { at: first, least: 0.30 mm, kind: reason to look, basis: "common practice, no source" }
                  - { at: first, least: 0.50 mm, for: { use duty: competition }, kind: reason to look, basis: "common practice, no source" }
                """);
        String reading = "\nmeasurements: [" + RING_FIRST.substring(2) + "]";
        assertThat(shop.record("use: { duty: road }" + reading).on("piston ring end gap", "1 first")).isEqualTo("within");
        assertThat(shop.record("use: { duty: competition }" + reading).on("piston ring end gap", "1 first")).isEqualTo("below");
        assertThat(shop.record(reading).on("piston ring end gap", "1 first")).isEqualTo("undecided");
    }

    @Test
    void a_word_of_one_place_says_nothing_of_another() {
        Shop shop = Shop.limits("""
                piston clearance:
                  - { most: 0.06 mm, where: { piston form: cast } }
                  - { most: 0.12 mm, where: { piston form: forged } }
                """);
        Shop.Judged judged = shop.record("""
                parts: [{ piston: new, form: cast, at: 1 }, { piston: new, form: forged, at: 2 }]
                measurements: [{ piston clearance: 0.09 mm, at: [1, 2, 3], doubt: 0.005 mm }]
                """);
        assertThat(judged.on("piston clearance", "1")).isEqualTo("above");
        assertThat(judged.on("piston clearance", "2")).isEqualTo("within");
        assertThat(judged.on("piston clearance", "3")).isEqualTo("undecided");
    }

    @Test
    void a_material_may_stand_on_the_sheet() {
        Shop shop = Shop.sheet("""
                materials: { connecting rod: aluminium }
                """).trade("""
                piston to head gap:
                  - { least: 0.9 mm, for: { connecting rod material: steel }, kind: reason to look, basis: "common practice, no source" }
                  - { least: 1.3 mm, for: { connecting rod material: aluminium }, kind: reason to look, basis: "common practice, no source" }
                """);
        assertThat(shop.measured("- { piston to head gap: 1.1 mm, at: 1, with: lead wire }").on("piston to head gap", "1")).isEqualTo("below");
    }

    @Test
    void a_line_may_go_by_what_the_sheet_says_of_the_engine() {
        String line = """
                piston clearance:
                  - { most: 0.06 mm, for: { sheet layout cooled by: %s }, kind: reason to look, basis: "common practice, no source" }
                """;
        String reading = "- { piston clearance: 0.04 mm, at: 1, doubt: 0.005 mm }";
        assertThat(Shop.silent().trade(line.formatted("liquid")).measured(reading).on("piston clearance", "1")).isEqualTo("within");
        assertThat(Shop.silent().trade(line.formatted("air")).measured(reading).verdicts()).isEmpty();
    }

    @Test
    void a_size_of_the_record_may_narrow_a_line() {
        Shop shop = Shop.limits("""
                piston ring end gap:
                  - { least: 0.30 mm }
                  - { least: 0.50 mm, where: { use boost: over 0.8 bar } }
                """);
        assertThat(shop.record("use: { boost: 0.5 bar }\nmeasurements: [" + RING_FIRST.substring(2) + "]").on("piston ring end gap", "1 first"))
                .isEqualTo("within");
        assertThat(shop.record("use: { boost: 1.0 bar }\nmeasurements: [" + RING_FIRST.substring(2) + "]").on("piston ring end gap", "1 first"))
                .isEqualTo("below");
    }

    // --- shares

    @Test
    void a_share_is_of_the_size_read_at_the_same_cylinder() {
        Shop shop = Shop.limits("piston ring end gap: [{ at: first, least: 0.5 %, times: cylinder bore }]\n");
        Shop.Judged judged = shop.measured("""
                - { cylinder bore: 90.00 mm, at: [1 top thrust, 1 top pin], with: bore gauge }
                - { cylinder bore: 80.00 mm, at: 2, with: bore gauge }
                - { piston ring end gap: 0.42 mm, at: [1 first, 2 first], with: feeler gauge }
                """);
        assertThat(judged.limit("piston ring end gap", "1 first")).isEqualTo("least 0.45 mm, sheet");
        assertThat(judged.limit("piston ring end gap", "2 first")).isEqualTo("least 0.4 mm, sheet");
        assertThat(judged.at("piston ring end gap", "2 first").limit().note()).isEqualTo("worked from the cylinder bore");
    }

    @Test
    void a_share_of_what_nobody_read_is_of_the_size_on_the_sheet() {
        Shop shop = Shop.limits("piston ring end gap: [{ at: first, least: 0.5 %, times: cylinder bore }]\n");
        assertThat(shop.measured(RING_FIRST).limit("piston ring end gap", "1 first")).isEqualTo("least 0.4 mm, sheet");
    }

    @Test
    void a_share_of_what_nobody_knows_is_no_limit_and_the_trade_does_not_step_in() {
        Shop shop = Shop.limits("big-end bearing clearance: { most: 0.1 %, times: crankpin diameter }\n").trade("""
                big-end bearing clearance:
                  - { most: 0.10 mm, kind: reason to look, basis: "common practice, no source" }
                """);
        assertThat(shop.measured("- { big-end bearing clearance: 0.04 mm, at: big end 1, with: plastic gauge }").verdicts()).isEmpty();
    }

    // --- how it was read

    @Test
    void a_cold_limit_is_for_a_cold_reading() {
        Shop shop = Shop.limits("camshaft end float: { least: 0.08 mm, most: 0.22 mm, when: cold }\n");
        assertThat(shop.measured("- { camshaft end float: 0.14 mm, at: intake, state: cold }").at("camshaft end float", "intake").limit().note()).isEmpty();
        assertThat(shop.measured("- { camshaft end float: 0.14 mm, at: intake }").at("camshaft end float", "intake").limit().note())
                .isEqualTo("it is taken that it was read cold");
        assertThat(shop.measured("- { camshaft end float: 0.14 mm, at: intake, state: hot }").verdicts()).isEmpty();
    }

    @Test
    void of_a_cold_and_a_hot_limit_both_must_give_it_where_the_reading_does_not_say() {
        Shop shop = Shop.limits("""
                camshaft end float:
                  - { most: 0.22 mm, when: cold }
                  - { most: 0.16 mm, when: hot }
                """);
        assertThat(shop.measured("- { camshaft end float: 0.19 mm, at: intake, state: cold }").on("camshaft end float", "intake")).isEqualTo("within");
        assertThat(shop.measured("- { camshaft end float: 0.19 mm, at: intake, state: hot }").on("camshaft end float", "intake")).isEqualTo("above");
        assertThat(shop.measured("- { camshaft end float: 0.19 mm, at: intake }").on("camshaft end float", "intake")).isEqualTo("undecided");
        assertThat(shop.measured("- { camshaft end float: 0.10 mm, at: intake }").on("camshaft end float", "intake")).isEqualTo("within");
    }

    private static final Shop NEW_AND_WORN = Shop.limits("""
            piston ring side clearance:
              - { most: 0.08 mm, when: new }
              - { most: 0.15 mm, when: in service }
            """);
    private static final String SIDE = "\nmeasurements: [{ piston ring side clearance: 0.11 mm, at: 1 first, with: feeler gauge }]";

    @Test
    void new_and_in_service_go_by_the_part_s_state() {
        assertThat(NEW_AND_WORN.record("parts: [{ piston ring: new, at: each }]" + SIDE).on("piston ring side clearance", "1 first")).isEqualTo("above");
        assertThat(NEW_AND_WORN.record("parts: [{ piston ring: kept, at: each }]" + SIDE).on("piston ring side clearance", "1 first")).isEqualTo("within");
        assertThat(NEW_AND_WORN.record("parts: [{ piston ring: there, at: each }]" + SIDE).on("piston ring side clearance", "1 first"))
                .as("there: new or old is not said").isEqualTo("undecided");
    }

    @Test
    void a_limit_for_new_parts_alone_is_a_reason_to_look_at_one_that_has_run() {
        Shop shop = Shop.limits("piston ring side clearance: { most: 0.08 mm, when: new }\n");
        assertThat(shop.record("parts: [{ piston ring: new, at: each }]" + SIDE).limit("piston ring side clearance", "1 first"))
                .isEqualTo("most 0.08 mm, sheet");
        Shop.Judged run = shop.record("parts: [{ piston ring: second-hand, at: each }]" + SIDE);
        assertThat(run.limit("piston ring side clearance", "1 first")).isEqualTo("most 0.08 mm, sheet, reason to look");
        assertThat(run.at("piston ring side clearance", "1 first").limit().note()).contains("this one has run");
    }

    @Test
    void a_new_part_is_not_held_against_the_limit_of_a_worn_one() {
        Shop shop = Shop.limits("piston ring side clearance: { most: 0.15 mm, when: in service }\n");
        assertThat(shop.record("parts: [{ piston ring: new, at: each }]" + SIDE).verdicts()).isEmpty();
    }

    @Test
    void what_was_found_had_run_whatever_goes_in() {
        String found = "\nmeasurements: [{ piston ring side clearance: 0.11 mm, at: 1 first, as: found, with: feeler gauge }]";
        assertThat(NEW_AND_WORN.record("parts: [{ piston ring: new, at: each }]" + found).on("piston ring side clearance as found", "1 first"))
                .isEqualTo("within");
    }

    private static final Shop PRESSURES = Shop.limits("""
            oil pressure for speed:
              - { speed: idle,     least: 1.0 bar, oil temperature: 90 °C }
              - { speed: 3000 rpm, least: 2.5 bar, oil temperature: 90 °C }
              - { speed: 6000 rpm, least: 4.0 bar, oil temperature: 90 °C }
            """);

    private static Shop.Judged pressure(String reading) {
        return PRESSURES.measured("- { oil pressure for speed: " + reading + ", at: main gallery, with: pressure gauge }");
    }

    @Test
    void of_pressures_by_speed_that_of_the_greatest_speed_reached_holds() {
        assertThat(pressure("1.4 bar, speed: 900 rpm, oil temperature: 90 °C").limit("oil pressure for speed", "main gallery"))
                .isEqualTo("least 1 bar, sheet");
        assertThat(pressure("3.4 bar, speed: 3000 rpm, oil temperature: 90 °C").limit("oil pressure for speed", "main gallery"))
                .isEqualTo("least 2.5 bar, sheet");
        assertThat(pressure("3.4 bar, speed: 5000 rpm, oil temperature: 90 °C").limit("oil pressure for speed", "main gallery"))
                .isEqualTo("least 2.5 bar, sheet");
        assertThat(pressure("3.4 bar, speed: 7000 rpm, oil temperature: 90 °C").on("oil pressure for speed", "main gallery")).isEqualTo("below");
    }

    @Test
    void a_pressure_without_its_speed_must_suit_them_all() {
        assertThat(pressure("4.4 bar, oil temperature: 90 °C").on("oil pressure for speed", "main gallery")).isEqualTo("within");
        assertThat(pressure("3.4 bar, oil temperature: 90 °C").on("oil pressure for speed", "main gallery")).isEqualTo("undecided");
        assertThat(pressure("0.4 bar, oil temperature: 90 °C").on("oil pressure for speed", "main gallery")).isEqualTo("below");
    }

    @Test
    void a_pressure_of_cold_oil_proves_nothing_of_a_limit_for_hot_oil() {
        assertThat(pressure("1.4 bar, speed: 900 rpm, oil temperature: 88 °C").on("oil pressure for speed", "main gallery")).isEqualTo("within");
        assertThat(pressure("1.4 bar, speed: 900 rpm, oil temperature: 40 °C").verdicts()).isEmpty();
        assertThat(pressure("1.4 bar, speed: 900 rpm").at("oil pressure for speed", "main gallery").limit().note())
                .isEqualTo("it is taken that it was read at 90 °C");
    }

    @Test
    void a_limit_at_idle_is_for_a_reading_at_idle() {
        Shop shop = Shop.limits("oil pressure for speed: { least: 1.0 bar, when: idle }\n");
        String reading = "- { oil pressure for speed: 1.4 bar, at: main gallery, with: pressure gauge%s }";
        assertThat(shop.measured(reading.formatted(", speed: 900 rpm")).on("oil pressure for speed", "main gallery")).isEqualTo("within");
        assertThat(shop.measured(reading.formatted(", speed: 3000 rpm")).verdicts()).isEmpty();
        assertThat(shop.measured(reading.formatted("")).at("oil pressure for speed", "main gallery").limit().note())
                .isEqualTo("it is taken that it was read at idle");
    }

    @Test
    void idle_said_in_a_word_is_the_sheet_s_idle() {
        Shop.Judged judged = PRESSURES.value("oil pressure for speed", 1.4, Map.of("speed", "idle", "oil temperature", "90 °C"));
        assertThat(judged.limit("oil pressure for speed", "engine")).isEqualTo("least 1 bar, sheet");
        Shop atIdle = Shop.limits("oil pressure for speed: { least: 1.0 bar, when: idle }\n");
        assertThat(atIdle.value("oil pressure for speed", 1.4, Map.of("speed", "idle")).at("oil pressure for speed", "engine").limit().note()).isEmpty();
    }

    @Test
    void a_bend_over_a_span_is_brought_to_the_span_of_the_reading() {
        Shop shop = Shop.limits("connecting rod bend: { most: 0.05 mm, span: 100 mm }\n");
        String reading = "- { connecting rod bend: 0.06 mm, at: 1%s, doubt: 0.005 mm }";
        assertThat(shop.measured(reading.formatted(", span: 200 mm")).limit("connecting rod bend", "1")).isEqualTo("most 0.1 mm, sheet");
        assertThat(shop.measured(reading.formatted(", span: 200 mm")).on("connecting rod bend", "1")).isEqualTo("within");
        assertThat(shop.measured(reading.formatted(", span: 100 mm")).on("connecting rod bend", "1")).isEqualTo("above");
        assertThat(shop.measured(reading.formatted("")).at("connecting rod bend", "1").limit().note())
                .isEqualTo("it is taken that it was read over 100 mm");
    }

    @Test
    void a_swing_is_brought_to_the_radius_of_the_reading() {
        Shop.Judged judged = FLYWHEEL.record("""
                parts: [{ flywheel: kept, material: steel }]
                measurements: [{ flywheel face runout: 0.08 mm, at radius: 135 mm, with: dial gauge }]
                """);
        assertThat(judged.limit("flywheel face runout", "engine")).isEqualTo("most 0.15 mm, sheet");
        assertThat(judged.at("flywheel face runout", "engine").limit().note()).contains("at a radius of 90 mm").contains("135 mm");
    }

    @Test
    void a_ground_journal_is_held_against_the_limit_less_its_undersize() {
        Shop shop = Shop.limits("crankpin diameter: { standard: 42.00 mm, least: 41.97 mm }\nmain journal diameter: { least: 47.97 mm }\n");
        String reading = "\nmeasurements: [{ crankpin diameter: 41.74 mm, at: big end 1, doubt: 0.004 mm }, { main journal diameter: 47.99 mm, at: main 1, doubt: 0.004 mm }]";
        assertThat(shop.record(reading).on("crankpin diameter", "big end 1")).isEqualTo("below");
        Shop.Judged ground = shop.record("machining: [{ crankpin: grind, at: each, undersize: 0.25 mm }]" + reading);
        assertThat(ground.limit("crankpin diameter", "big end 1")).isEqualTo("least 41.72 mm, sheet");
        assertThat(ground.on("crankpin diameter", "big end 1")).isEqualTo("within");
        assertThat(ground.limit("main journal diameter", "main 1")).as("the mains were left alone").isEqualTo("least 47.97 mm, sheet");
        assertThat(shop.record("machining: [{ crankshaft: grind, undersize: 0.25 mm }]" + reading).limit("main journal diameter", "main 1"))
                .isEqualTo("least 47.72 mm, sheet");
    }

    @Test
    void a_bore_bored_out_is_held_against_the_limit_and_its_oversize() {
        Shop shop = Shop.limits("cylinder bore: { standard: 80.00 mm, most: 80.05 mm }\n");
        Shop.Judged bored = shop.record("""
                machining: [{ cylinder: bore, at: each, oversize: 0.50 mm }]
                measurements: [{ cylinder bore: 80.51 mm, at: 1 top thrust, with: bore gauge }, { cylinder bore: 80.04 mm, at: 1 top thrust, as: found, with: bore gauge }]
                """);
        assertThat(bored.limit("cylinder bore", "1 top thrust")).isEqualTo("most 80.55 mm, sheet");
        assertThat(bored.limit("cylinder bore as found", "1 top thrust")).as("found before it was bored").isEqualTo("most 80.05 mm, sheet");
    }

    @Test
    void one_hardness_scale_says_nothing_of_another() {
        Shop shop = Shop.limits("head hardness: { least: 90 HB }\n");
        assertThat(shop.measured("- { head hardness: 101 HB, at: hot place }").on("head hardness", "hot place")).isEqualTo("within");
        assertThat(shop.measured("- { head hardness: 60 HRB, at: hot place }").verdicts()).isEmpty();
    }

    // --- several places

    @Test
    void at_one_of_several_places_the_limits_of_all_of_them_must_give_it() {
        Shop shop = Shop.limits("""
                valve piston clearance:
                  - { at: intake, least: 1.8 mm }
                  - { at: exhaust, least: 2.2 mm }
                """);
        assertThat(shop.measured("- { valve piston clearance: least 2.0 mm, at: each, doubt: 0.05 mm }").on("valve piston clearance", "one of each"))
                .isEqualTo("undecided");
        assertThat(shop.measured("- { valve piston clearance: least 2.5 mm, at: each, doubt: 0.05 mm }").on("valve piston clearance", "one of each"))
                .isEqualTo("within");
        assertThat(shop.measured("- { valve piston clearance: least 2.0 mm, at: [1 intake, 2 intake], doubt: 0.05 mm }")
                .on("valve piston clearance", "one of 1 intake, 2 intake")).isEqualTo("within");
    }

    @Test
    void the_worst_of_longer_places_stands_at_the_shorter_one_as_well() {
        Shop shop = Shop.limits("cylinder bore: { most: 80.05 mm }\n");
        Shop.Judged judged = shop.measured("""
                - { cylinder bore: 80.01 mm, at: [1 top thrust, 1 mid thrust, 2 top thrust], with: bore gauge }
                - { cylinder bore: 80.10 mm, at: 1 top pin, with: bore gauge }
                - { cylinder bore: 80.045 mm, at: 3 top pin, with: bore gauge }
                - { cylinder bore: 80.01 mm, at: 3 top thrust, with: bore gauge }
                """);
        assertThat(judged.on("cylinder bore", "1")).isEqualTo("above");
        assertThat(judged.at("cylinder bore", "1").value().at()).isEqualTo("1 top pin");
        assertThat(judged.on("cylinder bore", "1 top thrust")).isEqualTo("within");
        assertThat(judged.on("cylinder bore", "2")).isEqualTo("within");
        assertThat(judged.on("cylinder bore", "3")).isEqualTo("undecided");
    }

    @Test
    void what_was_read_at_the_shorter_place_counts_with_the_longer_ones() {
        Shop shop = Shop.limits("cylinder bore: { most: 80.05 mm }\n");
        Shop.Judged judged = shop.measured("""
                - { cylinder bore: 80.01 mm, at: 1, with: bore gauge }
                - { cylinder bore: 80.10 mm, at: 1 top pin, with: bore gauge }
                """);
        assertThat(judged.on("cylinder bore", "1")).isEqualTo("above");
    }

    @Test
    void a_face_read_across_and_lengthwise_has_one_verdict_for_the_engine() {
        Shop shop = Shop.limits("head face flatness: { most: 0.05 mm }\n");
        Shop.Judged judged = shop.measured("""
                - { head face flatness: 0.02 mm, at: across, with: straight edge }
                - { head face flatness: 0.09 mm, at: lengthwise, with: straight edge }
                """);
        assertThat(judged.on("head face flatness")).isEqualTo("above");
        assertThat(judged.on("head face flatness", "across")).isEqualTo("within");
    }

    @Test
    void a_side_on_which_one_place_says_nothing_is_not_cleared_by_another() {
        Shop shop = Shop.limits("cylinder bore: { least: 79.95 mm, most: 80.05 mm }\n");
        Shop.Judged judged = shop.measured("""
                - { cylinder bore: 80.00 mm, at: 1 top thrust, with: bore gauge }
                - { cylinder bore: under 80.02 mm, at: 1 top pin, with: bore gauge }
                """);
        assertThat(judged.on("cylinder bore", "1")).isEqualTo("silent, within");
    }

    @Test
    void what_others_told_is_gathered_apart_from_the_builder_s_own() {
        Shop shop = Shop.limits("cylinder bore: { most: 80.05 mm }\n");
        Shop.Judged judged = shop.measured("""
                - { cylinder bore: 80.01 mm, at: 1 top thrust, with: bore gauge }
                - { cylinder bore: 80.10 mm, at: 1 top pin, told by: owner }
                """);
        assertThat(judged.all("cylinder bore", "1").stream().map(v -> v.value().told() + ": " + Shop.Judged.inWords(v)))
                .containsExactlyInAnyOrder(": within", "owner: above");
    }
}
