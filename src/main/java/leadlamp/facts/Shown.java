package leadlamp.facts;

import java.util.List;
import leadlamp.record.Where;

/**
 * A sign of the past that the record shows at a place. Worked out from what was seen, said and read, then frozen: what may
 * have happened is weighed on these alone.
 *
 * @param sign   its name among the signs of the past
 * @param told   who told it; empty where it is the builder's own knowledge
 * @param places the lines that show it
 */
public record Shown(String sign, String at, String told, List<Where> places) implements Fact {
}
