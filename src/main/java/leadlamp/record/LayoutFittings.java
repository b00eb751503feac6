package leadlamp.record;

import java.util.ArrayList;
import java.util.List;

/** Places of plugs, seals, jets, lines, sensors and guards, which the sheet names one by one. Null where not settled. */
final class LayoutFittings {
    private static final String PLUGS = "plugs";
    private static final String SEALS = "seals";
    private static final String SENSORS = "sensors";

    private final LayoutLines sheet;

    LayoutFittings(LayoutLines sheet) {
        this.sheet = sheet;
    }

    List<String> places(String group) {
        switch (group) {
            case "each shaft seal":
                return of(SEALS, "shaft seal");
            case "each sealing ring":
                return of(SEALS, "ring");
            case "each seal":
                return names(SEALS);
            case "each core plug":
                return of(PLUGS, "core plug");
            case "each gallery plug":
                return of(PLUGS, "gallery plug");
            case "each crankshaft plug":
                return of(PLUGS, "crankshaft plug");
            case "each screwed plug":
                return with(PLUGS, "thread");
            case "each hidden plug":
                return with(PLUGS, "hidden by");
            case "each sensor":
                return names(SENSORS);
            case "each buried sensor":
                return buried();
            case "each trigger sensor":
                return of(SENSORS, "trigger");
            case "each coil-type sensor":
                return coils();
            case "each knock sensor":
                return of(SENSORS, "knock");
            case "each protection":
                return guards();
            case "each oil jet":
                return names("jets");
            case "each oil line":
                return names("oil lines");
            case "each coolant hose":
                return names("coolant hoses");
            case "each fuel hose":
                return names("fuel hoses");
            case "each heat shield":
                return names("heat shields");
            case "each opening":
                return names("openings");
            case "each bleed point":
                return sheet.has("coolant", "bleed points") ? sheet.list("coolant", "bleed points")
                        : sheet.text("layout", "cooled by").equals("air") ? List.of() : null;
            default:
                return null;
        }
    }

    private List<String> names(String section) {
        if (!sheet.has(section)) {
            return null;
        }
        List<String> names = sheet.keys(section);
        return names.isEmpty() ? sheet.list(section) : names;
    }

    private List<String> of(String section, String kind) {
        if (!sheet.has(section)) {
            return null;
        }
        List<String> names = new ArrayList<>();
        for (String name : sheet.keys(section)) {
            if (sheet.text(section, name, "kind").equals(kind)) {
                names.add(name);
            }
        }
        return names;
    }

    private List<String> with(String section, String line) {
        if (!sheet.has(section)) {
            return null;
        }
        List<String> names = new ArrayList<>();
        for (String name : sheet.keys(section)) {
            if (sheet.has(section, name, line)) {
                names.add(name);
            }
        }
        return names;
    }

    private List<String> buried() {
        List<String> sensors = with(SENSORS, "reach");
        if (sensors != null) {
            sensors.removeIf(sensor -> sheet.count(SENSORS, sensor, "reach") < 2);
        }
        return sensors;
    }

    private List<String> coils() {
        List<String> sensors = of(SENSORS, "trigger");
        if (sensors != null) {
            sensors.removeIf(sensor -> !sheet.text(SENSORS, sensor, "form").equals("coil"));
        }
        return sensors;
    }

    /** What the maker fits; a line that says none is none. */
    private List<String> guards() {
        List<String> guards = names("protection");
        if (guards != null) {
            guards.removeIf(guard -> sheet.none("protection", guard));
        }
        return guards;
    }
}
