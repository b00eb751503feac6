package leadlamp.derive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leadlamp.facts.Value;
import leadlamp.quantity.Unit;

/** What a formula works from: its figures by name, SI, as they are tried just now. */
final class In {
    private final String place;
    private final Slot[] slots;
    private final double[][] now;
    private final Map<String, int[]> sharing = new HashMap<>();

    In(String place, List<Slot> slots) {
        this.place = place;
        this.slots = slots.toArray(new Slot[0]);
        this.now = new double[this.slots.length][];
        for (int i = 0; i < now.length; i++) {
            now[i] = new double[this.slots[i].values().size()];
        }
    }

    void set(int slot, int index, double si) {
        now[slot][index] = si;
    }

    /** Where it is worked out. */
    String place() {
        return place;
    }

    /** Whether something stands under this name; only what is optional may not. */
    boolean has(String name) {
        return index(name) >= 0;
    }

    /** The figure of this name, SI. */
    double get(String name) {
        int i = index(name);
        if (i < 0) {
            throw new IllegalStateException("no " + name + " is said to be taken");
        }
        return slots[i].figure(now[i]);
    }

    /** The figure of this name, or another where it was not said. */
    double get(String name, double otherwise) {
        int i = index(name);
        return i < 0 ? otherwise : slots[i].figure(now[i]);
    }

    /** All figures of this name. */
    double[] all(String name) {
        int i = index(name);
        return i < 0 ? new double[0] : now[i].clone();
    }

    /** The places of those figures, in the same order. */
    List<String> placesOf(String name) {
        List<String> places = new ArrayList<>();
        int i = index(name);
        if (i >= 0) {
            for (Value value : slots[i].values()) {
                places.add(value.at());
            }
        }
        return places;
    }

    /** Which of those figures share a place of the group: for each figure the number of its place, in order of first sight. */
    int[] sharing(String name, String group) {
        // A sum is tried many times with other figures and never with other places.
        return sharing.computeIfAbsent(name + " of " + group, k -> {
            List<String> places = placesOf(name);
            Map<String, Integer> seen = new HashMap<>();
            int[] sharing = new int[places.size()];
            for (int i = 0; i < sharing.length; i++) {
                String shorter = Placing.shortened(places.get(i), group);
                Integer known = seen.putIfAbsent(shorter, seen.size());
                sharing[i] = known == null ? seen.size() - 1 : known;
            }
            return sharing;
        });
    }

    /** One aside of the first value under this name; empty where it has none. */
    String aside(String name, String key) {
        int i = index(name);
        return i < 0 ? "" : slots[i].values().get(0).asides().getOrDefault(key, "");
    }

    /** One aside of one of several values. */
    String aside(String name, int which, String key) {
        return slots[index(name)].values().get(which).asides().getOrDefault(key, "");
    }

    /** Whether one of several values is tried at its low end just now. */
    boolean lowEnd(String name, int which) {
        return slots[index(name)].values().get(which).low().filter(low -> low.value() == now[index(name)][which]).isPresent();
    }

    /** The figure of this name as text, in the unit of the record. */
    String show(String name) {
        int i = index(name);
        if (i < 0) {
            return "";
        }
        Value first = slots[i].values().get(0);
        boolean mean = slots[i].reduce() == Slot.Reduce.MEAN && slots[i].values().size() > 1;
        return Figures.text(slots[i].figure(now[i]), first.unit(), first.figures() + (mean ? 1 : 0));
    }

    /** Another figure, in the unit and with the decimals of this one. */
    String show(double si, String like) {
        int i = index(like);
        Value first = slots[i].values().get(0);
        return Figures.text(si, first.unit(), first.figures());
    }

    /** A figure on the way, in a unit of its own. */
    static String show(double si, Unit unit, int decimals) {
        return Figures.text(si, unit, decimals);
    }

    private int index(String name) {
        for (int i = 0; i < slots.length; i++) {
            if (slots[i].name().equals(name)) {
                return i;
            }
        }
        return -1;
    }
}
