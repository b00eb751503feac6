package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SheetsCommandTest {
    private static final List<String> SHEETS = List.of("tightening.html", "clearances.html", "order-list.html",
            "first-start.html", "hand-over.html");
    private static final String TARN = "sample-builds/full-sound-tarn-12.yaml";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @MethodSource("leadlamp.cli.AuditCommandTest#samples")
    void every_sample_has_its_five_sheets_and_each_says_what_it_was_made_from(Path sample) throws IOException {
        assertThat(command("sheets", sample.toString(), "--out", folder.toString()).err()).isEmpty();

        for (String sheet : SHEETS) {
            assertThat(Files.readString(folder.resolve(sheet))).as(sheet).contains("Made from "
                    + sample.getFileName() + ", SHA-256 ").doesNotContain("<script", "http:", "https:");
        }
    }

    @Test
    void the_tightening_sheet_draws_the_order_on_the_positions_and_names_the_wrench() throws IOException {
        String sheet = sheet("tightening.html");

        assertThat(sheet).containsSubsequence("<h2>head to block</h2>", "wrench that suits", "wrench A",
                "Order of head to block: 1 is bolt 2, 2 is bolt 6", "25 N·m", "40 N·m", "then 90 deg", "1. bolt 2");
        assertThat(sheet).contains("1: 25 mm, 2: 25 mm, 3: 40 mm, 4: 70 mm");
    }

    @Test
    void the_clearance_sheet_has_the_limit_what_was_read_and_room_for_the_pencil() throws IOException {
        assertThat(sheet("clearances.html")).containsSubsequence("<h2>crankshaft end float</h2>",
                "Limit: least 0.06 mm, most 0.25 mm", "0.14 ± 0.02 mm", "within", "<td class=\"write\"></td>");
    }

    @Test
    void the_first_start_goes_from_the_oil_to_the_first_load_and_says_when_to_stop() throws IOException {
        assertThat(sheet("first-start.html")).containsSubsequence("oil filled", "oil primed", "fuel enabled",
                "first start", "first load", "Stop at once", "Oil pressure under 1.0 bar");
    }

    @Test
    void the_order_list_gives_the_class_that_the_table_asks_for() throws IOException {
        assertThat(sheet("order-list.html")).contains("two notches", "head gasket: there, new",
                "bolts of rod cap to rod");
    }

    @Test
    void the_order_list_draws_gap_and_ratio_with_each_gasket_on_offer() throws IOException {
        // Pistons stand 0.09 to 0.11 mm below the face: 0.90 mm leaves 0.99 to 1.01 mm, 1.30 mm leaves 1.39 to 1.41 mm.
        assertThat(sheet("order-list.html")).contains("Gap and ratio with each head gasket on offer", "one notch: 0.90 mm, within",
                "gap 0.99 to 1.01 mm, ratio 10.", "two notches (in the record): 1.10 mm, within", "three notches: 1.30 mm, undecided",
                "gap 1.39 to 1.41 mm");
    }

    @Test
    void without_a_folder_nothing_is_written() {
        Typed sheets = command("sheets", TARN);

        assertThat(sheets.status()).isEqualTo(2);
        assertThat(sheets.err()).contains("name one with --out");
    }

    private String sheet(String name) throws IOException {
        command("sheets", TARN, "--out", folder.toString());
        return Files.readString(folder.resolve(name));
    }
}
