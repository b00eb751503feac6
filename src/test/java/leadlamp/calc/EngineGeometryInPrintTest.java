package leadlamp.calc;

import java.util.Map;
import java.util.stream.Stream;
import leadlamp.quantity.Print;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Displacement, ratio, slider-crank, valve timing and power against print. */
class EngineGeometryInPrintTest {
    private static final Sums SUMS = new Sums("engine-geometry")
            .one("displacement", e -> e.has("cylinders")
                    ? Compression.sweptByAll(e.in("bore"), e.in("stroke"), (int) e.in("cylinders"))
                    : Compression.swept(e.in("bore"), e.in("stroke")))
            .one("displacement-test-question", e -> Compression.sweptByAll(e.in("bore"),
                    e.in("depth") - e.in("piston height from bottom"), (int) e.in("cylinders")))
            .one("compression-ratio-7", e -> Compression.ratioOfDeadCentres(e.in("volume at bottom dead centre"),
                    e.in("volume at top dead centre")))
            .one("compression-ratio-from-swept", e -> Compression.ratio(e.in("swept"), e.in("clearance")))
            .one("air-cycle", e -> Compression.airCycleEfficiency(e.in("compression ratio"), e.in("gamma")))
            .leave("otto-peak-varying-heat", "needs tables of air whose heat capacity changes with temperature")
            .one("slider-crank", e -> CrankTrain.travel(e.in("crank radius"), e.in("rod length"),
                    e.has("crank angle") ? e.in("crank angle") : Math.PI))
            .one("piston-accel-tdc", e -> CrankTrain.topAcceleration(e.in("crank radius"), e.in("rod length"),
                    e.in("speed")))
            .one("piston-speed-mean", e -> CrankTrain.meanPistonSpeed(e.in("stroke"), e.in("speed")))
            .one("overlap-sum-1", EngineGeometryInPrintTest::overlap)
            .one("overlap-sum-2", EngineGeometryInPrintTest::overlap)
            .one("overlap-lobe-1", EngineGeometryInPrintTest::overlapOfLobes)
            .one("overlap-lobe-2", EngineGeometryInPrintTest::overlapOfLobes)
            .one("duration-intake-1", e -> CamTiming.duration(e.in("opens before top dead centre"),
                    e.in("closes after bottom dead centre")))
            .one("duration-intake-2", e -> CamTiming.duration(e.in("opens before top dead centre"),
                    e.in("closes after bottom dead centre")))
            .one("duration-20-60", e -> CamTiming.duration(e.in("opens"), e.in("closes")))
            .one("centreline-intake-1", e -> CamTiming.centreOf(e.in("duration"), e.in("opens before top dead centre")))
            .one("separation-1", e -> CamTiming.separation(e.in("intake centreline"),
                    CamTiming.centreOf(e.in("exhaust duration"), e.in("exhaust closes after top dead centre"))))
            .sum("advance-5", EngineGeometryInPrintTest::shifted)
            .sum("retard-5", EngineGeometryInPrintTest::shifted)
            .one("ring-gap", e -> Rings.gapGrowth(e.in("growth in bore")))
            .one("bmep-example", e -> Compression.meanEffectivePressure(e.in("brake power"), e.in("speed"),
                    e.in("displacement")))
            .one("prony-example", e -> Compression.powerAt(e.in("force") * e.in("arm"), e.in("speed")))
            .one("thermal-efficiency-example", e -> Compression.thermalEfficiency(e.in("brake power"),
                    e.in("fuel in one hour") / 3600,
                    e.in("heat content") * e.in("mechanical equivalent") * 0.3048 * 9.80665))
            .one("torque-power-constant", e -> horsepower() / Compression.powerAt(poundFoot(), 2 * Math.PI / 60));

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

    private static double overlap(Print.Entry e) {
        return CamTiming.overlap(e.in("intake opens before top dead centre"),
                e.in("exhaust closes after top dead centre"));
    }

    private static double overlapOfLobes(Print.Entry e) {
        return CamTiming.overlapOfLobes(e.in("intake duration"), e.in("exhaust duration"),
                e.in("lobe separation, cam degrees"));
    }

    private static Map<String, Double> shifted(Print.Entry e) {
        return Map.of("opens", CamTiming.opensAfterShift(e.in("opens"), e.in("advance")),
                "closes", CamTiming.closesAfterShift(e.in("closes"), e.in("advance")));
    }

    private static double horsepower() {
        return 33000 * poundFoot() / 60;
    }

    private static double poundFoot() {
        return 0.45359237 * 9.80665 * 0.3048;
    }
}
