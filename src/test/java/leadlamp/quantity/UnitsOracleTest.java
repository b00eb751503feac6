package leadlamp.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.HECTO;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.unicode.CLDR;
import tech.units.indriya.unit.Units;

/** Our factors against a library of units that shares nothing with ours, on thousands of seeded figures. */
class UnitsOracleTest {

    static Stream<Arguments> units() {
        Unit<?> poundForce = CLDR.POUND.multiply(CLDR.G_FORCE);
        return Stream.of(
                Arguments.of("mm", MILLI(Units.METRE), Units.METRE), Arguments.of("µm", MICRO(Units.METRE),
                        Units.METRE),
                Arguments.of("cm", CENTI(Units.METRE), Units.METRE), Arguments.of("in", CLDR.INCH, Units.METRE),
                Arguments.of("thou", CLDR.INCH.divide(1000), Units.METRE), Arguments.of("ft", CLDR.FOOT, Units.METRE),
                Arguments.of("km", KILO(Units.METRE), Units.METRE), Arguments.of("miles", CLDR.MILE, Units.METRE),
                Arguments.of("mm2", MILLI(Units.METRE).pow(2), Units.SQUARE_METRE),
                Arguments.of("in2", CLDR.SQUARE_INCH, Units.SQUARE_METRE),
                Arguments.of("cm3", CENTI(Units.METRE).pow(3), Units.CUBIC_METRE),
                Arguments.of("l", Units.LITRE, Units.CUBIC_METRE),
                Arguments.of("in3", CLDR.CUBIC_INCH, Units.CUBIC_METRE),
                Arguments.of("gal (imperial)", CLDR.GALLON_IMPERIAL, Units.CUBIC_METRE),
                Arguments.of("gal (US)", CLDR.GALLON, Units.CUBIC_METRE),
                Arguments.of("qt (US)", CLDR.QUART, Units.CUBIC_METRE),
                Arguments.of("fl oz (US)", CLDR.FLUID_OUNCE, Units.CUBIC_METRE),
                Arguments.of("g", Units.GRAM, Units.KILOGRAM), Arguments.of("lb", CLDR.POUND, Units.KILOGRAM),
                Arguments.of("oz", CLDR.OUNCE, Units.KILOGRAM), Arguments.of("min", Units.MINUTE, Units.SECOND),
                Arguments.of("h", Units.HOUR, Units.SECOND), Arguments.of("weeks", Units.WEEK, Units.SECOND),
                Arguments.of("deg", CLDR.DEGREE, Units.RADIAN),
                Arguments.of("turns", CLDR.REVOLUTION_ANGLE, Units.RADIAN),
                Arguments.of("rpm", CLDR.REVOLUTION_ANGLE.divide(Units.MINUTE), Units.RADIAN.divide(Units.SECOND)),
                Arguments.of("ft/min", CLDR.FOOT.divide(Units.MINUTE), Units.METRE_PER_SECOND),
                Arguments.of("km/h", KILO(Units.METRE).divide(Units.HOUR), Units.METRE_PER_SECOND),
                Arguments.of("mile/h", CLDR.MILE_PER_HOUR, Units.METRE_PER_SECOND),
                Arguments.of("lbf", poundForce, Units.NEWTON),
                Arguments.of("kgf", Units.KILOGRAM.multiply(CLDR.G_FORCE), Units.NEWTON),
                Arguments.of("lbf.ft", poundForce.multiply(CLDR.FOOT), Units.NEWTON.multiply(Units.METRE)),
                Arguments.of("lbf.in", poundForce.multiply(CLDR.INCH), Units.NEWTON.multiply(Units.METRE)),
                Arguments.of("ozf.in", CLDR.OUNCE.multiply(CLDR.G_FORCE).multiply(CLDR.INCH),
                        Units.NEWTON.multiply(Units.METRE)),
                Arguments.of("psi", CLDR.POUND_PER_SQUARE_INCH, Units.PASCAL),
                Arguments.of("mbar", HECTO(Units.PASCAL), Units.PASCAL),
                Arguments.of("MPa", MEGA(Units.PASCAL), Units.PASCAL),
                Arguments.of("kgf/cm2", Units.KILOGRAM.multiply(CLDR.G_FORCE).divide(CENTI(Units.METRE).pow(2)),
                        Units.PASCAL),
                Arguments.of("lbf/in", poundForce.divide(CLDR.INCH), Units.NEWTON.divide(Units.METRE)),
                Arguments.of("hp", poundForce.multiply(CLDR.FOOT).multiply(550).divide(Units.SECOND), Units.WATT),
                Arguments.of("PS", Units.KILOGRAM.multiply(CLDR.G_FORCE).multiply(75).multiply(Units.METRE)
                        .divide(Units.SECOND), Units.WATT),
                Arguments.of("°C", Units.CELSIUS, Units.KELVIN), Arguments.of("°F", CLDR.FAHRENHEIT, Units.KELVIN),
                Arguments.of("l/min", Units.LITRE.divide(Units.MINUTE), Units.CUBIC_METRE.divide(Units.SECOND)),
                Arguments.of("cfm", CLDR.CUBIC_FOOT.divide(Units.MINUTE), Units.CUBIC_METRE.divide(Units.SECOND)),
                Arguments.of("lb/h", CLDR.POUND.divide(Units.HOUR), Units.KILOGRAM.divide(Units.SECOND)),
                Arguments.of("kg/h", Units.KILOGRAM.divide(Units.HOUR), Units.KILOGRAM.divide(Units.SECOND)),
                Arguments.of("lb/ft3", CLDR.POUND.divide(CLDR.CUBIC_FOOT),
                        Units.KILOGRAM.divide(Units.CUBIC_METRE)),
                Arguments.of("oz.in", CLDR.OUNCE.multiply(CLDR.INCH), Units.KILOGRAM.multiply(Units.METRE)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("units")
    void a_thousand_figures_come_out_alike(String word, Unit<?> unit, Unit<?> si) throws Exception {
        UnitConverter oracle = unit.getConverterToAny(si);
        leadlamp.quantity.Unit ours = leadlamp.quantity.Units.named(word).orElseThrow();
        if (word.equals("oz.in")) {
            ours = leadlamp.quantity.Units.named(word, Dimension.UNBALANCE).orElseThrow();
        }
        Random random = new Random(20260314);
        for (int i = 0; i < 1000; i++) {
            double figure = (random.nextDouble() - 0.3) * Math.pow(10, random.nextInt(7) - 3);
            double theirs = oracle.convert(Double.valueOf(figure)).doubleValue();
            assertThat(ours.toSi(figure)).as("%s %s", figure, word)
                    .isCloseTo(theirs, within(2e-13 * Math.max(Math.abs(theirs), ours.offset())));
        }
    }

    @Test
    void the_oracle_covers_every_inch_and_pound_unit_that_the_bench_writes_most() {
        assertThat(units().map(a -> a.get()[0]).toList()).hasSizeGreaterThan(45);
    }
}
