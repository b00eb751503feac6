package leadlamp.calc;

/** Valve springs and other coil springs. */
public final class Springs {
    private Springs() {
    }

    /**
     * Rate of a spring between two loads.
     *
     * <p>(load two − load one) / (height one − height two).
     *
     * @param loadOne   load at the greater height, N; not below zero
     * @param heightOne greater height, m; above zero
     * @param loadTwo   load at the smaller height, N; not below zero
     * @param heightTwo smaller height, m; above zero
     * @return rate, N/m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double rate(double loadOne, double heightOne, double loadTwo, double heightTwo) {
        Argument.notBelowZero("load at the greater height", loadOne);
        Argument.aboveZero("greater height", heightOne);
        Argument.notBelowZero("load at the smaller height", loadTwo);
        Argument.aboveZero("smaller height", heightTwo);
        if (heightTwo >= heightOne) {
            throw new IllegalArgumentException("The smaller height must be below the greater one.");
        }
        return (loadTwo - loadOne) / (heightOne - heightTwo);
    }

    /**
     * Load of a spring brought to another height.
     *
     * <p>load + rate · (height read − height wanted).
     *
     * @param load         load as read, N; not below zero
     * @param rate         rate of the spring, N/m; above zero
     * @param heightRead   height at the reading, m; above zero
     * @param heightWanted height wanted, m; above zero
     * @return load, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Hooke's law"
     */
    public static double loadAt(double load, double rate, double heightRead, double heightWanted) {
        Argument.notBelowZero("load as read", load);
        Argument.aboveZero("rate of the spring", rate);
        Argument.aboveZero("height at the reading", heightRead);
        Argument.aboveZero("height wanted", heightWanted);
        return load + rate * (heightRead - heightWanted);
    }

    /**
     * Shim that restores a spring's load.
     *
     * <p>(wanted − load) / rate.
     *
     * @param wanted load wanted, N; not below zero
     * @param load   load now, N; not below zero
     * @param rate   rate of the spring, N/m; above zero
     * @return shim, m; minus takes out
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Hooke's law"
     */
    public static double shimFor(double wanted, double load, double rate) {
        Argument.notBelowZero("load wanted", wanted);
        Argument.notBelowZero("load now", load);
        Argument.aboveZero("rate of the spring", rate);
        return (wanted - load) / rate;
    }

    /**
     * Room left before the coils touch.
     *
     * <p>installed height − lift − solid height.
     *
     * @param installedHeight installed height, m; above zero
     * @param lift            valve lift, m; not below zero
     * @param solidHeight     solid height, m; above zero
     * @return room, m; minus binds
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double bindMargin(double installedHeight, double lift, double solidHeight) {
        Argument.aboveZero("installed height", installedHeight);
        Argument.notBelowZero("valve lift", lift);
        Argument.aboveZero("solid height", solidHeight);
        return installedHeight - lift - solidHeight;
    }

    /**
     * Solid height of a spring with ground ends.
     *
     * <p>total coils · wire.
     *
     * @param totalCoils total coils; above zero
     * @param wire       wire diameter, m; above zero
     * @return height, m; about
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "EN 13906-1 (from memory)"
     */
    public static double solidHeight(double totalCoils, double wire) {
        Argument.aboveZero("total coils", totalCoils);
        Argument.aboveZero("wire diameter", wire);
        return totalCoils * wire;
    }

    /**
     * Least sum of the gaps between coils that a spring should keep.
     *
     * <p>active coils · (0.0015 · mean diameter² / wire + 0.1 · wire).
     *
     * @param activeCoils  active coils; above zero
     * @param meanDiameter mean diameter of the coils, m; above zero
     * @param wire         wire diameter, m; above zero
     * @return sum of gaps, m; half as much again where it cycles fast
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "EN 13906-1 (from memory)"
     */
    public static double leastGaps(double activeCoils, double meanDiameter, double wire) {
        Argument.aboveZero("active coils", activeCoils);
        Argument.aboveZero("mean diameter of the coils", meanDiameter);
        Argument.aboveZero("wire diameter", wire);
        return activeCoils * (0.0015 * meanDiameter * meanDiameter / wire + 0.1 * wire);
    }

    /**
     * Room left between retainer and stem seal at full lift.
     *
     * <p>room closed − lift.
     *
     * @param closed room with the valve closed, m; above zero
     * @param lift   valve lift, m; not below zero
     * @return room, m; minus touches
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double retainerRoom(double closed, double lift) {
        Argument.aboveZero("room with the valve closed", closed);
        Argument.notBelowZero("valve lift", lift);
        return closed - lift;
    }

    /**
     * First natural frequency of a spring held at both ends.
     *
     * <p>√(rate / mass) / 2.
     *
     * @param rate rate of the spring, N/m; above zero
     * @param mass mass of its active coils, kg; above zero
     * @return frequency, Hz
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "surge of a helical spring, Mechanical Engineering Design (from memory)"
     */
    public static double frequency(double rate, double mass) {
        Argument.aboveZero("rate of the spring", rate);
        Argument.aboveZero("mass of its active coils", mass);
        return Math.sqrt(rate / mass) / 2;
    }

    /**
     * Mass at the valve that a spring has to move.
     *
     * <p>valve + retainer and keepers + a third of the spring + follower · ratio².
     *
     * @param valve    mass of the valve, kg; above zero
     * @param retainer mass of retainer and keepers, kg; not below zero
     * @param spring   mass of the spring, kg; not below zero
     * @param atCam    mass that moves with the cam, kg; not below zero
     * @param ratio    cam movement over valve movement; above zero
     * @return mass, kg
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "kinetic energy of the parts"
     */
    public static double movingMass(double valve, double retainer, double spring, double atCam, double ratio) {
        Argument.aboveZero("mass of the valve", valve);
        Argument.notBelowZero("mass of retainer and keepers", retainer);
        Argument.notBelowZero("mass of the spring", spring);
        Argument.notBelowZero("mass that moves with the cam", atCam);
        Argument.aboveZero("cam movement over valve movement", ratio);
        return valve + retainer + spring / 3 + atCam * ratio * ratio;
    }

    /**
     * Acceleration of a valve at full lift, lift taken as a cosine.
     *
     * <p>lift / 2 · (2π · crank speed / duration)².
     *
     * <p>It reads high on real cams: shown, not judged.
     *
     * @param lift     valve lift, m; above zero
     * @param duration duration as a crank angle, rad; above zero
     * @param speed    crank speed, rad/s; not below zero
     * @return acceleration, m/s²
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "harmonic lift"
     */
    public static double noseAcceleration(double lift, double duration, double speed) {
        Argument.aboveZero("valve lift", lift);
        Argument.aboveZero("duration as a crank angle", duration);
        Argument.notBelowZero("crank speed", speed);
        double beat = 2 * Math.PI * speed / duration;
        return lift / 2 * beat * beat;
    }

    /**
     * Crank speed at which a spring no longer holds its valve to the cam, lift taken as a cosine.
     *
     * <p>duration / 2π · √(2 · open load / (mass · lift)).
     *
     * @param openLoad spring load at full lift, N; above zero
     * @param mass     moving mass of the valve, kg; above zero
     * @param lift     valve lift, m; above zero
     * @param duration duration as a crank angle, rad; above zero
     * @return crank speed, rad/s; about
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "harmonic lift"
     */
    public static double floatSpeed(double openLoad, double mass, double lift, double duration) {
        Argument.aboveZero("spring load at full lift", openLoad);
        Argument.aboveZero("moving mass of the valve", mass);
        Argument.aboveZero("valve lift", lift);
        Argument.aboveZero("duration as a crank angle", duration);
        return duration / (2 * Math.PI) * Math.sqrt(2 * openLoad / (mass * lift));
    }

    /**
     * Margin of the springs as built against the margin as standard.
     *
     * <p>load ratio · duration ratio² / (mass ratio · lift ratio · speed ratio²).
     *
     * @param loadRatio     open load over standard; above zero
     * @param massRatio     moving mass over standard; above zero
     * @param liftRatio     lift over standard; above zero
     * @param speedRatio    rev limit over standard; above zero
     * @param durationRatio duration over standard; above zero
     * @return number; below 1 is less than standard
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "harmonic lift"
     */
    public static double followMargin(double loadRatio, double massRatio, double liftRatio, double speedRatio,
            double durationRatio) {
        Argument.aboveZero("open load over standard", loadRatio);
        Argument.aboveZero("moving mass over standard", massRatio);
        Argument.aboveZero("lift over standard", liftRatio);
        Argument.aboveZero("rev limit over standard", speedRatio);
        Argument.aboveZero("duration over standard", durationRatio);
        return loadRatio * durationRatio * durationRatio / (massRatio * liftRatio * speedRatio * speedRatio);
    }

    /**
     * Rate of a valve spring felt at the cam.
     *
     * <p>ratio² · rate.
     *
     * @param ratio rocker ratio; above zero
     * @param rate  rate of the spring, N/m; above zero
     * @return rate, N/m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double rateAtCam(double ratio, double rate) {
        Argument.aboveZero("rocker ratio", ratio);
        Argument.aboveZero("rate of the spring", rate);
        return ratio * ratio * rate;
    }

    /**
     * Spring load felt at the cam.
     *
     * <p>ratio · load.
     *
     * @param ratio rocker ratio; above zero
     * @param load  spring load, N; not below zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double loadAtCam(double ratio, double load) {
        Argument.aboveZero("rocker ratio", ratio);
        Argument.notBelowZero("spring load", load);
        return ratio * load;
    }

    /**
     * Spring load lost as the retainer rises with a cut seat.
     *
     * <p>rate · rise.
     *
     * @param rate rate of the spring, N/m; above zero
     * @param rise rise of the retainer, m; not below zero
     * @return load, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Hooke's law"
     */
    public static double lossFromSink(double rate, double rise) {
        Argument.aboveZero("rate of the spring", rate);
        Argument.notBelowZero("rise of the retainer", rise);
        return rate * rise;
    }

    /**
     * What valve springs have in hand, beside what the maker's had at the maker's own speed.
     *
     * <p>load / (mass × lift × speed²), each over the same of the standard engine. The force that keeps a follower on its lobe grows
     * with the mass that moves, with the lift and with the square of the speed; on the same lobes nothing else enters.
     *
     * @param load  load at full lift over the standard one; above zero
     * @param mass  moving mass over the standard one; above zero
     * @param lift  lift over the standard one; above zero
     * @param speed greatest speed over the standard one; above zero
     * @return margin over the standard one; 1 is as much as the maker left
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Newton's second law, harmonic lift: acceleration = lift / 2 × (2π × cam speed)² for one form of lobe"
     */
    public static double marginAgainst(double load, double mass, double lift, double speed) {
        Argument.aboveZero("load over the standard one", load);
        Argument.aboveZero("moving mass over the standard one", mass);
        Argument.aboveZero("lift over the standard one", lift);
        Argument.aboveZero("speed over the standard one", speed);
        return load / (mass * lift * speed * speed);
    }
}
