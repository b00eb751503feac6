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
                return those(PLUGS, plug -> sheet.has(PLUGS, plug, "thread"));
            case "each hidden plug":
                return those(PLUGS, plug -> sheet.has(PLUGS, plug, "hidden by"));
            case "each sensor":
                return names(SENSORS);
            case "each buried sensor":
                return those(SENSORS, sensor -> sheet.count(SENSORS, sensor, "reach") >= 2);
            case "each trigger sensor":
                return of(SENSORS, "trigger");
            case "each coil-type sensor":
                return those(SENSORS, sensor -> sheet.text(SENSORS, sensor, "kind").equals("trigger")
                        && sheet.text(SENSORS, sensor, "form").equals("coil"));
            case "each knock sensor":
                return of(SENSORS, "knock");
            case "each protection":
                return those("protection", guard -> !sheet.none("protection", guard));
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
        return those(section, name -> sheet.text(section, name, "kind").equals(kind));
    }

    private interface Which {
        boolean is(String name);
    }

    private List<String> those(String section, Which which) {
        if (!sheet.has(section)) {
            return null;
        }
        List<String> names = new ArrayList<>();
        for (String name : sheet.keys(section)) {
            if (which.is(name)) {
                names.add(name);
            }
        }
        return names;
    }
}
