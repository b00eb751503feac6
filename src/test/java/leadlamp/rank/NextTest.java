package leadlamp.rank;

import static leadlamp.audit.Likelihood.PROBABLE;
import static leadlamp.audit.Severity.CATASTROPHIC;
import static leadlamp.audit.Severity.CRITICAL;
import static leadlamp.audit.Severity.MARGINAL;
import static leadlamp.rank.Handmade.WORDS;
import static leadlamp.rank.Handmade.chances;
import static leadlamp.rank.Handmade.check;
import static leadlamp.rank.Handmade.found;
import static leadlamp.rank.Handmade.later;
import static leadlamp.rank.Handmade.missing;
import static leadlamp.rank.Handmade.sheet;
import static leadlamp.rank.Handmade.stated;
import static leadlamp.rank.Handmade.untold;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import leadlamp.audit.Answer;
import leadlamp.audit.Check;
import org.junit.jupiter.api.Test;

class NextTest {
    private static final Check WORST = check("worst", "cam-drive", CATASTROPHIC, PROBABLE);
    private static final Check BAD = check("bad", "bottom-end", CRITICAL, PROBABLE);
    private static final Check SLIGHT = check("slight", "sealing", MARGINAL, PROBABLE);

    @Test
    void the_reading_that_settles_the_worst_question_goes_before_one_that_settles_more_of_a_lesser_harm() {
        Next next = next(untold(WORST, "intake", missing("cam gear pin form", "intake")),
                untold(SLIGHT, "1", missing("flatness", "1")), untold(SLIGHT, "2", missing("flatness", "2")));

        assertThat(next.best().orElseThrow().want().word()).isEqualTo("cam gear pin");
        assertThat(next.best().orElseThrow().settles(CATASTROPHIC)).isEqualTo(1);
        assertThat(next.second().orElseThrow().want().word()).isEqualTo("flatness");
    }

    @Test
    void of_one_harm_the_reading_that_settles_more_goes_first() {
        Next next = next(untold(BAD, "1", missing("a", "1")), untold(BAD, "2", missing("b", "2")),
                untold(BAD, "3", missing("b", "3")));

        assertThat(next.best().orElseThrow().want().word()).isEqualTo("b");
        assertThat(next.best().orElseThrow().places()).containsExactly("2", "3");
    }

    @Test
    void a_reading_that_only_helps_is_weighed_after_one_that_settles() {
        Next next = next(untold(WORST, "1", missing("a", "1"), missing("b", "1")),
                untold(SLIGHT, "2", missing("c", "2")));

        assertThat(next.best().orElseThrow().want().word()).isEqualTo("c");
        assertThat(next.second().orElseThrow().helps()).hasSize(1);
        assertThat(next.second().orElseThrow().settles()).isEmpty();
    }

    @Test
    void it_changes_when_the_reading_is_added() {
        Answer flatness = untold(SLIGHT, "1", missing("flatness", "1"));
        Answer pin = untold(WORST, "intake", missing("cam gear pin form", "intake"));

        assertThat(next(pin, flatness).best().orElseThrow().want().word()).isEqualTo("cam gear pin");
        assertThat(next(flatness).best().orElseThrow().want().word()).isEqualTo("flatness");
        assertThat(next().best()).isEmpty();
    }

    @Test
    void where_nothing_is_due_what_is_due_later_is_weighed() {
        Next next = next(later(WORST, "engine", missing("oil pressure", "engine")));

        assertThat(next.settle()).isEmpty();
        assertThat(next.best().orElseThrow().want().word()).isEqualTo("oil pressure");
    }

    @Test
    void what_a_later_step_closes_can_wait() {
        Ranking ranking = Ranking.of(
                List.of(found(WORST, "1", stated("a", "1", "form", "hollow", 3)),
                        found(BAD, "1", stated("a", "1", "form", "hollow", 3)),
                        found(SLIGHT, "1", stated("a", "1", "form", "hollow", 3))),
                Set.of(), sheet(), List.of(), "",
                chances(Map.of("worst", new Chance("sump fitted", Chance.Standing.LATER, 5),
                        "bad", new Chance("head set down", Chance.Standing.NEXT, 0))), WORDS);
        Next next = Next.of(ranking, WORDS);

        assertThat(next.putRight()).extracting(r -> r.check().id()).containsExactly("bad", "slight");
        assertThat(next.after()).extracting(r -> r.check().id()).containsExactly("worst");
    }

    private static Next next(Answer... answers) {
        return Next.of(Ranking.of(List.of(answers), Set.of(), sheet(), List.of(), "", chances(Map.of()), WORDS), WORDS);
    }
}
