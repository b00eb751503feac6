package leadlamp.calc;

/** Ages, distances and hours, and what is used up by them. */
public final class Ageing {
    private Ageing() {
    }

    /**
     * Age of a part at a later day.
     *
     * <p>age + time till then.
     *
     * @param age  age now, s; not below zero
     * @param till time till then, s; not below zero
     * @return age, s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double at(double age, double till) {
        Argument.notBelowZero("age now", age);
        Argument.notBelowZero("time till then", till);
        return age + till;
    }

    /**
     * Share of a life that is used: the greater of years and distance.
     *
     * <p>max(age / years, distance / interval).
     *
     * @param age      age, s; not below zero
     * @param years    years allowed, s; above zero
     * @param distance distance run, m; not below zero
     * @param interval distance allowed, m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double lifeUsed(double age, double years, double distance, double interval) {
        Argument.notBelowZero("age", age);
        Argument.aboveZero("years allowed", years);
        Argument.notBelowZero("distance run", distance);
        Argument.aboveZero("distance allowed", interval);
        return Math.max(age / years, distance / interval);
    }

    /**
     * Share of a life that is used, by age, distance or hours alone.
     *
     * <p>used / allowed.
     *
     * @param used    age, distance or hours; not below zero
     * @param allowed age, distance or hours allowed; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double lifeShare(double used, double allowed) {
        Argument.notBelowZero("age", used);
        Argument.aboveZero("age", allowed);
        return used / allowed;
    }

    /**
     * Wear for each distance run.
     *
     * <p>wear / run · distance.
     *
     * @param wear     wear, m
     * @param run      distance run, m; above zero
     * @param distance distance that it is told for, m; above zero
     * @return wear, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double perDistance(double wear, double run, double distance) {
        Argument.finite("wear", wear);
        Argument.aboveZero("distance run", run);
        Argument.aboveZero("distance that it is told for", distance);
        return wear / run * distance;
    }

    /**
     * Life left at a rate.
     *
     * <p>left / rate.
     *
     * @param left what is left; not below zero
     * @param rate rate at which it goes; above zero
     * @return life, in the unit of the rate
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double untilNothing(double left, double rate) {
        Argument.notBelowZero("what is left", left);
        Argument.aboveZero("rate at which it goes", rate);
        return left / rate;
    }
}
