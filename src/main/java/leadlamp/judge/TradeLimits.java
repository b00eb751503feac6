package leadlamp.judge;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Written;
import leadlamp.record.LimitLine;
import leadlamp.record.Place;
import leadlamp.record.Problem;
import leadlamp.record.TradeLines;
import leadlamp.record.Where;
import leadlamp.words.Carried;
import leadlamp.words.Listed;
import leadlamp.words.Names;
import leadlamp.words.Vocabulary;

/**
 * The trade's numbers, for when supplier and sheet are silent: the files {@code rules/<topic>/limits.yaml}, read when the project is
 * built and carried compiled. Refused are two topics that give one quantity a limit, a number without its basis, words that
 * nobody could have written, and two lines of which it cannot be said which is the more particular.
 */
public final class TradeLimits {
    /** Where the build step puts them. */
    public static final String RESOURCE = "/leadlamp/limits.bin";
    private static final int FORM = 4;

    /** Lines of the quantities that somebody asked of; each is taken apart then. */
    private final Map<String, List<LimitLine>> known = new ConcurrentHashMap<>();
    /** Where the lines of a quantity stand among the bytes; none where they were read from the folder of rules. */
    private final Map<String, Integer> places = new HashMap<>();
    private final byte[] bytes;
    private final List<String> sizes;

    private TradeLimits(Map<String, List<LimitLine>> lines) {
        this.bytes = new byte[0];
        Set<String> named = new TreeSet<>();
        for (Map.Entry<String, List<LimitLine>> of : lines.entrySet()) {
            known.put(of.getKey(), of.getValue());
            places.put(of.getKey(), 0);
            for (LimitLine line : of.getValue()) {
                named.add(line.times());
            }
        }
        this.sizes = List.copyOf(named);
    }

    private TradeLimits(byte[] bytes) throws IOException {
        this.bytes = bytes;
        Bytes data = new Bytes(bytes, 0);
        if (data.number() != FORM) {
            throw new IOException("they are of another version");
        }
        String[] named = new String[data.number()];
        for (int i = 0; i < named.length; i++) {
            named[i] = data.text();
        }
        this.sizes = List.of(named);
        for (int q = data.number(); q > 0; q--) {
            String quantity = data.text();
            int length = data.number();
            places.put(quantity, data.at);
            data.at += length;
        }
    }

    /** No numbers at all. */
    public static TradeLimits none() {
        return new TradeLimits(Map.of());
    }

    /** All its lines. */
    public List<LimitLine> lines() {
        List<LimitLine> lines = new ArrayList<>();
        quantities().forEach(quantity -> lines.addAll(of(quantity)));
        return lines;
    }

    /** The quantities that some of its numbers are shares of; among them no name, for those that are sizes of their own. */
    public List<String> sizes() {
        return sizes;
    }

    /**
     * Reads every `limits.yaml` of a folder of rules.
     *
     * @throws IOException              if the folder cannot be read
     * @throws IllegalArgumentException with all that is wrong, each with its place
     */
    public static TradeLimits ofFolder(Path rules, Vocabulary words) throws IOException {
        Map<String, List<LimitLine>> lines = new TreeMap<>();
        Map<String, String> owner = new HashMap<>();
        List<String> wrong = new ArrayList<>();
        for (Path file : files(rules)) {
            String name = rules.relativize(file).toString().replace('\\', '/');
            List<Problem> problems = new ArrayList<>();
            for (LimitLine line : TradeLines.read(file, name, words, problems)) {
                String before = owner.putIfAbsent(line.quantity(), name);
                if (before != null && !before.equals(name)) {
                    wrong.add(line.line() + ": the " + line.quantity() + " has its limits in " + before
                            + " already. One topic gives a quantity its limits.");
                }
                lines.computeIfAbsent(line.quantity(), q -> new ArrayList<>()).add(line);
            }
            for (Problem problem : problems) {
                wrong.add(problem.where() + ": " + problem.what() + (problem.expected().isEmpty() ? "" : " " + problem.expected())
                        + problem.nearest().map(n -> " Nearest word: " + n + ".").orElse(""));
            }
        }
        for (List<LimitLine> of : lines.values()) {
            for (int i = 0; i < of.size(); i++) {
                words(of.get(i), words, wrong);
                for (LimitLine before : of.subList(0, i)) {
                    tie(of.get(i), before, wrong);
                }
            }
        }
        if (!wrong.isEmpty()) {
            throw new IllegalArgumentException(String.join("\n", wrong));
        }
        return new TradeLimits(lines);
    }

    private static List<Path> files(Path rules) throws IOException {
        try (Stream<Path> topics = Files.list(rules)) {
            return topics.map(topic -> topic.resolve("limits.yaml")).filter(Files::isRegularFile).sorted().toList();
        }
    }

    /** A line that could never hold is worse than none: it looks as if the trade had a number. */
    private static void words(LimitLine line, Vocabulary words, List<String> wrong) {
        String the = line.line() + ": the " + line.quantity();
        if (line.least().isEmpty() && line.most().isEmpty()) {
            wrong.add(the + " has neither `least` nor `most`.");
        }
        if (!line.times().isEmpty() && words.quantity(line.times()).filter(q -> q.name().equals(line.times())).isEmpty()) {
            wrong.add(the + " is a share of \"" + line.times() + "\", which is no quantity.");
        }
        for (String word : line.where().keySet()) {
            if (Names.resolve(word, words).isEmpty()) {
                wrong.add(the + " holds for \"" + word + "\", which names nothing that is written."
                        + Names.nearest(word, words).map(n -> " Nearest: " + n + ".").orElse(""));
            }
        }
        TreeSet<String> known = new TreeSet<>();
        words.placeWords().forEach(word -> known.add(word.name()));
        for (String word : line.at().isEmpty() ? List.<String>of() : Arrays.asList(line.at().split(" "))) {
            if (!known.contains(word)) {
                wrong.add(the + " is limited at \"" + line.at() + "\", and \"" + word + "\" is no word of a place."
                        + Vocabulary.nearest(word, known).map(n -> " Nearest word: " + n + ".").orElse(""));
            }
        }
    }

    /** Two lines that may both hold, neither being the more particular, leave open which of them is meant. */
    private static void tie(LimitLine line, LimitLine before, List<String> wrong) {
        if (Limits.particular(line) == Limits.particular(before) && !exclude(line, before)) {
            wrong.add(line.line() + ": the " + line.quantity() + " is limited twice for one case, and neither line is the more particular; "
                    + "see line " + before.line().line() + ".");
        }
    }

    private static boolean exclude(LimitLine one, LimitLine other) {
        if (!one.at().isEmpty() && !other.at().isEmpty() && !Place.related(one.at(), other.at()) && sameAxes(one.at(), other.at())
                || !one.when().isEmpty() && !other.when().isEmpty() && !one.when().equals(other.when())
                || !one.asides().getOrDefault("speed", "").equals(other.asides().getOrDefault("speed", ""))) {
            return true;
        }
        for (Map.Entry<String, String> word : one.where().entrySet()) {
            String there = other.where().get(word.getKey());
            if (there != null && Collections.disjoint(Listed.in(word.getValue()), Listed.in(there))) {
                return true;
            }
        }
        return false;
    }

    /** `intake` and `exhaust` shut each other out; `intake` and `front` may be one place. */
    private static boolean sameAxes(String one, String other) {
        return !Place.related(one, one + " " + other) || !Place.related(other, one + " " + other);
    }

    /** The lines of a quantity. */
    List<LimitLine> of(String quantity) {
        List<LimitLine> lines = known.get(quantity);
        if (lines == null) {
            Integer at = places.get(quantity);
            lines = at == null ? List.of() : read(quantity, new Bytes(bytes, at));
            known.put(quantity, lines);
        }
        return lines;
    }

    /** Quantities that have a number of the trade, by name. */
    public List<String> quantities() {
        return List.copyOf(new TreeSet<>(places.keySet()));
    }

    /** Writes them in the form that {@link #compiled()} reads. */
    public void compile(OutputStream out) throws IOException {
        DataOutputStream data = new DataOutputStream(out);
        data.writeInt(FORM);
        data.writeInt(sizes.size());
        for (String size : sizes) {
            text(data, size);
        }
        data.writeInt(places.size());
        for (String quantity : quantities()) {
            ByteArrayOutputStream lines = new ByteArrayOutputStream();
            DataOutputStream of = new DataOutputStream(lines);
            of.writeInt(of(quantity).size());
            for (LimitLine line : of(quantity)) {
                write(line, of);
            }
            text(data, quantity);
            data.writeInt(lines.size());
            lines.writeTo(data);
        }
        data.flush();
    }

    private static void write(LimitLine line, DataOutputStream data) throws IOException {
        text(data, line.at());
        size(data, line.standard());
        size(data, line.least());
        size(data, line.most());
        text(data, line.times());
        text(data, line.when());
        words(data, line.where());
        words(data, line.asides());
        data.writeInt(line.reason() ? 1 : 0);
        text(data, line.basis());
        text(data, line.line().file());
        data.writeInt(line.line().line());
        data.writeInt(line.line().column());
    }

    private static void text(DataOutputStream data, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        data.writeInt(bytes.length);
        data.write(bytes);
    }

    /**
     * The numbers that the build step has put on the class path.
     *
     * @throws IllegalStateException where it has put none
     */
    public static TradeLimits compiled() {
        return Compiled.LIMITS;
    }

    /** Loaded once, when first asked for. */
    private static final class Compiled {
        private static final TradeLimits LIMITS = load();

        private static TradeLimits load() {
            try {
                return read(Carried.bytes(RESOURCE));
            } catch (IOException broken) {
                throw new UncheckedIOException("the trade's numbers cannot be read, " + RESOURCE, broken);
            }
        }
    }

    /** Reads what {@link #compile} wrote. */
    static TradeLimits read(byte[] bytes) throws IOException {
        return new TradeLimits(bytes);
    }

    private static List<LimitLine> read(String quantity, Bytes data) {
        List<LimitLine> lines = new ArrayList<>();
        for (int n = data.number(); n > 0; n--) {
            lines.add(new LimitLine(quantity, data.text(), size(data), size(data), size(data), data.text(), data.text(), words(data),
                    words(data), data.number() == 1, data.text(), new Where(data.text(), data.number(), data.number())));
        }
        return Collections.unmodifiableList(lines);
    }

    /** Walks through the bytes. */
    private static final class Bytes {
        private final byte[] bytes;
        private final ByteBuffer numbers;
        private int at;

        Bytes(byte[] bytes, int at) {
            this.bytes = bytes;
            this.numbers = ByteBuffer.wrap(bytes);
            this.at = at;
        }

        int number() {
            at += Integer.BYTES;
            return numbers.getInt(at - Integer.BYTES);
        }

        double real() {
            at += Double.BYTES;
            return numbers.getDouble(at - Double.BYTES);
        }

        String text() {
            int length = number();
            at += length;
            return new String(bytes, at - length, length, StandardCharsets.UTF_8);
        }
    }

    private static void size(DataOutputStream data, Optional<Written> size) throws IOException {
        data.writeInt(size.isPresent() ? 1 : 0);
        if (size.isPresent()) {
            Written written = size.get();
            data.writeInt(written.form().ordinal());
            data.writeDouble(written.low());
            data.writeDouble(written.high());
            text(data, written.unit().word());
            data.writeInt(written.unit().dimension().ordinal());
            data.writeDouble(written.unit().factor());
            data.writeDouble(written.unit().offset());
            data.writeInt(written.figures());
            text(data, written.text());
        }
    }

    private static Optional<Written> size(Bytes data) {
        if (data.number() == 0) {
            return Optional.empty();
        }
        Written.Form form = Written.Form.values()[data.number()];
        double low = data.real();
        double high = data.real();
        Unit unit = new Unit(data.text(), Dimension.values()[data.number()], data.real(), data.real());
        return Optional.of(new Written(form, low, high, unit, data.number(), data.text()));
    }

    private static void words(DataOutputStream data, Map<String, String> words) throws IOException {
        data.writeInt(words.size());
        for (Map.Entry<String, String> word : new TreeMap<>(words).entrySet()) {
            text(data, word.getKey());
            text(data, word.getValue());
        }
    }

    private static Map<String, String> words(Bytes data) {
        int count = data.number();
        if (count == 0) {
            return Map.of();
        }
        Map<String, String> words = new TreeMap<>();
        for (int i = 0; i < count; i++) {
            words.put(data.text(), data.text());
        }
        return Collections.unmodifiableMap(words);
    }
}
