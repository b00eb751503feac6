package leadlamp.derive;

import static leadlamp.derive.Bench.doubt;
import static leadlamp.derive.Bench.in;
import static leadlamp.derive.Bench.lacks;
import static leadlamp.derive.Bench.said;
import static leadlamp.derive.Bench.upTo;
import static leadlamp.derive.Bench.value;
import static leadlamp.derive.Bench.values;
import static leadlamp.derive.Bench.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.record.Problem;
import org.junit.jupiter.api.Test;

/** How values are worked out, whichever they are. */
class DerivationTest {
    private static final String MAIN_BY_SIZES = """
            measurements:
              - { main bearing bore with shells: 48.022 mm, at: main 1, with: bore gauge }
              - { main journal diameter: 47.985 mm, at: main 1, with: micrometer }
            """;

    @Test
    void what_is_read_at_longer_places_is_taken_together_at_the_shorter_one() {
        Derivation.Worked worked = worked("""
                measurements:
                  - { cylinder bore: [80.031, 80.010, 80.004], unit: mm, at: [1 top thrust, 1 mid thrust, 1 bottom thrust], with: bore gauge }
                """);
        Value taper = value(worked, "cylinder taper", "1");
        assertThat(in(taper)).isCloseTo(0.027, within(1e-9));
        assertThat(taper.sum()).isEqualTo("80.031 mm at 1 top thrust - 80.004 mm at 1 bottom thrust = 0.027 mm");
    }

    @Test
    void what_is_said_of_the_whole_engine_holds_at_every_place() {
        Derivation.Worked worked = worked("""
                parts: [{ head gasket: new, compressed thickness: 1.10 mm }]
                measurements: [{ piston height: [-0.10, -0.11, 0.05], unit: mm, with: dial gauge }]
                """);
        assertThat(values(worked, "piston to head gap")).extracting(Value::at).containsExactly("1", "2", "3");
        assertThat(value(worked, "piston to head gap", "3").sum()).as("a piston above the face").isEqualTo("1.10 mm - 0.05 mm = 1.05 mm");
    }

    @Test
    void each_end_of_a_range_is_worked_and_goes_to_the_side_that_it_moves_to() {
        Derivation.Worked worked = worked("""
                measurements:
                  - { main bearing bore with shells: 48.022 mm, at: main 1, with: bore gauge }
                  - { main journal diameter: from 47.981 to 47.985 mm, at: main 1, with: micrometer }
                """);
        Value value = value(worked, "main bearing clearance", "main 1");
        assertThat(in(value)).as("over the thickest of the journal").isCloseTo(0.037, within(1e-9));
        assertThat(upTo(value)).as("over the thinnest").isCloseTo(0.041, within(1e-9));
    }

    @Test
    void an_open_end_stays_open_on_the_side_that_it_moves_to() {
        Derivation.Worked worked = worked("""
                measurements:
                  - { main bearing bore with shells: 48.022 mm, at: main 1, with: bore gauge }
                  - { main journal diameter: under 47.960 mm, at: main 1, with: micrometer }
                """);
        Value value = value(worked, "main bearing clearance", "main 1");
        assertThat(in(value)).as("at least that much").isCloseTo(0.062, within(1e-9));
        assertThat(value.high()).isEmpty();
    }

    @Test
    void what_lacks_a_reading_says_which_and_where() {
        Derivation.Worked worked = worked("measurements: [{ main journal diameter: [47.985, 47.984], unit: mm, at: [main 1, main 2] }]");
        assertThat(values(worked, "main bearing clearance")).isEmpty();
        assertThat(lacks(worked, "main bearing clearance", "main 1")).containsExactly("main bearing bore with shells");
        assertThat(lacks(worked, "main bearing clearance", "main 2")).containsExactly("main bearing bore with shells");
    }

    @Test
    void what_nothing_was_read_of_is_lacking_down_to_the_readings_behind_it() {
        assertThat(lacks(worked("build: { name: an empty one }"), "main bearing clearance spread", "engine"))
                .containsExactly("main bearing bore with shells", "main journal diameter");
    }

    @Test
    void a_value_that_is_read_too_is_the_reading() {
        Derivation.Worked worked = worked(MAIN_BY_SIZES + "  - { main bearing clearance: 0.040 mm, at: main 1, with: plastic gauge }\n");
        assertThat(values(worked, "main bearing clearance")).isEmpty();
        assertThat(in(Bench.reading(worked, "main bearing clearance"))).isCloseTo(0.040, within(1e-9));
        assertThat(said(worked, "main bearing clearance", "main 1", "two ways")).containsExactly("agree");
    }

    @Test
    void two_ways_that_lie_further_apart_than_both_doubts_allow_are_said_to_differ_with_both_figures() {
        Derivation.Worked worked = worked(MAIN_BY_SIZES + "  - { main bearing clearance: 0.090 mm, at: main 1, with: plastic gauge }\n");
        Stated differ = worked.words().stream().filter(s -> s.what().equals("two ways")).findFirst().orElseThrow();
        assertThat(differ.of()).isEqualTo("main bearing clearance");
        assertThat(differ.at()).isEqualTo("main 1");
        assertThat(differ.says()).isEqualTo("differ");
        assertThat(differ.asides()).containsEntry("read", "0.090 mm").containsEntry("worked out", "bore 48.022 mm - journal 47.985 mm = 0.037 mm");
        assertThat(differ.places()).as("the lines of both").hasSize(3);
    }

    @Test
    void a_figure_that_was_only_told_does_not_stand_in_the_way_of_the_sizes() {
        Derivation.Worked worked = worked(MAIN_BY_SIZES + "  - { main bearing clearance: 0.090 mm, at: main 1, told by: owner }\n");
        assertThat(in(value(worked, "main bearing clearance", "main 1"))).isCloseTo(0.037, within(1e-9));
    }

    @Test
    void what_rests_on_a_told_figure_is_told() {
        Derivation.Worked worked = worked("""
                measurements:
                  - { main bearing bore with shells: 48.022 mm, at: main 1, told by: seller }
                  - { main journal diameter: 47.985 mm, at: main 1 }
                """);
        assertThat(value(worked, "main bearing clearance", "main 1").told()).isEqualTo("seller");
    }

    @Test
    void the_usual_doubt_of_one_reading_is_the_usual_doubt_of_the_sum() {
        assertThat(value(worked(MAIN_BY_SIZES), "main bearing clearance", "main 1").usual()).isTrue();
    }

    @Test
    void a_formula_that_refuses_its_figures_is_said_at_the_bench_and_in_the_record_s_line() {
        Derivation.Worked worked = worked("""
                measurements:
                  - { combustion chamber volume: 32.3 cm3, at: 1, with: burette }
                  - { piston height: 9.0 mm, at: 1 }
                  - { piston crown volume: 4.0 cm3, at: 1 }
                  - { head gasket bore: 81.5 mm }
                  - { cylinder bore: 80.00 mm, at: 1 }
                parts: [{ head gasket: new, compressed thickness: 1.10 mm }]
                """);
        assertThat(values(worked, "compression ratio")).isEmpty();
        Problem problem = worked.problems().stream().filter(p -> p.what().contains("compression ratio at 1")).findFirst().orElseThrow();
        assertThat(problem.where().file()).isEqualTo("build.yaml");
        assertThat(problem.where().line()).isBetween(2, 7);
        assertThat(problem.line()).isNotBlank();
        assertThat(problem.rest()).contains("compression ratio", "cannot tell");
        assertThat(lacks(worked, "compression ratio", "1")).isNotEmpty();
    }

    @Test
    void what_is_read_of_every_plain_bearing_is_said_by_the_bearing_s_own_name() {
        Derivation.Worked worked = worked(MAIN_BY_SIZES);
        assertThat(value(worked, "main bearing clearance", "main 1").kind()).isEqualTo("plain bearing clearance");
        assertThat(values(worked, "plain bearing clearance")).as("not twice under two names").isEmpty();
    }

    @Test
    void a_hole_less_a_shaft_is_a_fit_too_whatever_its_name() {
        Value fit = value(worked(MAIN_BY_SIZES), "fit by sizes", "main 1");
        assertThat(fit.kind()).isEqualTo("main bearing clearance");
        assertThat(in(fit)).isCloseTo(0.037, within(1e-9));
    }

    @Test
    void a_fit_read_at_the_warmth_of_a_hand_is_off_by_what_both_grow() {
        String sizes = """
                measurements:
                  - { cylinder bore: 80.010 mm, at: 1, temperature: 20 °C }
                  - { piston skirt diameter: 79.960 mm, at: 1, temperature: 30 °C }
                """;
        Value shift = value(worked(sizes), "warmth shift", "1");
        assertThat(shift.kind()).isEqualTo("piston clearance");
        // Ten degrees of a piston of 80 mm at 23 millionths a degree; the cold bore adds none.
        assertThat(in(shift)).isCloseTo(79.96 * 23e-6 * 10, within(1e-4));
        assertThat(lacks(worked(sizes.replace(", temperature: 30 °C", "")), "warmth shift", "1")).containsExactly("reading temperatures");
        assertThat(lacks(worked(sizes, "sheet: a thin one, invented\nlayout: { cylinders: 3 }\n"), "warmth shift", "1")).containsExactly("sheet materials");
    }

    @Test
    void parts_that_lay_in_one_room_have_the_warmth_of_its_air() {
        Derivation.Worked worked = worked("""
                measurements:
                  - { cylinder bore: 80.010 mm, at: 1 }
                  - { piston skirt diameter: 79.960 mm, at: 1 }
                  - { workshop air temperature: 10 °C, with: thermometer }
                """);
        assertThat(in(value(worked, "warmth shift", "1"))).as("iron 80.01 mm x 10.5, less 79.96 mm x 23, millionths x 10 K")
                .isCloseTo((80.01 * 10.5e-6 - 79.96 * 23e-6) * 10, within(1e-4));
    }

    @Test
    void machining_that_comes_after_a_reading_is_added() {
        String record = """
                measurements: [{ valve recession: 1.05 mm, at: 1 intake, date: 2026-02-01 }]
                machining: [{ valve seat: cut, at: 1 intake, removed: 0.10 mm, date: %s }]
                """;
        assertThat(in(value(worked(record.formatted("2026-02-10")), "valve recession after work", "1 intake"))).isCloseTo(1.15, within(1e-9));
        assertThat(in(value(worked(record.formatted("2026-01-10")), "valve recession after work", "1 intake"))).isCloseTo(1.05, within(1e-9));
    }

    @Test
    void only_what_is_asked_for_is_worked_and_what_it_rests_on() {
        Derivation.Worked all = Bench.full("full-sound-tarn-12.yaml");
        Derivation.Worked one = Bench.fullOf("full-sound-tarn-12.yaml", "compression ratio spread"::equals);
        assertThat(values(one, "compression ratio spread")).isEqualTo(values(all, "compression ratio spread"));
        assertThat(values(one, "compression ratio")).isEqualTo(values(all, "compression ratio"));
        assertThat(values(one, "hole bottom room")).isEmpty();
        assertThat(one.derived().size()).isLessThan(all.derived().size() / 10);
    }

    @Test
    void the_order_of_lines_does_not_change_what_comes_out() {
        String one = """
                  - { main bearing bore with shells: 48.022 mm, at: main 1, with: bore gauge }
                """;
        String other = """
                  - { main journal diameter: 47.985 mm, at: main 1, with: micrometer }
                """;
        Value first = value(worked("measurements:\n" + one + other), "main bearing clearance", "main 1");
        Value second = value(worked("measurements:\n" + other + one), "main bearing clearance", "main 1");
        assertThat(second.low()).isEqualTo(first.low());
        assertThat(second.sum()).isEqualTo(first.sum());
    }

    @Test
    void place_and_time_of_the_reader_change_nothing() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        Derivation.Worked here = Bench.full("full-sound-tarn-12.yaml");
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-SA-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            Derivation.Worked there = Bench.full("full-sound-tarn-12.yaml");
            assertThat(there.derived()).isEqualTo(here.derived());
            assertThat(there.words()).isEqualTo(here.words());
            assertThat(there.missing()).isEqualTo(here.missing());
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void doubt_is_added_source_by_source() {
        Value gap = value(worked("""
                parts: [{ head gasket: new, compressed thickness: 1.10 mm }]
                measurements: [{ piston height: -0.10 mm, at: 1, doubt: 0.02 mm }]
                """), "piston to head gap", "1");
        assertThat(doubt(gap)).as("0.02 mm and a rectangle of half a hundredth").isCloseTo(2 * Math.hypot(0.01, 0.005 / Math.sqrt(3)), within(1e-6));
        assertThat(gap.low().orElseThrow().chiefSource()).isEqualTo("reading of piston height at 1");
    }

    @Test
    void a_record_that_says_nothing_works_nothing_out_and_stumbles_over_nothing() {
        Derivation.Worked worked = worked("build: { name: an empty one }", "sheet: nothing known, invented\n");
        assertThat(worked.readings()).isEmpty();
        assertThat(worked.problems()).isEmpty();
        assertThat(worked.missing()).isNotEmpty().allSatisfy(m -> assertThat(m.readings()).as(m.quantity()).isNotEmpty());
    }

    @Test
    void every_full_build_is_worked_without_a_refusal() {
        for (String name : List.of("full-sound-tarn-12.yaml", "full-sound-osier-18.yaml", "full-sound-scree-52.yaml")) {
            assertThat(Bench.full(name).problems()).as(name).isEmpty();
        }
    }
}
