package leadlamp.calc;

/** Fuel: what a power needs and what injectors, pump and blend give. */
public final class Fuel {
    private Fuel() {
    }

    /**
     * Fuel that a power needs.
     *
     * <p>power · specific fuel use.
     *
     * @param power       power, W; not below zero
     * @param specificUse specific fuel use, kg/J; above zero
     * @return flow, kg/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double massFlow(double power, double specificUse) {
        Argument.notBelowZero("power", power);
        Argument.aboveZero("specific fuel use", specificUse);
        return power * specificUse;
    }

    /**
     * Flow of an injector or pump hole at another pressure.
     *
     * <p>flow · √(pressure / pressure of the flow).
     *
     * @param flow     flow as read, m³/s; above zero
     * @param pressure pressure across the injector, Pa; not below zero
     * @param readAt   pressure across it at the reading, Pa; above zero
     * @return flow, m³/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Bernoulli"
     */
    public static double flowAt(double flow, double pressure, double readAt) {
        Argument.aboveZero("flow as read", flow);
        Argument.notBelowZero("pressure across the injector", pressure);
        Argument.aboveZero("pressure across it at the reading", readAt);
        return flow * Math.sqrt(pressure / readAt);
    }

    /**
     * Share of the time that injectors must stand open.
     *
     * <p>fuel mass flow / (injectors · flow · density) + dead time · injections a second.
     *
     * @param massFlow   fuel needed, kg/s; not below zero
     * @param injectors  number of injectors; at least 1
     * @param flow       flow of one injector at the pressure really across it, m³/s; above zero
     * @param density    density of the fuel, kg/m³; above zero
     * @param deadTime   dead time of the injector, s; not below zero
     * @param injections openings of one injector a second, 1/s; not below zero
     * @return share; above 1 is too small
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double duty(double massFlow, int injectors, double flow, double density, double deadTime,
            double injections) {
        Argument.notBelowZero("fuel needed", massFlow);
        Argument.atLeast("number of injectors", injectors, 1);
        Argument.aboveZero("flow of one injector at the pressure really across it", flow);
        Argument.aboveZero("density of the fuel", density);
        Argument.notBelowZero("dead time of the injector", deadTime);
        Argument.notBelowZero("openings of one injector a second", injections);
        return massFlow / (injectors * flow * density) + deadTime * injections;
    }

    /**
     * Openings a second of an injector that opens once in two turns.
     *
     * <p>speed / 4π.
     *
     * @param speed crank speed, rad/s; not below zero
     * @return openings a second
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "four-stroke"
     */
    public static double injectionsASecond(double speed) {
        Argument.notBelowZero("crank speed", speed);
        return speed / (4 * Math.PI);
    }

    /**
     * Error of fuelling from a base pressure that is off.
     *
     * <p>√(pressure / sheet pressure) − 1.
     *
     * @param pressure      pressure across the injector, Pa; not below zero
     * @param sheetPressure pressure across it on the sheet, Pa; above zero
     * @return share; minus is lean
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Bernoulli"
     */
    public static double errorFromPressure(double pressure, double sheetPressure) {
        Argument.notBelowZero("pressure across the injector", pressure);
        Argument.aboveZero("pressure across it on the sheet", sheetPressure);
        return Math.sqrt(pressure / sheetPressure) - 1;
    }

    /**
     * Mixture of the cylinder whose injector gives least.
     *
     * <p>lambda · mean flow / least flow.
     *
     * @param lambda mixture of all cylinders; above zero
     * @param flows  flows of the injectors, m³/s; at least one
     * @return lambda
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double leanest(double lambda, double... flows) {
        Argument.aboveZero("mixture of all cylinders", lambda);
        Argument.some("flows of the injectors", flows);
        if (Sets.least(flows) <= 0) {
            throw new IllegalArgumentException("Each of the flows of the injectors must be above zero.");
        }
        return lambda * Sets.mean(flows) / Sets.least(flows);
    }

    /**
     * Flow of a pump over what a power needs.
     *
     * <p>flow · density / fuel mass flow.
     *
     * @param flow     flow of the pump at pressure and voltage, m³/s; not below zero
     * @param density  density of the fuel, kg/m³; above zero
     * @param massFlow fuel needed, kg/s; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double pumpOverDemand(double flow, double density, double massFlow) {
        Argument.notBelowZero("flow of the pump at pressure and voltage", flow);
        Argument.aboveZero("density of the fuel", density);
        Argument.aboveZero("fuel needed", massFlow);
        return flow * density / massFlow;
    }

    /**
     * Pressure across an injector.
     *
     * <p>rail pressure − manifold pressure.
     *
     * @param rail     fuel pressure, gauge, Pa
     * @param manifold manifold pressure, gauge, Pa
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double acrossInjector(double rail, double manifold) {
        Argument.finite("fuel pressure", rail);
        Argument.finite("manifold pressure", manifold);
        return rail - manifold;
    }

    /**
     * Mass share of a part of a blend from its volume share.
     *
     * <p>share · density / (share · density + (1 − share) · other density).
     *
     * @param volumeShare  volume share; from 0 to 1
     * @param density      density of the part, kg/m³; above zero
     * @param otherDensity density of the rest, kg/m³; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double massShare(double volumeShare, double density, double otherDensity) {
        Argument.share("volume share", volumeShare);
        Argument.aboveZero("density of the part", density);
        Argument.aboveZero("density of the rest", otherDensity);
        return volumeShare * density / (volumeShare * density + (1 - volumeShare) * otherDensity);
    }

    /**
     * Air to fuel ratio of a blend.
     *
     * <p>mass share · ratio + (1 − mass share) · other ratio.
     *
     * @param massShare  mass share; from 0 to 1
     * @param ratio      air to fuel ratio of that part; above zero
     * @param otherRatio air to fuel ratio of the rest; above zero
     * @return mass ratio
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double airOfBlend(double massShare, double ratio, double otherRatio) {
        Argument.share("mass share", massShare);
        Argument.aboveZero("air to fuel ratio of that part", ratio);
        Argument.aboveZero("air to fuel ratio of the rest", otherRatio);
        return massShare * ratio + (1 - massShare) * otherRatio;
    }

    /**
     * How much more of a blend must be injected than of the base fuel for the same mixture.
     *
     * <p>(base ratio · base density) / (blend ratio · blend density) − 1.
     *
     * @param baseRatio    air to fuel ratio of the base fuel; above zero
     * @param baseDensity  density of the base fuel, kg/m³; above zero
     * @param blendRatio   air to fuel ratio of the blend; above zero
     * @param blendDensity density of the blend, kg/m³; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double extraVolume(double baseRatio, double baseDensity, double blendRatio, double blendDensity) {
        Argument.aboveZero("air to fuel ratio of the base fuel", baseRatio);
        Argument.aboveZero("density of the base fuel", baseDensity);
        Argument.aboveZero("air to fuel ratio of the blend", blendRatio);
        Argument.aboveZero("density of the blend", blendDensity);
        return baseRatio * baseDensity / (blendRatio * blendDensity) - 1;
    }

    /**
     * Mixture when a blend is injected with the settings of another fuel.
     *
     * <p>lambda · (1 + extra fuel).
     *
     * @param lambda mixture meant; above zero
     * @param extra  extra fuel that the blend needs
     * @return lambda
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double lambdaUncorrected(double lambda, double extra) {
        Argument.aboveZero("mixture meant", lambda);
        Argument.finite("extra fuel that the blend needs", extra);
        if (extra <= -1) {
            throw new IllegalArgumentException("The extra fuel that the blend needs must be above -100 %.");
        }
        return lambda * (1 + extra);
    }

    /**
     * Force that pushes a hose or blank off.
     *
     * <p>pressure · π/4 · diameter².
     *
     * @param pressure pressure, Pa; not below zero
     * @param diameter diameter that the pressure acts on, m; above zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double pushOff(double pressure, double diameter) {
        Argument.notBelowZero("pressure", pressure);
        Argument.aboveZero("diameter that the pressure acts on", diameter);
        return pressure * Math.PI / 4 * diameter * diameter;
    }

    /**
     * Force by which a float shuts its valve against the feed.
     *
     * <p>closing force − pressure · π/4 · seat².
     *
     * @param closing  closing force of the float at the valve, N; not below zero
     * @param pressure feed pressure, Pa; not below zero
     * @param seat     diameter of the float valve's seat, m; above zero
     * @return force, N; minus floods
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double floatMargin(double closing, double pressure, double seat) {
        Argument.notBelowZero("closing force of the float at the valve", closing);
        Argument.notBelowZero("feed pressure", pressure);
        Argument.aboveZero("diameter of the float valve's seat", seat);
        return closing - pushOff(pressure, seat);
    }

    /**
     * Volume that a flow gives in a time.
     *
     * <p>flow · time.
     *
     * @param flow flow, m³/s; not below zero
     * @param time time, s; not below zero
     * @return volume, m³
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double volumeIn(double flow, double time) {
        Argument.notBelowZero("flow", flow);
        Argument.notBelowZero("time", time);
        return flow * time;
    }

    /**
     * Lowest share of the base pressure at which the mixture stays inside its limit.
     *
     * <p>(target lambda / limit lambda)².
     *
     * @param target target lambda; above zero
     * @param limit  limit lambda; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Bernoulli"
     */
    public static double safePressureShare(double target, double limit) {
        Argument.aboveZero("target lambda", target);
        Argument.aboveZero("limit lambda", limit);
        if (limit < target) {
            throw new IllegalArgumentException("The limit lambda must not be richer than the target.");
        }
        return target / limit * (target / limit);
    }
}
