package leadlamp.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class StepGraphTest {
    private static final Vocabulary WORDS = Rules.WORDS;
    private static final Set<String> TWIN_CAM_BELT = Set.of("belt drive", "belt or chain drive", "overhead cam", "hydraulic lash", "balance shafts", "jets",
            "clutch", "electric fuel pump", "electronic spark or fuel");
    private static final Function<String, Optional<Boolean>> BELT = word -> Optional.of(TWIN_CAM_BELT.contains(word));
    private static final Function<String, Optional<Boolean>> NOBODY_KNOWS = word -> Optional.empty();

    private static StepGraph graph(Function<String, Optional<Boolean>> layout) {
        return new StepGraph(WORDS, layout, List.of(), Map.of());
    }

    private static StepGraph graph(List<Map.Entry<String, String>> order, Map<String, Collection<String>> hidden) {
        return new StepGraph(WORDS, BELT, order, hidden);
    }

    @Test
    void every_step_stands_after_all_that_it_waits_for() {
        for (StepGraph graph : List.of(graph(BELT), graph(NOBODY_KNOWS), graph(word -> Optional.of(word.equals("chain drive"))))) {
            for (String step : graph.steps()) {
                for (String first : graph.after(step)) {
                    assertThat(graph.order(first)).as(first + " before " + step).isLessThan(graph.order(step));
                }
            }
            assertThat(graph.steps()).doesNotHaveDuplicates();
        }
    }

    @Test
    void a_step_that_the_engine_lacks_is_left_out_and_its_own_after_stand_in_for_it() {
        StepGraph belt = graph(BELT);
        assertThat(belt.steps()).contains("adjusters filled", "belt cover fitted", "balance shafts fitted")
                .doesNotContain("lash set", "rockers fitted", "liners held down", "piston jets fitted", "turbo primed");
        assertThat(belt.after("crankshaft laid")).contains("gallery plugs fitted").doesNotContain("piston jets fitted");
        assertThat(belt.behind(List.of("cam cover fitted"))).contains("head torqued", "cams fitted").doesNotContain("lash set");
        assertThat(graph(NOBODY_KNOWS).steps()).as("where nobody knows the step stays").contains("lash set", "rockers fitted");
    }

    @Test
    void belt_and_chain_put_the_timing_cover_on_different_sides_of_the_drive() {
        assertThat(graph(word -> Optional.of(Set.of("belt drive", "timing cover").contains(word))).behind(List.of("timing drive fitted")))
                .contains("timing cover fitted");
        assertThat(graph(word -> Optional.of(Set.of("chain drive", "timing cover").contains(word))).behind(List.of("timing cover fitted")))
                .contains("timing drive fitted", "turned by hand");
    }

    @Test
    void the_stage_puts_all_steps_before_it_behind() {
        Set<String> behind = graph(BELT).behind(List.of("head torqued"));
        assertThat(behind).contains("head torqued", "head set down", "crankshaft laid", "engine stripped", "valves fitted")
                .doesNotContain("sump fitted", "timing drive fitted", "cam gears fitted");
    }

    @Test
    void due_now_is_what_next_and_every_step_before_it_that_is_not_behind_will_close() {
        StepGraph graph = graph(BELT);
        assertThat(graph.dueNow(List.of("timing drive fitted"), List.of("head torqued", "oil pump fitted", "cam gears fitted",
                "crank gear fitted"))).containsExactly("balance shafts fitted", "timing drive fitted");
        assertThat(graph.dueNow(List.of("timing drive fitted"), List.of("head torqued")))
                .contains("crank gear fitted", "cam gears fitted").doesNotContain("sump fitted", "head torqued");
    }

    @Test
    void without_a_next_step_due_now_is_whatever_could_be_done_next() {
        assertThat(graph(BELT).dueNow(List.of(), List.of("head torqued")))
                .contains("cams fitted", "intake manifold fitted", "crank gear fitted")
                .doesNotContain("cam gears fitted", "belt cover fitted", "gearbox joined");
    }

    @Test
    void before_an_engine_is_bought_everything_is_due() {
        assertThat(graph(BELT).allDue(List.of("bought or refused"))).isTrue();
        assertThat(graph(BELT).allDue(List.of("sump fitted"))).isFalse();
    }

    @Test
    void a_part_closes_all_that_is_read_of_it_or_seen_at_it() {
        StepGraph graph = graph(BELT);
        assertThat(graph.closing("main journal diameter")).containsExactly("crankshaft laid");
        assertThat(graph.closing("main shell")).containsExactly("crankshaft laid");
        assertThat(graph.closing("main shell wiped")).containsExactly("crankshaft laid");
        assertThat(graph.closing("cam gear pin")).containsExactly("cam gears fitted");
        assertThat(graph.closing("cam gear pin diameter")).containsExactly("cam gears fitted");
        assertThat(graph.closing("sump metal")).as("washing takes the metal away").containsExactly("parts washed");
        assertThat(graph.closing("joint rod cap to rod 2")).containsExactly("sump fitted");
        assertThat(graph.closing("cylinder scored")).containsExactly("pistons fitted");
        assertThat(graph.closing("cylinder wet")).as("a step names just this: it can be seen through the plug hole").containsExactly("turned plugs out");
        assertThat(graph.closing("cam seal intake")).containsExactly("cam gears fitted", "belt cover fitted");
        assertThat(graph.closing("engine tilt")).containsExactly("engine in vehicle");
        assertThat(graph.closing("fan current")).isEmpty();
    }

    @Test
    void what_is_closed_of_a_kind_is_closed_of_its_members_unless_a_step_names_the_member() {
        StepGraph graph = graph(BELT);
        assertThat(graph.closing("head bolt neck diameter")).containsExactly("head torqued");
        assertThat(graph.closing("head face flatness")).as("not by any joint that is closed").containsExactly("head set down");
        assertThat(graph.closing("cover dowel")).isEmpty();
        assertThat(graph.closing("pick-up seal")).containsExactly("pick-up fitted");
    }

    @Test
    void a_value_worked_out_is_closed_with_what_it_is_worked_out_from() {
        assertThat(graph(BELT).closing("main bearing clearance by sizes")).contains("crankshaft laid");
        assertThat(graph(BELT).firstClosing("piston clearance", Set.of())).contains("pistons fitted");
    }

    @Test
    void the_first_closing_is_the_first_that_is_not_behind() {
        StepGraph graph = graph(BELT);
        assertThat(graph.firstClosing("cylinder hatch angle", Set.of())).contains("pistons fitted");
        assertThat(graph.firstClosing("cylinder hatch angle", graph.behind(List.of("pistons fitted")))).contains("first load");
        assertThat(graph.firstClosing("crankpin", graph.behind(List.of("pistons fitted")))).isEmpty();
    }

    @Test
    void the_sheet_moves_what_hides_a_joint() {
        StepGraph graph = graph(List.of(), Map.of("crank gear fitted", List.of("joint oil pump to block"), "sump fitted",
                List.of("main gallery front")));
        assertThat(graph.closing("joint oil pump to block")).containsExactly("crank gear fitted");
        assertThat(graph.closing("main gallery front")).containsExactly("sump fitted");
        assertThat(graph.refused()).isEmpty();
    }

    @Test
    void the_sheets_own_order_is_added_and_wins_over_a_line_of_the_vocabulary() {
        StepGraph graph = graph(List.of(Map.entry("oil pump fitted", "crank gear fitted"),
                Map.entry("sump fitted", "pick-up fitted")), Map.of());
        assertThat(graph.after("crank gear fitted")).contains("oil pump fitted");
        assertThat(graph.order("sump fitted")).isLessThan(graph.order("pick-up fitted"));
        assertThat(graph.refused()).isEmpty();
    }

    @Test
    void an_order_that_would_make_a_ring_is_left_out_and_says_which_way_round_it_goes() {
        StepGraph graph = graph(List.of(Map.entry("head torqued", "pistons fitted")), Map.of());
        assertThat(graph.refused()).containsExactly("`order` puts \"head torqued\" before \"pistons fitted\", but it waits for that step: "
                + "pistons fitted, then rod caps tight, then short block assembled, then head gasket laid, then head set down, "
                + "then head torqued. The line was left out.");
        assertThat(graph.order("pistons fitted")).isLessThan(graph.order("head torqued"));
    }

    @Test
    void a_word_that_is_no_step_is_named_with_the_nearest() {
        StepGraph graph = graph(List.of(Map.entry("sump fited", "head torqued")), Map.of("cam coverr fitted", List.of("x")));
        assertThat(graph.refused()).containsExactly("\"sump fited\" under `order` is no step; the nearest word is \"sump fitted\".",
                "\"cam coverr fitted\" under `hidden by` is no step; the nearest word is \"cam cover fitted\".");
    }

    @Test
    void a_layout_that_has_both_belt_and_chain_is_a_ring_and_is_refused() {
        assertThatThrownBy(() -> graph(word -> Optional.of(Set.of("belt drive", "chain drive", "timing cover").contains(word))))
                .isInstanceOf(VocabularyException.class).hasMessageContaining("wait for one another in a ring")
                .hasMessageContaining("timing cover fitted");
    }
}
