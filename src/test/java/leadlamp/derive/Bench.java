package leadlamp.derive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.quantity.Estimate;
import leadlamp.record.Build;
import leadlamp.record.RecordReader;
import leadlamp.record.Yaml;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;

/** Works small builds, written out in a test, by the ordinary path. Engine and figures are invented. */
final class Bench {
    static final Vocabulary WORDS = words();
    private static final RecordReader READER = new RecordReader(WORDS);

    static final String SHEET = """
            sheet: Tarn 12, invented
            layout: { arrangement: in-line, cylinders: 3, camshafts: [intake, exhaust], main bearings: 4, mains: plain, valve gear: overhead cam }
            standard: { bore: 80.00 mm, stroke: 80.00 mm, compression ratio: 10.5 }
            output: { octane: RON 95, rev limit: 7200 rpm }
            materials: { block: cast iron, piston: aluminium }
            clutch: { rated torque: 180 N·m }
            limits: { head height: { standard: 130.00 mm, least: 129.50 mm } }
            drive:
              timing belt:
                kind: belt
                drives: camshafts
                route: [crank gear, cam gear exhaust, cam gear intake, belt idler low, belt tensioner]
                change after: { years: 3 }
                shares the belt: [water pump, belt idler low, belt tensioner]
            joints:
              oil pump to block: { bolts: 4, thread: M8x1.25, class: '8.8', torque: 23 N·m, lengths: { 1: 25 mm, 2: 25 mm, 3: 40 mm, 4: 70 mm }, hidden by: sump fitted }
              main cap to block: { bolts: 8, thread: M10x1.5, class: '10.9', torque: 55 N·m, hidden by: sump fitted }
              cam cap to head: { bolts: 16, thread: M6x1, class: '8.8', torque: 8 N·m, holes: blind, hidden by: cam cover fitted }
              knock sensor to block: { bolts: 1, thread: M8x1.25, torque: 20 N·m, hidden by: intake manifold fitted }
              sump to block: { bolts: 14, torque: 10 N·m }
            """;

    private Bench() {
    }

    private static Vocabulary words() {
        try {
            return Words.ofFolder(Path.of("rules/vocabulary"));
        } catch (IOException none) {
            throw new UncheckedIOException(none);
        }
    }

    static Derivation.Worked worked(String record) {
        return worked(record, SHEET);
    }

    static Derivation.Worked worked(String record, String sheet) {
        return worked(record, sheet, name -> true);
    }

    static Derivation.Worked worked(String record, String sheet, Predicate<String> wanted) {
        Yaml.File ofSheet = Yaml.text(sheet, "sheet.yaml");
        Yaml.File ofRecord = Yaml.text(record, "build.yaml");
        Build build = READER.build(ofRecord.tree().orElseThrow(() -> new AssertionError(ofRecord.problems().toString())), "build.yaml",
                ofRecord.lines(), ofRecord.problems(), READER.sheet(ofSheet.tree().orElseThrow(), "sheet.yaml", ofSheet.lines()),
                ofRecord.bytes());
        if (!build.problems().isEmpty()) {
            throw new AssertionError(build.problems().toString());
        }
        return Derivation.work(build, WORDS, wanted);
    }

    static Derivation.Worked full(String name) {
        return Derivation.work(READER.read(Path.of("sample-builds", name)).build().orElseThrow(), WORDS);
    }

    static Derivation.Worked fullOf(String name, Predicate<String> wanted) {
        return Derivation.work(READER.read(Path.of("sample-builds", name)).build().orElseThrow(), WORDS, wanted);
    }

    /** What is said in words of one place: `lower`; empty where nothing is. */
    static List<String> said(Derivation.Worked worked, String of, String at, String what) {
        List<String> said = new ArrayList<>();
        for (Stated s : worked.words()) {
            if (s.of().equals(of) && s.at().equals(at) && s.what().equals(what)) {
                said.add(s.says());
            }
        }
        return said;
    }

    /** What a word or value lacks at a place. */
    static List<String> lacks(Derivation.Worked worked, String name, String at) {
        List<String> lacks = new ArrayList<>();
        for (Missing missing : worked.missing()) {
            if (missing.quantity().equals(name) && missing.at().equals(at)) {
                lacks.addAll(missing.readings());
            }
        }
        return lacks;
    }

    /** The one value worked out for a place. */
    static Value value(Derivation.Worked worked, String name, String at) {
        List<Value> values = values(worked, name).stream().filter(v -> v.at().equals(at)).toList();
        if (values.size() != 1) {
            throw new AssertionError(name + " at " + at + " is not there once: " + values(worked, name) + ", missing " + worked.missing());
        }
        return values.get(0);
    }

    static List<Value> values(Derivation.Worked worked, String name) {
        return worked.derived().stream().filter(v -> v.of().equals(name)).toList();
    }

    /** A plain value in its own unit. */
    static double in(Value value) {
        return value.unit().fromSi(value.low().map(Estimate::value).orElseThrow());
    }

    static double upTo(Value value) {
        return value.unit().fromSi(value.high().map(Estimate::value).orElseThrow());
    }

    /** Doubt of a plain value at 95 %, in its own unit. */
    static double doubt(Value value) {
        return 2 * value.low().orElseThrow().standardUncertainty() / value.unit().factor();
    }

    /** The readings of this name, in the order of the record. */
    static List<Value> readings(Derivation.Worked worked, String name) {
        return worked.readings().stream().filter(v -> v.of().equals(name)).toList();
    }

    /** The one reading. */
    static Value reading(Derivation.Worked worked, String name) {
        List<Value> readings = readings(worked, name);
        if (readings.size() != 1) {
            throw new AssertionError(name + " is not read once: " + readings);
        }
        return readings.get(0);
    }
}
