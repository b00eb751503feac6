package leadlamp.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.record.Build;
import leadlamp.record.EngineSheet;
import leadlamp.record.Fingerprint;
import leadlamp.record.LimitLine;
import leadlamp.record.Node;
import leadlamp.record.Place;
import leadlamp.record.Problem;
import leadlamp.record.RecordReader;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/** Lays the change of a case over its full build, word by word, as the case was meant: the rest of an entry stays. */
public final class Overlay {
    private final RecordReader records;

    /**
     * A full build as it lies in its file.
     *
     * @param tree       the record's tree
     * @param lines      the record's lines
     * @param sheetLines the lines of its engine sheet
     * @param build      read
     */
    public record Base(Node.Fields tree, List<String> lines, List<String> sheetLines, Build build) {
    }

    public Overlay(RecordReader records) {
        this.records = records;
    }

    /**
     * The build that a case makes of its full build.
     *
     * @param lines the lines of the page that the case stands on
     * @param wrong takes what the case says and nothing comes of
     */
    public Build changed(Case example, List<String> lines, Base base, List<String> wrong) {
        Build build = base.build();
        List<String> ofSheet = new ArrayList<>();
        List<String> ofRecord = new ArrayList<>();
        for (String word : example.erase()) {
            (word.startsWith("sheet ") || word.startsWith("limit ") ? ofSheet : ofRecord).add(word);
        }
        if (!example.sheet().fields().isEmpty() || !ofSheet.isEmpty()) {
            EngineSheet sheet = sheet(build.sheet(), base, example, ofSheet, wrong);
            build = records.build(base.tree(), build.file(), base.lines(), List.of(), sheet, build.bytes());
        }
        if (!example.change().fields().isEmpty()) {
            build = lay(example, lines, base, build, wrong);
        }
        for (String word : ofRecord) {
            List<Statement> before = build.statements();
            build = erased(build, word);
            if (build.statements().equals(before)) {
                wrong.add("nothing is erased by \"" + word + "\"");
            }
        }
        return build;
    }

    // --- the sheet

    private EngineSheet sheet(EngineSheet sheet, Base base, Case example, List<String> erase, List<String> wrong) {
        Node.Fields tree = merged(sheet.tree(), example.sheet());
        List<String> lines = base.sheetLines();
        EngineSheet changed = records.sheet(tree, sheet.file(), lines);
        if (changed.problems().size() > sheet.problems().size()) {
            changed.problems().forEach(p -> wrong.add("the sheet: " + p.where() + ": " + p.what()));
        }
        for (String word : erase) {
            Set<Where> gone = new HashSet<>();
            if (word.startsWith("limit ")) {
                for (LimitLine line : changed.limits()) {
                    if (line.quantity().equals(word.substring(6))) {
                        gone.add(line.line());
                    }
                }
            } else {
                for (Statement line : changed.statements()) {
                    if (names(line, word)) {
                        gone.add(line.where());
                    }
                }
            }
            if (gone.isEmpty()) {
                wrong.add("nothing is erased by \"" + word + "\"");
            }
            changed = records.sheet((Node.Fields) without(changed.tree(), gone), sheet.file(), lines);
        }
        return changed;
    }

    private static Node without(Node node, Set<Where> gone) {
        if (!(node instanceof Node.Fields fields)) {
            return node;
        }
        List<Node.Field> kept = new ArrayList<>();
        for (Node.Field field : fields.fields()) {
            if (!gone.contains(field.where()) && !gone.contains(field.value().where()) && !holds(field.value(), gone)) {
                kept.add(new Node.Field(field.key(), field.where(), without(field.value(), gone)));
            }
        }
        return new Node.Fields(kept, fields.where());
    }

    private static boolean holds(Node node, Set<Where> gone) {
        if (node instanceof Node.Items items) {
            for (Node item : items.items()) {
                if (gone.contains(item.where())) {
                    return true;
                }
            }
        }
        return false;
    }

    /** One tree laid over another: maps are laid over key by key, all else is put in place of what stood there. */
    public static Node.Fields merged(Node.Fields under, Node.Fields over) {
        Map<String, Node.Field> fields = new LinkedHashMap<>();
        under.fields().forEach(f -> fields.put(f.key(), f));
        for (Node.Field field : over.fields()) {
            Node.Field before = fields.get(field.key());
            fields.put(field.key(), before != null && before.value() instanceof Node.Fields map
                    && field.value() instanceof Node.Fields more
                    ? new Node.Field(field.key(), before.where(), merged(map, more)) : field);
        }
        return new Node.Fields(List.copyOf(fields.values()), under.where());
    }

    // --- the record

    private Build lay(Case example, List<String> lines, Base base, Build build, List<String> wrong) {
        Build change = records.build(withGauges(example.change(), base.tree()), example.file(), lines, List.of(),
                build.sheet(), Fingerprint.NONE);
        Set<Where> ofSheet = new HashSet<>();
        build.sheet().problems().forEach(p -> ofSheet.add(p.where()));
        for (Problem problem : change.problems()) {
            if (!ofSheet.contains(problem.where()) && !expectsUnreadable(example)) {
                wrong.add("the change: " + problem.where() + ": " + problem.what() + " " + problem.expected());
            }
        }
        List<Statement> over = new ArrayList<>();
        for (Statement s : change.statements()) {
            if (s.where().file().equals(example.file())) {
                over.add(withRest(s, build.statements()));
            }
        }
        Set<String> next = new HashSet<>();
        over.stream().filter(s -> s.of().equals("steps") && (s.says().equals("next") || s.says().equals("planned")))
                .forEach(s -> next.add(s.says()));
        List<Statement> kept = new ArrayList<>();
        for (Statement s : build.statements()) {
            boolean otherNext = s.of().equals("steps") && next.contains(s.says());
            boolean otherStage = s.of().equals("stage") && !change.stage().isEmpty();
            if (!otherNext && !otherStage && !replaced(s, over, change.leftOut())) {
                kept.add(s);
            }
        }
        kept.addAll(over);
        List<LimitLine> limits = new ArrayList<>();
        for (LimitLine line : build.limits()) {
            if (change.limits().stream().noneMatch(l -> l.quantity().equals(line.quantity()) && l.at().equals(line.at()))) {
                limits.add(line);
            }
        }
        limits.addAll(change.limits());
        return new Build(build.file(), build.name(), build.sheet(), List.copyOf(kept), List.copyOf(limits), change.gauges(),
                change.stage().isEmpty() ? build.stage() : change.stage(), both(build.accepted(), change.accepted()),
                both(build.photos(), change.photos()), both(build.problems(), change.problems()),
                both(build.leftOut(), change.leftOut()), build.bytes());
    }

    /** A reading that is changed keeps its gauge, and what it was taken at, where the change says nothing of them. */
    private static Statement withRest(Statement s, List<Statement> before) {
        if (s.form() != Statement.Form.READ || s.inPartsEntry()) {
            return s;
        }
        for (Statement b : before) {
            if (b.key().equals(s.key()) && !b.inPartsEntry()) {
                Map<String, String> asides = new TreeMap<>(b.asides());
                asides.putAll(s.asides());
                return new Statement(s.form(), s.of(), s.at(), s.what(), s.says(), s.value(),
                        s.gauges().isEmpty() ? b.gauges() : s.gauges(), asides, s.told(), s.where(), s.text());
            }
        }
        return s;
    }

    private static <T> List<T> both(List<T> one, List<T> other) {
        List<T> both = new ArrayList<>(one);
        both.addAll(other);
        return List.copyOf(both);
    }

    private static boolean expectsUnreadable(Case example) {
        Collection<Expected> all = new ArrayList<>(example.expect().values());
        example.also().values().forEach(m -> all.addAll(m.values()));
        return all.stream().anyMatch(e -> e instanceof Expected.Untold open && open.gaps().contains(Gap.Why.NOT_READABLE));
    }

    /** The change with the gauges of the full build, so that a reading may name one. */
    private static Node.Fields withGauges(Node.Fields change, Node.Fields tree) {
        Optional<Node.Field> gauges = tree.fields().stream().filter(f -> f.key().equals("gauges")).findFirst();
        if (gauges.isEmpty()) {
            return change;
        }
        Node.Fields all = new Node.Fields(List.of(gauges.get()), tree.where());
        return merged(all, change);
    }

    /** Whether something of the change says the same thing of the same place, or of a place that this one belongs to. */
    private static boolean replaced(Statement s, List<Statement> over, List<Statement.Key> unreadable) {
        for (Statement o : over) {
            if (o.key().form() == s.key().form() && o.of().equals(s.of()) && o.what().equals(s.what())
                    && o.inPartsEntry() == s.inPartsEntry() && takes(o.at(), s.at())) {
                return true;
            }
        }
        for (Statement.Key key : unreadable) {
            if (key.form() == s.key().form() && key.of().equals(s.of()) && key.what().equals(s.what())
                    && takes(key.at(), s.at())) {
                return true;
            }
        }
        // A torque takes the place of `not yet`, and the other way round.
        for (Statement o : over) {
            if ((o.of().equals("joint torque") && s.of().equals("joint") && s.what().equals("torque said")
                    || s.of().equals("joint torque") && o.of().equals("joint") && o.what().equals("torque said")
                    || s.of().equals(o.of()) && (o.what().equals("figure") && s.form() == Statement.Form.READ
                            || s.what().equals("figure") && o.form() == Statement.Form.READ)) && takes(o.at(), s.at())) {
                return true;
            }
        }
        return false;
    }

    private static boolean takes(String over, String under) {
        return over.equals(under) || !over.equals(Place.ENGINE) && !under.startsWith("one of ") && !under.startsWith("some of ")
                && Place.covers(over, under);
    }

    // --- erasing

    /**
     * The build without what a word names: `cam gear pin form at intake`, or `use duty` wherever it is said. With `gauge` after a
     * reading (`joint torque gauge at oil pump to block`) the reading stays and its gauge goes.
     */
    public static Build erased(Build build, String word) {
        List<Statement> kept = new ArrayList<>();
        int gauge = word.indexOf(" gauge");
        String read = gauge < 0 || word.startsWith("gauge ") ? "" : word.substring(0, gauge) + word.substring(gauge + 6);
        for (Statement s : build.statements()) {
            if (s.form() == Statement.Form.READ && !read.isEmpty() && names(s, read)) {
                kept.add(new Statement(s.form(), s.of(), s.at(), s.what(), s.says(), s.value(), List.of(), s.asides(), s.told(),
                        s.where(), s.text()));
            } else if (!names(s, word)) {
                kept.add(s);
            }
        }
        boolean stage = word.startsWith("stage ");
        List<String> stages = new ArrayList<>(build.stage());
        stages.removeIf(s -> stage && word.equals("stage " + s));
        return new Build(build.file(), build.name(), build.sheet(), List.copyOf(kept), build.limits(), build.gauges(),
                List.copyOf(stages), build.accepted(), build.photos(), build.problems(), build.leftOut(), build.bytes());
    }

    /** The word by which needs and cases call a statement. */
    public static String word(Statement s) {
        return switch (s.form()) {
            case READ -> s.what().isEmpty() ? s.of() : s.of() + " " + s.what();
            case ON_SHEET -> s.of().equals(s.what()) ? "sheet " + s.of() : "sheet " + s.of() + " " + s.what();
            default -> s.of() + " " + s.what();
        };
    }

    private static boolean names(Statement s, String word) {
        String own = word(s);
        return word.equals(own) || word.startsWith(own + " at ") && takes(word.substring(own.length() + 4), s.at());
    }
}
