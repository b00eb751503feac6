package leadlamp.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import leadlamp.audit.Likelihood;
import leadlamp.audit.Severity;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Unit;
import leadlamp.rank.Course;
import leadlamp.rank.Ranked;
import leadlamp.rank.Ranking;
import leadlamp.rank.RiskLevel;
import leadlamp.rank.Weight;
import leadlamp.record.Place;
import leadlamp.report.draw.Ladder;
import leadlamp.report.draw.Picture;
import leadlamp.report.draw.RiskMatrix;
import leadlamp.report.draw.Window;

/** Works out what the pictures of a report show. */
final class Pictures {
    /** More places than this stand no longer side by side on a page. */
    private static final int MOST_PLACES = 24;

    private Pictures() {
    }

    /** The value against its limit, with the same quantity at the other places that have this limit. */
    static Optional<Picture> window(Verdict verdict, List<Verdict> sameQuantity) {
        List<Verdict> shown = new ArrayList<>();
        for (Verdict other : sameQuantity) {
            // The worst of several spots stands at their bearing or bore as well; each reading is drawn once, at its own.
            boolean own = other.at().equals(other.value().at());
            if (own && sameLimit(verdict.limit(), other.limit()) && drawable(other.value())) {
                shown.add(other);
            }
        }
        if (!drawable(verdict.value())) {
            return Optional.empty();
        }
        if (shown.isEmpty() || shown.size() > MOST_PLACES) {
            shown = List.of(verdict);
        }
        Unit unit = verdict.value().unit();
        List<Window.Mark> marks = new ArrayList<>();
        List<String> said = new ArrayList<>();
        for (Verdict one : shown) {
            Window.Mark mark = mark(one, unit);
            marks.add(mark);
            said.add(mark.place() + " " + mark.text() + ", " + mark.standing().word());
        }
        LimitUsed limit = verdict.limit();
        int figures = verdict.value().figures();
        return Optional.of(new Window(verdict.of(), String.join("; ", said) + ". Limit: " + Amounts.sides(verdict) + ".",
                List.copyOf(marks), written(limit.least(), unit), written(limit.most(), unit),
                text(limit.least(), unit, figures), text(limit.most(), unit, figures)));
    }

    private static boolean sameLimit(LimitUsed one, LimitUsed other) {
        return one.least().equals(other.least()) && one.most().equals(other.most());
    }

    private static boolean drawable(Value value) {
        return value.low().isPresent() || value.high().isPresent();
    }

    private static Window.Mark mark(Verdict verdict, Unit unit) {
        Value value = verdict.value();
        double low = unit.fromSi(value.low().or(value::high).orElseThrow().value());
        double high = unit.fromSi(value.high().or(value::low).orElseThrow().value());
        double doubt = Math.max(Amounts.doubt(value.low()), Amounts.doubt(value.high())) / unit.factor();
        Window.Standing standing = switch (Wording.standing(verdict)) {
            case "within" -> Window.Standing.WITHIN;
            case "undecided" -> Window.Standing.UNDECIDED;
            default -> Window.Standing.OUTSIDE;
        };
        String place = verdict.at().equals(Place.ENGINE) ? "engine" : Wording.place("", verdict.at());
        return new Window.Mark(place, low, high, doubt, Amounts.of(verdict), standing);
    }

    private static OptionalDouble written(OptionalDouble si, Unit unit) {
        return si.isPresent() ? OptionalDouble.of(unit.fromSi(si.getAsDouble())) : si;
    }

    private static String text(OptionalDouble si, Unit unit, int figures) {
        return si.isPresent() ? Amounts.limit(si.getAsDouble(), unit, figures) : "";
    }

    /** The findings in the risk matrix. */
    static Optional<Picture> matrix(List<ReportModel.Finding> findings, List<Ranked> found) {
        if (found.isEmpty()) {
            return Optional.empty();
        }
        List<String> severities = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            severities.add(severity.word());
        }
        List<String> likelihoods = new ArrayList<>();
        List<List<String>> cells = new ArrayList<>();
        for (Likelihood likelihood : Likelihood.values()) {
            if (likelihood != Likelihood.ELIMINATED) {
                likelihoods.add(likelihood.word());
                List<String> row = new ArrayList<>();
                for (Severity severity : Severity.values()) {
                    row.add(RiskLevel.of(severity, likelihood).word());
                }
                cells.add(row);
            }
        }
        List<RiskMatrix.Mark> marks = new ArrayList<>();
        List<String> said = new ArrayList<>();
        int at = 0;
        for (ReportModel.Finding finding : findings) {
            Weight weight = found.get(at).weights().get(0);
            at += finding.items().size();
            marks.add(new RiskMatrix.Mark(finding.number(), weight.likelihood().ordinal(),
                    weight.severity().ordinal()));
            said.add("finding " + finding.number() + " is " + weight.severity().word() + " and " + weight.likelihood().word());
        }
        return Optional.of(new RiskMatrix("Findings in the risk matrix", String.join("; ", said) + ".", severities,
                likelihoods, cells, List.copyOf(marks)));
    }

    /** The steps that are the last chance for something, and the next; the others are left out. */
    static Optional<Picture> ladder(Course course, List<ReportModel.Finding> findings, Ranking ranking) {
        Map<String, int[]> chances = new TreeMap<>();
        for (ReportModel.Finding finding : findings) {
            finding.lead().lastChance().ifPresent(step -> count(chances, step, 0));
        }
        for (Ranked open : ranking.open()) {
            if (!open.chance().step().isEmpty()) {
                count(chances, open.chance().step(), 1);
            }
        }
        List<Ladder.Rung> rungs = new ArrayList<>();
        List<String> said = new ArrayList<>();
        for (Course.Rung rung : course.rungs()) {
            int[] chance = chances.get(rung.step());
            boolean next = rung.standing() == Course.Standing.NEXT;
            if (chance != null || next) {
                String note = chance == null ? "" : note(chance, rung.standing());
                rungs.add(new Ladder.Rung(rung.step(), standing(rung.standing()), note));
                said.add(rung.step() + (next ? " (next)" : "") + (note.isEmpty() ? "" : ": " + note));
            }
        }
        return rungs.isEmpty() ? Optional.empty()
                : Optional.of(new Ladder("Last chances, step by step", String.join("; ", said) + ".", List.copyOf(rungs)));
    }

    private static void count(Map<String, int[]> chances, String step, int which) {
        chances.computeIfAbsent(step, s -> new int[2])[which]++;
    }

    private static String note(int[] chance, Course.Standing standing) {
        List<String> parts = new ArrayList<>();
        if (chance[0] > 0) {
            parts.add(Report.count(chance[0], "finding", "findings"));
        }
        if (chance[1] > 0) {
            parts.add(Report.count(chance[1], "open question", "open questions"));
        }
        return (standing == Course.Standing.BEHIND ? "closed in: " : "last chance: ") + Wording.join(parts);
    }

    private static Ladder.Standing standing(Course.Standing standing) {
        return switch (standing) {
            case BEHIND -> Ladder.Standing.BEHIND;
            case NEXT -> Ladder.Standing.NEXT;
            case AHEAD -> Ladder.Standing.AHEAD;
        };
    }
}
