package leadlamp.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.words.Vocabulary;

/** Reads a build record and its engine sheet. */
public final class RecordReader {
    private final Vocabulary words;
    private final SheetReader sheets;

    public RecordReader(Vocabulary words) {
        this.words = words;
        this.sheets = new SheetReader(words);
    }

    /**
     * What came of reading.
     *
     * @param build    the record; absent where nothing of it could be read
     * @param problems all that could not be taken
     */
    public record Result(Optional<Build> build, List<Problem> problems) {
    }

    /** Reads the record that lies there; messages call it by its file name. */
    public Result read(Path path) {
        Path file = path.getFileName();
        String name = file == null ? path.toString() : file.toString();
        Yaml.File yaml = Yaml.read(path, name);
        if (yaml.tree().isEmpty()) {
            return new Result(Optional.empty(), yaml.problems());
        }
        Node.Fields tree = yaml.tree().get();
        List<Problem> before = new ArrayList<>(yaml.problems());
        Optional<EngineSheet> sheet = sheet(tree, path, name, yaml, before);
        return new Result(Optional.of(build(tree, name, yaml.lines(), before,
                sheet.orElseGet(() -> sheets.of(new Node.Fields(List.of(), new Where("", 0, 0)), "", List.of(), List.of())),
                yaml.bytes())), List.of());
    }

    /** Reads a record that stands as a tree against a sheet that is already read. */
    public Build build(Node.Fields tree, String name, List<String> lines, List<Problem> already, EngineSheet sheet,
            String bytes) {
        Complaints complaints = new Complaints(lines);
        complaints.take(already);
        Entries entries = new Entries(words, sheet, tree, complaints);
        return entries.build(name, bytes);
    }

    /** Reads an engine sheet alone. */
    public EngineSheet sheet(Path path) {
        Path file = path.getFileName();
        return sheets.read(path, file == null ? path.toString() : file.toString());
    }

    /** Reads an engine sheet that stands as a tree. */
    public EngineSheet sheet(Node.Fields tree, String name, List<String> lines) {
        return sheets.of(tree, name, lines, List.of());
    }

    private Optional<EngineSheet> sheet(Node.Fields tree, Path record, String name, Yaml.File yaml, List<Problem> problems) {
        Optional<Node> engine = tree.get("engine");
        if (engine.isEmpty() || !(engine.get() instanceof Node.Scalar path) || path.text().isEmpty()) {
            problems.add(new Problem(engine.map(Node::where).orElse(new Where(name, 0, 0)), 0, "",
                    "The record names no engine sheet.", "Write `engine:` and the path of the sheet, from the record's own folder.",
                    Optional.empty(), "The record was read; what needs the sheet says \"cannot tell\"."));
            return Optional.empty();
        }
        Path folder = record.toAbsolutePath().normalize().getParent();
        Path sheet;
        try {
            sheet = folder.resolve(path.text()).normalize();
        } catch (java.nio.file.InvalidPathException odd) {
            sheet = null;
        }
        if (sheet == null || path.text().startsWith("/") || path.text().contains(":\\")) {
            problems.add(new Problem(path.where(), path.text().length(), yaml.line(path.where().line()),
                    "The sheet's path begins at the root of the disk.", "Write it from the record's own folder, as engines/my-engine.yaml.",
                    Optional.empty(), "The record was read; what needs the sheet says \"cannot tell\"."));
            return Optional.empty();
        }
        if (leadsOut(sheet, folder)) {
            problems.add(new Problem(path.where(), path.text().length(), yaml.line(path.where().line()),
                    "The sheet's path leads out of the record's folder.", "Put the sheet into that folder or below it, as engines/my-engine.yaml.",
                    Optional.empty(), "The record was read; what needs the sheet says \"cannot tell\"."));
            return Optional.empty();
        }
        EngineSheet read = sheets.read(sheet, path.text());
        if (read.tree().fields().isEmpty() && !read.problems().isEmpty()) {
            Problem first = read.problems().get(0);
            problems.add(new Problem(first.where().line() == 0 ? path.where() : first.where(), 0, first.line(),
                    first.what(), "It is the engine sheet of this record. " + first.expected(), first.nearest(),
                    "The record was read; what needs the sheet says \"cannot tell\"."));
            return Optional.empty();
        }
        return Optional.of(read);
    }

    /** By its words or by a link: a record that somebody sends must not make this machine show its other files. */
    private static boolean leadsOut(Path file, Path folder) {
        try {
            return !file.startsWith(folder) || Files.exists(file) && !file.toRealPath().startsWith(folder.toRealPath());
        } catch (IOException odd) {
            return true;
        }
    }
}
