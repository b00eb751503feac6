package leadlamp.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
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
        // A rod through the side is known by a patch in line with a throw; a record says only that there is a weld.
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

    @Provide
    Arbitrary<List<Fact>> signs() {
        List<Fact> all = List.of(seen("piston crown", "2", "valve print", 1), seen("piston crown", "3", "valve print", 2),
                seen("valve", "2 intake front", "clean rim", 3), seen("valve", "2 intake front", "bent", 4),
                seen("piston crown", "2", "peppered", 5), seen("main shell", "main 3", "wiped", 6),
                seen("main shell", "main 3", "even grey", 7), seen("main shell", "main 1", "even grey", 8),
                seen("oil filter", "engine", "metal", 9), seen("cam gear", "intake", "witness mark", 10),
                seen("cam gear", "intake", "one witness", 11), seen("cylinder", "2", "rust band", 12),
                seen("valve spring", "2 intake", "rusty", 13), seen("cam cover", "engine", "clean", 14),
                stated("build", "engine", "past", "overheated"), stated("cam gear pin", "intake", "origin", "home-made"));
        return Arbitraries.subsetOf(all).map(ArrayList::new);
    }

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
