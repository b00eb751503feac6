package leadlamp.calc;

import java.util.Optional;

/** How a torque, an angle or a friction stands beside the figure that was asked for. */
public final class Tightening {
    /** Half width of what is still the figure: what a good wrench may be out by. */
    private static final double WRENCH = 0.06;
    /** How near a ratio must lie to that of two units. */
    private static final double NEAR = 0.04;
    private static final double POUND_FOOT = 0.3048 * 4.4482216;
    private static final double POUND_INCH = 0.0254 * 4.4482216;
    private static final double KILOGRAM_METRE = 9.80665;
    /** What an angle by eye is out by, radians. */
    private static final double EYE = Math.toRadians(10);
    private static final double MORE_CLAMP = 1.15;
    private static final double LESS_CLAMP = 0.80;

    private Tightening() {
    }

    /** Where a figure stands beside the one asked for. */
    public enum Stands { UNDER, AS_ASKED, OVER }

    /**
     * A torque beside the one asked for.
     *
     * @param torque torque, N·m; above zero
     * @param asked  torque asked for, N·m; above zero
     * @return under or over beyond a twentieth and a bit, else as asked
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "ISO 6789-1, permitted deviation of wrenches, 4 to 6 per cent (from memory)"
     */
    public static Stands torque(double torque, double asked) {
        double ratio = ratio(torque, asked);
        return ratio > 1 + WRENCH ? Stands.OVER : ratio < 1 - WRENCH ? Stands.UNDER : Stands.AS_ASKED;
    }

    /**
     * An angle beside the one asked for.
     *
     * @param angle angle, rad
     * @param asked angle asked for, rad
     * @return short or over by more than an angle by eye is out (ten degrees), else as asked
     * @throws IllegalArgumentException if an argument is not finite
     * @see "common practice, no source"
     */
    public static Stands angle(double angle, double asked) {
        Argument.finite("angle", angle);
        Argument.finite("angle asked for", asked);
        double off = angle - asked;
        return off > EYE ? Stands.OVER : off < -EYE ? Stands.UNDER : Stands.AS_ASKED;
    }

    /**
     * The unit that a torque was read in by mistake, if its ratio to the figure asked for is that of two units within four per cent.
     *
     * @param torque torque, N·m; above zero
     * @param asked  torque asked for, N·m; above zero
     * @return pound-foot, pound-inch or kilogram-metre; empty where the ratio is none of theirs
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "1 lbf = 4.4482216 N and 1 in = 0.0254 m by definition; standard gravity 9.80665 m/s2"
     */
    public static Optional<String> mistakenUnit(double torque, double asked) {
        double ratio = ratio(torque, asked);
        if (near(ratio, POUND_FOOT)) {
            return Optional.of("pound-foot");
        }
        if (near(ratio, POUND_INCH)) {
            return Optional.of("pound-inch");
        }
        return near(ratio, KILOGRAM_METRE) ? Optional.of("kilogram-metre") : Optional.empty();
    }

    /**
     * Clamp force that a torque buys with one friction, beside what it buys with another.
     *
     * @param factor torque factor as it is; above zero
     * @param asked  torque factor that the figure was written for; above zero
     * @return over where the clamp is more than 15 per cent higher, under where more than a fifth lower, else as asked
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static Stands clamp(double factor, double asked) {
        double ratio = ratio(asked, factor);
        return ratio > MORE_CLAMP ? Stands.OVER : ratio < LESS_CLAMP ? Stands.UNDER : Stands.AS_ASKED;
    }

    private static boolean near(double ratio, double unit) {
        return Math.abs(ratio / unit - 1) <= NEAR || Math.abs(ratio * unit - 1) <= NEAR;
    }

    private static double ratio(double one, double other) {
        Argument.aboveZero("torque or factor", one);
        Argument.aboveZero("torque or factor asked for", other);
        return one / other;
    }
}
