package leadlamp.calc;

/** Plain bearings, journals and the crankshaft they carry. */
public final class Bearings {
    private Bearings() {
    }

    /**
     * Clearance for each unit of journal.
     *
     * <p>clearance / journal.
     *
     * @param clearance clearance, m
     * @param journal   journal diameter, m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double overJournal(double clearance, double journal) {
        Argument.finite("clearance", clearance);
        Argument.aboveZero("journal diameter", journal);
        return clearance / journal;
    }

    /**
     * Crush left of a shell that was measured in the sheet's housing.
     *
     * <p>stand − π/2 · (housing − sheet housing).
     *
     * @param stand        stand of the shell over the joint, m
     * @param housing      housing bore, m; above zero
     * @param sheetHousing housing bore of the sheet, m; above zero
     * @return crush, m; minus is loose
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "half the length of a circle"
     */
    public static double crushLeft(double stand, double housing, double sheetHousing) {
        Argument.finite("stand of the shell over the joint", stand);
        Argument.aboveZero("housing bore", housing);
        Argument.aboveZero("housing bore of the sheet", sheetHousing);
        return stand - Math.PI / 2 * (housing - sheetHousing);
    }

    /**
     * Hard skin left after grinding.
     *
     * <p>case − undersize / 2.
     *
     * @param caseDepth depth of the hard skin when new, m; not below zero
     * @param undersize undersize of the journal, m; not below zero
     * @return depth, m; minus is ground through
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double caseLeft(double caseDepth, double undersize) {
        Argument.notBelowZero("depth of the hard skin when new", caseDepth);
        Argument.notBelowZero("undersize of the journal", undersize);
        return caseDepth - undersize / 2;
    }

    /**
     * How much smaller than standard a journal is.
     *
     * <p>standard − journal.
     *
     * @param standard standard journal, m; above zero
     * @param journal  journal diameter, m; above zero
     * @return undersize, m; minus is larger
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double undersize(double standard, double journal) {
        Argument.aboveZero("standard journal", standard);
        Argument.aboveZero("journal diameter", journal);
        return standard - journal;
    }

    /**
     * Step at the joint of cap and housing.
     *
     * <p>|one − other| / 2.
     *
     * @param one   bore on one side of the joint, m; above zero
     * @param other bore on the other side of the joint, m; above zero
     * @return step, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double capJointStep(double one, double other) {
        Argument.aboveZero("bore on one side of the joint", one);
        Argument.aboveZero("bore on the other side of the joint", other);
        return Math.abs(one - other) / 2;
    }

    /**
     * Bow of a shaft from its runout.
     *
     * <p>runout / 2.
     *
     * @param runout runout, m; not below zero
     * @return bow, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double bow(double runout) {
        Argument.notBelowZero("runout", runout);
        return runout / 2;
    }

    /**
     * Runout less what the journal's own shape makes of it.
     *
     * <p>runout − ovality.
     *
     * @param runout  runout, m; not below zero
     * @param ovality ovality of the journal, m; not below zero
     * @return runout of the axis, m; at least 0
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double lessOvality(double runout, double ovality) {
        Argument.notBelowZero("runout", runout);
        Argument.notBelowZero("ovality of the journal", ovality);
        return Math.max(0, runout - ovality);
    }

    /**
     * Runout between two neighbouring journals by the clock places of their high spots.
     *
     * <p>√(a² + b² − 2 · a · b · cos(angle between)).
     *
     * @param one        runout of one journal, m; not below zero
     * @param oneAngle   clock place of its high spot, rad
     * @param other      runout of its neighbour, m; not below zero
     * @param otherAngle clock place of the neighbour's high spot, rad
     * @return runout, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "law of cosines"
     */
    public static double adjacentRunout(double one, double oneAngle, double other, double otherAngle) {
        Argument.notBelowZero("runout of one journal", one);
        Argument.finite("clock place of its high spot", oneAngle);
        Argument.notBelowZero("runout of its neighbour", other);
        Argument.finite("clock place of the neighbour's high spot", otherAngle);
        double squared = one * one + other * other - 2 * one * other * Math.cos(oneAngle - otherAngle);
        return Math.sqrt(Math.max(0, squared));
    }

    /**
     * Part of a radial clearance that a bow, a line error or a particle takes.
     *
     * <p>size / (clearance / 2).
     *
     * @param size      bow, error or particle, m; not below zero
     * @param clearance clearance on diameter, m; above zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double shareOfClearance(double size, double clearance) {
        Argument.notBelowZero("bow", size);
        Argument.aboveZero("clearance on diameter", clearance);
        return size / (clearance / 2);
    }

    /**
     * Open share of an oil hole that stands beside its shell's hole.
     *
     * <p>area of overlap of two circles / area of the smaller.
     *
     * @param one    diameter of one hole, m; above zero
     * @param other  diameter of the other hole, m; above zero
     * @param offset offset of their centres, m; not below zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double holeOpen(double one, double other, double offset) {
        Argument.aboveZero("diameter of one hole", one);
        Argument.aboveZero("diameter of the other hole", other);
        Argument.notBelowZero("offset of their centres", offset);
        double small = Math.min(one, other) / 2;
        double large = Math.max(one, other) / 2;
        if (offset >= small + large) {
            return 0;
        }
        if (offset <= large - small) {
            return 1;
        }
        double smallAngle = Math.acos(within((offset * offset + small * small - large * large) / (2 * offset * small)));
        double largeAngle = Math.acos(within((offset * offset + large * large - small * small) / (2 * offset * large)));
        double overlap = small * small * (smallAngle - Math.sin(2 * smallAngle) / 2)
                + large * large * (largeAngle - Math.sin(2 * largeAngle) / 2);
        return overlap / (Math.PI * small * small);
    }

    /** A cosine that rounding has pushed past one. */
    private static double within(double cosine) {
        return Math.max(-1, Math.min(1, cosine));
    }

    /**
     * Room between a shell's bearing edge and the fillet, shell in the middle.
     *
     * <p>(journal width − shell width) / 2 + chamfer − fillet radius.
     *
     * @param journalWidth width of the journal, m; above zero
     * @param shellWidth   width of the shell, m; above zero
     * @param chamfer      chamfer of the shell's edge, m; not below zero
     * @param filletRadius radius of the fillet, m; not below zero
     * @return room, m; minus rides the fillet
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double edgeRoom(double journalWidth, double shellWidth, double chamfer, double filletRadius) {
        Argument.aboveZero("width of the journal", journalWidth);
        Argument.aboveZero("width of the shell", shellWidth);
        Argument.notBelowZero("chamfer of the shell's edge", chamfer);
        Argument.notBelowZero("radius of the fillet", filletRadius);
        if (shellWidth > journalWidth) {
            throw new IllegalArgumentException("The width of the shell must not be above that of the journal.");
        }
        return (journalWidth - shellWidth) / 2 + chamfer - filletRadius;
    }

    /**
     * Height of a fillet at a distance from the web.
     *
     * <p>radius − √(radius² − (radius − distance)²), nothing past the radius.
     *
     * @param filletRadius radius of the fillet, m; above zero
     * @param distance     distance from the web, m; not below zero
     * @return height, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double filletHeight(double filletRadius, double distance) {
        Argument.aboveZero("radius of the fillet", filletRadius);
        Argument.notBelowZero("distance from the web", distance);
        if (distance >= filletRadius) {
            return 0;
        }
        double across = filletRadius - distance;
        return filletRadius - Math.sqrt(filletRadius * filletRadius - across * across);
    }

    /**
     * End float foretold from the sizes.
     *
     * <p>journal width − housing width − both washers.
     *
     * @param journalWidth width of the thrust journal, m; above zero
     * @param housingWidth width of the housing, m; above zero
     * @param frontWasher  thickness of the front washer, m; not below zero
     * @param rearWasher   thickness of the rear washer, m; not below zero
     * @return end float, m; minus is tight
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double endFloat(double journalWidth, double housingWidth, double frontWasher, double rearWasher) {
        Argument.aboveZero("width of the thrust journal", journalWidth);
        Argument.aboveZero("width of the housing", housingWidth);
        Argument.notBelowZero("thickness of the front washer", frontWasher);
        Argument.notBelowZero("thickness of the rear washer", rearWasher);
        return journalWidth - housingWidth - frontWasher - rearWasher;
    }

    /**
     * Part of a band of limits that is used up.
     *
     * <p>(value − least) / (most − least).
     *
     * @param value value, m
     * @param least least allowed, m
     * @param most  most allowed, m
     * @return share; below 0 or above 1 is outside
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double shareOfBand(double value, double least, double most) {
        Argument.finite("value", value);
        Argument.finite("least allowed", least);
        Argument.finite("most allowed", most);
        if (most <= least) {
            throw new IllegalArgumentException("The most allowed must be above the least.");
        }
        return (value - least) / (most - least);
    }

    /**
     * Side clearance of the rods on a crankpin.
     *
     * <p>crankpin width − widths of the rods.
     *
     * @param crankpinWidth width of the crankpin, m; above zero
     * @param rodWidths     widths of the rods on it, m; at least one
     * @return clearance, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double sideClearance(double crankpinWidth, double... rodWidths) {
        Argument.aboveZero("width of the crankpin", crankpinWidth);
        Argument.some("widths of the rods on it", rodWidths);
        return Fits.gapOverParts(crankpinWidth, rodWidths);
    }

    /**
     * Taper scaled to a length of journal.
     *
     * <p>difference · wanted length / distance between the readings.
     *
     * @param one      size at one end, m; above zero
     * @param other    size at the other end, m; above zero
     * @param distance distance between the readings, m; above zero
     * @param wanted   length it is scaled to, m; above zero
     * @return taper, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "similar triangles"
     */
    public static double taperOver(double one, double other, double distance, double wanted) {
        Argument.aboveZero("size at one end", one);
        Argument.aboveZero("size at the other end", other);
        Argument.aboveZero("distance between the readings", distance);
        Argument.aboveZero("length it is scaled to", wanted);
        return Math.abs(one - other) * wanted / distance;
    }

    /**
     * Oil pressure at a crankshaft plug when the oil column spins.
     *
     * <p>feed + density · ω² · (radius² − feed radius²) / 2.
     *
     * @param feed       oil pressure, Pa; not below zero
     * @param density    density of the oil, kg/m³; above zero
     * @param speed      crank speed, rad/s; not below zero
     * @param radius     radius of the plug from the crank centre, m; above zero
     * @param feedRadius radius at which the oil enters the crankshaft, m; not below zero
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "fluid in a turning pipe"
     */
    public static double plugPressure(double feed, double density, double speed, double radius, double feedRadius) {
        Argument.notBelowZero("oil pressure", feed);
        Argument.aboveZero("density of the oil", density);
        Argument.notBelowZero("crank speed", speed);
        Argument.aboveZero("radius of the plug from the crank centre", radius);
        Argument.notBelowZero("radius at which the oil enters the crankshaft", feedRadius);
        if (feedRadius > radius) {
            throw new IllegalArgumentException("The radius at which the oil enters must not be above that of the "
                    + "plug.");
        }
        return feed + density * speed * speed * (radius * radius - feedRadius * feedRadius) / 2;
    }

    /**
     * Outward force on a crankshaft plug.
     *
     * <p>pressure · π/4 · diameter² + mass · radius · ω².
     *
     * @param pressure oil pressure at the plug, Pa; not below zero
     * @param diameter diameter of the plug, m; above zero
     * @param mass     mass of the plug, kg; not below zero
     * @param radius   radius of the plug from the crank centre, m; above zero
     * @param speed    crank speed, rad/s; not below zero
     * @return force, N
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double plugForce(double pressure, double diameter, double mass, double radius, double speed) {
        Argument.notBelowZero("oil pressure at the plug", pressure);
        Argument.aboveZero("diameter of the plug", diameter);
        Argument.notBelowZero("mass of the plug", mass);
        Argument.aboveZero("radius of the plug from the crank centre", radius);
        Argument.notBelowZero("crank speed", speed);
        return pressure * Math.PI / 4 * diameter * diameter + CrankTrain.centrifugal(mass, radius, speed);
    }

    /**
     * Friction power of a shaft that runs in the middle of its bearing.
     *
     * <p>viscosity · (ω · d / 2)² · π · d · length / radial clearance.
     *
     * @param viscosity       viscosity of the oil, Pa·s; above zero
     * @param diameter        journal diameter, m; above zero
     * @param length          length of the bearing, m; above zero
     * @param radialClearance radial clearance, m; above zero
     * @param speed           speed, rad/s; not below zero
     * @return power, W
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Petroff, concentric bearing"
     */
    public static double frictionPower(double viscosity, double diameter, double length, double radialClearance,
            double speed) {
        Argument.aboveZero("viscosity of the oil", viscosity);
        Argument.aboveZero("journal diameter", diameter);
        Argument.aboveZero("length of the bearing", length);
        Argument.aboveZero("radial clearance", radialClearance);
        Argument.notBelowZero("speed", speed);
        double surface = speed * diameter / 2;
        return viscosity * surface * surface * Math.PI * diameter * length / radialClearance;
    }

    /**
     * Viscosity from the torque of a shaft that runs in the middle of its bearing.
     *
     * <p>torque · gap / (2π · radius³ · length · ω).
     *
     * @param torque torque, N·m; above zero
     * @param radius radius of the shaft, m; above zero
     * @param gap    radial gap, m; above zero
     * @param length length of the bearing, m; above zero
     * @param speed  speed, rad/s; above zero
     * @return viscosity, Pa·s
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Petroff, concentric bearing"
     */
    public static double viscosityFromTorque(double torque, double radius, double gap, double length, double speed) {
        Argument.aboveZero("torque", torque);
        Argument.aboveZero("radius of the shaft", radius);
        Argument.aboveZero("radial gap", gap);
        Argument.aboveZero("length of the bearing", length);
        Argument.aboveZero("speed", speed);
        return torque * gap / (2 * Math.PI * radius * radius * radius * length * speed);
    }

    /**
     * Load over the bearing's projected area.
     *
     * <p>load / (diameter · length).
     *
     * @param load     load, N; not below zero
     * @param diameter journal diameter, m; above zero
     * @param length   length of the bearing, m; above zero
     * @return pressure, Pa
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double bearingPressure(double load, double diameter, double length) {
        Argument.notBelowZero("load", load);
        Argument.aboveZero("journal diameter", diameter);
        Argument.aboveZero("length of the bearing", length);
        return load / (diameter * length);
    }

    /**
     * Bearing characteristic number.
     *
     * <p>(radius / radial clearance)² · viscosity · turns a second / pressure.
     *
     * @param radius          journal radius, m; above zero
     * @param radialClearance radial clearance, m; above zero
     * @param viscosity       viscosity of the oil, Pa·s; above zero
     * @param turns           turns a second, 1/s; above zero
     * @param pressure        load over the projected area, Pa; above zero
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Mechanical Engineering Design, chapter 12"
     */
    public static double sommerfeld(double radius, double radialClearance, double viscosity, double turns,
            double pressure) {
        Argument.aboveZero("journal radius", radius);
        Argument.aboveZero("radial clearance", radialClearance);
        Argument.aboveZero("viscosity of the oil", viscosity);
        Argument.aboveZero("turns a second", turns);
        Argument.aboveZero("load over the projected area", pressure);
        return radius / radialClearance * (radius / radialClearance) * viscosity * turns / pressure;
    }

    /**
     * Least oil film of a bearing.
     *
     * <p>share of the radial clearance · radial clearance.
     *
     * @param share           least film over radial clearance; from 0 to 1
     * @param radialClearance radial clearance, m; above zero
     * @return film, m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "Mechanical Engineering Design, chapter 12"
     */
    public static double leastFilm(double share, double radialClearance) {
        Argument.share("least film over radial clearance", share);
        Argument.aboveZero("radial clearance", radialClearance);
        return share * radialClearance;
    }

    /**
     * Oil film as built against the sheet's own worst case: thinnest oil, widest clearance.
     *
     * <p>(viscosity / sheet's least viscosity) · (sheet's widest clearance / clearance)².
     *
     * @param viscosity      viscosity of the oil, m²/s; above zero
     * @param sheetViscosity least viscosity of the sheet's oil, m²/s; above zero
     * @param clearance      clearance, m; above zero
     * @param sheetClearance widest clearance of the sheet, m; above zero
     * @return number; below 1 is thinner
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double filmRatio(double viscosity, double sheetViscosity, double clearance, double sheetClearance) {
        Argument.aboveZero("viscosity of the oil", viscosity);
        Argument.aboveZero("least viscosity of the sheet's oil", sheetViscosity);
        Argument.aboveZero("clearance", clearance);
        Argument.aboveZero("widest clearance of the sheet", sheetClearance);
        return viscosity / sheetViscosity * (sheetClearance / clearance) * (sheetClearance / clearance);
    }

    /**
     * Rise of the turning torque with one more part against the middle of the rises with like parts.
     *
     * <p>rise − median of the others.
     *
     * @param rise   rise with this part, N·m
     * @param others rises with like parts, N·m; at least one
     * @return excess, N·m
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "common practice, no source"
     */
    public static double turningTorqueRise(double rise, double... others) {
        Argument.finite("rise with this part", rise);
        Argument.some("rises with like parts", others);
        return rise - Sets.median(others);
    }

    /**
     * Area round a journal that oil leaks through.
     *
     * <p>π · journal · clearance: half of the clearance all round, at both ends.
     *
     * @param journal   journal diameter, m; above zero
     * @param clearance clearance on diameter, m; not below zero
     * @return area, m²
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "plane geometry"
     */
    public static double leakageArea(double journal, double clearance) {
        Argument.aboveZero("journal diameter", journal);
        Argument.notBelowZero("clearance on diameter", clearance);
        return Math.PI * journal * clearance;
    }
}
