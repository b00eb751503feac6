package leadlamp.calc;

/** Trigger disc, sensors and what they tell the controller. */
public final class Trigger {
    private Trigger() {
    }

    /**
     * Free angle of a disc from its play.
     *
     * <p>play / radius.
     *
     * @param play   play, m; not below zero
     * @param radius radius of the play, m; above zero
     * @return crank angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "length of an arc"
     */
    public static double freeAngle(double play, double radius) {
        Argument.notBelowZero("play", play);
        Argument.aboveZero("radius of the play", radius);
        return play / radius;
    }

    /**
     * Angle of one tooth, the missing ones counted.
     *
     * <p>2π / (teeth + missing).
     *
     * @param teeth   teeth present; at least 1
     * @param missing teeth left out; at least 0
     * @return angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double toothPitch(int teeth, int missing) {
        Argument.atLeast("teeth present", teeth, 1);
        Argument.atLeast("teeth left out", missing, 0);
        return 2 * Math.PI / (teeth + missing);
    }

    /**
     * An angle in teeth.
     *
     * <p>angle / tooth pitch.
     *
     * @param angle angle, rad
     * @param pitch angle of one tooth, rad; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double inTeeth(double angle, double pitch) {
        Argument.finite("angle", angle);
        Argument.aboveZero("angle of one tooth", pitch);
        return angle / pitch;
    }

    /**
     * Least gap through a turn of a sensor that faces the rim.
     *
     * <p>gap − runout / 2 − clearance / 2.
     *
     * @param gap       gap as set, m
     * @param runout    runout of the disc, m; not below zero
     * @param clearance main bearing clearance, m; not below zero
     * @return gap, m; minus touches
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double leastGap(double gap, double runout, double clearance) {
        Argument.finite("gap as set", gap);
        Argument.notBelowZero("runout of the disc", runout);
        Argument.notBelowZero("main bearing clearance", clearance);
        return gap - runout / 2 - clearance / 2;
    }

    /**
     * Greatest gap through a turn of a sensor that faces the rim.
     *
     * <p>gap + runout / 2 + clearance / 2.
     *
     * @param gap       gap as set, m
     * @param runout    runout of the disc, m; not below zero
     * @param clearance main bearing clearance, m; not below zero
     * @return gap, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double greatestGap(double gap, double runout, double clearance) {
        Argument.finite("gap as set", gap);
        Argument.notBelowZero("runout of the disc", runout);
        Argument.notBelowZero("main bearing clearance", clearance);
        return gap + runout / 2 + clearance / 2;
    }

    /**
     * Least gap of a sensor that faces the side of the disc, set with the crankshaft pushed away from it.
     *
     * <p>gap − runout / 2 − end float.
     *
     * @param gap      gap as set, m
     * @param runout   runout of the disc's side, m; not below zero
     * @param endFloat end float of the crankshaft, m; not below zero
     * @return gap, m; minus touches
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double leastSideGap(double gap, double runout, double endFloat) {
        Argument.finite("gap as set", gap);
        Argument.notBelowZero("runout of the disc's side", runout);
        Argument.notBelowZero("end float of the crankshaft", endFloat);
        return gap - runout / 2 - endFloat;
    }

    /**
     * Gap that a new sensor will have in the old place.
     *
     * <p>gap + old tip − new tip.
     *
     * @param gap    old gap, m
     * @param oldTip tip length of the old sensor, m; above zero
     * @param newTip tip length of the new sensor, m; above zero
     * @return gap, m; minus touches
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double gapWithNewTip(double gap, double oldTip, double newTip) {
        Argument.finite("old gap", gap);
        Argument.aboveZero("tip length of the old sensor", oldTip);
        Argument.aboveZero("tip length of the new sensor", newTip);
        return gap + oldTip - newTip;
    }

    /**
     * Resistance of a copper winding brought to 20 degrees Celsius.
     *
     * <p>resistance / (1 + 0.00393 · (temperature − 293.15)).
     *
     * @param resistance  resistance as read, ohm; above zero
     * @param temperature temperature of the winding, K; above absolute zero
     * @return resistance, ohm
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "IEC 60028, annealed copper (from memory)"
     */
    public static double resistanceAt20(double resistance, double temperature) {
        Argument.aboveZero("resistance as read", resistance);
        Argument.aboveZero("temperature of the winding", temperature);
        if (temperature < 200) {
            throw new IllegalArgumentException("The temperature of the winding must be above -73 degrees Celsius.");
        }
        return resistance / (1 + 0.00393 * (temperature - 293.15));
    }

    /**
     * First ringing tone of a cylinder.
     *
     * <p>1.841 · sound speed / (π · bore).
     *
     * @param bore       bore, m; above zero
     * @param soundSpeed sound speed in the burnt gas, m/s; above zero
     * @return frequency, Hz
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "NACA Report 493, first cross mode (from memory)"
     */
    public static double knockTone(double bore, double soundSpeed) {
        Argument.aboveZero("bore", bore);
        Argument.aboveZero("sound speed in the burnt gas", soundSpeed);
        return 1.841 * soundSpeed / (Math.PI * bore);
    }

    /**
     * Second ringing tone of a cylinder.
     *
     * <p>3.054 · sound speed / (π · bore).
     *
     * @param bore       bore, m; above zero
     * @param soundSpeed sound speed in the burnt gas, m/s; above zero
     * @return frequency, Hz
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "NACA Report 493, second cross mode (from memory)"
     */
    public static double secondKnockTone(double bore, double soundSpeed) {
        Argument.aboveZero("bore", bore);
        Argument.aboveZero("sound speed in the burnt gas", soundSpeed);
        return 3.054 * soundSpeed / (Math.PI * bore);
    }

    /**
     * Error of a reading from the drop in the sensor's earth.
     *
     * <p>drop / span voltage · full scale.
     *
     * @param drop      voltage drop, V
     * @param span      span voltage, V; above zero
     * @param fullScale full scale of the sensor; above zero
     * @return error, in the unit of the full scale
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double earthError(double drop, double span, double fullScale) {
        Argument.finite("voltage drop", drop);
        Argument.aboveZero("span voltage", span);
        Argument.aboveZero("full scale of the sensor", fullScale);
        return drop / span * fullScale;
    }

    /**
     * Error of a sensor at rest as a share of its full scale.
     *
     * <p>(reading − true) / full scale.
     *
     * @param reading   reading at rest
     * @param trueValue true value
     * @param fullScale full scale of the sensor; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double zeroError(double reading, double trueValue, double fullScale) {
        Argument.finite("reading at rest", reading);
        Argument.finite("true value", trueValue);
        Argument.aboveZero("full scale of the sensor", fullScale);
        return (reading - trueValue) / fullScale;
    }

    /**
     * Delay of a signal that drifts with speed.
     *
     * <p>change of angle / change of speed.
     *
     * @param drift       change of the timing error, rad
     * @param speedChange change of the crank speed, rad/s; above zero
     * @return time, s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double delay(double drift, double speedChange) {
        Argument.finite("change of the timing error", drift);
        Argument.aboveZero("change of the crank speed", speedChange);
        return drift / speedChange;
    }

    /**
     * How far a speed runs past its cut.
     *
     * <p>rise of speed · reaction time.
     *
     * @param rise     rise of speed, rad/s²; not below zero
     * @param reaction reaction time of the cut, s; not below zero
     * @return speed, rad/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double overshoot(double rise, double reaction) {
        Argument.notBelowZero("rise of speed", rise);
        Argument.notBelowZero("reaction time of the cut", reaction);
        return rise * reaction;
    }

    /**
     * Reading of a sender between two points of its curve, resistance falling evenly in its logarithm.
     *
     * <p>T = T1 + (T2 − T1) · ln(R / R1) / ln(R2 / R1).
     *
     * @param resistance     resistance as read, ohm; above zero
     * @param resistanceOne  resistance at one point of the curve, ohm; above zero
     * @param temperatureOne temperature at that point, K; above absolute zero
     * @param resistanceTwo  resistance at the other point, ohm; above zero
     * @param temperatureTwo temperature at the other point, K; above absolute zero
     * @return temperature, K
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double onCurve(double resistance, double resistanceOne, double temperatureOne, double resistanceTwo,
            double temperatureTwo) {
        Argument.aboveZero("resistance as read", resistance);
        Argument.aboveZero("resistance at one point of the curve", resistanceOne);
        Argument.aboveZero("temperature at that point", temperatureOne);
        Argument.aboveZero("resistance at the other point", resistanceTwo);
        Argument.aboveZero("temperature at the other point", temperatureTwo);
        if (resistanceOne == resistanceTwo) {
            throw new IllegalArgumentException("The two points of the curve must have different resistances.");
        }
        return temperatureOne + (temperatureTwo - temperatureOne) * Math.log(resistance / resistanceOne)
                / Math.log(resistanceTwo / resistanceOne);
    }
}
