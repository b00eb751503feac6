package leadlamp.words;

import java.util.List;
import java.util.Map;

/**
 * A step of the work.
 *
 * @param after    steps that must be done first
 * @param afterFor layout word (`belt drive`) to steps that must be done first there
 * @param closes   what can no longer be seen or measured: quantities, parts, signs
 * @param reach    strip level to get it back
 * @param onlyFor  layout word that has the step; empty where every engine has it
 * @param dueAll   whether everything open is due before it
 */
public record Step(String name, String gloss, List<String> after, Map<String, List<String>> afterFor,
        List<String> closes, int reach, String onlyFor, boolean dueAll, boolean last) {
}
