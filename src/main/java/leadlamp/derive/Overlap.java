package leadlamp.derive;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.calc.ValveRoom;
import leadlamp.facts.Value;

/** Two valves that pass each other while both are open: lifts at like crank angles, heads, lean. */
final class Overlap {
    private static final String LIFTS = "valve lift through overlap";

    private Overlap() {
    }

    /** Lifts of one cylinder, intake and exhaust by turns, each pair at one crank angle. */
    static Take lifts() {
        return new Take(LIFTS) {
            @Override
            String quantity() {
                return LIFTS;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Map<String, Value[]> byAngle = new LinkedHashMap<>();
                for (Value lift : site.store.of(LIFTS)) {
                    if (lift.plain() && lift.of().equals(LIFTS) && site.store.covers(place, lift.at())) {
                        Value[] pair = byAngle.computeIfAbsent(lift.asides().getOrDefault("at angle", ""), a -> new Value[2]);
                        int side = (" " + lift.at() + " ").contains(" exhaust ") ? 1 : 0;
                        pair[side] = pair[side] == null || lift.low().get().value() > pair[side].low().get().value() ? lift : pair[side];
                    }
                }
                List<Value> pairs = new ArrayList<>();
                for (Value[] pair : byAngle.values()) {
                    if (pair[0] != null && pair[1] != null) {
                        pairs.addAll(List.of(pair));
                    }
                }
                return pairs.isEmpty() ? Optional.empty() : Optional.of(new Slot(LIFTS, pairs, Slot.Reduce.MEAN));
            }
        };
    }

    /** The larger head of a side. */
    static Take head(String side) {
        return new Take(side + " valve head") {
            @Override
            String quantity() {
                return "valve head diameter";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                return Take.greatest("valve head diameter").at(site, place + " " + side)
                        .map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }

    /** Lean of a side's valves from the line of the bore: its own on the sheet, else that of both. */
    static Take lean(String side) {
        String name = side + " valve angle";
        return Take.by(name, "sheet standard valve angle", (site, place) -> site.sheet("standard", "engine", name)
                .or(() -> site.sheet("standard", "engine", "valve angle")).flatMap(s -> Site.written(name, place, s)));
    }

    static double gap(In v) {
        ValveRoom.Heads heads = new ValveRoom.Heads(v.get("intake valve head"), v.get("exhaust valve head"), v.get("sheet standard valve centres"),
                v.get("intake valve angle"), v.get("exhaust valve angle"));
        double[] lifts = v.all(LIFTS);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 1 < lifts.length; i += 2) {
            least = Math.min(least, heads.distance(lifts[i], lifts[i + 1]));
        }
        return least;
    }

    static String words(In v) {
        return "heads of " + v.show("intake valve head") + " and " + v.show("exhaust valve head") + " on centres of "
                + v.show("sheet standard valve centres") + ", at lifts of " + Shapes.list(v, LIFTS);
    }
}
