package leadlamp.build;

import java.io.File;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import leadlamp.cli.Launcher;

/**
 * Proves the jar as a user gets it, for the tests run on the classes and on the libraries as they came. Every class in it must
 * stand before Java's own check of classes, and what the jar tells of the sample builds must be what the tests hold.
 */
public final class ProveJar {
    private static final String CLASS = ".class";
    private static final String TOLD = ".txt";
    private static final int SECONDS = 60;

    private ProveJar() {
    }

    /** @param arguments the jar, the folder of the sample builds, the folder of what is told of them */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path jar = Path.of(arguments[0]).toRealPath();
        List<String> faults = new ArrayList<>();
        int classes = check(Launcher.program(jar.toFile()).toPath(), faults);
        int told = tell(jar, Path.of(arguments[1]), Path.of(arguments[2]), faults);
        alone(jar, Path.of(arguments[1]), Path.of(arguments[2]), faults);
        run(jar, Path.of(arguments[1]), faults);
        if (classes == 0 || told == 0) {
            faults.add("Nothing was proved: " + classes + " classes, " + told + " reports.");
        }
        if (!faults.isEmpty()) {
            throw new IllegalStateException("The jar is not what was tested:\n" + String.join("\n", faults));
        }
        System.out.println("The jar stands: " + classes + " classes, " + told + " reports as they should be");
    }

    /** Has Java check each class, without running any of it; what a library can do without is not there, and passed over. */
    private static int check(Path jar, List<String> faults) throws IOException {
        int checked = 0;
        try (JarFile file = new JarFile(jar.toFile());
                URLClassLoader loader = new URLClassLoader(new URL[] {jar.toUri().toURL()}, ClassLoader.getPlatformClassLoader())) {
            for (String name : file.stream().map(e -> e.getName()).filter(n -> n.endsWith(CLASS)).sorted().toList()) {
                try {
                    loader.loadClass(name.substring(0, name.length() - CLASS.length()).replace('/', '.')).getDeclaredMethods();
                    checked++;
                } catch (VerifyError | ClassFormatError | IncompatibleClassChangeError wrong) {
                    faults.add(name + ": " + wrong);
                } catch (ClassNotFoundException | NoClassDefFoundError lacking) {
                    // Needs a library that we do not have, and never run it.
                }
            }
        }
        return checked;
    }

    private static int tell(Path jar, Path samples, Path told, List<String> faults) throws IOException, InterruptedException {
        int same = 0;
        for (Path file : files(told)) {
            same += tells(jar, samples, file, faults) ? 1 : 0;
        }
        return same;
    }

    private static List<Path> files(Path told) throws IOException {
        try (Stream<Path> all = Files.list(told)) {
            return all.filter(f -> f.toString().endsWith(TOLD)).sorted().toList();
        }
    }

    /** A jar that somebody carried elsewhere has no archives beside it, and tells the same. */
    private static void alone(Path jar, Path samples, Path told, List<String> faults) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("alone");
        Path copy = Files.copy(jar, folder.resolve(jar.getFileName()));
        try {
            tells(copy, samples, files(told).get(0), faults);
        } finally {
            Files.delete(copy);
            Files.delete(folder);
        }
    }

    /** What else a user may run goes through libraries that no report goes through: it must end as it should, and say something. */
    private static void run(Path jar, Path samples, List<String> faults) throws IOException, InterruptedException {
        String record = samples.resolve("hill-climb-three.yaml").toString();
        String engine = samples.resolve("engines/osier-18.yaml").toString();
        Path folder = Files.createTempDirectory("proved");
        String sheet = Files.copy(Path.of(engine), folder.resolve("sheet.yaml")).toString();
        for (List<String> command : List.of(
                List.of("audit", record, "--as", "html"), List.of("audit", record, "--as", "json"), List.of("audit", record, "--as", "sarif"),
                List.of("audit", record, record, "--brief"), List.of("next", record), List.of("past", record, "--as", "html"),
                List.of("past", record, "--as", "json"), List.of("look", engine, "--as", "html"), List.of("look", record),
                List.of("sheets", record, "--out", folder.resolve("sheets").toString()), List.of("schema", "record"),
                List.of("begin", sheet, "--out", folder.resolve("begun.yaml").toString()), List.of("why", "cam-gear-pin-hollow"),
                List.of("exercise", "--out", folder.resolve("exercise").toString(), "--seed", "1"))) {
            List<String> line = new ArrayList<>(List.of(new File(System.getProperty("java.home"), "bin/java").getPath(), "-jar", jar.toString()));
            line.addAll(command);
            Process process = new ProcessBuilder(line).redirectErrorStream(true).start();
            String says = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (!process.waitFor(SECONDS, TimeUnit.SECONDS) || process.exitValue() > 1 || says.isBlank() || says.contains("Leadlamp itself failed")) {
                faults.add("leadlamp " + String.join(" ", command) + ": " + says.lines().findFirst().orElse("nothing was said"));
            }
        }
        try (Stream<Path> made = Files.walk(folder)) {
            for (Path file : made.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private static boolean tells(Path jar, Path samples, Path file, List<String> faults) throws IOException, InterruptedException {
        String name = file.getFileName().toString();
        String record = samples.resolve(name.substring(0, name.length() - TOLD.length()) + ".yaml").toString();
        ProcessBuilder audit = new ProcessBuilder(new File(System.getProperty("java.home"), "bin/java").getPath(), "-jar",
                jar.toString(), "audit", record, "--brief").redirectError(ProcessBuilder.Redirect.INHERIT);
        audit.environment().put("COLUMNS", "80");
        Process process = audit.start();
        String says = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (!process.waitFor(SECONDS, TimeUnit.SECONDS) || process.exitValue() > 2) {
            faults.add(name + ": the audit did not end as one does");
            return false;
        }
        if (!says.equals(Files.readString(file))) {
            faults.add(name + ": the jar tells of " + record + " what the tests do not");
            return false;
        }
        return true;
    }
}
