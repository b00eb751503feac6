package leadlamp.past;

import java.util.List;
import leadlamp.audit.Earlier;
import leadlamp.audit.PastEvent;
import leadlamp.audit.PastSign;
import leadlamp.audit.Standing;
import leadlamp.record.Where;

/**
 * The past of one engine, whole: what a writer prints stands here, worked out.
 *
 * @param chapters what is supported or better, earliest first
 * @param faint    what is only weakly supported, by the part of the engine's life that it belongs to
 * @param spent    what is weakly supported by signs that a better supported event explains already
 * @param against  what somebody told or some sign suggests, and the record speaks against
 * @param claims   what is said in the engine's favour, held against the same signs
 * @param hands    what the work of an earlier hand implies for what cannot be seen
 * @param innocent signs that are not held against the engine
 * @param steps    each step of the reasoning
 */
public record Story(List<Chapter> chapters, List<Chapter> faint, List<Chapter> spent, List<Chapter> against, List<Chapter> claims, List<Hand> hands,
        List<Earlier.Innocent> innocent, List<Earlier.Step> steps) {

    /**
     * One event.
     *
     * @param number    from 1 among the chapters; 0 where it is none
     * @param voices    the signs for it and against it, those of one sign and weight together
     * @param after     earlier events of this story that lead to it
     * @param fits      what else explains the signs, best supported first
     * @param explained a better supported event that explains every sign for this one; empty where there is none
     * @param looks     the damage that follows
     */
    public record Chapter(int number, PastEvent event, Standing standing, List<Spoken> voices, List<PastEvent> after,
            List<Fits> fits, List<PastEvent> explained, List<Earlier.Look> looks) {
        /** Damage that nobody is recorded to have looked for. */
        public List<Earlier.Look> open() {
            return looks.stream().filter(Earlier.Look::open).toList();
        }
    }

    /**
     * One sign, speaking for an event or against it.
     *
     * @param sign   absent where somebody told of the event
     * @param told   who told it; empty where it was seen or read
     * @param idle   whether it speaks against the event where nothing speaks for it, and so changes nothing
     * @param places its lines, in their order
     */
    public record Spoken(boolean speaksFor, boolean strong, List<PastSign> sign, List<String> at, String told, boolean idle,
            List<Where> places) {
        /** What it is, in a few words. */
        public String text() {
            return sign.isEmpty() ? "told by " + told : sign.get(0).sign() + (told.isEmpty() ? "" : ", told by " + told);
        }
    }

    /** Another event that explains the signs of this one, how it stands itself, and the one look that tells the two apart. */
    public record Fits(PastEvent event, Standing standing, String tellApart) {
    }

    /**
     * What an earlier hand could reach.
     *
     * @param step   the step that closes it off: `timing cover fitted`
     * @param joints joints behind it
     * @param unseen those of them of which the record says nothing
     * @param places the lines that show the hand
     */
    public record Hand(String step, List<String> joints, List<String> unseen, List<Where> places) {
    }
}
