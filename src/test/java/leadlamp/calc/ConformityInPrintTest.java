package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import leadlamp.quantity.Print;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Probability of conformity, guard bands and the three outcomes against print. */
class ConformityInPrintTest {
    private static final Sums SUMS = new Sums("conformity").asPrinted()
            .one("z-one-sided-8", ConformityInPrintTest::quantile)
            .one("z-one-sided-9", ConformityInPrintTest::quantile)
            .one("z-one-sided-95", ConformityInPrintTest::quantile)
            .one("z-one-sided-99", ConformityInPrintTest::quantile)
            .one("z-one-sided-999", ConformityInPrintTest::quantile)
            .one("jcgm106-zener", e -> Conformity.probability(n(e, "estimate"), n(e, "standard uncertainty"),
                    Double.NEGATIVE_INFINITY, n(e, "upper limit")))
            .one("jcgm106-container", e -> Conformity.probability(n(e, "estimate"), n(e, "standard uncertainty"),
                    n(e, "lower limit"), Double.POSITIVE_INFINITY))
            .one("jcgm106-oil", e -> Conformity.probability(n(e, "estimate"), n(e, "standard uncertainty"),
                    n(e, "lower limit"), n(e, "upper limit")))
            .sum("jcgm106-speed-limit", e -> {
                double from = Conformity.surelyAbove(n(e, "limit"), n(e, "relative standard uncertainty"),
                        n(e, "probability"));
                return Map.of("acceptance limit", from, "guard band", from - n(e, "limit"));
            })
            .one("ilac-g8-three-sigma", e -> 100 * Conformity.falseAccept(n(e, "guard band")))
            .one("ilac-g8-u-95", e -> 100 * Conformity.falseAccept(n(e, "guard band")))
            .one("ilac-g8-iso-14253", e -> 100 * Conformity.falseAccept(n(e, "guard band")))
            .one("ilac-g8-simple", e -> 100 * Conformity.falseAccept(n(e, "guard band")))
            .one("iso14253-guard-factor", e -> Conformity.guardBand(1, n(e, "probability")))
            .one("iso14253-acceptance-limit", e -> n(e, "upper limit") - n(e, "U"))
            .one("iso14253-rejection-limit", e -> n(e, "upper limit") + n(e, "U"))
            .leave("iso14253-example-1", "an outcome, held below")
            .leave("iso14253-example-2", "an outcome, held below")
            .leave("iso14253-example-3", "an outcome, held below");

    static Stream<Print.Entry> entries() {
        return SUMS.worked();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("entries")
    void our_sum_is_the_printed_one(Print.Entry entry) {
        SUMS.agrees(entry);
    }

    @Test
    void no_entry_is_passed_over() {
        SUMS.nothingIsPassedOver();
    }

    private static double quantile(Print.Entry e) {
        return Normal.quantile(n(e, "probability"));
    }

    /** Volts and pressures of the examples are compared as printed. */
    private static double n(Print.Entry e, String name) {
        return e.input(name).number();
    }

    static Stream<Print.Entry> outcomes() {
        return Print.of("conformity").stream().filter(e -> e.expected().get(0).name().equals("outcome"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("outcomes")
    void a_value_nearer_to_its_limit_than_its_doubt_is_undecided(Print.Entry e) {
        Conformity.Zone zone = Conformity.zone(n(e, "value"), n(e, "U"),
                e.has("lower limit") ? n(e, "lower limit") : Double.NEGATIVE_INFINITY, n(e, "upper limit"));
        assertThat(zone.name().toLowerCase(Locale.ROOT)).isEqualTo(e.expected().get(0).raw());
    }

    @Test
    void a_value_on_its_acceptance_limit_is_within_and_past_its_rejection_limit_above() {
        // ISO 14253-1, the case with U 0.015 mm against 20.05 mm
        double none = Double.NEGATIVE_INFINITY;
        assertThat(Conformity.zone(20.035, 0.015, none, 20.05)).isEqualTo(Conformity.Zone.WITHIN);
        assertThat(Conformity.zone(20.0355, 0.015, none, 20.05)).isEqualTo(Conformity.Zone.UNDECIDED);
        assertThat(Conformity.zone(20.0645, 0.015, none, 20.05)).isEqualTo(Conformity.Zone.UNDECIDED);
        assertThat(Conformity.zone(20.0655, 0.015, none, 20.05)).isEqualTo(Conformity.Zone.ABOVE);
    }
}
