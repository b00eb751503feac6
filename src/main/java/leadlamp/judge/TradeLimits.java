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
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Written;
import leadlamp.record.LimitLine;
import leadlamp.record.Where;
import leadlamp.words.Vocabulary;

/**
 * The trade's numbers, for when sheet and supplier are silent: the files {@code rules/<topic>/limits.yaml}, read when the project
 * is built and carried compiled. Two topics that give one quantity a limit, a number without its basis, and two lines of which
 * nobody could say which is the more particular, are refused.
 */
public final class TradeLimits {
    /** The compiled form on the class path. */
    public static final String RESOURCE = "/leadlamp/limits.bin";
    private static final int MAGIC = 0x4c4c4c02;

    private final Map<String, List<LimitLine>> byQuantity;

    private TradeLimits(List<LimitLine> lines) {
        Map<String, List<LimitLine>> all = new HashMap<>();
        for (LimitLine line : lines) {
            all.computeIfAbsent(line.quantity(), q -> new ArrayList<>()).add(line);
        }
        this.byQuantity = all;
    }

    /** No numbers of the trade at all. */
    public static TradeLimits none() {
        return new TradeLimits(List.of());
    }

    /**
     * The numbers of a rules folder.
     *
     * @throws IllegalArgumentException with every fault, its file and line, where the files do not hold together
     */
    public static TradeLimits ofFolder(Path rules, Vocabulary words) throws IOException {
        List<LimitLine> lines = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        Map<String, String> topicOf = new TreeMap<>();
        for (Path file : files(rules)) {
            String topic = file.getParent().getFileName().toString();
            LimitsFile read = LimitsFile.read(file, topic + "/" + file.getFileName(), words);
            faults.addAll(read.faults());
            for (LimitLine line : read.lines()) {
                String other = topicOf.putIfAbsent(line.quantity(), topic);
                if (other != null && !other.equals(topic)) {
                    faults.add(line.line() + ": " + line.quantity() + " has a limit under " + other + " as well as under " + topic
                            + ". One topic owns it.");
                }
                lines.add(line);
            }
        }
        faults.addAll(ties(lines));
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException("The trade's limits do not hold together:\n  " + String.join("\n  ", faults));
        }
        return new TradeLimits(lines);
    }

    private static List<Path> files(Path rules) throws IOException {
        try (Stream<Path> topics = Files.list(rules)) {
            return topics.map(topic -> topic.resolve("limits.yaml")).filter(Files::isRegularFile).sorted().toList();
        }
    }

    /** Lines of one quantity that may both apply, with neither more particular than the other. */
    private static List<String> ties(List<LimitLine> lines) {
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                LimitLine one = lines.get(i);
                LimitLine other = lines.get(j);
                if (one.quantity().equals(other.quantity()) && Limits.particular(one) == Limits.particular(other)
                        && !exclusive(one, other)) {
                    faults.add(other.line() + ": " + one.quantity() + " has two lines that may both apply, and neither is the more "
                            + "particular; the other stands at " + one.line() + ".");
                }
            }
        }
        return faults;
    }

    private static boolean exclusive(LimitLine one, LimitLine other) {
        if (!one.at().equals(other.at()) && !one.at().isEmpty() && !other.at().isEmpty()
                && !leadlamp.record.Place.related(one.at(), other.at())) {
            return true;
        }
        if (!one.when().equals(other.when()) && !one.when().isEmpty() && !other.when().isEmpty()) {
            return true;
        }
        if (!one.asides().getOrDefault("speed", "").equals(other.asides().getOrDefault("speed", ""))) {
            return true;
        }
        for (Map.Entry<String, String> word : one.where().entrySet()) {
            String there = other.where().get(word.getKey());
            if (there != null && Collections.disjoint(List.of(word.getValue().split(", ")), List.of(there.split(", ")))) {
                return true;
            }
        }
        return false;
    }

    /** The lines of a quantity. */
    List<LimitLine> of(String quantity) {
        return byQuantity.getOrDefault(quantity, List.of());
    }

    /** Quantities that have a number of the trade. */
    public List<String> quantities() {
        return byQuantity.keySet().stream().sorted().toList();
    }

    /** Writes the compiled form. */
    public void compile(OutputStream out) throws IOException {
        DataOutputStream data = new DataOutputStream(out);
        data.writeInt(MAGIC);
        Map<String, List<LimitLine>> sorted = new TreeMap<>(byQuantity);
        data.writeInt(sorted.values().stream().mapToInt(List::size).sum());
        for (List<LimitLine> lines : sorted.values()) {
            for (LimitLine line : lines) {
                write(line, data);
            }
        }
        data.flush();
    }

    /** The numbers as compiled into the program. */
    public static TradeLimits compiled() {
        return Compiled.LIMITS;
    }

    /** The numbers of a compiled form. */
    static TradeLimits read(InputStream in) throws IOException {
        DataInputStream data = new DataInputStream(new BufferedInputStream(in));
        if (data.readInt() != MAGIC) {
            throw new IOException("these are no limits of this version");
        }
        int count = data.readInt();
        List<LimitLine> lines = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            lines.add(line(data));
        }
        return new TradeLimits(lines);
    }

    private static void write(LimitLine line, DataOutputStream out) throws IOException {
        out.writeUTF(line.quantity());
        out.writeUTF(line.at());
        size(line.standard(), out);
        size(line.least(), out);
        size(line.most(), out);
        out.writeUTF(line.times());
        out.writeUTF(line.when());
        words(line.where(), out);
        words(line.asides(), out);
        out.writeBoolean(line.reason());
        out.writeUTF(line.basis());
        out.writeUTF(line.line().file());
        out.writeInt(line.line().line());
        out.writeInt(line.line().column());
    }

    private static LimitLine line(DataInputStream in) throws IOException {
        return new LimitLine(in.readUTF(), in.readUTF(), size(in), size(in), size(in), in.readUTF(), in.readUTF(), words(in), words(in),
                in.readBoolean(), in.readUTF(), new Where(in.readUTF(), in.readInt(), in.readInt()));
    }

    private static void size(Optional<Written> size, DataOutputStream out) throws IOException {
        out.writeBoolean(size.isPresent());
        if (size.isPresent()) {
            Written w = size.get();
            out.writeUTF(w.form().name());
            out.writeDouble(w.low());
            out.writeDouble(w.high());
            out.writeUTF(w.unit().word());
            out.writeUTF(w.unit().dimension().name());
            out.writeDouble(w.unit().factor());
            out.writeDouble(w.unit().offset());
            out.writeInt(w.figures());
            out.writeUTF(w.text());
        }
    }

    private static Optional<Written> size(DataInputStream in) throws IOException {
        if (!in.readBoolean()) {
            return Optional.empty();
        }
        Written.Form form = Written.Form.valueOf(in.readUTF());
        double low = in.readDouble();
        double high = in.readDouble();
        String word = in.readUTF();
        leadlamp.quantity.Dimension dimension = leadlamp.quantity.Dimension.valueOf(in.readUTF());
        Unit unit = new Unit(word, dimension, in.readDouble(), in.readDouble());
        return Optional.of(new Written(form, low, high, unit, in.readInt(), in.readUTF()));
    }

    private static void words(Map<String, String> words, DataOutputStream out) throws IOException {
        out.writeInt(words.size());
        for (Map.Entry<String, String> word : new TreeMap<>(words).entrySet()) {
            out.writeUTF(word.getKey());
            out.writeUTF(word.getValue());
        }
    }

    private static Map<String, String> words(DataInputStream in) throws IOException {
        int count = in.readInt();
        if (count == 0) {
            return Map.of();
        }
        Map<String, String> words = new TreeMap<>();
        for (int i = 0; i < count; i++) {
            words.put(in.readUTF(), in.readUTF());
        }
        return Collections.unmodifiableMap(words);
    }

    private static final class Compiled {
        private static final TradeLimits LIMITS = load();

        private static TradeLimits load() {
            try (InputStream in = TradeLimits.class.getResourceAsStream(RESOURCE)) {
                if (in == null) {
                    throw new IllegalStateException("the program lacks the trade's limits, " + RESOURCE);
                }
                return read(in);
            } catch (IOException broken) {
                throw new UncheckedIOException("the program's limits cannot be read, " + RESOURCE, broken);
            }
        }
    }
}
