package leadlamp.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TakeDirectlyTest {
    private static final String TRY = "shop.Try";

    @TempDir
    Path folder;

    /** What {@code Try} says, the same as before the step; and what it does. */
    private record Tried(String says, List<String> does) {
    }

    private Tried tried(String body, String... others) throws IOException, ReflectiveOperationException {
        String[] sources = new String[others.length + 1];
        for (int i = 0; i < others.length; i++) {
            sources[i] = others[i].startsWith("package ") ? others[i] : "package shop; " + others[i];
        }
        sources[others.length] = "package shop; public class Try { public static String run() { " + body + " } }";
        Map<String, byte[]> plain = Compiled.in(folder, sources);
        Map<String, byte[]> changed = new TreeMap<>(plain);
        changed.putAll(TakeDirectly.in(plain));
        assertThat(changed.keySet()).isEqualTo(plain.keySet());
        String says = Compiled.run(changed, TRY);
        assertThat(says).isEqualTo(Compiled.run(plain, TRY));
        return new Tried(says, Compiled.does(changed.get("shop/Try.class")));
    }

    @Test
    void what_a_final_class_gives_back_is_taken_directly() throws Exception {
        Tried tried = tried("return \"\" + new Bolt(7).size();",
                "final class Bolt { private final int size; Bolt(int size) { this.size = size; } int size() { return size; } }");
        assertThat(tried.says()).isEqualTo("7");
        assertThat(tried.does()).contains("takes Bolt.size").doesNotContain("calls Bolt.size");
    }

    @Test
    void every_kind_of_field_is_taken_as_it_is() throws Exception {
        Tried tried = tried("Kinds k = new Kinds(); return k.a() + \" \" + k.b() + \" \" + k.c() + \" \" + k.d() + \" \" + k.e() + \" \" + k.f()[1];", """
                class Kinds {
                    private long a = 1L << 40;
                    private double b = 0.5;
                    private volatile boolean c = true;
                    private char d = 'd';
                    protected float e = 2.5f;
                    private final String[] f = {"x", "y"};
                    Kinds() { a(); }
                    long a() { return a; }
                    double b() { return b; }
                    boolean c() { return c; }
                    char d() { return d; }
                    float e() { return e; }
                    String[] f() { return this.f; }
                }""");
        assertThat(tried.says()).isEqualTo("1099511627776 0.5 true d 2.5 y");
        assertThat(tried.does()).contains("takes Kinds.a", "takes Kinds.b", "takes Kinds.c", "takes Kinds.d", "takes Kinds.e", "takes Kinds.f");
    }

    @Test
    void what_a_record_gives_back_is_taken_directly_and_the_record_stays_a_record() throws Exception {
        Tried tried = tried("Ring r = new Ring(\"top\", 2); return r.name() + r.land() + r + r.equals(new Ring(\"top\", 2));",
                "record Ring(String name, int land) { }");
        assertThat(tried.says()).isEqualTo("top2Ring[name=top, land=2]true");
        assertThat(tried.does()).contains("takes Ring.name", "takes Ring.land").doesNotContain("calls Ring.name", "calls Ring.land");
    }

    @Test
    void what_a_class_has_from_above_is_taken_where_it_stands() throws Exception {
        Tried tried = tried("return new Stud().size() + new Long().size();",
                "class Bolt { private String size = \"8\"; String size() { return size; } }",
                "class Stud extends Bolt { }", "class Long extends Stud { }");
        assertThat(tried.says()).isEqualTo("88");
        assertThat(tried.does()).contains("takes Bolt.size").doesNotContain("calls Stud.size", "calls Long.size");
    }

    @Test
    void what_a_class_below_does_otherwise_is_still_asked() throws Exception {
        Tried tried = tried("Bolt[] all = {new Bolt(), new Stud()}; return all[0].size() + all[1].size() + new Stud().size();",
                "class Bolt { private String size = \"8\"; String size() { return size; } }",
                "class Stud extends Bolt { @Override String size() { return \"9\"; } }");
        assertThat(tried.says()).isEqualTo("899");
    }

    @Test
    void what_a_class_two_below_does_otherwise_is_still_asked() throws Exception {
        Tried tried = tried("Bolt bolt = new Long(); Stud stud = new Long(); return bolt.size() + stud.size() + new Stud().size();",
                "class Bolt { private String size = \"8\"; String size() { return size; } }", "class Stud extends Bolt { }",
                "class Long extends Stud { private String other = \"10\"; @Override String size() { return other; } }");
        assertThat(tried.says()).isEqualTo("10108");
    }

    @Test
    void what_is_left_open_in_between_is_still_asked() throws Exception {
        Tried tried = tried("Stud stud = new Stud() { String size() { return \"9\"; } }; Bolt bolt = stud; return stud.size() + bolt.size();",
                "class Bolt { private String size = \"8\"; String size() { return size; } }",
                "abstract class Stud extends Bolt { @Override abstract String size(); }");
        assertThat(tried.says()).isEqualTo("99");
    }

    @Test
    void a_class_that_the_caller_may_not_name_is_still_asked() throws Exception {
        Tried tried = tried("return \"\" + new store.Shown().size();",
                "package store; abstract class Hidden { private int size = 3; public final int size() { return size; } }",
                "package store; public class Shown extends Hidden { }");
        assertThat(tried.says()).isEqualTo("3");
        assertThat(tried.does()).contains("calls Shown.size");
    }

    @Test
    void a_field_from_above_that_the_caller_may_not_reach_is_still_asked_for() throws Exception {
        Tried tried = tried("return \"\" + new store.Stud().size() + new store.Stud().turns();",
                "package store; public class Bolt { protected int size = 3; int turns = 4; }",
                "package store; public class Stud extends Bolt { public int size() { return size; } public int turns() { return turns; } }");
        assertThat(tried.says()).isEqualTo("34");
    }

    @Test
    void a_field_that_java_itself_has_is_still_asked_for() throws Exception {
        Tried tried = tried("Shelf shelf = new Shelf(); shelf.add(\"bolt\"); return \"\" + shelf.moved();",
                "class Shelf extends java.util.ArrayList<String> { int moved() { return modCount; } }");
        assertThat(tried.says()).isEqualTo("1");
    }

    @Test
    void what_does_more_than_give_back_is_still_asked() throws Exception {
        Tried tried = tried("Tally t = new Tally(); return \"\" + t.next() + t.next() + t.more() + t.checked() + t.of(5) + t.other(new Tally());", """
                class Tally {
                    private int count = 1;
                    int next() { count++; return count; }
                    int more() { return count + 1; }
                    int checked() { if (count > 2) { return count; } return 0; }
                    int of(int given) { return count; }
                    int other(Tally other) { return other.count; }
                }""");
        assertThat(tried.says()).isEqualTo("234331");
        assertThat(tried.does()).contains("calls Tally.next", "calls Tally.more", "calls Tally.checked", "calls Tally.of");
    }

    @Test
    void what_belongs_to_no_object_or_waits_for_its_turn_is_still_asked() throws Exception {
        Tried tried = tried("return Tally.all() + new Tally().mine();",
                "class Tally { private static String all = \"a\"; private String mine = \"m\"; static String all() { return all; }"
                        + " synchronized String mine() { return mine; } }");
        assertThat(tried.says()).isEqualTo("am");
        assertThat(tried.does()).contains("calls Tally.all", "calls Tally.mine");
    }

    @Test
    void what_gives_back_a_wider_type_is_still_asked() throws Exception {
        Tried tried = tried("Wide w = new Wide(); return \"\" + w.name() + w.count() + w.part();",
                "class Wide { private String name = \"n\"; private int count = 2; private double part = 0.5;"
                        + " Object name() { return name; } long count() { return count; } int part() { return (int) part; } }");
        assertThat(tried.says()).isEqualTo("n20");
        assertThat(tried.does()).contains("calls Wide.name", "calls Wide.count", "calls Wide.part");
    }

    @Test
    void a_narrower_answer_of_a_class_below_is_still_asked() throws Exception {
        Tried tried = tried("Bolt bolt = new Stud(); return \"\" + bolt.size() + new Stud().size();",
                "class Bolt { Object size = \"8\"; Object size() { return size; } }",
                "class Stud extends Bolt { String own = \"9\"; @Override String size() { return own; } }");
        assertThat(tried.says()).isEqualTo("99");
    }

    @Test
    void of_two_fields_of_one_name_each_class_gives_its_own() throws Exception {
        Tried tried = tried("Stud s = new Stud(); Bolt b = s; return s.size() + b.size() + s.own() + s.above() + s.size;",
                "class Bolt { protected String size = \"8\"; String size() { return size; } }",
                "class Stud extends Bolt { protected String size = \"9\"; String own() { return size; } String above() { return super.size; } }");
        assertThat(tried.says()).isEqualTo("88989");
        assertThat(tried.does()).contains("takes Bolt.size", "takes Stud.size");
    }

    @Test
    void of_nothing_there_is_still_nothing_to_take() throws Exception {
        Tried tried = tried("Bolt bolt = null; return \"\" + bolt.size();",
                "final class Bolt { private int size = 7; int size() { return size; } }");
        assertThat(tried.says()).isEqualTo("NullPointerException");
        assertThat(tried.does()).contains("takes Bolt.size");
    }

    @Test
    void what_stands_within_a_class_gives_back_what_it_keeps_to_itself() throws Exception {
        Tried tried = tried("return Shop.told();",
                "class Shop { private static class Bolt { private final String size = new String(\"7\"); private String size() { return size; } }"
                        + " static String told() { return new Bolt().size(); } }");
        assertThat(tried.says()).isEqualTo("7");
    }

    @Test
    void what_is_asked_through_an_interface_is_still_asked() throws Exception {
        Tried tried = tried("Sized[] all = {new Bolt(), () -> \"9\"}; return all[0].size() + all[1].size();",
                "interface Sized { String size(); }",
                "class Bolt implements Sized { private final String size = new String(\"8\"); public String size() { return size; } }");
        assertThat(tried.says()).isEqualTo("89");
        assertThat(tried.does()).contains("calls Sized.size");
    }
}
