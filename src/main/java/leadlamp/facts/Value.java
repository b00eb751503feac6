package leadlamp.facts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Unit;
import leadlamp.record.Where;

/**
 * A value of one quantity at one place, read or worked out. A plain value has both ends together; a range has two; a
 * bound has one end open.
 *
 * @param of      the quantity; with ` as found` or ` as trial` after it where it was marked so
 * @param kind    the kind of the quantity (`plain bearing clearance`), its own name where it has none
 * @param at      the place
 * @param low     the low end with its doubt, absent where it is open
 * @param high    the high end with its doubt, absent where it is open
 * @param unit    the unit it was written in, in which it is printed
 * @param figures decimals to print in that unit
 * @param gauge   name or kind of the gauge; empty for what was worked out
 * @param usual   whether the doubt is the usual one of the gauge's kind, for the record gives none
 * @param redone  for what was worked out: the sum in one line with its figures, that a builder can redo; else empty
 * @param told    who told it; empty where it is the builder's own reading
 * @param asides  what it was taken at
 * @param places  its lines
 */
public record Value(String of, String kind, String at, Optional<Estimate> low, Optional<Estimate> high, Unit unit,
        int figures, String gauge, boolean usual, Redone redone, String told, Map<String, String> asides,
        List<Where> places) implements Fact {

    /** One whose sum stands in words already. */
    public Value(String of, String kind, String at, Optional<Estimate> low, Optional<Estimate> high, Unit unit, int figures, String gauge,
            boolean usual, String sum, String told, Map<String, String> asides, List<Where> places) {
        this(of, kind, at, low, high, unit, figures, gauge, usual, Redone.of(sum), told, asides, places);
    }

    /** The sum in one line with its figures; empty for what was not worked out. */
    public String sum() {
        return redone.text();
    }

    /** Whether both ends are one. */
    public boolean plain() {
        return low.isPresent() && (low == high || high.isPresent() && low.get().value() == high.get().value());
    }

    /** Whether it was worked out, not read. */
    public boolean derived() {
        return redone != Redone.NOT;
    }
}
