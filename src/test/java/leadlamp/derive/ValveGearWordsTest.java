package leadlamp.derive;

import static leadlamp.derive.Bench.lacks;
import static leadlamp.derive.Bench.said;
import static leadlamp.derive.Bench.value;
import static leadlamp.derive.Bench.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ValveGearWordsTest {
    private static final String FLAT = """
            sheet: Flat one
            layout: { arrangement: in-line, cylinders: 2, valves: { intake: 1, exhaust: 1 }, valve gear: pushrod, lash: solid, followers: flat, camshafts: one }
            standard: { valve lift: 8.0 mm }
            output: { rev limit: 5000 rpm }
            limits:
              valve spring open load: { least: 390 N, most: 410 N }
              valve lash: { least: 0.10 mm, most: 0.20 mm, when: cold }
            """;

    private static List<String> mates(String record) {
        return said(worked(record, FLAT), "camshaft", "engine", "mates");
    }

    @Test
    void a_follower_knows_its_own_lobe_and_no_other() {
        assertThat(mates("parts: [{ camshaft: kept }, { cam follower: kept, at: each }]")).containsExactly("own lobes");
        assertThat(mates("parts: [{ camshaft: new }, { cam follower: kept, at: each }]")).containsExactly("old on new");
        assertThat(mates("parts: [{ camshaft: second-hand }, { cam follower: kept, at: each }]")).containsExactly("old on other");
        assertThat(mates("parts: [{ camshaft: new }, { cam follower: new, at: each }]")).containsExactly("both new");
    }

    @Test
    void one_old_follower_among_new_ones_is_old_on_new() {
        assertThat(mates("parts: [{ camshaft: new }, { cam follower: new, at: [1 intake, 1 exhaust, 2 intake] }, { cam follower: kept, at: 2 exhaust }]"))
                .containsExactly("old on new");
    }

    @Test
    void followers_that_were_ground_with_their_lobes_are_as_good_as_new() {
        String parts = "parts: [{ camshaft: kept }, { cam follower: kept, at: each }]\n";
        assertThat(mates(parts + "machining: [{ camshaft: grind }]")).containsExactly("old on ground");
        assertThat(mates(parts + "machining: [{ camshaft: grind }, { cam follower: grind, at: each }]")).containsExactly("both new");
    }

    @Test
    void of_followers_that_nobody_tells_of_the_state_is_what_is_lacking() {
        assertThat(mates("parts: [{ camshaft: new }]")).isEmpty();
        assertThat(lacks(worked("parts: [{ camshaft: new }]", FLAT), "camshaft mates", "engine")).containsExactly("cam follower state");
    }

    @Test
    void a_lash_read_hot_is_told_from_a_figure_for_a_cold_engine() {
        String hot = "measurements: [{ valve lash: 0.15 mm, at: each, state: hot }]";
        assertThat(said(worked(hot, FLAT), "valve", "engine", "heat at setting")).containsExactly("hot by cold figure");
        assertThat(said(worked(hot.replace("hot", "cold"), FLAT), "valve", "engine", "heat at setting")).containsExactly("as sheet");
        assertThat(said(worked(hot, FLAT.replace(", when: cold", "")), "valve", "engine", "heat at setting")).containsExactly("as sheet");
    }

    @Test
    void a_tenth_more_speed_takes_a_sixth_of_what_the_springs_have_in_hand() {
        Derivation.Worked worked = worked("use: { rev limit: 5500 rpm }\nmeasurements: [{ valve spring open load: 400 N, at: each }]", FLAT);
        assertThat(value(worked, "weakest valve spring margin", "engine").low().orElseThrow().value()).isCloseTo(1 / 1.21, within(1e-9));
        assertThat(said(worked, "valve spring", "engine", "speed rating")).containsExactly("reckoned");
    }

    @Test
    void on_lobes_of_another_drawing_the_lift_of_the_sheet_is_nobodys() {
        String record = "use: { rev limit: 5500 rpm }\nparts: [{ camshaft: new, origin: uprated }]\n"
                + "measurements: [{ valve spring open load: 400 N, at: each }]";
        Derivation.Worked worked = worked(record, FLAT);
        assertThat(said(worked, "valve spring", "engine", "speed rating")).isEmpty();
        assertThat(lacks(worked, "valve spring speed rating", "engine")).containsExactly("valve spring rated speed");
    }

    @Test
    void a_short_record_makes_no_question_of_a_valve_gear_that_it_never_opened() {
        assertThat(worked("parts: [{ crankshaft: kept }]", FLAT).words()).noneMatch(w -> w.what().endsWith("in question")
                && List.of("valve", "valve spring", "collet", "cam lobe", "cam follower", "rocker", "pushrod", "camshaft").contains(w.of()));
    }
}
