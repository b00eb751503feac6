package leadlamp.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.audit.Past;
import leadlamp.past.Story;
import leadlamp.past.Teller;
import leadlamp.record.Build;
import leadlamp.report.Plain;
import leadlamp.report.StoryJson;
import leadlamp.report.StoryPage;
import leadlamp.report.StoryText;

/** What probably happened to an engine before. */
final class PastCommand {
    private static final String AS = "--as";
    private static final String OUT = "--out";
    private static final String STEPS = "--steps";
    private static final int NOT_IN_FULL = 2;

    private PastCommand() {
    }

    static int run(List<String> typed, Say say) throws Complaint, IOException {
        Arguments arguments = Arguments.of(typed, Map.of(AS, "a form", OUT, "a file or a folder", STEPS, ""));
        Form form = Form.named(arguments.value(AS).orElse("terminal"));
        if (form == Form.SARIF) {
            throw new Complaint("The past is told in the forms terminal, html and json.");
        }
        if (arguments.has(STEPS) && form != Form.TERMINAL) {
            throw new Complaint("--steps is for the terminal; the other forms have each step anyway.");
        }
        Path record = Records.path(arguments.one("record"));
        Desk.Done done = Desk.of(record).audit(record);
        for (String reason : done.reasons()) {
            say.remark(reason);
        }
        if (done.audit().isEmpty()) {
            return NOT_IN_FULL;
        }
        Build build = done.audit().get().build();
        Story story = Teller.story(done.audit().get(), Past.compiled());
        Optional<String> out = arguments.value(OUT);
        if (out.isPresent()) {
            Path file = Target.of(out.get(), 1).file(record, form);
            try (OutputStream to = Target.open(file, List.of(record))) {
                write(story, build, form, arguments.has(STEPS), new Say(to, say.err(), say.width(), false, false));
            }
            say.result("The past of " + Plain.of(build.name()) + " lies in " + Plain.of(file.toString()) + ".\n");
        } else {
            write(story, build, form, arguments.has(STEPS), say);
        }
        return done.reasons().isEmpty() ? 0 : NOT_IN_FULL;
    }

    private static void write(Story story, Build build, Form form, boolean steps, Say say) throws IOException {
        switch (form) {
            case HTML -> say.out().write(StoryPage.of(story, build).getBytes(StandardCharsets.UTF_8));
            case JSON -> StoryJson.write(story, build, say.out());
            default -> say.result(StoryText.of(story, build, steps, say.width(), say.colour()));
        }
    }
}
