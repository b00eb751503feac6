package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What each sample build is answered in JSON, kept without its long texts and sums: those are a matter of wording, and whole
 * answers would be ten megabytes that nobody reads. Kept is what a program goes by: the names of all fields, and of each answer
 * that is no clear the check, the place, the outcome, the ways, the level, the certainty, the last chance and what it lacks;
 * of what is clear, how many of each check. A check that came later may add to an answer, but not a finding.
 * With {@code -Dleadlamp.keep=true} the answers are kept anew: read what has changed before you do.
 */
class GoldenAnswersTest {
    private static final Path GOLDEN = Path.of("src/test/resources/leadlamp/cli/answers");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final boolean KEEP = Boolean.getBoolean("leadlamp.keep");
    private static JsonSchema schema;

    @BeforeAll
    static void schema() throws IOException {
        schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(JSON.readTree(command("schema", "answer").out()));
    }

    @ParameterizedTest
    @MethodSource("leadlamp.cli.AuditCommandTest#samples")
    void the_answer_still_means_what_was_kept(Path sample) throws IOException {
        JsonNode answer = JSON.readTree(command("audit", sample.toString(), "--as", "json").out());
        assertThat(schema.validate(answer)).isEmpty();
        List<String> today = told(answer);
        Path golden = GOLDEN.resolve(sample.getFileName().toString().replace(".yaml", ".txt"));
        if (KEEP) {
            Files.createDirectories(GOLDEN);
            Files.writeString(golden, String.join("\n", today) + "\n", StandardCharsets.UTF_8);
        }
        List<String> kept = Files.readAllLines(golden, StandardCharsets.UTF_8);
        assertThat(differences(kept, today)).as("%s: what a program goes by has changed; read it, and keep it anew with"
                + " -Dleadlamp.keep=true if it is right", golden).isEmpty();
    }

    @Test
    void no_answer_is_kept_of_a_sample_that_is_gone() throws IOException {
        Set<String> samples = new TreeSet<>();
        AuditCommandTest.samples().forEach(sample -> samples.add(sample.getFileName().toString().replace(".yaml", ".txt")));
        try (var files = Files.list(GOLDEN)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrderElementsOf(samples);
        }
    }

    /** What a program goes by, a line each. The first word of a line is its kind, the second the check it is of. */
    private static List<String> told(JsonNode answer) {
        List<String> told = new ArrayList<>();
        told.add("form: " + answer.at("/form").asInt());
        TreeSet<String> fields = new TreeSet<>();
        fields("", answer, fields);
        fields.forEach(field -> told.add("field: " + field));
        TreeMap<String, Integer> clear = new TreeMap<>();
        TreeMap<String, TreeSet<String>> others = new TreeMap<>();
        for (JsonNode one : answer.get("answers")) {
            String check = one.get("check").asText();
            if (one.get("outcome").asText().equals("clear")) {
                clear.merge(check, 1, Integer::sum);
            } else {
                Set<String> lacks = new TreeSet<>();
                one.path("because").forEach(gap -> lacks.add(gap.get("why").asText() + ": " + gap.get("need").asText()));
                String line = one.get("outcome").asText() + (one.path("accepted").isObject() ? " and accepted" : "") + ": " + check + ", "
                        + one.get("risk").asText() + ", " + (one.get("person").asBoolean() ? "can hurt somebody, " : "")
                        + one.get("certainty").asText() + ", until " + one.get("lastChance").asText() + words("; by ", one.get("ways"))
                        + (lacks.isEmpty() ? "" : "; " + String.join(", ", lacks));
                others.computeIfAbsent(line, l -> new TreeSet<>())
                        .add((one.has("of") ? one.get("of").asText() + " at " : "") + one.get("at").asText());
            }
        }
        others.forEach((line, places) -> told.add(line + "; at " + String.join(", ", places)));
        clear.forEach((check, many) -> told.add("clear: " + check + ", " + many));
        return told;
    }

    private static String words(String before, JsonNode list) {
        List<String> words = new ArrayList<>();
        list.forEach(word -> words.add(word.asText()));
        return words.isEmpty() ? "" : before + String.join(", ", words);
    }

    private static void fields(String path, JsonNode node, Set<String> into) {
        if (node.isArray()) {
            node.forEach(one -> fields(path + "[]", one, into));
        } else if (node.isObject()) {
            node.fields().forEachRemaining(field -> {
                into.add(path + "/" + field.getKey());
                fields(path + "/" + field.getKey(), field.getValue(), into);
            });
        }
    }

    /** Lines gone, marked with -, and lines that came, marked with +; a new field or a new check that finds nothing is no difference. */
    private static List<String> differences(List<String> kept, List<String> today) {
        Set<String> known = new TreeSet<>();
        kept.forEach(line -> known.add(check(line)));
        List<String> differences = new ArrayList<>();
        Set<String> now = Set.copyOf(today);
        kept.stream().filter(line -> !now.contains(line)).forEach(line -> differences.add("- " + line));
        Set<String> then = Set.copyOf(kept);
        for (String line : today) {
            boolean added = line.startsWith("field: ") || !line.startsWith("found") && !known.contains(check(line));
            if (!then.contains(line) && !added) {
                differences.add("+ " + line);
            }
        }
        return differences;
    }

    private static String check(String line) {
        int from = line.indexOf(": ") + 2;
        int to = line.indexOf(',', from);
        return line.substring(from, to < 0 ? line.length() : to);
    }
}
