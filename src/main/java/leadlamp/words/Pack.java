package leadlamp.words;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Writes the compiled form: every text once, records that name texts by number, and hash tables from a word to its
 * record. A reader takes out one word without touching the rest, for the start of a command must not be felt.
 */
final class Pack {
    static final int MAGIC = 0x4c4c5603;
    static final int PARTS = 0;
    static final int PART_WORDS = 1;
    static final int QUANTITIES = 2;
    static final int QUANTITY_WORDS = 3;
    static final int SIGNS = 4;
    static final int SIGN_WORDS = 5;
    static final int STEPS = 6;
    static final int STEP_WORDS = 7;
    static final int GAUGES = 8;
    static final int GAUGE_WORDS = 9;
    static final int PROPERTIES = 10;
    static final int PROPERTY_WORDS = 11;
    static final int SECTIONS = 12;
    static final int SECTION_WORDS = 13;
    static final int MEANINGS = 14;
    static final int MEANING_WORDS = 15;
    static final int PLACES = 16;
    static final int LISTS = 17;
    private static final int BLOCKS = 18;
    /** Magic, place of the texts, then one place for each block. */
    private static final int HEAD = 4 * (2 + BLOCKS);

    private final Map<String, Integer> texts = new LinkedHashMap<>();
    private final byte[][] blocks = new byte[BLOCKS][];
    private final ByteArrayOutputStream records = new ByteArrayOutputStream();
    private final DataOutputStream out = new DataOutputStream(records);

    static int hash(String word) {
        int hash = word.hashCode();
        return hash ^ hash >>> 15;
    }

    /** Records, each behind its place within the block. */
    <T> void records(int block, List<T> all, Consumer<T> write) throws IOException {
        List<Integer> starts = new ArrayList<>();
        records.reset();
        for (T one : all) {
            starts.add(records.size());
            write.accept(one);
        }
        byte[] body = records.toByteArray();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream head = new DataOutputStream(bytes);
        head.writeInt(all.size());
        for (int start : starts) {
            head.writeInt(4 + 4 * all.size() + start);
        }
        head.write(body);
        blocks[block] = bytes.toByteArray();
    }

    /** A hash table with open addressing, at most half full: text, record; -1 where it is empty. */
    void table(int block, Map<String, Integer> words) throws IOException {
        int size = Integer.highestOneBit(Math.max(1, words.size()) * 2 - 1) * 2;
        int[] slots = new int[size * 2];
        for (int i = 0; i < size; i++) {
            slots[2 * i] = -1;
        }
        for (var word : words.entrySet()) {
            int at = hash(word.getKey()) & size - 1;
            while (slots[2 * at] >= 0) {
                at = at + 1 & size - 1;
            }
            slots[2 * at] = text(word.getKey());
            slots[2 * at + 1] = word.getValue();
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream table = new DataOutputStream(bytes);
        table.writeInt(size);
        for (int slot : slots) {
            table.writeInt(slot);
        }
        blocks[block] = bytes.toByteArray();
    }

    byte[] bytes() {
        int size = HEAD;
        for (byte[] block : blocks) {
            size += block.length;
        }
        int textPlace = size;
        List<byte[]> encoded = new ArrayList<>();
        size += 4 + 4 * (texts.size() + 1);
        for (String text : texts.keySet()) {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            encoded.add(bytes);
            size += bytes.length;
        }
        ByteBuffer buffer = ByteBuffer.allocate(size);
        buffer.putInt(MAGIC).putInt(textPlace);
        int place = HEAD;
        for (byte[] block : blocks) {
            buffer.putInt(place);
            place += block.length;
        }
        for (byte[] block : blocks) {
            buffer.put(block);
        }
        buffer.putInt(texts.size());
        int start = textPlace + 4 + 4 * (texts.size() + 1);
        for (byte[] text : encoded) {
            buffer.putInt(start);
            start += text.length;
        }
        buffer.putInt(start);
        encoded.forEach(buffer::put);
        return buffer.array();
    }

    void part(Part part) {
        write(part.name(), part.gloss(), part.system(), part.group());
        number(part.strip());
        words(part.kinds());
        write(part.goesWith(), part.runsIn(), part.keyedBy(), part.keepsIn());
    }

    void quantity(Quantity quantity) {
        write(quantity.name(), quantity.of(), quantity.what(), quantity.kind(), quantity.dimension().word(),
                quantity.unit().word());
        real(quantity.unit().factor());
        real(quantity.unit().offset());
        write(quantity.group());
        words(quantity.forms());
        write(quantity.gauge().orElse(""), quantity.doubt().orElse(""), quantity.harm());
        number(quantity.derived() ? 1 : 0);
        words(quantity.from());
        write(quantity.gloss());
    }

    void sign(Sign sign) {
        write(sign.name(), sign.gloss());
        words(sign.parts());
        number(sign.sound() ? 1 : 0);
        words(sign.rulesOut());
        write(sign.amount());
        number(sign.deep() ? 1 : 0);
    }

    void step(Step step) {
        write(step.name(), step.gloss());
        words(step.after());
        lists(step.afterFor());
        words(step.closes());
        number(step.reach());
        write(step.onlyFor());
        number(step.dueAll() ? 1 : 0);
        number(step.last() ? 1 : 0);
    }

    void gauge(GaugeKind gauge) {
        write(gauge.name(), gauge.gloss(), gauge.doubt(), gauge.basis());
    }

    void property(Property property) {
        write(property.section(), property.name());
        map(property.values());
        map(property.also());
        write(property.takes(), property.gloss());
        words(property.of());
        number(property.perPart().size());
        property.perPart().forEach((part, values) -> {
            write(part);
            map(values);
        });
        lists(property.kinds());
        lists(property.sized());
    }

    private void lists(Map<String, List<String>> lists) {
        number(lists.size());
        lists.forEach((word, all) -> {
            write(word);
            words(all);
        });
    }

    void place(PlaceWord place) {
        write(place.name(), place.axis(), place.gloss());
        words(place.also());
    }

    void map(Map<String, String> map) {
        number(map.size());
        map.forEach(this::write);
    }

    void numbers(List<Integer> numbers) {
        number(numbers.size());
        numbers.forEach(this::number);
    }

    void words(Collection<String> words) {
        number(words.size());
        words.forEach(this::write);
    }

    private void write(String... all) {
        for (String one : all) {
            number(text(one));
        }
    }

    private int text(String text) {
        return texts.computeIfAbsent(text, t -> texts.size());
    }

    private void real(double real) {
        long bits = Double.doubleToLongBits(real);
        number((int) (bits >>> 32));
        number((int) bits);
    }

    private void number(int number) {
        try {
            out.writeInt(number);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
