package leadlamp.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import leadlamp.audit.Way;
import leadlamp.record.Problem;
import leadlamp.record.Where;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RuleReaderTest {
    private static final String FILE = "rules/cam-drive/cam-gear-pin-hollow.drl";
    private static final String HEAD = """
            package leadlamp.rules.cam_drive;

            import leadlamp.facts.*;
            global leadlamp.audit.Findings findings;

            """;
    private static final String RULE = """
            rule "cam-gear-pin-hollow: form"
            when
                Ask( check == "cam-gear-pin-hollow", $gear : at )
                Stated( of == "cam gear pin", at == $gear, what == "form", $form : says,
                        says in ( "hollow", /* or split */ "slotted" ) )
                not OnSheet( of == "cam gear pin", near( $gear ), what == "form", says == $form )
            then
                findings.found( drools.getMatch() );
            end
            """;

    @Test
    void a_rule_is_read_into_its_patterns() {
        RuleReader.Read read = RuleReader.read(FILE, HEAD + RULE);
        assertThat(read.faults()).isEmpty();
        RuleReader.Rule rule = read.rules().get(0);
        assertThat(rule.rule().name()).isEqualTo("cam-gear-pin-hollow: form");
        assertThat(rule.where()).isEqualTo(new Where(FILE, 6, 1));
        assertThat(rule.patterns()).containsExactly(
                new Way.Pattern("Stated", false, Map.of("of", List.of("cam gear pin"), "what", List.of("form"), "says",
                        List.of("hollow", "slotted")), List.of(), "at == $gear"),
                new Way.Pattern("OnSheet", true, Map.of("of", List.of("cam gear pin"), "what", List.of("form")), List.of(),
                        "near( $gear )"));
    }

    @Test
    void each_quoted_word_has_its_line_and_column() {
        RuleReader.Rule rule = RuleReader.read(FILE, HEAD + RULE).rules().get(0);
        assertThat(rule.quoted()).extracting(RuleReader.Quoted::word).containsExactly("cam gear pin", "form", "hollow",
                "slotted", "cam gear pin", "form");
        assertThat(rule.quoted().get(3)).isEqualTo(new RuleReader.Quoted(new Where(FILE, 10, 49),
                "cam-gear-pin-hollow: form", "Stated", "says", "slotted", false, 0));
        assertThat(rule.quoted().get(5).negated()).isTrue();
        assertThat(rule.quoted().get(5).pattern()).isEqualTo(1);
    }

    @Test
    void a_flag_of_a_verdict_is_read() {
        String rule = RULE.replace("Stated( of == \"cam gear pin\", at == $gear, what == \"form\", $form : says,",
                "Verdict( of == \"cam gear pin diameter\", at == $gear, below )\n    OnSheet( $form : says,");
        RuleReader.Read read = RuleReader.read(FILE, HEAD + rule);
        assertThat(read.faults()).isEmpty();
        assertThat(read.rules().get(0).patterns().get(0).flags()).containsExactly("below");
    }

    @ParameterizedTest(name = "{0} becomes {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            says in (            | says not in (            | 10:13 | A rule does not say
            at == $gear          | at != $gear              | 9:35  | A rule does not say
            what == "form"       | what == 3                | 9:48  | A rule does not say
            what == "form"       | what == "form" && at == "engine" | 9:48  | A rule does not say
            what == "form"       | wath == "form"           | 9:48  | "wath" is no word of a Stated.
            what == "form"       | below                    | 9:48  | "below" is nothing that is so or not so of a Stated.
            what == "form"       | beside( $gear )          | 9:48  | A fact is not tied to a place by "beside".
            near( $gear )        | near( $gaer )            | 11:46 | Nothing before this names $gaer.
            at == $gear          | $gear : at               | 9:35  | $gear is named twice.
            Stated(              | Statd(                   | 9:5   | There is no fact "Statd".
            Stated(              | NotSeen(                 | 9:5   | No rule matches NotSeen.
            Stated(              | Ask(                     | 9:5   | A rule begins with its Ask, and has one.
            check == "cam-gear-pin-hollow" | of == "x"      | 8:5   | The Ask does not name its check.
            rule "cam-gear-pin-hollow: form" | rule "pin: form" | 6:1 | The rule is called "pin: form".
            when                 | salience 10 when         | 7:1   | `salience` has no place in a rule.
            when                 | no-loop when             | 7:1   | `no-loop` has no place in a rule.
            not OnSheet(         | eval( true ) OnSheet(    | 11:5  | A rule has no `eval`.
            package leadlamp.rules.cam_drive; | package leadlamp.rules; | 1:1 | The package is leadlamp.rules.
            import leadlamp.facts.*; | import java.util.*;  | 3:1   | Rules import facts only.
            findings.found( drools.getMatch() ); | insert( new Object() ); | 12:1 | What follows `then` is always one line.
            """)
    void what_a_rule_may_not_say_is_a_fault_with_its_place(String right, String wrong, String place, String what) {
        String text = (HEAD + RULE).replace(right, wrong);
        List<Problem> faults = RuleReader.read(FILE, text).faults();
        assertThat(faults).isNotEmpty();
        assertThat(faults.get(0).where()).hasToString(FILE + ":" + place);
        assertThat(faults.get(0).what()).startsWith(what);
        assertThat(RuleReader.read(FILE, text).rules().stream().filter(rule -> !text.startsWith("package leadlamp.rules;")
                && !text.contains("java.util"))).isEmpty();
    }

    @Test
    void two_alternatives_within_one_rule_are_refused() {
        String rule = RULE.replace("    not OnSheet", "    ( Seen( of == \"piston\" ) or Seen( of == \"liner\" ) )\n    not OnSheet");
        assertThat(RuleReader.read(FILE, HEAD + rule).faults()).extracting(Problem::what).containsExactly("A rule has no `or`.");
    }

    @Test
    void a_sum_over_facts_is_refused() {
        String rule = RULE.replace("    not OnSheet", "    Number() from accumulate( Seen( $s : sign ), count( $s ) )\n    not OnSheet");
        assertThat(RuleReader.read(FILE, HEAD + rule).faults()).extracting(Problem::what)
                .contains("`from`, `accumulate` and the like have no place in a rule.");
    }

    @Test
    void the_nearest_word_is_given() {
        List<Problem> faults = RuleReader.read(FILE, HEAD + RULE.replace("what == \"form\", $form", "waht == \"form\", $form")).faults();
        assertThat(faults.get(0).nearest()).contains("what");
        assertThat(RuleReader.told(faults)).isEqualTo("""
                rules/cam-drive/cam-gear-pin-hollow.drl:9:48: "waht" is no word of a Stated.
                    Expected: a Stated has: of, kind, at, what, says, told.
                    Nearest word: what
                """);
    }

    @Test
    void text_that_is_no_rule_at_all_is_told_with_its_line() {
        List<Problem> faults = RuleReader.read(FILE, HEAD + RULE.replace("when", "whenever")).faults();
        assertThat(faults).isNotEmpty();
        assertThat(faults.get(0).where().line()).isBetween(6, 8);
    }

    @Test
    void a_condition_sets_and_is_not_asked() {
        String text = """
                package leadlamp.rules.conditions;

                import leadlamp.facts.*;
                global leadlamp.audit.Conditions conditions;

                rule "hard duty"
                when
                    Stated( of == "use", what == "duty", says in ( "competition", "track" ) )
                then
                    conditions.holds( drools.getMatch() );
                end
                """;
        RuleReader.Read read = RuleReader.read("rules/conditions/hard-duty.drl", text);
        assertThat(read.faults()).isEmpty();
        assertThat(read.rules().get(0).rule().sets()).isTrue();
        assertThat(RuleReader.read("rules/conditions/hard-duty.drl", text.replace("Stated( of == \"use\", what == \"duty\", says",
                "Condition( name")).faults()).extracting(Problem::what)
                .containsExactly("A condition does not rest on another: they are worked out together.");
    }
}
