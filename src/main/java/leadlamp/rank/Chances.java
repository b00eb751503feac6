package leadlamp.rank;

import leadlamp.audit.Answer;

/** The last chance of an answer, by the graph of the steps. */
@FunctionalInterface
public interface Chances {
    Chance of(Answer answer);
}
