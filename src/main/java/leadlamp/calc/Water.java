package leadlamp.calc;

/** Cooling: flow, growth and pressure. Boiling and freezing are in {@link Coolant}. */
public final class Water {
    private Water() {
    }

    /**
     * Share of concentrate in a system.
     *
     * <p>concentrate · its strength / system volume.
     *
     * @param concentrate concentrate poured, m³; not below zero
     * @param strength    strength of what was poured, all of it for neat; from 0 to 1
     * @param system      volume of the system, m³; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double share(double concentrate, double strength, double system) {
        Argument.notBelowZero("concentrate poured", concentrate);
        Argument.share("strength of what was poured", strength);
        Argument.aboveZero("volume of the system", system);
        if (concentrate > system) {
            throw new IllegalArgumentException("More concentrate was poured than the system holds.");
        }
        return concentrate * strength / system;
    }

    /**
     * Concentrate still to be poured in exchange for mix drawn off.
     *
     * <p>system · (wanted − share) / (1 − share).
     *
     * @param system volume of the system, m³; above zero
     * @param share  share of concentrate now; from 0, below 1
     * @param wanted share wanted; from 0 to 1
     * @return volume, m³; minus is too strong already
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double concentrateWanted(double system, double share, double wanted) {
        Argument.aboveZero("volume of the system", system);
        Argument.belowOne("share of concentrate now", share);
        Argument.share("share wanted", wanted);
        return system * (wanted - share) / (1 - share);
    }

    /**
     * Air left in a system once it was filled.
     *
     * <p>capacity + changes − poured − water left.
     *
     * @param capacity  volume of the system, m³; above zero
     * @param changes   what other parts add to it, m³
     * @param poured    volume poured, m³; not below zero
     * @param waterLeft water left in it before, m³; not below zero
     * @return volume, m³
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double airLeft(double capacity, double changes, double poured, double waterLeft) {
        Argument.aboveZero("volume of the system", capacity);
        Argument.finite("what other parts add to it", changes);
        Argument.notBelowZero("volume poured", poured);
        Argument.notBelowZero("water left in it before", waterLeft);
        return capacity + changes - poured - waterLeft;
    }

    /**
     * Growth of the coolant from cold to hot.
     *
     * <p>system · share grown.
     *
     * @param system     volume of the system, m³; above zero
     * @param shareGrown share that it grows; from 0 to 1
     * @return volume, m³
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double growth(double system, double shareGrown) {
        Argument.aboveZero("volume of the system", system);
        Argument.share("share that it grows", shareGrown);
        return system * shareGrown;
    }

    /**
     * Air space left when the coolant is hot.
     *
     * <p>space − growth.
     *
     * @param space  air space cold, m³; not below zero
     * @param growth growth of the coolant, m³; not below zero
     * @return volume, m³; minus is pushed out
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double airHot(double space, double growth) {
        Argument.notBelowZero("air space cold", space);
        Argument.notBelowZero("growth of the coolant", growth);
        return space - growth;
    }

    /**
     * Absolute pressure of trapped air once the coolant has grown.
     *
     * <p>pressure · space / (space − growth) · hot / cold.
     *
     * @param pressure absolute pressure cold, Pa; above zero
     * @param space    air space cold, m³; above zero
     * @param growth   growth of the coolant, m³; not below zero
     * @param cold     temperature cold, K; above absolute zero
     * @param hot      temperature hot, K; above absolute zero
     * @return pressure, Pa; vapour left out
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "gas law"
     */
    public static double trappedPressure(double pressure, double space, double growth, double cold, double hot) {
        Argument.aboveZero("absolute pressure cold", pressure);
        Argument.aboveZero("air space cold", space);
        Argument.notBelowZero("growth of the coolant", growth);
        Argument.aboveZero("temperature cold", cold);
        Argument.aboveZero("temperature hot", hot);
        if (growth >= space) {
            throw new IllegalArgumentException("The growth of the coolant must be below the air space.");
        }
        return pressure * space / (space - growth) * hot / cold;
    }

    /**
     * Fall of a test pressure less what cooling explains.
     *
     * <p>fall − pressure · (warm − cool) / warm.
     *
     * @param fall     pressure fall, Pa
     * @param pressure absolute test pressure, Pa; above zero
     * @param warm     temperature at the start, K; above absolute zero
     * @param cool     temperature at the end, K; above absolute zero
     * @return fall, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "gas law"
     */
    public static double fallLessCooling(double fall, double pressure, double warm, double cool) {
        Argument.finite("pressure fall", fall);
        Argument.aboveZero("absolute test pressure", pressure);
        Argument.aboveZero("temperature at the start", warm);
        Argument.aboveZero("temperature at the end", cool);
        return fall - pressure * (warm - cool) / warm;
    }

    /**
     * Flow that carries off a heat.
     *
     * <p>heat / (density · heat capacity · temperature drop).
     *
     * @param heat         heat, W; not below zero
     * @param density      density of the coolant, kg/m³; above zero
     * @param heatCapacity heat capacity of the coolant, J/(kg·K); above zero
     * @param drop         temperature drop across the core, K; above zero
     * @return flow, m³/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double flowNeeded(double heat, double density, double heatCapacity, double drop) {
        Argument.notBelowZero("heat", heat);
        Argument.aboveZero("density of the coolant", density);
        Argument.aboveZero("heat capacity of the coolant", heatCapacity);
        Argument.aboveZero("temperature drop across the core", drop);
        return heat / (density * heatCapacity * drop);
    }

    /**
     * Head of an impeller of another size at the same speed.
     *
     * <p>(diameter / standard)².
     *
     * @param diameter diameter of the impeller, m; above zero
     * @param standard standard diameter, m; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "affinity of centrifugal pumps"
     */
    public static double headRatio(double diameter, double standard) {
        Argument.aboveZero("diameter of the impeller", diameter);
        Argument.aboveZero("standard diameter", standard);
        return diameter / standard * (diameter / standard);
    }

    /**
     * Gap of a thermostat's foot over its bypass when fully open.
     *
     * <p>seat depth − foot reach − lift.
     *
     * @param seatDepth depth of the bypass seat, m; above zero
     * @param footReach reach of the foot when shut, m; above zero
     * @param lift      lift of the thermostat, m; not below zero
     * @return gap, m; nothing or minus shuts it
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double bypassGap(double seatDepth, double footReach, double lift) {
        Argument.aboveZero("depth of the bypass seat", seatDepth);
        Argument.aboveZero("reach of the foot when shut", footReach);
        Argument.notBelowZero("lift of the thermostat", lift);
        return seatDepth - footReach - lift;
    }

    /**
     * Heat asked of a radiator over its size.
     *
     * <p>(power / area) / (standard power / standard area).
     *
     * @param power         power, W; above zero
     * @param area          area of the core, m²; above zero
     * @param standardPower standard power, W; above zero
     * @param standardArea  standard area of the core, m²; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double coreHeatRatio(double power, double area, double standardPower, double standardArea) {
        Argument.aboveZero("power", power);
        Argument.aboveZero("area of the core", area);
        Argument.aboveZero("standard power", standardPower);
        Argument.aboveZero("standard area of the core", standardArea);
        return power / area / (standardPower / standardArea);
    }

    /**
     * Time in which heat brings standing water to the boil.
     *
     * <p>mass · heat capacity · rise / heat.
     *
     * @param mass         mass of the water, kg; above zero
     * @param heatCapacity heat capacity of the water, J/(kg·K); above zero
     * @param rise         rise to the boil, K; not below zero
     * @param heat         heat, W; above zero
     * @return time, s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double timeToBoil(double mass, double heatCapacity, double rise, double heat) {
        Argument.aboveZero("mass of the water", mass);
        Argument.aboveZero("heat capacity of the water", heatCapacity);
        Argument.notBelowZero("rise to the boil", rise);
        Argument.aboveZero("heat", heat);
        return mass * heatCapacity * rise / heat;
    }
}
