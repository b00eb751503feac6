package leadlamp.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import leadlamp.words.Part;
import leadlamp.words.StepGraph;
import leadlamp.words.Vocabulary;

/**
 * What an engine sheet says there is: the places of every group that it settles, and the words that the order of the
 * steps goes by.
 */
public final class SheetLayout implements EngineSheet.Layout {
    private static final String LAYOUT = "layout";
    private static final String NEW_CAM = "flat followers with a new cam";
    /** Groups whose places are names, which may be those of several parts. */
    private static final Set<String> NAMED = Set.of("each shaft seal", "each sealing ring", "each seal", "each sensor",
            "each trigger sensor", "each knock sensor", "each belt drive", "each chain drive", "each gear drive",
            "each tensioner", "each coolant hose", "each timed shaft");

    private final LayoutLines sheet;
    private final Vocabulary words;
    private final LayoutEngine engine;
    private final LayoutDrive drive;
    private final LayoutJoints joints;
    private final LayoutFittings fittings;
    private final Map<String, Optional<List<String>>> known = new ConcurrentHashMap<>();
    private final Map<Optional<Boolean>, StepGraph> steps = new ConcurrentHashMap<>();

    public SheetLayout(Node.Fields tree, Vocabulary words) {
        this.sheet = new LayoutLines(tree);
        this.words = words;
        this.engine = new LayoutEngine(sheet);
        this.drive = new LayoutDrive(sheet, words, this);
        this.joints = new LayoutJoints(sheet, words, this);
        this.fittings = new LayoutFittings(sheet);
    }

    /**
     * A part and where it is.
     *
     * @param part its name
     * @param at   `low`, `intake`; `engine` where the sheet says no more
     */
    public record PartAt(String part, String at) {
    }

    @Override
    public Optional<List<String>> places(String group) {
        Optional<List<String>> places = known.get(group);
        if (places == null) {
            List<String> found = find(group);
            places = found == null ? Optional.empty() : Optional.of(Collections.unmodifiableList(found));
            known.put(group, places);
        }
        return places;
    }

    /**
     * The places of one part: those of its group, and where the group holds several parts by their names (seals,
     * sensors), those that bear its own.
     */
    @Override
    public Optional<List<String>> places(Part part) {
        Optional<List<String>> all = places(part.group());
        if (all.isEmpty() || !NAMED.contains(part.group())) {
            return all;
        }
        List<String> own = new ArrayList<>();
        boolean others = false;
        for (String place : all.get()) {
            Optional<PartAt> at = split(place);
            if (at.isPresent() && at.get().part().equals(part.name())) {
                own.add(place);
            } else if (at.isPresent() && !kindOf(at.get().part()).equals(part.name())) {
                others = true;
            }
        }
        // A timing gear is any gear of a gear drive, and lives in all of them, whatever the sheet calls one of them.
        if (!own.isEmpty()) {
            return part.name().equals("timing gear") ? all : Optional.of(own);
        }
        return others && (!part.kinds().isEmpty() || part.group().equals("each tensioner")) ? Optional.empty() : all;
    }

    private String kindOf(String part) {
        Optional<Part> known = words.part(part);
        return known.isPresent() ? known.get().kind() : "";
    }

    @Override
    public List<String> names() {
        Set<String> names = new LinkedHashSet<>();
        for (String joint : sheet.keys("joints")) {
            names.add(joint);
            names.addAll(joints.of(joint));
        }
        add(names, "each row of a joint");
        add(names, "each passage of a joint");
        names.addAll(sheet.keys("drive"));
        for (String group : List.of("each gear on a shaft", "each belt companion", "each guide plate", "each timed shaft",
                "each sensor", "each seal", "each oil jet", "each oil line", "each coolant hose", "each fuel hose",
                "each heat shield", "each opening", "each bleed point", "each protection")) {
            add(names, group);
        }
        names.addAll(sheet.keys("plugs"));
        return List.copyOf(names);
    }

    @Override
    public OptionalInt counted(String joint) {
        for (String name = joint; !name.isEmpty(); name = name.substring(0, Math.max(0, name.lastIndexOf(' ')))) {
            if (sheet.has("joints", name)) {
                return joints.counted(name);
            }
        }
        return OptionalInt.empty();
    }

    @Override
    public Map<String, String> cylinderNames() {
        Map<String, String> names = new LinkedHashMap<>();
        for (String number : sheet.keys(LAYOUT, "cylinder names")) {
            String name = sheet.text(LAYOUT, "cylinder names", number);
            if (!name.isEmpty()) {
                names.put(name, number);
            }
        }
        return Collections.unmodifiableMap(names);
    }

    /** A name of the sheet taken apart: `belt idler low` is the belt idler at `low`. Empty where it names no part. */
    public Optional<PartAt> split(String name) {
        return split(name, words);
    }

    static Optional<PartAt> split(String name, Vocabulary words) {
        Optional<Part> whole = words.part(name);
        if (whole.isPresent()) {
            return Optional.of(new PartAt(whole.get().name(), Place.ENGINE));
        }
        for (int i = name.lastIndexOf(' '); i > 0; i = name.lastIndexOf(' ', i - 1)) {
            Optional<Part> part = words.part(name.substring(0, i));
            if (part.isPresent()) {
                return Optional.of(new PartAt(part.get().name(), name.substring(i + 1)));
            }
        }
        return Optional.empty();
    }

    /** The parts that stand in the drive, its routes and what shares them, each where it is, in the sheet's order. */
    public List<PartAt> partsOfDrive() {
        Set<PartAt> parts = new LinkedHashSet<>();
        for (String name : sheet.keys("drive")) {
            split(name).ifPresent(parts::add);
            for (String line : List.of("route", "shares the belt", "guide plates")) {
                for (String on : sheet.list("drive", name, line)) {
                    split(on).ifPresent(parts::add);
                }
            }
        }
        return List.copyOf(parts);
    }

    /**
     * The steps of the engine in their order, put in order once for all who ask.
     *
     * @param newCam whether the camshaft is new or reground, which the sheet leaves to the record
     */
    StepGraph steps(Optional<Boolean> newCam) {
        StepGraph known = steps.get(newCam);
        if (known == null) {
            known = new StepGraph(words, word -> has(word, newCam), order(), hidden());
            steps.put(newCam, known);
        }
        return known;
    }

    private Optional<Boolean> has(String word, Optional<Boolean> newCam) {
        Optional<Boolean> settled = layoutWord(word);
        return settled.isEmpty() && word.equals(NEW_CAM) ? newCam : settled;
    }

    /** Whether a step hangs on the camshaft being new: its followers are flat, or not told. */
    boolean asksForNewCam() {
        return layoutWord(NEW_CAM).isEmpty();
    }

    /**
     * Whether the layout has what a step goes by: `belt drive`, `overhead cam`, `hydraulic lash` ... Empty where the
     * sheet lacks the line, and for words that the record settles.
     */
    public Optional<Boolean> layoutWord(String word) {
        switch (word) {
            case "belt drive", "chain drive", "gear drive":
                return drive.camDrive().isEmpty() ? Optional.empty() : Optional.of(word.startsWith(drive.camDrive()));
            case "belt or chain drive":
                return drive.camDrive().isEmpty() ? Optional.empty()
                        : Optional.of(drive.camDrive().equals("belt") || drive.camDrive().equals("chain"));
            case "overhead cam":
                return says("overhead cam", LAYOUT, "valve gear");
            case "pushrod":
                String gear = sheet.text(LAYOUT, "valve gear");
                return gear.isEmpty() ? Optional.empty() : Optional.of(!gear.equals("overhead cam"));
            case "solid lash":
                return says("solid", LAYOUT, "lash");
            case "hydraulic lash":
                return says("hydraulic", LAYOUT, "lash");
            case "rockers":
                return rockers();
            case "balance shafts":
                return some(LAYOUT, "balance shafts");
            case "cam phasers":
                List<String> phasers = settled("each cam phaser");
                return phasers == null ? Optional.empty() : Optional.of(!phasers.isEmpty());
            case "timing cover":
                return some(LAYOUT, "timing cover");
            case "timing cover meets sump":
                return sheet.has("joints", "sump to block")
                        ? Optional.of(sheet.list("joints", "sump to block", "edges of").contains("timing cover to block"))
                        : Optional.empty();
            case "liners":
                return some(LAYOUT, "liners");
            case "piston jets":
                return some(LAYOUT, "piston jets");
            case "jets":
                return sheet.has("jets") && !sheet.none("jets") ? Optional.of(true) : some(LAYOUT, "piston jets");
            case "turbocharger":
                return some(LAYOUT, "turbochargers");
            case "boosted":
                return either(some(LAYOUT, "turbochargers"), some(LAYOUT, "supercharger"));
            case "intercooler":
                return some(LAYOUT, "intercooler");
            case "clutch":
                return some(LAYOUT, "clutch");
            case "electric fuel pump":
                return says("electric", LAYOUT, "fuel", "pump");
            case "electronic spark or fuel":
                return either(says("controller", LAYOUT, "fuel", "by"), sheet.none(LAYOUT, "spark") ? Optional.of(false)
                        : says("controller", LAYOUT, "spark", "by"));
            case "retighten":
                return some("first running", "retighten head");
            case NEW_CAM:
                // Flat followers leave it to the record whether the camshaft is new.
                String followers = sheet.text(LAYOUT, "followers");
                return followers.isEmpty() || followers.equals("flat") ? Optional.empty() : Optional.of(false);
            default:
                return Optional.empty();
        }
    }

    /** The order lines of the sheet: the first step, then the one that waits for it. */
    public List<Map.Entry<String, String>> order() {
        List<Map.Entry<String, String>> order = new ArrayList<>();
        for (LayoutLines line : sheet.lines("order")) {
            String first = line.text("first");
            String then = line.text("then");
            if (!first.isEmpty() && !then.isEmpty()) {
                order.add(Map.entry(first, then));
            }
        }
        return List.copyOf(order);
    }

    /** What the sheet says is hidden, by the step that hides it: joints, plugs and seals by name. */
    public Map<String, Collection<String>> hidden() {
        Map<String, Collection<String>> hidden = new LinkedHashMap<>();
        for (String section : List.of("joints", "plugs", "seals")) {
            for (String name : sheet.keys(section)) {
                String step = sheet.text(section, name, "hidden by");
                if (!step.isEmpty()) {
                    Collection<String> names = hidden.get(step);
                    if (names == null) {
                        names = new ArrayList<>();
                        hidden.put(step, names);
                    }
                    names.add(section.equals("joints") ? "joint ".concat(name) : name);
                }
            }
        }
        return Collections.unmodifiableMap(hidden);
    }

    /** The places of a group; null where the sheet does not settle it. */
    List<String> settled(String group) {
        return places(group).orElse(null);
    }

    private List<String> find(String group) {
        if (group.equals(Place.ENGINE)) {
            return List.of(Place.ENGINE);
        }
        List<String> places = engine.places(group);
        if (places == null) {
            places = drive.places(group);
        }
        if (places == null) {
            places = joints.places(group);
        }
        if (places == null) {
            places = fittings.places(group);
        }
        return places == null && ruledOut(group) ? List.of() : places;
    }

    /** Whether the layout leaves no room for a group that has no line of its own: an air-cooled engine has no coolant hose. */
    private boolean ruledOut(String group) {
        switch (group) {
            case "each coolant hose":
                return sheet.text(LAYOUT, "cooled by").equals("air");
            case "each boost hose":
                return !layoutWord("boosted").orElse(true);
            case "each trigger sensor", "each coil-type sensor", "each knock sensor":
                return !layoutWord("electronic spark or fuel").orElse(true);
            case "each fed main bearing":
                List<String> plain = settled("each plain bearing");
                return plain != null && (plain.isEmpty() || !plain.get(0).startsWith("main "));
            case "each timed shaft":
                return sheet.has("drive") && layoutWord("balance shafts").equals(Optional.of(false)) && drive.camshaftsAlone();
            default:
                return false;
        }
    }

    private void add(Set<String> names, String group) {
        names.addAll(places(group).orElse(List.of()));
    }

    private Optional<Boolean> says(String word, String... keys) {
        String text = sheet.text(keys);
        return text.isEmpty() ? Optional.empty() : Optional.of(text.equals(word));
    }

    /** Whether a line is there and is not `none`. */
    private Optional<Boolean> some(String... keys) {
        return sheet.has(keys) ? Optional.of(!sheet.none(keys) && sheet.count(keys) != 0) : Optional.empty();
    }

    private Optional<Boolean> rockers() {
        if (sheet.text(LAYOUT, "valve gear").equals("pushrod")) {
            return Optional.of(true);
        }
        Optional<Boolean> fitted = some(LAYOUT, "rockers");
        return fitted.isEmpty() && sheet.text(LAYOUT, "valve gear").equals("side valve") ? Optional.of(false) : fitted;
    }

    private static Optional<Boolean> either(Optional<Boolean> one, Optional<Boolean> other) {
        if (one.orElse(false) || other.orElse(false)) {
            return Optional.of(true);
        }
        return one.isPresent() && other.isPresent() ? one : Optional.empty();
    }
}
