package leadlamp.derive;

import static leadlamp.derive.Bench.lacks;
import static leadlamp.derive.Bench.said;
import static leadlamp.derive.Bench.worked;
import static org.assertj.core.api.Assertions.assertThat;

import leadlamp.facts.Stated;
import org.junit.jupiter.api.Test;

/** The class or size that the sheet's table picks. */
class ChooseTest {
    private static final String SHEET = Bench.SHEET + """
              head to block: { bolts: 8, thread: M10x1.25, gasket: { part: head gasket, thickness: { one notch: 1.00 mm, two notches: 1.10 mm, three notches: 1.20 mm } } }
            choose:
              head gasket:
                by: piston height
                take: greatest
                lines:
                  - { to: -0.15 mm, choose: one notch }
                  - { from: -0.15 mm, to: -0.05 mm, choose: two notches }
                  - { from: -0.05 mm, choose: three notches }
              main shell:
                by: [main housing class mark, main journal class mark]
                lines:
                  - { sum: 2, choose: red }
                  - { sum: 3, choose: blue }
            """;

    private static Derivation.Worked gasket(String heights, String parts) {
        return worked("parts: [" + parts + "]\nmeasurements: [{ piston height: [" + heights + "], unit: mm, doubt: 0.02 mm }]\n", SHEET);
    }

    private static Derivation.Worked marks(String housing, String journal) {
        return worked("parts: [{ main housing: kept, at: main 1, class mark: " + housing + " }, { main journal: kept, at: main 1, class mark: "
                + journal + " }]", SHEET);
    }

    @Test
    void a_gasket_goes_by_the_piston_that_stands_highest() {
        Derivation.Worked worked = gasket("-0.20, -0.10, -0.18", "{ head gasket: ready }");
        assertThat(said(worked, "head gasket", "engine", "class wanted")).containsExactly("two notches");
        Stated wanted = worked.words().stream().filter(s -> s.what().equals("class wanted")).findFirst().orElseThrow();
        assertThat(wanted.asides()).containsEntry("sum", "greatest piston height -0.10 mm: two notches");
    }

    @Test
    void a_height_that_may_lie_in_either_of_two_bands_picks_none() {
        Derivation.Worked worked = gasket("-0.20, -0.06, -0.18", "{ head gasket: ready }");
        assertThat(said(worked, "head gasket", "engine", "class wanted")).as("0.06 with a doubt of 0.02 is 0.04 to 0.08").isEmpty();
        assertThat(lacks(worked, "head gasket class wanted", "engine")).containsExactly("piston height");
    }

    @Test
    void the_edge_of_a_band_belongs_to_the_band_that_begins_there() {
        String exact = "measurements: [{ piston height: [-0.20, -0.05, -0.18], unit: mm, doubt: 0 mm }]\n";
        assertThat(said(worked(exact, SHEET), "head gasket", "engine", "class wanted")).containsExactly("three notches");
    }

    @Test
    void one_height_alone_does_not_tell_the_greatest() {
        Derivation.Worked worked = worked("measurements: [{ piston height: -0.10 mm, at: 2, doubt: 0.02 mm }]", SHEET);
        assertThat(said(worked, "head gasket", "engine", "class wanted")).isEmpty();
        assertThat(lacks(worked, "head gasket class wanted", "engine")).containsExactly("piston height");
    }

    @Test
    void the_gasket_fitted_is_thinner_thicker_or_the_same() {
        assertThat(said(gasket("-0.20, -0.10, -0.18", "{ head gasket: new, class mark: one notch }"), "head gasket", "engine",
                "class against wanted")).containsExactly("thinner");
        assertThat(said(gasket("-0.20, -0.10, -0.18", "{ head gasket: new, class mark: three notches }"), "head gasket", "engine",
                "class against wanted")).containsExactly("thicker");
        assertThat(said(gasket("-0.20, -0.10, -0.18", "{ head gasket: new, class mark: two notches }"), "head gasket", "engine",
                "class against wanted")).containsExactly("same");
    }

    @Test
    void marks_of_housing_and_journal_are_added() {
        assertThat(said(marks("1", "1"), "main shell", "main 1", "class wanted")).containsExactly("red");
        assertThat(said(marks("1", "2"), "main shell", "main 1", "class wanted")).containsExactly("blue");
    }

    @Test
    void a_mark_that_cannot_be_read_picks_no_shell() {
        Derivation.Worked worked = marks("1", "unknown");
        assertThat(said(worked, "main shell", "main 1", "class wanted")).isEmpty();
        assertThat(lacks(worked, "main shell class wanted", "main 1")).containsExactly("main journal class mark");
    }

    @Test
    void a_sum_that_the_table_does_not_have_is_the_sheets_gap() {
        assertThat(lacks(marks("2", "2"), "main shell class wanted", "main 1")).containsExactly("sheet choose main shell");
    }

    @Test
    void a_mark_that_was_told_picks_a_class_that_was_told() {
        Derivation.Worked worked = worked("parts: [{ main housing: kept, at: main 1, class mark: 1 }, { main journal: kept, at: main 1, "
                + "class mark: 1, told by: seller }]", SHEET);
        assertThat(worked.words()).filteredOn(s -> s.what().equals("class wanted")).singleElement()
                .satisfies(s -> assertThat(s.told()).isEqualTo("seller"));
    }
}
