package leadlamp.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import leadlamp.facts.Fact;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.record.Where;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class PastTest {
    private static final PastPages PAGES = PastPages.ofFolder(Path.of("rules"), RulesFolder.project().words());
    private static final Past PAST = Past.of(PAGES);

    @Test
    void the_pages_of_the_past_have_no_fault() {
        assertThat(PAGES.problems()).isEmpty();
        assertThat(PAGES.events()).hasSize(53);
        assertThat(PAGES.signs()).hasSizeGreaterThan(95);
    }

    @Test
    void every_event_of_the_vocabulary_has_a_page_and_a_sign_that_speaks_for_it() {
        Set<String> words = new TreeSet<>();
        PAGES.events().forEach(e -> words.add(e.word()));
        assertThat(words).isEqualTo(new TreeSet<>(RulesFolder.project().words().events().keySet()));

        Set<String> supported = new TreeSet<>();
        for (RulebaseRule rule : PAGES.rules()) {
            if (rule.way().startsWith(Past.STRONGLY_FOR) || rule.way().startsWith(Past.WEAKLY_FOR)) {
                supported.add(rule.check());
            }
        }
        Set<String> ids = new TreeSet<>();
        PAGES.events().forEach(e -> ids.add(e.id()));
        assertThat(supported).isEqualTo(ids);
    }

    @Test
    void nothing_happened_where_there_is_no_sign() {
        Earlier earlier = PAST.read(List.of(stated("build", "engine", "past", "none told"), stated("cam gear pin", "intake", "form", "solid")));

        assertThat(earlier.happened()).isEmpty();
        assertThat(earlier.steps()).isEmpty();
    }

    @Test
    void what_is_only_told_is_weakly_supported() {
        Earlier earlier = PAST.read(List.of(stated("build", "engine", "past", "overheated")));

        assertThat(earlier.happened()).singleElement().satisfies(h -> {
            assertThat(h.event().id()).isEqualTo("overheated");
            assertThat(h.standing()).isEqualTo(Standing.WEAKLY_SUPPORTED);
        });
    }

    @Test
    void two_marks_of_one_touch_count_once_and_a_bent_valve_beside_them_is_a_second() {
        List<Fact> facts = new ArrayList<>(List.of(seen("piston crown", "2", "valve print", 1), seen("valve", "2 intake front", "clean rim", 2)));
        assertThat(standing(facts, "valve-struck-piston")).isEqualTo(Standing.SUPPORTED);

        facts.add(seen("valve", "2 intake front", "bent", 3));
        assertThat(standing(facts, "valve-struck-piston")).isEqualTo(Standing.STRONGLY_SUPPORTED);
    }

    @Test
    void one_grey_shell_does_not_clear_the_next() {
        List<Fact> facts = new ArrayList<>(List.of(seen("main shell", "main 3", "wiped", 1), seen("main shell", "main 1", "even grey", 2)));
        assertThat(standing(facts, "oil-starved")).isEqualTo(Standing.SUPPORTED);

        facts.add(seen("main shell", "main 3", "even grey", 3));
        assertThat(standing(facts, "oil-starved")).isEqualTo(Standing.WEAKLY_SUPPORTED);
    }

    @Test
    void what_is_seen_on_a_new_part_speaks_for_nothing_before_it() {
        Earlier earlier = PAST.read(List.of(seen("main shell", "main 3", "wiped", 1), seen("main shell", "main 3", "even grey", 2),
                stated("main shell", "main 3", "state", "new")));

        assertThat(earlier.setAside()).singleElement().satisfies(i -> assertThat(i.sign().id()).isEqualTo("even-grey-shells"));
        assertThat(earlier.happened()).filteredOn(h -> h.event().id().equals("oil-starved"))
                .allSatisfy(h -> assertThat(h.standing()).isEqualTo(Standing.SUPPORTED));
    }

    @Property(tries = 60)
    void the_order_of_the_facts_is_all_one(@ForAll("signs") List<Fact> facts, @ForAll Random dice) {
        List<Fact> shuffled = new ArrayList<>(facts);
        Collections.shuffle(shuffled, dice);

        assertThat(PAST.read(shuffled)).isEqualTo(PAST.read(facts));
    }

    @Property(tries = 60)
    void each_event_has_a_sign_for_it_and_each_of_its_lines_is_of_the_record(@ForAll("signs") List<Fact> facts) {
        Set<Where> lines = new TreeSet<>();
        facts.forEach(f -> lines.addAll(f.places()));

        for (Earlier.Happened happened : PAST.read(facts).happened()) {
            assertThat(happened.voices()).anyMatch(Voice::speaksFor);
            happened.voices().forEach(v -> assertThat(lines).containsAll(v.places()));
        }
    }

    @Property(tries = 80)
    void one_sign_more_never_lowers_what_it_speaks_for_and_never_raises_what_it_speaks_against(@ForAll("signs") List<Fact> facts,
            @ForAll("sign") Fact more) {
        List<Fact> with = new ArrayList<>(facts);
        with.add(more);
        Map<String, Standing> before = standings(facts);
        Map<String, Standing> after = standings(with);
        Set<String> pro = new TreeSet<>();
        Set<String> contra = new TreeSet<>();
        for (Earlier.Happened happened : PAST.read(List.of(more)).happened()) {
            pro.add(happened.event().id());
        }
        for (Earlier.Happened happened : PAST.read(with).happened()) {
            if (happened.voices().stream().anyMatch(v -> !v.speaksFor() && v.places().containsAll(more.places()))) {
                contra.add(happened.event().id());
            }
        }

        before.forEach((event, standing) -> {
            assertThat(after).as("what stood once stands somehow").containsKey(event);
            if (pro.contains(event) && !contra.contains(event)) {
                assertThat(after.get(event)).as(event).isGreaterThanOrEqualTo(standing);
            }
            if (contra.contains(event) && !pro.contains(event)) {
                assertThat(after.get(event)).as(event).isLessThanOrEqualTo(standing);
            }
            if (!contra.contains(event) && !pro.contains(event)) {
                assertThat(after.get(event)).as(event).isEqualTo(standing);
            }
        });
        assertThat(after.keySet()).allMatch(event -> before.containsKey(event) || pro.contains(event));
    }

    private static Map<String, Standing> standings(List<Fact> facts) {
        Map<String, Standing> all = new TreeMap<>();
        PAST.read(facts).happened().forEach(h -> all.put(h.event().id(), h.standing()));
        return all;
    }

    @Test
    void shells_that_are_wiped_and_worst_at_the_far_end_are_one_look_and_count_once() {
        List<Fact> facts = List.of(seen("main shell", "main 3", "wiped", 1), aside("main shell", "main 3", "wiped pattern", "far end"));

        assertThat(standing(facts, "oil-starved")).isEqualTo(Standing.SUPPORTED);
        assertThat(standings(facts)).containsEntry("sealant-in-oil", Standing.WEAKLY_SUPPORTED);
    }

    @Test
    void a_patch_in_line_with_a_throw_speaks_for_a_rod_and_a_plain_weld_only_faintly() {
        List<Fact> weld = List.of(seen("block", "engine", "weld", 1));
        List<Fact> patch = List.of(seen("block", "engine", "weld", 1), aside("block", "engine", "weld pattern", "at a throw"));

        assertThat(standing(weld, "rod-through-side")).isEqualTo(Standing.WEAKLY_SUPPORTED);
        assertThat(standing(patch, "rod-through-side")).isEqualTo(Standing.SUPPORTED);
        assertThat(standing(patch, "casting-repaired")).isEqualTo(Standing.SUPPORTED);
    }

    @Test
    void fresh_shells_lightly_wiped_speak_for_a_dry_start_before_starvation() {
        List<Fact> facts = List.of(seen("main shell", "main 1", "lightly wiped", 1), seen("big-end shell", "big end 2", "lightly wiped", 2));

        assertThat(standing(facts, "dry-start")).isEqualTo(Standing.SUPPORTED);
        assertThat(standing(facts, "oil-starved")).isEqualTo(Standing.WEAKLY_SUPPORTED);
    }

    @Test
    void castings_that_disagree_are_innocent_where_the_maker_exchanged_the_head() {
        Earlier earlier = PAST.read(List.of(seen("engine", "engine", "number disagrees", 1), stated("head", "engine", "origin", "maker's")));

        assertThat(earlier.happened()).isEmpty();
        assertThat(earlier.setAside()).singleElement().satisfies(i -> assertThat(i.sign().id()).isEqualTo("castings-disagree"));
    }

    private static Stated aside(String of, String at, String what, String says) {
        return new Stated(of, of, at, what, says, "", Map.of(), List.of(new Where("record.yaml", 1, 5)));
    }

    @Provide
    Arbitrary<Fact> sign() {
        return Arbitraries.of(ALL);
    }

    @Provide
    Arbitrary<List<Fact>> signs() {
        return Arbitraries.subsetOf(ALL).map(ArrayList::new);
    }

    private static final List<Fact> ALL = List.of(seen("piston crown", "2", "valve print", 1), seen("piston crown", "3", "valve print", 2),
                seen("valve", "2 intake front", "clean rim", 3), seen("valve", "2 intake front", "bent", 4),
                seen("piston crown", "2", "peppered", 5), seen("main shell", "main 3", "wiped", 6),
                seen("main shell", "main 3", "even grey", 7), seen("main shell", "main 1", "even grey", 8),
                seen("oil filter", "engine", "metal", 9), seen("cam gear", "intake", "witness mark", 10),
                seen("cam gear", "intake", "one witness", 11), seen("cylinder", "2", "rust band", 12),
                seen("valve spring", "2 intake", "rusty", 13), seen("cam cover", "engine", "clean", 14),
                stated("build", "engine", "past", "overheated"), stated("cam gear pin", "intake", "origin", "home-made"));

    private static Standing standing(List<Fact> facts, String event) {
        return PAST.read(facts).happened().stream().filter(h -> h.event().id().equals(event)).findFirst().orElseThrow().standing();
    }

    private static Seen seen(String of, String at, String sign, int line) {
        return new Seen(of, of, at, sign, "", Map.of(), List.of(new Where("record.yaml", line, 5)));
    }

    private static Stated stated(String of, String at, String what, String says) {
        return new Stated(of, of, at, what, says, "", Map.of(), List.of(new Where("record.yaml", 90, 5)));
    }
}
