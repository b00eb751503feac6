package leadlamp.facts;

import java.util.List;
import leadlamp.record.Where;

/** A sign looked for and not there. It meets a need; no rule matches it. */
public record NotSeen(String of, String kind, String at, String sign, List<Where> places) implements Fact {
}
