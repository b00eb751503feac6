package leadlamp.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A YAML file as a tree that knows its places. Every scalar stays the text that was written, and nothing is spent on what it might be
 * a number of. What a bench record never needs is refused: aliases, tags, repeated keys, more than one document, deep nesting, files
 * too large to be a record.
 */
public final class Yaml {
    /** A record that a person writes is a thousandth of this. */
    static final int MOST_BYTES = 4 * 1024 * 1024;
    static final int DEEPEST = 24;

    private Yaml() {
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
        CharBuffer chars;
        try {
            chars = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
        } catch (CharacterCodingException other) {
            return refused(name, "\"" + name + "\" is not text in UTF-8.",
                    "Save it as plain text with the encoding UTF-8.");
        }
        return withBytes(text(chars.toString(), chars.array(), name), Fingerprint.of(bytes));
    }

    /** Reads a text as if it were a file of this name. */
    public static File text(String text, String name) {
        return text(text, text.toCharArray(), name);
    }

    /** Reads a text, given also as its characters, which are quicker to step through. */
    private static File text(String text, char[] chars, String name) {
        if (text.startsWith("\uFEFF")) {
            text = text.substring(1);
            chars = text.toCharArray();
        }
        Optional<File> plain = PlainYaml.read(text, chars, name);
        return plain.isPresent() ? plain.get() : inFull(text, name);
    }

    /** What takes more than the quick way, or has to be told what is wrong with it. */
    static File inFull(String text, String name) {
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
        return FullYaml.read(text, name);
    }

    private static File withBytes(File file, Fingerprint bytes) {
        return new File(file.tree(), file.problems(), file.lines(), bytes);
    }

    static File refused(String name, String what, String expected) {
        return new File(Optional.empty(), List.of(new Problem(new Where(name, 0, 0), 0, "", what, expected,
                Optional.empty(), "")), List.of(), Fingerprint.NONE);
    }
}
