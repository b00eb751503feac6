package leadlamp.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.record.Yaml;
import leadlamp.report.Plain;
import leadlamp.report.ProblemText;
import leadlamp.teach.Exercise;
import leadlamp.teach.MarkText;
import leadlamp.teach.Marker;
import leadlamp.teach.Marking;
import leadlamp.teach.Practice;

/** Marks an answer file, or those of a class. */
final class MarkCommand {
    private static final String PRACTICE = "--practice";
    private static final int NOT_IN_FULL = 2;

    private MarkCommand() {
    }

    static int run(List<String> typed, Say say) throws Complaint, IOException {
        Arguments arguments = Arguments.of(typed, Map.of(PRACTICE, "a file"));
        Path path = Records.path(arguments.one("answer file"));
        Marker marker = new Desk().marker();
        if (!Files.isDirectory(path)) {
            return one(path, marker, arguments.value(PRACTICE), say);
        }
        if (Files.isRegularFile(path.resolve(Exercise.ANSWERS))) {
            return one(path.resolve(Exercise.ANSWERS), marker, arguments.value(PRACTICE), say);
        }
        if (arguments.value(PRACTICE).isPresent()) {
            throw new Complaint("--practice is for one apprentice; leave it out for a class.");
        }
        Map<String, Marking> set = new LinkedHashMap<>();
        int problems = 0;
        for (Path folder : folders(path)) {
            Marking marking = marker.mark(folder.resolve(Exercise.ANSWERS));
            set.put(folder.getFileName().toString(), marking);
            problems += marking.problems().size();
            marking.problems().forEach(problem -> say.remark(folder.getFileName() + ": " + String.join("\n", ProblemText.block(problem))));
        }
        if (set.isEmpty()) {
            throw new Complaint("No folder in " + Say.quoted(path.toString()) + " holds an " + Exercise.ANSWERS + ".");
        }
        say.result(MarkText.table(set, say.width(), say.colour()));
        return problems == 0 ? 0 : NOT_IN_FULL;
    }

    private static List<Path> folders(Path path) throws IOException {
        List<Path> folders = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(path)) {
            for (Path folder : all) {
                if (Files.isRegularFile(folder.resolve(Exercise.ANSWERS))) {
                    folders.add(folder);
                }
            }
        }
        folders.sort((a, b) -> a.getFileName().toString().compareTo(b.getFileName().toString()));
        return folders;
    }

    private static int one(Path file, Marker marker, Optional<String> practised, Say say) throws Complaint, IOException {
        if (!Files.isRegularFile(file)) {
            throw new Complaint("There is no answer file " + Say.quoted(file.toString()) + ".");
        }
        Marking marking = marker.mark(file);
        Practice practice = Practice.none();
        boolean keep = practised.isPresent() && !marking.answers().exercise().isEmpty();
        if (practised.isPresent() && Files.exists(Records.path(practised.get()))) {
            Path path = Records.path(practised.get());
            practice = Practice.of(Yaml.read(path, path.getFileName().toString()), marker.checks());
            practice.problems().forEach(problem -> say.remark(String.join("\n", ProblemText.block(problem))));
            keep &= practice.problems().isEmpty();
        }
        boolean nothing = marking.found().isEmpty() && marking.missed().isEmpty();
        Practice now = nothing ? practice : practice.with(marking.answers().exercise(), marking.seen());
        say.result(MarkText.of(marking, now, say.width(), say.colour()));
        if (keep && !nothing) {
            keep(now, Records.path(practised.get()));
            say.result("Kept in " + Plain.of(practised.get()) + ".\n");
        }
        return marking.problems().isEmpty() && practice.problems().isEmpty() ? 0 : NOT_IN_FULL;
    }

    /** Whole or not at all: what stood there stays until the new one lies beside it. */
    private static void keep(Practice practice, Path path) throws Complaint {
        Path beside = path.resolveSibling(path.getFileName() + ".new");
        try {
            Files.write(beside, practice.text().getBytes(StandardCharsets.UTF_8));
            Files.move(beside, path, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException refused) {
            throw new Complaint(Say.quoted(path.toString()) + " cannot be written; what stood there is as it was.");
        }
    }
}
