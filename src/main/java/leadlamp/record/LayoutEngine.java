package leadlamp.record;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Places of crankcase, head and valve gear, from the sheet's `layout`. Null where the sheet does not settle a group. */
final class LayoutEngine {
    private static final String LAYOUT = "layout";
    private static final List<String> SIDES = List.of("intake", "exhaust");
    private static final List<List<String>> ENDS = List.of(List.of(), List.of(), List.of("front", "rear"),
            List.of("front", "middle", "rear"));

    private final LayoutLines sheet;

    LayoutEngine(LayoutLines sheet) {
        this.sheet = sheet;
    }

    List<String> places(String group) {
        switch (group) {
            case "each cylinder":
                return LayoutLines.numbered("", sheet.count(LAYOUT, "cylinders"));
            case "each pair of cylinders":
                return pairs();
            case "each bank", "each head":
                return banks();
            case "each liner":
                return liners();
            case "each piston ring":
                return with(places("each cylinder"), sheet.list(LAYOUT, "rings"));
            case "each main bearing":
                return LayoutLines.numbered("main ", sheet.count(LAYOUT, "main bearings"));
            case "each fed main bearing":
                return fed();
            case "each big end", "each crankpin":
                return LayoutLines.numbered("big end ", sheet.count(LAYOUT, "cylinders"));
            case "each plain bearing", "each cap":
                return bearings(true);
            case "each roller bearing":
                return bearings(false);
            case "each shell":
                return with(bearings(true), List.of("upper", "lower"));
            case "each thrust face":
                return thrustFaces();
            case "each valve":
                return valves();
            case "each valve with solid lash":
                return where("lash", "solid", valves());
            case "each lash adjuster":
                return where("lash", "hydraulic", valves());
            case "each pushrod":
                return where("valve gear", "pushrod", valves());
            case "each camshaft":
                return camshafts();
            case "each cam bearing":
                return camBearings();
            case "each piston jet":
                return numbers("piston jets");
            case "each balance shaft":
                return sheet.has(LAYOUT, "balance shafts") ? sheet.list(LAYOUT, "balance shafts") : null;
            case "each turbocharger":
                return LayoutLines.numbered("", sheet.count(LAYOUT, "turbochargers"));
            case "each throttle":
                return LayoutLines.numbered("", sheet.count(LAYOUT, "throttles"));
            case "each carburettor":
                return fed("carburettors", "injectors");
            case "each injector":
                return fed("injectors", "carburettors");
            case "each coil":
                return sheet.none(LAYOUT, "spark") ? List.of() : LayoutLines.numbered("", sheet.count(LAYOUT, "spark", "coils"));
            case "each friction disc":
                return sheet.none(LAYOUT, "clutch") ? List.of() : LayoutLines.numbered("", sheet.count(LAYOUT, "clutch", "discs"));
            default:
                return null;
        }
    }

    /** The banks; an engine of one row has its one bank at `engine`. */
    private List<String> banks() {
        switch (sheet.text(LAYOUT, "arrangement")) {
            case "in-line":
                return List.of(Place.ENGINE);
            case "vee", "flat":
                List<String> named = sheet.keys(LAYOUT, "banks");
                return named.isEmpty() ? List.of("left", "right") : named;
            default:
                return sheet.count(LAYOUT, "cylinders") == 1 ? List.of(Place.ENGINE) : null;
        }
    }

    private List<String> pairs() {
        List<String> pairs = new ArrayList<>();
        List<String> banks = banks();
        if (banks == null) {
            return null;
        }
        if (banks.size() == 1) {
            List<String> cylinders = places("each cylinder");
            return cylinders == null ? null : neighbours(cylinders, pairs);
        }
        for (String bank : banks) {
            List<String> cylinders = sheet.list(LAYOUT, "banks", bank);
            if (cylinders.isEmpty()) {
                return sheet.count(LAYOUT, "cylinders") == banks.size() ? List.of() : null;
            }
            neighbours(cylinders, pairs);
        }
        return pairs;
    }

    private static List<String> neighbours(List<String> row, List<String> pairs) {
        for (int i = 1; i < row.size(); i++) {
            pairs.add(row.get(i - 1).concat(" and ").concat(row.get(i)));
        }
        return pairs;
    }

    /** A liner that is cast in is one with its block. */
    private List<String> liners() {
        String liners = sheet.text(LAYOUT, "liners");
        if (liners.isEmpty()) {
            return null;
        }
        return liners.equals("none") || liners.equals("cast in") ? List.of() : places("each cylinder");
    }

    private List<String> fed() {
        if (sheet.text(LAYOUT, "oiling").equals("splash")) {
            return List.of();
        }
        List<String> numbers = numbers("fed main bearings");
        if (numbers == null) {
            return null;
        }
        List<String> places = new ArrayList<>();
        for (String number : numbers) {
            places.add("main ".concat(number));
        }
        return places;
    }

    /** A bearing is plain where nothing is said; how many there are must be said. */
    private List<String> bearings(boolean plain) {
        if (!sheet.has(LAYOUT)) {
            return null;
        }
        List<String> mains = sheet.list(LAYOUT, "mains");
        String bigEnds = sheet.text(LAYOUT, "big ends");
        boolean plainBigEnds = bigEnds.isEmpty() || bigEnds.equals("plain");
        boolean allPlain = true;
        boolean nonePlain = !mains.isEmpty();
        for (String main : mains) {
            allPlain &= main.equals("plain");
            nonePlain &= !main.equals("plain");
        }
        List<String> places = new ArrayList<>();
        if (plain ? !nonePlain : !allPlain) {
            List<String> all = places("each main bearing");
            if (all == null) {
                return null;
            }
            for (int i = 0; i < all.size(); i++) {
                String main = mains.isEmpty() ? "plain" : mains.get(Math.min(i, mains.size() - 1));
                if (main.equals("plain") == plain) {
                    places.add(all.get(i));
                }
            }
        }
        if (plainBigEnds == plain) {
            List<String> all = places("each big end");
            if (all == null) {
                return null;
            }
            places.addAll(all);
        }
        return places;
    }

    /** On plain bearings, the two faces of the bearing that takes the thrust. */
    private List<String> thrustFaces() {
        String thrust = sheet.text(LAYOUT, "thrust bearing");
        if (thrust.isEmpty()) {
            return null;
        }
        if (thrust.equals("none")) {
            return List.of();
        }
        List<String> mains = sheet.list(LAYOUT, "mains");
        int number = sheet.count(LAYOUT, "thrust bearing");
        if (!mains.isEmpty() && number > 0) {
            String main = mains.get(Math.min(number, mains.size()) - 1);
            if (!main.equals("plain")) {
                return List.of();
            }
        }
        return List.of("front", "rear");
    }

    private List<String> valves() {
        List<String> cylinders = places("each cylinder");
        if (cylinders == null || !sheet.has(LAYOUT, "valves")) {
            return null;
        }
        List<String> valves = new ArrayList<>();
        if (sheet.none(LAYOUT, "valves")) {
            return valves;
        }
        for (String cylinder : cylinders) {
            for (String side : SIDES) {
                int count = sheet.has(LAYOUT, "valves", side) ? sheet.count(LAYOUT, "valves", side) : 0;
                if (count < 0) {
                    return null;
                }
                String place = cylinder.concat(" ").concat(side);
                if (count == 1) {
                    valves.add(place);
                } else if (count < ENDS.size()) {
                    for (String end : ENDS.get(count)) {
                        valves.add(place.concat(" ").concat(end));
                    }
                } else {
                    valves.addAll(LayoutLines.numbered(place.concat(" "), count));
                }
            }
        }
        return valves.isEmpty() ? null : valves;
    }

    private List<String> where(String line, String word, List<String> places) {
        String says = sheet.text(LAYOUT, line);
        if (says.isEmpty()) {
            return null;
        }
        return says.equals(word) ? places : List.of();
    }

    private List<String> camshafts() {
        if (!sheet.has(LAYOUT, "camshafts")) {
            return null;
        }
        List<String> camshafts = sheet.list(LAYOUT, "camshafts");
        return camshafts.equals(List.of("one")) || camshafts.equals(List.of("1")) ? List.of(Place.ENGINE) : camshafts;
    }

    private List<String> camBearings() {
        List<String> camshafts = camshafts();
        int count = sheet.count(LAYOUT, "cam bearings");
        if (camshafts == null || count < 0) {
            return null;
        }
        List<String> places = new ArrayList<>();
        for (String camshaft : camshafts) {
            places.addAll(LayoutLines.numbered(camshaft.equals(Place.ENGINE) ? "" : camshaft.concat(" "), count));
        }
        return places;
    }

    private List<String> numbers(String line) {
        return sheet.has(LAYOUT, line) ? sheet.list(LAYOUT, line) : null;
    }

    private List<String> fed(String by, String not) {
        int count = sheet.count(LAYOUT, "fuel", by);
        return count < 0 && sheet.text(LAYOUT, "fuel", "with").equals(not) ? List.of() : LayoutLines.numbered("", count);
    }

    private static List<String> with(List<String> places, List<String> words) {
        if (places == null || words.isEmpty()) {
            return null;
        }
        Set<String> longer = new LinkedHashSet<>();
        for (String place : places) {
            for (String word : words) {
                longer.add(place.concat(" ").concat(word));
            }
        }
        return new ArrayList<>(longer);
    }
}
