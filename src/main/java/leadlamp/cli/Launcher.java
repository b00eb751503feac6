package leadlamp.cli;

import java.io.File;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.InvocationTargetException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the jar starts. A Java process that must load some two thousand classes spends its time on that; with them laid out
 * ready in an archive it takes half. No jar can ask for its archive, so this starts Java once more, with it and with the
 * flags that suit a short run. Where there is no archive that fits, or flags were given, it goes on in this process.
 *
 * <p>The program lies in the jar as one file, for Java goes through the list of all that a jar holds before it runs any of it;
 * the build takes it out once and lays it beside the jar, with the archives.
 *
 * <p>It stays small, for it runs before all that: no text put together at length, no lambdas, no streams.
 */
public final class Launcher {
    /** Where in the jar the program lies. */
    public static final String PROGRAM = "leadlamp/program.jar";

    private static final String JAR = ".jar";
    private static final String MAIN = "leadlamp.cli.Main";
    private static final String MECHANISM = "jdk.lang.Process.launchMechanism";

    private Launcher() {
    }

    public static void main(String[] arguments) throws Throwable {
        File jar = jar();
        List<String> command = jar == null || flagsWereGiven() ? null : command(jar, arguments);
        if (command != null) {
            spawnDirectly();
            ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
            String columns = columns();
            if (columns != null) {
                builder.environment().put("COLUMNS", columns);
            }
            Stop stop = new Stop();
            Runtime.getRuntime().addShutdownHook(stop);
            Process process = stop.start(builder);
            if (process != null) {
                Runtime.getRuntime().halt(process.waitFor());
            }
        }
        here(jar, arguments);
    }

    /** The jar that was started; null where the classes do not lie in one. */
    private static File jar() throws IOException {
        String path = System.getProperty("java.class.path");
        return path.endsWith(".jar") && path.indexOf(File.pathSeparatorChar) < 0 ? new File(path).getCanonicalFile() : null;
    }

    /** Goes on in this process: with the program beside the jar, or else one taken out of it for the while. */
    private static void here(File jar, String[] arguments) throws Throwable {
        ClassLoader loader = Launcher.class.getClassLoader();
        File program = jar == null ? null : program(jar);
        if (program == null || !program.exists()) {
            program = takenOut();
        }
        if (program != null) {
            loader = new URLClassLoader(new URL[] {program.toURI().toURL()}, ClassLoader.getPlatformClassLoader());
            Thread.currentThread().setContextClassLoader(loader);
        }
        try {
            loader.loadClass(MAIN).getMethod("main", String[].class).invoke(null, (Object) arguments);
        } catch (InvocationTargetException failed) {
            throw failed.getCause();
        }
    }

    /** The program taken out of the jar, for as long as this process runs; null where its classes do not lie in a jar. */
    private static File takenOut() {
        try (InputStream in = Launcher.class.getResourceAsStream("/".concat(PROGRAM))) {
            if (in == null) {
                return null;
            }
            File program = File.createTempFile("leadlamp", JAR);
            program.deleteOnExit();
            Files.copy(in, program.toPath(), StandardCopyOption.REPLACE_EXISTING);
            return program;
        } catch (IOException cannot) {
            System.err.println("leadlamp: the program could not be laid into the folder for temporary files, "
                    .concat(System.getProperty("java.io.tmpdir")).concat(": it wants some 12 MB there."));
            Runtime.getRuntime().exit(2);
            return null;
        }
    }

    /**
     * Where the build lays the program of a jar. Its name, like that of its archives, changes with the jar, its place and the Java,
     * so that what is out of date is never taken.
     */
    public static File program(File jar) throws IOException {
        String path = jar.getCanonicalPath();
        long key = path.hashCode();
        key = 31 * key + jar.length();
        key = 31 * key + jar.lastModified();
        key = 31 * key + System.getProperty("java.home").hashCode();
        key = 31 * key + System.getProperty("java.vm.version").hashCode();
        return new File(path.substring(0, path.length() - JAR.length()).concat("-").concat(Long.toHexString(key)).concat(JAR));
    }

    /** The archive of a program, for answers at the terminal. */
    public static File archive(File program) {
        return besides(program, ".jsa");
    }

    /**
     * The archive for whatever wants more than answers at the terminal: pages, data, pictures. The one for answers alone is smaller,
     * and Java goes through all of an archive at each start.
     */
    public static File whole(File program) {
        return besides(program, "-whole.jsa");
    }

    /** Where what every audit reads lies together. */
    public static File together(File program) {
        return besides(program, ".bin");
    }

    private static File besides(File program, String ending) {
        String path = program.getPath();
        return new File(path.substring(0, path.length() - JAR.length()).concat(ending));
    }

    /** How Java is started for an archive to be used or made, up to the flag that says which. */
    public static List<String> java() {
        List<String> command = new ArrayList<>();
        command.add(new File(System.getProperty("java.home"), "bin/java").getPath());
        // An archive that does not fit must say nothing: it would say so on standard output, amid the report.
        command.add("-Xlog:disable");
        command.add("-Xshare:auto");
        command.add("-XX:-UsePerfData");
        return command;
    }

    /**
     * The flags that say where the program's classes lie, for an archive to be used or made. They lie where Java's own do: it
     * takes those from the archive itself, and would ask a class loader, in Java not yet compiled, for each of the others. They
     * stand on the class path too, for whoever asks for the loader of programs.
     */
    public static List<String> classes(String program) {
        return List.of("-Xbootclasspath/a:".concat(program), "-cp", program);
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
    private static List<String> command(File jar, String[] arguments) throws IOException {
        File program = program(jar);
        File archive = answersAlone(arguments) ? archive(program) : whole(program);
        if (!archive.exists() || !program.exists()) {
            return null;
        }
        List<String> command = java();
        command.add("-XX:SharedArchiveFile=".concat(archive.getPath()));
        command.add("-Dleadlamp.together=".concat(together(program).getPath()));
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
        command.addAll(classes(program.getPath()));
        command.add(MAIN);
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
        if (System.getenv("JDK_JAVA_OPTIONS") != null || System.getenv("JAVA_TOOL_OPTIONS") != null || System.getenv("_JAVA_OPTIONS") != null) {
            return true;
        }
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

    /** Takes the started process along when this one is told to stop, and starts none after that. */
    private static final class Stop extends Thread {
        private Process process;
        private boolean stopped;

        /** What was started; null where nothing could be, and this process must do without. */
        synchronized Process start(ProcessBuilder builder) {
            try {
                process = stopped ? null : builder.start();
            } catch (IOException e) {
                process = null;
            }
            return process;
        }

        @Override
        public synchronized void run() {
            stopped = true;
            if (process != null) {
                process.destroy();
            }
        }
    }
}
