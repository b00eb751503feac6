package leadlamp.judge;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.quantity.Written;
import leadlamp.record.LimitLine;
import leadlamp.record.Problem;
import leadlamp.record.TradeLines;
import leadlamp.record.Where;
import leadlamp.words.Vocabulary;

/** The trade's numbers, for when supplier and sheet are silent. Each has its basis; no two topics limit one quantity. */
public final class TradeLimits {
    /** Where the build step puts them. */
    public static final String RESOURCE = "/leadlamp/limits.bin";

    private final Map<String, List<LimitLine>> byQuantity;

    private TradeLimits(Map<String, List<LimitLine>> byQuantity) {
        this.byQuantity = byQuantity;
    }

    /** No numbers at all. */
    public static TradeLimits none() {
        return new TradeLimits(Map.of());
    }

    /**
     * Reads every `limits.yaml` below a folder of rules.
     *
     * @throws IOException              if the folder cannot be read
     * @throws IllegalArgumentException with all that is wrong, each with its place
     */
    public static TradeLimits ofFolder(Path rules, Vocabulary words) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(rules, 2)) {
            files = all.filter(p -> p.endsWith("limits.yaml")).sorted().toList();
        }
        Map<String, List<LimitLine>> lines = new TreeMap<>();
        Map<String, String> owner = new HashMap<>();
        List<Problem> problems = new ArrayList<>();
        StringBuilder wrong = new StringBuilder();
        for (Path file : files) {
            String name = rules.relativize(file).toString().replace('\\', '/');
            for (LimitLine line : TradeLines.read(file, name, words, problems)) {
                String before = owner.putIfAbsent(line.quantity(), name);
                if (before != null && !before.equals(name)) {
                    wrong.append(line.line()).append(": ").append(line.quantity()).append(" has its limits in ").append(before)
                            .append(" already; one topic gives a quantity its limits.\n");
                }
                lines.computeIfAbsent(line.quantity(), q -> new ArrayList<>()).add(line);
            }
        }
        for (Problem problem : problems) {
            wrong.append(problem.where()).append(": ").append(problem.what()).append(' ').append(problem.expected())
                    .append(problem.nearest().map(n -> " Nearest word: " + n + ".").orElse("")).append('\n');
        }
        lines.values().forEach(of -> twins(of, wrong));
        if (!wrong.isEmpty()) {
            throw new IllegalArgumentException(wrong.toString().stripTrailing());
        }
        return new TradeLimits(lines);
    }

    /** Two lines that hold in the very same cases leave open which of them is meant. */
    private static void twins(List<LimitLine> lines, StringBuilder wrong) {
        for (int i = 0; i < lines.size(); i++) {
            for (int j = 0; j < i; j++) {
                LimitLine one = lines.get(i);
                LimitLine other = lines.get(j);
                if (one.at().equals(other.at()) && one.where().equals(other.where()) && one.when().equals(other.when())
                        && one.asides().equals(other.asides())) {
                    wrong.append(one.line()).append(": ").append(one.quantity()).append(" is limited twice for the same case; see line ")
                            .append(other.line().line()).append(".\n");
                }
            }
        }
    }

    /** The lines of a quantity. */
    public List<LimitLine> of(String quantity) {
        return byQuantity.getOrDefault(quantity, List.of());
    }

    /** All lines, by quantity. */
    public Collection<List<LimitLine>> all() {
        return Collections.unmodifiableCollection(byQuantity.values());
    }

    /** Writes them in the form that {@link #compiled()} reads. */
    public void compile(OutputStream out) throws IOException {
        DataOutputStream data = new DataOutputStream(out);
        data.writeInt(byQuantity.size());
        for (Map.Entry<String, List<LimitLine>> of : new TreeMap<>(byQuantity).entrySet()) {
            data.writeUTF(of.getKey());
            data.writeInt(of.getValue().size());
            for (LimitLine line : of.getValue()) {
                data.writeUTF(line.at());
                size(data, line.standard());
                size(data, line.least());
                size(data, line.most());
                data.writeUTF(line.times());
                data.writeUTF(line.when());
                words(data, line.where());
                words(data, line.asides());
                data.writeBoolean(line.reason());
                data.writeUTF(line.basis());
                data.writeUTF(line.line().file());
                data.writeInt(line.line().line());
                data.writeInt(line.line().column());
            }
        }
        data.flush();
    }

    /** The numbers that the build step has put on the class path; none where it has put no such file. */
    public static TradeLimits compiled() {
        InputStream in = TradeLimits.class.getResourceAsStream(RESOURCE);
        if (in == null) {
            return none();
        }
        try (DataInputStream data = new DataInputStream(new BufferedInputStream(in, 1 << 16))) {
            Map<String, List<LimitLine>> byQuantity = new HashMap<>();
            for (int q = data.readInt(); q > 0; q--) {
                String quantity = data.readUTF();
                List<LimitLine> lines = new ArrayList<>();
                for (int n = data.readInt(); n > 0; n--) {
                    lines.add(new LimitLine(quantity, data.readUTF(), size(data), size(data), size(data), data.readUTF(),
                            data.readUTF(), words(data), words(data), data.readBoolean(), data.readUTF(),
                            new Where(data.readUTF(), data.readInt(), data.readInt())));
                }
                byQuantity.put(quantity, lines);
            }
            return new TradeLimits(byQuantity);
        } catch (IOException broken) {
            throw new UncheckedIOException("the trade's numbers cannot be read from the jar", broken);
        }
    }

    private static void size(DataOutputStream data, Optional<Written> size) throws IOException {
        data.writeBoolean(size.isPresent());
        if (size.isPresent()) {
            Written written = size.get();
            data.writeDouble(written.low());
            data.writeDouble(written.high());
            data.writeUTF(written.unit().dimension().word());
            data.writeUTF(written.unit().word());
            data.writeInt(written.figures());
            data.writeUTF(written.text());
        }
    }

    private static Optional<Written> size(DataInputStream data) throws IOException {
        if (!data.readBoolean()) {
            return Optional.empty();
        }
        double low = data.readDouble();
        double high = data.readDouble();
        Dimension dimension = Dimension.named(data.readUTF()).orElseThrow();
        String word = data.readUTF();
        Unit unit = Units.named(word, dimension).orElseGet(() -> Units.si(dimension));
        return Optional.of(new Written(low == high ? Written.Form.PLAIN : Written.Form.RANGE, low, high, unit, data.readInt(), data.readUTF()));
    }

    private static void words(DataOutputStream data, Map<String, String> words) throws IOException {
        data.writeInt(words.size());
        for (Map.Entry<String, String> word : new TreeMap<>(words).entrySet()) {
            data.writeUTF(word.getKey());
            data.writeUTF(word.getValue());
        }
    }

    private static Map<String, String> words(DataInputStream data) throws IOException {
        Map<String, String> words = new TreeMap<>();
        for (int n = data.readInt(); n > 0; n--) {
            words.put(data.readUTF(), data.readUTF());
        }
        return words.isEmpty() ? Map.of() : Collections.unmodifiableMap(words);
    }
}
