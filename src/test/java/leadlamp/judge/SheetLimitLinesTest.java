package leadlamp.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leadlamp.quantity.Written;
import leadlamp.record.LimitLine;
import org.junit.jupiter.api.Test;

/** Which lines of limits a sheet gives outside `limits`: each by its quantity, its place and its two ends as they were written. */
class SheetLimitLinesTest {
    private static List<LimitLine> lines(String sections) {
        return SheetLimits.of(Shop.sheet(sections).record("").build().sheet());
    }

    private static List<String> inWords(String sections) {
        return lines(sections).stream().map(l -> l.quantity() + " at " + (l.at().isEmpty() ? "any" : l.at()) + ": "
                + l.least().map(Written::text).orElse("open") + " to " + l.most().map(Written::text).orElse("open")).toList();
    }

    @Test
    void a_sealant_gives_its_times_to_every_joint_that_it_seals() {
        assertThat(inWords("""
                joints:
                  sump to block: { bolts: 14, torque: 10 N·m, sealant: grey paste }
                  front cover to block: { bolts: 8, torque: 10 N·m, sealant: other paste }
                sealants:
                  grey paste: { open time: 10 min, cure time: 24 h }
                """)).containsExactlyInAnyOrder("joint marked at sump to block: 14 to open", "joint marked at front cover to block: 8 to open",
                "sealant open time at sump to block: open to 10 min", "sealant cure time at sump to block: 24 h to open");
    }

    @Test
    void a_seal_gives_the_rest_that_its_lip_wants_and_nothing_else() {
        assertThat(inWords("seals: { rear crank seal: { kind: lip, rest: 4 h, depth: 0.5 mm } }"))
                .containsExactly("lip rest time at rear crank seal: 4 h to open");
    }

    @Test
    void a_timing_tolerance_is_the_most_of_every_play_in_the_drive_and_both_ends_of_the_cam_s_error() {
        List<LimitLine> lines = lines("timing: { cam timing tolerance: 2 crank deg }");
        assertThat(lines).extracting(LimitLine::quantity).containsExactly("cam gear rock", "crank gear rock", "chain lag", "cam timing error",
                "cam timing error");
        double two = Math.toRadians(2);
        for (LimitLine line : lines.subList(0, 3)) {
            assertThat(line.least()).isEmpty();
            assertThat(line.most().orElseThrow().high()).isCloseTo(two, within(1e-12));
        }
        assertThat(lines.get(3).least().orElseThrow().low()).isCloseTo(-two, within(1e-12));
        assertThat(lines.get(3).least().orElseThrow().high()).isCloseTo(-two, within(1e-12));
        assertThat(lines.get(3).most()).isEmpty();
        assertThat(lines.get(4).most().orElseThrow().high()).isCloseTo(two, within(1e-12));
    }

    @Test
    void a_sensor_gives_its_winding_as_read_at_its_heat_and_as_brought_to_twenty_degrees() {
        List<LimitLine> lines = lines("sensors: { crank sensor: { kind: coil, resistance: { least: 500 ohm, most: 700 ohm }, at: 25 °C } }");
        assertThat(lines).extracting(LimitLine::quantity).containsExactly("sensor resistance corrected", "crank sensor resistance",
                "sensor resistance corrected", "crank sensor resistance");
        assertThat(lines.get(0).at()).isEqualTo("crank sensor");
        assertThat(lines.get(0).asides()).isEmpty();
        assertThat(lines.get(1).at()).isEmpty();
        assertThat(lines.get(1).asides()).containsEntry("temperature", "25 °C");
        assertThat(lines.get(3).asides()).containsEntry("temperature", "25 °C");
    }

    @Test
    void years_are_years_whether_the_sheet_writes_the_word_or_not() {
        for (String years : List.of("3", "3 years")) {
            List<LimitLine> lines = lines("drive: { timing belt: { kind: belt, drives: camshafts, change after: { years: " + years
                    + " } } }\nlives: { water pump: { years: " + years + ", distance: 100000 km } }");
            assertThat(lines).as(years).extracting(LimitLine::quantity).containsExactlyInAnyOrder("timing belt years", "companion age at next change");
            for (LimitLine line : lines) {
                assertThat(line.most().orElseThrow().high()).as(line.toString()).isCloseTo(3 * 365.25 * 86400, within(1.0));
                assertThat(line.least()).isEmpty();
            }
        }
    }

    @Test
    void a_tension_worked_out_of_a_note_has_the_sheet_s_limits_of_tension() {
        assertThat(inWords("limits: { timing belt tension: { at: timing belt, least: 150 N, most: 200 N } }"))
                .containsExactly("belt tension from note at timing belt: 150 N to 200 N");
    }

    @Test
    void words_in_the_place_of_a_size_give_no_limit() {
        assertThat(inWords("joints: { sump to block: { bolts: some, uses: often, torque: 10 N·m } }\nseals: { rear crank seal: { kind: lip, rest: a night } }"))
                .isEmpty();
    }
}
