package leadlamp.audit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/**
 * The pages as the program carries them: words once, in a table; what decides whether a check is asked, at the front; the
 * ways of each check and its sentences further back, each decoded when it is wanted.
 *
 * <p>Layout, all numbers seven bits a byte, low bits first: length of the words; the words; length of the front; the front
 * (needs, conditions, checks with the places of their ways and sentences); the ways; the sentences, deflated one by one.
 */
final class Compiled {
    private static final int FORM = 1;

    private final byte[] bytes;
    private final int[] wordAt;
    private final String[] words;
    private final int backAt;
    private final List<Check> checks;
    private final List<ConditionPage> conditions;
    private final Map<String, Optional<Need>> needs;

    Compiled(byte[] bytes) {
        this.bytes = bytes;
        In in = new In(bytes, 0);
        if (in.number() != FORM) {
            throw new IllegalStateException("the compiled pages are of another version of the program");
        }
        int count = in.number();
        wordAt = new int[count];
        words = new String[count];
        for (int i = 0; i < count; i++) {
            wordAt[i] = in.at;
            int length = in.number();
            in.at += length;
        }
        int front = in.number();
        backAt = in.at + front;
        needs = readNeeds(in);
        conditions = readConditions(in);
        checks = readChecks(in);
    }

    /** In the order of their names. */
    List<Check> checks() {
        return checks;
    }

    List<ConditionPage> conditions() {
        return conditions;
    }

    /** Words of needs, heeds, applies and conditions, taken apart; who takes another apart adds it for all. */
    Map<String, Optional<Need>> needs() {
        return needs;
    }

    private Map<String, Optional<Need>> readNeeds(In in) {
        int count = in.number();
        Map<String, Optional<Need>> read = new ConcurrentHashMap<>(count * 2);
        Need.Kind[] kinds = Need.Kind.values();
        for (int i = 0; i < count; i++) {
            String word = word(in);
            read.put(word, Optional.of(new Need(word, kinds[in.number()], word(in), word(in), word(in))));
        }
        return read;
    }

    private List<ConditionPage> readConditions(In in) {
        int count = in.number();
        List<ConditionPage> read = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            read.add(new ConditionPage(word(in), list(in), list(in), word(in), patterns(in)));
        }
        return read;
    }

    private List<Check> readChecks(In in) {
        int count = in.number();
        List<Check> read = new ArrayList<>(count);
        Severity[] severities = Severity.values();
        Likelihood[] likelihoods = Likelihood.values();
        for (int i = 0; i < count; i++) {
            String id = word(in);
            String topic = word(in);
            String askedOf = word(in);
            Map<String, List<String>> applies = lists(in);
            Severity severity = severities[in.number()];
            Likelihood likelihood = likelihoods[in.number()];
            int moved = in.number();
            Map<String, Integer> shifts = new TreeMap<>();
            for (int k = 0; k < moved; k++) {
                shifts.put(word(in), in.number() - 1);
            }
            boolean person = in.number() == 1;
            String last = word(in);
            int waysAt = backAt + in.number();
            int textsAt = backAt + in.number();
            read.add(new Check(this, waysAt, textsAt, id, topic, askedOf, applies, severity, likelihood, shifts, person,
                    last.isEmpty() ? Optional.empty() : Optional.of(last)));
        }
        return read;
    }

    List<Way> ways(Check check, int at) {
        In in = new In(bytes, at);
        int count = in.number();
        Way[] ways = new Way[count];
        for (int i = 0; i < count; i++) {
            String name = word(in);
            List<String> wanted = list(in);
            List<String> heeds = list(in);
            Map<String, List<String>> applies = lists(in);
            int severity = in.number();
            int likelihood = in.number();
            ways[i] = new Way(name, wanted, heeds, applies,
                    severity == 0 ? Optional.empty() : Optional.of(Severity.values()[severity - 1]),
                    likelihood == 0 ? Optional.empty() : Optional.of(Likelihood.values()[likelihood - 1]), patterns(in),
                    check, i);
        }
        return List.of(ways);
    }

    Check.Texts texts(int at) {
        In packed = new In(bytes, at);
        int length = packed.number();
        int deflated = packed.number();
        byte[] plain = new byte[length];
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(bytes, packed.at, deflated);
            int done = 0;
            while (done < length) {
                int more = inflater.inflate(plain, done, length - done);
                if (more == 0) {
                    throw new IllegalStateException("the compiled pages are broken");
                }
                done += more;
            }
        } catch (DataFormatException broken) {
            throw new IllegalStateException("the compiled pages are broken", broken);
        } finally {
            inflater.end();
        }
        In in = new In(plain, 0);
        return new Check.Texts(in.text(), in.texts(), in.text(), in.texts(), in.text(), in.text(), in.text(), in.text(),
                in.texts(), in.texts());
    }

    private List<Way.Pattern> patterns(In in) {
        int count = in.number();
        Way.Pattern[] patterns = new Way.Pattern[count];
        for (int i = 0; i < count; i++) {
            patterns[i] = new Way.Pattern(word(in), in.number() == 1, lists(in), list(in), word(in));
        }
        return List.of(patterns);
    }

    private String word(In in) {
        int number = in.number();
        String known = words[number];
        if (known == null) {
            In at = new In(bytes, wordAt[number]);
            int length = at.number();
            known = new String(bytes, at.at, length, StandardCharsets.UTF_8);
            words[number] = known;
        }
        return known;
    }

    private List<String> list(In in) {
        int count = in.number();
        if (count == 0) {
            return List.of();
        }
        String[] list = new String[count];
        for (int i = 0; i < count; i++) {
            list[i] = word(in);
        }
        return List.of(list);
    }

    private Map<String, List<String>> lists(In in) {
        int count = in.number();
        if (count == 0) {
            return Map.of();
        }
        Map<String, List<String>> lists = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            lists.put(word(in), list(in));
        }
        return lists;
    }

    /** Writes the compiled form. The same pages give the same bytes. */
    static void write(Collection<Check> checks, Collection<ConditionPage> conditions, Collection<Need> needs,
            OutputStream out) throws IOException {
        Out front = new Out();
        Out back = new Out();
        Map<String, Integer> table = new LinkedHashMap<>();
        Out words = new Out();
        TreeMap<String, Need> sortedNeeds = new TreeMap<>();
        needs.forEach(n -> sortedNeeds.put(n.word(), n));
        front.number(sortedNeeds.size());
        for (Need need : sortedNeeds.values()) {
            front.word(need.word(), table);
            front.number(need.kind().ordinal());
            front.word(need.of(), table);
            front.word(need.what(), table);
            front.word(need.group(), table);
        }
        TreeMap<String, ConditionPage> sortedConditions = new TreeMap<>();
        conditions.forEach(c -> sortedConditions.put(c.name(), c));
        front.number(sortedConditions.size());
        for (ConditionPage page : sortedConditions.values()) {
            front.word(page.name(), table);
            front.list(page.reads(), table);
            front.list(page.settledBy(), table);
            front.word(page.why(), table);
            front.patterns(page.patterns(), table);
        }
        TreeMap<String, Check> sorted = new TreeMap<>();
        checks.forEach(c -> sorted.put(c.id(), c));
        front.number(sorted.size());
        for (Check check : sorted.values()) {
            front.word(check.id(), table);
            front.word(check.topic(), table);
            front.word(check.askedOf(), table);
            front.lists(check.applies(), table);
            front.number(check.severity().ordinal());
            front.number(check.likelihood().ordinal());
            front.number(check.shifts().size());
            for (Map.Entry<String, Integer> shift : new TreeMap<>(check.shifts()).entrySet()) {
                front.word(shift.getKey(), table);
                front.number(shift.getValue() + 1);
            }
            front.number(check.person() ? 1 : 0);
            front.word(check.lastChance().orElse(""), table);
            front.number(back.size());
            ways(check, back, table);
            front.number(back.size());
            texts(check, back);
        }
        for (String word : table.keySet()) {
            byte[] utf = word.getBytes(StandardCharsets.UTF_8);
            words.number(utf.length);
            words.write(utf, 0, utf.length);
        }
        Out head = new Out();
        head.number(FORM);
        head.number(table.size());
        head.writeTo(out);
        words.writeTo(out);
        Out length = new Out();
        length.number(front.size());
        length.writeTo(out);
        front.writeTo(out);
        back.writeTo(out);
    }

    private static void ways(Check check, Out back, Map<String, Integer> table) {
        back.number(check.ways().size());
        for (Way way : check.ways()) {
            back.word(way.name(), table);
            back.list(way.needs(), table);
            back.list(way.heeds(), table);
            back.lists(way.applies(), table);
            back.number(way.severity().map(s -> s.ordinal() + 1).orElse(0));
            back.number(way.likelihood().map(s -> s.ordinal() + 1).orElse(0));
            back.patterns(way.patterns(), table);
        }
    }

    private static void texts(Check check, Out back) {
        Out plain = new Out();
        plain.text(check.question());
        plain.texts(check.chain());
        plain.text(check.todo());
        plain.texts(check.alsoCheck());
        plain.text(check.settleWith());
        plain.text(check.caution());
        plain.text(check.teaches());
        plain.text(check.basis());
        plain.texts(check.alsoCovers());
        List<String> found = new ArrayList<>();
        check.ways().forEach(w -> found.add(w.found()));
        plain.texts(found);
        byte[] whole = plain.toByteArray();
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
        deflater.setInput(whole);
        deflater.finish();
        byte[] packed = new byte[whole.length + 64];
        int length = deflater.deflate(packed);
        deflater.end();
        back.number(whole.length);
        back.number(length);
        back.write(packed, 0, length);
    }

    /** Reads numbers and texts, one after the other. */
    private static final class In {
        private final byte[] bytes;
        private int at;

        In(byte[] bytes, int at) {
            this.bytes = bytes;
            this.at = at;
        }

        int number() {
            int value = 0;
            int shift = 0;
            byte b;
            do {
                b = bytes[at++];
                value |= (b & 127) << shift;
                shift += 7;
            } while (b < 0);
            return value;
        }

        String text() {
            int length = number();
            String text = new String(bytes, at, length, StandardCharsets.UTF_8);
            at += length;
            return text;
        }

        List<String> texts() {
            String[] texts = new String[number()];
            for (int i = 0; i < texts.length; i++) {
                texts[i] = text();
            }
            return List.of(texts);
        }
    }

    /** Writes numbers and texts, one after the other. */
    private static final class Out extends ByteArrayOutputStream {
        void number(int value) {
            int rest = value;
            while (rest >>> 7 != 0) {
                write(rest & 127 | 128);
                rest >>>= 7;
            }
            write(rest);
        }

        void word(String word, Map<String, Integer> table) {
            Integer number = table.get(word);
            if (number == null) {
                number = table.size();
                table.put(word, number);
            }
            number(number);
        }

        void list(List<String> list, Map<String, Integer> table) {
            number(list.size());
            list.forEach(w -> word(w, table));
        }

        void lists(Map<String, List<String>> lists, Map<String, Integer> table) {
            number(lists.size());
            lists.forEach((word, list) -> {
                word(word, table);
                list(list, table);
            });
        }

        void patterns(List<Way.Pattern> patterns, Map<String, Integer> table) {
            number(patterns.size());
            for (Way.Pattern pattern : patterns) {
                word(pattern.fact(), table);
                number(pattern.negated() ? 1 : 0);
                lists(new TreeMap<>(pattern.quoted()), table);
                list(pattern.flags(), table);
                word(pattern.places(), table);
            }
        }

        void text(String text) {
            byte[] utf = text.getBytes(StandardCharsets.UTF_8);
            number(utf.length);
            write(utf, 0, utf.length);
        }

        void texts(List<String> texts) {
            number(texts.size());
            texts.forEach(this::text);
        }
    }
}
