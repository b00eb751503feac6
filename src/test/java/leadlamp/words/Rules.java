package leadlamp.words;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** The vocabulary of the rules folder, read once for all tests. */
final class Rules {
    static final Vocabulary WORDS = read();

    private Rules() {
    }

    private static Vocabulary read() {
        try {
            return Words.ofFolder(Path.of("rules/vocabulary"));
        } catch (IOException none) {
            throw new UncheckedIOException(none);
        }
    }
}
