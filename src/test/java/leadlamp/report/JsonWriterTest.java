package leadlamp.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class JsonWriterTest {
    private static final ObjectMapper READER = new ObjectMapper();

    @Test
    void the_answer_is_valid_by_the_published_schema() throws IOException {
        assertThat(schema().validate(answer(Example.report()))).isEmpty();
        assertThat(schema().validate(answer(Example.quiet()))).isEmpty();
    }

    @Test
    void several_reports_are_a_list_and_valid_too() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        JsonWriter.write(List.of(Example.report(), Example.quiet()), out);

        JsonNode list = READER.readTree(out.toByteArray());
        assertThat(list).hasSize(2);
        assertThat(schema().validate(list)).isEmpty();
    }

    @Test
    void the_schema_refuses_an_answer_without_a_reason_or_with_a_word_of_its_own() throws IOException {
        JsonNode answer = answer(Example.report());
        ((ObjectNode) outcome(answer, "cannot tell")).remove("because");
        assertThat(schema().validate(answer)).isNotEmpty();

        JsonNode other = answer(Example.report());
        ((ObjectNode) other.get("answers").get(0)).put("outcome", "passed");
        assertThat(schema().validate(other)).isNotEmpty();
    }

    @Test
    void each_answer_has_the_fields_of_the_design_in_ranked_order() throws IOException {
        JsonNode answers = answer(Example.report()).get("answers");

        assertThat(names(answers.get(0))).containsExactly("check", "topic", "at", "outcome", "ways", "risk", "certainty",
                "person", "lastChance", "text", "evidence");
        List<String> outcomes = new ArrayList<>();
        answers.forEach(a -> outcomes.add(a.get("outcome").asText()));
        assertThat(outcomes).containsExactly("found", "found", "found", "found", "found", "cannot tell", "cannot tell",
                "cannot tell", "cannot tell", "cannot tell", "cannot tell", "clear");
        assertThat(answers.get(0).get("ways").get(0).asText()).isEqualTo("form");
        assertThat(answers.get(0).get("risk").asText()).isEqualTo("High");
        assertThat(answers.get(0).get("lastChance").asText()).isEqualTo("timing drive fitted");
        assertThat(answers.get(0).get("evidence").get(0).get("line").asInt()).isEqualTo(31);
        assertThat(answers.get(4).get("accepted").get("who").asText()).isEqualTo("the builder");
        assertThat(answers.get(11).get("risk").isNull()).isTrue();
    }

    @Test
    void what_cannot_be_told_says_why() throws IOException {
        JsonNode coarse = outcome(answer(Example.report()), "cannot tell").get("because").get(0);

        assertThat(coarse.get("why").asText()).isEqualTo("too coarse");
        assertThat(coarse.get("outside").asDouble()).isEqualTo(0.42);
        assertThat(coarse.get("at").get(0).asText()).isEqualTo("main 2");
    }

    @Test
    void a_problem_stands_with_its_place() throws IOException {
        JsonNode problem = answer(Example.report()).get("problems").get(0);

        assertThat(problem.get("file").asText()).isEqualTo("spring-rebuild.yaml");
        assertThat(problem.get("line").asInt()).isEqualTo(23);
        assertThat(problem.get("column").asInt()).isEqualTo(36);
        assertThat(problem.get("message").asText()).contains("thread-loker", "Nearest word: thread-locker.");
    }

    @Test
    void a_worked_out_value_stands_with_sum_doubt_and_limit() throws IOException {
        JsonNode value = answer(Example.report()).get("values").get(0);

        assertThat(value.get("low").decimalValue()).isEqualByComparingTo("0.037");
        assertThat(value.get("doubt").decimalValue()).isEqualByComparingTo("0.007");
        assertThat(value.get("unit").asText()).isEqualTo("mm");
        assertThat(value.get("sum").asText()).startsWith("48.022");
        assertThat(value.get("limit").get("most").decimalValue()).isEqualByComparingTo("0.055");
        assertThat(value.get("limit").get("whose").asText()).isEqualTo("sheet");
    }

    @Test
    void what_steers_a_terminal_is_written_by_its_number_and_reads_back_whole() throws IOException {
        String json = new String(bytes(Example.report()), StandardCharsets.UTF_8);

        assertThat(json).doesNotContain("\u001B", "\u009B", "\u202E").contains("\\u001B", "\\u009B", "\\u202E");
        assertThat(READER.readTree(json).toString()).isNotEmpty();
        assertThat(READER.readTree(json).findValuesAsText("says")).anyMatch(says -> says.contains(Example.NASTY));
    }

    @Test
    void the_same_build_gives_the_same_bytes() throws IOException {
        assertThat(bytes(Example.report())).isEqualTo(bytes(Example.report()));
    }

    private static JsonSchema schema() throws IOException {
        try (InputStream in = JsonWriter.class.getResourceAsStream("/leadlamp/schema/answer.json")) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(in);
        }
    }

    private static JsonNode outcome(JsonNode answer, String word) {
        for (JsonNode one : answer.get("answers")) {
            if (one.get("outcome").asText().equals(word)) {
                return one;
            }
        }
        throw new AssertionError(word);
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static JsonNode answer(ReportModel model) throws IOException {
        return READER.readTree(bytes(model));
    }

    private static byte[] bytes(ReportModel model) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        JsonWriter.write(model, out);
        return out.toByteArray();
    }
}
