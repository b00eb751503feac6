package leadlamp.quantity;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The units that a bench writes, with their other spellings. One word may be a unit of several dimensions (`g` is a mass
 * and an acceleration, `deg` an angle, `lb` a mass and a spring load): where the dimension is known, ask with it.
 *
 * <p>Factors of inch, pound, gallon and older metric units follow from their exact definitions: the inch is 25.4 mm, the
 * pound 0.45359237 kg, standard gravity 9.80665 m/s².
 *
 * <p>The table of a dimension is laid out when it is first asked for, and searched as it stands: a short record asks for
 * few words of few dimensions, and a table of all spellings would take longer to fill than the record to read.
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

    /** Dimensions in the order in which a word that serves several is taken: those with a unit before plain numbers. */
    private static final Dimension[] USUAL_FIRST = usualFirst();
    private static final Row[][] ROWS = new Row[USUAL_FIRST.length][];
    /** What words alone were found to mean; a record asks for the same few again and again. */
    private static final Map<String, Optional<Unit>> ASKED = new ConcurrentHashMap<>();
    private static final int MOST_ASKED = 500;

    private Units() {
    }

    /** The unit of this word, its usual meaning: `g` is a mass. */
    public static Optional<Unit> named(String word) {
        Optional<Unit> unit = ASKED.get(word);
        if (unit == null) {
            unit = first(word);
            if (ASKED.size() < MOST_ASKED) {
                ASKED.put(word, unit);
            }
        }
        return unit;
    }

    private static Optional<Unit> first(String word) {
        for (Dimension dimension : USUAL_FIRST) {
            Row row = spelt(word, dimension);
            if (row != null) {
                return Optional.of(row.unit(dimension));
            }
        }
        List<Unit> units = likewise(word);
        return units.isEmpty() ? Optional.empty() : Optional.of(units.get(0));
    }

    /** The unit of this word in this dimension: `g` may be an acceleration, `lb` a spring load. */
    public static Optional<Unit> named(String word, Dimension dimension) {
        Row row = exact(word, dimension);
        if (row == null) {
            String plain = plain(word);
            row = like(plain, dimension, false);
            if (row == null) {
                row = like(small(plain), dimension, true);
            }
        }
        return row == null ? Optional.empty() : Optional.of(row.unit(dimension));
    }

    /** The unit of the dimension that SI values are in. */
    public static Unit si(Dimension dimension) {
        for (Row row : rows(dimension)) {
            // Hardness scales all have the factor 1; the first is the dimension's own.
            if (row.factor == 1 && row.offset == 0) {
                return row.unit(dimension);
            }
        }
        throw new IllegalStateException("no unit of " + dimension.word() + " has the factor 1");
    }

    /** The unit in which the bench writes most often, the first of {@link #words}. */
    public static Unit usual(Dimension dimension) {
        return rows(dimension)[0].unit(dimension);
    }

    /** Units of the dimension as they are printed, the usual first; empty where the dimension is a plain number. */
    public static List<String> words(Dimension dimension) {
        List<String> words = new ArrayList<>();
        for (Row row : rows(dimension)) {
            if (!row.spellings[0].isEmpty()) {
                words.add(row.spellings[0]);
            }
        }
        return Collections.unmodifiableList(words);
    }

    /** Units of the dimension, the usual first. */
    static List<Unit> all(Dimension dimension) {
        List<Unit> units = new ArrayList<>();
        for (Row row : rows(dimension)) {
            units.add(row.unit(dimension));
        }
        return Collections.unmodifiableList(units);
    }

    /** Whether values of both may be held against each other: a Brinell and a Rockwell number may not. */
    public static boolean comparable(Unit one, Unit other) {
        return one.dimension() == other.dimension()
                && (one.dimension() != Dimension.HARDNESS || one.word().equals(other.word()));
    }

    /** The row that has the word as it stands, or that has it once dots and dashes are left out of its spelling. */
    private static Row spelt(String word, Dimension dimension) {
        Row row = exact(word, dimension);
        return row == null ? like(word, dimension, false) : row;
    }

    /** All units of a word that has none as it stands. */
    private static List<Unit> likewise(String word) {
        List<Unit> units = new ArrayList<>(2);
        String plain = plain(word);
        if (!plain.equals(word)) {
            take(units, plain, false);
        }
        if (units.isEmpty()) {
            take(units, small(plain), true);
        }
        return units;
    }

    private static void take(List<Unit> units, String plain, boolean small) {
        for (Dimension dimension : USUAL_FIRST) {
            Row row = like(plain, dimension, small);
            if (row != null) {
                units.add(row.unit(dimension));
            }
        }
    }

    /** The row that has this very spelling. */
    private static Row exact(String word, Dimension dimension) {
        for (Row row : rows(dimension)) {
            for (String spelling : row.spellings) {
                if (spelling.equals(word)) {
                    return row;
                }
            }
        }
        return null;
    }

    /**
     * The row with a spelling that comes to the same once both are plain.
     *
     * @param small whether letters are small as well, for MM and PSI; what two units of the dimension share is then neither
     */
    private static Row like(String wanted, Dimension dimension, boolean small) {
        Row found = null;
        for (Row row : rows(dimension)) {
            if (row != found && row.like(wanted, small)) {
                if (!small) {
                    return row;
                }
                if (found != null) {
                    return null;
                }
                found = row;
            }
        }
        return found;
    }

    /** The printed word of the unit of this dimension whose spelling is nearest, if one is near enough to be meant. */
    static Optional<String> nearest(String word, Dimension dimension) {
        String wanted = small(plain(word));
        int least = 2 * Math.max(1, Math.min(wanted.length() / 3, 3)) + 1;
        Optional<String> best = Optional.empty();
        for (Map.Entry<String, Row> entry : small(dimension).entrySet()) {
            String printed = entry.getValue().spellings[0];
            if (!printed.isEmpty() && !wanted.isEmpty()) {
                // A slip is seldom in the first letter.
                int distance = 2 * distance(wanted, entry.getKey())
                        - (entry.getKey().startsWith(wanted.substring(0, 1)) ? 1 : 0);
                if (distance < least) {
                    least = distance;
                    best = Optional.of(printed);
                }
            }
        }
        return best;
    }

    /** Spellings in small letters that mean one unit of the dimension. */
    private static Map<String, Row> small(Dimension dimension) {
        Map<String, Row> small = new TreeMap<>();
        for (Row row : rows(dimension)) {
            for (String spelling : row.spellings) {
                String key = small(plain(spelling));
                if (like(key, dimension, true) == row) {
                    small.put(key, row);
                }
            }
        }
        return small;
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

    private static String small(String plain) {
        return plain.toLowerCase(Locale.ROOT);
    }

    private static Dimension[] usualFirst() {
        Dimension[] all = Dimension.values();
        Dimension[] plain = { Dimension.SHARE, Dimension.VOLUME_SHARE, Dimension.MASS_SHARE, Dimension.NUMBER, Dimension.COUNT };
        Dimension[] order = new Dimension[all.length];
        int measured = all.length - plain.length;
        System.arraycopy(all, plain.length, order, 0, measured);
        System.arraycopy(plain, 0, order, measured, plain.length);
        return order;
    }

    private static Row[] rows(Dimension dimension) {
        Row[] rows = ROWS[dimension.ordinal()];
        if (rows == null) {
            rows = laidOut(dimension);
            ROWS[dimension.ordinal()] = rows;
        }
        return rows;
    }

    /** The units of a dimension, the usual one first: SI units in one of it, how it is printed, how else it is written. */
    private static Row[] laidOut(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> new Row[] {
                row(1e-3, "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
                row(1e-6, "µm", "um", "micron", "microns", "micrometre", "micrometres"),
                row(1e-2, "cm", "centimetre", "centimetres"),
                row(1, "m", "metre", "metres", "meter", "meters"),
                row(INCH, "in", "inch", "inches", "ins", "\"", "″", "''"),
                row(2.54e-5, "thou", "thous", "thousandth", "thousandths", "mil", "mils"),
                row(2.54e-8, "µin", "uin", "microinch", "microinches"),
                row(FOOT, "ft", "foot", "feet"),
                row(1e3, "km", "kilometre", "kilometres", "kms"),
                row(1609.344, "miles", "mile", "mi"),
            };
            case AREA -> new Row[] {
                row(1e-6, "mm2", "sqmm", "squaremillimetres"),
                row(1e-4, "cm2", "sqcm", "squarecentimetres"),
                row(1, "m2", "sqm"),
                row(INCH * INCH, "in2", "sqin", "squareinch", "squareinches"),
            };
            case VOLUME -> new Row[] {
                row(1e-6, "cm3", "cc", "ccs", "ccm", "ml", "mL", "millilitre", "millilitres", "cucm"),
                row(1e-3, "l", "L", "litre", "litres", "liter", "liters", "dm3"),
                row(1e-9, "mm3", "cumm"),
                row(1, "m3", "cubicmetre", "cubicmetres"),
                row(CUBIC_INCH, "in3", "cuin", "cuins", "ci", "cid", "cubicinch", "cubicinches"),
                row(GALLON, "gal (imperial)", "impgal", "imperialgallon", "imperialgallons", "galimp", "ukgal",
                        "galuk"),
                row(US_GALLON, "gal (US)", "usgal", "usgallon", "usgallons", "galusliquid"),
                row(GALLON / 8, "pt (imperial)", "imppt", "imperialpint", "imperialpints", "imppint", "imppints"),
                row(US_GALLON / 4, "qt (US)", "usqt", "usquart", "usquarts", "qtusliquid"),
                row(US_GALLON / 8, "pt (US)", "uspt", "uspint", "uspints", "ptusliquid"),
                row(US_GALLON / 128, "fl oz (US)", "usfloz"),
                row(GALLON / 160, "fl oz (imperial)", "impfloz", "flozimp"),
            };
            case MASS -> new Row[] {
                row(1e-3, "g", "gram", "grams", "gramme", "grammes", "gm", "gms"),
                row(1, "kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"),
                row(1e-6, "mg", "milligram", "milligrams"),
                row(POUND, "lb", "lbs", "pound", "pounds", "lbm"),
                row(OUNCE, "oz", "ounce", "ounces"),
            };
            case TIME -> new Row[] {
                row(1, "s", "sec", "secs", "second", "seconds"),
                row(1e-3, "ms", "millisecond", "milliseconds"),
                row(60, "min", "mins", "minute", "minutes"),
                row(3600, "h", "hr", "hrs", "hour", "hours"),
                row(DAY, "days", "d", "day"),
                row(7 * DAY, "weeks", "week"),
                row(YEAR / 12, "months", "month"),
                row(YEAR, "years", "year", "yr", "yrs", "season", "seasons"),
            };
            case ANGLE -> new Row[] {
                row(DEGREE, "deg", "°", "degree", "degrees", "degs"),
                row(1, "rad", "radian", "radians"),
                row(DEGREE / 60, "arcmin"),
                row(TURN, "turns", "turn"),
            };
            case CRANK_ANGLE -> new Row[] {
                row(DEGREE, "crank deg", "degcrank", "crankdegree", "crankdegrees", "crank°", "°crank"),
                row(2 * DEGREE, "cam deg", "degcam", "camdegree", "camdegrees", "cam°", "°cam"),
                row(1, "crank rad"),
            };
            case SPEED -> new Row[] {
                row(TURN / 60, "rpm", "r/min", "rev/min", "revs/min", "1/min", "min1", "revs"),
                row(1, "rad/s"),
            };
            case LINEAR_SPEED -> new Row[] {
                row(1, "m/s", "mps", "m/sec"),
                row(FOOT / 60, "ft/min", "fpm"),
                row(FOOT, "ft/s", "fps"),
                row(1 / 3.6, "km/h", "kph", "kmh"),
                row(0.44704, "mile/h", "mph", "miles/h"),
            };
            case ACCELERATION -> new Row[] {
                row(GRAVITY, "g", "gn"),
                row(1, "m/s2", "m/s/s"),
            };
            case FREQUENCY -> new Row[] {
                row(1, "Hz", "1/s", "hertz"),
                row(1e3, "kHz"),
            };
            case FORCE -> new Row[] {
                row(1, "N", "newton", "newtons"),
                row(1e3, "kN"),
                row(10, "daN"),
                row(POUND_FORCE, "lbf", "lbsf", "lb", "lbs", "poundforce", "pound", "pounds"),
                row(OUNCE_FORCE, "ozf", "oz"),
                row(GRAVITY, "kgf", "kp", "kg", "kilopond"),
            };
            case TORQUE -> new Row[] {
                row(1, "N·m", "Nm", "newtonmetre", "newtonmetres", "newtonmeters"),
                row(1e-2, "N·cm", "Ncm"),
                row(1e-3, "N·mm", "Nmm"),
                row(1e3, "kN·m", "kNm"),
                row(10, "daN·m", "daNm"),
                row(POUND_FORCE * FOOT, "lbf.ft", "lbft", "ftlb", "ftlbs", "lbsft", "ftlbf", "lbfft", "poundfoot",
                        "poundfeet", "footpound", "footpounds", "poundsfeet"),
                row(POUND_FORCE * INCH, "lbf.in", "lbin", "inlb", "inlbs", "lbsin", "inlbf", "poundinch", "inchpound",
                        "inchpounds"),
                row(OUNCE_FORCE * INCH, "ozf.in", "ozin", "inoz", "inozf"),
                row(GRAVITY, "kgf.m", "kgm", "mkg", "mkgf", "kpm", "mkp"),
                row(GRAVITY / 100, "kgf.cm", "kgcm", "cmkg", "kpcm"),
            };
            case POWER -> new Row[] {
                row(1e3, "kW", "kilowatt", "kilowatts"),
                row(550 * FOOT * POUND_FORCE, "hp", "bhp", "hp550ftlbf/s", "horsepower"),
                row(75 * GRAVITY, "PS", "metrichp", "cv", "ch", "pk"),
                row(1, "W", "watt", "watts"),
            };
            case PRESSURE -> new Row[] {
                row(1e5, "bar", "bars"),
                row(1e3, "kPa"),
                row(PSI, "psi", "lbf/in2", "lb/in2", "lbs/in2", "lbf/sqin", "lb/sqin"),
                row(100, "mbar", "hPa", "millibar", "millibars"),
                row(1e6, "MPa", "N/mm2"),
                row(1, "Pa", "N/m2", "pascal"),
                row(GRAVITY * 1e4, "kgf/cm2", "kg/cm2", "kp/cm2", "at", "atkgf/cm2"),
                row(101325, "atm", "atmosphere", "atmospheres"),
                row(25.4 * MERCURY, "inHg", "inchHg", "inchesHg", "inofmercury", "inchesofmercury", "\"Hg"),
                row(MERCURY, "mmHg"),
                row(10 * MERCURY, "cmHg"),
                row(25.4 * GRAVITY, "inH2O", "inwater", "inchesofwater", "inofwater", "inwg"),
                row(GRAVITY, "mmH2O", "mmwater", "mmofwater", "mmwg", "mmwc"),
            };
            case STRESS -> new Row[] {
                row(1e6, "MPa", "N/mm2"),
                row(1e9, "GPa", "kN/mm2"),
                row(1e3, "kPa"),
                row(1, "Pa", "N/m2"),
                row(1e5, "bar"),
                row(PSI, "psi", "lbf/in2", "lb/in2"),
                row(1000 * PSI, "ksi"),
                row(GRAVITY * 1e6, "kgf/mm2", "kg/mm2", "kp/mm2"),
                row(2240 * PSI, "tonf/in2", "ton/in2", "tons/in2", "tsi", "tons/sqin", "tonf/sqin"),
            };
            case STIFFNESS -> new Row[] {
                row(1e3, "N/mm"),
                row(1, "N/m"),
                row(POUND_FORCE / INCH, "lbf/in", "lb/in", "lbs/in", "lb/inch", "lbs/inch"),
                row(GRAVITY * 1e3, "kgf/mm", "kg/mm", "kp/mm"),
            };
            case TEMPERATURE -> new Row[] {
                fromZero(1, 273.15, "°C", "C", "degC", "celsius", "degreesC", "degreeC"),
                fromZero(1 / 1.8, FAHRENHEIT_ZERO, "°F", "F", "degF", "fahrenheit", "degreesF", "degreeF"),
                row(1, "K", "kelvin"),
                row(1 / 1.8, "°R", "rankine"),
            };
            case TEMPERATURE_DIFFERENCE -> new Row[] {
                row(1, "°C", "C", "degC", "celsius", "degreesC", "degreeC"),
                row(1 / 1.8, "°F", "F", "degF", "fahrenheit", "degreesF", "degreeF"),
                row(1, "K", "kelvin"),
            };
            case VOLUME_FLOW -> new Row[] {
                row(1e-3 / 60, "l/min", "L/min", "lpm", "litres/min", "litre/min"),
                row(1e-6 / 60, "cm3/min", "cc/min", "ml/min", "mL/min", "ccm/min"),
                row(1e-3 / 3600, "l/h", "L/h", "lph", "litres/h", "l/hr", "litres/hour"),
                row(1e-3, "l/s", "L/s"),
                row(1.0 / 3600, "m3/h", "m3/hr"),
                row(1, "m3/s"),
                row(FOOT * FOOT * FOOT / 60, "cfm", "ft3/min", "cuft/min"),
                row(US_GALLON / 60, "gal (US)/min", "usgpm", "usgal/min"),
                row(GALLON / 60, "gal (imperial)/min", "impgal/min", "impgpm"),
                row(US_GALLON / 3600, "gal (US)/h", "usgph", "usgal/h"),
                row(GALLON / 3600, "gal (imperial)/h", "impgal/h", "impgph"),
            };
            case MASS_FLOW -> new Row[] {
                row(1.0 / 3600, "kg/h", "kg/hr", "kg/hour"),
                row(1e-3, "g/s", "g/sec"),
                row(1e-3 / 60, "g/min"),
                row(1.0 / 60, "kg/min"),
                row(1, "kg/s"),
                row(POUND / 3600, "lb/h", "lb/hr", "lbs/h", "lbs/hr", "pph"),
                row(POUND / 60, "lb/min", "lbs/min"),
            };
            case MASS_PER_VOLUME -> new Row[] {
                row(1e-3, "mg/l", "mg/L", "g/m3", "mg/litre"),
                row(1, "g/l", "g/L", "kg/m3", "g/litre"),
                row(1e3, "g/cm3", "g/cc", "kg/l", "kg/L", "g/ml"),
                row(POUND / (FOOT * FOOT * FOOT), "lb/ft3", "lb/cuft"),
                row(POUND / CUBIC_INCH, "lb/in3", "lb/cuin"),
            };
            case VOLTAGE -> new Row[] {
                row(1, "V", "volt", "volts"),
                row(1e-3, "mV", "millivolt", "millivolts"),
                row(1e3, "kV", "kilovolt", "kilovolts"),
            };
            case CURRENT -> new Row[] {
                row(1, "A", "amp", "amps", "ampere", "amperes"),
                row(1e-3, "mA", "milliamp", "milliamps"),
            };
            case RESISTANCE -> new Row[] {
                row(1, "ohm", "Ω", "ohms"),
                row(1e3, "kohm", "kΩ", "kohms", "kiloohm", "kiloohms", "kilohm", "kilohms"),
                row(1e6, "Mohm", "MΩ", "megohm", "megohms"),
                row(1e-3, "mohm", "mΩ", "milliohm", "milliohms"),
            };
            case INDUCTANCE -> new Row[] {
                row(1e-3, "mH", "millihenry"),
                row(1e-6, "µH", "uH"),
                row(1, "H", "henry"),
            };
            case MAGNETIC_FIELD -> new Row[] {
                row(1e-4, "gauss", "G", "Gs"),
                row(1e-3, "mT", "millitesla"),
                row(1, "T", "tesla"),
                row(100 * MU_0, "A/cm"),
                row(1e-4, "Oe", "oersted"),
            };
            case UNBALANCE -> new Row[] {
                row(1e-6, "g·mm", "gmm"),
                row(1e-5, "g·cm", "gcm"),
                row(1, "kg·m", "kgm"),
                row(OUNCE * INCH, "oz.in", "ozin", "inoz"),
            };
            case HARDNESS -> new Row[] {
                row(1, "HB", "HBW", "brinell"),
                row(1, "HV", "vickers"),
                row(1, "HRC", "Rc", "rockwellC"),
                row(1, "HRB", "Rb", "rockwellB"),
            };
            case VISCOSITY -> new Row[] {
                row(1e-6, "cSt", "mm2/s", "centistokes", "centistoke"),
                row(1, "m2/s"),
            };
            case SHARE, VOLUME_SHARE, MASS_SHARE -> new Row[] {
                row(0.01, "%", "percent", "pc", "point", "points", "vol%", "mass%", "%vol", "%mass", "%volume",
                        "byvolume%"),
                row(1, "", "share"),
                row(0.001, "‰"),
            };
            case NUMBER -> new Row[] {
                row(1, "", "number", "lambda", "λ", ":1"),
            };
            case COUNT -> new Row[] {
                row(1, "", "count", "turn", "turns", "tooth", "teeth", "link", "links", "use", "uses", "off", "bolts",
                        "pieces", "pcs"),
            };
        };
    }

    private static Row row(double factor, String... spellings) {
        return new Row(factor, 0, spellings);
    }

    private static Row fromZero(double factor, double offset, String... spellings) {
        return new Row(factor, offset, spellings);
    }

    /** A unit as it stands in the table. */
    private static final class Row {
        private final double factor;
        private final double offset;
        private final String[] spellings;
        private Unit unit;

        Row(double factor, double offset, String... spellings) {
            this.factor = factor;
            this.offset = offset;
            this.spellings = spellings;
        }

        // Two threads may make it twice; both are the same.
        Unit unit(Dimension dimension) {
            Unit made = unit;
            if (made == null) {
                made = new Unit(spellings[0], dimension, factor, offset);
                unit = made;
            }
            return made;
        }

        boolean like(String wanted, boolean small) {
            for (String spelling : spellings) {
                if (!small && spelling.equals(wanted) || !spelling.isEmpty() && !wanted.isEmpty() && begins(spelling, wanted)
                        && wanted.equals(small ? small(plain(spelling)) : plain(spelling))) {
                    return true;
                }
            }
            return false;
        }

        /** Whether the first letters may be the same: it spares taking most spellings apart. */
        private static boolean begins(String spelling, String wanted) {
            char first = spelling.charAt(0);
            char other = wanted.charAt(0);
            return first == other || first >= 'A' && first <= 'Z' && first + 'a' - 'A' == other || first > '~' || first < '0';
        }
    }
}
