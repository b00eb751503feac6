package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

class MainTest {
    @Test
    void help_names_every_command() {
        Typed help = command("help");

        assertThat(help.status()).isZero();
        assertThat(Help.COMMANDS).allSatisfy(c -> assertThat(help.out()).contains("leadlamp " + c));
        assertThat(help.out().lines()).allMatch(line -> line.length() <= 120);
    }

    @Test
    void nothing_typed_shows_the_help_and_is_no_success() {
        assertThat(command().status()).isEqualTo(2);
        assertThat(command().out()).isEqualTo(command("help").out());
    }

    @Test
    void an_unknown_command_names_the_nearest_in_one_sentence() {
        Typed typed = command("audti", "a.yaml");

        assertThat(typed.status()).isEqualTo(2);
        assertThat(typed.out()).isEmpty();
        assertThat(typed.err()).isEqualTo("leadlamp: There is no command \"audti\". Did you mean audit? Known: audit, "
                + "next, sheets, begin, why, look, exercise, mark, past, schema, help, version.\n");
    }

    @Test
    void what_was_typed_never_steers_the_terminal() {
        assertThat(command("\u001B[31mx").err()).doesNotContain("\u001B").contains("\\u001B[31mx");
    }

    @Test
    void the_schema_of_the_answer_comes_by_command() throws IOException {
        assertThat(new ObjectMapper().readTree(command("schema", "answer").out()).get("$schema").asText())
                .isEqualTo("https://json-schema.org/draft/2020-12/schema");
        assertThat(command("schema", "anwser").err()).contains("Did you mean answer?");
    }

    @Test
    void the_version_is_one_line() {
        assertThat(command("version").out()).startsWith("leadlamp ").hasLineCount(1);
    }

    @Test
    void a_reader_who_goes_away_is_no_fault() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();

        int status = Main.run(List.of("help"), new Say(failing("Broken pipe"), err, 80, false, false));

        assertThat(status).isZero();
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void a_full_disk_is_told_in_one_sentence() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();

        int status = Main.run(List.of("help"), new Say(failing("No space left on device"), err, 80, false, false));

        assertThat(status).isEqualTo(2);
        assertThat(err.toString()).isEqualTo("leadlamp: The results could not be written: No space left on device.\n");
    }

    private static OutputStream failing(String why) {
        return new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(why);
            }
        };
    }
}
