package leadlamp.words;

/** The vocabulary does not hold together: a fault of the files under rules/vocabulary, found when they are compiled. */
public final class VocabularyException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    VocabularyException(String file, String fault) {
        super("rules/vocabulary/" + file + ": " + fault + ".");
    }
}
