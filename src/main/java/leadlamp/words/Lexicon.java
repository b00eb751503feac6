package leadlamp.words;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;

/**
 * A vocabulary in its compiled form. A word is found by its hash and decoded when it is first asked for; a quantity that
 * a kind lends to its member (`head bolt free length`) is put together then. Safe in several threads: what is decoded
 * twice is equal.
 */
final class Lexicon implements Vocabulary {
    private static final String ANY_ENTRY = "any entry";
    private static final String SHEET = "sheet ";

    private final byte[] bytes;
    /** Head, blocks and the places of the texts, a number an entry: read from bytes each would cost ten calls. */
    private final int[] data;
    private final int texts;
    private final String[] decoded;
    private final Part[] parts;
    private final Quantity[] quantities;
    private final Sign[] signs;
    private final Step[] steps;
    private final GaugeKind[] gauges;
    private final Property[] properties;
    private final Map<String, Optional<Quantity>> lent = new ConcurrentHashMap<>();
    private final Map<String, List<Property>> sections = new ConcurrentHashMap<>();

    Lexicon(byte[] bytes) {
        this.bytes = bytes;
        ByteBuffer numbers = ByteBuffer.wrap(bytes);
        if (bytes.length < 8 || numbers.getInt(0) != Pack.MAGIC) {
            throw new IllegalStateException("the compiled vocabulary is of another version; build the program anew");
        }
        texts = numbers.getInt(4);
        decoded = new String[numbers.getInt(texts)];
        data = new int[texts / 4 + 2 + decoded.length];
        numbers.asIntBuffer().get(data);
        parts = new Part[count(Pack.PARTS)];
        quantities = new Quantity[count(Pack.QUANTITIES)];
        signs = new Sign[count(Pack.SIGNS)];
        steps = new Step[count(Pack.STEPS)];
        gauges = new GaugeKind[count(Pack.GAUGES)];
        properties = new Property[count(Pack.PROPERTIES)];
    }

    byte[] bytes() {
        return bytes.clone();
    }

    @Override
    public Optional<Part> part(String word) {
        int found = singular(Pack.PART_WORDS, word);
        return found < 0 ? Optional.empty() : Optional.of(partAt(found));
    }

    @Override
    public Collection<Part> parts() {
        for (int i = 0; i < parts.length; i++) {
            partAt(i);
        }
        return List.of(parts);
    }

    @Override
    public Optional<Quantity> quantity(String word) {
        int found = find(Pack.QUANTITY_WORDS, word);
        if (found >= 0) {
            return Optional.of(quantityAt(found));
        }
        Optional<Quantity> known = lent.get(word);
        if (known == null) {
            known = ofPart(word);
            lent.put(word, known);
        }
        return known;
    }

    @Override
    public Collection<Quantity> quantities() {
        for (int i = 0; i < quantities.length; i++) {
            quantityAt(i);
        }
        return List.of(quantities);
    }

    @Override
    public Optional<Sign> sign(String word) {
        int found = find(Pack.SIGN_WORDS, word);
        return found < 0 ? Optional.empty() : Optional.of(signAt(found));
    }

    @Override
    public Collection<Sign> signs() {
        for (int i = 0; i < signs.length; i++) {
            signAt(i);
        }
        return List.of(signs);
    }

    @Override
    public Optional<Step> step(String word) {
        int found = find(Pack.STEP_WORDS, word);
        return found < 0 ? Optional.empty() : Optional.of(stepAt(found));
    }

    @Override
    public Collection<Step> steps() {
        for (int i = 0; i < steps.length; i++) {
            stepAt(i);
        }
        return List.of(steps);
    }

    @Override
    public Optional<GaugeKind> gauge(String word) {
        int found = singular(Pack.GAUGE_WORDS, word);
        return found < 0 ? Optional.empty() : Optional.of(gaugeAt(found));
    }

    @Override
    public Collection<GaugeKind> gauges() {
        for (int i = 0; i < gauges.length; i++) {
            gaugeAt(i);
        }
        return List.of(gauges);
    }

    @Override
    public Optional<Property> property(String section, String word) {
        int found = property(section, "", word);
        if (found < 0 && find(Pack.SECTION_WORDS, section) < 0) {
            found = property(SHEET, section, word);
        }
        if (found < 0) {
            found = property(ANY_ENTRY, "", word);
        }
        return found < 0 ? Optional.empty() : Optional.of(propertyAt(found));
    }

    @Override
    public Collection<Property> properties(String section) {
        List<Property> known = sections.get(section);
        if (known == null) {
            known = section(section);
            sections.put(section, known);
        }
        return known;
    }

    @Override
    public Map<String, String> groups() {
        return new Cursor(place(Pack.LISTS, 0)).map();
    }

    @Override
    public Map<String, String> events() {
        return new Cursor(place(Pack.LISTS, 1)).map();
    }

    @Override
    public Map<String, Boolean> conditions() {
        Map<String, Boolean> conditions = new LinkedHashMap<>();
        for (var condition : new Cursor(place(Pack.LISTS, 2)).map().entrySet()) {
            conditions.put(condition.getKey(), !condition.getValue().isEmpty());
        }
        return Collections.unmodifiableMap(conditions);
    }

    @Override
    public Collection<PlaceWord> placeWords() {
        List<PlaceWord> words = new ArrayList<>();
        int count = count(Pack.PLACES);
        for (int i = 0; i < count; i++) {
            Cursor at = new Cursor(place(Pack.PLACES, i));
            words.add(new PlaceWord(at.text(), at.text(), at.text(), at.texts()));
        }
        return Collections.unmodifiableList(words);
    }

    @Override
    public Map<String, String> placeSynonyms() {
        Map<String, String> synonyms = new LinkedHashMap<>();
        Collection<PlaceWord> words = placeWords();
        for (PlaceWord word : words) {
            for (String also : word.also()) {
                synonyms.putIfAbsent(also, word.name());
            }
        }
        for (PlaceWord word : words) {
            synonyms.remove(word.name());
        }
        return Collections.unmodifiableMap(synonyms);
    }

    @Override
    public Collection<String> meanings(String word) {
        int found = find(Pack.MEANING_WORDS, word);
        return found < 0 ? List.of() : new Cursor(place(Pack.MEANINGS, found)).texts();
    }

    @Override
    public Map<String, String> spellings(Kind kind) {
        Map<String, String> spellings = new TreeMap<>();
        switch (kind) {
            case PART -> spellings(Pack.PART_WORDS).forEach((word, index) -> spellings.put(word, partAt(index).name()));
            case QUANTITY -> spellings(Pack.QUANTITY_WORDS).forEach((word, index) -> spellings.put(word, quantityAt(index).name()));
            case SIGN -> spellings(Pack.SIGN_WORDS).forEach((word, index) -> spellings.put(word, signAt(index).name()));
            case STEP -> spellings(Pack.STEP_WORDS).forEach((word, index) -> spellings.put(word, stepAt(index).name()));
            case GAUGE -> spellings(Pack.GAUGE_WORDS).forEach((word, index) -> spellings.put(word, gaugeAt(index).name()));
        }
        return Collections.unmodifiableMap(spellings);
    }

    /** All words of a table with their records. */
    private Map<String, Integer> spellings(int table) {
        Map<String, Integer> all = new TreeMap<>();
        int start = block(table);
        int slots = number(start);
        for (int at = 0; at < slots; at++) {
            int text = number(start + 4 + 8 * at);
            if (text >= 0) {
                all.put(text(text), number(start + 8 + 8 * at));
            }
        }
        return all;
    }

    private int property(String section, String below, String word) {
        return find(Pack.PROPERTY_WORDS, section.concat(below).concat(": ").concat(word));
    }

    /** A part's or kind's synonym with a reading's word: first the longest part, first the part itself. */
    private Optional<Quantity> ofPart(String word) {
        String asked = word.strip();
        for (int i = asked.lastIndexOf(' '); i > 0; i = asked.lastIndexOf(' ', i - 1)) {
            int found = singular(Pack.PART_WORDS, asked.substring(0, i));
            if (found >= 0) {
                Part part = partAt(found);
                String what = asked.substring(i + 1);
                int own = singular(Pack.QUANTITY_WORDS, part.name().concat(" ").concat(what));
                if (own >= 0) {
                    return Optional.of(quantityAt(own));
                }
                for (String kind : part.kinds()) {
                    int lender = singular(Pack.QUANTITY_WORDS, kind.concat(" ").concat(what));
                    if (lender >= 0 && quantityAt(lender).of().equals(kind) && !quantityAt(lender).derived()) {
                        return Optional.of(lend(quantityAt(lender), part));
                    }
                }
            }
        }
        int plural = singular(Pack.QUANTITY_WORDS, asked);
        return plural < 0 ? Optional.empty() : Optional.of(quantityAt(plural));
    }

    private Quantity lend(Quantity of, Part part) {
        String name = part.name().concat(" ").concat(of.what());
        int own = find(Pack.QUANTITY_WORDS, name);
        if (own >= 0) {
            return quantityAt(own);
        }
        return new Quantity(name, part.name(), of.what(), of.kind(), of.dimension(), of.unit(),
                part.group(), List.of(), of.gauge(), of.doubt(), of.harm(), false, of.from(), of.gloss());
    }

    private List<Property> section(String section) {
        int found = find(Pack.SECTION_WORDS, section);
        if (found < 0) {
            found = find(Pack.SECTION_WORDS, SHEET.concat(section));
        }
        if (found < 0) {
            return List.of();
        }
        List<Property> all = new ArrayList<>();
        for (int property : new Cursor(place(Pack.SECTIONS, found)).numbers()) {
            all.add(propertyAt(property));
        }
        return Collections.unmodifiableList(all);
    }

    private Part partAt(int index) {
        if (parts[index] == null) {
            Cursor at = new Cursor(place(Pack.PARTS, index));
            parts[index] = new Part(at.text(), at.text(), at.text(), at.text(), at.number(), at.texts(), at.text(), at.text(),
                    at.text(), at.text());
        }
        return parts[index];
    }

    private Quantity quantityAt(int index) {
        if (quantities[index] == null) {
            Cursor at = new Cursor(place(Pack.QUANTITIES, index));
            String name = at.text();
            String of = at.text();
            String what = at.text();
            String kind = at.text();
            Dimension dimension = Dimension.named(at.text()).orElseThrow();
            Unit unit = new Unit(at.text(), dimension, at.real(), at.real());
            quantities[index] = new Quantity(name, of, what, kind, dimension, unit, at.text(), at.texts(),
                    at.optional(), at.optional(), at.text(), at.number() == 1, at.texts(), at.text());
        }
        return quantities[index];
    }

    private Sign signAt(int index) {
        if (signs[index] == null) {
            Cursor at = new Cursor(place(Pack.SIGNS, index));
            signs[index] = new Sign(at.text(), at.text(), at.texts(), at.number() == 1, at.texts(), at.text(), at.number() == 1);
        }
        return signs[index];
    }

    private Step stepAt(int index) {
        if (steps[index] == null) {
            Cursor at = new Cursor(place(Pack.STEPS, index));
            String name = at.text();
            String gloss = at.text();
            List<String> after = at.texts();
            steps[index] = new Step(name, gloss, after, at.lists(), at.texts(), at.number(), at.text(),
                    at.number() == 1, at.number() == 1);
        }
        return steps[index];
    }

    private GaugeKind gaugeAt(int index) {
        if (gauges[index] == null) {
            Cursor at = new Cursor(place(Pack.GAUGES, index));
            gauges[index] = new GaugeKind(at.text(), at.text(), at.text(), at.text());
        }
        return gauges[index];
    }

    private Property propertyAt(int index) {
        if (properties[index] == null) {
            Cursor at = new Cursor(place(Pack.PROPERTIES, index));
            String section = at.text();
            String name = at.text();
            Map<String, String> values = at.map();
            Map<String, String> also = at.map();
            String takes = at.text();
            String gloss = at.text();
            List<String> of = at.texts();
            Map<String, Map<String, String>> perPart = new LinkedHashMap<>();
            for (int n = at.number(); n > 0; n--) {
                perPart.put(at.text(), at.map());
            }
            properties[index] = new Property(section, name, values, also, takes, gloss, of,
                    Collections.unmodifiableMap(perPart), at.lists(), at.lists());
        }
        return properties[index];
    }

    private int count(int block) {
        return number(block(block));
    }

    private int place(int block, int record) {
        int start = block(block);
        return start + number(start + 4 + 4 * record);
    }

    private int block(int block) {
        return data[2 + block];
    }

    /** The number that stands at a place, counted in bytes. */
    private int number(int at) {
        return data[at >> 2];
    }

    /** The word, else without its plural ending. */
    private int singular(int table, String word) {
        int found = find(table, word);
        if (found < 0 && word.endsWith("s")) {
            found = find(table, word.substring(0, word.length() - 1));
            if (found < 0 && word.endsWith("es")) {
                found = find(table, word.substring(0, word.length() - 2));
            }
            if (found < 0 && word.endsWith("ies")) {
                found = find(table, word.substring(0, word.length() - 3) + "y");
            }
        }
        return found;
    }

    /** The record of a word as written, else in lower case; -1 where there is none. */
    private int find(int table, String word) {
        int found = slot(table, word);
        if (found < 0) {
            String key = word.strip().toLowerCase(Locale.ROOT);
            if (!key.equals(word)) {
                found = slot(table, key);
            }
        }
        return found;
    }

    private int slot(int table, String word) {
        int start = block(table) >> 2;
        int last = data[start] - 1;
        for (int at = Pack.hash(word) & last;; at = at + 1 & last) {
            int text = data[start + 1 + 2 * at];
            if (text < 0) {
                return -1;
            }
            if (text(text).equals(word)) {
                return data[start + 2 + 2 * at];
            }
        }
    }

    private String text(int number) {
        String text = decoded[number];
        if (text == null) {
            int index = texts + 4 + 4 * number;
            int from = number(index);
            text = new String(bytes, from, number(index + 4) - from, StandardCharsets.UTF_8);
            decoded[number] = text;
        }
        return text;
    }

    /** Walks through one record. */
    private final class Cursor {
        private int at;

        Cursor(int at) {
            this.at = at;
        }

        int number() {
            at += 4;
            return Lexicon.this.number(at - 4);
        }

        double real() {
            at += 8;
            return Double.longBitsToDouble((long) Lexicon.this.number(at - 8) << 32 | Lexicon.this.number(at - 4) & 0xffffffffL);
        }

        String text() {
            return Lexicon.this.text(number());
        }

        Optional<String> optional() {
            String text = text();
            return text.isEmpty() ? Optional.empty() : Optional.of(text);
        }

        int[] numbers() {
            int[] numbers = new int[number()];
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = number();
            }
            return numbers;
        }

        List<String> texts() {
            int count = number();
            if (count == 0) {
                return List.of();
            }
            String[] texts = new String[count];
            for (int i = 0; i < count; i++) {
                texts[i] = text();
            }
            return List.of(texts);
        }

        Map<String, List<String>> lists() {
            int count = number();
            if (count == 0) {
                return Map.of();
            }
            Map<String, List<String>> lists = new LinkedHashMap<>();
            for (int i = 0; i < count; i++) {
                lists.put(text(), texts());
            }
            return Collections.unmodifiableMap(lists);
        }

        Map<String, String> map() {
            int count = number();
            if (count == 0) {
                return Map.of();
            }
            Map<String, String> map = new LinkedHashMap<>();
            for (int i = 0; i < count; i++) {
                map.put(text(), text());
            }
            return Collections.unmodifiableMap(map);
        }
    }
}
