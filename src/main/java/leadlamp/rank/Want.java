package leadlamp.rank;

import java.util.ArrayList;
import java.util.List;
import leadlamp.audit.Gap;

/**
 * One thing to do at the bench that settles open questions.
 *
 * @param how  how it is settled
 * @param word what is wanted, in words of the vocabulary
 */
public record Want(How how, String word) implements Comparable<Want> {
    /** How an open question is settled. */
    public enum How {
        /** Read it, look at it or write down what is known. */
        RECORD,
        /** Read it again with a finer gauge. */
        FINER,
        /** Fill in a line of the engine sheet. */
        SHEET
    }

    private static final String OF_THE_SHEET = "sheet ";

    /** What would close this gap; all of it is wanted. */
    static List<Want> of(Gap gap) {
        switch (gap.why()) {
            case TOO_COARSE:
                return List.of(new Want(How.FINER, gap.need()));
            case NO_LIMIT:
                return List.of(new Want(How.SHEET, "limit of " + gap.need()));
            default:
                List<Want> wants = new ArrayList<>();
                for (String reading : gap.readings().isEmpty() ? List.of(gap.need()) : gap.readings()) {
                    wants.add(of(gap.why(), reading));
                }
                return wants;
        }
    }

    private static Want of(Gap.Why why, String reading) {
        if (reading.startsWith(OF_THE_SHEET)) {
            return new Want(How.SHEET, reading.substring(OF_THE_SHEET.length()));
        }
        return new Want(why == Gap.Why.SHEET_SILENT ? How.SHEET : How.RECORD, reading);
    }

    @Override
    public int compareTo(Want other) {
        int byWord = word.compareTo(other.word);
        return byWord != 0 ? byWord : how.compareTo(other.how);
    }
}
