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
import leadlamp.report.ReportModel.Finding;
import leadlamp.report.ReportModel.Item;
import leadlamp.report.ReportModel.LeftOut;
import leadlamp.report.ReportModel.Since;
import leadlamp.record.Where;

/**
 * Writes SARIF 2.1.0, small. Outcomes become kinds: found is `fail`, clear is `pass`, cannot tell is `open`, due later
 * `notApplicable`; what is accepted is a `fail` with a suppression; beside an earlier answer each says whether it is new. One
 * run a record.
 */
public final class SarifWriter {
    private static final String SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/"
            + "sarif-schema-2.1.0.json";

    /** The standard wants it for every kind but `fail`. */
    private static final String NO_LEVEL = "none";

    private final JsonGenerator json;
    private final String version;
    private Optional<Since> since = Optional.empty();

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
        since = model.since();
        for (List<Finding> list : List.of(model.findings(), model.lived())) {
            for (Finding finding : list) {
                found(finding, list == model.lived(), model.heading().file());
            }
        }
        for (Item item : model.open()) {
            unsettled(item, "open", model.heading().file());
        }
        for (Item item : model.later()) {
            unsettled(item, "notApplicable", model.heading().file());
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

    /** What is found alike at several places is one result with the lines of all; it is known again by the first of them. */
    private void found(Finding finding, boolean accepted, String record) throws IOException {
        Item item = finding.lead();
        begin(item.check(), "fail", level(item.risk()), Topics.said(finding.places()) + ": " + String.join(" ", finding.texts()),
                wheres(finding.evidence(), record));
        fingerprint(item.check(), item.of(), item.at());
        baseline(item.check(), item.of(), item.at(), accepted ? "accepted" : ReportModel.Outcome.FOUND.word());
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

    private void unsettled(Item item, String kind, String record) throws IOException {
        begin(item.check(), kind, NO_LEVEL, Topics.said(item.place()) + ": " + item.text(), wheres(item.evidence(), record));
        fingerprint(item.check(), item.of(), item.at());
        baseline(item.check(), item.of(), item.at(), kind.equals("open") ? ReportModel.Outcome.CANNOT_TELL.word() : "not due");
        json.writeEndObject();
    }

    private void pass(ClearItem item, String record) throws IOException {
        begin(item.check(), "pass", NO_LEVEL, Topics.said(item.place()) + ": " + item.text(), wheres(item.evidence(), record));
        fingerprint(item.check(), item.of(), item.at());
        baseline(item.check(), item.of(), item.at(), ReportModel.Outcome.CLEAR.word());
        json.writeEndObject();
    }

    private void begin(String check, String kind, String level, String message, List<Where> wheres) throws IOException {
        json.writeStartObject();
        json.writeStringField("ruleId", check);
        json.writeStringField("kind", kind);
        json.writeStringField("level", level);
        text("message", message);
        locations(wheres);
    }

    /** Beside an earlier answer: whether it is new, the same or another than it was. */
    private void baseline(String check, String of, String at, String now) throws IOException {
        if (since.isPresent()) {
            String was = since.get().before().getOrDefault(Since.key(check, of, at), "");
            json.writeStringField("baselineState", was.isEmpty() ? "new" : was.equals(now) ? "unchanged" : "updated");
        }
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
