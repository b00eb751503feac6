package leadlamp.derive;

import java.util.Optional;

/**
 * The table of derived values, topic by topic. An entry is made when it is asked for, so that a short record does not pay for
 * a long table.
 */
final class Table {
    private Table() {
    }

    /** The entry of this name. */
    static Optional<Derived> entry(String name) {
        Derived entry = BottomEnd.entry(name);
        entry = entry == null ? Head.entry(name) : entry;
        entry = entry == null ? ValveGear.entry(name) : entry;
        entry = entry == null ? CamDrive.entry(name) : entry;
        entry = entry == null ? Fasteners.entry(name) : entry;
        entry = entry == null ? Sealing.entry(name) : entry;
        entry = entry == null ? Lubrication.entry(name) : entry;
        entry = entry == null ? Cooling.entry(name) : entry;
        entry = entry == null ? Breathing.entry(name) : entry;
        entry = entry == null ? FuelAndSpark.entry(name) : entry;
        entry = entry == null ? Sensing.entry(name) : entry;
        entry = entry == null ? Clutch.entry(name) : entry;
        entry = entry == null ? Workshop.entry(name) : entry;
        entry = entry == null ? Ages.entry(name) : entry;
        entry = entry == null ? Against.entry(name) : entry;
        return Optional.ofNullable(entry);
    }
}
