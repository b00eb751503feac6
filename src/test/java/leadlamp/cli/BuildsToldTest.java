package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole builds: those with many faults are told as it stands in the tests' resources, and sound ones have none. */
class BuildsToldTest {
    private static final Path SAMPLES = Path.of("sample-builds");
    private static final Path TOLD = Path.of("src/test/resources/leadlamp/cli/told");

    private static List<String> samples(String begins) throws IOException {
        try (Stream<Path> files = Files.list(SAMPLES)) {
            return files.map(f -> f.getFileName().toString()).filter(n -> n.contains(begins) && n.endsWith(".yaml")).sorted().toList();
        }
    }

    static List<String> faulty() throws IOException {
        return samples("faulty-");
    }

    static List<String> sound() throws IOException {
        return samples("sound-");
    }

    /** The file beside this one is what a reviewer reads: findings in their order, a line each, then what cannot be told. */
    @ParameterizedTest
    @MethodSource("faulty")
    void a_build_with_many_faults_is_told_as_it_was_reviewed(String sample) throws IOException {
        String told = Files.readString(TOLD.resolve(sample.replace(".yaml", ".txt")));

        assertThat(command("audit", SAMPLES.resolve(sample).toString(), "--brief").out()).isEqualTo(told);
    }

    @ParameterizedTest
    @MethodSource("sound")
    void in_a_sound_build_nothing_is_found(String sample) {
        assertThat(command("audit", SAMPLES.resolve(sample).toString(), "--brief").out()).contains(": Found 0.");
    }
}
