package leadlamp.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.bench.NewRecord;
import leadlamp.record.EngineSheet;
import leadlamp.record.Problem;
import leadlamp.record.RecordReader;
import leadlamp.report.Plain;
import leadlamp.report.ProblemText;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;

/** A new record, laid out from an engine sheet. */
final class BeginCommand {
    private static final String OUT = "--out";
    private static final int NOT_IN_FULL = 2;

    private BeginCommand() {
    }

    static int run(List<String> typed, Say say) throws Complaint, IOException {
        Arguments arguments = Arguments.of(typed, Map.of(OUT, "a file"));
        Path path = Records.path(arguments.one("engine sheet"));
        Vocabulary words = Words.compiled();
        EngineSheet sheet = new RecordReader(words).sheet(path);
        for (Problem problem : sheet.problems()) {
            say.remark(String.join("\n", ProblemText.block(problem)));
        }
        if (sheet.tree().fields().isEmpty()) {
            return NOT_IN_FULL;
        }
        Optional<String> out = arguments.value(OUT);
        if (out.isEmpty()) {
            say.result(NewRecord.of(sheet, path.getFileName().toString(), words));
        } else {
            write(sheet, path, Records.path(out.get()), words);
            say.result("A new record lies in " + Plain.of(out.get()) + ".\n");
        }
        return sheet.problems().isEmpty() ? 0 : NOT_IN_FULL;
    }

    private static void write(EngineSheet sheet, Path path, Path out, Vocabulary words) throws Complaint {
        Path folder = out.toAbsolutePath().normalize().getParent();
        String seen;
        try {
            seen = folder.relativize(path.toAbsolutePath().normalize()).toString().replace('\\', '/');
        } catch (IllegalArgumentException otherDisk) {
            throw new Complaint("The record and its engine sheet must lie on one disk.");
        }
        if (Files.exists(out)) {
            throw new Complaint(Say.quoted(out.toString()) + " is there already; a new record is never written over a file.");
        }
        if (seen.startsWith("..")) {
            throw new Complaint("The engine sheet must lie in the folder of the record or below it; copy it there first.");
        }
        try {
            Files.write(out, NewRecord.of(sheet, seen, words).getBytes(StandardCharsets.UTF_8),
                    StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException there) {
            throw new Complaint(Say.quoted(out.toString()) + " is there already; a new record is never written over a file.");
        } catch (IOException refused) {
            throw new Complaint(Say.quoted(out.toString()) + " cannot be written.");
        }
    }
}
