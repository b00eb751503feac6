package leadlamp.calc;

/** What reaches the bolt through the wrench. */
public final class Wrenches {
    private Wrenches() {
    }

    /**
     * Setting of a wrench with an extension in line.
     *
     * <p>torque · length / (length + extension).
     *
     * @param torque    torque wanted, N·m; above zero
     * @param length    length of the wrench from drive to hand, m; above zero
     * @param extension extension along the wrench, m
     * @return setting, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "US Army TM 1-1500-204-23-9, chapter 8"
     */
    public static double settingFor(double torque, double length, double extension) {
        Argument.aboveZero("torque wanted", torque);
        Argument.aboveZero("length of the wrench from drive to hand", length);
        Argument.finite("extension along the wrench", extension);
        if (extension <= -length) {
            throw new IllegalArgumentException("The extension must not turn back past the hand.");
        }
        return torque * length / (length + extension);
    }

    /**
     * Torque that reaches the bolt through an extension in line.
     *
     * <p>setting · (length + extension) / length.
     *
     * @param setting   setting of the wrench, N·m; not below zero
     * @param length    length of the wrench from drive to hand, m; above zero
     * @param extension extension along the wrench, m
     * @return torque, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "US Army TM 1-1500-204-23-9, chapter 8"
     */
    public static double applied(double setting, double length, double extension) {
        Argument.notBelowZero("setting of the wrench", setting);
        Argument.aboveZero("length of the wrench from drive to hand", length);
        Argument.finite("extension along the wrench", extension);
        if (extension <= -length) {
            throw new IllegalArgumentException("The extension must not turn back past the hand.");
        }
        return setting * (length + extension) / length;
    }

    /**
     * Length that an extension at an angle adds along the wrench.
     *
     * <p>extension · cos(angle).
     *
     * @param extension extension, m; not below zero
     * @param angle     angle from the wrench's line, rad
     * @return length, m; nothing at a right angle
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "US Army TM 9-254, figure 46"
     */
    public static double alongWrench(double extension, double angle) {
        Argument.notBelowZero("extension", extension);
        Argument.finite("angle from the wrench's line", angle);
        return extension * Math.cos(angle);
    }

    /**
     * Torque at which to stop where the thread drags.
     *
     * <p>figure + running torque.
     *
     * @param figure  torque wanted at the bolt, N·m; not below zero
     * @param running running torque, N·m; not below zero
     * @return torque, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "FAA AC 43.13-1B, 7-40"
     */
    public static double finalTorque(double figure, double running) {
        Argument.notBelowZero("torque wanted at the bolt", figure);
        Argument.notBelowZero("running torque", running);
        return figure + running;
    }

    /**
     * Torque through a multiplier.
     *
     * <p>setting · ratio.
     *
     * @param setting setting of the wrench, N·m; not below zero
     * @param ratio   ratio of the multiplier; above zero
     * @return torque, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double multiplied(double setting, double ratio) {
        Argument.notBelowZero("setting of the wrench", setting);
        Argument.aboveZero("ratio of the multiplier", ratio);
        return setting * ratio;
    }

    /**
     * Torque as a share of the wrench's top.
     *
     * <p>torque / top.
     *
     * @param torque torque, N·m; not below zero
     * @param top    top of the wrench's range, N·m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double shareOfTop(double torque, double top) {
        Argument.notBelowZero("torque", torque);
        Argument.aboveZero("top of the wrench's range", top);
        return torque / top;
    }

    /**
     * One torque as a share of another, as drag of the final torque.
     *
     * <p>part / whole.
     *
     * @param part  torque, N·m; not below zero
     * @param whole torque it is held against, N·m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double share(double part, double whole) {
        Argument.notBelowZero("torque", part);
        Argument.aboveZero("torque it is held against", whole);
        return part / whole;
    }
}
