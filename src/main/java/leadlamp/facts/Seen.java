package leadlamp.facts;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlamp.record.Where;

/** A sign seen: the skirt of piston 2 is scuffed. {@code told} is empty where the builder saw it. */
public record Seen(String of, String kind, String at, String sign, String told, Map<String, String> asides,
        List<Where> places) implements Fact {
    private static final String AS = "as";
    private static final String FOUND = "found";
    private static final String SINCE = "since";
    private static final String GONE = "gone";

    /** Whether it was seen on the engine as it goes together, and not as it came apart. */
    public boolean isLeft() {
        return !FOUND.equals(asides.get(AS));
    }

    /** Whether it is still there as far as the record goes: neither looked for since it was found or tried, nor the part changed or worked on. */
    public boolean isStill() {
        return !GONE.equals(asides.get(SINCE));
    }

    /** The same sign, seen as found or on a trial, and gone since. */
    public Seen gone() {
        Map<String, String> with = new TreeMap<>(asides);
        with.put(SINCE, GONE);
        return new Seen(of, kind, at, sign, told, with, places);
    }
}
