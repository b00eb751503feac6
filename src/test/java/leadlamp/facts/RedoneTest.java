package leadlamp.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import leadlamp.quantity.Units;
import org.junit.jupiter.api.Test;

class RedoneTest {
    @Test
    void a_sum_is_put_into_words_when_somebody_asks_and_only_once() {
        AtomicInteger times = new AtomicInteger();
        Redone sum = Redone.when(() -> "0.05 mm, time " + times.incrementAndGet());
        assertThat(times).hasValue(0);
        assertThat(sum.text()).isEqualTo("0.05 mm, time 1");
        assertThat(sum).hasToString("0.05 mm, time 1").hasSameHashCodeAs("0.05 mm, time 1");
        assertThat(sum.text()).isEqualTo("0.05 mm, time 1");
        assertThat(times).hasValue(1);
    }

    @Test
    void two_sums_are_the_same_where_their_words_are() {
        Redone later = Redone.when(() -> "60.02 - 59.97 = 0.05 mm");
        assertThat(later).isEqualTo(Redone.of("60.02 - 59.97 = 0.05 mm")).hasSameHashCodeAs(Redone.of("60.02 - 59.97 = 0.05 mm"));
        assertThat(Redone.of("60.02 - 59.97 = 0.05 mm")).isEqualTo(later);
        assertThat(later).isNotEqualTo(Redone.when(() -> "60.03 - 59.97 = 0.06 mm")).isNotEqualTo("60.02 - 59.97 = 0.05 mm");
    }

    @Test
    void a_sum_of_nothing_is_that_of_what_was_not_worked_out() {
        assertThat(Redone.of("")).isSameAs(Redone.NOT);
        assertThat(Redone.NOT).hasToString("");
    }

    @Test
    void a_value_without_a_sum_was_read_and_one_with_a_sum_was_worked_out() {
        assertThat(value(Redone.of("")).derived()).isFalse();
        assertThat(value(Redone.of("")).sum()).isEmpty();
        assertThat(value(Redone.of("a sum")).derived()).isTrue();
        Value later = value(Redone.when(() -> "a sum"));
        assertThat(later.derived()).isTrue();
        assertThat(later.sum()).isEqualTo("a sum");
        assertThat(later).isEqualTo(value(Redone.of("a sum"))).hasSameHashCodeAs(value(Redone.of("a sum")));
    }

    @Test
    void whether_a_value_was_worked_out_is_told_without_its_words() {
        assertThat(value(Redone.when(() -> {
            throw new IllegalStateException("nobody asked");
        })).derived()).isTrue();
    }

    private static Value value(Redone sum) {
        return new Value("bore", "bore", "cylinder 1", Optional.empty(), Optional.empty(), Units.named("mm").orElseThrow(), 2, "", false,
                sum, "", Map.of(), List.of());
    }
}
