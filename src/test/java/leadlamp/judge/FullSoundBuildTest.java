package leadlamp.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import leadlamp.facts.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The full sound build: all that was read and worked out on it is proven within, and is what the sums at its end say. */
class FullSoundBuildTest {
    private static final Shop.Judged TARN = Shop.file(Path.of("sample-builds/full-sound-tarn-12.yaml"), limits());

    private static TradeLimits limits() {
        try {
            return TradeLimits.ofFolder(Shop.RULES, Shop.WORDS);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Test
    void every_verdict_on_what_the_builder_read_is_within() {
        List<String> open = TARN.verdicts().stream().filter(v -> v.value().told().isEmpty())
                // Of a new ring it says no more than how wide the sheet's own band is; it is asked of rings that ran.
                .filter(v -> !v.of().equals("piston ring excess gap"))
                .map(v -> v.of() + " at " + v.at() + " is " + Shop.Judged.inWords(v))
                .filter(words -> !words.matches(".* is within(, within)?")).toList();
        assertThat(open).isEmpty();
        assertThat(TARN.verdicts()).hasSizeGreaterThan(500);
    }

    @Test
    void what_the_owner_told_of_the_last_build_proves_nothing() {
        assertThat(TARN.verdicts().stream().filter(v -> !v.value().told().isEmpty()).map(v -> v.of() + ": " + Shop.Judged.inWords(v)))
                .containsExactly("cylinder bore as found: undecided");
    }

    /** The sums as they stand at the end of the record, worked there by another program. */
    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource(delimiter = '|', textBlock = """
            head height                    | engine          | 129.90 | 129.90 | 0.04  | least 129.5 mm, sheet
            piston to head gap             | 1               | 1.20   | 1.20   | 0.021 | 0.9 to 1.4 mm, sheet
            piston to head gap             | 2               | 1.21   | 1.21   | 0.021 | 0.9 to 1.4 mm, sheet
            piston to head gap             | 3               | 1.19   | 1.19   | 0.021 | 0.9 to 1.4 mm, sheet
            piston clearance               | 1               | 0.041  | 0.041  | 0.007 | 0.025 to 0.06 mm, sheet
            piston clearance               | 2               | 0.039  | 0.039  | 0.007 | 0.025 to 0.06 mm, sheet
            piston clearance               | 3               | 0.040  | 0.040  | 0.007 | 0.025 to 0.06 mm, sheet
            main bearing clearance         | main 1          | 0.037  | 0.039  | 0.007 | 0.02 to 0.055 mm, sheet
            main bearing clearance         | main 2          | 0.037  | 0.039  | 0.007 | 0.02 to 0.055 mm, sheet
            main bearing clearance         | main 3          | 0.039  | 0.040  | 0.007 | 0.02 to 0.055 mm, sheet
            main bearing clearance         | main 4          | 0.036  | 0.038  | 0.007 | 0.02 to 0.055 mm, sheet
            big-end bearing clearance      | big end 1       | 0.038  | 0.040  | 0.007 | 0.02 to 0.06 mm, sheet
            big-end bearing clearance      | big end 3       | 0.038  | 0.040  | 0.007 | 0.02 to 0.06 mm, sheet
            gudgeon pin clearance in piston | 1              | 0.012  | 0.012  | 0.007 | 0.002 to 0.022 mm, sheet
            gudgeon pin clearance in rod   | 2               | 0.017  | 0.017  | 0.007 | 0.005 to 0.03 mm, sheet
            gudgeon pin end float          | 3               | 0.6    | 0.6    | 0.1   | 0.2 to 0.8 mm, sheet
            piston ring end gap            | 1 first         | 0.42   | 0.42   | 0.02  | 0.36 to 0.5 mm, supplier
            piston ring end gap            | 1 second        | 0.49   | 0.49   | 0.02  | 0.4 to 0.6 mm, supplier
            piston ring end gap            | 1 oil           | 0.45   | 0.45   | 0.02  | 0.2 to 0.7 mm, supplier
            piston mass spread             | engine          | 0.4    | 0.4    | 0.3   | most 2 g, sheet
            sealing ring squeeze           | pick-up seal    | 22.9   | 22.9   | 2     | 15 to 30 %, sheet
            sealing ring squeeze           | coolant pipe rear | 22.5 | 22.5   | 2     | 15 to 30 %, sheet
            """)
    void a_sum_and_its_limit_are_those_at_the_end_of_the_record(String quantity, String place, double low, double high, double doubt, String limit) {
        Verdict verdict = TARN.at(quantity, place);
        double half = quantity.contains("squeeze") || quantity.contains("spread") ? 0.05 : 0.0005;
        assertThat(verdict.value().unit().fromSi(verdict.value().low().orElseThrow().value())).isCloseTo(low, within(half));
        assertThat(verdict.value().unit().fromSi(verdict.value().high().orElseThrow().value())).isCloseTo(high, within(half));
        assertThat(verdict.least().or(verdict::most).orElseThrow().expanded() / verdict.value().unit().factor()).isLessThanOrEqualTo(doubt);
        assertThat(TARN.limit(quantity, place)).isEqualTo(limit);
    }
}
