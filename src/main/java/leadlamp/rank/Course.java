package leadlamp.rank;

import java.util.List;

/**
 * The steps of this engine in their order, and where the work stands.
 *
 * @param rungs all its steps, first to last
 * @param next  the step that is meant next, else those that may come next; empty where all is done
 */
public record Course(List<Rung> rungs, List<String> next) {
    /** Where a step stands. */
    public enum Standing {
        /** The record says that it is done. */
        BEHIND,
        /** It is done next. */
        NEXT,
        /** It comes later. */
        AHEAD
    }

    /** One step. */
    public record Rung(String step, Standing standing) {
    }
}
