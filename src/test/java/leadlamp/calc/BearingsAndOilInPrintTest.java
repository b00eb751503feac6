package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Stream;
import leadlamp.quantity.Print;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Oil grades, viscosity and plain bearings against print. */
class BearingsAndOilInPrintTest {
    private static final Sums SUMS = new Sums("bearings-and-oil")
            .sum("sae-j300", BearingsAndOilInPrintTest::grade)
            .leave("j300-1999-20-hot", "an older edition; the edition of 2015 is the one taken")
            .leave("j300-1999-40-light-high-shear", "an older edition; the edition of 2015 is the one taken")
            .sum("iso-vg", e -> Map.of("least", Viscosity.leastOfClass(e.in("grade")), "most",
                    Viscosity.mostOfClass(e.in("grade"))))
            .one("vi-procedure-a", e -> Viscosity.index(e.in("viscosity at 40 °C"), e.in("L"), e.in("H")))
            .sum("vi-procedure-b", e -> {
                double index = Viscosity.indexAbove100(e.in("viscosity at 40 °C"), e.in("viscosity at 100 °C"),
                        e.in("H"));
                return Map.of("N", Viscosity.indexPower(e.in("viscosity at 40 °C"), e.in("viscosity at 100 °C"),
                        e.in("H")),
                        "unrounded", index, "index", (double) Math.round(index));
            })
            .sum("vi-l-h-above-70", e -> Map.of("L", Viscosity.lowOf(e.in("viscosity at 100 °C")), "H",
                    Viscosity.highOf(e.in("viscosity at 100 °C"))))
            .sum("d341-constants", e -> Map.of("A", law(e).a(), "B", law(e).b()))
            .one("d341-at-80", e -> law(e).at(353))
            .one("dynamic-from-kinematic", e -> Viscosity.dynamic(e.in("kinematic"), e.in("density")))
            .one("petroff-horsepower", BearingsAndOilInPrintTest::petroff)
            .one("petroff-horsepower-exact", e -> petroff(Print.of("bearings-and-oil").stream()
                    .filter(p -> p.id().equals("petroff-horsepower")).findFirst().orElseThrow()))
            .one("sealed-bearing-viscosity", e -> Bearings.viscosityFromTorque(e.in("torque"), e.in("inner radius"),
                    e.in("outer radius") - e.in("inner radius"), e.in("length"), e.in("speed")))
            .leave("clearance-ratio-rule", "a rule of thumb: a number of the trade, not a sum")
            .sum("sommerfeld-12-1", e -> {
                double pressure = Bearings.bearingPressure(e.in("load"), 2 * e.in("radius"), e.in("length"));
                return Map.of("P", pressure, "S", Bearings.sommerfeld(e.in("radius"), e.in("radial clearance"),
                        e.in("viscosity"), e.in("speed"), pressure));
            })
            .one("film-12-1", e -> Bearings.leastFilm(e.in("h0/c"), e.in("radial clearance")));

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

    private static Map<String, Double> grade(Print.Entry e) {
        OilGrade grade = OilGrade.named(e.input("grade").raw().toString()).orElseThrow();
        if (e.id().endsWith("cranking")) {
            assertThat(grade.crankingTemperature()).as(e.toString()).isCloseTo(e.in("temperature"), within(1e-9));
            return Map.of("viscosity", grade.mostCranking());
        }
        if (e.id().endsWith("pumping")) {
            assertThat(grade.pumpingTemperature()).as(e.toString()).isCloseTo(e.in("temperature"), within(1e-9));
            return Map.of("viscosity", grade.mostPumping());
        }
        if (e.id().endsWith("high-shear")) {
            return Map.of("viscosity", grade.leastHighShear());
        }
        return grade.forWinter() ? Map.of("viscosity", grade.leastAt100())
                : Map.of("at least", grade.leastAt100(), "below", grade.belowAt100());
    }

    /** The example counts absolute temperature as degrees Celsius and 273. */
    private static Viscosity.Law law(Print.Entry e) {
        return Viscosity.through(e.in("viscosity at 40 °C"), 313, e.in("viscosity at 100 °C"), 373);
    }

    private static double petroff(Print.Entry e) {
        return Bearings.frictionPower(e.in("viscosity"), e.in("diameter"), e.in("length"), e.in("clearance used"),
                e.in("speed"));
    }
}
