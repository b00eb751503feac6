package leadlamp.teach;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.function.Function;
import leadlamp.audit.Audit;
import leadlamp.audit.Auditor;
import leadlamp.audit.Case;
import leadlamp.audit.Casebook;
import leadlamp.audit.Expected;
import leadlamp.audit.Overlay;
import leadlamp.record.Build;
import leadlamp.record.EngineSheet;
import leadlamp.record.Fingerprint;
import leadlamp.record.Node;
import leadlamp.record.RecordReader;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.record.Yaml;
import leadlamp.report.Report;
import leadlamp.report.ReportModel;
import leadlamp.words.Vocabulary;

/** The cases of the pages, worked by the ordinary path: laid over their sound build, audited and reported. */
public final class Examples {
    private final Vocabulary words;
    private final Auditor auditor;
    private final RecordReader reader;
    private final Casebook book;
    private final Map<String, Overlay.Base> bases = new HashMap<>();
    private final Function<String, Auditor> first;
    private final ConcurrentMap<String, Auditor> ofOne = new ConcurrentHashMap<>();

    /** With what the program carries. */
    public Examples(Vocabulary words, Auditor auditor, Casebook book) {
        this(words, auditor, book, auditor::briefly);
    }

    /** @param first the auditor of one check that works a case first; where the answer is not the page's, all is worked out */
    Examples(Vocabulary words, Auditor auditor, Casebook book, Function<String, Auditor> first) {
        this.first = first;
        this.words = words;
        this.auditor = auditor;
        this.reader = new RecordReader(words);
        this.book = book;
    }

    /**
     * A case, worked.
     *
     * @param example the case
     * @param says    what the record says in it, as lines
     * @param sheet   what the engine sheet says in it, as lines; empty where it is as ever
     * @param before  the lines of the sound build that it changes
     * @param report  what comes of it
     */
    public record Worked(Case example, List<String> says, List<String> sheet, List<String> before, ReportModel report) {
    }

    Casebook book() {
        return book;
    }

    Auditor auditor() {
        return auditor;
    }

    Vocabulary words() {
        return words;
    }

    RecordReader reader() {
        return reader;
    }

    /** What the record says in a case, as lines. */
    static List<String> says(Case example) {
        return YamlText.lines(example.change());
    }

    static List<String> sheet(Case example) {
        return YamlText.lines(example.sheet());
    }

    /** A sound build of the casebook, read once. */
    synchronized Overlay.Base base(String name) {
        return bases.computeIfAbsent(name, this::read);
    }

    private Overlay.Base read(String name) {
        Yaml.File record = Yaml.text(file(name), name);
        Node.Fields tree = record.tree().orElseThrow();
        String path = tree.get("engine").map(n -> ((Node.Scalar) n).text()).orElse("");
        Yaml.File sheetFile = Yaml.text(file(path), path);
        EngineSheet sheet = reader.sheet(sheetFile.tree().orElseThrow(), path, sheetFile.lines());
        Build build = reader.build(tree, name, record.lines(), List.of(), sheet, Fingerprint.NONE);
        return new Overlay.Base(tree, record.lines(), sheetFile.lines(), build);
    }

    private String file(String name) {
        return Optional.ofNullable(book.files().get(name))
                .orElseThrow(() -> new IllegalStateException("the program carries no " + name));
    }

    /** Works a case, asking its own check alone. */
    Worked work(Case example) {
        Overlay.Base base = base(example.build());
        List<String> says = says(example);
        Case own = example;
        if (!says.isEmpty()) {
            String name = example.of() + ".yaml";
            Node.Fields change = Yaml.text(String.join("\n", says) + "\n", name).tree().orElseThrow();
            own = new Case(example.of(), example.name(), example.build(), change, example.sheet(), example.erase(),
                    example.expect(), example.also(), name, example.where());
        }
        Build changed = new Overlay(reader).changed(own, says, base, new ArrayList<>());
        Audit audit = ofOne.computeIfAbsent(example.of(), first).audit(changed);
        if (!asExpected(example, audit)) {
            audit = auditor.asking(example.of()).audit(changed);
        }
        return new Worked(example, says, sheet(example), before(base.build(), changed), Report.of(audit, words));
    }

    /** Whether the check answers what its page says; what is worked out for it alone may lack what a limit rests on. */
    private static boolean asExpected(Case example, Audit audit) {
        Map<String, Expected> got = new HashMap<>();
        audit.answers().forEach(answer -> got.put(Exercises.place(answer.ask()), Expected.of(answer)));
        for (Map.Entry<String, Expected> one : example.expect().entrySet()) {
            if (!one.getValue().equals(got.getOrDefault(one.getKey(), new Expected.NotAsked()))) {
                return false;
            }
        }
        return true;
    }

    /** The lines that a change took the place of, each once. */
    private static List<String> before(Build base, Build changed) {
        Map<Statement.Key, Set<Where>> kept = new HashMap<>();
        changed.statements().forEach(s -> kept.computeIfAbsent(s.key(), k -> new HashSet<>(2)).add(s.where()));
        List<String> before = new ArrayList<>();
        for (Statement s : base.statements()) {
            if (kept.getOrDefault(s.key(), Set.of()).contains(s.where())) {
                continue;
            }
            String line = withoutRemark(s.text().strip());
            if (s.form() == Statement.Form.READ && !line.isEmpty() && Character.isDigit(line.charAt(0))) {
                // The row of a table says nothing of what it is a table of.
                line = s.of() + ", row " + line;
            }
            if (!line.isEmpty() && !before.contains(line)) {
                before.add(line);
            }
        }
        return List.copyOf(before);
    }

    /** A line of a record without the remark at its end. */
    static String withoutRemark(String line) {
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '\'') {
                quoted = !quoted;
            } else if (c == '#' && !quoted && (i == 0 || line.charAt(i - 1) == ' ')) {
                return line.substring(0, i).stripTrailing();
            }
        }
        return line;
    }
}
