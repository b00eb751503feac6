package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every formula: it gives what it gave, and it refuses what it cannot mean, in words of the bench. */
class FormulasTest {
    /** A line of the table. */
    record Worked(String type, String name, List<String> kinds, List<String> arguments, String result) {
        @Override
        public String toString() {
            return type + "." + name + arguments;
        }

        Method method() throws ClassNotFoundException {
            return Arrays.stream(Class.forName("leadlamp.calc." + type).getDeclaredMethods())
                    .filter(m -> m.getName().equals(name) && m.getParameterCount() == arguments.size())
                    .findFirst().orElseThrow();
        }

        Object[] values() throws ClassNotFoundException {
            Class<?>[] types = method().getParameterTypes();
            Object[] values = new Object[arguments.size()];
            for (int i = 0; i < values.length; i++) {
                String written = arguments.get(i);
                if (types[i] == int.class) {
                    values[i] = Integer.valueOf(written);
                } else if (types[i] == double.class) {
                    values[i] = Double.valueOf(written);
                } else {
                    values[i] = Arrays.stream(written.split(",")).mapToDouble(Double::parseDouble).toArray();
                }
            }
            return values;
        }

        double of(Object[] values) throws Exception {
            try {
                return ((Number) method().invoke(null, values)).doubleValue();
            } catch (InvocationTargetException e) {
                throw (Exception) e.getCause();
            }
        }
    }

    private static List<Worked> table() {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                FormulasTest.class.getResourceAsStream("/leadlamp/reference/worked.txt"), StandardCharsets.UTF_8))) {
            List<Worked> lines = new ArrayList<>();
            for (String line : in.lines().filter(l -> !l.startsWith("#")).toList()) {
                String[] parts = line.split(" \\| ");
                String[] name = parts[0].split("\\.");
                boolean refused = parts[1].equals("refused");
                lines.add(new Worked(name[0], name[1], List.of(parts[1].split(" ")), List.of(parts[2].split(" ")),
                        refused ? "refused" : parts[3]));
            }
            return lines;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Stream<Worked> worked() {
        return table().stream().filter(w -> !w.result().equals("refused"));
    }

    static Stream<Worked> refused() {
        return table().stream().filter(w -> w.result().equals("refused"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("worked")
    void a_formula_gives_what_it_gave(Worked line) throws Exception {
        double expected = Double.parseDouble(line.result());
        assertThat(line.of(line.values())).isCloseTo(expected, within(1e-11 * Math.abs(expected) + 1e-300));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("worked")
    void an_argument_that_is_no_number_or_outside_its_range_is_refused_by_name(Worked line) throws Exception {
        for (int i = 0; i < line.kinds().size(); i++) {
            for (Object wrong : wrong(line.kinds().get(i))) {
                Object[] values = line.values();
                values[i] = wrong;
                assertThatThrownBy(() -> line.of(values)).as("argument %d as %s", i + 1, wrong)
                        .isInstanceOf(IllegalArgumentException.class)
                        .hasMessageMatching("(The|Of the|Each of the) [^0-9].*\\.");
            }
        }
    }

    private static List<Object> wrong(String kind) {
        List<Object> never = List.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
        List<Object> wrong = new ArrayList<>(never);
        switch (kind) {
            case "+", "K" -> wrong.addAll(List.of(0.0, -0.0, -1e-9));
            case "0" -> wrong.add(-1e-9);
            case "01" -> wrong.addAll(List.of(-1e-9, 1 + 1e-9));
            case "<1" -> wrong.addAll(List.of(-1e-9, 1.0));
            case "1+" -> wrong.addAll(List.of(1.0, 0.5));
            case "a90" -> wrong.addAll(List.of(-1e-9, Math.PI / 2));
            case "n" -> {
                return List.of(0, -1);
            }
            case "n0" -> {
                return List.of(-1);
            }
            case "[]" -> {
                return List.of(new double[0], new double[] { 1, Double.NaN },
                        new double[] { Double.POSITIVE_INFINITY });
            }
            case "[2]" -> {
                return List.of(new double[0], new double[] { 1 }, new double[] { 1, Double.NaN });
            }
            default -> assertThat(kind).isEqualTo("*");
        }
        return wrong;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("worked")
    void the_edge_of_a_range_is_taken_or_refused_for_another_reason(Worked line) throws Exception {
        for (int i = 0; i < line.kinds().size(); i++) {
            List<Object> edges = switch (line.kinds().get(i)) {
                case "0", "<1", "a90" -> List.of(0.0);
                case "01" -> List.of(0.0, 1.0);
                case "n" -> List.of(1);
                case "n0" -> List.of(0);
                default -> List.of();
            };
            for (Object edge : edges) {
                Object[] values = line.values();
                values[i] = edge;
                try {
                    assertThat(line.of(values)).isNotNaN();
                } catch (IllegalArgumentException together) {
                    // Two arguments that do not suit each other are refused as such, never by the range of one.
                    assertThat(together.getMessage()).doesNotContain("must not be below zero.", "must lie from 0");
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void arguments_that_do_not_suit_each_other_are_refused(Worked line) throws Exception {
        Object[] values = line.values();
        assertThatThrownBy(() -> line.of(values)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageMatching("[A-Z][^0-9]*.*\\.");
    }

    @Test
    void a_class_of_the_table_leaves_none_of_its_formulas_out_and_each_says_where_it_comes_from() throws Exception {
        Set<String> held = worked().map(w -> w.type() + "." + w.name()).collect(Collectors.toSet());
        Set<String> types = worked().map(Worked::type).collect(Collectors.toCollection(TreeSet::new));
        Set<String> left = new TreeSet<>();
        for (String type : types) {
            int formulas = 0;
            for (Method m : Class.forName("leadlamp.calc." + type).getDeclaredMethods()) {
                if (Modifier.isPublic(m.getModifiers()) && !m.isSynthetic()) {
                    formulas++;
                    if (!held.contains(type + "." + m.getName())) {
                        left.add(type + "." + m.getName());
                    }
                }
            }
            String source = Files.readString(Path.of("src", "main", "java", "leadlamp", "calc", type + ".java"));
            assertThat(source.split("@see \"").length - 1).as("sources in " + type).isGreaterThanOrEqualTo(formulas);
        }
        assertThat(left).isEmpty();
        assertThat(held).hasSizeGreaterThan(400);
    }
}
