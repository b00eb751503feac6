package leadlamp.facts;

import java.util.List;
import leadlamp.record.Where;

/**
 * One line of the engine sheet: the joint `oil pump to block` is to be dry.
 *
 * @param of   the part, `joint`, or the section (`layout`, `output`, `materials` ...)
 * @param kind the kind of the part, its own name where it has none
 * @param at   the place
 * @param what the property or the line
 * @param says the word, as written where it is a size
 */
public record OnSheet(String of, String kind, String at, String what, String says, List<Where> places)
        implements Fact {
}
