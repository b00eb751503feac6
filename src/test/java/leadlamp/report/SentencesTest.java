package leadlamp.report;

import static leadlamp.audit.Likelihood.PROBABLE;
import static leadlamp.audit.Severity.CATASTROPHIC;
import static leadlamp.rank.Handmade.below;
import static leadlamp.rank.Handmade.read;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.audit.Check;
import leadlamp.audit.Finding;
import leadlamp.audit.Way;
import leadlamp.facts.Ask;
import leadlamp.facts.Fact;
import leadlamp.facts.LimitUsed;
import leadlamp.rank.Handmade;
import org.junit.jupiter.api.Test;

class SentencesTest {
    private static final Fact THIN = below(read("cam gear pin diameter", "intake", 4.90, 2, 0.006, "micrometer A", 3),
            4.97, LimitUsed.Whose.SHEET);
    private static final Fact SHORT = below(read("cam gear pin length", "intake", 10.0, 1, 0.05, "vernier", 4), 12,
            LimitUsed.Whose.TRADE);

    @Test
    void the_place_and_what_the_rule_binds_are_filled_in() {
        assertThat(said("The pin of the {place} cam gear is {form}.")).isEqualTo(
                "The pin of the intake cam gear is hollow.");
    }

    @Test
    void a_sentence_that_begins_with_a_name_begins_with_a_capital() {
        assertThat(said("{form} is not solid.")).isEqualTo("Hollow is not solid.");
    }

    @Test
    void value_limit_and_gauge_are_those_of_the_one_verdict() {
        assertThat(said("It measures {value} by {gauge}; the least allowed is {limit}.", THIN)).isEqualTo(
                "It measures 4.90 ± 0.006 mm by micrometer A; the least allowed is 4.97 mm.");
    }

    @Test
    void with_more_than_one_verdict_the_quantity_is_named() {
        assertThat(said("{value of cam gear pin length}, {limit of cam gear pin length}; {value of cam gear pin "
                + "diameter}", THIN, SHORT)).isEqualTo(
                        "10.0 ± 0.05 mm, 12.0 mm (the trade's number, the sheet is silent); 4.90 ± 0.006 mm");
    }

    @Test
    void a_value_that_has_no_limit_is_said_as_well() {
        assertThat(said("It stands at {value} by {gauge}.", read("joint torque", "intake", 30, 0, 1.2, "wrench A", 3)))
                .isEqualTo("It stands at 30 ± 1.2 mm by wrench A.");
    }

    @Test
    void a_name_that_nothing_binds_stays_to_be_seen() {
        assertThat(said("It is {nothing}, {value}.")).isEqualTo("It is {nothing}, {value}.");
    }

    @Test
    void a_word_of_the_record_is_never_read_as_a_name() {
        Finding finding = new Finding(new Ask("pin", "", "{form}"), "form", List.of(), Map.of("form", "{place}"));

        assertThat(Sentences.fill("{place} {form}", finding)).isEqualTo("{form} {place}");
    }

    @Test
    void a_lone_brace_stays() {
        assertThat(said("one { brace")).isEqualTo("one { brace");
        assertThat(Sentences.names("The {place} is {form}, { brace")).containsExactly("place", "form");
    }

    private static String said(String sentence, Fact... evidence) {
        Check check = Handmade.check("pin", "cam-drive", CATASTROPHIC, PROBABLE, Map.of(), false,
                List.of(new Way("form", List.of(), List.of(), sentence, Map.of(), Optional.empty(), Optional.empty(),
                        List.of())));
        return Sentences.of(check, new Finding(new Ask("pin", "", "intake"), "form", List.of(evidence),
                Map.of("form", "hollow")));
    }
}
