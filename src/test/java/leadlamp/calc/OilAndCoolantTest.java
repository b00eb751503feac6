package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Oil grades and viscosity, water and glycol, beyond what is printed. */
class OilAndCoolantTest {
    private static final double C = 273.15;

    @ParameterizedTest
    @CsvSource({ "5W-40, 5W-40, 5, 40", "5w40, 5W-40, 5, 40", "SAE 30, 30, -1, 30", "10W, 10W, 10, -1",
        "A3/B4 0W-20, 0W-20, 0, 20", "'20W/50, mineral', 20W-50, 20, 50", "SAE10W-60, 10W-60, 10, 60" })
    void an_oil_grade_is_found_among_its_words(String words, String name, int winter, int hot) {
        assertThat(OilGrade.named(words)).contains(new OilGrade(name, winter, hot));
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "running-in oil", "7W-40", "5W-45", "75", "ATF", "W", "W40", "5W-", "A3/B4", "5W-400",
        "505W-40" })
    void what_is_no_grade_is_not_guessed(String words) {
        assertThat(OilGrade.named(words).map(OilGrade::name)).isNotEqualTo(java.util.Optional.of(words));
        assertThat(OilGrade.named(words).isPresent()).isEqualTo(words.equals("5W-"));
    }

    @Test
    void a_grade_alone_bounds_one_side_only() {
        OilGrade winter = OilGrade.named("10W").orElseThrow();
        assertThat(winter.forWinter()).isTrue();
        assertThat(winter.belowAt100()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(winter.leastAt100()).isEqualTo(4.1e-6); // SAE J300
        OilGrade both = OilGrade.named("10W-40").orElseThrow();
        assertThat(both.leastAt100()).isEqualTo(12.5e-6);
        assertThat(both.belowAt100()).isEqualTo(16.3e-6);
        assertThat(OilGrade.named("30").orElseThrow().forWinter()).isFalse();
    }

    @Test
    void a_forty_is_thinner_under_shear_when_it_is_light_in_the_cold() {
        assertThat(OilGrade.named("10W-40").orElseThrow().leastHighShear()).isEqualTo(0.0035); // SAE J300
        assertThat(OilGrade.named("15W-40").orElseThrow().leastHighShear()).isEqualTo(0.0037);
        assertThat(OilGrade.named("0W-40").orElseThrow().leastHighShear()).isEqualTo(0.0035);
        assertThat(OilGrade.named("40").orElseThrow().leastHighShear()).isEqualTo(0.0037);
        assertThat(OilGrade.named("10W-30").orElseThrow().leastHighShear()).isEqualTo(0.0029);
    }

    @Test
    void the_thickest_oil_of_a_grade_meets_both_of_its_bounds_and_thins_between_them() {
        OilGrade grade = OilGrade.named("5W-40").orElseThrow();
        assertThat(grade.mostAt(grade.crankingTemperature(), 880)).isCloseTo(6.6 / 880, within(1e-9));
        assertThat(grade.mostAt(C + 100, 880)).isCloseTo(16.3e-6, within(1e-12));
        double before = Double.POSITIVE_INFINITY;
        for (double t = grade.crankingTemperature(); t <= C + 100; t += 5) {
            double now = grade.mostAt(t, 880);
            assertThat(now).isLessThan(before);
            before = now;
        }
    }

    @Test
    void the_viscosity_law_goes_through_its_two_points() {
        Viscosity.Law law = Viscosity.through(95e-6, C + 40, 14e-6, C + 100);
        assertThat(law.at(C + 40)).isCloseTo(95e-6, within(1e-12));
        assertThat(law.at(C + 100)).isCloseTo(14e-6, within(1e-12));
        assertThat(law.at(C + 70)).isBetween(14e-6, 95e-6);
        assertThat(Viscosity.kinematic(Viscosity.dynamic(14e-6, 850), 850)).isCloseTo(14e-6, within(1e-18));
    }

    @Test
    void boiling_pressure_and_boiling_temperature_undo_each_other() {
        for (double t = 274; t < 640; t += 3) {
            assertThat(Coolant.waterBoils(Coolant.waterPressure(t))).isCloseTo(t, within(1e-6));
        }
        assertThat(Coolant.waterPressure(C)).isCloseTo(611.213, within(0.001)); // IAPWS-IF97
        assertThat(Coolant.waterPressure(647.096)).isCloseTo(22.064e6, within(1000.0)); // IAPWS-IF97
        assertThat(Coolant.waterBoils(611.213)).isCloseTo(C, within(1e-5));
        assertThat(Coolant.waterBoils(22.064e6)).isCloseTo(647.096, within(0.01));
    }

    @Test
    void a_cap_and_glycol_raise_the_boiling_point_and_height_lowers_it() {
        double sea = Air.pressureAtHeight(0);
        assertThat(sea).isEqualTo(101325);
        double plain = Coolant.boils(Coolant.Glycol.ETHYLENE, 0, sea, 0);
        assertThat(plain).isCloseTo(C + 99.97, within(0.02));
        assertThat(Coolant.boils(Coolant.Glycol.ETHYLENE, 0.5, sea, 0)).isCloseTo(plain + 8, within(1e-9));
        // from memory: steam tables, 2 bar absolute is 120.2 °C
        assertThat(Coolant.boils(Coolant.Glycol.ETHYLENE, 0, 1e5, 1e5)).isCloseTo(C + 120.2, within(0.05));
        assertThat(Coolant.boils(Coolant.Glycol.ETHYLENE, 0, Air.pressureAtHeight(2000), 0)).isLessThan(plain - 6);
        assertThat(Air.pressureAtHeight(1000)).isCloseTo(89875, within(10.0)); // ISO 2533, from memory
    }

    @Test
    void between_two_shares_of_the_table_the_freezing_point_lies_between() {
        assertThat(Coolant.freezes(Coolant.Glycol.ETHYLENE, 0)).isEqualTo(C);
        assertThat(Coolant.freezes(Coolant.Glycol.ETHYLENE, 0.45)).isCloseTo(C - 30.5, within(1e-9));
        assertThat(Coolant.freezes(Coolant.Glycol.ETHYLENE, 0.15)).isCloseTo(C - 7.5, within(1e-9));
        assertThat(Coolant.freezes(Coolant.Glycol.ETHYLENE, 0.6)).isCloseTo(C - 57, within(1e-9));
        assertThat(Coolant.freezes(Coolant.Glycol.PROPYLENE, 0.35)).isCloseTo(C - 16.7, within(1e-9));
        assertThat(Coolant.boils(Coolant.Glycol.PROPYLENE, 0.55, 1e5, 0) - Coolant.waterBoils(1e5))
                .isCloseTo(6.5, within(1e-9));
    }
}
