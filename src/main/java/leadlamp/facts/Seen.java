package leadlamp.facts;

import java.util.List;
import java.util.Map;
import leadlamp.record.Where;

/** A sign seen: the skirt of piston 2 is scuffed. {@code told} is empty where the builder saw it. */
public record Seen(String of, String kind, String at, String sign, String told, Map<String, String> asides,
        List<Where> places) implements Fact {
}
