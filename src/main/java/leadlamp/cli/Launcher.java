package leadlamp.cli;

import java.io.File;
import java.io.FileInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the jar starts. A Java process that must load some two thousand classes spends its time on that; with them laid out
 * ready in an archive it takes half. No jar can ask for its archive, so this starts Java once more, with it and with the
 * flags that suit a short run. Where there is no archive that fits, or flags were given, it goes on in this process.
 *
 * <p>It stays small, for it runs before all that: no text put together at length, no lambdas, no streams.
 */
public final class Launcher {
    private static final String STARTED = "leadlamp.started";
    private static final String MECHANISM = "jdk.lang.Process.launchMechanism";

    private Launcher() {
    }

    public static void main(String[] arguments) throws Exception {
        if (System.getProperty(STARTED) == null) {
            List<String> command = command(arguments);
            if (command != null) {
                Process process = null;
                spawnDirectly();
                try {
                    ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
                    String columns = columns();
                    if (columns != null) {
                        builder.environment().put("COLUMNS", columns);
                    }
                    process = builder.start();
                } catch (IOException e) {
                    // Then it must do without.
                }
                if (process != null) {
                    Runtime.getRuntime().addShutdownHook(new Stop(process));
                    Runtime.getRuntime().halt(process.waitFor());
                }
            }
        }
        Main.main(arguments);
    }

    /**
     * The archive that fits a jar and the Java that runs now. Its name changes with the jar, its place and the Java, so that
     * one that is out of date is never taken.
     */
    public static File archive(File jar) throws IOException {
        String path = jar.getCanonicalPath();
        long key = path.hashCode();
        key = 31 * key + jar.length();
        key = 31 * key + jar.lastModified();
        key = 31 * key + System.getProperty("java.home").hashCode();
        key = 31 * key + System.getProperty("java.vm.version").hashCode();
        return new File(path.substring(0, path.length() - ".jar".length()).concat("-").concat(Long.toHexString(key)).concat(".jsa"));
    }

    /**
     * The archive for whatever wants more than answers at the terminal: pages, data, pictures. The one for answers alone is smaller by
     * a quarter, and Java goes through all of an archive at each start.
     */
    public static File whole(File archive) {
        String path = archive.getPath();
        return new File(path.substring(0, path.length() - ".jsa".length()).concat("-whole.jsa"));
    }

    /** Where what every audit reads lies together, beside its archive. */
    public static File together(File archive) {
        String path = archive.getPath();
        return new File(path.substring(0, path.length() - ".jsa".length()).concat(".bin"));
    }

    /** How Java is started for an archive to be used or made, up to the flag that says which. */
    public static List<String> java() {
        List<String> command = new ArrayList<>();
        command.add(new File(System.getProperty("java.home"), "bin/java").getPath());
        // An archive that does not fit must say nothing: it would say so on standard output, amid the report.
        command.add("-Xlog:disable");
        command.add("-Xshare:auto");
        command.add("-XX:-UsePerfData");
        command.add("-D".concat(STARTED).concat("=true"));
        return command;
    }

    /**
     * The flags that say where the program's classes lie, for an archive to be used or made. They lie where Java's own do: it
     * takes those from the archive itself, and would ask a class loader, in Java not yet compiled, for each of the others. They
     * stand on the class path too, for whoever asks for the loader of programs.
     */
    public static List<String> classes(String jar) {
        return List.of("-Xbootclasspath/a:".concat(jar), "-cp", jar);
    }

    /** Spares a small program that Java puts between itself and what it starts; only where it is known to be of no use. */
    private static void spawnDirectly() {
        String java = System.getProperty("java.specification.version");
        if ("Linux".equals(System.getProperty("os.name")) && ("17".equals(java) || "21".equals(java))
                && System.getProperty(MECHANISM) == null) {
            System.setProperty(MECHANISM, "VFORK");
        }
    }

    /** What to start, or null where this process is to go on. */
    private static List<String> command(String[] arguments) throws IOException {
        String path = System.getProperty("java.class.path");
        if (!path.endsWith(".jar") || path.indexOf(File.pathSeparatorChar) >= 0 || flagsWereGiven()) {
            return null;
        }
        File jar = new File(path).getCanonicalFile();
        File archive = archive(jar);
        if (!archive.exists()) {
            return null;
        }
        List<String> command = java();
        command.add("-XX:SharedArchiveFile=".concat((answersAlone(arguments) ? archive : whole(archive)).getPath()));
        command.add("-Dleadlamp.together=".concat(together(archive).getPath()));
        if (isShort(arguments)) {
            command.add("-XX:+UseSerialGC");
            command.add("-XX:TieredStopAtLevel=1");
            // Most of a short run's code runs a few hundred times: compiling less of it, and none of the long lists of
            // derived values, leaves more of the machine to the audit.
            command.add("-XX:+IgnoreUnrecognizedVMOptions");
            command.add("-XX:C1MaxInlineSize=12");
            command.add("-XX:CompileCommand=quiet");
            command.add("-XX:CompileCommand=exclude,leadlamp/derive/*.entry");
        }
        command.addAll(classes(jar.getPath()));
        command.add("leadlamp.cli.Launcher");
        for (String argument : arguments) {
            command.add(argument);
        }
        return command;
    }

    /** Whether all that is wanted is what an audit says at the terminal. */
    private static boolean answersAlone(String[] arguments) {
        for (String argument : arguments) {
            if (argument.startsWith("--as")) {
                return false;
            }
        }
        return arguments.length > 0 && ("audit".equals(arguments[0]) || "next".equals(arguments[0]));
    }

    /** Whether few enough records are named for the quick compiler alone to be the better one. */
    private static boolean isShort(String[] arguments) {
        int words = 0;
        boolean folder = false;
        for (String argument : arguments) {
            if (!argument.startsWith("-")) {
                words++;
                folder |= words > 1 && new File(argument).isDirectory();
            }
        }
        return words <= 3 && !folder;
    }

    /** How wide the terminal is, where the results go to one and nobody has said yet; else null. */
    private static String columns() {
        if (System.getenv("COLUMNS") != null) {
            return null;
        }
        try {
            String out = new File("/proc/self/fd/1").getCanonicalPath();
            if (!out.startsWith("/dev/pts/") && !out.startsWith("/dev/tty")) {
                return null;
            }
            Process size = new ProcessBuilder("stty", "size").redirectInput(new File(out)).start();
            byte[] told = size.getInputStream().readAllBytes();
            int at = 0;
            while (at < told.length && told[at] != ' ') {
                at++;
            }
            int end = at + 1;
            while (end < told.length && told[end] >= '0' && told[end] <= '9') {
                end++;
            }
            return end > at + 1 && end <= told.length ? new String(told, at + 1, end - at - 1) : null;
        } catch (IOException e) {
            // No such system, or no such program: then it is as wide as is usual.
            return null;
        }
    }

    /** Whether Java was given flags of the user's own. They are not for this class to drop; told where the system tells it. */
    private static boolean flagsWereGiven() {
        byte[] line = new byte[4096];
        int length;
        try (FileInputStream in = new FileInputStream("/proc/self/cmdline")) {
            length = in.read(line);
        } catch (IOException e) {
            return false;
        }
        int word = 0;
        while (word < length && line[word] != 0) {
            word++;
        }
        return !(word + 5 < length && line[word + 1] == '-' && line[word + 2] == 'j' && line[word + 3] == 'a'
                && line[word + 4] == 'r' && line[word + 5] == 0);
    }

    /** Takes the started process along when this one is told to stop. */
    private static final class Stop extends Thread {
        private final Process process;

        Stop(Process process) {
            this.process = process;
        }

        @Override
        public void run() {
            process.destroy();
        }
    }
}
