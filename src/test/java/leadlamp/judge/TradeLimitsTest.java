package leadlamp.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The trade's numbers: what is refused when they are read, and that they come through compiling unchanged. */
class TradeLimitsTest {
    private static void refused(Map<String, String> topics, String... why) {
        assertThatThrownBy(() -> Shop.tradeLimits(topics)).isInstanceOf(IllegalArgumentException.class).hasMessageContainingAll(why);
    }

    private static void refused(String limits, String... why) {
        refused(Map.of("bottom-end", limits), why);
    }

    @Test
    void two_topics_may_not_limit_one_quantity() {
        String line = "crankshaft end float: { most: 0.25 mm, kind: reason to look, basis: \"common practice, no source\" }\n";
        refused(Map.of("bottom-end", line, "history", line), "history/limits.yaml:1:23: the crankshaft end float has its limits in "
                + "bottom-end/limits.yaml already. One topic gives a quantity its limits.");
    }

    @Test
    void a_number_says_where_it_comes_from() {
        refused("crankshaft end float: { most: 0.25 mm, kind: reason to look }\n", "bottom-end/limits.yaml:1:23", "says where it comes from");
        refused("crankshaft end float: { most: 0.25 mm, kind: reason to look, basis: '' }\n", "says where it comes from");
    }

    @Test
    void a_number_says_whether_it_is_a_limit() {
        refused("crankshaft end float: { most: 0.25 mm, basis: somewhere }\n", "`kind: limit` or `kind: reason to look`");
    }

    @Test
    void two_lines_for_one_case_are_refused() {
        refused("""
                crankshaft end float:
                  - { most: 0.25 mm, kind: reason to look, basis: "common practice, no source" }
                  - { most: 0.30 mm, kind: reason to look, basis: "common practice, no source" }
                """, "bottom-end/limits.yaml:3:5: the crankshaft end float is limited twice for one case", "see line 2");
    }

    @Test
    void two_lines_that_may_both_hold_are_refused_unless_one_is_the_more_particular() {
        refused("""
                piston clearance:
                  - { most: 0.05 mm, for: { piston form: cast }, kind: reason to look, basis: "common practice, no source" }
                  - { most: 0.08 mm, for: { use duty: competition }, kind: reason to look, basis: "common practice, no source" }
                """, "limited twice for one case");
        assertThat(Shop.tradeLimits(Map.of("bottom-end", """
                piston clearance:
                  - { most: 0.05 mm, for: { piston form: cast }, kind: reason to look, basis: "common practice, no source" }
                  - { most: 0.08 mm, for: { piston form: forged }, kind: reason to look, basis: "common practice, no source" }
                  - { most: 0.10 mm, for: { piston form: forged, use duty: competition }, kind: reason to look, basis: "common practice, no source" }
                valve stem clearance:
                  - { at: intake, most: 0.05 mm, kind: reason to look, basis: "common practice, no source" }
                  - { at: exhaust, most: 0.07 mm, kind: reason to look, basis: "common practice, no source" }
                """)).quantities()).containsExactly("piston clearance", "valve stem clearance");
    }

    @Test
    void lines_for_two_states_of_the_reading_or_two_speeds_shut_each_other_out() {
        assertThat(Shop.tradeLimits(Map.of("lubrication", """
                valve lash:
                  - { when: cold, most: 0.25 mm, kind: reason to look, basis: "common practice, no source" }
                  - { when: hot, most: 0.20 mm, kind: reason to look, basis: "common practice, no source" }
                engine oil pressure:
                  - { speed: idle, least: 1 bar, kind: reason to look, basis: "common practice, no source" }
                  - { speed: 3000 rpm, least: 3 bar, kind: reason to look, basis: "common practice, no source" }
                """)).quantities()).containsExactly("engine oil pressure", "valve lash");
    }

    @Test
    void lines_for_two_places_that_one_thing_may_have_together_are_refused() {
        refused("""
                valve stem clearance:
                  - { at: intake, most: 0.05 mm, kind: reason to look, basis: "common practice, no source" }
                  - { at: front, most: 0.07 mm, kind: reason to look, basis: "common practice, no source" }
                """, "limited twice for one case");
        refused("""
                piston clearance:
                  - { most: 0.05 mm, for: { piston form: 'cast, forged' }, kind: reason to look, basis: "common practice, no source" }
                  - { most: 0.08 mm, for: { piston form: forged }, kind: reason to look, basis: "common practice, no source" }
                """, "limited twice for one case");
    }

    @Test
    void a_word_that_nobody_can_write_is_refused_with_the_nearest() {
        refused("crankshaft end flaot: { most: 0.25 mm, kind: limit, basis: somewhere }\n", "crankshaft end flaot", "crankshaft end float");
        refused("piston clearance: { most: 0.1 mm, for: { piston forn: cast }, kind: limit, basis: somewhere }\n", "piston forn", "piston form");
        refused("valve stem clearance: { at: intaek, most: 0.1 mm, kind: limit, basis: somewhere }\n", "\"intaek\" is no word of a place", "intake");
        refused("piston clearance: { most: 0.1 %, times: cylinder boar, kind: limit, basis: somewhere }\n", "cylinder boar");
        refused("piston clearance: { mots: 0.1 mm, kind: limit, basis: somewhere }\n", "mots", "most");
    }

    @Test
    void a_line_without_a_number_is_refused() {
        refused("crankshaft end float: { standard: 0.2 mm, kind: limit, basis: somewhere }\n", "neither `least` nor `most`");
    }

    @Test
    void all_that_is_wrong_is_said_at_once() {
        refused("crankshaft end float: { most: 0.25 mm }\ncylinder taper: { most: 0.05 furlongs, kind: limit, basis: somewhere }\n",
                "limits.yaml:1:", "limits.yaml:2:");
    }

    @Test
    void the_rules_own_numbers_are_sound() throws IOException {
        assertThat(TradeLimits.ofFolder(Shop.RULES, Shop.WORDS).quantities()).contains("piston ring end gap", "piston to head gap");
    }

    @Test
    void compiled_they_are_what_they_were() throws IOException {
        TradeLimits read = TradeLimits.ofFolder(Shop.RULES, Shop.WORDS);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        read.compile(out);
        TradeLimits compiled = TradeLimits.read(out.toByteArray());
        assertThat(compiled.quantities()).isEqualTo(read.quantities()).isNotEmpty();
        for (String quantity : read.quantities()) {
            assertThat(compiled.of(quantity)).isEqualTo(read.of(quantity));
        }
        ByteArrayOutputStream again = new ByteArrayOutputStream();
        compiled.compile(again);
        assertThat(again.toByteArray()).isEqualTo(out.toByteArray());
    }

    @Test
    void the_program_carries_the_numbers_of_the_rules() throws IOException {
        assumeThat(TradeLimits.class.getResource(TradeLimits.RESOURCE)).as("made by the build step").isNotNull();
        TradeLimits read = TradeLimits.ofFolder(Shop.RULES, Shop.WORDS);
        assertThat(TradeLimits.compiled().quantities()).isEqualTo(read.quantities());
        for (String quantity : read.quantities()) {
            assertThat(TradeLimits.compiled().of(quantity)).isEqualTo(read.of(quantity));
        }
    }

    @Test
    void a_file_of_another_form_is_refused() {
        assertThatThrownBy(() -> TradeLimits.read(new byte[] {0, 0, 0, 99})).isInstanceOf(IOException.class)
                .hasMessageContaining("another version");
    }
}
