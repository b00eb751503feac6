package leadlamp.derive;

import static leadlamp.derive.Bench.in;
import static leadlamp.derive.Bench.lacks;
import static leadlamp.derive.Bench.upTo;
import static leadlamp.derive.Bench.value;
import static leadlamp.derive.Bench.values;
import static leadlamp.derive.Bench.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leadlamp.facts.Value;
import org.junit.jupiter.api.Test;

/** Days between dates are counted in the calendar; a year is 365.25 days and a month a twelfth of it. */
class AgesTest {
    private static final String TODAY = "steps: [{ crankshaft laid: 2026-03-14 }]\n";

    @Test
    void a_gauges_check_is_as_old_as_the_latest_day_of_the_record_says() {
        Derivation.Worked worked = worked("gauges:\n  mike: { kind: micrometer, checked: 2025-03-14 }\n  rule: { kind: rule }\n" + TODAY);
        Value age = value(worked, "gauge check age", "mike");
        assertThat(in(age)).isCloseTo(365 / 365.25 * 12, within(1e-9));
        assertThat(age.sum()).startsWith("2026-03-14 less 2025-03-14 = 12.0 months");
        assertThat(lacks(worked, "gauge check age", "rule")).containsExactly("gauge checked");
    }

    @Test
    void a_date_that_is_not_sharp_gives_both_ends() {
        Value age = value(worked("gauges:\n  mike: { kind: micrometer, checked: 2025 }\n" + TODAY), "gauge check age", "mike");
        assertThat(in(age)).as("from the last day of 2025: 73 days").isCloseTo(73 / 365.25 * 12, within(1e-9));
        assertThat(upTo(age)).as("from the first: 437 days").isCloseTo(437 / 365.25 * 12, within(1e-9));
    }

    @Test
    void a_part_may_be_older_by_its_mark_than_it_is_said_to_be() {
        Derivation.Worked worked = worked("parts: [{ belt tensioner: kept, age: 2 years, date made: 2017-02-01 }, { water pump: kept, age: 1 year }]\n"
                + TODAY);
        Value older = value(worked, "age against date mark", "belt tensioner");
        assertThat(older.kind()).as("the part that it is of").isEqualTo("belt tensioner");
        assertThat(in(older)).as("3328 days less two years").isCloseTo(3328 / 365.25 - 2, within(1e-9));
        assertThat(values(worked, "age against date mark")).as("the pump has no mark to be held against").hasSize(1);
    }

    @Test
    void a_part_at_a_place_keeps_its_place_and_its_name() {
        Derivation.Worked worked = worked("parts: [{ belt idler: kept, at: low, age: 2 years, date made: 2024-03 }]\n" + TODAY);
        Value idler = value(worked, "age against date mark", "low");
        assertThat(idler.kind()).isEqualTo("belt idler");
        assertThat(in(idler)).as("31 March 2024 is 713 days back").isCloseTo(713 / 365.25 - 2, within(1e-9));
        assertThat(upTo(idler)).as("and 1 March 743").isCloseTo(743 / 365.25 - 2, within(1e-9));
    }

    @Test
    void a_belt_that_has_run_has_years_and_a_new_one_lies_on_a_shelf() {
        Derivation.Worked kept = worked("parts: [{ timing belt: kept, age: 4 years }]\n" + TODAY);
        assertThat(in(value(kept, "timing belt years", "timing belt"))).isCloseTo(4, within(1e-9));
        assertThat(values(kept, "timing belt shelf years")).isEmpty();
        Derivation.Worked fresh = worked("parts: [{ timing belt: new, date made: 2016-05-01 }]\n" + TODAY);
        assertThat(in(value(fresh, "timing belt shelf years", "timing belt"))).isCloseTo(3604 / 365.25, within(1e-9));
        assertThat(values(fresh, "timing belt years")).isEmpty();
        assertThat(lacks(worked("parts: [{ timing belt: kept }]"), "timing belt years", "timing belt")).containsExactly("timing belt age");
    }

    @Test
    void the_belts_interval_stands_at_all_that_is_changed_with_it() {
        assertThat(values(worked("build: { name: nothing told }"), "belt interval")).extracting(Value::at)
                .containsExactly("water pump", "belt idler low", "belt tensioner");
        assertThat(in(value(worked("build: { name: nothing told }"), "belt interval", "water pump"))).isCloseTo(3, within(1e-9));
        assertThat(lacks(worked("build: { name: nothing told }", Bench.SHEET.replace("change after: { years: 3 }", "width: 22 mm")),
                "belt interval", "water pump")).containsExactly("sheet drive change after");
    }

    @Test
    void a_companion_of_unknown_age_says_whose_age_is_lacking() {
        Derivation.Worked worked = worked("parts: [{ timing belt: new }, { belt tensioner: kept, age: unknown }, { belt idler: kept, at: low }]\n");
        assertThat(lacks(worked, "companion age at next change", "belt tensioner")).containsExactly("belt tensioner age");
        assertThat(lacks(worked, "companion age at next change", "belt idler low")).containsExactly("belt idler age");
    }
}
