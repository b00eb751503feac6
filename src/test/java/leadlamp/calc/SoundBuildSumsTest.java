package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * The sums of the invented sound build, Tarn 12: every figure was worked by another program from the readings, and is
 * asked for to the last place that it was written to.
 */
class SoundBuildSumsTest {
    private static final double MM = 1e-3;
    private static final double CM3 = 1e-6;
    private static final double RPM = Math.PI / 30;
    private static final double THROW = 40 * MM;
    private static final double ROD = 130 * MM;

    @Test
    void three_cylinders_of_80_by_80_sweep_1206_4_cubic_centimetres() {
        assertThat(Compression.sweptByAll(80 * MM, 80 * MM, 3)).isCloseTo(1206.4 * CM3, within(0.05 * CM3));
    }

    @Test
    void the_sheet_has_a_ratio_of_10_51() {
        double clearance = Compression.clearanceVolume(32.6 * CM3, 81.5 * MM, 0.90 * MM, 80 * MM, -0.20 * MM, 4 * CM3);
        assertThat(clearance).isCloseTo(42.30 * CM3, within(0.005 * CM3));
        assertThat(Compression.ratio(Compression.swept(80 * MM, 80 * MM), clearance)).isCloseTo(10.51, within(0.005));
    }

    @Test
    void each_cylinder_as_built_has_its_ratio() {
        double[] bores = { 80.003667, 80.002833, 80.004 };
        double[] chambers = { 32.3, 32.4, 32.2 };
        double[] heights = { -0.10, -0.11, -0.09 };
        double[] crowns = { 4.0, 4.0, 4.1 };
        double[] clearances = { 42.54, 42.69, 42.49 };
        double[] ratios = { 10.45, 10.42, 10.46 };
        for (int i = 0; i < 3; i++) {
            assertThat(Compression.clearanceVolume(chambers[i] * CM3, 81.5 * MM, 1.10 * MM, bores[i] * MM,
                    heights[i] * MM, crowns[i] * CM3)).isCloseTo(clearances[i] * CM3, within(0.0051 * CM3));
            assertThat(Compression.ratioOf(bores[i] * MM, 80 * MM, chambers[i] * CM3, 81.5 * MM, 1.10 * MM,
                    heights[i] * MM, crowns[i] * CM3)).isCloseTo(ratios[i], within(0.0051));
        }
    }

    @Test
    void the_cut_takes_three_tenths_of_a_cubic_centimetre_off_the_chamber_and_two_notches_give_it_back() {
        assertThat(Compression.lostToSkim(0.10 * MM, 3000e-6)).isCloseTo(0.3 * CM3, within(1e-12));
        assertThat(Gap.gasketNeeded(0.90 * MM, 0.10 * MM, 0.10 * MM)).isCloseTo(1.10 * MM, within(1e-12));
        assertThat(Gap.camDrop(0.10 * MM, 0.10 * MM, 0.90 * MM, 1.10 * MM)).isCloseTo(0, within(1e-12));
    }

    @Test
    void the_piston_stands_a_tenth_below_the_face_and_1_20_below_the_head() {
        double height = CrankTrain.heightFromSizes(THROW, ROD, 30 * MM, 200.10 * MM);
        assertThat(height).isCloseTo(-0.10 * MM, within(1e-12));
        assertThat(Gap.pistonToHead(1.10 * MM, height, 0)).isCloseTo(1.20 * MM, within(1e-12));
        assertThat(Gap.gasketForGap(1.20 * MM, height, 0)).isCloseTo(1.10 * MM, within(1e-12));
    }

    @Test
    void the_fits_are_those_of_the_sheet() {
        assertThat(Fits.clearance(80.002 * MM, 79.961 * MM)).isCloseTo(0.041 * MM, within(1e-9));
        assertThat(Fits.clearance(48.022 * MM, 47.985 * MM)).isCloseTo(0.037 * MM, within(1e-9));
        assertThat(Bearings.overJournal(0.036 * MM, 47.984 * MM)).isCloseTo(0.00075, within(0.000005));
        assertThat(Bearings.overJournal(0.040 * MM, 47.983 * MM)).isCloseTo(0.00083, within(0.000005));
        assertThat(Fits.gapOverParts(52.5 * MM, 52.0 * MM)).isCloseTo(0.5 * MM, within(1e-9));
        assertThat(0.42 * MM / (79.95 * MM)).isCloseTo(0.0053, within(0.00005));
    }

    @Test
    void the_fire_ring_keeps_three_tenths() {
        assertThat(Gap.fireRingRoom(81.5 * MM, 80.0 * MM, 0.1 * MM, 0.4 * MM)).isCloseTo(0.30 * MM, within(1e-9));
    }

    @Test
    void the_head_bolts_hold_by_2_6_diameters_and_keep_7_9_millimetres_of_room() {
        double reach = Engagement.reach(110 * MM, 79.9 * MM, 1.1 * MM, 3.0 * MM);
        assertThat(reach).isCloseTo(26 * MM, within(1e-9));
        assertThat(Engagement.inDiameters(reach, 10 * MM)).isCloseTo(2.6, within(1e-9));
        assertThat(Engagement.bottomRoom(34.0 * MM, 26.1 * MM)).isCloseTo(7.9 * MM, within(1e-9));
    }

    @Test
    void the_joints_are_clamped_to_these_shares_of_their_proof_load() {
        joint("M10x1.5", "10.9", 55, 0.15, 36.7, 0.76);
        joint("M8x1", "10.9", 30, 0.15, 25.0, 0.77);
        joint("M10x1.25", "10.9", 40, 0.15, 26.7, 0.52);
        joint("M6x1", "8.8", 8, 0.16, 8.3, 0.71);
        joint("M8x1.25", "8.8", 23, 0.20, 14.4, 0.68);
        joint("M10x1.25", "10.9", 60, 0.16, 37.5, 0.74);
        joint("M8x1.25", "8.8", 23, 0.18, 16.0, 0.75);
    }

    private static void joint(String thread, String strength, double torque, double factor, double kilonewtons,
            double share) {
        ScrewThread screw = Threads.named(thread).orElseThrow();
        double force = Preload.fromTorque(torque, factor, screw.diameter());
        double proof = Preload.load(screw.stressArea(), BoltClass.named(strength,
                screw.diameter()).orElseThrow().proof());
        assertThat(force).as(thread).isCloseTo(kilonewtons * 1000, within(51.0));
        assertThat(force / proof).as(thread).isCloseTo(share, within(0.0051));
    }

    @Test
    void the_rod_bolts_by_stretch_give_666_megapascals_and_a_torque_factor_of_0_144() {
        double stress = Preload.stressFromStretch(205e9, 0.13 * MM, 40 * MM);
        assertThat(stress).isCloseTo(666e6, within(0.5e6));
        double force = stress * Threads.stressArea(8 * MM, 1 * MM);
        assertThat(force).isCloseTo(26100, within(50.0));
        assertThat(Preload.factorFrom(30, force, 8 * MM)).isCloseTo(0.144, within(0.0005));
        double less = Preload.stressFromStretch(205e9, 0.12 * MM, 40 * MM) * Threads.stressArea(8 * MM, 1 * MM);
        assertThat(Preload.factorFrom(30, less, 8 * MM)).isCloseTo(0.156, within(0.0005));
    }

    @Test
    void the_cam_gear_pins_rock_by_no_more_than_0_08_cam_degrees_and_let_the_gear_seat() {
        double crank = CamTiming.pinRock(5.010 * MM, 5.008 * MM, 4.999 * MM, 15 * MM);
        assertThat(Math.toDegrees(crank) / 2).isCloseTo(0.08, within(0.005));
        assertThat(Drives.seatGap(12 * MM, 6.5 * MM, 6.5 * MM)).isCloseTo(-1.0 * MM, within(1e-9));
    }

    @Test
    void the_springs_have_23_6_newtons_to_the_millimetre() {
        assertThat(Springs.rate(0, 42.7 * MM, 205, 34.0 * MM)).isCloseTo(23600, within(50.0));
    }

    @Test
    void the_sealing_rings_are_squeezed_by_22_9_and_22_5_per_cent() {
        assertThat(Seals.squeeze(3.5 * MM, 2.70 * MM, 0)).isCloseTo(0.229, within(0.0005));
        assertThat(Seals.squeeze(4.0 * MM, 3.10 * MM, 0)).isCloseTo(0.225, within(0.0005));
    }

    @Test
    void grade_6_3_allows_130_gram_millimetres_on_15_6_kilograms_at_7200() {
        assertThat(Flywheel.allowedUnbalance(6.3 * MM, 15.6, 7200 * RPM)).isCloseTo(130e-6, within(0.5e-6));
    }

    @Test
    void the_clutch_carries_214_newton_metres_and_178_at_its_low_side() {
        double radius = Clutches.wearRadius(100 * MM, 70 * MM);
        assertThat(Clutches.capacity(0.30, 4200, radius, 2)).isCloseTo(214, within(0.5));
        assertThat(Clutches.capacity(0.25, 4200, radius, 2)).isCloseTo(178.5, within(0.5));
    }

    @Test
    void the_pistons_run_at_19_2_metres_a_second_and_the_torque_is_12_3_bar() {
        assertThat(CrankTrain.meanPistonSpeed(80 * MM, 7200 * RPM)).isCloseTo(19.2, within(0.05));
        double power = Compression.powerAt(118, 5000 * RPM);
        assertThat(Compression.meanEffectivePressure(power, 5000 * RPM, 1206.4 * CM3))
                .isCloseTo(12.3e5, within(0.05e5));
        assertThat(Compression.torqueAt(78000, 7200 * RPM)).isCloseTo(103, within(0.5));
    }
}
