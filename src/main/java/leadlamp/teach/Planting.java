package leadlamp.teach;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import leadlamp.audit.Case;
import leadlamp.audit.Overlay;
import leadlamp.record.Build;
import leadlamp.record.EngineSheet;
import leadlamp.record.Fingerprint;
import leadlamp.record.Node;
import leadlamp.record.Place;
import leadlamp.record.RecordReader;
import leadlamp.record.Statement;
import leadlamp.record.Yaml;

/**
 * Writes the change of a case into the text of a record, as its builder would have written it: a figure in the row where it
 * belongs, a part with the rest of its entry, a sign in place of `clear`. What it cannot write so, it leaves; the caller
 * reads and audits what comes of it.
 */
final class Planting {
    private static final List<String> LISTS = List.of("measurements", "parts", "fasteners", "observations", "machining", "steps");
    private static final List<String> MAPS = List.of("use", "build", "protection");
    private static final String AT = "at";
    private static final String CHANGE = "change.yaml";

    private final RecordReader reader;
    private final EngineSheet sheet;
    private final String name;
    private final List<String> lines;
    private final Node.Fields tree;
    private final Build build;

    private Planting(String text, String name, EngineSheet sheet, RecordReader reader) {
        this.reader = reader;
        this.sheet = sheet;
        this.name = name;
        Yaml.File file = Yaml.text(text, name);
        this.lines = new ArrayList<>(file.lines());
        this.tree = file.tree().orElseThrow(() -> new IllegalStateException(name));
        this.build = reader.build(tree, name, file.lines(), List.of(), sheet, Fingerprint.NONE);
    }

    /** The text of a record without its remarks. */
    static String bare(List<String> lines) {
        StringBuilder text = new StringBuilder();
        boolean blank = true;
        for (String line : lines) {
            String kept = line.strip().startsWith("#") ? null : Examples.withoutRemark(line);
            if (kept != null && !(kept.isBlank() && blank)) {
                text.append(kept).append('\n');
                blank = kept.isBlank();
            }
        }
        return text.toString();
    }

    /** The record with the change of the case written into it; empty where it cannot be written in plainly. */
    static Optional<String> plant(String text, String name, Case example, EngineSheet sheet, RecordReader reader, Random random) {
        if (!example.sheet().fields().isEmpty() || !example.erase().isEmpty()) {
            return Optional.empty();
        }
        String now = text;
        for (Node.Field section : example.change().fields()) {
            List<Node> entries = section.value() instanceof Node.Items items ? items.items() : List.of(section.value());
            for (Node entry : entries) {
                if (!(entry instanceof Node.Fields fields) || fields.fields().isEmpty()) {
                    return Optional.empty();
                }
                Optional<String> next = new Planting(now, name, sheet, reader).entry(section.key(), fields, example, random);
                if (next.isEmpty()) {
                    return Optional.empty();
                }
                now = next.get();
            }
        }
        return Optional.of(now);
    }

    private Optional<String> entry(String section, Node.Fields entry, Case example, Random random) {
        if (MAPS.contains(section)) {
            return map(section, entry);
        }
        if (!LISTS.contains(section)) {
            return Optional.empty();
        }
        List<Statement> over = statements(section, entry);
        if (over.isEmpty()) {
            return Optional.empty();
        }
        Node.Fields change = new Node.Fields(List.of(new Node.Field(section, entry.where(), new Node.Items(List.of(entry),
                entry.where()))), entry.where());
        Case one = new Case(example.of(), example.name(), example.build(), reparsed(change), example.sheet(), List.of(),
                example.expect(), example.also(), CHANGE, example.where());
        Build changed = new Overlay(reader).changed(one, YamlText.lines(change), new Overlay.Base(tree, lines, List.of(), build),
                new ArrayList<>());
        Set<Statement> kept = new LinkedHashSet<>(changed.statements());
        List<Statement> gone = new ArrayList<>();
        for (Statement s : build.statements()) {
            if (!kept.contains(s)) {
                gone.add(s);
            }
        }
        Optional<String> figures = section.equals("measurements") ? figures(over, gone) : Optional.empty();
        return figures.isPresent() ? figures : rewritten(section, entry, over, gone, random);
    }

    private Node.Fields reparsed(Node.Fields change) {
        return Yaml.text(String.join("\n", YamlText.lines(change)) + "\n", CHANGE).tree().orElseThrow();
    }

    private List<Statement> statements(String section, Node.Fields entry) {
        List<Node.Field> fields = new ArrayList<>();
        tree.fields().stream().filter(f -> f.key().equals("gauges")).forEach(fields::add);
        fields.add(new Node.Field(section, entry.where(), new Node.Items(List.of(entry), entry.where())));
        Build read = reader.build(new Node.Fields(fields, entry.where()), name, List.of(), List.of(), sheet, Fingerprint.NONE);
        return read.statements().stream().filter(s -> !s.of().equals("gauge")).toList();
    }

    // --- a figure in its row

    /** Each figure in place of the one that stands there; empty where one has no such place. */
    private Optional<String> figures(List<Statement> over, List<Statement> gone) {
        List<Edit> edits = new ArrayList<>();
        Set<Statement> met = new LinkedHashSet<>();
        for (Statement s : over) {
            if (s.form() != Statement.Form.READ || s.value().isEmpty()) {
                return Optional.empty();
            }
            Optional<Statement> before = Optional.empty();
            for (Statement b : gone) {
                if (b.form() == Statement.Form.READ && b.key().equals(s.key()) && !b.inPartsEntry()) {
                    before = Optional.of(b);
                }
            }
            Optional<Node.Scalar> scalar = before.flatMap(this::figure);
            if (scalar.isEmpty() || lines.get(scalar.get().where().line() - 1).indexOf(scalar.get().text(),
                    scalar.get().where().column() - 1) != scalar.get().where().column() - 1) {
                return Optional.empty();
            }
            met.add(before.get());
            String was = scalar.get().text();
            String is = s.value().get().text();
            String unit = s.value().get().unit().word();
            boolean bare = Character.isDigit(was.charAt(was.length() - 1));
            if (bare && is.endsWith(" " + unit) && before.get().value().isPresent()
                    && before.get().value().get().unit().word().equals(unit)) {
                is = is.substring(0, is.length() - unit.length() - 1);
            } else if (!bare && !is.isEmpty() && Character.isDigit(is.charAt(is.length() - 1))) {
                is = is + " " + unit;
            }
            edits.add(new Edit(scalar.get().where().line(), scalar.get().where().column() - 1, was.length(), is));
        }
        return met.containsAll(gone) ? Optional.of(edited(edits)) : Optional.empty();
    }

    private record Edit(int line, int column, int length, String text) {
    }

    private String edited(List<Edit> edits) {
        List<Edit> backwards = new ArrayList<>(edits);
        backwards.sort((a, b) -> a.line() != b.line() ? Integer.compare(b.line(), a.line()) : Integer.compare(b.column(), a.column()));
        List<String> now = new ArrayList<>(lines);
        for (Edit edit : backwards) {
            String line = now.get(edit.line() - 1);
            now.set(edit.line() - 1, line.substring(0, edit.column()) + edit.text() + line.substring(edit.column() + edit.length()));
        }
        return String.join("\n", now);
    }

    /** The scalar that a reading was written as: its statement's turn among those of its line. */
    private Optional<Node.Scalar> figure(Statement reading) {
        List<Statement> same = new ArrayList<>();
        for (Statement s : build.statements()) {
            if (s.form() == Statement.Form.READ && s.where().equals(reading.where()) && s.of().equals(reading.of())
                    && s.what().equals(reading.what())) {
                same.add(s);
            }
        }
        List<Node.Scalar> scalars = new ArrayList<>();
        List<Node> entries = items("measurements");
        for (Node entry : entries) {
            if (entry instanceof Node.Fields fields && !fields.fields().isEmpty()) {
                Node value = fields.fields().get(0).value();
                if (value instanceof Node.Fields table) {
                    for (Node.Field row : table.fields()) {
                        if (!row.key().equals(AT) && row.where().line() == reading.where().line()) {
                            flat(row.value(), scalars);
                        }
                    }
                } else if (fields.where().line() == reading.where().line()) {
                    flat(value, scalars);
                }
            }
        }
        int turn = same.indexOf(reading);
        return scalars.size() == same.size() && turn >= 0 ? Optional.of(scalars.get(turn)) : Optional.empty();
    }

    private static void flat(Node node, List<Node.Scalar> scalars) {
        if (node instanceof Node.Scalar scalar) {
            scalars.add(scalar);
        } else if (node instanceof Node.Items items) {
            items.items().forEach(item -> flat(item, scalars));
        }
    }

    // --- an entry in place of another

    private List<Node> items(String section) {
        return tree.get(section).filter(Node.Items.class::isInstance).map(n -> ((Node.Items) n).items()).orElse(List.of());
    }

    /** First and last line of an item of a section. */
    private int[] extent(String section, int index) {
        List<Node> items = items(section);
        int first = items.get(index).where().line();
        int last = index + 1 < items.size() ? items.get(index + 1).where().line() - 1 : end(section);
        while (last > first && lines.get(last - 1).isBlank()) {
            last--;
        }
        return new int[] {first, last};
    }

    private int end(String section) {
        int end = lines.size();
        boolean after = false;
        for (Node.Field field : tree.fields()) {
            if (after) {
                return field.where().line() - 1;
            }
            after = field.key().equals(section);
        }
        return end;
    }

    private Optional<String> rewritten(String section, Node.Fields entry, List<Statement> over, List<Statement> gone, Random random) {
        List<Node> items = items(section);
        Map<Integer, List<String>> instead = new LinkedHashMap<>();
        boolean placed = false;
        Set<String> wanted = places(over);
        for (int i = 0; i < items.size(); i++) {
            int[] extent = extent(section, i);
            List<Statement> all = new ArrayList<>();
            for (Statement s : build.statements()) {
                if (s.where().line() >= extent[0] && s.where().line() <= extent[1]) {
                    all.add(s);
                }
            }
            List<Statement> lost = new ArrayList<>(all);
            lost.retainAll(gone);
            if (lost.isEmpty()) {
                continue;
            }
            if (!(items.get(i) instanceof Node.Fields before) || all.stream().anyMatch(s -> s.form() == Statement.Form.READ)
                    && section.equals("measurements")) {
                return Optional.empty();
            }
            List<String> written = section.equals("observations") ? signs(before, all, lost)
                    : merged(section, before, entry, all, wanted);
            if (section.equals("observations") && !placed) {
                written.add("  - " + YamlText.flow(entry));
            }
            placed = true;
            instead.put(i, written);
        }
        if (!placed) {
            return inserted(section, entry, random);
        }
        List<String> now = new ArrayList<>(lines);
        List<Integer> backwards = new ArrayList<>(instead.keySet());
        backwards.sort((a, b) -> Integer.compare(b, a));
        for (int i : backwards) {
            int[] extent = extent(section, i);
            now.subList(extent[0] - 1, extent[1]).clear();
            now.addAll(extent[0] - 1, instead.get(i));
        }
        return Optional.of(String.join("\n", now));
    }

    private static Set<String> places(Collection<Statement> statements) {
        Set<String> places = new TreeSet<>();
        statements.forEach(s -> places.add(s.at()));
        return places;
    }

    /** An entry of signs without what the change took from it: places that keep the same signs stay together. */
    private static List<String> signs(Node.Fields before, List<Statement> all, List<Statement> lost) {
        Map<String, List<String>> left = new LinkedHashMap<>();
        for (Statement s : all) {
            left.computeIfAbsent(s.at(), a -> new ArrayList<>());
            if (!lost.contains(s)) {
                left.get(s.at()).add(s.what());
            }
        }
        Map<List<String>, List<String>> alike = new LinkedHashMap<>();
        left.forEach((place, signs) -> alike.computeIfAbsent(signs, s -> new ArrayList<>()).add(place));
        List<String> written = new ArrayList<>();
        alike.forEach((signs, places) -> {
            if (!signs.isEmpty()) {
                List<Node.Field> fields = new ArrayList<>();
                for (Node.Field field : before.fields()) {
                    if (field.key().equals("of")) {
                        fields.add(new Node.Field("of", field.where(), words(signs, field.value())));
                    } else if (!field.key().equals(AT)) {
                        fields.add(field);
                    }
                }
                at(before, places, "", fields);
                written.add("  - " + YamlText.flow(new Node.Fields(fields, before.where())));
            }
        });
        return written;
    }

    private static Node words(List<String> words, Node as) {
        List<Node> nodes = new ArrayList<>();
        words.forEach(word -> nodes.add(new Node.Scalar(word, as.where())));
        return nodes.size() == 1 ? nodes.get(0) : new Node.Items(nodes, as.where());
    }

    /** Adds the places, unless it is all that the entry had. */
    private static void at(Node.Fields before, List<String> places, String prefix, List<Node.Field> fields) {
        if (places.equals(List.of(Place.ENGINE)) || before.get(AT).isEmpty() && places.size() == 1 && prefix.isEmpty()) {
            return;
        }
        List<String> said = new ArrayList<>();
        for (String place : places) {
            said.add(!prefix.isEmpty() && place.startsWith(prefix + " ") ? place.substring(prefix.length() + 1) : place);
        }
        if (said.equals(List.of(prefix))) {
            return;
        }
        fields.add(Math.min(1, fields.size()), new Node.Field(AT, before.where(), words(said, before)));
    }

    /** A part's or a joint's entry at the places of the change, with the change laid over it, and the rest as it was. */
    private List<String> merged(String section, Node.Fields before, Node.Fields entry, List<Statement> all, Set<String> wanted) {
        String subject = section.equals("fasteners") ? before.fields().get(0).key() : "";
        List<String> here = new ArrayList<>();
        List<String> rest = new ArrayList<>();
        for (String place : places(all)) {
            (wanted.contains(place) || wanted.contains(Place.ENGINE) ? here : rest).add(place);
        }
        List<String> written = new ArrayList<>();
        if (!rest.isEmpty() && before.get(AT).isPresent()) {
            written.add(line(before, rest, subject));
        }
        Node.Field first = before.fields().get(0);
        List<Node.Field> over = new ArrayList<>();
        for (int i = 0; i < entry.fields().size(); i++) {
            Node.Field field = entry.fields().get(i);
            if (i == 0) {
                over.add(new Node.Field(first.key(), first.where(), field.value()));
            } else if (!field.key().equals(AT)) {
                over.add(field);
            }
        }
        Node.Fields both = Overlay.merged(before, new Node.Fields(over, before.where()));
        written.add(rest.isEmpty() ? "  - " + YamlText.flow(both) : line(both, here, subject));
        return written;
    }

    private static String line(Node.Fields entry, List<String> places, String subject) {
        List<Node.Field> fields = new ArrayList<>();
        for (Node.Field field : entry.fields()) {
            if (!field.key().equals(AT)) {
                fields.add(field);
            }
        }
        at(entry, places, subject, fields);
        return "  - " + YamlText.flow(new Node.Fields(fields, entry.where()));
    }

    /** A new entry somewhere among the others, so that its place does not give it away. */
    private Optional<String> inserted(String section, Node.Fields entry, Random random) {
        List<Node> items = items(section);
        if (items.isEmpty()) {
            return Optional.empty();
        }
        int[] extent = extent(section, random.nextInt(items.size()));
        List<String> now = new ArrayList<>(lines);
        now.add(extent[1], "  - " + YamlText.flow(entry));
        return Optional.of(String.join("\n", now));
    }

    // --- a word of a section

    private Optional<String> map(String section, Node.Fields entry) {
        Optional<Node.Fields> before = tree.get(section).filter(Node.Fields.class::isInstance).map(n -> (Node.Fields) n);
        if (before.isEmpty()) {
            return Optional.empty();
        }
        Node.Fields both = Overlay.merged(before.get(), entry);
        int first = tree.fields().stream().filter(f -> f.key().equals(section)).findFirst().orElseThrow().where().line();
        int last = end(section);
        while (last > first && lines.get(last - 1).isBlank()) {
            last--;
        }
        List<String> now = new ArrayList<>(lines);
        now.subList(first - 1, last).clear();
        now.addAll(first - 1, YamlText.lines(new Node.Fields(List.of(new Node.Field(section, entry.where(), both)), entry.where())));
        return Optional.of(String.join("\n", now));
    }
}
