package leadlamp.audit;

import java.util.List;

/**
 * Something that may have happened to an engine before it came here.
 *
 * @param id           its name
 * @param word         its word under `build: past`
 * @param event        what it is, in a few words
 * @param claim        whether it is a thing said in the engine's favour, which the same signs test
 * @param when         the part of an engine's life that it belongs to
 * @param byHand       whether it is the work of an earlier hand
 * @param leadsTo      events that it leads to: where both stand, it came first
 * @param severity     the worst that follows from it
 * @param contradicted plain facts that speak against it
 * @param hidden       the damage that follows
 * @param alsoCheck    what else to look at
 * @param renew        what to renew
 * @param elses        what explains the same signs
 * @param basis        what this rests on
 */
public record PastEvent(String id, String word, String event, boolean claim, When when, boolean byHand,
        List<String> leadsTo, Severity severity, List<String> contradicted, List<Hidden> hidden, List<String> alsoCheck,
        List<String> renew, List<Else> elses, String basis) {

    /** Parts of an engine's life, in their order. */
    public enum When {
        PUT_TOGETHER("put together"), KEPT("kept"), FAILED("failed"), FOLLOWED("followed"), AFTERWARDS("afterwards");

        private final String word;

        When(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * Damage that follows where nobody sees it.
     *
     * @param looked by what words of a record the look is known to have been taken, any one of them; none where a record
     *               has no words for it
     * @param unless what the engine sheet says where the engine cannot have this damage
     */
    public record Hidden(String damage, String look, List<Looked> looked, List<Looked> unless) {
    }

    /**
     * What another event would look like, and the one look that tells the two apart.
     */
    public record Else(String event, String tellApart) {
    }

    /**
     * Words of a record that show a look, or a renewal that spares it.
     *
     * @param text as written
     * @param fact `Seen` for a sign looked for, whether it was there or not; `Value` for a reading; `Stated` for a word
     * @param of   part, quantity or section
     * @param what sign or property; empty for a reading
     * @param says what the word must say; empty where anything will do
     * @param fault whether a sign seen is the damage, or speaks for the part
     */
    public record Looked(String text, String fact, String of, String what, List<String> says, boolean fault) {
        /** Whether this is a part that was renewed, so that no look is needed. */
        public boolean renewed() {
            return what.equals("state");
        }
    }
}
