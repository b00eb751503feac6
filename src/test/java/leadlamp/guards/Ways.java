package leadlamp.guards;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import leadlamp.audit.Case;
import leadlamp.audit.CaseRunner;
import leadlamp.audit.Check;
import leadlamp.audit.ConditionPage;
import leadlamp.audit.Expected;
import leadlamp.audit.RulesFolder;
import leadlamp.audit.Way;

/** Every way has a case that fires it, and a near miss: one that changes what it reads and does not fire it. */
final class Ways {
    private Ways() {
    }

    static List<String> faults(RulesFolder folder, CaseRunner runner) {
        Map<String, List<Case>> byPage = new HashMap<>();
        folder.cases().forEach(c -> byPage.computeIfAbsent(c.of(), p -> new ArrayList<>()).add(c));
        List<String> faults = new ArrayList<>();
        for (Check check : folder.checks()) {
            List<Case> cases = byPage.getOrDefault(check.id(), List.of());
            for (Way way : check.ways()) {
                boolean fires = false;
                boolean misses = false;
                for (Case example : cases) {
                    boolean here = false;
                    boolean silent = false;
                    for (Expected expected : example.expect().values()) {
                        boolean found = expected instanceof Expected.FoundBy by && by.ways().contains(way.name());
                        here |= found;
                        silent |= !found;
                    }
                    fires |= here;
                    if (!here && silent) {
                        Set<String> changed = runner.run(example).changes();
                        Set<String> read = new TreeSet<>(way.needs());
                        read.addAll(way.heeds());
                        read.addAll(way.applies().keySet());
                        misses |= read.stream().anyMatch(w -> w.startsWith("any ") ? !changed.isEmpty() : changed.contains(w));
                    }
                }
                if (!fires) {
                    faults.add(check.id() + ": no case is found by " + way.name());
                }
                if (!misses) {
                    faults.add(check.id() + ": " + way.name() + " has no near miss");
                }
            }
        }
        for (ConditionPage page : folder.conditions()) {
            boolean holds = false;
            boolean not = false;
            for (Case example : byPage.getOrDefault(page.name(), List.of())) {
                for (Expected expected : example.expect().values()) {
                    holds |= expected instanceof Expected.Holds h && h.so();
                    not |= expected instanceof Expected.Holds h && !h.so();
                }
            }
            if (!holds || !not) {
                faults.add(page.name() + ": " + (holds ? "no case in which it does not hold" : "no case in which it holds"));
            }
        }
        return faults;
    }
}
