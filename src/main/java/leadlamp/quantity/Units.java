package leadlamp.quantity;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The units that a bench writes, with their other spellings. One word may be a unit of several dimensions (`g` is a mass
 * and an acceleration, `deg` an angle, `lb` a mass and a spring load): where the dimension is known, ask with it.
 *
 * <p>Factors of inch, pound, gallon and older metric units follow from their exact definitions: the inch is 25.4 mm, the
 * pound 0.45359237 kg, standard gravity 9.80665 m/s².
 *
 * @see "NIST Special Publication 811 (2008), appendix B"
 */
public final class Units {
    private static final double INCH = 0.0254;
    private static final double FOOT = 0.3048;
    private static final double POUND = 0.45359237;
    private static final double OUNCE = POUND / 16;
    private static final double GRAVITY = 9.80665;
    private static final double POUND_FORCE = POUND * GRAVITY;
    private static final double OUNCE_FORCE = OUNCE * GRAVITY;
    private static final double PSI = POUND_FORCE / (INCH * INCH);
    private static final double CUBIC_INCH = INCH * INCH * INCH;
    private static final double US_GALLON = 231 * CUBIC_INCH;
    private static final double GALLON = 4.54609e-3;
    private static final double DEGREE = Math.PI / 180;
    private static final double TURN = 2 * Math.PI;
    private static final double DAY = 86400;
    private static final double YEAR = 365.25 * DAY;
    private static final double FAHRENHEIT_ZERO = 459.67 / 1.8;
    /** Pressure of a millimetre of conventional mercury, 13 595.1 kg/m³. */
    private static final double MERCURY = 13.5951 * GRAVITY;
    private static final double MU_0 = 4e-7 * Math.PI;

    // Filled when the program starts, so by plain loops: a lambda costs more than the whole table.
    /** Spelling to its units, each of another dimension; the usual one first. */
    private static final Map<String, List<Unit>> BY_SPELLING = new HashMap<>(1024);
    /** The same, letters small, for MM and PSI; a spelling that two units share is left out. */
    private static final Map<String, List<Unit>> BY_SMALL = new HashMap<>(1024);
    private static final Set<String> SHARED = new HashSet<>();
    private static final Map<Dimension, List<Unit>> BY_DIMENSION = new EnumMap<>(Dimension.class);
    private static final Map<Dimension, Unit> SI = new EnumMap<>(Dimension.class);

    private Units() {
    }

    static {
        of(Dimension.LENGTH)
                .unit("mm", 1e-3, "millimetre", "millimetres", "millimeter", "millimeters")
                .unit("µm", 1e-6, "um", "micron", "microns", "micrometre", "micrometres")
                .unit("cm", 1e-2, "centimetre", "centimetres")
                .unit("m", 1, "metre", "metres", "meter", "meters")
                .unit("in", INCH, "inch", "inches", "ins", "\"", "″", "''")
                .unit("thou", 2.54e-5, "thous", "thousandth", "thousandths", "mil", "mils")
                .unit("µin", 2.54e-8, "uin", "microinch", "microinches")
                .unit("ft", FOOT, "foot", "feet")
                .unit("km", 1e3, "kilometre", "kilometres", "kms")
                .unit("miles", 1609.344, "mile", "mi");
        of(Dimension.AREA)
                .unit("mm2", 1e-6, "sqmm", "squaremillimetres")
                .unit("cm2", 1e-4, "sqcm", "squarecentimetres")
                .unit("m2", 1, "sqm")
                .unit("in2", INCH * INCH, "sqin", "squareinch", "squareinches");
        of(Dimension.VOLUME)
                .unit("cm3", 1e-6, "cc", "ccs", "ccm", "ml", "mL", "millilitre", "millilitres", "cucm")
                .unit("l", 1e-3, "L", "litre", "litres", "liter", "liters", "dm3")
                .unit("mm3", 1e-9, "cumm")
                .unit("m3", 1, "cubicmetre", "cubicmetres")
                .unit("in3", CUBIC_INCH, "cuin", "cuins", "ci", "cid", "cubicinch", "cubicinches")
                .unit("gal (imperial)", GALLON, "impgal", "imperialgallon", "imperialgallons", "galimp", "ukgal", "galuk")
                .unit("gal (US)", US_GALLON, "usgal", "usgallon", "usgallons", "galusliquid")
                .unit("pt (imperial)", GALLON / 8, "imppt", "imperialpint", "imperialpints", "imppint", "imppints")
                .unit("qt (US)", US_GALLON / 4, "usqt", "usquart", "usquarts", "qtusliquid")
                .unit("pt (US)", US_GALLON / 8, "uspt", "uspint", "uspints", "ptusliquid")
                .unit("fl oz (US)", US_GALLON / 128, "usfloz")
                .unit("fl oz (imperial)", GALLON / 160, "impfloz", "flozimp");
        of(Dimension.MASS)
                .unit("g", 1e-3, "gram", "grams", "gramme", "grammes", "gm", "gms")
                .unit("kg", 1, "kgs", "kilo", "kilos", "kilogram", "kilograms")
                .unit("mg", 1e-6, "milligram", "milligrams")
                .unit("lb", POUND, "lbs", "pound", "pounds", "lbm")
                .unit("oz", OUNCE, "ounce", "ounces");
        of(Dimension.TIME)
                .unit("s", 1, "sec", "secs", "second", "seconds")
                .unit("ms", 1e-3, "millisecond", "milliseconds")
                .unit("min", 60, "mins", "minute", "minutes")
                .unit("h", 3600, "hr", "hrs", "hour", "hours")
                .unit("days", DAY, "d", "day")
                .unit("weeks", 7 * DAY, "week")
                .unit("months", YEAR / 12, "month")
                .unit("years", YEAR, "year", "yr", "yrs", "season", "seasons");
        of(Dimension.ANGLE)
                .unit("deg", DEGREE, "°", "degree", "degrees", "degs")
                .unit("rad", 1, "radian", "radians")
                .unit("arcmin", DEGREE / 60)
                .unit("turns", TURN, "turn");
        of(Dimension.CRANK_ANGLE)
                .unit("crank deg", DEGREE, "degcrank", "crankdegree", "crankdegrees", "crank°", "°crank")
                .unit("cam deg", 2 * DEGREE, "degcam", "camdegree", "camdegrees", "cam°", "°cam")
                .unit("crank rad", 1);
        of(Dimension.SPEED)
                .unit("rpm", TURN / 60, "r/min", "rev/min", "revs/min", "1/min", "min1", "revs")
                .unit("rad/s", 1);
        of(Dimension.LINEAR_SPEED)
                .unit("m/s", 1, "mps", "m/sec")
                .unit("ft/min", FOOT / 60, "fpm")
                .unit("ft/s", FOOT, "fps")
                .unit("km/h", 1 / 3.6, "kph", "kmh")
                .unit("mile/h", 0.44704, "mph", "miles/h");
        of(Dimension.ACCELERATION)
                .unit("g", GRAVITY, "gn")
                .unit("m/s2", 1, "m/s/s");
        of(Dimension.FREQUENCY)
                .unit("Hz", 1, "1/s", "hertz")
                .unit("kHz", 1e3);
        of(Dimension.FORCE)
                .unit("N", 1, "newton", "newtons")
                .unit("kN", 1e3)
                .unit("daN", 10)
                .unit("lbf", POUND_FORCE, "lbsf", "lb", "lbs", "poundforce", "pound", "pounds")
                .unit("ozf", OUNCE_FORCE, "oz")
                .unit("kgf", GRAVITY, "kp", "kg", "kilopond");
        of(Dimension.TORQUE)
                .unit("N·m", 1, "Nm", "newtonmetre", "newtonmetres", "newtonmeters")
                .unit("N·cm", 1e-2, "Ncm")
                .unit("N·mm", 1e-3, "Nmm")
                .unit("kN·m", 1e3, "kNm")
                .unit("daN·m", 10, "daNm")
                .unit("lbf.ft", POUND_FORCE * FOOT, "lbft", "ftlb", "ftlbs", "lbsft", "ftlbf", "lbfft", "poundfoot",
                        "poundfeet", "footpound", "footpounds", "poundsfeet")
                .unit("lbf.in", POUND_FORCE * INCH, "lbin", "inlb", "inlbs", "lbsin", "inlbf", "poundinch", "inchpound",
                        "inchpounds")
                .unit("ozf.in", OUNCE_FORCE * INCH, "ozin", "inoz", "inozf")
                .unit("kgf.m", GRAVITY, "kgm", "mkg", "mkgf", "kpm", "mkp")
                .unit("kgf.cm", GRAVITY / 100, "kgcm", "cmkg", "kpcm");
        of(Dimension.POWER)
                .unit("kW", 1e3, "kilowatt", "kilowatts")
                .unit("hp", 550 * FOOT * POUND_FORCE, "bhp", "hp550ftlbf/s", "horsepower")
                .unit("PS", 75 * GRAVITY, "metrichp", "cv", "ch", "pk")
                .unit("W", 1, "watt", "watts");
        of(Dimension.PRESSURE)
                .unit("bar", 1e5, "bars")
                .unit("kPa", 1e3)
                .unit("psi", PSI, "lbf/in2", "lb/in2", "lbs/in2", "lbf/sqin", "lb/sqin")
                .unit("mbar", 100, "hPa", "millibar", "millibars")
                .unit("MPa", 1e6, "N/mm2")
                .unit("Pa", 1, "N/m2", "pascal")
                .unit("kgf/cm2", GRAVITY * 1e4, "kg/cm2", "kp/cm2", "at", "atkgf/cm2")
                .unit("atm", 101325, "atmosphere", "atmospheres")
                .unit("inHg", 25.4 * MERCURY, "inchHg", "inchesHg", "inofmercury", "inchesofmercury", "\"Hg")
                .unit("mmHg", MERCURY)
                .unit("cmHg", 10 * MERCURY)
                .unit("inH2O", 25.4 * GRAVITY, "inwater", "inchesofwater", "inofwater", "inwg")
                .unit("mmH2O", GRAVITY, "mmwater", "mmofwater", "mmwg", "mmwc");
        of(Dimension.STRESS)
                .unit("MPa", 1e6, "N/mm2")
                .unit("GPa", 1e9, "kN/mm2")
                .unit("kPa", 1e3)
                .unit("Pa", 1, "N/m2")
                .unit("bar", 1e5)
                .unit("psi", PSI, "lbf/in2", "lb/in2")
                .unit("ksi", 1000 * PSI)
                .unit("kgf/mm2", GRAVITY * 1e6, "kg/mm2", "kp/mm2")
                .unit("tonf/in2", 2240 * PSI, "ton/in2", "tons/in2", "tsi", "tons/sqin", "tonf/sqin");
        of(Dimension.STIFFNESS)
                .unit("N/mm", 1e3)
                .unit("N/m", 1)
                .unit("lbf/in", POUND_FORCE / INCH, "lb/in", "lbs/in", "lb/inch", "lbs/inch")
                .unit("kgf/mm", GRAVITY * 1e3, "kg/mm", "kp/mm");
        offset(Dimension.TEMPERATURE, "°C", 1, 273.15, "C", "degC", "celsius", "degreesC", "degreeC");
        offset(Dimension.TEMPERATURE, "°F", 1 / 1.8, FAHRENHEIT_ZERO, "F", "degF", "fahrenheit", "degreesF", "degreeF");
        of(Dimension.TEMPERATURE)
                .unit("K", 1, "kelvin")
                .unit("°R", 1 / 1.8, "rankine");
        of(Dimension.TEMPERATURE_DIFFERENCE)
                .unit("°C", 1, "C", "degC", "celsius", "degreesC", "degreeC")
                .unit("°F", 1 / 1.8, "F", "degF", "fahrenheit", "degreesF", "degreeF")
                .unit("K", 1, "kelvin");
        of(Dimension.VOLUME_FLOW)
                .unit("l/min", 1e-3 / 60, "L/min", "lpm", "litres/min", "litre/min")
                .unit("cm3/min", 1e-6 / 60, "cc/min", "ml/min", "mL/min", "ccm/min")
                .unit("l/h", 1e-3 / 3600, "L/h", "lph", "litres/h", "l/hr", "litres/hour")
                .unit("l/s", 1e-3, "L/s")
                .unit("m3/h", 1.0 / 3600, "m3/hr")
                .unit("m3/s", 1)
                .unit("cfm", FOOT * FOOT * FOOT / 60, "ft3/min", "cuft/min")
                .unit("gal (US)/min", US_GALLON / 60, "usgpm", "usgal/min")
                .unit("gal (imperial)/min", GALLON / 60, "impgal/min", "impgpm")
                .unit("gal (US)/h", US_GALLON / 3600, "usgph", "usgal/h")
                .unit("gal (imperial)/h", GALLON / 3600, "impgal/h", "impgph");
        of(Dimension.MASS_FLOW)
                .unit("kg/h", 1.0 / 3600, "kg/hr", "kg/hour")
                .unit("g/s", 1e-3, "g/sec")
                .unit("g/min", 1e-3 / 60)
                .unit("kg/min", 1.0 / 60)
                .unit("kg/s", 1)
                .unit("lb/h", POUND / 3600, "lb/hr", "lbs/h", "lbs/hr", "pph")
                .unit("lb/min", POUND / 60, "lbs/min");
        of(Dimension.MASS_PER_VOLUME)
                .unit("mg/l", 1e-3, "mg/L", "g/m3", "mg/litre")
                .unit("g/l", 1, "g/L", "kg/m3", "g/litre")
                .unit("g/cm3", 1e3, "g/cc", "kg/l", "kg/L", "g/ml")
                .unit("lb/ft3", POUND / (FOOT * FOOT * FOOT), "lb/cuft")
                .unit("lb/in3", POUND / CUBIC_INCH, "lb/cuin");
        of(Dimension.VOLTAGE)
                .unit("V", 1, "volt", "volts")
                .unit("mV", 1e-3, "millivolt", "millivolts")
                .unit("kV", 1e3, "kilovolt", "kilovolts");
        of(Dimension.CURRENT)
                .unit("A", 1, "amp", "amps", "ampere", "amperes")
                .unit("mA", 1e-3, "milliamp", "milliamps");
        of(Dimension.RESISTANCE)
                .unit("ohm", 1, "Ω", "ohms")
                .unit("kohm", 1e3, "kΩ", "kohms", "kiloohm", "kiloohms", "kilohm", "kilohms")
                .unit("Mohm", 1e6, "MΩ", "megohm", "megohms")
                .unit("mohm", 1e-3, "mΩ", "milliohm", "milliohms");
        of(Dimension.INDUCTANCE)
                .unit("mH", 1e-3, "millihenry")
                .unit("µH", 1e-6, "uH")
                .unit("H", 1, "henry");
        of(Dimension.MAGNETIC_FIELD)
                .unit("gauss", 1e-4, "G", "Gs")
                .unit("mT", 1e-3, "millitesla")
                .unit("T", 1, "tesla")
                .unit("A/cm", 100 * MU_0)
                .unit("Oe", 1e-4, "oersted");
        of(Dimension.UNBALANCE)
                .unit("g·mm", 1e-6, "gmm")
                .unit("g·cm", 1e-5, "gcm")
                .unit("kg·m", 1, "kgm")
                .unit("oz.in", OUNCE * INCH, "ozin", "inoz");
        of(Dimension.HARDNESS)
                .unit("HB", 1, "HBW", "brinell")
                .unit("HV", 1, "vickers")
                .unit("HRC", 1, "Rc", "rockwellC")
                .unit("HRB", 1, "Rb", "rockwellB");
        of(Dimension.VISCOSITY)
                .unit("cSt", 1e-6, "mm2/s", "centistokes", "centistoke")
                .unit("m2/s", 1);
        for (Dimension share : List.of(Dimension.SHARE, Dimension.VOLUME_SHARE, Dimension.MASS_SHARE)) {
            of(share)
                    .unit("%", 0.01, "percent", "pc", "point", "points", "vol%", "mass%", "%vol", "%mass", "%volume",
                            "byvolume%")
                    .unit("", 1, "share")
                    .unit("‰", 0.001);
        }
        of(Dimension.NUMBER).unit("", 1, "number", "lambda", "λ", ":1");
        of(Dimension.COUNT).unit("", 1, "count", "turn", "turns", "tooth", "teeth", "link", "links", "use", "uses", "off",
                "bolts", "pieces", "pcs");
        for (List<Unit> units : BY_DIMENSION.values()) {
            for (Unit unit : units) {
                // Hardness scales all have the factor 1; the first is the dimension's own.
                if (unit.factor() == 1 && unit.offset() == 0) {
                    SI.putIfAbsent(unit.dimension(), unit);
                }
            }
        }
    }

    /** The unit of this word, its usual meaning: `g` is a mass. */
    public static Optional<Unit> named(String word) {
        List<Unit> units = spelt(word);
        return units.isEmpty() ? Optional.empty() : Optional.of(units.get(0));
    }

    /** The unit of this word in this dimension: `g` may be an acceleration, `lb` a spring load. */
    public static Optional<Unit> named(String word, Dimension dimension) {
        Unit unit = among(BY_SPELLING.get(word), dimension);
        if (unit == null) {
            String plain = plain(word);
            unit = among(BY_SPELLING.get(plain), dimension);
            if (unit == null) {
                unit = among(BY_SMALL.get(plain.toLowerCase(Locale.ROOT)), dimension);
            }
        }
        return Optional.ofNullable(unit);
    }

    private static Unit among(List<Unit> units, Dimension dimension) {
        if (units != null) {
            for (Unit unit : units) {
                if (unit.dimension() == dimension) {
                    return unit;
                }
            }
        }
        return null;
    }

    /** The unit of the dimension that SI values are in. */
    public static Unit si(Dimension dimension) {
        return SI.get(dimension);
    }

    /** The unit in which the bench writes most often, the first of {@link #words}. */
    public static Unit usual(Dimension dimension) {
        return BY_DIMENSION.get(dimension).get(0);
    }

    /** Units of the dimension as they are printed, the usual first; empty where the dimension is a plain number. */
    public static List<String> words(Dimension dimension) {
        List<String> words = new ArrayList<>();
        for (Unit unit : BY_DIMENSION.get(dimension)) {
            if (!unit.word().isEmpty()) {
                words.add(unit.word());
            }
        }
        return Collections.unmodifiableList(words);
    }

    /** Units of the dimension, the usual first. */
    static List<Unit> all(Dimension dimension) {
        return Collections.unmodifiableList(BY_DIMENSION.get(dimension));
    }

    /** Whether values of both may be held against each other: a Brinell and a Rockwell number may not. */
    public static boolean comparable(Unit one, Unit other) {
        return one.dimension() == other.dimension()
                && (one.dimension() != Dimension.HARDNESS || one.word().equals(other.word()));
    }

    /** All units of a spelling. */
    static List<Unit> spelt(String word) {
        List<Unit> units = BY_SPELLING.get(word);
        if (units != null) {
            return units;
        }
        String plain = plain(word);
        units = BY_SPELLING.get(plain);
        if (units != null) {
            return units;
        }
        units = BY_SMALL.get(plain.toLowerCase(Locale.ROOT));
        return units == null ? List.of() : units;
    }

    /** The printed word of the unit of this dimension whose spelling is nearest, if one is near enough to be meant. */
    static Optional<String> nearest(String word, Dimension dimension) {
        String wanted = plain(word).toLowerCase(Locale.ROOT);
        int least = 2 * Math.max(1, Math.min(wanted.length() / 3, 3)) + 1;
        Optional<String> best = Optional.empty();
        for (Map.Entry<String, List<Unit>> entry : sorted(BY_SMALL)) {
            for (Unit unit : entry.getValue()) {
                if (unit.dimension() == dimension && !unit.word().isEmpty() && !wanted.isEmpty()) {
                    // A slip is seldom in the first letter.
                    int distance = 2 * distance(wanted, entry.getKey())
                            - (entry.getKey().startsWith(wanted.substring(0, 1)) ? 1 : 0);
                    if (distance < least) {
                        least = distance;
                        best = Optional.of(unit.word());
                    }
                }
            }
        }
        return best;
    }

    private static Collection<Map.Entry<String, List<Unit>>> sorted(Map<String, List<Unit>> units) {
        TreeSet<Map.Entry<String, List<Unit>>> sorted = new TreeSet<>(Map.Entry.comparingByKey());
        sorted.addAll(units.entrySet());
        return sorted;
    }

    /** Letters to change, add, drop or swap with their neighbour. */
    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }

    /** The spelling without what hands write in many ways: spaces, dots, dashes, brackets, raised figures, signs. */
    private static String plain(String word) {
        StringBuilder plain = new StringBuilder(word.length());
        for (int i = 0; i < word.length(); i++) {
            char c = word.charAt(i);
            switch (c) {
                case ' ', '\u00a0', '\u202f', '\u2009', '\t', '.', '·', '⋅', '∙', '•', '*', '×', '-', '‑', '⁻', '(', ')', '^' -> {
                }
                case '¹' -> plain.append('1');
                case '²' -> plain.append('2');
                case '³' -> plain.append('3');
                case '\u00b5', '\u03bc' -> plain.append('u');
                case 'Ω', '\u2126' -> plain.append("ohm");
                case 'º', '˚' -> plain.append('°');
                default -> plain.append(c);
            }
        }
        if (plain.length() > 1 && plain.charAt(0) == '°') {
            plain.deleteCharAt(0);
        }
        return plain.toString();
    }

    private static Row of(Dimension dimension) {
        return new Row(dimension);
    }

    private static void offset(Dimension dimension, String word, double factor, double offset, String... also) {
        enter(new Unit(word, dimension, factor, offset), also);
    }

    private static void enter(Unit unit, String... also) {
        List<Unit> units = BY_DIMENSION.get(unit.dimension());
        if (units == null) {
            units = new ArrayList<>(12);
            BY_DIMENSION.put(unit.dimension(), units);
        }
        units.add(unit);
        spell(unit.word(), unit);
        for (String other : also) {
            spell(other, unit);
        }
    }

    private static void spell(String spelling, Unit unit) {
        put(BY_SPELLING, spelling, unit, false);
        String plain = plain(spelling);
        if (!plain.equals(spelling)) {
            put(BY_SPELLING, plain, unit, false);
        }
        put(BY_SMALL, plain.toLowerCase(Locale.ROOT), unit, true);
    }

    private static void put(Map<String, List<Unit>> map, String spelling, Unit unit, boolean small) {
        List<Unit> units = map.get(spelling);
        if (units == null) {
            units = new ArrayList<>(2);
            map.put(spelling, units);
        }
        Unit there = among(units, unit.dimension());
        if (there == null && !(small && SHARED.contains(unit.dimension() + spelling))) {
            units.add(unit);
        } else if (small && there != null && there != unit) {
            units.remove(there);
            SHARED.add(unit.dimension() + spelling);
        }
    }

    /** One dimension's units, entered one after the other. */
    private record Row(Dimension dimension) {
        Row unit(String word, double factor, String... also) {
            enter(new Unit(word, dimension, factor, 0), also);
            return this;
        }
    }
}
