package leadlamp.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.quantity.Written.Form;
import org.junit.jupiter.api.Test;

/** When two of a kind are one and the same: all that they are made of is, and nothing of it may be passed over. */
class AlikeTest {
    private static final Unit MM = new Unit("mm", Dimension.LENGTH, 1e-3, 0);

    private static void alike(Object one, Object same, Object... others) {
        assertThat(one).isEqualTo(same).hasSameHashCodeAs(same);
        assertThat(one.hashCode()).as("a number of its own").isNotZero();
        for (Object other : others) {
            assertThat(one).isNotEqualTo(other);
            assertThat(one.hashCode()).as(one + " and " + other).isNotEqualTo(other.hashCode());
        }
        assertThat(one).isNotEqualTo("mm").isNotEqualTo(null);
    }

    private static Estimate estimate(double value, Dimension dimension, String source, double part) {
        return new Estimate(value, dimension, new TreeMap<>(Map.of(source, part)));
    }

    @Test
    void a_unit_is_its_word_its_dimension_its_size_and_where_it_begins() {
        alike(MM, new Unit("mm", Dimension.LENGTH, 1e-3, 0), new Unit("cm", Dimension.LENGTH, 1e-3, 0),
                new Unit("mm", Dimension.AREA, 1e-3, 0), new Unit("mm", Dimension.LENGTH, 1e-2, 0), new Unit("mm", Dimension.LENGTH, 1e-3, 1));
    }

    @Test
    void an_estimate_is_its_value_and_its_doubt_by_source() {
        alike(estimate(0.05, Dimension.LENGTH, "micrometer", 2e-6), estimate(0.05, Dimension.LENGTH, "micrometer", 2e-6),
                estimate(0.06, Dimension.LENGTH, "micrometer", 2e-6), estimate(0.05, Dimension.AREA, "micrometer", 2e-6),
                estimate(0.05, Dimension.LENGTH, "bore gauge", 2e-6), estimate(0.05, Dimension.LENGTH, "micrometer", 3e-6));
    }

    @Test
    void a_written_figure_is_its_form_its_ends_its_unit_its_places_and_its_text() {
        alike(new Written(Form.RANGE, 1e-3, 2e-3, MM, 1, "1 to 2 mm"), new Written(Form.RANGE, 1e-3, 2e-3, MM, 1, "1 to 2 mm"),
                new Written(Form.PLAIN, 1e-3, 2e-3, MM, 1, "1 to 2 mm"), new Written(Form.RANGE, 0, 2e-3, MM, 1, "1 to 2 mm"),
                new Written(Form.RANGE, 1e-3, 3e-3, MM, 1, "1 to 2 mm"), new Written(Form.RANGE, 1e-3, 2e-3, Units.usual(Dimension.AREA), 1, "1 to 2 mm"),
                new Written(Form.RANGE, 1e-3, 2e-3, MM, 2, "1 to 2 mm"), new Written(Form.RANGE, 1e-3, 2e-3, MM, 1, "1-2 mm"));
    }

    @Test
    void what_was_read_and_what_was_refused_are_told_apart_by_all_they_say() {
        Written one = new Written(Form.PLAIN, 1e-3, 1e-3, MM, 0, "1 mm");
        alike(new Reading.Read(one), new Reading.Read(one), new Reading.Read(new Written(Form.PLAIN, 2e-3, 2e-3, MM, 0, "2 mm")));
        Reading.Unread refused = new Reading.Unread(2, 3, "what", "expected", Optional.of("mm"));
        alike(refused, new Reading.Unread(2, 3, "what", "expected", Optional.of("mm")), new Reading.Unread(1, 3, "what", "expected", Optional.of("mm")),
                new Reading.Unread(2, 4, "what", "expected", Optional.of("mm")), new Reading.Unread(2, 3, "that", "expected", Optional.of("mm")),
                new Reading.Unread(2, 3, "what", "else", Optional.of("mm")), new Reading.Unread(2, 3, "what", "expected", Optional.empty()));
    }
}
