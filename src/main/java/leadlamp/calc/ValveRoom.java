package leadlamp.calc;

import java.util.function.DoubleUnaryOperator;

/**
 * Room of a valve over the piston and beside its neighbour, at the worst crank angle.
 *
 * <p>Crank angles are from the top dead centre of the overlap: before it minus, after it plus. A lift is a function of
 * that angle, m: {@link Lift#harmonic} where only duration and lift are known, {@link Lift#curve} from readings.
 */
public final class ValveRoom {
    private static final int STEPS = 720;

    private ValveRoom() {
    }

    /** The least room and the crank angle at which it comes. */
    public record Least(double room, double crankAngle) {
    }

    /**
     * Room of a valve over its piston at one crank angle, along the valve.
     *
     * <p>standing + travel of the piston · cos(valve angle) − lift.
     *
     * @param standing   room along the valve with the piston at top dead centre and the valve shut, m; the gasket in
     * @param throwRadius crank throw, m; above zero
     * @param rod        rod length, m; not below the throw
     * @param valveAngle valve angle from the line of the bore, rad; from 0, below a right angle
     * @param lift       lift at that crank angle, m; not below zero
     * @param angle      crank angle from top dead centre, rad
     * @return room, m; minus touches
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "slider-crank and plane geometry"
     */
    public static double at(double standing, double throwRadius, double rod, double valveAngle, double lift,
            double angle) {
        Argument.finite("room with the valve shut", standing);
        Argument.belowRightAngle("valve angle", valveAngle);
        Argument.notBelowZero("valve lift", lift);
        return standing + CrankTrain.travel(throwRadius, rod, angle) * Math.cos(valveAngle) - lift;
    }

    /**
     * Least room of a valve over its piston between two crank angles.
     *
     * @param standing   room along the valve with the piston at top dead centre and the valve shut, m; the gasket in
     * @param throwRadius crank throw, m; above zero
     * @param rod        rod length, m; not below the throw
     * @param valveAngle valve angle from the line of the bore, rad; from 0, below a right angle
     * @param lift       lift over crank angle, m
     * @param from       first crank angle, rad
     * @param to         last crank angle, rad; above the first
     * @return least room and its crank angle
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "slider-crank and plane geometry"
     */
    public static Least least(double standing, double throwRadius, double rod, double valveAngle,
            DoubleUnaryOperator lift, double from, double to) {
        return sweep(angle -> at(standing, throwRadius, rod, valveAngle, lift.applyAsDouble(angle), angle), from, to);
    }

    /**
     * Least distance of the heads of an intake and an exhaust valve that face each other, over the overlap.
     *
     * @param heads      both valves in the plane of their stems
     * @param intake     intake lift over crank angle, m
     * @param exhaust    exhaust lift over crank angle, m
     * @param from       first crank angle, rad
     * @param to         last crank angle, rad; above the first
     * @return least distance and its crank angle; nothing where they cross
     * @throws IllegalArgumentException if an argument is outside its range or not finite
     * @see "plane geometry"
     */
    public static Least leastBetween(Heads heads, DoubleUnaryOperator intake, DoubleUnaryOperator exhaust, double from,
            double to) {
        return sweep(angle -> heads.distance(intake.applyAsDouble(angle), exhaust.applyAsDouble(angle)), from, to);
    }

    /**
     * Two valves that face each other, seen along the crankshaft.
     *
     * @param intakeHead   diameter of the intake valve's head, m; above zero
     * @param exhaustHead  diameter of the exhaust valve's head, m; above zero
     * @param centres      distance of the centres of the shut heads, m; above zero
     * @param intakeAngle  lean of the intake stem from the line of the bore, rad; from 0, below a right angle
     * @param exhaustAngle lean of the exhaust stem to the other side, rad; from 0, below a right angle
     */
    public record Heads(double intakeHead, double exhaustHead, double centres, double intakeAngle,
            double exhaustAngle) {
        /** Refuses what cannot be. */
        public Heads {
            Argument.aboveZero("head of the intake valve", intakeHead);
            Argument.aboveZero("head of the exhaust valve", exhaustHead);
            Argument.aboveZero("distance of the valves", centres);
            Argument.belowRightAngle("lean of the intake valve", intakeAngle);
            Argument.belowRightAngle("lean of the exhaust valve", exhaustAngle);
        }

        /** Distance of the heads at these lifts, m; nothing where they cross. */
        public double distance(double intakeLift, double exhaustLift) {
            Argument.notBelowZero("intake lift", intakeLift);
            Argument.notBelowZero("exhaust lift", exhaustLift);
            // Heads open towards each other: the stems lean apart above.
            double[] in = head(-centres / 2, 1, intakeAngle, intakeLift, intakeHead);
            double[] out = head(centres / 2, -1, exhaustAngle, exhaustLift, exhaustHead);
            if (cross(in, out)) {
                return 0;
            }
            return Math.min(Math.min(toSegment(in[0], in[1], out), toSegment(in[2], in[3], out)),
                    Math.min(toSegment(out[0], out[1], in), toSegment(out[2], out[3], in)));
        }

        private static double[] head(double seat, int inward, double lean, double lift, double diameter) {
            double x = seat + inward * lift * Math.sin(lean);
            double y = -lift * Math.cos(lean);
            double acrossX = diameter / 2 * Math.cos(lean);
            double acrossY = inward * diameter / 2 * Math.sin(lean);
            return new double[] { x - acrossX, y - acrossY, x + acrossX, y + acrossY };
        }

        private static double toSegment(double x, double y, double[] s) {
            double dx = s[2] - s[0];
            double dy = s[3] - s[1];
            double along = ((x - s[0]) * dx + (y - s[1]) * dy) / (dx * dx + dy * dy);
            double near = Math.max(0, Math.min(1, along));
            return Math.hypot(x - s[0] - near * dx, y - s[1] - near * dy);
        }

        private static boolean cross(double[] a, double[] b) {
            return side(a, b[0], b[1]) * side(a, b[2], b[3]) < 0 && side(b, a[0], a[1]) * side(b, a[2], a[3]) < 0;
        }

        private static double side(double[] s, double x, double y) {
            return (s[2] - s[0]) * (y - s[1]) - (s[3] - s[1]) * (x - s[0]);
        }
    }

    /** Looks at half-degree steps or finer, then closes in on the least of them by thirds. */
    private static Least sweep(DoubleUnaryOperator room, double from, double to) {
        Argument.finite("first crank angle", from);
        Argument.finite("last crank angle", to);
        if (to <= from) {
            throw new IllegalArgumentException("The last crank angle must be above the first.");
        }
        double step = (to - from) / STEPS;
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= STEPS; i++) {
            double value = room.applyAsDouble(from + i * step);
            if (value < least) {
                least = value;
                best = i;
            }
        }
        double low = from + Math.max(0, best - 1) * step;
        double high = from + Math.min(STEPS, best + 1) * step;
        for (int i = 0; i < 60; i++) {
            double third = (high - low) / 3;
            if (room.applyAsDouble(low + third) <= room.applyAsDouble(high - third)) {
                high -= third;
            } else {
                low += third;
            }
        }
        double angle = (low + high) / 2;
        double closer = room.applyAsDouble(angle);
        return closer < least ? new Least(closer, angle) : new Least(least, from + best * step);
    }

    /**
     * Room as built from the room of the standard engine.
     *
     * <p>standard − (cuts + standard gasket − fitted gasket) · cos(valve angle) + recession + pocket − lift gained.
     *
     * @param standard       room of the standard engine, m
     * @param cuts           cuts off block and head, m; not below zero
     * @param standardGasket standard compressed thickness, m; not below zero
     * @param fittedGasket   fitted compressed thickness, m; not below zero
     * @param valveAngle     valve angle from the line of the bore, rad; from 0, below a right angle
     * @param recession      extra recession of the valve along its stem, m
     * @param pocket         extra depth of the pocket, m
     * @param liftGained     extra lift at the closest crank angle, m
     * @return room, m; minus touches
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double asBuilt(double standard, double cuts, double standardGasket, double fittedGasket,
            double valveAngle, double recession, double pocket, double liftGained) {
        Argument.finite("room of the standard engine", standard);
        Argument.belowRightAngle("valve angle", valveAngle);
        Argument.finite("extra recession", recession);
        Argument.finite("extra depth of the pocket", pocket);
        Argument.finite("extra lift", liftGained);
        double nearer = Gap.camDrop(0, cuts, standardGasket, fittedGasket);
        return standard - nearer * Math.cos(valveAngle) + recession + pocket - liftGained;
    }

    /**
     * Room at another setting of the camshaft.
     *
     * <p>room − slope · angle towards the piston.
     *
     * @param room  room as read, m
     * @param slope room lost for each radian towards the piston, m/rad; not below zero
     * @param moved crank angle the camshaft was moved towards the piston, rad: intake early, exhaust late; minus away
     * @return room, m; minus touches
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double atSetting(double room, double slope, double moved) {
        Argument.finite("room as read", room);
        Argument.notBelowZero("room lost with the setting", slope);
        Argument.finite("change of the setting", moved);
        return room - slope * moved;
    }
}
