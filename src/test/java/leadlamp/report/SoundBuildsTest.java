package leadlamp.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import leadlamp.audit.Auditor;
import leadlamp.record.RecordReader;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Sound builds of unlike engines, recorded as differently as builders do: nothing is found on them, and what cannot be told
 * is no more than the builder of that engine would act on.
 */
class SoundBuildsTest {
    private static final Path SAMPLES = Path.of("sample-builds");
    private static final Vocabulary WORDS = Words.compiled();
    private static final Auditor AUDITOR = Auditor.compiled();

    /** So many readings and looks to settle at most. A full build has none; a new sample starts with a number of its own. */
    private static final Map<String, Integer> MOST_TO_SETTLE = Map.of(
            "sound-bracken-44.yaml", 14,
            "sound-moraine-27.yaml", 1,
            "sound-moraine-27-chains.yaml", 1,
            "sound-osier-18-head.yaml", 1,
            "sound-scree-52-inches.yaml", 12,
            "sound-tarn-12-belt.yaml", 2,
            "sound-withy-8.yaml", 8);

    static List<String> builds() throws IOException {
        try (Stream<Path> files = Files.list(SAMPLES)) {
            return files.map(f -> f.getFileName().toString()).filter(n -> n.contains("sound-") && n.endsWith(".yaml")).sorted().toList();
        }
    }

    private static ReportModel report(String file) {
        return Report.of(AUDITOR.audit(new RecordReader(WORDS).read(SAMPLES.resolve(file)).build().orElseThrow()), WORDS);
    }

    private static List<String> checks(List<ReportModel.Group> groups) {
        return groups.stream().flatMap(g -> g.items().stream()).map(ReportModel.Item::check).distinct().toList();
    }

    @ParameterizedTest
    @MethodSource("builds")
    void on_a_sound_build_nothing_is_found_and_little_is_asked(String file) {
        ReportModel report = report(file);

        assertThat(report.found()).isEmpty();
        assertThat(report.accepted()).isEmpty();
        assertThat(report.leftOut()).isEmpty();
        assertThat(report.groups().stream().map(g -> g.todo() + ", at " + g.at()).toList())
                .hasSizeLessThanOrEqualTo(file.startsWith("full-") ? 0 : MOST_TO_SETTLE.getOrDefault(file, 0));
    }

    @ParameterizedTest
    @MethodSource("builds")
    void what_this_work_did_not_reach_is_counted_and_never_dropped(String file) {
        ReportModel report = report(file);

        assertThat(Stream.concat(report.groups().stream(), report.beyond().stream()).flatMap(g -> g.items().stream()))
                .containsExactlyInAnyOrderElementsOf(report.open());
        assertThat(report.tally().open()).isEqualTo(report.open().size());
    }

    @Test
    void a_belt_change_does_not_ask_first_of_pistons_that_never_came_out() {
        ReportModel report = report("sound-tarn-12-belt.yaml");

        assertThat(checks(report.beyond())).contains("ring-gap-against-duty", "bearing-oil-clearance", "squish-too-wide-to-work");
        assertThat(checks(report.groups())).containsOnly("cam-gear-pin-hollow", "lip-on-old-groove");
        assertThat(TerminalWriter.full(report, 80, false)).contains("on which this record tells", "--all tells them.");
        assertThat(TerminalWriter.full(report, true, 80, false)).contains("ring-gap-against-duty", "Measure piston ring end gap");
        assertThat(HtmlWriter.page(report)).contains("ring-gap-against-duty");
    }

    @Test
    void a_pump_that_goes_on_next_is_of_this_work_though_nothing_is_told_of_it() {
        assertThat(checks(report("sound-withy-8.yaml").groups())).contains("oil-pump-clearances", "priming-way-lost", "honed-bore-not-scrubbed");
    }

    @Test
    void an_engine_that_was_stripped_is_asked_of_as_a_whole() {
        for (String file : List.of("sound-bracken-44.yaml", "sound-moraine-27.yaml", "faulty-bottom-end.yaml")) {
            assertThat(report(file).beyond()).as(file).isEmpty();
        }
    }
}
