package leadlamp.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import leadlamp.record.Problem;
import leadlamp.record.Where;
import org.junit.jupiter.api.Test;

class ProblemTextTest {
    @Test
    void a_message_says_what_is_wrong_where_what_was_expected_and_what_became_of_the_rest() {
        assertThat(String.join("\n", ProblemText.block(Example.problem()))).isEqualTo("""
                spring-rebuild.yaml:23:36: "thread-loker" is not something a thread can have.
                    threads: { condition: residue, thread-loker: medium }
                                                   ~~~~~~~~~~~~
                  Nearest word: thread-locker. A thread can have: condition, thread-locker, lubricant.
                  The rest of "oil pump to block" was read; checks that need its thread-locker say "cannot tell".""");
    }

    @Test
    void in_one_line_it_holds_the_same_without_the_place() {
        assertThat(ProblemText.message(Example.problem())).startsWith("\"thread-loker\" is not something")
                .contains("Nearest word: thread-locker.").endsWith("say \"cannot tell\".").doesNotContain("\n");
    }

    @Test
    void a_file_as_a_whole_has_neither_line_nor_underline() {
        Problem problem = new Problem(new Where("notes.pdf", 0, 0), 0, "", "This is no YAML.",
                "A build record is a text file.", Optional.empty(), "Nothing of it was read.");

        assertThat(ProblemText.block(problem)).containsExactly("notes.pdf: This is no YAML.",
                "  A build record is a text file.", "  Nothing of it was read.");
    }

    @Test
    void a_line_of_a_thousand_letters_is_cut_round_what_is_meant() {
        String line = "x".repeat(500) + "wrong" + "y".repeat(500);
        List<String> block = ProblemText.block(new Problem(new Where("a.yaml", 1, 501), 5, line, "No.", "",
                Optional.empty(), ""));

        assertThat(block.get(1)).hasSizeLessThan(120).contains("xwrongy").startsWith("    ...").endsWith("...");
        assertThat(block.get(2).indexOf('~')).isEqualTo(block.get(1).indexOf("wrong"));
        assertThat(block.get(2)).endsWith("~~~~~").doesNotEndWith("~~~~~~");
    }

    @Test
    void control_characters_in_the_line_are_shown_and_the_underline_still_fits() {
        List<String> block = ProblemText.block(new Problem(new Where("a.yaml", 1, 6), 3, "\u001B[1m: bad", "No.", "",
                Optional.empty(), ""));

        assertThat(block.get(1)).isEqualTo("    \\u001B[1m: bad");
        assertThat(block.get(2)).isEqualTo("    " + " ".repeat(10) + "~~~");
    }

    @Test
    void a_place_beyond_the_end_of_the_line_breaks_nothing() {
        assertThat(ProblemText.block(new Problem(new Where("a.yaml", 1, 99), 9, "short", "No.", "", Optional.empty(),
                ""))).containsExactly("a.yaml:1:99: No.", "    short");
    }
}
