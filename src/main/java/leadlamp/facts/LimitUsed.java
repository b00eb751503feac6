package leadlamp.facts;

import java.util.Optional;
import java.util.OptionalDouble;
import leadlamp.record.Where;

/**
 * The one limit that applies to a value, and whose it is.
 *
 * @param least  least allowed, SI
 * @param most   most allowed, SI
 * @param whose  the supplier's, the sheet's or the trade's
 * @param reason whether it is only a reason to look, not a limit
 * @param basis  where the number comes from: the sheet's name, or the basis written beside a trade number
 * @param note   what the reader must know: `when` or `state` was taken to suit ...; may be empty
 * @param where  its line in the sheet or the record; absent for a trade number
 */
public record LimitUsed(OptionalDouble least, OptionalDouble most, Whose whose, boolean reason, String basis,
        String note, Optional<Where> where) {

    /** Whose number it is. */
    public enum Whose {
        SUPPLIER, SHEET, TRADE
    }
}
