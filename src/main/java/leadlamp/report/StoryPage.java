package leadlamp.report;

import java.util.List;
import leadlamp.audit.Earlier;
import leadlamp.past.Story;
import leadlamp.record.Build;

/** Writes the past of an engine as one page that needs nothing beside it and prints. */
public final class StoryPage {
    private final Page page = new Page();
    private final StoryWords words;

    private StoryPage(Build build) {
        this.words = new StoryWords(build);
    }

    /** The whole page. */
    public static String of(Story story, Build build) {
        return new StoryPage(build).write(story, build);
    }

    private String write(Story story, Build build) {
        page.begin("The past of " + build.name(), "The past, as the signs tell it", build.name());
        page.element("<p class=\"facts\">", build.sheet().name() + "; record " + build.file(), "</p>");
        page.raw("</header>\n<main id=\"main\">\n");
        page.element("<p class=\"standing\">", StoryWords.summary(story), "</p>");
        page.element("<p>", StoryWords.WEIGHTS, "</p>");
        if (!story.chapters().isEmpty()) {
            page.raw("<div class=\"graph\">").picture(StoryPicture.of(story)).raw("</div>\n");
            page.element("<p class=\"soft\">", "Left: signs, a thick line for a strong one, a thin one for a weak one, dashes for one that"
                    + " speaks against. Middle: events, earliest at the top, an arrow from what leads to what. Right: damage that nobody"
                    + " is recorded to have looked for.", "</p>");
            page.raw("<h2>What probably happened, earliest first</h2>\n");
            story.chapters().forEach(this::chapter);
        }
        brief("Only weakly supported", "Weak signs alone, however many, make no event likely.", story.faint());
        if (!story.spent().isEmpty()) {
            page.element("<p>", StoryWords.spent(story.spent()), "</p>");
        }
        brief("Spoken against", "", story.against());
        brief("Said in the engine's favour, held against the signs", "", story.claims());
        if (!story.hands().isEmpty()) {
            page.raw("<h2>What the earlier hand&#39;s work implies</h2>\n<ul>\n");
            for (Story.Hand hand : story.hands()) {
                page.element("<li>", StoryWords.hand(hand) + " (" + words.numbers(hand.places()) + ").", "</li>");
            }
            page.raw("</ul>\n");
        }
        if (!story.innocent().isEmpty()) {
            page.raw("<h2>Not held against the engine</h2>\n<ul>\n");
            for (Earlier.Innocent one : story.innocent()) {
                page.element("<li>", StoryWords.innocent(one) + " (" + words.numbers(one.places()) + ").", "</li>");
            }
            page.raw("</ul>\n");
        }
        page.raw("<h2>Step by step</h2>\n<details class=\"list\"><summary>").text(story.steps().size() + " steps of the reasoning, each"
                + " with its lines").raw("</summary>\n<div class=\"inside\"><ol>\n");
        for (Earlier.Step step : story.steps()) {
            page.element("<li>", step.rule() + StoryWords.at(List.of(step.at())) + " (" + words.numbers(step.places()) + ")", "</li>");
        }
        page.raw("</ol></div></details>\n");
        return page.end(build.file(), build.bytes().hex()).toString();
    }

    private void chapter(Story.Chapter chapter) {
        page.raw("<h3 id=\"").text(chapter.event().id()).raw("\">").text(chapter.number() + ". "
                + StoryWords.upper(chapter.event().event()) + ": ").raw("<span class=\"level\">").text(chapter.standing().word())
                .raw("</span></h3>\n");
        page.element("<p>", StoryWords.order(chapter), "</p>");
        page.raw("<ul>\n");
        for (Story.Spoken voice : chapter.voices()) {
            page.raw("<li>").text(StoryWords.spoken(voice) + ".").raw("<br>");
            boolean first = true;
            for (String line : words.lines(voice.places())) {
                page.raw(first ? "<code>" : "<br><code>").text(line).raw("</code>");
                first = false;
            }
            page.raw("</li>\n");
        }
        page.raw("</ul>\n");
        page.element("<p>", StoryWords.fits(chapter), "</p>");
        page.raw("<p>Damage that follows:</p>\n<ul class=\"looks\">\n");
        for (Earlier.Look look : chapter.looks()) {
            page.raw("<li>").text((look.done() ? "\u2611 " : "\u2610 ") + words.look(look)).raw("</li>\n");
        }
        page.raw("</ul>\n");
        rest("It would be spoken against by: ", chapter.event().contradicted());
        rest("Also look at: ", chapter.event().alsoCheck());
        rest("Renew: ", chapter.event().renew());
    }

    private void rest(String label, List<String> what) {
        if (!what.isEmpty()) {
            page.element("<p>", label + String.join("; ", what) + ".", "</p>");
        }
    }

    private void brief(String title, String under, List<Story.Chapter> chapters) {
        if (chapters.isEmpty()) {
            return;
        }
        page.element("<h2>", title, "</h2>").element("<p>", under, "</p>").raw("<ul>\n");
        for (Story.Chapter chapter : chapters) {
            page.raw("<li>").text(StoryWords.upper(chapter.event().event())
                    + (chapter.event().claim() ? ": " + chapter.standing().word() : "") + ".").raw("\n<ul>\n");
            for (Story.Spoken voice : chapter.voices()) {
                page.element("<li>", StoryWords.spoken(voice) + " (" + words.numbers(voice.places()) + ").", "</li>");
            }
            page.raw("</ul>\n").text(StoryWords.explained(chapter)).raw("</li>\n");
        }
        page.raw("</ul>\n");
    }
}
