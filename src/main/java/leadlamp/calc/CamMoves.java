package leadlamp.calc;

/** Figures of the trade for a camshaft that was moved after its valves' room was read. */
public final class CamMoves {
    /** Room lost for each crank degree towards the piston near the overlap, m/rad: the middle of 0.10 to 0.20 mm. Common practice, no source. */
    public static final double SLOPE = 0.00015 * 180 / Math.PI;
    /** Half of the width within which that lies, m/rad. */
    public static final double SLOPE_HALF = 0.00005 * 180 / Math.PI;

    private CamMoves() {
    }
}
