package leadlamp.calc;

/** Volumes of a cylinder and the ratio they make. */
public final class Compression {
    private Compression() {
    }

    /**
     * Swept volume of one cylinder.
     *
     * <p>π/4 · bore² · stroke.
     *
     * @param bore   bore, m; above zero
     * @param stroke stroke, m; above zero
     * @return volume, m³
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double swept(double bore, double stroke) {
        Argument.aboveZero("bore", bore);
        Argument.aboveZero("stroke", stroke);
        return Math.PI / 4 * bore * bore * stroke;
    }

    /**
     * Swept volume of all cylinders.
     *
     * <p>π/4 · bore² · stroke · cylinders.
     *
     * @param bore      bore, m; above zero
     * @param stroke    stroke, m; above zero
     * @param cylinders number of cylinders; at least 1
     * @return volume, m³
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double sweptByAll(double bore, double stroke, int cylinders) {
        Argument.aboveZero("bore", bore);
        Argument.aboveZero("stroke", stroke);
        Argument.atLeast("number of cylinders", cylinders, 1);
        return swept(bore, stroke) * cylinders;
    }

    /**
     * Volume of a gasket's hole, or of the bore above a piston.
     *
     * <p>π/4 · diameter² · height.
     *
     * @param diameter diameter, m; above zero
     * @param height   height; minus where the piston stands above the face, m
     * @return volume, m³; minus where it takes room away
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double disc(double diameter, double height) {
        Argument.aboveZero("diameter", diameter);
        Argument.finite("height", height);
        return Math.PI / 4 * diameter * diameter * height;
    }

    /**
     * What is left above the piston at top dead centre.
     *
     * <p>chamber + gasket + deck + crown.
     *
     * @param chamber         volume of the combustion chamber, m³; above zero
     * @param gasketBore      bore of the gasket, m; above zero
     * @param gasketThickness compressed thickness of the gasket, m; not below zero
     * @param bore            bore, m; above zero
     * @param pistonHeight    height of the piston over the face, minus is below, m
     * @param crown           volume of the piston's crown, dish plus and dome minus, m³
     * @return volume, m³
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double clearanceVolume(double chamber, double gasketBore, double gasketThickness, double bore,
            double pistonHeight, double crown) {
        Argument.aboveZero("volume of the combustion chamber", chamber);
        Argument.aboveZero("bore of the gasket", gasketBore);
        Argument.notBelowZero("compressed thickness of the gasket", gasketThickness);
        Argument.aboveZero("bore", bore);
        Argument.finite("height of the piston over the face", pistonHeight);
        Argument.finite("volume of the piston's crown", crown);
        double volume = chamber + disc(gasketBore, gasketThickness) - disc(bore, pistonHeight) + crown;
        if (volume <= 0) {
            throw new IllegalArgumentException("Chamber, gasket, piston height and crown leave no volume.");
        }
        return volume;
    }

    /**
     * Compression ratio.
     *
     * <p>(swept + clearance) / clearance.
     *
     * @param swept     swept volume, m³; above zero
     * @param clearance clearance volume, m³; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "FAA-H-8083-32, compression ratio"
     */
    public static double ratio(double swept, double clearance) {
        Argument.aboveZero("swept volume", swept);
        Argument.aboveZero("clearance volume", clearance);
        return (swept + clearance) / clearance;
    }

    /**
     * Compression ratio from everything that is read.
     *
     * <p>(swept + clearance) / clearance.
     *
     * @param bore            bore, m; above zero
     * @param stroke          stroke, m; above zero
     * @param chamber         volume of the combustion chamber, m³; above zero
     * @param gasketBore      bore of the gasket, m; above zero
     * @param gasketThickness compressed thickness of the gasket, m; not below zero
     * @param pistonHeight    height of the piston over the face, minus is below, m
     * @param crown           volume of the piston's crown, dish plus and dome minus, m³
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "FAA-H-8083-32, compression ratio"
     */
    public static double ratioOf(double bore, double stroke, double chamber, double gasketBore,
            double gasketThickness, double pistonHeight, double crown) {
        Argument.aboveZero("bore", bore);
        Argument.aboveZero("stroke", stroke);
        Argument.aboveZero("volume of the combustion chamber", chamber);
        Argument.aboveZero("bore of the gasket", gasketBore);
        Argument.notBelowZero("compressed thickness of the gasket", gasketThickness);
        Argument.finite("height of the piston over the face", pistonHeight);
        Argument.finite("volume of the piston's crown", crown);
        return ratio(swept(bore, stroke),         clearanceVolume(chamber, gasketBore, gasketThickness, bore,
                pistonHeight, crown));
    }

    /**
     * Compression ratio from the volumes at the two dead centres.
     *
     * <p>bottom / top.
     *
     * @param bottom volume at bottom dead centre, m³; above zero
     * @param top    volume at top dead centre, m³; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "FAA-H-8083-32, compression ratio"
     */
    public static double ratioOfDeadCentres(double bottom, double top) {
        Argument.aboveZero("volume at bottom dead centre", bottom);
        Argument.aboveZero("volume at top dead centre", top);
        if (bottom <= top) {
            throw new IllegalArgumentException("The volume at bottom dead centre must be above that at top dead "
                    + "centre.");
        }
        return bottom / top;
    }

    /**
     * Clearance volume that gives a wanted ratio.
     *
     * <p>swept / (ratio − 1).
     *
     * @param swept swept volume, m³; above zero
     * @param ratio compression ratio; above 1
     * @return volume, m³
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double clearanceFor(double swept, double ratio) {
        Argument.aboveZero("swept volume", swept);
        Argument.aboveOne("compression ratio", ratio);
        return swept / (ratio - 1);
    }

    /**
     * Chamber volume that a cut takes off the head.
     *
     * <p>cut · chamber area at the face.
     *
     * @param cut  cut off the face, m; not below zero
     * @param area area of the chamber at the face, m²; above zero
     * @return volume, m³; about
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double lostToSkim(double cut, double area) {
        Argument.notBelowZero("cut off the face", cut);
        Argument.aboveZero("area of the chamber at the face", area);
        return cut * area;
    }

    /**
     * Compression ratio counted from where the intake valve closes.
     *
     * <p>1 + (ratio − 1) · share of the stroke still to go.
     *
     * @param ratio       compression ratio; above 1
     * @param throwRadius crank throw, m; above zero
     * @param rod         rod length, m; above zero
     * @param closing     intake closing after bottom dead centre, rad
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "slider-crank"
     */
    public static double effectiveRatio(double ratio, double throwRadius, double rod, double closing) {
        Argument.aboveOne("compression ratio", ratio);
        Argument.aboveZero("crank throw", throwRadius);
        Argument.aboveZero("rod length", rod);
        Argument.finite("intake closing after bottom dead centre", closing);
        return 1 + (ratio - 1) * CrankTrain.travel(throwRadius, rod, Math.PI + closing) / (2 * throwRadius);
    }

    /**
     * Pressure that a cylinder should show while cranking.
     *
     * <p>air pressure · (effective ratioⁿ − 1).
     *
     * @param airPressure    air pressure, Pa; above zero
     * @param effectiveRatio compression ratio counted from intake closing; above 1
     * @param exponent       exponent of compression; above 1
     * @return gauge pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "polytropic compression"
     */
    public static double cranking(double airPressure, double effectiveRatio, double exponent) {
        Argument.aboveZero("air pressure", airPressure);
        Argument.aboveOne("compression ratio counted from intake closing", effectiveRatio);
        Argument.aboveOne("exponent of compression", exponent);
        return airPressure * (Math.pow(effectiveRatio, exponent) - 1);
    }

    /**
     * Pressure at the end of compression.
     *
     * <p>pressure · ratioⁿ.
     *
     * @param pressure absolute pressure in the intake, Pa; above zero
     * @param ratio    compression ratio; above 1
     * @param exponent exponent of compression; above 1
     * @return absolute pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "polytropic compression"
     */
    public static double endPressure(double pressure, double ratio, double exponent) {
        Argument.aboveZero("absolute pressure in the intake", pressure);
        Argument.aboveOne("compression ratio", ratio);
        Argument.aboveOne("exponent of compression", exponent);
        return pressure * Math.pow(ratio, exponent);
    }

    /**
     * Temperature at the end of compression.
     *
     * <p>temperature · ratioⁿ⁻¹.
     *
     * @param temperature temperature of the charge, K; above absolute zero
     * @param ratio       compression ratio; above 1
     * @param exponent    exponent of compression; above 1
     * @return temperature, K
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "polytropic compression"
     */
    public static double endTemperature(double temperature, double ratio, double exponent) {
        Argument.aboveZero("temperature of the charge", temperature);
        Argument.aboveOne("compression ratio", ratio);
        Argument.aboveOne("exponent of compression", exponent);
        return temperature * Math.pow(ratio, exponent - 1);
    }

    /**
     * Efficiency of the ideal cycle with cold air.
     *
     * <p>1 − ratio^(1 − γ).
     *
     * @param ratio compression ratio; above 1
     * @param gamma ratio of specific heats; above 1
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "air-standard Otto cycle"
     */
    public static double airCycleEfficiency(double ratio, double gamma) {
        Argument.aboveOne("compression ratio", ratio);
        Argument.aboveOne("ratio of specific heats", gamma);
        return 1 - Math.pow(ratio, 1 - gamma);
    }

    /**
     * Fluid in a cylinder over the room that is left at top dead centre: above 1 the engine locks.
     *
     * <p>volume / clearance volume.
     *
     * @param volume    volume of the fluid, m³; not below zero
     * @param clearance clearance volume, m³; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double waterOverChamber(double volume, double clearance) {
        Argument.notBelowZero("volume of the fluid", volume);
        Argument.aboveZero("clearance volume", clearance);
        return volume / clearance;
    }

    /**
     * Rise of a compression reading with oil in the cylinder.
     *
     * <p>(wet − dry) / dry.
     *
     * @param dry compression dry, Pa; above zero
     * @param wet compression with oil, Pa; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double rise(double dry, double wet) {
        Argument.aboveZero("compression dry", dry);
        Argument.aboveZero("compression with oil", wet);
        return (wet - dry) / dry;
    }

    /**
     * Share of the air that a leak-down test loses.
     *
     * <p>(supply − reading) / supply.
     *
     * @param supply  supply pressure of the leak-down tester, Pa; above zero
     * @param reading pressure behind the orifice, Pa; not below zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "FAA AC 43.13-1B, 8-14"
     */
    public static double leakDown(double supply, double reading) {
        Argument.aboveZero("supply pressure of the leak-down tester", supply);
        Argument.notBelowZero("pressure behind the orifice", reading);
        if (reading > supply) {
            throw new IllegalArgumentException("The pressure behind the orifice must not be above the supply.");
        }
        return (supply - reading) / supply;
    }

    /**
     * Brake mean effective pressure of a four-stroke engine.
     *
     * <p>2 · power · 2π / (speed · swept volume).
     *
     * @param power power, W; above zero
     * @param speed crank speed, rad/s; above zero
     * @param swept swept volume of all cylinders, m³; above zero
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "FAA-H-8083-32, BMEP"
     */
    public static double meanEffectivePressure(double power, double speed, double swept) {
        Argument.aboveZero("power", power);
        Argument.aboveZero("crank speed", speed);
        Argument.aboveZero("swept volume of all cylinders", swept);
        return 4 * Math.PI * power / (speed * swept);
    }

    /**
     * Torque that gives this power at this speed.
     *
     * <p>power / speed.
     *
     * @param power power, W; not below zero
     * @param speed crank speed, rad/s; above zero
     * @return torque, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double torqueAt(double power, double speed) {
        Argument.notBelowZero("power", power);
        Argument.aboveZero("crank speed", speed);
        return power / speed;
    }

    /**
     * Power of a torque at this speed.
     *
     * <p>torque · speed.
     *
     * @param torque torque, N·m; not below zero
     * @param speed  crank speed, rad/s; not below zero
     * @return power, W
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double powerAt(double torque, double speed) {
        Argument.notBelowZero("torque", torque);
        Argument.notBelowZero("crank speed", speed);
        return torque * speed;
    }

    /**
     * Share of the fuel's heat that reaches the crankshaft.
     *
     * <p>power / (fuel flow · heat content).
     *
     * @param power       power, W; above zero
     * @param fuelFlow    fuel used, kg/s; above zero
     * @param heatContent heat content of the fuel, J/kg; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "FAA-H-8083-32, brake thermal efficiency"
     */
    public static double thermalEfficiency(double power, double fuelFlow, double heatContent) {
        Argument.aboveZero("power", power);
        Argument.aboveZero("fuel used", fuelFlow);
        Argument.aboveZero("heat content of the fuel", heatContent);
        return power / (fuelFlow * heatContent);
    }
}
