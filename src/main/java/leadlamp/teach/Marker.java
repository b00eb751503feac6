package leadlamp.teach;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.audit.Audit;
import leadlamp.audit.Auditor;
import leadlamp.record.Problem;
import leadlamp.record.RecordReader;
import leadlamp.record.Where;
import leadlamp.record.Yaml;
import leadlamp.report.Report;
import leadlamp.words.Vocabulary;

/** Marks answer files, each against the record that lies beside it. */
public final class Marker {
    private final Vocabulary words;
    private final Auditor auditor;
    private final RecordReader reader;
    private final List<String> checks = new ArrayList<>();

    public Marker(Vocabulary words, Auditor auditor) {
        this.words = words;
        this.auditor = auditor;
        this.reader = new RecordReader(words);
        auditor.checks().forEach(check -> checks.add(check.id()));
    }

    /** The names of the checks. */
    public List<String> checks() {
        return checks;
    }

    /** Marks one file. */
    public Marking mark(Path file) throws IOException {
        String name = file.getFileName().toString();
        Path record = file.toAbsolutePath().resolveSibling(Exercise.RECORD);
        if (!Files.isRegularFile(record)) {
            return nothing(new Problem(new Where(name, 0, 0), 0, "", "No " + Exercise.RECORD + " lies beside the answers.",
                    "Answers are marked in the folder of their exercise.", Optional.empty(),
                    "Nothing was marked; what you wrote stays in the file."));
        }
        byte[] bytes = Files.readAllBytes(record);
        RecordReader.Result result = reader.read(record);
        if (result.build().isEmpty()) {
            return nothing(result.problems().get(0));
        }
        int lines = Yaml.read(record, Exercise.RECORD).lines().size();
        Answers answers = Answers.of(Yaml.read(file, name), name, Exercises.id(bytes), lines, checks);
        Audit audit = auditor.audit(result.build().get());
        return Marking.of(answers, Report.of(audit, words));
    }

    private static Marking nothing(Problem problem) {
        return new Marking(new Answers("", "", List.of(), List.of(problem)), List.of(), List.of(), List.of(), List.of(problem));
    }
}
