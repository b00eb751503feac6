package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.facts.Value;
import leadlamp.quantity.Estimate;

/** How much harder the crankshaft turned after each step, against its like steps; the readings stand in the order of the work. */
final class Rises {
    private static final int LIKE_STEPS = 3;

    private Rises() {
    }

    static List<String> steps(Site site) {
        List<Value> read = read(site);
        List<String> steps = new ArrayList<>();
        for (int i = 1; i < read.size(); i++) {
            steps.add(read.get(i).at());
        }
        return steps;
    }

    static Take here() {
        return Take.by("rise here", (site, place) -> {
            List<Value> read = read(site);
            for (int i = 1; i < read.size(); i++) {
                if (read.get(i).at().equals(place)) {
                    return rise("rise here", read, i);
                }
            }
            return Optional.empty();
        });
    }

    static Take others() {
        return new Take("rises of like steps") {
            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> read = read(site);
                List<Value> others = new ArrayList<>();
                for (int i = 1; i < read.size(); i++) {
                    if (!read.get(i).at().equals(place)) {
                        rise(name(), read, i).ifPresent(others::add);
                    }
                }
                return others.size() < LIKE_STEPS ? Optional.empty() : Optional.of(new Slot(name(), others, Slot.Reduce.MEAN));
            }
        };
    }

    private static List<Value> read(Site site) {
        List<Value> read = new ArrayList<>();
        for (Value v : site.store.of("crankshaft turning torque")) {
            if (v.of().equals("crankshaft turning torque") && v.plain()) {
                read.add(v);
            }
        }
        return read;
    }

    private static Optional<Value> rise(String name, List<Value> read, int i) {
        Value here = read.get(i);
        Estimate now = here.low().orElseThrow();
        Estimate before = read.get(i - 1).low().orElseThrow();
        var doubt = new java.util.TreeMap<>(now.doubt());
        before.doubt().forEach((source, part) -> doubt.merge(source, -part, Double::sum));
        Optional<Estimate> rise = Optional.of(new Estimate(now.value() - before.value(), now.dimension(), doubt));
        return Optional.of(new Value(name, name, here.at(), rise, rise, here.unit(), here.figures(), "", here.usual(), "", here.told(),
                java.util.Map.of(), here.places()));
    }
}
