package leadlamp.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.words.Part;
import leadlamp.words.Step;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class SheetLayoutTest {
    private static Vocabulary words;
    private static SheetLayout tarn;

    @BeforeAll
    static void a_whole_sheet_is_read() throws IOException {
        words = Words.ofFolder(Path.of("rules/vocabulary"));
        Yaml.File file = Yaml.read(Path.of("src/test/resources/leadlamp/record/tarn-12.yaml"), "tarn-12.yaml");
        tarn = new SheetLayout(file.tree().orElseThrow(), words);
    }

    private static SheetLayout sheet(String text) {
        return new SheetLayout(Yaml.text(text, "sheet.yaml").tree().orElseThrow(), words);
    }

    private static List<String> of(SheetLayout sheet, String group) {
        assertThat(words.groups()).containsKey(group);
        return sheet.places(group).orElseThrow(() -> new AssertionError(group + " is not settled"));
    }

    private static void settles(String group, String... places) {
        assertThat(of(tarn, group)).as(group).containsExactly(places);
    }

    private static void none(SheetLayout sheet, String... groups) {
        for (String group : groups) {
            assertThat(of(sheet, group)).as(group).isEmpty();
        }
    }

    private static void open(SheetLayout sheet, String... groups) {
        for (String group : groups) {
            assertThat(words.groups()).containsKey(group);
            assertThat(sheet.places(group)).as(group).isEmpty();
        }
    }

    @Test
    void a_three_with_four_mains_has_the_places_of_its_bottom_end() {
        settles("engine", "engine");
        settles("each cylinder", "1", "2", "3");
        settles("each pair of cylinders", "1 and 2", "2 and 3");
        settles("each bank", "engine");
        settles("each main bearing", "main 1", "main 2", "main 3", "main 4");
        settles("each fed main bearing", "main 1", "main 2", "main 3", "main 4");
        settles("each crankpin", "big end 1", "big end 2", "big end 3");
        settles("each cap", "main 1", "main 2", "main 3", "main 4", "big end 1", "big end 2", "big end 3");
        settles("each rod bolt", "big end 1 1", "big end 1 2", "big end 2 1", "big end 2 2", "big end 3 1", "big end 3 2");
        settles("each thrust face", "front", "rear");
        assertThat(of(tarn, "each shell")).hasSize(14).startsWith("main 1 upper", "main 1 lower").endsWith("big end 3 lower");
        assertThat(of(tarn, "each piston ring")).startsWith("1 first", "1 second", "1 oil", "2 first").hasSize(9);
        none(tarn, "each liner", "each roller bearing", "each piston jet", "each turbocharger", "each crankshaft plug");
    }

    @Test
    void a_twin_cam_head_with_two_valves_of_a_side_tells_front_from_rear() {
        settles("each head", "engine");
        assertThat(of(tarn, "each valve")).startsWith("1 intake front", "1 intake rear", "1 exhaust front", "1 exhaust rear",
                "2 intake front").hasSize(12);
        assertThat(of(tarn, "each lash adjuster")).isEqualTo(of(tarn, "each valve"));
        none(tarn, "each valve with solid lash", "each pushrod");
        settles("each camshaft", "intake", "exhaust");
        settles("each cam bearing", "intake 1", "intake 2", "intake 3", "intake 4", "exhaust 1", "exhaust 2", "exhaust 3",
                "exhaust 4");
        settles("each head bolt", "head to block 1", "head to block 2", "head to block 3", "head to block 4",
                "head to block 5", "head to block 6", "head to block 7", "head to block 8");
        settles("each head dowel", "head to block 1", "head to block 2");
    }

    @Test
    void a_belt_drive_has_what_its_route_names() {
        settles("each timing drive", "engine");
        settles("each belt drive", "timing belt");
        settles("each dry belt", "timing belt");
        settles("each gear drive", "balance gears");
        settles("each belt companion", "water pump", "belt idler low", "belt tensioner", "front crank seal", "cam seal intake",
                "cam seal exhaust");
        settles("each tensioner", "belt tensioner");
        settles("each belt idler", "low");
        settles("each cam gear", "intake", "exhaust");
        settles("each cam gear with a pin", "intake", "exhaust");
        settles("each keyed gear", "crank gear", "balance gear");
        settles("each gear on a shaft", "crank gear", "cam gear exhaust", "cam gear intake", "balance gear");
        settles("each timed shaft", "balance shaft left");
        settles("each balance shaft", "left");
        none(tarn, "each chain drive", "each guide plate", "each adjustable cam gear", "each cam phaser");
    }

    @Test
    void joints_are_sorted_by_their_lines_and_taken_apart_by_each() {
        assertThat(of(tarn, "each joint")).contains("oil pump to block", "rod cap to rod 1", "rod cap to rod 3",
                "cam gear to camshaft intake", "cam gear to camshaft exhaust").doesNotContain("rod cap to rod").hasSize(16);
        settles("each joint with an angle", "head to block", "crank pulley to crankshaft");
        settles("each joint with stages", "main cap to block", "head to block", "crank pulley to crankshaft");
        assertThat(of(tarn, "each joint with torque alone")).contains("main cap to block").doesNotContain("head to block");
        settles("each joint with thread-locker", "balance gear to balance shaft", "flywheel to crankshaft");
        settles("each joint with several lengths", "oil pump to block");
        settles("each joint with blind holes", "head to block", "cam cap to head");
        settles("each joint in soft metal", "cam cap to head");
        settles("each joint with a locating part", "head to block", "oil pump to block");
        settles("each joint with a gasket", "head to block", "oil pump to block", "sump to block", "intake manifold to head");
        settles("each joint with sealant", "rear seal housing to block");
        settles("each three-way joint", "sump to block");
        settles("each row of a joint", "head to block intake side", "head to block exhaust side");
        settles("each dowel", "head to block 1", "head to block 2", "oil pump to block 1", "oil pump to block 2");
        assertThat(of(tarn, "each joint with single use bolts")).containsExactly("rod cap to rod 1", "rod cap to rod 2",
                "rod cap to rod 3", "head to block", "crank pulley to crankshaft", "flywheel to crankshaft");
        none(tarn, "each joint with studs", "each joint in a bearing", "each joint with a washer", "each joint with wet holes");
    }

    @Test
    void what_the_sheet_names_one_by_one_is_a_place() {
        settles("each shaft seal", "front crank seal", "rear crank seal", "cam seal intake", "cam seal exhaust");
        settles("each sealing ring", "pick-up seal", "coolant pipe rear");
        settles("each core plug", "block side 1", "block side 2");
        settles("each gallery plug", "main gallery front", "main gallery rear", "head gallery front");
        settles("each screwed plug", "main gallery front", "head gallery front");
        settles("each trigger sensor", "crank sensor", "cam sensor");
        settles("each coil-type sensor", "crank sensor");
        settles("each buried sensor", "crank sensor", "knock sensor", "coolant temperature sensor");
        settles("each knock sensor", "knock sensor");
        settles("each protection", "low oil pressure lamp", "rev cut");
        settles("each oil jet", "head oil restrictor");
        settles("each bleed point", "radiator top", "heater pipe");
        settles("each friction disc", "1");
        settles("each injector", "1", "2", "3");
        none(tarn, "each carburettor");
        assertThat(tarn.names()).contains("oil pump to block", "cam gear to camshaft intake", "timing belt", "crank sensor",
                "main gallery rear", "cam seal intake", "balance gears", "head to block intake side").doesNotContain("intake");
    }

    @Test
    void what_the_sheet_says_nothing_of_and_what_the_record_settles_stays_open() {
        open(tarn, "each oil line", "each coolant hose", "each fuel hose", "each heat shield", "each opening",
                "each gearbox dowel", "each reading", "each deleted part", "each gauge", "each step");
        SheetLayout nothing = sheet("sheet: nobody knows");
        for (String group : words.groups().keySet()) {
            if (!group.equals("engine")) {
                open(nothing, group);
            }
        }
        assertThat(nothing.names()).isEmpty();
    }

    @Test
    void a_part_has_the_places_of_its_group_that_bear_its_name() {
        assertThat(places("cam seal")).contains(List.of("cam seal intake", "cam seal exhaust"));
        assertThat(places("front crank seal")).contains(List.of("front crank seal"));
        assertThat(places("seal land")).contains(of(tarn, "each shaft seal"));
        assertThat(places("gearbox seal")).contains(List.of("engine"));
        assertThat(places("cam sensor")).contains(List.of("cam sensor"));
        assertThat(places("oil temperature sensor")).isEmpty();
        assertThat(places("sensor")).contains(of(tarn, "each sensor"));
        assertThat(places("belt tensioner")).contains(List.of("belt tensioner"));
        assertThat(places("chain tensioner")).isEmpty();
        assertThat(places("balance gear")).contains(List.of("balance gears"));
        assertThat(places("crankpin")).contains(List.of("big end 1", "big end 2", "big end 3"));
        assertThat(places("core plug")).contains(List.of("block side 1", "block side 2"));
    }

    private static Optional<List<String>> places(String part) {
        Part of = words.part(part).orElseThrow();
        return tarn.places(of);
    }

    @Test
    void a_single_with_roller_bearings_and_one_camshaft_asks_no_shells() {
        SheetLayout single = sheet("""
                layout: { arrangement: in-line, cylinders: 1, valves: { intake: 1, exhaust: 1 }, valve gear: pushrod, lash: solid,
                  camshafts: one, cam bearings: 2, main bearings: 2, mains: [ball, roller], big ends: roller,
                  crankshaft: built up, oiling: splash, thrust bearing: 1, rings: [first, oil], barrels: fitted, liners: none, turbochargers: none }
                drive: { timing gears: { kind: gear, drives: camshafts, route: [crank gear, cam gear] } }
                gears: { cam gear: { key: { width: 3 mm } } }
                joints: { head to barrel: { studs: 4, into: aluminium } }
                """);
        assertThat(of(single, "each valve")).containsExactly("1 intake", "1 exhaust");
        assertThat(of(single, "each pushrod")).containsExactly("1 intake", "1 exhaust");
        assertThat(of(single, "each camshaft")).containsExactly("engine");
        assertThat(of(single, "each cam bearing")).containsExactly("1", "2");
        assertThat(of(single, "each cam gear")).containsExactly("engine");
        assertThat(of(single, "each keyed gear")).containsExactly("cam gear");
        assertThat(of(single, "each roller bearing")).containsExactly("main 1", "main 2", "big end 1");
        assertThat(of(single, "each piston ring")).containsExactly("1 first", "1 oil");
        assertThat(of(single, "each head")).containsExactly("engine");
        none(single, "each pair of cylinders", "each plain bearing", "each shell", "each cap", "each thrust face", "each rod bolt",
                "each fed main bearing", "each belt drive", "each dry belt", "each tensioner", "each cam gear with a pin");
        open(single, "each head bolt", "each joint with blind holes");
        assertThat(single.layoutWord("gear drive")).contains(true);
        assertThat(single.layoutWord("rockers")).contains(true);
    }

    @Test
    void what_the_layout_leaves_no_room_for_is_not_asked_about() {
        SheetLayout air = sheet("""
                layout: { cylinders: 2, cooled by: air, turbochargers: none, supercharger: none, balance shafts: none, main bearings: 2,
                  mains: [roller, ball], fuel: { by: mechanical }, spark: { by: mechanical } }
                drive: { timing gears: { kind: gear, drives: camshafts }, oil pump: { kind: gear, drives: oil pump } }
                """);
        none(air, "each coolant hose", "each bleed point", "each boost hose", "each trigger sensor", "each knock sensor",
                "each fed main bearing", "each timed shaft");
        none(tarn, "each boost hose");
    }

    @Test
    void a_vee_six_has_its_banks() {
        SheetLayout vee = sheet("""
                layout: { arrangement: vee, cylinders: 6, banks: { left: [1, 2, 3], right: [4, 5, 6] }, valves: { intake: 2, exhaust: 1 },
                  camshafts: [left intake, left exhaust, right intake, right exhaust], cam bearings: 4, main bearings: 4, valve gear: overhead cam }
                drive:
                  left chain: { kind: chain, drives: camshafts, route: [crank gear, cam gear left intake, cam gear left exhaust, chain tensioner left] }
                  right chain: { kind: chain, drives: camshafts, route: [crank gear, cam gear right intake, cam gear right exhaust, chain tensioner right] }
                gears: { left intake: { form: phaser }, right intake: { form: phaser }, left exhaust: { form: plain }, right exhaust: { form: plain } }
                joints: { head to block: { each: head, bolts: 2 } }
                """);
        assertThat(of(vee, "each head")).containsExactly("left", "right");
        assertThat(of(vee, "each pair of cylinders")).containsExactly("1 and 2", "2 and 3", "4 and 5", "5 and 6");
        assertThat(of(vee, "each timing drive")).containsExactly("left", "right");
        assertThat(of(vee, "each chain drive")).containsExactly("left chain", "right chain");
        assertThat(of(vee, "each tensioner")).containsExactly("left", "right");
        assertThat(of(vee, "each cam gear")).containsExactly("left intake", "left exhaust", "right intake", "right exhaust");
        assertThat(of(vee, "each cam phaser")).containsExactly("left intake", "right intake");
        assertThat(of(vee, "each joint")).containsExactly("head to block left", "head to block right");
        assertThat(of(vee, "each head bolt")).containsExactly("head to block left 1", "head to block left 2",
                "head to block right 1", "head to block right 2");
        assertThat(of(vee, "each valve")).startsWith("1 intake front", "1 intake rear", "1 exhaust", "2 intake front");
        assertThat(vee.layoutWord("cam phasers")).contains(true);
        assertThat(vee.layoutWord("chain drive")).contains(true);
        assertThat(vee.layoutWord("belt drive")).contains(false);
    }

    @Test
    void a_flat_twin_with_a_camshaft_to_a_bank_and_its_cylinders_named() {
        SheetLayout flat = sheet("""
                layout: { arrangement: flat, cylinders: 2, cylinder names: { 1: left, 2: right }, camshafts: [left, right], cam bearings: 2,
                  valves: { intake: 1, exhaust: 1 }, liners: flanged dry, piston jets: [1, 2], throttles: 2, turbochargers: 1 }
                """);
        assertThat(of(flat, "each bank")).containsExactly("left", "right");
        assertThat(of(flat, "each camshaft")).containsExactly("left", "right");
        assertThat(of(flat, "each cam bearing")).containsExactly("left 1", "left 2", "right 1", "right 2");
        assertThat(of(flat, "each liner")).containsExactly("1", "2");
        assertThat(of(flat, "each piston jet")).containsExactly("1", "2");
        assertThat(of(flat, "each turbocharger")).containsExactly("1");
        assertThat(flat.cylinderNames()).isEqualTo(Map.of("left", "1", "right", "2"));
        none(flat, "each pair of cylinders");
        open(flat, "each joint", "each timing drive", "each main bearing", "each plain bearing");
    }

    @Test
    void a_thin_sheet_with_one_line_of_drive_still_has_its_cam_gears() {
        SheetLayout thin = sheet("""
                layout: { cylinders: 4, arrangement: in-line, camshafts: [intake, exhaust] }
                drive: { belt: { kind: belt, drives: camshafts } }
                """);
        assertThat(of(thin, "each cam gear")).containsExactly("intake", "exhaust");
        assertThat(of(thin, "each belt drive")).containsExactly("belt");
        open(thin, "each dry belt", "each belt companion", "each tensioner", "each belt idler", "each cam gear with a pin",
                "each valve", "each lash adjuster");
        assertThat(thin.layoutWord("belt drive")).contains(true);
    }

    @Test
    void every_word_that_the_steps_go_by_is_settled_by_a_full_sheet() {
        for (Step step : words.steps()) {
            step.afterFor().keySet().forEach(word -> assertThat(tarn.layoutWord(word)).as(word).isPresent());
            if (!step.onlyFor().isEmpty()) {
                assertThat(tarn.layoutWord(step.onlyFor())).as(step.onlyFor()).isPresent();
            }
        }
        assertThat(tarn.layoutWord("overhead cam")).contains(true);
        assertThat(tarn.layoutWord("hydraulic lash")).contains(true);
        assertThat(tarn.layoutWord("balance shafts")).contains(true);
        assertThat(tarn.layoutWord("boosted")).contains(false);
        assertThat(tarn.layoutWord("electronic spark or fuel")).contains(true);
        assertThat(tarn.layoutWord("timing cover meets sump")).contains(false);
        assertThat(tarn.layoutWord("retighten")).contains(false);
        assertThat(sheet("layout: { followers: flat }").layoutWord("flat followers with a new cam")).isEmpty();
    }

    @Test
    void the_sheets_own_order_and_what_it_hides_can_be_asked_for() {
        assertThat(tarn.order()).contains(Map.entry("rear seal fitted", "sump fitted"));
        assertThat(tarn.hidden().get("sump fitted")).contains("joint oil pump to block", "pick-up seal");
        assertThat(tarn.split("belt idler low")).contains(new SheetLayout.PartAt("belt idler", "low"));
        assertThat(tarn.split("water pump")).contains(new SheetLayout.PartAt("water pump", "engine"));
        assertThat(tarn.partsOfDrive()).contains(new SheetLayout.PartAt("cam gear", "intake"),
                new SheetLayout.PartAt("timing belt", "engine"), new SheetLayout.PartAt("belt tensioner", "engine"));
    }

    @Test
    void a_timing_gear_is_any_gear_of_a_gear_drive_whatever_one_of_them_is_called() {
        SheetLayout diesel = sheet("""
                drive:
                  timing gears: { kind: gear, drives: camshafts, route: [crank gear, idler gear, cam gear] }
                  injection pump: { kind: gear, drives: injection pump, route: [idler gear, injection pump] }
                  balance gears: { kind: gear, drives: balance shafts, route: [crankshaft, balance shaft left] }
                """);
        assertThat(diesel.places(words.part("timing gear").orElseThrow())).contains(List.of("timing gears", "injection pump", "balance gears"));
        assertThat(diesel.places(words.part("balance gear").orElseThrow())).contains(List.of("balance gears"));
    }
}
