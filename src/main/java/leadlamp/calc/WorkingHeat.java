package leadlamp.calc;

/**
 * Round temperatures of working parts, over a workshop of 20 °C, used only to compare parts under one assumption: what they
 * give is no prediction of a real engine. Common practice, no source.
 */
public final class WorkingHeat {
    /** Warmth of a workshop, K: 20 °C, the reference temperature of ISO 1. */
    public static final double WORKSHOP = 293.15;
    /** Rise of a first ring in an engine without boost, K. */
    public static final double RING_RISE = 200;
    /** Rise of a first ring in a boosted engine, K. */
    public static final double BOOSTED_RING_RISE = 280;
    /** Rise of a piston's skirt, K. */
    public static final double SKIRT_RISE = 120;
    /** Rise of a cylinder's wall at the top of ring travel, K. */
    public static final double TOP_WALL_RISE = 110;
    /** Rise of a head round its seats and guides, K. */
    public static final double HEAD_RISE = 150;
    /** Rise of an exhaust manifold's flange, K. */
    public static final double FLANGE_RISE = 500;
    /** Rise of a head beside the exhaust flange, K. */
    public static final double HEAD_AT_FLANGE_RISE = 100;
    /** Rise of a block and its bolts at working heat, K. */
    public static final double BLOCK_RISE = 75;
    /** How far each may be wrong, as a share, 95 %. */
    public static final double DOUBT = 0.25;

    private WorkingHeat() {
    }
}
