package leadlamp.cli;

import java.io.OutputStream;
import java.util.List;
import leadlamp.audit.Rulebase;

/**
 * Runs what a user may run, once, on the given records and into nowhere, so that every class of it is there when the build
 * lays classes out in an archive.
 */
public final class Rehearsal {
    /** For answers at the terminal, and no more. */
    public static final String ANSWERS = "answers";
    /** For all that the program has. */
    public static final String WHOLE = "whole";
    private static final int WIDTH = 80;

    private Rehearsal() {
    }

    /** @param arguments for what, and the records */
    public static void main(String[] arguments) {
        // What the first class of all asks the system.
        System.console();
        System.getenv("TERM");
        Rulebase.warmUp();
        Say nowhere = new Say(OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), WIDTH, false, false);
        boolean whole = arguments[0].equals(WHOLE);
        for (String record : List.of(arguments).subList(1, arguments.length)) {
            for (String form : whole ? List.of("terminal", "json", "html", "sarif") : List.of("terminal")) {
                Main.run(List.of("audit", record, "--as", form), nowhere);
            }
            Main.run(List.of("next", record), nowhere);
            if (whole) {
                Main.run(List.of("past", record), nowhere);
            }
        }
        if (whole) {
            Main.run(List.of("why", "no-such-check"), nowhere);
            Main.run(List.of("help"), nowhere);
        }
    }
}
