package leadlamp.calc;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import leadlamp.quantity.Print;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The worked examples of the Guide and of others, type B and coverage factors against print. */
class UncertaintyInPrintTest {
    private static final Sums SUMS = new Sums("uncertainty").asPrinted()
            .sum("gum-h1", UncertaintyInPrintTest::endGauge)
            .sum("gum-h1-difference", e -> {
                double[] parts = { 5.8, 3.9, 6.7 };
                double combined = Doubt.combined(parts);
                // The guide rounds to 9.7 nm before it works out the degrees of freedom.
                double unrounded = Doubt.freedom(parts, new double[] { 24, 5, 8 });
                return Map.of("u(d)", combined, "effective degrees of freedom", unrounded * Math.pow(9.7 / combined,
                        4));
            })
            .one("gum-h1-dof", e -> Doubt.freedom(new double[] { 25, 9.7, 2.9, 16.6 }, new double[] { 18, 25.6, 50,
                    2 }))
            .one("gum-h1-expanded", e -> n(e, "u") * StudentT.factor(0.99, n(e, "degrees of freedom")))
            .sum("gum-h2", UncertaintyInPrintTest::reactance)
            .sum("gum-h3", UncertaintyInPrintTest::thermometer)
            .sum("quam", UncertaintyInPrintTest::standard)
            .one("gum-4-3-3-mass", e -> Doubt.ofExpanded(n(e, "quoted"), n(e, "multiple")))
            .one("gum-4-3-4-resistor", e -> Doubt.ofLevel(n(e, "half width"), 0.99))
            .one("gum-4-3-5-length", e -> Doubt.ofEvenChance(n(e, "half width")))
            .one("gum-4-3-7-copper", e -> Doubt.rectangular(n(e, "half width")))
            .one("gum-4-3-8-copper", e -> Doubt.unequal(n(e, "lower bound"), n(e, "upper bound")))
            .one("distribution-rectangular", e -> Doubt.rectangular(n(e, "half width")))
            .one("distribution-triangular", e -> Doubt.triangular(n(e, "half width")))
            .one("distribution-arcsine", e -> Doubt.arcsine(n(e, "half width")))
            .one("distribution-resolution", e -> Doubt.ofStep(n(e, "resolution")))
            .one("coverage", e -> e.has("level") ? Doubt.coverageFactor(n(e, "level") / 100)
                    : StudentT.factor(0.95, n(e, "degrees of freedom")))
            .sum("gum-g-4-1", e -> {
                double[] parts = { 0.0025, 0.0057, 0.0082 };
                return Map.of("combined", 100 * Doubt.combined(parts), "degrees of freedom",
                        Doubt.freedom(parts, new double[] { 9, 4, 14 }));
            })
            .leave("tn1297-coverage-two", "a convention");

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

    private static double n(Print.Entry e, String name) {
        return e.input(name).number();
    }

    /** End gauge: length of the standard and difference, less what warmth does, all in nm. */
    private static Map<String, Double> endGauge(Print.Entry named) {
        Print.Entry e = entry("gum-h1-combined");
        double cyclic = Doubt.arcsine(n(e, "cyclic amplitude, arcsine"));
        double[] inputs = { n(e, "standard length"), n(e, "mean difference"), 0, 0, 0,
            n(e, "expansion coefficient"), n(e, "mean temperature deviation"), 0 };
        double[] doubts = { n(e, "standard uncertainty of it"), n(e, "uncertainty of the mean"),
            n(e, "comparator, random"), n(e, "comparator, systematic"),
            Doubt.rectangular(n(e, "half width of the coefficient difference")),
            Doubt.rectangular(n(e, "its half width, rectangular")),
            Doubt.combined(n(e, "its uncertainty"), cyclic),
            Doubt.rectangular(n(e, "half width of the temperature difference")) };
        ToDoubleFunction<double[]> length = x -> x[0] + x[1] + x[2] + x[3]
                - x[0] * (x[4] * x[6] + x[5] * x[7]);
        double[] parts = new double[inputs.length];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = Doubt.part(length, inputs, i, doubts[i]);
        }
        double u = Doubt.combined(parts);
        // Second order: the products of a coefficient's and a temperature's doubt (H.1.7).
        double first = n(e, "standard length") * doubts[4] * doubts[6];
        double second = n(e, "standard length") * doubts[5] * doubts[7];
        Map<String, Double> all = new HashMap<>();
        all.put("length", length.applyAsDouble(inputs));
        all.put("u", named.id().endsWith("second-order") ? Doubt.combined(u, first, second) : u);
        all.put("component", Math.abs(switch (named.id().replace("gum-h1-component-", "")) {
            case "standard" -> parts[0];
            case "mean-difference" -> parts[1];
            case "comparator-random" -> parts[2];
            case "comparator-systematic" -> parts[3];
            case "coefficient-difference" -> parts[4];
            case "coefficient" -> parts[5];
            case "temperature" -> parts[6];
            case "temperature-difference" -> parts[7];
            default -> 0;
        }));
        return all;
    }

    private static Map<String, Double> reactance(Print.Entry e) {
        double[] inputs = { n(e, "V"), n(e, "I"), n(e, "phi") };
        double[] doubts = { n(e, "u(V)"), n(e, "u(I)"), n(e, "u(phi)") };
        double vi = n(e, "r(V,I)");
        double vp = n(e, "r(V,phi)");
        double ip = n(e, "r(I,phi)");
        double[][] r = { { 1, vi, vp }, { vi, 1, ip }, { vp, ip, 1 } };
        double[] resistance = parts(x -> x[0] * Math.cos(x[2]) / x[1], inputs, doubts);
        double[] reactance = parts(x -> x[0] * Math.sin(x[2]) / x[1], inputs, doubts);
        double[] impedance = parts(x -> x[0] / x[1], inputs, doubts);
        Map<String, Double> all = new HashMap<>();
        double z = inputs[0] / inputs[1];
        switch (e.id()) {
            case "gum-h2-r" -> {
                all.put("value", z * Math.cos(inputs[2]));
                all.put("standard uncertainty", Doubt.correlated(resistance, r));
            }
            case "gum-h2-x" -> {
                all.put("value", z * Math.sin(inputs[2]));
                all.put("standard uncertainty", Doubt.correlated(reactance, r));
            }
            case "gum-h2-z" -> {
                all.put("value", z);
                all.put("standard uncertainty", Doubt.correlated(impedance, r));
            }
            case "gum-h2-correlation-r-x" -> all.put("r", Doubt.correlation(resistance, reactance, r));
            case "gum-h2-correlation-r-z" -> all.put("r", Doubt.correlation(resistance, impedance, r));
            default -> all.put("r", Doubt.correlation(reactance, impedance, r));
        }
        return all;
    }

    private static double[] parts(ToDoubleFunction<double[]> formula, double[] inputs,
            double[] doubts) {
        double[] parts = new double[inputs.length];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = Doubt.part(formula, inputs, i, doubts[i]);
        }
        return parts;
    }

    private static Map<String, Double> thermometer(Print.Entry e) {
        double reference = n(e, "reference temperature");
        double[] x = row(e, "thermometer readings");
        for (int i = 0; i < x.length; i++) {
            x[i] -= reference;
        }
        Line line = Line.through(x, row(e, "corrections"));
        Map<String, Double> all = new HashMap<>();
        all.put("intercept", line.intercept());
        all.put("slope", line.slope());
        all.put("r", line.correlation());
        all.put("sum", line.sumOfSquares());
        all.put("correction", line.at(30 - reference));
        all.put("u", switch (e.id()) {
            case "gum-h3-intercept" -> line.interceptDoubt();
            case "gum-h3-slope" -> line.slopeDoubt();
            default -> line.doubtAt(30 - reference);
        });
        return all;
    }

    private static double[] row(Print.Entry e, String name) {
        return Arrays.stream(e.input(name).raw().toString().split(" ")).mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static Map<String, Double> standard(Print.Entry e) {
        double[] inputs = { n(e, "mass"), n(e, "purity"), n(e, "volume") };
        double flask = Doubt.triangular(n(e, "flask half width, triangular"));
        double heat = Doubt.rectangular(n(e, "temperature half width, rectangular"));
        // First order by hand: the guide's own components are of the tangent.
        double value = 1000 * inputs[0] * inputs[1] / inputs[2];
        double volume = value * Doubt.combined(flask, n(e, "fill repeatability"), heat) / inputs[2];
        double mass = value * n(e, "u(mass)") / inputs[0];
        double purity = value * Doubt.rectangular(n(e, "half width, rectangular")) / inputs[1];
        Map<String, Double> all = new HashMap<>();
        all.put("value", value);
        all.put("standard uncertainty", Doubt.combined(mass, purity, volume));
        all.put("component", switch (e.id()) {
            case "quam-a1-volume" -> volume;
            case "quam-a1-mass" -> mass;
            case "quam-a1-flask" -> value * flask / inputs[2];
            default -> purity;
        });
        return all;
    }

    private static Print.Entry entry(String id) {
        return Print.of("uncertainty").stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow();
    }
}
