package leadlamp.calc;

/** Clamp force of a bolt: from torque and friction, from angle, from stretch; and what the parts make of it. */
public final class Preload {
    private Preload() {
    }

    /**
     * Clamp force by the torque factor.
     *
     * <p>torque / (factor · diameter).
     *
     * @param torque   torque, N·m; not below zero
     * @param factor   torque factor; above zero
     * @param diameter thread diameter, m; above zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Mechanical Engineering Design, chapter 8"
     */
    public static double fromTorque(double torque, double factor, double diameter) {
        Argument.notBelowZero("torque", torque);
        Argument.aboveZero("torque factor", factor);
        Argument.aboveZero("thread diameter", diameter);
        return torque / (factor * diameter);
    }

    /**
     * Torque by the torque factor.
     *
     * <p>factor · force · diameter.
     *
     * @param force    clamp force, N; not below zero
     * @param factor   torque factor; above zero
     * @param diameter thread diameter, m; above zero
     * @return torque, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Mechanical Engineering Design, chapter 8"
     */
    public static double torqueFor(double force, double factor, double diameter) {
        Argument.notBelowZero("clamp force", force);
        Argument.aboveZero("torque factor", factor);
        Argument.aboveZero("thread diameter", diameter);
        return factor * force * diameter;
    }

    /**
     * Torque factor that torque and clamp force show.
     *
     * <p>torque / (force · diameter).
     *
     * @param torque   torque, N·m; above zero
     * @param force    clamp force, N; above zero
     * @param diameter thread diameter, m; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Mechanical Engineering Design, chapter 8"
     */
    public static double factorFrom(double torque, double force, double diameter) {
        Argument.aboveZero("torque", torque);
        Argument.aboveZero("clamp force", force);
        Argument.aboveZero("thread diameter", diameter);
        return torque / (force * diameter);
    }

    /**
     * Tightening torque from friction in the thread and under the head.
     *
     * <p>force · (0.16 · pitch + 0.58 · pitch diameter · thread friction + head friction · mean head diameter / 2).
     *
     * <p>The two figures stand for 1/2π and 1/(2 · cos 30°), rounded as the guideline prints them.
     *
     * @param force          clamp force, N; not below zero
     * @param pitch          pitch, m; above zero
     * @param pitchDiameter  pitch diameter, m; above zero
     * @param threadFriction friction in the thread; not below zero
     * @param headFriction   friction under the head; not below zero
     * @param headDiameter   mean diameter under the head, m; above zero
     * @return torque, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "VDI 2230 Part 1, tightening torque"
     */
    public static double torqueOfFriction(double force, double pitch, double pitchDiameter, double threadFriction,
            double headFriction, double headDiameter) {
        Argument.notBelowZero("clamp force", force);
        Argument.aboveZero("pitch", pitch);
        Argument.aboveZero("pitch diameter", pitchDiameter);
        Argument.notBelowZero("friction in the thread", threadFriction);
        Argument.notBelowZero("friction under the head", headFriction);
        Argument.aboveZero("mean diameter under the head", headDiameter);
        return force * arm(pitch, pitchDiameter, threadFriction, headFriction, headDiameter);
    }

    /**
     * Clamp force from torque and friction in the thread and under the head.
     *
     * <p>torque / (0.16 · pitch + 0.58 · pitch diameter · thread friction + head friction · mean head diameter /
     * 2).
     *
     * @param torque         torque, N·m; not below zero
     * @param pitch          pitch, m; above zero
     * @param pitchDiameter  pitch diameter, m; above zero
     * @param threadFriction friction in the thread; not below zero
     * @param headFriction   friction under the head; not below zero
     * @param headDiameter   mean diameter under the head, m; above zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "VDI 2230 Part 1, tightening torque"
     */
    public static double fromTorqueAndFriction(double torque, double pitch, double pitchDiameter,
            double threadFriction, double headFriction, double headDiameter) {
        Argument.notBelowZero("torque", torque);
        Argument.aboveZero("pitch", pitch);
        Argument.aboveZero("pitch diameter", pitchDiameter);
        Argument.notBelowZero("friction in the thread", threadFriction);
        Argument.notBelowZero("friction under the head", headFriction);
        Argument.aboveZero("mean diameter under the head", headDiameter);
        return torque / arm(pitch, pitchDiameter, threadFriction, headFriction, headDiameter);
    }

    /**
     * Share of a torque that stretches the bolt; the rest is friction.
     *
     * <p>0.16 · pitch / (0.16 · pitch + 0.58 · pitch diameter · thread friction + head friction · mean head
     * diameter / 2).
     *
     * @param pitch          pitch, m; above zero
     * @param pitchDiameter  pitch diameter, m; above zero
     * @param threadFriction friction in the thread; not below zero
     * @param headFriction   friction under the head; not below zero
     * @param headDiameter   mean diameter under the head, m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "VDI 2230 Part 1, tightening torque"
     */
    public static double stretchingShare(double pitch, double pitchDiameter, double threadFriction,
            double headFriction, double headDiameter) {
        Argument.aboveZero("pitch", pitch);
        Argument.aboveZero("pitch diameter", pitchDiameter);
        Argument.notBelowZero("friction in the thread", threadFriction);
        Argument.notBelowZero("friction under the head", headFriction);
        Argument.aboveZero("mean diameter under the head", headDiameter);
        return 0.16 * pitch / arm(pitch, pitchDiameter, threadFriction, headFriction, headDiameter);
    }

    private static double arm(double pitch, double pitchDiameter, double threadFriction, double headFriction,
            double headDiameter) {
        return 0.16 * pitch + 0.58 * pitchDiameter * threadFriction + headFriction * headDiameter / 2;
    }

    /**
     * Mean diameter of the ring that a head or nut bears on.
     *
     * <p>(outside + hole) / 2.
     *
     * @param outside outside of the bearing ring, m; above zero
     * @param hole    hole under the head, m; above zero
     * @return diameter, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "VDI 2230 Part 1"
     */
    public static double meanHeadDiameter(double outside, double hole) {
        Argument.aboveZero("outside of the bearing ring", outside);
        Argument.aboveZero("hole under the head", hole);
        if (hole >= outside) {
            throw new IllegalArgumentException("The hole under the head must be below the outside of the bearing "
                    + "ring.");
        }
        return (outside + hole) / 2;
    }

    /**
     * Tightening torque by the full relation of a square-cut screw with a leaning flank and a collar.
     *
     * <p>force · (mean diameter / 2 · (lead + π · friction · mean diameter · sec a) / (π · mean diameter − friction
     * · lead · sec a) + collar friction · collar diameter / 2).
     *
     * @param force          clamp force, N; not below zero
     * @param lead           lead, m; above zero
     * @param meanDiameter   mean of outer and minor diameter, m; above zero
     * @param halfAngle      half of the thread's angle, rad; from 0, below a right angle
     * @param threadFriction friction in the thread; not below zero
     * @param collarFriction friction under the head; not below zero
     * @param collarDiameter mean diameter under the head, m; above zero
     * @return torque, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Mechanical Engineering Design, chapter 8"
     */
    public static double torqueByScrew(double force, double lead, double meanDiameter, double halfAngle,
            double threadFriction, double collarFriction, double collarDiameter) {
        Argument.notBelowZero("clamp force", force);
        Argument.aboveZero("lead", lead);
        Argument.aboveZero("mean of outer and minor diameter", meanDiameter);
        Argument.belowRightAngle("half of the thread's angle", halfAngle);
        Argument.notBelowZero("friction in the thread", threadFriction);
        Argument.notBelowZero("friction under the head", collarFriction);
        Argument.aboveZero("mean diameter under the head", collarDiameter);
        double secant = 1 / Math.cos(halfAngle);
        double thread = meanDiameter / 2 * (lead + Math.PI * threadFriction * meanDiameter * secant)
                / (Math.PI * meanDiameter - threadFriction * lead * secant);
        return force * (thread + collarFriction * collarDiameter / 2);
    }

    /**
     * Greatest clamp force while pull and twist together reach a share of the yield strength.
     *
     * <p>share · yield · area / √(1 + 3 · (3/2 · d2/d · (pitch / (π · d2) + 1.155 · friction))²), d of the area.
     *
     * @param share          share of the yield strength; from 0 to 1
     * @param yieldStrength  yield strength, Pa; above zero
     * @param stressArea     stress area, m²; above zero
     * @param pitch          pitch, m; above zero
     * @param pitchDiameter  pitch diameter, m; above zero
     * @param threadFriction friction in the thread; not below zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "VDI 2230 Part 1, assembly preload"
     */
    public static double atYieldShare(double share, double yieldStrength, double stressArea, double pitch,
            double pitchDiameter, double threadFriction) {
        Argument.share("share of the yield strength", share);
        Argument.aboveZero("yield strength", yieldStrength);
        Argument.aboveZero("stress area", stressArea);
        Argument.aboveZero("pitch", pitch);
        Argument.aboveZero("pitch diameter", pitchDiameter);
        Argument.notBelowZero("friction in the thread", threadFriction);
        double diameter = Math.sqrt(4 * stressArea / Math.PI);
        double twist = 1.5 * pitchDiameter / diameter * (pitch / (Math.PI * pitchDiameter)
                + threadFriction / Math.cos(Math.PI / 6));
        return share * yieldStrength * stressArea / Math.sqrt(1 + 3 * twist * twist);
    }

    /**
     * Stress of a pull over an area.
     *
     * <p>force / area.
     *
     * @param force force, N; not below zero
     * @param area  stress area, m²; above zero
     * @return stress, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double stress(double force, double area) {
        Argument.notBelowZero("force", force);
        Argument.aboveZero("stress area", area);
        return force / area;
    }

    /**
     * Load of a bolt at a strength, as proof load.
     *
     * <p>area · strength.
     *
     * @param area     stress area, m²; above zero
     * @param strength proof, yield or tensile strength, Pa; above zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "ISO 898-1"
     */
    public static double load(double area, double strength) {
        Argument.aboveZero("stress area", area);
        Argument.aboveZero("proof", strength);
        return area * strength;
    }

    /**
     * Stress of a bolt from its stretch.
     *
     * <p>modulus · stretch / effective length.
     *
     * @param modulus         modulus of the bolt, Pa; above zero
     * @param stretch         stretch, m; not below zero
     * @param effectiveLength length that stretches, m; above zero
     * @return stress, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Hooke's law"
     */
    public static double stressFromStretch(double modulus, double stretch, double effectiveLength) {
        Argument.aboveZero("modulus of the bolt", modulus);
        Argument.notBelowZero("stretch", stretch);
        Argument.aboveZero("length that stretches", effectiveLength);
        return modulus * stretch / effectiveLength;
    }

    /**
     * Clamp force from stretch, over shank and thread in line.
     *
     * <p>modulus · stretch / Σ (length / area).
     *
     * @param modulus        modulus of the bolt, Pa; above zero
     * @param stretch        stretch, m; not below zero
     * @param lengthOverArea lengths over areas of the pieces, 1/m; at least one
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Hooke's law"
     */
    public static double fromStretch(double modulus, double stretch, double... lengthOverArea) {
        Argument.aboveZero("modulus of the bolt", modulus);
        Argument.notBelowZero("stretch", stretch);
        Argument.some("lengths over areas of the pieces", lengthOverArea);
        double slender = sum(lengthOverArea);
        if (slender <= 0) {
            throw new IllegalArgumentException("The lengths over areas of the pieces must be above zero.");
        }
        return modulus * stretch / slender;
    }

    /**
     * Stretch from clamp force, over shank and thread in line.
     *
     * <p>force / modulus · Σ (length / area).
     *
     * @param force          clamp force, N; not below zero
     * @param modulus        modulus of the bolt, Pa; above zero
     * @param lengthOverArea lengths over areas of the pieces, 1/m; at least one
     * @return stretch, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Hooke's law"
     */
    public static double stretchOf(double force, double modulus, double... lengthOverArea) {
        Argument.notBelowZero("clamp force", force);
        Argument.aboveZero("modulus of the bolt", modulus);
        Argument.some("lengths over areas of the pieces", lengthOverArea);
        return force / modulus * sum(lengthOverArea);
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    /**
     * Travel of a nut along its thread.
     *
     * <p>pitch · angle / 2π.
     *
     * @param pitch pitch, m; above zero
     * @param angle angle turned, rad
     * @return travel, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "one turn moves the nut one pitch"
     */
    public static double travelOfAngle(double pitch, double angle) {
        Argument.aboveZero("pitch", pitch);
        Argument.finite("angle turned", angle);
        return pitch * angle / (2 * Math.PI);
    }

    /**
     * Strain of a bolt from the angle it was turned.
     *
     * <p>pitch · angle / (2π · grip).
     *
     * <p>An upper bound: what is clamped gives way too.
     *
     * @param pitch pitch, m; above zero
     * @param angle angle turned, rad; not below zero
     * @param grip  grip length, m; above zero
     * @return strain
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "one turn moves the nut one pitch"
     */
    public static double strainOfAngle(double pitch, double angle, double grip) {
        Argument.aboveZero("pitch", pitch);
        Argument.notBelowZero("angle turned", angle);
        Argument.aboveZero("grip length", grip);
        return pitch * angle / (2 * Math.PI * grip);
    }

    /**
     * Clamp force that an angle adds where bolt and clamped parts share the travel.
     *
     * <p>pitch · angle / 2π · bolt stiffness · parts stiffness / (bolt stiffness + parts stiffness).
     *
     * @param pitch          pitch, m; above zero
     * @param angle          angle turned, rad; not below zero
     * @param boltStiffness  stiffness of the bolt, N/m; above zero
     * @param partsStiffness stiffness of the clamped parts, N/m; above zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "two springs in line"
     */
    public static double forceOfAngle(double pitch, double angle, double boltStiffness, double partsStiffness) {
        Argument.aboveZero("pitch", pitch);
        Argument.notBelowZero("angle turned", angle);
        Argument.aboveZero("stiffness of the bolt", boltStiffness);
        Argument.aboveZero("stiffness of the clamped parts", partsStiffness);
        return travelOfAngle(pitch, angle) * boltStiffness * partsStiffness / (boltStiffness + partsStiffness);
    }

    /**
     * Stiffness of a bolt over shank and thread in line.
     *
     * <p>modulus / Σ (length / area).
     *
     * @param modulus        modulus of the bolt, Pa; above zero
     * @param lengthOverArea lengths over areas of the pieces, 1/m; at least one
     * @return stiffness, N/m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Hooke's law"
     */
    public static double boltStiffness(double modulus, double... lengthOverArea) {
        Argument.aboveZero("modulus of the bolt", modulus);
        Argument.some("lengths over areas of the pieces", lengthOverArea);
        if (sum(lengthOverArea) <= 0) {
            throw new IllegalArgumentException("The lengths over areas of the pieces must be above zero.");
        }
        return modulus / sum(lengthOverArea);
    }

    /**
     * Share of a load from outside that the bolt feels.
     *
     * <p>bolt stiffness / (bolt stiffness + parts stiffness).
     *
     * @param boltStiffness  stiffness of the bolt, N/m; above zero
     * @param partsStiffness stiffness of the clamped parts, N/m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Mechanical Engineering Design, chapter 8"
     */
    public static double boltShare(double boltStiffness, double partsStiffness) {
        Argument.aboveZero("stiffness of the bolt", boltStiffness);
        Argument.aboveZero("stiffness of the clamped parts", partsStiffness);
        return boltStiffness / (boltStiffness + partsStiffness);
    }

    /**
     * Clamp force lost as a film or gasket settles.
     *
     * <p>settlement · modulus · area / grip.
     *
     * <p>An upper bound: the parts spring back too.
     *
     * @param settlement settlement, m; not below zero
     * @param modulus    modulus of the bolt, Pa; above zero
     * @param area       stress area, m²; above zero
     * @param grip       grip length, m; above zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Hooke's law"
     */
    public static double lossBySettling(double settlement, double modulus, double area, double grip) {
        Argument.notBelowZero("settlement", settlement);
        Argument.aboveZero("modulus of the bolt", modulus);
        Argument.aboveZero("stress area", area);
        Argument.aboveZero("grip length", grip);
        return settlement * modulus * area / grip;
    }

    /**
     * Pressure under a bolt's head, nut or washer.
     *
     * <p>force / (π/4 · (outside² − hole²)).
     *
     * @param force   clamp force, N; not below zero
     * @param outside outside of the bearing ring, m; above zero
     * @param hole    hole under the head, m; not below zero
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "VDI 2230 Part 1, surface pressure"
     */
    public static double underHead(double force, double outside, double hole) {
        Argument.notBelowZero("clamp force", force);
        Argument.aboveZero("outside of the bearing ring", outside);
        Argument.notBelowZero("hole under the head", hole);
        if (hole >= outside) {
            throw new IllegalArgumentException("The hole under the head must be below the outside of the bearing "
                    + "ring.");
        }
        return force / (Math.PI / 4 * (outside * outside - hole * hole));
    }

    /**
     * Torque that a clamped joint carries by friction.
     *
     * <p>friction · force · radius · faces.
     *
     * @param friction friction of the faces; not below zero
     * @param force    clamp force of all bolts, N; not below zero
     * @param radius   mean radius of the faces or bolt circle, m; above zero
     * @param faces    faces that rub; at least 1
     * @return torque, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "dry friction"
     */
    public static double grip(double friction, double force, double radius, int faces) {
        Argument.notBelowZero("friction of the faces", friction);
        Argument.notBelowZero("clamp force of all bolts", force);
        Argument.aboveZero("mean radius of the faces or bolt circle", radius);
        Argument.atLeast("faces that rub", faces, 1);
        return friction * force * radius * faces;
    }

    /**
     * Torque that a grub screw holds on its shaft.
     *
     * <p>2 · friction · seating force · shaft radius.
     *
     * <p>The hub presses back on the far side, which doubles the friction.
     *
     * @param friction      friction on the shaft; not below zero
     * @param force         seating force of the screw, N; not below zero
     * @param shaftDiameter shaft diameter, m; above zero
     * @return torque, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "dry friction"
     */
    public static double grubScrew(double friction, double force, double shaftDiameter) {
        Argument.notBelowZero("friction on the shaft", friction);
        Argument.notBelowZero("seating force of the screw", force);
        Argument.aboveZero("shaft diameter", shaftDiameter);
        return friction * force * shaftDiameter;
    }

    /**
     * Load of the gas that lifts a head over one cylinder.
     *
     * <p>pressure · π/4 · gasket bore².
     *
     * @param pressure   peak pressure, Pa; not below zero
     * @param gasketBore bore of the gasket, m; above zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double gasLoad(double pressure, double gasketBore) {
        Argument.notBelowZero("peak pressure", pressure);
        Argument.aboveZero("bore of the gasket", gasketBore);
        return pressure * Math.PI / 4 * gasketBore * gasketBore;
    }

    /**
     * Pressure of liquid under a bolt that is driven into a closed hole.
     *
     * <p>force / (π/4 · hole²).
     *
     * @param force force along the bolt, N; not below zero
     * @param hole  diameter of the hole, m; above zero
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double ramPressure(double force, double hole) {
        Argument.notBelowZero("force along the bolt", force);
        Argument.aboveZero("diameter of the hole", hole);
        return force / (Math.PI / 4 * hole * hole);
    }

    /**
     * Pressure of a joint on its gasket.
     *
     * <p>force of all bolts / gasket area.
     *
     * @param force clamp force of all bolts, N; not below zero
     * @param area  gasket area, m²; above zero
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double seatingPressure(double force, double area) {
        Argument.notBelowZero("clamp force of all bolts", force);
        Argument.aboveZero("gasket area", area);
        return force / area;
    }

    /**
     * Low side of a clamp force with its scatter.
     *
     * <p>mean · (1 − scatter).
     *
     * @param mean    mean clamp force, N; not below zero
     * @param scatter scatter to either side; from 0, below 1
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double low(double mean, double scatter) {
        Argument.notBelowZero("mean clamp force", mean);
        Argument.belowOne("scatter to either side", scatter);
        return mean * (1 - scatter);
    }

    /**
     * High side of a clamp force with its scatter.
     *
     * <p>mean · (1 + scatter).
     *
     * @param mean    mean clamp force, N; not below zero
     * @param scatter scatter to either side; from 0, below 1
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double high(double mean, double scatter) {
        Argument.notBelowZero("mean clamp force", mean);
        Argument.belowOne("scatter to either side", scatter);
        return mean * (1 + scatter);
    }
}
