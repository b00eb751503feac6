package leadlamp.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordsTest {
    @TempDir
    private Path folder;

    @Test
    void a_folder_is_all_its_records_by_name_and_no_engine_sheet() throws IOException, Complaint {
        write("b.yaml", "build: {}");
        write("a.yml", "# mine\nbuild: {}");
        write("engine.yaml", "# a comment first\nsheet: Tarn 12\n");
        write("notes.txt", "build: {}");
        Files.createDirectory(folder.resolve("c.yaml"));

        assertThat(Records.named(List.of(folder.toString()))).extracting(p -> p.getFileName().toString())
                .containsExactly("a.yml", "b.yaml");
    }

    @Test
    void a_file_is_taken_as_it_is_named_even_if_it_is_not_there() throws Complaint {
        assertThat(Records.named(List.of("nowhere.yaml"))).containsExactly(Path.of("nowhere.yaml"));
    }

    @Test
    void a_folder_without_records_says_so() {
        assertThatThrownBy(() -> Records.named(List.of(folder.toString()))).hasMessageContaining("holds no record");
    }

    @Test
    void a_name_that_no_file_can_have_says_so() {
        assertThatThrownBy(() -> Records.named(List.of("a\0b"))).hasMessageContaining("cannot be the name of a file");
    }

    @Test
    void a_report_is_never_written_over_a_record() throws IOException, Complaint {
        Path record = write("a.yaml", "build: {}");

        assertThatThrownBy(() -> Target.open(folder.resolve("a.yaml"), List.of(record)))
                .hasMessageContaining("is a record");
        assertThat(record).hasContent("build: {}");
    }

    @Test
    void two_records_of_one_name_get_two_files() throws Complaint {
        Target target = Target.of(folder.resolve("out").toString(), 2);

        assertThat(target.file(Path.of("one", "a.yaml"), Form.HTML)).isEqualTo(folder.resolve("out/a.html"));
        assertThat(target.file(Path.of("two", "a.yaml"), Form.HTML)).isEqualTo(folder.resolve("out/a-2.html"));
    }

    @Test
    void several_reports_do_not_go_into_one_file() throws IOException {
        Path file = write("out.html", "kept");

        assertThatThrownBy(() -> Target.of(file.toString(), 2)).hasMessageContaining("several reports want a folder");
        assertThat(file).hasContent("kept");
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
