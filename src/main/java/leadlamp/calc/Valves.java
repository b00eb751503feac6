package leadlamp.calc;

/** Valves, lash and what drives the valves. */
public final class Valves {
    /** Share by which a lift must be over the sheet's before it speaks of other lobes or rockers: common practice, no source. */
    public static final double MORE_LIFT = 0.02;

    private Valves() {
    }

    /**
     * Lift of a lobe.
     *
     * <p>height − base circle.
     *
     * @param height     height of the lobe, m; above zero
     * @param baseCircle base circle, m; above zero
     * @return lift, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double lobeLift(double height, double baseCircle) {
        Argument.aboveZero("height of the lobe", height);
        Argument.aboveZero("base circle", baseCircle);
        if (height < baseCircle) {
            throw new IllegalArgumentException("The height of the lobe must not be below its base circle.");
        }
        return height - baseCircle;
    }

    /**
     * Lift at the valve.
     *
     * <p>lobe lift · ratio − lash.
     *
     * @param lobeLift lobe lift, m; not below zero
     * @param ratio    rocker ratio; above zero
     * @param lash     lash, nothing where it is hydraulic, m; not below zero
     * @return lift, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double liftAtValve(double lobeLift, double ratio, double lash) {
        Argument.notBelowZero("lobe lift", lobeLift);
        Argument.aboveZero("rocker ratio", ratio);
        Argument.notBelowZero("lash", lash);
        return lobeLift * ratio - lash;
    }

    /**
     * Rocker ratio from lifts and lash.
     *
     * <p>(lift at the valve + lash) / lift at the cam.
     *
     * @param liftAtValve lift at the valve with lash, m; above zero
     * @param lash        lash, m; not below zero
     * @param lobeLift    lift at the cam, m; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double rockerRatio(double liftAtValve, double lash, double lobeLift) {
        Argument.aboveZero("lift at the valve with lash", liftAtValve);
        Argument.notBelowZero("lash", lash);
        Argument.aboveZero("lift at the cam", lobeLift);
        return (liftAtValve + lash) / lobeLift;
    }

    /**
     * Shim that gives the wanted lash.
     *
     * <p>shim + lash − wanted.
     *
     * @param shim   shim fitted, m; above zero
     * @param lash   lash as read, m
     * @param wanted lash wanted, m
     * @return shim, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double shimWanted(double shim, double lash, double wanted) {
        Argument.aboveZero("shim fitted", shim);
        Argument.finite("lash as read", lash);
        Argument.finite("lash wanted", wanted);
        return shim + lash - wanted;
    }

    /**
     * Movement along the valve when its seat or face is cut.
     *
     * <p>cut / cos(seat angle).
     *
     * @param cut       cut square to the seat or face, m; not below zero
     * @param seatAngle seat angle from square across the valve, rad; from 0, below a right angle
     * @return movement, m; 1.41 times the cut at 45 degrees
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double alongTheValve(double cut, double seatAngle) {
        Argument.notBelowZero("cut square to the seat or face", cut);
        Argument.belowRightAngle("seat angle from square across the valve", seatAngle);
        return cut / Math.cos(seatAngle);
    }

    /**
     * Recession after the work.
     *
     * <p>before + sink − cut of the head face.
     *
     * @param before  recession before, m
     * @param sink    sink of the valve along its stem, m; not below zero
     * @param headCut cut off the head face, m; not below zero
     * @return recession, m; minus stands out
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double recessionAfter(double before, double sink, double headCut) {
        Argument.finite("recession before", before);
        Argument.notBelowZero("sink of the valve along its stem", sink);
        Argument.notBelowZero("cut off the head face", headCut);
        return before + sink - headCut;
    }

    /**
     * Margin of a valve's head after its face is ground.
     *
     * <p>before − grind / cos(face angle).
     *
     * @param before    margin before, m; above zero
     * @param grind     grind square to the face, m; not below zero
     * @param faceAngle face angle from square across the valve, rad; from 0, below a right angle
     * @return margin, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double marginLeft(double before, double grind, double faceAngle) {
        Argument.aboveZero("margin before", before);
        Argument.notBelowZero("grind square to the face", grind);
        Argument.belowRightAngle("face angle from square across the valve", faceAngle);
        return before - alongTheValve(grind, faceAngle);
    }

    /**
     * Change of a lash adjuster's preload in a bucket.
     *
     * <p>rise of the stem − loss of the base circle's radius.
     *
     * @param stemRise rise of the stem's tip, m
     * @param baseLoss loss of the base circle's radius, m; not below zero
     * @return change, m; plus is more preload
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double preloadChangeBucket(double stemRise, double baseLoss) {
        Argument.finite("rise of the stem's tip", stemRise);
        Argument.notBelowZero("loss of the base circle's radius", baseLoss);
        return stemRise - baseLoss;
    }

    /**
     * Change of a lash adjuster's preload under a finger.
     *
     * <p>rise of the stem · arm to the adjuster / arm to the valve − loss of the base circle's radius · whole arm /
     * arm to the valve.
     *
     * @param stemRise rise of the stem's tip, m
     * @param armRatio arm of the adjuster over arm of the valve, both from the cam's contact; above zero
     * @param baseLoss loss of the base circle's radius, m; not below zero
     * @return change, m; plus is more preload
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double preloadChangeFinger(double stemRise, double armRatio, double baseLoss) {
        Argument.finite("rise of the stem's tip", stemRise);
        Argument.aboveZero("arm of the adjuster over arm of the valve", armRatio);
        Argument.notBelowZero("loss of the base circle's radius", baseLoss);
        // The finger turns about the stem's tip: what the lobe gives back is carried over both arms.
        return stemRise * armRatio - baseLoss * (1 + armRatio);
    }

    /**
     * Change of a lash adjuster's preload with pushrods.
     *
     * <p>cuts + standard gasket − fitted gasket + rise of the stem · pushrod arm / valve arm − loss of the base
     * circle's radius.
     *
     * @param cuts           cuts off block and head, m; not below zero
     * @param standardGasket standard compressed thickness, m; not below zero
     * @param fittedGasket   fitted compressed thickness, m; not below zero
     * @param stemRise       rise of the stem's tip, m
     * @param armRatio       pushrod arm over valve arm; above zero
     * @param baseLoss       loss of the base circle's radius, m; not below zero
     * @return change, m; plus is more preload
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double preloadChangePushrod(double cuts, double standardGasket, double fittedGasket,
            double stemRise, double armRatio, double baseLoss) {
        Argument.notBelowZero("cuts off block and head", cuts);
        Argument.notBelowZero("standard compressed thickness", standardGasket);
        Argument.notBelowZero("fitted compressed thickness", fittedGasket);
        Argument.finite("rise of the stem's tip", stemRise);
        Argument.aboveZero("pushrod arm over valve arm", armRatio);
        Argument.notBelowZero("loss of the base circle's radius", baseLoss);
        return cuts + standardGasket - fittedGasket + stemRise * armRatio - baseLoss;
    }

    /**
     * Length of pushrod that keeps the geometry and preload.
     *
     * <p>standard − (cuts + standard gasket − fitted gasket) − rise of the stem · pushrod arm / valve arm + loss of
     * the base circle's radius + rise of the rocker stand.
     *
     * @param standard       standard length of the pushrod, m; above zero
     * @param cuts           cuts off block and head, m; not below zero
     * @param standardGasket standard compressed thickness, m; not below zero
     * @param fittedGasket   fitted compressed thickness, m; not below zero
     * @param stemRise       rise of the stem's tip, m
     * @param armRatio       pushrod arm over valve arm; above zero
     * @param baseLoss       loss of the base circle's radius, m; not below zero
     * @param standRise      rise of the rocker stand, m
     * @return length, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double pushrodWanted(double standard, double cuts, double standardGasket, double fittedGasket,
            double stemRise, double armRatio, double baseLoss, double standRise) {
        Argument.aboveZero("standard length of the pushrod", standard);
        Argument.notBelowZero("cuts off block and head", cuts);
        Argument.notBelowZero("standard compressed thickness", standardGasket);
        Argument.notBelowZero("fitted compressed thickness", fittedGasket);
        Argument.finite("rise of the stem's tip", stemRise);
        Argument.aboveZero("pushrod arm over valve arm", armRatio);
        Argument.notBelowZero("loss of the base circle's radius", baseLoss);
        Argument.finite("rise of the rocker stand", standRise);
        return standard - (cuts + standardGasket - fittedGasket) - stemRise * armRatio + baseLoss + standRise;
    }

    /**
     * How far a pumped-up adjuster holds a valve open at first.
     *
     * <p>stand-out · ratio.
     *
     * @param standOut stand-out of the plunger over its working place, m; not below zero
     * @param ratio    ratio from adjuster to valve; above zero
     * @return lift, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double heldOpen(double standOut, double ratio) {
        Argument.notBelowZero("stand-out of the plunger over its working place", standOut);
        Argument.aboveZero("ratio from adjuster to valve", ratio);
        return standOut * ratio;
    }

    /**
     * Time that a pumped-up adjuster takes to bleed down.
     *
     * <p>stand-out / leak-down speed.
     *
     * @param standOut stand-out of the plunger over its working place, m; not below zero
     * @param leakDown leak-down speed of the adjuster, m/s; above zero
     * @return time, s; longer in cold thick oil
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double timeToBleed(double standOut, double leakDown) {
        Argument.notBelowZero("stand-out of the plunger over its working place", standOut);
        Argument.aboveZero("leak-down speed of the adjuster", leakDown);
        return standOut / leakDown;
    }

    /**
     * Ratio of the areas of two holes.
     *
     * <p>(one / other)².
     *
     * @param one   diameter of one hole, m; above zero
     * @param other diameter of the other hole, m; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double areaRatio(double one, double other) {
        Argument.aboveZero("diameter of one hole", one);
        Argument.aboveZero("diameter of the other hole", other);
        return one / other * (one / other);
    }

    /**
     * Error of a retainer's height from a stem that does not suit its keepers.
     *
     * <p>stem error / (2 · tan(cone angle to a side)).
     *
     * @param stemError error of the stem's diameter, m
     * @param coneAngle cone angle to one side, rad; from 0, below a right angle
     * @return error of height, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double keeperDepthError(double stemError, double coneAngle) {
        Argument.finite("error of the stem's diameter", stemError);
        Argument.belowRightAngle("cone angle to one side", coneAngle);
        if (coneAngle == 0) {
            throw new IllegalArgumentException("The cone angle must be above zero.");
        }
        return stemError / (2 * Math.tan(coneAngle));
    }

    /**
     * Sideways push of a valve head at each closing on a seat that is not true.
     *
     * <p>runout / 2.
     *
     * @param runout runout of the seat, m; not below zero
     * @return push, m; about
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double sideways(double runout) {
        Argument.notBelowZero("runout of the seat", runout);
        return runout / 2;
    }

    /**
     * Leak of a port under test.
     *
     * <p>volume · fall of pressure / time.
     *
     * @param volume volume of the port, m³; above zero
     * @param fall   fall of pressure, Pa; not below zero
     * @param time   time, s; above zero
     * @return leak, Pa·m³/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "gas law at one temperature"
     */
    public static double portLeak(double volume, double fall, double time) {
        Argument.aboveZero("volume of the port", volume);
        Argument.notBelowZero("fall of pressure", fall);
        Argument.aboveZero("time", time);
        return volume * fall / time;
    }

    /**
     * Rate at which a valve sinks.
     *
     * <p>lash lost / run.
     *
     * @param lashLost lash lost, m
     * @param run      distance or hours run; above zero
     * @return loss for each unit run
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double sinkRate(double lashLost, double run) {
        Argument.finite("lash lost", lashLost);
        Argument.aboveZero("distance or hours run", run);
        return lashLost / run;
    }

    /**
     * Run until the lash is gone at that rate.
     *
     * <p>lash / rate.
     *
     * @param lash lash left, m; not below zero
     * @param rate loss for each unit run, m; above zero
     * @return distance or hours, in the unit of the rate
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double runUntilNone(double lash, double rate) {
        Argument.notBelowZero("lash left", lash);
        Argument.aboveZero("loss for each unit run", rate);
        return lash / rate;
    }

    /**
     * Force of the exhaust's pressure that lifts an exhaust valve off its seat.
     *
     * <p>pressure · π/4 · valve head².
     *
     * @param pressure pressure behind the valve over that in the cylinder, Pa; not below zero
     * @param head     diameter of the valve's head, m; above zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double chestForce(double pressure, double head) {
        Argument.notBelowZero("pressure behind the valve over that in the cylinder", pressure);
        Argument.aboveZero("diameter of the valve's head", head);
        return pressure * Math.PI / 4 * head * head;
    }
}
