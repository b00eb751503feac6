package leadlamp.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TerminalWriterTest {
    private final ReportModel report = Example.report();

    @Test
    void the_whole_report_reads_as_it_is_kept_beside_this_test() throws IOException {
        assertThat(TerminalWriter.full(report, 80, false)).isEqualTo(kept("report.txt"));
    }

    @Test
    void in_brief_it_has_a_line_a_finding() throws IOException {
        assertThat(TerminalWriter.brief(report, 110, false)).isEqualTo(kept("brief.txt"));
    }

    @Test
    void the_lists_stand_in_their_order_and_the_last_lines_say_what_to_do_first() {
        assertThat(TerminalWriter.full(report, 80, false)).containsSubsequence("\nFound\n", "\nCannot tell\n",
                "\nAccepted by the builder\n", "\nDue later\n", "\nClear\n", "\nLeft out\n", "\nAlways\n",
                "\nIn short\n", "Found 4 (3 High, 1 Serious)", "  First: The pin of the intake cam gear is hollow.");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 40, 60, 80, 100, 1000})
    void no_line_of_ours_is_longer_than_the_terminal_is_wide(int width) {
        int widest = Math.max(40, Math.min(110, width));
        assertThat(TerminalWriter.full(report, width, false).lines()
                .filter(line -> line.codePointCount(0, line.length()) > widest)
                // What is quoted of a file stays on its line, so that what is meant stays underlined.
                .filter(line -> !line.contains("thread-loker") && !line.contains("~~~~")
                        && !line.contains("thread-locker"))).isEmpty();
    }

    @Test
    void a_word_longer_than_the_terminal_is_broken_and_nothing_of_it_is_lost() {
        ReportModel longName = Example.report("a.yaml", "x".repeat(500), false);

        assertThat(TerminalWriter.full(longName, 80, false).lines().filter(l -> l.length() > 80)).isEmpty();
        assertThat(TerminalWriter.full(longName, 80, false).chars().filter(c -> c == 'x').count())
                .isGreaterThanOrEqualTo(500);
    }

    @Test
    void without_colour_nothing_steers_the_terminal() {
        assertThat(TerminalWriter.full(report, 80, false)).doesNotContain("\u001B", "\u009B", "\u202E");
    }

    @Test
    void with_colour_only_our_own_marks_are_there_and_the_words_are_the_same() {
        String coloured = TerminalWriter.full(report, 80, true);

        assertThat(coloured).contains("\u001B[1;31mHigh\u001B[0m").doesNotContain("\u001B[31mred");
        assertThat(coloured.replaceAll("\u001B\\[[0-9;]*m", "")).isEqualTo(TerminalWriter.full(report, 80, false));
    }

    @Test
    void nothing_found_is_said_and_not_praised() {
        assertThat(TerminalWriter.full(Example.quiet(), 80, false))
                .contains("Nothing was found. That is all that this record shows; it is no promise.")
                .contains("Cam drive");
    }

    private static String kept(String name) throws IOException {
        try (InputStream in = TerminalWriterTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
