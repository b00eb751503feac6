package leadlamp.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import leadlamp.audit.Earlier;
import leadlamp.audit.PastEvent;
import leadlamp.facts.Fact;
import leadlamp.past.Story;
import leadlamp.record.Build;
import leadlamp.record.Where;

/** Writes the past of an engine as JSON, each step of the reasoning with it, in the form of the resource `schema/past.json`. */
public final class StoryJson {
    private static final int FORM = 1;

    private final JsonGenerator json;
    private final StoryWords words;

    private StoryJson(JsonGenerator json, Build build) {
        this.json = json;
        this.words = new StoryWords(build);
    }

    /** Writes it; the stream stays open. */
    public static void write(Story story, Build build, OutputStream out) throws IOException {
        try (JsonGenerator json = JsonWriter.generator(out)) {
            new StoryJson(json, build).write(story, build);
            json.writeRaw('\n');
        }
    }

    private void write(Story story, Build build) throws IOException {
        json.writeStartObject();
        json.writeNumberField("form", FORM);
        json.writeObjectFieldStart("record");
        json.writeStringField("name", build.name());
        json.writeStringField("file", build.file());
        json.writeStringField("sha256", build.bytes().hex());
        json.writeStringField("engine", build.sheet().name());
        json.writeEndObject();
        json.writeStringField("summary", StoryWords.summary(story));
        chapters("events", story.chapters());
        chapters("weaklySupported", story.faint());
        chapters("explainedByBetter", story.spent());
        chapters("spokenAgainst", story.against());
        chapters("claims", story.claims());
        json.writeArrayFieldStart("earlierHand");
        for (Story.Hand hand : story.hands()) {
            json.writeStartObject();
            json.writeStringField("closedBy", hand.step());
            strings("joints", hand.joints());
            strings("nothingRecorded", hand.unseen());
            where(hand.places());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("innocent");
        for (Earlier.Innocent one : story.innocent()) {
            json.writeStartObject();
            json.writeStringField("sign", one.sign().id());
            json.writeStringField("at", one.at());
            json.writeStringField("because", one.because());
            where(one.places());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("steps");
        for (Earlier.Step step : story.steps()) {
            json.writeStartObject();
            json.writeStringField("rule", step.rule());
            json.writeStringField("at", step.at());
            where(step.places());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void chapters(String name, List<Story.Chapter> chapters) throws IOException {
        json.writeArrayFieldStart(name);
        for (Story.Chapter chapter : chapters) {
            json.writeStartObject();
            json.writeStringField("event", chapter.event().id());
            json.writeStringField("text", chapter.event().event());
            json.writeStringField("standing", chapter.standing().word());
            json.writeStringField("severity", chapter.event().severity().word());
            json.writeArrayFieldStart("after");
            for (PastEvent before : chapter.after()) {
                json.writeString(before.id());
            }
            json.writeEndArray();
            json.writeArrayFieldStart("signs");
            for (Story.Spoken voice : chapter.voices()) {
                json.writeStartObject();
                json.writeStringField("sign", voice.sign().isEmpty() ? "told" : voice.sign().get(0).id());
                json.writeStringField("speaks", voice.speaksFor() ? "for" : "against");
                json.writeStringField("weight", voice.strong() ? "strong" : "weak");
                json.writeStringField("text", voice.text());
                strings("at", voice.at());
                if (!voice.told().isEmpty()) {
                    json.writeStringField("told", voice.told());
                }
                where(voice.places());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("otherwise");
            for (Story.Fits fits : chapter.fits()) {
                json.writeStartObject();
                json.writeStringField("event", fits.event().id());
                json.writeStringField("standing", fits.standing().word());
                json.writeStringField("tellApart", fits.tellApart());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("damage");
            for (Earlier.Look look : chapter.looks()) {
                json.writeStartObject();
                json.writeStringField("damage", look.hidden().damage());
                json.writeStringField("look", look.hidden().look());
                json.writeStringField("recorded", look.hidden().looked().isEmpty() ? "no words for it"
                        : !look.done() ? "nothing" : switch (look.how()) {
                            case FOUND -> "found";
                            case LOOKED_FOR -> "looked for";
                            case RENEWED -> "part renewed";
                        });
                json.writeArrayFieldStart("evidence");
                for (Fact fact : look.by().keySet()) {
                    for (Where where : fact.places()) {
                        place(where);
                    }
                }
                json.writeEndArray();
                json.writeEndObject();
            }
            json.writeEndArray();
            strings("alsoCheck", chapter.event().alsoCheck());
            strings("renew", chapter.event().renew());
            json.writeStringField("basis", chapter.event().basis());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void strings(String name, List<String> all) throws IOException {
        json.writeArrayFieldStart(name);
        for (String one : all) {
            json.writeString(one);
        }
        json.writeEndArray();
    }

    private void where(List<Where> places) throws IOException {
        json.writeArrayFieldStart("evidence");
        for (Where where : places) {
            place(where);
        }
        json.writeEndArray();
    }

    private void place(Where where) throws IOException {
        json.writeStartObject();
        json.writeStringField("file", where.file());
        json.writeNumberField("line", where.line());
        json.writeNumberField("column", where.column());
        json.writeStringField("text", words.line(where));
        json.writeEndObject();
    }
}
