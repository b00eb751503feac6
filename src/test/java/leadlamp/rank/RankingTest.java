package leadlamp.rank;

import static leadlamp.audit.Likelihood.FREQUENT;
import static leadlamp.audit.Likelihood.IMPROBABLE;
import static leadlamp.audit.Likelihood.OCCASIONAL;
import static leadlamp.audit.Likelihood.PROBABLE;
import static leadlamp.audit.Likelihood.REMOTE;
import static leadlamp.audit.Severity.CATASTROPHIC;
import static leadlamp.audit.Severity.CRITICAL;
import static leadlamp.audit.Severity.MARGINAL;
import static leadlamp.audit.Severity.NEGLIGIBLE;
import static leadlamp.rank.Handmade.WORDS;
import static leadlamp.rank.Handmade.accepted;
import static leadlamp.rank.Handmade.below;
import static leadlamp.rank.Handmade.chances;
import static leadlamp.rank.Handmade.check;
import static leadlamp.rank.Handmade.clear;
import static leadlamp.rank.Handmade.found;
import static leadlamp.rank.Handmade.gap;
import static leadlamp.rank.Handmade.later;
import static leadlamp.rank.Handmade.missing;
import static leadlamp.rank.Handmade.read;
import static leadlamp.rank.Handmade.seen;
import static leadlamp.rank.Handmade.sheet;
import static leadlamp.rank.Handmade.stated;
import static leadlamp.rank.Handmade.untold;
import static leadlamp.rank.Handmade.way;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import leadlamp.audit.Answer;
import leadlamp.audit.Check;
import leadlamp.audit.Gap;
import leadlamp.audit.Likelihood;
import leadlamp.audit.Severity;
import leadlamp.facts.Fact;
import leadlamp.facts.LimitUsed;
import leadlamp.record.Build;
import org.junit.jupiter.api.Test;

class RankingTest {
    private static final Fact PIN = stated("cam gear pin", "intake", "form", "hollow", 31);

    // --- how heavy

    @Test
    void a_condition_that_holds_moves_the_likelihood_one_step_up() {
        Weight weight = only(shifted(REMOTE, Map.of("rev limit raised", 1)), Set.of("rev limit raised"));

        assertThat(weight.usual()).isEqualTo(REMOTE);
        assertThat(weight.likelihood()).isEqualTo(OCCASIONAL);
        assertThat(weight.level()).isEqualTo(RiskLevel.HIGH);
        assertThat(weight.shifts()).containsExactly(new Shift("rev limit raised", 1));
    }

    @Test
    void two_conditions_move_it_one_step_all_the_same() {
        Weight weight = only(shifted(REMOTE, Map.of("rev limit raised", 1, "boosted", 1)),
                Set.of("rev limit raised", "boosted"));

        assertThat(weight.likelihood()).isEqualTo(OCCASIONAL);
        assertThat(weight.shifts()).containsExactly(new Shift("boosted", 1), new Shift("rev limit raised", 1));
    }

    @Test
    void one_up_and_one_down_leave_it_where_it_was_and_both_are_named() {
        Weight weight = only(shifted(REMOTE, Map.of("rev limit raised", 1, "valves clear pistons", -1)),
                Set.of("rev limit raised", "valves clear pistons"));

        assertThat(weight.likelihood()).isEqualTo(REMOTE);
        assertThat(weight.shifts()).hasSize(2);
    }

    @Test
    void a_condition_that_does_not_hold_moves_nothing() {
        Weight weight = only(shifted(REMOTE, Map.of("rev limit raised", 1)), Set.of("boosted"));

        assertThat(weight.likelihood()).isEqualTo(REMOTE);
        assertThat(weight.shifts()).isEmpty();
    }

    @Test
    void no_condition_moves_it_beyond_frequent_or_takes_the_hazard_away() {
        assertThat(only(shifted(FREQUENT, Map.of("boosted", 1)), Set.of("boosted")).likelihood()).isEqualTo(FREQUENT);
        assertThat(only(shifted(IMPROBABLE, Map.of("boosted", -1)), Set.of("boosted")).likelihood())
                .isEqualTo(IMPROBABLE);
    }

    @Test
    void a_way_has_its_own_severity_and_likelihood_in_place_of_the_pages() {
        Check check = check("pin", "cam-drive", CATASTROPHIC, PROBABLE, Map.of(), false,
                List.of(way("form", Optional.of(MARGINAL), Optional.of(REMOTE))));

        assertThat(only(check, Set.of()).level()).isEqualTo(RiskLevel.MEDIUM);
    }

    @Test
    void at_a_joint_the_harm_if_it_lets_go_stands_in_place_of_both() {
        Check check = check("locker", "fasteners", MARGINAL, OCCASIONAL, Map.of(), false,
                List.of(way("form", Optional.of(CRITICAL), Optional.empty())));
        Ranking ranking = Ranking.of(
                List.of(found(check, "oil pump to block", PIN), found(check, "sump to block 3", PIN),
                        found(check, "knock sensor to block", PIN)),
                Set.of(), sheet(harm("oil pump to block", "Catastrophic"), harm("sump to block", "Negligible")),
                List.of(), "", chances(Map.of()), WORDS);

        assertThat(ranking.found()).extracting(r -> r.ask().at(), r -> r.weights().get(0).severity(),
                r -> r.weights().get(0).ofTheJoint()).containsExactly(
                        tuple("oil pump to block", CATASTROPHIC, true),
                        tuple("knock sensor to block", CRITICAL, false),
                        tuple("sump to block 3", NEGLIGIBLE, true));
    }

    @Test
    void the_harm_of_one_joint_is_not_that_of_another() {
        Check check = check("crown", "bottom-end", MARGINAL, OCCASIONAL);
        Ranking ranking = Ranking.of(List.of(found(check, "2", PIN)), Set.of(),
                sheet(harm("oil pump to block", "Catastrophic")), List.of(), "", chances(Map.of()), WORDS);

        assertThat(ranking.found().get(0).worst()).isEqualTo(MARGINAL);
    }

    // --- how sure

    @Test
    void what_is_measured_outside_the_sheets_limit_is_proven() {
        assertThat(certainty("cam-drive", below(read("cam gear pin diameter", "intake", 4.90, 2, 0.006,
                "micrometer", 20), 4.97, LimitUsed.Whose.SHEET))).isEqualTo(Certainty.PROVEN);
    }

    @Test
    void what_rests_on_a_trade_number_is_inferred() {
        assertThat(certainty("cam-drive", below(read("cam gear pin diameter", "intake", 4.90, 2, 0.006,
                "micrometer", 20), 4.97, LimitUsed.Whose.TRADE))).isEqualTo(Certainty.INFERRED);
    }

    @Test
    void what_is_seen_and_recorded_is_proven_and_what_is_told_is_inferred() {
        assertThat(certainty("sensing", seen("trigger disc", "engine", "play", "", 40))).isEqualTo(Certainty.PROVEN);
        assertThat(certainty("sensing", seen("trigger disc", "engine", "play", "owner", 40)))
                .isEqualTo(Certainty.INFERRED);
    }

    @Test
    void what_is_read_off_the_past_is_inferred() {
        assertThat(certainty("history", seen("cam gear", "intake", "witness mark", "", 40)))
                .isEqualTo(Certainty.INFERRED);
    }

    // --- in what order

    @Test
    void the_higher_level_goes_first_and_harm_to_a_person_first_within_it() {
        Check serious = check("a-serious", "a", CRITICAL, OCCASIONAL);
        Check high = check("z-high", "z", CATASTROPHIC, PROBABLE);
        Check hurts = check("zz-hurts", "z", CATASTROPHIC, OCCASIONAL, Map.of(), true, List.of(way("form")));

        assertThat(order(found(serious, "engine", PIN), found(high, "engine", PIN), found(hurts, "engine", PIN)))
                .containsExactly("zz-hurts engine", "z-high engine", "a-serious engine");
    }

    @Test
    void then_certainty_then_last_chance_then_topic_check_and_place() {
        Check proven = check("z-proven", "z", CATASTROPHIC, PROBABLE);
        Check inferred = check("a-inferred", "a", CATASTROPHIC, PROBABLE);
        Check soon = check("z-soon", "z", CATASTROPHIC, PROBABLE);
        Check shut = check("a-shut", "a", CATASTROPHIC, PROBABLE);
        Check late = check("b-late", "a", CATASTROPHIC, PROBABLE);
        Ranking ranking = Ranking.of(
                List.of(found(inferred, "engine", seen("cam gear", "intake", "play", "owner", 3)),
                        found(late, "10", PIN), found(late, "2 intake", PIN), found(late, "2", PIN),
                        found(proven, "engine", PIN), found(soon, "engine", PIN), found(shut, "engine", PIN)),
                Set.of(), sheet(), List.of(), "",
                chances(Map.of("z-soon", new Chance("head set down", Chance.Standing.NEXT, 0),
                        "a-shut", new Chance("crankshaft laid", Chance.Standing.PASSED, 4),
                        "b-late", new Chance("sump fitted", Chance.Standing.LATER, 9))), WORDS);

        assertThat(names(ranking.found())).containsExactly("z-soon engine", "a-shut engine", "b-late 2",
                "b-late 2 intake", "b-late 10", "z-proven engine", "a-inferred engine");
    }

    @Test
    void the_order_is_the_same_however_the_answers_come_in() {
        List<Answer> answers = new ArrayList<>();
        Severity[] severities = Severity.values();
        Likelihood[] likelihoods = Likelihood.values();
        for (int i = 0; i < 60; i++) {
            Check check = check("check-" + i % 7, "topic-" + i % 3, severities[i % 7 % 4], likelihoods[i % 7 % 5],
                    Map.of(), i % 7 == 2, List.of(way("form")));
            String at = "" + i;
            answers.add(i % 3 == 0 ? found(check, at, PIN)
                    : i % 3 == 1 ? untold(check, at, missing("reading " + i % 4, at), missing("reading " + i % 5, at))
                            : clear(check, at));
        }
        Ranking first = Ranking.of(answers, Set.of(), sheet(), List.of(), "", chances(Map.of()), WORDS);
        Random random = new Random(12);
        for (int i = 0; i < 20; i++) {
            Collections.shuffle(answers, random);
            assertThat(Ranking.of(answers, Set.of(), sheet(), List.of(), "", chances(Map.of()), WORDS)).isEqualTo(first);
        }
        assertThat(first.all()).hasSameSizeAs(answers);
    }

    // --- what the builder lives with

    @Test
    void an_accepted_finding_moves_to_its_own_list() {
        Check check = check("pin", "cam-drive", CATASTROPHIC, PROBABLE);
        Ranking ranking = accepting(check, List.of(accepted("pin", "intake")));

        assertThat(names(ranking.found())).containsExactly("pin exhaust");
        assertThat(names(ranking.accepted())).containsExactly("pin intake");
        assertThat(ranking.accepted().get(0).accepted().orElseThrow().who()).isEqualTo("the builder");
        assertThat(ranking.all()).hasSize(2);
    }

    @Test
    void one_that_can_hurt_a_person_stays_in_the_main_list_and_is_marked() {
        Check check = check("pin", "cam-drive", CATASTROPHIC, PROBABLE, Map.of(), true, List.of(way("form")));
        Ranking ranking = accepting(check, List.of(accepted("pin", "intake")));

        assertThat(names(ranking.found())).containsExactly("pin exhaust", "pin intake");
        assertThat(ranking.found().get(1).accepted()).isPresent();
        assertThat(ranking.accepted()).isEmpty();
    }

    @Test
    void an_entry_that_accepts_nothing_found_is_kept_to_be_told() {
        Check check = check("pin", "cam-drive", CATASTROPHIC, PROBABLE);
        Build.Accepted stale = accepted("pin", "3");

        assertThat(accepting(check, List.of(stale)).unused()).containsExactly(stale);
    }

    @Test
    void an_acceptance_whose_time_is_over_by_the_records_own_dates_accepts_no_longer() {
        Check check = check("pin", "cam-drive", CATASTROPHIC, PROBABLE);
        Build.Accepted entry = accepted("pin", "intake"); // until 2027-03-01

        assertThat(on("2027-03-02", check, entry).accepted()).isEmpty();
        assertThat(on("2027-03-02", check, entry).ranOut()).containsExactly(entry);
        assertThat(on("2027-03-01", check, entry).accepted()).hasSize(1);
        assertThat(on("", check, entry).accepted()).hasSize(1);
    }

    private static Ranking on(String latest, Check check, Build.Accepted entry) {
        return Ranking.of(List.of(found(check, "intake", PIN)), Set.of(), sheet(), List.of(entry), latest,
                chances(Map.of()), WORDS);
    }

    // --- what cannot be told

    @Test
    void open_questions_go_by_worst_harm_then_probability_then_last_chance() {
        Check critical = check("a-critical", "a", CRITICAL, FREQUENT);
        Check worse = check("z-catastrophic", "z", CATASTROPHIC, REMOTE);
        Check soon = check("z-soon", "z", CATASTROPHIC, REMOTE);
        Ranking ranking = Ranking.of(
                List.of(untold(critical, "1", missing("a", "1")), untold(worse, "1", missing("b", "1")),
                        untold(worse, "2", gap(Gap.Why.TOO_COARSE, "b", OptionalDouble.of(0.4), "2")),
                        untold(soon, "1", missing("c", "1"))),
                Set.of(), sheet(), List.of(), "",
                chances(Map.of("z-soon", new Chance("head set down", Chance.Standing.NEXT, 0))), WORDS);

        assertThat(names(ranking.open())).containsExactly("z-catastrophic 2", "z-soon 1", "z-catastrophic 1",
                "a-critical 1");
    }

    @Test
    void what_is_due_later_has_a_list_of_its_own() {
        Check check = check("pin", "cam-drive", CATASTROPHIC, PROBABLE);
        Ranking ranking = Ranking.of(List.of(later(check, "intake", missing("cam gear pin form", "intake"))), Set.of(),
                sheet(), List.of(), "", chances(Map.of()), WORDS);

        assertThat(ranking.open()).isEmpty();
        assertThat(ranking.groups()).isEmpty();
        assertThat(names(ranking.later())).containsExactly("pin intake");
    }

    @Test
    void open_questions_are_grouped_under_the_reading_that_settles_most_of_them() {
        Check clearance = check("clearance", "bottom-end", CRITICAL, PROBABLE);
        Check taper = check("taper", "bottom-end", MARGINAL, PROBABLE);
        Check pin = check("pin", "cam-drive", CATASTROPHIC, PROBABLE);
        Ranking ranking = Ranking.of(
                List.of(untold(clearance, "main 1", missing("main journal diameter", "main 1"),
                        missing("main bearing bore with shells", "main 1")),
                        untold(taper, "main 1", missing("main journal diameter", "main 1")),
                        untold(taper, "main 2", missing("main journal diameter", "main 2")),
                        untold(pin, "intake", missing("cam gear pin form", "intake"))),
                Set.of(), sheet(), List.of(), "", chances(Map.of()), WORDS);

        assertThat(ranking.groups()).extracting(g -> g.want().word()).containsExactly("cam gear pin",
                "main journal diameter");
        assertThat(ranking.groups().get(0).details()).containsExactly("form");
        OpenGroup journals = ranking.groups().get(1);
        assertThat(names(journals.answers())).containsExactly("clearance main 1", "taper main 1", "taper main 2");
        assertThat(journals.places()).containsExactly("main 1", "main 2");
        assertThat(journals.also()).extracting(OpenGroup.Also::want)
                .containsExactly(new Want(Want.How.RECORD, "main bearing bore with shells"));
    }

    @Test
    void a_silent_sheet_and_a_coarse_gauge_are_settled_otherwise_than_by_a_reading() {
        assertThat(wanted(gap(Gap.Why.SHEET_SILENT, "cam gear pin form", OptionalDouble.empty(), "intake")))
                .containsExactly(new Want(Want.How.SHEET, "cam gear pin form"));
        assertThat(wanted(gap(Gap.Why.NO_LIMIT, "cam gear pin diameter", OptionalDouble.empty(), "intake")))
                .containsExactly(new Want(Want.How.SHEET, "limit of cam gear pin diameter"));
        assertThat(wanted(gap(Gap.Why.TOO_COARSE, "cam gear pin diameter", OptionalDouble.of(0.3), "intake")))
                .containsExactly(new Want(Want.How.FINER, "cam gear pin diameter"));
        assertThat(wanted(missing("sheet joint lubricant", "sump to block")))
                .containsExactly(new Want(Want.How.SHEET, "joint lubricant"));
    }

    @Test
    void signs_and_words_of_one_part_are_one_look_at_it() {
        assertThat(wanted(missing("cylinder coolant", "1"))).containsExactly(new Want(Want.How.LOOK, "cylinder"));
        assertThat(wanted(missing("cylinder fuel", "1"))).containsExactly(new Want(Want.How.LOOK, "cylinder"));
        assertThat(wanted(missing("cylinder bore", "1"))).containsExactly(new Want(Want.How.RECORD, "cylinder bore"));
        assertThat(wanted(missing("joint face wet", "sump to block")))
                .containsExactly(new Want(Want.How.LOOK, "joint face"));
        assertThat(wanted(missing("joint thread-locker", "sump to block")))
                .containsExactly(new Want(Want.How.JOINT, "sump to block"));
    }

    @Test
    void joints_of_which_the_same_is_wanted_are_one_group() {
        Check locker = check("locker", "fasteners", CRITICAL, OCCASIONAL);
        Check bolt = check("bolt", "fasteners", MARGINAL, OCCASIONAL);
        Ranking ranking = Ranking.of(
                List.of(untold(locker, "sump to block", missing("joint thread-locker", "sump to block")),
                        untold(locker, "cam cap to head", missing("joint thread-locker", "cam cap to head")),
                        untold(bolt, "head to block", missing("joint class", "head to block")),
                        untold(locker, "head to block", missing("joint thread-locker", "head to block"))),
                Set.of(), sheet(), List.of(), "", chances(Map.of()), WORDS);

        assertThat(ranking.groups()).extracting(g -> g.want().word(), OpenGroup::places, OpenGroup::details)
                .containsExactly(
                        tuple("", List.of("cam cap to head", "sump to block"), List.of("thread-locker")),
                        tuple("head to block", List.of(), List.of("class", "thread-locker")));
    }

    private static List<Want> wanted(Gap gap) {
        return new Wants(WORDS).of(gap).stream().map(Wants.Wanted::want).toList();
    }

    // --- helpers

    private static Ranking accepting(Check check, List<Build.Accepted> entries) {
        return Ranking.of(List.of(found(check, "intake", PIN), found(check, "exhaust", PIN)), Set.of(), sheet(),
                entries, "", chances(Map.of()), WORDS);
    }

    private static Check shifted(Likelihood likelihood, Map<String, Integer> shifts) {
        return check("pin", "cam-drive", CATASTROPHIC, likelihood, shifts, false, List.of(way("form")));
    }

    private static Weight only(Check check, Set<String> conditions) {
        return Ranking.of(List.of(found(check, "intake", PIN)), conditions, sheet(), List.of(), "", chances(Map.of()),
                WORDS)
                .found().get(0).weights().get(0);
    }

    private static Certainty certainty(String topic, Fact evidence) {
        Check check = check("pin", topic, CATASTROPHIC, PROBABLE);
        return Ranking.of(List.of(found(check, "intake", evidence)), Set.of(), sheet(), List.of(), "", chances(Map.of()),
                WORDS)
                .found().get(0).certainty().orElseThrow();
    }

    private static String[] harm(String joint, String word) {
        return new String[] {"joint", joint, "harm if it lets go", word};
    }

    private static List<String> order(Answer... answers) {
        return names(Ranking.of(List.of(answers), Set.of(), sheet(), List.of(), "", chances(Map.of()), WORDS).found());
    }

    private static List<String> names(List<Ranked> list) {
        return list.stream().map(r -> r.check().id() + " " + r.ask().at()).toList();
    }
}
