package leadlamp.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A value and where its doubt comes from (JCGM 100, first order). */
class EstimateTest {
    private static Estimate of(Map<String, Double> doubt) {
        return new Estimate(0.05, Dimension.LENGTH, new TreeMap<>(doubt));
    }

    @Test
    void its_standard_uncertainty_is_the_root_of_the_sum_of_squares() {
        assertThat(of(Map.of("bore gauge", 3e-6, "micrometer", -4e-6)).standardUncertainty()).isCloseTo(5e-6, within(1e-18));
    }

    @Test
    void an_exact_value_has_none() {
        Estimate exact = Estimate.exact(0.08, Dimension.LENGTH);
        assertThat(exact.value()).isEqualTo(0.08);
        assertThat(exact.dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(exact.standardUncertainty()).isZero();
        assertThat(exact.chiefSource()).isEmpty();
    }

    @Test
    void the_source_that_weighs_most_is_named_whatever_its_sign() {
        assertThat(of(Map.of("bore gauge", 3e-6, "micrometer", -4e-6)).chiefSource()).isEqualTo("micrometer");
        assertThat(of(Map.of("bore gauge", 5e-6, "micrometer", -4e-6)).chiefSource()).isEqualTo("bore gauge");
    }

    @Test
    void of_two_that_weigh_alike_the_first_by_name_is_named() {
        assertThat(of(Map.of("b", 3e-6, "a", -3e-6)).chiefSource()).isEqualTo("a");
    }
}
