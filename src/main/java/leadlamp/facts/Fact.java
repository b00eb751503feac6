package leadlamp.facts;

import java.util.List;
import leadlamp.record.Place;
import leadlamp.record.Where;

/** What a rule may match. Small, immutable, and each knows the lines that it comes from. */
public sealed interface Fact permits Ask, Stated, Seen, NotSeen, OnSheet, Value, Verdict, Condition, Shown {

    /** The lines of record and sheet that this rests on, in their order; empty for what is asked. */
    List<Where> places();

    /** Where it is said of; `engine` for what there is once. */
    String at();

    /** Who told it, where the builder has it from somebody; else empty. */
    default String told() {
        return "";
    }

    /** Whether this, said at its place, holds at the given one: the same place or a longer one. */
    default boolean holdsAt(String place) {
        return Place.covers(at(), place);
    }

    /** Whether this stands at the given place or at one that belongs to it: `1 top thrust` belongs to `1`. */
    default boolean belongsTo(String place) {
        return Place.covers(place, at());
    }

    /** Whether this holds at the given place or belongs to it. */
    default boolean near(String place) {
        return Place.related(at(), place);
    }
}
