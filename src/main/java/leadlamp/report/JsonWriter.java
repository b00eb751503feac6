package leadlamp.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import leadlamp.rank.RiskLevel;
import leadlamp.report.ReportModel.Because;
import leadlamp.report.ReportModel.Change;
import leadlamp.report.ReportModel.ClearItem;
import leadlamp.report.ReportModel.Evidence;
import leadlamp.report.ReportModel.Finding;
import leadlamp.report.ReportModel.Heading;
import leadlamp.report.ReportModel.Item;
import leadlamp.report.ReportModel.LeftOut;
import leadlamp.report.ReportModel.Since;
import leadlamp.report.ReportModel.Tally;
import leadlamp.report.ReportModel.Worked;

/** Writes the JSON answer, in the form of the resource `schema/answer.json`. */
public final class JsonWriter {
    /** The version of the form; a field that goes or changes its meaning makes a new one. */
    static final int FORM = 1;

    private final JsonGenerator json;

    private JsonWriter(JsonGenerator json) {
        this.json = json;
    }

    /** Writes one report; the stream stays open. */
    public static void write(ReportModel model, OutputStream out) throws IOException {
        write(List.of(model), false, out);
    }

    /** Writes several reports as a list; the stream stays open. */
    public static void write(List<ReportModel> models, OutputStream out) throws IOException {
        write(models, true, out);
    }

    private static void write(List<ReportModel> models, boolean list, OutputStream out) throws IOException {
        try (JsonGenerator json = generator(out)) {
            JsonWriter writer = new JsonWriter(json);
            if (list) {
                json.writeStartArray();
            }
            for (ReportModel model : models) {
                writer.report(model);
            }
            if (list) {
                json.writeEndArray();
            }
            json.writeRaw('\n');
        }
    }

    /** The same bytes on every machine: the ends of the lines are our own. */
    static JsonGenerator generator(OutputStream out) throws IOException {
        JsonGenerator json = new JsonFactory().createGenerator(out);
        json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
        json.setCharacterEscapes(new Escapes());
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
        return json;
    }

    /** Besides what the form wants, all that would steer a terminal is written by its number. */
    private static final class Escapes extends CharacterEscapes {
        private static final long serialVersionUID = 1;
        private final int[] ascii = standardAsciiEscapesForJSON();

        Escapes() {
            ascii[0x7F] = ESCAPE_STANDARD;
        }

        @Override
        public int[] getEscapeCodesForAscii() {
            return ascii;
        }

        @Override
        public SerializableString getEscapeSequence(int character) {
            return Plain.steers((char) character) ? new SerializedString(Plain.number((char) character)) : null;
        }
    }

    private void report(ReportModel model) throws IOException {
        json.writeStartObject();
        json.writeNumberField("form", FORM);
        heading(model.heading());
        json.writeObjectFieldStart("standing");
        json.writeStringField("sentence", model.standing().sentence());
        json.writeEndObject();
        tally(model.tally());
        findings("findings", model.findings());
        findings("accepted", model.lived());
        if (model.since().isPresent()) {
            since(model.since().get());
        }
        json.writeArrayFieldStart("answers");
        for (List<Item> list : List.of(model.found(), model.accepted(), model.open(), model.later())) {
            boolean later = list == model.later();
            for (Item item : list) {
                answer(item, later);
            }
        }
        for (ClearItem item : model.clear()) {
            clear(item);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("problems");
        for (LeftOut leftOut : model.leftOut()) {
            json.writeStartObject();
            json.writeStringField("file", leftOut.where().file());
            json.writeNumberField("line", leftOut.where().line());
            json.writeNumberField("column", leftOut.where().column());
            json.writeStringField("message", leftOut.message());
            json.writeEndObject();
        }
        json.writeEndArray();
        strings("remarks", model.remarks());
        json.writeArrayFieldStart("values");
        for (Worked worked : model.worked()) {
            worked(worked);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void heading(Heading heading) throws IOException {
        json.writeObjectFieldStart("record");
        json.writeStringField("name", heading.name());
        json.writeStringField("file", heading.file());
        json.writeStringField("sha256", heading.bytes().hex());
        json.writeStringField("engine", heading.sheet());
        json.writeStringField("sheet", heading.sheetFile());
        strings("stage", heading.stage());
        strings("next", heading.next());
        json.writeEndObject();
    }

    private void tally(Tally tally) throws IOException {
        json.writeObjectFieldStart("tally");
        json.writeNumberField("found", tally.found());
        json.writeNumberField("high", tally.high());
        json.writeNumberField("serious", tally.serious());
        json.writeNumberField("medium", tally.medium());
        json.writeNumberField("low", tally.low());
        json.writeNumberField("person", tally.person());
        json.writeNumberField("accepted", tally.accepted());
        json.writeNumberField("cannotTell", tally.open());
        json.writeNumberField("dueLater", tally.later());
        json.writeNumberField("clear", tally.clear());
        json.writeNumberField("leftOut", tally.leftOut());
        json.writeEndObject();
    }

    /** What is found alike at several places, as it is told: once. */
    private void findings(String name, List<Finding> findings) throws IOException {
        json.writeArrayFieldStart(name);
        for (Finding finding : findings) {
            json.writeStartObject();
            json.writeStringField("check", finding.lead().check());
            optional("risk", finding.lead().risk().map(RiskLevel::word));
            optional("certainty", finding.lead().certainty());
            json.writeBooleanField("person", finding.lead().person());
            json.writeStringField("places", finding.places());
            strings("at", finding.items().stream().map(Item::at).toList());
            strings("texts", finding.texts());
            json.writeStringField("do", finding.lead().todo());
            json.writeStringField("byWhen", finding.lead().byWhen());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void since(Since since) throws IOException {
        json.writeObjectFieldStart("since");
        json.writeStringField("file", since.file());
        json.writeStringField("sha256", since.bytes());
        json.writeStringField("sentence", since.sentence());
        changes("new", since.fresh());
        changes("worse", since.worse());
        changes("settled", since.settled());
        json.writeEndObject();
    }

    private void changes(String name, List<Change> changes) throws IOException {
        json.writeArrayFieldStart(name);
        for (Change change : changes) {
            json.writeStartObject();
            json.writeStringField("check", change.check());
            if (!change.of().isEmpty()) {
                json.writeStringField("of", change.of());
            }
            json.writeStringField("at", change.at());
            json.writeStringField("was", change.was());
            json.writeStringField("is", change.now());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void answer(Item item, boolean later) throws IOException {
        json.writeStartObject();
        begin(item.check(), item.topic(), item.of(), item.at(), item.outcome());
        strings("ways", item.ways());
        optional("risk", item.risk().map(RiskLevel::word));
        optional("certainty", item.certainty());
        json.writeBooleanField("person", item.person());
        optional("lastChance", item.lastChance());
        json.writeStringField("text", item.text());
        evidence(item.evidence());
        if (item.accepted().isPresent()) {
            ReportModel.Acceptance accepted = item.accepted().get();
            json.writeObjectFieldStart("accepted");
            json.writeStringField("reason", accepted.reason());
            json.writeStringField("who", accepted.who());
            json.writeStringField("until", accepted.until());
            json.writeNumberField("line", accepted.where().line());
            json.writeEndObject();
        }
        if (!item.because().isEmpty()) {
            because(item.because());
        }
        if (later) {
            json.writeBooleanField("dueLater", true);
        }
        json.writeEndObject();
    }

    private void clear(ClearItem item) throws IOException {
        json.writeStartObject();
        begin(item.check(), item.topic(), item.of(), item.at(), ReportModel.Outcome.CLEAR);
        strings("ways", List.of());
        json.writeNullField("risk");
        json.writeNullField("certainty");
        json.writeBooleanField("person", item.person());
        optional("lastChance", item.lastChance());
        json.writeStringField("text", item.text());
        evidence(item.evidence());
        json.writeEndObject();
    }

    private void begin(String check, String topic, String of, String at, ReportModel.Outcome outcome)
            throws IOException {
        json.writeStringField("check", check);
        json.writeStringField("topic", topic);
        if (!of.isEmpty()) {
            json.writeStringField("of", of);
        }
        json.writeStringField("at", at);
        json.writeStringField("outcome", outcome.word());
    }

    private void because(List<Because> gaps) throws IOException {
        json.writeArrayFieldStart("because");
        for (Because gap : gaps) {
            json.writeStartObject();
            json.writeStringField("why", gap.why());
            json.writeStringField("need", gap.need());
            strings("at", gap.places());
            strings("readings", gap.readings());
            if (gap.outside().isPresent()) {
                json.writeFieldName("outside");
                json.writeNumber(Amounts.number(gap.outside().getAsDouble(), 3));
            }
            if (!gap.way().isEmpty()) {
                json.writeStringField("way", gap.way());
            }
            json.writeStringField("text", gap.text());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void evidence(List<Evidence> evidence) throws IOException {
        json.writeArrayFieldStart("evidence");
        for (Evidence line : evidence) {
            json.writeStartObject();
            json.writeStringField("file", line.where().file());
            json.writeNumberField("line", line.where().line());
            json.writeNumberField("column", line.where().column());
            json.writeStringField("says", line.says());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void worked(Worked worked) throws IOException {
        json.writeStartObject();
        json.writeStringField("of", worked.of());
        json.writeStringField("at", worked.at());
        json.writeStringField("text", worked.text());
        number("low", worked.low());
        number("high", worked.high());
        number("doubt", worked.doubt());
        json.writeStringField("unit", worked.unit());
        json.writeStringField("sum", worked.sum());
        if (!worked.verdict().isEmpty()) {
            json.writeStringField("verdict", worked.verdict());
            json.writeObjectFieldStart("limit");
            number("least", worked.least());
            number("most", worked.most());
            json.writeStringField("whose", worked.whose());
            json.writeStringField("basis", worked.basis());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void number(String name, String figure) throws IOException {
        if (!figure.isEmpty()) {
            json.writeFieldName(name);
            json.writeNumber(figure);
        }
    }

    private void optional(String name, Optional<String> text) throws IOException {
        if (text.isPresent()) {
            json.writeStringField(name, text.get());
        } else {
            json.writeNullField(name);
        }
    }

    private void strings(String name, List<String> texts) throws IOException {
        json.writeArrayFieldStart(name);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }
}
