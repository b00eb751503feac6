package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

/** What physics promises, whatever the figures. */
class FormulaPropertiesTest {
    private static final String SEED = "20260314";
    private static final double MM = 1e-3;

    @Property(seed = SEED)
    void clearance_grows_when_the_bore_does_and_shrinks_when_the_shaft_does(
            @ForAll @Scale(6) @DoubleRange(min = 5, max = 120) double bore,
            @ForAll @Scale(6) @DoubleRange(min = 5, max = 120) double shaft,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1) double more) {
        double before = Fits.clearance(bore * MM, shaft * MM);
        assertThat(Fits.clearance((bore + more) * MM, shaft * MM)).isGreaterThan(before);
        assertThat(Fits.clearance(bore * MM, (shaft + more) * MM)).isLessThan(before);
        assertThat(Fits.interference(shaft * MM, bore * MM)).isEqualTo(-before);
    }

    @Property(seed = SEED)
    void a_size_less_itself_is_nothing(@ForAll @Scale(6) @DoubleRange(min = 0.001, max = 500) double size) {
        assertThat(Fits.clearance(size, size)).isZero();
        assertThat(Sets.spread(size, size, size)).isZero();
        assertThat(Gap.heightLost(size, size)).isZero();
        assertThat(Bores.oversize(size, size)).isZero();
        assertThat(CamTiming.markError(size, size)).isZero();
        assertThat(Seals.lostShare(size, size)).isZero();
    }

    @Property(seed = SEED)
    void the_piston_is_where_the_mirror_says_and_never_past_its_stroke(
            @ForAll @Scale(6) @DoubleRange(min = 20, max = 60) double throwRadius,
            @ForAll @Scale(6) @DoubleRange(min = 1.5, max = 3) double ratio,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 3.14159) double angle) {
        double r = throwRadius * MM;
        double rod = r * ratio;
        double travel = CrankTrain.travel(r, rod, angle);
        assertThat(travel).isBetween(-1e-15, 2 * r + 1e-15);
        assertThat(CrankTrain.travel(r, rod, -angle)).isCloseTo(travel, within(1e-15));
        assertThat(CrankTrain.travel(r, rod, angle + 2 * Math.PI)).isCloseTo(travel, within(1e-14));
        assertThat(CrankTrain.travel(r, rod, Math.min(Math.PI, angle + 0.01))).isGreaterThanOrEqualTo(travel - 1e-15);
    }

    @Property(seed = SEED)
    void piston_speed_is_the_slope_of_its_travel_and_acceleration_that_of_its_speed(
            @ForAll @Scale(6) @DoubleRange(min = 20, max = 60) double throwRadius,
            @ForAll @Scale(6) @DoubleRange(min = 1.5, max = 3) double ratio,
            @ForAll @Scale(6) @DoubleRange(min = -3, max = 3) double angle,
            @ForAll @Scale(6) @DoubleRange(min = 50, max = 900) double speed) {
        double r = throwRadius * MM;
        double rod = r * ratio;
        double step = 1e-5;
        double slope = (CrankTrain.travel(r, rod, angle + step) - CrankTrain.travel(r, rod, angle - step)) / (2 * step);
        assertThat(CrankTrain.speed(r, rod, angle, speed)).isCloseTo(slope * speed, within(1e-6 * r * speed));
        double rise = (CrankTrain.speed(r, rod, step, speed) - CrankTrain.speed(r, rod, -step,
                speed)) / (2 * step) * speed;
        assertThat(CrankTrain.topAcceleration(r, rod, speed)).isCloseTo(rise, within(1e-5 * rise));
    }

    @Property(seed = SEED)
    void a_longer_rod_pulls_less_at_the_top_and_an_endless_one_as_a_plain_crank(
            @ForAll @Scale(6) @DoubleRange(min = 1.5, max = 3) double ratio,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 1) double mass) {
        double r = 40 * MM;
        double pull = CrankTrain.topLoad(mass, r, ratio * r, 700);
        assertThat(CrankTrain.topLoad(mass, r, (ratio + 0.1) * r, 700)).isLessThan(pull);
        assertThat(CrankTrain.topLoad(mass, r, 1e9 * r, 700))
                .isCloseTo(CrankTrain.centrifugal(mass, r, 700), within(1e-4));
        assertThat(CrankTrain.topLoad(mass, r, ratio * r, 1400))
                .isCloseTo(pull * CrankTrain.loadRatio(1400, 700), within(1e-6 * pull));
    }

    @Property(seed = SEED)
    void a_smaller_chamber_a_thinner_gasket_a_prouder_piston_or_a_dome_squeezes_more(
            @ForAll @Scale(6) @DoubleRange(min = 25, max = 60) double chamber,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 2) double gasket,
            @ForAll @Scale(6) @DoubleRange(min = -0.5, max = 0.3) double height,
            @ForAll @Scale(6) @DoubleRange(min = -3, max = 6) double crown) {
        double ratio = ratio(chamber, gasket, height, crown);
        assertThat(ratio).isGreaterThan(1);
        assertThat(ratio(chamber - 0.5, gasket, height, crown)).isGreaterThan(ratio);
        assertThat(ratio(chamber, gasket - 0.1, height, crown)).isGreaterThan(ratio);
        assertThat(ratio(chamber, gasket, height + 0.1, crown)).isGreaterThan(ratio);
        assertThat(ratio(chamber, gasket, height, crown - 0.5)).isGreaterThan(ratio);
        double back = Gap.gasketForRatio(ratio, 80 * MM, 80 * MM, chamber * 1e-6, 81.5 * MM, height * MM, crown * 1e-6);
        assertThat(back).isCloseTo(gasket * MM, within(1e-12));
    }

    private static double ratio(double chamber, double gasket, double height, double crown) {
        return Compression.ratioOf(80 * MM, 80 * MM, chamber * 1e-6, 81.5 * MM, gasket * MM, height * MM, crown * 1e-6);
    }

    @Property(seed = SEED)
    void the_ratio_counted_from_valve_closing_never_passes_the_full_one(
            @ForAll @Scale(6) @DoubleRange(min = 6, max = 14) double ratio,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1.6) double closing) {
        double effective = Compression.effectiveRatio(ratio, 40 * MM, 130 * MM, closing);
        assertThat(effective).isBetween(1.0, ratio + 1e-12);
        assertThat(Compression.effectiveRatio(ratio, 40 * MM, 130 * MM, 0)).isCloseTo(ratio, within(1e-12));
    }

    @Property(seed = SEED)
    void torque_and_clamp_force_undo_each_other_by_either_relation(
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 300) double torque,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.4) double friction) {
        double force = Preload.fromTorque(torque, friction, 0.010);
        assertThat(Preload.torqueFor(force, friction, 0.010)).isCloseTo(torque, within(1e-9));
        assertThat(Preload.factorFrom(torque, force, 0.010)).isCloseTo(friction, within(1e-12));
        double other = Preload.fromTorqueAndFriction(torque, 0.0015, 0.009026, friction, friction, 0.013);
        assertThat(Preload.torqueOfFriction(other, 0.0015, 0.009026, friction, friction, 0.013))
                .isCloseTo(torque, within(1e-9));
        assertThat(Preload.fromTorqueAndFriction(torque, 0.0015, 0.009026, friction + 0.01, friction, 0.013))
                .isLessThan(other);
        assertThat(Preload.stretchingShare(0.0015, 0.009026, friction, friction, 0.013)).isBetween(0.0, 1.0);
    }

    @Property(seed = SEED)
    void both_torque_relations_agree_within_the_rounding_of_the_guideline(
            @ForAll @Scale(6) @DoubleRange(min = 0.06, max = 0.25) double friction) {
        ScrewThread thread = Threads.named("M10").orElseThrow();
        double guideline = Preload.torqueOfFriction(30000, thread.pitch(), thread.pitchDiameter(), friction,
                friction, 0.013);
        double full = Preload.torqueByScrew(30000, thread.pitch(), thread.pitchDiameter(), Math.PI / 6, friction,
                friction, 0.013);
        assertThat(guideline / full).isCloseTo(1, within(0.015));
    }

    @Property(seed = SEED)
    void stretch_and_clamp_force_undo_each_other_and_a_thinner_piece_stretches_more(
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 60) double kilonewtons,
            @ForAll @Scale(6) @DoubleRange(min = 10, max = 100) double shank,
            @ForAll @Scale(6) @DoubleRange(min = 5, max = 40) double thread) {
        double[] pieces = { shank * MM / 78.5e-6, thread * MM / 58e-6 };
        double stretch = Preload.stretchOf(kilonewtons * 1000, 205e9, pieces);
        assertThat(Preload.fromStretch(205e9, stretch, pieces)).isCloseTo(kilonewtons * 1000, within(1e-6));
        assertThat(Preload.boltStiffness(205e9, pieces) * stretch).isCloseTo(kilonewtons * 1000, within(1e-6));
        assertThat(Preload.stretchOf(kilonewtons * 1000, 205e9, shank * MM / 70e-6, thread * MM / 58e-6))
                .isGreaterThan(stretch);
    }

    @Property(seed = SEED)
    void an_angle_never_gives_more_force_than_a_bolt_against_rigid_parts(
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 3) double angle,
            @ForAll @Scale(6) @DoubleRange(min = 1e7, max = 1e9) double bolt,
            @ForAll @Scale(6) @DoubleRange(min = 1e7, max = 1e10) double parts) {
        double rigid = Preload.travelOfAngle(0.0015, angle) * bolt;
        double force = Preload.forceOfAngle(0.0015, angle, bolt, parts);
        assertThat(force).isPositive().isLessThan(rigid);
        assertThat(Preload.boltShare(bolt, parts) + Preload.boltShare(parts, bolt)).isCloseTo(1, within(1e-12));
    }

    @Property(seed = SEED)
    void twist_costs_a_bolt_clamp_force_and_more_friction_more(
            @ForAll @Scale(6) @DoubleRange(min = 0.04, max = 0.3) double friction) {
        ScrewThread thread = Threads.named("M10").orElseThrow();
        double plain = 0.9 * 940e6 * thread.stressArea();
        double force = Preload.atYieldShare(0.9, 940e6, thread.stressArea(), thread.pitch(), thread.pitchDiameter(),
                friction);
        assertThat(force).isLessThan(plain);
        assertThat(Preload.atYieldShare(0.9, 940e6, thread.stressArea(), thread.pitch(), thread.pitchDiameter(),
                friction + 0.01))
                .isLessThan(force);
    }

    @Property(seed = SEED)
    void the_scatter_lies_evenly_about_the_mean(@ForAll @Scale(6) @DoubleRange(min = 100, max = 90000) double mean,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.9) double scatter) {
        assertThat(Preload.high(mean, scatter) - mean).isCloseTo(mean - Preload.low(mean, scatter), within(1e-9));
        assertThat(Preload.low(mean, scatter)).isLessThanOrEqualTo(Preload.high(mean, scatter));
    }

    @Property(seed = SEED)
    void a_wrench_set_for_its_extension_gives_the_torque_that_was_wanted(
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 300) double torque,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 1) double length,
            @ForAll @Scale(6) @DoubleRange(min = -0.08, max = 0.5) double extension) {
        double setting = Wrenches.settingFor(torque, length, extension);
        assertThat(Wrenches.applied(setting, length, extension)).isCloseTo(torque, within(1e-9));
        if (extension > 1e-6) {
            assertThat(setting).isLessThan(torque);
        }
    }

    @Property(seed = SEED)
    void heat_that_comes_and_goes_leaves_a_size_as_it_was(
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 500) double size,
            @ForAll @Scale(6) @DoubleRange(min = 250, max = 400) double warm) {
        double there = Growth.sizeAt(size * MM, 12e-6, 293.15, warm);
        double back = Growth.sizeAt(size * MM, 12e-6, warm, 293.15);
        assertThat(there + back).isCloseTo(2 * size * MM, within(1e-15));
        assertThat(Growth.length(12e-6, size, 0)).isZero();
        assertThat(Growth.length(12e-6, size, -50)).isEqualTo(-Growth.length(12e-6, size, 50));
    }

    @Property(seed = SEED)
    void parts_of_one_metal_at_one_heat_keep_their_clearance_to_its_own_growth(
            @ForAll @Scale(6) @DoubleRange(min = 20, max = 100) double size,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 200) double rise) {
        double hot = Growth.clearanceHot(0.04 * MM, size * MM, 23e-6, rise, (size + 0.04) * MM, 23e-6, rise);
        assertThat(hot).isCloseTo(0.04 * MM * (1 + 23e-6 * rise), within(1e-12));
        assertThat(Growth.clearanceHot(0.04 * MM, size * MM, 23e-6, rise, size * MM, 12e-6, rise))
                .isLessThanOrEqualTo(0.04 * MM);
        assertThat(Growth.warmthShift(size, 12e-6, 300, size, 12e-6, 300, 293.15)).isZero();
    }

    @Property(seed = SEED)
    void the_friction_radius_of_a_new_clutch_is_never_below_that_of_a_worn_in_one(
            @ForAll @Scale(6) @DoubleRange(min = 30, max = 150) double inner,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 100) double width) {
        double worn = Clutches.wearRadius((inner + width) * MM, inner * MM);
        double fresh = Clutches.pressureRadius((inner + width) * MM, inner * MM);
        assertThat(fresh).isGreaterThanOrEqualTo(worn - 1e-15).isBetween(inner * MM, (inner + width) * MM);
    }

    @Property(seed = SEED)
    void a_hole_in_a_disc_at_least_doubles_its_greatest_stress(
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 90) double hole,
            @ForAll @Scale(6) @DoubleRange(min = 100, max = 150) double outer) {
        double whole = Flywheel.solidDiscStress(7200, Flywheel.rimSpeed(outer * MM, 800), 0.26);
        double bored = Flywheel.boreStress(7200, 800, outer * MM, hole * MM, 0.26);
        double ring = Flywheel.thinRingStress(7200, Flywheel.rimSpeed(outer * MM, 800));
        assertThat(bored).isGreaterThanOrEqualTo(2 * whole * (1 - 1e-12)).isLessThan(ring);
    }

    @Property(seed = SEED)
    void unbalance_and_grade_undo_each_other(@ForAll @Scale(6) @DoubleRange(min = 0.5, max = 16) double grade,
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 40) double mass,
            @ForAll @Scale(6) @DoubleRange(min = 50, max = 900) double speed) {
        double unbalance = Flywheel.allowedUnbalance(grade * MM, mass, speed);
        assertThat(Flywheel.gradeOf(unbalance, mass, speed)).isCloseTo(grade * MM, within(1e-12));
        assertThat(Flywheel.eccentricity(grade * MM, speed) * mass).isCloseTo(unbalance, within(1e-15));
    }

    @Property(seed = SEED)
    void two_oil_holes_overlap_alike_from_either_side_and_less_the_further_apart(
            @ForAll @Scale(6) @DoubleRange(min = 2, max = 10) double one,
            @ForAll @Scale(6) @DoubleRange(min = 2, max = 10) double other,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 12) double offset) {
        double open = Bearings.holeOpen(one * MM, other * MM, offset * MM);
        assertThat(open).isBetween(0.0, 1.0 + 1e-12)
                .isCloseTo(Bearings.holeOpen(other * MM, one * MM, offset * MM), within(1e-12));
        assertThat(Bearings.holeOpen(one * MM, other * MM, (offset + 0.1) * MM)).isLessThanOrEqualTo(open + 1e-12);
    }

    @Property(seed = SEED, tries = 60)
    void the_overlap_of_two_holes_is_what_counting_points_gives(
            @ForAll @Scale(6) @DoubleRange(min = 3, max = 8) double one,
            @ForAll @Scale(6) @DoubleRange(min = 3, max = 8) double other,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 7) double offset) {
        double small = Math.min(one, other) / 2;
        double large = Math.max(one, other) / 2;
        int in = 0;
        int all = 0;
        for (double x = -small + 0.005; x < small; x += 0.02) {
            for (double y = -small + 0.005; y < small; y += 0.02) {
                if (x * x + y * y <= small * small) {
                    all++;
                    if ((x - offset) * (x - offset) + y * y <= large * large) {
                        in++;
                    }
                }
            }
        }
        assertThat(Bearings.holeOpen(one * MM, other * MM, offset * MM)).isCloseTo((double) in / all, within(0.02));
    }

    @Property(seed = SEED)
    void the_fillet_falls_from_its_radius_to_nothing(@ForAll @Scale(6) @DoubleRange(min = 0.5, max = 4) double radius,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 6) double distance) {
        double height = Bearings.filletHeight(radius * MM, distance * MM);
        assertThat(height).isBetween(0.0, radius * MM);
        assertThat(Bearings.filletHeight(radius * MM, 0)).isCloseTo(radius * MM, within(1e-15));
        assertThat(Bearings.filletHeight(radius * MM, (distance + 0.1) * MM)).isLessThanOrEqualTo(height);
        assertThat(Bearings.filletHeight(radius * MM, radius * MM)).isZero();
    }

    @Property(seed = SEED)
    void neighbours_that_lean_together_run_true_and_those_that_lean_apart_add_up(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.2) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.2) double other,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 6.28) double angle) {
        assertThat(Bearings.adjacentRunout(one, angle, one, angle)).isCloseTo(0, within(1e-9));
        assertThat(Bearings.adjacentRunout(one, angle, other, angle + Math.PI)).isCloseTo(one + other, within(1e-9));
        assertThat(Bearings.adjacentRunout(one, 0, other, angle))
                .isBetween(Math.abs(one - other) - 1e-9, one + other + 1e-9);
    }

    @Property(seed = SEED)
    void a_set_in_another_order_says_the_same(
            @ForAll @Size(min = 2, max = 8) List<@Scale(3) @DoubleRange(min = -50, max = 50) Double> set) {
        double[] there = set.stream().mapToDouble(d -> d).toArray();
        double[] back = new double[there.length];
        for (int i = 0; i < there.length; i++) {
            back[i] = there[there.length - 1 - i];
        }
        assertThat(Sets.spread(back)).isEqualTo(Sets.spread(there)).isGreaterThanOrEqualTo(0);
        assertThat(Sets.median(back)).isEqualTo(Sets.median(there)).isBetween(Sets.least(there), Sets.greatest(there));
        assertThat(Sets.mean(back)).isCloseTo(Sets.mean(there), within(1e-12));
        assertThat(Sets.standardDeviation(there)).isBetween(0.0, Sets.spread(there));
    }

    @Property(seed = SEED)
    void gaps_of_rings_are_as_far_apart_whichever_way_the_circle_is_counted(
            @ForAll @Scale(6) @DoubleRange(min = -10, max = 10) double one,
            @ForAll @Scale(6) @DoubleRange(min = -10, max = 10) double other) {
        double apart = Rings.gapSeparation(one, other);
        assertThat(apart).isBetween(0.0, Math.PI);
        assertThat(Rings.gapSeparation(other, one)).isCloseTo(apart, within(1e-9));
        assertThat(Rings.gapSeparation(one + 2 * Math.PI, other)).isCloseTo(apart, within(1e-9));
    }

    @Property(seed = SEED)
    void marks_of_a_belt_come_back_after_whole_turns_of_belt_and_both_gears(
            @ForAll @IntRange(min = 60, max = 200) int belt, @ForAll @IntRange(min = 16, max = 30) int gear) {
        double turns = Drives.markReturn(belt, gear);
        assertThat(turns % 2).isZero();
        assertThat(turns * gear % belt).isZero();
        assertThat(turns).isLessThanOrEqualTo(2.0 * belt);
    }

    @Property(seed = SEED)
    void a_spring_brought_to_another_height_and_back_is_the_same(
            @ForAll @Scale(6) @DoubleRange(min = 100, max = 800) double load,
            @ForAll @Scale(6) @DoubleRange(min = 10000, max = 60000) double rate,
            @ForAll @Scale(6) @DoubleRange(min = 30, max = 40) double there) {
        double moved = Springs.loadAt(load + 2000, rate, 35 * MM, there * MM);
        assertThat(Springs.loadAt(Math.max(0, moved), rate, there * MM, 35 * MM)).isCloseTo(load + 2000, within(1e-6));
        double other = Springs.loadAt(load + 2000, rate, 35 * MM, 34 * MM);
        assertThat(Springs.rate(load + 2000, 35 * MM, other, 34 * MM)).isCloseTo(rate, within(1e-3));
    }

    @Property(seed = SEED)
    void a_valve_floats_where_its_nose_asks_for_more_than_its_spring_has(
            @ForAll @Scale(6) @DoubleRange(min = 200, max = 900) double load,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.2) double mass,
            @ForAll @Scale(6) @DoubleRange(min = 6, max = 13) double lift,
            @ForAll @Scale(6) @DoubleRange(min = 3.5, max = 5.5) double duration) {
        double speed = Springs.floatSpeed(load, mass, lift * MM, duration);
        assertThat(mass * Springs.noseAcceleration(lift * MM, duration, speed)).isCloseTo(load, within(1e-6));
    }

    @Property(seed = SEED)
    void air_chokes_where_the_ratio_falls_below_0_528_and_flows_less_above_it(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.528) double low,
            @ForAll @Scale(6) @DoubleRange(min = 0.54, max = 1) double high) {
        double choked = Air.throughHole(0.7, 1e-6, 2e5, low * 2e5, 293);
        assertThat(choked).isCloseTo(Air.throughHole(0.7, 1e-6, 2e5, 0, 293), within(1e-12));
        assertThat(Air.throughHole(0.7, 1e-6, 2e5, high * 2e5, 293)).isLessThan(choked);
        assertThat(Air.throughHole(0.7, 1e-6, 2e5, 2e5, 293)).isCloseTo(0, within(1e-12));
        double fall = choked * Air.GAS_CONSTANT * 293 / 0.01 * 3;
        assertThat(Air.leakArea(0.01, fall, 3, 0.7, 2e5, Math.max(1, low * 2e5), 293)).isCloseTo(1e-6, within(1e-12));
    }

    @Property(seed = SEED)
    void a_worse_compressor_heats_more_and_a_better_intercooler_cools_more(
            @ForAll @Scale(6) @DoubleRange(min = 1.1, max = 3) double ratio,
            @ForAll @Scale(6) @DoubleRange(min = 0.4, max = 0.99) double efficiency,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.9) double effectiveness) {
        double ideal = Air.idealOutlet(300, ratio, 0.4 / 1.4);
        double outlet = Air.outlet(300, ratio, efficiency, 1.4);
        assertThat(outlet).isGreaterThan(ideal);
        assertThat(Air.efficiency(300, ideal, outlet)).isCloseTo(efficiency, within(1e-9));
        double charge = Air.charge(outlet, effectiveness, 300);
        assertThat(charge).isBetween(300.0, outlet);
        assertThat(Air.charge(outlet, effectiveness + 0.1, 300)).isLessThan(charge);
    }

    @Property(seed = SEED)
    void fuel_flow_goes_with_the_root_of_the_pressure(@ForAll @Scale(6) @DoubleRange(min = 0.5, max = 6) double bar) {
        double flow = Fuel.flowAt(4e-6, bar * 1e5, 3e5);
        assertThat(Fuel.flowAt(flow, 3e5, bar * 1e5)).isCloseTo(4e-6, within(1e-15));
        assertThat(Fuel.errorFromPressure(bar * 1e5, 3e5)).isCloseTo(flow / 4e-6 - 1, within(1e-12));
    }

    @Property(seed = SEED)
    void a_blend_lies_between_its_parts(@ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double share) {
        double mass = Fuel.massShare(share, 789, 745);
        assertThat(mass).isBetween(0.0, 1.0);
        double air = Fuel.airOfBlend(mass, 9.0, 14.7);
        assertThat(air).isBetween(9.0, 14.7);
        double extra = Fuel.extraVolume(14.7, 745, air, share * 789 + (1 - share) * 745);
        assertThat(extra).isBetween(-1e-12, 0.7);
        assertThat(Fuel.lambdaUncorrected(1, extra)).isGreaterThanOrEqualTo(1 - 1e-12);
    }

    @Property(seed = SEED)
    void dew_falls_below_the_air_and_meets_it_when_the_air_is_full(
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1) double humidity,
            @ForAll @Scale(6) @DoubleRange(min = 263, max = 313) double air) {
        assertThat(Oil.dewPoint(air, humidity)).isLessThanOrEqualTo(air + 1e-9);
        assertThat(Oil.dewPoint(air, 1)).isCloseTo(air, within(1e-9));
    }

    @Property(seed = SEED)
    void a_cleanliness_code_doubles_the_count(@ForAll @IntRange(min = 1, max = 24) int code) {
        double most = 0.01 * Math.pow(2, code);
        assertThat(Oil.cleanlinessCode(most)).isEqualTo(code);
        assertThat(Oil.cleanlinessCode(most * 1.001)).isEqualTo(code + 1);
    }

    @Property(seed = SEED)
    void events_of_a_camshaft_and_its_lobes_tell_the_same_overlap(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.8) double opens,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 1.4) double closes,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 1.4) double exhaustOpens,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.8) double exhaustCloses) {
        double intake = CamTiming.duration(opens, closes);
        double exhaust = CamTiming.duration(exhaustCloses, exhaustOpens);
        double separation = CamTiming.separation(CamTiming.centreOf(intake, opens), CamTiming.centreOf(exhaust,
                exhaustCloses));
        assertThat(CamTiming.overlapOfLobes(intake, exhaust, separation))
                .isCloseTo(CamTiming.overlap(opens, exhaustCloses), within(1e-12));
    }

    @Property(seed = SEED)
    void a_seal_squeezed_by_nothing_has_a_seat_as_deep_as_itself(
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 8) double section,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 0.99) double depth) {
        double squeeze = Seals.squeeze(section * MM, section * depth * MM, 0);
        assertThat(squeeze).isCloseTo(1 - depth, within(1e-12));
        assertThat(Seals.squeeze(section * MM, section * MM, 0)).isZero();
        assertThat(Seals.squeeze(section * MM, section * depth * MM, 0.01 * MM)).isLessThan(squeeze);
    }

    @Property(seed = SEED)
    void concentrate_exchanged_brings_the_mix_to_the_share_that_was_wanted(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.4) double share,
            @ForAll @Scale(6) @DoubleRange(min = 0.41, max = 0.7) double wanted) {
        double exchange = Water.concentrateWanted(5e-3, share, wanted);
        double kept = (5e-3 - exchange) * share;
        assertThat(Water.share(kept + exchange, 1, 5e-3)).isCloseTo(wanted, within(1e-12));
    }
}
