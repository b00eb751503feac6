package leadlamp.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The quick way of reading against the whole parser, which is the measure: the quick way gives the very same file, with all places and
 * lines, or nothing. It gives nothing for a file of which the parser says that anything is wrong.
 */
class PlainYamlTest {
    private static final Path SAMPLES = Path.of("sample-builds");

    private static Optional<Yaml.File> quick(String text) {
        return PlainYaml.read(text, text.toCharArray(), "f.yaml");
    }

    private static Yaml.File full(String text) {
        return Yaml.inFull(text, "f.yaml");
    }

    /** Whether the quick way takes a text; then it reads the same as the parser. */
    private static boolean isTaken(String text) {
        Optional<Yaml.File> quick = quick(text);
        if (quick.isPresent() && !quick.get().equals(full(text))) {
            assertThat(quick.get()).as(text).isEqualTo(full(text));
        }
        return quick.isPresent();
    }

    private static List<Path> files(Path... folders) throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path folder : folders) {
            try (Stream<Path> all = Files.walk(folder)) {
                all.filter(p -> p.toString().endsWith(".yaml")).sorted().forEach(files::add);
            }
        }
        return files;
    }

    @Test
    void every_sample_and_every_engine_sheet_is_read_the_quick_way_with_any_line_ends() throws IOException {
        List<Path> slow = new ArrayList<>();
        for (Path file : files(SAMPLES)) {
            String text = Files.readString(file);
            if (!isTaken(text) || !isTaken(text.replace("\n", "\r\n"))) {
                slow.add(file);
            }
        }
        assertThat(slow).isEmpty();
    }

    @Test
    void every_file_of_the_tree_is_read_as_the_parser_reads_it_and_nearly_all_the_quick_way() throws IOException {
        List<Path> files = files(Path.of("rules"), Path.of("src"));
        int taken = 0;
        for (Path file : files) {
            taken += isTaken(Files.readString(file)) ? 1 : 0;
        }
        assertThat(files).hasSizeGreaterThan(300);
        assertThat(taken).isGreaterThan(files.size() * 9 / 10);
    }

    /** Had a class of the quick way need of the parser, a first start would pay for it. */
    @Test
    void a_sample_is_read_where_there_is_no_other_parser() throws Exception {
        URL classes = Yaml.class.getProtectionDomain().getCodeSource().getLocation();
        try (URLClassLoader alone = new URLClassLoader(new URL[] {classes}, ClassLoader.getPlatformClassLoader())) {
            Class<?> yaml = alone.loadClass(Yaml.class.getName());
            Object read = yaml.getMethod("read", Path.class, String.class).invoke(null, SAMPLES.resolve("hill-climb-three.yaml"), "f.yaml");
            Object tree = alone.loadClass(Yaml.File.class.getName()).getMethod("tree").invoke(read);
            assertThat((Optional<?>) tree).isPresent();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {
            "a: b", "a:", "a: ", "a:\nb:\n  c:\nd:", "# c\na: b", "a: b #c\n", "a: b#c", "a: #x\n", "a: #x\n  b",
            "a: b   \nc: d  \n\n  \n", "  a: b\n  c: d\n", "a:\n\n  # c\n\n  b\n", "a:\n- b\n- c\nd: e", "a:\n  - b\n  - c\nd: e",
            "a:\n  -\n  - b\n  - \n", "a:\n-\n-\nb: c", "a:\n  - - b\n    - c\n  - d",
            "x:\n- a: b\n  c: d\n-   e: f\n    g:\n    - h\n- i", "x:\n  -\n    - q\n    - r: s\n      t: u\n", "a: -b\nc: -1",
            "a: [-, -1]", "a: 'it''s'", "a: ''\nb: \"\"\nc: ''''", "\"a\" : b\n'c': d", "a: 'b'#c", "a: 'b: c, [d] #e'", "a: \" b \"",
            "a: ~\nb: '~'\nc: null\nd: 'null'\ne: nulls\nf: Null\ng: NULL\nh: nuLL\n~: i", "a: [null, ~, 'b', {b: ~}]\nc:\n  - ~\n  - \"d\"",
            "8.8: 1\n007: x\n-1: y", "a b/c.d 'e': f", "a:: b", "a: b:c", "a: b, [c] {d} & *e !f", "a: <b>",
            "a: =b+c$d^(e)_f;g|h>i%j@k`l", "a: what? that", "a: {}\nb: []", "a: [ ]\nb: { }", "a: {b: c,\n  d: e,\nf: g\n}\nh: i",
            "a: [b, #c\n c]#d\ne: f", "a:\n  [b,\nc]", "a: {b: [c, d], e: {f: g}, h: '}', i: \"]\", }", "a: {b: , c: }",
            "a: {\"b\" : c, 'd': e}", "a: {b : c}", "a:\n  Ölpumpe: größer, naïve – “so”",
            "a: \u00a0x\u00a0\nb: x\u3000\n\u2003c\u2003: d", "a: '\u3000'\nb: \u3000~", "a: 'tap…'\nb: 23 N·m",
            "a: b\r\nc:\r\n  - d # e\r\n\r\n  - f\r\n"})
    void what_is_plain_is_taken_and_read_as_the_parser_reads_it(String text) {
        assertThat(full(text).problems()).isEmpty();
        assertThat(isTaken(text)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {
            "", " \n", "# c", "a", "- a: b", "- - a", "-", "- ", "key:value", "a: b: c", "a: - b", "a: - ", "\"a\" b: c",
            "\"a\": \"b\" c", "\"a\"b: c", "a: 'b", "a: 'b\n", "a: \"b\\q\"", "a: [b]c", "a:\n  - {\n }- x\n", "a:\n  - [\n ]\n  - {\n } b", " a: [\n]b: c\n", " a: [\n] b: c\n", "a:\n   b: [\n  ]c: d\n", "a: [b", "a: [b, c", "a: {b: c", "a: {b",
            "a: [b]]", "a: ]", "a: }", "a: ,b", "a: [,]", "a: [b,,c]", "a: {b: c: d}", "a: {b: c d: e}", "a: [- b]", "a: [what?]",
            "a: {[b]: c}", "[a]: b", "{a: b}: c", "a:\n  {b: c}: d", "a: b\nc", "a:\n  b: c\n d: e", "  a: b\nc: d",
            "a:\n  - b\n - c", "a:\n  - b\n- c", "a:\n   - b\n    - c: d", "a:\n  - b:\n  c: d", "a:\n  - b\n  c: d", "a: b\n# c\n  d",
            "a: b\n- c", "a: b\na: c", "a: {b: c, b: d}", "a: b\n'a': c", "a: b\na\u3000: c", "a: *b", "a: !t c", "%x", "%x\na: b",
            "a: %x", "@x: a", "a: `x", "a: @x", "--- a", "--- a: b", "---\na", "a: b\n---\nc: d", ": a", "a: b:", "a:\tb", "\ta: b", "a:\n\tb: c", "a: \u0001",
            "a: b\u0000", "a: b\u007f", "a: \ud800", "a: b # \ud800", "a: b\n? [c]\n: d"})
    void what_the_parser_refuses_is_left_to_it(String text) {
        assertThat(quick(text)).isEmpty();
        assertThat(full(text).problems()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {
            "a: b\n  c", "a: b\n\n  c", "a: b\nc: d\n e", "a:\n- b\n c", "a: 'b\n  c'", "a: \"b\n  c\"", "a: \"b\\n\"", "a: [b\n  c]", "a: |\n  b",
            "a: >-\n  b", "a: &b c", "? a", "? a\n: b", "a: {b, c}", "a: [b: c]", "a: {b:, c: d}", "a: {b:[c]}", "a: {\"b\":c}",
            "{a: b, c}", "a: ?b", "a: :b", ":a: b", "a: b\t", "a: b\t#c", "a: b # c\td", "---\na: b", "a: b\n...", "a: b\n...c: d", "---: b", "a: b\n---: c",
            "a: b\u0085c: d", "a: b # c\u2028d: e", "a: b\rc: d", "a: \ud83d\udd27", "a: b # \ud83d\udd27", "a: \ue000", "~: a",
            "\ufeffa: b"})
    void what_the_parser_reads_but_is_not_plain_is_left_to_it_too(String text) {
        assertThat(quick(text)).isEmpty();
        assertThat(full(text).tree()).isPresent();
    }

    @Test
    void a_key_that_stands_twice_is_found_among_few_and_among_many() {
        for (int many = 1; many < 60; many++) {
            StringBuilder block = new StringBuilder();
            StringBuilder brackets = new StringBuilder("a: {");
            for (int i = 0; i < many; i++) {
                block.append("key ").append(i).append(": x\n");
                brackets.append("key ").append(i).append(": x, ");
            }
            assertThat(isTaken(block.toString())).isTrue();
            assertThat(isTaken(brackets + "}")).isTrue();
            for (int again : new int[] {0, many / 2, many - 1}) {
                assertThat(isTaken(block + "key " + again + ": y\n")).isFalse();
                assertThat(isTaken(brackets + "key " + again + ": y}")).isFalse();
            }
        }
    }

    @Test
    void a_key_is_no_longer_than_the_parser_lets_it_be() {
        for (int length = 990; length < 1040; length++) {
            for (String key : List.of("k".repeat(length), "'" + "k".repeat(length) + "'", "k" + " ".repeat(length))) {
                boolean taken = isTaken("a: b\n" + key + ": c\n");
                isTaken("a: {b: c, " + key + ": d}\n");
                isTaken("a:\n  - " + key + ": d\n");
                assertThat(taken || length > 990).isTrue();
            }
        }
    }

    @Test
    void nothing_is_taken_that_is_nested_deeper_than_a_record() {
        for (int deep = 1; deep < 30; deep++) {
            String block = "";
            for (int i = 0; i < deep; i++) {
                block += " ".repeat(i) + "a:\n";
            }
            String dashes = "a:\n " + "- ".repeat(deep - 1);
            String brackets = "a: " + "[".repeat(deep) + "]".repeat(deep);
            String braces = "a: " + "{b: ".repeat(deep - 1) + "}".repeat(deep - 1);
            for (String text : List.of(block, block + " ".repeat(deep) + "b", dashes, dashes + "b", brackets, brackets.replace("[]", "[b]"),
                    braces, braces.replace(": }", ": c}"))) {
                assertThat(isTaken(text)).as(text).isEqualTo(full(text).problems().isEmpty());
            }
        }
    }

    @Test
    void every_character_in_any_place_is_read_as_the_parser_reads_it_or_left_to_it() {
        for (int c = 0; c < 0x10000; c += c < 0x200 || c > 0x1FF0 && c < 0x2070 || c > 0xD7F0 && c < 0xD810 || c > 0xFEF0 ? 1 : 61) {
            char one = (char) c;
            for (String text : List.of("a: %b\n", "a: b%\n", "%: b\n", "a%b: c%d\n", "a: '%'\n", "a: \"%\"\n", "a: b #%\n", "a: [b%]\n",
                    "a: {%: b}\n", "a:%b\n", "a: [b]%\n", "a:\n- %\n", "%a: b\n")) {
                isTaken(text.replace('%', one));
            }
        }
    }

    @Test
    void small_texts_full_of_punctuation_are_read_as_the_parser_reads_them_or_left_to_it() {
        String[] bits = {
            "a", "b", "c: ", ":", ":\n", ":\n  ", "- ", "-", "\n", "\n ", "\n  ", "\n    ", "[", "]", "{", "}", ", ", ",", "'x'", "\"y\"",
            "'", "\"", " ", "#", " # c", "\n# c\n", "~", "a: ", "\na: ", "\nb: ", "\n  c: ", "\n- ", "\n  - ", "{a: b}", "[a]", "?",
            "x y", "a:b", "null", "\u00a0", "\u3000", "\r\n", "\r", "\t", "'it''s'", "{ a: , b: c }", "- - ", "---", "\n...", "|", ">",
            "&a ", "*a", "!a ", "%", "@", "`", "\\"};
        Random random = new Random(11);
        int taken = 0;
        for (int i = 0; i < 40_000; i++) {
            StringBuilder text = new StringBuilder(random.nextInt(3) == 0 ? "" : random.nextBoolean() ? "a: " : "a:\n");
            for (int n = 1 + random.nextInt(12); n > 0; n--) {
                text.append(bits[random.nextInt(random.nextBoolean() ? bits.length : 44)]);
            }
            taken += isTaken(text.toString()) ? 1 : 0;
        }
        assertThat(taken).isGreaterThan(1000);
    }

    @Test
    void records_and_sheets_mangled_anywhere_are_read_as_the_parser_reads_them_or_left_to_it() throws IOException {
        List<String[]> texts = new ArrayList<>();
        for (Path file : files(SAMPLES, Path.of("rules/record"))) {
            texts.add(Files.readString(file).split("\n", -1));
        }
        Random random = new Random(20261126);
        int taken = 0;
        for (int i = 0; i < 8_000; i++) {
            String[] lines = texts.get(i % texts.size());
            int from = random.nextInt(lines.length);
            int many = i % 100 == 0 ? lines.length : 10;
            String piece = String.join("\n", Arrays.copyOfRange(lines, from, Math.min(lines.length, from + many)));
            taken += isTaken(mangled(piece, random)) ? 1 : 0;
        }
        assertThat(taken).isGreaterThan(1000);
    }

    private static String mangled(String text, Random random) {
        String marks = ":-#,[]{}'\"?&*!|>%@`~ \n\t.\\\r\u00a0\u0085";
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
            int at = random.nextInt(lines.size());
            String line = lines.get(at);
            int in = random.nextInt(line.length() + 1);
            char mark = marks.charAt(random.nextInt(marks.length()));
            switch (random.nextInt(9)) {
                case 0 -> lines.set(at, line.substring(0, in) + mark + line.substring(in));
                case 1 -> lines.set(at, line.substring(0, in) + mark + line.substring(Math.min(line.length(), in + 1)));
                case 2 -> lines.set(at, line.substring(0, in) + line.substring(Math.min(line.length(), in + 1)));
                case 3 -> lines.set(at, " ".repeat(1 + random.nextInt(3)) + line);
                case 4 -> lines.set(at, line.replaceFirst("^ {1,2}", ""));
                case 5 -> Collections.swap(lines, at, random.nextInt(lines.size()));
                case 6 -> lines.set(at, line + List.of("\r", "  ", " # c", "#c", "\n", "\n\n  ", ":", ",").get(random.nextInt(8)));
                case 7 -> lines.remove(at);
                default -> {
                    lines = new ArrayList<>(lines.subList(0, at));
                    lines.add(line.substring(0, in));
                }
            }
            if (lines.isEmpty()) {
                lines.add("");
            }
        }
        return String.join("\n", lines);
    }
}
