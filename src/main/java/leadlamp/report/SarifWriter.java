package leadlamp.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.rank.RiskLevel;
import leadlamp.report.ReportModel.ClearItem;
import leadlamp.report.ReportModel.Evidence;
import leadlamp.report.ReportModel.Item;
import leadlamp.report.ReportModel.LeftOut;
import leadlamp.record.Where;

/**
 * Writes SARIF 2.1.0, small. Outcomes become kinds: found is `fail`, clear is `pass`, cannot tell is `open`, due later
 * `notApplicable`; what is accepted is a `fail` with a suppression. One run a record.
 */
public final class SarifWriter {
    private static final String SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/"
            + "sarif-schema-2.1.0.json";

    private final JsonGenerator json;
    private final String version;

    private SarifWriter(JsonGenerator json, String version) {
        this.json = json;
        this.version = version;
    }

    /** Writes one log, a run a report; the stream stays open. */
    public static void write(List<ReportModel> models, String version, OutputStream out) throws IOException {
        try (JsonGenerator json = JsonWriter.generator(out)) {
            SarifWriter writer = new SarifWriter(json, version);
            json.writeStartObject();
            json.writeStringField("$schema", SCHEMA);
            json.writeStringField("version", "2.1.0");
            json.writeArrayFieldStart("runs");
            for (ReportModel model : models) {
                writer.run(model);
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private void run(ReportModel model) throws IOException {
        Map<String, String> rules = rules(model);
        json.writeStartObject();
        json.writeObjectFieldStart("tool");
        json.writeObjectFieldStart("driver");
        json.writeStringField("name", "Leadlamp");
        json.writeStringField("version", version);
        json.writeArrayFieldStart("rules");
        for (Map.Entry<String, String> rule : rules.entrySet()) {
            json.writeStartObject();
            json.writeStringField("id", rule.getKey());
            if (!rule.getValue().isEmpty()) {
                text("shortDescription", rule.getValue());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndObject();
        json.writeStringField("columnKind", "utf16CodeUnits");
        json.writeArrayFieldStart("invocations");
        json.writeStartObject();
        json.writeBooleanField("executionSuccessful", model.leftOut().isEmpty());
        if (!model.leftOut().isEmpty()) {
            json.writeArrayFieldStart("toolExecutionNotifications");
            for (LeftOut leftOut : model.leftOut()) {
                json.writeStartObject();
                json.writeStringField("level", "error");
                text("message", leftOut.message());
                locations(List.of(leftOut.where()));
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        json.writeEndObject();
        json.writeEndArray();
        json.writeArrayFieldStart("results");
        for (List<Item> list : List.of(model.found(), model.accepted())) {
            for (Item item : list) {
                result(item, "fail", list == model.accepted(), model.heading().file());
            }
        }
        for (Item item : model.open()) {
            result(item, "open", false, model.heading().file());
        }
        for (Item item : model.later()) {
            result(item, "notApplicable", false, model.heading().file());
        }
        for (ClearItem item : model.clear()) {
            pass(item, model.heading().file());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static Map<String, String> rules(ReportModel model) {
        Map<String, String> rules = new TreeMap<>();
        for (ClearItem item : model.clear()) {
            rules.put(item.check(), "");
        }
        for (List<Item> list : List.of(model.found(), model.accepted(), model.open(), model.later())) {
            for (Item item : list) {
                rules.put(item.check(), item.question());
            }
        }
        return rules;
    }

    private void result(Item item, String kind, boolean accepted, String record) throws IOException {
        json.writeStartObject();
        json.writeStringField("ruleId", item.check());
        json.writeStringField("kind", kind);
        // The standard wants `none` for every kind but `fail`.
        json.writeStringField("level", kind.equals("fail") ? level(item.risk()) : "none");
        text("message", Topics.said(item.place()) + ": " + item.text());
        locations(wheres(item.evidence(), record));
        fingerprint(item.check(), item.of(), item.at());
        if (accepted) {
            json.writeArrayFieldStart("suppressions");
            json.writeStartObject();
            json.writeStringField("kind", "external");
            json.writeStringField("justification", item.accepted().map(a -> a.reason() + " (" + a.who()
                    + (a.until().isEmpty() ? "" : ", until " + a.until()) + ")").orElse(""));
            json.writeEndObject();
            json.writeEndArray();
        }
        json.writeEndObject();
    }

    private void pass(ClearItem item, String record) throws IOException {
        json.writeStartObject();
        json.writeStringField("ruleId", item.check());
        json.writeStringField("kind", "pass");
        json.writeStringField("level", "none");
        text("message", Topics.said(item.place()) + ": " + item.text());
        locations(wheres(item.evidence(), record));
        fingerprint(item.check(), item.of(), item.at());
        json.writeEndObject();
    }

    /** The same answer is known again by its check and place, whatever line it has moved to. */
    private void fingerprint(String check, String of, String at) throws IOException {
        json.writeObjectFieldStart("partialFingerprints");
        json.writeStringField("checkAndPlace/v1", check + "|" + of + "|" + at);
        json.writeEndObject();
    }

    private static String level(Optional<RiskLevel> risk) {
        return switch (risk.orElse(RiskLevel.LOW)) {
            case HIGH, SERIOUS -> "error";
            case MEDIUM -> "warning";
            default -> "note";
        };
    }

    private static List<Where> wheres(List<Evidence> evidence, String record) {
        return evidence.isEmpty() ? List.of(new Where(record, 0, 0)) : evidence.stream().map(Evidence::where).toList();
    }

    private void locations(List<Where> wheres) throws IOException {
        json.writeArrayFieldStart("locations");
        for (Where where : wheres) {
            json.writeStartObject();
            json.writeObjectFieldStart("physicalLocation");
            json.writeObjectFieldStart("artifactLocation");
            json.writeStringField("uri", uri(where.file()));
            json.writeEndObject();
            if (where.line() > 0) {
                json.writeObjectFieldStart("region");
                json.writeNumberField("startLine", where.line());
                if (where.column() > 0) {
                    json.writeNumberField("startColumn", where.column());
                }
                json.writeEndObject();
            }
            json.writeEndObject();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** A relative reference: what a reference may not hold is written in hexadecimal of its UTF-8 bytes. */
    static String uri(String file) {
        StringBuilder uri = new StringBuilder(file.length() + 8);
        for (byte b : file.replace('\\', '/').getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xFF);
            if (c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || "-._~/".indexOf(c) >= 0) {
                uri.append(c);
            } else {
                uri.append('%').append(Character.toUpperCase(Character.forDigit(c >> 4, 16)))
                        .append(Character.toUpperCase(Character.forDigit(c & 15, 16)));
            }
        }
        return uri.toString();
    }

    private void text(String name, String text) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeStringField("text", text);
        json.writeEndObject();
    }
}
