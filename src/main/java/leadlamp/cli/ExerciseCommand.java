package leadlamp.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import leadlamp.record.Yaml;
import leadlamp.report.Plain;
import leadlamp.report.ProblemText;
import leadlamp.teach.Exercise;
import leadlamp.teach.Exercises;
import leadlamp.teach.MarkText;
import leadlamp.teach.Practice;

/** An invented record with faults in it, for an apprentice or for a class. */
final class ExerciseCommand {
    private static final String OUT = "--out";
    private static final String TOPIC = "--topic";
    private static final String FAULTS = "--faults";
    private static final String SEED = "--seed";
    private static final String CLASS = "--class";
    private static final String PRACTICE = "--practice";
    private static final int USUAL = 3;
    private static final int MOST_FAULTS = 20;
    private static final int MOST_PUPILS = 200;

    private ExerciseCommand() {
    }

    static int run(List<String> typed, Say say) throws Complaint, IOException {
        Arguments arguments = Arguments.of(typed, Map.of(OUT, "a folder", TOPIC, "a topic", FAULTS, "a number", SEED, "a number",
                CLASS, "a number", PRACTICE, "a file"));
        if (!arguments.words().isEmpty()) {
            throw new Complaint("An exercise takes options alone; " + Say.quoted(arguments.words().get(0)) + " is none.");
        }
        String out = arguments.value(OUT).orElseThrow(() -> new Complaint("The exercise wants a folder: name one with --out."));
        Desk desk = new Desk();
        Exercises exercises = new Exercises(desk.examples());
        String topic = arguments.value(TOPIC).orElse("").replace(' ', '-');
        if (!topic.isEmpty() && !exercises.topics().contains(topic)) {
            throw Arguments.unknown("topic", topic, exercises.topics());
        }
        int faults = (int) number(arguments, FAULTS, USUAL, 1, MOST_FAULTS);
        long seed = number(arguments, SEED, 1, 0, Integer.MAX_VALUE);
        int pupils = (int) number(arguments, CLASS, 0, 1, MOST_PUPILS);
        List<String> due = arguments.value(PRACTICE).isPresent() ? due(arguments.value(PRACTICE).get(), desk, say) : List.of();
        try {
            if (pupils == 0) {
                Exercise exercise = exercises.make(topic, faults, seed, due);
                free(exercise, Records.path(out));
                write(exercise, Records.path(out));
                say.result("Exercise " + exercise.id() + " lies in " + Plain.of(out) + ": read " + Exercise.RECORD + ", answer in "
                        + Exercise.ANSWERS + ", then type: leadlamp mark "
                        + Plain.of(Records.path(out).resolve(Exercise.ANSWERS).toString()) + "\n");
                return 0;
            }
            Map<String, Exercise> set = new LinkedHashMap<>();
            for (int i = 1; i <= pupils; i++) {
                String name = String.format(Locale.ROOT, "%02d", i);
                Exercise exercise = exercises.make(topic, faults, seed + i - 1, due);
                set.put(name, exercise);
            }
            for (Map.Entry<String, Exercise> one : set.entrySet()) {
                free(one.getValue(), Records.path(out).resolve(one.getKey()));
            }
            for (Map.Entry<String, Exercise> one : set.entrySet()) {
                write(one.getValue(), Records.path(out).resolve(one.getKey()));
            }
            try (OutputStream key = Target.open(Records.path(out).resolve("key.html"), List.of())) {
                key.write(MarkText.key(set).getBytes(StandardCharsets.UTF_8));
            }
            say.result(pupils + " exercises and their key.html lie in " + Plain.of(out) + ". When they are answered, type: leadlamp mark "
                    + Plain.of(out) + "\n");
            return 0;
        } catch (Exercises.CannotMake cannot) {
            throw new Complaint(cannot.getMessage());
        }
    }

    private static long number(Arguments arguments, String option, long usual, long least, long most) throws Complaint {
        Optional<String> text = arguments.value(option);
        if (text.isEmpty()) {
            return usual;
        }
        try {
            long number = Long.parseLong(text.get());
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException none) {
            // Told below.
        }
        throw new Complaint(option + " wants a number from " + least + " to " + most + ", not " + Say.quoted(text.get()) + ".");
    }

    private static List<String> due(String file, Desk desk, Say say) throws Complaint {
        Path path = Records.path(file);
        if (!Files.exists(path)) {
            return List.of();
        }
        Practice practice = Practice.of(Yaml.read(path, path.getFileName().toString()), desk.checks().stream().map(c -> c.id()).toList());
        practice.problems().forEach(problem -> say.remark(String.join("\n", ProblemText.block(problem))));
        return practice.due();
    }

    /** Never over a file that somebody wrote: all are looked for before the first is written. */
    private static void free(Exercise exercise, Path folder) throws Complaint, IOException {
        for (String name : List.of(Exercise.ANSWERS, Exercise.RECORD)) {
            Path path = folder.resolve(name);
            if (Files.exists(path)) {
                throw new Complaint(Say.quoted(path.toString()) + " is there already, and an exercise is never written over it. Name"
                        + " another folder.");
            }
        }
        for (Map.Entry<String, String> sheet : exercise.files().entrySet()) {
            Path path = folder.resolve(sheet.getKey());
            if (Files.exists(path) && !Files.readString(path).equals(sheet.getValue())) {
                throw new Complaint(Say.quoted(path.toString()) + " is there already, and is another sheet than the exercise has. Name"
                        + " another folder.");
            }
        }
    }

    private static void write(Exercise exercise, Path folder) throws Complaint, IOException {
        Target.of(folder + "/", 1);
        file(folder.resolve(Exercise.RECORD), exercise.record());
        for (Map.Entry<String, String> sheet : exercise.files().entrySet()) {
            Path path = folder.resolve(sheet.getKey());
            Target.of(path.getParent() + "/", 1);
            file(path, sheet.getValue());
        }
        file(folder.resolve(Exercise.ANSWERS), exercise.answers());
    }

    private static void file(Path path, String text) throws Complaint, IOException {
        try (OutputStream out = Target.open(path, List.of())) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
    }
}
