package leadlamp.judge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.EngineSheet;
import leadlamp.record.Gauge;
import leadlamp.record.LimitLine;
import leadlamp.record.Node;
import leadlamp.record.Place;
import leadlamp.record.Statement;

/**
 * Limits that stand on a sheet elsewhere than under `limits`: how often a joint's bolts may be tightened and how many there are to
 * mark, how long a part or belt may run, what a coil may measure, how far a gear may rock. And the time after which a gauge of the record
 * is to be checked again.
 */
final class SheetLimits {
    private static final String SHEET = "the engine sheet";
    private static final String ROD_CAP = "rod cap to rod";

    private final List<LimitLine> lines = new ArrayList<>();

    private SheetLimits() {
    }

    /** Those of a sheet. */
    static List<LimitLine> of(EngineSheet sheet) {
        SheetLimits limits = new SheetLimits();
        for (Statement s : sheet.statements()) {
            switch (s.of()) {
                case "joint" -> {
                    limits.joint(s);
                    limits.sealant(s, sheet);
                }
                case "seals" -> limits.seal(s);
                case "lives" -> {
                    if (s.what().equals("years")) {
                        limits.most("companion age at next change", s.at(), years(s), s);
                    }
                }
                case "drive" -> limits.drive(s);
                case "timing" -> limits.timing(s);
                case "sensors" -> limits.sensor(s, sheet);
                case "coolant" -> limits.ends("share", "coolant concentration", "", s);
                default -> {
                }
            }
        }
        // A tension that is worked out of the note of a run is held against that of the sheet.
        for (LimitLine line : sheet.limits()) {
            if (line.quantity().equals("timing belt tension")) {
                limits.lines.add(new LimitLine("belt tension from note", line.at(), line.standard(), line.least(), line.most(), line.times(),
                        line.when(), line.where(), line.asides(), line.reason(), line.basis(), line.line()));
            }
        }
        return limits.lines;
    }

    /** Those of the record's own gauges. */
    static List<LimitLine> ofGauges(Build build) {
        List<LimitLine> lines = new ArrayList<>();
        for (Gauge gauge : build.gauges().values()) {
            String period = gauge.asides().getOrDefault("period", "");
            if (!period.isEmpty() && Reading.read(period, Dimension.TIME, Optional.empty()) instanceof Reading.Read read
                    && read.written().figure()) {
                lines.add(new LimitLine("gauge check age", gauge.name(), Optional.empty(), Optional.empty(), Optional.of(read.written()),
                        "", "", Map.of(), Map.of(), false, "the period of the gauge itself", gauge.where()));
            }
        }
        return lines;
    }

    /** Cylinder to bank, for a vee. */
    static Map<String, String> banks(EngineSheet sheet) {
        Map<String, String> banks = new HashMap<>();
        if (sheet.below("layout", "banks").orElse(null) instanceof Node.Fields fields) {
            for (Node.Field bank : fields.fields()) {
                if (bank.value() instanceof Node.Items cylinders) {
                    for (Node cylinder : cylinders.items()) {
                        if (cylinder instanceof Node.Scalar number) {
                            banks.put(number.text(), bank.key());
                        }
                    }
                }
            }
        }
        return banks;
    }

    private void joint(Statement s) {
        switch (s.what()) {
            case "uses" -> most("joint uses", s.at(), s.value(), s);
            case "bolts" -> least("joint marked", s.at(), s.value(), s);
            default -> {
                ends("torque limits", "joint torque", s.at(), s);
                // The bolts of the rods live at the big ends, and every rod has the same.
                boolean rod = s.at().startsWith(ROD_CAP);
                ends("stretch", rod ? "rod bolt stretch" : "bolt stretch", rod ? "" : s.at(), s);
                ends("bolt length limit", rod ? "rod bolt free length" : "bolt free length", rod ? "" : s.at(), s);
            }
        }
    }

    /** The times that the joint's sealant is given under `sealants`. */
    private void sealant(Statement s, EngineSheet sheet) {
        if (s.what().equals("sealant")) {
            sheet.statement("sealants", s.says(), "open time").ifPresent(time -> most("sealant open time", s.at(), time.value(), time));
            sheet.statement("sealants", s.says(), "cure time").ifPresent(time -> least("sealant cure time", s.at(), time.value(), time));
        }
    }

    private void seal(Statement s) {
        if (s.what().equals("rest")) {
            least("lip rest time", s.at(), s.value(), s);
        }
    }

    private void drive(Statement s) {
        if (s.what().equals("change after years")) {
            most("timing belt years", s.at(), years(s), s);
        } else {
            ends("tensioner extension", "belt tensioner extension", "", s);
        }
    }

    private void timing(Statement s) {
        if (s.what().equals("cam timing tolerance") && s.value().isPresent()) {
            Written most = s.value().get();
            most("cam gear rock", "", s.value(), s);
            most("crank gear rock", "", s.value(), s);
            most("chain lag", "", s.value(), s);
            Written least = new Written(Written.Form.PLAIN, -most.high(), -most.high(), most.unit(), most.figures(), most.text());
            least("cam timing error", "", Optional.of(least), s);
            most("cam timing error", "", s.value(), s);
        }
    }

    /** A winding, at the heat that the sheet gives it for; the reading of each sensor and that brought to 20 degrees alike. */
    private void sensor(Statement s, EngineSheet sheet) {
        if (s.what().startsWith("resistance ")) {
            ends("resistance", "sensor resistance corrected", s.at(), s);
            int from = lines.size();
            ends("resistance", s.at() + " resistance", "", s);
            for (int i = from; i < lines.size(); i++) {
                Optional<String> heat = sheet.word("sensors", s.at(), "at");
                if (heat.isPresent()) {
                    lines.set(i, with(lines.get(i), heat.get()));
                }
            }
        }
    }

    private static LimitLine with(LimitLine line, String heat) {
        return new LimitLine(line.quantity(), line.at(), line.standard(), line.least(), line.most(), line.times(), line.when(),
                line.where(), Map.of("temperature", heat), line.reason(), line.basis(), line.line());
    }

    /** The sheet writes the years of a life as a bare number. */
    private static Optional<Written> years(Statement s) {
        if (s.value().isEmpty() || s.value().get().unit().dimension() == Dimension.TIME) {
            return s.value();
        }
        Written w = s.value().get();
        Unit years = Units.named("years", Dimension.TIME).orElseThrow();
        return Optional.of(new Written(w.form(), years.toSi(w.low()), years.toSi(w.high()), years, w.figures(), w.text()));
    }

    /** A line that has a least and a most below it: `stretch: { least: 0.10 mm, most: 0.16 mm }`. */
    private void ends(String line, String quantity, String at, Statement s) {
        if (s.what().equals(line + " least")) {
            least(quantity, at, s.value(), s);
        } else if (s.what().equals(line + " most")) {
            most(quantity, at, s.value(), s);
        }
    }

    private void least(String quantity, String at, Optional<Written> least, Statement s) {
        add(quantity, at, least, Optional.empty(), s);
    }

    private void most(String quantity, String at, Optional<Written> most, Statement s) {
        add(quantity, at, Optional.empty(), most, s);
    }

    private void add(String quantity, String at, Optional<Written> least, Optional<Written> most, Statement s) {
        Optional<Written> size = least.isPresent() ? least : most;
        if (size.isPresent() && size.get().figure()) {
            lines.add(new LimitLine(quantity, at.equals(Place.ENGINE) ? "" : at, Optional.empty(), least, most, "", "", Map.of(), Map.of(),
                    false, SHEET, s.where()));
        }
    }
}
