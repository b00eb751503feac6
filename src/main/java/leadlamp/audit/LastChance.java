package leadlamp.audit;

/**
 * The last chance to settle something or put it right: the first step that closes a need of the check there, or the page's own.
 *
 * @param step     the step; empty where nothing closes it
 * @param standing where that step stands
 */
public record LastChance(String step, Standing standing) {
    static final LastChance NONE = new LastChance("", Standing.NONE);

    /** Where the closing step stands. */
    public enum Standing {
        /** The next step closes it, or one that must be done before that. */
        NEXT,
        /** It is closed already. */
        PASSED,
        /** A later step closes it. */
        LATER,
        /** No step closes it. */
        NONE
    }

    /** Whether it cannot wait for a later step. */
    boolean due() {
        return standing == Standing.NEXT || standing == Standing.PASSED;
    }
}
