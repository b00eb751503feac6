package leadlamp.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.ReaderException;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * A YAML file as a tree that knows its places. It takes the events of the parser itself, so that every scalar stays the
 * text that was written, and nothing is spent on what it might be a number of. What a bench record never needs is refused: aliases, tags, repeated keys, more than one document,
 * deep nesting, files too large to be a record.
 */
public final class Yaml {
    /** A record that a person writes is a thousandth of this. */
    static final int MOST_BYTES = 4 * 1024 * 1024;
    private static final int DEEPEST = 24;

    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private final String[] lines;
    private final ParserImpl parser;

    private Yaml(String file, String text, ParserImpl parser) {
        this.file = file;
        this.lines = split(text);
        this.parser = parser;
    }

    /**
     * A file read.
     *
     * @param tree     its map; absent where it could not be read as one
     * @param problems what was refused
     * @param lines    its lines as written
     * @param bytes    SHA-256 of its bytes; none where it could not be read
     */
    public record File(Optional<Node.Fields> tree, List<Problem> problems, List<String> lines, Fingerprint bytes) {
        /** The text of a line, empty where there is none. */
        public String line(int number) {
            return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
        }
    }

    /**
     * Reads a file.
     *
     * @param path where it lies
     * @param name what messages call it
     */
    public static File read(Path path, String name) {
        byte[] bytes;
        try {
            if (Files.isDirectory(path)) {
                return refused(name, "\"" + name + "\" is a folder, not a file.", "Name the record itself, a .yaml file.");
            }
            long size = Files.size(path);
            if (size > MOST_BYTES) {
                return refused(name, "\"" + name + "\" is too large to be a record (" + size / (1024 * 1024) + " MB).",
                        "A record is a page or two of text; " + MOST_BYTES / (1024 * 1024) + " MB is the most that is read.");
            }
            bytes = Files.readAllBytes(path);
        } catch (NoSuchFileException none) {
            return refused(name, "There is no file \"" + name + "\".", "Check the name and the folder.");
        } catch (IOException | SecurityException cannot) {
            return refused(name, "\"" + name + "\" cannot be read.", "Check that you may read it.");
        }
        String text;
        try {
            text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException other) {
            return refused(name, "\"" + name + "\" is not text in UTF-8.",
                    "Save it as plain text with the encoding UTF-8.");
        }
        return withBytes(text(text, name), Fingerprint.of(bytes));
    }

    /** Reads a text as if it were a file of this name. */
    public static File text(String text, String name) {
        if (text.startsWith("\uFEFF")) {
            text = text.substring(1);
        }
        if (text.isBlank()) {
            return refused(name, "\"" + name + "\" is empty.", "A record begins with `build:` or `engine:`, a sheet with `sheet:`.");
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' && c != '\n' && c != '\r' && c != '\t' && c != 0x1b || c == 0x7f) {
                return refused(name, "\"" + name + "\" holds control characters; it is no text file.",
                        "A record is plain text.");
            }
        }
        try {
            return new Yaml(name, text, new ParserImpl(new StreamReader(text), new LoaderOptions())).file();
        } catch (TooMuch stop) {
            return new File(Optional.empty(), List.of(stop.problem), lines(text), Fingerprint.NONE);
        } catch (MarkedYAMLException broken) {
            return new File(Optional.empty(), List.of(notYaml(name, text, broken)), lines(text), Fingerprint.NONE);
        } catch (ReaderException broken) {
            return new File(Optional.empty(), List.of(notText(name, text, broken)), lines(text), Fingerprint.NONE);
        } catch (YAMLException broken) {
            return refused(name, "\"" + name + "\" is no YAML that can be read.", "Check brackets, quotes and indents.");
        }
    }

    private static List<String> lines(String text) {
        return List.of(split(text));
    }

    /** A pattern would do, and take as long as all the rest of reading at a first start. */
    private static String[] split(String text) {
        String plain = text.indexOf('\r') < 0 ? text : text.replace("\r\n", "\n").replace('\r', '\n');
        List<String> lines = new ArrayList<>();
        int start = 0;
        for (int end = plain.indexOf('\n'); end >= 0; end = plain.indexOf('\n', start)) {
            lines.add(plain.substring(start, end));
            start = end + 1;
        }
        lines.add(plain.substring(start));
        return lines.toArray(new String[0]);
    }

    private static File withBytes(File file, Fingerprint bytes) {
        return new File(file.tree(), file.problems(), file.lines(), bytes);
    }

    private static File refused(String name, String what, String expected) {
        return new File(Optional.empty(), List.of(new Problem(new Where(name, 0, 0), 0, "", what, expected,
                Optional.empty(), "")), List.of(), Fingerprint.NONE);
    }

    private static Problem notYaml(String name, String text, MarkedYAMLException broken) {
        String said = String.valueOf(broken.getMessage());
        // What was opened and not closed is mended where it was opened, not where the file ends.
        boolean opened = broken.getContextMark() != null && (said.contains("quoted scalar") || said.contains("could not find expected ':'"));
        Mark at = opened ? broken.getContextMark() : broken.getProblemMark();
        String what;
        if (said.contains("Nesting Depth") || said.contains("nesting depth")) {
            what = "The file is nested far deeper than a record ever is.";
        } else if (said.contains("TAB")) {
            what = "A tab stands here; YAML indents with blanks.";
        } else if (said.contains("cannot start any token")) {
            what = "A character stands here with which no word may begin; put the text in quotes.";
        } else if (said.contains("expected <block end>")) {
            what = "This line is not indented like those before it.";
        } else if (said.contains("expected ',' or")) {
            what = "A comma or a closing bracket is missing before this.";
        } else if (said.contains("mapping values are not allowed")) {
            what = "A colon too many stands in this line, or a line above is not closed.";
        } else if (said.contains("could not find expected ':'")) {
            what = "A colon is missing in this line or the one before it.";
        } else if (said.contains("quoted scalar")) {
            what = "A quote is opened and not closed.";
        } else {
            what = "From here on the file is no YAML.";
        }
        return unreadable(name, text, at == null ? 0 : at.getLine() + 1, at == null ? 0 : at.getColumn() + 1, what);
    }

    /** A character that no YAML may hold, by how many stand before it. */
    private static Problem notText(String name, String text, ReaderException broken) {
        String before = text.substring(0, text.offsetByCodePoints(0, Math.min(broken.getPosition(), text.codePointCount(0, text.length()))));
        String[] lines = split(before);
        String last = lines[lines.length - 1];
        return unreadable(name, text, lines.length, last.codePointCount(0, last.length()) + 1,
                "A character stands here that is no text (number " + Integer.toHexString(broken.getCodePoint()).toUpperCase(Locale.ROOT)
                        + " of Unicode).");
    }

    private static Problem unreadable(String name, String text, int line, int column, String what) {
        String[] lines = split(text);
        String shown = line >= 1 && line <= lines.length ? lines[line - 1] : "";
        return new Problem(new Where(name, line, column), 0, shown, what,
                "Nothing of the file could be read. Mend this place and try again.", Optional.empty(), "");
    }

    private File file() {
        parser.getEvent();
        if (parser.checkEvent(Event.ID.StreamEnd)) {
            return refused(file, "\"" + file + "\" is empty.", "A record begins with `build:` or `engine:`, a sheet with `sheet:`.");
        }
        parser.getEvent();
        Event first = parser.getEvent();
        if (!first.is(Event.ID.MappingStart)) {
            return refused(file, "\"" + file + "\" is not a record: it has no sections.",
                    "A record is a list of sections such as `build:`, `engine:`, `measurements:`.");
        }
        Node.Fields tree = fields(first, 0);
        parser.getEvent();
        if (!parser.checkEvent(Event.ID.StreamEnd)) {
            parser.getEvent();
            problem(where(parser.getEvent()), 0, "A second document begins here.", "A record is one document; take out the line `---`.",
                    "What stands before it was read.");
        }
        return new File(Optional.of(tree), List.copyOf(problems), List.of(lines), Fingerprint.NONE);
    }

    private Node node(Event event, int depth) {
        Where where = where(event);
        if (depth > DEEPEST) {
            throw new TooMuch(new Problem(where, 0, line(where), "The file is nested far deeper than a record ever is.",
                    "Nothing of the file could be read. Mend this place and try again.", Optional.empty(), ""));
        }
        if (event.is(Event.ID.Alias)) {
            throw new TooMuch(new Problem(where, 0, line(where), "YAML aliases (*name) are not used in a record.",
                    "Write the words out where they belong. Nothing of the file was read.", Optional.empty(), ""));
        }
        if (event instanceof ScalarEvent scalar) {
            refuseTag(scalar.getTag(), where);
            return new Node.Scalar(isNothing(scalar) ? "" : scalar.getValue().strip(), where);
        }
        if (event instanceof MappingStartEvent map) {
            refuseTag(map.getTag(), where);
            return fields(event, depth);
        }
        refuseTag(((SequenceStartEvent) event).getTag(), where);
        List<Node> items = new ArrayList<>();
        for (Event next = parser.getEvent(); !next.is(Event.ID.SequenceEnd); next = parser.getEvent()) {
            items.add(node(next, depth + 1));
        }
        return new Node.Items(List.copyOf(items), where);
    }

    /** Whether a scalar is written as what stands for nothing in YAML: a blank, `~`, `null`. In quotes it is a word. */
    private static boolean isNothing(ScalarEvent scalar) {
        return scalar.getScalarStyle() == ScalarStyle.PLAIN && switch (scalar.getValue()) {
            case "~", "null", "Null", "NULL" -> true;
            default -> false;
        };
    }

    private void refuseTag(String tag, Where where) {
        if (tag != null) {
            problem(where, 0, "YAML tags (!word) are not used in a record.", "Write the words alone.", "What it marks was read without it.");
        }
    }

    private Node.Fields fields(Event start, int depth) {
        List<Node.Field> fields = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Event next = parser.getEvent(); !next.is(Event.ID.MappingEnd); next = parser.getEvent()) {
            Where at = where(next);
            if (next.is(Event.ID.Alias)) {
                node(next, depth);
            }
            if (!(next instanceof ScalarEvent name)) {
                throw new TooMuch(new Problem(at, 0, line(at), "A word and a colon should stand here.",
                        "Nothing of the file could be read. Mend this place and try again.", Optional.empty(), ""));
            }
            String key = name.getValue().strip();
            Node value = node(parser.getEvent(), depth + 1);
            if (seen.add(key)) {
                fields.add(new Node.Field(key, at, value));
            } else {
                problem(at, key.length(), "\"" + key + "\" stands twice in one entry.", "Keep one of the two.",
                        "The first was read, this one was left out.");
            }
        }
        return new Node.Fields(List.copyOf(fields), where(start));
    }

    private Where where(Event event) {
        Mark at = event.getStartMark();
        return new Where(file, at.getLine() + 1, at.getColumn() + 1);
    }

    private String line(Where where) {
        return where.line() >= 1 && where.line() <= lines.length ? lines[where.line() - 1] : "";
    }

    private void problem(Where where, int length, String what, String expected, String rest) {
        problems.add(new Problem(where, length, line(where), what, expected, Optional.empty(), rest));
    }

    /** Carries the one problem that ends the reading of a file. */
    private static final class TooMuch extends RuntimeException {
        private final transient Problem problem;

        TooMuch(Problem problem) {
            super(null, null, false, false);
            this.problem = problem;
        }
    }
}
