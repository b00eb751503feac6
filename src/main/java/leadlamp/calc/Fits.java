package leadlamp.calc;

/** One part in another: clearances, interferences and what they do when the parts are warm. */
public final class Fits {
    private Fits() {
    }

    /**
     * Running clearance of a shaft, pin, stem or follower in its hole.
     *
     * <p>hole − shaft.
     *
     * @param hole  inside size of the hole, m; above zero
     * @param shaft outside size of the shaft, m; above zero
     * @return clearance, m; minus is an interference
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double clearance(double hole, double shaft) {
        Argument.aboveZero("inside size of the hole", hole);
        Argument.aboveZero("outside size of the shaft", shaft);
        return hole - shaft;
    }

    /**
     * Press fit of a seal, plug, insert or ring.
     *
     * <p>outside − hole.
     *
     * @param outside outside size of the pressed part, m; above zero
     * @param hole    inside size of its hole, m; above zero
     * @return interference, m; minus is loose
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double interference(double outside, double hole) {
        Argument.aboveZero("outside size of the pressed part", outside);
        Argument.aboveZero("inside size of its hole", hole);
        return outside - hole;
    }

    /**
     * Press fit as a share of the size.
     *
     * <p>(outside − hole) / hole.
     *
     * @param outside outside size of the pressed part, m; above zero
     * @param hole    inside size of its hole, m; above zero
     * @return share of the hole's size; minus is loose
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double interferenceShare(double outside, double hole) {
        Argument.aboveZero("outside size of the pressed part", outside);
        Argument.aboveZero("inside size of its hole", hole);
        return (outside - hole) / hole;
    }

    /**
     * Oil clearance foretold from the sizes of housing, shells and journal.
     *
     * <p>housing − upper wall − lower wall − journal.
     *
     * @param housing   housing bore, m; above zero
     * @param upperWall wall of the upper shell, m; above zero
     * @param lowerWall wall of the lower shell, m; above zero
     * @param journal   journal diameter, m; above zero
     * @return clearance on diameter, m; minus is an interference
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double bearingClearance(double housing, double upperWall, double lowerWall, double journal) {
        Argument.aboveZero("housing bore", housing);
        Argument.aboveZero("wall of the upper shell", upperWall);
        Argument.aboveZero("wall of the lower shell", lowerWall);
        Argument.aboveZero("journal diameter", journal);
        return housing - upperWall - lowerWall - journal;
    }

    /**
     * Oil that leaks from a gap against what leaked when it was new.
     *
     * <p>(gap / gap new)³, laminar flow in a narrow gap.
     *
     * @param gap    gap now, m; not below zero
     * @param gapNew gap when new, m; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "laminar flow between near walls"
     */
    public static double leakRatio(double gap, double gapNew) {
        Argument.notBelowZero("gap now", gap);
        Argument.aboveZero("gap when new", gapNew);
        return Math.pow(gap / gapNew, 3);
    }

    /**
     * Least clearance that printed limits of two sizes allow.
     *
     * <p>least hole − greatest shaft.
     *
     * @param leastHole     least size of the hole, m; above zero
     * @param greatestShaft greatest size of the shaft, m; above zero
     * @return clearance, m; minus is an interference
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double leastClearance(double leastHole, double greatestShaft) {
        Argument.aboveZero("least size of the hole", leastHole);
        Argument.aboveZero("greatest size of the shaft", greatestShaft);
        return leastHole - greatestShaft;
    }

    /**
     * Rise of temperature at which a ring drops over its seat.
     *
     * <p>(interference + room) / (expansion · diameter).
     *
     * @param interference interference of the ring, m; not below zero
     * @param room         room wanted while it is dropped on, m; not below zero
     * @param expansion    expansion of the ring's metal, 1/K; above zero
     * @param diameter     diameter of the seat, m; above zero
     * @return rise above the temperature of the seat, K
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see ""linear expansion""
     */
    public static double heatToDropOn(double interference, double room, double expansion, double diameter) {
        Argument.notBelowZero("interference of the ring", interference);
        Argument.notBelowZero("room wanted while it is dropped on", room);
        Argument.aboveZero("expansion of the ring's metal", expansion);
        Argument.aboveZero("diameter of the seat", diameter);
        return (interference + room) / (expansion * diameter);
    }

    /**
     * Interference of an insert or guide with the casting hot.
     *
     * <p>cold − (expansion of casting − expansion of part) · diameter · rise.
     *
     * <p>The part itself runs hotter than the casting round it, which helps: this is the low side.
     *
     * @param cold             interference when cold, m
     * @param castingExpansion expansion of the casting's metal, 1/K; not below zero
     * @param partExpansion    expansion of the pressed part's metal, 1/K; not below zero
     * @param diameter         diameter of the hole, m; above zero
     * @param rise             rise of temperature, K
     * @return interference when hot, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "linear expansion"
     */
    public static double interferenceHot(double cold, double castingExpansion, double partExpansion, double diameter,
            double rise) {
        Argument.finite("interference when cold", cold);
        Argument.notBelowZero("expansion of the casting's metal", castingExpansion);
        Argument.notBelowZero("expansion of the pressed part's metal", partExpansion);
        Argument.aboveZero("diameter of the hole", diameter);
        Argument.finite("rise of temperature", rise);
        return cold - (castingExpansion - partExpansion) * diameter * rise;
    }

    /**
     * Room left by parts that stand in a line, such as a pin between clips or a key in two slots.
     *
     * <p>space − sum of the parts.
     *
     * @param space space between the ends, m; above zero
     * @param parts lengths of the parts, m; at least one
     * @return room, m; minus is too long
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double gapOverParts(double space, double... parts) {
        Argument.aboveZero("space between the ends", space);
        Argument.some("lengths of the parts", parts);
        double room = space;
        for (double part : parts) {
            room -= part;
        }
        return room;
    }

    /**
     * How far a part may move to either side in a hole that should place it.
     *
     * <p>(hole − shank) / 2.
     *
     * @param hole  inside size of the hole, m; above zero
     * @param shank size of the shank, m; above zero
     * @return distance to either side, m; minus is a press fit
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double shift(double hole, double shank) {
        Argument.aboveZero("inside size of the hole", hole);
        Argument.aboveZero("size of the shank", shank);
        return (hole - shank) / 2;
    }

    /**
     * Angle of a part that leans.
     *
     * <p>arctan(out of square / length).
     *
     * @param outOfSquare out of square, m; not below zero
     * @param length      length over which it was read, m; above zero
     * @return angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double lean(double outOfSquare, double length) {
        Argument.notBelowZero("out of square", outOfSquare);
        Argument.aboveZero("length over which it was read", length);
        return Math.atan(outOfSquare / length);
    }

    /**
     * A bend, twist, flatness or runout scaled to another span or radius.
     *
     * <p>reading · wanted / span.
     *
     * @param reading reading, m
     * @param span    span of the reading, m; above zero
     * @param wanted  span wanted, m; above zero
     * @return reading over the span wanted, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "similar triangles"
     */
    public static double scaled(double reading, double span, double wanted) {
        Argument.finite("reading", reading);
        Argument.aboveZero("span of the reading", span);
        Argument.aboveZero("span wanted", wanted);
        return reading * wanted / span;
    }

    /**
     * Clearance of a stem in its guide, from how far it rocks.
     *
     * <p>rock · guide length / (2 · distance from the middle of the guide to the gauge).
     *
     * @param rock          rock at the gauge, m; not below zero
     * @param guideLength   length of the guide, m; above zero
     * @param gaugeDistance distance from the middle of the guide to the gauge, m; above zero
     * @return clearance on diameter, m; about
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double rockClearance(double rock, double guideLength, double gaugeDistance) {
        Argument.notBelowZero("rock at the gauge", rock);
        Argument.aboveZero("length of the guide", guideLength);
        Argument.aboveZero("distance from the middle of the guide to the gauge", gaugeDistance);
        return rock * guideLength / (2 * gaugeDistance);
    }

    /**
     * Movement that a leaning dial gauge shows too large.
     *
     * <p>reading · cos(lean).
     *
     * @param reading reading of the dial gauge, m
     * @param lean    lean of the dial gauge's stem, rad; from 0, below a right angle
     * @return movement, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double trueMovement(double reading, double lean) {
        Argument.finite("reading of the dial gauge", reading);
        Argument.belowRightAngle("lean of the dial gauge's stem", lean);
        return reading * Math.cos(lean);
    }

    /**
     * Lean of a dial gauge that would explain a difference.
     *
     * <p>arccos(true / reading).
     *
     * @param trueMovement movement that is thought true, m; above zero
     * @param reading      reading of the dial gauge, m; above zero
     * @return lean, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double leanThatExplains(double trueMovement, double reading) {
        Argument.aboveZero("movement that is thought true", trueMovement);
        Argument.aboveZero("reading of the dial gauge", reading);
        if (trueMovement > reading) {
            throw new IllegalArgumentException("A dial gauge that leans reads too much, never too little.");
        }
        return Math.acos(trueMovement / reading);
    }

    /**
     * Radius of a crowned face, from the gap under a straight edge laid on its middle.
     *
     * <p>half width² / (2 · gap).
     *
     * @param halfWidth half the width of the face, m; above zero
     * @param gap       gap at the edge, m; above zero
     * @return radius, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "circle of small height"
     */
    public static double crown(double halfWidth, double gap) {
        Argument.aboveZero("half the width of the face", halfWidth);
        Argument.aboveZero("gap at the edge", gap);
        return halfWidth * halfWidth / (2 * gap);
    }
}
