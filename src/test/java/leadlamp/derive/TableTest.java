package leadlamp.derive;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import leadlamp.words.Quantity;
import org.junit.jupiter.api.Test;

/** The table of derived values, whole. */
class TableTest {
    /** Worked out of all readings, or of every fit, and not entry by entry. */
    static final Set<String> OF_READINGS = Set.of("gauge ratio", "reading over nominal", "reading spread", "same readings chance",
            "round digits chance", "fit by sizes", "stack difference", "warmth shift");

    /** Of any plain bearing: what is read at a main or a big end is worked under its own name, and that is proved there. */
    private static final Set<String> OF_ANY_BEARING = Set.of("plain bearing clearance by sizes", "plain bearing method difference",
            "plain bearing clearance over journal", "bearing housing ovality", "journal taper", "journal ovality", "journal undersize",
            "journal case left", "journal size difference");
    /** Proved with dates, in {@link AgesTest}. */
    private static final Set<String> AGES = Set.of("timing belt years", "age against date mark");

    private static List<Quantity> derived() {
        return Bench.WORDS.quantities().stream().filter(Quantity::derived).toList();
    }

    private static Map<String, Derived> entries() {
        Map<String, Derived> entries = new HashMap<>();
        for (Quantity quantity : Bench.WORDS.quantities()) {
            Table.entry(quantity.name()).ifPresent(entry -> entries.put(quantity.name(), entry));
        }
        return entries;
    }

    @Test
    void every_derived_quantity_of_the_vocabulary_is_worked_out() {
        List<String> lacking = derived().stream().map(Quantity::name).filter(name -> WorkedOut.topic(name).isEmpty()).toList();
        assertThat(lacking).isEmpty();
    }

    @Test
    void every_entry_is_worked_by_hand_or_in_a_full_build() {
        Set<String> proved = new TreeSet<>();
        ByHandTest.cases().forEach(one -> proved.add(one.quantity()));
        for (String build : List.of("full-sound-tarn-12.yaml", "full-sound-osier-18.yaml", "full-sound-scree-52.yaml")) {
            Bench.full(build).derived().forEach(value -> proved.add(value.of()));
            Bench.full(build).words().stream().filter(s -> s.what().equals("two ways")).forEach(s -> proved.add(s.of()));
        }
        List<String> unproved = entries().keySet().stream().filter(name -> !proved.contains(name) && !OF_ANY_BEARING.contains(name)
                && !AGES.contains(name)).sorted().toList();
        assertThat(unproved).isEmpty();
    }

    @Test
    void every_entry_is_of_a_quantity_that_says_what_it_comes_from() {
        assertThat(entries().keySet()).allSatisfy(name -> assertThat(Bench.WORDS.quantity(name).orElseThrow().from()).as(name).isNotEmpty());
    }

    @Test
    void every_reading_that_an_entry_takes_is_in_the_vocabulary() {
        List<String> unknown = new ArrayList<>();
        entries().forEach((name, entry) -> {
            for (Take take : entry.takes()) {
                if (!take.quantity().isEmpty() && Bench.WORDS.quantity(take.quantity()).isEmpty()) {
                    unknown.add(name + " takes " + take.quantity());
                }
            }
        });
        assertThat(unknown).isEmpty();
    }

    @Test
    void no_entry_rests_on_itself() {
        Map<String, Derived> entries = entries();
        List<String> rings = new ArrayList<>();
        for (String name : entries.keySet()) {
            ring(name, entries, new LinkedHashSet<>()).ifPresent(rings::add);
        }
        assertThat(rings).isEmpty();
    }

    private static Optional<String> ring(String name, Map<String, Derived> entries, Set<String> chain) {
        if (!chain.add(name)) {
            return Optional.of(String.join(" <- ", chain) + " <- " + name);
        }
        Derived entry = entries.get(name);
        if (entry != null) {
            for (Take take : entry.takes()) {
                Optional<String> ring = take.quantity().isEmpty() ? Optional.empty() : ring(take.quantity(), entries, chain);
                if (ring.isPresent()) {
                    return ring;
                }
            }
        }
        chain.remove(name);
        return Optional.empty();
    }

    @Test
    void every_reading_that_an_entry_must_have_is_named_where_the_vocabulary_says_what_it_comes_from() {
        List<String> unnamed = new ArrayList<>();
        entries().forEach((name, entry) -> {
            Set<String> behind = behind(name, new LinkedHashSet<>());
            for (Take take : entry.takes()) {
                if (!take.quantity().isEmpty() && !take.isOptional() && !behind.contains(take.quantity())
                        && !behind.contains(Bench.WORDS.quantity(take.quantity()).orElseThrow().kind())) {
                    unnamed.add(name + " takes " + take.quantity());
                }
            }
        });
        assertThat(unnamed).isEmpty();
    }

    private static Set<String> behind(String name, Set<String> seen) {
        for (String from : Bench.WORDS.quantity(name).map(Quantity::from).orElse(List.of())) {
            if (seen.add(from)) {
                behind(from, seen);
            }
        }
        return seen;
    }
}
