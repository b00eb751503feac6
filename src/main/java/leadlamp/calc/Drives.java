package leadlamp.calc;

/** Belts, chains and gears that turn the camshafts, and the pin that holds a cam gear. */
public final class Drives {
    private Drives() {
    }

    /**
     * Pitch radius of a toothed gear for a belt.
     *
     * <p>teeth · pitch / 2π.
     *
     * @param teeth teeth of the gear; at least 1
     * @param pitch pitch of the belt, m; above zero
     * @return radius, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "length of a circle"
     */
    public static double beltPitchRadius(int teeth, double pitch) {
        Argument.atLeast("teeth of the gear", teeth, 1);
        Argument.aboveZero("pitch of the belt", pitch);
        return teeth * pitch / (2 * Math.PI);
    }

    /**
     * Pitch radius of a chain gear.
     *
     * <p>pitch / (2 · sin(π / teeth)).
     *
     * @param teeth teeth of the gear; at least 1
     * @param pitch pitch of the chain, m; above zero
     * @return radius, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double chainPitchRadius(int teeth, double pitch) {
        Argument.atLeast("teeth of the gear", teeth, 1);
        Argument.aboveZero("pitch of the chain", pitch);
        if (teeth < 3) {
            throw new IllegalArgumentException("A chain gear must have at least 3 teeth.");
        }
        return pitch / (2 * Math.sin(Math.PI / teeth));
    }

    /**
     * Growth of a chain, pulled straight.
     *
     * <p>length / (links · pitch) − 1.
     *
     * @param length length over the links, m; above zero
     * @param links  links measured; at least 1
     * @param pitch  pitch of the chain, m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double elongation(double length, int links, double pitch) {
        Argument.aboveZero("length over the links", length);
        Argument.atLeast("links measured", links, 1);
        Argument.aboveZero("pitch of the chain", pitch);
        return length / (links * pitch) - 1;
    }

    /**
     * Tension of a belt's free run from its note.
     *
     * <p>4 · mass per metre · span² · frequency².
     *
     * <p>The string formula: stiff short spans read high.
     *
     * @param massPerLength mass of the belt for each metre, kg/m; above zero
     * @param span          length of the free run, m; above zero
     * @param frequency     note of the run, Hz; above zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "stretched string, first tone"
     */
    public static double tensionFromNote(double massPerLength, double span, double frequency) {
        Argument.aboveZero("mass of the belt for each metre", massPerLength);
        Argument.aboveZero("length of the free run", span);
        Argument.aboveZero("note of the run", frequency);
        return 4 * massPerLength * span * span * frequency * frequency;
    }

    /**
     * Growth of a belt's width.
     *
     * <p>width / nominal − 1.
     *
     * @param width   width as read, m; above zero
     * @param nominal nominal width, m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double swelling(double width, double nominal) {
        Argument.aboveZero("width as read", width);
        Argument.aboveZero("nominal width", nominal);
        return width / nominal - 1;
    }

    /**
     * Crank turns until all marks of a belt drive meet again.
     *
     * <p>lcm(belt teeth, crank gear teeth) / crank gear teeth, doubled where that is odd.
     *
     * @param beltTeeth      teeth of the belt; at least 1
     * @param crankGearTeeth teeth of the crank gear; at least 1
     * @return turns of the crankshaft
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "arithmetic; the cam gear turns once in two turns"
     */
    public static double markReturn(int beltTeeth, int crankGearTeeth) {
        Argument.atLeast("teeth of the belt", beltTeeth, 1);
        Argument.atLeast("teeth of the crank gear", crankGearTeeth, 1);
        long a = beltTeeth;
        long b = crankGearTeeth;
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        long turns = beltTeeth / a;
        return turns % 2 == 0 ? turns : 2 * turns;
    }

    /**
     * Slack that a shorter distance between crankshaft and camshaft gives a drive.
     *
     * <p>change of distance · runs.
     *
     * @param change change of the centre distance, nearer is plus, m
     * @param runs   runs between crankshaft and camshaft; at least 1
     * @return slack, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry, runs along the line of the bores"
     */
    public static double slack(double change, int runs) {
        Argument.finite("change of the centre distance", change);
        Argument.atLeast("runs between crankshaft and camshaft", runs, 1);
        return change * runs;
    }

    /**
     * Travel left to a tensioner towards the end it moves to.
     *
     * <p>end − extension − travel still to come.
     *
     * @param end       extension at that end, m
     * @param extension extension now, m
     * @param toCome    travel still to come, m
     * @return travel, m; minus is past its end
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double travelLeft(double end, double extension, double toCome) {
        Argument.finite("extension at that end", end);
        Argument.finite("extension now", extension);
        Argument.finite("travel still to come", toCome);
        return end - extension - toCome;
    }

    /**
     * Angle of a belt or chain that runs out of line.
     *
     * <p>arctan(difference of the lines / centre distance).
     *
     * @param lineDifference difference of the lines, m
     * @param distance       centre distance, m; above zero
     * @return angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double misalignment(double lineDifference, double distance) {
        Argument.finite("difference of the lines", lineDifference);
        Argument.aboveZero("centre distance", distance);
        return Math.atan(lineDifference / distance);
    }

    /**
     * Change of backlash with the distance of two gears.
     *
     * <p>2 · change · tan(pressure angle).
     *
     * @param change        change of the centre distance, apart is plus, m
     * @param pressureAngle pressure angle of the teeth, rad; from 0, below a right angle
     * @return change of backlash, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "involute gearing"
     */
    public static double backlashChange(double change, double pressureAngle) {
        Argument.finite("change of the centre distance", change);
        Argument.belowRightAngle("pressure angle of the teeth", pressureAngle);
        return 2 * change * Math.tan(pressureAngle);
    }

    /**
     * Load of each unit of a belt's width against the standard belt.
     *
     * <p>standard width / fitted width.
     *
     * @param standard standard width, m; above zero
     * @param fitted   fitted width, m; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double loadForWidth(double standard, double fitted) {
        Argument.aboveZero("standard width", standard);
        Argument.aboveZero("fitted width", fitted);
        return standard / fitted;
    }

    /**
     * Share of a wearing thickness that a groove has used.
     *
     * <p>groove / thickness.
     *
     * @param groove    depth of the groove, m; not below zero
     * @param thickness thickness that may wear, m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double wearShare(double groove, double thickness) {
        Argument.notBelowZero("depth of the groove", groove);
        Argument.aboveZero("thickness that may wear", thickness);
        return groove / thickness;
    }

    /**
     * Metal of a solid pin that shears.
     *
     * <p>π/4 · diameter².
     *
     * @param diameter pin diameter, m; above zero
     * @return area, m²
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double solidPinSection(double diameter) {
        Argument.aboveZero("pin diameter", diameter);
        return Math.PI / 4 * diameter * diameter;
    }

    /**
     * Metal of a hollow pin that shears.
     *
     * <p>π/4 · (diameter² − hole²).
     *
     * @param diameter pin diameter, m; above zero
     * @param hole     hole of the pin, m; not below zero
     * @return area, m²
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double hollowPinSection(double diameter, double hole) {
        Argument.aboveZero("pin diameter", diameter);
        Argument.notBelowZero("hole of the pin", hole);
        if (hole >= diameter) {
            throw new IllegalArgumentException("The hole of the pin must be below its diameter.");
        }
        return Math.PI / 4 * (diameter * diameter - hole * hole);
    }

    /**
     * Metal of a slotted pin that shears, from its wall.
     *
     * <p>π · (diameter − wall) · wall − slot · wall.
     *
     * @param diameter pin diameter, m; above zero
     * @param wall     wall of the pin, m; above zero
     * @param slot     width of the slot, m; not below zero
     * @return area, m²
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double slottedPinSection(double diameter, double wall, double slot) {
        Argument.aboveZero("pin diameter", diameter);
        Argument.aboveZero("wall of the pin", wall);
        Argument.notBelowZero("width of the slot", slot);
        if (2 * wall > diameter) {
            throw new IllegalArgumentException("The wall of the pin must not be above half its diameter.");
        }
        return Math.PI * (diameter - wall) * wall - slot * wall;
    }

    /**
     * Force that shears a pin at one section.
     *
     * <p>shear strength · section.
     *
     * @param shearStrength shear strength of the pin, Pa; above zero
     * @param section       section that shears, m²; above zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double pinCapacity(double shearStrength, double section) {
        Argument.aboveZero("shear strength of the pin", shearStrength);
        Argument.aboveZero("section that shears", section);
        return shearStrength * section;
    }

    /**
     * Shear strength where only the yield strength is known.
     *
     * <p>yield / √3.
     *
     * @param yieldStrength yield strength, Pa; above zero
     * @return shear strength, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "distortion energy theory"
     */
    public static double shearOfYield(double yieldStrength) {
        Argument.aboveZero("yield strength", yieldStrength);
        return yieldStrength / Math.sqrt(3);
    }

    /**
     * Torque that a gear's pin can carry.
     *
     * <p>capacity · pin circle radius.
     *
     * @param capacity force that shears the pin, N; above zero
     * @param radius   radius of the pin circle, m; above zero
     * @return torque, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double pinTorque(double capacity, double radius) {
        Argument.aboveZero("force that shears the pin", capacity);
        Argument.aboveZero("radius of the pin circle", radius);
        return capacity * radius;
    }

    /**
     * Greatest torque of one lobe, lift taken as a cosine.
     *
     * <p>spring load at half lift · π · lift / duration in cam angle.
     *
     * <p>Real lobes differ: a rough value.
     *
     * @param seatLoad spring load on the seat, N; above zero
     * @param openLoad spring load at full lift, N; above zero
     * @param lift     lift of the valve, m; above zero
     * @param duration duration as a crank angle, rad; above zero
     * @return torque on the camshaft, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "harmonic lift"
     */
    public static double peakLobeTorque(double seatLoad, double openLoad, double lift, double duration) {
        Argument.aboveZero("spring load on the seat", seatLoad);
        Argument.aboveZero("spring load at full lift", openLoad);
        Argument.aboveZero("lift of the valve", lift);
        Argument.aboveZero("duration as a crank angle", duration);
        return (seatLoad + openLoad) / 2 * Math.PI * lift / (duration / 2);
    }

    /**
     * Gap that a pin holds under its gear.
     *
     * <p>pin − shaft hole − gear hole.
     *
     * @param pin       length of the pin, m; above zero
     * @param shaftHole depth of the shaft's hole, m; not below zero
     * @param gearHole  depth of the gear's hole, m; not below zero
     * @return gap, m; minus is room
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double seatGap(double pin, double shaftHole, double gearHole) {
        Argument.aboveZero("length of the pin", pin);
        Argument.notBelowZero("depth of the shaft's hole", shaftHole);
        Argument.notBelowZero("depth of the gear's hole", gearHole);
        return pin - shaftHole - gearHole;
    }

    /**
     * Spread of a joining link's rivet.
     *
     * <p>diameter over the head − pin.
     *
     * @param overHead diameter over the rivet's head, m; above zero
     * @param pin      diameter of the pin, m; above zero
     * @return spread, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double rivetSpread(double overHead, double pin) {
        Argument.aboveZero("diameter over the rivet's head", overHead);
        Argument.aboveZero("diameter of the pin", pin);
        return overHead - pin;
    }
}
