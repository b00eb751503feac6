package leadlamp.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import leadlamp.quantity.Written.Form;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the bench writes, and what becomes of it. */
class ReadingTest {
    private static final Optional<Unit> NO_ROW = Optional.empty();
    private static final Unit MM = Units.named("mm").orElseThrow();

    private static Written read(String text, Dimension dimension) {
        return ((Reading.Read) Reading.read(text, dimension, NO_ROW)).written();
    }

    private static Reading.Unread refused(String text, Dimension dimension) {
        return (Reading.Unread) Reading.read(text, dimension, NO_ROW);
    }

    @Test
    void a_plain_value_has_both_ends_together_and_keeps_its_text_unit_and_decimals() {
        assertThat(read("0.050 mm", Dimension.LENGTH))
                .isEqualTo(new Written(Form.PLAIN, 50e-6, 50e-6, MM, 3, "0.050 mm"));
        assertThat(read("80mm", Dimension.LENGTH)).isEqualTo(new Written(Form.PLAIN, 0.08, 0.08, MM, 0, "80mm"));
        assertThat(read("  -0.10 mm ", Dimension.LENGTH).low()).isEqualTo(-1e-4);
        assertThat(read("−0.10 mm", Dimension.LENGTH).low()).isEqualTo(-1e-4);
        assertThat(read("+0.50 mm", Dimension.LENGTH).low()).isEqualTo(5e-4);
        assertThat(read(".5 mm", Dimension.LENGTH).low()).isEqualTo(5e-4);
        assertThat(read("5. mm", Dimension.LENGTH).low()).isEqualTo(5e-3);
    }

    @Test
    void one_size_is_one_number_whatever_power_of_ten_its_unit_has() {
        assertThat(read("60 µm", Dimension.LENGTH).low()).isEqualTo(read("0.06 mm", Dimension.LENGTH).low());
        assertThat(read("60 µm", Dimension.LENGTH).low()).isEqualTo(read("0.006 cm", Dimension.LENGTH).low());
        assertThat(read("350 kPa", Dimension.PRESSURE).low()).isEqualTo(read("3.5 bar", Dimension.PRESSURE).low());
        assertThat(read("0.35 MPa", Dimension.PRESSURE).low()).isEqualTo(read("3.5 bar", Dimension.PRESSURE).low());
        assertThat(read("1.206 l", Dimension.VOLUME).low()).isEqualTo(read("1206 cm3", Dimension.VOLUME).low());
        assertThat(read("4.2 kohm", Dimension.RESISTANCE).low()).isEqualTo(4200);
    }

    @ParameterizedTest
    @CsvSource({ "'1/4 in', 0.00635", "'1 3/8 in', 0.034925", "'1-3/8\"', 0.034925", "'3/8 inches', 0.009525",
        "'½ in', 0.0127", "'1¼ in', 0.03175", "'1 ¼ in', 0.03175", "'-1/8 in', -0.003175", "'2 thou', 0.0000508",
        "'1/64 in', 0.000396875", "'5 ft', 1.524" })
    void inches_may_be_written_as_fractions(String text, double metres) {
        assertThat(read(text, Dimension.LENGTH).low()).isCloseTo(metres, within(1e-15));
    }

    @Test
    void a_fraction_counts_as_written_to_a_thou() {
        assertThat(read("1/4 in", Dimension.LENGTH).figures()).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({ "from 0.02 to 0.03 mm, 2", "from 0.03 to 0.02 mm, 2", "0.02 to 0.03 mm, 2", "0.02-0.03 mm, 2",
        "0.02 – 0.03 mm, 2", "between 0.02 and 0.03 mm, 2", "from 0.02 mm to 0.03 mm, 2", "from 20 µm to 0.030 mm, 3",
        "From 0.02 To 0.03 mm, 2", "0.025 ± 0.005 mm, 3", "0.025 +- 0.005 mm, 3", "0.025 +/- 0.005 mm, 3",
        "0.025 plus or minus 0.005 mm, 3", "0.025 mm ± 5 µm, 3", "0.025 ±0.005 mm, 3", "0.025 mm ± 20 %, 3" })
    void a_range_has_two_ends_that_may_stand_either_way(String text, int decimals) {
        Written range = read(text, Dimension.LENGTH);
        assertThat(range.form()).isEqualTo(Form.RANGE);
        assertThat(range.low()).isCloseTo(20e-6, within(1e-18));
        assertThat(range.high()).isCloseTo(30e-6, within(1e-18));
        assertThat(range.figures()).isEqualTo(decimals);
        assertThat(range.unit()).isEqualTo(MM);
    }

    @Test
    void a_range_may_lie_below_zero_or_across_it() {
        assertThat(read("from -0.15 to -0.05 mm", Dimension.LENGTH).low()).isEqualTo(-1.5e-4);
        assertThat(read("-0.15 to 0.05 mm", Dimension.LENGTH).high()).isEqualTo(5e-5);
        assertThat(read("-0.15--0.05 mm", Dimension.LENGTH).high()).isEqualTo(-5e-5);
        assertThat(read("-0.10 mm ± 20 %", Dimension.LENGTH).low()).isCloseTo(-1.2e-4, within(1e-18));
    }

    @Test
    void a_doubt_in_degrees_is_a_difference_and_has_no_zero_of_its_own() {
        Written warm = read("90 ± 2 °C", Dimension.TEMPERATURE);
        assertThat(warm.low()).isCloseTo(361.15, within(1e-9));
        assertThat(warm.high()).isCloseTo(365.15, within(1e-9));
        Written fahrenheit = read("212 ± 18 °F", Dimension.TEMPERATURE);
        assertThat(fahrenheit.low()).isCloseTo(363.15, within(1e-9));
        assertThat(fahrenheit.high()).isCloseTo(383.15, within(1e-9));
    }

    @Test
    void a_sum_of_written_figures_ends_at_its_last_written_place() {
        Written angle = read("18 ± 1 deg", Dimension.ANGLE);
        assertThat(angle.low()).isEqualTo(read("17 deg", Dimension.ANGLE).low());
        assertThat(angle.high()).isEqualTo(read("19 deg", Dimension.ANGLE).low());
        assertThat(read("5.0 bar ± 0.5 bar", Dimension.PRESSURE).high()).isEqualTo(550000);
    }

    @ParameterizedTest
    @ValueSource(strings = { "under 0.05 mm", "less than 0.05 mm", "below 0.05 mm", "at most 0.05 mm", "up to 0.05 mm",
        "within 0.05 mm", "no more than 0.05 mm", "not more than 0.05 mm", "< 0.05 mm", "<= 0.05 mm", "≤ 0.05 mm",
        "Under 0.05 mm", "under  50 µm", "<0.05 mm" })
    void an_upper_bound_has_its_lower_end_open(String text) {
        Written bound = read(text, Dimension.LENGTH);
        assertThat(bound.form()).isEqualTo(Form.UNDER);
        assertThat(bound.low()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(bound.high()).isEqualTo(5e-5);
        assertThat(bound.figure()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = { "over 3 mm", "more than 3 mm", "above 3 mm", "at least 3 mm", "no less than 3 mm",
        "not less than 3 mm", "> 3 mm", ">= 3 mm", "≥ 3 mm" })
    void a_lower_bound_has_its_upper_end_open(String text) {
        Written bound = read(text, Dimension.LENGTH);
        assertThat(bound.form()).isEqualTo(Form.OVER);
        assertThat(bound.low()).isEqualTo(0.003);
        assertThat(bound.high()).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @ParameterizedTest
    @CsvSource({ "least 1.8 mm, LEAST", "smallest 1.8 mm, LEAST", "lowest 1.8 mm, LEAST", "most 1.8 mm, MOST",
        "greatest 1.8 mm, MOST", "largest 1.8 mm, MOST", "highest 1.8 mm, MOST", "mean 1.8 mm, MEAN",
        "average 1.8 mm, MEAN", "alike within 1.8 mm, ALIKE_WITHIN", "Alike within 1.8 mm, ALIKE_WITHIN" })
    void one_figure_of_several_places_says_which(String text, Form form) {
        Written figure = read(text, Dimension.LENGTH);
        assertThat(figure.form()).isEqualTo(form);
        assertThat(figure.low()).isEqualTo(0.0018);
        assertThat(figure.high()).isEqualTo(0.0018);
        assertThat(figure.figures()).isEqualTo(1);
    }

    @Test
    void the_worst_of_several_places_is_asked_about_unless_one_side_alone_hurts() {
        assertThat(refused("worst 1.8 mm", Dimension.LENGTH).what()).contains("least or the greatest");
        assertThat(refused("worst 1.8 mm", Dimension.LENGTH).expected()).isEqualTo("Write least or most.");
        Reading.Result told = Reading.read("worst 1.8 mm", Dimension.LENGTH, NO_ROW, Optional.of(Form.MOST));
        assertThat(((Reading.Read) told).written().form()).isEqualTo(Form.MOST);
    }

    @ParameterizedTest
    @CsvSource({ "unknown, UNKNOWN", "not read, NOT_READ", "good, GOOD", "' Good ', GOOD", "Not read, NOT_READ" })
    void a_value_may_have_no_figure(String text, Form form) {
        Written none = read(text, Dimension.TORQUE);
        assertThat(none.form()).isEqualTo(form);
        assertThat(none.figure()).isFalse();
        assertThat(none.high()).isNaN();
        assertThat(none.unit().word()).isEqualTo("N·m");
        Reading.Result inRow = Reading.read(text, Dimension.LENGTH, Units.named("thou"));
        assertThat(((Reading.Read) inRow).written().unit().word()).isEqualTo("thou");
    }

    @Test
    void a_row_lends_its_unit_to_values_that_have_none_and_only_to_them() {
        Reading.Result lent = Reading.read("2", Dimension.LENGTH, Units.named("thou"));
        assertThat(((Reading.Read) lent).written().low()).isEqualTo(5.08e-5);
        Reading.Result own = Reading.read("0.05 mm", Dimension.LENGTH, Units.named("thou"));
        assertThat(((Reading.Read) own).written().low()).isEqualTo(5e-5);
        Reading.Result range = Reading.read("from 2 to 3", Dimension.LENGTH, Units.named("thou"));
        assertThat(((Reading.Read) range).written().high()).isCloseTo(7.62e-5, within(1e-18));
        Reading.Result share = Reading.read("7", Dimension.VOLUME_SHARE, Units.named("%"));
        assertThat(((Reading.Read) share).written().low()).isEqualTo(0.07);
        Reading.Unread wrong = (Reading.Unread) Reading.read("7", Dimension.LENGTH, Units.named("bar"));
        assertThat(wrong.what()).isEqualTo("Its row is in bar, a pressure.");
    }

    @Test
    void shares_may_be_written_either_way() {
        assertThat(read("15 %", Dimension.SHARE).low()).isEqualTo(0.15);
        assertThat(read("0.15", Dimension.SHARE).low()).isEqualTo(0.15);
        assertThat(read("3 points", Dimension.SHARE).low()).isEqualTo(0.03);
        assertThat(read("15 ± 5 %", Dimension.SHARE).high()).isEqualTo(0.2);
        assertThat(read("from 35 to 60 %", Dimension.VOLUME_SHARE).high()).isEqualTo(0.6);
    }

    @Test
    void a_plain_number_needs_no_unit_and_a_ratio_may_be_written_as_one() {
        assertThat(read("10.45", Dimension.NUMBER).low()).isEqualTo(10.45);
        assertThat(read("10.5:1", Dimension.NUMBER).low()).isEqualTo(10.5);
        assertThat(read("10.5 to 1", Dimension.NUMBER).form()).isEqualTo(Form.PLAIN);
        assertThat(read("from 1 to 1.2", Dimension.NUMBER).form()).isEqualTo(Form.RANGE);
        assertThat(read("10 to 11", Dimension.NUMBER).high()).isEqualTo(11);
        assertThat(read("36", Dimension.COUNT).low()).isEqualTo(36);
        assertThat(read("0.5 turn", Dimension.COUNT).low()).isEqualTo(0.5);
        assertThat(read("36 teeth", Dimension.COUNT).unit().word()).isEmpty();
        assertThat(refused("10.5 mm", Dimension.NUMBER).expected()).isEqualTo("A plain number is wanted.");
    }

    @Test
    void one_word_is_read_by_what_it_measures() {
        assertThat(read("1.1 g", Dimension.ACCELERATION).low()).isCloseTo(10.787315, within(1e-12));
        assertThat(read("1.1 G", Dimension.ACCELERATION).low()).isCloseTo(10.787315, within(1e-12));
        assertThat(read("1.1 g", Dimension.MASS).low()).isEqualTo(0.0011);
        assertThat(read("1 G", Dimension.MAGNETIC_FIELD).low()).isEqualTo(1e-4);
        assertThat(read("46 lb", Dimension.FORCE).unit().word()).isEqualTo("lbf");
        assertThat(read("46 lb", Dimension.MASS).unit().word()).isEqualTo("lb");
        assertThat(read("900 km", Dimension.LENGTH).low()).isEqualTo(900000);
        assertThat(read("10 °C", Dimension.TEMPERATURE).low()).isEqualTo(283.15);
        assertThat(read("10 °C", Dimension.TEMPERATURE_DIFFERENCE).low()).isEqualTo(10);
    }

    @Test
    void bare_degrees_of_a_shaft_are_asked_about() {
        Reading.Unread which = refused("108 deg", Dimension.CRANK_ANGLE);
        assertThat(which.what()).isEqualTo("\"deg\" does not say of which shaft.");
        assertThat(which.nearest()).contains("crank deg");
        assertThat(read("108 crank deg", Dimension.CRANK_ANGLE).low()).isCloseTo(Math.toRadians(108), within(1e-12));
        assertThat(read("54 cam deg", Dimension.CRANK_ANGLE).low()).isCloseTo(Math.toRadians(108), within(1e-12));
    }

    @Test
    void a_comma_is_refused_with_what_was_meant_where_that_is_plain() {
        Reading.Unread comma = refused("0,05 mm", Dimension.LENGTH);
        assertThat(comma.what()).isEqualTo("A comma stands in the figure.");
        assertThat(comma.expected())
                .isEqualTo("Decimals are written with a point, and nothing stands between thousands.");
        assertThat(comma.nearest()).contains("0.05 mm");
        assertThat(comma.offset()).isZero();
        assertThat(comma.length()).isEqualTo(4);
        assertThat(refused("60,000 km", Dimension.LENGTH).nearest()).isEmpty();
        assertThat(refused("under 0,05 mm", Dimension.LENGTH).offset()).isEqualTo(6);
    }

    @Test
    void a_missing_unit_is_named_and_the_units_that_fit_are_listed() {
        Reading.Unread missing = refused("0.05", Dimension.LENGTH);
        assertThat(missing).isEqualTo(new Reading.Unread(0, 4, "\"0.05\" has no unit.",
                "A length is written with its unit: mm, µm, cm, m, in, thou, µin, ft, km, miles.", Optional.empty()));
    }

    @Test
    void a_unit_of_something_else_is_told_apart_from_one_that_nobody_knows() {
        assertThat(refused("23 N·m", Dimension.LENGTH)).isEqualTo(new Reading.Unread(3, 3,
                "\"N·m\" is a torque; this is a length.",
                "A length is written with its unit: mm, µm, cm, m, in, thou, µin, ft, km, miles.", Optional.empty()));
        Reading.Unread unknown = refused("80 milimetres", Dimension.LENGTH);
        assertThat(unknown.what()).isEqualTo("\"milimetres\" is not a unit of length.");
        assertThat(unknown.nearest()).contains("mm");
        assertThat(unknown.offset()).isEqualTo(3);
        assertThat(unknown.length()).isEqualTo(10);
        assertThat(refused("80 parsnips", Dimension.LENGTH).nearest()).isEmpty();
        assertThat(refused("3 bra", Dimension.PRESSURE).nearest()).contains("bar");
        assertThat(refused("3 angstrom",
                Dimension.ANGLE).expected()).startsWith("An angle is written with its unit: deg");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = { "900 rpm 0.7 bar | More than one figure stands here.",
        "0.02 0.03 mm | More than one figure stands here.", "1.2.3 mm | There are two points in one figure.",
        "M8 | \"M8\" has no figure where one should stand.", "mm | \"mm\" has no figure where one should stand.",
        "under | \"\" has no figure where one should stand.", "from 3 mm | A range has two ends.",
        "25/30 in | \"25/30\" is not a fraction of an inch.", "1/4 mm | A fraction is read of inches alone.",
        "0.5 to 1/4 mm | A fraction is read of inches alone.",
        "0.02 to 0.03 to 0.04 mm | More than one figure stands here." })
    void what_cannot_be_taken_apart_is_refused_with_its_reason(String text, String what) {
        assertThat(refused(text, Dimension.LENGTH).what()).isEqualTo(what);
    }

    @Test
    void nothing_written_is_no_value() {
        assertThat(refused("", Dimension.LENGTH).what()).isEqualTo("There is no value.");
        assertThat(refused("  ", Dimension.LENGTH).length()).isEqualTo(2);
    }

    @Test
    void nothing_is_colder_than_absolute_zero() {
        assertThat(refused("-300 °C", Dimension.TEMPERATURE).what()).isEqualTo("That is colder than absolute zero.");
        assertThat(read("-273.15 °C", Dimension.TEMPERATURE).low()).isCloseTo(0, within(1e-9));
        assertThat(read("-459.67 °F", Dimension.TEMPERATURE).low()).isCloseTo(0, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = { "27 lbf.ft", "27 lbf·ft", "27 lbf ft", "27 lb ft", "27 lb.ft", "27 lb-ft", "27 ft lb",
        "27 ft-lb", "27 ft.lb", "27 ftlb", "27 ft-lbs", "27 lbs-ft", "27 LBF.FT", "27 foot pounds", "27 pound-feet",
        "27\u00a0lbf.ft" })
    void a_torque_in_pounds_and_feet_has_many_spellings(String text) {
        assertThat(read(text, Dimension.TORQUE).unit().word()).isEqualTo("lbf.ft");
        assertThat(read(text, Dimension.TORQUE).low()).isCloseTo(36.6071, within(0.0001)); // NIST SP 811, lbf.ft
    }

    @ParameterizedTest
    @ValueSource(strings = { "23 N·m", "23 Nm", "23 N.m", "23 N m", "23 N*m", "23 N-m", "23 NM", "23 nm", "23 N⋅m" })
    void a_newton_metre_has_many_spellings(String text) {
        assertThat(read(text, Dimension.TORQUE).low()).isEqualTo(23);
    }

    @Test
    void either_mu_sign_and_a_plain_u_are_micrometres() {
        for (String mu : new String[] { "\u00b5m", "\u03bcm", "um" }) {
            assertThat(read("0.8 " + mu, Dimension.LENGTH).unit().word()).isEqualTo("\u00b5m");
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = { "0.05 furlongs | 5 | 8", "'  0.05   furlongs ' | 9 | 8", "from 0.02 mm to 0.03 bra | 21 | 3",
        "under 0.05 furlongs | 11 | 8", "1.2.3 mm | 0 | 8", "1.2.3 mm and more | 0 | 17", "from 3 mm | 0 | 9", "1 25/30 in | 0 | 7",
        "900 rpm 0.7 bar | 0 | 15", "12,345,6 mm | 0 | 6", "0.05 ± 0.01 furlongs | 12 | 8", "mean mm | 5 | 2", "-mm | 0 | 3",
        "0.05 ± 20 % more | 10 | 6", "0.02 0.03 mm | 0 | 12", "0.02 mm,3 | 0 | 9" })
    void a_refusal_points_at_what_is_wrong_and_at_no_more(String text, int offset, int length) {
        Reading.Unread unread = refused(text.startsWith("'") ? text.substring(1, text.length() - 1) : text, Dimension.LENGTH);
        assertThat(unread.offset()).as(unread.what()).isEqualTo(offset);
        assertThat(unread.length()).as(unread.what()).isEqualTo(length);
    }

    @Test
    void a_word_that_may_mean_two_things_is_pointed_at() {
        assertThat(refused("  worst 1.8 mm", Dimension.LENGTH).offset()).isEqualTo(2);
        assertThat(refused("worst 1.8 mm", Dimension.LENGTH).length()).isEqualTo(5);
    }

    @Test
    void a_missing_unit_is_pointed_at_by_its_figure() {
        assertThat(refused("from 0.02 to 0.03", Dimension.LENGTH).offset()).isEqualTo(13);
        assertThat(refused("from 0.02 to 0.03", Dimension.LENGTH).length()).isEqualTo(4);
        Reading.Unread wrong = (Reading.Unread) Reading.read("under 7.5", Dimension.LENGTH, Units.named("bar"));
        assertThat(wrong.offset()).isEqualTo(6);
        assertThat(wrong.length()).isEqualTo(3);
    }

    @Test
    void a_figure_colder_than_can_be_and_a_fraction_of_a_millimetre_are_pointed_at() {
        assertThat(refused("under -300 °C", Dimension.TEMPERATURE).offset()).isEqualTo(6);
        assertThat(refused("under -300 °C", Dimension.TEMPERATURE).length()).isEqualTo(4);
        assertThat(refused("under 1/4 mm", Dimension.LENGTH).offset()).isEqualTo(6);
        assertThat(refused("under 1/4 mm", Dimension.LENGTH).length()).isEqualTo(3);
        assertThat(read("0 K", Dimension.TEMPERATURE).low()).isZero();
    }

    @Test
    void nothing_may_follow_a_ratio_or_a_share_of_it() {
        assertThat(read("10.5 to 2", Dimension.NUMBER).form()).isEqualTo(Form.RANGE);
        assertThat(read("10.5 to 2", Dimension.NUMBER).low()).isEqualTo(2);
        assertThat(read("10.5 and 1", Dimension.NUMBER).low()).isEqualTo(10.5);
    }

    @Test
    void of_a_range_in_two_units_the_second_is_kept() {
        Written range = read("from 20 µm to 0.030 mm", Dimension.LENGTH);
        assertThat(range.unit().word()).isEqualTo("mm");
        Written share = read("0.30 mm ± 0.05 %", Dimension.LENGTH);
        assertThat(share.figures()).isEqualTo(4);
        assertThat(share.high()).isCloseTo(0.30015e-3, within(1e-15));
        assertThat(read("0.5 ± 0.025 mm", Dimension.LENGTH).low()).isEqualTo(0.475e-3);
    }

    @Test
    void words_and_dashes_that_join_two_figures_need_a_second() {
        assertThat(read("2 -3 mm", Dimension.LENGTH).high()).isEqualTo(3e-3);
        assertThat(read("2 - 3 mm", Dimension.LENGTH).low()).isEqualTo(2e-3);
        assertThat(read("27 ft-lb", Dimension.TORQUE).form()).isEqualTo(Form.PLAIN);
        assertThat(read("0.2 -.3 mm", Dimension.LENGTH).high()).isEqualTo(0.3e-3);
        assertThat(refused("3 tomm", Dimension.LENGTH).what()).isEqualTo("\"tomm\" is not a unit of length.");
    }

    @Test
    void absolute_zero_itself_may_be_written_and_nothing_colder() {
        assertThat(read("-273.15 °C", Dimension.TEMPERATURE).low()).isCloseTo(0, within(1e-9));
        assertThat(read("0 K", Dimension.TEMPERATURE).low()).isZero();
        assertThat(refused("-273.16 °C", Dimension.TEMPERATURE).what()).isEqualTo("That is colder than absolute zero.");
        assertThat(refused("from -300 to 20 °C", Dimension.TEMPERATURE)).satisfies(cold -> {
            assertThat(cold.what()).isEqualTo("That is colder than absolute zero.");
            assertThat("from -300 to 20 °C".substring(cold.offset(), cold.offset() + cold.length())).isEqualTo("-300");
        });
    }

    @ParameterizedTest
    @ValueSource(strings = { "NaN mm", "nan mm", ".nan", "inf mm", ".inf", "-.inf", "Infinity mm", "∞ mm", ". mm", "- mm", "+ mm" })
    void what_is_no_figure_is_refused_with_the_units_that_were_expected(String text) {
        Reading.Unread refused = refused(text, Dimension.LENGTH);
        assertThat(refused.expected()).startsWith("A length is written with its unit: mm");
        assertThat(refused.what()).isNotEmpty();
        assertThat(refused.offset() + refused.length()).isLessThanOrEqualTo(text.length());
    }

    @Test
    void nothing_may_stand_behind_a_share_either_way_or_a_ratio() {
        assertThat(read("0.025 mm ± 20 % ", Dimension.LENGTH).high()).isCloseTo(30e-6, within(1e-18));
        assertThat(read("10.5 to 1 ", Dimension.NUMBER)).isEqualTo(new Written(Form.PLAIN, 10.5, 10.5, Units.usual(Dimension.NUMBER), 1, "10.5 to 1 "));
    }

    @Test
    void a_dash_joins_two_figures_and_stands_before_one() {
        assertThat(read("0.02 mm - 0.03 mm", Dimension.LENGTH).high()).isCloseTo(3e-5, within(1e-18));
        assertThat(read("0.02 - .03 mm", Dimension.LENGTH).high()).isCloseTo(3e-5, within(1e-18));
    }

    @Test
    void a_figure_beyond_all_engines_is_refused_and_the_largest_that_may_be_is_read() {
        assertThat(read("1000000000000 Pa", Dimension.PRESSURE).low()).isEqualTo(1e12);
        for (String text : new String[] { "1000000000001 Pa", "9".repeat(400) + " Pa", "from 1 to 9999999999999 Pa" }) {
            Reading.Unread refused = refused(text, Dimension.PRESSURE);
            assertThat(refused.what()).isEqualTo("That figure is larger than anything at the bench.");
            assertThat(text.substring(refused.offset(), refused.offset() + refused.length())).matches("\\d+");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = { "1e3 mm", "1E3 mm", "1.5e-3 mm", "1.5 e+3 mm", "1e300" })
    void a_power_of_ten_is_refused_as_such(String text) {
        Reading.Unread refused = refused(text, Dimension.LENGTH);
        assertThat(refused.what()).isEqualTo("A figure is written out, without a power of ten.");
        assertThat(refused.offset()).isZero();
        assertThat(text.substring(0, refused.length())).matches("[0-9.]+ ?[eE][-+]?[0-9]+");
    }

    @Test
    void a_word_that_begins_with_an_e_is_no_power_of_ten() {
        assertThat(refused("3 e mm", Dimension.LENGTH).what()).isEqualTo("\"e mm\" is not a unit of length.");
        assertThat(refused("3 e", Dimension.LENGTH).what()).isEqualTo("\"e\" is not a unit of length.");
        assertThat(refused("3 e-", Dimension.LENGTH).what()).contains("is not a unit of length");
    }
}
