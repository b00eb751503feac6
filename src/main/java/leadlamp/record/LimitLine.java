package leadlamp.record;

import java.util.Map;
import java.util.Optional;
import leadlamp.quantity.Written;

/**
 * One line of limits: of the sheet, of a supplier (in a part's entry), or of the trade (limits.yaml).
 *
 * @param quantity the quantity limited
 * @param at       place it is narrowed to; empty where it holds everywhere
 * @param standard the size meant; a size, not a limit
 * @param least    least allowed; a share where {@code times} is there
 * @param most     most allowed; likewise
 * @param times    the quantity that the shares are of; empty where there is none
 * @param when     cold, hot, idle, new, in service; empty where it always holds
 * @param where    words of the record or sheet that must hold, as `flywheel material` to `steel`
 * @param asides   speed, oil temperature, span, at radius ...: what the limit is given at
 * @param reason   whether it is only a reason to look
 * @param basis    where the number comes from; for the trade's its written basis
 * @param line     its line
 */
public record LimitLine(String quantity, String at, Optional<Written> standard, Optional<Written> least,
        Optional<Written> most, String times, String when, Map<String, String> where, Map<String, String> asides,
        boolean reason, String basis, Where line) {
}
