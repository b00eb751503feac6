package leadlamp.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import leadlamp.audit.Earlier;
import leadlamp.audit.PastEvent;
import leadlamp.past.Story;
import leadlamp.record.Build;
import leadlamp.record.Where;

/** The sentences in which the past of an engine is told, the same in every form. */
final class StoryWords {
    static final String WEIGHTS = "Nothing here is proven. Two strong signs of unlike cause make an event strongly supported, one makes it"
            + " supported; a sign speaks only for its own place.";
    /** More lines of one sign than this are counted, not printed. */
    private static final int MOST_LINES = 4;

    private final Build build;
    private final Lines lines;

    StoryWords(Build build) {
        this.build = build;
        this.lines = new Lines(build);
    }

    /** What probably happened, in one sentence or two. */
    static String summary(Story story) {
        if (story.chapters().isEmpty()) {
            return story.faint().isEmpty() ? "The record shows no sign that speaks for anything that happened before. That is no word that"
                    + " nothing did: look at what can be looked at."
                    : "No strong sign stands. What there is is weak, and agrees with several stories.";
        }
        List<String> told = new ArrayList<>();
        int open = 0;
        for (Story.Chapter chapter : story.chapters()) {
            told.add(chapter.event().event() + " (" + chapter.standing().word() + ")");
            open += chapter.open().size();
        }
        return "Probably, and in this order: " + String.join("; ", told) + ". "
                + (open == 0 ? "All damage that follows was looked for, or its part renewed."
                        : open == 1 ? "One kind of damage that follows was looked for by nobody, as far as the record shows."
                                : open + " kinds of damage that follow were looked for by nobody, as far as the record shows.");
    }

    /** Where it stands in time, and why. */
    static String order(Story.Chapter chapter) {
        String life = switch (chapter.event().when()) {
            case PUT_TOGETHER -> "It belongs to how the engine was put together.";
            case KEPT -> "It belongs to how the engine was kept.";
            case FAILED -> "It belongs to what failed.";
            case FOLLOWED -> "It follows from something else; no sign recorded says from what.";
            case AFTERWARDS -> "It belongs to the time after.";
        };
        if (chapter.after().isEmpty()) {
            return life + (chapter.number() > 1 ? " Nothing recorded ties it in time to those before." : "");
        }
        List<String> before = new ArrayList<>();
        chapter.after().forEach(e -> before.add(e.event()));
        return "After: " + String.join("; ", before) + (before.size() == 1 ? ", which leads to it." : ", which lead to it.");
    }

    /** One voice as a sentence without its stop. */
    static String spoken(Story.Spoken voice) {
        return (voice.speaksFor() ? "For it, " : "Against it, ") + (voice.strong() ? "strongly: " : "weakly: ") + voice.text()
                + at(voice.at()) + (voice.idle() ? "; it speaks for its own place alone" : "");
    }

    static String at(List<String> places) {
        String together = Wording.places(places);
        return together.isEmpty() ? "" : ", at " + together;
    }

    /** What else fits, and the one look that tells. */
    static String fits(Story.Chapter chapter) {
        StringBuilder text = new StringBuilder();
        if (chapter.fits().isEmpty()) {
            text.append("No other explanation has a sign of its own here.");
        } else {
            Story.Fits first = chapter.fits().get(0);
            text.append("What else fits: ").append(first.event().event()).append(" (").append(first.standing().word())
                    .append("). The look that tells: ").append(first.tellApart()).append('.');
            for (Story.Fits other : chapter.fits().subList(1, chapter.fits().size())) {
                text.append(" Also ").append(other.event().event()).append(" (").append(other.standing().word()).append("): ")
                        .append(other.tellApart()).append('.');
            }
        }
        String explained = explained(chapter);
        return explained.isEmpty() ? text.toString() : text + " " + explained;
    }

    static String explained(Story.Chapter chapter) {
        if (chapter.explained().isEmpty()) {
            return "";
        }
        List<String> better = new ArrayList<>();
        for (PastEvent event : chapter.explained()) {
            better.add(event.event());
        }
        return "Every sign for it is explained by what stands better: " + Wording.join(better) + ".";
    }

    /** Damage that follows, and what the record shows of it. */
    String look(Earlier.Look look) {
        String text = upper(look.hidden().damage()) + ". ";
        if (look.hidden().looked().isEmpty()) {
            return text + "A record has no words for this look: " + look.hidden().look() + ".";
        }
        if (!look.done()) {
            return text + "Nobody is recorded to have looked: " + look.hidden().look() + ".";
        }
        List<Where> places = new ArrayList<>();
        look.by().keySet().forEach(f -> places.addAll(f.places()));
        return text + switch (look.how()) {
            case FOUND -> "Found";
            case LOOKED_FOR -> "Looked for";
            case RENEWED -> "The part is new";
        } + " (" + numbers(places) + ").";
    }

    static String innocent(Earlier.Innocent one) {
        return upper(one.sign().sign()) + at(List.of(one.at())) + ": " + one.because();
    }

    static String hand(Story.Hand hand) {
        String reach = "The hand that left its marks here could reach what \"" + hand.step() + "\" closes off: "
                + Wording.join(hand.joints()) + ". ";
        return hand.unseen().isEmpty() ? reach + "Each of these has its line in the record"
                : reach + "The record says nothing of " + Wording.join(hand.unseen()) + "; open, clean and measure "
                        + (hand.unseen().size() == 1 ? "it" : "them");
    }

    /** `line 12`, `lines 12 and 14`; a line of the sheet with its file. */
    String numbers(List<Where> places) {
        Set<Integer> own = new TreeSet<>();
        Set<String> other = new TreeSet<>();
        for (Where where : places) {
            if (!sheet(where)) {
                own.add(where.line());
            } else {
                other.add(fileName(where.file()) + " line " + where.line());
            }
        }
        List<String> said = new ArrayList<>();
        List<String> numbers = new ArrayList<>();
        own.forEach(n -> numbers.add(Integer.toString(n)));
        if (!numbers.isEmpty()) {
            said.add((numbers.size() == 1 ? "line " : "lines ") + Wording.join(numbers));
        }
        said.addAll(other);
        return String.join("; ", said);
    }

    /** The lines as they were written. */
    List<String> lines(List<Where> places) {
        List<String> texts = new ArrayList<>();
        Set<String> seen = new TreeSet<>();
        List<Where> ownFirst = new ArrayList<>(places);
        ownFirst.sort((a, b) -> Boolean.compare(sheet(a), sheet(b)));
        for (Where where : ownFirst) {
            String text = numbers(List.of(where)) + ": " + lines.at(where);
            if (seen.add(text)) {
                texts.add(text);
            }
        }
        if (texts.size() > MOST_LINES) {
            int more = texts.size() - MOST_LINES + 1;
            texts = new ArrayList<>(texts.subList(0, MOST_LINES - 1));
            texts.add("and " + more + " lines more");
        }
        return texts;
    }

    private boolean sheet(Where where) {
        return where.file().equals(build.sheet().file());
    }

    /** What is explained already, in one sentence. */
    static String spent(List<Story.Chapter> spent) {
        List<String> names = new ArrayList<>();
        spent.forEach(c -> names.add(c.event().event()));
        return "Every sign for these is explained by what stands better: " + String.join("; ", names) + ".";
    }

    String line(Where where) {
        return lines.at(where);
    }

    private static String fileName(String path) {
        return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
    }

    static String upper(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
