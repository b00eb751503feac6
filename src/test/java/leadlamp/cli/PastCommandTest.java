package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PastCommandTest {
    private static final Path HISTORIES = Path.of("src/test/resources/past");
    private static final Path ENGINES = Path.of("sample-builds/engines");

    /** The histories beside the sheets of their engines, as a buyer would have them in one folder. */
    @TempDir
    private static Path bench;
    private static String turned;

    @TempDir
    private Path folder;

    @BeforeAll
    static void lay() throws IOException {
        for (Path file : in(HISTORIES)) {
            Files.copy(file, bench.resolve(file.getFileName()));
        }
        Files.createDirectories(bench.resolve("engines"));
        for (Path sheet : in(ENGINES)) {
            Files.copy(sheet, bench.resolve("engines").resolve(sheet.getFileName()));
        }
        turned = bench.resolve("past-turned-gear.yaml").toString();
    }

    private static List<Path> in(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    static List<String> histories() throws IOException {
        return in(HISTORIES).stream().map(f -> f.getFileName().toString()).filter(n -> n.startsWith("past-") && n.endsWith(".yaml")).toList();
    }

    /** What is told of each invented history stands beside it, to be read as a buyer would. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("histories")
    void a_history_is_told_as_it_stands_beside_its_record(String history) throws IOException {
        Typed past = command("past", bench.resolve(history).toString());

        assertThat(past.err()).isEmpty();
        assertThat(past.out()).isEqualTo(Files.readString(HISTORIES.resolve(history.replace(".yaml", ".txt"))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("histories")
    void a_page_needs_nothing_beside_it_and_says_what_the_drawing_shows(String history) {
        Typed past = command("past", bench.resolve(history).toString(), "--as", "html");

        assertThat(past.out()).doesNotContain("<script", "http:", "https:").contains("Made from " + history + ", SHA-256 ");
        if (past.out().contains("<svg")) {
            assertThat(past.out()).containsPattern("<svg class=\"picture\" role=\"img\"[^>]*><title>Signs, events and what follows: .+ speaks ");
        }
    }

    @Test
    void each_step_of_the_reasoning_can_be_printed() {
        assertThat(command("past", turned, "--steps").out()).containsSubsequence("Step by step",
                "valve-print-on-piston: shown 1, at cylinder 2 (line 9)",
                "cam-gear-turned: strongly for: gear-witness-turned, at intake (line 7)");
    }

    @Test
    void the_data_have_events_signs_and_damage_with_their_lines() {
        assertThat(command("past", turned, "--as", "json").out()).containsSubsequence("\"event\" : \"cam-gear-turned\"",
                "\"standing\" : \"supported\"", "\"sign\" : \"gear-witness-turned\"", "\"weight\" : \"strong\"", "\"line\" : 7",
                "\"tellApart\"", "\"recorded\" : \"nothing\"");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("histories")
    void the_data_of_a_history_are_of_the_form_that_the_schema_gives(String history) throws IOException {
        String json = command("past", bench.resolve(history).toString(), "--as", "json").out();
        JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(command("schema", "past").out());

        assertThat(schema.validate(new ObjectMapper().readTree(json))).isEmpty();
    }

    @Test
    void nothing_is_ever_said_to_be_proven() throws IOException {
        for (String history : histories()) {
            assertThat(command("past", bench.resolve(history).toString()).out().replace("Nothing here is proven", "")).doesNotContain(" proven", "proof");
        }
    }

    @Test
    void it_is_written_where_it_is_asked_for_and_never_over_the_record() throws IOException {
        Path out = folder.resolve("past.html");

        assertThat(command("past", turned, "--as", "html", "--out", out.toString()).status()).isZero();
        assertThat(Files.readString(out)).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
        assertThat(command("past", turned, "--out", turned).err()).contains("is a record");
    }

    @Test
    void a_form_that_it_has_not_and_a_record_that_is_not_there_are_told() {
        assertThat(command("past", turned, "--as", "sarif").err()).contains("terminal, html and json");
        assertThat(command("past", "no-such.yaml")).satisfies(t -> {
            assertThat(t.status()).isEqualTo(2);
            assertThat(t.err()).contains("There is no file");
        });
    }
}
