package leadlamp.teach;

import java.util.List;
import java.util.Map;
import leadlamp.audit.Auditor;
import leadlamp.audit.Casebook;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;

/** The lessons of some topics, with every kind of lesson among them, worked once for all tests: all of them take a minute. */
public final class SomeLessons {
    private static final Vocabulary WORDS = Words.compiled();
    private static final Auditor AUDITOR = Auditor.compiled();
    private static final Examples EXAMPLES = new Examples(WORDS, AUDITOR, Casebook.compiled());
    static final List<Lesson> LESSONS = AUDITOR.checks().stream().filter(c -> List.of("fasteners", "clutch", "record")
            .contains(c.topic())).map(c -> Lesson.of(c, EXAMPLES)).toList();
    /** The handbook of these lessons, by the name of the file. */
    public static final Map<String, String> PAGES = Handbook.pages(LESSONS, Looks.compiled(WORDS), WORDS);

    private SomeLessons() {
    }
}
