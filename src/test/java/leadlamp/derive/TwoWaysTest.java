package leadlamp.derive;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import leadlamp.facts.Stated;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import leadlamp.words.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What can be read and worked out too is had both ways, and the two are held against each other with their doubts. */
class TwoWaysTest {
    /** The reading that a worked value is the other way to; empty where it can be had in one way only. */
    private static Optional<Quantity> read(ByHandTest.Case one) {
        Quantity worked = Bench.WORDS.quantity(one.quantity()).orElseThrow();
        if (worked.gauge().isPresent()) {
            return Optional.of(worked);
        }
        String twin = worked.name().endsWith(" from sizes") ? worked.name().replace(" from sizes", "")
                : worked.name().equals("valve lift expected") ? "valve lift" : "";
        return twin.isEmpty() || worked.from().contains(twin) ? Optional.empty() : Bench.WORDS.quantity(twin);
    }

    static Stream<ByHandTest.Case> cases() {
        return ByHandTest.cases().filter(one -> read(one).isPresent());
    }

    private static Stated heldAgainst(ByHandTest.Case one, double more) {
        Quantity quantity = read(one).orElseThrow();
        Written figure = ((Reading.Read) Reading.read(one.figure(), quantity.dimension(), Optional.of(quantity.unit()))).written();
        double worked = figure.unit().fromSi(figure.low());
        String size = String.format(Locale.ROOT, "%.8f %s", worked + more * Math.max(1, Math.abs(worked)), figure.unit().word());
        String line = "  - { " + quantity.name() + ": " + size.strip() + (one.at().equals("engine") ? "" : ", at: " + one.at()) + " }\n";
        String record = one.record().contains("measurements:\n") ? one.record().replace("measurements:\n", "measurements:\n" + line)
                : one.record() + "\nmeasurements:\n" + line;
        Derivation.Worked both = ByHandTest.worked(new ByHandTest.Case(one.quantity(), one.figure(), one.at(), one.sum(), record, one.sheet()));
        return both.words().stream().filter(s -> s.what().equals("two ways") && s.of().equals(quantity.name()) && s.at().equals(one.at()))
                .findFirst().orElseThrow(() -> new AssertionError(quantity.name() + " is not held against itself: " + both.words()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void a_reading_that_is_the_sum_agrees_with_it(ByHandTest.Case one) {
        Stated agree = heldAgainst(one, 0);
        assertThat(agree.says()).isEqualTo("agree");
        assertThat(agree.asides()).as("both figures, and how one was worked out").containsKeys("read", "worked out");
        assertThat(agree.places()).hasSizeGreaterThan(1);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void a_reading_that_lies_far_from_the_sum_differs_from_it(ByHandTest.Case one) {
        assertThat(heldAgainst(one, 30).says()).isEqualTo("differ");
    }

    @Test
    void the_pairs_that_a_bench_can_have_are_among_them() {
        assertThat(cases().map(one -> read(one).orElseThrow().name())).contains("crankshaft end float", "piston height", "piston ring side clearance",
                "connecting rod side clearance", "oil pump rotor end float", "lash adjuster preload", "gudgeon pin end float");
    }
}
