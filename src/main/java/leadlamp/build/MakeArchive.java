package leadlamp.build;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import leadlamp.audit.CheckPages;
import leadlamp.audit.RulebaseFile;
import leadlamp.cli.Launcher;
import leadlamp.judge.TradeLimits;
import leadlamp.words.Carried;
import leadlamp.words.Words;

/**
 * The last build step: lays the classes of an audit out ready in an archive beside the jar, by a rehearsal on sample records.
 * Leadlamp runs without one, only slower to start; so where it cannot be made, that is told and the build goes on.
 */
public final class MakeArchive {
    private static final int MINUTES = 5;
    private static final List<String> EVERY_AUDIT = List.of(RulebaseFile.RESOURCE, TradeLimits.RESOURCE, CheckPages.RESOURCE, Words.RESOURCE);

    private MakeArchive() {
    }

    /**
     * Makes it.
     *
     * @param arguments the jar, and the records to rehearse on
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path jar = Path.of(arguments[0]).toRealPath();
        File archive = Launcher.archive(jar.toFile());
        if (archive.exists()) {
            return;
        }
        try (DirectoryStream<Path> old = Files.newDirectoryStream(jar.getParent(), "leadlamp-*.{jsa,bin}")) {
            for (Path file : old) {
                Files.delete(file);
            }
        }
        Path list = jar.resolveSibling("leadlamp.classes.part");
        Path made = jar.resolveSibling("leadlamp.jsa.part");
        List<String> rehearse = Launcher.java();
        rehearse.addAll(List.of("-XX:DumpLoadedClassList=" + list, "-XX:TieredStopAtLevel=1"));
        rehearse.addAll(Launcher.classes(jar.toString()));
        rehearse.add("leadlamp.cli.Rehearsal");
        rehearse.addAll(List.of(arguments).subList(1, arguments.length));
        // Only this collector can lay objects out beside the classes; whichever runs later takes them.
        List<String> lay = new ArrayList<>(List.of(rehearse.get(0), "-Xlog:disable", "-Xshare:dump", "-XX:+UseG1GC",
                "-XX:SharedClassListFile=" + list, "-XX:SharedArchiveFile=" + made));
        lay.addAll(Launcher.classes(jar.toString()));
        if (done(rehearse) && done(lay) && Files.exists(made)) {
            try (OutputStream together = Files.newOutputStream(Launcher.together(archive).toPath())) {
                Carried.together(EVERY_AUDIT, together);
            }
            Files.move(made, archive.toPath());
        } else {
            Files.deleteIfExists(made);
            System.out.println("No class-data archive could be made; Leadlamp will start more slowly.");
        }
        Files.deleteIfExists(list);
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
