package leadlamp.calc;

import java.util.Map;
import java.util.stream.Stream;
import leadlamp.quantity.Print;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Clutch, flywheel and balance against print. */
class ClutchAndFlywheelInPrintTest {
    private static final double POUND = 0.45359237;
    private static final double OUNCE_INCH = POUND / 16 * 0.0254;
    private static final double RPM = Math.PI / 30;
    private static final Sums SUMS = new Sums("clutch-and-rotating")
            .one("clutch-university-force", e -> Clutches.forceAtPressure(e.in("greatest pressure"),
                    e.in("outer diameter") / 2, e.in("inner diameter") / 2))
            .one("clutch-university-torque", e -> Clutches.capacity(e.in("friction"),
                    Clutches.forceAtPressure(1e6, 0.1, 0.07), Clutches.wearRadius(0.1, 0.07), (int) e.in("faces")))
            .one("clutch-varying-friction", e -> Clutches.pressureOfRisingFriction(e.in("torque"), 0.01 / 0.001,
                    e.in("outer radius"), e.in("inner radius")))
            .sum("clutch-25-kw", e -> {
                double inner = Clutches.innerRadiusFor(Compression.torqueAt(e.in("power"), e.in("speed")),
                        e.in("friction"), 2,
                        e.in("greatest pressure"), e.in("radius ratio"));
                return Map.of("inner radius", inner, "outer radius", inner * e.in("radius ratio"));
            })
            .one("clutch-25-kw-force", e -> Clutches.forceAtPressure(0.1e6, 1.25 * e.in("inner radius"),
                    e.in("inner radius")))
            .one("clutch-300-200-force", e -> Clutches.forceAtPressure(e.in("greatest pressure"),
                    e.in("outer diameter") / 2,
                    e.in("inner diameter") / 2))
            .one("clutch-300-200-power", e -> Compression.powerAt(Clutches.capacity(e.in("friction"), e.in("force"),
                    Clutches.wearRadius(0.15, 0.1), 2), e.in("speed")))
            .one("clutch-wear-radius", e -> Clutches.wearRadius(e.in("outer radius"), e.in("inner radius")))
            .one("clutch-pressure-radius", e -> Clutches.pressureRadius(e.in("outer radius"), e.in("inner radius")))
            .one("rim-speed-limit", e -> Flywheel.rimSpeedAtStress(e.in("stress"), 0.020 * 0.003,
                    e.in("mass per length")))
            .one("thin-ring-stress", e -> Flywheel.thinRingStress(e.in("density"), e.in("rim speed")))
            .one("solid-disc-stress", e -> Flywheel.solidDiscStress(e.in("density"), e.in("rim speed"),
                    e.in("Poisson ratio")))
            .one("balance-constant", e -> Flywheel.allowedUnbalance(0.001, POUND, RPM) / OUNCE_INCH)
            .one("balance-iso-e", e -> Flywheel.eccentricity(e.in("grade"), e.in("speed")))
            .one("balance-iso-u", e -> Flywheel.allowedUnbalance(e.in("grade"), e.in("mass"), e.in("speed")))
            .one("balance-navy-grade", e -> Flywheel.gradeOf(4 * OUNCE_INCH, POUND, RPM))
            .one("flywheel-unbalance-si", e -> e.in("unbalance"))
            .leave("flywheel-unbalance-limit", "a limit of one engine")
            .leave("flywheel-face-runout", "a limit of one engine")
            .leave("flywheel-pilot-runout", "a limit of one engine");

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
}
