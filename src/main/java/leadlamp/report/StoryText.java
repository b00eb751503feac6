package leadlamp.report;

import java.util.List;
import leadlamp.audit.Earlier;
import leadlamp.past.Story;
import leadlamp.record.Build;
import leadlamp.record.Where;

/** Writes the past of an engine as text for a terminal. */
public final class StoryText {
    private final Sheet out;
    private final Build build;
    private final StoryWords words;

    private StoryText(Build build, int width, boolean colour) {
        this.out = new Sheet(width, colour);
        this.build = build;
        this.words = new StoryWords(build);
    }

    /**
     * The whole story.
     *
     * @param steps whether to print each step of the reasoning
     */
    public static String of(Story story, Build build, boolean steps, int width, boolean colour) {
        StoryText text = new StoryText(build, width, colour);
        text.write(story, steps);
        return text.out.toString();
    }

    private void write(Story story, boolean steps) {
        out.strong("The past of " + build.name());
        out.wrap("", 0, build.sheet().name() + "; record " + build.file() + ".");
        out.blank();
        out.wrap("", 0, StoryWords.summary(story));
        out.wrap("", 0, StoryWords.WEIGHTS);
        if (!story.chapters().isEmpty()) {
            out.title("What probably happened, earliest first");
            story.chapters().forEach(this::chapter);
        }
        brief("Only weakly supported: weak signs alone, however many, make no event likely", story.faint());
        if (!story.spent().isEmpty()) {
            if (story.faint().isEmpty()) {
                out.title("Only weakly supported");
            }
            out.wrap("  ", 2, StoryWords.spent(story.spent()));
        }
        brief("Spoken against", story.against());
        brief("Said in the engine's favour, held against the signs", story.claims());
        hands(story);
        if (!story.innocent().isEmpty()) {
            out.title("Not held against the engine");
            for (Earlier.Innocent one : story.innocent()) {
                out.wrap("  - ", 4, StoryWords.innocent(one) + ".");
                lines(one.places());
            }
        }
        if (steps) {
            out.title("Step by step");
            for (Earlier.Step step : story.steps()) {
                out.wrap("  - ", 4, step.rule() + StoryWords.at(List.of(step.at())) + " (" + words.numbers(step.places()) + ")");
            }
        }
    }

    private void chapter(Story.Chapter chapter) {
        String number = chapter.number() + ". ";
        out.blank();
        out.wrap(number, number.length(), StoryWords.upper(chapter.event().event()) + ": " + chapter.standing().word() + ".");
        out.wrap("   ", 3, StoryWords.order(chapter));
        voices(chapter);
        String fits = StoryWords.fits(chapter);
        if (!fits.isEmpty()) {
            out.wrap("   ", 3, fits);
        }
        out.wrap("   ", 3, "Damage that follows:");
        for (Earlier.Look look : chapter.looks()) {
            out.wrap(look.done() ? "   [x] " : "   [ ] ", 7, words.look(look));
        }
        rest("   It would be spoken against by: ", chapter.event().contradicted());
        rest("   Also look at: ", chapter.event().alsoCheck());
        rest("   Renew: ", chapter.event().renew());
    }

    private void rest(String label, List<String> what) {
        if (!what.isEmpty()) {
            out.wrap("   ", 3, label.strip() + " " + String.join("; ", what) + ".");
        }
    }

    private void voices(Story.Chapter chapter) {
        for (Story.Spoken voice : chapter.voices()) {
            out.wrap("   " + (voice.speaksFor() ? "+ " : "- "), 5, StoryWords.spoken(voice) + ".");
            lines(voice.places());
        }
    }

    private void lines(List<Where> places) {
        for (String line : words.lines(places)) {
            out.wrap("       ", 9, line);
        }
    }

    private void brief(String title, List<Story.Chapter> chapters) {
        if (chapters.isEmpty()) {
            return;
        }
        out.title(title);
        for (Story.Chapter chapter : chapters) {
            out.wrap("  - ", 4, StoryWords.upper(chapter.event().event()) + (chapter.event().claim() ? ": " + chapter.standing().word() : "")
                    + ".");
            for (Story.Spoken voice : chapter.voices()) {
                out.wrap("    " + (voice.speaksFor() ? "+ " : "- "), 6, StoryWords.spoken(voice) + " (" + words.numbers(voice.places())
                        + ").");
            }
            String fits = StoryWords.explained(chapter);
            if (!fits.isEmpty()) {
                out.wrap("    ", 4, fits);
            }
        }
    }

    private void hands(Story story) {
        if (story.hands().isEmpty()) {
            return;
        }
        out.title("What the earlier hand's work implies");
        for (Story.Hand hand : story.hands()) {
            out.wrap("  - ", 4, StoryWords.hand(hand) + " (" + words.numbers(hand.places()) + ").");
        }
    }
}
