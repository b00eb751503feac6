package leadlamp.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Print;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The worked numbers of JCGM 106, ISO 14253-1 and ILAC-G8, held against a limit of a sheet. The sums know no unit, so volts and
 * pressures stand as millimetres of end float.
 */
class ConformityInPrintThroughTheJudgeTest {
    private static final String FLOAT = "crankshaft end float";

    static Stream<Print.Entry> entries(Set<String> groups, String expected) {
        return Print.of("conformity").stream().filter(e -> groups.contains(e.group()) && e.expected().get(0).name().equals(expected));
    }

    static Stream<Print.Entry> quantiles() {
        return entries(Set.of("one-sided"), "z");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("quantiles")
    void a_value_so_many_standard_uncertainties_inside_its_limit_conforms_with_the_printed_probability(Print.Entry e) {
        double z = e.expects("z").number();
        Verdict verdict = Shop.limits(FLOAT + ": { most: 1 mm }\n").value(FLOAT, 1 - 0.01 * z, 0.01).at(FLOAT, "engine");
        // The table gives z to two places.
        assertThat(1 - verdict.most().orElseThrow().outside()).as(e.toString()).isCloseTo(e.input("probability").number(), within(0.002));
    }

    static Stream<Print.Entry> probabilities() {
        return entries(Set.of("one-sided", "two-sided"), "probability");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("probabilities")
    void a_measured_value_conforms_with_the_printed_probability(Print.Entry e) {
        Verdict verdict = Shop.limits(FLOAT + ": { " + sides(e) + " }\n").value(FLOAT, n(e, "estimate"), n(e, "standard uncertainty"))
                .at(FLOAT, "engine");
        double outside = verdict.least().map(Verdict.Side::outside).orElse(0.0) + verdict.most().map(Verdict.Side::outside).orElse(0.0);
        assertThat(1 - outside).as(e.toString()).isCloseTo(e.expects("probability").number(), within(e.expects("probability").tolerance()));
    }

    static Stream<Print.Entry> outcomes() {
        return entries(Set.of("three-outcomes"), "outcome");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("outcomes")
    void a_value_nearer_to_its_limit_than_its_doubt_is_undecided(Print.Entry e) {
        String verdict = Shop.limits(FLOAT + ": { " + sides(e) + " }\n").value(FLOAT, n(e, "value"), n(e, "U") / 2).on(FLOAT);
        assertThat(verdict).as(e.toString()).isEqualTo(e.has("lower limit") ? "within, undecided" : (String) e.expects("outcome").raw());
    }

    static Stream<Print.Entry> acceptance() {
        return entries(Set.of("three-outcomes"), "acceptance limit");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("acceptance")
    void conformity_is_proven_up_to_the_printed_acceptance_limit_and_no_further(Print.Entry e) {
        Shop shop = Shop.limits(FLOAT + ": { " + sides(e) + " }\n");
        double edge = e.expects("acceptance limit").number();
        assertThat(shop.value(FLOAT, edge, n(e, "U") / 2).on(FLOAT)).isEqualTo("within");
        assertThat(shop.value(FLOAT, edge + 0.0001, n(e, "U") / 2).on(FLOAT)).isEqualTo("undecided");
    }

    static Stream<Print.Entry> rejection() {
        return entries(Set.of("three-outcomes"), "rejection limit");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rejection")
    void nonconformity_is_proven_beyond_the_printed_rejection_limit_and_not_before(Print.Entry e) {
        Shop shop = Shop.limits(FLOAT + ": { " + sides(e) + " }\n");
        double edge = e.expects("rejection limit").number();
        assertThat(shop.value(FLOAT, edge + 0.0001, n(e, "U") / 2).on(FLOAT)).isEqualTo("above");
        assertThat(shop.value(FLOAT, edge - 0.0001, n(e, "U") / 2).on(FLOAT)).isEqualTo("undecided");
    }

    static Stream<Print.Entry> guardBands() {
        return entries(Set.of("guard-band"), "probability below");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("guardBands")
    void behind_a_guard_band_no_more_is_taken_wrongly_than_print_allows(Print.Entry e) {
        double band = n(e, "guard band");
        Verdict verdict = Shop.limits(FLOAT + ": { most: 1 mm }\n").value(FLOAT, 1 - band * 0.02, 0.01).at(FLOAT, "engine");
        assertThat(100 * verdict.most().orElseThrow().outside()).as(e.toString()).isLessThanOrEqualTo(e.expects("probability below").number() + 1e-9);
        // Our own band is the whole expanded uncertainty: less proves nothing.
        assertThat(verdict.most().orElseThrow().standing()).isEqualTo(band >= 1 ? Verdict.Standing.WITHIN : Verdict.Standing.UNDECIDED);
    }

    @Test
    void the_one_sided_band_for_95_percent_is_narrower_than_ours() {
        Print.Entry e = Print.of("conformity").stream().filter(one -> one.id().equals("iso14253-guard-factor")).findFirst().orElseThrow();
        Verdict verdict = Shop.limits(FLOAT + ": { most: 1 mm }\n").value(FLOAT, 1 - 0.01 * e.expects("g / u").number(), 0.01).at(FLOAT, "engine");
        assertThat(1 - verdict.most().orElseThrow().outside()).as(e.toString()).isCloseTo(n(e, "probability"), within(0.001));
        assertThat(verdict.most().orElseThrow().standing()).isEqualTo(Verdict.Standing.UNDECIDED);
    }

    @Test
    void what_is_surely_above_at_999_in_1000_is_above_for_us() {
        Print.Entry e = Print.of("conformity").stream().filter(one -> one.id().equals("jcgm106-speed-limit")).findFirst().orElseThrow();
        double from = e.expects("acceptance limit").number();
        Shop shop = Shop.limits(FLOAT + ": { most: " + e.input("limit").raw() + " mm }\n");
        assertThat(shop.value(FLOAT, from, from * n(e, "relative standard uncertainty")).on(FLOAT)).as(e.toString()).isEqualTo("above");
    }

    @Test
    void no_printed_number_is_passed_over() {
        List<String> held = Stream.of(quantiles(), probabilities(), outcomes(), acceptance(), rejection(), guardBands())
                .flatMap(s -> s).map(Print.Entry::id).toList();
        assertThat(Print.of("conformity").stream().map(Print.Entry::id).filter(id -> !held.contains(id)))
                .containsExactlyInAnyOrder("iso14253-guard-factor", "jcgm106-speed-limit");
    }

    private static String sides(Print.Entry e) {
        String least = e.has("lower limit") ? "least: " + plain(e, "lower limit") : "";
        String most = e.has("upper limit") ? "most: " + plain(e, "upper limit") : "";
        return least + (least.isEmpty() || most.isEmpty() ? "" : ", ") + most;
    }

    private static String plain(Print.Entry e, String name) {
        return new BigDecimal(String.valueOf(e.input(name).raw())).toPlainString() + " mm";
    }

    private static double n(Print.Entry e, String name) {
        return e.input(name).number();
    }
}
