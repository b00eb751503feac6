package leadlamp.calc;

/** Where the camshafts stand against the crankshaft. Angles are crank angles unless a line says cam. */
public final class CamTiming {
    private CamTiming() {
    }

    /**
     * Lobe centre from the crank readings at equal lift on either side of full lift, for an even lobe.
     *
     * <p>(rising + falling) / 2.
     *
     * @param rising  crank reading at that lift while it rises, rad
     * @param falling crank reading at that lift while it falls, rad
     * @return crank angle from top dead centre to full lift, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double lobeCentre(double rising, double falling) {
        Argument.finite("crank reading at that lift while it rises", rising);
        Argument.finite("crank reading at that lift while it falls", falling);
        return (rising + falling) / 2;
    }

    /**
     * Duration of a valve's opening.
     *
     * <p>opens + π + closes.
     *
     * @param opens  opening before the dead centre, rad
     * @param closes closing after the other dead centre, rad
     * @return crank angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "a published note on valve timing diagrams"
     */
    public static double duration(double opens, double closes) {
        Argument.finite("opening before the dead centre", opens);
        Argument.finite("closing after the other dead centre", closes);
        return opens + Math.PI + closes;
    }

    /**
     * Lobe centre from duration and opening.
     *
     * <p>duration / 2 − opening.
     *
     * @param duration duration, rad; above zero
     * @param opens    opening before top dead centre, rad
     * @return crank angle after top dead centre, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "a published page on valve overlap"
     */
    public static double centreOf(double duration, double opens) {
        Argument.aboveZero("duration", duration);
        Argument.finite("opening before top dead centre", opens);
        return duration / 2 - opens;
    }

    /**
     * Lobe separation.
     *
     * <p>(intake centre + exhaust centre) / 2.
     *
     * @param intakeCentre  intake lobe centre after top dead centre, rad
     * @param exhaustCentre exhaust lobe centre before top dead centre, rad
     * @return cam angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "a published page on valve overlap"
     */
    public static double separation(double intakeCentre, double exhaustCentre) {
        Argument.finite("intake lobe centre after top dead centre", intakeCentre);
        Argument.finite("exhaust lobe centre before top dead centre", exhaustCentre);
        return (intakeCentre + exhaustCentre) / 2;
    }

    /**
     * Overlap from the events.
     *
     * <p>intake opens + exhaust closes.
     *
     * @param intakeOpens   intake opening before top dead centre, rad
     * @param exhaustCloses exhaust closing after top dead centre, rad
     * @return crank angle, rad; minus is none
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "a published page on valve overlap"
     */
    public static double overlap(double intakeOpens, double exhaustCloses) {
        Argument.finite("intake opening before top dead centre", intakeOpens);
        Argument.finite("exhaust closing after top dead centre", exhaustCloses);
        return intakeOpens + exhaustCloses;
    }

    /**
     * Overlap from the durations and the lobe separation.
     *
     * <p>2 · (mean duration / 2 − separation).
     *
     * @param intakeDuration  intake duration, rad; above zero
     * @param exhaustDuration exhaust duration, rad; above zero
     * @param separation      lobe separation as a cam angle, rad; above zero
     * @return crank angle, rad; minus is none
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "a published page on valve overlap"
     */
    public static double overlapOfLobes(double intakeDuration, double exhaustDuration, double separation) {
        Argument.aboveZero("intake duration", intakeDuration);
        Argument.aboveZero("exhaust duration", exhaustDuration);
        Argument.aboveZero("lobe separation as a cam angle", separation);
        return (intakeDuration + exhaustDuration) / 2 - 2 * separation;
    }

    /**
     * Opening once the camshaft has been moved.
     *
     * <p>opens + advance.
     *
     * @param opens   opening before the dead centre, rad
     * @param advance advance of the camshaft, late is minus, rad
     * @return crank angle before the dead centre, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "a published note on valve timing diagrams"
     */
    public static double opensAfterShift(double opens, double advance) {
        Argument.finite("opening before the dead centre", opens);
        Argument.finite("advance of the camshaft", advance);
        return opens + advance;
    }

    /**
     * Closing once the camshaft has been moved.
     *
     * <p>closes − advance.
     *
     * @param closes  closing after the dead centre, rad
     * @param advance advance of the camshaft, late is minus, rad
     * @return crank angle after the dead centre, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "a published note on valve timing diagrams"
     */
    public static double closesAfterShift(double closes, double advance) {
        Argument.finite("closing after the dead centre", closes);
        Argument.finite("advance of the camshaft", advance);
        return closes - advance;
    }

    /**
     * Crank angle of a cam angle.
     *
     * <p>2 · cam angle.
     *
     * @param camAngle cam angle, rad
     * @return crank angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "four-stroke: two crank turns to one of the camshaft"
     */
    public static double crankOfCam(double camAngle) {
        Argument.finite("cam angle", camAngle);
        return 2 * camAngle;
    }

    /**
     * Crank angle of an angle of another shaft.
     *
     * <p>angle / (turns of the shaft for one of the crankshaft).
     *
     * @param angle angle of the shaft, rad
     * @param turns turns of the shaft for one of the crankshaft; above zero
     * @return crank angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double crankOfShaft(double angle, double turns) {
        Argument.finite("angle of the shaft", angle);
        Argument.aboveZero("turns of the shaft for one of the crankshaft", turns);
        return angle / turns;
    }

    /**
     * Angle of a movement at a radius.
     *
     * <p>movement / radius.
     *
     * @param movement movement along the rim, m
     * @param radius   radius, m; above zero
     * @return angle of that shaft, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "length of an arc"
     */
    public static double arc(double movement, double radius) {
        Argument.finite("movement along the rim", movement);
        Argument.aboveZero("radius", radius);
        return movement / radius;
    }

    /**
     * True top dead centre from two stop readings.
     *
     * <p>(before + after) / 2.
     *
     * @param before stop reading before top dead centre, rad
     * @param after  stop reading after top dead centre, rad
     * @return crank reading, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double trueTopDeadCentre(double before, double after) {
        Argument.finite("stop reading before top dead centre", before);
        Argument.finite("stop reading after top dead centre", after);
        return (before + after) / 2;
    }

    /**
     * Error of a timing mark.
     *
     * <p>reading − true.
     *
     * @param reading    crank reading at the mark, rad
     * @param trueCentre true top dead centre, rad
     * @return crank angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double markError(double reading, double trueCentre) {
        Argument.finite("crank reading at the mark", reading);
        Argument.finite("true top dead centre", trueCentre);
        return reading - trueCentre;
    }

    /**
     * Crank angle of one tooth of a cam gear.
     *
     * <p>4π / teeth.
     *
     * @param teeth teeth of the cam gear; at least 1
     * @return crank angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double oneTooth(int teeth) {
        Argument.atLeast("teeth of the cam gear", teeth, 1);
        return 4 * Math.PI / teeth;
    }

    /**
     * Angle of one tooth of a shaft's own gear.
     *
     * <p>2π / teeth.
     *
     * @param teeth teeth of the gear; at least 1
     * @return angle of that shaft, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double oneToothOf(int teeth) {
        Argument.atLeast("teeth of the gear", teeth, 1);
        return 2 * Math.PI / teeth;
    }

    /**
     * Error of cam timing in teeth of the cam gear.
     *
     * <p>error / one tooth.
     *
     * @param error cam timing error as a crank angle, rad
     * @param teeth teeth of the cam gear; at least 1
     * @return number of teeth
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double teethOut(double error, int teeth) {
        Argument.finite("cam timing error as a crank angle", error);
        Argument.atLeast("teeth of the cam gear", teeth, 1);
        return error / oneTooth(teeth);
    }

    /**
     * Lag of a camshaft that came nearer to the crankshaft.
     *
     * <p>2 · drop · cos(run angle) / pitch radius of the cam gear.
     *
     * @param drop        drop of the camshaft, m
     * @param runAngle    angle of the tight run from the line of the bores, rad; from 0, below a right angle
     * @param pitchRadius pitch radius of the cam gear, m; above zero
     * @return crank angle, rad; plus is late
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double lagFromDrop(double drop, double runAngle, double pitchRadius) {
        Argument.finite("drop of the camshaft", drop);
        Argument.belowRightAngle("angle of the tight run from the line of the bores", runAngle);
        Argument.aboveZero("pitch radius of the cam gear", pitchRadius);
        return 2 * drop * Math.cos(runAngle) / pitchRadius;
    }

    /**
     * Lag of a camshaft whose chain has grown.
     *
     * <p>2 · growth · tight run / pitch radius of the cam gear.
     *
     * @param growth      growth as a share of the length
     * @param tightRun    length of the tight run, m; above zero
     * @param pitchRadius pitch radius of the cam gear, m; above zero
     * @return crank angle, rad; plus is late
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "length of an arc"
     */
    public static double lagFromLength(double growth, double tightRun, double pitchRadius) {
        Argument.finite("growth as a share of the length", growth);
        Argument.aboveZero("length of the tight run", tightRun);
        Argument.aboveZero("pitch radius of the cam gear", pitchRadius);
        return 2 * growth * tightRun / pitchRadius;
    }

    /**
     * Shift of timing as a camshaft with helical gears floats from end to end.
     *
     * <p>2 · float · tan(helix angle) / pitch radius.
     *
     * @param endFloat    end float of the camshaft, m; not below zero
     * @param helixAngle  helix angle of the gear, rad; from 0, below a right angle
     * @param pitchRadius pitch radius of the cam gear, m; above zero
     * @return crank angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double helixShift(double endFloat, double helixAngle, double pitchRadius) {
        Argument.notBelowZero("end float of the camshaft", endFloat);
        Argument.belowRightAngle("helix angle of the gear", helixAngle);
        Argument.aboveZero("pitch radius of the cam gear", pitchRadius);
        return 2 * endFloat * Math.tan(helixAngle) / pitchRadius;
    }

    /**
     * Free turn of a cam gear on its pin.
     *
     * <p>2 · arctan(total clearance / pin circle radius).
     *
     * <p>Each clearance counts only while it is above zero.
     *
     * @param gearHole  pin hole of the gear, m; above zero
     * @param shaftHole pin hole of the camshaft, m; above zero
     * @param pin       pin diameter, m; above zero
     * @param radius    radius of the pin circle, m; above zero
     * @return crank angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double pinRock(double gearHole, double shaftHole, double pin, double radius) {
        Argument.aboveZero("pin hole of the gear", gearHole);
        Argument.aboveZero("pin hole of the camshaft", shaftHole);
        Argument.aboveZero("pin diameter", pin);
        Argument.aboveZero("radius of the pin circle", radius);
        return 2 * Math.atan((Math.max(0, gearHole - pin) + Math.max(0, shaftHole - pin)) / radius);
    }

    /**
     * Free turn of a gear on its key.
     *
     * <p>arctan((shaft keyway − key + gear keyway − key) / shaft radius).
     *
     * <p>Each clearance counts only while it is above zero.
     *
     * @param shaftKeyway width of the shaft's keyway, m; above zero
     * @param gearKeyway  width of the gear's keyway, m; above zero
     * @param key         width of the key, m; above zero
     * @param radius      radius of the shaft, m; above zero
     * @return angle of that shaft, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double keyRock(double shaftKeyway, double gearKeyway, double key, double radius) {
        Argument.aboveZero("width of the shaft's keyway", shaftKeyway);
        Argument.aboveZero("width of the gear's keyway", gearKeyway);
        Argument.aboveZero("width of the key", key);
        Argument.aboveZero("radius of the shaft", radius);
        return Math.atan((Math.max(0, shaftKeyway - key) + Math.max(0, gearKeyway - key)) / radius);
    }

    /**
     * Margin of a signal's edge to the nearer side of its window.
     *
     * <p>window / 2 − |edge − middle| − swing.
     *
     * @param edge   crank angle of the edge, rad
     * @param middle crank angle of the window's middle, rad
     * @param window width of the window, rad; above zero
     * @param swing  how far the camshaft may be moved from there, rad; not below zero
     * @return crank angle, rad; minus is outside
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double edgeMargin(double edge, double middle, double window, double swing) {
        Argument.finite("crank angle of the edge", edge);
        Argument.finite("crank angle of the window's middle", middle);
        Argument.aboveZero("width of the window", window);
        Argument.notBelowZero("how far the camshaft may be moved from there", swing);
        return window / 2 - Math.abs(edge - middle) - swing;
    }
}
