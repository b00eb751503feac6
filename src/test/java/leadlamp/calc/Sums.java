package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import leadlamp.quantity.Print;

/** Which of our formulas works out which entry of a printed table, and why none works out the others. */
final class Sums {
    private final String table;
    private final Map<String, Function<Print.Entry, Map<String, Double>>> formulas = new LinkedHashMap<>();
    private final Map<String, String> left = new LinkedHashMap<>();

    private boolean asPrinted;

    Sums(String table) {
        this.table = table;
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
