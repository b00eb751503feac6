package leadlamp.record;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlamp.words.Vocabulary;

/** Places of the cam drive and what it turns, from the sheet's `drive`, `gears` and `timed shafts`. Null where not settled. */
final class LayoutDrive {
    private static final String DRIVE = "drive";
    private static final String GEARS = "gears";

    private final LayoutLines sheet;
    private final Vocabulary words;
    private final SheetLayout layout;

    LayoutDrive(LayoutLines sheet, Vocabulary words, SheetLayout layout) {
        this.sheet = sheet;
        this.words = words;
        this.layout = layout;
    }

    List<String> places(String group) {
        switch (group) {
            case "each timing drive":
                return timing();
            case "each belt drive":
                return kind("belt");
            case "each chain drive":
                return kind("chain");
            case "each gear drive":
                return gearDrives();
            case "each dry belt":
                return dryBelts();
            case "each belt companion":
                return companions();
            case "each tensioner":
                return tensioners();
            case "each belt idler":
                return idlers();
            case "each guide plate":
                return guidePlates();
            case "each cam gear":
                return camGears();
            case "each cam gear with a pin":
                return camGearLines("");
            case "each adjustable cam gear":
                return camGearLines("adjustable");
            case "each cam phaser":
                return camGearLines("phaser");
            case "each keyed gear":
                return keyed();
            case "each gear on a shaft":
                return gears();
            case "each timed shaft":
                return sheet.none("timed shafts") ? List.of() : sheet.has("timed shafts") ? sheet.keys("timed shafts") : null;
            default:
                return null;
        }
    }

    /** The kind of the drive that turns the camshafts: belt, chain or gear; empty where the sheet does not say. */
    String camDrive() {
        for (String drive : sheet.keys(DRIVE)) {
            if (sheet.text(DRIVE, drive, "drives").equals("camshafts")) {
                return sheet.text(DRIVE, drive, "kind");
            }
        }
        return "";
    }

    /** Whether every drive says what it turns, and none turns another shaft that must be in time. */
    boolean camshaftsAlone() {
        for (String drive : sheet.keys(DRIVE)) {
            String drives = sheet.text(DRIVE, drive, "drives");
            if (!drives.equals("camshafts") && !drives.equals("oil pump")) {
                return false;
            }
        }
        return true;
    }

    /** The drives of the camshafts: one is the engine's; of several each has its bank, or its name. */
    private List<String> timing() {
        List<String> drives = new ArrayList<>();
        for (String drive : sheet.keys(DRIVE)) {
            if (sheet.text(DRIVE, drive, "drives").equals("camshafts")) {
                drives.add(drive);
            }
        }
        if (drives.size() == 1) {
            return List.of(Place.ENGINE);
        }
        List<String> places = new ArrayList<>();
        for (String drive : drives) {
            String bank = bank(drive);
            places.add(bank.isEmpty() ? drive : bank);
        }
        return places.isEmpty() ? null : places;
    }

    private static String bank(String name) {
        for (String word : name.split(" ")) {
            if (word.equals("left") || word.equals("right")) {
                return word;
            }
        }
        return "";
    }

    private List<String> kind(String kind) {
        if (!sheet.has(DRIVE)) {
            return null;
        }
        List<String> drives = new ArrayList<>();
        for (String drive : sheet.keys(DRIVE)) {
            if (sheet.text(DRIVE, drive, "kind").equals(kind)) {
                drives.add(drive);
            }
        }
        return drives;
    }

    /** Gear drives with teeth to wear and to set: an oil pump that sits on the shaft itself has none. */
    private List<String> gearDrives() {
        List<String> drives = kind("gear");
        if (drives != null) {
            drives.removeIf(drive -> sheet.text(DRIVE, drive, "drives").equals("oil pump") && !sheet.has(DRIVE, drive, "teeth"));
        }
        return drives;
    }

    private List<String> dryBelts() {
        List<String> belts = kind("belt");
        if (belts == null) {
            return null;
        }
        List<String> dry = new ArrayList<>();
        boolean said = belts.isEmpty();
        for (String belt : belts) {
            said |= sheet.has(DRIVE, belt, "runs");
            if (sheet.text(DRIVE, belt, "runs").equals("dry")) {
                dry.add(belt);
            }
        }
        return said ? dry : null;
    }

    private List<String> companions() {
        List<String> belts = kind("belt");
        if (belts == null) {
            return null;
        }
        Set<String> companions = new LinkedHashSet<>();
        boolean said = belts.isEmpty();
        for (String belt : belts) {
            said |= sheet.has(DRIVE, belt, "shares the belt");
            companions.addAll(sheet.list(DRIVE, belt, "shares the belt"));
            if (!sheet.has(DRIVE, belt, "shares the belt")) {
                for (String on : sheet.list(DRIVE, belt, "route")) {
                    String part = part(on);
                    if (part.equals("belt tensioner") || part.equals("belt idler") || part.endsWith("pump")) {
                        said = true;
                        companions.add(on);
                    }
                }
            }
        }
        return said ? new ArrayList<>(companions) : null;
    }

    private List<String> tensioners() {
        if (!sheet.has(DRIVE)) {
            return null;
        }
        List<String> all = new ArrayList<>();
        boolean said = false;
        for (String drive : sheet.keys(DRIVE)) {
            String kind = sheet.text(DRIVE, drive, "kind");
            if (kind.equals("gear")) {
                said = true;
                continue;
            }
            boolean routed = false;
            for (String on : sheet.list(DRIVE, drive, "route")) {
                said = true;
                String part = part(on);
                if (part.equals("belt tensioner") || part.equals("chain tensioner")) {
                    routed = true;
                    all.add(name(on));
                }
            }
            if (!routed && sheet.has(DRIVE, drive, "tensioner") && !sheet.none(DRIVE, drive, "tensioner")) {
                all.add(kind.concat(" tensioner"));
            }
            said |= sheet.has(DRIVE, drive, "tensioner");
        }
        return said ? apart(all) : null;
    }

    /** The same name twice is told apart by a number. */
    private static List<String> apart(List<String> names) {
        List<String> apart = new ArrayList<>();
        for (String name : names) {
            String place = name;
            for (int i = 2; apart.contains(place); i++) {
                place = name.concat(" ").concat(String.valueOf(i));
            }
            apart.add(place);
        }
        return apart;
    }

    private List<String> idlers() {
        List<String> belts = kind("belt");
        if (belts == null) {
            return null;
        }
        List<String> idlers = new ArrayList<>();
        boolean said = belts.isEmpty();
        for (String belt : belts) {
            for (String on : sheet.list(DRIVE, belt, "route")) {
                said = true;
                if (part(on).equals("belt idler")) {
                    idlers.add(name(on));
                }
            }
        }
        return said ? apart(idlers) : null;
    }

    private List<String> guidePlates() {
        if (!sheet.has(DRIVE)) {
            return null;
        }
        List<String> plates = new ArrayList<>();
        for (String drive : sheet.keys(DRIVE)) {
            plates.addAll(sheet.list(DRIVE, drive, "guide plates"));
        }
        return plates;
    }

    /** Cam gears by the routes and by the sheet's lines; where no route is given, one to each camshaft. */
    private List<String> camGears() {
        List<String> camshafts = layout.settled("each camshaft");
        Set<String> gears = new LinkedHashSet<>();
        boolean routed = false;
        boolean driven = false;
        for (String drive : sheet.keys(DRIVE)) {
            driven |= sheet.text(DRIVE, drive, "drives").equals("camshafts");
            for (String on : sheet.list(DRIVE, drive, "route")) {
                if (part(on).equals("cam gear")) {
                    routed = true;
                    gears.add(rest(on));
                }
            }
        }
        for (String gear : sheet.keys(GEARS)) {
            if (ofCamshaft(gear, camshafts)) {
                gears.add(camshaft(gear, camshafts));
            }
        }
        if (!routed && camshafts != null && driven) {
            gears.addAll(camshafts);
        }
        if (gears.isEmpty()) {
            return null;
        }
        List<String> ordered = new ArrayList<>();
        if (camshafts != null) {
            for (String camshaft : camshafts) {
                if (gears.remove(camshaft)) {
                    ordered.add(camshaft);
                }
            }
        }
        ordered.addAll(gears);
        return ordered;
    }

    /** Whether a line under `gears` is of a cam gear: it is named by its camshaft, or is called a cam gear. */
    private boolean ofCamshaft(String gear, List<String> camshafts) {
        return camshafts != null && camshafts.contains(gear) || part(gear).equals("cam gear");
    }

    /** The camshaft of a line under `gears`. */
    private String camshaft(String gear, List<String> camshafts) {
        return camshafts != null && camshafts.contains(gear) ? gear : rest(gear);
    }

    /** Cam gears whose line under `gears` has a pin, or is of a form where one is asked for. */
    private List<String> camGearLines(String form) {
        List<String> camshafts = layout.settled("each camshaft");
        List<String> places = new ArrayList<>();
        boolean said = false;
        for (String gear : sheet.keys(GEARS)) {
            if (ofCamshaft(gear, camshafts)) {
                said = true;
                if (form.isEmpty() ? sheet.has(GEARS, gear, "pin") && !sheet.none(GEARS, gear, "pin")
                        : sheet.text(GEARS, gear, "form").equals(form)) {
                    places.add(camshaft(gear, camshafts));
                }
            }
        }
        return said ? places : null;
    }

    private List<String> keyed() {
        if (!sheet.has(GEARS)) {
            return null;
        }
        List<String> keyed = new ArrayList<>();
        for (String gear : sheet.keys(GEARS)) {
            if (sheet.has(GEARS, gear, "key") && !sheet.none(GEARS, gear, "key")) {
                keyed.add(whole(gear));
            }
        }
        return keyed;
    }

    private List<String> gears() {
        if (!sheet.has(DRIVE) && !sheet.has(GEARS)) {
            return null;
        }
        Set<String> gears = new LinkedHashSet<>();
        for (String drive : sheet.keys(DRIVE)) {
            for (String on : sheet.list(DRIVE, drive, "route")) {
                if (part(on).endsWith(" gear")) {
                    gears.add(on);
                }
            }
        }
        for (String gear : sheet.keys(GEARS)) {
            gears.add(whole(gear));
        }
        return gears.isEmpty() ? null : new ArrayList<>(gears);
    }

    /** A line under `gears` by its whole name: `intake` is the cam gear intake. */
    private String whole(String gear) {
        List<String> camshafts = layout.settled("each camshaft");
        return camshafts != null && camshafts.contains(gear) ? "cam gear ".concat(gear) : gear;
    }

    private String part(String on) {
        Optional<SheetLayout.PartAt> split = SheetLayout.split(on, words);
        return split.isPresent() ? split.get().part() : "";
    }

    /** Where a part of a route is: `low` of a belt idler low; `engine` where nothing follows. */
    private String rest(String on) {
        Optional<SheetLayout.PartAt> split = SheetLayout.split(on, words);
        return split.isPresent() ? split.get().at() : on;
    }

    /** The place of a part that may stand several times in a route: what follows it, else its own name. */
    private String name(String on) {
        String rest = rest(on);
        return rest.equals(Place.ENGINE) ? part(on) : rest;
    }
}
