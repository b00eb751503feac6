package leadlamp.facts;

import java.util.List;
import leadlamp.record.Where;

/** A named condition of the whole build that holds: rev limit raised. Worked out first, then frozen. */
public record Condition(String name, List<Where> places) implements Fact {
    @Override
    public String at() {
        return "engine";
    }
}
