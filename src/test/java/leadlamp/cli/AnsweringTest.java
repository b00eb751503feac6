package leadlamp.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import leadlamp.report.ReportModel;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

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

    private static String told(Desk desk, Path record) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Say say = new Say(out, out, 80, false, false);
        ReportModel report = desk.audit(record).report().orElseThrow();
        Form.TERMINAL.write(report, say, Form.Amount.USUAL, out);
        Form.SARIF.write(report, say, Form.Amount.USUAL, out);
        return out.toString(StandardCharsets.UTF_8);
    }
}
