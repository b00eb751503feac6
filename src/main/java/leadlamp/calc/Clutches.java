package leadlamp.calc;

/** Clutch, its release and the flywheel face it runs on. */
public final class Clutches {
    private Clutches() {
    }

    /**
     * Mean friction radius of a worn-in clutch.
     *
     * <p>(outer + inner) / 2.
     *
     * @param outer outer radius, m; above zero
     * @param inner inner radius, m; not below zero
     * @return radius, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "uniform wear, an agricultural engineering course, lesson 11"
     */
    public static double wearRadius(double outer, double inner) {
        Argument.aboveZero("outer radius", outer);
        Argument.notBelowZero("inner radius", inner);
        if (inner >= outer) {
            throw new IllegalArgumentException("The inner radius must be below the outer one.");
        }
        return (outer + inner) / 2;
    }

    /**
     * Mean friction radius of a new clutch.
     *
     * <p>2/3 · (outer³ − inner³) / (outer² − inner²).
     *
     * @param outer outer radius, m; above zero
     * @param inner inner radius, m; not below zero
     * @return radius, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "uniform pressure, an agricultural engineering course, lesson 11"
     */
    public static double pressureRadius(double outer, double inner) {
        Argument.aboveZero("outer radius", outer);
        Argument.notBelowZero("inner radius", inner);
        if (inner >= outer) {
            throw new IllegalArgumentException("The inner radius must be below the outer one.");
        }
        return 2.0 / 3 * (outer * outer * outer - inner * inner * inner) / (outer * outer - inner * inner);
    }

    /**
     * Torque that a clutch can carry.
     *
     * <p>friction · clamp load · mean radius · faces.
     *
     * @param friction   friction of the faces; not below zero
     * @param clamp      clamp load, N; not below zero
     * @param meanRadius mean friction radius, m; above zero
     * @param faces      faces that rub; at least 1
     * @return torque, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "dry friction"
     */
    public static double capacity(double friction, double clamp, double meanRadius, int faces) {
        Argument.notBelowZero("friction of the faces", friction);
        Argument.notBelowZero("clamp load", clamp);
        Argument.aboveZero("mean friction radius", meanRadius);
        Argument.atLeast("faces that rub", faces, 1);
        return friction * clamp * meanRadius * faces;
    }

    /**
     * Clamp load at the greatest pressure, which is at the inner edge of a worn-in clutch.
     *
     * <p>2π · pressure · inner · (outer − inner).
     *
     * @param pressure greatest pressure, Pa; above zero
     * @param outer    outer radius, m; above zero
     * @param inner    inner radius, m; above zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "uniform wear"
     */
    public static double forceAtPressure(double pressure, double outer, double inner) {
        Argument.aboveZero("greatest pressure", pressure);
        Argument.aboveZero("outer radius", outer);
        Argument.aboveZero("inner radius", inner);
        if (inner >= outer) {
            throw new IllegalArgumentException("The inner radius must be below the outer one.");
        }
        return 2 * Math.PI * pressure * inner * (outer - inner);
    }

    /**
     * Inner radius that carries a torque at the greatest pressure, worn in.
     *
     * <p>∛(torque / (friction · faces · π · pressure · (ratio² − 1))).
     *
     * @param torque   torque, N·m; above zero
     * @param friction friction of the faces; above zero
     * @param faces    faces that rub; at least 1
     * @param pressure greatest pressure, Pa; above zero
     * @param ratio    outer over inner radius; above 1
     * @return radius, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "uniform wear"
     */
    public static double innerRadiusFor(double torque, double friction, int faces, double pressure, double ratio) {
        Argument.aboveZero("torque", torque);
        Argument.aboveZero("friction of the faces", friction);
        Argument.atLeast("faces that rub", faces, 1);
        Argument.aboveZero("greatest pressure", pressure);
        Argument.aboveOne("outer over inner radius", ratio);
        return Math.cbrt(torque / (friction * faces * Math.PI * pressure * (ratio * ratio - 1)));
    }

    /**
     * Pressure that carries a torque on one face where friction grows with the radius.
     *
     * <p>2 · torque / (π · growth · (outer⁴ − inner⁴)).
     *
     * @param torque torque, N·m; above zero
     * @param growth friction for each unit of radius, 1/m; above zero
     * @param outer  outer radius, m; above zero
     * @param inner  inner radius, m; not below zero
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "uniform pressure, integrated"
     */
    public static double pressureOfRisingFriction(double torque, double growth, double outer, double inner) {
        Argument.aboveZero("torque", torque);
        Argument.aboveZero("friction for each unit of radius", growth);
        Argument.aboveZero("outer radius", outer);
        Argument.notBelowZero("inner radius", inner);
        if (inner >= outer) {
            throw new IllegalArgumentException("The inner radius must be below the outer one.");
        }
        return 2 * torque / (Math.PI * growth * (Math.pow(outer, 4) - Math.pow(inner, 4)));
    }

    /**
     * Share of the depth of wear that is left.
     *
     * <p>(thickness − least) / (new − least).
     *
     * @param thickness thickness now, m; above zero
     * @param asNew     thickness when new, m; above zero
     * @param least     least thickness allowed, m; not below zero
     * @return share; minus is worn past it
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double wearLeft(double thickness, double asNew, double least) {
        Argument.aboveZero("thickness now", thickness);
        Argument.aboveZero("thickness when new", asNew);
        Argument.notBelowZero("least thickness allowed", least);
        if (asNew <= least) {
            throw new IllegalArgumentException("The thickness when new must be above the least allowed.");
        }
        return (thickness - least) / (asNew - least);
    }

    /**
     * Thickness lost for each second run.
     *
     * <p>(before − after) / time.
     *
     * @param before thickness before, m; above zero
     * @param after  thickness after, m; above zero
     * @param time   running time, s; above zero
     * @return rate, m/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double wearRate(double before, double after, double time) {
        Argument.aboveZero("thickness before", before);
        Argument.aboveZero("thickness after", after);
        Argument.aboveZero("running time", time);
        return (before - after) / time;
    }

    /**
     * Step of a flywheel after grinding its face.
     *
     * <p>step − cut of the mounting face + cut of the friction face.
     *
     * <p>The step is from the cover's seat down to the friction face; plus is a friction face that lies below.
     *
     * @param step        step before, m
     * @param mountingCut cut off the mounting face, m; not below zero
     * @param frictionCut cut off the friction face, m; not below zero
     * @return step, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double stepAfterGrinding(double step, double mountingCut, double frictionCut) {
        Argument.finite("step before", step);
        Argument.notBelowZero("cut off the mounting face", mountingCut);
        Argument.notBelowZero("cut off the friction face", frictionCut);
        return step - mountingCut + frictionCut;
    }

    /**
     * Travel of the release bearing.
     *
     * <p>pedal travel / pedal ratio · (master / slave)² / fork ratio.
     *
     * @param pedalTravel pedal travel, m; not below zero
     * @param pedalRatio  pedal ratio; above zero
     * @param master      bore of the master cylinder, m; above zero
     * @param slave       bore of the slave cylinder, m; above zero
     * @param forkRatio   fork travel over bearing travel; above zero
     * @return travel, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "equal volumes"
     */
    public static double releaseTravel(double pedalTravel, double pedalRatio, double master, double slave,
            double forkRatio) {
        Argument.notBelowZero("pedal travel", pedalTravel);
        Argument.aboveZero("pedal ratio", pedalRatio);
        Argument.aboveZero("bore of the master cylinder", master);
        Argument.aboveZero("bore of the slave cylinder", slave);
        Argument.aboveZero("fork travel over bearing travel", forkRatio);
        return pedalTravel / pedalRatio * (master / slave) * (master / slave) / forkRatio;
    }

    /**
     * Lift of the pressure plate.
     *
     * <p>(bearing travel − free play) / lever ratio.
     *
     * @param bearingTravel travel of the release bearing, m; not below zero
     * @param freePlay      free play at the bearing, m; not below zero
     * @param leverRatio    lever ratio of the cover; above zero
     * @return lift, m; at least 0
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double plateLift(double bearingTravel, double freePlay, double leverRatio) {
        Argument.notBelowZero("travel of the release bearing", bearingTravel);
        Argument.notBelowZero("free play at the bearing", freePlay);
        Argument.aboveZero("lever ratio of the cover", leverRatio);
        return Math.max(0, bearingTravel - freePlay) / leverRatio;
    }

    /**
     * Lift that frees the discs.
     *
     * <p>faces · clearance + discs · cushion.
     *
     * @param faces     faces that rub; at least 1
     * @param clearance clearance wanted at each face, m; not below zero
     * @param discs     number of discs; at least 1
     * @param cushion   cushion of a disc, m; not below zero
     * @return lift, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double liftNeeded(int faces, double clearance, int discs, double cushion) {
        Argument.atLeast("faces that rub", faces, 1);
        Argument.notBelowZero("clearance wanted at each face", clearance);
        Argument.atLeast("number of discs", discs, 1);
        Argument.notBelowZero("cushion of a disc", cushion);
        return faces * clearance + discs * cushion;
    }

    /**
     * Pressure on the crankshaft's thrust face with the pedal down.
     *
     * <p>load / area.
     *
     * @param load release load, N; not below zero
     * @param area area of the thrust face, m²; above zero
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double thrustPressure(double load, double area) {
        Argument.notBelowZero("release load", load);
        Argument.aboveZero("area of the thrust face", area);
        return load / area;
    }

    /**
     * Offset of a bore from its axis.
     *
     * <p>swing / 2.
     *
     * @param swing swing of the dial gauge, m; not below zero
     * @return offset, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double offset(double swing) {
        Argument.notBelowZero("swing of the dial gauge", swing);
        return swing / 2;
    }

    /**
     * Angle of a disc's backlash at its hub.
     *
     * <p>backlash / (outer diameter / 2).
     *
     * @param backlash      backlash at the edge, m; not below zero
     * @param outerDiameter outer diameter of the disc, m; above zero
     * @return angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "length of an arc"
     */
    public static double backlashAngle(double backlash, double outerDiameter) {
        Argument.notBelowZero("backlash at the edge", backlash);
        Argument.aboveZero("outer diameter of the disc", outerDiameter);
        return backlash / (outerDiameter / 2);
    }

    /**
     * Tilt of a cover from its fingers.
     *
     * <p>arctan(spread / circle).
     *
     * @param spread spread of the fingers' height, m; not below zero
     * @param circle diameter of the circle they stand on, m; above zero
     * @return angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double tilt(double spread, double circle) {
        Argument.notBelowZero("spread of the fingers' height", spread);
        Argument.aboveZero("diameter of the circle they stand on", circle);
        return Math.atan(spread / circle);
    }

    /**
     * Speed at which the road spins the disc with the pedal down.
     *
     * <p>speed · lower gear / gear.
     *
     * @param speed      crank speed at that road speed in the higher gear, rad/s; not below zero
     * @param lowerRatio ratio of the lower gear; above zero
     * @param ratio      ratio of the higher gear; above zero
     * @return speed, rad/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double discSpeedPedalDown(double speed, double lowerRatio, double ratio) {
        Argument.notBelowZero("crank speed at that road speed in the higher gear", speed);
        Argument.aboveZero("ratio of the lower gear", lowerRatio);
        Argument.aboveZero("ratio of the higher gear", ratio);
        return speed * lowerRatio / ratio;
    }
}
