package leadlamp.calc;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Print;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Clearances of printed pairs of sizes, and rules by size, against print. */
class PairedSizesInPrintTest {
    private static final String UNITS = "printed in two units: held where units are";
    private static final double INCH = 0.0254;
    private static final Sums SUMS = new Sums("inspection-limits")
            .sum("generator-pin-in-piston-by-size", e -> fit(e, "piston pin bore", "pin", "least", "most"))
            .sum("site-plant-pin-in-piston", e -> fit(e, "bore", "pin", "least", "most"))
            .sum("site-plant-pin-in-rod", e -> fit(e, "bore", "pin", "least", "most"))
            .sum("lift-truck-two-pin-by-size", e -> fit(e, "bush bore", "pin as printed", "least as printed", "most"))
            .sum("roller-balance-clearance", e -> fit(e, "bore", "journal", "least", "most"))
            .sum("generator-two-pin-fit", e -> fit(e, "bore", "pin", "least, as printed", "most, as printed"))
            .sum("crane-lifter-clearance", e -> fit(e, "bore", "lifter", "least", "most"))
            .sum("generator-two-rocker-clearance", e -> {
                Map<String, Double> all = new HashMap<>(fit(e, "bush", "shaft", "least new", "most new"));
                all.put("both at limit", Fits.clearance(1.3775 * INCH, 1.3710 * INCH));
                return all;
            })
            .sum("crane-liner-protrusion", e -> {
                Written flange = written(e, "flange");
                Written ledge = written(e, "counterbore");
                return Map.of("least", Bores.linerFlange(flange.low(), 0, ledge.high()),
                        "most", Bores.linerFlange(flange.high(), 0, ledge.low()));
            })
            .one("rule-bore-wear", e -> e.in("rule") * 0.085)
            .one("rule-piston-wear", e -> e.in("rule") * 0.085)
            .one("rule-journal-clearance", e -> e.in("rule") * 0.060)
            .one("rule-journal-round", e -> e.in("rule") * 0.060)
            .one("rule-bore-taper", e -> e.in("rule") * 0.086)
            .one("rule-seat-width", e -> e.in("original width") * 1.15)
            .one("generator-three-rocker-ratio", e -> Valves.rockerRatio(e.in("lift at valve with 0.020 in lash"),
                    e.in("lash"), e.in("lift at cam")))
            .leave("ring-gap", UNITS).leave("ring-side", UNITS).leave("piston", UNITS).leave("bore",
                    UNITS).leave("valve", UNITS)
            .leave("camshaft", UNITS).leave("crankshaft", UNITS).leave("rod", UNITS).leave("torque", UNITS);

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

    private static Map<String, Double> fit(Print.Entry e, String hole, String shaft, String least, String most) {
        Written holes = written(e, hole);
        Written shafts = written(e, shaft);
        return Map.of(least, Fits.clearance(holes.low(), shafts.high()), most,
                Fits.clearance(holes.high(), shafts.low()));
    }

    private static Written written(Print.Entry e, String name) {
        String sizes = e.input(name).raw().toString().split(",")[0];
        return ((Reading.Read) Reading.read(sizes + " in", Dimension.LENGTH, Optional.empty())).written();
    }
}
