package leadlamp.audit;

import java.util.List;
import java.util.Map;
import leadlamp.facts.Ask;
import leadlamp.facts.Fact;

/**
 * What one rule found at one place.
 *
 * @param ask      what was asked, where
 * @param way      the way of the check
 * @param evidence the facts that matched, in our own order
 * @param bound    names that the rule binds, as text: `form` to hollow
 */
public record Finding(Ask ask, String way, List<Fact> evidence, Map<String, String> bound) {
}
