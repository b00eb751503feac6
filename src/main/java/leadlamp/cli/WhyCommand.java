package leadlamp.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.audit.Check;
import leadlamp.audit.Way;
import leadlamp.report.Plain;
import leadlamp.teach.Handbook;
import leadlamp.teach.Lesson;
import leadlamp.teach.LessonText;
import leadlamp.teach.Looks;
import leadlamp.words.Vocabulary;

/** The lesson of a check, what a word means and which checks ask about it, or the whole handbook. */
final class WhyCommand {
    private static final String ALL = "--all";
    private static final String OUT = "--out";

    private WhyCommand() {
    }

    static int run(List<String> typed, Say say) throws Complaint, IOException {
        Arguments arguments = Arguments.of(typed, Map.of(ALL, "", OUT, "a folder"));
        if (arguments.has(ALL)) {
            return handbook(arguments, say);
        }
        if (arguments.has(OUT)) {
            throw new Complaint("--out is for the whole handbook: why --all --out FOLDER.");
        }
        if (arguments.words().isEmpty()) {
            throw new Complaint("Why what? Name a check, or a word of a record, after why.");
        }
        // A word of several parts needs no quotes: why cam gear pin.
        String word = String.join(" ", arguments.words());
        Desk desk = new Desk();
        for (Check check : desk.checks()) {
            if (check.id().equals(word) || check.id().equals(word.replace(' ', '-'))) {
                say.result(LessonText.of(Lesson.of(check, desk.examples()), say.width(), say.colour()));
                return 0;
            }
        }
        Optional<Meaning> meaning = meaning(desk.words(), word);
        if (meaning.isPresent()) {
            say.result(LessonText.word(meaning.get().word, meaning.get().gloss, meaning.get().gauge,
                    asking(desk, meaning.get().word), say.width(), say.colour()));
            return 0;
        }
        throw unknown(desk, word);
    }

    private static int handbook(Arguments arguments, Say say) throws Complaint, IOException {
        if (!arguments.words().isEmpty()) {
            throw new Complaint("--all is every check; leave " + Say.quoted(arguments.words().get(0)) + " out.");
        }
        String folder = arguments.value(OUT)
                .orElseThrow(() -> new Complaint("The handbook wants a folder: name one with --out."));
        Target.of(folder + "/", 1);
        Desk desk = new Desk();
        Map<String, String> pages = Handbook.pages(Handbook.lessons(desk.examples()),
                Looks.compiled(desk.words()), desk.words());
        for (Map.Entry<String, String> page : pages.entrySet()) {
            Path file = Records.path(folder).resolve(page.getKey());
            try (OutputStream out = Target.open(file, List.of())) {
                out.write(page.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
        say.result("The handbook begins with " + Plain.of(Records.path(folder).resolve("index.html").toString()) + " ("
                + pages.size() + " pages, " + desk.checks().size() + " lessons).\n");
        return 0;
    }

    private record Meaning(String word, String gloss, String gauge) {
    }

    private static Optional<Meaning> meaning(Vocabulary words, String word) {
        return words.part(word).map(p -> new Meaning(p.name(), p.gloss(), ""))
                .or(() -> words.quantity(word).map(q -> new Meaning(q.name(), q.gloss() + (q.from().isEmpty() ? ""
                        : "; worked out from " + String.join(", ", q.from())), q.gauge().orElse(""))))
                .or(() -> words.sign(word).map(s -> new Meaning(s.name(), s.gloss(), "")))
                .or(() -> words.step(word).map(s -> new Meaning(s.name(), s.gloss(), "")))
                .or(() -> words.gauge(word).map(g -> new Meaning(g.name(), g.gloss() + "; usual doubt " + g.doubt()
                        + ", " + g.basis(), "")));
    }

    /** Checks of which a way needs or heeds something of this word. */
    private static List<Check> asking(Desk desk, String word) {
        List<Check> asking = new ArrayList<>();
        for (Check check : desk.checks()) {
            for (Way way : check.ways()) {
                if (speaks(way.needs(), word) || speaks(way.heeds(), word)) {
                    asking.add(check);
                    break;
                }
            }
        }
        return asking;
    }

    private static boolean speaks(List<String> needs, String word) {
        for (String need : needs) {
            if (Handbook.speaks(need, word)) {
                return true;
            }
        }
        return false;
    }

    private static Complaint unknown(Desk desk, String word) {
        List<String> ids = new ArrayList<>();
        for (Check check : desk.checks()) {
            ids.add(check.id());
        }
        List<String> names = new ArrayList<>();
        desk.words().parts().forEach(p -> names.add(p.name()));
        desk.words().quantities().forEach(q -> names.add(q.name()));
        desk.words().signs().forEach(s -> names.add(s.name()));
        desk.words().steps().forEach(s -> names.add(s.name()));
        Optional<String> check = Vocabulary.nearest(word.replace(' ', '-'), ids);
        String nearest = check.or(() -> Vocabulary.nearest(word, names)).map(n -> " The nearest is " + n + ".")
                .orElse("");
        return new Complaint("There is no check and no word " + Say.quoted(word) + "." + nearest
                + " `leadlamp audit` prints the name of each check that it speaks of.");
    }
}
