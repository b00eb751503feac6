package leadlamp.calc;

/** Growth by heat of one metal and of unlike metals together. */
public final class Growth {
    private Growth() {
    }

    /**
     * Growth of a length.
     *
     * <p>expansion · length · rise.
     *
     * @param expansion expansion of the metal, 1/K; not below zero
     * @param length    length, m; not below zero
     * @param rise      rise of temperature, K
     * @return growth, m; minus shrinks
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "linear expansion"
     */
    public static double length(double expansion, double length, double rise) {
        Argument.notBelowZero("expansion of the metal", expansion);
        Argument.notBelowZero("length", length);
        Argument.finite("rise of temperature", rise);
        return expansion * length * rise;
    }

    /**
     * Coefficient per kelvin from a table per degree Fahrenheit.
     *
     * <p>1.8 · coefficient.
     *
     * @param perFahrenheit coefficient per degree Fahrenheit, 1/°F; not below zero
     * @return coefficient, 1/K
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "NIST SP 811, appendix B"
     */
    public static double perKelvin(double perFahrenheit) {
        Argument.notBelowZero("coefficient per degree Fahrenheit", perFahrenheit);
        return 1.8 * perFahrenheit;
    }

    /**
     * Clearance of a piston in its bore, or of any shaft in its hole, at working heat.
     *
     * <p>cold − shaft · shaft expansion · rise of shaft + hole · hole expansion · rise of hole.
     *
     * @param cold           clearance cold, m
     * @param shaft          outside size of the shaft or skirt, m; above zero
     * @param shaftExpansion expansion of the shaft's or piston's metal, 1/K; not below zero
     * @param shaftRise      rise of the shaft's or skirt's temperature, K
     * @param hole           inside size of the hole or bore, m; above zero
     * @param holeExpansion  expansion of the hole's or block's metal, 1/K; not below zero
     * @param holeRise       rise of the hole's or wall's temperature, K
     * @return clearance hot, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "linear expansion"
     */
    public static double clearanceHot(double cold, double shaft, double shaftExpansion, double shaftRise, double hole,
            double holeExpansion, double holeRise) {
        Argument.finite("clearance cold", cold);
        Argument.aboveZero("outside size of the shaft or skirt", shaft);
        Argument.notBelowZero("expansion of the shaft's or piston's metal", shaftExpansion);
        Argument.finite("rise of the shaft's or skirt's temperature", shaftRise);
        Argument.aboveZero("inside size of the hole or bore", hole);
        Argument.notBelowZero("expansion of the hole's or block's metal", holeExpansion);
        Argument.finite("rise of the hole's or wall's temperature", holeRise);
        return cold - shaft * shaftExpansion * shaftRise + hole * holeExpansion * holeRise;
    }

    /**
     * A size brought to another temperature.
     *
     * <p>size · (1 + expansion · (wanted − read)).
     *
     * @param size      size as read, m; above zero
     * @param expansion expansion of the metal, 1/K; not below zero
     * @param read      temperature of the part at the reading, K; above absolute zero
     * @param wanted    temperature wanted, K; above absolute zero
     * @return size, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "ISO 1: sizes are meant at 20 °C"
     */
    public static double sizeAt(double size, double expansion, double read, double wanted) {
        Argument.aboveZero("size as read", size);
        Argument.notBelowZero("expansion of the metal", expansion);
        Argument.aboveZero("temperature of the part at the reading", read);
        Argument.aboveZero("temperature wanted", wanted);
        return size * (1 + expansion * (wanted - read));
    }

    /**
     * Shift of a clearance because hole and shaft were read at different warmth.
     *
     * <p>hole · expansion · (reference − read) − shaft · expansion · (reference − read).
     *
     * @param hole           inside size of the hole, m; above zero
     * @param holeExpansion  expansion of the hole's metal, 1/K; not below zero
     * @param holeRead       temperature of the hole at the reading, K; above absolute zero
     * @param shaft          outside size of the shaft, m; above zero
     * @param shaftExpansion expansion of the shaft's metal, 1/K; not below zero
     * @param shaftRead      temperature of the shaft at the reading, K; above absolute zero
     * @param reference      temperature that both are brought to, K; above absolute zero
     * @return shift of the clearance, m; plus opens
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "linear expansion"
     */
    public static double warmthShift(double hole, double holeExpansion, double holeRead, double shaft,
            double shaftExpansion, double shaftRead, double reference) {
        Argument.aboveZero("inside size of the hole", hole);
        Argument.notBelowZero("expansion of the hole's metal", holeExpansion);
        Argument.aboveZero("temperature of the hole at the reading", holeRead);
        Argument.aboveZero("outside size of the shaft", shaft);
        Argument.notBelowZero("expansion of the shaft's metal", shaftExpansion);
        Argument.aboveZero("temperature of the shaft at the reading", shaftRead);
        Argument.aboveZero("temperature that both are brought to", reference);
        return hole * holeExpansion * (reference - holeRead) - shaft * shaftExpansion * (reference - shaftRead);
    }

    /**
     * Growth of a manifold's flange past the head it is bolted to.
     *
     * <p>distance · (flange expansion · rise of flange − head expansion · rise of head).
     *
     * @param distance        distance of the end studs, m; above zero
     * @param flangeExpansion expansion of the flange's metal, 1/K; not below zero
     * @param flangeRise      rise of the flange's temperature, K
     * @param headExpansion   expansion of the head's metal, 1/K; not below zero
     * @param headRise        rise of the head's temperature, K
     * @return growth, m; half of it at each end
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "linear expansion"
     */
    public static double flangeAgainstHead(double distance, double flangeExpansion, double flangeRise,
            double headExpansion, double headRise) {
        Argument.aboveZero("distance of the end studs", distance);
        Argument.notBelowZero("expansion of the flange's metal", flangeExpansion);
        Argument.finite("rise of the flange's temperature", flangeRise);
        Argument.notBelowZero("expansion of the head's metal", headExpansion);
        Argument.finite("rise of the head's temperature", headRise);
        return distance * (flangeExpansion * flangeRise - headExpansion * headRise);
    }

    /**
     * Stress that a hot casting adds to a colder or slower growing bolt through it.
     *
     * <p>modulus · (casting expansion − bolt expansion) · rise · share of the grip in the casting.
     *
     * <p>An upper bound: bolt and casting give way.
     *
     * @param modulus          modulus of the bolt, Pa; above zero
     * @param castingExpansion expansion of the casting's metal, 1/K; not below zero
     * @param boltExpansion    expansion of the bolt's metal, 1/K; not below zero
     * @param rise             rise of temperature, K
     * @param share            share of the grip that lies in the casting; from 0 to 1
     * @return added stress, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "linear expansion and Hooke's law"
     */
    public static double stress(double modulus, double castingExpansion, double boltExpansion, double rise,
            double share) {
        Argument.aboveZero("modulus of the bolt", modulus);
        Argument.notBelowZero("expansion of the casting's metal", castingExpansion);
        Argument.notBelowZero("expansion of the bolt's metal", boltExpansion);
        Argument.finite("rise of temperature", rise);
        Argument.share("share of the grip that lies in the casting", share);
        return modulus * (castingExpansion - boltExpansion) * rise * share;
    }

    /**
     * Change of valve lash as the engine warms.
     *
     * <p>head expansion · spacing · rise of head − valve expansion · valve length · rise of valve.
     *
     * <p>The sign suits a camshaft in the head above the valve; another layout may turn it round.
     *
     * @param headExpansion  expansion of the head's metal, 1/K; not below zero
     * @param spacing        spacing from seat to cam, m; above zero
     * @param headRise       rise of the head's temperature, K
     * @param valveExpansion expansion of the valve's metal, 1/K; not below zero
     * @param valveLength    length of the valve, m; above zero
     * @param valveRise      rise of the valve's temperature, K
     * @return change of lash, m; plus opens
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "linear expansion"
     */
    public static double lashChange(double headExpansion, double spacing, double headRise, double valveExpansion,
            double valveLength, double valveRise) {
        Argument.notBelowZero("expansion of the head's metal", headExpansion);
        Argument.aboveZero("spacing from seat to cam", spacing);
        Argument.finite("rise of the head's temperature", headRise);
        Argument.notBelowZero("expansion of the valve's metal", valveExpansion);
        Argument.aboveZero("length of the valve", valveLength);
        Argument.finite("rise of the valve's temperature", valveRise);
        return headExpansion * spacing * headRise - valveExpansion * valveLength * valveRise;
    }
}
