package leadlamp.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import leadlamp.record.Build;

/** Facts put in by chance: what comes of it must be the same to the last letter. */
public final class Shuffling {
    private static final int TIMES = 3;

    private Shuffling() {
    }

    /** What differs, one line each. */
    public static List<String> faults(RulesFolder folder, Build build) {
        List<String> as = lines(folder.auditor().audit(build));
        List<String> faults = new ArrayList<>();
        for (int seed = 1; seed <= TIMES; seed++) {
            Random chance = new Random(seed);
            List<String> now = lines(folder.auditor().audit(build, facts -> {
                List<leadlamp.facts.Fact> shuffled = new ArrayList<>(facts);
                Collections.shuffle(shuffled, chance);
                return shuffled;
            }));
            for (int i = 0; i < Math.max(as.size(), now.size()); i++) {
                String one = i < as.size() ? as.get(i) : "nothing";
                String other = i < now.size() ? now.get(i) : "nothing";
                if (!one.equals(other)) {
                    faults.add("shuffle " + seed + ": " + other + "\n    was " + one);
                }
            }
        }
        return faults;
    }

    private static List<String> lines(Audit audit) {
        List<String> lines = new ArrayList<>();
        audit.answers().forEach(a -> lines.add(a.ask() + " " + a + " " + audit.lastChance(a)));
        audit.conditions().forEach(c -> lines.add(c.toString()));
        return lines;
    }
}
