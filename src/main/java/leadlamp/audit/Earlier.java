package leadlamp.audit;

import java.util.List;
import java.util.Map;
import leadlamp.facts.Fact;
import leadlamp.record.Where;

/**
 * What the record shows of the engine's past, frozen before any check is asked.
 *
 * @param happened events that something speaks for, by name
 * @param setAside signs that are innocent here, by sign and place
 * @param steps    each step of the reasoning, in its order: which rule matched what
 */
public record Earlier(List<Happened> happened, List<Innocent> setAside, List<Step> steps) {

    /**
     * An event that something speaks for.
     *
     * @param voices for it and against it; strong before weak, then by sign and place
     * @param looks  the damage that follows, each with what the record shows of it
     */
    public record Happened(PastEvent event, Standing standing, List<Voice> voices, List<Look> looks) {
    }

    /**
     * Damage that follows from an event.
     *
     * @param by what in the record shows that somebody looked, or that the part was renewed; empty where nothing does
     */
    public record Look(PastEvent.Hidden hidden, Map<Fact, How> by) {
        /** Whether the record shows that it was looked for, or that the part was renewed. */
        public boolean done() {
            return !by.isEmpty();
        }

        /** Whether nobody looked, although a record has words for it. */
        public boolean open() {
            return by.isEmpty() && !hidden.looked().isEmpty();
        }

        /** The most that is known: found, else looked for, else renewed. */
        public How how() {
            return by.containsValue(How.FOUND) ? How.FOUND : by.containsValue(How.LOOKED_FOR) ? How.LOOKED_FOR : How.RENEWED;
        }
    }

    /** What a line of the record shows of damage that follows. */
    public enum How {
        FOUND, LOOKED_FOR, RENEWED
    }

    /** A sign that is not held against the engine here, and why. */
    public record Innocent(PastSign sign, String at, String because, List<Where> places) {
    }

    /** One rule that matched: what it says, and the lines it matched. */
    public record Step(String rule, String at, List<Where> places) {
    }
}
