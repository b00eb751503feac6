package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An audit held against an earlier answer. */
class SinceTest {
    private static final ObjectMapper READER = new ObjectMapper();
    private static final Path SAMPLES = Path.of("sample-builds");
    private static final String LOCKER = "threads: { condition: residue, thread-locker: medium }";

    @TempDir
    private Path folder;
    private Path record;
    private Path old;

    @BeforeEach
    void keep_an_answer() throws IOException {
        Files.createDirectories(folder.resolve("engines"));
        Files.copy(SAMPLES.resolve("engines/tarn-12.yaml"), folder.resolve("engines/tarn-12.yaml"));
        record = Files.copy(SAMPLES.resolve("hill-climb-three.yaml"), folder.resolve("mine.yaml"));
        old = folder.resolve("old.json");
        command("audit", record.toString(), "--as", "json", "--out", old.toString());
    }

    @Test
    void the_same_record_again_has_nothing_new() {
        assertThat(plain(again("terminal"))).contains("nothing is new, nothing is worse and nothing is settled");
    }

    @Test
    void a_line_more_in_the_record_moves_nothing() throws IOException {
        write(Files.readString(record).replaceFirst("\nbuild:", "\n# a remark more\n# and another\nbuild:"));

        assertThat(plain(again("terminal"))).contains("nothing is new, nothing is worse and nothing is settled");
    }

    @Test
    void a_fault_put_right_is_settled_and_a_new_one_is_new() throws IOException {
        write(Files.readString(record).replace(LOCKER, "threads: { condition: clean, thread-locker: none, lubricant: dry }")
                .replace("- { crankshaft end float: 0.21 mm", "- { crankshaft end float: 0.41 mm"));
        Typed after = again("terminal");

        assertThat(plain(after)).contains("Since the earlier answer (", "Settled thread-locker-on-torque-figure, oil pump to block: was found, is clear.")
                .containsPattern("Since the earlier answer: [1-9]\\d* new, \\d+ worse, [1-9]\\d* settled\\.");
        // What is found and what to do first still stand at the end.
        assertThat(after.out().substring(after.out().indexOf("In short"))).contains("Found ", "Before ", "First: ");
    }

    @Test
    void what_was_accepted_and_is_so_no_longer_got_worse() throws IOException {
        String text = Files.readString(record);
        write(text.substring(0, text.indexOf("\naccepted:")) + "\n");

        JsonNode since = READER.readTree(again("json").out()).get("since");
        assertThat(checks(since.get("worse"))).contains("new-belt-old-companions belt idler low");
        assertThat(since.get("new")).isEmpty();
    }

    @Test
    void a_reading_taken_away_is_told_as_worse_where_it_was_clear_by_it() throws IOException {
        write(Files.readString(record).replaceFirst("  - \\{ head height: [^\n]*\n", ""));

        assertThat(again("brief").out()).contains("Since the earlier answer: ");
        JsonNode since = READER.readTree(again("json").out()).get("since");
        assertThat(since.get("worse").size() + since.get("settled").size()).isPositive();
    }

    @Test
    void the_page_has_a_section_of_its_own_and_links_to_the_findings() throws IOException {
        write(Files.readString(record).replace("form: hollow", "form: slotted").replace("cylinders: 3", "cylinders: 3"));
        command("audit", SAMPLES.resolve("full-sound-tarn-12.yaml").toString(), "--as", "json", "--out", old.toString());

        assertThat(again("html").out()).containsSubsequence("<h2 id=\"since\">Since the earlier answer</h2>", "<h3>New</h3>", "<a href=\"#found-");
    }

    @Test
    void the_log_for_code_hosts_says_which_results_are_new() throws IOException {
        write(Files.readString(record).replace("- { cam gear pin: kept, at: intake, form: hollow, origin: home-made", "- { cam gear pin: kept, at: intake, form: solid, origin: home-made"));

        List<String> states = new ArrayList<>();
        READER.readTree(again("sarif").out()).get("runs").get(0).get("results").forEach(r -> states.add(r.get("baselineState").asText()));
        assertThat(states).contains("unchanged", "updated").doesNotContain("");
    }

    @Test
    void a_file_that_is_no_answer_is_one_plain_message() throws IOException {
        for (String bad : List.of("{}", "not json", "[]", "{\"form\": 99, \"answers\": []}")) {
            Files.writeString(old, bad);
            Typed audit = again("terminal");
            assertThat(audit.status()).as(bad).isEqualTo(2);
            assertThat(audit.err()).as(bad).hasLineCount(1).doesNotContain("Exception");
        }
        Files.delete(old);
        assertThat(again("terminal").err()).contains("cannot be read");
    }

    private Typed again(String form) {
        return form.equals("brief") ? command("audit", record.toString(), "--brief", "--since", old.toString())
                : command("audit", record.toString(), "--as", form, "--since", old.toString());
    }

    /** As one line, whatever it was wrapped at. */
    private static String plain(Typed typed) {
        return typed.out().replaceAll("\\s+", " ");
    }

    private void write(String text) throws IOException {
        assertThat(text).isNotEqualTo(Files.readString(SAMPLES.resolve("hill-climb-three.yaml")));
        Files.writeString(record, text);
    }

    private static List<String> checks(JsonNode changes) {
        List<String> checks = new ArrayList<>();
        changes.forEach(change -> checks.add(change.get("check").asText() + " " + change.get("at").asText()));
        return checks;
    }
}
