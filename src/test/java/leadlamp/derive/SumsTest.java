package leadlamp.derive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import leadlamp.facts.Value;
import org.junit.jupiter.api.Test;

/** The sum that is printed with a value can be done again by a builder with a pocket calculator, out of what is printed alone. */
class SumsTest {
    /** What a pocket calculator has no key for, and what is printed instead. */
    private static final Map<String, String> BY_OTHER_MEANS = new TreeMap<>(Map.of(
            "oil viscosity at coldest start", "out of the grade's table",
            "coolant boiling point", "out of the steam table",
            "coolant freezing point", "out of the maker's table of mixes",
            "boost leak opening", "air through a hole, by its own long rule; the three readings are printed",
            "shell hole open share", "where two circles cross; both holes and their offset are printed",
            "valve to valve gap", "where two valve heads come nearest over a turn of the crank; heads, centres and lifts are printed",
            "round digits chance", "a binomial sum; the counts are printed",
            "same readings chance", "a product over the steps of the gauge", "lip rest time", "two times of the day, which the steps show"));

    private static Map<String, List<String>> wrong(List<Value> values) {
        Map<String, List<String>> wrong = new TreeMap<>();
        for (Value value : values) {
            if (!BY_OTHER_MEANS.containsKey(value.of())) {
                try {
                    PocketCalculator.redo(value.sum());
                } catch (PocketCalculator.Wrong why) {
                    wrong.computeIfAbsent(value.of(), v -> new ArrayList<>()).add(why.getMessage() + " | " + value.sum());
                }
            }
        }
        return wrong;
    }

    private static List<Value> byHand() {
        return ByHandTest.cases().map(ByHandTest::value).toList();
    }

    private static List<Value> ofSamples() throws IOException {
        List<Value> values = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("sample-builds"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                values.addAll(Bench.full(file.getFileName().toString()).derived());
            }
        }
        return values;
    }

    @Test
    void the_sum_of_each_value_worked_by_hand_can_be_done_again() {
        assertThat(wrong(byHand())).isEmpty();
    }

    @Test
    void the_sum_of_each_value_of_every_sample_build_can_be_done_again() throws IOException {
        Map<String, List<String>> wrong = wrong(ofSamples());
        wrong.replaceAll((name, all) -> all.subList(0, 1));
        assertThat(wrong).isEmpty();
    }

    @Test
    void no_value_is_left_out_for_nothing() throws IOException {
        TreeSet<String> there = new TreeSet<>();
        byHand().forEach(v -> there.add(v.of()));
        ofSamples().forEach(v -> there.add(v.of()));
        assertThat(there).containsAll(BY_OTHER_MEANS.keySet());
    }
}
