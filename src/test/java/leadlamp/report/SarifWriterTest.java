package leadlamp.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.contrastsecurity.sarif.Result;
import com.contrastsecurity.sarif.SarifSchema210;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SarifWriterTest {
    private static final ObjectMapper READER = new ObjectMapper();

    @Test
    void the_log_is_valid_by_the_schema_of_the_standard() throws IOException {
        try (InputStream in = SarifWriterTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
            assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7).getSchema(in).validate(log()))
                    .isEmpty();
        }
    }

    @Test
    void it_reads_back_into_the_types_of_a_library_of_the_standard() throws IOException {
        SarifSchema210 log = READER.treeToValue(log(), SarifSchema210.class);

        assertThat(log.getVersion()).isEqualTo(SarifSchema210.Version._2_1_0);
        assertThat(log.getRuns().get(0).getTool().getDriver().getName()).isEqualTo("Leadlamp");
        assertThat(log.getRuns().get(0).getResults()).extracting(Result::getKind).contains(Result.Kind.FAIL, Result.Kind.OPEN,
                Result.Kind.NOT_APPLICABLE, Result.Kind.PASS);
        assertThat(log.getRuns().get(0).getResults().get(0).getLocations().get(0).getPhysicalLocation().getRegion().getStartLine())
                .isEqualTo(31);
    }

    @Test
    void each_outcome_has_its_kind() throws IOException {
        List<String> kinds = new ArrayList<>();
        results().forEach(r -> kinds.add(r.get("kind").asText() + " " + r.get("level").asText()));

        assertThat(kinds).containsExactly("fail error", "fail error", "fail error", "fail error", "fail warning",
                "open none", "open none", "open none", "open none", "open none", "notApplicable none", "pass none");
    }

    @Test
    void the_position_is_that_of_the_line() throws IOException {
        JsonNode place = results().get(0).get("locations").get(0).get("physicalLocation");

        assertThat(place.get("artifactLocation").get("uri").asText()).isEqualTo("spring-rebuild.yaml");
        assertThat(place.get("region").get("startLine").asInt()).isEqualTo(31);
        assertThat(place.get("region").get("startColumn").asInt()).isEqualTo(5);
    }

    @Test
    void what_is_accepted_is_a_fail_with_a_suppression() throws IOException {
        assertThat(results().get(4).get("suppressions").get(0).get("justification").asText())
                .isEqualTo("seen by two of us (the builder, until 2027-03-01)");
    }

    @Test
    void what_was_left_out_is_told_and_the_run_not_called_whole() throws IOException {
        JsonNode run = log().get("runs").get(0).get("invocations").get(0);

        assertThat(run.get("executionSuccessful").asBoolean()).isFalse();
        assertThat(run.get("toolExecutionNotifications").get(0).get("message").get("text").asText())
                .contains("thread-loker");
    }

    @Test
    void a_finding_is_known_again_by_check_and_place() throws IOException {
        assertThat(results().get(0).get("partialFingerprints").get("checkAndPlace/v1").asText())
                .isEqualTo("cam-gear-pin-hollow||intake");
    }

    @Test
    void a_file_name_becomes_a_relative_reference() {
        assertThat(SarifWriter.uri("my builds\\spring 100%.yaml")).isEqualTo("my%20builds/spring%20100%25.yaml");
        assertThat(SarifWriter.uri("größe.yaml")).isEqualTo("gr%C3%B6%C3%9Fe.yaml");
    }

    private static JsonNode results() throws IOException {
        return log().get("runs").get(0).get("results");
    }

    private static JsonNode log() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SarifWriter.write(List.of(Example.report()), "0.1.0", out);
        return READER.readTree(out.toByteArray());
    }
}
