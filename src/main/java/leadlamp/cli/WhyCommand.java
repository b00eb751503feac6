package leadlamp.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.audit.Check;
import leadlamp.audit.Way;
import leadlamp.report.LessonWriter;
import leadlamp.words.Vocabulary;

/** The page of a check, or what a word means and which checks ask about it. */
final class WhyCommand {
    private WhyCommand() {
    }

    static int run(List<String> typed, Say say) throws Complaint, IOException {
        Arguments arguments = Arguments.of(typed, Map.of());
        if (arguments.words().isEmpty()) {
            throw new Complaint("Why what? Name a check, or a word of a record, after why.");
        }
        // A word of several parts needs no quotes: why cam gear pin.
        String word = String.join(" ", arguments.words());
        Desk desk = new Desk();
        for (Check check : desk.checks()) {
            if (check.id().equals(word) || check.id().equals(word.replace(' ', '-'))) {
                say.result(LessonWriter.page(check, say.width(), say.colour()));
                return 0;
            }
        }
        Optional<Meaning> meaning = meaning(desk.words(), word);
        if (meaning.isPresent()) {
            say.result(LessonWriter.word(meaning.get().word, meaning.get().gloss, asking(desk, meaning.get().word),
                    say.width(), say.colour()));
            return 0;
        }
        throw unknown(desk, word);
    }

    private record Meaning(String word, String gloss) {
    }

    private static Optional<Meaning> meaning(Vocabulary words, String word) {
        return words.part(word).map(p -> new Meaning(p.name(), p.gloss()))
                .or(() -> words.quantity(word).map(q -> new Meaning(q.name(), q.gloss())))
                .or(() -> words.sign(word).map(s -> new Meaning(s.name(), s.gloss())))
                .or(() -> words.step(word).map(s -> new Meaning(s.name(), s.gloss())))
                .or(() -> words.gauge(word).map(g -> new Meaning(g.name(), g.gloss() + "; usual doubt " + g.doubt()
                        + ", " + g.basis())));
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
            if ((" " + need + " ").contains(" " + word + " ")) {
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
