package leadlamp.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.Yaml;

/** Published check values, with the place in print where each stands. */
public final class Print {
    /** Units of the tables that no record is written in. */
    private static final Map<String, Double> TABLE_UNITS = Map.ofEntries(Map.entry("1/K", 1.0),
            Map.entry("1/°F", 1.8), Map.entry("1e-6/K", 1e-6), Map.entry("J/(kg·K)", 1.0), Map.entry("mPa·s", 1e-3),
            Map.entry("Pa·s", 1.0), Map.entry("lbf·s/in2", 4.4482216152605 / 0.0254 / 0.0254),
            Map.entry("reyn", 4.4482216152605 / 0.0254 / 0.0254), Map.entry("r/s", 1.0), Map.entry("mg·m", 1e-6),
            Map.entry("oz-in", 0.45359237 / 16 * 0.0254), Map.entry("lbf.ft·r/min per hp", 1.0),
            Map.entry("Mlbf/in", 1.0), Map.entry("1/s", 1.0), Map.entry("mm/s", 1e-3), Map.entry("kg/m", 1.0),
            Map.entry("Btu/lb", 1.0), Map.entry("ft·lbf/Btu", 1.0), Map.entry("HV30", 1.0), Map.entry("HV1", 1.0),
            Map.entry("pint/gal", 0.125), Map.entry("in per in of size", 1.0));

    private Print() {
    }

    /** A figure as printed. */
    public record Figure(String name, Object raw, String unit, double tolerance) {
        /** The number as printed. */
        public double number() {
            return raw instanceof Number n ? n.doubleValue() : Double.parseDouble(raw.toString());
        }

        /** The number in SI. */
        public double si() {
            return toSi(number());
        }

        double toSi(double number) {
            if (unit == null) {
                return number;
            }
            Double factor = TABLE_UNITS.get(unit);
            return factor != null ? number * factor : unitOf(unit).toSi(number);
        }

        double fromSi(double si) {
            if (unit == null) {
                return si;
            }
            Double factor = TABLE_UNITS.get(unit);
            return factor != null ? si / factor : unitOf(unit).fromSi(si);
        }

        private static Unit unitOf(String word) {
            return Units.named(word).orElseThrow(() -> new AssertionError("no such unit: " + word));
        }
    }

    /** One entry of a table of check values. */
    public record Entry(String id, String group, String computes, List<Figure> inputs, List<Figure> expected,
            String source, String recomputed, String note) {
        /** Input of this name in SI. */
        public double in(String name) {
            return input(name).si();
        }

        /** Input of this name. */
        public Figure input(String name) {
            return inputs.stream().filter(f -> f.name().equals(name)).findFirst()
                    .orElseThrow(() -> new AssertionError(id + " has no input " + name));
        }

        /** Whether it has an input of this name. */
        public boolean has(String name) {
            return inputs.stream().anyMatch(f -> f.name().equals(name));
        }

        /** Figure expected under this name. */
        public Figure expects(String name) {
            return expected.stream().filter(f -> f.name().equals(name)).findFirst()
                    .orElseThrow(() -> new AssertionError(id + " does not expect " + name));
        }

        /** The same entry with those expected figures alone whose name holds this. */
        public Entry only(String part) {
            return new Entry(id, group, computes, inputs,
                    expected.stream().filter(f -> f.name().contains(part)).toList(), source, recomputed, note);
        }

        @Override
        public String toString() {
            return id + ": " + computes + " (" + source + ")";
        }

        /** Holds what we work out, in SI and by name, against every figure of the entry. */
        public void agreesWith(Map<String, Double> ours) {
            assertThat(ours.keySet()).as(id).containsAll(expected.stream().map(Figure::name).toList());
            for (Figure figure : expected) {
                agrees(figure, figure.fromSi(ours.get(figure.name())));
            }
        }

        /** Holds what we work out in the units of the entry against every figure of it. */
        public void agreesAsPrintedWith(Map<String, Double> ours) {
            assertThat(ours.keySet()).as(id).containsAll(expected.stream().map(Figure::name).toList());
            for (Figure figure : expected) {
                agrees(figure, ours.get(figure.name()));
            }
        }

        private void agrees(Figure figure, double ours) {
            double printed = figure.number();
            // Sums of doubles end a few of their last places off.
            double tolerance = figure.tolerance() * (1 + 1e-9) + 1e-12 * Math.abs(printed);
            Matcher misprint = misprint(figure.name());
            if (misprint == null) {
                assertThat(ours).as("%s, %s in %s, from %s", id, figure.name(), figure.unit(), source)
                        .isCloseTo(printed, within(tolerance));
                return;
            }
            // The entry says that the printed figure does not follow from its own inputs, and what does.
            BigDecimal worked = new BigDecimal(misprint.group(1));
            double lastPlace = Math.max(Math.pow(10, -worked.scale()), 1e-6 * worked.abs().doubleValue());
            assertThat(ours).as("%s, %s as worked out again: %s", id, figure.name(), note)
                    .isCloseTo(worked.doubleValue(), within(lastPlace));
            assertThat(Math.abs(ours - printed)).as("%s, %s still differs from print: %s", id, figure.name(), note)
                    .isGreaterThan(tolerance);
        }

        private Matcher misprint(String name) {
            for (String part : recomputed.split(";")) {
                Matcher m = Pattern.compile("differs by \\S+ \\(([-0-9.e]+) against").matcher(part);
                if (m.find() && (!part.contains(": differs") || part.strip().startsWith(name + ": differs"))) {
                    return m;
                }
            }
            return null;
        }
    }

    /** All entries of a table. */
    @SuppressWarnings("unchecked")
    public static List<Entry> of(String table) {
        try (InputStream in = Print.class.getResourceAsStream("/leadlamp/reference/" + table + ".yaml")) {
            Map<String, Object> file = new Yaml().load(in);
            Map<String, Map<String, Object>> sources = (Map<String, Map<String, Object>>) file.get("sources");
            List<Entry> entries = new ArrayList<>();
            for (Map<String, Object> value : (List<Map<String, Object>>) file.get("values")) {
                Map<String, Object> source = sources.get(value.get("source"));
                entries.add(new Entry((String) value.get("id"), (String) value.get("group"),
                        (String) value.get("computes"), figures(value.get("inputs")), figures(value.get("expected")),
                        source.get("title") + ", " + value.get("at") + ", " + value.get("basis"),
                        String.valueOf(value.get("recomputed")), String.valueOf(value.getOrDefault("note", ""))));
            }
            return entries;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @SuppressWarnings("unchecked")
    private static List<Figure> figures(Object list) {
        List<Figure> figures = new ArrayList<>();
        for (Map<String, Object> figure : list == null ? List.<Map<String, Object>>of()
                : (List<Map<String, Object>>) list) {
            Object tolerance = figure.get("tolerance");
            figures.add(new Figure((String) figure.get("name"), figure.get("value"), (String) figure.get("unit"),
                    tolerance == null ? 0 : ((Number) tolerance).doubleValue()));
        }
        return figures;
    }
}
