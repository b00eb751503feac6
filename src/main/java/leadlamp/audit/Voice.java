package leadlamp.audit;

import java.util.List;
import leadlamp.record.Where;

/**
 * One sign at one place, speaking for an event or against it.
 *
 * @param speaksFor whether it speaks for it
 * @param strong    whether it alone should make an examiner look
 * @param sign      the sign; {@link #TOLD} where somebody told of the event
 * @param family    signs of one family count once
 * @param told      who told it; empty where it was seen or read
 * @param places    its lines
 */
public record Voice(boolean speaksFor, boolean strong, String sign, String family, String at, String told,
        List<Where> places) {
    /** In place of a sign, where the owner or the papers tell of the event. It is a weak voice. */
    public static final String TOLD = "told";
}
