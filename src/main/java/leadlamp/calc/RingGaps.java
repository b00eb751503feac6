package leadlamp.calc;

/** Least end gap of a first ring in an iron bore for each unit of bore, by what is asked of the engine. Common practice, no source. */
public final class RingGaps {
    /** On the road, without boost: four thousandths of an inch for each inch of bore. */
    public static final double ROAD = 0.004;
    /** In competition, without boost: the middle of 0.0045 to 0.0050. */
    public static final double COMPETITION = 0.00475;
    /** With boost. */
    public static final double BOOSTED = 0.006;
    /** How far makers lie to either side, as a share, 95 %. */
    public static final double DOUBT = 0.10;

    private RingGaps() {
    }
}
