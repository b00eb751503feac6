package leadlamp.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.quantity.Written;
import leadlamp.record.Statement.Form;
import leadlamp.words.Part;
import leadlamp.words.Property;
import leadlamp.words.Quantity;
import leadlamp.words.Sign;
import leadlamp.words.Step;
import leadlamp.words.Vocabulary;

/** The sections of a build record, entry by entry, into statements. */
final class Entries {
    private static final List<String> SECTIONS = List.of("build", "engine", "use", "stage", "gauges", "machining",
            "measurements", "parts", "fasteners", "observations", "steps", "protection", "photos", "accepted", "note");
    private static final List<String> NO_TORQUE = List.of("as found", "by hand", "not yet", "unknown", "not read");

    private final Vocabulary words;
    private final EngineSheet sheet;
    private final Node.Fields tree;
    private final Complaints complaints;
    private final Places places;
    private final Set<String> joints;
    private final List<Statement> statements = new ArrayList<>();
    private final List<LimitLine> limits = new ArrayList<>();
    private final Map<String, Gauge> gauges = new LinkedHashMap<>();
    private final List<String> stage = new ArrayList<>();
    private final List<Build.Accepted> accepted = new ArrayList<>();
    private final List<Build.Photo> photos = new ArrayList<>();
    private final List<Statement.Key> leftOut = new ArrayList<>();
    private String name = "";

    Entries(Vocabulary words, EngineSheet sheet, Node.Fields tree, Complaints complaints) {
        this.words = words;
        this.sheet = sheet;
        this.tree = tree;
        this.complaints = complaints;
        this.joints = new LinkedHashSet<>(sheet.names("joints"));
        Set<String> names = new LinkedHashSet<>(sheet.layout().names());
        names.addAll(joints);
        for (Node.Fields entry : entries("fasteners", false)) {
            String subject = entry.fields().get(0).key();
            if (subject.equals("joint")) {
                subject = SheetReader.flat(entry.fields().get(0).value());
            }
            if (subject.contains(" to ") && (joints.contains(subject) || Vocabulary.nearest(subject, joints).isEmpty())) {
                names.add(subject);
            }
        }
        this.places = new Places(sheet.layout(), words, names, complaints);
    }

    Build build(String file, EngineSheet read, String bytes) {
        for (Node.Field section : tree.fields()) {
            switch (section.key()) {
                case "engine", "note" -> {
                }
                case "build", "use" -> words(section);
                case "stage" -> stage(section.value());
                case "gauges" -> gauges(section);
                case "machining" -> entries("machining", true).forEach(this::machined);
                case "measurements" -> entries("measurements", true).forEach(this::measured);
                case "parts" -> entries("parts", true).forEach(this::part);
                case "fasteners" -> entries("fasteners", true).forEach(this::joint);
                case "observations" -> entries("observations", true).forEach(this::observed);
                case "steps" -> entries("steps", true).forEach(this::step);
                case "protection" -> protection(section);
                case "photos" -> photos(section);
                case "accepted" -> entries("accepted", true).forEach(this::accepted);
                default -> complaints.unknown(section.where(), section.key(),
                        "\"" + section.key() + "\" is no section of a build record.", SECTIONS, "A record may have: ",
                        "The section was left out.");
            }
        }
        List<Problem> problems = new ArrayList<>(read.problems());
        problems.addAll(complaints.all());
        Collections.sort(problems, (a, b) -> a.where().compareTo(b.where()));
        return new Build(file, name, read, List.copyOf(statements), List.copyOf(limits),
                Collections.unmodifiableMap(gauges), List.copyOf(stage), List.copyOf(accepted), List.copyOf(photos),
                List.copyOf(problems), List.copyOf(leftOut), bytes);
    }

    // --- build, use, stage, gauges, protection, photos, accepted

    private void words(Node.Field section) {
        if (!(section.value() instanceof Node.Fields fields)) {
            wantsLines(section);
            return;
        }
        for (Node.Field line : fields.fields()) {
            if (section.key().equals("build") && line.key().equals("name")) {
                name = SheetReader.flat(line.value());
                continue;
            }
            if (line.key().equals("note")) {
                continue;
            }
            Optional<Property> property = words.property(section.key(), line.key());
            if (property.isEmpty()) {
                noProperty(line, section.key(), List.of(section.key()), "The line was left out.");
                continue;
            }
            String what = property.get().name();
            boolean events = section.key().equals("build") && what.equals("past");
            for (Node.Scalar item : SheetReader.scalars(line.value())) {
                if (events && !item.text().equals("none told")) {
                    if (words.events().containsKey(item.text())) {
                        state(section.key(), Place.ENGINE, what, item.text(), Optional.empty(), Map.of(), Optional.empty(), item.where());
                    } else {
                        complaints.unknown(item.where(), item.text(), "\"" + item.text() + "\" is nothing that the past is told in.",
                                words.events().keySet(), "What an engine may have been through: ", "It was left out.");
                    }
                } else {
                    value(property.get(), item, "", section.key() + " " + what, "").ifPresent(v -> state(section.key(), Place.ENGINE,
                            what, v.says(), v.value(), Map.of(), Optional.empty(), item.where()));
                }
            }
        }
    }

    private void stage(Node value) {
        for (Node.Scalar item : SheetReader.scalars(value)) {
            Optional<Step> step = words.step(item.text());
            if (step.isPresent()) {
                stage.add(step.get().name());
                state("stage", Place.ENGINE, step.get().name(), "done", Optional.empty(), Map.of(), Optional.empty(), item.where());
            } else {
                noStep(item.text(), item.where(), "The stage was left out.");
            }
        }
    }

    private void gauges(Node.Field section) {
        if (!(section.value() instanceof Node.Fields fields)) {
            wantsLines(section);
            return;
        }
        for (Node.Field line : fields.fields()) {
            if (line.value() instanceof Node.Fields said) {
                gauge(line.key(), said, line.where());
            } else {
                complaints.add(line.where(), line.key().length(), "Nothing is said of the gauge \"" + line.key() + "\".",
                        "As { kind: micrometer, resolution: 0.001 mm, checked: 2026-02-11 }.", Optional.empty(), "The gauge was left out.");
            }
        }
    }

    private void gauge(String gauge, Node.Fields said, Where where) {
        List<String> kinds = new ArrayList<>();
        Map<String, Written> sizes = new HashMap<>();
        Map<String, String> asides = new TreeMap<>();
        Optional<String> setWith = Optional.empty();
        for (Node.Field line : said.fields()) {
            String key = line.key();
            if (key.equals("kind")) {
                for (Node.Scalar kind : SheetReader.scalars(line.value())) {
                    Optional<leadlamp.words.GaugeKind> known = words.gauge(kind.text());
                    if (known.isPresent()) {
                        kinds.add(known.get().name());
                        state("gauge", gauge, "kind", known.get().name(), Optional.empty(), Map.of(), Optional.empty(), kind.where());
                    } else {
                        complaints.unknown(kind.where(), kind.text(), "\"" + kind.text() + "\" is no kind of gauge.", gaugeNames(),
                                "Kinds: ", "The rest of the gauge was read.");
                    }
                }
                continue;
            }
            Optional<Property> property = words.property("gauges", key);
            if (property.isEmpty() && !key.equals("note")) {
                noProperty(line, "a gauge", List.of("gauges"), "The rest of the gauge was read.");
                continue;
            }
            String text = SheetReader.flat(line.value());
            if (key.equals("note")) {
                asides.put(key, text);
                continue;
            }
            Optional<Written> value = Optional.empty();
            if (Set.of("resolution", "doubt", "range", "repeats", "ratio", "period", "uses").contains(key)) {
                value = anySize(text);
                if (value.isEmpty()) {
                    complaints.add(line.value().where(), text.length(), "\"" + text + "\" is no size of a gauge.",
                            "A figure with its unit, as 0.001 mm" + (key.equals("range") ? ", here from ... to ..." : "") + ".",
                            Optional.empty(), "The rest of the gauge was read.");
                    continue;
                }
                sizes.put(key, value.get());
            } else if (Set.of("checked", "dropped").contains(key) && Dates.read(text).isEmpty()) {
                noDate(text, line.value().where(), "The rest of the gauge was read.");
                continue;
            }
            if (key.equals("set with")) {
                setWith = Optional.of(text);
            }
            asides.put(key, text);
            state("gauge", gauge, key, text, value, Map.of(), Optional.empty(), line.where());
        }
        gauges.put(gauge, new Gauge(gauge, List.copyOf(kinds), Optional.ofNullable(sizes.get("resolution")),
                Optional.ofNullable(sizes.get("doubt")), Optional.ofNullable(sizes.get("range")),
                Optional.ofNullable(sizes.get("repeats")), setWith, Collections.unmodifiableMap(asides), where));
    }

    private void protection(Node.Field section) {
        if (!(section.value() instanceof Node.Fields fields)) {
            wantsLines(section);
            return;
        }
        Set<String> known = words.property("protection", "names").map(p -> p.values().keySet()).orElse(Set.of());
        for (Node.Field line : fields.fields()) {
            if (line.key().equals("note")) {
                continue;
            }
            if (!known.isEmpty() && !known.contains(line.key())) {
                complaints.unknown(line.where(), line.key(), "\"" + line.key() + "\" is nothing that guards an engine.", known,
                        "It may be: ", "The line was left out.");
                continue;
            }
            if (!(line.value() instanceof Node.Fields said)) {
                state("protection", Place.ENGINE, line.key(), SheetReader.flat(line.value()), Optional.empty(), Map.of(),
                        Optional.empty(), line.value().where());
                continue;
            }
            state("protection", Place.ENGINE, line.key(), "fitted", Optional.empty(), Map.of(), Optional.empty(), line.where());
            for (Node.Field word : said.fields()) {
                if (word.key().equals("note")) {
                    continue;
                }
                Optional<Property> property = words.property("protection", word.key());
                if (property.isEmpty()) {
                    noProperty(word, line.key(), List.of("protection"), "The rest of the line was read.");
                    continue;
                }
                String text = SheetReader.flat(word.value());
                Optional<Written> value = word.value() instanceof Node.Scalar ? anySize(text) : Optional.empty();
                if (!property.get().values().isEmpty()) {
                    Optional<Said> said2 = value(property.get(), new Node.Scalar(text, word.value().where()), "", line.key(), "");
                    if (said2.isEmpty()) {
                        continue;
                    }
                    text = said2.get().says();
                }
                state("protection", Place.ENGINE, line.key() + " " + property.get().name(), text, value, Map.of(), Optional.empty(),
                        word.value().where());
            }
        }
    }

    private void photos(Node.Field section) {
        if (!(section.value() instanceof Node.Fields fields)) {
            wantsLines(section);
            return;
        }
        for (Node.Field line : fields.fields()) {
            if (line.value() instanceof Node.Fields said && SheetReader.text(said, "file").isPresent()) {
                photos.add(new Build.Photo(line.key(), SheetReader.text(said, "file").get(), SheetReader.text(said, "of"),
                        SheetReader.text(said, "at"), SheetReader.text(said, "date"), line.where()));
            } else {
                complaints.add(line.where(), line.key().length(), "The photograph \"" + line.key() + "\" names no file.",
                        "As { file: photos/pin.jpg, of: cam gear pin, at: intake }.", Optional.empty(), "It was left out.");
            }
        }
    }

    private void accepted(Node.Fields entry) {
        Map<String, String> said = new HashMap<>();
        for (Node.Field field : entry.fields()) {
            if (!Set.of("check", "at", "reason", "who", "until", "note").contains(field.key())) {
                complaints.unknown(field.where(), field.key(), "\"" + field.key() + "\" is nothing that an accepted finding can have.",
                        List.of("check", "at", "reason", "who", "until", "note"), "It can have: ", "The rest was read.");
            }
            said.put(field.key(), SheetReader.flat(field.value()));
        }
        String until = said.getOrDefault("until", "");
        if (!until.isEmpty() && Dates.read(until).isEmpty()) {
            noDate(until, entry.get("until").orElseThrow().where(), "The entry was left out.");
            return;
        }
        if (!said.containsKey("check") || !said.containsKey("reason") || !said.containsKey("who")) {
            complaints.add(entry.where(), 0, "An accepted finding wants `check`, `reason` and `who`.",
                    "As { check: ..., at: intake, reason: ..., who: the builder, until: 2027-03-01 }.", Optional.empty(),
                    "The entry was left out: nothing is accepted by it.");
            return;
        }
        accepted.add(new Build.Accepted(said.get("check"), said.getOrDefault("at", Place.ENGINE), said.get("reason"),
                said.get("who"), until, entry.where()));
    }

    // --- machining

    private void machined(Node.Fields entry) {
        Subject subject = subject(entry, "of", "by");
        if (subject == null) {
            return;
        }
        Optional<Part> part = words.part(subject.word());
        if (part.isEmpty()) {
            noPart(subject);
            return;
        }
        List<String> at = places.read(entry.get("at"), part.get().group(), part.get().name(), subject.where());
        Property by = words.property("machining", "by").orElseThrow();
        Optional<Said> done = value(by, subject.scalar(), part.get().name(), "machining", "");
        if (at.isEmpty() || done.isEmpty()) {
            at.forEach(p -> leftOut.add(new Statement.Key(Form.STATED, "machining", p, part.get().name())));
            return;
        }
        Rest rest = rest(entry, subject, "machining", part.get().name(), List.of("machining"));
        for (String place : at) {
            state("machining", place, part.get().name(), done.get().says(), Optional.empty(), rest.asides(), rest.told(),
                    subject.value().where());
            for (Said said : rest.said()) {
                state("machining", place, part.get().name() + " " + said.what(), said.says(), said.value(), Map.of(), rest.told(),
                        said.where());
            }
        }
    }

    // --- measurements

    private void measured(Node.Fields entry) {
        Subject subject = subject(entry, "of", "value", "values");
        if (subject == null) {
            return;
        }
        String word = subject.word();
        if (entry.fields().get(0).key().equals("of") && entry.get("what").isPresent()) {
            word = word + " " + SheetReader.flat(entry.get("what").get());
        }
        Optional<Quantity> known = words.quantity(word);
        if (known.isEmpty()) {
            noQuantity(word, subject.where());
            return;
        }
        Quantity quantity = known.get();
        Optional<Unit> unit = unit(entry, quantity);
        if (unit == null) {
            return;
        }
        Rest rest = rest(entry, subject, "measurements", quantity.name(), List.of("measurements", "measurements aside"));
        Optional<String> as = rest.said().stream().filter(s -> s.what().equals("as")).map(Said::says).findFirst();
        String mark = as.isEmpty() || as.get().equals("left") ? "" : "as " + as.get();
        List<String> with = gaugesOf(entry.get("with"));
        Cells cells = cells(entry, subject, quantity);
        for (Cell cell : cells.cells()) {
            cell(quantity, cell, unit, mark, with, rest);
        }
    }

    private record Cell(List<String> at, Node.Scalar text) {
    }

    private record Cells(List<Cell> cells) {
    }

    private void cell(Quantity quantity, Cell cell, Optional<Unit> unit, String mark, List<String> with, Rest rest) {
        String text = cell.text().text();
        Reading.Result result = Reading.read(text, quantity.dimension(), unit);
        if (result instanceof Reading.Unread unread) {
            Where at = SheetReader.moved(cell.text().where(), unread.offset());
            complaints.add(at, unread.length(), unread.what(), unread.expected(), unread.nearest(),
                    "The rest of the entry was read; checks that need this " + quantity.name() + " say \"cannot tell\".");
            cell.at().forEach(p -> leftOut.add(new Statement.Key(Form.READ, quantity.name(), p, mark)));
            return;
        }
        Written written = ((Reading.Read) result).written();
        String of = mark.isEmpty() ? quantity.name() : quantity.name() + " " + mark;
        for (String place : cell.at()) {
            if (!written.figure()) {
                String says = switch (written.form()) {
                    case GOOD -> "good";
                    case NOT_READ -> "not read";
                    default -> "unknown";
                };
                state(of, place, "figure", says, Optional.empty(), rest.asides(), rest.told(), cell.text().where());
                continue;
            }
            statements.add(new Statement(Form.READ, quantity.name(), place, mark, "", Optional.of(written), with, rest.asides(),
                    rest.told(), cell.text().where(), complaints.line(cell.text().where())));
            for (Said said : rest.said()) {
                if (said.what().equals("state")) {
                    state(of, place, said.what(), said.says(), Optional.empty(), Map.of(), rest.told(), said.where());
                }
            }
        }
    }

    private Cells cells(Node.Fields entry, Subject subject, Quantity quantity) {
        List<Cell> cells = new ArrayList<>();
        Node value = subject.value();
        if (value instanceof Node.Scalar scalar) {
            if (scalar.text().isEmpty()) {
                complaints.add(subject.where(), subject.word().length(), "No value stands after \"" + quantity.name() + "\".",
                        "A figure with its unit, or `not read`.", Optional.empty(), "The entry was left out.");
                return new Cells(cells);
            }
            if (scalar.text().contains(",") && entry.fields().get(0).key().equals("of")) {
                return row(entry, subject, quantity, split(scalar));
            }
            List<String> at = entry.get("at").isEmpty() ? together(quantity) : List.of();
            if (at.isEmpty()) {
                at = places.read(entry.get("at"), quantity.group(), quantity.name(), subject.where());
            }
            if (!at.isEmpty()) {
                cells.add(new Cell(at, scalar));
            }
            return new Cells(cells);
        }
        if (value instanceof Node.Items items) {
            return row(entry, subject, quantity, items.items());
        }
        Node.Fields table = (Node.Fields) value;
        List<Node.Scalar> columns = table.get("at").map(SheetReader::scalars).orElse(List.of());
        for (Node.Field row : table.fields()) {
            if (row.key().equals("at")) {
                continue;
            }
            List<Node> values = row.value() instanceof Node.Items items ? items.items() : List.of(row.value());
            if (columns.isEmpty() && values.size() == 1 && values.get(0) instanceof Node.Scalar single) {
                List<String> at = places.read(Optional.of(new Node.Scalar(row.key(), row.where())), quantity.group(), quantity.name(), row.where());
                if (!at.isEmpty()) {
                    cells.add(new Cell(at, single));
                }
                continue;
            }
            if (values.size() != columns.size()) {
                complaints.add(row.where(), row.key().length(), "Row " + row.key() + " has " + values.size() + " values and the table has "
                        + columns.size() + " columns.", "One value for each place at the head of the table.", Optional.empty(),
                        "The row was left out; checks that need it say \"cannot tell\".");
                List<String> at = places.one(row.key(), places.of(quantity.group()), quantity.group());
                at.forEach(p -> leftOut.add(new Statement.Key(Form.READ, quantity.name(), p, "")));
                continue;
            }
            for (int i = 0; i < values.size(); i++) {
                if (!(values.get(i) instanceof Node.Scalar scalar)) {
                    continue;
                }
                String place = row.key() + " " + columns.get(i).text();
                List<String> at = places.one(place, places.of(quantity.group()), quantity.group());
                if (at.isEmpty()) {
                    at = places.read(Optional.of(new Node.Scalar(place, columns.get(i).where())), quantity.group(), quantity.name(), row.where());
                }
                if (!at.isEmpty()) {
                    cells.add(new Cell(at, scalar));
                }
            }
        }
        return new Cells(cells);
    }

    /**
     * Where a reading without a place is of all together: a count is of the engine, a washer's thickness of its joint. Empty
     * where each place has its own.
     */
    private List<String> together(Quantity quantity) {
        List<String> known = places.of(quantity.group()).orElse(List.of());
        if (known.size() < 2) {
            return List.of();
        }
        if (quantity.dimension() == Dimension.COUNT) {
            return List.of(Place.ENGINE);
        }
        for (String joint : joints) {
            if (known.stream().allMatch(p -> p.startsWith(joint + " "))) {
                return List.of(joint);
            }
        }
        return List.of();
    }

    private static List<Node> split(Node.Scalar scalar) {
        List<Node> items = new ArrayList<>();
        String text = scalar.text();
        int blank = text.lastIndexOf(' ');
        String unit = blank > text.lastIndexOf(',') + 1 ? text.substring(blank) : "";
        for (String part : text.split(",")) {
            String one = part.strip();
            items.add(new Node.Scalar(one.indexOf(' ') < 0 ? one + unit : one, scalar.where()));
        }
        return items;
    }

    private Cells row(Node.Fields entry, Subject subject, Quantity quantity, List<Node> values) {
        List<Cell> cells = new ArrayList<>();
        List<String> at;
        if (entry.get("at").isPresent()) {
            at = places.read(entry.get("at"), quantity.group(), quantity.name(), subject.where());
            if (at.isEmpty()) {
                return new Cells(cells);
            }
        } else {
            Optional<List<String>> known = places.of(quantity.group());
            if (known.isEmpty()) {
                complaints.add(subject.where(), subject.word().length(), "The engine sheet does not say how many there are, so the places"
                        + " of this row are not known.", "Write the places: `at: [1, 2, 3]`.", Optional.empty(), "The row was left out.");
                return new Cells(cells);
            }
            at = known.get();
        }
        if (at.size() != values.size()) {
            complaints.add(subject.value().where(), 0, values.size() + " values stand here for " + at.size() + " places.",
                    "Places of this row: " + Complaints.some(at), Optional.empty(),
                    "The row was left out; checks that need " + quantity.name() + " say \"cannot tell\".");
            at.forEach(p -> leftOut.add(new Statement.Key(Form.READ, quantity.name(), p, "")));
            return new Cells(cells);
        }
        for (int i = 0; i < values.size(); i++) {
            if (values.get(i) instanceof Node.Scalar scalar) {
                cells.add(new Cell(List.of(at.get(i)), scalar));
            }
        }
        return new Cells(cells);
    }

    /** The row's or table's own unit; null where it is wrong, which has then been said. */
    private Optional<Unit> unit(Node.Fields entry, Quantity quantity) {
        Optional<Node> node = entry.get("unit");
        if (node.isEmpty()) {
            return Optional.empty();
        }
        String text = SheetReader.flat(node.get());
        Optional<Unit> unit = Units.named(text, quantity.dimension());
        if (unit.isEmpty()) {
            boolean other = Units.named(text).isPresent();
            complaints.add(node.get().where(), text.length(), other ? "\"" + text + "\" is no unit of " + article(quantity.dimension().word()) + "."
                    : "\"" + text + "\" is no unit that is known.", "Units of " + article(quantity.dimension().word()) + ": "
                    + Complaints.some(Units.words(quantity.dimension())), Vocabulary.nearest(text, Units.words(quantity.dimension())),
                    "The entry was left out; checks that need " + quantity.name() + " say \"cannot tell\".");
            places.of(quantity.group()).orElse(List.of(Place.ENGINE)).forEach(p ->
                    leftOut.add(new Statement.Key(Form.READ, quantity.name(), p, "")));
            return null;
        }
        return unit;
    }

    private static String article(String word) {
        return ("aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
    }

    private List<String> gaugesOf(Optional<Node> with) {
        List<String> names = new ArrayList<>();
        if (with.isPresent()) {
            for (Node.Scalar item : SheetReader.scalars(with.get())) {
                String text = item.text();
                if (gauges.containsKey(text)) {
                    names.add(text);
                } else if (words.gauge(text).isPresent()) {
                    names.add(words.gauge(text).get().name());
                } else {
                    List<String> known = new ArrayList<>(gauges.keySet());
                    known.addAll(gaugeNames());
                    complaints.unknown(item.where(), text, "\"" + text + "\" is no gauge of this record, and no kind of gauge.", known,
                            "Gauges of the record: ", "The reading was kept with the usual doubt of its kind.");
                }
            }
        }
        return List.copyOf(names);
    }

    private List<String> gaugeNames() {
        List<String> names = new ArrayList<>();
        words.gauges().forEach(g -> names.add(g.name()));
        return names;
    }

    // --- parts

    private void part(Node.Fields entry) {
        Subject subject = subject(entry, "part", "state");
        if (subject == null) {
            return;
        }
        Optional<Part> known = words.part(subject.word());
        if (known.isEmpty()) {
            noPart(subject);
            return;
        }
        Part part = known.get();
        List<String> at = places.read(entry.get("at"), part.group(), part.name(), subject.where());
        if (at.isEmpty()) {
            return;
        }
        Optional<Said> state = value(words.property("parts", "state").orElseThrow(), subject.scalar(), part.name(), part.name(), "");
        if (state.isEmpty()) {
            at.forEach(p -> leftOut.add(new Statement.Key(Form.STATED, part.name(), p, "state")));
        }
        boolean scrapped = state.isPresent() && state.get().says().equals("scrapped");
        String of = scrapped ? part.name() + " as found" : part.name();
        Rest rest = rest(entry, subject, "parts", part.name(), List.of("parts"));
        for (String place : at) {
            state.ifPresent(s -> state(of, place, "state", scrapped ? "scrapped" : s.says(), Optional.empty(), rest.asides(), rest.told(),
                    subject.value().where()));
            for (Said said : rest.said()) {
                if (said.figureOf().isPresent()) {
                    statements.add(new Statement(Form.READ, said.figureOf().get(), place, scrapped ? "as found" : "", "", said.value(),
                            List.of("label"), rest.asides(), rest.told(), said.where(), complaints.line(said.where())));
                } else {
                    state(of, place, said.what(), said.says(), said.value(), Map.of(), rest.told(), said.where());
                }
            }
        }
        entry.get("limits").filter(Node.Fields.class::isInstance).ifPresent(node -> {
            for (Node.Field line : ((Node.Fields) node).fields()) {
                limits.addAll(SheetReader.limitLines(line, "the limits that came with the " + part.name(), words, complaints));
            }
        });
    }

    // --- fasteners

    private void joint(Node.Fields entry) {
        Subject subject = subject(entry, "joint", "torque", "stages");
        if (subject == null) {
            return;
        }
        String joint = subject.word();
        List<String> at = jointPlaces(joint, entry, subject);
        if (at.isEmpty()) {
            return;
        }
        List<String> with = gaugesOf(entry.get("with"));
        Rest rest = rest(entry, subject, "fasteners", joint, List.of("fasteners"));
        Map<String, String> asides = rest.asides();
        if (with.size() > 1 && rest.said().stream().anyMatch(s -> s.what().equals("setting"))) {
            asides = new TreeMap<>(asides);
            asides.put("through", String.join(", ", with));
        }
        for (String place : at) {
            torque(place, subject, with, rest, asides);
            for (Said said : rest.said()) {
                if (said.what().equals("lengths")) {
                    continue;
                }
                if (Set.of("setting", "locker torque factor", "uses", "marked").contains(said.what()) && said.value().isPresent()) {
                    read("joint " + said.what(), place, said, List.of("label"), rest);
                    if (said.what().equals("uses") || said.what().equals("marked")) {
                        state("joint", place, said.what(), said.says(), said.value(), Map.of(), rest.told(), said.where());
                    }
                } else {
                    state("joint", place, said.what(), said.says(), said.value(), Map.of(), rest.told(), said.where());
                }
            }
            entry.get("threads").ifPresent(threads -> threads(place, threads, joint, rest));
            entry.get("lengths").ifPresent(lengths -> lengths(place, lengths, rest));
        }
    }

    private List<String> jointPlaces(String joint, Node.Fields entry, Subject subject) {
        if (!joints.contains(joint)) {
            for (String known : joints) {
                if (joint.startsWith(known + " ")) {
                    return List.of(joint);
                }
            }
            Optional<String> near = Vocabulary.nearest(joint, joints);
            if (near.isPresent() || !joint.contains(" to ")) {
                complaints.unknown(subject.where(), joint, "\"" + joint + "\" is no joint of the engine sheet.", joints,
                        "Joints: ", "The entry was left out. A joint that the sheet lacks is named as `this to that`.");
                return List.of();
            }
            return List.of(joint);
        }
        List<String> places = new ArrayList<>();
        for (String place : sheet.layout().places("each joint").orElse(List.of())) {
            if (place.equals(joint) || place.startsWith(joint + " ")) {
                places.add(place);
            }
        }
        if (places.size() < 2) {
            if (places.isEmpty() || entry.get("at").isEmpty() || places.get(0).equals(joint)) {
                return places.isEmpty() ? List.of(joint) : places;
            }
        }
        if (entry.get("at").isEmpty()) {
            complaints.add(subject.where(), joint.length(), "Which " + joint + "? This engine has " + places.size() + ".",
                    "Write `at: each` if it holds of all of them.", Optional.empty(), "The entry was left out.");
            return List.of();
        }
        List<String> meant = new ArrayList<>();
        for (Node.Scalar item : SheetReader.scalars(entry.get("at").get())) {
            String text = item.text().strip().toLowerCase(Locale.ROOT);
            if (text.equals("each")) {
                meant.addAll(places);
                continue;
            }
            List<String> some = new ArrayList<>();
            for (String part : text.split(" *, *")) {
                for (String place : places) {
                    if (place.equals(part) || place.equals(joint + " " + part) || place.endsWith(" " + part) || part.startsWith("each ")
                            && Place.covers(part.substring(5), place)) {
                        some.add(place);
                    }
                }
            }
            if (some.isEmpty()) {
                complaints.unknown(item.where(), item.text(), "\"" + item.text() + "\" is no place of " + joint + ".", places, "Places: ",
                        "The entry was left out.");
                return List.of();
            }
            meant.addAll(some);
        }
        return meant;
    }

    private void torque(String place, Subject subject, List<String> with, Rest rest, Map<String, String> asides) {
        List<Node.Scalar> stages = SheetReader.scalars(subject.value());
        if (stages.size() == 1) {
            String text = stages.get(0).text().strip().toLowerCase(Locale.ROOT);
            if (NO_TORQUE.contains(text)) {
                state("joint", place, "torque said", text.equals("not read") ? "unknown" : text, Optional.empty(), asides, rest.told(),
                        stages.get(0).where());
                return;
            }
        }
        double angle = 0;
        Node.Scalar turned = null;
        Node.Scalar tight = null;
        for (Node.Scalar stage : stages) {
            String text = SheetReader.turn(stage.text());
            Reading.Result torque = Reading.read(text, Dimension.TORQUE, Optional.empty());
            if (torque instanceof Reading.Read) {
                tight = stage;
                continue;
            }
            if (Reading.read(text, Dimension.ANGLE, Optional.empty()) instanceof Reading.Read turn) {
                angle += turn.written().high();
                turned = stage;
                continue;
            }
            Reading.Unread unread = (Reading.Unread) torque;
            Optional<String> near = Vocabulary.nearest(stage.text(), NO_TORQUE);
            complaints.add(SheetReader.moved(stage.where(), unread.offset()), unread.length(), unread.what(),
                    "A torque such as 23 N·m, stages such as [25 N·m, then 90 deg], or: as found, by hand, not yet, unknown.",
                    near.isPresent() ? near : unread.nearest(), "The rest of the joint was read; checks that need its torque say \"cannot tell\".");
            leftOut.add(new Statement.Key(Form.READ, "joint torque", place, ""));
            return;
        }
        if (stages.size() > 1) {
            state("joint", place, "stages", SheetReader.flat(subject.value()), Optional.empty(), Map.of(), rest.told(), subject.value().where());
        }
        if (tight != null) {
            Reading.Read torque = (Reading.Read) Reading.read(SheetReader.turn(tight.text()), Dimension.TORQUE, Optional.empty());
            statements.add(new Statement(Form.READ, "joint torque", place, "", "", Optional.of(torque.written()), with, asides, rest.told(),
                    tight.where(), complaints.line(tight.where())));
        }
        if (turned != null) {
            Unit deg = Units.named("deg").orElseThrow();
            statements.add(new Statement(Form.READ, "joint angle", place, "", "", Optional.of(new Written(Written.Form.PLAIN, angle, angle,
                    deg, 0, turned.text())), with, asides, rest.told(), turned.where(), complaints.line(turned.where())));
        }
    }

    private void threads(String place, Node threads, String joint, Rest rest) {
        if (!(threads instanceof Node.Fields fields)) {
            complaints.add(threads.where(), 0, "`threads` wants words of its own.", "As { condition: clean, lubricant: dry }.",
                    Optional.empty(), "The rest of \"" + joint + "\" was read.");
            return;
        }
        for (Node.Field line : fields.fields()) {
            Optional<Property> property = words.property("threads", line.key());
            if (property.isEmpty()) {
                if (complaints.line(line.where()).isEmpty() || once(line.where())) {
                    List<String> can = new ArrayList<>();
                    words.properties("threads").forEach(p -> can.add(p.name()));
                    complaints.unknown(line.where(), line.key(), "\"" + line.key() + "\" is not something a thread can have.", can,
                            "A thread can have: ", "The rest of \"" + joint + "\" was read; checks that need it say \"cannot tell\".");
                }
                continue;
            }
            for (Node.Scalar item : SheetReader.scalars(line.value())) {
                Optional<Said> said = value(property.get(), item, "", joint, "");
                if (said.isEmpty()) {
                    leftOut.add(new Statement.Key(Form.STATED, "joint", place, property.get().name()));
                } else if (said.get().value().isPresent() && property.get().name().equals("locker torque factor")) {
                    read("joint locker torque factor", place, said.get(), List.of("label"), rest);
                } else {
                    state("joint", place, property.get().name(), said.get().says(), said.get().value(), Map.of(), rest.told(), item.where());
                }
            }
        }
    }

    private final Set<Where> complainedOf = new LinkedHashSet<>();

    private boolean once(Where where) {
        return complainedOf.add(where);
    }

    private void lengths(String place, Node lengths, Rest rest) {
        if (!(lengths instanceof Node.Fields fields)) {
            complaints.add(lengths.where(), 0, "`lengths` wants a length for each position.", "As { 1: 25 mm, 3: 40 mm }.", Optional.empty(),
                    "The rest of the joint was read.");
            return;
        }
        state("joint", place, "lengths", SheetReader.flat(lengths), Optional.empty(), Map.of(), rest.told(), lengths.where());
        for (Node.Field line : fields.fields()) {
            String text = SheetReader.flat(line.value());
            Reading.Result result = Reading.read(text, Dimension.LENGTH, Optional.empty());
            if (result instanceof Reading.Read read && read.written().figure()) {
                statements.add(new Statement(Form.READ, "bolt free length", place + " " + line.key(), "", "", Optional.of(read.written()),
                        List.of("rule"), Map.of(), rest.told(), line.value().where(), complaints.line(line.value().where())));
            } else if (result instanceof Reading.Unread unread && once(line.value().where())) {
                complaints.add(SheetReader.moved(line.value().where(), unread.offset()), unread.length(), unread.what(), unread.expected(),
                        unread.nearest(), "The other lengths were read.");
                leftOut.add(new Statement.Key(Form.READ, "bolt free length", place + " " + line.key(), ""));
            }
        }
    }

    private void read(String quantity, String place, Said said, List<String> with, Rest rest) {
        statements.add(new Statement(Form.READ, quantity, place, "", "", said.value(), with, rest.asides(), rest.told(), said.where(),
                complaints.line(said.where())));
    }

    // --- observations

    private void observed(Node.Fields entry) {
        Subject subject = subject(entry, "of", "sign", "what");
        if (subject == null) {
            return;
        }
        Optional<Part> known = words.part(subject.word());
        if (known.isEmpty()) {
            noPart(subject);
            return;
        }
        Part part = known.get();
        List<String> at = places.read(entry.get("at"), part.group(), part.name(), subject.where());
        if (at.isEmpty()) {
            return;
        }
        Rest rest = rest(entry, subject, "observations", part.name(), List.of("observations"));
        boolean found = rest.said().stream().anyMatch(s -> s.what().equals("as") && s.says().equals("found"));
        String mark = found ? "as found" : "";
        for (Node.Scalar item : SheetReader.scalars(subject.value())) {
            String text = item.text();
            if (text.equals("unknown")) {
                for (String place : at) {
                    state("observations", place, part.name(), "unknown", Optional.empty(), rest.asides(), rest.told(), item.where());
                }
                continue;
            }
            if (text.equals("clear")) {
                clear(entry, part, at, rest, item);
                continue;
            }
            Optional<Sign> sign = words.sign(text);
            if (sign.isEmpty()) {
                noSign(item, part);
                continue;
            }
            String saw = sign.get().name();
            for (String place : at) {
                Map<String, String> asides = new TreeMap<>(rest.asides());
                rest.said().forEach(s -> asides.put(s.what(), s.says()));
                if (found) {
                    asides.put("as", "found");
                }
                statements.add(new Statement(Form.SEEN, part.name(), place, saw, "", Optional.empty(), List.of(),
                        Collections.unmodifiableMap(asides), rest.told(), item.where(), complaints.line(item.where())));
                for (Said said : rest.said()) {
                    state(part.name(), place, saw + " " + said.what(), said.says(), said.value(), Map.of(), rest.told(), said.where());
                }
                for (String out : sign.get().rulesOut()) {
                    notSeen(part.name(), place, out, rest, item.where());
                }
            }
        }
    }

    private void clear(Node.Fields entry, Part part, List<String> at, Rest rest, Node.Scalar item) {
        Optional<Node> of = entry.get("of");
        if (of.isEmpty() || entry.fields().get(0).key().equals("of")) {
            complaints.add(item.where(), item.text().length(), "`clear` of what?",
                    "Write the signs that were looked for: `of: [cracked, scored]`.", Optional.empty(), "The entry was left out.");
            return;
        }
        for (Node.Scalar looked : SheetReader.scalars(of.get())) {
            Optional<Sign> sign = words.sign(looked.text());
            if (sign.isEmpty()) {
                noSign(looked, part);
                continue;
            }
            for (String place : at) {
                notSeen(part.name(), place, sign.get().name(), rest, looked.where());
            }
        }
    }

    private void notSeen(String part, String place, String sign, Rest rest, Where where) {
        statements.add(new Statement(Form.NOT_SEEN, part, place, sign, "", Optional.empty(), List.of(), rest.asides(), rest.told(), where,
                complaints.line(where)));
    }

    // --- steps

    private void step(Node.Fields entry) {
        Node.Field first = entry.fields().get(0);
        if (first.key().equals("next") || first.key().equals("planned")) {
            for (Node.Scalar item : SheetReader.scalars(first.value())) {
                Optional<Step> step = words.step(item.text());
                if (step.isPresent()) {
                    state("steps", Place.ENGINE, step.get().name(), first.key(), Optional.empty(), Map.of(), Optional.empty(), item.where());
                } else {
                    noStep(item.text(), item.where(), "It was left out.");
                }
            }
            return;
        }
        Subject subject = subject(entry, "done", "date");
        if (subject == null) {
            return;
        }
        Optional<Step> step = words.step(subject.word());
        if (step.isEmpty()) {
            noStep(subject.word(), subject.where(), "The entry was left out.");
            return;
        }
        String date = subject.scalar().text();
        String says = "done";
        if (date.equals("left out") || date.equals("unknown")) {
            says = date;
        } else if (date.equals("done") || date.isEmpty() && !(subject.value() instanceof Node.Fields)) {
            date = "";
        } else if (Dates.read(date).isEmpty()) {
            noDate(date, subject.value().where(), "The step was taken as done, its date as not known.");
            date = "";
        }
        Rest rest = rest(entry, subject, "steps", step.get().name(), List.of("steps"));
        Map<String, String> asides = new TreeMap<>(rest.asides());
        if (!date.isEmpty() && says.equals("done")) {
            asides.put("date", date);
        }
        for (Said said : rest.said()) {
            asides.put(said.what(), said.says());
            if (said.what().equals("result") && says.equals("done")) {
                says = said.says();
            }
        }
        List<String> at = new ArrayList<>();
        if (entry.get("at").isPresent()) {
            at.addAll(places.read(entry.get("at"), "engine", step.get().name(), subject.where()));
        } else if (entry.get("of").isPresent()) {
            for (Node.Scalar item : SheetReader.scalars(entry.get("of").get())) {
                at.add(words.part(item.text()).map(Part::name).orElse(item.text()));
            }
        } else {
            at.add(Place.ENGINE);
        }
        for (String place : at) {
            state("steps", place, step.get().name(), says, Optional.empty(), Collections.unmodifiableMap(asides), rest.told(), subject.where());
        }
    }

    // --- what all entries share

    private record Subject(String word, Where where, Node value, String mainKey) {
        Node.Scalar scalar() {
            return value instanceof Node.Scalar scalar ? scalar : new Node.Scalar(SheetReader.flat(value), value.where());
        }
    }

    /** One word said: under which key, what, its size, and the quantity that a maker's figure is of. */
    private record Said(String what, String says, Optional<Written> value, Optional<String> figureOf, Where where) {
    }

    private record Rest(List<Said> said, Map<String, String> asides, Optional<String> told) {
    }

    private List<Node.Fields> entries(String section, boolean complain) {
        List<Node.Fields> entries = new ArrayList<>();
        Optional<Node> node = tree.get(section);
        if (node.isEmpty()) {
            return entries;
        }
        if (!(node.get() instanceof Node.Items items)) {
            if (complain && !(node.get() instanceof Node.Scalar s && s.text().isEmpty())) {
                complaints.add(node.get().where(), 0, "`" + section + "` is a list of entries.",
                        "Each begins with a dash: `- { ... }`.", Optional.empty(), "The section was left out.");
            }
            return entries;
        }
        for (Node item : items.items()) {
            if (item instanceof Node.Fields fields && !fields.fields().isEmpty()) {
                entries.add(fields);
            } else if (complain) {
                complaints.add(item.where(), 0, "This is no entry.", "As { the part or reading: what is said of it, at: ... }.",
                        Optional.empty(), "It was left out.");
            }
        }
        return entries;
    }

    /** The subject of an entry: its first key, or in the long form what stands after it. Null where it is wrong. */
    private Subject subject(Node.Fields entry, String longKey, String... mainKeys) {
        Node.Field first = entry.fields().get(0);
        if (first.key().equals(longKey)) {
            for (String key : mainKeys) {
                Optional<Node> value = entry.get(key);
                if (value.isPresent()) {
                    return new Subject(SheetReader.flat(first.value()), first.value().where(), value.get(), key);
                }
            }
            return new Subject(SheetReader.flat(first.value()), first.value().where(), new Node.Scalar("", first.value().where()), mainKeys[0]);
        }
        return new Subject(first.key(), first.where(), first.value(), first.key());
    }

    /** All words of an entry after its subject. */
    private Rest rest(Node.Fields entry, Subject subject, String section, String about, List<String> sections) {
        List<Said> said = new ArrayList<>();
        Map<String, String> asides = new TreeMap<>();
        Optional<String> told = Optional.empty();
        boolean first = true;
        for (Node.Field field : entry.fields()) {
            String key = field.key();
            if (first || key.equals(subject.mainKey())) {
                first = false;
                continue;
            }
            boolean own = key.equals("at") || key.equals("with") && !section.equals("machining") && !section.equals("steps")
                    || key.equals("unit") && section.equals("measurements") || key.equals("what") && section.equals("measurements")
                    || (key.equals("threads") || key.equals("lengths")) && section.equals("fasteners")
                    || key.equals("limits") && section.equals("parts") || key.equals("of") && section.equals("observations")
                    || key.equals("of") && section.equals("steps");
            if (own) {
                continue;
            }
            if (key.equals("note") || key.equals("who")) {
                asides.put(key, SheetReader.flat(field.value()));
                continue;
            }
            if (key.equals("told by")) {
                Property by = words.property("any entry", "told by").orElseThrow();
                told = value(by, scalar(field), "", about, "").map(Said::says);
                if (told.isEmpty()) {
                    told = Optional.of("somebody");
                }
                continue;
            }
            if (key.equals("as")) {
                value(words.property("any entry", "as").orElseThrow(), scalar(field), "", about, "as")
                        .ifPresent(v -> said.add(new Said("as", v.says(), Optional.empty(), Optional.empty(), field.where())));
                continue;
            }
            Optional<Property> property = Optional.empty();
            for (String each : sections) {
                property = property.isPresent() ? property : words.property(each, key);
            }
            if (property.isEmpty() && section.equals("parts")) {
                Optional<Quantity> figure = words.quantity(about + " " + key);
                if (figure.isPresent()) {
                    Reading.Result result = Reading.read(scalar(field).text(), figure.get().dimension(), Optional.empty());
                    if (result instanceof Reading.Read read && read.written().figure()) {
                        said.add(new Said(key, scalar(field).text(), Optional.of(read.written()), Optional.of(figure.get().name()),
                                field.value().where()));
                    } else if (result instanceof Reading.Unread unread) {
                        complaints.add(SheetReader.moved(field.value().where(), unread.offset()), unread.length(), unread.what(),
                                unread.expected(), unread.nearest(), "The rest of \"" + about + "\" was read.");
                    }
                    continue;
                }
            }
            if (property.isEmpty()) {
                noProperty(field, about, sections, "The rest of \"" + about + "\" was read.");
                continue;
            }
            for (Node.Scalar item : field.value() instanceof Node.Items && !property.get().values().isEmpty()
                    ? SheetReader.scalars(field.value()) : List.of(scalar(field))) {
                Optional<Said> one = value(property.get(), item, about, about, "");
                if (one.isPresent()) {
                    said.add(one.get());
                    if (section.equals("measurements")) {
                        asides.put(one.get().what(), one.get().says());
                    }
                } else {
                    leftOut.add(new Statement.Key(Form.STATED, section.equals("fasteners") ? "joint" : about, Place.ENGINE, property.get().name()));
                }
            }
        }
        return new Rest(List.copyOf(said), Collections.unmodifiableMap(asides), told);
    }

    private static Node.Scalar scalar(Node.Field field) {
        return field.value() instanceof Node.Scalar scalar ? scalar : new Node.Scalar(SheetReader.flat(field.value()), field.value().where());
    }

    /** The word of a property, put for its synonym, with its size where it takes one. Empty where it is wrong, which has been said. */
    private Optional<Said> value(Property property, Node.Scalar item, String part, String about, String what) {
        String text = item.text();
        String lower = text.toLowerCase(Locale.ROOT);
        String key = what.isEmpty() ? property.name() : what;
        if (lower.equals("unknown")) {
            return Optional.of(new Said(key, "unknown", Optional.empty(), Optional.empty(), item.where()));
        }
        Map<String, String> values = property.values();
        if (!property.perPart().isEmpty()) {
            values = valuesFor(property, part);
        }
        if (values.containsKey(text) || values.containsKey(lower)) {
            return Optional.of(new Said(key, values.containsKey(text) ? text : lower, Optional.empty(), Optional.empty(), item.where()));
        }
        if (property.also().containsKey(lower)) {
            return Optional.of(new Said(key, property.also().get(lower), Optional.empty(), Optional.empty(), item.where()));
        }
        String takes = property.takes();
        if (takes.isEmpty() && !values.isEmpty()) {
            complaints.unknown(item.where(), text, "\"" + text + "\" is not a word for " + key + " of " + about + ".", values.keySet(),
                    "It may be: ", "The rest of \"" + about + "\" was read; checks that need its " + key + " say \"cannot tell\".");
            return Optional.empty();
        }
        Dimension dimension = dimension(takes);
        if (dimension != null) {
            Reading.Result result = Reading.read(text, dimension, Optional.empty());
            if (result instanceof Reading.Unread unread) {
                if (!values.isEmpty() && Vocabulary.nearest(text, values.keySet()).isPresent()) {
                    complaints.unknown(item.where(), text, "\"" + text + "\" is not a word for " + key + " of " + about + ".",
                            values.keySet(), "It may be: ", "The rest of \"" + about + "\" was read.");
                } else {
                    complaints.add(SheetReader.moved(item.where(), unread.offset()), unread.length(), unread.what(), unread.expected(),
                            unread.nearest(), "The rest of \"" + about + "\" was read; checks that need its " + key + " say \"cannot tell\".");
                }
                return Optional.empty();
            }
            Written written = ((Reading.Read) result).written();
            return Optional.of(new Said(key, text, written.figure() ? Optional.of(written) : Optional.empty(), Optional.empty(), item.where()));
        }
        if (takes.equals("date") && Dates.read(text).isEmpty()) {
            noDate(text, item.where(), "The rest of \"" + about + "\" was read.");
            return Optional.empty();
        }
        if (text.isEmpty()) {
            complaints.add(item.where(), 0, "Nothing is written after `" + key + "`.", property.gloss(), Optional.empty(),
                    "The rest of \"" + about + "\" was read.");
            return Optional.empty();
        }
        return Optional.of(new Said(key, text, SheetReader.anyValue(text), Optional.empty(), item.where()));
    }

    /** The short list of this part or of the nearest kind that has one; else all words of all lists. */
    private Map<String, String> valuesFor(Property property, String part) {
        if (property.perPart().containsKey(part)) {
            return property.perPart().get(part);
        }
        for (String kind : words.part(part).map(Part::kinds).orElse(List.of())) {
            if (property.perPart().containsKey(kind)) {
                return property.perPart().get(kind);
            }
        }
        Map<String, String> all = new TreeMap<>(property.values());
        property.perPart().values().forEach(all::putAll);
        return all;
    }

    private static Dimension dimension(String takes) {
        return switch (takes) {
            case "length" -> Dimension.LENGTH;
            case "torque" -> Dimension.TORQUE;
            case "pressure" -> Dimension.PRESSURE;
            case "power" -> Dimension.POWER;
            case "speed" -> Dimension.SPEED;
            case "angle" -> Dimension.ANGLE;
            case "mass" -> Dimension.MASS;
            case "force" -> Dimension.FORCE;
            case "volume" -> Dimension.VOLUME;
            case "temperature" -> Dimension.TEMPERATURE;
            case "share" -> Dimension.SHARE;
            case "volume share" -> Dimension.VOLUME_SHARE;
            case "acceleration" -> Dimension.ACCELERATION;
            case "frequency" -> Dimension.FREQUENCY;
            case "count" -> Dimension.COUNT;
            case "number" -> Dimension.NUMBER;
            case "years or months", "years", "months", "hours" -> Dimension.TIME;
            case "km or miles" -> Dimension.LENGTH;
            default -> null;
        };
    }

    private Optional<Written> anySize(String text) {
        if (text.startsWith("from ")) {
            int to = text.indexOf(" to ");
            if (to > 0) {
                Optional<Written> end = SheetReader.anyValue(text.substring(to + 4));
                if (end.isPresent() && Reading.read(text, end.get().unit().dimension(), Optional.empty()) instanceof Reading.Read read) {
                    return Optional.of(read.written());
                }
            }
            return Optional.empty();
        }
        return SheetReader.anyValue(text);
    }

    private void state(String of, String at, String what, String says, Optional<Written> value, Map<String, String> asides,
            Optional<String> told, Where where) {
        statements.add(new Statement(Form.STATED, of, at, what, says, value, List.of(), asides, told, where, complaints.line(where)));
    }

    // --- messages

    private void wantsLines(Node.Field section) {
        if (!(section.value() instanceof Node.Scalar s && s.text().isEmpty())) {
            complaints.add(section.value().where(), 0, "`" + section.key() + "` wants lines of its own.", "As `name: value`, one a line.",
                    Optional.empty(), "The section was left out.");
        }
    }

    private void noPart(Subject subject) {
        Collection<String> meanings = words.meanings(subject.word());
        if (!meanings.isEmpty()) {
            complaints.add(subject.where(), subject.word().length(), "\"" + subject.word() + "\" may mean two things.",
                    "Write one of: " + Complaints.some(meanings), Optional.empty(), "The entry was left out.");
            return;
        }
        List<String> names = new ArrayList<>();
        words.parts().forEach(p -> names.add(p.name()));
        Optional<String> nearest = Vocabulary.nearest(subject.word(), names);
        complaints.add(subject.where(), subject.word().length(), "\"" + subject.word() + "\" is no part that is known.",
                "The first word of an entry is the part.", nearest, "The entry was left out.");
    }

    private void noQuantity(String word, Where where) {
        Collection<String> meanings = words.meanings(word);
        if (!meanings.isEmpty()) {
            complaints.add(where, word.length(), "\"" + word + "\" may mean two things.", "Write one of: " + Complaints.some(meanings),
                    Optional.empty(), "The entry was left out.");
            return;
        }
        List<String> names = new ArrayList<>();
        words.quantities().forEach(q -> names.add(q.name()));
        Optional<String> nearest = Vocabulary.nearest(word, names);
        String expected = "A reading is named by the part and what was read, as `main journal diameter`.";
        for (int end = word.lastIndexOf(' '); end > 0 && nearest.isEmpty(); end = word.lastIndexOf(' ', end - 1)) {
            Optional<Part> part = words.part(word.substring(0, end));
            if (part.isPresent()) {
                Set<String> of = new LinkedHashSet<>();
                for (Quantity quantity : words.quantities()) {
                    if (quantity.of().equals(part.get().name())) {
                        of.add(quantity.name());
                    }
                }
                if (!of.isEmpty()) {
                    expected = "Readings of " + part.get().name() + ": " + Complaints.some(of);
                }
                break;
            }
        }
        complaints.add(where, word.length(), "\"" + word + "\" is no reading that is known.", expected, nearest, "The entry was left out.");
    }

    private void noSign(Node.Scalar item, Part part) {
        List<String> all = new ArrayList<>();
        Set<String> usual = new LinkedHashSet<>();
        for (Sign sign : words.signs()) {
            all.add(sign.name());
            if (sign.parts().contains(part.name()) || sign.parts().stream().anyMatch(part.kinds()::contains)) {
                usual.add(sign.name());
            }
        }
        complaints.add(item.where(), item.text().length(), "\"" + item.text() + "\" is no sign that is known.",
                usual.isEmpty() ? "A sign, or `clear` and the signs that were looked for." : "Signs of " + part.name() + ": " + Complaints.some(usual),
                Vocabulary.nearest(item.text(), all), "The sign was left out. What has no word is written `unknown` with a note.");
    }

    private void noStep(String word, Where where, String rest) {
        List<String> names = new ArrayList<>();
        words.steps().forEach(s -> names.add(s.name()));
        complaints.add(where, word.length(), "\"" + word + "\" is no step that is known.", "", Vocabulary.nearest(word, names), rest);
    }

    private void noDate(String text, Where where, String rest) {
        complaints.add(where, text.length(), "\"" + text + "\" is no date.", "As 2026-03-14, 2026-03, 2026, spring 2026 or 4 months ago.",
                Optional.empty(), rest);
    }

    private void noProperty(Node.Field field, String about, List<String> sections, String rest) {
        Set<String> can = new LinkedHashSet<>();
        for (String section : sections) {
            for (Property property : words.properties(section)) {
                if (property.of().isEmpty() || property.of().contains(about)) {
                    can.add(property.name());
                }
            }
        }
        if (!once(field.where())) {
            return;
        }
        if (field.value() instanceof Node.Scalar alone && alone.text().isEmpty() && Vocabulary.nearest(field.key(), can).isEmpty()) {
            complaints.add(field.where(), field.key().length(), "\"" + field.key() + "\" stands alone after a comma.",
                    "Inside { } a comma ends what stands before it. If this belongs to those words, put them in quotes.", Optional.empty(), rest);
            return;
        }
        complaints.unknown(field.where(), field.key(), "\"" + field.key() + "\" is not something that " + about + " can have.", can,
                "It can have: ", rest);
    }
}
