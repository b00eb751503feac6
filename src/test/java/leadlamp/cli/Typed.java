package leadlamp.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A command as it is typed, and what came of it. */
record Typed(int status, String out, String err) {
    static Typed command(String... typed) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Main.run(List.of(typed), new Say(out, err, 80, false, false));
        return new Typed(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
