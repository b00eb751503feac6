package leadlamp.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Marks as makers stamp them on the backs of shells: common practice, no source. */
class ShellMarksTest {
    private static final double QUARTER = 0.25e-3;

    @ParameterizedTest
    @ValueSource(strings = {"standard", "STD", "std.", "0"})
    void a_standard_shell_is_of_no_undersize(String mark) {
        assertThat(CrankSizes.undersize(mark)).hasValue(0.0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-0.25", "0.25", "0.25 mm", ".010", "0.010", "010", "10", "10 thou"})
    void the_first_undersize_is_one_step_however_it_is_stamped(String mark) {
        assertThat(CrankSizes.undersize(mark).orElseThrow()).isCloseTo(QUARTER, within(0.005e-3));
    }

    @ParameterizedTest
    @ValueSource(strings = {"red", "two notches", "", "A1"})
    void a_colour_is_no_size(String mark) {
        assertThat(CrankSizes.undersize(mark)).isEmpty();
    }

    @Test
    void half_a_bearing_belongs_to_the_whole() {
        assertThat(Bearing.of("big end 2 upper")).isEqualTo("big end 2");
        assertThat(Bearing.of("main 3")).isEqualTo("main 3");
        assertThat(Bearing.cylinder("big end 2")).isEqualTo("2");
    }
}
