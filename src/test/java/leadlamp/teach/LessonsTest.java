package leadlamp.teach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leadlamp.audit.Auditor;
import leadlamp.audit.Casebook;
import leadlamp.audit.Check;
import leadlamp.audit.Expected;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The lessons and the handbook, as the jar carries them. */
class LessonsTest {
    private static final Vocabulary WORDS = Words.compiled();
    private static final Auditor AUDITOR = Auditor.compiled();
    private static final Examples EXAMPLES = new Examples(WORDS, AUDITOR, Casebook.compiled());

    private static Lesson lesson(String check) {
        return Lesson.of(AUDITOR.check(check).orElseThrow(), EXAMPLES);
    }

    @Test
    void a_lesson_goes_from_the_question_to_the_basis() {
        assertThat(LessonText.of(lesson("cam-gear-pin-hollow"), 100, false)).containsSubsequence(
                "Is every cam gear located by a sound pin", "How it wrecks an engine", "1. the pin works and shears",
                "How to settle it", "Gauge: micrometer, usual doubt 0.006 mm", "Wrong, on the numbers of examples",
                "sound: - { cam gear pin: new, at: each, form: solid", "here: parts:", "at: intake, form: hollow",
                "says: The pin of the intake cam gear is hollow.", "Near misses", "This maker fits coiled pins",
                "Not enough to tell", "What to do", "Based on");
    }

    @Test
    void the_sum_is_worked_on_the_numbers_of_the_example() {
        Lesson lesson = lesson("bolt-bottoms-before-it-clamps");

        assertThat(lesson.wrong().get(0).sums()).anyMatch(sum -> sum.contains("at head to block 3: room 0.40 mm / pitch 1.25 mm = 0.3"));
        assertThat(lesson.wants()).anyMatch(want -> want.word().equals("threaded hole depth")
                && want.gauge().startsWith("depth micrometer"));
    }

    @Test
    @Tag("long")
    void every_check_has_its_lesson_and_each_of_its_wrong_examples_is_found_by_the_audit() {
        List<Lesson> all = Handbook.lessons(EXAMPLES);
        Markup.holds(Handbook.pages(all, Looks.compiled(WORDS), WORDS));
        assertThat(all).extracting(lesson -> lesson.check().id())
                .containsExactlyElementsOf(AUDITOR.checks().stream().map(Check::id).toList());
        for (Lesson lesson : all) {
            assertThat(lesson.wrong()).as(lesson.check().id()).isNotEmpty()
                    .allSatisfy(shown -> assertThat(shown.answer()).as(shown.name()).isNotEmpty());
        }
    }

    @Test
    void the_handbook_is_well_formed_its_links_arrive_and_it_needs_no_network() {
        Markup.holds(SomeLessons.PAGES);
        assertThat(SomeLessons.PAGES.get("index.html")).contains("script-src 'sha256-");
        SomeLessons.LESSONS.forEach(lesson -> assertThat(SomeLessons.PAGES.get("index.html"))
                .contains("href=\"" + lesson.check().topic() + ".html#" + lesson.check().id() + "\""));
    }

    @Test
    void the_handbook_is_the_same_whoever_writes_it() {
        assertThat(Handbook.pages(SomeLessons.LESSONS, Looks.compiled(WORDS), WORDS)).isEqualTo(SomeLessons.PAGES);
        assertThat(Lesson.of(SomeLessons.LESSONS.get(0).check(), EXAMPLES)).isEqualTo(SomeLessons.LESSONS.get(0));
    }

    @Test
    void an_example_worked_for_its_check_alone_says_what_it_says_with_everything_worked_out() {
        Examples all = new Examples(WORDS, AUDITOR, Casebook.compiled(), AUDITOR::asking);

        for (Check check : AUDITOR.checks()) {
            if (check.topic().equals("clutch") || check.id().equals("face-finish-wrong-for-gasket") || check.id().equals("balance-report-against-grade")
                    || check.id().equals("fillet-foretold-by-sizes")) {
                assertThat(Lesson.of(check, EXAMPLES)).as(check.id()).isEqualTo(Lesson.of(check, all));
            }
        }
    }

    @Test
    void the_casebook_keeps_every_case_as_it_stands_on_its_page() {
        assertThat(Casebook.compiled().of("cam-gear-pin-hollow")).extracting(one -> one.name())
                .startsWith("somebody made the intake pin from tube", "this maker fits coiled pins");
        assertThat(Casebook.compiled().of("cam-gear-pin-hollow").get(0).expect())
                .containsEntry("intake", new Expected.FoundBy(List.of("form")));
    }

    @Test
    void what_is_written_in_a_lesson_can_be_written_in_a_record() {
        assertThat(YamlText.word("8.8")).isEqualTo("8.8");
        assertThat(YamlText.word("-0.10 mm")).isEqualTo("-0.10 mm");
        assertThat(YamlText.word("one, two")).isEqualTo("'one, two'");
        assertThat(YamlText.word("maker's")).isEqualTo("maker's");
        assertThat(YamlText.word("'quoted")).isEqualTo("'''quoted'");
        assertThat(YamlText.word("%")).isEqualTo("'%'");
        assertThat(YamlText.word("")).isEqualTo("''");
    }
}
