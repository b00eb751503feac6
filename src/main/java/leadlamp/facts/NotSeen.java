package leadlamp.facts;

import java.util.List;
import java.util.Map;
import leadlamp.record.Where;

/** A sign looked for and not there. It meets a need; no rule matches it. */
public record NotSeen(String of, String kind, String at, String sign, Map<String, String> asides,
        List<Where> places) implements Fact {
}
