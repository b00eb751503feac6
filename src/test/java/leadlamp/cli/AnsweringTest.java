package leadlamp.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import leadlamp.report.ReportModel;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An audit works out no more than its checks can ask for. What it answers must be what it answers with all worked out. */
class AnsweringTest {
    @TestFactory
    Stream<DynamicTest> the_answers_are_the_same_with_all_worked_out_and_with_what_is_asked_for() throws IOException {
        Desk all = new Desk();
        List<Path> records;
        try (Stream<Path> files = Files.list(Path.of("sample-builds"))) {
            records = files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
        assertThat(records).hasSizeGreaterThan(20);
        return records.stream().map(record -> DynamicTest.dynamicTest(record.getFileName().toString(),
                () -> assertThat(told(Desk.answering(record), record)).isEqualTo(told(all, record))));
    }

    /** A spring without mass has no frequency, which no check reads; a bore of nothing leaves checks without their clearance. */
    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', value = {
        "standard: { bore: 80.00 mm | standard: { spring mass: 0 g, bore: 80.00 mm | 0",
        "standard: { bore: 80.00 mm | standard: { bore: 0 mm | 2" })
    void what_is_left_out_and_the_exit_status_are_the_same_in_every_form(String was, String is, int status, @TempDir Path folder)
            throws IOException {
        Path samples = Path.of("sample-builds");
        Path record = folder.resolve("build.yaml");
        String build = Files.readString(samples.resolve("full-sound-tarn-12.yaml"));
        Files.writeString(record, build.replaceFirst("\nmeasurements:[^\n]*\n", "$0  - { valve spring rate: 30 N/mm, at: each }\n"));
        Path sheet = Files.createDirectories(folder.resolve("engines")).resolve("tarn-12.yaml");
        String engine = Files.readString(samples.resolve("engines/tarn-12.yaml"));
        assertThat(engine).contains(was);
        Files.writeString(sheet, engine.replace(was, is));
        Set<String> leftOut = new HashSet<>();
        for (String form : List.of("terminal", "html", "json", "sarif")) {
            Typed audit = Typed.command("audit", record.toString(), "--as", form);
            assertThat(audit.status()).as(form + ": " + audit.err()).isEqualTo(status);
            leftOut.add(audit.err().replaceAll("(?m)^.* no photograph .*\\R", ""));
        }
        assertThat(leftOut).hasSize(1);
        assertThat(told(Desk.answering(record), record)).isEqualTo(told(new Desk(), record));
    }

    private static String told(Desk desk, Path record) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Say say = new Say(out, out, 80, false, false);
        Desk.Done done = desk.audit(record);
        ReportModel report = done.report().orElseThrow();
        out.write((report.leftOut() + "\n" + done.reasons() + "\n").getBytes(StandardCharsets.UTF_8));
        Form.TERMINAL.write(report, say, Form.Amount.USUAL, out);
        Form.SARIF.write(report, say, Form.Amount.USUAL, out);
        return out.toString(StandardCharsets.UTF_8);
    }
}
