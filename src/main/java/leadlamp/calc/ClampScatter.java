package leadlamp.calc;

/** How far the clamp force of single bolts scatters, by how they were tightened: a share to either side. */
public enum ClampScatter {
    BY_FEEL(0.35, "Machinery's Handbook, accuracy of bolt preload application methods"),
    TORQUE_DRY(0.35, "NASA NSTS 08307, 3.4, torque wrench, unlubricated bolt"),
    TORQUE_PLATED(0.30, "NASA NSTS 08307, 3.4, torque wrench, cadmium-plated bolt"),
    TORQUE_OILED(0.25, "NASA NSTS 08307, 3.4, torque wrench, lubricated bolt"),
    ANGLE(0.15, "Machinery's Handbook, accuracy of bolt preload application methods, turn of the nut"),
    YIELD(0.08, "Machinery's Handbook, accuracy of bolt preload application methods, yield-point sensing"),
    STRETCH(0.05, "NASA NSTS 08307, 3.4, bolt elongation measurement");

    private final double share;
    private final String source;

    ClampScatter(double share, String source) {
        this.share = share;
        this.source = source;
    }

    /** Scatter to either side, as a share of the mean. */
    public double share() {
        return share;
    }

    /** Where the figure stands. */
    public String source() {
        return source;
    }
}
