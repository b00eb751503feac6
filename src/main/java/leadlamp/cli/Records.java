package leadlamp.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Finds the records that were named: files as they are, and of a folder every record that lies in it. */
final class Records {
    /** The first word of an engine sheet, which is no record. */
    private static final String SHEET = "sheet:";
    /** A sheet says that it is one near its top; no more is looked at. */
    private static final int TOP = 8192;

    private Records() {
    }

    static List<Path> named(List<String> words) throws Complaint {
        List<Path> records = new ArrayList<>();
        for (String word : words) {
            Path path = path(word);
            if (Files.isDirectory(path)) {
                records.addAll(inside(path, word));
            } else {
                records.add(path);
            }
        }
        return records;
    }

    static Path path(String word) throws Complaint {
        try {
            return Path.of(word);
        } catch (InvalidPathException odd) {
            throw new Complaint(Say.quoted(word) + " cannot be the name of a file.");
        }
    }

    private static List<Path> inside(Path folder, String word) throws Complaint {
        List<Path> records = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                String name = file.getFileName().toString();
                if ((name.endsWith(".yaml") || name.endsWith(".yml")) && Files.isRegularFile(file) && !sheet(file)) {
                    records.add(file);
                }
            }
        } catch (IOException broken) {
            throw new Complaint("The folder " + Say.quoted(word) + " cannot be looked into.");
        }
        if (records.isEmpty()) {
            throw new Complaint("The folder " + Say.quoted(word) + " holds no record: no file that ends in .yaml and is"
                    + " no engine sheet.");
        }
        records.sort((one, other) -> one.getFileName().toString().compareTo(other.getFileName().toString()));
        return records;
    }

    /** A file that cannot be read is taken for a record, so that it is told about and not passed over. */
    static boolean sheet(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            String top = new String(in.readNBytes(TOP), StandardCharsets.ISO_8859_1);
            return top.startsWith(SHEET) || top.contains("\n" + SHEET);
        } catch (IOException unreadable) {
            return false;
        }
    }
}
