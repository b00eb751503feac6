package leadlamp.calc;

/** Whirling parts: stress, energy, balance. */
public final class Flywheel {
    private Flywheel() {
    }

    /**
     * Speed of a rim.
     *
     * <p>radius · ω.
     *
     * @param radius outer radius, m; above zero
     * @param speed  speed, rad/s; not below zero
     * @return speed, m/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double rimSpeed(double radius, double speed) {
        Argument.aboveZero("outer radius", radius);
        Argument.notBelowZero("speed", speed);
        return radius * speed;
    }

    /**
     * Hoop stress of a thin ring.
     *
     * <p>density · rim speed².
     *
     * @param density  density, kg/m³; above zero
     * @param rimSpeed rim speed, m/s; not below zero
     * @return stress, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Mechanical Engineer's Data Handbook, 1.2.7"
     */
    public static double thinRingStress(double density, double rimSpeed) {
        Argument.aboveZero("density", density);
        Argument.notBelowZero("rim speed", rimSpeed);
        return density * rimSpeed * rimSpeed;
    }

    /**
     * Greatest stress of a solid disc, at its centre.
     *
     * <p>density · rim speed² · (3 + ν) / 8.
     *
     * @param density  density, kg/m³; above zero
     * @param rimSpeed rim speed, m/s; not below zero
     * @param poisson  Poisson ratio; from 0 to 1
     * @return stress, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Mechanical Engineer's Data Handbook, 1.2.7"
     */
    public static double solidDiscStress(double density, double rimSpeed, double poisson) {
        Argument.aboveZero("density", density);
        Argument.notBelowZero("rim speed", rimSpeed);
        Argument.share("Poisson ratio", poisson);
        return density * rimSpeed * rimSpeed * (3 + poisson) / 8;
    }

    /**
     * Greatest stress of a disc with a hole, at the hole.
     *
     * <p>density · ω² / 4 · ((3 + ν) · outer² + (1 − ν) · inner²).
     *
     * @param density density, kg/m³; above zero
     * @param speed   speed, rad/s; not below zero
     * @param outer   outer radius, m; above zero
     * @param inner   radius of the hole, m; above zero
     * @param poisson Poisson ratio; from 0 to 1
     * @return stress, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane stress of a turning disc, strength of materials (from memory)"
     */
    public static double boreStress(double density, double speed, double outer, double inner, double poisson) {
        Argument.aboveZero("density", density);
        Argument.notBelowZero("speed", speed);
        Argument.aboveZero("outer radius", outer);
        Argument.aboveZero("radius of the hole", inner);
        Argument.share("Poisson ratio", poisson);
        if (inner >= outer) {
            throw new IllegalArgumentException("The radius of the hole must be below the outer radius.");
        }
        return density * speed * speed / 4 * ((3 + poisson) * outer * outer + (1 - poisson) * inner * inner);
    }

    /**
     * Rim speed of a thin ring at a stress.
     *
     * <p>√(stress · area / mass for each length).
     *
     * @param stress        stress, Pa; above zero
     * @param area          section of the ring, m²; above zero
     * @param massPerLength mass of the ring for each length, kg/m; above zero
     * @return speed, m/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "a statics study answer, thin rim"
     */
    public static double rimSpeedAtStress(double stress, double area, double massPerLength) {
        Argument.aboveZero("stress", stress);
        Argument.aboveZero("section of the ring", area);
        Argument.aboveZero("mass of the ring for each length", massPerLength);
        return Math.sqrt(stress * area / massPerLength);
    }

    /**
     * Energy of a whirling ring or disc.
     *
     * <p>mass · (outer² + inner²) · ω² / 4.
     *
     * @param mass  mass, kg; above zero
     * @param outer outer radius, m; above zero
     * @param inner inner radius, m; not below zero
     * @param speed speed, rad/s; not below zero
     * @return energy, J
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double energy(double mass, double outer, double inner, double speed) {
        Argument.aboveZero("mass", mass);
        Argument.aboveZero("outer radius", outer);
        Argument.notBelowZero("inner radius", inner);
        Argument.notBelowZero("speed", speed);
        return mass * (outer * outer + inner * inner) * speed * speed / 4;
    }

    /**
     * Speed that must be proved, or that a missed gear gives.
     *
     * <p>speed · factor.
     *
     * @param speed  speed, rad/s; not below zero
     * @param factor factor, or ratio of the lower gear over the higher; above zero
     * @return speed, rad/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double overSpeed(double speed, double factor) {
        Argument.notBelowZero("speed", speed);
        Argument.aboveZero("factor", factor);
        return speed * factor;
    }

    /**
     * Offset of the mass that a balance grade allows.
     *
     * <p>grade / ω.
     *
     * @param grade balance grade, m/s; above zero
     * @param speed speed, rad/s; above zero
     * @return offset, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "ISO 21940-11"
     */
    public static double eccentricity(double grade, double speed) {
        Argument.aboveZero("balance grade", grade);
        Argument.aboveZero("speed", speed);
        return grade / speed;
    }

    /**
     * Unbalance that a balance grade allows.
     *
     * <p>mass · grade / ω.
     *
     * @param grade balance grade, m/s; above zero
     * @param mass  mass, kg; above zero
     * @param speed speed, rad/s; above zero
     * @return unbalance, kg·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "ISO 21940-11"
     */
    public static double allowedUnbalance(double grade, double mass, double speed) {
        Argument.aboveZero("balance grade", grade);
        Argument.aboveZero("mass", mass);
        Argument.aboveZero("speed", speed);
        return mass * grade / speed;
    }

    /**
     * Balance grade of an unbalance.
     *
     * <p>unbalance · ω / mass.
     *
     * @param unbalance unbalance, kg·m; not below zero
     * @param mass      mass, kg; above zero
     * @param speed     speed, rad/s; above zero
     * @return grade, m/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "ISO 21940-11"
     */
    public static double gradeOf(double unbalance, double mass, double speed) {
        Argument.notBelowZero("unbalance", unbalance);
        Argument.aboveZero("mass", mass);
        Argument.aboveZero("speed", speed);
        return unbalance * speed / mass;
    }

    /**
     * Whirling force of an unbalance.
     *
     * <p>unbalance · ω².
     *
     * @param unbalance unbalance, kg·m; not below zero
     * @param speed     speed, rad/s; not below zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Newton's second law"
     */
    public static double unbalanceForce(double unbalance, double speed) {
        Argument.notBelowZero("unbalance", unbalance);
        Argument.notBelowZero("speed", speed);
        return unbalance * speed * speed;
    }

    /**
     * Weight that stands for rod and piston on a crankpin while it is balanced.
     *
     * <p>rods · big end + share · (rods · (small end + piston)).
     *
     * @param bigEnd   mass of the rod's big end with shells, kg; above zero
     * @param smallEnd mass of the rod's small end, kg; above zero
     * @param piston   mass of piston, pin and rings, kg; above zero
     * @param share    share of the mass that goes up and down; from 0 to 1
     * @param rods     rods on the crankpin; at least 1
     * @return mass, kg
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double bobWeight(double bigEnd, double smallEnd, double piston, double share, int rods) {
        Argument.aboveZero("mass of the rod's big end with shells", bigEnd);
        Argument.aboveZero("mass of the rod's small end", smallEnd);
        Argument.aboveZero("mass of piston", piston);
        Argument.share("share of the mass that goes up and down", share);
        Argument.atLeast("rods on the crankpin", rods, 1);
        return rods * (bigEnd + share * (smallEnd + piston));
    }
}
