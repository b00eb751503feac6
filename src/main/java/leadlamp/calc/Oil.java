package leadlamp.calc;

/** Oil pump, pick-up, lines, jets and what the oil does in the sump. */
public final class Oil {
    /** Standard gravity, m/s²; exact by definition. */
    public static final double STANDARD_GRAVITY = 9.80665;
    
    private Oil() {
    }

    /**
     * End float of a pump's rotors foretold from the sizes.
     *
     * <p>body depth + gasket + cover wear − rotor.
     *
     * @param bodyDepth depth of the pump's body, m; above zero
     * @param gasket    compressed thickness of the gasket, m; not below zero
     * @param coverWear wear of the cover, m; not below zero
     * @param rotor     thickness of the rotor, m; above zero
     * @return end float, m; minus is tight
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double pumpEndFloat(double bodyDepth, double gasket, double coverWear, double rotor) {
        Argument.aboveZero("depth of the pump's body", bodyDepth);
        Argument.notBelowZero("compressed thickness of the gasket", gasket);
        Argument.notBelowZero("wear of the cover", coverWear);
        Argument.aboveZero("thickness of the rotor", rotor);
        return bodyDepth + gasket + coverWear - rotor;
    }

    /**
     * Speed of a shaft, pump or blower from its drive.
     *
     * <p>speed · driving / driven.
     *
     * @param speed   speed of the driving shaft, rad/s; not below zero
     * @param driving teeth or diameter of the driving gear; above zero
     * @param driven  teeth or diameter of the driven gear; above zero
     * @return speed, rad/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double drivenSpeed(double speed, double driving, double driven) {
        Argument.notBelowZero("speed of the driving shaft", speed);
        Argument.aboveZero("teeth or diameter of the driving gear", driving);
        Argument.aboveZero("teeth or diameter of the driven gear", driven);
        return speed * driving / driven;
    }

    /**
     * Torque that drives a pump.
     *
     * <p>pressure · displacement / 2π.
     *
     * @param pressure     pressure, Pa; not below zero
     * @param displacement displacement for one turn, m³; above zero
     * @return torque, N·m; friction left out
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "work of one turn"
     */
    public static double driveTorque(double pressure, double displacement) {
        Argument.notBelowZero("pressure", pressure);
        Argument.aboveZero("displacement for one turn", displacement);
        return pressure * displacement / (2 * Math.PI);
    }

    /**
     * Shear stress of a pin through a shaft that drives.
     *
     * <p>torque / (shaft radius · 2 · π/4 · pin²).
     *
     * @param torque        torque of the drive, N·m; not below zero
     * @param shaftDiameter shaft diameter, m; above zero
     * @param pinDiameter   pin diameter, m; above zero
     * @return stress, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "two sections in shear"
     */
    public static double pinShear(double torque, double shaftDiameter, double pinDiameter) {
        Argument.notBelowZero("torque of the drive", torque);
        Argument.aboveZero("shaft diameter", shaftDiameter);
        Argument.aboveZero("pin diameter", pinDiameter);
        return torque / (shaftDiameter / 2 * 2 * Drives.solidPinSection(pinDiameter));
    }

    /**
     * Pressure at which a relief valve opens.
     *
     * <p>spring load / (π/4 · plunger²).
     *
     * @param load    spring load at the seat, N; above zero
     * @param plunger diameter of the plunger, m; above zero
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double reliefPressure(double load, double plunger) {
        Argument.aboveZero("spring load at the seat", load);
        Argument.aboveZero("diameter of the plunger", plunger);
        return load / (Math.PI / 4 * plunger * plunger);
    }

    /**
     * Change of a relief valve's opening pressure with a shim.
     *
     * <p>rate · shim / (π/4 · plunger²).
     *
     * @param rate    rate of the spring, N/m; above zero
     * @param shim    thickness of the shim, m
     * @param plunger diameter of the plunger, m; above zero
     * @return change, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Hooke's law"
     */
    public static double reliefPerShim(double rate, double shim, double plunger) {
        Argument.aboveZero("rate of the spring", rate);
        Argument.finite("thickness of the shim", shim);
        Argument.aboveZero("diameter of the plunger", plunger);
        return rate * shim / (Math.PI / 4 * plunger * plunger);
    }

    /**
     * Gap of the pick-up to the sump floor foretold from the sizes.
     *
     * <p>sump depth + gasket − pick-up depth.
     *
     * @param sumpDepth   depth of the sump from its rail, m; above zero
     * @param gasket      compressed thickness of the gasket, m; not below zero
     * @param pickUpDepth depth of the pick-up from the rail, m; above zero
     * @return gap, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double pickUpGap(double sumpDepth, double gasket, double pickUpDepth) {
        Argument.aboveZero("depth of the sump from its rail", sumpDepth);
        Argument.notBelowZero("compressed thickness of the gasket", gasket);
        Argument.aboveZero("depth of the pick-up from the rail", pickUpDepth);
        return sumpDepth + gasket - pickUpDepth;
    }

    /**
     * Least gap under a pick-up that does not choke its pipe.
     *
     * <p>pipe bore² / (4 · mouth).
     *
     * @param pipeBore bore of the pipe, m; above zero
     * @param mouth    diameter of the mouth, m; above zero
     * @return gap, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "equal areas: round the mouth and in the pipe"
     */
    public static double fullFlowGap(double pipeBore, double mouth) {
        Argument.aboveZero("bore of the pipe", pipeBore);
        Argument.aboveZero("diameter of the mouth", mouth);
        return pipeBore * pipeBore / (4 * mouth);
    }

    /**
     * Mesh of a screen left open.
     *
     * <p>area · open share · (1 − blocked share).
     *
     * @param area         area of the screen, m²; above zero
     * @param openShare    open share of the mesh; from 0 to 1
     * @param blockedShare blocked share of the mesh; from 0 to 1
     * @return area, m²
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double freeArea(double area, double openShare, double blockedShare) {
        Argument.aboveZero("area of the screen", area);
        Argument.share("open share of the mesh", openShare);
        Argument.share("blocked share of the mesh", blockedShare);
        return area * openShare * (1 - blockedShare);
    }

    /**
     * Lean of the oil's surface.
     *
     * <p>arctan(acceleration / g).
     *
     * @param acceleration acceleration, m/s²; not below zero
     * @return angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "fluid at rest in a moving tank"
     */
    public static double surfaceAngle(double acceleration) {
        Argument.notBelowZero("acceleration", acceleration);
        return Math.atan(acceleration / STANDARD_GRAVITY);
    }

    /**
     * Rise of the oil at the wall of the sump.
     *
     * <p>half width · acceleration / g.
     *
     * @param width        width of the sump along the acceleration, m; above zero
     * @param acceleration acceleration, m/s²; not below zero
     * @return rise, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "fluid at rest in a moving tank"
     */
    public static double surfaceRise(double width, double acceleration) {
        Argument.aboveZero("width of the sump along the acceleration", width);
        Argument.notBelowZero("acceleration", acceleration);
        return width / 2 * acceleration / STANDARD_GRAVITY;
    }

    /**
     * Oil left over the pick-up.
     *
     * <p>depth + (distance from the middle to the pick-up, towards the high side) · acceleration / g.
     *
     * @param depth        oil depth over the pick-up at rest, m; not below zero
     * @param fromMiddle   distance of the pick-up from the middle, towards the low side is minus, m
     * @param acceleration acceleration, m/s²; not below zero
     * @return depth, m; minus is air
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "fluid at rest in a moving tank"
     */
    public static double overPickUp(double depth, double fromMiddle, double acceleration) {
        Argument.notBelowZero("oil depth over the pick-up at rest", depth);
        Argument.finite("distance of the pick-up from the middle", fromMiddle);
        Argument.notBelowZero("acceleration", acceleration);
        return depth + fromMiddle * acceleration / STANDARD_GRAVITY;
    }

    /**
     * Speed of a fluid in a pipe or hose.
     *
     * <p>4 · flow / (π · bore²).
     *
     * @param flow flow, m³/s; not below zero
     * @param bore bore, m; above zero
     * @return speed, m/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double lineSpeed(double flow, double bore) {
        Argument.notBelowZero("flow", flow);
        Argument.aboveZero("bore", bore);
        return 4 * flow / (Math.PI * bore * bore);
    }

    /**
     * Flow of a pump.
     *
     * <p>displacement · turns a second · volumetric share.
     *
     * @param displacement displacement for one turn, m³; above zero
     * @param speed        speed of the pump, rad/s; not below zero
     * @param volumetric   volumetric share; from 0 to 1
     * @return flow, m³/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double flowOfPump(double displacement, double speed, double volumetric) {
        Argument.aboveZero("displacement for one turn", displacement);
        Argument.notBelowZero("speed of the pump", speed);
        Argument.share("volumetric share", volumetric);
        return displacement * speed / (2 * Math.PI) * volumetric;
    }

    /**
     * Flow of oil or fuel through a hole.
     *
     * <p>coefficient · area · √(2 · pressure / density).
     *
     * @param coefficient discharge coefficient; from 0 to 1
     * @param diameter    diameter of the hole, m; above zero
     * @param pressure    pressure across the hole, Pa; not below zero
     * @param density     density, kg/m³; above zero
     * @return flow, m³/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Bernoulli with a discharge coefficient"
     */
    public static double orificeFlow(double coefficient, double diameter, double pressure, double density) {
        Argument.share("discharge coefficient", coefficient);
        Argument.aboveZero("diameter of the hole", diameter);
        Argument.notBelowZero("pressure across the hole", pressure);
        Argument.aboveZero("density", density);
        return coefficient * Math.PI / 4 * diameter * diameter * Math.sqrt(2 * pressure / density);
    }

    /**
     * Flow of a jet against the sheet's.
     *
     * <p>(hole / sheet's hole)².
     *
     * @param hole      hole of the jet, m; above zero
     * @param sheetHole hole of the sheet, m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "equal pressure"
     */
    public static double jetShare(double hole, double sheetHole) {
        Argument.aboveZero("hole of the jet", hole);
        Argument.aboveZero("hole of the sheet", sheetHole);
        return hole / sheetHole * (hole / sheetHole);
    }

    /**
     * Volume of a pipe or hose.
     *
     * <p>π/4 · bore² · length.
     *
     * @param bore   bore, m; above zero
     * @param length length, m; not below zero
     * @return volume, m³
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double lineVolume(double bore, double length) {
        Argument.aboveZero("bore", bore);
        Argument.notBelowZero("length", length);
        return Math.PI / 4 * bore * bore * length;
    }

    /**
     * Time that a pump takes to fill a volume.
     *
     * <p>volume / flow.
     *
     * @param volume volume to be filled, m³; not below zero
     * @param flow   flow of the pump, m³/s; above zero
     * @return time, s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double fillTime(double volume, double flow) {
        Argument.notBelowZero("volume to be filled", volume);
        Argument.aboveZero("flow of the pump", flow);
        return volume / flow;
    }

    /**
     * Scavenge pump against pressure pump.
     *
     * <p>scavenge / pressure.
     *
     * @param scavenge     displacement of all scavenge stages for one turn, m³; not below zero
     * @param pressurePump displacement of the pressure stage for one turn, m³; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double scavengeRatio(double scavenge, double pressurePump) {
        Argument.notBelowZero("displacement of all scavenge stages for one turn", scavenge);
        Argument.aboveZero("displacement of the pressure stage for one turn", pressurePump);
        return scavenge / pressurePump;
    }

    /**
     * Crank turns made in a time, as before a cut acts.
     *
     * <p>speed · time / 2π.
     *
     * @param speed crank speed, rad/s; not below zero
     * @param time  time, s; not below zero
     * @return turns
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double turnsInTime(double speed, double time) {
        Argument.notBelowZero("crank speed", speed);
        Argument.notBelowZero("time", time);
        return speed * time / (2 * Math.PI);
    }

    /**
     * Slope of a drain's run.
     *
     * <p>arcsin(fall / length).
     *
     * @param fall   fall of the run, m
     * @param length length of the run, m; above zero
     * @return angle, rad; minus rises
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double slope(double fall, double length) {
        Argument.finite("fall of the run", fall);
        Argument.aboveZero("length of the run", length);
        if (Math.abs(fall) > length) {
            throw new IllegalArgumentException("The fall of the run must not be above its length.");
        }
        return Math.asin(fall / length);
    }

    /**
     * Head of oil in a falling drain over the pressure that holds it back.
     *
     * <p>density · g · height / pressure.
     *
     * @param density  density of the oil, kg/m³; above zero
     * @param height   height of the drain, m; not below zero
     * @param pressure crankcase pressure, Pa; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "hydrostatics"
     */
    public static double drainHead(double density, double height, double pressure) {
        Argument.aboveZero("density of the oil", density);
        Argument.notBelowZero("height of the drain", height);
        Argument.aboveZero("crankcase pressure", pressure);
        return density * STANDARD_GRAVITY * height / pressure;
    }

    /**
     * How far a gallery plug's inner end stands past the edge of a drilling.
     *
     * <p>depth + length − distance.
     *
     * @param depth    depth of the plug's outer end, m; not below zero
     * @param length   length of the plug, m; above zero
     * @param distance distance of the drilling's near edge from the face, m; above zero
     * @return length, m; plus covers it
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double plugInnerEnd(double depth, double length, double distance) {
        Argument.notBelowZero("depth of the plug's outer end", depth);
        Argument.aboveZero("length of the plug", length);
        Argument.aboveZero("distance of the drilling's near edge from the face", distance);
        return depth + length - distance;
    }

    /**
     * Share of a drilling's diameter that a plug's end covers.
     *
     * <p>past its edge / diameter, from 0 to 1.
     *
     * @param past     inner end past the near edge, m
     * @param drilling diameter of the drilling, m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double shareCovered(double past, double drilling) {
        Argument.finite("inner end past the near edge", past);
        Argument.aboveZero("diameter of the drilling", drilling);
        return Math.max(0, Math.min(1, past / drilling));
    }

    /**
     * Room left between turning and standing parts once float, clearance and stretch are taken off.
     *
     * <p>gap − float − clearance − stretch.
     *
     * @param gap       gap as read, m
     * @param endFloat  end float, m; not below zero
     * @param clearance oil clearance, m; not below zero
     * @param stretch   stretch of the rod, m; not below zero
     * @return room, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double roomAfterFloat(double gap, double endFloat, double clearance, double stretch) {
        Argument.finite("gap as read", gap);
        Argument.notBelowZero("end float", endFloat);
        Argument.notBelowZero("oil clearance", clearance);
        Argument.notBelowZero("stretch of the rod", stretch);
        return gap - endFloat - clearance - stretch;
    }

    /**
     * Open feed hole against the area that the bearings leak through.
     *
     * <p>π/4 · hole² / leakage area.
     *
     * @param hole        diameter of the open hole, m; not below zero
     * @param leakageArea area round all journals, m²; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double bearingLeakShare(double hole, double leakageArea) {
        Argument.notBelowZero("diameter of the open hole", hole);
        Argument.aboveZero("area round all journals", leakageArea);
        return Math.PI / 4 * hole * hole / leakageArea;
    }

    /**
     * Oil pressure foretold against the sheet's, the pump giving the same flow to wider bearings.
     *
     * <p>sheet pressure · viscosity ratio / Σ (leak ratio · share of the oil).
     *
     * @param sheetPressure  least pressure of the sheet, Pa; above zero
     * @param viscosityRatio viscosity over that of the sheet's oil; above zero
     * @param leak           leak of all bearings against the sheet's widest; above zero
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "laminar flow between near walls"
     */
    public static double idleForetold(double sheetPressure, double viscosityRatio, double leak) {
        Argument.aboveZero("least pressure of the sheet", sheetPressure);
        Argument.aboveZero("viscosity over that of the sheet's oil", viscosityRatio);
        Argument.aboveZero("leak of all bearings against the sheet's widest", leak);
        return sheetPressure * viscosityRatio / leak;
    }

    /**
     * Least pressure by a rule of so much for so much speed.
     *
     * <p>pressure · speed / step.
     *
     * @param pressure pressure for each step of speed, Pa; above zero
     * @param speed    crank speed, rad/s; not below zero
     * @param step     step of speed, rad/s; above zero
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double ruleOfSpeed(double pressure, double speed, double step) {
        Argument.aboveZero("pressure for each step of speed", pressure);
        Argument.notBelowZero("crank speed", speed);
        Argument.aboveZero("step of speed", step);
        return pressure * speed / step;
    }

    /**
     * Share of a space that oil or silt fills.
     *
     * <p>part / space.
     *
     * @param part  volume or depth of what is in it; not below zero
     * @param space volume or depth of the space; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double storageShare(double part, double space) {
        Argument.notBelowZero("volume or depth of what is in it", part);
        Argument.aboveZero("volume or depth of the space", space);
        return part / space;
    }

    /**
     * Cleanliness code of a particle count.
     *
     * <p>least whole number n with count ≤ 0.01 · 2ⁿ.
     *
     * @param perMillilitre particles in a millilitre, 1/ml; not below zero
     * @return code; at least 0
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "ISO 4406 (from memory)"
     */
    public static double cleanlinessCode(double perMillilitre) {
        Argument.notBelowZero("particles in a millilitre", perMillilitre);
        int code = 0;
        double most = 0.01;
        while (perMillilitre > most) {
            most *= 2;
            code++;
        }
        return code;
    }

    /**
     * Dew point of the workshop's air.
     *
     * <p>243.1 · g / (17.62 − g), g = ln(humidity) + 17.62 · t / (243.1 + t), t in degrees Celsius.
     *
     * @param air      air temperature, K; above absolute zero
     * @param humidity humidity; from 0 to 1
     * @return temperature, K
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Magnus formula over water (from memory)"
     */
    public static double dewPoint(double air, double humidity) {
        Argument.aboveZero("air temperature", air);
        Argument.share("humidity", humidity);
        if (humidity <= 0) {
            throw new IllegalArgumentException("The humidity must be above zero.");
        }
        if (air < 228.15 || air > 333.15) {
            throw new IllegalArgumentException("The air temperature must lie from -45 to 60 degrees Celsius.");
        }
        double celsius = air - 273.15;
        double g = Math.log(humidity) + 17.62 * celsius / (243.1 + celsius);
        return 243.1 * g / (17.62 - g) + 273.15;
    }

    /**
     * How long the pump could draw on the oil that a tank holds.
     *
     * <p>volume / flow.
     *
     * @param volume oil held, m³; not below zero
     * @param flow   flow of the pump, m³/s; above zero
     * @return time, s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double heldFor(double volume, double flow) {
        Argument.notBelowZero("oil held", volume);
        Argument.aboveZero("flow of the pump", flow);
        return volume / flow;
    }
}
