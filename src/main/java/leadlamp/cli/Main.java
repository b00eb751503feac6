package leadlamp.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leadlamp.report.NextWriter;

/** Where the commands begin. */
public final class Main {
    private static final int FAILED = 2;
    private static final int WIDTH = 80;
    private static final int BUFFER = 1 << 16;

    private Main() {
    }

    public static void main(String[] typed) {
        boolean terminal = terminal();
        OutputStream out = new BufferedOutputStream(new FileOutputStream(FileDescriptor.out), BUFFER);
        Say say = new Say(out, new FileOutputStream(FileDescriptor.err), width(), terminal, terminal && colours());
        int status = run(List.of(typed), say);
        if (status != 0) {
            System.exit(status);
        }
    }

    /** Runs one command; gives its status. */
    static int run(List<String> typed, Say say) {
        int status;
        try {
            status = command(typed, say);
            say.out().flush();
        } catch (Complaint complaint) {
            status = FAILED;
            flush(say);
            say.remark(complaint.getMessage());
        } catch (IOException broken) {
            // Whoever read the results went away (`| head`): nothing is left to say, and nobody to say it to.
            if (gone(broken)) {
                return 0;
            }
            status = FAILED;
            say.remark("The results could not be written: " + broken.getMessage() + ".");
        } catch (RuntimeException | Error fault) {
            status = FAILED;
            flush(say);
            say.remark("Leadlamp itself failed (" + fault + "). Please keep what you typed and tell whoever looks after"
                    + " Leadlamp.");
        }
        return status;
    }

    private static int command(List<String> typed, Say say) throws Complaint, IOException {
        if (typed.isEmpty()) {
            say.result(Help.TEXT);
            return FAILED;
        }
        List<String> rest = typed.subList(1, typed.size());
        switch (typed.get(0)) {
            case "audit":
                return AuditCommand.run(rest, say);
            case "next":
                return next(rest, say);
            case "sheets":
                return SheetsCommand.run(rest, say);
            case "begin":
                return BeginCommand.run(rest, say);
            case "why":
                return WhyCommand.run(rest, say);
            case "look":
                return LookCommand.run(rest, say);
            case "exercise":
                return ExerciseCommand.run(rest, say);
            case "mark":
                return MarkCommand.run(rest, say);
            case "past":
                return PastCommand.run(rest, say);
            case "schema":
                return schema(rest, say);
            case "help", "--help", "-h":
                say.result(Help.TEXT);
                return 0;
            case "version", "--version":
                say.result("leadlamp " + Version.NUMBER + "\n");
                return 0;
            default:
                throw Arguments.unknown("command", typed.get(0), Help.COMMANDS);
        }
    }

    private static int next(List<String> typed, Say say) throws Complaint, IOException {
        Arguments arguments = Arguments.of(typed, Map.of());
        Path record = Records.path(arguments.one("record"));
        Desk.Done done = Desk.answering(record).audit(record);
        if (done.report().isPresent()) {
            say.result(NextWriter.text(done.report().get(), say.width(), say.colour()));
            say.out().flush();
        }
        for (String reason : done.reasons()) {
            say.remark(reason);
        }
        return done.reasons().isEmpty() ? 0 : FAILED;
    }

    private static int schema(List<String> typed, Say say) throws Complaint, IOException {
        List<String> known = new ArrayList<>(List.of("answer", "past", "record", "sheet"));
        String name = Arguments.of(typed, Map.of()).one("schema");
        if (!known.contains(name)) {
            throw Arguments.unknown("schema", name, known);
        }
        try (InputStream in = Main.class.getResourceAsStream("/leadlamp/schema/" + name + ".json")) {
            in.transferTo(say.out());
        }
        return 0;
    }

    private static void flush(Say say) {
        try {
            say.out().flush();
        } catch (IOException gone) {
            // What is said next goes to the other stream.
        }
    }

    private static boolean gone(IOException broken) {
        String message = broken.getMessage();
        return message != null && (message.contains("Broken pipe") || message.contains("pipe is being closed")
                || message.contains("pipe has been ended"));
    }

    // --- the terminal

    private static boolean terminal() {
        // Later machines give a console even where the results go to a file; this one asks as the older did.
        System.setProperty("jdk.console", "java.base");
        return System.console() != null;
    }

    private static boolean colours() {
        String none = System.getenv("NO_COLOR");
        String kind = System.getenv("TERM");
        return (none == null || none.isEmpty()) && kind != null && !kind.equals("dumb");
    }

    private static int width() {
        String columns = System.getenv("COLUMNS");
        if (columns == null || columns.isEmpty() || columns.length() > 4) {
            return WIDTH;
        }
        int width = 0;
        for (int i = 0; i < columns.length(); i++) {
            char c = columns.charAt(i);
            if (c < '0' || c > '9') {
                return WIDTH;
            }
            width = width * 10 + c - '0';
        }
        return width == 0 ? WIDTH : width;
    }
}
