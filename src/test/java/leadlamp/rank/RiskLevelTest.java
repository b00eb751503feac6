package leadlamp.rank;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import leadlamp.audit.Likelihood;
import leadlamp.audit.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * MIL-STD-882E, 11 May 2012, Table III: every cell, from risk-matrix.yaml, which says how each was read. Marginal and
 * Improbable is Medium from memory (the values of MIL-STD-882D give the same); transcriptions print Low.
 */
class RiskLevelTest {

    record Cell(String id, String severity, String likelihood, String level, String basis) {
        @Override
        public String toString() {
            return severity + " and " + likelihood + " is " + level + " (" + basis + ")";
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cells")
    void each_cell_of_the_matrix_is_that_of_the_standard(Cell cell) {
        assertThat(RiskLevel.of(severity(cell.severity), likelihood(cell.likelihood)).word()).isEqualTo(cell.level);
    }

    @Test
    void all_cells_are_held_against_the_standard() throws IOException {
        assertThat(cells()).hasSize(Severity.values().length * Likelihood.values().length);
    }

    @Test
    void only_the_cell_marginal_and_improbable_rests_on_memory() throws IOException {
        assertThat(cells()).filteredOn(c -> !c.basis.equals("published")).extracting(Cell::id)
                .containsExactly("cell-marginal-improbable");
    }

    static List<Cell> cells() throws IOException {
        List<Cell> cells = new ArrayList<>();
        try (InputStream in = RiskLevelTest.class.getResourceAsStream("risk-matrix.yaml");
                JsonParser yaml = new YAMLFactory().createParser(in)) {
            String id = "";
            List<String> words = new ArrayList<>();
            String key = "";
            for (JsonToken token = yaml.nextToken(); token != null; token = yaml.nextToken()) {
                if (token == JsonToken.FIELD_NAME) {
                    key = yaml.currentName();
                } else if (token.isScalarValue()) {
                    if (key.equals("id")) {
                        id = yaml.getText();
                        words.clear();
                    } else if (key.equals("value")) {
                        words.add(yaml.getText());
                    } else if (key.equals("basis") && id.startsWith("cell-")) {
                        cells.add(new Cell(id, words.get(0), words.get(1), words.get(2), yaml.getText()));
                    }
                }
            }
        }
        return cells;
    }

    private static Severity severity(String word) {
        return List.of(Severity.values()).stream().filter(s -> s.word().equals(word)).findFirst().orElseThrow();
    }

    private static Likelihood likelihood(String word) {
        return List.of(Likelihood.values()).stream().filter(l -> l.word().equals(word)).findFirst().orElseThrow();
    }
}
