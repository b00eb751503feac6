package leadlamp.calc;

/** Air, boost and exhaust. Pressures are absolute unless a line says gauge. */
public final class Air {
    /** Gas constant of dry air, J/(kg·K), as the trade rounds it. */
    public static final double GAS_CONSTANT = 287.0;
    /** Ratio of specific heats of air. */
    public static final double GAMMA = 1.4;
    
    private Air() {
    }

    /**
     * Density of air.
     *
     * <p>pressure / (287 · temperature).
     *
     * @param pressure    absolute pressure, Pa; above zero
     * @param temperature temperature, K; above absolute zero
     * @return density, kg/m³
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "gas law"
     */
    public static double density(double pressure, double temperature) {
        Argument.aboveZero("absolute pressure", pressure);
        Argument.aboveZero("temperature", temperature);
        return pressure / (GAS_CONSTANT * temperature);
    }

    /**
     * Air pressure at a height above the sea, on a standard day.
     *
     * <p>101 325 · (1 − 2.25577e-5 · height)^5.25588.
     *
     * @param height height above the sea, m
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "ISO 2533, standard atmosphere"
     */
    public static double pressureAtHeight(double height) {
        Argument.finite("height above the sea", height);
        if (height < -500 || height > 11000) {
            throw new IllegalArgumentException("The height above the sea must lie from -500 to 11000 m.");
        }
        return 101325 * Math.pow(1 - 2.25577e-5 * height, 5.25588);
    }

    /**
     * Pressure ratio of a compressor.
     *
     * <p>(air pressure + boost) / (air pressure − depression).
     *
     * @param airPressure air pressure, Pa; above zero
     * @param boost       boost, gauge, Pa; not below zero
     * @param depression  depression of the intake duct, Pa; not below zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double pressureRatio(double airPressure, double boost, double depression) {
        Argument.aboveZero("air pressure", airPressure);
        Argument.notBelowZero("boost", boost);
        Argument.notBelowZero("depression of the intake duct", depression);
        if (depression >= airPressure) {
            throw new IllegalArgumentException("The depression of the intake duct must be below the air pressure.");
        }
        return (airPressure + boost) / (airPressure - depression);
    }

    /**
     * Temperature behind a compressor without losses.
     *
     * <p>inlet · ratio^(exponent).
     *
     * @param inlet    temperature at the inlet, K; above absolute zero
     * @param ratio    pressure ratio; above zero
     * @param exponent exponent, 0.286 for air; above zero
     * @return temperature, K
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "isentropic compression of a perfect gas"
     */
    public static double idealOutlet(double inlet, double ratio, double exponent) {
        Argument.aboveZero("temperature at the inlet", inlet);
        Argument.aboveZero("pressure ratio", ratio);
        Argument.aboveZero("exponent", exponent);
        return inlet * Math.pow(ratio, exponent);
    }

    /**
     * Temperature behind a compressor.
     *
     * <p>inlet + (inlet · ratio^((γ − 1)/γ) − inlet) / efficiency.
     *
     * @param inlet      temperature at the inlet, K; above absolute zero
     * @param ratio      pressure ratio; above zero
     * @param efficiency efficiency of the compressor; above zero
     * @param gamma      ratio of specific heats; above 1
     * @return temperature, K
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "isentropic compression of a perfect gas"
     */
    public static double outlet(double inlet, double ratio, double efficiency, double gamma) {
        Argument.aboveZero("temperature at the inlet", inlet);
        Argument.aboveZero("pressure ratio", ratio);
        Argument.aboveZero("efficiency of the compressor", efficiency);
        Argument.aboveOne("ratio of specific heats", gamma);
        if (efficiency > 1) {
            throw new IllegalArgumentException("The efficiency of the compressor must not be above 100 %.");
        }
        return inlet + (idealOutlet(inlet, ratio, (gamma - 1) / gamma) - inlet) / efficiency;
    }

    /**
     * Efficiency of a compressor from the temperatures.
     *
     * <p>(ideal − inlet) / (outlet − inlet).
     *
     * @param inlet  temperature at the inlet, K; above absolute zero
     * @param ideal  temperature behind it without losses, K; above absolute zero
     * @param outlet temperature behind it as read, K; above absolute zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double efficiency(double inlet, double ideal, double outlet) {
        Argument.aboveZero("temperature at the inlet", inlet);
        Argument.aboveZero("temperature behind it without losses", ideal);
        Argument.aboveZero("temperature behind it as read", outlet);
        if (outlet <= inlet) {
            throw new IllegalArgumentException("The temperature behind the compressor must be above that at its "
                    + "inlet.");
        }
        return (ideal - inlet) / (outlet - inlet);
    }

    /**
     * Temperature behind an intercooler.
     *
     * <p>outlet − effectiveness · (outlet − cooling air).
     *
     * @param outlet        temperature behind the compressor, K; above absolute zero
     * @param effectiveness effectiveness of the intercooler; from 0 to 1
     * @param coolingAir    temperature of the cooling air, K; above absolute zero
     * @return temperature, K
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double charge(double outlet, double effectiveness, double coolingAir) {
        Argument.aboveZero("temperature behind the compressor", outlet);
        Argument.share("effectiveness of the intercooler", effectiveness);
        Argument.aboveZero("temperature of the cooling air", coolingAir);
        return outlet - effectiveness * (outlet - coolingAir);
    }

    /**
     * Air that a power needs.
     *
     * <p>power · specific fuel use · air to fuel ratio · lambda.
     *
     * @param power       power, W; not below zero
     * @param specificUse specific fuel use, kg/J; above zero
     * @param airToFuel   air to fuel ratio that burns all of both; above zero
     * @param lambda      lambda; above zero
     * @return flow, kg/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double forPower(double power, double specificUse, double airToFuel, double lambda) {
        Argument.notBelowZero("power", power);
        Argument.aboveZero("specific fuel use", specificUse);
        Argument.aboveZero("air to fuel ratio that burns all of both", airToFuel);
        Argument.aboveZero("lambda", lambda);
        return power * specificUse * airToFuel * lambda;
    }

    /**
     * Air that a four-stroke engine takes in.
     *
     * <p>density · swept volume · speed / 4π · volumetric share.
     *
     * @param density    density of the charge, kg/m³; above zero
     * @param swept      swept volume of all cylinders, m³; above zero
     * @param speed      crank speed, rad/s; not below zero
     * @param volumetric volumetric share; above zero
     * @return flow, kg/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "four-stroke"
     */
    public static double swallowed(double density, double swept, double speed, double volumetric) {
        Argument.aboveZero("density of the charge", density);
        Argument.aboveZero("swept volume of all cylinders", swept);
        Argument.notBelowZero("crank speed", speed);
        Argument.aboveZero("volumetric share", volumetric);
        return density * swept * speed / (4 * Math.PI) * volumetric;
    }

    /**
     * Flow of a compressor brought to the state of its map.
     *
     * <p>flow · √(inlet / map temperature) / (inlet pressure / map pressure).
     *
     * @param flow           mass flow, kg/s; not below zero
     * @param inlet          temperature at the inlet, K; above absolute zero
     * @param mapTemperature temperature of the map, K; above absolute zero
     * @param inletPressure  pressure at the inlet, Pa; above zero
     * @param mapPressure    pressure of the map, Pa; above zero
     * @return flow, kg/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "dimensional analysis of compressors"
     */
    public static double corrected(double flow, double inlet, double mapTemperature, double inletPressure,
            double mapPressure) {
        Argument.notBelowZero("mass flow", flow);
        Argument.aboveZero("temperature at the inlet", inlet);
        Argument.aboveZero("temperature of the map", mapTemperature);
        Argument.aboveZero("pressure at the inlet", inletPressure);
        Argument.aboveZero("pressure of the map", mapPressure);
        return flow * Math.sqrt(inlet / mapTemperature) / (inletPressure / mapPressure);
    }

    /**
     * Share of the air that a depression before the throttle or compressor takes.
     *
     * <p>depression / air pressure.
     *
     * @param depression  depression of the intake duct, Pa; not below zero
     * @param airPressure air pressure, Pa; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "gas law"
     */
    public static double lostByDepression(double depression, double airPressure) {
        Argument.notBelowZero("depression of the intake duct", depression);
        Argument.aboveZero("air pressure", airPressure);
        return depression / airPressure;
    }

    /**
     * Share of the air that hot intake air takes.
     *
     * <p>1 − cold / hot.
     *
     * @param cold temperature of the air around, K; above absolute zero
     * @param hot  temperature of the intake air, K; above absolute zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "gas law"
     */
    public static double lostByHeat(double cold, double hot) {
        Argument.aboveZero("temperature of the air around", cold);
        Argument.aboveZero("temperature of the intake air", hot);
        return 1 - cold / hot;
    }

    /**
     * Air through a hole, from the pressures on both sides.
     *
     * <p>coefficient · area · pressure · √(γ / (R · T)) · flow function of the pressure ratio.
     *
     * <p>It chokes where the ratio falls to 0.528.
     *
     * @param coefficient discharge coefficient; from 0 to 1
     * @param area        area of the hole, m²; not below zero
     * @param upstream    absolute pressure before the hole, Pa; above zero
     * @param downstream  absolute pressure behind the hole, Pa; not below zero
     * @param temperature temperature before the hole, K; above absolute zero
     * @return flow, kg/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "compressible flow through a nozzle, fluid mechanics (from memory)"
     */
    public static double throughHole(double coefficient, double area, double upstream, double downstream,
            double temperature) {
        Argument.share("discharge coefficient", coefficient);
        Argument.notBelowZero("area of the hole", area);
        Argument.aboveZero("absolute pressure before the hole", upstream);
        Argument.notBelowZero("absolute pressure behind the hole", downstream);
        Argument.aboveZero("temperature before the hole", temperature);
        if (downstream > upstream) {
            throw new IllegalArgumentException("The pressure behind the hole must not be above that before it.");
        }
        double choked = Math.pow(2 / (GAMMA + 1), GAMMA / (GAMMA - 1));
        double ratio = Math.max(choked, downstream / upstream);
        double function = Math.sqrt(2 / (GAMMA - 1)
                * (Math.pow(ratio, 2 / GAMMA) - Math.pow(ratio, (GAMMA + 1) / GAMMA)));
        return coefficient * area * upstream * Math.sqrt(GAMMA / (GAS_CONSTANT * temperature)) * function;
    }

    /**
     * Hole that would let a closed volume lose pressure so fast.
     *
     * <p>volume · fall / (time · R · T) / flow through a hole of unit area.
     *
     * @param volume      volume under test, m³; above zero
     * @param fall        pressure fall, Pa; not below zero
     * @param time        time of the fall, s; above zero
     * @param coefficient discharge coefficient; above zero
     * @param inside      absolute pressure inside at the middle of the fall, Pa; above zero
     * @param outside     air pressure, Pa; above zero
     * @param temperature temperature of the air inside, K; above absolute zero
     * @return area, m²
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "gas law and compressible flow"
     */
    public static double leakArea(double volume, double fall, double time, double coefficient, double inside,
            double outside, double temperature) {
        Argument.aboveZero("volume under test", volume);
        Argument.notBelowZero("pressure fall", fall);
        Argument.aboveZero("time of the fall", time);
        Argument.aboveZero("discharge coefficient", coefficient);
        Argument.aboveZero("absolute pressure inside at the middle of the fall", inside);
        Argument.aboveZero("air pressure", outside);
        Argument.aboveZero("temperature of the air inside", temperature);
        if (coefficient > 1) {
            throw new IllegalArgumentException("The discharge coefficient must not be above 1.");
        }
        if (outside >= inside) {
            throw new IllegalArgumentException("The pressure inside must be above the air pressure.");
        }
        return volume * fall / (time * GAS_CONSTANT * temperature) / throughHole(coefficient, 1, inside, outside,
                temperature);
    }

    /**
     * Open share of a throttle's bore.
     *
     * <p>1 − cos(open) / cos(shut).
     *
     * @param open angle of the open plate from square across, rad; from 0, below a right angle
     * @param shut angle of the shut plate from square across, rad; from 0, below a right angle
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry, shaft left out"
     */
    public static double throttleOpen(double open, double shut) {
        Argument.belowRightAngle("angle of the open plate from square across", open);
        Argument.belowRightAngle("angle of the shut plate from square across", shut);
        if (open < shut) {
            throw new IllegalArgumentException("The angle of the open plate must not be below that of the shut plate.");
        }
        return 1 - Math.cos(open) / Math.cos(shut);
    }

    /**
     * Play of a turbocharger's shaft carried out to its wheel.
     *
     * <p>play · distance of the wheel / distance of the gauge, from the far bearing.
     *
     * @param play  play at the gauge, m; not below zero
     * @param wheel distance of the wheel from the far bearing, m; above zero
     * @param gauge distance of the gauge from the far bearing, m; above zero
     * @return play, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "similar triangles"
     */
    public static double playAtWheel(double play, double wheel, double gauge) {
        Argument.notBelowZero("play at the gauge", play);
        Argument.aboveZero("distance of the wheel from the far bearing", wheel);
        Argument.aboveZero("distance of the gauge from the far bearing", gauge);
        return play * wheel / gauge;
    }

    /**
     * Pressure lost in a hose.
     *
     * <p>friction · length / bore · density · speed² / 2.
     *
     * @param friction friction of the pipe; not below zero
     * @param length   length, m; not below zero
     * @param bore     bore, m; above zero
     * @param density  density of the gas, kg/m³; above zero
     * @param speed    speed of the gas, m/s; not below zero
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Darcy and Weisbach"
     */
    public static double hoseLoss(double friction, double length, double bore, double density, double speed) {
        Argument.notBelowZero("friction of the pipe", friction);
        Argument.notBelowZero("length", length);
        Argument.aboveZero("bore", bore);
        Argument.aboveZero("density of the gas", density);
        Argument.notBelowZero("speed of the gas", speed);
        return friction * length / bore * density * speed * speed / 2;
    }

    /**
     * Blow-by that a sound engine should have.
     *
     * <p>share · air flow / density.
     *
     * @param share   share of the air; from 0 to 1
     * @param flow    air taken in, kg/s; not below zero
     * @param density density of the gas in the crankcase, kg/m³; above zero
     * @return flow, m³/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double blowBy(double share, double flow, double density) {
        Argument.share("share of the air", share);
        Argument.notBelowZero("air taken in", flow);
        Argument.aboveZero("density of the gas in the crankcase", density);
        return share * flow / density;
    }

    /**
     * Absolute pressure of a driven blower at another speed, before heat and leakage.
     *
     * <p>pressure · speed ratio.
     *
     * @param pressure   absolute pressure, Pa; above zero
     * @param speedRatio rotor speed over the one before; above zero
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double boostOfSpeed(double pressure, double speedRatio) {
        Argument.aboveZero("absolute pressure", pressure);
        Argument.aboveZero("rotor speed over the one before", speedRatio);
        return pressure * speedRatio;
    }

    /**
     * Heat of a part brought to the hottest day.
     *
     * <p>reading + hottest day − air at the reading.
     *
     * @param reading temperature of the part, K; above absolute zero
     * @param air     air temperature at the reading, K; above absolute zero
     * @param hottest temperature of the hottest day, K; above absolute zero
     * @return temperature, K
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double heatOnHottestDay(double reading, double air, double hottest) {
        Argument.aboveZero("temperature of the part", reading);
        Argument.aboveZero("air temperature at the reading", air);
        Argument.aboveZero("temperature of the hottest day", hottest);
        return reading + hottest - air;
    }

    /**
     * Exhaust of an idling four-stroke engine.
     *
     * <p>swept volume · speed / 4π.
     *
     * @param swept swept volume of all cylinders, m³; above zero
     * @param speed crank speed, rad/s; not below zero
     * @return flow, m³/s; at intake density
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "four-stroke"
     */
    public static double exhaustFlow(double swept, double speed) {
        Argument.aboveZero("swept volume of all cylinders", swept);
        Argument.notBelowZero("crank speed", speed);
        return swept * speed / (4 * Math.PI);
    }

    /**
     * Time in which a shut room reaches a share of a gas.
     *
     * <p>room / flow · −ln(1 − limit / share in the flow).
     *
     * <p>The gas is taken to mix with all the air of a shut room. A person is warned long before: open the doors.
     *
     * @param room  volume of the room, m³; above zero
     * @param flow  exhaust flow, m³/s; above zero
     * @param limit limit share in the room; above zero
     * @param share share in the exhaust; above zero
     * @return time, s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "mixing of a shut room"
     */
    public static double timeToFume(double room, double flow, double limit, double share) {
        Argument.aboveZero("volume of the room", room);
        Argument.aboveZero("exhaust flow", flow);
        Argument.aboveZero("limit share in the room", limit);
        Argument.aboveZero("share in the exhaust", share);
        if (limit >= share) {
            throw new IllegalArgumentException("The limit share in the room must be below the share in the exhaust.");
        }
        return room / flow * -Math.log(1 - limit / share);
    }
}
