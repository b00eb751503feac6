package leadlamp.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import leadlamp.calc.Compression;
import leadlamp.calc.ValveRoom;
import leadlamp.facts.Value;
import org.junit.jupiter.api.Test;

/**
 * Doubt is moved through a formula by its slopes. Here that is held against drawing the sources of doubt at random, many times, and
 * looking at what comes out (JCGM 101): both must agree where a formula bends as little as ours do within their doubt.
 */
class FirstOrderDoubtTest {
    private static final int DRAWS = 40_000;
    /** Of a standard deviation out of so many draws: three times its own standard error. */
    private static final double SHARE = 3 / Math.sqrt(2.0 * DRAWS);
    private static final double MM = 1e-3;

    private final Random random = new Random(20260314);

    /** Draws each source once and moves every reading that has a part of it. */
    private double[] drawn(List<Value> inputs, ToDoubleFunction<Map<String, Double>> formula) {
        double[] out = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            Map<String, Double> sources = new LinkedHashMap<>();
            Map<String, Double> figures = new LinkedHashMap<>();
            for (Value input : inputs) {
                double figure = input.low().orElseThrow().value();
                for (Map.Entry<String, Double> part : input.low().orElseThrow().doubt().entrySet()) {
                    figure += part.getValue() * sources.computeIfAbsent(part.getKey(), s -> random.nextGaussian());
                }
                figures.put(input.of(), figure);
            }
            out[i] = formula.applyAsDouble(figures);
        }
        return out;
    }

    private static double mean(double[] all) {
        return Arrays.stream(all).average().orElseThrow();
    }

    private static double deviation(double[] all) {
        double mean = mean(all);
        return Math.sqrt(Arrays.stream(all).map(one -> (one - mean) * (one - mean)).sum() / (all.length - 1));
    }

    private static Value of(Derivation.Worked worked, String name) {
        return worked.readings().stream().filter(v -> v.of().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void of_a_compression_ratio_out_of_readings_with_a_shared_burette_and_dial_gauge() {
        Derivation.Worked worked = Bench.worked("""
                gauges:
                  micrometer 75-100: { kind: micrometer, resolution: 0.001 mm, doubt: 0.004 mm }
                  bore gauge B: { kind: bore gauge, resolution: 0.001 mm, doubt: 0.006 mm, set with: micrometer 75-100 }
                  burette 1: { kind: burette, resolution: 0.1 cm3, doubt: 0.3 cm3 }
                parts: [{ head gasket: new, compressed thickness: 1.10 mm }]
                measurements:
                  - { cylinder bore: 80.003 mm, at: 1, with: bore gauge B }
                  - { combustion chamber volume: 32.3 cm3, at: 1, with: burette 1 }
                  - { piston crown volume: 4.0 cm3, at: 1, with: burette 1 }
                  - { piston height: -0.10 mm, at: 1, with: dial gauge }
                  - { head gasket bore: 81.5 mm, with: vernier }
                """);
        Value worked1 = Bench.value(worked, "compression ratio", "1");
        List<Value> inputs = new ArrayList<>();
        for (String name : List.of("cylinder bore", "combustion chamber volume", "piston crown volume", "piston height", "head gasket bore",
                "head gasket compressed thickness")) {
            inputs.add(of(worked, name));
        }
        double[] ratios = drawn(inputs, f -> Compression.ratioOf(f.get("cylinder bore"), 80 * MM, f.get("combustion chamber volume"),
                f.get("head gasket bore"), f.get("head gasket compressed thickness"), f.get("piston height"), f.get("piston crown volume")));
        double doubt = worked1.low().orElseThrow().standardUncertainty();
        assertThat(deviation(ratios)).isCloseTo(doubt, within(doubt * (SHARE + 0.005)));
        assertThat(mean(ratios)).isCloseTo(Bench.in(worked1), within(doubt / 20));
    }

    @Test
    void of_the_least_room_of_a_valve_over_a_turn_of_the_crank() {
        Derivation.Worked worked = Bench.worked("""
                measurements:
                  - { valve piston clearance: 6.0 mm, at: 1 intake, with: clay }
                  - { valve lift: 9.50 mm, at: 1 intake, with: dial gauge }
                  - { camshaft lobe centre: 104 crank deg, at: intake, with: degree disc }
                """);
        List<Value> inputs = List.of(of(worked, "valve piston clearance"), of(worked, "valve lift"), of(worked, "camshaft lobe centre"));
        List<Slot> slots = inputs.stream().map(v -> Slot.of(v.of(), v)).toList();
        Derived entry = Derived.value("valve piston clearance corrected").by(v -> least(v.get("valve piston clearance"), v.get("valve lift"),
                v.get("camshaft lobe centre"))).sum("{valve piston clearance}");
        Value room = new Working(entry, Bench.WORDS.quantity("valve piston clearance corrected").orElseThrow(), "1 intake", slots).value();
        double[] rooms = drawn(inputs, f -> least(f.get("valve piston clearance"), f.get("valve lift"), f.get("camshaft lobe centre")));
        double doubt = room.low().orElseThrow().standardUncertainty();
        assertThat(deviation(rooms)).isCloseTo(doubt, within(doubt * (SHARE + 0.01)));
        assertThat(mean(rooms)).isCloseTo(room.low().orElseThrow().value(), within(doubt / 10));
    }

    @Test
    void of_a_difference_that_has_no_sign_the_slope_gives_no_less_than_what_comes_out() {
        Derivation.Worked worked = Bench.worked("""
                measurements:
                  - { main housing bore: [52.010, 52.010], unit: mm, at: [main 1 at 45, main 1 at 135], with: bore gauge, doubt: 0.006 mm }
                """);
        Value step = Bench.values(worked, "cap joint step").get(0);
        double doubt = Math.max(step.low().orElseThrow().standardUncertainty(), step.high().orElseThrow().standardUncertainty());
        List<Value> bores = worked.readings();
        int inside = 0;
        for (int i = 0; i < DRAWS; i++) {
            Map<String, Double> sources = new LinkedHashMap<>();
            double[] drawn = new double[2];
            for (int j = 0; j < 2; j++) {
                drawn[j] = bores.get(j).low().orElseThrow().value();
                for (Map.Entry<String, Double> part : bores.get(j).low().orElseThrow().doubt().entrySet()) {
                    drawn[j] += part.getValue() * sources.computeIfAbsent(part.getKey(), s -> random.nextGaussian());
                }
            }
            inside += Math.abs(drawn[0] - drawn[1]) / 2 <= 2 * doubt ? 1 : 0;
        }
        assertThat(inside / (double) DRAWS).as("within twice the doubt of nought, where the slope turns over").isGreaterThanOrEqualTo(0.95);
    }

    /** A lobe drawn as a raised cosine of 240 crank degrees; the valve leans by 20. */
    private static double least(double standing, double lift, double centre) {
        double half = Math.toRadians(120);
        return ValveRoom.least(standing, 40 * MM, 130 * MM, Math.toRadians(20),
                angle -> Math.abs(angle - centre) < half ? lift / 2 * (1 + Math.cos(Math.PI * (angle - centre) / half)) : 0, 0,
                Math.toRadians(120)).room();
    }
}
