package leadlamp.record;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.quantity.Written;
import leadlamp.words.Property;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** Reads an engine sheet: every line a statement, the limits apart, and the layout that settles the places. */
public final class SheetReader {
    /** Sections whose lines are named by the sheet: `sensors: { crank sensor: { ... } }`. */
    static final Set<String> NAMED = Set.of("drive", "plugs", "seals", "jets", "sealants", "sensors", "lives",
            "timed shafts");
    static final Set<String> KNOWN = Set.of("sheet", "from", "note", "engine mass on the stand", "layout",
            "valves can touch pistons", "standard", "output", "materials", "masses", "balance", "drive", "gears",
            "timed shafts", "timing", "limits", "joints", "choose", "way round", "plugs", "seals", "jets", "sealants", "oil",
            "coolant", "cooling", "fuelling", "ignition", "clutch", "trigger", "sensors", "protection", "renew always",
            "lives", "hours", "order", "first running", "oil lines", "coolant hoses", "fuel hoses", "heat shields",
            "openings", "compression");

    private final Vocabulary words;

    public SheetReader(Vocabulary words) {
        this.words = words;
    }

    /**
     * Reads a sheet.
     *
     * @param path where it lies
     * @param name what messages call it
     * @return the sheet; an empty one with its problems where it could not be read
     */
    public EngineSheet read(Path path, String name) {
        Yaml.File file = Yaml.read(path, name);
        return of(file.tree().orElse(new Node.Fields(List.of(), new Where(name, 0, 0))), name, file.lines(), file.problems());
    }

    /** Reads a sheet that stands as a tree, such as one that a case has changed. */
    public EngineSheet of(Node.Fields tree, String name, List<String> lines, Collection<Problem> already) {
        Complaints complaints = new Complaints(lines);
        complaints.take(already);
        return new Work(tree, name, complaints).sheet();
    }

    private final class Work {
        private final Node.Fields tree;
        private final String name;
        private final Complaints complaints;
        private final List<Statement> statements = new ArrayList<>();
        private final List<LimitLine> limits = new ArrayList<>();
        private final SheetLayout layout;
        private final SheetSizes sizes = new SheetSizes(words);

        Work(Node.Fields tree, String name, Complaints complaints) {
            this.tree = tree;
            this.name = name;
            this.complaints = complaints;
            this.layout = new SheetLayout(tree, words);
        }

        EngineSheet sheet() {
            for (Node.Field section : tree.fields()) {
                section(section);
            }
            String engine = text(tree, "sheet").orElse("");
            String from = text(tree, "from").orElse("");
            return new EngineSheet(name, engine, from, List.copyOf(statements), List.copyOf(limits), layout, tree,
                    complaints.all());
        }

        private void section(Node.Field section) {
            String key = section.key();
            if (!KNOWN.contains(key)) {
                complaints.unknown(section.where(), key, "\"" + key + "\" is no section of an engine sheet.",
                        new java.util.TreeSet<>(KNOWN), "A sheet may have: ", "The section was left out.");
                return;
            }
            switch (key) {
                case "sheet", "from", "note", "order", "choose" -> {
                }
                case "limits" -> fieldsOf(section).forEach(f -> limits.addAll(limitLines(f, "the engine sheet", words, complaints)));
                case "joints" -> fieldsOf(section).forEach(this::joint);
                case "gears" -> fieldsOf(section).forEach(this::gear);
                case "way round" -> fieldsOf(section).forEach(f -> partWord(f, "way round"));
                case "renew always" -> renewAlways(section);
                case "protection" -> protection(section);
                case "valves can touch pistons", "engine mass on the stand" ->
                        say(key, Place.ENGINE, key, section.value());
                default -> {
                    if (NAMED.contains(key)) {
                        for (Node.Field line : fieldsOf(section)) {
                            named(key, line);
                        }
                    } else if (section.value() instanceof Node.Fields fields) {
                        for (Node.Field line : fields.fields()) {
                            known(key, line, key);
                            lines(key, Place.ENGINE, "", line);
                        }
                    } else {
                        say(key, Place.ENGINE, "names", section.value());
                    }
                }
            }
        }

        /** A line that the vocabulary does not know is said; where it knows none of the section nothing is held against it. */
        private void known(String section, Node.Field line, String title) {
            if (line.key().equals("note") || line.key().equals("from")) {
                return;
            }
            Collection<Property> properties = words.properties("sheet " + section);
            if (properties.isEmpty() || words.property("sheet " + section, line.key()).isPresent()
                    || section.equals("standard") && words.quantity(line.key()).isPresent()
                    || section.equals("materials") && words.part(line.key()).isPresent()
                    || section.equals("masses") && words.part(line.key()).isPresent()) {
                return;
            }
            List<String> can = new ArrayList<>();
            for (Property property : properties) {
                can.add(property.name());
            }
            complaints.unknown(line.where(), line.key(), "\"" + line.key() + "\" is no line of `" + title + "`.", can,
                    "`" + title + "` may have: ", "The line was kept, and no check reads it.");
        }

        private void named(String section, Node.Field line) {
            if (line.value() instanceof Node.Fields fields) {
                for (Node.Field word : fields.fields()) {
                    known(section, word, line.key());
                    lines(section, line.key(), "", word);
                }
            } else {
                say(section, line.key(), "", line.value());
            }
        }

        /** A line and all below it: `fuel: { burns: petrol }` is said as `fuel burns`. */
        private void lines(String of, String at, String before, Node.Field line) {
            String what = before.isEmpty() ? line.key() : before + " " + line.key();
            if (line.key().equals("note")) {
                return;
            }
            if (line.value() instanceof Node.Fields fields) {
                for (Node.Field below : fields.fields()) {
                    lines(of, at, what, below);
                }
            } else {
                say(of, at, what, line.value());
            }
        }

        private void gear(Node.Field gear) {
            boolean side = Place.isOfWords(gear.key());
            String part = side ? "cam gear" : words.part(gear.key()).map(p -> p.name()).orElse(gear.key());
            String at = side ? gear.key() : Place.ENGINE;
            if (!(gear.value() instanceof Node.Fields fields)) {
                return;
            }
            for (Node.Field line : fields.fields()) {
                if (line.key().equals("pin") && line.value() instanceof Node.Fields pin) {
                    pin.fields().forEach(f -> lines(part + " pin", at, "", meant(part + " pin", f)));
                } else if (line.key().equals("pin")) {
                    say(part + " pin", at, "state", line.value());
                } else {
                    known("gears", line, gear.key());
                    lines(part, at, "", meant(part, line));
                }
            }
        }

        /** The line with the word that the record would be read with, so that both say `slotted` where one of them wrote `roll pin`. */
        private Node.Field meant(String part, Node.Field line) {
            Optional<Property> property = words.property("parts", line.key());
            if (property.isPresent() && line.value() instanceof Node.Scalar said) {
                String meant = property.get().also().get(said.text().toLowerCase(Locale.ROOT));
                if (meant != null && EntryReader.valuesFor(property.get(), part, words).containsKey(meant)) {
                    return new Node.Field(line.key(), line.where(), new Node.Scalar(meant, said.where()));
                }
            }
            return line;
        }

        private void partWord(Node.Field line, String what) {
            Optional<leadlamp.words.Part> part = words.part(line.key());
            if (part.isEmpty()) {
                complaints.unknown(line.where(), line.key(), "\"" + line.key() + "\" is no part that is known.", partNames(),
                        "", "The line was left out.");
                return;
            }
            say(part.get().name(), Place.ENGINE, what, line.value());
        }

        private void renewAlways(Node.Field section) {
            for (Node.Field line : fieldsOf(section)) {
                for (Node.Scalar item : scalars(line.value())) {
                    if (line.key().equals("bolts of")) {
                        for (String place : jointPlaces(item.text())) {
                            add("joint", place, "renew always", "bolts", Optional.empty(), item.where());
                        }
                    } else {
                        Optional<leadlamp.words.Part> part = words.part(item.text());
                        if (part.isPresent()) {
                            add(part.get().name(), Place.ENGINE, "renew always", "part", Optional.empty(), item.where());
                        } else {
                            complaints.unknown(item.where(), item.text(), "\"" + item.text() + "\" is no part that is known.",
                                    partNames(), "", "It was left out.");
                        }
                    }
                }
            }
        }

        private void protection(Node.Field section) {
            for (Node.Field line : fieldsOf(section)) {
                if (line.value() instanceof Node.Fields fields) {
                    add("protection", Place.ENGINE, line.key(), "fitted", Optional.empty(), line.where());
                    fields.fields().forEach(f -> lines("protection", Place.ENGINE, line.key(), f));
                } else {
                    say("protection", Place.ENGINE, line.key(), line.value());
                }
            }
        }

        private List<String> jointPlaces(String joint) {
            List<String> places = new ArrayList<>();
            for (String place : layout.places("each joint").orElse(List.of())) {
                if (place.equals(joint) || place.startsWith(joint + " ")) {
                    places.add(place);
                }
            }
            return places.isEmpty() ? List.of(joint) : places;
        }

        private void joint(Node.Field joint) {
            if (!(joint.value() instanceof Node.Fields fields)) {
                complaints.add(joint.where(), joint.key().length(), "Nothing is said of \"" + joint.key() + "\".",
                        "A joint has lines such as bolts, thread, torque.", Optional.empty(), "The joint was left out.");
                return;
            }
            boolean first = true;
            for (String place : jointPlaces(joint.key())) {
                for (Node.Field line : fields.fields()) {
                    jointLine(place, line, first);
                }
                first = false;
            }
            for (Node.Field line : fields.fields()) {
                if (!Set.of("threads", "gasket", "lengths", "positions", "rows", "stages", "torque", "stretch", "torque limits",
                        "bolt length limit").contains(line.key()) && words.property("fasteners", line.key()).isEmpty()) {
                    known("joints", line, joint.key());
                }
            }
        }

        private void jointLine(String place, Node.Field line, boolean first) {
            switch (line.key()) {
                case "thread" -> {
                    if (line.value() instanceof Node.Scalar said && first) {
                        SheetSizes.thread(said, complaints);
                    }
                    lines("joint", place, "", line);
                }
                case "threads" -> fieldsOf(line).forEach(f -> lines("joint", place, "", f));
                case "lengths" -> {
                    add("joint", place, "lengths", flat(line.value()), Optional.empty(), line.where());
                    for (Node.Field length : fieldsOf(line)) {
                        say("joint", place + " " + length.key(), "length", length.value());
                    }
                }
                case "torque" -> {
                    if (line.value() instanceof Node.Fields) {
                        jointLine(place, new Node.Field("torque limits", line.where(), line.value()), first);
                    } else {
                        lines("joint", place, "", line);
                    }
                }
                case "positions", "rows" -> add("joint", place, line.key(), flat(line.value()), Optional.empty(), line.where());
                case "stages" -> {
                    add("joint", place, "stages", flat(line.value()), Optional.empty(), line.where());
                    double angle = 0;
                    Node.Scalar torque = null;
                    Node.Scalar turned = null;
                    for (Node.Scalar stage : scalars(line.value())) {
                        Optional<Written> value = anyValue(turn(stage.text()));
                        if (value.isPresent() && value.get().unit().dimension() == Dimension.ANGLE) {
                            angle += value.get().high();
                            turned = stage;
                        } else if (value.isPresent() && value.get().unit().dimension() == Dimension.TORQUE) {
                            torque = stage;
                        } else {
                            complaints.add(stage.where(), stage.text().length(), "\"" + stage.text() + "\" is no stage of tightening.",
                                    "A torque such as 25 N·m, or `then 90 deg`.", Optional.empty(), "The stage was left out.");
                        }
                    }
                    if (torque != null) {
                        say("joint", place, "torque", torque);
                    }
                    if (turned != null) {
                        Unit deg = Units.named("deg").orElseThrow();
                        String text = plain(deg.fromSi(angle)) + " deg";
                        add("joint", place, "angle", text, Optional.of(new Written(Written.Form.PLAIN, angle, angle, deg, 0,
                                text)), turned.where());
                    }
                }
                default -> lines("joint", place, "", line);
            }
        }

        private void say(String of, String at, String what, Node value) {
            String text = flat(value);
            Optional<Written> size = Optional.empty();
            if (value instanceof Node.Scalar scalar) {
                Optional<Dimension> dimension = sizes.of(of, what);
                size = dimension.isPresent() ? SheetSizes.read(what, scalar, dimension.get(), complaints) : anyValue(text);
            }
            add(of, at, what, text, size, value.where());
        }

        private void add(String of, String at, String what, String says, Optional<Written> value, Where where) {
            statements.add(new Statement(Statement.Form.ON_SHEET, of, at, what, says, value, List.of(), Map.of(),
                    Optional.empty(), where, complaints.line(where)));
        }

        private List<String> partNames() {
            List<String> names = new ArrayList<>();
            words.parts().forEach(p -> names.add(p.name()));
            return names;
        }

        private List<Node.Field> fieldsOf(Node.Field section) {
            if (section.value() instanceof Node.Fields fields) {
                List<Node.Field> lines = new ArrayList<>(fields.fields());
                lines.removeIf(f -> f.key().equals("note"));
                return lines;
            }
            if (!(section.value() instanceof Node.Scalar s && (s.text().isEmpty() || s.text().equals("none")))) {
                complaints.add(section.value().where(), 0, "`" + section.key() + "` wants lines below it.", "", Optional.empty(),
                        "It was left out.");
            }
            return List.of();
        }
    }

    /**
     * The limit lines of one quantity, as they stand on a sheet, in a part's entry or among the trade's numbers.
     *
     * @param basis whose numbers they are
     */
    static List<LimitLine> limitLines(Node.Field line, String basis, Vocabulary words, Complaints complaints) {
        List<LimitLine> limits = new ArrayList<>();
        Optional<Quantity> quantity = words.quantity(line.key());
        if (quantity.isEmpty()) {
            Collection<String> meanings = words.meanings(line.key());
            List<String> names = new ArrayList<>();
            words.quantities().forEach(q -> names.add(q.name()));
            if (meanings.isEmpty()) {
                complaints.unknown(line.where(), line.key(), "\"" + line.key() + "\" is no reading that is known.", names, "",
                        "The limit was left out.");
            } else {
                complaints.add(line.where(), line.key().length(), "\"" + line.key() + "\" may mean two things.",
                        "Write one of: " + Complaints.some(meanings), Optional.empty(), "The limit was left out.");
            }
            return limits;
        }
        List<Node> maps = line.value() instanceof Node.Items items ? items.items() : List.of(line.value());
        for (Node map : maps) {
            if (map instanceof Node.Fields fields) {
                one(quantity.get(), fields, basis, words, complaints).ifPresent(limits::add);
            } else {
                complaints.add(map.where(), 0, "A limit wants `least`, `most` or `standard`.",
                        "As { least: 0.02 mm, most: 0.06 mm }.", Optional.empty(), "The limit was left out.");
            }
        }
        return limits;
    }

    private static Optional<LimitLine> one(Quantity quantity, Node.Fields fields, String basis, Vocabulary words,
            Complaints complaints) {
        Map<String, String> texts = new HashMap<>();
        Map<String, String> asides = new java.util.TreeMap<>();
        Map<String, String> where = new java.util.TreeMap<>();
        Map<String, Written> sizes = new HashMap<>();
        boolean share = fields.get("times").isPresent();
        for (Node.Field field : fields.fields()) {
            switch (field.key()) {
                case "at", "times", "when" -> texts.put(field.key(), flat(field.value()));
                case "where" -> {
                    if (field.value() instanceof Node.Fields lines) {
                        lines.fields().forEach(f -> where.put(f.key(), flat(f.value())));
                    }
                }
                case "standard", "least", "most", "either way" -> {
                    Dimension dimension = share && !field.key().equals("standard") ? Dimension.SHARE : quantity.dimension();
                    Reading.Result result = Reading.read(flat(field.value()), dimension, Optional.empty());
                    if (result instanceof Reading.Unread && field.key().equals("either way")) {
                        result = Reading.read(flat(field.value()), Dimension.SHARE, Optional.empty());
                    }
                    if (result instanceof Reading.Read read && read.written().figure()) {
                        sizes.put(field.key(), read.written());
                    } else if (result instanceof Reading.Unread unread) {
                        complaints.add(moved(field.value().where(), unread.offset()), unread.length(), unread.what(), unread.expected(),
                                unread.nearest(), "The limit was left out.");
                        return Optional.empty();
                    }
                }
                case "span", "at radius", "speed", "oil temperature", "temperature", "for", "load", "note" ->
                        asides.put(field.key(), flat(field.value()));
                default -> complaints.unknown(field.where(), field.key(), "\"" + field.key() + "\" is no word of a limit.",
                        List.of("standard", "least", "most", "either way", "times", "at", "when", "where", "span", "at radius",
                                "speed", "oil temperature", "temperature", "for", "note"), "A limit may have: ",
                        "The rest of the limit was read.");
            }
        }
        Written standard = sizes.get("standard");
        Written way = sizes.get("either way");
        Optional<Written> least = Optional.ofNullable(sizes.get("least"));
        Optional<Written> most = Optional.ofNullable(sizes.get("most"));
        if (standard != null && way != null) {
            double half = way.unit().dimension() == Dimension.SHARE && quantity.dimension() != Dimension.SHARE
                    ? Math.abs(standard.low()) * way.low() : way.low();
            if (quantity.dimension() == Dimension.TEMPERATURE) {
                half = way.unit().factor() * way.unit().fromSi(way.low());
            }
            least = Optional.of(new Written(Written.Form.PLAIN, standard.low() - half, standard.low() - half, standard.unit(),
                    standard.figures(), standard.text()));
            most = Optional.of(new Written(Written.Form.PLAIN, standard.low() + half, standard.low() + half, standard.unit(),
                    standard.figures(), standard.text()));
        } else if (standard != null && standard.low() != standard.high()) {
            Unit unit = standard.unit();
            least = Optional.of(new Written(Written.Form.PLAIN, standard.low(), standard.low(), unit, standard.figures(), standard.text()));
            most = Optional.of(new Written(Written.Form.PLAIN, standard.high(), standard.high(), unit, standard.figures(), standard.text()));
        }
        String at = texts.getOrDefault("at", "");
        return Optional.of(new LimitLine(quantity.name(), Place.inOrder(at), Optional.ofNullable(standard), least, most,
                texts.getOrDefault("times", ""), texts.getOrDefault("when", ""), java.util.Collections.unmodifiableMap(where),
                java.util.Collections.unmodifiableMap(asides), false, basis, fields.where()));
    }

    static Where moved(Where where, int by) {
        return by <= 0 ? where : new Where(where.file(), where.line(), where.column() + by);
    }

    /** A size in whatever unit it has; empty where the text is none. */
    static Optional<Written> anyValue(String text) {
        int i = 0;
        boolean digit = false;
        while (i < text.length() && "0123456789.+-± ".indexOf(text.charAt(i)) >= 0) {
            digit |= Character.isDigit(text.charAt(i));
            i++;
        }
        if (!digit || i >= text.length() && !digit) {
            return Optional.empty();
        }
        String unit = text.substring(i).strip();
        Dimension dimension = unit.isEmpty() ? Dimension.NUMBER
                : Units.named(unit).map(Unit::dimension).orElse(null);
        if (dimension == null) {
            return Optional.empty();
        }
        return Reading.read(text, dimension, Optional.empty()) instanceof Reading.Read read && read.written().figure()
                ? Optional.of(read.written()) : Optional.empty();
    }

    /** `then 90 deg` without its first word. */
    static String turn(String stage) {
        String text = stage.strip();
        return text.startsWith("then ") ? text.substring(5).strip() : text.startsWith("+") ? text.substring(1).strip() : text;
    }

    /** What stands there as one text: a list with commas, a map with colons. */
    static String flat(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return scalar.text();
        }
        StringBuilder text = new StringBuilder();
        if (node instanceof Node.Items items) {
            for (Node item : items.items()) {
                text.append(text.isEmpty() ? "" : ", ").append(item instanceof Node.Items ? "[" + flat(item) + "]" : flat(item));
            }
        } else if (node instanceof Node.Fields fields) {
            for (Node.Field field : fields.fields()) {
                text.append(text.isEmpty() ? "" : ", ").append(field.key()).append(": ").append(flat(field.value()));
            }
        }
        return text.toString();
    }

    static List<Node.Scalar> scalars(Node node) {
        List<Node.Scalar> scalars = new ArrayList<>();
        if (node instanceof Node.Scalar scalar) {
            scalars.add(scalar);
        } else if (node instanceof Node.Items items) {
            items.items().forEach(i -> scalars.addAll(scalars(i)));
        }
        return scalars;
    }

    static Optional<String> text(Node.Fields fields, String key) {
        return fields.get(key).filter(Node.Scalar.class::isInstance).map(n -> ((Node.Scalar) n).text());
    }

    private static String plain(double value) {
        long whole = Math.round(value);
        return Math.abs(value - whole) < 1e-9 ? Long.toString(whole) : Double.toString(value);
    }
}
