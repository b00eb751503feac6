package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands on the sample builds, as a builder types them. */
class AuditCommandTest {
    private static final String SAMPLES = "sample-builds";
    private static final String MISTAKES = SAMPLES + "/hill-climb-three.yaml";
    private static final ObjectMapper READER = new ObjectMapper();

    @TempDir
    private Path folder;

    // --- one record

    @Test
    void a_record_full_of_quiet_mistakes_gives_status_1_and_the_hollow_pin_with_its_line() {
        Typed audit = command("audit", MISTAKES);

        assertThat(audit.status()).isEqualTo(1);
        assertThat(audit.err()).isEmpty();
        assertThat(audit.out()).contains("cam-gear-pin-hollow, intake", "form: hollow", "Before ", "In short");
    }

    @Test
    void the_day_on_which_a_sign_was_looked_for_stands_beside_it_wherever_it_was_written() throws IOException {
        Path engines = Files.createDirectories(folder.resolve("engines"));
        Files.copy(Path.of(SAMPLES, "engines", "tarn-12.yaml"), engines.resolve("tarn-12.yaml"));
        Path record = Files.writeString(folder.resolve("build.yaml"), "engine: engines/tarn-12.yaml\nobservations:\n- cam gear: witness mark\n  at: intake\n"
                + "  date: 2026-03-14\n- { cam gear pin: bent, at: intake, date: 2026-03-15 }\nparts:\n- { cam gear pin: kept, at: intake }\n");

        assertThat(command("audit", record.toString()).out()).contains("cam gear: witness mark (2026-03-14)").doesNotContain("2026-03-15 }  (");
    }

    @Test
    void a_sound_record_gives_status_0_and_no_praise() {
        Typed audit = command("audit", SAMPLES + "/full-sound-tarn-12.yaml");

        assertThat(audit.status()).isZero();
        assertThat(audit.out()).contains("Nothing was found.").doesNotContain(" safe");
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_sample_is_valid_json_by_the_published_schema(Path sample) throws IOException {
        Typed audit = command("audit", sample.toString(), "--as", "json");

        JsonNode schema = READER.readTree(command("schema", "answer").out());
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema)
                .validate(READER.readTree(audit.out()))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_sentence_of_every_sample_is_filled_in(Path sample) throws IOException {
        List<String> unfilled = new ArrayList<>();
        for (JsonNode answer : READER.readTree(command("audit", sample.toString(), "--as", "json").out())
                .get("answers")) {
            if (answer.get("outcome").asText().equals("found") && answer.get("text").asText().matches(".*\\{.*\\}.*")) {
                unfilled.add(answer.get("check").asText() + ": " + answer.get("text").asText());
            }
        }
        assertThat(unfilled).isEmpty();
    }

    @Test
    void the_answer_is_the_same_bytes_in_another_country_and_another_hour() {
        String before = command("audit", MISTAKES, "--as", "json").out();
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Apia"));
            assertThat(command("audit", MISTAKES, "--as", "json").out()).isEqualTo(before);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"terminal", "html", "json", "sarif"})
    void out_names_the_file_and_the_screen_says_in_a_line_what_is_in_it(String form) throws IOException {
        Path file = folder.resolve("report");
        Typed audit = command("audit", MISTAKES, "--as", form, "--out", file.toString());

        assertThat(audit.status()).isEqualTo(1);
        assertThat(Files.size(file)).isGreaterThan(1000);
        assertThat(audit.out()).hasLineCount(1).contains(file.toString(), "Found ");
        assertThat(Files.readString(file)).doesNotContain("\u001B");
    }

    @Test
    void at_least_sets_from_which_level_on_the_status_is_1() {
        assertThat(command("audit", MISTAKES, "--at-least", "Low").status()).isEqualTo(1);
        assertThat(command("audit", MISTAKES, "--at-least", "high").status()).isEqualTo(1);
        assertThat(command("audit", MISTAKES, "--at-least", "hihg").err()).contains("Did you mean high?");
    }

    @Test
    void brief_is_a_line_a_finding() {
        Typed brief = command("audit", MISTAKES, "--brief");

        assertThat(brief.out().lines().filter(line -> line.startsWith("High")))
                .anyMatch(line -> line.contains("cam-gear-pin-hollow, intake"));
        assertThat(brief.out().lines().count()).isLessThan(command("audit", MISTAKES).out().lines().count() / 4);
    }

    // --- many records

    @Test
    void a_folder_is_all_its_records_with_a_page_each_and_a_summary() throws IOException {
        Typed audit = command("audit", SAMPLES, "--as", "html", "--out", folder.resolve("pages").toString());

        List<Path> samples = samples();
        assertThat(audit.out()).hasLineCount(samples.size() + 1);
        assertThat(audit.out().lines().reduce((a, b) -> b).orElseThrow()).startsWith(samples.size() + " records;");
        try (Stream<Path> pages = Files.list(folder.resolve("pages"))) {
            assertThat(pages).hasSize(samples.size());
        }
    }

    @Test
    void many_records_together_give_the_answers_that_they_give_alone() throws IOException {
        JsonNode together = READER.readTree(command("audit", SAMPLES, "--as", "json").out());

        List<Path> samples = samples();
        assertThat(together).hasSize(samples.size());
        for (int i = 0; i < samples.size(); i++) {
            assertThat(together.get(i)).as(samples.get(i).toString())
                    .isEqualTo(READER.readTree(command("audit", samples.get(i).toString(), "--as", "json").out()));
        }
    }

    @Test
    void several_pages_without_a_folder_are_refused() {
        assertThat(command("audit", SAMPLES, "--as", "html").err()).contains("name one with --out");
    }

    // --- bad files

    @Test
    void a_bad_file_is_one_plain_message_and_status_2() throws IOException {
        Files.createDirectory(folder.resolve("empty-folder"));
        for (String bad : List.of(folder.resolve("nowhere.yaml").toString(), folder.resolve("empty-folder").toString(),
                file("empty.yaml", new byte[0]), file("bytes.yaml", new byte[] {(byte) 0xFF, (byte) 0xFE, 0, 1}),
                file("broken.yaml", "a: [1, 2\nb: {".getBytes(StandardCharsets.UTF_8)),
                file("deep.yaml", ("a: " + "[".repeat(10_000)).getBytes(StandardCharsets.UTF_8)))) {
            Typed audit = command("audit", bad);
            assertThat(audit.status()).as(bad).isEqualTo(2);
            assertThat(audit.out()).as(bad).isEmpty();
            assertThat(audit.err()).as(bad).startsWith("leadlamp: ").doesNotContain("Exception", "\tat ", "failed");
            assertThat(audit.err().lines().count()).as(bad).isLessThanOrEqualTo(5);
        }
    }

    @Test
    void a_record_with_a_problem_is_audited_on_the_rest_and_status_2_goes_before_1() throws IOException {
        String record = Files.readString(Path.of(MISTAKES)).replace("form: hollow", "form: hollow, lenght: 12 mm");
        Files.createDirectories(folder.resolve("engines"));
        Files.copy(Path.of(SAMPLES, "engines", "tarn-12.yaml"), folder.resolve("engines/tarn-12.yaml"));
        String file = file("mine.yaml", record.getBytes(StandardCharsets.UTF_8));

        Typed audit = command("audit", file);

        assertThat(audit.status()).isEqualTo(2);
        assertThat(audit.out()).contains("cam-gear-pin-hollow, intake", "Left out", "lenght", "~~~~~~");
        assertThat(audit.err()).contains("could not be read");
    }

    // --- next and why

    @Test
    void next_says_what_to_put_right_and_what_settles_most() {
        Typed next = command("next", MISTAKES);

        assertThat(next.status()).isZero();
        assertThat(next.out()).containsSubsequence("Put right", "Can wait", "Settle", "The one that settles most", "Why");
        assertThat(next.out()).doesNotContain("Before cam gears fitted.");
    }

    @Test
    void why_prints_the_page_of_a_check_and_finds_the_nearest() {
        assertThat(command("why", "cam-gear-pin-hollow").out()).containsSubsequence("How it wrecks an engine",
                "How to settle it", "What to do", "Based on");
        assertThat(command("why", "cam-gear-pin-holow").err()).contains("The nearest is cam-gear-pin-hollow.");
        assertThat(command("why", "cam-gear-pin-holow").status()).isEqualTo(2);
    }

    @Test
    void why_of_a_word_says_what_it_means_and_which_checks_ask_about_it() {
        assertThat(command("why", "cam", "gear", "pins").out()).startsWith("cam gear pin\n")
                .contains("cam-gear-pin-hollow: ");
    }

    // --- helpers

    static List<Path> samples() throws IOException {
        List<Path> samples = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of(SAMPLES))) {
            files.filter(f -> f.toString().endsWith(".yaml")).sorted().forEach(samples::add);
        }
        return samples;
    }

    private String file(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes).toString();
    }
}
