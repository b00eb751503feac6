package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;

/** Our distributions against a library's, on thousands of seeded figures. */
class NormalOracleTest {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    @Test
    void the_normal_distribution_agrees_to_a_millionth_of_a_millionth() {
        Random random = new Random(20260314);
        for (int i = 0; i < 20000; i++) {
            double z = (random.nextDouble() - 0.5) * 16;
            double theirs = NORMAL.cumulativeProbability(z);
            assertThat(Normal.below(z)).isCloseTo(theirs, within(1e-14));
            assertThat(Normal.below(z) / theirs).as("tail at %s", z).isCloseTo(1, within(1e-12));
            assertThat(Normal.density(z)).isCloseTo(NORMAL.density(z), within(1e-15));
        }
    }

    @Test
    void far_tails_keep_their_figures() {
        for (double z = -37; z < -8; z += 0.25) {
            assertThat(Normal.below(z) / NORMAL.cumulativeProbability(z)).isCloseTo(1, within(1e-11));
        }
        assertThat(Normal.below(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(Normal.below(Double.POSITIVE_INFINITY)).isEqualTo(1);
        assertThat(Normal.below(-41)).isZero();
        assertThat(Normal.below(41)).isEqualTo(1);
        assertThat(Normal.below(0)).isEqualTo(0.5);
    }

    @Test
    void its_quantile_leads_back_to_its_probability() {
        Random random = new Random(20260315);
        for (int i = 0; i < 5000; i++) {
            double p = random.nextDouble();
            assertThat(Normal.quantile(p)).isCloseTo(NORMAL.inverseCumulativeProbability(p), within(1e-9));
            assertThat(Normal.below(Normal.quantile(p))).isCloseTo(p, within(1e-14));
            double tail = p * 1e-12;
            assertThat(Normal.below(Normal.quantile(tail)) / tail).isCloseTo(1, within(1e-10));
        }
        assertThat(Normal.quantile(0.5)).isZero();
        assertThat(Normal.quantile(0.975)).isCloseTo(1.959963984540054, within(1e-13));
        assertThat(Normal.quantile(0.025)).isCloseTo(-1.959963984540054, within(1e-13));
    }

    @Test
    void student_agrees_at_every_count_of_readings() {
        Random random = new Random(20260316);
        for (int i = 0; i < 5000; i++) {
            double freedom = 0.5 + random.nextDouble() * (i % 2 == 0 ? 10 : 300);
            double t = (random.nextDouble() - 0.5) * 30;
            TDistribution theirs = TDistribution.of(freedom);
            assertThat(StudentT.below(t, freedom)).as("t %s, freedom %s", t, freedom)
                    .isCloseTo(theirs.cumulativeProbability(t), within(1e-11));
            double level = 0.05 + 0.94 * random.nextDouble();
            assertThat(StudentT.factor(level, freedom))
                    .isCloseTo(theirs.inverseCumulativeProbability((1 + level) / 2),
                            within(1e-7 * (1 + 1e3 / freedom)));
        }
        assertThat(StudentT.below(0, 5)).isEqualTo(0.5);
        assertThat(StudentT.factor(0.95, 1e9)).isCloseTo(1.95996, within(1e-5));
    }

    @Test
    void so_many_noughts_and_fives_are_as_likely_as_the_binomial_distribution_says() {
        Random random = new Random(20260317);
        for (int i = 0; i < 2000; i++) {
            int of = 1 + random.nextInt(60);
            int least = random.nextInt(of + 1);
            double each = 0.01 + 0.98 * random.nextDouble();
            BinomialDistribution theirs = BinomialDistribution.of(of, each);
            double expected = least == 0 ? 1 : theirs.survivalProbability(least - 1);
            assertThat(Chance.atLeast(least, of, each)).isCloseTo(expected, within(1e-11));
        }
    }
}
