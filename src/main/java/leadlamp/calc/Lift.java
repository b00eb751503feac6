package leadlamp.calc;

import java.util.function.DoubleUnaryOperator;

/** Lift of a valve over crank angle, for sweeps. */
public final class Lift {
    private Lift() {
    }

    /**
     * Lift taken as a cosine: half of (1 + cos), nothing outside the duration. Real lobes are fuller.
     *
     * @param lift     greatest lift, m; not below zero
     * @param centre   crank angle of full lift, rad: intake after top dead centre plus, exhaust before it minus
     * @param duration duration, rad; above zero, at most two turns
     * @return lift over crank angle
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "harmonic lift"
     */
    public static DoubleUnaryOperator harmonic(double lift, double centre, double duration) {
        Argument.notBelowZero("valve lift", lift);
        Argument.finite("lobe centre", centre);
        Argument.aboveZero("duration", duration);
        if (duration > 4 * Math.PI) {
            throw new IllegalArgumentException("The duration must not be above 720 crank degrees.");
        }
        return angle -> {
            double off = Math.IEEEremainder(angle - centre, 4 * Math.PI);
            return Math.abs(off) >= duration / 2 ? 0 : lift / 2 * (1 + Math.cos(2 * Math.PI * off / duration));
        };
    }

    /**
     * Lift from readings, straight between them and nothing outside.
     *
     * @param angles crank angles of the readings, rad; at least two, rising
     * @param lifts  lifts, m; as many, none below zero
     * @return lift over crank angle
     * @throws IllegalArgumentException if the readings do not rise in angle or a lift is below zero
     * @see "readings"
     */
    public static DoubleUnaryOperator curve(double[] angles, double[] lifts) {
        Argument.two("crank angles", angles);
        Argument.two("lifts", lifts);
        if (angles.length != lifts.length) {
            throw new IllegalArgumentException("Each lift must have its crank angle.");
        }
        double[] x = angles.clone();
        double[] y = lifts.clone();
        for (int i = 0; i < x.length; i++) {
            Argument.notBelowZero("lift", y[i]);
            if (i > 0 && x[i] <= x[i - 1]) {
                throw new IllegalArgumentException("The crank angles must rise from one reading to the next.");
            }
        }
        return angle -> {
            if (angle < x[0] || angle > x[x.length - 1]) {
                return 0;
            }
            int i = 1;
            while (x[i] < angle) {
                i++;
            }
            return y[i - 1] + (y[i] - y[i - 1]) * (angle - x[i - 1]) / (x[i] - x[i - 1]);
        };
    }
}
