package leadlamp.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which gauge would settle what is undecided: one in the drawer, else one that could be borrowed. */
class GaugesTest {
    private static final Shop PIN = Shop.sheet("""
            drive: { timing belt: { kind: belt, drives: camshafts, route: [crank gear, cam gear exhaust, cam gear intake, belt tensioner] } }
            gears:
              intake:  { form: plain, pin: { form: solid, diameter: 5.0 mm } }
              exhaust: { form: plain, pin: { form: solid, diameter: 5.0 mm } }
            limits: { cam gear pin diameter: { least: 4.97 mm } }
            """);
    private static final String READ = "\nmeasurements: [{ cam gear pin diameter: 4.98 mm, at: intake, with: %s }]";

    private static Optional<String> settling(Shop.Judged judged, String quantity, String place) {
        return Gauges.of(judged.build(), Shop.WORDS).settling(judged.at(quantity, place));
    }

    @Test
    void a_gauge_of_the_record_that_is_fine_enough_is_named() {
        Shop.Judged judged = PIN.record("gauges: { my micrometer: { kind: micrometer, resolution: 0.001 mm, doubt: 0.004 mm } }" + READ.formatted("vernier"));
        assertThat(judged.on("cam gear pin diameter", "intake")).isEqualTo("undecided");
        assertThat(settling(judged, "cam gear pin diameter", "intake")).contains("my micrometer");
    }

    @Test
    void of_two_the_finer_is_named() {
        Shop.Judged judged = PIN.record("gauges: { old micrometer: { kind: micrometer, doubt: 0.008 mm }, good micrometer: { kind: micrometer, doubt: 0.004 mm } }"
                + READ.formatted("vernier"));
        assertThat(settling(judged, "cam gear pin diameter", "intake")).contains("good micrometer");
    }

    @Test
    void a_gauge_whose_range_does_not_reach_the_size_is_not() {
        Shop.Judged judged = PIN.record("gauges: { big micrometer: { kind: micrometer, doubt: 0.004 mm, range: from 75 to 100 mm } }" + READ.formatted("vernier"));
        assertThat(settling(judged, "cam gear pin diameter", "intake")).as("another micrometer would do").contains("micrometer");
    }

    @Test
    void a_gauge_that_measures_something_else_is_not() {
        Shop.Judged judged = PIN.record("gauges: { depth gauge: { kind: depth micrometer, doubt: 0.001 mm } }" + READ.formatted("vernier"));
        assertThat(settling(judged, "cam gear pin diameter", "intake")).contains("micrometer");
    }

    @Test
    void where_the_record_has_none_the_kind_that_would_settle_it_is_named() {
        assertThat(settling(PIN.record(READ.formatted("vernier")), "cam gear pin diameter", "intake")).contains("micrometer");
    }

    @Test
    void where_no_gauge_is_fine_enough_none_is_named() {
        Shop.Judged judged = PIN.record("measurements: [{ cam gear pin diameter: 4.971 mm, at: intake, with: vernier }]");
        assertThat(judged.on("cam gear pin diameter", "intake")).isEqualTo("undecided");
        assertThat(settling(judged, "cam gear pin diameter", "intake")).isEmpty();
    }

    @Test
    void a_finer_kind_is_named_where_the_usual_one_is_too_coarse() {
        Shop shop = Shop.limits("main bearing clearance: { least: 0.020 mm, most: 0.050 mm }\n");
        Shop.Judged judged = shop.measured("- { main bearing clearance: 0.031 mm, at: main 1, with: plastic gauge }");
        assertThat(judged.on("main bearing clearance", "main 1")).isEqualTo("undecided, within");
        assertThat(settling(judged, "main bearing clearance", "main 1")).contains("bore gauge");
    }

    @Test
    void of_what_was_worked_out_the_reading_that_weighs_most_is_to_be_taken_again() {
        Shop shop = Shop.limits("main bearing clearance: { least: 0.020 mm, most: 0.060 mm }\n");
        Shop.Judged judged = shop.record("""
                gauges:
                  bore gauge A: { kind: bore gauge, resolution: 0.001 mm, doubt: 0.004 mm }
                  micrometer A: { kind: micrometer, resolution: 0.001 mm, doubt: 0.004 mm, range: from 25 to 50 mm }
                measurements:
                  - { main bearing bore with shells: 48.040 mm, at: main 1 at 0, with: bore gauge A }
                  - { main journal diameter: 48.00 mm, at: main 1 front at 0, with: vernier }
                """);
        assertThat(judged.on("main bearing clearance", "main 1")).isEqualTo("undecided, undecided");
        assertThat(settling(judged, "main bearing clearance", "main 1")).contains("micrometer A");
    }

    @Test
    void of_two_that_are_equally_fine_the_first_by_name_is_named() {
        Shop.Judged judged = PIN.record("gauges: { my micrometer: { kind: micrometer, doubt: 0.004 mm }, a micrometer: { kind: micrometer, doubt: 0.004 mm } }"
                + READ.formatted("vernier"));
        assertThat(settling(judged, "cam gear pin diameter", "intake")).contains("a micrometer");
    }

    @Test
    void a_range_that_just_reaches_the_size_reaches_it() {
        Shop.Judged judged = PIN.record("gauges: { small micrometer: { kind: micrometer, doubt: 0.004 mm, range: from 0 to 4.98 mm } }" + READ.formatted("vernier"));
        assertThat(settling(judged, "cam gear pin diameter", "intake")).contains("small micrometer");
        Shop.Judged from = PIN.record("gauges: { big micrometer: { kind: micrometer, doubt: 0.004 mm, range: from 4.98 to 25 mm } }" + READ.formatted("vernier"));
        assertThat(settling(from, "cam gear pin diameter", "intake")).contains("big micrometer");
    }

    @Test
    void what_would_still_be_too_coarse_for_what_the_others_bring_is_not_named() {
        Shop shop = Shop.limits("main bearing clearance: { least: 0.020 mm, most: 0.060 mm }\n");
        Shop.Judged judged = shop.record("""
                gauges:
                  old bore gauge: { kind: bore gauge, resolution: 0.001 mm, doubt: 0.030 mm }
                  micrometer A: { kind: micrometer, resolution: 0.001 mm, doubt: 0.004 mm, range: from 25 to 50 mm }
                measurements:
                  - { main bearing bore with shells: 48.040 mm, at: main 1 at 0, with: old bore gauge }
                  - { main journal diameter: 48.00 mm, at: main 1 front at 0, with: vernier }
                """);
        assertThat(judged.on("main bearing clearance", "main 1")).isEqualTo("undecided, undecided");
        assertThat(settling(judged, "main bearing clearance", "main 1")).isNotEqualTo(Optional.of("micrometer A"));
    }

    @Test
    void what_is_decided_needs_no_gauge() {
        Shop.Judged judged = PIN.record("measurements: [{ cam gear pin diameter: 5.00 mm, at: intake, with: micrometer }]");
        assertThat(settling(judged, "cam gear pin diameter", "intake")).isEmpty();
    }

    @Test
    void no_gauge_settles_what_was_only_told_or_was_said_of_several_places() {
        assertThat(settling(PIN.record("measurements: [{ cam gear pin diameter: 5.00 mm, at: intake, told by: seller }]"), "cam gear pin diameter", "intake"))
                .isEmpty();
        Shop gaps = Shop.limits("piston ring end gap: { least: 0.30 mm }\n");
        Shop.Judged judged = gaps.measured("- { piston ring end gap: from 0.20 to 0.36 mm, at: each first, with: feeler gauge }");
        assertThat(judged.on("piston ring end gap", "1 first")).isEqualTo("undecided");
        assertThat(settling(judged, "piston ring end gap", "1 first")).isEmpty();
    }
}
