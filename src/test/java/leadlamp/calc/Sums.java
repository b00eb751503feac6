package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import leadlamp.quantity.Print;

/** Which of our formulas works out which entry of a printed table, and why none works out the others. */
final class Sums {
    static final List<Sums> ALL = new ArrayList<>();

    private final String table;
    private final Map<String, Function<Print.Entry, Map<String, Double>>> formulas = new LinkedHashMap<>();
    private final Map<String, String> left = new LinkedHashMap<>();

    private boolean asPrinted;

    Sums(String table) {
        this.table = table;
        ALL.add(this);
    }

    /** Table, entries worked and entries in all, and why the others are left out, each reason with how often. */
    String tally() {
        List<Print.Entry> all = Print.of(table);
        Map<String, Integer> reasons = new TreeMap<>();
        int figures = 0;
        int worked = 0;
        int differ = 0;
        for (Print.Entry e : all) {
            if (formula(e) != null) {
                worked++;
                figures += e.expected().size();
                differ += e.recomputed().contains("differs") ? 1 : 0;
            } else if (left.getOrDefault(e.id(), "").startsWith("held by ")) {
                worked++;
                figures += e.expected().size();
            } else {
                reasons.merge(left.getOrDefault(e.id(), left.get(e.group())), 1, Integer::sum);
            }
        }
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT, "%-20s %3d of %3d entries, %3d figures, %d held to differ from print",
                table, worked, all.size(), figures, differ));
        reasons.forEach((reason, n) -> text.append("\n    ").append(n).append(" left: ").append(reason));
        return text.toString();
    }

    /** Formulas here work in the units of the table. */
    Sums asPrinted() {
        asPrinted = true;
        return this;
    }

    /** A formula for an entry, or for a group of entries that have none of their own; results by name, in SI. */
    Sums sum(String idOrGroup, Function<Print.Entry, Map<String, Double>> formula) {
        formulas.put(idOrGroup, formula);
        return this;
    }

    /** A formula for entries that expect one figure. */
    Sums one(String idOrGroup, Function<Print.Entry, Double> formula) {
        return sum(idOrGroup, e -> {
            Map<String, Double> all = new HashMap<>();
            e.expected().forEach(f -> all.put(f.name(), formula.apply(e)));
            return all;
        });
    }

    /** Entries that no formula of ours works out. */
    Sums leave(String idOrGroup, String reason) {
        left.put(idOrGroup, reason);
        return this;
    }

    /** An entry that another test holds against what works it out. */
    Sums heldBy(String id, Class<?> test) {
        return leave(id, "held by " + test.getSimpleName());
    }

    Stream<Print.Entry> worked() {
        return Print.of(table).stream().filter(e -> formula(e) != null);
    }

    void agrees(Print.Entry entry) {
        Map<String, Double> ours = formula(entry).apply(entry);
        if (asPrinted) {
            entry.agreesAsPrintedWith(ours);
        } else {
            entry.agreesWith(ours);
        }
    }

    /** Nothing of the table is passed over without a word. */
    void nothingIsPassedOver() {
        List<String> passed = Print.of(table).stream()
                .filter(e -> formula(e) == null && !left.containsKey(e.id()) && !left.containsKey(e.group()))
                .map(Print.Entry::id).toList();
        assertThat(passed).as("entries of " + table + " without a formula or a reason").isEmpty();
    }

    private Function<Print.Entry, Map<String, Double>> formula(Print.Entry e) {
        if (left.containsKey(e.id())) {
            return null;
        }
        Function<Print.Entry, Map<String, Double>> own = formulas.get(e.id());
        return own != null ? own : formulas.get(e.group());
    }
}
