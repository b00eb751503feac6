package leadlamp.calc;

/** Coils, plugs and firing order. */
public final class Spark {
    private Spark() {
    }

    /**
     * Time between the sparks of one coil.
     *
     * <p>2π / (speed · sparks in a turn).
     *
     * @param speed  crank speed, rad/s; above zero
     * @param sparks sparks of one coil in a crank turn; above zero
     * @return time, s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double timeBetween(double speed, double sparks) {
        Argument.aboveZero("crank speed", speed);
        Argument.aboveZero("sparks of one coil in a crank turn", sparks);
        return 2 * Math.PI / (speed * sparks);
    }

    /**
     * Share of the time between sparks that a coil charges.
     *
     * <p>charge time / time between sparks.
     *
     * @param chargeTime charge time of the coil, s; not below zero
     * @param between    time between sparks, s; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double chargeShare(double chargeTime, double between) {
        Argument.notBelowZero("charge time of the coil", chargeTime);
        Argument.aboveZero("time between sparks", between);
        return chargeTime / between;
    }

    /**
     * Time that a coil needs to reach its current.
     *
     * <p>−inductance / resistance · ln(1 − current · resistance / volts).
     *
     * @param inductance inductance of the coil, H; above zero
     * @param resistance resistance of the coil, ohm; above zero
     * @param volts      volts at the coil, V; above zero
     * @param current    current wanted, A; not below zero
     * @return time, s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "coil and resistance in line"
     */
    public static double chargeTime(double inductance, double resistance, double volts, double current) {
        Argument.aboveZero("inductance of the coil", inductance);
        Argument.aboveZero("resistance of the coil", resistance);
        Argument.aboveZero("volts at the coil", volts);
        Argument.notBelowZero("current wanted", current);
        if (current * resistance >= volts) {
            throw new IllegalArgumentException("The volts at the coil cannot drive that current through its "
                    + "resistance.");
        }
        return -inductance / resistance * Math.log(1 - current * resistance / volts);
    }

    /**
     * Voltage that jumps a gap in air, even field.
     *
     * <p>24.22 · X + 6.08 · √X kilovolts, X = 293 · pressure · gap / (760 · temperature), pressure in torr, gap in
     * cm.
     *
     * <p>The sharp edges of a plug need less: the high side.
     *
     * @param pressure    absolute pressure at the spark, Pa; above zero
     * @param gap         gap, m; above zero
     * @param temperature temperature at the spark, K; above absolute zero
     * @return voltage, V
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Electrical Breakdown of Gases, a handbook (from memory)"
     */
    public static double jumpVoltage(double pressure, double gap, double temperature) {
        Argument.aboveZero("absolute pressure at the spark", pressure);
        Argument.aboveZero("gap", gap);
        Argument.aboveZero("temperature at the spark", temperature);
        double x = 293 * (pressure * 760 / 101325) * (gap * 100) / (760 * temperature);
        return 1000 * (24.22 * x + 6.08 * Math.sqrt(x));
    }

    /**
     * Power for each litre over the standard engine's.
     *
     * <p>(power / swept) / (standard power / standard swept).
     *
     * @param power         power, W; above zero
     * @param swept         swept volume, m³; above zero
     * @param standardPower standard power, W; above zero
     * @param standardSwept standard swept volume, m³; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double powerPerLitre(double power, double swept, double standardPower, double standardSwept) {
        Argument.aboveZero("power", power);
        Argument.aboveZero("swept volume", swept);
        Argument.aboveZero("standard power", standardPower);
        Argument.aboveZero("standard swept volume", standardSwept);
        return power / swept / (standardPower / standardSwept);
    }

    /**
     * Volts lost in a wire and its return.
     *
     * <p>current · 2 · length · resistivity / section.
     *
     * @param current     current, A; not below zero
     * @param length      length of the wire, m; above zero
     * @param section     section of the wire, m²; above zero
     * @param resistivity resistivity of the metal, ohm·m; above zero
     * @return voltage, V
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Ohm's law"
     */
    public static double voltDrop(double current, double length, double section, double resistivity) {
        Argument.notBelowZero("current", current);
        Argument.aboveZero("length of the wire", length);
        Argument.aboveZero("section of the wire", section);
        Argument.aboveZero("resistivity of the metal", resistivity);
        return current * 2 * length * resistivity / section;
    }

    /**
     * Volts lost in an earth strap.
     *
     * <p>current · resistance.
     *
     * @param current    current, A; not below zero
     * @param resistance resistance of the strap, ohm; not below zero
     * @return voltage, V
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Ohm's law"
     */
    public static double earthDrop(double current, double resistance) {
        Argument.notBelowZero("current", current);
        Argument.notBelowZero("resistance of the strap", resistance);
        return current * resistance;
    }

    /**
     * Beats a second of the firing of all cylinders, even or not.
     *
     * <p>cylinders · speed / 4π.
     *
     * @param cylinders number of cylinders; at least 1
     * @param speed     crank speed, rad/s; not below zero
     * @return frequency, Hz
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "four-stroke"
     */
    public static double firing(int cylinders, double speed) {
        Argument.atLeast("number of cylinders", cylinders, 1);
        Argument.notBelowZero("crank speed", speed);
        return cylinders * speed / (4 * Math.PI);
    }

    /**
     * Crank angle between cylinders that fire one after the other, evenly.
     *
     * <p>4π / cylinders.
     *
     * @param cylinders number of cylinders; at least 1
     * @return crank angle, rad
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "four-stroke"
     */
    public static double betweenNeighbours(int cylinders) {
        Argument.atLeast("number of cylinders", cylinders, 1);
        return 4 * Math.PI / cylinders;
    }
}
