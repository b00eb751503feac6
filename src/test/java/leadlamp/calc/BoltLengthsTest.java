package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** That 2 mm part two lengths is common practice, no source: stock lengths step by more. */
class BoltLengthsTest {
    @Test
    void lengths_are_one_or_two_beyond_their_doubt() {
        assertThat(BoltLengths.held(0.070, 0.0705, 0.001)).isEqualTo(BoltLengths.Held.SAME);
        assertThat(BoltLengths.held(0.070, 0.065, 0.001)).isEqualTo(BoltLengths.Held.OTHER);
        assertThat(BoltLengths.held(0.070, 0.072, 0.001)).isEqualTo(BoltLengths.Held.OPEN);
    }

    @Test
    void a_set_is_the_same_whichever_hole_each_bolt_stands_in() {
        assertThat(BoltLengths.sameCounts(new double[] {0.025, 0.040, 0.070}, new double[] {0.070, 0.025, 0.0405})).isTrue();
        assertThat(BoltLengths.sameCounts(new double[] {0.025, 0.025}, new double[] {0.025, 0.040})).isFalse();
        assertThat(BoltLengths.sameCounts(new double[] {0.025}, new double[] {0.025, 0.025})).isFalse();
    }

    @Test
    void a_bolt_has_a_length() {
        assertThatThrownBy(() -> BoltLengths.held(0, 0.025, 0)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The length of a bolt must be above zero.");
        assertThatThrownBy(() -> BoltLengths.held(0.025, 0.025, -1)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The doubt of the length must not be below zero.");
    }
}
