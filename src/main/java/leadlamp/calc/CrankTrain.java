package leadlamp.calc;

/** Crank, rod and piston: where the piston is, how it is pulled, what it pulls on. */
public final class CrankTrain {
    /** A rise of the crankshaft that gears, chains and pistons feel, m; common practice, no source. */
    public static final double RISE_WORTH_FOLLOWING = 0.05e-3;

    private CrankTrain() {
    }

    /**
     * Travel of the piston from top dead centre.
     *
     * <p>r + l − r · cos a − √(l² − r² · sin² a).
     *
     * @param throwRadius crank throw, m; above zero
     * @param rod         rod length, m; above zero
     * @param angle       crank angle from top dead centre, rad
     * @return travel, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "slider-crank"
     */
    public static double travel(double throwRadius, double rod, double angle) {
        Argument.aboveZero("crank throw", throwRadius);
        Argument.aboveZero("rod length", rod);
        Argument.finite("crank angle from top dead centre", angle);
        if (rod < throwRadius) {
            throw new IllegalArgumentException("The rod length must not be below the crank throw.");
        }
        double across = throwRadius * Math.sin(angle);
        return throwRadius + rod - throwRadius * Math.cos(angle) - Math.sqrt(rod * rod - across * across);
    }

    /**
     * Height of the piston over the block face, foretold from the sizes.
     *
     * <p>throw + rod + compression height − block height.
     *
     * @param throwRadius       crank throw, m; above zero
     * @param rod               rod length, m; above zero
     * @param compressionHeight compression height of the piston, m; above zero
     * @param blockHeight       block height, m; above zero
     * @return height, m; minus is below
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double heightFromSizes(double throwRadius, double rod, double compressionHeight, double blockHeight) {
        Argument.aboveZero("crank throw", throwRadius);
        Argument.aboveZero("rod length", rod);
        Argument.aboveZero("compression height of the piston", compressionHeight);
        Argument.aboveZero("block height", blockHeight);
        return throwRadius + rod + compressionHeight - blockHeight;
    }

    /**
     * Height of the piston over the block face once metal has been cut and parts have changed.
     *
     * <p>standard + cut + change of rod + change of compression height.
     *
     * @param standard                height before, m
     * @param cut                     cut off the block face, m; not below zero
     * @param rodChange               change of the rod length, m
     * @param compressionHeightChange change of the compression height, m
     * @return height, m; minus is below
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double heightAfterWork(double standard, double cut, double rodChange,
            double compressionHeightChange) {
        Argument.finite("height before", standard);
        Argument.notBelowZero("cut off the block face", cut);
        Argument.finite("change of the rod length", rodChange);
        Argument.finite("change of the compression height", compressionHeightChange);
        return standard + cut + rodChange + compressionHeightChange;
    }

    /**
     * Speed of the piston.
     *
     * <p>r · ω · (sin a + r · sin a · cos a / √(l² − r² · sin² a)).
     *
     * @param throwRadius crank throw, m; above zero
     * @param rod         rod length, m; above zero
     * @param angle       crank angle from top dead centre, rad
     * @param speed       crank speed, rad/s
     * @return speed, m/s; plus is down
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "slider-crank, first derivative"
     */
    public static double speed(double throwRadius, double rod, double angle, double speed) {
        Argument.aboveZero("crank throw", throwRadius);
        Argument.aboveZero("rod length", rod);
        Argument.finite("crank angle from top dead centre", angle);
        Argument.finite("crank speed", speed);
        if (rod <= throwRadius) {
            throw new IllegalArgumentException("The rod length must be above the crank throw.");
        }
        double sine = Math.sin(angle);
        double across = throwRadius * sine;
        double along = Math.sqrt(rod * rod - across * across);
        return throwRadius * speed * (sine + throwRadius * sine * Math.cos(angle) / along);
    }

    /**
     * Acceleration of the piston at top dead centre.
     *
     * <p>ω² · r · (1 + r / l).
     *
     * @param throwRadius crank throw, m; above zero
     * @param rod         rod length, m; above zero
     * @param speed       crank speed, rad/s; not below zero
     * @return acceleration, m/s²
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "slider-crank, second derivative"
     */
    public static double topAcceleration(double throwRadius, double rod, double speed) {
        Argument.aboveZero("crank throw", throwRadius);
        Argument.aboveZero("rod length", rod);
        Argument.notBelowZero("crank speed", speed);
        if (rod < throwRadius) {
            throw new IllegalArgumentException("The rod length must not be below the crank throw.");
        }
        return speed * speed * throwRadius * (1 + throwRadius / rod);
    }

    /**
     * Mean piston speed.
     *
     * <p>2 · stroke · turns a second.
     *
     * @param stroke stroke, m; above zero
     * @param speed  crank speed, rad/s; not below zero
     * @return speed, m/s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double meanPistonSpeed(double stroke, double speed) {
        Argument.aboveZero("stroke", stroke);
        Argument.notBelowZero("crank speed", speed);
        return stroke * speed / Math.PI;
    }

    /**
     * Load by inertia against that at another speed.
     *
     * <p>(speed / standard)².
     *
     * @param speed    speed, rad/s; not below zero
     * @param standard speed it is held against, rad/s; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Newton's second law"
     */
    public static double loadRatio(double speed, double standard) {
        Argument.notBelowZero("speed", speed);
        Argument.aboveZero("speed it is held against", standard);
        return speed / standard * (speed / standard);
    }

    /**
     * Pull at top dead centre of a mass that goes up and down.
     *
     * <p>mass · r · ω² · (1 + r / l).
     *
     * @param mass        mass that goes up and down, kg; not below zero
     * @param throwRadius crank throw, m; above zero
     * @param rod         rod length, m; above zero
     * @param speed       crank speed, rad/s; not below zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "slider-crank"
     */
    public static double topLoad(double mass, double throwRadius, double rod, double speed) {
        Argument.notBelowZero("mass that goes up and down", mass);
        Argument.aboveZero("crank throw", throwRadius);
        Argument.aboveZero("rod length", rod);
        Argument.notBelowZero("crank speed", speed);
        return mass * topAcceleration(throwRadius, rod, speed);
    }

    /**
     * Pull that tries to open a rod's cap at top dead centre, gas left out.
     *
     * <p>mass up and down · r · ω² · (1 + r / l) + turning mass above the joint · r · ω².
     *
     * @param reciprocating mass of piston, pin, rings and the rod's small end, kg; not below zero
     * @param turning       mass of the big end without its cap, kg; not below zero
     * @param throwRadius   crank throw, m; above zero
     * @param rod           rod length, m; above zero
     * @param speed         crank speed, rad/s; not below zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "slider-crank"
     */
    public static double capLoad(double reciprocating, double turning, double throwRadius, double rod, double speed) {
        Argument.notBelowZero("mass of piston", reciprocating);
        Argument.notBelowZero("mass of the big end without its cap", turning);
        Argument.aboveZero("crank throw", throwRadius);
        Argument.aboveZero("rod length", rod);
        Argument.notBelowZero("crank speed", speed);
        return topLoad(reciprocating, throwRadius, rod, speed) + turning * throwRadius * speed * speed;
    }

    /**
     * Stretch of the rod at top dead centre.
     *
     * <p>load · rod length / (section · modulus).
     *
     * @param load    pull on the rod, N; not below zero
     * @param rod     rod length, m; above zero
     * @param section section of the rod's shank, m²; above zero
     * @param modulus modulus of the rod, Pa; above zero
     * @return stretch, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Hooke's law"
     */
    public static double rodStretch(double load, double rod, double section, double modulus) {
        Argument.notBelowZero("pull on the rod", load);
        Argument.aboveZero("rod length", rod);
        Argument.aboveZero("section of the rod's shank", section);
        Argument.aboveZero("modulus of the rod", modulus);
        return load * rod / (section * modulus);
    }

    /**
     * Shaking force of an in-line four at twice crank speed.
     *
     * <p>4 · mass · r · ω² · r / l.
     *
     * @param mass        mass that goes up and down in one cylinder, kg; not below zero
     * @param throwRadius crank throw, m; above zero
     * @param rod         rod length, m; above zero
     * @param speed       crank speed, rad/s; not below zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "slider-crank, second harmonic"
     */
    public static double secondOrderForce(double mass, double throwRadius, double rod, double speed) {
        Argument.notBelowZero("mass that goes up and down in one cylinder", mass);
        Argument.aboveZero("crank throw", throwRadius);
        Argument.aboveZero("rod length", rod);
        Argument.notBelowZero("crank speed", speed);
        if (rod < throwRadius) {
            throw new IllegalArgumentException("The rod length must not be below the crank throw.");
        }
        return 4 * mass * throwRadius * speed * speed * throwRadius / rod;
    }

    /**
     * Outward force of a mass that turns.
     *
     * <p>mass · radius · ω².
     *
     * @param mass   mass, kg; not below zero
     * @param radius radius, m; not below zero
     * @param speed  speed, rad/s; not below zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Newton's second law"
     */
    public static double centrifugal(double mass, double radius, double speed) {
        Argument.notBelowZero("mass", mass);
        Argument.notBelowZero("radius", radius);
        Argument.notBelowZero("speed", speed);
        return mass * radius * speed * speed;
    }

    /**
     * Change of the rod's swing against the block with another stroke or another bolt head.
     *
     * <p>half the change of stroke + change of bolt head height.
     *
     * @param strokeChange change of the stroke, m
     * @param headChange   change of the bolt head's height, m
     * @return change, m; plus comes nearer
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double swingChange(double strokeChange, double headChange) {
        Argument.finite("change of the stroke", strokeChange);
        Argument.finite("change of the bolt head's height", headChange);
        return strokeChange / 2 + headChange;
    }

    /**
     * How far the crankshaft rises when the caps were cut and the tunnel bored back to size.
     *
     * <p>cut off the caps / 2.
     *
     * @param capCut cut off the caps, m; not below zero
     * @return rise, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double centreRiseOnSize(double capCut) {
        Argument.notBelowZero("cut off the caps", capCut);
        return capCut / 2;
    }
}
