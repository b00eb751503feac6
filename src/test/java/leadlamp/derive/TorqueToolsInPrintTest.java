package leadlamp.derive;

import static leadlamp.derive.Bench.WORDS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Print;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a wrench may be out by, as the vocabulary has it, against print. */
public class TorqueToolsInPrintTest {
    static Stream<Print.Entry> deviations() {
        return Print.of("fasteners").stream().filter(e -> e.id().startsWith("iso6789-"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("deviations")
    void a_click_wrench_has_the_printed_deviation_at_its_setting(Print.Entry entry) {
        double setting = entry.in("setting");
        Amount doubt = WORDS.gauge("click wrench").flatMap(g -> Amount.read(g.doubt(), Dimension.TORQUE)).orElseThrow();
        assertThat(doubt.expanded(setting) / setting).as(entry.toString()).isCloseTo(entry.expects("deviation").si(), within(1e-12));
    }
}
