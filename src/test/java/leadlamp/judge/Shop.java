package leadlamp.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import leadlamp.derive.Derivation;
import leadlamp.facts.Fact;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Estimate;
import leadlamp.record.Build;
import leadlamp.record.RecordReader;
import leadlamp.record.Statement;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;

/**
 * A small record and its sheet, written to files, read, worked and judged as the program does it. The engine is invented: an in-line
 * three with two camshafts.
 */
final class Shop {
    static final Vocabulary WORDS = words();
    static final Path RULES = Path.of("rules");

    private static final String ENGINE = """
            sheet: Tarn 12, invented
            layout:
              arrangement: in-line
              cylinders: 3
              numbered from: front
              valves: { intake: 1, exhaust: 1 }
              valve gear: overhead cam
              lash: hydraulic
              camshafts: [intake, exhaust]
              cam bearings: 4
              main bearings: 4
              mains: plain
              big ends: plain
              rings: [first, second, oil]
              cooled by: liquid
            output: { idle: 900 rpm, rev limit: 7200 rpm }
            standard: { bore: 80.00 mm, stroke: 80.00 mm }
            """;

    private final String sheet;
    private String trade = "";
    private String record = "";

    private Shop(String sheet) {
        this.sheet = sheet;
    }

    /** A sheet that has these limits. */
    static Shop limits(String limits) {
        return new Shop(ENGINE + "limits:\n" + limits.indent(2));
    }

    /** A sheet that has these sections besides its layout. */
    static Shop sheet(String sections) {
        return new Shop(ENGINE + sections);
    }

    /** A sheet of another engine, whole. */
    static Shop whole(String sheet) {
        return new Shop(sheet);
    }

    /** A sheet without limits. */
    static Shop silent() {
        return new Shop(ENGINE);
    }

    /** The trade's numbers, as one topic's file. */
    Shop trade(String limits) {
        this.trade = limits;
        return this;
    }

    /** A record with these readings. */
    Judged measured(String measurements) {
        return record("measurements:\n" + measurements.indent(2));
    }

    /** A record with these sections. */
    Judged record(String sections) {
        this.record = "build: { name: a build made up for a test }\nengine: sheet.yaml\n" + sections;
        return judged();
    }

    /** A value with this doubt, as if it were read; the record says nothing. */
    Judged value(String quantity, double millimetres, double standardUncertainty) {
        Quantity of = WORDS.quantity(quantity).orElseThrow();
        Estimate end = estimate(of, millimetres, standardUncertainty);
        return value(quantity, Optional.of(end), Optional.of(end));
    }

    /** A value in the quantity's own unit without doubt, taken so. */
    Judged value(String quantity, double size, Map<String, String> taken) {
        Judged judged = record("");
        Quantity of = WORDS.quantity(quantity).orElseThrow();
        Optional<Estimate> end = Optional.of(Estimate.exact(of.unit().toSi(size), of.dimension()));
        Value value = new Value(quantity, of.kind(), "engine", end, end, of.unit(), 3, "", false, "", "", taken, List.of());
        return new Judged(judged.build(), judge(List.of(value), judged.build()));
    }

    /** A value with these ends. */
    Judged value(String quantity, Optional<Estimate> low, Optional<Estimate> high) {
        Judged judged = record("");
        Quantity of = WORDS.quantity(quantity).orElseThrow();
        Value value = new Value(quantity, of.kind(), "engine", low, high == low ? low : high, of.unit(), 3, "", false, "", "",
                Map.of(), List.of());
        return new Judged(judged.build(), judge(List.of(value), judged.build()));
    }

    static Estimate estimate(Quantity of, double millimetres, double standardUncertainty) {
        TreeMap<String, Double> doubt = new TreeMap<>();
        if (standardUncertainty > 0) {
            doubt.put("the gauge", standardUncertainty / 1000);
        }
        return new Estimate(millimetres / 1000, of.dimension(), doubt);
    }

    private Judged judged() {
        Build build = read();
        return new Judged(build, judge(null, build));
    }

    private Build read() {
        Path folder = folder();
        try {
            Files.writeString(folder.resolve("sheet.yaml"), sheet);
            Files.writeString(folder.resolve("record.yaml"), record);
            Build build = new RecordReader(WORDS).read(folder.resolve("record.yaml")).build().orElseThrow();
            assertThat(build.problems()).as(record + sheet).isEmpty();
            assertThat(build.sheet().problems()).as(sheet).isEmpty();
            return build;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } finally {
            delete(folder);
        }
    }

    private List<Verdict> judge(List<Value> given, Build build) {
        return judge(given, build, trade.isEmpty() ? TradeLimits.none() : tradeLimits(Map.of("bottom-end", trade)));
    }

    private static List<Verdict> judge(List<Value> given, Build build, TradeLimits trade) {
        Derivation.Worked worked = Derivation.work(build, WORDS);
        List<Value> values = new ArrayList<>();
        if (given == null) {
            values.addAll(worked.readings());
            values.addAll(worked.derived());
        } else {
            values.addAll(given);
        }
        List<Fact> facts = new ArrayList<>(worked.words());
        for (Statement s : build.statements()) {
            if (s.form() == Statement.Form.STATED) {
                facts.add(new Stated(s.of(), s.of(), s.at(), s.what(), s.says(), s.told().orElse(""), s.asides(), List.of(s.where())));
            }
        }
        for (Statement s : build.sheet().statements()) {
            facts.add(new OnSheet(s.of(), s.of(), s.at(), s.what(), s.says(), List.of(s.where())));
        }
        return Judge.judge(values, facts, build, WORDS, trade);
    }

    /** A record as it lies there. */
    static Judged file(Path record, TradeLimits trade) {
        Build build = new RecordReader(WORDS).read(record).build().orElseThrow();
        return new Judged(build, judge(null, build, trade));
    }

    /** The trade's numbers out of files, by topic. */
    static TradeLimits tradeLimits(Map<String, String> byTopic) {
        Path folder = folder();
        try {
            for (Map.Entry<String, String> topic : byTopic.entrySet()) {
                Files.createDirectories(folder.resolve(topic.getKey()));
                Files.writeString(folder.resolve(topic.getKey()).resolve("limits.yaml"), topic.getValue());
            }
            return TradeLimits.ofFolder(folder, WORDS);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } finally {
            delete(folder);
        }
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("shop");
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static void delete(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Vocabulary words() {
        try {
            return Words.ofFolder(Path.of("rules/vocabulary"));
        } catch (IOException none) {
            throw new UncheckedIOException(none);
        }
    }

    /** What came of a record. */
    record Judged(Build build, List<Verdict> verdicts) {
        /** The verdict on a quantity that an engine has once. */
        String on(String quantity) {
            return on(quantity, "engine");
        }

        /** The verdict at a place, in words: `within`, `below`, `above`, `undecided`, `silent`; least first where the limit has both sides. */
        String on(String quantity, String place) {
            return one(quantity, place).map(Judged::inWords).orElse("none");
        }

        /** The only verdict at a place. */
        Verdict at(String quantity, String place) {
            return one(quantity, place).orElseThrow(() -> new AssertionError("no verdict on " + quantity + " at " + place + " among "
                    + verdicts.stream().map(v -> v.of() + " at " + v.at()).toList()));
        }

        private Optional<Verdict> one(String quantity, String place) {
            List<Verdict> all = all(quantity, place);
            assertThat(all.size()).as("verdicts on %s at %s", quantity, place).isLessThan(2);
            return all.stream().findFirst();
        }

        /** All verdicts at a place. */
        List<Verdict> all(String quantity, String place) {
            return verdicts.stream().filter(v -> v.of().equals(quantity) && v.at().equals(place)).toList();
        }

        static String inWords(Verdict verdict) {
            List<String> sides = new ArrayList<>();
            if (verdict.limit().least().isPresent()) {
                sides.add(side(verdict.least(), "below"));
            }
            if (verdict.limit().most().isPresent()) {
                sides.add(side(verdict.most(), "above"));
            }
            return String.join(", ", sides);
        }

        private static String side(Optional<Verdict.Side> side, String outside) {
            return side.isEmpty() ? "silent" : switch (side.get().standing()) {
                case WITHIN -> "within";
                case OUTSIDE -> outside;
                case UNDECIDED -> "undecided";
            };
        }

        /** The limit that was used, in the value's unit: `0.02 to 0.06 mm, sheet`. */
        String limit(String quantity, String place) {
            Verdict v = at(quantity, place);
            String least = v.limit().least().isPresent() ? text(v, v.limit().least().getAsDouble()) : "";
            String most = v.limit().most().isPresent() ? text(v, v.limit().most().getAsDouble()) : "";
            return (least.isEmpty() ? "most " + most : most.isEmpty() ? "least " + least : least + " to " + most) + " "
                    + v.value().unit().word() + ", " + v.limit().whose().name().toLowerCase(java.util.Locale.ROOT)
                    + (v.limit().reason() ? ", reason to look" : "");
        }

        private static String text(Verdict v, double si) {
            return new java.math.BigDecimal(v.value().unit().fromSi(si)).setScale(6, java.math.RoundingMode.HALF_UP).stripTrailingZeros()
                    .toPlainString();
        }
    }
}
