package leadlamp.rank;

import java.util.List;
import java.util.Optional;
import leadlamp.audit.Answer;
import leadlamp.audit.Check;
import leadlamp.audit.Gap;
import leadlamp.audit.Severity;
import leadlamp.facts.Ask;
import leadlamp.record.Build;

/**
 * One answer, weighed.
 *
 * @param answer    the answer
 * @param weights   of the ways that found, or that are open; heaviest first; empty where it is clear
 * @param certainty of the heaviest finding; absent where nothing was found
 * @param chance    its last chance
 * @param accepted  the entry of the record by which the builder lives with it
 */
public record Ranked(Answer answer, List<Weight> weights, Optional<Certainty> certainty, Chance chance,
        Optional<Build.Accepted> accepted) {

    public Check check() {
        return answer.check();
    }

    public Ask ask() {
        return answer.ask();
    }

    /** Whether it can hurt somebody. */
    public boolean person() {
        return check().person();
    }

    /** The heaviest weight. */
    public Optional<Weight> heaviest() {
        return weights.isEmpty() ? Optional.empty() : Optional.of(weights.get(0));
    }

    /** The worst harm of its ways. */
    public Severity worst() {
        Severity worst = check().severity();
        for (int i = 0; i < weights.size(); i++) {
            Severity here = weights.get(i).severity();
            if (i == 0 || here.compareTo(worst) < 0) {
                worst = here;
            }
        }
        return worst;
    }

    /** The greatest probability of being outside where it was measured and is undecided; else 0. */
    public double outside() {
        double most = 0;
        for (Gap gap : gaps()) {
            most = Math.max(most, gap.outside().orElse(0));
        }
        return most;
    }

    /** What it lacks. */
    public List<Gap> gaps() {
        if (answer instanceof Answer.CannotTell open) {
            return open.gaps();
        }
        return answer instanceof Answer.Found found ? found.gaps() : List.of();
    }
}
