package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Answers that were kept on the day when their form was new, never written again: whoever kept his own must be able to read it
 * for ever. The rules have grown since, so they are not what the same record is answered today.
 */
class KeptAnswersTest {
    private static final Path KEPT = Path.of("src/test/resources/leadlamp/cli/kept-answers");
    private static final ObjectMapper READER = new ObjectMapper();

    @ParameterizedTest
    @MethodSource("kept")
    void a_kept_answer_is_still_valid_by_the_published_schema(Path kept) throws IOException {
        JsonNode schema = READER.readTree(command("schema", "answer").out());

        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema)
                .validate(READER.readTree(kept.toFile()))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("kept")
    void a_kept_answer_can_still_be_compared_with(Path kept) throws IOException {
        String record = "sample-builds/" + READER.readTree(kept.toFile()).at("/record/file").asText();
        Typed audit = command("audit", record, "--as", "json", "--since", kept.toString());

        assertThat(audit.err()).isEmpty();
        assertThat(READER.readTree(audit.out()).at("/since/sentence").asText()).startsWith("Since the earlier answer");
    }

    static List<Path> kept() throws IOException {
        try (Stream<Path> files = Files.list(KEPT)) {
            return files.sorted().toList();
        }
    }
}
