package leadlamp.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainTest {
    @Test
    void what_steers_a_terminal_is_shown_and_not_obeyed() {
        assertThat(Plain.of("\u001B[31mred\u0007")).isEqualTo("\\u001B[31mred\\u0007");
        assertThat(Plain.of("\u009B31m and \u007F")).isEqualTo("\\u009B31m and \\u007F");
    }

    @Test
    void what_turns_the_direction_of_a_line_is_shown() {
        assertThat(Plain.of("a\u202Eb\u200Fc")).isEqualTo("a\\u202Eb\\u200Fc");
    }

    @Test
    void half_a_pair_is_shown_by_its_number_and_a_whole_pair_stays() {
        assertThat(Plain.of("\uD83D")).isEqualTo("\\uD83D");
        assertThat(Plain.of("\uD83D\uDD27")).isEqualTo("\uD83D\uDD27");
    }

    @Test
    void a_tab_becomes_a_blank_and_ordinary_text_stays_the_same_object() {
        assertThat(Plain.of("a\tb")).isEqualTo("a b");
        String text = "23 N·m, 80 µm, crankpin Ø 42 ± 0.01 mm";
        assertThat(Plain.of(text)).isSameAs(text);
    }
}
