package leadlamp.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadlamp.audit.Earlier;
import leadlamp.past.Story;
import leadlamp.report.draw.Graph;

/** What the drawing of an engine's past shows: signs, events, and the damage that nobody looked for. */
final class StoryPicture {
    private static final int MOST_DAMAGE = 3;

    private StoryPicture() {
    }

    static Graph of(Story story) {
        Map<String, Integer> signs = new LinkedHashMap<>();
        List<String> signTexts = new ArrayList<>();
        List<String> events = new ArrayList<>();
        List<String> damage = new ArrayList<>();
        List<Graph.Edge> fromSigns = new ArrayList<>();
        List<Graph.Edge> between = new ArrayList<>();
        List<Graph.Edge> toDamage = new ArrayList<>();
        List<String> said = new ArrayList<>();
        Map<String, Integer> numbers = new LinkedHashMap<>();
        for (Story.Chapter chapter : story.chapters()) {
            int event = events.size();
            numbers.put(chapter.event().id(), event);
            events.add(chapter.number() + ". " + chapter.event().event() + " (" + chapter.standing().word() + ")");
            for (Story.Spoken voice : chapter.voices()) {
                String text = voice.text() + StoryWords.at(voice.at());
                Integer sign = signs.get(text);
                if (sign == null) {
                    sign = signTexts.size();
                    signs.put(text, sign);
                    signTexts.add(text);
                }
                fromSigns.add(new Graph.Edge(sign, event, !voice.speaksFor() ? Graph.Line.AGAINST
                        : voice.strong() ? Graph.Line.STRONG : Graph.Line.WEAK));
                said.add(text + " speaks " + (voice.strong() ? "strongly " : "weakly ") + (voice.speaksFor() ? "for " : "against ")
                        + chapter.event().event());
            }
            chapter.after().forEach(before -> {
                between.add(new Graph.Edge(numbers.get(before.id()), event, Graph.Line.STRONG));
                said.add(before.event() + " came before " + chapter.event().event());
            });
            List<Earlier.Look> open = chapter.open();
            for (int i = 0; i < Math.min(MOST_DAMAGE, open.size()); i++) {
                boolean rest = i == MOST_DAMAGE - 1 && open.size() > MOST_DAMAGE;
                toDamage.add(new Graph.Edge(event, damage.size(), Graph.Line.WEAK));
                damage.add(rest ? "and " + (open.size() - i) + " kinds of damage more" : open.get(i).hidden().damage());
                said.add("after " + chapter.event().event() + ", look for " + (rest ? (open.size() - i) + " kinds of damage more"
                        : open.get(i).hidden().damage()));
            }
        }
        return new Graph("Signs, events and what follows", String.join(". ", said) + ".", signTexts, events, damage, fromSigns,
                between, toDamage);
    }
}
