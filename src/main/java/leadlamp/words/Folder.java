package leadlamp.words;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Units;

/** The folder of the vocabulary, read and looked over: every word that refers to another must find it. */
final class Folder {
    private static final Set<String> HARMS = Set.of("least", "most", "both", "none");
    private static final Set<String> PLACE_AXES = Set.of("SIDE", "BANK", "END", "HALF", "RING", "HEIGHT", "DIRECTION",
            "SPOT");

    private final Map<String, Object> partLines;
    private final Map<String, Object> signLines;
    private final Map<String, Object> stepLines;
    private final Map<String, Object> gaugeLines;
    private final Map<String, Object> measuredLines;
    private final Map<String, Object> derivedLines;
    private final Map<String, String> groups = new LinkedHashMap<>();
    private final Map<String, String> events = new LinkedHashMap<>();
    private final Map<String, Boolean> conditions = new LinkedHashMap<>();
    private final Map<String, Set<String>> meanings = new TreeMap<>();
    private final Map<String, Part> parts = new LinkedHashMap<>();
    /** Each fluid with the first part that keeps it in. */
    private final Map<String, String> keptIn = new LinkedHashMap<>();
    private final Map<String, Quantity> quantities = new LinkedHashMap<>();
    private final Map<String, Sign> signs = new LinkedHashMap<>();
    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final Map<String, GaugeKind> gauges = new LinkedHashMap<>();
    private final List<PlaceWord> placeWords = new ArrayList<>();
    private final PropertyLines properties;
    private final Index partIndex = new Index();
    private final Index quantityIndex = new Index();
    private final Index signIndex = new Index();
    private final Index stepIndex = new Index();
    private final Index gaugeIndex = new Index();

    private Folder(Path folder) throws IOException {
        partLines = Tree.read(folder.resolve("parts.yaml"));
        signLines = Tree.read(folder.resolve("signs.yaml"));
        stepLines = Tree.read(folder.resolve("steps.yaml"));
        gaugeLines = Tree.read(folder.resolve("gauges.yaml"));
        Map<String, Object> quantityLines = Tree.read(folder.resolve("quantities.yaml"));
        measuredLines = new Line("quantities.yaml", "measured", quantityLines.get("measured")).map();
        derivedLines = new Line("quantities.yaml", "derived", quantityLines.get("derived")).map();
        readGroups(Tree.read(folder.resolve("groups.yaml")));
        readPlaces(Tree.read(folder.resolve("places.yaml")));
        readEvents(Tree.read(folder.resolve("events.yaml")));
        readConditions(Tree.read(folder.resolve("conditions.yaml")));
        readParts();
        readGauges();
        readSigns();
        readQuantities();
        readSteps();
        readMeanings(Tree.read(folder.resolve("ambiguous.yaml")));
        properties = new PropertyLines(Tree.read(folder.resolve("properties.yaml")));
        properties.partsNamed().forEach(word -> need("properties.yaml", "of", parts.containsKey(word), word));
        Set<String> fluids = properties.values("worked out", "holds");
        keptIn.forEach((fluid, part) -> need("parts.yaml", part, fluid.isEmpty() || fluids.contains(fluid), fluid));
    }

    static Folder read(Path folder) throws IOException {
        return new Folder(folder);
    }

    byte[] bytes() throws IOException {
        Pack pack = new Pack();
        pack.records(Pack.PARTS, List.copyOf(parts.values()), pack::part);
        pack.table(Pack.PART_WORDS, partIndex.settled());
        pack.records(Pack.QUANTITIES, List.copyOf(quantities.values()), pack::quantity);
        pack.table(Pack.QUANTITY_WORDS, quantityIndex.settled());
        pack.records(Pack.SIGNS, List.copyOf(signs.values()), pack::sign);
        pack.table(Pack.SIGN_WORDS, signIndex.settled());
        pack.records(Pack.STEPS, List.copyOf(steps.values()), pack::step);
        pack.table(Pack.STEP_WORDS, stepIndex.settled());
        pack.records(Pack.GAUGES, List.copyOf(gauges.values()), pack::gauge);
        pack.table(Pack.GAUGE_WORDS, gaugeIndex.settled());
        pack.records(Pack.PROPERTIES, properties.all(), pack::property);
        pack.table(Pack.PROPERTY_WORDS, properties.table());
        pack.records(Pack.SECTIONS, properties.sections(), pack::numbers);
        pack.table(Pack.SECTION_WORDS, properties.sectionTable());
        List<Set<String>> meant = List.copyOf(meanings.values());
        pack.records(Pack.MEANINGS, meant, pack::words);
        Map<String, Integer> words = new TreeMap<>();
        for (String word : meanings.keySet()) {
            words.put(word, words.size());
        }
        pack.table(Pack.MEANING_WORDS, words);
        pack.records(Pack.PLACES, placeWords, pack::place);
        Map<String, String> easing = new LinkedHashMap<>();
        conditions.forEach((name, eases) -> easing.put(name, eases ? "eases" : ""));
        pack.records(Pack.LISTS, List.of(groups, events, easing), pack::map);
        return pack.bytes();
    }

    private static void need(String file, String word, boolean holds, Object what) {
        if (!holds) {
            throw new VocabularyException(file, "\"" + word + "\" names \"" + what + "\", which is not there");
        }
    }

    private void readGroups(Map<String, Object> lines) {
        lines.forEach((name, value) -> {
            Line line = new Line("groups.yaml", name, value);
            groups.put(name, line.text("places"));
            line.text("from");
            line.done();
        });
    }

    private void readPlaces(Map<String, Object> lines) {
        Map<String, Object> axes = new Line("places.yaml", "places", lines.get("places")).map();
        axes.forEach((axis, value) -> {
            Line line = new Line("places.yaml", axis, value);
            if (PLACE_AXES.contains(axis)) {
                line.map().forEach((name, words) -> {
                    Line word = new Line("places.yaml", name, words);
                    placeWords.add(new PlaceWord(name, axis, word.text("gloss", ""), word.list("also")));
                    word.done();
                });
            } else if (axis.equals("CORNER") || axis.equals("QUARTER")) {
                String gloss = line.text("gloss", "");
                line.list("one of").forEach(name -> placeWords.add(new PlaceWord(name, axis, gloss, List.of())));
            }
        });
    }

    private void readEvents(Map<String, Object> lines) {
        lines.forEach((name, value) -> {
            Line line = new Line("events.yaml", name, value);
            events.put(name, line.text("gloss"));
            line.text("id");
            line.flag("claim");
            line.done();
        });
    }

    private void readConditions(Map<String, Object> lines) {
        lines.forEach((name, value) -> {
            Line line = new Line("conditions.yaml", name, value);
            conditions.put(name, line.flag("eases"));
            line.text("when");
            line.list("reads");
            line.done();
        });
    }

    private void readParts() {
        partLines.forEach((name, value) -> {
            Line line = new Line("parts.yaml", name, value);
            List<String> kinds = new ArrayList<>();
            for (String kind = line.text("kind", ""); !kind.isEmpty();) {
                need("parts.yaml", name, partLines.containsKey(kind) && !kinds.contains(kind), kind);
                kinds.add(kind);
                kind = new Line("parts.yaml", kind, partLines.get(kind)).text("kind", "");
            }
            String group = line.text("each");
            need("parts.yaml", name, groups.containsKey(group), group);
            int index = parts.size();
            String goesWith = line.text("goes with", "");
            need("parts.yaml", name, goesWith.isEmpty() || partLines.containsKey(goesWith) && !goesWith.equals(name), goesWith);
            String runsIn = line.text("runs in", "");
            need("parts.yaml", name, runsIn.isEmpty() || partLines.containsKey(runsIn) && !runsIn.equals(name), runsIn);
            String keyedBy = line.text("keyed by", "");
            need("parts.yaml", name, keyedBy.isEmpty() || partLines.containsKey(keyedBy) && !keyedBy.equals(name), keyedBy);
            String keepsIn = line.text("keeps in", "");
            keptIn.putIfAbsent(keepsIn, name);
            parts.put(name, new Part(name, line.text("gloss"), line.text("system"), group, line.number("strip"),
                    List.copyOf(kinds), goesWith, runsIn, keyedBy, keepsIn));
            partIndex.name(name, index);
            line.list("also").forEach(word -> partIndex.synonym(word, index));
            line.done();
        });
        List<Part> all = List.copyOf(parts.values());
        partIndex.shared().forEach((word, of) -> of.forEach(i -> mean(word, all.get(i).name())));
    }

    private void readGauges() {
        gaugeLines.forEach((name, value) -> {
            Line line = new Line("gauges.yaml", name, value);
            int index = gauges.size();
            gauges.put(name, new GaugeKind(name, line.text("gloss"), line.text("doubt"), line.text("basis")));
            gaugeIndex.name(name, index);
            line.list("also").forEach(word -> gaugeIndex.synonym(word, index));
            line.done();
        });
    }

    private void readSigns() {
        signLines.forEach((name, value) -> {
            Line line = new Line("signs.yaml", name, value);
            int index = signs.size();
            List<String> of = line.list("parts");
            of.forEach(part -> need("signs.yaml", name, parts.containsKey(part) || part.equals("any")
                    || part.equals("any joint"), part));
            List<String> rulesOut = line.list("rules out");
            rulesOut.forEach(sign -> need("signs.yaml", name, signLines.containsKey(sign), sign));
            signs.put(name, new Sign(name, line.text("gloss"), of, line.flag("sound"), rulesOut, line.text("amount"),
                    line.flag("deep")));
            signIndex.name(name, index);
            line.list("also").forEach(word -> signIndex.synonym(word, index));
            line.done();
        });
        List<Sign> all = List.copyOf(signs.values());
        signIndex.shared().forEach((word, of) -> of.forEach(i -> mean(word, all.get(i).name())));
    }

    private void readQuantities() {
        Map<String, Set<Integer>> bare = new TreeMap<>();
        Set<String> whole = new LinkedHashSet<>();
        measuredLines.forEach((name, value) -> {
            Line line = new Line("quantities.yaml", name, value);
            int index = quantities.size();
            String of = line.text("of");
            String what = line.text("what");
            need("quantities.yaml", name, parts.containsKey(of), of);
            need("quantities.yaml", name, name.equals(of + " " + what), of + " " + what);
            Part part = parts.get(of);
            quantity(line, name, of, what, line.text("each", part.group()), kind(line, name, part, what), false);
            bare.computeIfAbsent(Index.key(what), w -> new LinkedHashSet<>()).add(index);
            line.list("also").forEach(word -> {
                quantityIndex.synonym(of + " " + word, index);
                bare.computeIfAbsent(Index.key(word), w -> new LinkedHashSet<>()).add(index);
                if (word.contains(" ")) {
                    whole.add(Index.key(word));
                }
            });
            line.done();
        });
        derivedLines.forEach((name, value) -> {
            Line line = new Line("quantities.yaml", name, value);
            int index = quantities.size();
            need("quantities.yaml", name, !quantities.containsKey(name), "what is measured as well");
            String group = line.text("each");
            String of = named(name, group);
            quantity(line, name, of, of.isEmpty() ? name : name.substring(of.length() + 1), group,
                    line.text("kind", name), true);
            line.list("also").forEach(word -> {
                bare.computeIfAbsent(Index.key(word), w -> new LinkedHashSet<>()).add(index);
                whole.add(Index.key(word));
            });
            line.done();
        });
        List<Quantity> all = List.copyOf(quantities.values());
        quantityIndex.shared().forEach((word, of) -> of.forEach(i -> mean(word, all.get(i).name())));
        // Half a name says enough only where it is a name of its own (bore taper), never as one word out of many.
        Map<String, Integer> settled = quantityIndex.settled();
        Map<String, Integer> settledParts = partIndex.settled();
        bare.forEach((word, of) -> {
            if (of.size() == 1 && whole.contains(word)) {
                quantityIndex.synonym(word, of.iterator().next());
            } else if (!settled.containsKey(word) && !settledByPart(word, settledParts, settled)) {
                of.forEach(i -> mean(word, all.get(i).name()));
            }
        });
    }

    /** Whether the word begins with a part's synonym and goes on with a reading of that part: `oil pressure`. */
    private boolean settledByPart(String word, Map<String, Integer> settledParts, Map<String, Integer> settled) {
        List<Part> all = List.copyOf(parts.values());
        for (int i = word.lastIndexOf(' '); i > 0; i = word.lastIndexOf(' ', i - 1)) {
            Integer part = settledParts.get(word.substring(0, i));
            if (part != null && settled.containsKey(Index.key(all.get(part).name() + word.substring(i)))) {
                return true;
            }
        }
        return false;
    }

    private String kind(Line line, String name, Part part, String what) {
        String given = line.text("kind", "");
        if (!given.isEmpty()) {
            need("quantities.yaml", name, measuredLines.containsKey(given), given);
            return given;
        }
        String kind = name;
        for (String of : part.kinds()) {
            if (measuredLines.containsKey(of + " " + what)) {
                kind = of + " " + what;
            }
        }
        return kind;
    }

    private void quantity(Line line, String name, String of, String what, String group, String kind, boolean derived) {
        need("quantities.yaml", name, groups.containsKey(group), group);
        String dimension = line.text("dimension");
        Optional<Dimension> known = Dimension.named(dimension);
        need("quantities.yaml", name, known.isPresent(), dimension);
        String unit = line.text("unit");
        need("quantities.yaml", name, Units.named(unit, known.get()).isPresent(), "the unit " + unit);
        Optional<String> gauge = Optional.of(line.text("gauge", "")).filter(g -> !g.isEmpty());
        gauge.ifPresent(kindOfGauge -> need("quantities.yaml", name, gauges.containsKey(kindOfGauge), kindOfGauge));
        Optional<String> doubt = Optional.of(line.text("doubt", "")).filter(d -> !d.isEmpty());
        line.text("basis", "");
        String harm = line.text("harm");
        need("quantities.yaml", name, HARMS.contains(harm), harm);
        int index = quantities.size();
        quantities.put(name, new Quantity(name, of, what, kind, known.get(), Units.named(unit, known.get()).get(), group,
                forms(line.list("at"), groups.get(group)), gauge, doubt, harm, derived, line.list("from"),
                line.text("gloss")));
        quantityIndex.name(name, index);
    }

    /** The part whose name begins a derived value's, where both live at the same places. */
    private String named(String quantity, String group) {
        String of = "";
        for (Part part : parts.values()) {
            if (part.name().length() > of.length() && part.group().equals(group)
                    && quantity.startsWith(part.name() + " ")) {
                of = part.name();
            }
        }
        return of;
    }

    /** The forms of place that go beyond those of the group. */
    private static List<String> forms(List<String> at, String places) {
        List<String> own = new ArrayList<>();
        for (String form : places.split(", or |, | or |; ")) {
            int where = form.indexOf(" where ");
            own.add(where < 0 ? form : form.substring(0, where));
        }
        return at.stream().filter(form -> !own.contains(form)).toList();
    }

    private void readSteps() {
        stepLines.forEach((name, value) -> {
            Line line = new Line("steps.yaml", name, value);
            int index = steps.size();
            Map<String, List<String>> afterFor = new LinkedHashMap<>();
            Line more = line.line("after for");
            for (String layout : more.keys()) {
                afterFor.put(layout, more.list(layout));
            }
            List<String> after = line.list("after");
            after.forEach(step -> need("steps.yaml", name, stepLines.containsKey(step), step));
            afterFor.values().forEach(list -> list.forEach(step -> need("steps.yaml", name, stepLines.containsKey(step), step)));
            List<String> closes = line.list("closes");
            closes.forEach(word -> need("steps.yaml", name, closable(word), word));
            steps.put(name, new Step(name, line.text("gloss"), after, Collections.unmodifiableMap(afterFor), closes,
                    line.number("reach"), line.text("only for", ""), line.text("due", "").equals("all"),
                    line.flag("last")));
            stepIndex.name(name, index);
            line.list("also").forEach(word -> stepIndex.synonym(word, index));
            line.done();
        });
    }

    /** A part, a reading, a sign, a sign of a part, or a joint by its name. */
    private boolean closable(String word) {
        if (parts.containsKey(word) || quantities.containsKey(word) || signs.containsKey(word)
                || word.startsWith("joint ") && word.contains(" to ")) {
            return true;
        }
        for (int i = word.indexOf(' '); i > 0; i = word.indexOf(' ', i + 1)) {
            if (parts.containsKey(word.substring(0, i)) && signs.containsKey(word.substring(i + 1))) {
                return true;
            }
        }
        return false;
    }

    private void readMeanings(Map<String, Object> lines) {
        lines.forEach((word, value) -> {
            List<String> means = new Line("ambiguous.yaml", word, value).list();
            means.forEach(m -> need("ambiguous.yaml", word, parts.containsKey(m) || quantities.containsKey(m)
                    || signs.containsKey(m), m));
            if (partIndex.knows(word) || quantityIndex.knows(word)) {
                throw new VocabularyException("ambiguous.yaml", "\"" + word + "\" is a name or a synonym as well");
            }
            meanings.put(Index.key(word), new LinkedHashSet<>(means));
        });
    }

    private void mean(String word, String meaning) {
        meanings.computeIfAbsent(Index.key(word), w -> new LinkedHashSet<>()).add(meaning);
    }
}
