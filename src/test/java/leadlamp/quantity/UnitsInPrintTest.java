package leadlamp.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every unit that a record may be written in, against the factors in print. */
class UnitsInPrintTest {
    /** Energy, inertia, fuel distance and dynamic viscosity: nothing of them is ever read. */
    private static final Set<String> NOT_READ = Set.of("foot-pound-force", "pound-per-horsepower-hour", "centipoise",
            "poise", "pound-foot-squared", "pound-inch-squared", "mile-per-us-gallon");

    static Stream<Print.Entry> conversions() {
        return Print.of("units").stream().filter(e -> !NOT_READ.contains(e.id()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("conversions")
    void a_unit_has_the_factor_that_stands_in_print(Print.Entry entry) {
        Print.Figure from = entry.inputs().get(0);
        Print.Figure to = entry.expected().get(0);
        Dimension dimension = entry.computes().startsWith("an interval") ? Dimension.TEMPERATURE_DIFFERENCE
                : Units.named(clean(from.unit())).orElseThrow().dimension();
        double si = Units.named(clean(from.unit()), dimension).orElseThrow().toSi(from.number());
        double ours = Units.named(clean(to.unit()), dimension).orElseThrow().fromSi(si);
        assertThat(ours).as(entry.toString())
                .isCloseTo(to.number(), within(Math.max(to.tolerance(), 1e-12 * Math.abs(to.number()) + 1e-12)));
    }

    static Stream<Print.Entry> twoUnits() {
        return Print.of("inspection-limits").stream().filter(e -> e.expected().stream()
                .anyMatch(f -> f.name().contains("as printed in mm")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("twoUnits")
    void inches_and_millimetres_of_a_printed_limit_are_one_size_or_the_print_is_known_to_be_wrong(Print.Entry entry) {
        Print.Entry millimetres = entry.only("as printed in mm");
        Map<String, Double> ours = new HashMap<>();
        for (Print.Figure figure : millimetres.expected()) {
            double inches = entry.expects(figure.name().replace(", as printed in mm", "")).number();
            ours.put(figure.name(), read(BigDecimal.valueOf(inches).toPlainString() + " in"));
        }
        millimetres.agreesWith(ours);
    }

    static Stream<Print.Entry> printedPairs() {
        return Print.of("inspection-limits").stream().filter(e -> e.has("printed"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("printedPairs")
    void a_limit_printed_in_two_units_is_read_alike_in_both(Print.Entry entry) {
        Print.Figure printed = entry.input("printed");
        String text = printed.raw() + " " + printed.unit();
        Dimension dimension = Units.named(printed.unit()).orElseThrow().dimension();
        Written written = ((Reading.Read) Reading.read(text, dimension, Optional.empty())).written();
        for (Print.Figure figure : entry.expected()) {
            double ours = figure.fromSi(figure.name().startsWith("most") ? written.high() : written.low());
            assertThat(ours).as(entry.toString()).isCloseTo(figure.number(), within(figure.tolerance()));
        }
    }

    @Test
    void two_grams_are_seven_hundredths_of_an_ounce() {
        // The table prints 0.0705 oz for 2 g (inspection limits of a lift truck's pistons).
        assertThat(Units.named("oz").orElseThrow().toSi(0.0705)).isCloseTo(0.002, within(0.00001));
    }

    /** The tables name a unit with its definition behind it. */
    private static String clean(String unit) {
        return switch (unit) {
            case "thou (mil, 0.001 in)" -> "thou";
            default -> unit;
        };
    }

    private static double read(String text) {
        return ((Reading.Read) Reading.read(text, Dimension.LENGTH, Optional.empty())).written().low();
    }
}
