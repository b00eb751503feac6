package leadlamp.teach;

import java.util.List;

/**
 * One look at an engine with an unknown past.
 *
 * @param id       its name
 * @param depth    how deep one must go
 * @param look     what to look at
 * @param question what it is to tell
 * @param good     what good looks like
 * @param bad      what bad looks like
 * @param record   the words in which the answer is written
 * @param tells    events of the past that it speaks for or against
 * @param caution  may be empty
 * @param basis    where it comes from
 */
public record Look(String id, Depth depth, String look, String question, String good, String bad, List<String> record,
        List<String> tells, String caution, String basis) {
    static final String PRACTICE = "common practice, no source";

    /**
     * How deep a look goes.
     *
     * @param order from the shallowest on
     * @param name  in a word
     * @param reach strip level of the vocabulary, 0 to 4
     * @param means what has come off
     */
    public record Depth(int order, String name, int reach, String means) {
    }
}
