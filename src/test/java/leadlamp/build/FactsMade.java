package leadlamp.build;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Unit;
import leadlamp.record.Where;

/** Facts made for tests. */
final class FactsMade {
    private static final Unit METRE = new Unit("m", Dimension.LENGTH, 1, 0);

    private FactsMade() {
    }

    static Value value(String of, String kind, String at, int line) {
        Optional<Estimate> read = Optional.of(Estimate.exact(0.001 * line, Dimension.LENGTH));
        return new Value(of, kind, at, read, read, METRE, 3, "micrometer", line % 2 == 0, line % 3 == 0 ? "a sum" : "", "",
                Map.of(), List.of(new Where("record.yaml", line, 5)));
    }

    /** A verdict on that value, proven below, within or above. */
    static Verdict verdict(String of, String kind, String at, int line, int side) {
        LimitUsed limit = new LimitUsed(OptionalDouble.of(0), OptionalDouble.of(1), LimitUsed.Whose.SHEET, false, "sheet", "",
                Optional.empty());
        return new Verdict(of, kind, at, Optional.of(side(side < 0)), Optional.of(side(side > 0)),
                value(of, kind, at, line), limit);
    }

    private static Verdict.Side side(boolean outside) {
        return new Verdict.Side(outside ? Verdict.Standing.OUTSIDE : Verdict.Standing.WITHIN, outside ? 1 : 0, 0, "");
    }
}
