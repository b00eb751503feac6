package leadlamp.rank;

/**
 * One thing to do at the bench that settles open questions.
 *
 * @param how  how it is settled
 * @param word what is wanted: a reading, a part to look at, a step, a line of the sheet; in words of the vocabulary
 */
public record Want(How how, String word) implements Comparable<Want> {
    /** How an open question is settled. */
    public enum How {
        /** Read it, or write down what is known. */
        RECORD,
        /** Look at this part and write down what there is to say of it. */
        LOOK,
        /** Look at the joint of this name and write down what there is to say of it; no name where it is several. */
        JOINT,
        /** Read it again with a finer gauge. */
        FINER,
        /** Fill in a line of the engine sheet. */
        SHEET
    }

    @Override
    public int compareTo(Want other) {
        int byWord = word.compareTo(other.word);
        return byWord != 0 ? byWord : how.compareTo(other.how);
    }
}
