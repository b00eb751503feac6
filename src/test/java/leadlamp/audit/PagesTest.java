package leadlamp.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leadlamp.record.Build;
import org.junit.jupiter.api.Test;

class PagesTest {
    @Test
    void compiled_pages_say_what_the_pages_say() throws IOException {
        Compiled compiled = new Compiled(compile(Small.RULES.checks()));

        assertThat(compiled.checks()).hasSameSizeAs(Small.RULES.checks());
        for (int i = 0; i < compiled.checks().size(); i++) {
            Check is = compiled.checks().get(i);
            Check was = Small.RULES.checks().get(i);
            assertThat(all(is)).isEqualTo(all(was));
        }
        assertThat(compiled.conditions()).isEqualTo(Small.RULES.conditions());
        assertThat(compiled.needs().get("cam gear pin form")).isEqualTo(Need.of("cam gear pin form", Small.RULES.words()));
    }

    private static List<Object> all(Check check) {
        List<Object> all = new ArrayList<>(List.of(check.id(), check.topic(), check.question(), check.askedOf(), check.applies(),
                check.severity(), check.likelihood(), check.shifts(), check.chain(), check.todo(), check.alsoCheck(),
                check.settleWith(), check.person(), check.caution(), check.teaches(), check.basis(), check.alsoCovers(),
                check.lastChance()));
        for (Way way : check.ways()) {
            all.addAll(List.of(way.name(), way.needs(), way.heeds(), way.found(), way.applies(), way.severity(), way.likelihood(),
                    way.patterns()));
        }
        return all;
    }

    @Test
    void the_same_pages_give_the_same_bytes_whatever_their_order() throws IOException {
        List<Check> turned = new ArrayList<>(Small.RULES.checks());
        Collections.reverse(turned);

        assertThat(compile(turned)).isEqualTo(compile(Small.RULES.checks()));
    }

    private static byte[] compile(List<Check> checks) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CheckPages.compile(checks, Small.RULES.conditions(), Small.RULES.words(), out);
        return out.toByteArray();
    }

    @Test
    void what_a_case_expects_is_read_as_it_is_written() {
        for (String text : List.of("clear", "not asked", "holds", "does not hold", "found by form, size",
                "cannot tell (not recorded, too coarse)")) {
            assertThat(Expected.read(text).orElseThrow()).hasToString(text);
        }
        assertThat(Expected.read("found")).isEmpty();
        assertThat(Expected.read("cannot tell (no idea)")).isEmpty();
        assertThat(Expected.read("found by ")).isEmpty();
    }

    @Test
    void many_builds_at_once_are_answered_as_each_alone() {
        List<Build> builds = new ArrayList<>();
        for (String form : List.of("hollow", "solid", "slotted", "coiled", "solid", "hollow")) {
            builds.add(Small.build(Small.TARN, "parts: [{ cam gear pin: new, at: each, form: " + form + " }]"));
        }

        List<Audit> together = Small.RULES.auditor().audit(builds);

        for (int i = 0; i < builds.size(); i++) {
            assertThat(together.get(i).answers().toString()).isEqualTo(Small.RULES.auditor().audit(builds.get(i)).answers().toString());
        }
    }

    @Test
    void answers_stand_in_the_order_of_check_and_place_with_numbers_by_size() {
        List<String> places = List.of("engine", "10 intake", "2 intake", "main 2", "main 10");
        List<String> sorted = new ArrayList<>(places);
        sorted.sort(Natural::compare);

        assertThat(sorted).containsExactly("2 intake", "10 intake", "engine", "main 2", "main 10");
    }
}
