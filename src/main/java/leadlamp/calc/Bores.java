package leadlamp.calc;

/** Cylinder bores: shape, wear, what is left of the wall. */
public final class Bores {
    /** From here on a bore or journal is of another size and not worn: less than half of the smallest common step, m; common practice, no source. */
    public static final double ANOTHER_SIZE = 0.1e-3;

    private Bores() {
    }

    /**
     * Bore over the standard bore.
     *
     * <p>bore − standard.
     *
     * @param bore     bore, m; above zero
     * @param standard standard bore, m; above zero
     * @return oversize, m; minus is smaller
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double oversize(double bore, double standard) {
        Argument.aboveZero("bore", bore);
        Argument.aboveZero("standard bore", standard);
        return bore - standard;
    }

    /**
     * What is left of a cylinder's wall after boring.
     *
     * <p>wall − (after − before) / 2.
     *
     * @param wall   wall before boring, m; above zero
     * @param before bore before boring, m; above zero
     * @param after  bore after boring, m; above zero
     * @return wall, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double wallLeft(double wall, double before, double after) {
        Argument.aboveZero("wall before boring", wall);
        Argument.aboveZero("bore before boring", before);
        Argument.aboveZero("bore after boring", after);
        if (after < before) {
            throw new IllegalArgumentException("The bore after boring must not be smaller than before.");
        }
        return wall - (after - before) / 2;
    }

    /**
     * How far the core of the casting was off, from the wall on opposite sides.
     *
     * <p>|one − other| / 2.
     *
     * @param one   wall on one side, m; not below zero
     * @param other wall on the other side, m; not below zero
     * @return offset, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double coreLean(double one, double other) {
        Argument.notBelowZero("wall on one side", one);
        Argument.notBelowZero("wall on the other side", other);
        return Math.abs(one - other) / 2;
    }

    /**
     * Bore once the deepest pit is bored or honed away.
     *
     * <p>bore + 2 · pit.
     *
     * @param bore bore, m; above zero
     * @param pit  depth of the deepest pit, m; not below zero
     * @return bore, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double afterCleanUp(double bore, double pit) {
        Argument.aboveZero("bore", bore);
        Argument.notBelowZero("depth of the deepest pit", pit);
        return bore + 2 * pit;
    }

    /**
     * Wear at the top of the ring travel over wear at the bottom.
     *
     * <p>(top − unworn) / (bottom − unworn).
     *
     * @param top    bore at the top of ring travel, m; above zero
     * @param bottom bore at the bottom of ring travel, m; above zero
     * @param unworn unworn bore, m; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double wearRatio(double top, double bottom, double unworn) {
        Argument.aboveZero("bore at the top of ring travel", top);
        Argument.aboveZero("bore at the bottom of ring travel", bottom);
        Argument.aboveZero("unworn bore", unworn);
        if (bottom <= unworn) {
            throw new IllegalArgumentException("The bore at the bottom of ring travel must be larger than the "
                    + "unworn bore.");
        }
        return (top - unworn) / (bottom - unworn);
    }

    /**
     * Included angle of the hone lines.
     *
     * <p>2 · arctan(2 · stroke · strokes / (bore · hone speed / 2)).
     *
     * @param stroke    length of the hone's stroke, m; above zero
     * @param strokes   there-and-back strokes a second, 1/s; above zero
     * @param bore      bore, m; above zero
     * @param honeSpeed speed of the hone, rad/s; above zero
     * @return included angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double hatchAngle(double stroke, double strokes, double bore, double honeSpeed) {
        Argument.aboveZero("length of the hone's stroke", stroke);
        Argument.aboveZero("there-and-back strokes a second", strokes);
        Argument.aboveZero("bore", bore);
        Argument.aboveZero("speed of the hone", honeSpeed);
        return 2 * Math.atan(2 * stroke * strokes / (bore * honeSpeed / 2));
    }

    /**
     * How far a liner stands over the block face, from its flange and the ledge it stands on.
     *
     * <p>flange + shims − counterbore.
     *
     * @param flange      thickness of the liner's flange, m; above zero
     * @param shims       thickness of the shims under it, m; not below zero
     * @param counterbore depth of the counterbore, m; above zero
     * @return height over the face, m; minus is below
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double linerFlange(double flange, double shims, double counterbore) {
        Argument.aboveZero("thickness of the liner's flange", flange);
        Argument.notBelowZero("thickness of the shims under it", shims);
        Argument.aboveZero("depth of the counterbore", counterbore);
        return flange + shims - counterbore;
    }

    /**
     * Depth of a pit as a share of the wall.
     *
     * <p>pit / wall.
     *
     * @param pit  depth of the pit, m; not below zero
     * @param wall wall, m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double pitShare(double pit, double wall) {
        Argument.notBelowZero("depth of the pit", pit);
        Argument.aboveZero("wall", wall);
        return pit / wall;
    }
}
