package leadlamp.calc;

/** Bolt, hole and thread along their length: what holds, what is left, what strips. */
public final class Engagement {
    private Engagement() {
    }

    /**
     * How far a bolt reaches below the joint's face.
     *
     * <p>length − everything it passes through.
     *
     * @param length length of the bolt under its head, m; above zero
     * @param passed clamped height, gasket, washers and the like, m; at least one
     * @return reach, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double reach(double length, double... passed) {
        Argument.aboveZero("length of the bolt under its head", length);
        Argument.some("clamped height", passed);
        return Fits.gapOverParts(length, passed);
    }

    /**
     * Thread that holds.
     *
     * <p>reach − counterbore, not more than the hole's thread.
     *
     * @param reach       reach of the bolt below the face, m
     * @param counterbore counterbore of the hole, m; not below zero
     * @param threadDepth depth of the thread from the face, m; above zero
     * @return length, m; at least 0
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double engaged(double reach, double counterbore, double threadDepth) {
        Argument.finite("reach of the bolt below the face", reach);
        Argument.notBelowZero("counterbore of the hole", counterbore);
        Argument.aboveZero("depth of the thread from the face", threadDepth);
        return Math.max(0, Math.min(reach, threadDepth) - counterbore);
    }

    /**
     * Thread that holds, from the turns between first bite and seated.
     *
     * <p>turns · pitch.
     *
     * @param turns turns from first bite to seated; not below zero
     * @param pitch pitch, m; above zero
     * @return length, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "one turn moves the nut one pitch"
     */
    public static double engagedByTurns(double turns, double pitch) {
        Argument.notBelowZero("turns from first bite to seated", turns);
        Argument.aboveZero("pitch", pitch);
        return turns * pitch;
    }

    /**
     * Length of thread in thread diameters.
     *
     * <p>length / diameter.
     *
     * @param length   length of thread, m; not below zero
     * @param diameter thread diameter, m; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double inDiameters(double length, double diameter) {
        Argument.notBelowZero("length of thread", length);
        Argument.aboveZero("thread diameter", diameter);
        return length / diameter;
    }

    /**
     * Room left under a bolt's tip.
     *
     * <p>thread depth − reach.
     *
     * @param threadDepth depth of the threaded hole, m; above zero
     * @param reach       reach of the bolt below the face, m
     * @return room, m; minus bottoms before it clamps
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double bottomRoom(double threadDepth, double reach) {
        Argument.aboveZero("depth of the threaded hole", threadDepth);
        Argument.finite("reach of the bolt below the face", reach);
        return threadDepth - reach;
    }

    /**
     * Room left under a bolt's tip once faces are cut and gasket and washers have changed.
     *
     * <p>before − head cut − block cut − fall of the gasket − washers left out.
     *
     * @param before     room before, m
     * @param headCut    cut off the head face, m; not below zero
     * @param blockCut   cut off the block face, m; not below zero
     * @param gasketFall fall of the gasket's thickness, m
     * @param washersOut thickness of washers left out, m; not below zero
     * @return room, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double roomAfterWork(double before, double headCut, double blockCut, double gasketFall,
            double washersOut) {
        Argument.finite("room before", before);
        Argument.notBelowZero("cut off the head face", headCut);
        Argument.notBelowZero("cut off the block face", blockCut);
        Argument.finite("fall of the gasket's thickness", gasketFall);
        Argument.notBelowZero("thickness of washers left out", washersOut);
        return before - headCut - blockCut - gasketFall - washersOut;
    }

    /**
     * Room before a bolt's shank meets the thread.
     *
     * <p>clamped height + gasket + washers + counterbore − shank.
     *
     * @param clamped     clamped height, m; above zero
     * @param gasket      compressed thickness of the gasket, m; not below zero
     * @param washers     thickness of the washers, m; not below zero
     * @param counterbore counterbore of the hole, m; not below zero
     * @param shank       length of the shank, m; not below zero
     * @return room, m; minus jams
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double shankMargin(double clamped, double gasket, double washers, double counterbore, double shank) {
        Argument.aboveZero("clamped height", clamped);
        Argument.notBelowZero("compressed thickness of the gasket", gasket);
        Argument.notBelowZero("thickness of the washers", washers);
        Argument.notBelowZero("counterbore of the hole", counterbore);
        Argument.notBelowZero("length of the shank", shank);
        return clamped + gasket + washers + counterbore - shank;
    }

    /**
     * Metal of a hole's thread that shears when it strips.
     *
     * <p>0.875 · π · diameter · engaged length.
     *
     * @param diameter thread diameter, m; above zero
     * @param engaged  thread that holds, m; not below zero
     * @return area, m²; about
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double shearArea(double diameter, double engaged) {
        Argument.aboveZero("thread diameter", diameter);
        Argument.notBelowZero("thread that holds", engaged);
        return 0.875 * Math.PI * diameter * engaged;
    }

    /**
     * Force that strips a hole's thread.
     *
     * <p>shear strength · shear area.
     *
     * @param shearStrength shear strength of the casting, Pa; above zero
     * @param diameter      thread diameter, m; above zero
     * @param engaged       thread that holds, m; not below zero
     * @return force, N; about
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double pullOut(double shearStrength, double diameter, double engaged) {
        Argument.aboveZero("shear strength of the casting", shearStrength);
        Argument.aboveZero("thread diameter", diameter);
        Argument.notBelowZero("thread that holds", engaged);
        return shearStrength * shearArea(diameter, engaged);
    }

    /**
     * Thread that shows beyond a nut, in pitches.
     *
     * <p>(protrusion − clamped height − gasket − washers − nut) / pitch.
     *
     * @param protrusion protrusion of the stud, m; above zero
     * @param clamped    clamped height, m; not below zero
     * @param gasket     compressed thickness of the gasket, m; not below zero
     * @param washers    thickness of the washers, m; not below zero
     * @param nut        height of the nut, m; above zero
     * @param pitch      pitch, m; above zero
     * @return number of pitches; minus does not fill the nut
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double beyondNut(double protrusion, double clamped, double gasket, double washers, double nut,
            double pitch) {
        Argument.aboveZero("protrusion of the stud", protrusion);
        Argument.notBelowZero("clamped height", clamped);
        Argument.notBelowZero("compressed thickness of the gasket", gasket);
        Argument.notBelowZero("thickness of the washers", washers);
        Argument.aboveZero("height of the nut", nut);
        Argument.aboveZero("pitch", pitch);
        return (protrusion - clamped - gasket - washers - nut) / pitch;
    }

    /**
     * How far two unlike pitches run apart over the thread that holds.
     *
     * <p>engaged · |pitch − other| / pitch.
     *
     * @param engaged thread that holds, m; not below zero
     * @param pitch   pitch, m; above zero
     * @param other   pitch of the other part, m; above zero
     * @return mismatch, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double pitchMismatch(double engaged, double pitch, double other) {
        Argument.notBelowZero("thread that holds", engaged);
        Argument.aboveZero("pitch", pitch);
        Argument.aboveZero("pitch of the other part", other);
        return engaged * Math.abs(pitch - other) / pitch;
    }

    /**
     * Turns before the flanks of two unlike pitches jam.
     *
     * <p>play / |pitch − other|.
     *
     * @param play  play of the thread along its axis, m; not below zero
     * @param pitch pitch, m; above zero
     * @param other pitch of the other part, m; above zero
     * @return turns
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double turnsToJam(double play, double pitch, double other) {
        Argument.notBelowZero("play of the thread along its axis", play);
        Argument.aboveZero("pitch", pitch);
        Argument.aboveZero("pitch of the other part", other);
        if (pitch == other) {
            throw new IllegalArgumentException("Two pitches that are alike never jam.");
        }
        return play / Math.abs(pitch - other);
    }

    /**
     * Growth of a thread's pitch diameter under a coating.
     *
     * <p>4 · film, flanks at 60 degrees.
     *
     * @param film thickness of the film, m; not below zero
     * @return growth, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double coatedPitchDiameter(double film) {
        Argument.notBelowZero("thickness of the film", film);
        return 4 * film;
    }

    /**
     * Bore once it is coated.
     *
     * <p>bore − 2 · film.
     *
     * @param bore bare bore, m; above zero
     * @param film thickness of the film, m; not below zero
     * @return bore, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double coatedBore(double bore, double film) {
        Argument.aboveZero("bare bore", bore);
        Argument.notBelowZero("thickness of the film", film);
        return bore - 2 * film;
    }

    /**
     * Room under a bolt's tip less the liquid that stands in the hole.
     *
     * <p>room − liquid.
     *
     * @param room   room under the bolt's tip, m
     * @param liquid depth of liquid in the hole, m; not below zero
     * @return room, m; minus drives on liquid
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double liquidMargin(double room, double liquid) {
        Argument.finite("room under the bolt's tip", room);
        Argument.notBelowZero("depth of liquid in the hole", liquid);
        return room - liquid;
    }
}
