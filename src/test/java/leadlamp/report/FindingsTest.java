package leadlamp.report;

import static leadlamp.audit.Likelihood.OCCASIONAL;
import static leadlamp.audit.Severity.CRITICAL;
import static leadlamp.facts.LimitUsed.Whose.SHEET;
import static leadlamp.rank.Handmade.WORDS;
import static leadlamp.rank.Handmade.accepted;
import static leadlamp.rank.Handmade.below;
import static leadlamp.rank.Handmade.chances;
import static leadlamp.rank.Handmade.check;
import static leadlamp.rank.Handmade.found;
import static leadlamp.rank.Handmade.read;
import static leadlamp.rank.Handmade.seen;
import static leadlamp.rank.Handmade.sheet;
import static leadlamp.rank.Handmade.stated;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlamp.audit.Answer;
import leadlamp.audit.Check;
import leadlamp.audit.Way;
import leadlamp.rank.Course;
import leadlamp.rank.Handmade;
import leadlamp.rank.Ranking;
import leadlamp.record.Build;
import leadlamp.record.Fingerprint;
import leadlamp.report.ReportModel.Finding;
import org.junit.jupiter.api.Test;

class FindingsTest {
    private static final Check SEATING = check("valve-seating", "valve-gear", CRITICAL, OCCASIONAL, Map.of(), true,
            List.of(new Way("untested", List.of(), List.of(), "The valves were not tested.", Map.of(),
                    Optional.empty(), Optional.empty(), List.of())));

    @Test
    void what_is_found_alike_at_several_places_is_told_once() {
        ReportModel report = report(List.of(), untested("1 intake"), untested("1 exhaust"), untested("2 intake"),
                untested("2 exhaust"));

        assertThat(report.found()).hasSize(4);
        assertThat(report.findings()).singleElement().satisfies(one -> {
            assertThat(one.places()).isEqualTo("cylinder 1 and 2, each exhaust and intake");
            assertThat(one.texts()).containsExactly("The valves were not tested.");
            assertThat(one.evidence()).hasSize(1);
        });
        assertThat(report.tally().text()).startsWith("Found 1 (1 Serious) at 4 places, 1 can hurt somebody.");
        assertThat(report.standing().sentence()).startsWith("Before the next step: 1 finding to put right");
    }

    @Test
    void a_sentence_that_differs_in_its_place_alone_is_told_once_with_how_many_more() {
        Check valves = check("valve-seating", "valve-gear", CRITICAL, OCCASIONAL, Map.of(), true, List.of(new Way("untested", List.of(), List.of(),
                "Valve {place} was not tested.", Map.of(), Optional.empty(), Optional.empty(), List.of())));
        List<Answer> answers = new ArrayList<>();
        for (String place : List.of("1 intake", "1 exhaust", "2 intake")) {
            answers.add(found(valves, place, "untested", stated("steps", "engine", "valve leak tested", "left out", 12)));
        }

        assertThat(report(List.of(), answers.toArray(Answer[]::new)).findings()).singleElement().satisfies(one -> assertThat(one.texts())
                .containsExactly("Valve 1 exhaust was not tested. The same at 2 more places."));
    }

    @Test
    void of_more_sentences_than_are_read_those_farthest_outside_are_told() {
        Check gaps = check("ring-gap", "bottom-end", CRITICAL, OCCASIONAL, Map.of(), true, List.of(new Way("small", List.of(), List.of(),
                "The gap at {place} is {value}.", Map.of(), Optional.empty(), Optional.empty(), List.of())));
        List<Answer> answers = new ArrayList<>();
        for (int place = 1; place <= 8; place++) {
            // The least is at 7.
            double gap = 0.20 + 0.01 * Math.abs(7 - place);
            answers.add(found(gaps, "" + place, "small", below(read("piston ring end gap", "" + place, gap, 2, 0.01, "feeler", place), 0.30, SHEET)));
        }

        assertThat(report(List.of(), answers.toArray(Answer[]::new)).findings()).singleElement().satisfies(one -> {
            assertThat(one.places()).isEqualTo("cylinder 1, 2, 3, 4, 5, 6, 7 and 8");
            assertThat(one.texts()).hasSize(5);
            assertThat(one.texts().get(0)).startsWith("The gap at 7 is 0.20");
            assertThat(one.texts().get(1)).startsWith("The gap at 6 is 0.21");
            assertThat(one.texts().get(4)).isEqualTo("And so at 3 more places, with their own figures.");
        });
    }

    @Test
    void what_differs_in_certainty_is_told_apart() {
        ReportModel report = report(List.of(), untested("1"),
                found(SEATING, "2", seen("valve", "2", "burnt", "owner", 9)));

        assertThat(report.findings()).extracting(Finding::places).containsExactly("cylinder 1", "cylinder 2");
    }

    @Test
    void what_is_accepted_at_one_place_is_not_taken_for_accepted_at_another() {
        ReportModel report = report(List.of(accepted("valve-seating", "1")), untested("1"), untested("2"));

        assertThat(report.findings()).extracting(f -> f.places(), f -> f.lead().accepted().isPresent())
                .containsExactly(tuple("cylinder 1", true),
                        tuple("cylinder 2", false));
    }

    private static Answer untested(String at) {
        return found(SEATING, at, stated("steps", "engine", "valve leak tested", "left out", 7));
    }

    private static ReportModel report(List<Build.Accepted> accepted, Answer... answers) {
        Ranking ranking = Ranking.of(new ArrayList<>(List.of(answers)), Set.of(), sheet(), accepted, "", chances(Map.of()),
                WORDS);
        Build build = new Build(Handmade.RECORD, "Three", sheet(), List.of(), List.of(), Map.of(), List.of(), accepted,
                List.of(), List.of(), List.of(), Fingerprint.NONE);
        return Report.of(build, ranking, List.of(), List.of(), List.of(), new Course(List.of(), List.of()), WORDS);
    }
}
