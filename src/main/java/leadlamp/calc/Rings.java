package leadlamp.calc;

/** Piston rings: gaps cold and hot, side clearance, wear seen from the gap. */
public final class Rings {
    private Rings() {
    }

    /**
     * Least gap that a duty asks for.
     *
     * <p>factor · bore.
     *
     * @param factor gap factor of the duty; above zero
     * @param bore   bore, m; above zero
     * @return gap, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double leastGap(double factor, double bore) {
        Argument.aboveZero("gap factor of the duty", factor);
        Argument.aboveZero("bore", bore);
        return factor * bore;
    }

    /**
     * How much a ring's gap grows with its bore.
     *
     * <p>π · growth of the bore.
     *
     * @param boreGrowth growth of the bore, m
     * @return growth of the gap, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "length of a circle"
     */
    public static double gapGrowth(double boreGrowth) {
        Argument.finite("growth of the bore", boreGrowth);
        return Math.PI * boreGrowth;
    }

    /**
     * Gap of a ring where the bore is another than where it was read.
     *
     * <p>gap − π · (bore read − bore there).
     *
     * @param gap       gap as read, m; not below zero
     * @param boreRead  bore where the gap was read, m; above zero
     * @param boreThere bore at the other place, m; above zero
     * @return gap, m; minus is closed
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "length of a circle"
     */
    public static double gapAt(double gap, double boreRead, double boreThere) {
        Argument.notBelowZero("gap as read", gap);
        Argument.aboveZero("bore where the gap was read", boreRead);
        Argument.aboveZero("bore at the other place", boreThere);
        return gap - Math.PI * (boreRead - boreThere);
    }

    /**
     * Gap beyond what the wear of the bore explains.
     *
     * <p>gap − new gap − π · (bore − standard bore).
     *
     * @param gap          gap, m; not below zero
     * @param newGap       gap of a new ring in a standard bore, m; not below zero
     * @param bore         bore, m; above zero
     * @param standardBore standard bore, m; above zero
     * @return excess, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "length of a circle"
     */
    public static double excessGap(double gap, double newGap, double bore, double standardBore) {
        Argument.notBelowZero("gap", gap);
        Argument.notBelowZero("gap of a new ring in a standard bore", newGap);
        Argument.aboveZero("bore", bore);
        Argument.aboveZero("standard bore", standardBore);
        return gap - newGap - Math.PI * (bore - standardBore);
    }

    /**
     * Wear of a ring's face that an excess gap shows.
     *
     * <p>excess / 2π.
     *
     * @param excess excess gap, m; not below zero
     * @return wear of the face, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "length of a circle"
     */
    public static double faceWear(double excess) {
        Argument.notBelowZero("excess gap", excess);
        return excess / (2 * Math.PI);
    }

    /**
     * Gap left when ring and wall are hot.
     *
     * <p>gap − π · bore · (ring expansion · rise of ring − wall expansion · rise of wall).
     *
     * @param gap           gap cold, m; not below zero
     * @param bore          bore, m; above zero
     * @param ringExpansion expansion of the ring's metal, 1/K; not below zero
     * @param ringRise      rise of the ring's temperature, K
     * @param wallExpansion expansion of the wall's metal, 1/K; not below zero
     * @param wallRise      rise of the wall's temperature, K
     * @return gap, m; minus is closed
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "linear expansion"
     */
    public static double gapHot(double gap, double bore, double ringExpansion, double ringRise, double wallExpansion,
            double wallRise) {
        Argument.notBelowZero("gap cold", gap);
        Argument.aboveZero("bore", bore);
        Argument.notBelowZero("expansion of the ring's metal", ringExpansion);
        Argument.finite("rise of the ring's temperature", ringRise);
        Argument.notBelowZero("expansion of the wall's metal", wallExpansion);
        Argument.finite("rise of the wall's temperature", wallRise);
        return gap - Math.PI * bore * (ringExpansion * ringRise - wallExpansion * wallRise);
    }

    /**
     * Rise of the ring's temperature at which its ends would meet.
     *
     * <p>(gap / (π · bore) + wall expansion · rise of wall) / ring expansion.
     *
     * <p>Shown beside a finding, never a verdict by itself.
     *
     * @param gap           gap cold, m; not below zero
     * @param bore          bore, m; above zero
     * @param ringExpansion expansion of the ring's metal, 1/K; above zero
     * @param wallExpansion expansion of the wall's metal, 1/K; not below zero
     * @param wallRise      rise of the wall's temperature, K
     * @return rise, K
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "linear expansion"
     */
    public static double riseAtWhichEndsMeet(double gap, double bore, double ringExpansion, double wallExpansion,
            double wallRise) {
        Argument.notBelowZero("gap cold", gap);
        Argument.aboveZero("bore", bore);
        Argument.aboveZero("expansion of the ring's metal", ringExpansion);
        Argument.notBelowZero("expansion of the wall's metal", wallExpansion);
        Argument.finite("rise of the wall's temperature", wallRise);
        return (gap / (Math.PI * bore) + wallExpansion * wallRise) / ringExpansion;
    }

    /**
     * Smallest angle between neighbouring gaps seen from above.
     *
     * <p>least of the differences round the circle, one ring to the next below it.
     *
     * @param angles clock places of the gaps from the top ring down, rad; at least two
     * @return angle, rad; 0 to π
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double gapSeparation(double... angles) {
        Argument.two("clock places of the gaps from the top ring down", angles);
        double least = Math.PI;
        for (int i = 1; i < angles.length; i++) {
            least = Math.min(least, Math.abs(Math.IEEEremainder(angles[i] - angles[i - 1], 2 * Math.PI)));
        }
        return least;
    }

    /**
     * Room behind a ring at the bottom of its groove.
     *
     * <p>groove depth − radial thickness.
     *
     * @param grooveDepth     depth of the groove, m; above zero
     * @param radialThickness radial thickness of the ring, m; above zero
     * @return room, m; minus stands out
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double grooveDepthBehind(double grooveDepth, double radialThickness) {
        Argument.aboveZero("depth of the groove", grooveDepth);
        Argument.aboveZero("radial thickness of the ring", radialThickness);
        return grooveDepth - radialThickness;
    }
}
