package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.Growth;
import leadlamp.calc.Material;
import leadlamp.calc.WorkingHeat;
import leadlamp.facts.Value;
import leadlamp.words.Quantity;

/** How far the clearance of a hole and a shaft is off because the two were not read at the warmth at which sizes are told. */
final class Warmth {
    private static final String NAME = "warmth shift";

    private Warmth() {
    }

    /** Whether a value is a running fit: a hole less a shaft that is meant to be smaller. */
    static boolean fit(Quantity quantity) {
        return quantity.from().size() == 2 && quantity.name().contains("clearance") && hole(quantity.from()).isPresent()
                && shaft(quantity.from()).isPresent();
    }

    private static Optional<String> hole(List<String> from) {
        for (String name : from) {
            if (name.endsWith("bore") || name.endsWith("hole diameter") || name.endsWith("with shells")) {
                return Optional.of(name);
            }
        }
        return Optional.empty();
    }

    private static Optional<String> shaft(List<String> from) {
        for (String name : from) {
            if (name.endsWith("diameter") && !name.endsWith("hole diameter")) {
                return Optional.of(name);
            }
        }
        return Optional.empty();
    }

    /** The working of one fit's shift; what it lacks goes to the list. */
    static Optional<Working> of(Site site, Quantity fit, String place, List<Slot> sizes, List<String> lacks) {
        Optional<Quantity> shift = site.words.quantity(NAME);
        Optional<Slot> hole = slot(sizes, hole(fit.from()));
        Optional<Slot> shaft = slot(sizes, shaft(fit.from()));
        if (shift.isEmpty() || hole.isEmpty() || shaft.isEmpty()) {
            return Optional.empty();
        }
        List<Slot> slots = new ArrayList<>();
        side(site, place, "hole", hole.get(), slots, lacks);
        side(site, place, "shaft", shaft.get(), slots, lacks);
        return lacks.isEmpty() ? Optional.of(new Working(entry(), shift.get(), place, slots)) : Optional.empty();
    }

    private static Derived entry() {
        return Derived.value(NAME)
                .by(v -> Growth.warmthShift(v.get("hole"), v.get("expansion of hole"), v.get("warmth of hole"), v.get("shaft"),
                        v.get("expansion of shaft"), v.get("warmth of shaft"), WorkingHeat.WORKSHOP))
                .sum("{hole} x {expansion of hole} x (20 °C - {warmth of hole}) - {shaft} x {expansion of shaft} x (20 °C - {warmth of shaft})")
                .finer();
    }

    private static Optional<Slot> slot(List<Slot> slots, Optional<String> name) {
        for (Slot slot : slots) {
            if (name.isPresent() && slot.name().equals(name.get())) {
                return Optional.of(slot);
            }
        }
        return Optional.empty();
    }

    private static void side(Site site, String place, String side, Slot size, List<Slot> slots, List<String> lacks) {
        String read = size.values().get(0).of();
        String part = site.words.quantity(read).map(Quantity::of).orElse("");
        slots.add(new Slot(side, size.values(), size.reduce()));
        Optional<Value> warmth = warmth(site, place, "warmth of " + side, size);
        warmth.ifPresentOrElse(v -> slots.add(Slot.of(v.of(), v)), () -> named(lacks, "reading temperatures"));
        Optional<Value> expansion = expansion(site, place, "expansion of " + side, part);
        expansion.ifPresentOrElse(v -> slots.add(Slot.of(v.of(), v)), () -> named(lacks, "sheet materials"));
    }

    private static void named(List<String> lacks, String name) {
        if (!lacks.contains(name)) {
            lacks.add(name);
        }
    }

    /** Warmth beside the reading; else that of the room, which a part takes on that lay in it over night. */
    private static Optional<Value> warmth(Site site, String place, String name, Slot size) {
        for (Value reading : size.values()) {
            Optional<Value> own = Asides.size(name, place, reading, "temperature");
            if (own.isPresent()) {
                return own;
            }
        }
        return site.store.at("workshop air temperature", place).filter(Value::plain).map(room -> new Value(name, name, place, room.low(),
                room.high(), room.unit(), room.figures(), "", room.usual(), "", room.told(), java.util.Map.of(), room.places()));
    }

    private static Optional<Value> expansion(Site site, String place, String name, String part) {
        return Materials.word(site, place, homes(part)).flatMap(word -> Material.named(word.says()).map(m -> Site.doubtful(name, place,
                m.expansion(), m.expansionDoubt() / Math.sqrt(3), "expansion of " + word.says(), Materials.PER_KELVIN, 1,
                List.of(word.where()))));
    }

    /** A part and those that it is one with: a bore with its shells grows with the casting that holds it. */
    private static String[] homes(String part) {
        return switch (part) {
            case "cylinder" -> new String[] {"cylinder", "liner", "block"};
            case "main bearing" -> new String[] {part, "block"};
            case "big-end bearing", "small-end bush" -> new String[] {part, "connecting rod"};
            case "main journal", "crankpin", "crank nose" -> new String[] {part, "crankshaft"};
            case "cam bearing", "cam follower" -> new String[] {part, "head"};
            default -> new String[] {part};
        };
    }
}
