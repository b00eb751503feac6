package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What would steer a terminal, turn a line round or be markup stays text in every form, and no path leads out of the folder. */
class StaysTextTest {
    private static final String HARM = "\"<img src=x onerror=harm()> \\e[31mred\\e[0m \\x9b31m \\a \\b \\u202Eback\\u2066x\\u200f"
            + " \\r\\n## heading ]]> &amp; " + "long".repeat(80) + "\"";

    @TempDir
    private static Path folder;

    @BeforeAll
    static void write() throws IOException {
        Files.copy(Path.of("sample-builds/engines/tarn-12.yaml"), folder.resolve("engine.yaml"));
        Files.writeString(folder.resolve("record.yaml"), """
                build: { name: HARM }
                engine: engine.yaml
                gauges:
                  HARM: { kind: click wrench, range: from 5 to 120 N·m }
                measurements:
                  - { main journal diameter: 47.95 mm, at: 1, with: HARM }
                observations:
                  - { trigger disc: play, note: HARM, photo: p }
                  - { timing cover: sealant in layers, note: HARM }
                parts:
                  - { cam gear pin: kept, at: intake, form: hollow, origin: HARM }
                  - { HARM: new }
                photos:
                  p: { file: ../../etc/passwd, of: trigger disc }
                  q: { file: /etc/hostname }
                  s: { file: HARM }
                accepted:
                  - { check: trigger-disc-loose, reason: HARM, who: HARM }
                """.replace("HARM", HARM));
    }

    @ParameterizedTest
    @ValueSource(strings = { "audit", "audit --brief", "audit --as html", "audit --as json", "audit --as sarif", "next", "past", "past --as html",
        "past --as json", "look", "look --as html" })
    void in_every_form(String typed) {
        List<String> words = new ArrayList<>(List.of(typed.split(" ")));
        words.add(1, folder.resolve("record.yaml").toString());

        Typed said = command(words.toArray(String[]::new));

        assertThat(said.out()).hasSizeGreaterThan(200);
        for (String text : List.of(said.out(), said.err())) {
            plain(text);
            assertThat(text).doesNotContain("Exception", "root:");
        }
        if (typed.endsWith("html")) {
            assertThat(said.out()).doesNotContain("<img src=x");
        }
    }

    @Test
    void on_every_sheet() throws IOException {
        command("sheets", folder.resolve("record.yaml").toString(), "--out", folder.resolve("sheets").toString());

        try (Stream<Path> sheets = Files.list(folder.resolve("sheets"))) {
            List<Path> all = sheets.toList();
            assertThat(all).hasSize(5);
            for (Path sheet : all) {
                plain(Files.readString(sheet));
                assertThat(sheet).content().doesNotContain("<img src=x", "root:");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = { "/etc/passwd", "../engine.yaml" })
    void an_engine_sheet_outside_the_folder_is_not_read(String path) throws IOException {
        Path inner = Files.createDirectories(folder.resolve("inner"));
        Path record = Files.writeString(inner.resolve("out.yaml"), "build: { name: out }\nengine: " + path + "\n");

        Typed audit = command("audit", record.toString());

        assertThat(audit.status()).isEqualTo(2);
        assertThat(audit.out() + audit.err()).contains("folder").doesNotContain("root:");
    }

    private static void plain(String text) {
        assertThat(text.chars().filter(c -> c < ' ' && c != '\n' && c != '\t' || c >= 0x7F && c < 0xA0 || c == 0x200F
                || c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069).mapToObj(Integer::toHexString).distinct()).isEmpty();
    }
}
