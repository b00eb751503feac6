package leadlamp.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import leadlamp.report.Plain;

/**
 * Where a command speaks: results to one stream, remarks to the other.
 *
 * @param out    results
 * @param err    remarks
 * @param width  columns of the terminal
 * @param narrow whether the results go to a terminal, so that a line may be cut at its width
 * @param colour whether it has colours
 */
record Say(OutputStream out, OutputStream err, int width, boolean narrow, boolean colour) {
    /** So wide a line is never cut. */
    private static final int NO_CUT = 1_000_000;

    void result(String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * A remark of one line or more, with the program's name before it. It is no result: where it cannot be said, the work
     * goes on.
     */
    void remark(String remark) {
        StringBuilder text = new StringBuilder("leadlamp: ");
        for (String line : remark.split("\n")) {
            text.append(Plain.of(line)).append('\n');
        }
        try {
            err.write(text.toString().getBytes(StandardCharsets.UTF_8));
            err.flush();
        } catch (IOException nobodyListens) {
            // A closed error stream is no reason to fail.
        }
    }

    int cut() {
        return narrow ? width : NO_CUT;
    }

    /** A word as it was typed, inside a sentence. */
    static String quoted(String word) {
        return '"' + word + '"';
    }
}
