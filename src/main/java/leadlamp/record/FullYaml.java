package leadlamp.record;

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
 * Reads any YAML with a parser for the whole language, and tells what is wrong. It takes the events of the parser itself. A class of
 * its own, so that the parser is not loaded for a file that {@link PlainYaml} can read.
 */
final class FullYaml {
    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private final String[] lines;
    private final ParserImpl parser;

    private FullYaml(String file, String text, ParserImpl parser) {
        this.file = file;
        this.lines = split(text);
        this.parser = parser;
    }

    /** Reads a text without control characters as if it were a file of this name. */
    static Yaml.File read(String text, String name) {
        try {
            LoaderOptions options = new LoaderOptions();
            options.setCodePointLimit(Yaml.MOST_BYTES);
            return new FullYaml(name, text, new ParserImpl(new StreamReader(text), options)).file();
        } catch (TooMuch stop) {
            return new Yaml.File(Optional.empty(), List.of(stop.problem), lines(text), Fingerprint.NONE);
        } catch (MarkedYAMLException broken) {
            return new Yaml.File(Optional.empty(), List.of(notYaml(name, text, broken)), lines(text), Fingerprint.NONE);
        } catch (ReaderException broken) {
            return new Yaml.File(Optional.empty(), List.of(notText(name, text, broken)), lines(text), Fingerprint.NONE);
        } catch (YAMLException broken) {
            return Yaml.refused(name, "\"" + name + "\" is no YAML that can be read.", "Check brackets, quotes and indents.");
        }
    }

    private static List<String> lines(String text) {
        return List.of(split(text));
    }

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

    private Yaml.File file() {
        parser.getEvent();
        if (parser.checkEvent(Event.ID.StreamEnd)) {
            return Yaml.refused(file, "\"" + file + "\" is empty.", "A record begins with `build:` or `engine:`, a sheet with `sheet:`.");
        }
        parser.getEvent();
        Event first = parser.getEvent();
        if (!first.is(Event.ID.MappingStart)) {
            return Yaml.refused(file, "\"" + file + "\" is not a record: it has no sections.",
                    "A record is a list of sections such as `build:`, `engine:`, `measurements:`.");
        }
        Node.Fields tree = fields(first, 0);
        parser.getEvent();
        if (!parser.checkEvent(Event.ID.StreamEnd)) {
            parser.getEvent();
            problem(where(parser.getEvent()), 0, "A second document begins here.", "A record is one document; take out the line `---`.",
                    "What stands before it was read.");
        }
        return new Yaml.File(Optional.of(tree), List.copyOf(problems), List.of(lines), Fingerprint.NONE);
    }

    private Node node(Event event, int depth) {
        Where where = where(event);
        if (depth > Yaml.DEEPEST) {
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
