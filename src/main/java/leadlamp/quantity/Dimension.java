package leadlamp.quantity;

import java.util.Optional;

/** What a value is of: a length, a torque. Degrees of the crankshaft are their own, so cam and crank degrees never mix. */
public enum Dimension {
    NUMBER("number"), COUNT("count"), SHARE("share"), VOLUME_SHARE("volume share"), MASS_SHARE("mass share"),
    LENGTH("length"), AREA("area"), VOLUME("volume"), MASS("mass"), TIME("time"),
    ANGLE("angle"), CRANK_ANGLE("crank angle"), SPEED("speed"), LINEAR_SPEED("linear speed"),
    ACCELERATION("acceleration"), FREQUENCY("frequency"),
    FORCE("force"), TORQUE("torque"), POWER("power"), PRESSURE("pressure"), STRESS("stress"), STIFFNESS("stiffness"),
    TEMPERATURE("temperature"), TEMPERATURE_DIFFERENCE("temperature difference"),
    VOLUME_FLOW("volume flow"), MASS_FLOW("mass flow"), MASS_PER_VOLUME("mass per volume"),
    VOLTAGE("voltage"), CURRENT("current"), RESISTANCE("resistance"), INDUCTANCE("inductance"),
    MAGNETIC_FIELD("magnetic field"), UNBALANCE("unbalance"), HARDNESS("hardness"), VISCOSITY("viscosity");

    private final String word;

    Dimension(String word) {
        this.word = word;
    }

    /** The word of the vocabulary. */
    public String word() {
        return word;
    }

    /** The dimension of this word of the vocabulary. */
    public static Optional<Dimension> named(String word) {
        for (Dimension d : values()) {
            if (d.word.equals(word)) {
                return Optional.of(d);
            }
        }
        return Optional.empty();
    }
}
