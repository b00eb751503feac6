package leadlamp.calc;

/**
 * Round figures of the trade that a sum takes where nobody gives its own. Each says how far it may be wrong: half of the width
 * within which it usually lies.
 *
 * @param usual usual figure, SI
 * @param half  half of the width within which it lies, SI
 * @param basis where it stands
 */
public record Rounds(double usual, double half, String basis) {
    private static final String TRADE = "common practice, no source";

    /** Discharge coefficient of a short drilled hole. */
    public static final Rounds DRILLED_HOLE = new Rounds(0.7, 0.1, TRADE);
    /** Volumetric share of a good oil pump, hot. */
    public static final Rounds PUMP_FILLING = new Rounds(0.8, 0.1, TRADE);
    /** Density of hot engine oil, kg/m³. */
    public static final Rounds HOT_OIL_DENSITY = new Rounds(830, 30, TRADE);
    /** Efficiency of a compressor. */
    public static final Rounds COMPRESSOR = new Rounds(0.70, 0.08, TRADE);
    /** Ratio of specific heats of air. */
    public static final Rounds AIR_GAMMA = new Rounds(1.4, 0, "definition of a diatomic gas");
    /** Specific fuel use of a petrol engine without boost, kg/J. */
    public static final Rounds FUEL_USE = new Rounds(310 / 3.6e9, 25 / 3.6e9, TRADE);
    /** Specific fuel use of a petrol engine with boost, kg/J. */
    public static final Rounds FUEL_USE_BOOSTED = new Rounds(370 / 3.6e9, 30 / 3.6e9, TRADE);
    /** Density of petrol, kg/m³. */
    public static final Rounds PETROL_DENSITY = new Rounds(745, 25, "from memory: EN 228, 720 to 775");
    /** Density of ethanol, kg/m³. */
    public static final Rounds ETHANOL_DENSITY = new Rounds(789, 2, "from memory: handbooks");
    /** Air to fuel ratio of petrol. */
    public static final Rounds PETROL_AIR = new Rounds(14.7, 0.1, "from memory: handbooks");
    /** Air to fuel ratio of ethanol. */
    public static final Rounds ETHANOL_AIR = new Rounds(9.0, 0.05, "from memory: handbooks");
    /** Filling of a cylinder at full throttle, share of its volume. */
    public static final Rounds FILLING = new Rounds(0.9, 0.08, TRADE);
    /** Filling of a cylinder at fast idle. */
    public static final Rounds IDLE_FILLING = new Rounds(0.35, 0.1, "common practice, no source: for the estimate only");
    /** Blow-by of a sound bedded engine, share of the air taken in. */
    public static final Rounds BLOW_BY = new Rounds(0.01, 0.005, "from memory: engine handbooks");
    /** Growth of coolant from cold to hot, share of its volume: between water and half glycol. */
    public static final Rounds COOLANT_GROWTH = new Rounds(0.046, 0.005, "published for water, 4.15 %; from memory for half glycol, 5 %");
    /** Resistivity of copper wire, ohm·m. */
    public static final Rounds COPPER = new Rounds(1.75e-8, 0.03e-8, "from memory: electrical handbooks");
    /** Sound speed in burnt gas, m/s. */
    public static final Rounds BURNT_GAS_SOUND = new Rounds(950, 50, "from memory: knock literature");
    /** Friction of organic clutch facing at its low side. */
    public static final Rounds CLUTCH_FACING_LOW = new Rounds(0.25, 0, "from memory: clutch handbooks, usual 0.30 and low 0.25");
    /** Friction between flywheel and crank flange. */
    public static final Rounds FLYWHEEL_FLANGE = new Rounds(0.12, 0.03, TRADE);
    /** Room wanted to drop a ring gear over its seat, m. */
    public static final Rounds DROP_ON_ROOM = new Rounds(0.0002, 0.0001, TRADE);
    /** Short-term limit of carbon monoxide, share of the air. */
    public static final Rounds MONOXIDE_LIMIT = new Rounds(100e-6, 0, "from memory: EH40, fifteen minute limit; your own country's counts");
    /** Carbon monoxide in rich cold exhaust, share. */
    public static final Rounds MONOXIDE_IN_EXHAUST = new Rounds(0.03, 0.015, "common practice, no source: no catalyst; may be more");
    /** Exponent of compression of air in a cylinder that is cranked. */
    public static final Rounds CRANKING_EXPONENT = new Rounds(1.28, 0.05, TRADE);
    /** Depth that moisture-cured sealant cures in a second, m/s. */
    public static final Rounds SEALANT_CURE = new Rounds(0.0025 / 86400, 0.0005 / 86400, TRADE);
    /** Power of a hard worked bearing's oil flow that leaks: the cube law of a narrow gap. */
    public static final Rounds GAP_CUBE = new Rounds(3, 0, "definition of laminar flow in a narrow gap");
}
