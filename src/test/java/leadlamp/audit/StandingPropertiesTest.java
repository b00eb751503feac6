package leadlamp.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class StandingPropertiesTest {
    private static final List<String> PLACES = List.of("engine", "1", "2", "2 intake", "2 intake front", "big end 2", "main 2", "main 3",
            "intake", "exhaust", "head to block");

    @Property
    void a_sign_for_it_never_lowers_an_event(@ForAll("voices") List<Voice> voices, @ForAll("voice") Voice more) {
        Voice added = turned(more, true);

        assertThat(Standing.of(with(voices, added))).isGreaterThanOrEqualTo(Standing.of(voices));
    }

    @Property
    void a_sign_against_it_never_raises_an_event(@ForAll("voices") List<Voice> voices, @ForAll("voice") Voice more) {
        Voice added = turned(more, false);

        assertThat(Standing.of(with(voices, added))).isLessThanOrEqualTo(Standing.of(voices));
    }

    @Property
    void the_order_of_the_signs_is_all_one(@ForAll("voices") List<Voice> voices, @ForAll Random dice) {
        List<Voice> shuffled = new ArrayList<>(voices);
        Collections.shuffle(shuffled, dice);

        assertThat(Standing.of(shuffled)).isEqualTo(Standing.of(voices));
    }

    @Property
    void weak_signs_alone_however_many_make_no_event_likely(@ForAll("voices") List<Voice> voices) {
        List<Voice> weak = new ArrayList<>();
        voices.forEach(v -> weak.add(new Voice(v.speaksFor(), false, v.sign(), v.family(), v.at(), v.told(), v.places())));

        assertThat(Standing.of(weak)).isLessThanOrEqualTo(Standing.WEAKLY_SUPPORTED);
    }

    @Property
    void signs_of_one_cause_count_once(@ForAll("voices") List<Voice> voices) {
        List<Voice> one = new ArrayList<>();
        voices.forEach(v -> one.add(new Voice(v.speaksFor(), v.strong(), v.sign(), "one cause", v.at(), v.told(), v.places())));

        assertThat(Standing.of(one)).isLessThanOrEqualTo(Standing.SUPPORTED);
    }

    @Property
    void a_sign_against_it_speaks_for_its_own_place_alone(@ForAll("voices") List<Voice> voices, @ForAll("voice") Voice more) {
        Voice elsewhere = new Voice(false, more.strong(), more.sign(), more.family(), "turbo", "", List.of());
        boolean whole = voices.stream().anyMatch(v -> v.at().equals("engine"));

        if (!whole) {
            assertThat(Standing.of(with(voices, elsewhere))).isEqualTo(Standing.of(voices));
        }
    }

    @Provide
    Arbitrary<Voice> voice() {
        return Combinators.combine(Arbitraries.of(true, false), Arbitraries.of(true, false), Arbitraries.integers().between(1, 5),
                Arbitraries.integers().between(1, 3), Arbitraries.of(PLACES)).as((speaksFor, strong, sign, family, at) ->
                        new Voice(speaksFor, strong, "sign " + sign, "family " + family, at, "", List.of()));
    }

    @Provide
    Arbitrary<List<Voice>> voices() {
        return voice().list().ofMinSize(1).ofMaxSize(9);
    }

    private static Voice turned(Voice voice, boolean speaksFor) {
        return new Voice(speaksFor, voice.strong(), voice.sign(), voice.family(), voice.at(), "", List.of());
    }

    private static List<Voice> with(List<Voice> voices, Voice more) {
        List<Voice> all = new ArrayList<>(voices);
        all.add(more);
        return all;
    }
}
