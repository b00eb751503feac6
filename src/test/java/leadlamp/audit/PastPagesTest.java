package leadlamp.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leadlamp.record.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PastPagesTest {
    private static final String EVENT = """
            detonated:
              word: detonated
              event: detonation
              when: failed
              severity: Catastrophic
              contradicted by: [crowns clean of pepper]
              hidden: [{ damage: ring land cracked, look: rings off, looked: [ring land cracked] }]
              else: []
              basis: common practice, no source
            """;
    private static final String SIGN = """
            peppered-crown:
              sign: pepper marks
              looks like: fine grey pits
              shown by: [piston crown peppered]
              supports: { strong: [detonated] }
              basis: common practice, no source
            """;

    @TempDir
    private Path rules;

    @Test
    void a_sound_pair_of_pages_has_no_fault() throws IOException {
        assertThat(problems(SIGN, EVENT)).isEmpty();
    }

    @Test
    void a_word_that_is_the_name_of_no_fact_is_told_with_its_place_and_the_nearest() throws IOException {
        assertThat(problems(SIGN.replace("crown peppered", "crown pepered"), EVENT)).singleElement().satisfies(p -> {
            assertThat(p.what()).isEqualTo("\"piston crown pepered\" is the name of no fact.");
            assertThat(p.nearest()).contains("piston crown peppered");
            assertThat(p.where().toString()).endsWith("/past/signs.yaml:4:14");
        });
    }

    @Test
    void an_event_that_has_no_page_is_told_with_the_nearest() throws IOException {
        assertThat(problems(SIGN.replace("[detonated]", "[detonatd]"), EVENT)).singleElement().satisfies(p -> {
            assertThat(p.what()).isEqualTo("\"detonatd\" is no event of events.yaml.");
            assertThat(p.nearest()).contains("detonated");
        });
    }

    @Test
    void a_key_that_no_page_has_is_told_with_the_nearest() throws IOException {
        assertThat(problems(SIGN.replace("shown by", "shown bye"), EVENT)).anySatisfy(p -> {
            assertThat(p.what()).isEqualTo("\"shown bye\" is no key of a page.");
            assertThat(p.nearest()).contains("shown by");
        });
    }

    @Test
    void a_word_is_not_made_to_say_what_it_never_says() throws IOException {
        assertThat(problems(SIGN.replace("[piston crown peppered]", "[{ cam gear pin origin: [home-mad] }]"), EVENT)).singleElement()
                .satisfies(p -> {
                    assertThat(p.what()).isEqualTo("\"cam gear pin origin\" never says \"home-mad\".");
                    assertThat(p.nearest()).contains("home-made");
                });
    }

    @Test
    void a_reading_must_say_how_it_stands_to_its_limit() throws IOException {
        assertThat(problems(SIGN.replace("[piston crown peppered]", "[{ head hardness: belo }]"), EVENT)).singleElement()
                .satisfies(p -> assertThat(p.nearest()).contains("below"));
    }

    @Test
    void events_that_lead_round_to_themselves_are_refused() throws IOException {
        assertThat(problems(SIGN, EVENT.replace("  severity", "  after this: [detonated]\n  severity"))).singleElement()
                .satisfies(p -> assertThat(p.what()).isEqualTo("\"detonated\" leads round to itself."));
    }

    private List<Problem> problems(String signs, String events) throws IOException {
        Path folder = Files.createDirectories(rules.resolve("past"));
        Files.writeString(folder.resolve("signs.yaml"), signs);
        Files.writeString(folder.resolve("events.yaml"), events);
        return PastPages.ofFolder(rules, RulesFolder.project().words()).problems();
    }
}
