package leadlamp.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.report.Plain;
import leadlamp.teach.Inspection;
import leadlamp.teach.LookPage;
import leadlamp.teach.LookText;

/** The plan of looks at an engine with an unknown past, and what a visit said. */
final class LookCommand {
    private static final String AS = "--as";
    private static final String OUT = "--out";
    private static final int NOT_IN_FULL = 2;
    private static final List<String> FORMS = List.of("terminal", "html");

    private LookCommand() {
    }

    static int run(List<String> typed, Say say) throws Complaint, IOException {
        Arguments arguments = Arguments.of(typed, Map.of(AS, "a form", OUT, "a file"));
        String form = arguments.value(AS).orElse("terminal");
        if (!FORMS.contains(form)) {
            throw Arguments.unknown("form", form, FORMS);
        }
        Path path = Records.path(arguments.one("engine sheet or record"));
        Desk desk = new Desk();
        Desk.Done done = Records.sheet(path) ? desk.sheet(path) : desk.audit(path);
        for (String reason : done.reasons()) {
            say.remark(reason);
        }
        if (done.report().isEmpty()) {
            return NOT_IN_FULL;
        }
        Inspection inspection = desk.inspection(done);
        Optional<String> out = arguments.value(OUT);
        boolean html = form.equals("html");
        if (out.isPresent()) {
            try (OutputStream file = Target.open(Records.path(out.get()), List.of(path))) {
                file.write((html ? LookPage.of(inspection) : LookText.of(inspection, say.width(), false))
                        .getBytes(StandardCharsets.UTF_8));
            }
            say.result("The looks lie in " + Plain.of(out.get()) + ".\n");
        } else {
            say.result(html ? LookPage.of(inspection) : LookText.of(inspection, say.width(), say.colour()));
        }
        return done.reasons().isEmpty() ? 0 : NOT_IN_FULL;
    }
}
