package leadlamp.audit;

import java.util.List;
import leadlamp.facts.Ask;
import leadlamp.facts.Fact;
import leadlamp.facts.Verdict;

/** What came of one check at one place: found, clear, or cannot tell. */
public sealed interface Answer {
    Check check();

    Ask ask();

    /** Something is wrong, in one way or more. */
    record Found(Check check, Ask ask, List<Finding> findings, List<Gap> gaps) implements Answer {
    }

    /** All that its ways need is there, and none found. {@code grounds} are the facts that met the needs. */
    record Clear(Check check, Ask ask, List<Fact> grounds, List<Verdict> margins) implements Answer {
    }

    /** Nothing was found, and something needed is not there. {@code later} where none of it is due yet. */
    record CannotTell(Check check, Ask ask, List<Gap> gaps, boolean later) implements Answer {
    }
}
