package leadlamp.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Where reports are written to. */
final class Target {
    private final Path out;
    private final boolean folder;
    private final Set<String> taken = new TreeSet<>();

    private Target(Path out, boolean folder) {
        this.out = out;
        this.folder = folder;
    }

    /** The file or folder of `--out`; several records want a folder, which is made where there is none. */
    static Target of(String word, int records) throws Complaint {
        Path out = Records.path(word);
        boolean folder = Files.isDirectory(out) || word.endsWith("/") || records > 1;
        if (folder) {
            try {
                Files.createDirectories(out);
            } catch (IOException refused) {
                throw new Complaint(Files.exists(out) ? Say.quoted(word) + " is a file; several reports want a folder."
                        : "The folder " + Say.quoted(word) + " cannot be made.");
            }
        }
        return new Target(out, folder);
    }

    /** The file for this record; two records of one name get two files. */
    Path file(Path record, Form form) {
        if (!folder) {
            return out;
        }
        String name = record.getFileName().toString();
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        String file = stem + form.ending();
        for (int i = 2; !taken.add(file); i++) {
            file = stem + "-" + i + form.ending();
        }
        return out.resolve(file);
    }

    /** Opens a file to write; never one of the records. */
    static OutputStream open(Path file, List<Path> records) throws Complaint {
        try {
            for (Path record : records) {
                if (Files.exists(file) && Files.exists(record) && Files.isSameFile(file, record)) {
                    throw new Complaint(Say.quoted(file.toString()) + " is a record; a report is never written over it.");
                }
            }
            return new BufferedOutputStream(Files.newOutputStream(file));
        } catch (IOException refused) {
            throw new Complaint(Say.quoted(file.toString()) + " cannot be written"
                    + (Files.isDirectory(file) ? ": it is a folder." : file.toAbsolutePath().getParent() != null
                            && !Files.exists(file.toAbsolutePath().getParent()) ? ": its folder is not there." : "."));
        }
    }
}
