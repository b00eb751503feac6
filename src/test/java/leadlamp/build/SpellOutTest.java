package leadlamp.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpellOutTest {
    private static final String TRY = "leadlamp.tried.Try";

    @TempDir
    Path folder;

    /** What {@code Try} says, the same as before the step; and what all classes do. */
    private record Tried(String says, List<String> does) {
    }

    private Tried tried(String body, String... others) throws IOException, ReflectiveOperationException {
        String[] sources = new String[others.length + 1];
        for (int i = 0; i < sources.length; i++) {
            sources[i] = "package leadlamp.tried; import java.io.*; import java.util.*; import java.util.function.*; import java.util.stream.*; "
                    + (i < others.length ? others[i] : "public class Try { public static String run() { " + body + " } }");
        }
        Map<String, byte[]> plain = Compiled.in(folder, sources);
        SpellOut.main(new String[] {folder.toString()});
        Map<String, byte[]> spelled = Compiled.classes(folder);
        assertThat(spelled.keySet()).containsAll(plain.keySet());
        String says = Compiled.run(spelled, TRY);
        assertThat(says).isEqualTo(Compiled.run(plain, TRY));
        return new Tried(says, spelled.values().stream().flatMap(bytes -> Compiled.does(bytes).stream()).distinct().sorted().toList());
    }

    private static void nothingIsLinked(Tried tried) {
        assertThat(tried.does()).isNotEmpty().noneMatch(does -> does.startsWith("links "));
    }

    @Test
    void lambdas_mean_the_same_whatever_they_hold_and_take() throws Exception {
        Tried tried = tried("""
                int i = 2; long l = 1L << 40; double d = 0.5; String s = "held"; byte b = 3; char c = 'c'; boolean so = true;
                Supplier<String> holds = () -> s + i + l + d + b + c + so;
                ToDoubleFunction<Integer> unboxed = n -> n + d;
                Function<Integer, Integer> both = Math::abs;
                IntFunction<Object> boxed = n -> n;
                LongBinaryOperator wide = (x, y) -> x + y + l;
                Supplier<List<String>> made = ArrayList::new;
                BiFunction<String, Integer, Character> at = String::charAt;
                Runnable dropped = "abc"::length;
                dropped.run();
                return holds.get() + unboxed.applyAsDouble(1) + both.apply(-4) + boxed.apply(5) + wide.applyAsLong(1, 2) + made.get() + at.apply("xyz", 1);""");
        assertThat(tried.says()).isEqualTo("held210995116277760.53ctrue1.5451099511627779[]y");
        nothingIsLinked(tried);
    }

    @Test
    void a_lambda_that_may_be_laid_down_in_a_file_is_spelled_out_and_still_may() throws Exception {
        Tried tried = tried("""
                String held = "held";
                Named named = () -> held;
                Object both = (Supplier<String> & Serializable) () -> held;
                Supplier<String> neither = () -> held;
                return named.get() + (named instanceof Serializable) + (both instanceof Serializable) + (neither instanceof Serializable)
                        + ((Supplier<?>) both).get();""",
                "interface Named extends Supplier<String>, Serializable { }");
        assertThat(tried.says()).isEqualTo("heldtruetruefalseheld");
        nothingIsLinked(tried);
    }

    @Test
    void a_lambda_that_is_more_than_its_interface_stays_as_it_is() throws Exception {
        Tried tried = tried("""
                Object marked = (Supplier<String> & Marker) () -> "m";
                Narrow narrow = () -> "n";
                Supplier<Object> wide = narrow;
                return ((Supplier<?>) marked).get() + (marked instanceof Marker ? "marked" : "bare") + narrow.get() + wide.get();""",
                "interface Marker { }", "interface Narrow extends Supplier<Object> { @Override String get(); }");
        assertThat(tried.says()).isEqualTo("mmarkednn");
        assertThat(tried.does()).contains("links get");
    }

    @Test
    void a_lambda_that_wants_more_than_casts_and_boxes_stays_as_it_is() throws Exception {
        Tried tried = tried("IntToLongFunction wider = Math::abs; ToLongFunction<Integer> both = Integer::intValue; return \"\" + wider.applyAsLong(-3)"
                + " + both.applyAsLong(4);");
        assertThat(tried.says()).isEqualTo("34");
        assertThat(tried.does()).contains("links applyAsLong");
    }

    @Test
    void what_gives_back_what_it_is_given_is_spelled_out_in_a_class_and_in_an_interface() throws Exception {
        Tried tried = tried("""
                Function<String, String> same = Function.identity();
                Object one = new Object();
                Map<String, Integer> sizes = Stream.of("a", "bb").collect(Collectors.toMap(Function.identity(), String::length, (x, y) -> x, TreeMap::new));
                return same.apply("s") + (Function.<Object>identity().apply(one) == one) + Function.identity().apply(null) + sizes
                        + new Asked() { }.byDefault("d") + Asked.always("a") + same.andThen(s -> s + "!").apply("s");""", """
                interface Asked {
                    default String byDefault(String given) { return Function.<String>identity().apply(given); }
                    static String always(String given) { Supplier<Function<String, String>> later = Function::identity; return later.get().apply(given); }
                }""");
        assertThat(tried.says()).isEqualTo("struenull{a=1, bb=2}das!");
        nothingIsLinked(tried);
    }

    @Test
    void records_are_equal_as_before() throws Exception {
        Tried tried = tried("""
                Ring ring = new Ring("top", 2, Double.NaN, null, new int[0]);
                Ring other = new Ring("top", 2, Double.NaN, null, ring.marks());
                return ring.equals(other) + " " + (ring.hashCode() == other.hashCode()) + " " + ring.equals(null) + " " + ring.equals("top")
                        + " " + new Ring("", 0, 0.0, 'c', null).equals(new Ring("", 0, -0.0, 'c', null))
                        + " " + new Ring("", 1, 0.0, 'c', null).equals(new Ring("", 2, 0.0, 'c', null)) + " " + new Ring("", -3, 1.5, 'c', null).hashCode()
                        + " " + ring.equals(new Ring("top", 2, Double.NaN, null, new int[0])) + " " + new None().equals(new None()) + new None().hashCode();""",
                "record Ring(String name, long land, double gap, Character mark, int[] marks) { }", "record None() { }");
        assertThat(tried.says()).startsWith("true true false false false false ").endsWith(" false true0");
        assertThat(tried.does()).contains("links toString").doesNotContain("links equals", "links hashCode");
    }

    @Test
    void texts_are_put_together_as_before() throws Exception {
        Tried tried = tried("""
                Object nothing = null; byte b = -1; short s = 7; char[] letters = {'a'}; char mark = '\\u0001';
                String text = "\\u0001one\\u0002" + nothing + b + s + 'c' + 1.0f + 2.5 + 3L + true + mark + new StringBuilder("sb") + (letters.length);
                text += 4;
                return text + Words.told(5);""",
                "interface Words { static String told(int n) { return n + \" words\"; } }");
        assertThat(tried.says()).isEqualTo("\u0001one\u0002null-17c1.02.53true\u0001sb145 words");
        nothingIsLinked(tried);
    }

    @Test
    void what_has_been_through_here_before_stays_as_it_is() throws Exception {
        tried("Supplier<String> s = () -> \"s\"; return s.get() + Function.identity().apply(\"t\") + 1;", "record Ring(String name) { }");
        Map<String, byte[]> once = new TreeMap<>(Compiled.classes(folder));
        SpellOut.main(new String[] {folder.toString()});
        Map<String, byte[]> twice = Compiled.classes(folder);
        assertThat(twice.keySet()).isEqualTo(once.keySet());
        once.forEach((file, bytes) -> assertThat(twice.get(file)).as(file).isEqualTo(bytes));
        assertThat(Compiled.run(twice, TRY)).isEqualTo("st1");
    }
}
