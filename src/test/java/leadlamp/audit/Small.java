package leadlamp.audit;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import leadlamp.record.Build;
import leadlamp.record.EngineSheet;
import leadlamp.record.Node;
import leadlamp.record.Where;
import leadlamp.record.Yaml;

/** Small records, read and audited by a few rules made for tests. */
final class Small {
    static final RulesFolder RULES = RulesFolder.of(Path.of("src/test/resources/leadlamp/audit/rules"),
            Path.of("rules/vocabulary"));
    /** An invented three-cylinder engine, told in full. */
    static final EngineSheet TARN = RULES.records().sheet(Path.of("sample-builds/engines/tarn-12.yaml"));

    private Small() {
    }

    /** A record's lines against the full sheet. */
    static Map<String, Answer> answers(String... record) {
        return CaseRunner.byQuestion(audit(TARN, record));
    }

    static Audit audit(EngineSheet sheet, String... record) {
        return RULES.auditor().audit(build(sheet, record));
    }

    static Build build(EngineSheet sheet, String... record) {
        Yaml.File file = Yaml.text(String.join("\n", record), "small.yaml");
        return RULES.records().build(file.tree().orElseThrow(() -> new IllegalArgumentException(file.problems().toString())),
                "small.yaml", file.lines(), List.of(), sheet, leadlamp.record.Fingerprint.NONE);
    }

    /** A sheet of these lines. */
    static EngineSheet sheet(String... lines) {
        Yaml.File file = Yaml.text(String.join("\n", lines), "thin.yaml");
        return RULES.records().sheet(file.tree().orElse(new Node.Fields(List.of(), new Where("thin.yaml", 1, 1))), "thin.yaml",
                file.lines());
    }

    /** What an answer comes to: `found by form`, `cannot tell (not recorded)`. */
    static String said(Answer answer) {
        return answer == null ? "not asked" : Expected.of(answer).toString();
    }
}
