package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Stream;
import leadlamp.quantity.Print;
import leadlamp.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Growth by heat, boiling, freezing, leak-down and charge air against print. */
class ThermalAndFlowInPrintTest {
    private static final Sums SUMS = new Sums("thermal-and-flow")
            .one("expansion-aluminium", e -> expansion("aluminium", e))
            .one("expansion-aluminium-alloy", e -> expansion("aluminium", e))
            .one("expansion-carbon-steel", e -> expansion("steel", e))
            .one("expansion-cast-iron", e -> expansion("cast iron", e))
            .one("expansion-austenitic-steel", e -> expansion("stainless", e))
            .one("expansion-bronze", e -> expansion("bronze", e))
            .one("expansion-brass", e -> expansion("bronze", e))
            .one("expansion-copper", e -> expansion("copper", e))
            .one("expansion-titanium", e -> expansion("titanium", e))
            .leave("expansion-ferritic-steel", "no word of the vocabulary")
            .leave("expansion-martensitic-steel", "no word of the vocabulary")
            .leave("expansion-lead", "no word of the vocabulary")
            .one("expansion-fahrenheit-cast-iron", e -> Growth.perKelvin(e.input("per °F").number()))
            .one("expansion-fahrenheit-steel-tempered", e -> Growth.perKelvin(e.input("per °F").number()))
            .one("expansion-fahrenheit-copper", e -> Growth.perKelvin(e.input("per °F").number()))
            .one("expansion-old-table-steel-check", e -> 2 * Growth.perKelvin(e.input("linear, steel untempered").number()))
            .one("growth", e -> Growth.length(e.in("coefficient"), e.in("length"), e.in("temperature change")))
            .leave("reference-temperature", "a definition")
            .leave("reference-temperature-manual", "a definition")
            .one("if97-pressure-300", e -> Coolant.waterPressure(e.in("temperature")))
            .one("if97-pressure-500", e -> Coolant.waterPressure(e.in("temperature")))
            .one("if97-pressure-600", e -> Coolant.waterPressure(e.in("temperature")))
            .one("if97-temperature-0-1", e -> Coolant.waterBoils(e.in("pressure")))
            .one("if97-temperature-1", e -> Coolant.waterBoils(e.in("pressure")))
            .one("if97-temperature-10", e -> Coolant.waterBoils(e.in("pressure")))
            .one("boiling", ThermalAndFlowInPrintTest::boiling)
            .sum("coolant-ethylene-30-freeze", ThermalAndFlowInPrintTest::ethylene)
            .sum("coolant-ethylene-40-freeze", ThermalAndFlowInPrintTest::ethylene)
            .sum("coolant-ethylene-50-freeze", ThermalAndFlowInPrintTest::ethylene)
            .sum("coolant-ethylene-60-freeze", ThermalAndFlowInPrintTest::ethylene)
            .one("propylene-glycol-10", ThermalAndFlowInPrintTest::propylene)
            .one("propylene-glycol-20", ThermalAndFlowInPrintTest::propylene)
            .one("propylene-glycol-30", ThermalAndFlowInPrintTest::propylene)
            .one("propylene-glycol-40", ThermalAndFlowInPrintTest::propylene)
            .one("propylene-glycol-50", ThermalAndFlowInPrintTest::propylene)
            .leave("coolant-propylene-30-freeze", "the handbook's figure is taken, which promises less")
            .leave("coolant-propylene-40-freeze", "the handbook's figure is taken, which promises less")
            .leave("coolant-propylene-50-freeze", "the handbook's figure is taken, which promises less")
            .leave("coolant-propylene-60-freeze", "the handbook's table ends at half")
            .sum("coolant-half-and-half", e -> {
                double freezes = Coolant.freezes(Coolant.Glycol.ETHYLENE, e.in("share by volume"));
                return Map.of("freeze protection", (459.67 - 34) / 1.8, "the same in Celsius", freezes);
            })
            .leave("coolant-sixty-forty", "another manual prints -57 °C for the same mix, which is the one taken")
            .leave("coolant-pints-10", "a table of shares wanted by one manual")
            .leave("coolant-pints-20", "a table of shares wanted by one manual")
            .leave("coolant-pints-30", "a table of shares wanted by one manual")
            .leave("coolant-pints-40", "a table of shares wanted by one manual")
            .one("coolant-best-share", e -> Water.share(4.8 / 8, 1, 1))
            .one("leak-percent", e -> Compression.leakDown(e.in("supply"), e.in("reading")))
            .leave("leak-orifice-small", "the tester's own orifice")
            .leave("leak-orifice-large", "the tester's own orifice")
            .leave("leak-limit", "a limit of aircraft engines")
            .one("charge-ideal-temperature", e -> Air.idealOutlet(e.in("inlet temperature"), e.in("pressure ratio"),
                    e.in("exponent")))
            .one("charge-density-hot", e -> Air.density(e.in("pressure"), e.in("temperature")))
            .one("charge-density-cooled", e -> Air.density(e.in("pressure"), e.in("temperature")))
            .one("charge-efficiency", e -> Air.efficiency(e.in("inlet"), e.in("ideal outlet"), e.in("actual outlet")))
            .one("charge-actual", e -> Air.outlet(e.in("inlet"), e.in("pressure ratio"), e.in("efficiency"),
                    e.in("gamma")))
            .one("isa-density", e -> Air.density(e.in("pressure"), e.in("temperature")));

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

    /** A kind of metal lies within its own half width of every printed coefficient of that kind. */
    private static double expansion(String word, Print.Entry e) {
        Material metal = Material.named(word).orElseThrow();
        double printed = e.expected().get(0).si();
        assertThat(printed).as(e.toString()).isCloseTo(metal.expansion(), within(metal.expansionDoubt() + 1e-12));
        return printed;
    }

    private static double boiling(Print.Entry e) {
        if (e.id().startsWith("vapour")) {
            return Coolant.waterPressure(e.in("temperature"));
        }
        if (e.id().startsWith("boiling-at")) {
            return Coolant.waterBoils(e.in("absolute pressure"));
        }
        Coolant.Glycol glycol = e.id().contains("ethylene") ? Coolant.Glycol.ETHYLENE : Coolant.Glycol.PROPYLENE;
        return Coolant.boils(glycol, e.in("share by volume"), 101325, 0);
    }

    /** The Celsius figures are taken; the Fahrenheit ones beside them stand in the notes where they differ. */
    private static Map<String, Double> ethylene(Print.Entry e) {
        double freezes = Coolant.freezes(Coolant.Glycol.ETHYLENE, e.in("share by volume"));
        int fahrenheit = e.note().indexOf(" °F");
        double beside = fahrenheit < 0 ? freezes
                : Units.named("°F").orElseThrow().toSi(Double.parseDouble(e.note().substring(0, fahrenheit)));
        return Map.of("freeze protection", freezes, "as printed in Fahrenheit, converted", beside);
    }

    private static double propylene(Print.Entry e) {
        return Coolant.freezes(Coolant.Glycol.PROPYLENE, e.in("share by volume"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("propyleneOfTheManual")
    void propylene_glycol_is_never_promised_to_stay_liquid_colder_than_either_table_says(Print.Entry entry) {
        assertThat(propylene(entry)).isGreaterThanOrEqualTo(entry.expected().get(0).si());
    }

    static Stream<Print.Entry> propyleneOfTheManual() {
        return Print.of("thermal-and-flow").stream().filter(e -> e.id().startsWith("coolant-propylene")
                && e.id().endsWith("freeze") && e.in("share by volume") <= 0.5);
    }
}
