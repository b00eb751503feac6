package leadlamp.guards;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Files as text. */
final class Files {
    private Files() {
    }

    static String text(Path file) {
        try {
            return java.nio.file.Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** All files below a folder with this ending, by name. */
    static List<Path> below(Path folder, String ending) {
        try (Stream<Path> all = java.nio.file.Files.walk(folder)) {
            return all.filter(p -> p.toString().endsWith(ending)).sorted().toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
