package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Units by definition (1 lbf = 4.4482216 N, 1 in = 25.4 mm); what a wrench is out by from memory: ISO 6789-1; the rest common practice, no source. */
class TighteningTest {
    @Test
    void a_torque_within_a_wrench_s_error_is_the_one_asked_for() {
        assertThat(Tightening.torque(24, 23)).isEqualTo(Tightening.Stands.AS_ASKED);
        assertThat(Tightening.torque(28, 23)).isEqualTo(Tightening.Stands.OVER);
        assertThat(Tightening.torque(20, 23)).isEqualTo(Tightening.Stands.UNDER);
    }

    @Test
    void a_third_too_much_is_the_pound_foot() {
        assertThat(Tightening.mistakenUnit(31.2, 23)).contains("pound-foot");
        assertThat(Tightening.mistakenUnit(17, 23)).contains("pound-foot");
        assertThat(Tightening.mistakenUnit(2.6, 23)).contains("pound-inch");
        assertThat(Tightening.mistakenUnit(78, 8)).contains("kilogram-metre");
        assertThat(Tightening.mistakenUnit(27.6, 23)).isEmpty();
    }

    @Test
    void an_angle_by_eye_is_ten_degrees_out() {
        assertThat(Tightening.angle(Math.toRadians(85), Math.toRadians(90))).isEqualTo(Tightening.Stands.AS_ASKED);
        assertThat(Tightening.angle(Math.toRadians(90), Math.toRadians(180))).isEqualTo(Tightening.Stands.UNDER);
    }

    @Test
    void paste_on_a_dry_figure_buys_more_clamp_and_dry_on_an_oiled_one_less() {
        assertThat(Tightening.clamp(0.12, 0.20)).isEqualTo(Tightening.Stands.OVER);
        assertThat(Tightening.clamp(0.20, 0.15)).isEqualTo(Tightening.Stands.UNDER);
        assertThat(Tightening.clamp(0.16, 0.15)).isEqualTo(Tightening.Stands.AS_ASKED);
    }

    @Test
    void a_torque_asked_for_is_above_zero() {
        assertThatThrownBy(() -> Tightening.torque(23, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
