package leadlamp.derive;

import static leadlamp.derive.Bench.doubt;
import static leadlamp.derive.Bench.in;
import static leadlamp.derive.Bench.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import leadlamp.facts.Value;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What must hold of a worked value and of its doubt whatever was read. */
class DerivedPropertiesTest {
    private static final String GAUGES = """
            gauges:
              micrometer: { kind: micrometer, resolution: 0.001 mm, doubt: 0.004 mm }
              bore gauge: { kind: bore gauge, resolution: 0.001 mm, doubt: %s mm, set with: micrometer }
            """;

    private static Value clearance(double bore, double journal, double boreDoubt) {
        return value(Bench.worked(GAUGES.formatted(size(boreDoubt)) + """
                measurements:
                  - { main bearing bore with shells: %s mm, at: main 1, with: bore gauge }
                  - { main journal diameter: %s mm, at: main 1, with: micrometer }
                """.formatted(size(bore), size(journal)), Bench.SHEET, "main bearing clearance"::equals), "main bearing clearance", "main 1");
    }

    private static String size(double millimetres) {
        return String.format(Locale.ROOT, "%.4f", millimetres);
    }

    @Property(tries = 60)
    void a_clearance_is_the_hole_less_the_shaft_and_grows_with_the_hole_by_as_much(@ForAll @Scale(3) @DoubleRange(min = 30, max = 90) double journal,
            @ForAll @Scale(3) @DoubleRange(min = -0.2, max = 0.2) double room, @ForAll @Scale(3) @DoubleRange(min = 0.001, max = 0.1) double more) {
        Value one = clearance(journal + room, journal, 0.006);
        Value wider = clearance(journal + room + more, journal, 0.006);
        assertThat(in(one)).isCloseTo(room, within(1e-9));
        assertThat(in(wider) - in(one)).isCloseTo(more, within(1e-9));
        assertThat(doubt(wider)).as("a sum of sizes has one doubt whatever they are").isCloseTo(doubt(one), within(1e-9));
    }

    @Property(tries = 40)
    void a_gauge_with_more_doubt_never_gives_a_value_with_less(@ForAll @Scale(3) @DoubleRange(min = 0.001, max = 0.02) double less,
            @ForAll @Scale(3) @DoubleRange(min = 0.001, max = 0.02) double more) {
        assertThat(doubt(clearance(48.022, 47.985, less + more))).isGreaterThan(doubt(clearance(48.022, 47.985, less)));
    }

    @Property(tries = 40)
    void what_one_gauge_is_out_by_is_in_neither_difference_nor_spread_of_its_own_readings(@ForAll @Scale(3) @DoubleRange(min = 79, max = 81) double bore,
            @ForAll @Scale(3) @DoubleRange(min = 0, max = 0.1) double apart, @ForAll @Scale(3) @DoubleRange(min = 0.01, max = 0.5) double certificate) {
        String record = """
                gauges: { bore gauge: { kind: bore gauge, resolution: 0.001 mm, doubt: %s mm } }
                measurements:
                  - { cylinder bore: [%s, %s], unit: mm, at: [1 top thrust, 1 bottom thrust], with: bore gauge }
                """;
        Value taper = value(Bench.worked(record.formatted(size(certificate), size(bore + apart), size(bore)), Bench.SHEET, "cylinder taper"::equals),
                "cylinder taper", "1");
        assertThat(in(taper)).isCloseTo(apart, within(1e-9));
        assertThat(taper.low().orElseThrow().doubt().keySet()).noneMatch(source -> source.startsWith("calibration"));
        assertThat(doubt(taper)).as("each reading's step and hand alone").isLessThan(0.004);
    }

    @Property(tries = 40)
    void a_size_less_itself_is_nothing_and_has_no_doubt(@ForAll @Scale(3) @DoubleRange(min = 20, max = 150) double size) {
        Value read = Bench.reading(Bench.worked("measurements: [{ cylinder bore: " + size(size) + " mm, at: 1, with: bore gauge }]"), "cylinder bore");
        Value nothing = Differences.of("stack difference", read, read);
        assertThat(nothing.low().orElseThrow().value()).isZero();
        assertThat(nothing.low().orElseThrow().standardUncertainty()).isZero();
    }

    @Property(tries = 40)
    void inches_and_millimetres_of_one_build_give_one_value_and_one_doubt(@ForAll @IntRange(min = 18000, max = 19500) int journal,
            @ForAll @IntRange(min = 1, max = 40) int room) {
        String record = """
                measurements:
                  - { main bearing bore with shells: %s, at: main 1, doubt: 0.0003 in }
                  - { main journal diameter: %s, at: main 1, doubt: 0.0002 in }
                """;
        double inches = journal / 1e4;
        double hole = (journal + room) / 1e4;
        Value imperial = value(Bench.worked(record.formatted(String.format(Locale.ROOT, "%.4f in", hole), String.format(Locale.ROOT, "%.4f in", inches))),
                "main bearing clearance", "main 1");
        Value metric = value(Bench.worked(record.formatted(String.format(Locale.ROOT, "%.5f mm", hole * 25.4), String.format(Locale.ROOT, "%.5f mm",
                inches * 25.4))), "main bearing clearance", "main 1");
        assertThat(metric.low().orElseThrow().value()).isCloseTo(imperial.low().orElseThrow().value(), within(1.1e-8));
        assertThat(metric.low().orElseThrow().standardUncertainty()).isCloseTo(imperial.low().orElseThrow().standardUncertainty(), within(1e-10));
        assertThat(imperial.unit().word()).isEqualTo("in");
    }

    @Property(tries = 30)
    void the_order_of_the_lines_makes_no_difference(@ForAll long seed) {
        List<String> lines = new ArrayList<>(List.of("  - { combustion chamber volume: 32.3 cm3, at: 1, with: burette }\n",
                "  - { piston height: -0.10 mm, at: 1, with: dial gauge }\n", "  - { piston crown volume: 4.0 cm3, at: 1, with: burette }\n",
                "  - { head gasket bore: 81.5 mm, with: vernier }\n", "  - { cylinder bore: 80.00 mm, at: 1, with: bore gauge }\n",
                "  - { head gasket compressed thickness: 1.10 mm, with: micrometer }\n"));
        Value sorted = ratio(lines);
        Collections.shuffle(lines, new Random(seed));
        Value shuffled = ratio(lines);
        assertThat(in(shuffled)).isEqualTo(in(sorted));
        assertThat(Map.copyOf(shuffled.low().orElseThrow().doubt())).isEqualTo(Map.copyOf(sorted.low().orElseThrow().doubt()));
        assertThat(shuffled.sum()).isEqualTo(sorted.sum());
    }

    private static Value ratio(List<String> lines) {
        return value(Bench.worked("measurements:\n" + String.join("", lines), Bench.SHEET, "compression ratio"::equals), "compression ratio", "1");
    }

    @Property(tries = 40)
    void a_smaller_chamber_gives_a_higher_ratio_and_no_doubt_of_it_is_lost(@ForAll @Scale(1) @DoubleRange(min = 25, max = 40) double chamber,
            @ForAll @Scale(1) @DoubleRange(min = 0.1, max = 5) double less) {
        List<String> rest = List.of("  - { piston height: -0.10 mm, at: 1 }\n", "  - { piston crown volume: 4.0 cm3, at: 1 }\n", "  - { head gasket bore: 81.5 mm }\n",
                "  - { cylinder bore: 80.00 mm, at: 1 }\n", "  - { head gasket compressed thickness: 1.10 mm }\n");
        List<String> one = new ArrayList<>(rest);
        one.add(String.format(Locale.ROOT, "  - { combustion chamber volume: %.1f cm3, at: 1 }%n", chamber));
        List<String> smaller = new ArrayList<>(rest);
        smaller.add(String.format(Locale.ROOT, "  - { combustion chamber volume: %.1f cm3, at: 1 }%n", chamber - less));
        assertThat(in(ratio(smaller))).isGreaterThan(in(ratio(one)));
        assertThat(doubt(ratio(smaller))).as("the same tenth of a cubic centimetre weighs more in a smaller chamber").isGreaterThan(doubt(ratio(one)));
    }
}
