package leadlamp.teach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import leadlamp.audit.Answer;
import leadlamp.audit.Auditor;
import leadlamp.audit.Casebook;
import leadlamp.record.Build;
import leadlamp.record.Fingerprint;
import leadlamp.record.RecordReader;
import leadlamp.record.Yaml;
import leadlamp.report.ProblemText;
import leadlamp.report.Report;
import leadlamp.report.ReportModel;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Exercises made, answered and marked by the ordinary path, through files. */
class ExercisesTest {
    private static final Vocabulary WORDS = Words.compiled();
    private static final Auditor AUDITOR = Auditor.compiled();
    private static final Examples SHARED = new Examples(WORDS, AUDITOR, Casebook.compiled());
    private static final Exercises EXERCISES = new Exercises(SHARED);
    private static final Marker MARKER = new Marker(WORDS, AUDITOR);

    /** A topic of so few checks may have no three faults that stand beside each other. */
    private static final int FEW = 4;

    @TempDir
    private Path folder;

    private static Path write(Exercise exercise, Path to) throws IOException {
        Files.createDirectories(to.resolve("engines"));
        Files.writeString(to.resolve(Exercise.RECORD), exercise.record());
        for (Map.Entry<String, String> file : exercise.files().entrySet()) {
            Files.writeString(to.resolve(file.getKey()), file.getValue());
        }
        return Files.writeString(to.resolve(Exercise.ANSWERS), exercise.answers());
    }

    private ReportModel report(Exercise exercise) throws IOException {
        Path answers = write(exercise, folder.resolve(exercise.id()));
        return Report.of(AUDITOR.audit(new RecordReader(WORDS).read(answers.resolveSibling(Exercise.RECORD)).build().orElseThrow()),
                WORDS);
    }

    @Test
    void the_same_seed_makes_the_same_exercise_and_another_seed_another() throws Exception {
        Exercise one = EXERCISES.make("fasteners", 2, 7, List.of());
        Exercise again = new Exercises(new Examples(WORDS, AUDITOR, Casebook.compiled())).make("fasteners", 2, 7, List.of());
        Exercise other = EXERCISES.make("fasteners", 2, 8, List.of());

        assertThat(again).isEqualTo(one);
        assertThat(other.record()).isNotEqualTo(one.record());
    }

    @Test
    void every_planted_fault_is_found_by_the_audit_and_nothing_else_is() throws Exception {
        for (String topic : List.of("fasteners", "")) {
            Exercise exercise = EXERCISES.make(topic, 3, topic.isEmpty() ? 11 : 7, List.of());
            ReportModel report = report(exercise);
            Set<String> planted = new TreeSet<>();
            exercise.faults().forEach(fault -> planted.add(fault.check()));
            Set<String> beside = new TreeSet<>(planted);
            Casebook.compiled().cases().stream().filter(c -> exercise.faults().stream().anyMatch(f -> f.check().equals(c.of())
                    && f.name().equals(c.name()))).forEach(c -> beside.addAll(c.also().keySet()));

            assertThat(report.leftOut()).as(topic).isEmpty();
            assertThat(planted).as(topic).hasSize(3);
            assertThat(report.found().stream().map(ReportModel.Item::check)).as(topic).containsAll(planted);
            assertThat(Marking.faults(report).stream().filter(fault -> fault.items().stream().anyMatch(i -> planted.contains(i.check()))))
                    .as(topic + ": two that share a line would be marked as one").hasSize(3);
            assertThat(exercise.faults()).as(topic).allSatisfy(fault -> {
                assertThat(fault.says()).isNotEmpty();
                assertThat(fault.lines()).isNotEmpty();
            });
            for (ReportModel.Item item : report.found()) {
                assertThat(beside).as(topic + ": " + item.text()).contains(item.check());
            }
        }
    }

    @Test
    @Tag("long")
    void two_hundred_exercises_over_topics_and_seeds_have_each_fault_found_and_none_hidden_by_another() {
        List<String> topics = new ArrayList<>(EXERCISES.topics());
        topics.add("");
        AtomicInteger made = new AtomicInteger();
        List<String> wrong = IntStream.range(0, 200).parallel().mapToObj(i -> {
            String topic = topics.get(i % topics.size());
            int faults = 1 + i / topics.size() % 3;
            try {
                Exercise exercise = new Exercises(SHARED).make(topic, faults, 100 + i, List.of());
                made.incrementAndGet();
                return wrong(exercise, faults);
            } catch (Exercises.CannotMake few) {
                long checks = AUDITOR.checks().stream().filter(check -> topic.isEmpty() || check.topic().equals(topic)).count();
                return checks > FEW ? topic + ", " + faults + " faults: " + few.getMessage() : "";
            }
        }).filter(text -> !text.isEmpty()).toList();

        assertThat(wrong).isEmpty();
        assertThat(made.get()).isGreaterThan(150);
    }

    /** What is not as promised of one exercise, read as its apprentice would have it audited. */
    private static String wrong(Exercise exercise, int faults) {
        Yaml.File file = Yaml.text(exercise.record(), Exercise.RECORD);
        Map<String, String> files = exercise.files();
        String sheetName = files.keySet().iterator().next();
        RecordReader reader = new RecordReader(WORDS);
        Yaml.File sheet = Yaml.text(files.get(sheetName), sheetName);
        Build build = reader.build(file.tree().orElseThrow(), Exercise.RECORD, file.lines(), file.problems(),
                reader.sheet(sheet.tree().orElseThrow(), sheetName, sheet.lines()), Fingerprint.NONE);
        Set<String> found = new TreeSet<>();
        AUDITOR.audit(build).answers().forEach(answer -> {
            if (answer instanceof Answer.Found) {
                found.add(answer.check().id());
            }
        });
        Set<String> planted = new TreeSet<>();
        Set<String> beside = new TreeSet<>();
        exercise.faults().forEach(fault -> {
            planted.add(fault.check());
            Casebook.compiled().of(fault.check()).stream().filter(c -> c.name().equals(fault.name())).forEach(c -> beside.addAll(c.also().keySet()));
        });
        beside.addAll(planted);
        String name = exercise.id() + " (" + String.join(", ", planted) + ")";
        return !build.leftOut().isEmpty() || !build.problems().isEmpty() ? name + ": not all of it can be read"
                : planted.size() != faults ? name + ": " + planted.size() + " faults, not " + faults
                : !found.containsAll(planted) ? name + ": only found " + found
                : !beside.containsAll(found) ? name + ": found besides " + found : "";
    }

    @Test
    void a_record_for_practice_gives_nothing_away() throws Exception {
        Exercise exercise = EXERCISES.make("", 3, 5, List.of());

        assertThat(exercise.record().lines().filter(line -> line.contains("#"))).hasSize(2);
        assertThat(exercise.answers()).doesNotContain(exercise.faults().get(0).check()).contains("exercise: " + exercise.id());
    }

    @Test
    void more_faults_than_can_stand_beside_each_other_are_refused_in_one_sentence() {
        assertThatThrownBy(() -> EXERCISES.make("access", 500, 1, List.of())).hasMessageContaining("can be planted beside each other");
    }

    // --- marking

    @Test
    void whoever_names_line_or_check_has_found_it_and_the_worst_one_missed_comes_first() throws Exception {
        Exercise exercise = EXERCISES.make("", 3, 11, List.of());
        Path answers = write(exercise, folder.resolve("one"));
        List<Marking.Fault> faults = Marking.faults(report(exercise));
        Marking.Fault last = faults.get(faults.size() - 1);
        Files.writeString(answers, "exercise: " + exercise.id() + "\nstop for:\n  - { line: " + last.lines().iterator().next()
                + ", why: it is wrong }\n");
        Marking marking = MARKER.mark(answers);

        assertThat(marking.found()).extracting(hit -> hit.fault().lead().check()).containsExactly(last.lead().check());
        assertThat(marking.missed()).extracting(fault -> fault.lead().check()).containsExactlyElementsOf(faults.subList(0,
                faults.size() - 1).stream().map(f -> f.lead().check()).toList());
        assertThat(MarkText.of(marking, Practice.none(), 100, false)).containsSubsequence("Found 1 of " + faults.size(),
                "Missed, the worst first", "How it wrecks an engine", "The lesson: leadlamp why " + marking.missed().get(0).lead().check());
    }

    @Test
    void an_answer_on_a_sound_entry_is_an_alarm_and_says_what_the_audit_says() throws Exception {
        Exercise exercise = EXERCISES.make("fasteners", 2, 7, List.of());
        Path answers = write(exercise, folder.resolve("one"));
        Files.writeString(answers, "exercise: " + exercise.id() + "\nstop for:\n  - { check: ring-gap-against-duty, at: 1 first }\n"
                + "  - { line: 3 }\n");
        Marking marking = MARKER.mark(answers);

        assertThat(marking.alarms()).extracting(Marking.Alarm::says).hasSize(2).last().asString()
                .isEqualTo("No finding of the audit rests on line 3.");
    }

    @Test
    void what_cannot_be_taken_is_told_with_its_place_and_stays_in_the_file() throws Exception {
        Exercise exercise = EXERCISES.make("fasteners", 2, 7, List.of());
        Path answers = write(exercise, folder.resolve("one"));
        String text = """
                exercise: %s
                apprentise: Ada
                stop for:
                  - { line: 99999, why: far below the end }
                  - { check: bolt-bottoms-before-it-clamp, why: it stands on the bottom }
                  - { line: twelve }
                  - { why: I saw something }
                  - { line: 4, wy: misspelt }
                """.formatted(exercise.id());
        Files.writeString(answers, text);
        Marking marking = MARKER.mark(answers);
        int lines = exercise.record().split("\n", -1).length;

        assertThat(String.join("\n", marking.problems().stream().flatMap(p -> ProblemText.block(p).stream()).toList())).isEqualTo("""
                answers.yaml:2:1: "apprentise" is no part of an answer file.
                    apprentise: Ada
                    ~~~~~~~~~~
                  Nearest word: apprentice. It has: exercise, apprentice, stop for.
                answers.yaml:4:13: The record has no line 99999.
                    - { line: 99999, why: far below the end }
                              ~~~~~
                  Its lines go from 1 to %d.
                  The entry was not marked; what you wrote stays in the file.
                answers.yaml:5:14: There is no check "bolt-bottoms-before-it-clamp".
                    - { check: bolt-bottoms-before-it-clamp, why: it stands on the bottom }
                               ~~~~~~~~~~~~~~~~~~~~~~~~~~~~
                  Nearest word: bolt-bottoms-before-it-clamps. Leave it out and name the line where you do not know it.
                  The entry was not marked; what you wrote stays in the file.
                answers.yaml:6:13: "twelve" is no number of a line.
                    - { line: twelve }
                              ~~~~~~
                  Its lines go from 1 to %d.
                  The entry was not marked; what you wrote stays in the file.
                answers.yaml:7:5: The answer names neither a line nor a check.
                    - { why: I saw something }
                  One of them is enough: the line of the record that shows it.
                  The entry was not marked; what you wrote stays in the file.
                answers.yaml:8:16: "wy" is no key of an answer.
                    - { line: 4, wy: misspelt }
                                 ~~
                  Nearest word: why. An answer has: line, check, at, why.
                  The rest of the entry was read.""".formatted(lines, lines));
        assertThat(answers).hasContent(text);
    }

    @Test
    void the_answers_to_another_exercise_are_not_marked() throws Exception {
        Path answers = write(EXERCISES.make("fasteners", 2, 7, List.of()), folder.resolve("one"));
        Files.writeString(answers, "exercise: 000000000000\nstop for:\n  - { line: 12 }\n");
        Marking marking = MARKER.mark(answers);

        assertThat(marking.problems()).extracting(p -> p.where() + ": " + p.what())
                .containsExactly("answers.yaml:1:11: These are the answers to another exercise, 000000000000.");
        assertThat(marking.found()).isEmpty();
        assertThat(marking.missed()).isEmpty();
        assertThat(marking.alarms()).isEmpty();
    }

    // --- a class

    @Test
    void a_class_of_thirty_is_marked_and_what_it_misses_most_comes_first() throws Exception {
        List<Exercise> set = new ArrayList<>();
        for (int seed = 1; seed <= 3; seed++) {
            set.add(EXERCISES.make("fasteners", 3, seed, List.of()));
        }
        List<List<Marking.Fault>> truth = new ArrayList<>();
        for (Exercise exercise : set) {
            truth.add(Marking.faults(report(exercise)));
        }
        Map<String, Marking> byName = new LinkedHashMap<>();
        Map<String, Integer> missed = new TreeMap<>();
        Map<String, Integer> met = new TreeMap<>();
        int alarms = 0;
        for (int pupil = 0; pupil < 30; pupil++) {
            Exercise exercise = set.get(pupil % set.size());
            String name = String.format(Locale.ROOT, "%02d", pupil + 1);
            Path answers = write(exercise, folder.resolve(name));
            StringBuilder text = new StringBuilder("exercise: " + exercise.id() + "\napprentice: pupil " + name + "\nstop for:\n");
            List<Marking.Fault> faults = truth.get(pupil % set.size());
            for (int i = 0; i < faults.size(); i++) {
                // Invented skill: each pupil sees some faults and not others, the last kind least of all.
                boolean sees = (pupil * 7 + i * 3) % 5 > i;
                String check = faults.get(i).lead().check();
                met.merge(check, 1, Integer::sum);
                if (sees) {
                    text.append("  - { check: ").append(check).append(", why: seen }\n");
                } else {
                    missed.merge(check, 1, Integer::sum);
                }
            }
            if (pupil % 4 == 0) {
                text.append("  - { line: 2, why: looks odd }\n");
                alarms++;
            }
            Files.writeString(answers, text.append("  - { line: '', check: '' }\n"));
            byName.put(name, MARKER.mark(answers));
        }

        assertThat(byName).hasSize(30);
        assertThat(byName.values().stream().mapToInt(m -> m.alarms().size()).sum()).isEqualTo(alarms);
        assertThat(byName.values()).allSatisfy(m -> assertThat(m.problems()).isEmpty());
        String table = MarkText.table(byName, 110, false);
        assertThat(table).contains("A class of 30", "01 pupil 01: found ");
        missed.forEach((check, many) -> assertThat(table).contains(check + ": missed " + many + " of " + met.get(check)));
        String first = table.substring(table.indexOf("Missed most") + 12).strip();
        int most = missed.values().stream().mapToInt(Integer::intValue).max().orElseThrow();
        assertThat(first.lines().findFirst().orElseThrow()).matches("\\S+: missed " + most + " of [0-9]+");
    }

    @Test
    void the_key_of_a_class_is_a_well_formed_page_with_every_fault_and_its_lines() throws Exception {
        Exercise one = EXERCISES.make("fasteners", 2, 7, List.of());
        String key = MarkText.key(Map.of("01", one));

        Markup.holds(Map.of("key.html", key));
        one.faults().forEach(fault -> assertThat(key).contains(fault.check()));
    }

    // --- practice

    @Test
    void a_check_comes_again_after_one_two_four_eight_and_sixteen_exercises_and_at_once_when_it_was_missed() {
        Practice practice = Practice.none();
        List<Integer> due = new ArrayList<>();
        for (int i = 1; i <= 6; i++) {
            practice = practice.with("exercise " + i, List.of(new Marking.Seen("ring-gap-against-duty", true)));
            due.add(practice.checks().get("ring-gap-against-duty").due() - i);
        }
        Practice missed = practice.with("exercise 7", List.of(new Marking.Seen("ring-gap-against-duty", false)));

        assertThat(due).containsExactly(1, 2, 4, 8, 16, 16);
        assertThat(practice.due()).isEmpty();
        assertThat(missed.due()).containsExactly("ring-gap-against-duty");
        assertThat(missed.with("exercise 7", List.of(new Marking.Seen("ring-gap-against-duty", true)))).isEqualTo(missed);
    }

    @Test
    void the_practice_file_is_read_as_it_was_written() {
        Practice practice = Practice.none().with("0a1b", List.of(new Marking.Seen("ring-gap-against-duty", true),
                new Marking.Seen("piston-meets-head", false)));
        Practice read = Practice.of(Yaml.text(practice.text(), "practice.yaml"), MARKER.checks());

        assertThat(read).isEqualTo(practice);
        assertThat(Practice.of(Yaml.text("checks:\n  piston-meets-hed: { found: 1 }\n", "practice.yaml"), MARKER.checks()).problems())
                .extracting(p -> p.where() + ": " + p.what() + " " + p.nearest().orElse(""))
                .containsExactly("practice.yaml:2:3: There is no check \"piston-meets-hed\". piston-meets-head");
    }

    @Test
    void what_is_due_comes_first() throws Exception {
        Exercise exercise = EXERCISES.make("fasteners", 1, 7, List.of("torque-unit-mix-up", "bolt-bottoms-before-it-clamps"));

        assertThat(exercise.faults().get(0).check()).isIn("torque-unit-mix-up", "bolt-bottoms-before-it-clamps");
    }
}
