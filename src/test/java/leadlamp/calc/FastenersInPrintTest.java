package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import leadlamp.derive.TorqueToolsInPrintTest;
import leadlamp.quantity.Print;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Threads, strength, preload, wrenches and pins against print. */
class FastenersInPrintTest {
    private static final String SIZE = "a size or hardness of the part, not a sum";
    private static final Sums SUMS = new Sums("fasteners")
            .one("ac4313-friction-drag", e -> Wrenches.finalTorque(e.in("wanted torque"),
                    e.in("friction drag (run-down) torque")))
            .one("adapter-300-10-4", e -> Wrenches.settingFor(e.in("wanted torque"), e.in("lever length L"),
                    e.in("attachment length A")))
            .one("adapter-100-12-6", e -> Wrenches.settingFor(e.in("wanted torque"), e.in("handle length"),
                    e.in("extension")))
            .one("adapter-shortening", e -> Wrenches.settingFor(e.in("wanted torque"), e.in("lever length L"),
                    -e.in("attachment length A")))
            .one("adapter-right-angle", e -> Wrenches.settingFor(e.in("wanted torque"), e.in("lever length"),
                    Wrenches.alongWrench(e.in("extension"), e.in("angle"))))
            .heldBy("iso6789-above-10", TorqueToolsInPrintTest.class)
            .heldBy("iso6789-up-to-10", TorqueToolsInPrintTest.class)
            .sum("thread-geometry", e -> {
                ScrewThread thread = new ScrewThread("", ScrewThread.Family.METRIC, e.in("diameter"), e.in("pitch"));
                return Map.of("pitch diameter d2", thread.pitchDiameter(), "minor diameter D1", thread.minorDiameter(),
                        "core diameter d3", thread.coreDiameter(), "stress area", thread.stressArea());
            })
            .leave("thread-m6-6g-limits", "thread tolerances are not worked out")
            .leave("thread-m5-6g-limits", "thread tolerances are not worked out")
            .sum("strength", e -> {
                double diameter = e.id().endsWith("over-m16") ? 0.020 : 0.010;
                BoltClass strength = BoltClass.named(e.input("class").raw().toString(), diameter).orElseThrow();
                return Map.of("tensile strength", strength.tensile(), "yield Rp0.2", strength.yield(), "proof stress",
                        strength.proof());
            })
            .one("bolt-load", e -> Preload.load(e.in("stress area"), e.in(e.has("proof stress") ? "proof stress"
                    : "tensile strength")))
            .sum("torque-preload", FastenersInPrintTest::vdi)
            .one("vdi-torque-relation", e -> Preload.torqueOfFriction(e.in("preload"), e.in("pitch"),
                    e.in("pitch diameter"),
                    e.in("thread friction"), e.in("head friction"), e.in("mean head bearing diameter")))
            .one("vdi-pitch-share", e -> Preload.stretchingShare(e.in("pitch"), e.in("pitch diameter"),
                    e.in("friction"),
                    e.in("friction"), e.in("mean head bearing diameter")))
            .one("joint-example-8-3-preload-stress", e -> Preload.stress(e.in("preload"), e.in("tensile stress area")))
            .one("joint-example-8-3-torque-k", e -> Preload.torqueFor(e.in("preload"), e.in("K"), e.in("diameter")))
            .one("joint-example-8-3-torque-full", e -> {
                double minor = Math.sqrt(4 * e.in("minor area") / Math.PI);
                double friction = e.in("friction, thread and collar");
                return Preload.torqueByScrew(e.in("preload"), 0.0254 / e.in("threads per inch"),
                        (e.in("diameter") + minor) / 2, Math.PI / 6, friction, friction, 1.25 * e.in("diameter"));
            })
            .one("joint-example-8-3-stiffness", e -> Preload.boltShare(e.in("bolt stiffness"), e.in("members")))
            .leave("torque-factor-black", "a plated finish of another table; factors go by the lubricant here")
            // A record names no plating: plated bolts are the low side of dry ones and oiled bolts of the table the high side of ours.
            .one("torque-factor-zinc", e -> TorqueFactor.ofLubricant("dry").orElseThrow().usual())
            .one("torque-factor-lubricated", e -> TorqueFactor.ofLubricant("light oil").orElseThrow().high())
            .one("torque-factor-cadmium", e -> TorqueFactor.ofLubricant("dry").orElseThrow().low())
            .one("torque-angle", e -> Preload.travelOfAngle(e.in("pitch"), e.in("angle")))
            .one("preload-scatter-unlubricated", e -> ClampScatter.TORQUE_DRY.share())
            .one("preload-scatter-cadmium-plated", e -> ClampScatter.TORQUE_PLATED.share())
            .one("preload-scatter-lubricated", e -> ClampScatter.TORQUE_OILED.share())
            .one("preload-scatter-elongation", e -> ClampScatter.STRETCH.share())
            .one("preload-scatter-handbook-feel", e -> ClampScatter.BY_FEEL.share())
            .one("preload-scatter-handbook-wrench", e -> ClampScatter.TORQUE_OILED.share())
            .one("preload-scatter-handbook-turn", e -> ClampScatter.ANGLE.share())
            .one("preload-scatter-handbook-yield", e -> ClampScatter.YIELD.share())
            .leave("preload-scatter", "a way of tightening that no record can name")
            .one("pin-solid-against-hollow-5", e -> Pins.slotted(0.005).orElseThrow() / Pins.dowel(0.005).orElseThrow())
            .sum("pin", FastenersInPrintTest::pin)
            .leave("dowel-3-size", SIZE).leave("dowel-4-size", SIZE).leave("dowel-5-size",
                    SIZE).leave("dowel-6-size", SIZE)
            .leave("dowel-8-size", SIZE).leave("dowel-10-size", SIZE).leave("dowel-12-size", SIZE)
            .leave("iso8734-hardness", SIZE).leave("iso2338-hardness", SIZE).leave("iso8734-m6-limits-5", SIZE)
            .leave("iso8734-m6-limits-6", SIZE).leave("iso8734-m6-limits-8", SIZE);

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

    private static Map<String, Double> vdi(Print.Entry e) {
        ScrewThread thread = new ScrewThread("", ScrewThread.Family.METRIC, e.in("diameter"), e.in("pitch"));
        double friction = e.in("friction, thread and head");
        double preload = Preload.atYieldShare(0.9, e.in("yield Rp0.2"), thread.stressArea(), thread.pitch(),
                thread.pitchDiameter(), friction);
        double torque = Preload.torqueOfFriction(preload, thread.pitch(), thread.pitchDiameter(), friction, friction,
                Preload.meanHeadDiameter(e.in("head bearing outer diameter"), e.in("hole diameter")));
        return Map.of("preload", preload, "torque", torque);
    }

    private static Map<String, Double> pin(Print.Entry e) {
        if (e.has("diameter")) {
            return Map.of("single shear", Drives.pinCapacity(e.in("shear strength used in the recomputation"),
                    Drives.solidPinSection(e.in("diameter"))));
        }
        double size = e.in("nominal");
        if (e.id().startsWith("dowel")) {
            double single = Drives.pinCapacity(e.in("shear strength used in the recomputation"),
                    Drives.solidPinSection(size));
            assertThat(Pins.dowel(size).orElseThrow()).as(e.toString())
                    .isEqualTo(e.expects("double shear").si());
            return Map.of("single shear", single, "double shear", 2 * single);
        }
        OptionalDouble printed = e.id().startsWith("slotted-pin-heavy") ? Pins.slotted(size)
                : e.id().startsWith("slotted-pin-light") ? Pins.slottedLight(size) : Pins.coiled(size);
        return Map.of("double shear", printed.orElseThrow());
    }
}
