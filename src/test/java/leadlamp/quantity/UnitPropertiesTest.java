package leadlamp.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What holds of units and readings whatever is written. */
class UnitPropertiesTest {

    @Provide
    Arbitrary<Unit> units() {
        return Arbitraries.of(Dimension.values()).flatMap(d -> Arbitraries.of(Units.all(d)));
    }

    @Property(seed = "20260314")
    void a_value_comes_back_from_si_as_it_went(@ForAll("units") Unit unit,
            @ForAll @BigRange(min = "-100000", max = "100000") @Scale(4) BigDecimal written) {
        double back = unit.fromSi(unit.toSi(written.doubleValue()));
        assertThat(BigDecimal.valueOf(back).setScale(4, RoundingMode.HALF_EVEN)).isEqualByComparingTo(written);
    }

    @Property(seed = "20260314")
    void more_is_more_in_every_unit(@ForAll("units") Unit unit, @ForAll @IntRange(min = -9999, max = 9999) int less,
            @ForAll @IntRange(min = 1, max = 9999) int more) {
        assertThat(unit.toSi(less + more)).isGreaterThan(unit.toSi(less));
    }

    @Property(seed = "20260314")
    void what_is_written_is_read_in_its_own_unit_to_the_last_digit(@ForAll("units") Unit unit,
            @ForAll @BigRange(min = "0", max = "9999") @Scale(3) BigDecimal figure) {
        String text = figure.toPlainString() + " " + unit.word();
        Written written = ((Reading.Read) Reading.read(text, unit.dimension(), Optional.empty())).written();
        assertThat(written.unit()).isEqualTo(unit);
        assertThat(written.figures()).isEqualTo(3);
        assertThat(BigDecimal.valueOf(unit.fromSi(written.low())).setScale(3, RoundingMode.HALF_EVEN))
                .isEqualByComparingTo(figure);
    }

    @Property(seed = "20260314")
    void a_range_is_the_same_from_either_end(@ForAll("units") Unit unit,
            @ForAll @BigRange(min = "0", max = "999") @Scale(2) BigDecimal one,
            @ForAll @BigRange(min = "0", max = "999") @Scale(2) BigDecimal other) {
        Written there = range(one, other, unit);
        Written back = range(other, one, unit);
        assertThat(there.low()).isEqualTo(back.low()).isLessThanOrEqualTo(there.high());
        assertThat(there.high()).isEqualTo(back.high());
    }

    private static Written range(BigDecimal from, BigDecimal to, Unit unit) {
        String text = "from " + from.toPlainString() + " to " + to.toPlainString() + " " + unit.word();
        return ((Reading.Read) Reading.read(text, unit.dimension(), Optional.empty())).written();
    }

    @Property(seed = "20260314")
    void any_text_is_either_read_or_refused_with_a_reason(@ForAll String text, @ForAll Dimension dimension) {
        Reading.Result result = Reading.read(text, dimension, Optional.empty());
        if (result instanceof Reading.Unread unread) {
            assertThat(unread.what()).endsWith(".");
            assertThat(unread.expected()).isNotEmpty();
            assertThat(unread.offset()).isBetween(0, text.length());
            assertThat(unread.length()).isNotNegative();
        }
    }

    @Provide
    Arbitrary<String> nearlyValues() {
        return Arbitraries.strings().withChars("0123456789.,-+±/ fromtandbelwp%muN·°C½").ofMaxLength(16);
    }

    @Property(tries = 5000, seed = "20260314")
    void nearly_right_text_is_either_read_or_refused_inside_its_own_bounds(@ForAll("nearlyValues") String text) {
        Reading.Result result = Reading.read(text, Dimension.LENGTH, Units.named("mm"));
        if (result instanceof Reading.Unread unread) {
            assertThat(unread.offset() + unread.length()).isLessThanOrEqualTo(Math.max(1, text.length() + 1));
        } else {
            Written written = ((Reading.Read) result).written();
            assertThat(!written.figure() || written.low() <= written.high()).isTrue();
        }
    }

    @Property(seed = "20260314")
    void a_share_either_way_is_centred(@ForAll @IntRange(min = 1, max = 999) int middle,
            @ForAll @IntRange(min = 0, max = 99) int part) {
        Written force = ((Reading.Read) Reading.read(middle + " N ± " + part + " %", Dimension.FORCE,
                Optional.empty())).written();
        assertThat((force.low() + force.high()) / 2).isCloseTo(middle, within(1e-9));
        assertThat(force.high() - force.low()).isCloseTo(2.0 * middle * part / 100, within(1e-9));
    }
}
