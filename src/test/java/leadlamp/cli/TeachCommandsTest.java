package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Looks, exercises and marking as they are typed. */
class TeachCommandsTest {
    @TempDir
    private Path folder;

    @Test
    void looks_at_an_engine_sheet_are_a_sheet_for_the_visit() {
        Typed look = command("look", "sample-builds/engines/tarn-12.yaml");

        assertThat(look.status()).isZero();
        assertThat(look.out()).startsWith("Looks at Tarn 12\n").containsSubsequence("By the car: ", "[ ] oil-on-stick-and-cap",
                "Good:", "Bad:", "Caution:", "Cold start: ", "Covers off: ", "Borescope: ", "Sump off: ", "Head off: ");
        assertThat(look.out()).doesNotContain("What the looks say");
    }

    @Test
    void looks_at_a_record_say_what_was_seen_and_which_look_comes_next() throws IOException {
        Path page = folder.resolve("visit.html");
        Typed look = command("look", "sample-builds/second-hand-moraine-27.yaml", "--as", "html", "--out", page.toString());

        assertThat(look.status()).isZero();
        assertThat(Files.readString(page)).containsSubsequence("To reckon with before money changes hands", "What the looks say",
                "What stays unknown", "The look that is worth its effort next");
        assertThat(command("look", "sample-builds/second-hand-moraine-27.yaml", "--as", "pdf").err()).contains("There is no form");
    }

    @Test
    void an_exercise_is_made_answered_marked_and_never_written_over() throws IOException {
        Path out = folder.resolve("one");
        Path practice = folder.resolve("practice.yaml");

        assertThat(command("exercise", "--out", out.toString(), "--topic", "fasteners", "--faults", "1", "--seed", "7").status()).isZero();
        Typed marked = command("mark", out.resolve("answers.yaml").toString(), "--practice", practice.toString());
        assertThat(marked.status()).isZero();
        assertThat(marked.out()).contains("Found 0 of ", "To practise next", "leadlamp why ");
        assertThat(practice).content().contains("missed: 1, in a row: 0, due: 2");
        assertThat(command("exercise", "--out", out.toString(), "--seed", "8", "--faults", "1").err()).contains("is there already");
    }

    @Test
    void a_class_has_its_key_and_is_marked_in_one_table() throws IOException {
        Path out = folder.resolve("class");

        assertThat(command("exercise", "--out", out.toString(), "--topic", "fasteners", "--faults", "1", "--class", "2").status())
                .isZero();
        assertThat(out.resolve("key.html")).content().contains("<h2>01: exercise ", "<h2>02: exercise ");
        assertThat(command("mark", out.toString()).out()).contains("A class of 2", "Missed most", ": missed ");
    }

    @Test
    void what_is_typed_wrong_is_told_in_one_sentence() {
        assertThat(command("exercise", "--out", folder.toString(), "--topic", "fastenrs").err()).contains("Did you mean fasteners?");
        assertThat(command("exercise", "--out", folder.toString(), "--faults", "many").err())
                .isEqualTo("leadlamp: --faults wants a number from 1 to 20, not \"many\".\n");
        assertThat(command("exercise").err()).contains("The exercise wants a folder");
        assertThat(command("mark", folder.resolve("none.yaml").toString()).err()).contains("There is no answer file");
        assertThat(command("why", "--all").err()).contains("The handbook wants a folder");
    }
}
