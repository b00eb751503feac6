package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures that no engine can have, each of the right kind, in a sound build or on its sheet: each is told at its own line, and the rest is audited. */
class AbsurdFiguresTest {
    private static final Path SAMPLES = Path.of("sample-builds");
    private static final String SOUND = "full-sound-tarn-12.yaml";
    private static final String SHEET = "tarn-12.yaml";

    @TempDir
    private Path folder;
    private String record;
    private String sheet;

    @BeforeEach
    void a_sound_build() throws IOException {
        record = Files.readString(SAMPLES.resolve(SOUND));
        sheet = Files.readString(SAMPLES.resolve("engines").resolve(SHEET));
        Files.createDirectories(folder.resolve("engines"));
    }

    private Typed audit(String ofRecord, String ofSheet) throws IOException {
        Files.writeString(folder.resolve(SOUND), ofRecord);
        Files.writeString(folder.resolve("engines").resolve(SHEET), ofSheet);
        Typed audit = command("audit", folder.resolve(SOUND).toString(), "--brief");
        assertThat(audit.out() + audit.err()).doesNotContain("itself failed", "Exception", "NaN", "Infinity")
                .doesNotContainPattern("[a-z]\\.\\. ");
        assertThat(audit.out()).as("the rest is audited").containsPattern("Clear\\s+([78]\\d\\d|\\d{4})");
        return audit;
    }

    private static int line(String text, String holding) {
        return (int) text.substring(0, text.indexOf(holding)).chars().filter(c -> c == '\n').count() + 1;
    }

    private static void told(Typed audit, String file, int line, String what) {
        Matcher told = Pattern.compile("Left out \\S*" + Pattern.quote(file) + ":" + line + ":\\d+: (.*?)(?=Left out |$)")
                .matcher(audit.out().replaceAll("\\s+", " "));
        StringBuilder all = new StringBuilder();
        while (told.find()) {
            all.append(told.group(1)).append('\n');
        }
        assertThat(all.toString()).as(audit.out()).contains(what);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', value = {
        "oil temperature: 90 °C | oil temperature: -300 °C | colder than absolute zero",
        "1:  [80.006, 80.004, 80.004 | 1:  [0, 80.004, 80.004 | Look at the cylinder bore at 1 top thrust again",
        "1:  [80.006, 80.004, 80.004 | 1:  [80.006, -0.0, 80.004 | Look at the cylinder bore at 1 top pin again",
        "1:  [80.006, 80.004, 80.004 | 1:  [80.006, 80.004, -80.004 | Look at the cylinder bore at 1 mid thrust again",
        "1:  [80.006, 80.004, 80.004 | 1:  [.nan, 80.004, 80.004 | has no figure",
        "1:  [80.006, 80.004, 80.004 | 1:  [.inf, 80.004, 80.004 | has no figure",
        "1:  [80.006, 80.004, 80.004 | 1:  [-.inf, 80.004, 80.004 | has no figure",
        "1:  [80.006, 80.004, 80.004 | 1:  [1e300, 80.004, 80.004 | without a power of ten",
        "crankshaft end float: 0.14 mm | crankshaft end float: 1e300 mm | A figure is written out, without a power of ten.",
        "crankshaft end float: 0.14 mm | crankshaft end float: 0.14E-3 mm | A figure is written out, without a power of ten.",
        "crankshaft end float: 0.14 mm | crankshaft end float: 9999999999999 mm | larger than anything at the bench",
        "combustion chamber volume: [32.3 | combustion chamber volume: [0 | Look at the combustion chamber volume at 1 again",
        "combustion chamber volume: [32.3 | combustion chamber volume: [-32.3 | Look at the combustion chamber volume at 1 again",
        "block face: mill, removed: 0.10 mm | block face: mill, removed: -0.10 mm | Look at the machining block face removed again" })
    void in_the_record(String was, String is, String what) throws IOException {
        assertThat(record).contains(was);
        String absurd = record.replace(was, is);
        told(audit(absurd, sheet), SOUND, line(absurd, is), what);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', value = {
        "stroke: 80.00 mm, rod length: 130 mm | stroke: 300.00 mm, rod length: 130 mm | Look at the sheet standard rod length",
        "stroke: 80.00 mm | stroke: -80.00 mm | Look at the sheet standard stroke",
        "stroke: 80.00 mm | stroke: 80.00 kg | \"kg\" is a mass; this is a length",
        "stroke: 80.00 mm | stroke: 80.00 mn | \"mn\" is not a unit of length",
        "stroke: 80.00 mm | stroke: .nan | has no figure",
        "standard: { bore: 80.00 mm | standard: { bore: .inf | has no figure",
        "standard: { bore: 80.00 mm | standard: { bore: 0 mm | Look at the sheet standard bore",
        "rev limit: 7200 rpm | rev limit: 7200 mm | is a length; this is a speed",
        "reciprocating: 490 g | reciprocating: 490 rpm | is a speed; this is a mass" })
    void on_the_sheet(String was, String is, String what) throws IOException {
        assertThat(sheet).contains(was);
        String absurd = sheet.replaceFirst(Pattern.quote(was), Matcher.quoteReplacement(is));
        Typed audit = audit(record, absurd);
        assertThat(audit.out().replaceAll("\\s+", " ")).contains(what);
        told(audit, SHEET, line(absurd, is), "");
    }

    @Test
    void a_thread_without_a_pitch_is_told_at_its_line_on_the_sheet_and_in_the_record() throws IOException {
        String onSheet = sheet.replace("thread: M8x1.25", "thread: M8x0");
        told(audit(record, onSheet), SHEET, line(onSheet, "thread: M8x0"), "\"M8x0\" is no thread that can be cut. As M8x1.25 or 5/16-18.");
        assertThat(sheet).contains("thread: M8x1.25");
    }

    @Test
    void a_figure_longer_than_a_number_can_be_is_told_like_any_other() throws IOException {
        String is = "crankshaft end float: " + "9".repeat(400) + " mm";
        String absurd = record.replace("crankshaft end float: 0.14 mm", is);
        told(audit(absurd, sheet), SOUND, line(absurd, is), "larger than anything at the bench");
    }
}
