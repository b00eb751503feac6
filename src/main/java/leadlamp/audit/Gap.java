package leadlamp.audit;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Why a check cannot tell at a place.
 *
 * @param why       which kind of gap
 * @param need      the need that is not met, in words of the vocabulary
 * @param places    where it is wanted
 * @param readings  the readings that would settle it, in words (those behind a derived value); the need itself where it is read
 * @param outside   probability of being outside where measured and undecided
 * @param chief     the source of doubt that weighs most where too coarse; else empty
 * @param way       the way that needs it
 */
public record Gap(Why why, String need, List<String> places, List<String> readings, OptionalDouble outside,
        String chief, String way) {

    /** The kinds of gap, in the words of record-forms. */
    public enum Why {
        NOT_RECORDED("not recorded"), LEFT_OUT("left out"), UNKNOWN("unknown"), FIGURE_NOT_KEPT("figure not kept"), ONE_SIDE_ONLY("one side only"),
        WHICH_ONE_NOT_TOLD("which one not told"), ONLY_TOLD("only told"), AS_FOUND_ONLY("as found only"),
        NOT_READABLE("not readable"), TOO_COARSE("too coarse"), NO_LIMIT("no limit"), SHEET_SILENT("sheet silent"),
        DUE_LATER("due later");

        private final String word;

        Why(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
