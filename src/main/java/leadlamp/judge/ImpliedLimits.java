package leadlamp.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.Gauge;
import leadlamp.record.LimitLine;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/**
 * Limits that the sheet says elsewhere than under `limits`: lives of parts, how often a bolt may be tightened, how many bolts
 * there are to mark, bands of a tensioner, a winding, a mixture. And the period in which the record's own gauges are checked.
 */
final class ImpliedLimits {
    private static final String SHEET = "the engine sheet";
    private static final Unit YEARS = Units.named("years", Dimension.TIME).orElseThrow();
    private static final Unit COUNT = Units.si(Dimension.COUNT);

    private final List<LimitLine> lines = new ArrayList<>();

    private ImpliedLimits() {
    }

    static List<LimitLine> of(Build build) {
        ImpliedLimits implied = new ImpliedLimits();
        for (Statement s : build.sheet().statements()) {
            implied.sheet(s);
        }
        for (Gauge gauge : build.gauges().values()) {
            implied.gauge(gauge);
        }
        return implied.lines;
    }

    private void sheet(Statement s) {
        switch (s.of()) {
            case "lives" -> {
                if (s.what().equals("years")) {
                    number(s.says()).ifPresent(years -> most("companion age at next change", s.at(), years * YEARS.factor(), YEARS, s));
                }
            }
            case "drive" -> {
                switch (s.what()) {
                    case "change after years" -> number(s.says())
                            .ifPresent(years -> most("timing belt years", s.at(), years * YEARS.factor(), YEARS, s));
                    case "tensioner extension least" -> side("belt tensioner extension", "", s, true);
                    case "tensioner extension most" -> side("belt tensioner extension", "", s, false);
                    default -> {
                    }
                }
            }
            case "joint" -> {
                switch (s.what()) {
                    case "uses" -> number(s.says()).ifPresent(uses -> most("joint uses", s.at(), uses, COUNT, s));
                    case "bolts" -> number(s.says()).ifPresent(bolts -> least("joint marked", s.at(), bolts, COUNT, s));
                    case "stretch least" -> side("bolt stretch", s.at(), s, true);
                    case "stretch most" -> side("bolt stretch", s.at(), s, false);
                    case "torque limits least" -> side("joint torque", s.at(), s, true);
                    case "torque limits most" -> side("joint torque", s.at(), s, false);
                    case "bolt length limit least" -> side("bolt free length", s.at(), s, true);
                    case "bolt length limit most" -> side("bolt free length", s.at(), s, false);
                    default -> {
                    }
                }
            }
            case "sensors" -> {
                if (s.what().equals("resistance least")) {
                    side("crank sensor resistance", s.at(), s, true);
                } else if (s.what().equals("resistance most")) {
                    side("crank sensor resistance", s.at(), s, false);
                }
            }
            case "coolant" -> {
                if (s.what().equals("share least")) {
                    side("coolant concentration", "", s, true);
                } else if (s.what().equals("share most")) {
                    side("coolant concentration", "", s, false);
                }
            }
            default -> {
            }
        }
    }

    private void gauge(Gauge gauge) {
        String period = gauge.asides().get("period");
        if (period != null && Reading.read(period, Dimension.TIME, Optional.empty()) instanceof Reading.Read read
                && read.written().figure()) {
            lines.add(new LimitLine("gauge check age", gauge.name(), Optional.empty(), Optional.empty(), Optional.of(read.written()), "", "",
                    Map.of(), Map.of(), false, "the gauge's own period", gauge.where()));
        }
    }

    private void side(String quantity, String at, Statement s, boolean least) {
        s.value().filter(Written::figure).ifPresent(w -> lines.add(new LimitLine(quantity, at, Optional.empty(),
                least ? Optional.of(w) : Optional.empty(), least ? Optional.empty() : Optional.of(w), "", "", Map.of(), Map.of(), false, SHEET,
                s.where())));
    }

    private void most(String quantity, String at, double si, Unit unit, Statement s) {
        lines.add(new LimitLine(quantity, at.equals(Place.ENGINE) ? "" : at, Optional.empty(), Optional.empty(), Optional.of(plain(si, unit, s)),
                "", "", Map.of(), Map.of(), false, SHEET, where(s)));
    }

    private void least(String quantity, String at, double si, Unit unit, Statement s) {
        lines.add(new LimitLine(quantity, at, Optional.empty(), Optional.of(plain(si, unit, s)), Optional.empty(), "", "", Map.of(), Map.of(),
                false, SHEET, where(s)));
    }

    private static Where where(Statement s) {
        return s.where();
    }

    private static Written plain(double si, Unit unit, Statement s) {
        return new Written(Written.Form.PLAIN, si, si, unit, 0, s.says());
    }

    private static Optional<Double> number(String text) {
        int end = 0;
        while (end < text.length() && (Character.isDigit(text.charAt(end)) || text.charAt(end) == '.')) {
            end++;
        }
        try {
            return end == 0 ? Optional.empty() : Optional.of(Double.parseDouble(text.substring(0, end)));
        } catch (NumberFormatException none) {
            return Optional.empty();
        }
    }
}
