package leadlamp.judge;

import leadlamp.record.LimitLine;

/**
 * A line of limits that applies to a value, or may.
 *
 * @param holds    whether its words hold
 * @param taken    whether it is only taken that the reading was made as the line wants, for the record does not say
 * @param newAlone whether it is for new parts and this one has run
 * @param scale    what its figures are to be multiplied by
 * @param shift    what is added to them, SI: the undersize of a ground journal
 * @param note     what the reader must know of it; may be empty
 */
record Candidate(LimitLine line, Holds holds, boolean taken, boolean newAlone, double scale, double shift, String note) {
    /** Whether it applies for certain. */
    boolean sure() {
        return holds == Holds.YES && !taken;
    }
}
