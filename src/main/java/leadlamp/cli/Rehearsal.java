package leadlamp.cli;

import java.io.OutputStream;
import java.util.List;
import leadlamp.audit.Rulebase;

/**
 * Runs what a user may run, once, on the given records and into nowhere, so that every class of it is there when the build
 * lays classes out in the archive.
 */
public final class Rehearsal {
    private static final int WIDTH = 80;

    private Rehearsal() {
    }

    public static void main(String[] records) {
        // The first class of all, and what it asks the system.
        Launcher.java();
        System.console();
        System.getenv("TERM");
        Rulebase.warmUp();
        Say nowhere = new Say(OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), WIDTH, false, false);
        for (String record : records) {
            for (String form : List.of("terminal", "json", "html", "sarif")) {
                Main.run(List.of("audit", record, "--as", form), nowhere);
            }
            Main.run(List.of("next", record), nowhere);
            Main.run(List.of("past", record), nowhere);
        }
        Main.run(List.of("why", "no-such-check"), nowhere);
        Main.run(List.of("help"), nowhere);
    }
}
