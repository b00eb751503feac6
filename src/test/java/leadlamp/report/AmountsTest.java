package leadlamp.report;

import static leadlamp.rank.Handmade.MM;
import static leadlamp.rank.Handmade.below;
import static leadlamp.rank.Handmade.read;
import static leadlamp.rank.Handmade.within;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Unit;
import org.junit.jupiter.api.Test;

class AmountsTest {
    private static final Unit THOU = new Unit("thou", Dimension.LENGTH, 0.0000254, 0);

    @Test
    void a_value_keeps_the_decimals_it_was_written_with_and_its_doubt_follows() {
        assertThat(Amounts.of(read("x", "1", 4.90, 2, 0.006, "micrometer", 1))).isEqualTo("4.90 ± 0.006 mm");
        assertThat(Amounts.of(read("x", "1", -0.10, 2, 0.02, "dial gauge", 1))).isEqualTo("-0.10 ± 0.02 mm");
    }

    @Test
    void a_record_in_inches_is_answered_in_inches() {
        assertThat(Amounts.of(value(end(0.0000508), end(0.0000508), THOU, 1))).isEqualTo("2.0 thou");
    }

    @Test
    void a_range_and_a_bound_read_as_they_were_written() {
        assertThat(Amounts.of(value(end(0.00008), end(0.00009), MM, 2))).isEqualTo("from 0.08 to 0.09 mm");
        assertThat(Amounts.of(value(Optional.empty(), end(0.00005), MM, 2))).isEqualTo("under 0.05 mm");
        assertThat(Amounts.of(value(end(0.003), Optional.empty(), MM, 0))).isEqualTo("over 3 mm");
    }

    @Test
    void a_doubt_has_one_figure_or_two_where_the_first_is_a_1_or_2() { // JCGM 100, 7.2.6: two at most
        assertThat(Amounts.doubt(0.0000072, MM)).isEqualTo("0.007 mm");
        assertThat(Amounts.doubt(0.0000124, MM)).isEqualTo("0.012 mm");
        assertThat(Amounts.doubt(0.0000096, MM)).isEqualTo("0.01 mm");
        assertThat(Amounts.doubt(0.250, MM)).isEqualTo("250 mm");
        assertThat(Amounts.doubt(0.4, MM)).isEqualTo("400 mm");
    }

    @Test
    void a_limit_is_printed_as_exactly_as_it_was_written() {
        assertThat(Amounts.limit(0.000025, MM, 1)).isEqualTo("0.025 mm");
        assertThat(Amounts.limit(0.00497, MM, 3)).isEqualTo("4.970 mm");
        assertThat(Amounts.limit(0.1, MM, 0)).isEqualTo("100 mm");
    }

    @Test
    void a_limit_of_another_unit_has_one_decimal_more_than_the_reading() {
        Unit inch = new Unit("in", Dimension.LENGTH, 0.0254, 0);

        assertThat(Amounts.limit(0.00005, inch, 4)).isEqualTo("0.00197 in");
        assertThat(Amounts.limit(0.0000508, inch, 4)).isEqualTo("0.0020 in");
    }

    @Test
    void a_sentence_speaks_of_the_side_that_is_broken() {
        Value pin = read("cam gear pin diameter", "intake", 4.90, 2, 0.006, "micrometer", 1);

        assertThat(Amounts.side(below(pin, 4.97, LimitUsed.Whose.SHEET))).isEqualTo("4.97 mm");
        assertThat(Amounts.side(within(pin, 4.80, 5.02))).isEqualTo("from 4.80 to 5.02 mm");
    }

    @Test
    void figures_are_the_same_in_every_country() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Amounts.number(1234.5, 2)).isEqualTo("1234.50");
            assertThat(Amounts.share(0.42)).isEqualTo("42 %");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void a_probability_never_sounds_surer_than_it_is() {
        assertThat(Amounts.share(0.004)).isEqualTo("less than 1 %");
        assertThat(Amounts.share(0.996)).isEqualTo("more than 99 %");
    }

    private static Optional<Estimate> end(double si) {
        return Optional.of(Estimate.exact(si, Dimension.LENGTH));
    }

    private static Value value(Optional<Estimate> low, Optional<Estimate> high, Unit unit, int figures) {
        return new Value("x", "x", "1", low, high, unit, figures, "", false, "", "", new TreeMap<>(Map.of()),
                List.of());
    }
}
