package leadlamp.derive;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;

/**
 * Does a printed sum again from what is printed alone: figures with their units, signs, and the few words that a pocket calculator has a
 * key for. Other words name the figures and are passed over. Each figure may be off by half of its last place.
 */
final class PocketCalculator {
    private static final Map<String, Double> FACTORS = Map.of("1e-6/K", 1e-6, "kg/m3", 1.0, "ohm mm2/m", 1e-6, "mm/crank deg", 1e-3 * 180 / Math.PI, "g/kWh", 1 / 3.6e9, "mm/s", 1e-3);
    private static final List<String> LIKE_PLUS = List.of("+", "and");

    private final List<String> words;
    private final int moved;
    private final double by;
    private int at;
    private int figures;

    private PocketCalculator(List<String> words, int moved, double by) {
        this.words = words;
        this.moved = moved;
        this.by = by;
    }

    /** A printed sum that does not come out. */
    static final class Wrong extends Exception {
        private static final long serialVersionUID = 1;

        Wrong(String why) {
            super(why);
        }
    }

    /** Does every line of a sum again: those between semicolons. */
    static void redo(String sum) throws Wrong {
        for (String line : sum.split(";")) {
            int equals = line.lastIndexOf(" = ");
            if (equals < 0) {
                throw new Wrong("no result: " + line);
            }
            List<String> left = words(line.substring(0, equals));
            List<String> right = words(line.substring(equals + 3));
            double result = value(right, -1, 0);
            double printed = spread(right);
            double again = value(left, -1, 0);
            double doubt = spread(left);
            double off = Math.abs(again - result);
            if (off > printed + doubt + 1e-9 * Math.abs(result)) {
                throw new Wrong("comes to " + again + " and not to " + result + " (SI), rounding explains " + (printed + doubt) + ": " + line);
            }
        }
    }

    private static double value(List<String> words, int moved, double by) throws Wrong {
        PocketCalculator calculator = new PocketCalculator(words, moved, by);
        double value = calculator.sum();
        if (calculator.at < words.size()) {
            throw new Wrong("cannot go on at \"" + String.join(" ", words.subList(calculator.at, words.size())) + "\"");
        }
        return value;
    }

    /** By how much the rounding of what is printed can move the outcome. */
    private static double spread(List<String> words) throws Wrong {
        double middle = value(words, -1, 0);
        PocketCalculator count = new PocketCalculator(words, -1, 0);
        count.sum();
        double spread = 0;
        for (int i = 0; i < count.figures; i++) {
            spread += Math.abs(value(words, i, 0.5) - middle);
        }
        return spread;
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        StringBuilder spaced = new StringBuilder();
        for (char c : text.toCharArray()) {
            spaced.append(c == '(' || c == ')' || c == ',' ? " " + c + " " : String.valueOf(c));
        }
        for (String word : spaced.toString().trim().split(" +")) {
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return words;
    }

    private String next() {
        return at < words.size() ? words.get(at) : "";
    }

    private boolean take(String... phrase) {
        for (int i = 0; i < phrase.length; i++) {
            if (at + i >= words.size() || !words.get(at + i).equals(phrase[i])) {
                return false;
            }
        }
        at += phrase.length;
        return true;
    }

    private double sum() throws Wrong {
        double sum = product();
        while (true) {
            passOver();
            if (take("+")) {
                sum += product();
            } else if (take("-") || take("less")) {
                sum -= product();
            } else {
                return sum;
            }
        }
    }

    private double product() throws Wrong {
        double product = power();
        while (true) {
            passOver();
            if (take("x")) {
                product *= power();
            } else if (take("/")) {
                product /= power();
            } else {
                return product;
            }
        }
    }

    private double power() throws Wrong {
        double base = operand();
        while (true) {
            passOver();
            if (take("squared")) {
                base *= base;
            } else if (take("cubed")) {
                base = base * base * base;
            } else if (take("to", "the", "power")) {
                base = Math.pow(base, operand());
            } else {
                return base;
            }
        }
    }

    /** Behind a figure all words are passed over up to the next sign: `at main 1 at 0`, `(an upper bound)`. */
    private void passOver() {
        while (at < words.size()) {
            switch (next()) {
                case "+", "-", "less", "x", "/", ")", "squared", "cubed", "and" -> {
                    return;
                }
                case "to" -> {
                    if (at + 2 < words.size() && words.get(at + 1).equals("the") && words.get(at + 2).equals("power")) {
                        return;
                    }
                    at++;
                }
                case "," -> at = words.size();
                case "(" -> {
                    // A remark in brackets has no figure in it.
                    while (at < words.size() && !next().equals(")")) {
                        at++;
                    }
                    at++;
                }
                default -> at++;
            }
        }
    }

    private double operand() throws Wrong {
        while (at < words.size()) {
            if (take("half", "of")) {
                return operand() / 2;
            }
            if (take("root", "of")) {
                return Math.sqrt(operand());
            }
            if (take("mean", "of")) {
                return mean();
            }
            if (take("arctan")) {
                return Math.atan(operand());
            }
            if (take("arcsin")) {
                return Math.asin(operand());
            }
            if (take("tan")) {
                return Math.tan(operand());
            }
            if (take("cos")) {
                return Math.cos(operand());
            }
            if (take("sin")) {
                return Math.sin(operand());
            }
            if (take("ln")) {
                return Math.log(operand());
            }
            if (take("-")) {
                return -operand();
            }
            if (take("(")) {
                double inside = sum();
                if (!take(")")) {
                    throw new Wrong("a bracket stays open at \"" + next() + "\"");
                }
                return inside;
            }
            if (take("pi")) {
                return Math.PI;
            }
            if (take("pi/4")) {
                return Math.PI / 4;
            }
            if (take("pi/2")) {
                return Math.PI / 2;
            }
            if (take("g")) {
                return 9.80665;
            }
            if (number(next())) {
                return figure();
            }
            if (date(next())) {
                return day();
            }
            if (LIKE_PLUS.contains(next()) || next().equals("x") || next().equals("/") || next().equals(")")) {
                throw new Wrong("no figure before \"" + next() + "\"");
            }
            at++;
        }
        throw new Wrong("a figure is wanted at the end");
    }

    private double mean() throws Wrong {
        double sum = power();
        int count = 1;
        while (take("and")) {
            sum += power();
            count++;
        }
        return sum / count;
    }

    private static boolean date(String word) {
        return word.length() >= 7 && word.charAt(4) == '-' && Character.isDigit(word.charAt(0));
    }

    /** A date as seconds; of a month its middle, give or take half of it. */
    private double day() {
        String written = words.get(at++);
        boolean month = written.length() == 7;
        double day = LocalDate.parse(month ? written + "-15" : written).toEpochDay();
        double minutes = 0;
        int colon = next().indexOf(':');
        if (colon > 0) {
            minutes = 60 * Integer.parseInt(next().substring(0, colon)) + Integer.parseInt(next().substring(colon + 1));
            at++;
        }
        double moves = figures++ == moved ? by : 0;
        return (day + moves * (month ? 31 : colon > 0 ? 1.0 / 1440 : 1)) * 24 * 3600 + minutes * 60;
    }

    private static boolean number(String word) {
        boolean digit = false;
        for (int i = 0; i < word.length(); i++) {
            char c = word.charAt(i);
            digit |= c >= '0' && c <= '9';
            if (!(c >= '0' && c <= '9' || c == '.' || c == '-' && i == 0)) {
                return false;
            }
        }
        return digit;
    }

    private double figure() {
        String written = words.get(at++).replace("−", "-");
        double number = Double.parseDouble(written);
        int point = written.indexOf('.');
        // A figure to the left of the point ends in noughts that may be rounded: 120000 km.
        double place = point < 0 ? 1 : Math.pow(10, -(written.length() - point - 1));
        if (figures++ == moved) {
            number += by * place;
        }
        for (int length = 2; length > 0; length--) {
            if (at + length <= words.size() && (length == 1 || Character.isLetter(words.get(at + 1).charAt(0)))) {
                String unit = String.join(" ", words.subList(at, at + length));
                Double factor = FACTORS.get(unit);
                if (factor != null) {
                    at += length;
                    return number * factor;
                }
                Optional<Unit> named = unit.equals("x") || unit.equals("and") || unit.equals("at") || unit.equals("to") ? Optional.empty() : Units.named(unit);
                if (named.isPresent() && !named.get().word().isEmpty()) {
                    at += length;
                    // Turns a minute are divided by sixty where the sum says so; a step of a degree has no zero of its own.
                    return named.get().dimension() == Dimension.SPEED ? number : number * named.get().factor();
                }
            }
        }
        return number;
    }
}
