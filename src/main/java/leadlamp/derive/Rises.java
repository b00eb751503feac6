package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.facts.Value;
import leadlamp.quantity.Estimate;

/**
 * How much harder the crankshaft turned once a cap was tight, against its mates: main caps against main caps, rods against
 * rods. The readings stand in the order of the work; before the first main cap it turns with no effort worth reading.
 */
final class Rises {
    private static final int MATES = 3;
    private static final String MAIN = "main ";

    private Rises() {
    }

    static List<String> places(Site site) {
        List<Value> read = read(site);
        List<String> places = new ArrayList<>();
        for (int i = 0; i < read.size(); i++) {
            if (rise("", read, i).isPresent()) {
                places.add(read.get(i).at());
            }
        }
        return places;
    }

    static Take here() {
        return Take.by("rise here", (site, place) -> {
            List<Value> read = read(site);
            for (int i = 0; i < read.size(); i++) {
                if (read.get(i).at().equals(place)) {
                    return rise("rise here", read, i);
                }
            }
            return Optional.empty();
        });
    }

    static Take others() {
        return new Take("rises of its mates") {
            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> read = read(site);
                List<Value> others = new ArrayList<>();
                for (int i = 0; i < read.size(); i++) {
                    String at = read.get(i).at();
                    if (!at.equals(place) && at.startsWith(MAIN) == place.startsWith(MAIN)) {
                        rise(name(), read, i).ifPresent(others::add);
                    }
                }
                return others.size() < MATES ? Optional.empty() : Optional.of(new Slot(name(), others, Slot.Reduce.MEAN));
            }

            @Override
            String lacks() {
                return "crankshaft turning torque";
            }
        };
    }

    private static List<Value> read(Site site) {
        List<Value> read = new ArrayList<>();
        for (Value v : site.store.of("crankshaft turning torque")) {
            if (v.of().equals("crankshaft turning torque") && v.plain() && (v.at().startsWith(MAIN) || v.at().startsWith("big end "))) {
                read.add(v);
            }
        }
        return read;
    }

    private static Optional<Value> rise(String name, List<Value> read, int i) {
        Value here = read.get(i);
        Estimate now = here.low().orElseThrow();
        if (i == 0 && !here.at().startsWith(MAIN)) {
            return Optional.empty();
        }
        var doubt = new java.util.TreeMap<>(now.doubt());
        double before = 0;
        if (i > 0) {
            Estimate last = read.get(i - 1).low().orElseThrow();
            before = last.value();
            last.doubt().forEach((source, part) -> doubt.merge(source, -part, Double::sum));
        }
        Optional<Estimate> rise = Optional.of(new Estimate(now.value() - before, now.dimension(), doubt));
        return Optional.of(new Value(name, name, here.at(), rise, rise, here.unit(), here.figures(), "", here.usual(), "", here.told(),
                java.util.Map.of(), here.places()));
    }
}
