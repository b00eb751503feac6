package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BeginCommandTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @MethodSource("engines")
    void a_new_record_as_it_stands_gives_no_finding_and_no_problem(Path engine) throws IOException {
        Path record = begin(engine);

        Typed audit = command("audit", record.toString(), "--at-least", "Low");

        assertThat(audit.err()).isEmpty();
        assertThat(audit.status()).isZero();
        assertThat(audit.out()).contains("Nothing was found.", "Cannot tell");
        assertThat(command("next", record.toString()).out()).containsSubsequence("Nothing is recorded yet", "To begin with",
                "1.  Under build: purpose", "Under use: duty", "Under gauges:", "Under stage:", "What can only be seen, turned or measured now",
                "The one that settles most");
    }

    @ParameterizedTest
    @MethodSource("engines")
    void every_line_of_it_is_a_whole_entry_when_its_mark_is_taken_away(Path engine) throws IOException {
        Path record = begin(engine);
        StringBuilder bared = new StringBuilder();
        for (String line : Files.readAllLines(record)) {
            boolean remark = line.equals("#") || line.startsWith("# ") && !line.startsWith("#  ");
            bared.append(remark ? "" : line.startsWith("#") ? line.substring(1) : line).append('\n');
        }
        Files.writeString(record, bared);

        assertThat(command("audit", record.toString(), "--brief").out()).doesNotContain("Left out");
    }

    @Test
    void it_lays_out_every_section_and_the_joints_of_the_sheet() {
        Typed begin = command("begin", "sample-builds/engines/tarn-12.yaml");

        assertThat(begin.status()).isZero();
        assertThat(begin.out()).contains("\nbuild:\n", "\nengine: tarn-12.yaml\n", "#use:", "#stage:", "#gauges:", "#machining:",
                "#measurements:", "#parts:", "#fasteners:", "#observations:", "\nsteps:", "#protection:",
                "head to block", "# sheet: 25 N·m, 40 N·m, then 90 deg", "cam gear pin");
    }

    @Test
    void a_file_that_is_there_is_never_written_over() throws IOException {
        Path kept = Files.writeString(folder.resolve("mine.yaml"), "mine");

        Typed begin = command("begin", "sample-builds/engines/tarn-12.yaml", "--out", kept.toString());

        assertThat(begin.status()).isEqualTo(2);
        assertThat(begin.err()).contains("is there already");
        assertThat(kept).hasContent("mine");
    }

    @Test
    void a_sheet_that_is_not_there_is_one_message() {
        Typed begin = command("begin", "nowhere.yaml");

        assertThat(begin.status()).isEqualTo(2);
        assertThat(begin.err()).startsWith("leadlamp: nowhere.yaml").doesNotContain("Exception");
        assertThat(begin.out()).isEmpty();
    }

    static List<Path> engines() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("sample-builds", "engines"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    private Path begin(Path engine) throws IOException {
        Path sheet = Files.copy(engine, folder.resolve(engine.getFileName()));
        Path record = folder.resolve("new.yaml");
        assertThat(command("begin", sheet.toString(), "--out", record.toString()).err()).isEmpty();
        return record;
    }
}
