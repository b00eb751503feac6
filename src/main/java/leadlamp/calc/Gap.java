package leadlamp.calc;

/** The room between piston and head, and the gasket that gives it. */
public final class Gap {
    private Gap() {
    }

    /**
     * Gap at the squish band.
     *
     * <p>gasket − piston height + recess.
     *
     * @param gasket       compressed thickness of the gasket, m; not below zero
     * @param pistonHeight height of the piston over the face, minus is below, m
     * @param recess       recess of the head at the squish band, m
     * @return gap, m; minus touches
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double pistonToHead(double gasket, double pistonHeight, double recess) {
        Argument.notBelowZero("compressed thickness of the gasket", gasket);
        Argument.finite("height of the piston over the face", pistonHeight);
        Argument.finite("recess of the head at the squish band", recess);
        return gasket - pistonHeight + recess;
    }

    /**
     * Gap that is left when the rod stretches and the piston rocks.
     *
     * <p>gap − stretch − rock.
     *
     * @param gap     gap at rest, m
     * @param stretch stretch of the rod, m; not below zero
     * @param rock    rock of the piston, m; not below zero
     * @return gap, m; minus touches
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double atSpeed(double gap, double stretch, double rock) {
        Argument.finite("gap at rest", gap);
        Argument.notBelowZero("stretch of the rod", stretch);
        Argument.notBelowZero("rock of the piston", rock);
        return gap - stretch - rock;
    }

    /**
     * Compressed thickness that gives back what machining took off both faces.
     *
     * <p>standard + block cut + head cut.
     *
     * @param standard standard compressed thickness, m; above zero
     * @param blockCut cut off the block face, m; not below zero
     * @param headCut  cut off the head face, m; not below zero
     * @return thickness, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double gasketNeeded(double standard, double blockCut, double headCut) {
        Argument.aboveZero("standard compressed thickness", standard);
        Argument.notBelowZero("cut off the block face", blockCut);
        Argument.notBelowZero("cut off the head face", headCut);
        return standard + blockCut + headCut;
    }

    /**
     * Compressed thickness that gives a wanted gap.
     *
     * <p>gap + piston height − recess.
     *
     * @param gap          gap wanted, m; above zero
     * @param pistonHeight height of the piston over the face, minus is below, m
     * @param recess       recess of the head at the squish band, m
     * @return thickness, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double gasketForGap(double gap, double pistonHeight, double recess) {
        Argument.aboveZero("gap wanted", gap);
        Argument.finite("height of the piston over the face", pistonHeight);
        Argument.finite("recess of the head at the squish band", recess);
        return gap + pistonHeight - recess;
    }

    /**
     * Compressed thickness that gives a wanted compression ratio.
     *
     * <p>(swept / (ratio − 1) − chamber − deck − crown) / (π/4 · gasket bore²).
     *
     * @param ratio        compression ratio wanted; above 1
     * @param bore         bore, m; above zero
     * @param stroke       stroke, m; above zero
     * @param chamber      volume of the combustion chamber, m³; above zero
     * @param gasketBore   bore of the gasket, m; above zero
     * @param pistonHeight height of the piston over the face, minus is below, m
     * @param crown        volume of the piston's crown, dish plus and dome minus, m³
     * @return thickness, m; minus cannot be had
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double gasketForRatio(double ratio, double bore, double stroke, double chamber, double gasketBore,
            double pistonHeight, double crown) {
        Argument.aboveOne("compression ratio wanted", ratio);
        Argument.aboveZero("bore", bore);
        Argument.aboveZero("stroke", stroke);
        Argument.aboveZero("volume of the combustion chamber", chamber);
        Argument.aboveZero("bore of the gasket", gasketBore);
        Argument.finite("height of the piston over the face", pistonHeight);
        Argument.finite("volume of the piston's crown", crown);
        return (Compression.clearanceFor(Compression.swept(bore, stroke), ratio) - chamber
                + Compression.disc(bore, pistonHeight) - crown) / (Math.PI / 4 * gasketBore * gasketBore);
    }

    /**
     * How far the camshaft came down towards the crankshaft.
     *
     * <p>head cut + block cut + standard gasket − fitted gasket.
     *
     * @param headCut        cut off the head face, m; not below zero
     * @param blockCut       cut off the block face, m; not below zero
     * @param standardGasket standard compressed thickness, m; not below zero
     * @param fittedGasket   fitted compressed thickness, m; not below zero
     * @return drop, m; minus went up
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double camDrop(double headCut, double blockCut, double standardGasket, double fittedGasket) {
        Argument.notBelowZero("cut off the head face", headCut);
        Argument.notBelowZero("cut off the block face", blockCut);
        Argument.notBelowZero("standard compressed thickness", standardGasket);
        Argument.notBelowZero("fitted compressed thickness", fittedGasket);
        return headCut + blockCut + standardGasket - fittedGasket;
    }

    /**
     * What all cuts of its life took off a head or block.
     *
     * <p>standard − read.
     *
     * @param standard standard height, m; above zero
     * @param read     height as read, m; above zero
     * @return lost, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double heightLost(double standard, double read) {
        Argument.aboveZero("standard height", standard);
        Argument.aboveZero("height as read", read);
        return standard - read;
    }

    /**
     * Gap between two faces at the worst place.
     *
     * <p>one + other.
     *
     * @param one   flatness of one face, m; not below zero
     * @param other flatness of the other face, m; not below zero
     * @return gap, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double together(double one, double other) {
        Argument.notBelowZero("flatness of one face", one);
        Argument.notBelowZero("flatness of the other face", other);
        return one + other;
    }

    /**
     * Radial room between the gasket's fire ring and the edge of the bore.
     *
     * <p>(gasket bore − bore − float) / 2 − chamfer.
     *
     * <p>The float is the whole movement from side to side; half of it counts.
     *
     * @param gasketBore    bore of the gasket, m; above zero
     * @param bore          bore, m; above zero
     * @param floatOnDowels float of the gasket on its dowels, m; not below zero
     * @param chamfer       width of the bore's chamfer, m; not below zero
     * @return room, m; minus hangs into the bore
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double fireRingRoom(double gasketBore, double bore, double floatOnDowels, double chamfer) {
        Argument.aboveZero("bore of the gasket", gasketBore);
        Argument.aboveZero("bore", bore);
        Argument.notBelowZero("float of the gasket on its dowels", floatOnDowels);
        Argument.notBelowZero("width of the bore's chamfer", chamfer);
        return (gasketBore - bore - floatOnDowels) / 2 - chamfer;
    }

    /**
     * Room over a dowel when the joint is closed.
     *
     * <p>gasket + hole depth − protrusion.
     *
     * @param gasket     compressed thickness of the gasket, m; not below zero
     * @param holeDepth  depth of the dowel's hole, m; not below zero
     * @param protrusion height of the dowel over its face, m; not below zero
     * @return room, m; minus holds the joint open
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double dowelRoom(double gasket, double holeDepth, double protrusion) {
        Argument.notBelowZero("compressed thickness of the gasket", gasket);
        Argument.notBelowZero("depth of the dowel's hole", holeDepth);
        Argument.notBelowZero("height of the dowel over its face", protrusion);
        return gasket + holeDepth - protrusion;
    }

    /**
     * Height of an injector's or plug's tip over the head face after a cut.
     *
     * <p>before + cut − change of washer thickness.
     *
     * @param before       height of the tip before, m
     * @param cut          cut off the head face, m; not below zero
     * @param washerChange change of the washer's thickness, thicker is plus, m
     * @return height, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double tipAfterCut(double before, double cut, double washerChange) {
        Argument.finite("height of the tip before", before);
        Argument.notBelowZero("cut off the head face", cut);
        Argument.finite("change of the washer's thickness", washerChange);
        return before + cut - washerChange;
    }

    /**
     * Room between a tip that stands out of the head and the piston's bowl.
     *
     * <p>gasket + bowl − tip − piston height.
     *
     * @param gasket       compressed thickness of the gasket, m; not below zero
     * @param bowl         depth of the bowl under the tip, m; not below zero
     * @param tip          height of the tip over the head face, m
     * @param pistonHeight height of the piston over the face, minus is below, m
     * @return room, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double tipToCrown(double gasket, double bowl, double tip, double pistonHeight) {
        Argument.notBelowZero("compressed thickness of the gasket", gasket);
        Argument.notBelowZero("depth of the bowl under the tip", bowl);
        Argument.finite("height of the tip over the head face", tip);
        Argument.finite("height of the piston over the face", pistonHeight);
        return gasket + bowl - tip - pistonHeight;
    }

    /**
     * How far ports slide along a manifold face as the head comes down.
     *
     * <p>drop · cos(angle between bore line and face).
     *
     * @param drop  drop of the head, m
     * @param angle angle between the bore line and the manifold face, rad; from 0, below a right angle
     * @return slide, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double portSlide(double drop, double angle) {
        Argument.finite("drop of the head", drop);
        Argument.belowRightAngle("angle between the bore line and the manifold face", angle);
        return drop * Math.cos(angle);
    }

    /**
     * How far a manifold face closes on its flange as the head comes down.
     *
     * <p>drop · sin(angle between bore line and face).
     *
     * @param drop  drop of the head, m
     * @param angle angle between the bore line and the manifold face, rad; from 0, below a right angle
     * @return closing, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double flangeClosing(double drop, double angle) {
        Argument.finite("drop of the head", drop);
        Argument.belowRightAngle("angle between the bore line and the manifold face", angle);
        return drop * Math.sin(angle);
    }

    /**
     * Depth of a groove, recess or counterbore after a cut of its face.
     *
     * <p>before − cut.
     *
     * @param before depth before, m; above zero
     * @param cut    cut off the face, m; not below zero
     * @return depth, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double depthLeft(double before, double cut) {
        Argument.aboveZero("depth before", before);
        Argument.notBelowZero("cut off the face", cut);
        return before - cut;
    }

    /**
     * Step of a cover against a face that was cut.
     *
     * <p>cut of the face − cut of the cover + step before.
     *
     * @param faceCut  cut off the face, m; not below zero
     * @param coverCut cut off the cover, m; not below zero
     * @param before   step before, m
     * @return step, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double jointStep(double faceCut, double coverCut, double before) {
        Argument.notBelowZero("cut off the face", faceCut);
        Argument.notBelowZero("cut off the cover", coverCut);
        Argument.finite("step before", before);
        return faceCut - coverCut + before;
    }

    /**
     * Room read with a trial gasket, brought to the parts as they are now.
     *
     * <p>reading + (fitted gasket − trial gasket) − cuts since.
     *
     * @param reading      room as read, m
     * @param trialGasket  compressed thickness of the trial gasket, m; above zero
     * @param fittedGasket compressed thickness of the gasket to be fitted, m; above zero
     * @param cutsSince    cuts off the faces since the reading, m; not below zero
     * @return room, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double trialCorrected(double reading, double trialGasket, double fittedGasket, double cutsSince) {
        Argument.finite("room as read", reading);
        Argument.aboveZero("compressed thickness of the trial gasket", trialGasket);
        Argument.aboveZero("compressed thickness of the gasket to be fitted", fittedGasket);
        Argument.notBelowZero("cuts off the faces since the reading", cutsSince);
        return reading + (fittedGasket - trialGasket) - cutsSince;
    }
}
