package leadlamp.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The units themselves: their words, their spellings, what is one and what is another. */
class UnitsTest {

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void every_dimension_has_its_si_unit_and_a_usual_one(Dimension dimension) {
        Unit si = Units.si(dimension);
        assertThat(si.dimension()).isEqualTo(dimension);
        assertThat(si.factor()).isEqualTo(1);
        assertThat(si.offset()).isZero();
        assertThat(Units.usual(dimension).dimension()).isEqualTo(dimension);
        assertThat(Dimension.named(dimension.word())).contains(dimension);
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void every_printed_word_is_read_back_as_its_own_unit(Dimension dimension) {
        for (Unit unit : Units.all(dimension)) {
            assertThat(Units.named(unit.word(), dimension)).contains(unit);
            assertThat(unit.factor()).isPositive();
        }
        assertThat(Units.words(dimension)).doesNotContain("").doesNotHaveDuplicates();
    }

    @Test
    void every_unit_of_the_vocabulary_is_known_in_its_dimension() throws IOException {
        Pattern line = Pattern.compile("dimension: ([a-z ]+), unit: '?([^,'}]+)'?");
        Set<String> seen = new HashSet<>();
        Matcher quantities = line.matcher(Files.readString(Path.of("rules", "vocabulary", "quantities.yaml")));
        while (quantities.find()) {
            Optional<Dimension> dimension = Dimension.named(quantities.group(1));
            if (dimension.isPresent()) {
                assertThat(Units.named(quantities.group(2), dimension.get())).as(quantities.group()).isPresent();
                seen.add(quantities.group(2));
            }
        }
        assertThat(seen).contains("mm", "crank deg", "°C", "N·m", "g·mm", "gauss", "mg/l");
    }

    @Test
    void a_word_alone_has_its_usual_meaning() {
        assertThat(Units.named("g")).map(Unit::dimension).contains(Dimension.MASS);
        assertThat(Units.named("deg")).map(Unit::dimension).contains(Dimension.ANGLE);
        assertThat(Units.named("lb")).map(Unit::dimension).contains(Dimension.MASS);
        assertThat(Units.named("%")).map(Unit::dimension).contains(Dimension.SHARE);
        assertThat(Units.named("MPa")).map(Unit::dimension).contains(Dimension.PRESSURE);
        assertThat(Units.named("°C")).map(Unit::dimension).contains(Dimension.TEMPERATURE);
        assertThat(Units.named("kgm")).map(Unit::dimension).contains(Dimension.TORQUE);
        assertThat(Units.named("furlong")).isEmpty();
        assertThat(Units.named("furlong", Dimension.LENGTH)).isEmpty();
        assertThat(Units.named("bar", Dimension.LENGTH)).isEmpty();
    }

    @Test
    void letters_that_change_the_size_are_not_passed_over() {
        assertThat(Units.named("mohm", Dimension.RESISTANCE).orElseThrow().factor()).isEqualTo(1e-3);
        assertThat(Units.named("Mohm", Dimension.RESISTANCE).orElseThrow().factor()).isEqualTo(1e6);
        assertThat(Units.named("MOHM", Dimension.RESISTANCE)).isEmpty();
        assertThat(Units.named("mΩ", Dimension.RESISTANCE).orElseThrow().word()).isEqualTo("mohm");
        assertThat(Units.named("M\u2126", Dimension.RESISTANCE).orElseThrow().word()).isEqualTo("Mohm");
        assertThat(Units.named("KOHM", Dimension.RESISTANCE).orElseThrow().word()).isEqualTo("kohm");
    }

    @ParameterizedTest
    @CsvSource({ "mm², mm2", "mm^2, mm2", "sq mm, mm2", "cm³, cm3", "cu in, in3", "cc, cm3", "ml, cm3", "L, l",
        "litres, l", "min-1, rpm", "min⁻¹, rpm", "rev/min, rpm", "r/min, rpm", "kgf/cm², kgf/cm2", "kg/cm2, kgf/cm2",
        "lbf/in², psi", "PSI, psi", "KPA, kPa", "Bar, bar", "in Hg, inHg", "inches of mercury, inHg", "C, °C",
        "deg C, °C", "º C, °C", "bhp, hp", "PS, PS", "gm, g", "thousandths, thou", "mils, thou", "hrs, h",
        "seasons, years", "N/mm², MPa", "gal (imp), gal (imperial)", "US gal, gal (US)", "l / min, l/min",
        "cc/min, cm3/min", "mg/L, mg/l", "g.mm, g·mm", "cst, cSt", "Tesla, T", "amps, A", "kOhm, kohm", "mile, miles" })
    void hands_write_units_in_many_ways(String written, String word) {
        assertThat(Units.named(written)).map(Unit::word).contains(word);
    }

    @Test
    void a_fluid_ounce_gallon_or_pint_must_say_whose() {
        assertThat(Units.named("gal")).isEmpty();
        assertThat(Units.named("pint")).isEmpty();
        assertThat(Units.named("fl oz")).isEmpty();
        assertThat(Units.named("imp pint").orElseThrow().toSi(8)).isCloseTo(4.54609e-3, within(1e-12));
    }

    @Test
    void hardness_numbers_of_two_scales_are_never_held_against_each_other() {
        Unit brinell = Units.named("HB").orElseThrow();
        assertThat(Units.comparable(brinell, Units.named("HRC").orElseThrow())).isFalse();
        assertThat(Units.comparable(brinell, brinell)).isTrue();
        assertThat(Units.comparable(Units.named("mm").orElseThrow(), Units.named("in").orElseThrow())).isTrue();
        assertThat(Units.comparable(Units.named("mm").orElseThrow(), Units.named("bar").orElseThrow())).isFalse();
    }

    @Test
    void the_nearest_unit_is_the_one_that_a_slip_makes() {
        assertThat(Units.nearest("milimetre", Dimension.LENGTH)).contains("mm");
        assertThat(Units.nearest("inhces", Dimension.LENGTH)).contains("in");
        assertThat(Units.nearest("kPaa", Dimension.PRESSURE)).contains("kPa");
        assertThat(Units.nearest("lbf.tf", Dimension.TORQUE)).contains("lbf.ft");
        assertThat(Units.nearest("", Dimension.LENGTH)).isEmpty();
        assertThat(Units.nearest("bananas", Dimension.LENGTH)).isEmpty();
    }

    @Test
    void a_year_is_twelve_months_and_a_week_seven_days() {
        double year = Units.named("year").orElseThrow().toSi(1);
        assertThat(Units.named("months").orElseThrow().toSi(12)).isCloseTo(year, within(1e-6));
        assertThat(year).isEqualTo(365.25 * 86400);
        assertThat(Units.named("week").orElseThrow().toSi(1)).isEqualTo(7 * 86400.0);
    }

    @Test
    void the_nearest_unit_is_near_whatever_its_length_and_a_first_letter_weighs() {
        assertThat(Units.nearest("mn", Dimension.LENGTH)).as("one letter of two, and the first is right").contains("m");
        assertThat(Units.nearest("xq", Dimension.LENGTH)).as("both letters of two").isEmpty();
        assertThat(Units.nearest("thuo", Dimension.LENGTH)).as("two letters swapped").contains("thou");
        assertThat(Units.nearest("mlilimetre", Dimension.LENGTH)).as("swapped and in a long word").contains("mm");
        assertThat(Units.nearest("xillxmetrx", Dimension.LENGTH)).as("three letters of ten").contains("mm");
        assertThat(Units.nearest("xxllxmetrx", Dimension.LENGTH)).as("four letters of ten").isEmpty();
    }

    @Test
    void a_degree_sign_alone_is_degrees_and_before_a_letter_it_may_be_left_out() {
        assertThat(Units.named("°", Dimension.ANGLE)).map(Unit::word).contains("deg");
        assertThat(Units.named("F", Dimension.TEMPERATURE)).map(Unit::word).contains("°F");
    }

    @Test
    void a_word_that_is_asked_for_again_means_the_same() {
        assertThat(Units.named("hogshead")).isEmpty();
        assertThat(Units.named("hogshead")).isEmpty();
        assertThat(Units.named("kgf/cm²")).isEqualTo(Units.named("kgf/cm²")).isPresent();
    }
}
