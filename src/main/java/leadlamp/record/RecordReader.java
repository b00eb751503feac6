package leadlamp.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
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
        return read(path, text(path), Optional.empty());
    }

    /** The text of a record taken apart, which wants no vocabulary: it may go on while that is loaded. */
    public static Yaml.File text(Path path) {
        return Yaml.read(path, name(path));
    }

    /** Reads a record whose text is taken apart elsewhere meanwhile; its sheet is read first, where a line names it plainly. */
    public Result read(Path path, Supplier<Yaml.File> text) {
        Optional<Early> early = early(path);
        return read(path, text.get(), early);
    }

    private Result read(Path path, Yaml.File yaml, Optional<Early> early) {
        String name = name(path);
        if (yaml.tree().isEmpty()) {
            return new Result(Optional.empty(), yaml.problems());
        }
        Node.Fields tree = yaml.tree().get();
        List<Problem> before = new ArrayList<>(yaml.problems());
        Optional<EngineSheet> sheet = sheet(tree, path, name, yaml, before, early);
        return new Result(Optional.of(build(tree, name, yaml.lines(), before,
                sheet.orElseGet(() -> sheets.of(new Node.Fields(List.of(), new Where("", 0, 0)), "", List.of(), List.of())),
                yaml.bytes())), List.of());
    }

    /** A sheet that was read before its record was. */
    private record Early(String path, EngineSheet sheet) {
    }

    /** The sheet that a line of the record seems to name. What it does name is told by its tree, which decides. */
    private Optional<Early> early(Path record) {
        try {
            if (!Files.isRegularFile(record) || Files.size(record) > Yaml.MOST_BYTES) {
                return Optional.empty();
            }
            String text = "\n" + Files.readString(record);
            int line = text.indexOf("\nengine:");
            if (line < 0) {
                return Optional.empty();
            }
            int start = line + "\nengine:".length();
            int end = text.indexOf('\n', start);
            String named = text.substring(start, end < 0 ? text.length() : end).strip();
            Optional<Path> sheet = named.isEmpty() || fromTheRoot(named) ? Optional.empty() : beside(record, named);
            if (sheet.isEmpty() || leadsOut(sheet.get(), folder(record)) || !Files.isRegularFile(sheet.get())) {
                return Optional.empty();
            }
            return Optional.of(new Early(named, sheets.read(sheet.get(), named)));
        } catch (IOException cannot) {
            // It will be told where the record is read.
            return Optional.empty();
        }
    }

    /** Reads a record that stands as a tree against a sheet that is already read. */
    public Build build(Node.Fields tree, String name, List<String> lines, List<Problem> already, EngineSheet sheet,
            Fingerprint bytes) {
        Complaints complaints = new Complaints(lines);
        complaints.take(already);
        Entries entries = new Entries(words, sheet, tree, complaints);
        return entries.build(name, bytes);
    }

    /** Reads an engine sheet alone. */
    public EngineSheet sheet(Path path) {
        return sheets.read(path, name(path));
    }

    private static String name(Path path) {
        Path file = path.getFileName();
        return file == null ? path.toString() : file.toString();
    }

    /** Reads an engine sheet that stands as a tree. */
    public EngineSheet sheet(Node.Fields tree, String name, List<String> lines) {
        return sheets.of(tree, name, lines, List.of());
    }

    private Optional<EngineSheet> sheet(Node.Fields tree, Path record, String name, Yaml.File yaml, List<Problem> problems,
            Optional<Early> early) {
        Optional<Node> engine = tree.get("engine");
        if (engine.isEmpty() || !(engine.get() instanceof Node.Scalar path) || path.text().isEmpty()) {
            problems.add(new Problem(engine.map(Node::where).orElse(new Where(name, 0, 0)), 0, "",
                    "The record names no engine sheet.", "Write `engine:` and the path of the sheet, from the record's own folder.",
                    Optional.empty(), "The record was read; what needs the sheet says \"cannot tell\"."));
            return Optional.empty();
        }
        Path folder = folder(record);
        Optional<Path> found = beside(record, path.text());
        if (found.isEmpty() || fromTheRoot(path.text())) {
            problems.add(new Problem(path.where(), path.text().length(), yaml.line(path.where().line()),
                    "The sheet's path begins at the root of the disk.", "Write it from the record's own folder, as engines/my-engine.yaml.",
                    Optional.empty(), "The record was read; what needs the sheet says \"cannot tell\"."));
            return Optional.empty();
        }
        Path sheet = found.get();
        if (leadsOut(sheet, folder)) {
            problems.add(new Problem(path.where(), path.text().length(), yaml.line(path.where().line()),
                    "The sheet's path leads out of the record's folder.", "Put the sheet into that folder or below it, as engines/my-engine.yaml.",
                    Optional.empty(), "The record was read; what needs the sheet says \"cannot tell\"."));
            return Optional.empty();
        }
        EngineSheet read = early.isPresent() && early.get().path().equals(path.text()) ? early.get().sheet()
                : sheets.read(sheet, path.text());
        if (read.tree().fields().isEmpty() && !read.problems().isEmpty()) {
            Problem first = read.problems().get(0);
            problems.add(new Problem(first.where().line() == 0 ? path.where() : first.where(), 0, first.line(),
                    first.what(), "It is the engine sheet of this record. " + first.expected(), first.nearest(),
                    "The record was read; what needs the sheet says \"cannot tell\"."));
            return Optional.empty();
        }
        return Optional.of(read);
    }

    private static Path folder(Path record) {
        return record.toAbsolutePath().normalize().getParent();
    }

    private static Optional<Path> beside(Path record, String path) {
        try {
            return Optional.of(folder(record).resolve(path).normalize());
        } catch (InvalidPathException odd) {
            return Optional.empty();
        }
    }

    private static boolean fromTheRoot(String path) {
        return path.startsWith("/") || path.contains(":\\");
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
