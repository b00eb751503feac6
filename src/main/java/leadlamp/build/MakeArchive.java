package leadlamp.build;

import java.io.File;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import leadlamp.cli.Launcher;

/**
 * The last build step: lays the classes of an audit out ready in an archive beside the jar, by a rehearsal on sample records.
 * Leadlamp runs without one, only slower to start; so where it cannot be made, that is told and the build goes on.
 */
public final class MakeArchive {
    private static final int MINUTES = 5;

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
        try (DirectoryStream<Path> old = Files.newDirectoryStream(jar.getParent(), "leadlamp-*.jsa")) {
            for (Path file : old) {
                Files.delete(file);
            }
        }
        Path made = jar.resolveSibling("leadlamp.jsa.part");
        List<String> command = Launcher.java();
        command.addAll(List.of("-XX:ArchiveClassesAtExit=" + made, "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-cp",
                jar.toString(), "leadlamp.cli.Rehearsal"));
        command.addAll(List.of(arguments).subList(1, arguments.length));
        Process rehearsal = new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        if (!rehearsal.waitFor(MINUTES, TimeUnit.MINUTES)) {
            rehearsal.destroyForcibly();
        }
        if (rehearsal.waitFor() == 0 && Files.exists(made)) {
            Files.move(made, archive.toPath());
        } else {
            Files.deleteIfExists(made);
            System.out.println("No class-data archive could be made; Leadlamp will start more slowly.");
        }
    }
}
