package leadlamp.words;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;

/** Where the vocabulary comes from: its folder, when the rules are compiled; its compiled form, ever after. */
public final class Words {
    /** The compiled form on the class path. */
    public static final String RESOURCE = "/leadlamp/vocabulary.bin";

    private Words() {
    }

    /**
     * The vocabulary of a folder of YAML files.
     *
     * @throws VocabularyException if the files do not hold together
     */
    public static Vocabulary ofFolder(Path folder) throws IOException {
        return new Lexicon(Folder.read(folder).bytes());
    }

    /** The vocabulary as compiled into the program. What is in it is decoded when it is asked for. */
    public static Vocabulary compiled() {
        return Compiled.WORDS;
    }

    /** Writes the compiled form of a vocabulary. */
    public static void compile(Vocabulary words, OutputStream out) throws IOException {
        if (!(words instanceof Lexicon lexicon)) {
            throw new IllegalArgumentException("only a vocabulary that was read from its folder can be compiled");
        }
        out.write(lexicon.bytes());
    }

    private static final class Compiled {
        private static final Vocabulary WORDS = load();

        private static Vocabulary load() {
            return new Lexicon(Carried.bytes(RESOURCE));
        }
    }
}
