package leadlamp.derive;

import static leadlamp.derive.Bench.in;
import static leadlamp.derive.Bench.lacks;
import static leadlamp.derive.Bench.value;
import static leadlamp.derive.Bench.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What was cut off after a reading was taken is taken off the reading; what was cut before it is in it already. */
class CutsTest {
    private static Derivation.Worked depth(String read, String... cuts) {
        return worked("machining: [" + String.join(", ", cuts) + "]\n"
                + "measurements: [{ ring seat depth: 1.20 mm, at: 1" + read + " }]\n");
    }

    private static double left(String read, String... cuts) {
        return in(value(depth(read, cuts), "ring seat depth left", "1"));
    }

    @Test
    void a_cut_after_the_reading_comes_off_it() {
        assertThat(left(", date: 2026-01-10", "{ head face: mill, removed: 0.20 mm, date: 2026-02-01 }")).isCloseTo(1.00, within(1e-9));
    }

    @Test
    void a_cut_before_the_reading_is_in_it() {
        assertThat(left(", date: 2026-02-10", "{ head face: mill, removed: 0.20 mm, date: 2026-02-01 }")).isCloseTo(1.20, within(1e-9));
    }

    @Test
    void of_two_cuts_the_later_alone_comes_off() {
        assertThat(left(", date: 2026-01-10", "{ head face: mill, removed: 0.20 mm, date: 2025-12-01 }",
                "{ head face: mill, removed: 0.05 mm, date: 2026-02-01 }")).isCloseTo(1.15, within(1e-9));
    }

    @Test
    void a_reading_of_no_date_is_of_the_part_as_it_is() {
        assertThat(left("", "{ head face: mill, removed: 0.20 mm, date: 2026-02-01 }")).isCloseTo(1.20, within(1e-9));
        assertThat(left(", date: 2026-01-10", "{ head face: mill, removed: 0.20 mm }")).isCloseTo(1.20, within(1e-9));
    }

    @Test
    void a_later_cut_of_which_nobody_knows_the_depth_leaves_nothing_to_say() {
        assertThat(lacks(depth(", date: 2026-01-10", "{ head face: mill, date: 2026-02-01 }"), "ring seat depth left", "1"))
                .containsExactly("machining block face removed");
    }
}
