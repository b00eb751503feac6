package leadlamp.calc;

/**
 * Figures of the metals that engines are made of. Each is a round figure of its family: an alloy of its own may lie a tenth
 * to either side, so whoever uses one gives it that doubt.
 */
public final class Metals {
    /** Expansion of plain steel, 1/K. From memory: materials handbooks, plain carbon steel, 20 to 100 °C. */
    public static final double STEEL_EXPANSION = 11.5e-6;
    /** Expansion of grey cast iron, 1/K. From memory: Machinery's Handbook, table of linear expansion. */
    public static final double CAST_IRON_EXPANSION = 10.8e-6;
    /** Expansion of cast aluminium for heads and blocks, 1/K. Common practice, no source: between 20 and 23. */
    public static final double ALUMINIUM_EXPANSION = 22e-6;
    /** Expansion of a cast piston alloy with about 12 percent silicon, 1/K. From memory: piston makers' handbooks, 20 to 200 °C. */
    public static final double PISTON_ALLOY_EXPANSION = 20.5e-6;
    /** Expansion of bronze, 1/K. A published chart of expansion coefficients, row bronze. */
    public static final double BRONZE_EXPANSION = 18e-6;
    /** Expansion of austenitic stainless steel, 1/K. A published chart of expansion coefficients, row austenitic steel. */
    public static final double STAINLESS_EXPANSION = 17e-6;
    /** Expansion of titanium, 1/K. A published chart of expansion coefficients, row titanium. */
    public static final double TITANIUM_EXPANSION = 8.6e-6;
    /** Expansion of copper, 1/K. A published chart of expansion coefficients, row copper. */
    public static final double COPPER_EXPANSION = 17e-6;
    /** Expansion of magnesium alloy, 1/K. From memory: materials handbooks. */
    public static final double MAGNESIUM_EXPANSION = 26e-6;
    /** How far an alloy may lie from its family's figure, as a share, 95 %. Common practice, no source. */
    public static final double EXPANSION_DOUBT = 0.10;

    /** Modulus of bolt steel, Pa. Common practice, no source: handbook value for alloy steel. */
    public static final double STEEL_MODULUS = 205e9;
    /** Modulus of aluminium alloy, Pa. From memory: materials handbooks. */
    public static final double ALUMINIUM_MODULUS = 72e9;
    /** Modulus of titanium alloy, Pa. From memory: materials handbooks. */
    public static final double TITANIUM_MODULUS = 114e9;
    /** Density of steel, kg/m³. From memory: materials handbooks. */
    public static final double STEEL_DENSITY = 7850;
    /** Density of cast iron, kg/m³. From memory: materials handbooks. */
    public static final double CAST_IRON_DENSITY = 7200;
    /** Density of aluminium alloy, kg/m³. From memory: materials handbooks. */
    public static final double ALUMINIUM_DENSITY = 2700;

    private Metals() {
    }
}
