package leadlamp.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class WindowTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    @Test
    void each_standing_has_a_shape_of_its_own_and_a_word() {
        String svg = window(mark("main 1", 0.04, Window.Standing.WITHIN), mark("main 2", 0.06, Window.Standing.OUTSIDE),
                mark("main 3", 0.054, Window.Standing.UNDECIDED)).svg();

        assertThat(svg).contains("<circle class=\"within\"", "<polygon class=\"bad\"", "<polygon class=\"open\"")
                .contains("main 2: 0.06 mm, outside", "main 3: 0.054 mm, undecided");
    }

    @Test
    void nothing_is_drawn_outside_the_drawing() {
        for (Window window : List.of(window(mark("main 1", 40, Window.Standing.OUTSIDE)),
                window(mark("main 1", -0.5, Window.Standing.OUTSIDE)),
                new Window("x", "x", List.of(mark("engine", 0, Window.Standing.WITHIN)), NONE, NONE, "", ""))) {
            Matcher x = Pattern.compile(" (?:x|x1|x2|cx)=\"([-0-9.]+)\"").matcher(window.svg());
            while (x.find()) {
                assertThat(Double.parseDouble(x.group(1))).isBetween(0.0, 340.0);
            }
        }
    }

    @Test
    void text_of_a_record_stays_text_in_a_drawing() {
        Window window = new Window("<b>", "a & b", List.of(mark("<i>", 1, Window.Standing.WITHIN)), NONE, NONE, "", "");

        assertThat(window.svg()).doesNotContain("<b>", "<i>").contains("&lt;b&gt;: a &amp; b", "&lt;i&gt;");
    }

    private static Window window(Window.Mark... marks) {
        return new Window("main bearing clearance", "in words", List.of(marks), OptionalDouble.of(0.02),
                OptionalDouble.of(0.055), "0.020 mm", "0.055 mm");
    }

    private static Window.Mark mark(String place, double value, Window.Standing standing) {
        return new Window.Mark(place, value, value, 0.005, value + " mm", standing);
    }
}
