package leadlamp.build;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipFile;
import leadlamp.audit.CheckPages;
import leadlamp.audit.RulebaseFile;
import leadlamp.cli.Launcher;
import leadlamp.cli.Rehearsal;
import leadlamp.judge.TradeLimits;
import leadlamp.words.Carried;
import leadlamp.words.Words;

/**
 * The last build step: takes the program out of the jar, and lays its classes out ready in archives beside it, by rehearsals on
 * sample records. Leadlamp runs without them, only slower to start; so where one cannot be made, that is told and the build goes on.
 */
public final class MakeArchive {
    private static final int MINUTES = 5;
    private static final List<String> EVERY_AUDIT = List.of(RulebaseFile.RESOURCE, TradeLimits.RESOURCE, CheckPages.RESOURCE, Words.RESOURCE);

    private MakeArchive() {
    }

    /**
     * Takes it out and makes them.
     *
     * @param arguments the jar, and the records to rehearse on
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path jar = Path.of(arguments[0]).toRealPath();
        Path program = Launcher.program(jar.toFile()).toPath();
        if (Files.exists(program)) {
            return;
        }
        try (DirectoryStream<Path> old = Files.newDirectoryStream(jar.getParent(), "leadlamp-*.{jar,jsa,bin}")) {
            for (Path file : old) {
                Files.delete(file);
            }
        }
        try (ZipFile whole = new ZipFile(jar.toFile());
                InputStream in = whole.getInputStream(whole.getEntry(Launcher.PROGRAM))) {
            Path part = jar.resolveSibling("leadlamp.program.part");
            Files.copy(in, part, StandardCopyOption.REPLACE_EXISTING);
            Files.move(part, program);
        }
        List<String> records = List.of(arguments).subList(1, arguments.length);
        Path answers = jar.resolveSibling("leadlamp.answers.part");
        Path whole = jar.resolveSibling("leadlamp.whole.part");
        if (laid(program, Rehearsal.ANSWERS, records, answers) && laid(program, Rehearsal.WHOLE, records, whole)) {
            Path part = jar.resolveSibling("leadlamp.bin.part");
            try (OutputStream together = Files.newOutputStream(part)) {
                Carried.together(EVERY_AUDIT, together);
            }
            Files.move(part, Launcher.together(program.toFile()).toPath());
            Files.move(whole, Launcher.whole(program.toFile()).toPath());
            Files.move(answers, Launcher.archive(program.toFile()).toPath());
        } else {
            Files.deleteIfExists(answers);
            Files.deleteIfExists(whole);
            System.out.println("No class-data archive could be made; Leadlamp will start more slowly.");
        }
    }

    /** Lays out what a rehearsal takes. */
    private static boolean laid(Path program, String what, List<String> records, Path made) throws IOException, InterruptedException {
        Path list = program.resolveSibling("leadlamp.classes.part");
        List<String> rehearse = Launcher.java();
        rehearse.addAll(List.of("-XX:DumpLoadedClassList=" + list, "-XX:TieredStopAtLevel=1"));
        rehearse.addAll(Launcher.classes(program.toString()));
        rehearse.addAll(List.of("leadlamp.cli.Rehearsal", what));
        rehearse.addAll(records);
        List<String> lay = new ArrayList<>(List.of(rehearse.get(0), "-Xlog:disable", "-Xshare:dump", "-XX:+UseG1GC",
                "-XX:SharedClassListFile=" + list, "-XX:SharedArchiveFile=" + made));
        lay.addAll(Launcher.classes(program.toString()));
        boolean laid = done(rehearse) && done(lay) && Files.exists(made);
        Files.deleteIfExists(list);
        return laid;
    }

    private static boolean done(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
            process.destroyForcibly();
        }
        return process.waitFor() == 0;
    }
}
