package leadlamp.calc;

/**
 * A screw thread: its family, nominal diameter and pitch, both in m. Read one with {@link Threads#named}.
 *
 * @param name     designation in its usual spelling: `M8x1.25`, `5/16-18 UNC`
 * @param family   family, which sets the shape of the flanks
 * @param diameter nominal diameter, m; above zero
 * @param pitch    pitch, m; above zero, below 0.4 of the diameter
 */
public record ScrewThread(String name, Family family, double diameter, double pitch) {

    /** Families of thread and what of the pitch lies between nominal and other diameters. */
    public enum Family {
        /** ISO metric, 60 degrees. */
        METRIC(0.6495190528, 1.0825317547, 1.2268693220, 0.9381941874, Math.PI / 6),
        /** Unified, 60 degrees; its stress area is by the older, smaller rule of ASME B1.1 (from memory). */
        UNIFIED(0.6495190528, 1.0825317547, 1.2268693220, 0.974279, Math.PI / 6),
        /** Whitworth form, 55 degrees (from memory: BS 84). */
        WHITWORTH(0.640327, 1.280654, 1.280654, 0.9604905, Math.toRadians(27.5));

        private final double toPitchDiameter;
        private final double toMinor;
        private final double toCore;
        private final double toStress;
        private final double halfAngle;

        Family(double toPitchDiameter, double toMinor, double toCore, double toStress, double halfAngle) {
            this.toPitchDiameter = toPitchDiameter;
            this.toMinor = toMinor;
            this.toCore = toCore;
            this.toStress = toStress;
            this.halfAngle = halfAngle;
        }
    }

    /** Refuses a thread that cannot be cut. */
    public ScrewThread {
        Argument.aboveZero("thread diameter", diameter);
        Argument.aboveZero("pitch", pitch);
        if (pitch >= 0.4 * diameter) {
            throw new IllegalArgumentException("The pitch must be below 0.4 of the thread diameter.");
        }
    }

    /** Pitch diameter, m: nominal less 0.6495 pitches for 60 degree threads (ISO 724). */
    public double pitchDiameter() {
        return diameter - family.toPitchDiameter * pitch;
    }

    /** Minor diameter of the hole's thread, m: nominal less 1.0825 pitches for 60 degree threads (ISO 724). */
    public double minorDiameter() {
        return diameter - family.toMinor * pitch;
    }

    /** Core diameter of the bolt's thread, m: nominal less 1.2269 pitches for 60 degree threads (ISO 68-1). */
    public double coreDiameter() {
        return diameter - family.toCore * pitch;
    }

    /** Tensile stress area, m². See {@link Threads#stressArea} for the metric rule. */
    public double stressArea() {
        double mean = stressDiameter();
        return Math.PI / 4 * mean * mean;
    }

    /** Diameter of the circle that has the stress area, m: nominal less 0.9382 pitches for ISO metric threads (ISO 898-1, from memory). */
    public double stressDiameter() {
        return diameter - family.toStress * pitch;
    }

    /** Half of the angle between the flanks, rad. */
    public double halfAngle() {
        return family.halfAngle;
    }
}
