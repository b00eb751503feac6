package leadlamp.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Estimate;
import leadlamp.record.Place;
import leadlamp.report.ReportModel.Worked;

/** How much room a value has to its limit. */
final class Margin {
    /** A gauge is seldom finer than another of its kind by more than this; asking for more asks for what nobody has. */
    private static final double FINEST = 0.1;

    private Margin() {
    }

    /** Room to the nearer side as a share of the window, or of the limit where it has one side; below 0 outside. */
    static double room(Verdict verdict) {
        LimitUsed limit = verdict.limit();
        double distance = distance(verdict);
        double window = limit.least().isPresent() && limit.most().isPresent()
                ? limit.most().getAsDouble() - limit.least().getAsDouble()
                : Math.abs(limit.least().orElse(limit.most().orElse(0)));
        return window > 0 ? distance / window : distance;
    }

    /** Distance to the nearer side, SI; below 0 outside. */
    private static double distance(Verdict verdict) {
        double least = distance(verdict.value().low(), verdict.limit().least(), 1);
        double most = distance(verdict.value().high(), verdict.limit().most(), -1);
        return Math.min(least, most);
    }

    private static double distance(Optional<Estimate> end, OptionalDouble limit, int sign) {
        return end.isPresent() && limit.isPresent() ? sign * (end.get().value() - limit.getAsDouble())
                : Double.POSITIVE_INFINITY;
    }

    /** The doubt that would decide all of these, as text: less than the least distance of a value from its limit. */
    static Optional<String> doubtWanted(List<Verdict> verdicts, List<String> places) {
        Verdict nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (Verdict verdict : verdicts) {
            double distance = Math.abs(distance(verdict));
            boolean undecided = Wording.standing(verdict).equals("undecided");
            if (undecided && wanted(verdict, places) && distance < least) {
                least = distance;
                nearest = verdict;
            }
        }
        boolean within = nearest != null && least > FINEST * Math.max(Amounts.doubt(nearest.value().low()),
                Amounts.doubt(nearest.value().high()));
        return !within || Double.isInfinite(least) ? Optional.empty()
                : Optional.of(Amounts.doubt(least, nearest.value().unit()));
    }

    private static boolean wanted(Verdict verdict, List<String> places) {
        for (String place : places) {
            if (Place.related(place, verdict.at())) {
                return true;
            }
        }
        return places.isEmpty();
    }

    /** A worked-out value with its limit. */
    static Worked worked(Value value, Optional<Verdict> verdict) {
        Optional<LimitUsed> limit = verdict.map(Verdict::limit);
        double doubt = Math.max(Amounts.doubt(value.low()), Amounts.doubt(value.high()));
        return new Worked(value.of(), value.at(), verdict.map(Amounts::of).orElseGet(() -> Amounts.of(value)),
                end(value.low(), value), end(value.high(), value),
                Amounts.bare(doubt / value.unit().factor()), value.unit().word(), value.sum(),
                verdict.map(Wording::standing).orElse(""), side(limit.map(LimitUsed::least), value),
                side(limit.map(LimitUsed::most), value),
                limit.map(l -> Wording.owner(l.whose())).orElse(""), limit.map(LimitUsed::basis).orElse(""));
    }

    private static String end(Optional<Estimate> end, Value value) {
        return end.map(e -> Amounts.number(value.unit().fromSi(e.value()), value.figures())).orElse("");
    }

    private static String side(Optional<OptionalDouble> side, Value value) {
        return side.isPresent() && side.get().isPresent()
                ? Amounts.bareLimit(side.get().getAsDouble(), value.unit(), value.figures()) : "";
    }
}
