package leadlamp.record;

import static leadlamp.record.Bench.record;
import static leadlamp.record.Bench.said;
import static leadlamp.record.Bench.sheet;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecordReaderTest {
    private static final String SHEET_WITH_THRUST = Bench.SHEET.replace("  main bearings: 4\n", "  main bearings: 4\n  thrust bearing: 3\n");

    @Test
    void a_part_says_its_state_and_its_words() {
        assertThat(said(record("parts:\n- { cam gear pin: kept, at: intake, form: hollow, origin: home-made }\n")))
                .containsExactly("STATED cam gear pin, intake, state, kept", "STATED cam gear pin, intake, form, hollow",
                        "STATED cam gear pin, intake, origin, home-made");
    }

    @Test
    void a_size_in_a_part_s_entry_is_the_maker_s_figure_of_that_reading() {
        Build build = record("parts:\n- { head gasket: new, compressed thickness: 1.10 mm }\n");
        assertThat(build.problems()).isEmpty();
        Statement figure = build.statements().get(1);
        assertThat(figure.form()).isEqualTo(Statement.Form.READ);
        assertThat(figure.of()).isEqualTo("head gasket compressed thickness");
        assertThat(figure.gauges()).containsExactly("label");
    }

    private static Statement figure(Build build) {
        return build.statements().stream().filter(s -> s.form() == Statement.Form.READ).findFirst().orElseThrow();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', value = {
        "cam gear pin: new, at: intake, diameter: 5.0 mm                                       | [label]",
        "cam gear pin: ready, at: intake, diameter: 5.0 mm                                     | [label]",
        "cam gear pin: kept, at: intake, diameter: 5.0 mm                                      | []",
        "cam gear pin: second-hand, at: intake, diameter: 5.0 mm                               | []",
        "cam gear pin: there, at: intake, diameter: 5.0 mm                                     | []",
        "cam gear pin: new, at: intake, origin: home-made, diameter: 5.0 mm                    | []",
        "cam gear pin: new, at: intake, diameter: 5.0 mm, with: micrometer                     | [micrometer]",
        "cam gear pin: kept, at: intake, diameter: 5.0 mm, with: caliper                       | [vernier]",
        "thermostat: kept, opening temperature: 82 °C                                          | [label]",
        "thermostat: kept, opening temperature: 82 °C, with: thermometer                       | [thermometer]",
        "connecting rod: kept, at: 1, rated speed: 9000 rpm                                    | [label]" })
    void a_size_of_a_part_that_has_run_is_read_of_it_and_not_what_its_box_says(String entry, String gauges) {
        Build build = record("parts:\n- { " + entry + " }\n");
        assertThat(build.problems()).isEmpty();
        assertThat(figure(build).gauges()).hasToString(gauges);
        assertThat(figure(build).inPartsEntry()).isEqualTo(gauges.equals("[]") || gauges.equals("[label]"));
    }

    @Test
    void a_size_of_a_part_that_came_out_is_one_as_found() {
        Statement figure = figure(record("parts:\n- { cam gear pin: scrapped, at: intake, diameter: 4.8 mm }\n"));
        assertThat(figure.what()).isEqualTo("as found");
        assertThat(figure.gauges()).isEmpty();
    }

    @Test
    void a_gauge_of_a_part_s_figure_that_nobody_knows_is_told() {
        assertThat(record("parts:\n- { cam gear pin: kept, at: intake, diameter: 4.8 mm, with: micromter }\n").problems()).singleElement()
                .satisfies(p -> {
                    assertThat(p.what()).contains("is no gauge of this record");
                    assertThat(p.nearest()).contains("micrometer");
                });
    }

    @Test
    void what_a_sign_was_measured_with_stands_beside_it() {
        Build build = record("observations:\n- { crank gear: play, amount: 0.2 mm, with: caliper }\n");
        assertThat(build.problems()).isEmpty();
        assertThat(build.statements()).filteredOn(s -> s.form() == Statement.Form.SEEN).isNotEmpty()
                .allSatisfy(s -> assertThat(s.asides()).containsEntry("with", "vernier"));
    }

    @Test
    void a_gauge_of_a_sign_that_nobody_knows_is_told_and_the_sign_is_kept() {
        Build build = record("observations:\n- { crank gear: play, with: thumbnail }\n");
        assertThat(build.problems()).hasSize(1).allSatisfy(p -> assertThat(p.what()).contains("\"thumbnail\" is no gauge"));
        assertThat(build.statements()).anyMatch(s -> s.form() == Statement.Form.SEEN);
    }

    @Test
    void each_is_every_place_of_the_part() {
        assertThat(said(record("parts:\n- { camshaft: kept, at: each }\n")))
                .containsExactly("STATED camshaft, intake, state, kept", "STATED camshaft, exhaust, state, kept");
    }

    @Test
    void each_with_a_word_is_every_place_that_has_the_word() {
        assertThat(said(record("parts:\n- { valve: new, at: each intake }\n"))).hasSize(6)
                .contains("STATED valve, 2 intake rear, state, new").noneMatch(s -> s.contains("exhaust"));
    }

    @Test
    void a_shorter_place_is_all_that_it_covers() {
        assertThat(said(record("parts:\n- { valve: new, at: 2 intake }\n")))
                .containsExactly("STATED valve, 2 intake front, state, new", "STATED valve, 2 intake rear, state, new");
    }

    @Test
    void a_number_is_the_place_that_the_part_settles() {
        assertThat(said(record("measurements:\n- { crankpin diameter: 41.98 mm, at: 3, state: oiled }\n")))
                .containsExactly("READ crankpin diameter, big end 3 = 41.98 mm", "STATED crankpin diameter, big end 3, state, oiled");
        assertThat(said(record("measurements:\n- { main journal diameter: 47.98 mm, at: 2 }\n")))
                .containsExactly("READ main journal diameter, main 2 = 47.98 mm");
    }

    @Test
    void the_words_of_a_place_may_stand_in_any_order() {
        assertThat(said(record("measurements:\n- { cylinder bore: 80.01 mm, at: thrust top 1 }\n")))
                .containsExactly("READ cylinder bore, 1 top thrust = 80.01 mm");
    }

    @Test
    void a_row_stands_in_the_order_of_the_group() {
        assertThat(said(record("measurements:\n- { cam gear pin diameter: [5.00, 4.99], unit: mm, with: micrometer }\n")))
                .containsExactly("READ cam gear pin diameter, intake = 5.00", "READ cam gear pin diameter, exhaust = 4.99");
    }

    @Test
    void a_row_of_the_wrong_length_is_said_and_left_out() {
        Build build = record("measurements:\n- { cam gear pin diameter: [5.00, 4.99, 5.01], unit: mm }\n");
        assertThat(build.statements()).isEmpty();
        assertThat(build.problems()).singleElement().satisfies(p -> assertThat(p.what()).contains("3 values", "2 places"));
        assertThat(build.leftOut()).hasSize(2);
    }

    @Test
    void a_table_puts_row_and_column_together() {
        Build build = record("""
                measurements:
                - cylinder bore:
                    at: [top thrust, top pin]
                    1: [80.012, 80.008]
                    3: [80.013, 80.009]
                  unit: mm
                  with: bore gauge
                """);
        assertThat(build.problems()).isEmpty();
        assertThat(said(build)).containsExactly("READ cylinder bore, 1 top thrust = 80.012", "READ cylinder bore, 1 top pin = 80.008",
                "READ cylinder bore, 3 top thrust = 80.013", "READ cylinder bore, 3 top pin = 80.009");
        assertThat(build.statements().get(2).where()).isEqualTo(new Where("build.yaml", 5, 9));
    }

    @Test
    void the_long_form_means_the_same() {
        assertThat(said(record("parts:\n- { part: cam gear pin, state: new, at: intake, form: solid }\n")))
                .isEqualTo(said(record("parts:\n- { cam gear pin: new, at: intake, form: solid }\n")));
        assertThat(said(record("measurements:\n- { of: crankshaft, what: end float, value: 0.14 mm }\n")))
                .isEqualTo(said(record("measurements:\n- { crankshaft end float: 0.14 mm }\n")));
        assertThat(said(record("steps:\n- { done: crankshaft laid, date: 2026-03-02 }\n")))
                .isEqualTo(said(record("steps:\n- { crankshaft laid: 2026-03-02 }\n")));
    }

    @Test
    void a_joint_says_its_torque_and_its_threads() {
        assertThat(said(record("""
                fasteners:
                - oil pump to block: 23 N·m
                  threads: { condition: residue, thread-locker: medium }
                  lengths: { 1: 25 mm, 4: 70 mm }
                """))).containsExactly("READ joint torque, oil pump to block = 23 N·m",
                "STATED joint, oil pump to block, condition, residue", "STATED joint, oil pump to block, thread-locker, medium",
                "STATED joint, oil pump to block, lengths, 1: 25 mm, 4: 70 mm",
                "READ bolt free length, oil pump to block 1 = 25 mm", "READ bolt free length, oil pump to block 4 = 70 mm");
    }

    @Test
    void stages_end_in_the_last_torque_and_the_sum_of_the_turns() {
        Build build = record("fasteners:\n- { head to block: [25 N·m, 40 N·m, then 45 deg, then 45 deg] }\n");
        assertThat(said(build)).contains("READ joint torque, head to block = 40 N·m");
        Statement angle = build.statements().stream().filter(s -> s.of().equals("joint angle")).findFirst().orElseThrow();
        assertThat(Math.toDegrees(angle.value().orElseThrow().low())).isCloseTo(90, org.assertj.core.api.Assertions.within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"as found", "by hand", "not yet", "unknown"})
    void a_word_in_place_of_a_torque_is_a_fact_and_no_torque(String word) {
        assertThat(said(record("fasteners:\n- { sump to block: " + word + " }\n")))
                .containsExactly("STATED joint, sump to block, torque said, " + word);
    }

    @Test
    void a_joint_that_the_sheet_lacks_may_be_named() {
        Build build = record("fasteners:\n- { oil cooler to bracket: 12 N·m }\n");
        assertThat(build.problems()).isEmpty();
        assertThat(said(build)).containsExactly("READ joint torque, oil cooler to bracket = 12 N·m");
    }

    @Test
    void a_joint_of_its_own_may_begin_as_one_of_the_sheet_does_where_it_ends_in_a_part() {
        Build build = record("fasteners:\n- { oil pump to block face: 12 N·m }\n- { oil pump to block 3: 23 N·m }\n");
        assertThat(build.problems()).isEmpty();
        assertThat(said(build)).containsExactly("READ joint torque, oil pump to block face = 12 N·m", "READ joint torque, oil pump to block 3 = 23 N·m");
    }

    @Test
    void what_stands_after_a_joint_s_name_and_is_neither_a_place_nor_a_part_is_no_joint() {
        Build build = record("fasteners:\n- { oil pump to block feed: 23 N·m }\nobservations:\n- { gasket: torn, at: oil pump to block feed }\n");
        assertThat(build.statements()).isEmpty();
        assertThat(build.problems()).hasSize(2);
        Problem joint = build.problems().get(0);
        assertThat(joint.what()).isEqualTo("\"feed\" is no place of the joint oil pump to block.");
        assertThat(joint.nearest()).contains("oil pump to block");
        assertThat(joint.where().line()).isEqualTo(2);
        assertThat(build.problems().get(1).what()).isEqualTo("\"oil pump to block feed\" is no place of gasket.");
        assertThat(build.problems().get(1).nearest()).contains("oil pump to block");
        assertThat(build.problems().get(1).where().line()).isEqualTo(4);
    }

    @Test
    void a_reading_under_fasteners_is_no_joint_for_all_its_to() {
        Build build = record("fasteners:\n- { piston to head gap: by hand }\n");
        assertThat(build.statements()).isEmpty();
        assertThat(build.problems()).singleElement().satisfies(p -> assertThat(p.toString()).contains("is a reading and no joint", "`measurements`"));
    }

    @Test
    void a_place_never_adds_a_cylinder_to_what_has_none() {
        for (String at : List.of("3 front", "main 3 front", "big end 1 rear")) {
            Build build = record("parts:\n- { thrust washer: new, at: " + at + " }\n", SHEET_WITH_THRUST);
            assertThat(build.statements()).as(at).isEmpty();
            assertThat(build.problems()).singleElement().satisfies(p -> {
                assertThat(p.what()).isEqualTo("\"" + at + "\" is no place of thrust washer in this engine.");
                assertThat(p.expected()).isEqualTo("Places of thrust washer: front, rear.");
                assertThat(p.where().line()).isEqualTo(2);
            });
        }
        assertThat(record("parts:\n- { thrust washer: new, at: 3 front }\n", SHEET_WITH_THRUST).problems().get(0).nearest()).contains("front");
        assertThat(said(record("observations:\n- { thrust washer: worn, at: front upper }\n", SHEET_WITH_THRUST)))
                .containsExactly("SEEN thrust washer, front upper, worn");
    }

    @Test
    void a_camshaft_is_looked_at_by_its_bearings_and_a_crankshaft_by_its_own_and_no_more_than_there_are() {
        assertThat(said(record("observations:\n- { camshaft: scored, at: intake 3 }\n- { crankshaft: scored, at: main 4 rear }\n")))
                .containsExactly("SEEN camshaft, intake 3, scored", "SEEN crankshaft, main 4 rear, scored");
        for (String entry : List.of("camshaft: scored, at: intake 9", "crankshaft: scored, at: main 9", "cam gear pin: bent, at: intake 2",
                "crankshaft: scored, at: big end 5")) {
            assertThat(record("observations:\n- { " + entry + " }\n").problems()).as(entry).singleElement()
                    .satisfies(p -> assertThat(p.what()).contains("is no place of"));
        }
    }

    @Test
    void a_bolt_has_no_number_above_those_that_the_sheet_counts_at_its_joint() {
        assertThat(said(record("parts:\n- { bolt: new, at: oil pump to block 4 }\n- { bolt: kept, at: cam gear to camshaft intake 1 }\n")))
                .containsExactly("STATED bolt, oil pump to block 4, state, new", "STATED bolt, cam gear to camshaft intake 1, state, kept");
        for (String entry : List.of("parts:\n- { bolt: new, at: oil pump to block 5 }", "observations:\n- { bolt: broken, at: [oil pump to block 2, oil pump to block 5] }",
                "fasteners:\n- { oil pump to block 5: 23 N·m }", "fasteners:\n- { oil pump to block: 23 N·m, lengths: { 1: 25 mm, 5: 25 mm } }",
                "measurements:\n- { bolt free length: 25.0 mm, at: oil pump to block 5 }")) {
            assertThat(record(entry + "\n").problems()).as(entry).singleElement().satisfies(p -> {
                assertThat(p.what()).isEqualTo("There is no number 5 at oil pump to block in this engine.");
                assertThat(p.expected()).isEqualTo("The engine sheet counts 4 there.");
                assertThat(p.where().line()).isEqualTo(2);
            });
        }
        assertThat(record("parts:\n- { bolt: new, at: rod cap to rod 2 3 }\n").problems()).singleElement()
                .satisfies(p -> assertThat(p.expected()).isEqualTo("The engine sheet counts 2 there."));
    }

    @Test
    void a_sign_may_bear_the_day_on_which_it_was_looked_for() {
        Build build = record("observations:\n- { piston skirt: scuffed, at: 2, date: 2026-03-14 }\n- { cylinder: clear, of: glazed, at: 1, date: spring 2026 }\n");

        assertThat(said(build)).containsExactly("SEEN piston skirt, 2, scuffed", "NOT_SEEN cylinder, 1, glazed");
        assertThat(build.statements()).extracting(s -> s.asides().get("date")).containsExactly("2026-03-14", "spring 2026");
        assertThat(record("observations:\n- { piston skirt: scuffed, at: 2, date: soon }\n").problems()).singleElement()
                .satisfies(p -> assertThat(p.what()).isEqualTo("\"soon\" is no date."));
    }

    @Test
    void two_places_in_one_are_both_places_of_the_engine() {
        assertThat(record("observations:\n- { cylinder: cracked, at: 1 and 2 }\n").problems()).isEmpty();
        assertThat(record("observations:\n- { cylinder: cracked, at: 2 and 9 }\n").problems()).singleElement()
                .satisfies(p -> assertThat(p.what()).contains("\"2 and 9\" is no place of cylinder"));
    }

    @Test
    void a_roll_pin_is_a_spring_pin_with_a_slot_in_record_and_sheet() {
        assertThat(said(record("parts:\n- { cam gear pin: new, at: intake, form: roll pin }\n- { cam gear pin: new, at: exhaust, form: spiral pin }\n")))
                .contains("STATED cam gear pin, intake, form, slotted", "STATED cam gear pin, exhaust, form, coiled");
        assertThat(sheet(Bench.SHEET.replace("form: solid, diameter: 5.0 mm", "form: Roll Pin, diameter: 5.0 mm")).statements())
                .filteredOn(s -> s.of().equals("cam gear pin") && s.what().equals("form")).extracting(Statement::says).containsOnly("slotted");
        assertThat(record("parts:\n- { rocker: new, at: each, form: roll pin }\n").problems()).singleElement()
                .satisfies(p -> assertThat(p.what()).contains("is not a word for form of rocker"));
    }

    @Test
    void a_joint_that_is_nearly_one_of_the_sheet_is_asked_about() {
        Build build = record("fasteners:\n- { oil pump to blok: 23 N·m }\n");
        assertThat(build.problems()).singleElement().satisfies(p -> assertThat(p.nearest()).contains("oil pump to block"));
    }

    @Test
    void a_joint_with_each_wants_its_place() {
        assertThat(said(record("fasteners:\n- { cam gear to camshaft: 60 N·m, at: each }\n")))
                .containsExactly("READ joint torque, cam gear to camshaft intake = 60 N·m", "READ joint torque, cam gear to camshaft exhaust = 60 N·m");
        assertThat(record("fasteners:\n- { cam gear to camshaft: 60 N·m }\n").problems()).hasSize(1);
    }

    @Test
    void a_sign_is_seen_and_its_asides_are_said() {
        assertThat(said(record("observations:\n- { trigger disc: play, amount: 0.8 mm, at radius: 62 mm }\n")))
                .containsExactly("SEEN trigger disc, engine, play", "STATED trigger disc, engine, play amount, 0.8 mm",
                        "STATED trigger disc, engine, play at radius, 62 mm");
    }

    @Test
    void clear_is_one_looked_for_sign_at_each_place() {
        assertThat(said(record("observations:\n- { cylinder: clear, of: [glazed, scored], at: [1, 2] }\n")))
                .containsExactly("NOT_SEEN cylinder, 1, glazed", "NOT_SEEN cylinder, 2, glazed", "NOT_SEEN cylinder, 1, scored",
                        "NOT_SEEN cylinder, 2, scored");
    }

    @Test
    void clear_of_nothing_is_asked_about() {
        assertThat(record("observations:\n- { cylinder: clear, at: 1 }\n").problems()).hasSize(1);
    }

    @Test
    void a_sound_sign_rules_others_out() {
        assertThat(said(record("observations:\n- { main shell: even grey, at: 2 }\n")))
                .contains("SEEN main shell, main 2, even grey", "NOT_SEEN main shell, main 2, wiped");
    }

    @Test
    void which_one_is_not_told() {
        assertThat(said(record("observations:\n- { piston skirt: polished, at: { one of: [1, 2] }, as: found }\n")))
                .contains("SEEN piston skirt, one of 1, 2, polished", "STATED piston skirt, one of 1, 2, polished as, found");
    }

    @Test
    void a_range_a_bound_and_no_figure() {
        Build build = record("""
                measurements:
                - { oil pump tip gap: from 0.08 to 0.09 mm }
                - { crankshaft residual field: under 1 gauss }
                - { crankshaft end float: good }
                - { valve margin: least 1.1 mm, at: each }
                - { crankshaft end float: 0.16 mm, as: found }
                """);
        assertThat(build.problems()).isEmpty();
        assertThat(build.statements().get(0).value().orElseThrow().form()).isEqualTo(leadlamp.quantity.Written.Form.RANGE);
        assertThat(build.statements().get(1).value().orElseThrow().form()).isEqualTo(leadlamp.quantity.Written.Form.UNDER);
        assertThat(said(build)).contains("STATED crankshaft end float, engine, figure, good");
        assertThat(build.statements().stream().filter(s -> s.of().equals("valve margin"))).hasSize(12);
        assertThat(build.statements().get(build.statements().size() - 1).what()).isEqualTo("as found");
    }

    @Test
    void what_came_out_stands_as_found() {
        assertThat(said(record("parts:\n- { piston: scrapped, at: 2, age: 9 years }\n")))
                .containsExactly("STATED piston as found, 2, state, scrapped", "STATED piston as found, 2, age, 9 years");
    }

    @Test
    void told_by_stays_with_the_fact() {
        assertThat(said(record("parts:\n- { water pump: there, age: 6 years, told by: seller }\n")))
                .containsExactly("STATED water pump, engine, state, there (told by seller)", "STATED water pump, engine, age, 6 years (told by seller)");
    }

    @Test
    void steps_are_done_passed_left_out_next_or_planned() {
        assertThat(said(record("""
                steps:
                - { valve leak tested: 2026-03-01, result: passed }
                - { oilways brushed: left out }
                - { crankshaft laid: 2026-03-02 }
                - next: sump fitted
                """))).containsExactly("STATED steps, engine, valve leak tested, passed", "STATED steps, engine, oilways brushed, left out",
                "STATED steps, engine, crankshaft laid, done", "STATED steps, engine, sump fitted, next");
    }

    @Test
    void a_step_may_say_how_it_came_out_where_its_day_would_stand() {
        assertThat(said(record("""
                steps:
                - { valve leak tested: failed, of: 2 }
                - { turned by hand: not proved }
                - { oil primed: passed }
                """))).containsExactly("STATED steps, 2, valve leak tested, failed", "STATED steps, engine, turned by hand, not proved",
                "STATED steps, engine, oil primed, passed");
    }

    @Test
    void the_other_sections() {
        assertThat(said(record("""
                build: { name: a build, past: [overheated] }
                use: { duty: road, rev limit: 7600 rpm }
                machining:
                - { block face: mill, removed: 0.15 mm }
                protection: { low oil pressure cut: none, rev cut: { at: 7200 rpm, action: limit } }
                gauges:
                  wrench A: { kind: click wrench, checked: 2026-01-20 }
                """))).containsExactly("STATED build, engine, past, overheated", "STATED use, engine, duty, road",
                "STATED use, engine, rev limit, 7600 rpm", "STATED machining, engine, block face, mill",
                "STATED machining, engine, block face removed, 0.15 mm", "STATED protection, engine, low oil pressure cut, none",
                "STATED protection, engine, rev cut, fitted", "STATED protection, engine, rev cut at, 7200 rpm",
                "STATED protection, engine, rev cut action, limit", "STATED gauge, wrench A, kind, click wrench",
                "STATED gauge, wrench A, checked, 2026-01-20");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            partz: []                                                      | no section                        | parts
            parts: [{ cam geer pin: new, at: intake }]                     | is no part that is known          | cam gear pin
            parts: [{ cam gear pin: new, at: intake, frm: solid }]         | is not something                  | form
            parts: [{ cam gear pin: new, at: intake, form: holow }]        | is not a word for form            | hollow
            parts: [{ cam gear pin: nw, at: intake }]                      | is not a word for state           | new
            parts: [{ cam gear pin: new, at: inteke }]                     | is no place of cam gear pin       | intake
            parts: [{ cam gear pin: new, at: left }]                       | is no place of cam gear pin       |
            parts: [{ cam gear pin: new }]                                 | Which cam gear pin                |
            measurements: [{ crankshaft end flaot: 0.1 mm }]               | is no reading                     | crankshaft end float
            measurements: [{ crankshaft end float: 0.1 }]                  | unit                              |
            measurements: [{ crankshaft end float: 0.1 bar }]              |                                   |
            measurements: [{ crankshaft end float: 0.1 mmm }]              |                                   | mm
            measurements: [{ valve clearance: 0.1 mm, at: 1 }]             | may mean two things               |
            measurements: [{ crankshaft end float: 0.1 mm, wiht: eye }]    | is not something                  | with
            measurements: [{ crankshaft end float: 0.1 mm, with: dail gauge }] | is no gauge                   | dial gauge
            fasteners: [{ oil pump to block: 23 N·m, threads: { thread-loker: medium } }] | is not something a thread can have | thread-locker
            observations: [{ piston skirt: scufed, at: 1 }]                | is no sign                        | scuffed
            steps: [{ crankshaft lade: 2026-03-02 }]                       | is no step                        | crankshaft laid
            steps: [{ crankshaft laid: 2026-13-02 }]                       | is no date                        |
            stage: head torqed                                             | is no step                        | head torqued
            build: { name: Hill-climb three, spring rebuild }              | stands alone after a comma        |
            use: { dutie: road }                                           | is not something                  | duty
            protection: { low oil presure cut: none }                      | is nothing that guards            | low oil pressure cut
            """)
    void what_is_wrong_is_said_with_the_nearest_word(String text, String what, String nearest) {
        Build build = record(text + "\n");
        assertThat(build.problems()).as(text).singleElement().satisfies(p -> {
            assertThat(p.what()).contains(what == null ? "" : what);
            assertThat(p.nearest().orElse(null)).isEqualTo(nearest);
            assertThat(p.where().line()).isEqualTo(1);
            assertThat(p.line()).isEqualTo(text);
        });
    }

    @Test
    void a_message_points_at_the_word() {
        Build build = record("fasteners:\n- oil pump to block: 23 N·m\n  threads: { condition: residue, thread-loker: medium }\n");
        assertThat(build.problems()).singleElement().satisfies(p -> {
            assertThat(p.where()).isEqualTo(new Where("build.yaml", 3, 34));
            assertThat(p.length()).isEqualTo("thread-loker".length());
        });
        assertThat(said(build)).contains("STATED joint, oil pump to block, condition, residue");
    }

    @Test
    void all_problems_come_in_one_run_and_the_sound_rest_is_read() {
        Build build = record("""
                parts:
                - { cam geer pin: new, at: intake }
                - { cam gear pin: new, at: exhaust, form: solid }
                measurements:
                - { crankshaft end float: 0.1 }
                steps:
                - { crankshaft lade: 2026-03-02 }
                """);
        assertThat(build.problems()).hasSize(3);
        assertThat(said(build)).contains("STATED cam gear pin, exhaust, form, solid");
    }

    @Test
    void the_record_that_shows_every_form_is_read_without_a_word_of_complaint() {
        RecordReader.Result result = Bench.READER.read(Path.of("sample-builds/full-sound-tarn-12.yaml"));
        Build build = result.build().orElseThrow();
        assertThat(build.problems()).isEmpty();
        assertThat(build.statements()).hasSizeGreaterThan(800);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "# only a comment", "- a\n- b", "just words", "a: [1, 2", "a: &x 1\nb: *x", "a: 1\n\tb: 2",
            "a: \"open", "\u0000\u0001\u0002"})
    void what_is_no_record_is_one_clear_sentence(String text) {
        Yaml.File file = Yaml.text(text, "odd.yaml");
        assertThat(file.tree()).isEmpty();
        assertThat(file.problems()).singleElement().satisfies(p -> assertThat(p.what()).endsWith("."));
    }

    @Test
    void ten_thousand_brackets_are_one_clear_sentence() {
        assertThat(Yaml.text("a: " + "[".repeat(10_000), "deep.yaml").problems()).singleElement()
                .satisfies(p -> assertThat(p.what()).contains("nested far deeper"));
    }

    @Test
    void a_repeated_key_is_said_and_the_first_is_kept() {
        Yaml.File file = Yaml.text("use: { duty: road, duty: track }", "twice.yaml");
        assertThat(file.problems()).singleElement().satisfies(p -> assertThat(p.what()).contains("stands twice"));
    }

    @Test
    void a_folder_and_a_missing_file_are_one_clear_sentence() {
        assertThat(Bench.READER.read(Path.of("sample-builds")).problems()).singleElement()
                .satisfies(p -> assertThat(p.what()).contains("is a folder"));
        assertThat(Bench.READER.read(Path.of("sample-builds/not-there.yaml")).problems()).singleElement()
                .satisfies(p -> assertThat(p.what()).contains("There is no file"));
    }

    @Test
    void the_sheet_s_lines_are_said_by_part_joint_or_section() {
        EngineSheet sheet = Bench.sheet(Bench.SHEET);
        assertThat(sheet.problems()).isEmpty();
        List<String> said = sheet.statements().stream().map(Bench::brief).toList();
        assertThat(said).contains("ON_SHEET layout, engine, lash, hydraulic", "ON_SHEET layout, engine, fuel burns, petrol",
                "ON_SHEET cam gear pin, intake, form, solid", "ON_SHEET joint, oil pump to block, lubricant, dry",
                "ON_SHEET joint, head to block, torque, 40 N·m", "ON_SHEET joint, cam gear to camshaft intake, torque, 60 N·m",
                "ON_SHEET standard, engine, bore, 80.00 mm");
        assertThat(sheet.limits()).hasSize(4);
        LimitLine relief = sheet.limits().get(3);
        assertThat(relief.least().orElseThrow().low()).isCloseTo(4.5e5, org.assertj.core.api.Assertions.within(1e-6));
    }

    @ParameterizedTest(name = "{0} is from {1} to {2}")
    @CsvSource({"2026-03-14, 2026-03-14, 2026-03-14", "2026-02, 2026-02-01, 2026-02-28", "2024, 2024-01-01, 2024-12-31",
            "spring 2026, 2026-03-01, 2026-05-31"})
    void an_unsharp_date_is_read_as_its_ends(String text, String first, String last) {
        Dates dates = Dates.read(text).orElseThrow();
        assertThat(dates.first()).hasToString(first);
        assertThat(dates.last()).hasToString(last);
    }
}
