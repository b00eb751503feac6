package leadlamp.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.record.LimitLine;
import leadlamp.record.Where;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which of two lines is the more particular, and what a place and a name say. */
class ParticularTest {
    private static int particular(String at, int words, String when, boolean speed) {
        Map<String, String> where = new TreeMap<>();
        for (int i = 0; i < words; i++) {
            where.put("word " + i, "yes");
        }
        return Limits.particular(new LimitLine("piston clearance", at, Optional.empty(), Optional.empty(), Optional.empty(), "", when, where,
                speed ? Map.of("speed", "3000 rpm") : Map.of(), false, "", new Where("", 1, 1)));
    }

    @Test
    void a_longer_place_goes_before_a_shorter_one_and_any_place_before_all_words() {
        assertThat(particular("1 top thrust", 0, "", false)).isGreaterThan(particular("1 top", 9, "cold", true));
        assertThat(particular("1 top", 0, "", false)).isGreaterThan(particular("1", 9, "cold", true));
        assertThat(particular("1", 0, "", false)).isGreaterThan(particular("", 9, "cold", true));
    }

    @Test
    void each_word_goes_before_how_the_reading_was_taken() {
        assertThat(particular("", 2, "", false)).isGreaterThan(particular("", 1, "cold", true));
        assertThat(particular("", 1, "", false)).isGreaterThan(particular("", 0, "cold", true));
    }

    @Test
    void when_and_speed_each_make_a_line_more_particular() {
        assertThat(particular("", 0, "", false)).isZero();
        assertThat(particular("", 0, "cold", false)).isPositive();
        assertThat(particular("", 0, "", true)).isPositive();
        assertThat(particular("", 0, "cold", true)).isGreaterThan(particular("", 0, "cold", false)).isGreaterThan(particular("", 0, "", true));
    }

    @ParameterizedTest(name = "{0}: trunk {1}, cylinder {2}, joint {3}")
    @CsvSource(nullValues = "-", value = { "1 top thrust, 1, 1, -", "12 first, 12, 12, -", "main 2 upper, main 2, -, -", "main 10, main 10, -, -",
        "big end 3 at 90, big end 3, 3, -", "main front, -, -, -", "1 and 2, -, -, -", "1st, -, -, -", "engine, -, -, -", "'', -, -, -",
        "head to block 7, -, -, head to block", "head to block 10, -, -, head to block", "head to block, -, -, -", "main cap 2, -, -, -",
        "head to block 7a, -, -, -" })
    void what_a_place_stands_on(String place, String trunk, String cylinder, String joint) {
        assertThat(Marks.trunk(place)).isEqualTo(Optional.ofNullable(trunk));
        assertThat(Marks.cylinder(place)).isEqualTo(Optional.ofNullable(cylinder));
        assertThat(Marks.joint(place)).isEqualTo(Optional.ofNullable(joint));
    }

    @Test
    void a_name_says_whether_it_is_of_what_was_found_or_of_a_trial() {
        assertThat(Marks.trial("piston to head gap as trial")).isTrue();
        assertThat(Marks.trial("piston to head gap")).isFalse();
        assertThat(Marks.found("crankshaft end float as found")).isTrue();
        assertThat(Marks.found("crankshaft end float")).isFalse();
        assertThat(Marks.unmarked("crankshaft end float as found")).isEqualTo("crankshaft end float");
        assertThat(Marks.unmarked("crankshaft end float as trial")).isEqualTo("crankshaft end float as trial");
        assertThat(Marks.untold("one of 1, 2")).isTrue();
        assertThat(Marks.untold("some of 1, 2")).isTrue();
        assertThat(Marks.untold("1")).isFalse();
    }

    /** The lines of one hand that hold if the reading was taken cold, or hot: of each way the most particular alone is taken. */
    @Test
    void of_the_lines_for_one_way_of_reading_the_most_particular_is_taken() {
        Shop shop = Shop.limits("""
                valve lash:
                  - { most: 0.30 mm, when: cold }
                  - { at: 1, most: 0.20 mm, when: cold }
                  - { most: 0.40 mm, when: hot }
                """);
        assertThat(shop.measured("- { valve lash: 0.25 mm, at: 1 intake, with: feeler gauge, state: cold }").on("valve lash", "1 intake"))
                .isEqualTo("above");
        assertThat(shop.measured("- { valve lash: 0.25 mm, at: 2 intake, with: feeler gauge, state: cold }").on("valve lash", "2 intake"))
                .isEqualTo("within");
        assertThat(shop.measured("- { valve lash: 0.45 mm, at: 2 intake, with: feeler gauge, state: hot }").on("valve lash", "2 intake"))
                .isEqualTo("above");
    }

    @ParameterizedTest(name = "wanted {0}, material {1}: {2}")
    @CsvSource(delimiter = '|', value = { "aluminium, cast iron | aluminium | within", "aluminium, cast iron | cast iron | within",
        "aluminium, cast iron | steel | none", "cast iron | cast iron | within", "iron | cast iron | none" })
    void a_line_may_name_several_words_of_which_one_must_hold(String wanted, String material, String verdict) {
        Shop shop = Shop.silent().trade("""
                piston clearance:
                  - { most: 0.10 mm, for: { piston material: '%s' }, kind: reason to look, basis: "common practice, no source" }
                """.formatted(wanted));
        assertThat(shop.record("parts: [{ piston: kept, at: each, material: " + material + " }]\n"
                + "measurements: [{ piston clearance: 0.05 mm, at: 1, with: feeler gauge }]").on("piston clearance", "1")).isEqualTo(verdict);
    }
}
