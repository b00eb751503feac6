package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Valves against pistons and against each other. */
class ValveRoomTest {
    private static final double MM = 1e-3;
    private static final double DEG = Math.PI / 180;
    private static final double THROW = 40 * MM;
    private static final double ROD = 130 * MM;

    @Test
    void with_the_valve_shut_the_least_room_is_at_top_dead_centre() {
        ValveRoom.Least least = ValveRoom.least(2 * MM, THROW, ROD, 20 * DEG, a -> 0, -90 * DEG, 90 * DEG);
        assertThat(least.room()).isCloseTo(2 * MM, within(1e-12));
        assertThat(least.crankAngle()).isCloseTo(0, within(1e-3));
    }

    @Test
    void a_valve_that_follows_the_piston_keeps_its_room() {
        DoubleUnaryOperator follows = a -> CrankTrain.travel(THROW, ROD, a) * Math.cos(20 * DEG);
        ValveRoom.Least least = ValveRoom.least(2 * MM, THROW, ROD, 20 * DEG, follows, 0, 90 * DEG);
        assertThat(least.room()).isCloseTo(2 * MM, within(1e-12));
    }

    @Test
    void the_sweep_finds_the_least_room_that_a_fine_net_finds() {
        DoubleUnaryOperator intake = Lift.harmonic(9.5 * MM, 108 * DEG, 248 * DEG);
        ValveRoom.Least least = ValveRoom.least(6 * MM, THROW, ROD, 18 * DEG, intake, -60 * DEG, 120 * DEG);
        double net = Double.POSITIVE_INFINITY;
        double where = 0;
        for (int i = 0; i <= 180000; i++) {
            double angle = (-60 + i * 0.001) * DEG;
            double room = ValveRoom.at(6 * MM, THROW, ROD, 18 * DEG, intake.applyAsDouble(angle), angle);
            if (room < net) {
                net = room;
                where = angle;
            }
        }
        assertThat(least.room()).isCloseTo(net, within(1e-10)).isLessThanOrEqualTo(net + 1e-15);
        assertThat(least.crankAngle()).isCloseTo(where, within(0.01 * DEG));
        assertThat(least.crankAngle() / DEG).isBetween(0.0, 20.0);
    }

    @Property(seed = "20260314", tries = 200)
    void an_intake_camshaft_turned_early_takes_room_away_and_late_gives_it(
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 12) double degrees) {
        double standing = 5 * MM;
        double before = room(standing, 108, 0);
        assertThat(room(standing, 108 - degrees, 0)).isLessThan(before);
        assertThat(room(standing, 108 + degrees, 0)).isGreaterThan(before);
    }

    @Property(seed = "20260314", tries = 200)
    void a_deeper_cut_takes_at_least_its_share_of_room_and_a_longer_lift_takes_more(
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.5) double cut) {
        double cosine = Math.cos(18 * DEG);
        double standard = room(5 * MM, 108, 0);
        double built = ValveRoom.asBuilt(standard, cut * MM, 0.9 * MM, 0.9 * MM, 18 * DEG, 0, 0, 0);
        assertThat(standard - built).isCloseTo(cut * MM * cosine, within(1e-12));
        assertThat(room(5 * MM, 108, cut)).isLessThan(standard);
    }

    private static double room(double standing, double centre, double moreLift) {
        return ValveRoom.least(standing, THROW, ROD, 18 * DEG,
                Lift.harmonic((9.5 + moreLift) * MM, centre * DEG, 248 * DEG), -60 * DEG, 120 * DEG).room();
    }

    @Test
    void a_thicker_gasket_a_sunk_valve_and_a_deeper_pocket_give_room_and_more_lift_takes_it() {
        assertThat(ValveRoom.asBuilt(2 * MM, 0.3 * MM, 0.9 * MM, 1.2 * MM, 0, 0, 0, 0))
                .isCloseTo(2 * MM, within(1e-12));
        assertThat(ValveRoom.asBuilt(2 * MM, 0, 0, 0, 0, 0.1 * MM, 0.2 * MM, 0.5 * MM))
                .isCloseTo(1.8 * MM, within(1e-12));
        assertThat(ValveRoom.asBuilt(2 * MM, 0.4 * MM, 0, 0, 60 * DEG, 0, 0, 0)).isCloseTo(1.8 * MM, within(1e-12));
    }

    @Test
    void a_setting_towards_the_piston_costs_the_slope_for_each_degree() {
        double slope = 0.1 * MM / DEG;
        assertThat(ValveRoom.atSetting(2 * MM, slope, 4 * DEG)).isCloseTo(1.6 * MM, within(1e-12));
        assertThat(ValveRoom.atSetting(2 * MM, slope, -4 * DEG)).isCloseTo(2.4 * MM, within(1e-12));
    }

    @Test
    void a_cosine_lobe_is_full_at_its_centre_half_half_way_and_shut_at_its_ends() {
        DoubleUnaryOperator lift = Lift.harmonic(9 * MM, 108 * DEG, 248 * DEG);
        assertThat(lift.applyAsDouble(108 * DEG)).isCloseTo(9 * MM, within(1e-15));
        assertThat(lift.applyAsDouble((108 + 62) * DEG)).isCloseTo(4.5 * MM, within(1e-12));
        assertThat(lift.applyAsDouble((108 - 62) * DEG)).isCloseTo(4.5 * MM, within(1e-12));
        assertThat(lift.applyAsDouble((108 + 124) * DEG)).isZero();
        assertThat(lift.applyAsDouble((108 - 125) * DEG)).isZero();
        assertThat(lift.applyAsDouble((108 + 720) * DEG)).isCloseTo(9 * MM, within(1e-12));
        assertThat(Lift.harmonic(9 * MM, 0, 4 * Math.PI).applyAsDouble(0)).isCloseTo(9 * MM, within(1e-15));
    }

    @Test
    void a_read_lobe_is_straight_between_its_readings_and_shut_outside() {
        double[] angles = { 0, 10, 20 };
        double[] lifts = { 0, 4, 6 };
        DoubleUnaryOperator lift = Lift.curve(angles, lifts);
        lifts[1] = 99;
        assertThat(lift.applyAsDouble(5)).isEqualTo(2);
        assertThat(lift.applyAsDouble(10)).isEqualTo(4);
        assertThat(lift.applyAsDouble(15)).isEqualTo(5);
        assertThat(lift.applyAsDouble(0)).isZero();
        assertThat(lift.applyAsDouble(20)).isEqualTo(6);
        assertThat(lift.applyAsDouble(-0.001)).isZero();
        assertThat(lift.applyAsDouble(20.001)).isZero();
    }

    @Test
    void upright_valves_side_by_side_keep_the_distance_of_their_edges_while_they_lift_together() {
        ValveRoom.Heads heads = new ValveRoom.Heads(30 * MM, 26 * MM, 32 * MM, 0, 0);
        assertThat(heads.distance(0, 0)).isCloseTo(4 * MM, within(1e-12));
        assertThat(heads.distance(5 * MM, 5 * MM)).isCloseTo(4 * MM, within(1e-12));
        assertThat(heads.distance(3 * MM, 0)).isCloseTo(5 * MM, within(1e-12)); // 3, 4, 5
    }

    @Test
    void leaning_valves_come_nearer_as_both_open_and_at_last_cross() {
        ValveRoom.Heads heads = new ValveRoom.Heads(30 * MM, 26 * MM, 32 * MM, 20 * DEG, 20 * DEG);
        double before = heads.distance(0, 0);
        for (double lift = 1 * MM; lift < 5 * MM; lift += 1 * MM) {
            double now = heads.distance(lift, lift);
            assertThat(now).isLessThan(before);
            before = now;
        }
        assertThat(heads.distance(12 * MM, 12 * MM)).isZero();
        ValveRoom.Heads mirrored = new ValveRoom.Heads(26 * MM, 30 * MM, 32 * MM, 20 * DEG, 20 * DEG);
        assertThat(mirrored.distance(2 * MM, 3 * MM)).isCloseTo(heads.distance(3 * MM, 2 * MM), within(1e-15));
    }

    @Test
    void over_the_overlap_no_crank_angle_has_less_distance_than_the_one_that_is_found() {
        ValveRoom.Heads heads = new ValveRoom.Heads(30 * MM, 26 * MM, 33 * MM, 20 * DEG, 20 * DEG);
        DoubleUnaryOperator intake = Lift.harmonic(9.5 * MM, 108 * DEG, 248 * DEG);
        DoubleUnaryOperator exhaust = Lift.harmonic(9.5 * MM, -108 * DEG, 248 * DEG);
        ValveRoom.Least least = ValveRoom.leastBetween(heads, intake, exhaust, -16 * DEG, 16 * DEG);
        assertThat(least.room()).isPositive().isLessThan(heads.distance(0, 0));
        for (double angle = -16; angle <= 16; angle += 0.05) {
            double distance = heads.distance(intake.applyAsDouble(angle * DEG), exhaust.applyAsDouble(angle * DEG));
            assertThat(least.room()).isLessThanOrEqualTo(distance + 1e-12);
        }
    }
}
