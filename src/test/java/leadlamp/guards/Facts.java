package leadlamp.guards;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Names of the facts' fields that the rule language can bear. */
final class Facts {
    private static final Set<String> KEPT = Set.of("is", "from", "in", "not", "contains", "matches", "bind", "memberOf",
            "soundslike", "str", "exists", "or", "and", "over", "eval", "this");

    private static final String INDEXES = "alphaIndexedBy betaIndexedBy";

    private Facts() {
    }

    static List<String> faults(Class<?>... facts) {
        List<String> faults = new ArrayList<>();
        for (Class<?> fact : facts) {
            for (RecordComponent component : fact.getRecordComponents()) {
                String name = component.getName();
                String title = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
                if (INDEXES.contains(name) || INDEXES.contains(title)) {
                    faults.add(fact.getSimpleName() + "." + name + " is a part of alphaIndexedBy or betaIndexedBy, which the generator of "
                            + "models looks for");
                    continue;
                }
                if (KEPT.contains(name)) {
                    faults.add(fact.getSimpleName() + "." + name + " is a word that the rule language keeps for itself");
                }
            }
        }
        return faults;
    }
}
