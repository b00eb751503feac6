package leadlamp.audit;

import java.util.List;

/** How far the work is in one build, and what each step will close. */
interface Progress {
    /** Whether the step is done, or stands before one that is. */
    boolean behind(String step);

    /** Whether the step is the next one, or must be done before it. */
    boolean dueNow(String step);

    /** Whether everything open is due now: an engine is about to be bought or refused. */
    boolean allDue();

    /** Steps that close a part, reading or sign of this name (`joint oil pump to block`), in their order. */
    List<String> closing(String word);

    /** Steps that want this one to be done first. */
    List<String> following(String step);

    /** Where a step stands in the order of the work. */
    int order(String step);
}
