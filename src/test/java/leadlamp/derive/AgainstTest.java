package leadlamp.derive;

import static leadlamp.derive.Bench.full;
import static leadlamp.derive.Bench.in;
import static leadlamp.derive.Bench.lacks;
import static leadlamp.derive.Bench.value;
import static leadlamp.derive.Bench.values;
import static leadlamp.derive.Bench.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leadlamp.facts.Value;
import org.junit.jupiter.api.Test;

class AgainstTest {
    @Test
    void a_cut_that_this_record_does_not_have_is_what_the_head_lost_beyond_it() {
        String height = "measurements: [{ head height: 129.70 mm, with: height gauge }]\n";
        assertThat(in(value(worked(height + "machining: [{ head face: mill, removed: 0.10 mm }]"), "head cut not in record", "engine")))
                .isCloseTo(0.20, within(1e-9));
        assertThat(in(value(worked(height + "machining: [{ head face: none }]"), "head cut not in record", "engine")))
                .isCloseTo(0.30, within(1e-9));
        assertThat(lacks(worked(height), "head cut not in record", "engine")).containsExactly("machining head face removed");
    }

    @Test
    void room_under_each_bolt_is_told_in_turns_of_its_thread() {
        Value read = value(worked("measurements: [{ hole bottom room: 5.5 mm, at: cam cap to head, with: depth rule }]"),
                "hole bottom room in pitches", "cam cap to head");
        assertThat(in(read)).as("M6x1").isCloseTo(5.5, within(1e-9));
        Value head = value(full("full-sound-tarn-12.yaml"), "hole bottom room in pitches", "head to block 2");
        assertThat(in(head)).as("7.9 mm under bolt 2, M10x1.25").isCloseTo(7.9 / 1.25, within(1e-9));
        assertThat(lacks(worked("measurements: [{ hole bottom room: 5.5 mm, at: cam cap to head, with: depth rule }]",
                Bench.SHEET.replace("thread: M6x1, ", "")), "hole bottom room in pitches", "cam cap to head")).containsExactly("joint thread");
    }

    @Test
    void a_clutch_is_rated_over_what_is_asked_of_it() {
        assertThat(in(value(worked("use: { target torque: 120 N·m }"), "clutch rating over target", "engine"))).isCloseTo(1.5, within(1e-9));
        assertThat(lacks(worked("use: { duty: road }"), "clutch rating over target", "engine")).containsExactly("use target torque");
    }

    @Test
    void the_ratio_over_the_sheets_keeps_the_doubt_of_the_ratio() {
        Derivation.Worked worked = worked("measurements: [{ compression ratio: [11.2, 11.0, 10.4], doubt: 0.1 }]");
        Value first = value(worked, "compression ratio over sheet", "1");
        assertThat(in(first)).isCloseTo(0.7, within(1e-9));
        assertThat(first.low().orElseThrow().standardUncertainty()).isCloseTo(0.05, within(1e-9));
        assertThat(in(value(worked, "compression ratio over sheet", "3"))).isCloseTo(-0.1, within(1e-9));
    }

    @Test
    void play_that_was_looked_for_and_not_seen_is_no_free_turn() {
        Derivation.Worked clear = worked("observations: [{ trigger disc: clear, of: play }]\nmeasurements: [{ trigger disc tooth count: 35 }]");
        assertThat(in(value(clear, "trigger free angle", "engine"))).isZero();
        assertThat(in(value(clear, "trigger free share", "engine"))).isZero();
        Derivation.Worked seen = worked("observations: [{ trigger disc: play, amount: 0.8 mm, at radius: 62 mm }]");
        assertThat(in(value(seen, "trigger free angle", "engine"))).as("0.8 over 62 of a radian").isCloseTo(Math.toDegrees(0.8 / 62), within(0.001));
        assertThat(values(worked("build: { name: nothing told }"), "trigger free angle")).isEmpty();
        assertThat(values(worked("observations: [{ trigger disc: play }]"), "trigger free angle")).as("how much was not told").isEmpty();
    }

    @Test
    void a_journal_is_held_against_the_means_of_the_other_journals() {
        String record = """
                measurements:
                  - { main journal diameter: [48.000, 48.002, 48.001, 48.000], unit: mm, at: [main 1 front at 0, main 1 front at 90, main 1 rear at 0, main 1 rear at 90] }
                  - { main journal diameter: [47.990, 47.980, 47.970], unit: mm, at: [main 2, main 3, main 4] }
                """;
        assertThat(in(value(worked(record), "main journal size difference", "main 1"))).as("48.00075 less the middle of three")
                .isCloseTo(0.02075, within(1e-9));
        assertThat(in(value(worked(record), "main journal size difference", "main 2"))).as("less the middle of 48.00075, 47.98 and 47.97")
                .isCloseTo(0.01, within(1e-9));
    }

    @Test
    void one_journal_alone_has_no_others_to_be_held_against() {
        Derivation.Worked worked = worked("""
                measurements:
                  - { main journal diameter: [48.000, 48.002, 48.001, 48.000], unit: mm, at: [main 1 front at 0, main 1 front at 90, main 1 rear at 0, main 1 rear at 90] }
                """, "sheet: a thin one, invented\n");
        assertThat(values(worked, "main journal size difference")).isEmpty();
        assertThat(worked.problems()).isEmpty();
    }

    @Test
    void a_piston_is_given_a_clearance_hot_only_where_the_record_tells_the_heat() {
        String sizes = """
                measurements:
                  - { cylinder bore: [80.010, 80.010, 80.010], unit: mm }
                  - { piston skirt diameter: [79.960, 79.960, 79.960], unit: mm }
                """;
        assertThat(values(worked(sizes), "piston clearance hot")).isEmpty();
        assertThat(lacks(worked(sizes), "piston clearance hot", "1")).containsExactly("use running temperature", "coolant temperature");
        Derivation.Worked told = worked(sizes + "  - { coolant temperature: 80 °C }\nuse: { running temperature: 80 °C }\n");
        assertThat(in(value(told, "piston clearance hot", "1"))).as("0.050 mm less 60 K of the difference of both metals").isLessThan(0.02);
    }

    @Test
    void the_full_build_has_no_cut_that_its_record_does_not_have() {
        Derivation.Worked tarn = full("full-sound-tarn-12.yaml");
        assertThat(in(value(tarn, "head cut not in record", "engine"))).isCloseTo(0, within(1e-9));
        assertThat(values(tarn, "gauge check age")).as("every gauge of the record was checked").hasSize(14);
        assertThat(values(tarn, "piston clearance hot")).isEmpty();
    }
}
