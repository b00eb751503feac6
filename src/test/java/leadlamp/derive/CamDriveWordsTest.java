package leadlamp.derive;

import static leadlamp.derive.Bench.lacks;
import static leadlamp.derive.Bench.said;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What the record tells of parts that the sheet's routes name. */
class CamDriveWordsTest {
    private static final String SHEET = """
            sheet: invented
            layout: { arrangement: in-line, cylinders: 3, numbered from: front, valve gear: overhead cam, camshafts: [intake, exhaust], balance shafts: [left] }
            drive:
              timing belt:
                kind: belt
                drives: camshafts
                runs: dry
                route: [crank gear, water pump, cam gear exhaust, cam gear intake, belt idler low, belt tensioner]
                teeth: { timing belt: 124, crank gear: 22, cam gear: 44 }
                shares the belt: [water pump, belt idler low, belt tensioner, front crank seal]
                tensioner: { form: hydraulic, extension: { least: 6 mm, most: 12 mm } }
            gears: { crank gear: { key: { width: 5 mm }, bolt: crank pulley to crankshaft } }
            timed shafts: { balance shaft left: { turns: 1 } }
            joints: { crank pulley to crankshaft: { torque: 90 N·m } }
            """;

    private static Derivation.Worked worked(String record) {
        return Bench.worked(record, SHEET);
    }

    private static String beltShows(String record) {
        return String.join(", ", said(worked(record), "timing belt", "timing belt", "shows"));
    }

    @Test
    void what_was_found_on_the_old_belt_is_no_fault_of_the_new_one_and_proves_nothing_of_it() {
        String cracked = "observations: [{ timing belt: cracked, at: timing belt, as: found }]\n";
        String looked = "observations: [{ timing belt: clear, of: [kinked, cracked, edge wear, teeth damaged], at: timing belt, as: found }]\n";
        assertThat(beltShows("parts: [{ timing belt: new }]\n" + cracked)).isEmpty();
        assertThat(beltShows("parts: [{ timing belt: new }]\n" + looked)).isEmpty();
        assertThat(beltShows("parts: [{ timing belt: kept }]\n" + cracked)).isEqualTo("cracked");
        assertThat(beltShows("parts: [{ timing belt: kept }]\n" + looked)).isEqualTo("sound");
    }

    @Test
    void a_pump_or_roller_is_asked_of_by_the_name_that_the_route_gives_it() {
        Derivation.Worked pump = worked("parts: [{ water pump: kept }]\nobservations: [{ water pump: play }]\n");
        assertThat(said(pump, "belt companion", "water pump", "turning")).containsExactly("play");
        Derivation.Worked idler = worked("parts: [{ belt idler: kept, at: low }]\nobservations: [{ belt idler: turns freely, at: low }]\n");
        assertThat(said(idler, "belt companion", "belt idler low", "roll in question")).contains("kept");
        assertThat(lacks(idler, "belt companion turning", "belt idler low")).containsExactly("belt idler play");
        assertThat(said(idler, "belt companion", "front crank seal", "role")).as("a seal does not roll").isEmpty();
    }

    @Test
    void a_hydraulic_tensioner_of_a_belt_is_sealed_and_a_new_one_need_not_be_looked_at() {
        Derivation.Worked fresh = worked("parts: [{ belt tensioner: new }]\nobservations: [{ belt tensioner: leak, as: found }]\n");
        assertThat(said(fresh, "drive tensioner", "belt tensioner", "works")).containsExactly("sealed");
        assertThat(said(fresh, "drive tensioner", "belt tensioner", "seal")).containsExactly("new");
    }

    @Test
    void paint_that_the_teeth_bring_back_only_after_sixty_two_turns_is_seldom_right() {
        Derivation.Worked paint = worked("observations: [{ timing belt: marks meet, at: timing belt }]\n");
        assertThat(said(paint, "timing drive", "engine", "paint comes back")).containsExactly("seldom");
        assertThat(said(paint, "timing drive", "engine", "proof")).containsExactly("paint alone");
    }

    @Test
    void a_shaft_that_is_off_for_now_is_not_out() {
        assertThat(said(worked("parts: [{ balance shaft: removed, at: left }]\n"), "balance shaft", "left", "out")).isEmpty();
        assertThat(said(worked("parts: [{ balance shaft: deleted, at: left }]\n"), "balance shaft", "left", "out")).containsExactly("yes");
    }

    @Test
    void the_joint_that_the_crank_gears_line_names_holds_it() {
        assertThat(said(worked("build: { name: a }\n"), "joint", "crank pulley to crankshaft", "holds crank gear")).containsExactly("yes");
    }
}
