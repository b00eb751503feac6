package leadlamp.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import leadlamp.cli.Launcher;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArchiveTest {
    @TempDir
    Path folder;

    @Test
    void an_archive_lies_beside_its_jar() throws IOException {
        File jar = Files.writeString(folder.resolve("leadlamp.jar"), "a jar").toFile();
        File archive = Launcher.archive(Launcher.program(jar));
        assertThat(archive.getParentFile()).isEqualTo(folder.toRealPath().toFile());
        assertThat(archive.getName()).startsWith("leadlamp-").endsWith(".jsa");
        assertThat(Launcher.archive(Launcher.program(jar))).isEqualTo(archive);
    }

    @Test
    void a_jar_that_was_built_again_takes_no_old_archive() throws IOException {
        Path jar = Files.writeString(folder.resolve("leadlamp.jar"), "a jar");
        File old = Launcher.program(jar.toFile());
        Files.writeString(jar, "another jar");
        assertThat(Launcher.program(jar.toFile())).isNotEqualTo(old);
    }
}
