package leadlamp.judge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.LimitLine;
import leadlamp.record.Statement;

/**
 * The maker's limits, those that stand outside `limits` among them: how often a joint's bolts may be tightened, how long a
 * belt may run, what a sensor's coil may measure.
 */
final class SheetLimits {
    private final Map<String, List<LimitLine>> byQuantity = new HashMap<>();

    SheetLimits(Build build) {
        for (LimitLine line : build.sheet().limits()) {
            add(line);
        }
        String sheet = "the engine sheet";
        for (Statement s : build.sheet().statements()) {
            if (s.value().isEmpty()) {
                continue;
            }
            switch (s.of()) {
                case "joint" -> joint(s, sheet);
                case "lives" -> {
                    if (s.what().equals("years")) {
                        most("companion age at next change", s.at(), s, sheet);
                        most("part age", s.at(), s, sheet);
                    }
                }
                case "drive" -> {
                    if (s.what().equals("change after years")) {
                        most("timing belt age", s.at(), s, sheet);
                    }
                }
                case "timing" -> {
                    if (s.what().equals("cam timing tolerance")) {
                        most("cam gear rock", "", s, sheet);
                        most("crank gear rock", "", s, sheet);
                        Written most = s.value().get();
                        Written least = new Written(Written.Form.PLAIN, -most.high(), -most.high(), most.unit(), most.figures(), "-" + most.text());
                        add(line("cam timing error", "", Optional.of(least), Optional.of(most), s, sheet));
                    }
                }
                case "sensors" -> {
                    if (s.what().equals("resistance least")) {
                        least("sensor resistance corrected", s.at(), s, sheet);
                        least(s.at() + " resistance", s.at(), s, sheet);
                    } else if (s.what().equals("resistance most")) {
                        most("sensor resistance corrected", s.at(), s, sheet);
                        most(s.at() + " resistance", s.at(), s, sheet);
                    }
                }
                default -> {
                }
            }
        }
        for (Statement s : build.statements()) {
            if (s.of().equals("gauge") && s.what().equals("period") && s.value().isPresent()) {
                most("gauge check age", s.at(), s, "the record, the gauge's own period");
            }
        }
    }

    List<LimitLine> of(String quantity) {
        return byQuantity.getOrDefault(quantity, List.of());
    }

    private void joint(Statement s, String sheet) {
        switch (s.what()) {
            case "uses" -> most("joint uses", s.at(), s, sheet);
            case "bolts" -> least("joint marked", s.at(), s, sheet);
            case "stretch least" -> least("bolt stretch", s.at(), s, sheet);
            case "stretch most" -> most("bolt stretch", s.at(), s, sheet);
            case "torque limits least" -> least("joint torque", s.at(), s, sheet);
            case "torque limits most" -> most("joint torque", s.at(), s, sheet);
            case "bolt length limit least" -> least("bolt free length", s.at(), s, sheet);
            case "bolt length limit most" -> most("bolt free length", s.at(), s, sheet);
            default -> {
            }
        }
    }

    private void least(String quantity, String at, Statement s, String sheet) {
        add(line(quantity, at, s.value(), Optional.empty(), s, sheet));
    }

    private void most(String quantity, String at, Statement s, String sheet) {
        add(line(quantity, at, Optional.empty(), s.value(), s, sheet));
    }

    private static LimitLine line(String quantity, String at, Optional<Written> least, Optional<Written> most, Statement s, String sheet) {
        return new LimitLine(quantity, at, Optional.empty(), least, most, "", "", Map.of(), Map.of(), false, sheet, s.where());
    }

    /** Least and most of one place that stand in two lines of the sheet are one limit. */
    private void add(LimitLine line) {
        List<LimitLine> lines = byQuantity.computeIfAbsent(line.quantity(), q -> new ArrayList<>());
        for (int i = 0; i < lines.size(); i++) {
            LimitLine other = lines.get(i);
            if (other.at().equals(line.at()) && other.where().isEmpty() && line.where().isEmpty() && other.asides().isEmpty()
                    && line.asides().isEmpty() && other.when().equals(line.when())
                    && (other.least().isEmpty() && line.most().isEmpty() || other.most().isEmpty() && line.least().isEmpty())) {
                lines.set(i, new LimitLine(line.quantity(), line.at(), other.standard(), other.least().isPresent() ? other.least() : line.least(),
                        other.most().isPresent() ? other.most() : line.most(), line.times(), line.when(), Map.of(), Map.of(), false,
                        other.basis(), other.line()));
                return;
            }
        }
        lines.add(line);
    }
}
