package leadlamp.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import leadlamp.audit.Audit;
import leadlamp.bench.BenchSheets;
import leadlamp.report.Photographs;
import leadlamp.report.Plain;
import leadlamp.report.ReportModel;

/** Sheets to print and take to the bench. */
final class SheetsCommand {
    private static final String OUT = "--out";
    private static final int NOT_IN_FULL = 2;

    private SheetsCommand() {
    }

    static int run(List<String> typed, Say say) throws Complaint, IOException {
        Arguments arguments = Arguments.of(typed, Map.of(OUT, "a folder"));
        Path record = Records.path(arguments.one("record"));
        String folder = arguments.value(OUT)
                .orElseThrow(() -> new Complaint("Sheets want a folder: name one with --out."));
        Desk desk = Desk.of(record);
        Desk.Done done = desk.audit(record);
        for (String reason : done.reasons()) {
            say.remark(reason);
        }
        if (done.report().isEmpty()) {
            return NOT_IN_FULL;
        }
        Target.of(folder + "/", 1);
        Audit audit = done.audit().orElseThrow();
        ReportModel report = audit.build().photos().isEmpty() ? done.report().get()
                : done.report().get().photos(Photographs.of(audit.build(), record));
        for (Map.Entry<String, String> sheet : BenchSheets.of(audit, report, desk.words()).entrySet()) {
            Path file = Records.path(folder).resolve(sheet.getKey());
            try (OutputStream out = Target.open(file, List.of(record))) {
                out.write(sheet.getValue().getBytes(StandardCharsets.UTF_8));
            }
            say.result(Plain.of(file.toString()) + "\n");
        }
        return done.reasons().isEmpty() ? 0 : NOT_IN_FULL;
    }
}
