package leadlamp.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompileKnowledgeTest {
    private static final Path RULES = Path.of("rules");

    @TempDir
    Path folder;

    private static Map<String, byte[]> made(Path classes) throws IOException {
        Map<String, byte[]> made = new TreeMap<>();
        for (Path file : CompileKnowledge.files(classes, ".bin")) {
            made.put(file.getFileName().toString(), Files.readAllBytes(file));
        }
        return made;
    }

    @Test
    void the_same_knowledge_gives_the_same_bytes() throws IOException {
        assertThat(CompileKnowledge.compile(RULES, folder.resolve("one"))).isEmpty();
        CompileKnowledge.compile(RULES, folder.resolve("other"));
        assertThat(made(folder.resolve("one"))).containsOnlyKeys("vocabulary.bin", "checks.bin", "limits.bin", "rules.bin",
                "cases.bin", "past-rules.bin", "past.bin");
        made(folder.resolve("one")).forEach((name, bytes) -> assertThat(folder.resolve("other/leadlamp/" + name))
                .as(name).hasBinaryContent(bytes));
    }

    @Test
    void nothing_is_made_again_until_something_changes() throws IOException {
        Path rules = folder.resolve("rules");
        copy(RULES.resolve("vocabulary"), rules.resolve("vocabulary"));
        Path classes = Files.createDirectories(folder.resolve("target/classes"));
        String[] arguments = {rules.toString(), classes.toString()};
        CompileKnowledge.main(arguments);
        Path made = classes.resolve("leadlamp/rules.bin");
        FileTime long_ago = FileTime.fromMillis(1_000_000);
        Files.setLastModifiedTime(made, long_ago);
        CompileKnowledge.main(arguments);
        assertThat(Files.getLastModifiedTime(made)).isEqualTo(long_ago);
        Files.writeString(Files.createDirectories(rules.resolve("conditions")).resolve("hard-duty.drl"), """
                package leadlamp.rules.conditions;
                import leadlamp.facts.*;
                global leadlamp.audit.Conditions conditions;
                rule "hard duty"
                when
                    Stated( of == "use", what == "duty", says == "track" )
                then
                    conditions.holds( drools.getMatch() );
                end
                """);
        CompileKnowledge.main(arguments);
        assertThat(Files.getLastModifiedTime(made)).isGreaterThan(long_ago);
    }

    @Test
    void a_fault_stops_the_build_and_says_where_it_is() throws IOException {
        Path rules = folder.resolve("rules");
        copy(RULES.resolve("vocabulary"), rules.resolve("vocabulary"));
        Files.writeString(Files.createDirectories(rules.resolve("sealing")).resolve("weeps.drl"), "package leadlamp.rules.sealing;\n");
        String[] arguments = {rules.toString(), Files.createDirectories(folder.resolve("classes")).toString()};
        assertThatThrownBy(() -> CompileKnowledge.main(arguments)).hasMessageContaining("rules/sealing/weeps.drl:1:1: ");
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        for (Path file : CompileKnowledge.files(from, "")) {
            Files.copy(file, to.resolve(file.getFileName()));
        }
    }
}
