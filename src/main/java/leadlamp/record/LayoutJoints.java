package leadlamp.record;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import leadlamp.words.Part;
import leadlamp.words.Vocabulary;

/**
 * Places of joints, bolts and dowels, from the sheet's `joints`. Null where the sheet does not settle a group. What every
 * joint must have (holes, a metal it goes into) is settled once one joint says it; what few have (studs, rows) is absent
 * where none says it.
 */
final class LayoutJoints {
    private static final String JOINTS = "joints";
    private static final String HEAD = "head to block";

    private final LayoutLines sheet;
    private final Vocabulary words;
    private final SheetLayout layout;

    LayoutJoints(LayoutLines sheet, Vocabulary words, SheetLayout layout) {
        this.sheet = sheet;
        this.words = words;
        this.layout = layout;
    }

    List<String> places(String group) {
        if (!sheet.has(JOINTS)) {
            return null;
        }
        switch (group) {
            case "each joint with thread-locker":
                return those(group, says("threads", "thread-locker"));
            case "each joint with single use bolts":
                return those(group, sheet.has("renew always", "bolts of"));
            case "each joint with blind holes", "each joint with wet holes":
                return those(group, says("holes"));
            case "each joint with a locating part":
                return those(group, says("dowels"));
            case "each joint with a gasket":
                return those(group, says("gasket"));
            case "each joint with sealant":
                return those(group, says("sealant"));
            case "each joint in soft metal":
                return those(group, says("into"));
            case "each joint", "each joint with a torque", "each joint with torque alone", "each joint with stages",
                    "each joint with an angle", "each joint with several lengths", "each joint with studs",
                    "each joint with a washer", "each joint at a machined face", "each joint in a bearing", "each three-way joint":
                return those(group, true);
            case "each row of a joint":
                return rows();
            case "each passage of a joint":
                return passages();
            case "each dowel":
                return says("dowels") ? numbered("dowels", sheet.keys(JOINTS)) : null;
            case "each head dowel":
                return headJoint().isEmpty() || !sheet.has(JOINTS, headJoint(), "dowels") ? null
                        : numbered("dowels", List.of(headJoint()));
            case "each gearbox dowel":
                return LayoutLines.numbered("", sheet.count(JOINTS, "gearbox to block", "dowels"));
            case "each head bolt":
                return headBolts();
            case "each rod bolt":
                return rodBolts();
            default:
                return null;
        }
    }

    /** All places of one joint: its name, or its name with each place of the part that it is `each` of. */
    List<String> of(String joint) {
        String each = sheet.text(JOINTS, joint, "each");
        Part part = each.isEmpty() ? null : words.part(each).orElse(null);
        List<String> places = part == null ? null : layout.settled(part.group());
        if (places == null || places.isEmpty()) {
            return List.of(joint);
        }
        List<String> all = new ArrayList<>();
        for (String place : places) {
            all.add(place.equals(Place.ENGINE) ? joint : place(joint, place));
        }
        return all;
    }

    /** The highest number of a bolt, stud or dowel of a joint; empty where its bolts are not counted. */
    OptionalInt counted(String joint) {
        int most = sheet.count(JOINTS, joint, "bolts");
        if (most < 0) {
            return OptionalInt.empty();
        }
        most = Math.max(most, Math.max(sheet.count(JOINTS, joint, "studs"), sheet.count(JOINTS, joint, "dowels")));
        for (String line : List.of("positions", "lengths")) {
            for (String position : sheet.keys(JOINTS, joint, line)) {
                most = Math.max(most, Places.number(position));
            }
        }
        return OptionalInt.of(most);
    }

    private static String place(String name, String rest) {
        return name.concat(" ").concat(rest);
    }

    private List<String> those(String group, boolean settled) {
        List<String> places = new ArrayList<>();
        for (String joint : sheet.keys(JOINTS)) {
            if (belongs(joint, group)) {
                places.addAll(of(joint));
            }
        }
        return places.isEmpty() && !settled ? null : places;
    }

    private boolean belongs(String joint, String group) {
        switch (group) {
            case "each joint with a torque":
                return torque(joint);
            case "each joint with torque alone":
                return torque(joint) && !angle(joint);
            case "each joint with stages":
                return angle(joint) || sheet.has(JOINTS, joint, "stages") || sheet.has(JOINTS, joint, "sequence");
            case "each joint with an angle":
                return angle(joint);
            case "each joint with thread-locker":
                return locked(joint);
            case "each joint with single use bolts":
                return singleUse(joint);
            case "each joint with several lengths":
                return !sheet.keys(JOINTS, joint, "lengths").isEmpty();
            case "each joint with blind holes":
                return sheet.list(JOINTS, joint, "holes").contains("blind");
            case "each joint with wet holes":
                return sheet.list(JOINTS, joint, "holes").contains("wet");
            case "each joint with studs":
                return with(joint, "studs");
            case "each joint with a locating part":
                return with(joint, "dowels") || sheet.text(JOINTS, joint, "form").equals("fitted");
            case "each joint with a gasket":
                return with(joint, "gasket");
            case "each joint with sealant":
                return with(joint, "sealant");
            case "each joint with a washer":
                return washerSeals(joint);
            case "each joint at a machined face":
                return with(joint, "meets");
            case "each joint in a bearing":
                return with(joint, "halves of");
            case "each joint in soft metal":
                return soft(sheet.text(JOINTS, joint, "into"));
            case "each three-way joint":
                return with(joint, "edges of");
            default:
                return true;
        }
    }

    /** Whether any joint of the sheet says this of itself. */
    private boolean says(String... line) {
        String[] keys = new String[line.length + 2];
        keys[0] = JOINTS;
        System.arraycopy(line, 0, keys, 2, line.length);
        for (String joint : sheet.keys(JOINTS)) {
            keys[1] = joint;
            if (sheet.has(keys)) {
                return true;
            }
        }
        return false;
    }

    private boolean with(String joint, String line) {
        return sheet.has(JOINTS, joint, line) && !sheet.none(JOINTS, joint, line) && !sheet.text(JOINTS, joint, line).equals("0");
    }

    private boolean torque(String joint) {
        return sheet.has(JOINTS, joint, "torque") || sheet.has(JOINTS, joint, "stages");
    }

    private boolean angle(String joint) {
        if (with(joint, "angle")) {
            return true;
        }
        for (String stage : sheet.list(JOINTS, joint, "stages")) {
            if (stage.contains("deg") || stage.contains("°") || stage.contains("turn")) {
                return true;
            }
        }
        return false;
    }

    private boolean locked(String joint) {
        String locker = sheet.text(JOINTS, joint, "threads", "thread-locker");
        return !locker.isEmpty() && !locker.equals("none") && !locker.equals("unknown");
    }

    private boolean singleUse(String joint) {
        return with(joint, "uses") || sheet.has(JOINTS, joint, "bolt length limit")
                || sheet.list("renew always", "bolts of").contains(joint);
    }

    private boolean washerSeals(String joint) {
        String part = sheet.text(JOINTS, joint, "gasket", "part");
        Optional<Part> known = part.isEmpty() ? Optional.empty() : words.part(part);
        return known.isPresent() && known.get().name().equals("sealing washer");
    }

    private static boolean soft(String metal) {
        return metal.equals("aluminium") || metal.equals("magnesium");
    }

    private List<String> rows() {
        List<String> rows = new ArrayList<>();
        for (String joint : sheet.keys(JOINTS)) {
            for (String place : of(joint)) {
                for (String row : sheet.keys(JOINTS, joint, "rows")) {
                    rows.add(place(place, row));
                }
            }
        }
        return rows;
    }

    private List<String> passages() {
        Set<String> passages = new LinkedHashSet<>();
        for (String joint : sheet.keys(JOINTS)) {
            passages.addAll(sheet.list(JOINTS, joint, "passages"));
        }
        return new ArrayList<>(passages);
    }

    private List<String> numbered(String line, List<String> joints) {
        List<String> places = new ArrayList<>();
        for (String joint : joints) {
            int count = sheet.count(JOINTS, joint, line);
            for (String place : of(joint)) {
                if (count > 0) {
                    places.addAll(LayoutLines.numbered(place.concat(" "), count));
                }
            }
        }
        return places;
    }

    /** The joint that holds the head; on some engines the head sits on barrels or a liner plate. */
    private String headJoint() {
        String joint = "";
        for (String name : sheet.keys(JOINTS)) {
            if (name.equals(HEAD) || joint.isEmpty() && name.startsWith("head to ")) {
                joint = name;
            }
        }
        return joint;
    }

    private List<String> headBolts() {
        String joint = headJoint();
        if (joint.isEmpty()) {
            return null;
        }
        List<String> numbers = sheet.keys(JOINTS, joint, "positions");
        if (numbers.isEmpty()) {
            return sheet.count(JOINTS, joint, "bolts") < 0 ? null : numbered("bolts", List.of(joint));
        }
        List<String> bolts = new ArrayList<>();
        for (String place : of(joint)) {
            for (String number : numbers) {
                bolts.add(place(place, number));
            }
        }
        return bolts;
    }

    private List<String> rodBolts() {
        List<String> bigEnds = layout.settled("each big end");
        int bolts = sheet.count(JOINTS, "rod cap to rod", "bolts");
        if (!sheet.has(JOINTS, "rod cap to rod") && (sheet.text("layout", "big ends").equals("roller")
                || sheet.text("layout", "crankshaft").equals("built up"))) {
            return List.of();
        }
        if (bigEnds == null || bolts < 0) {
            return null;
        }
        List<String> places = new ArrayList<>();
        for (String bigEnd : bigEnds) {
            places.addAll(LayoutLines.numbered(bigEnd.concat(" "), bolts));
        }
        return places;
    }
}
