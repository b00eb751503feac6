package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.least;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.removed;
import static leadlamp.derive.Take.sheet;
import static leadlamp.derive.Take.use;

import java.util.List;
import java.util.Optional;
import leadlamp.calc.Sets;

/** Values that are one figure of the build less, or over, another: of the sheet, of the record, of the thread. */
final class Against {
    private Against() {
    }

    static Derived entry(String name) {
        return switch (name) {
            case "compression ratio over sheet" -> value(name).from(reading("compression ratio"), sheet("standard", "compression ratio"))
                    .by(v -> v.get("compression ratio") - v.get("sheet standard compression ratio"))
                    .sum("{compression ratio} - sheet {sheet standard compression ratio}").figures(2);
            case "head cut not in record" -> value(name).from(reading("head height lost"), removed("head face"))
                    .by(v -> v.get("head height lost") - v.get("machining head face removed"))
                    .sum("lost in all {head height lost} - cut in this record {machining head face removed}");
            case "hole bottom room in pitches" -> value(name).from(room(), Joints.pitch())
                    .at(site -> Joints.holeByHole(site, "each joint with blind holes", "hole bottom room", "head bolt room"))
                    .by(v -> v.get("hole bottom room") / v.get("joint thread pitch"))
                    .sum("room {hole bottom room} / pitch {joint thread pitch}").figures(1);
            case "clutch rating over target" -> value(name).from(sheet("clutch", "rated torque"), use("target torque"))
                    .by(v -> Sets.ratio(v.get("sheet clutch rated torque"), v.get("use target torque")))
                    .sum("rated {sheet clutch rated torque} / {use target torque}").figures(2);
            default -> null;
        };
    }

    /** The room under a bolt; head bolts have a sum of their own. */
    private static Take room() {
        return new Take("hole bottom room") {
            @Override
            String quantity() {
                return "hole bottom room";
            }

            @Override
            List<String> others() {
                return List.of("head bolt room");
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> room = least("hole bottom room").at(site, place);
                return room.isPresent() ? room
                        : least("head bolt room").at(site, place).map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }
}
