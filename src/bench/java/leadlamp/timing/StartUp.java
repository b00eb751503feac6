package leadlamp.timing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.tools.ToolProvider;

/**
 * Times whole processes, from start to end: a bare JVM that prints one line, and a command, turn by turn, so that a busy
 * machine slows both alike.
 *
 * <pre>java src/bench/java/leadlamp/timing/StartUp.java ROUNDS java -jar target/leadlamp.jar audit RECORD</pre>
 *
 * Several commands may be given, with {@code --} between them. The ratio is that of the medians. Exit status is not looked at.
 */
public final class StartUp {
    private StartUp() {
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        int rounds = Integer.parseInt(arguments[0]);
        List<List<String>> commands = new ArrayList<>();
        commands.add(bare());
        commands.add(new ArrayList<>());
        for (String word : Arrays.asList(arguments).subList(1, arguments.length)) {
            if (word.equals("--")) {
                commands.add(new ArrayList<>());
            } else {
                commands.get(commands.size() - 1).add(word);
            }
        }
        double[][] times = new double[commands.size()][rounds];
        for (int round = -1; round < rounds; round++) {
            for (int i = 0; i < commands.size(); i++) {
                double time = time(commands.get(i));
                if (round >= 0) {
                    times[i][round] = time;
                }
            }
        }
        double least = 0;
        for (int i = 0; i < times.length; i++) {
            Arrays.sort(times[i]);
            double median = times[i][rounds / 2];
            least = i == 0 ? median : least;
            System.out.printf(Locale.ROOT, "min %6.1f  median %6.1f  max %6.1f ms  ratio %5.2f  %s%n", times[i][0], median,
                    times[i][rounds - 1], median / least, i == 0 ? "bare JVM" : String.join(" ", commands.get(i)));
        }
    }

    private static List<String> bare() throws IOException {
        Path folder = Files.createTempDirectory("bare");
        folder.toFile().deleteOnExit();
        Path source = folder.resolve("Bare.java");
        Files.writeString(source, "class Bare { public static void main(String[] a) { System.out.println(\"one line\"); } }");
        ToolProvider.getSystemJavaCompiler().run(null, null, null, "-d", folder.toString(), source.toString());
        source.toFile().deleteOnExit();
        folder.resolve("Bare.class").toFile().deleteOnExit();
        return List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp", folder.toString(), "Bare");
    }

    private static double time(List<String> command) throws IOException, InterruptedException {
        ProcessBuilder process = new ProcessBuilder(command);
        process.redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD);
        long start = System.nanoTime();
        process.start().waitFor();
        return (System.nanoTime() - start) / 1e6;
    }
}
