package leadlamp.derive;

import static leadlamp.derive.Bench.full;
import static leadlamp.derive.Bench.lacks;
import static leadlamp.derive.Bench.said;
import static leadlamp.derive.Bench.worked;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leadlamp.facts.Stated;
import leadlamp.words.Names;
import org.junit.jupiter.api.Test;

class ComparisonsTest {
    private static List<String> tightness(String entry) {
        return said(worked("fasteners: [" + entry + "]"), "joint", "oil pump to block", "tightness");
    }

    private static List<String> classOf(String bolt) {
        return said(worked("fasteners: [{ oil pump to block: 23 N·m, class: '" + bolt + "' }]"), "joint", "oil pump to block",
                "class against sheet");
    }

    private static Derivation.Worked lengths(String lengths) {
        return worked("fasteners: [{ oil pump to block: 23 N·m, lengths: { " + lengths + " } }]");
    }

    private static List<String> lengthsSaid(String lengths) {
        return said(lengths(lengths), "joint", "oil pump to block", "lengths against sheet");
    }

    @Test
    void a_class_is_lower_the_same_or_higher_by_the_strength_that_it_stands_for() {
        assertThat(classOf("8.8")).containsExactly("same");
        assertThat(classOf("10.9")).containsExactly("higher");
        assertThat(said(worked("fasteners: [{ main cap to block: 55 N·m, class: '8.8' }]"), "joint", "main cap to block",
                "class against sheet")).containsExactly("lower");
    }

    @Test
    void stainless_steel_and_titanium_are_not_compared_with_a_class() {
        assertThat(classOf("stainless 80")).containsExactly("not compared");
        assertThat(classOf("titanium")).containsExactly("not compared");
    }

    @Test
    void a_bolt_without_a_mark_gives_no_word_and_its_class_is_what_is_lacking() {
        assertThat(classOf("unknown")).isEmpty();
        assertThat(lacks(worked("fasteners: [{ oil pump to block: 23 N·m, class: unknown }]"), "joint class against sheet",
                "oil pump to block")).containsExactly("joint class");
        assertThat(lacks(worked("fasteners: [{ sump to block: 10 N·m, class: '8.8' }]"), "joint class against sheet", "sump to block"))
                .containsExactly("sheet joint class");
    }

    @Test
    void bolts_stand_in_their_own_holes_in_others_or_are_others() {
        assertThat(lengthsSaid("1: 25 mm, 2: 25 mm, 3: 40 mm, 4: 70 mm")).containsExactly("same");
        assertThat(lengthsSaid("1: 25 mm, 2: 40 mm, 3: 25 mm, 4: 70 mm")).containsExactly("other places");
        assertThat(lengthsSaid("1: 25 mm, 2: 25 mm, 3: 40 mm, 4: 25 mm")).containsExactly("other counts");
    }

    @Test
    void half_a_millimetre_is_no_other_length_and_what_a_rule_cannot_tell_is_not_said() {
        assertThat(lengthsSaid("1: 25 mm, 2: 25 mm, 3: 40 mm, 4: 70.5 mm")).containsExactly("same");
        assertThat(lengthsSaid("1: 25 mm, 2: 25 mm, 3: 40 mm, 4: 72 mm")).as("2 mm off, and a rule is good to 1").isEmpty();
        assertThat(lacks(lengths("1: 25 mm, 2: 25 mm, 3: 40 mm, 4: 72 mm"), "joint lengths against sheet", "oil pump to block"))
                .containsExactly("joint lengths");
    }

    @Test
    void a_length_that_is_not_told_leaves_the_joint_open() {
        assertThat(lengthsSaid("1: 25 mm, 2: 40 mm, 3: 25 mm")).isEmpty();
    }

    @Test
    void tightness_is_a_torque_or_the_word_in_its_place() {
        assertThat(tightness("{ oil pump to block: 23 N·m }")).containsExactly("to torque");
        assertThat(tightness("{ oil pump to block: not yet, meant: 23 N·m }")).containsExactly("not yet");
        assertThat(tightness("{ oil pump to block: by hand }")).containsExactly("by hand");
        assertThat(tightness("{ oil pump to block: as found }")).containsExactly("as found");
        assertThat(tightness("{ oil pump to block: unknown }")).isEmpty();
        assertThat(tightness("{ oil pump to block: not yet }, { oil pump to block: 23 N·m }")).as("the later entry").containsExactly("to torque");
    }

    @Test
    void what_was_only_told_of_a_joint_is_said_as_told() {
        Derivation.Worked worked = worked("fasteners: [{ oil pump to block: 23 N·m, class: '8.8', told by: seller }]");
        for (Stated s : worked.words()) {
            if (s.at().equals("oil pump to block") && !s.what().equals("hiding step")) {
                assertThat(s.told()).as(s.what()).isEqualTo("seller");
            }
        }
    }

    @Test
    void a_joint_is_hidden_by_the_next_step_by_one_that_is_done_or_by_a_later_one() {
        String record = """
                stage: short block assembled
                fasteners: [{ oil pump to block: 23 N·m }, { knock sensor to block: not yet }]
                steps: [{ intake manifold fitted: 2026-03-01 }, { next: sump fitted }]
                """;
        assertThat(said(worked(record), "joint", "oil pump to block", "hiding step")).containsExactly("next");
        assertThat(said(worked(record), "joint", "knock sensor to block", "hiding step")).as("written down as done").containsExactly("done");
        assertThat(said(worked(record), "joint", "cam cap to head", "hiding step")).as("before the manifold only").containsExactly("later");
        assertThat(said(worked(record.replace("short block assembled", "sump fitted")), "joint", "main cap to block", "hiding step"))
                .as("behind by the stage").containsExactly("done");
    }

    @Test
    void without_a_next_step_nobody_can_say_later() {
        String record = "stage: crankshaft laid\nfasteners: [{ oil pump to block: 23 N·m }]\n";
        assertThat(said(worked(record), "joint", "oil pump to block", "hiding step")).isEmpty();
        assertThat(lacks(worked(record), "joint hiding step", "oil pump to block")).containsExactly("steps next");
        assertThat(lacks(worked(record), "joint hiding step", "sump to block")).containsExactly("sheet joint hidden by");
    }

    @Test
    void a_gauge_that_fell_after_its_check_is_hurt() {
        assertThat(hurt("checked: 2026-01-05, dropped: 2026-02-10")).containsExactly("yes");
        assertThat(hurt("checked: 2026-02-15, dropped: 2026-02-10")).containsExactly("no");
        assertThat(hurt("checked: 2026-02-15, dropped: 2026-02")).as("the month does not settle it").isEmpty();
        assertThat(hurt("checked: 2026-02-15")).as("it never fell").isEmpty();
        assertThat(lacks(gauge("dropped: 2026-02-10"), "gauge hurt since check", "mike")).containsExactly("gauge checked");
    }

    private static Derivation.Worked gauge(String words) {
        return worked("gauges:\n  mike: { kind: micrometer, resolution: 0.001 mm, " + words + " }\n");
    }

    private static List<String> hurt(String words) {
        return said(gauge(words), "gauge", "mike", "hurt since check");
    }

    private static List<String> shape(String at) {
        return said(worked("protection:\n  low oil pressure cut: { at: " + at + " }\n"), "protection", "engine", "low oil pressure cut shape");
    }

    @Test
    void a_cut_of_one_figure_does_not_follow_speed() {
        assertThat(shape("1.0 bar")).containsExactly("one figure");
        assertThat(shape("[900 rpm 0.7 bar, 3000 rpm 2.0 bar]")).containsExactly("with speed");
        assertThat(shape("[3000 rpm 2.0 bar]")).containsExactly("one figure");
        assertThat(shape("unknown")).isEmpty();
    }

    @Test
    void fuel_is_held_against_the_sheet_only_on_one_scale() {
        assertThat(fuel("RON 98", "over")).containsExactly("yes");
        assertThat(fuel("RON 98", "under")).containsExactly("no");
        assertThat(fuel("RON 91", "under")).containsExactly("yes");
        assertThat(fuel("RON 95", "over")).containsExactly("no");
        assertThat(fuel("MON 98", "over")).isEmpty();
        assertThat(lacks(worked("use: { fuel: MON 98 }"), "use fuel over sheet", "engine")).containsExactly("use fuel");
    }

    private static List<String> fuel(String fuel, String way) {
        return said(worked("use: { fuel: " + fuel + " }"), "use", "engine", "fuel " + way + " sheet");
    }

    @Test
    void every_word_and_every_reading_that_may_be_lacking_is_a_name_that_a_check_may_use() {
        Derivation.wordsWorkedOut().keySet().stream().filter(w -> w.contains(" ") && (w.startsWith("joint ") || w.startsWith("use ")
                || w.startsWith("gauge ") || w.startsWith("protection "))).forEach(
                        w -> assertThat(Names.resolve(w, Bench.WORDS)).as(w).isPresent());
        for (String word : List.of("head gasket class against wanted", "valve spring load over sheet", "valve lift over sheet")) {
            assertThat(Names.resolve(word, Bench.WORDS)).as(word).isPresent();
        }
        for (Missing missing : worked("build: { name: nothing told }").missing()) {
            if (Derivation.wordsWorkedOut().containsKey(missing.quantity())) {
                missing.readings().forEach(r -> assertThat(Names.resolve(r, Bench.WORDS)).as(r).isPresent());
            }
        }
        assertThat(Names.resolve("piston load over sheet", Bench.WORDS)).as("of valve springs alone").isEmpty();
        assertThat(Names.resolve("sheet joint tightness", Bench.WORDS)).as("no sheet says it").isEmpty();
    }

    @Test
    void what_each_word_may_say_is_what_the_vocabulary_lists() {
        Derivation.wordsWorkedOut().forEach((word, says) -> {
            int blank = word.indexOf(' ');
            Bench.WORDS.property("worked out of " + word.substring(0, blank), word.substring(blank + 1))
                    .filter(p -> p.section().startsWith("worked out"))
                    .ifPresent(p -> assertThat(p.values().keySet()).as(word).containsExactlyInAnyOrderElementsOf(says));
        });
    }

    @Test
    void the_full_build_says_nothing_bad_of_itself() {
        Derivation.Worked tarn = full("full-sound-tarn-12.yaml");
        assertThat(said(tarn, "joint", "oil pump to block", "lengths against sheet")).containsExactly("same");
        assertThat(said(tarn, "joint", "sump to block", "tightness")).containsExactly("not yet");
        assertThat(said(tarn, "protection", "engine", "low oil pressure cut shape")).containsExactly("with speed");
        assertThat(tarn.words()).extracting(Stated::says).doesNotContain("lower", "other places", "other counts");
    }
}
