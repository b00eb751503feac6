package leadlamp.derive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlamp.facts.Value;
import leadlamp.record.Place;

/** The values known so far, found again by quantity and place. */
final class Store {
    private final Map<String, Known> byName = new HashMap<>();
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
        // Every word of the shorter place stands in the longer one too.
        if (shorter.length() > longer.length() && !shorter.equals(Place.ENGINE) && banks.isEmpty()) {
            return false;
        }
        return Place.covers(shorter, longer) || byBank(shorter, longer);
    }

    private boolean byBank(String shorter, String longer) {
        return !banks.isEmpty() && Place.covers(shorter, withBank(longer));
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
        put(value.of(), value);
        if (!value.kind().equals(value.of())) {
            put(value.kind(), value);
        }
    }

    private void put(String name, Value value) {
        Known known = byName.get(name);
        if (known == null) {
            known = new Known();
            byName.put(name, known);
        }
        known.all.add(value);
        List<Value> here = known.byPlace.get(value.at());
        if (here == null) {
            here = new ArrayList<>(2);
            known.byPlace.put(value.at(), here);
        }
        here.add(value);
    }

    /** Values of one name, and the same by their places. */
    private static final class Known {
        private final List<Value> all = new ArrayList<>();
        private final Map<String, List<Value>> byPlace = new LinkedHashMap<>();
    }

    /** Values of this quantity, or of this kind, in the order in which they came. */
    List<Value> of(String quantity) {
        Known known = byName.get(quantity);
        return known == null ? List.of() : known.all;
    }

    /** The places at which values of this quantity, or of this kind, stand. */
    Set<String> places(String quantity) {
        Known known = byName.get(quantity);
        return known == null ? Set.of() : known.byPlace.keySet();
    }

    boolean has(String quantity) {
        return byName.containsKey(quantity);
    }

    /**
     * The one value that holds at a place: said of that very place, else of the longest shorter one. What the builder
     * knows himself goes before what he was told, and of two readings of one place the later stands.
     */
    Optional<Value> at(String quantity, String place) {
        Known known = byName.get(quantity);
        if (known == null) {
            return Optional.empty();
        }
        List<Value> here = known.byPlace.get(place);
        if (here != null) {
            return Optional.of(best(here));
        }
        String longest = null;
        Place asked = Place.of(place);
        for (String at : known.byPlace.keySet()) {
            if ((Place.of(at).covers(asked) || byBank(at, place)) && (longest == null || covers(longest, at))) {
                longest = at;
            }
        }
        return longest == null ? Optional.empty() : Optional.of(best(known.byPlace.get(longest)));
    }

    private static Value best(List<Value> here) {
        Value best = here.get(0);
        for (int i = 1; i < here.size(); i++) {
            Value other = here.get(i);
            if (other.told().isEmpty() || !best.told().isEmpty()) {
                best = other;
            }
        }
        return best;
    }

    /** Values at places that belong to this one, the place itself left out; of what was not told which, none. */
    List<Value> within(String quantity, String place) {
        Known known = byName.get(quantity);
        List<Value> within = new ArrayList<>();
        if (known != null) {
            Place asked = Place.of(place);
            for (Map.Entry<String, List<Value>> there : known.byPlace.entrySet()) {
                String at = there.getKey();
                if (!at.equals(place) && (asked.covers(Place.of(at)) || byBank(place, at)) && !untold(at)) {
                    within.add(best(there.getValue()));
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
