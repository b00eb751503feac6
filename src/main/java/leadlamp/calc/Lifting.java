package leadlamp.calc;

/** Stand, crane and room. */
public final class Lifting {
    private Lifting() {
    }

    /**
     * Weight of a mass.
     *
     * <p>mass · g.
     *
     * @param mass mass, kg; not below zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "standard gravity"
     */
    public static double weight(double mass) {
        Argument.notBelowZero("mass", mass);
        return mass * Oil.STANDARD_GRAVITY;
    }

    /**
     * Moment of an engine on its stand.
     *
     * <p>weight · overhang.
     *
     * @param mass     mass of the engine, kg; not below zero
     * @param overhang overhang of its middle, m
     * @return moment, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double standMoment(double mass, double overhang) {
        Argument.notBelowZero("mass of the engine", mass);
        Argument.finite("overhang of its middle", overhang);
        return weight(mass) * overhang;
    }

    /**
     * Tension of each of two sling legs.
     *
     * <p>weight / 2 / cos(half the angle between them).
     *
     * @param mass    mass of the engine, kg; not below zero
     * @param between angle between the legs, rad; not below zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "statics"
     */
    public static double legTension(double mass, double between) {
        Argument.notBelowZero("mass of the engine", mass);
        Argument.notBelowZero("angle between the legs", between);
        if (between >= Math.PI) {
            throw new IllegalArgumentException("The angle between the legs must be below 180 degrees.");
        }
        return weight(mass) / 2 / Math.cos(between / 2);
    }

    /**
     * Load as a share of a rating.
     *
     * <p>load / rating.
     *
     * @param load   load; not below zero
     * @param rating rating; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double shareOfRating(double load, double rating) {
        Argument.notBelowZero("load", load);
        Argument.aboveZero("rating", rating);
        return load / rating;
    }
}
