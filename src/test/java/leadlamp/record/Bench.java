package leadlamp.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;

/** Reads small records written out in a test, by the ordinary path, against an invented engine sheet. */
final class Bench {
    static final Vocabulary WORDS = words();
    static final RecordReader READER = new RecordReader(WORDS);

    static final String SHEET = """
            sheet: Tarn 12, invented
            layout:
              arrangement: in-line
              cylinders: 3
              numbered from: front
              valves: { intake: 2, exhaust: 2 }
              valve gear: overhead cam
              lash: hydraulic
              camshafts: [intake, exhaust]
              cam bearings: 4
              main bearings: 4
              mains: plain
              big ends: plain
              rings: [first, second, oil]
              fuel: { burns: petrol, by: controller }
            standard: { bore: 80.00 mm, stroke: 80.00 mm }
            drive:
              timing belt: { kind: belt, drives: camshafts, route: [crank gear, cam gear exhaust, cam gear intake, belt tensioner] }
            gears:
              intake:  { form: plain, pin: { form: solid, diameter: 5.0 mm } }
              exhaust: { form: plain, pin: { form: solid, diameter: 5.0 mm } }
            limits:
              crankshaft end float: { least: 0.06 mm, most: 0.25 mm }
              piston ring end gap:
                - { at: first, least: 0.25 mm, most: 0.40 mm }
                - { at: second, least: 0.35 mm, most: 0.50 mm }
              relief valve opening pressure: { standard: 5.0 bar, either way: 0.5 bar }
            joints:
              oil pump to block: { bolts: 4, thread: M8x1.25, class: '8.8', torque: 23 N·m, threads: { lubricant: dry } }
              head to block: { bolts: 8, thread: M10x1.25, stages: [25 N·m, 40 N·m, then 45 deg, then 45 deg] }
              cam gear to camshaft: { each: camshaft, bolts: 1, torque: 60 N·m }
              rod cap to rod: { each: connecting rod, bolts: 2, torque: 30 N·m }
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

    static EngineSheet sheet(String text) {
        Yaml.File file = Yaml.text(text, "sheet.yaml");
        return READER.sheet(file.tree().orElseThrow(), "sheet.yaml", file.lines());
    }

    static Build record(String text) {
        return record(text, SHEET);
    }

    static Build record(String text, String sheet) {
        Yaml.File file = Yaml.text(text, "build.yaml");
        return READER.build(file.tree().orElseThrow(() -> new AssertionError(file.problems().toString())), "build.yaml",
                file.lines(), file.problems(), sheet(sheet), file.bytes());
    }

    /** A statement in the short form of the tables: `STATED cam gear pin, intake, form, hollow`. */
    static List<String> said(Build build) {
        return build.statements().stream().map(Bench::brief).toList();
    }

    static String brief(Statement s) {
        String value = s.value().map(v -> v.text()).orElse("");
        return s.form() + " " + s.of() + ", " + s.at() + (s.what().isEmpty() ? "" : ", " + s.what())
                + (s.says().isEmpty() ? "" : ", " + s.says()) + (value.isEmpty() || value.equals(s.says()) ? "" : " = " + value)
                + s.told().map(t -> " (told by " + t + ")").orElse("");
    }
}
