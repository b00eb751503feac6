package leadlamp.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How the jar starts: small jars, laid out as ours is, of a program that says how it was started. */
class LauncherTest {
    private static final int SECONDS = 60;
    private static final String ARCHIVE = "-XX:SharedArchiveFile=";

    @TempDir
    Path folder;
    private Path temporary;
    private Path jar;

    private record Ended(int status, String said) {
    }

    @BeforeEach
    void a_jar_with_its_program() throws IOException {
        temporary = Files.createDirectory(folder.resolve("temporary"));
        jar = jar(Files.createDirectory(folder.resolve("some where")).resolve("leadlamp.jar"), "in the jar");
    }

    /** The jar: the class that starts it, and the program as one file. */
    private Path jar(Path to, String name) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        files.put("META-INF/MANIFEST.MF", "Manifest-Version: 1.0\nMain-Class: leadlamp.cli.Launcher\n\n".getBytes(StandardCharsets.UTF_8));
        for (String type : List.of("leadlamp/cli/Launcher.class", "leadlamp/cli/Launcher$Stop.class")) {
            try (InputStream in = Launcher.class.getResourceAsStream("/" + type)) {
                files.put(type, in.readAllBytes());
            }
        }
        files.put(Launcher.PROGRAM, Files.readAllBytes(program(folder.resolve("program.jar"), name)));
        return zip(to, files);
    }

    private Path program(Path to, String name) throws IOException {
        Path sources = Files.createDirectories(folder.resolve("sources"));
        Path source = Files.writeString(sources.resolve("Main.java"), """
                package leadlamp.cli;
                public final class Main {
                    public static void main(String[] typed) {
                        System.out.println("the program %s was told " + java.util.Arrays.toString(typed));
                        System.out.println("together " + System.getProperty("leadlamp.together"));
                        System.out.println("started " + String.join(" ", ProcessHandle.current().info().arguments().orElse(new String[0])));
                        System.out.println("beside it " + (ClassLoader.getSystemResource("leadlamp/beside.txt") != null
                                || Thread.currentThread().getContextClassLoader().getResource("leadlamp/beside.txt") != null));
                        if (typed.length > 0 && typed[0].equals("fail")) {
                            System.exit(3);
                        }
                        if (typed.length > 0 && typed[0].equals("break")) {
                            throw new IllegalStateException("broken");
                        }
                    }
                }
                """.formatted(name));
        assertThat(ToolProvider.getSystemJavaCompiler().run(null, null, null, "--release", "17", "-d", sources.toString(), source.toString())).isZero();
        return zip(to, Map.of("leadlamp/cli/Main.class", Files.readAllBytes(sources.resolve("leadlamp/cli/Main.class")),
                "leadlamp/beside.txt", new byte[0]));
    }

    private static Path zip(Path to, Map<String, byte[]> files) throws IOException {
        try (OutputStream out = Files.newOutputStream(to); ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
            }
        }
        return to;
    }

    private static Ended started(Path in, Path jar, List<String> flags, String... typed) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(new File(System.getProperty("java.home"), "bin/java").getPath()));
        command.addAll(flags);
        command.addAll(List.of("-jar", jar.toString()));
        command.addAll(List.of(typed));
        ProcessBuilder builder = new ProcessBuilder(command).directory(in.toFile()).redirectErrorStream(true);
        builder.environment().remove("JAVA_TOOL_OPTIONS");
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(SECONDS, TimeUnit.SECONDS)).isTrue();
        return new Ended(process.exitValue(), said);
    }

    private Ended alone(String... typed) throws IOException, InterruptedException {
        return started(folder, jar, List.of("-Djava.io.tmpdir=" + temporary), typed);
    }

    private static List<Path> in(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    /** As the build leaves it; the archives are there but of no use, and Java goes on without. */
    private File builtBesideIt() throws IOException {
        File program = Launcher.program(jar.toFile());
        program(program.toPath(), "beside the jar");
        Files.writeString(Launcher.archive(program).toPath(), "no archive");
        Files.writeString(Launcher.whole(program).toPath(), "no archive");
        return program;
    }

    @Test
    void what_lies_beside_a_jar_has_the_jar_s_name_and_place() throws IOException {
        File program = Launcher.program(jar.toFile());
        String name = program.getName().substring(0, program.getName().length() - ".jar".length());
        assertThat(name).matches("leadlamp-[0-9a-f]+");
        assertThat(program.getParentFile()).isEqualTo(jar.toRealPath().getParent().toFile());
        assertThat(List.of(Launcher.archive(program), Launcher.whole(program), Launcher.together(program)))
                .extracting(File::getName).containsExactly(name + ".jsa", name + "-whole.jsa", name + ".bin");
        assertThat(List.of(Launcher.archive(program), Launcher.whole(program), Launcher.together(program)))
                .extracting(File::getParentFile).containsOnly(program.getParentFile());
    }

    @Test
    void what_lies_beside_a_jar_changes_with_its_place_its_size_and_its_time() throws IOException {
        File program = Launcher.program(jar.toFile());
        assertThat(Launcher.program(new File(jar.getParent().toFile(), "../some where/leadlamp.jar"))).isEqualTo(program);
        Path moved = Files.copy(jar, folder.resolve("leadlamp.jar"));
        Files.setLastModifiedTime(moved, Files.getLastModifiedTime(jar));
        assertThat(Launcher.program(moved.toFile()).getName()).isNotEqualTo(program.getName());
        Files.setLastModifiedTime(jar, FileTime.fromMillis(1_000_000));
        assertThat(Launcher.program(jar.toFile())).isNotEqualTo(program);
    }

    @Test
    void a_jar_alone_runs_its_program_and_leaves_nothing_behind() throws Exception {
        Ended ended = alone("why", "a b", "--all");
        assertThat(ended.said()).contains("the program in the jar was told [why, a b, --all]", "together null", "beside it true");
        assertThat(ended.status()).isZero();
        assertThat(in(temporary)).isEmpty();
        assertThat(in(jar.getParent())).containsExactly(jar);
    }

    @Test
    void a_jar_alone_ends_as_its_program_ends() throws Exception {
        assertThat(alone("fail").status()).isEqualTo(3);
        Ended broken = alone("break");
        assertThat(broken.status()).isEqualTo(1);
        assertThat(broken.said()).contains("IllegalStateException: broken").doesNotContain("InvocationTargetException");
        assertThat(in(temporary)).isEmpty();
    }

    @Test
    void a_jar_runs_under_any_name() throws Exception {
        Path other = Files.copy(jar, jar.resolveSibling("lamp"));
        assertThat(started(jar.getParent(), Path.of("lamp"), List.of(), "why").said()).contains("the program in the jar was told [why]");
        assertThat(started(folder, other, List.of(), "fail").status()).isEqualTo(3);
    }

    @Test
    void where_the_program_cannot_be_laid_down_the_jar_says_so() throws Exception {
        Path nowhere = folder.resolve("nowhere");
        Ended ended = started(folder, jar, List.of("-Djava.io.tmpdir=" + nowhere), "why");
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.said()).contains("folder for temporary files", nowhere.toString()).doesNotContain("Exception");
    }

    @Test
    void a_program_that_the_build_laid_beside_the_jar_is_taken() throws Exception {
        program(Launcher.program(jar.toFile()).toPath(), "beside the jar");
        Ended ended = alone("why");
        assertThat(ended.said()).contains("the program beside the jar was told [why]", "beside it true");
        assertThat(in(temporary)).isEmpty();
    }

    @Test
    void a_program_of_another_build_is_not_taken() throws Exception {
        builtBesideIt();
        Files.setLastModifiedTime(jar, FileTime.fromMillis(1_000_000));
        assertThat(started(folder, jar, List.of(), "audit", "build.yaml").said()).contains("the program in the jar was told [audit, build.yaml]");
    }

    @Test
    void an_audit_at_the_terminal_starts_again_with_the_archive_for_it() throws Exception {
        File program = builtBesideIt();
        Ended ended = started(folder, jar, List.of(), "audit", "a b.yaml", "--all");
        assertThat(ended.said()).startsWith("the program beside the jar was told [audit, a b.yaml, --all]")
                .contains("together " + Launcher.together(program), ARCHIVE + Launcher.archive(program).getPath() + " ", "-XX:TieredStopAtLevel=1",
                        "beside it true");
        assertThat(ended.status()).isZero();
        assertThat(started(jar.getParent(), Path.of("leadlamp.jar"), List.of(), "next", "b.yaml").said())
                .contains("beside the jar was told [next, b.yaml]", ARCHIVE + Launcher.archive(program).getPath() + " ");
        assertThat(started(folder, jar, List.of(), "fail").status()).isEqualTo(3);
    }

    @Test
    void a_page_wants_the_whole_archive_and_a_folder_of_records_the_better_compiler() throws Exception {
        File program = builtBesideIt();
        assertThat(started(folder, jar, List.of(), "audit", "b.yaml", "--as=html").said())
                .contains("was told [audit, b.yaml, --as=html]", ARCHIVE + Launcher.whole(program).getPath(), "-XX:TieredStopAtLevel=1");
        assertThat(started(folder, jar, List.of(), "why", "b.yaml").said()).contains(ARCHIVE + Launcher.whole(program).getPath());
        assertThat(started(folder, jar, List.of(), "audit", temporary.toString()).said())
                .contains(ARCHIVE + Launcher.archive(program).getPath()).doesNotContain("TieredStopAtLevel");
        assertThat(started(folder, jar, List.of(), "audit", "a", "b", "c").said())
                .contains(ARCHIVE + Launcher.archive(program).getPath()).doesNotContain("TieredStopAtLevel");
    }

    @Test
    void flags_of_the_user_s_own_are_kept() throws Exception {
        builtBesideIt();
        Ended ended = started(folder, jar, List.of("-Xmx64m"), "audit", "b.yaml");
        assertThat(ended.said()).contains("the program beside the jar was told [audit, b.yaml]", "-Xmx64m").doesNotContain(ARCHIVE);
    }
}
