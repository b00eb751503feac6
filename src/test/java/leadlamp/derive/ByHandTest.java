package leadlamp.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import leadlamp.facts.Value;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import leadlamp.record.Node;
import leadlamp.record.Yaml;
import leadlamp.words.Quantity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every topic's values, each out of a few lines of a record and worked by hand beside them. */
class ByHandTest {
    private static final Path CASES = Path.of("src/test/resources/leadlamp/derive");
    /** Figures are written to eight places. */
    private static final double CLOSE = 1e-6;

    private static final Map<String, String> SHEET = sections("""
            sheet: Tarn 12, invented
            layout:
              arrangement: in-line
              cylinders: 3
              numbered from: front
              valves: { intake: 1, exhaust: 1 }
              valve gear: overhead cam
              lash: hydraulic
              camshafts: [intake, exhaust]
              cam bearings: 2
              main bearings: 4
              mains: plain
              big ends: plain
              rings: [first, second, oil]
              cooled by: liquid
              turbochargers: none
              supercharger: none
              fuel: { burns: petrol, by: controller }
            standard: { bore: 80.00 mm, stroke: 80.00 mm, rod length: 130.0 mm, swept volume: 1206 cm3 }
            output: { idle: 900 rpm, rev limit: 7200 rpm, power: 78 kW, torque: 118 N·m }
            materials: { block: cast iron, head: aluminium, connecting rod: steel, crankshaft: steel }
            """);

    record Case(String quantity, String figure, String at, String sum, String record, String sheet) {
        @Override
        public String toString() {
            return quantity + " at " + at + " = " + sum;
        }
    }

    static Stream<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (String topic : List.of("bottom-end", "head", "valve-gear", "cam-drive", "fasteners", "sealing", "lubrication", "cooling", "breathing",
                "fuel-and-spark", "sensing", "clutch", "workshop")) {
            Yaml.File file = Yaml.read(CASES.resolve(topic + ".yaml"), topic);
            assertThat(file.problems()).isEmpty();
            for (Node one : ((Node.Items) file.tree().orElseThrow().get("by hand").orElseThrow()).items()) {
                Node.Fields fields = (Node.Fields) one;
                Node.Field first = fields.fields().get(0);
                cases.add(new Case(first.key(), text(first.value()), text(fields, "at"), text(fields, "sum"), text(fields, "record"),
                        text(fields, "sheet")));
            }
        }
        return cases.stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void is_what_comes_out_by_hand(Case one) {
        Derivation.Worked worked = worked(one);
        Value value = Bench.value(worked, one.quantity(), one.at());
        Quantity quantity = Bench.WORDS.quantity(one.quantity()).orElseThrow();
        Written wanted = ((Reading.Read) Reading.read(one.figure(), quantity.dimension(), Optional.of(quantity.unit()))).written();
        double size = Math.max(Math.abs(wanted.high()), 1e-6 * Math.abs(value.unit().factor()));
        assertThat(value.plain()).as(value.toString()).isTrue();
        assertThat(value.low().orElseThrow().value()).as(value.sum()).isCloseTo(wanted.high(), within(CLOSE * size));
        assertThat(value.sum()).contains(" = ");
        assertThat(worked.problems()).isEmpty();
    }

    static Derivation.Worked worked(Case one) {
        Map<String, String> sheet = new LinkedHashMap<>(SHEET);
        sheet.putAll(sections(one.sheet()));
        return Bench.worked(one.record(), String.join("", sheet.values()), one.quantity()::equals);
    }

    /** What the program works out of a case. */
    static Value value(Case one) {
        return Bench.value(worked(one), one.quantity(), one.at());
    }

    private static String text(Node.Fields fields, String key) {
        return fields.get(key).map(ByHandTest::text).orElse("");
    }

    private static String text(Node node) {
        return ((Node.Scalar) node).text();
    }

    /** The sections of a sheet by their names, each with its lines. */
    private static Map<String, String> sections(String sheet) {
        Map<String, String> sections = new LinkedHashMap<>();
        String name = "";
        for (String line : sheet.lines().toList()) {
            if (!line.startsWith(" ") && line.contains(":")) {
                name = line.substring(0, line.indexOf(':'));
                sections.put(name, "");
            }
            sections.merge(name, line + "\n", String::concat);
        }
        return sections;
    }
}
