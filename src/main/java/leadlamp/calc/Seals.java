package leadlamp.calc;

/** Seals, sealing rings, sealant and gaskets. */
public final class Seals {
    private Seals() {
    }

    /**
     * Squeeze of a sealing ring.
     *
     * <p>(section − depth − gap) / section.
     *
     * @param section section of the ring, m; above zero
     * @param depth   depth of its seat, m; above zero
     * @param gap     gap of the joint, m; not below zero
     * @return share; minus does not touch
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double squeeze(double section, double depth, double gap) {
        Argument.aboveZero("section of the ring", section);
        Argument.aboveZero("depth of its seat", depth);
        Argument.notBelowZero("gap of the joint", gap);
        return (section - depth - gap) / section;
    }

    /**
     * Shape that a sealing ring has lost for good.
     *
     * <p>(new − used) / (new − depth).
     *
     * @param asNew section when new, m; above zero
     * @param used  section as used, m; above zero
     * @param depth depth of its seat, m; not below zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double set(double asNew, double used, double depth) {
        Argument.aboveZero("section when new", asNew);
        Argument.aboveZero("section as used", used);
        Argument.notBelowZero("depth of its seat", depth);
        if (asNew <= depth) {
            throw new IllegalArgumentException("The section when new must be above the depth of its seat.");
        }
        return (asNew - used) / (asNew - depth);
    }

    /**
     * Stretch of a sealing ring on its seat.
     *
     * <p>seat / inside diameter − 1.
     *
     * @param seat   diameter of the seat, m; above zero
     * @param inside inside diameter of the ring, m; above zero
     * @return share; minus is loose
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double stretch(double seat, double inside) {
        Argument.aboveZero("diameter of the seat", seat);
        Argument.aboveZero("inside diameter of the ring", inside);
        return seat / inside - 1;
    }

    /**
     * Share of a groove that its ring fills.
     *
     * <p>π/4 · section² / (depth · width).
     *
     * @param section section of the ring, m; above zero
     * @param depth   depth of the groove, m; above zero
     * @param width   width of the groove, m; above zero
     * @return share; above 1 does not fit
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double fill(double section, double depth, double width) {
        Argument.aboveZero("section of the ring", section);
        Argument.aboveZero("depth of the groove", depth);
        Argument.aboveZero("width of the groove", width);
        return Math.PI / 4 * section * section / (depth * width);
    }

    /**
     * Fill of a groove with the rubber grown by heat.
     *
     * <p>fill · (1 + expansion · rise)².
     *
     * @param fill      fill cold; not below zero
     * @param expansion expansion of the rubber along a line, 1/K; not below zero
     * @param rise      rise of temperature, K; not below zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "growth of a section"
     */
    public static double fillHot(double fill, double expansion, double rise) {
        Argument.notBelowZero("fill cold", fill);
        Argument.notBelowZero("expansion of the rubber along a line", expansion);
        Argument.notBelowZero("rise of temperature", rise);
        double grown = 1 + expansion * rise;
        return fill * grown * grown;
    }

    /**
     * Sealant squeezed inward for each length of joint.
     *
     * <p>(π/4 · bead² − width · gap) / 2, at least 0.
     *
     * @param bead  diameter of the bead, m; above zero
     * @param width width of the joint face, m; above zero
     * @param gap   gap of the joint, m; not below zero
     * @return area, m²
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "volume kept"
     */
    public static double inward(double bead, double width, double gap) {
        Argument.aboveZero("diameter of the bead", bead);
        Argument.aboveZero("width of the joint face", width);
        Argument.notBelowZero("gap of the joint", gap);
        return Math.max(0, (Math.PI / 4 * bead * bead - width * gap) / 2);
    }

    /**
     * Time in which sealant cures from both edges of a joint to its middle.
     *
     * <p>width / 2 / depth in a time.
     *
     * @param width width of the joint face, m; above zero
     * @param rate  depth that cures in a time, m/s; above zero
     * @return time, s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double cureTime(double width, double rate) {
        Argument.aboveZero("width of the joint face", width);
        Argument.aboveZero("depth that cures in a time", rate);
        return width / 2 / rate;
    }

    /**
     * Clearance of a bearing across whose joint a film lies.
     *
     * <p>dry clearance + film.
     *
     * @param dry  clearance dry, m
     * @param film film of sealant in the joint, m; not below zero
     * @return clearance across the joint, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double clearanceWithFilm(double dry, double film) {
        Argument.finite("clearance dry", dry);
        Argument.notBelowZero("film of sealant in the joint", film);
        return dry + film;
    }

    /**
     * Float of a rotor or shaft that a gasket sets.
     *
     * <p>cover depth + gasket − stand-out.
     *
     * @param coverDepth depth of the cover, m
     * @param gasket     compressed thickness of the gasket, m; not below zero
     * @param standOut   stand-out of the rotor or shaft, m; above zero
     * @return float, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double floatWithGasket(double coverDepth, double gasket, double standOut) {
        Argument.finite("depth of the cover", coverDepth);
        Argument.notBelowZero("compressed thickness of the gasket", gasket);
        Argument.aboveZero("stand-out of the rotor or shaft", standOut);
        return coverDepth + gasket - standOut;
    }

    /**
     * Open share of a passage behind a gasket's hole that stands in its middle.
     *
     * <p>(hole / passage)², at most 1.
     *
     * @param hole    hole of the gasket, m; not below zero
     * @param passage diameter of the passage, m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double openShare(double hole, double passage) {
        Argument.notBelowZero("hole of the gasket", hole);
        Argument.aboveZero("diameter of the passage", passage);
        return Math.min(1, hole / passage * (hole / passage));
    }

    /**
     * Grip of a seal's lip on a grooved land.
     *
     * <p>free interference − 2 · groove.
     *
     * @param interference interference of the free lip, m
     * @param groove       depth of the groove, m; not below zero
     * @return grip on diameter, m; minus hangs free
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double lipGrip(double interference, double groove) {
        Argument.finite("interference of the free lip", interference);
        Argument.notBelowZero("depth of the groove", groove);
        return interference - 2 * groove;
    }

    /**
     * Speed of a land under its lip.
     *
     * <p>π · diameter · turns a second.
     *
     * @param diameter diameter of the land, m; above zero
     * @param speed    speed of the shaft, rad/s; not below zero
     * @return speed, m/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double lipSpeed(double diameter, double speed) {
        Argument.aboveZero("diameter of the land", diameter);
        Argument.notBelowZero("speed of the shaft", speed);
        return diameter / 2 * speed;
    }

    /**
     * Lead angle of a land from the string test.
     *
     * <p>arctan(advance / (π · diameter · turns)).
     *
     * @param advance  advance of the string, m
     * @param diameter diameter of the land, m; above zero
     * @param turns    turns of the shaft; above zero
     * @return angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double leadAngle(double advance, double diameter, double turns) {
        Argument.finite("advance of the string", advance);
        Argument.aboveZero("diameter of the land", diameter);
        Argument.aboveZero("turns of the shaft", turns);
        return Math.atan(advance / (Math.PI * diameter * turns));
    }

    /**
     * How far a lip must follow its land.
     *
     * <p>swing of the bore / 2 + runout of the land.
     *
     * @param swing  swing of the dial gauge in the seal's bore, m; not below zero
     * @param runout runout of the land, m; not below zero
     * @return distance, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double lipFollow(double swing, double runout) {
        Argument.notBelowZero("swing of the dial gauge in the seal's bore", swing);
        Argument.notBelowZero("runout of the land", runout);
        return swing / 2 + runout;
    }

    /**
     * Thickness that a washer has lost.
     *
     * <p>1 − now / new.
     *
     * @param asNew thickness when new, m; above zero
     * @param now   thickness now, m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double lostShare(double asNew, double now) {
        Argument.aboveZero("thickness when new", asNew);
        Argument.aboveZero("thickness now", now);
        return 1 - now / asNew;
    }
}
