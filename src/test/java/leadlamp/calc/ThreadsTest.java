package leadlamp.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Threads by their designation, and what bolts are made of. */
class ThreadsTest {

    @ParameterizedTest
    @CsvSource({ "M8x1.25, M8x1.25, 8, 1.25", "M8, M8x1.25, 8, 1.25", "m8 x 1.25, M8x1.25, 8, 1.25",
        "M8×1, M8x1, 8, 1", "M10x1.5-6H, M10x1.5, 10, 1.5", "M10, M10x1.5, 10, 1.5", "M14x1.5, M14x1.5, 14, 1.5",
        "' M6 ', M6x1, 6, 1", "M1.6, M1.6x0.35, 1.6, 0.35", "M36, M36x4, 36, 4", "'M8x1,25', M8x1.25, 8, 1.25" })
    void metric_threads_are_read_and_a_bare_size_is_coarse(String written, String name, double diameter, double pitch) {
        ScrewThread thread = Threads.named(written).orElseThrow();
        assertThat(thread.name()).isEqualTo(name);
        assertThat(thread.family()).isEqualTo(ScrewThread.Family.METRIC);
        assertThat(thread.diameter()).isCloseTo(diameter / 1000, within(1e-12));
        assertThat(thread.pitch()).isCloseTo(pitch / 1000, within(1e-12));
        assertThat(thread.halfAngle()).isCloseTo(Math.toRadians(30), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({ "5/16-18 UNC, 5/16-18 UNC, UNIFIED, 0.3125, 18", "5/16-18, 5/16-18, UNIFIED, 0.3125, 18",
        "5/16 UNC, 5/16-18 UNC, UNIFIED, 0.3125, 18", "5/16 UNF, 5/16-24 UNF, UNIFIED, 0.3125, 24",
        "3/8-24 UNF-2A, 3/8-24 UNF, UNIFIED, 0.375, 24", "7/16-20, 7/16-20, UNIFIED, 0.4375, 20",
        "1/2 bsf, 1/2-16 BSF, WHITWORTH, 0.5, 16", "3/8 BSW, 3/8-16 BSW, WHITWORTH, 0.375, 16",
        "3/8 Whitworth, 3/8-16 WHITWORTH, WHITWORTH, 0.375, 16", "10-32, #10-32, UNIFIED, 0.190, 32",
        "#8-32, #8-32, UNIFIED, 0.164, 32", "No. 10 UNC, #10-24 UNC, UNIFIED, 0.190, 24",
        "1-8 UNC, 1-8 UNC, UNIFIED, 1, 8", "1 1/8-12 UN, 1 1/8-12 UN, UNIFIED, 1.125, 12",
        "'1/4\" UNC', 1/4-20 UNC, UNIFIED, 0.25, 20", "1/4 x 20 UNC, 1/4-20 UNC, UNIFIED, 0.25, 20",
        "5/16-32 UNEF, 5/16-32 UNEF, UNIFIED, 0.3125, 32", "7/8 UNF, 7/8-14 UNF, UNIFIED, 0.875, 14",
        "3/16 BSF, 3/16-32 BSF, WHITWORTH, 0.1875, 32" })
    void inch_threads_are_read_with_or_without_their_family(String written, String name, ScrewThread.Family family,
            double inches, double threads) {
        ScrewThread thread = Threads.named(written).orElseThrow();
        assertThat(thread.name()).isEqualTo(name);
        assertThat(thread.family()).isEqualTo(family);
        assertThat(thread.diameter()).isCloseTo(inches * 0.0254, within(1e-12));
        assertThat(thread.pitch()).isCloseTo(0.0254 / threads, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "M", "Mx1", "M9.5", "M8x", "M8x0", "M8x-1", "M8x4", "x1.25", "1/8 taper", "1/8-27 NPT",
        "1/2 BSP", "5/16", "rubbish", "5/16 UNC UNF", "5/17-18", "0.31-18", "13/16 BSW", "#11 UNC", "-", "UNC",
                "1/0-18",
        "M8x1x1", "10-0" })
    void what_is_no_thread_with_a_pitch_is_not_guessed(String written) {
        assertThat(Threads.named(written)).isEmpty();
    }

    @Test
    void a_three_quarter_inch_fine_thread_has_the_stress_area_of_the_textbook() {
        // Mechanical Engineering Design, Example 8-3: 0.373 in²
        double area = Threads.named("3/4-16 UNF").orElseThrow().stressArea();
        assertThat(area / (0.0254 * 0.0254)).isCloseTo(0.373, within(0.0005));
    }

    @Test
    void a_whitworth_thread_has_its_own_depth() {
        // from memory: BS 84, 3/8 BSW effective diameter 0.3350 in, minor diameter 0.2950 in
        ScrewThread thread = Threads.named("3/8 BSW").orElseThrow();
        assertThat(thread.pitchDiameter() / 0.0254).isCloseTo(0.3350, within(0.00005));
        assertThat(thread.minorDiameter() / 0.0254).isCloseTo(0.2950, within(0.00005));
        assertThat(thread.coreDiameter()).isEqualTo(thread.minorDiameter());
        assertThat(thread.halfAngle()).isCloseTo(Math.toRadians(27.5), within(1e-12));
        double mean = (thread.pitchDiameter() + thread.coreDiameter()) / 2;
        assertThat(thread.stressArea()).isCloseTo(Math.PI / 4 * mean * mean, within(1e-12));
    }

    @Test
    void diameters_of_a_metric_thread_stand_in_their_order() {
        ScrewThread thread = Threads.named("M10x1.25").orElseThrow();
        assertThat(thread.coreDiameter()).isLessThan(thread.minorDiameter());
        assertThat(thread.minorDiameter()).isLessThan(thread.pitchDiameter());
        assertThat(thread.pitchDiameter()).isEqualTo(Threads.pitchDiameter(0.010, 0.00125))
                .isLessThan(thread.diameter());
        assertThat(thread.stressArea()).isEqualTo(Threads.stressArea(0.010, 0.00125));
    }

    @Test
    void a_class_that_sets_no_strength_is_not_guessed() {
        assertThat(BoltClass.named("titanium", 0.01)).isEmpty();
        assertThat(BoltClass.named("unknown", 0.01)).isEmpty();
        for (String name : new String[] { "8.8", "9.8", "10.9", "12.9", "stainless 70", "stainless 80" }) {
            BoltClass strength = BoltClass.named(name, 0.01).orElseThrow();
            assertThat(strength.name()).isEqualTo(name);
            assertThat(strength.proof()).isLessThan(strength.yield());
            assertThat(strength.yield()).isLessThan(strength.tensile());
            assertThat(strength.basis()).contains("ISO");
        }
        assertThat(BoltClass.named("8.8", 0.016).orElseThrow().proof()).isEqualTo(580e6);
        assertThat(BoltClass.named("8.8", 0.018).orElseThrow().proof()).isEqualTo(600e6);
        assertThat(BoltClass.named("9.8", 0.01).orElseThrow().tensile()).isEqualTo(900e6); // from memory: ISO 898-1
        assertThat(BoltClass.named("stainless 70", 0.01).orElseThrow().yield())
                .isEqualTo(450e6); // ISO 3506-1, from memory
    }

    @Test
    void slick_threads_need_less_torque_than_dry_ones_and_dry_ones_less_than_rusty_ones() {
        double[] rising = { usual("moly paste"), usual("grease"), usual("engine oil"), usual("light oil"), usual("dry"),
            TorqueFactor.ofCondition("rusty").orElseThrow().usual() };
        for (int i = 1; i < rising.length; i++) {
            assertThat(rising[i]).isGreaterThan(rising[i - 1]);
        }
        assertThat(usual("oil")).isEqualTo(usual("engine oil"));
        assertThat(usual("assembly paste")).isEqualTo(usual("moly paste"));
        assertThat(usual("copper paste")).isEqualTo(usual("grease"));
        assertThat(TorqueFactor.ofLubricant("as supplied")).isEmpty();
        assertThat(TorqueFactor.ofCondition("clean")).isEmpty();
        for (String bad : new String[] { "galled", "dirty", "painted", "residue" }) {
            assertThat(TorqueFactor.ofCondition(bad)).isEqualTo(TorqueFactor.ofCondition("rusty"));
        }
    }

    private static double usual(String lubricant) {
        TorqueFactor factor = TorqueFactor.ofLubricant(lubricant).orElseThrow();
        assertThat(factor.low()).isLessThan(factor.usual());
        assertThat(factor.usual()).isLessThan(factor.high());
        assertThat(factor.basis()).isEqualTo("common practice, no source");
        return factor.usual();
    }

    @Test
    void locker_and_sealer_have_factors_of_their_own() {
        assertThat(TorqueFactor.ofThreadLocker()).isEqualTo(
                new TorqueFactor(0.14, 0.18, 0.20, "common practice, no source"));
        assertThat(TorqueFactor.ofSealer()).isEqualTo(new TorqueFactor(0.12, 0.15, 0.18, "common practice, no source"));
    }

    @Test
    void every_way_of_tightening_names_where_its_scatter_stands() {
        for (ClampScatter scatter : ClampScatter.values()) {
            assertThat(scatter.share()).isBetween(0.01, 0.5);
            assertThat(scatter.source()).contains(",");
        }
    }

    @Test
    void a_pin_of_a_size_that_is_not_printed_has_no_printed_strength() {
        assertThat(Pins.dowel(0.0055)).isEmpty();
        assertThat(Pins.slotted(0.012)).isEmpty();
        assertThat(Pins.slottedLight(0.010)).isEmpty();
        assertThat(Pins.coiled(0.010)).isEmpty();
        assertThat(Pins.coiled(0.006).orElseThrow()).isEqualTo(30000); // ISO 8748
        assertThat(Pins.slottedLight(0.006).orElseThrow()).isEqualTo(18000); // ISO 13337
    }

    @Test
    void a_metal_is_known_by_the_word_of_the_vocabulary() {
        for (String word : new String[] { "steel", "stainless", "cast iron", "aluminium", "magnesium", "titanium",
                "bronze",
            "copper", "sintered", "zinc", "cast piston alloy", "forged piston alloy" }) {
            Material metal = Material.named(word).orElseThrow();
            assertThat(metal.name()).isEqualTo(word);
            assertThat(metal.expansion()).isBetween(8e-6, 30e-6);
            assertThat(metal.expansionDoubt()).isBetween(0.4e-6, 2.1e-6);
            assertThat(metal.modulus()).isBetween(40e9, 210e9);
            assertThat(metal.density()).isBetween(1700.0, 9000.0);
            assertThat(metal.poisson()).isBetween(0.25, 0.35);
            assertThat(metal.basis()).isNotEmpty();
        }
        assertThat(Material.named("plastic")).isEmpty();
        assertThat(Material.named("rubber")).isEmpty();
        assertThat(SoftMetal.shear("cast iron")).isEmpty();
        assertThat(SoftMetal.shear("magnesium").orElseThrow()).isLessThan(SoftMetal.shear("aluminium").orElseThrow());
    }
}
