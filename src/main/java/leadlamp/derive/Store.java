package leadlamp.derive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.facts.Value;
import leadlamp.record.Place;

/** The values known so far, found again by quantity and place. */
final class Store {
    private final Map<String, List<Value>> byName = new HashMap<>();
    private final Map<String, String> banks;
    private final Map<String, String> whole = new HashMap<>();

    /**
     * An empty store.
     *
     * @param banks bank of each cylinder; empty for an engine of one row
     */
    Store(Map<String, String> banks) {
        this.banks = banks;
    }

    /** Whether what is said at the shorter place holds at the longer one; a cylinder belongs to its bank. */
    boolean covers(String shorter, String longer) {
        return Place.covers(shorter, longer) || !banks.isEmpty() && Place.covers(shorter, withBank(longer));
    }

    private String withBank(String place) {
        return whole.computeIfAbsent(place, p -> {
            String before = p.startsWith("big end ") ? "big end " : "";
            String rest = p.substring(before.length());
            int blank = rest.indexOf(' ');
            String bank = banks.get(blank < 0 ? rest : rest.substring(0, blank));
            return bank == null ? p : p + " " + bank;
        });
    }

    void add(Value value) {
        byName.computeIfAbsent(value.of(), q -> new ArrayList<>()).add(value);
        if (!value.kind().equals(value.of())) {
            byName.computeIfAbsent(value.kind(), q -> new ArrayList<>()).add(value);
        }
    }

    /** Values of this quantity, or of this kind, in the order in which they came. */
    List<Value> of(String quantity) {
        return byName.getOrDefault(quantity, List.of());
    }

    boolean has(String quantity) {
        return byName.containsKey(quantity);
    }

    /**
     * The one value that holds at a place: said of that very place, else of the longest shorter one. What the builder
     * knows himself goes before what he was told, and of two readings of one place the later stands.
     */
    Optional<Value> at(String quantity, String place) {
        Value best = null;
        for (Value value : of(quantity)) {
            if (covers(value.at(), place) && (best == null || !better(best, value))) {
                best = value;
            }
        }
        return Optional.ofNullable(best);
    }

    private boolean better(Value best, Value other) {
        if (!best.at().equals(other.at())) {
            return covers(other.at(), best.at());
        }
        return best.told().isEmpty() && !other.told().isEmpty();
    }

    /** Values at places that belong to this one, the place itself left out; of what was not told which, none. */
    List<Value> within(String quantity, String place) {
        List<Value> within = new ArrayList<>();
        for (Value value : of(quantity)) {
            if (!value.at().equals(place) && covers(place, value.at()) && !untold(value.at())) {
                within.removeIf(v -> v.at().equals(value.at()) && (value.told().isEmpty() || !v.told().isEmpty()));
                if (within.stream().noneMatch(v -> v.at().equals(value.at()))) {
                    within.add(value);
                }
            }
        }
        return within;
    }

    /** Whether the record does not say which of several places is meant. */
    static boolean untold(String place) {
        return place.startsWith("one of ") || place.startsWith("some of ");
    }
}
