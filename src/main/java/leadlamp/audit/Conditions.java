package leadlamp.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import leadlamp.facts.Condition;
import leadlamp.facts.Fact;
import leadlamp.record.Where;
import org.kie.api.runtime.rule.Match;

/** Where rules of conditions put what holds: `conditions.holds( drools.getMatch() );`. */
public final class Conditions {
    private final Map<String, TreeSet<Where>> holding = new TreeMap<>();

    /** Takes what a rule matched. Rules of one condition may match more than once; its lines are all of theirs. */
    public void holds(Match match) {
        String name = match.getRule().getName();
        int way = name.indexOf(": ");
        TreeSet<Where> places = holding.computeIfAbsent(way < 0 ? name : name.substring(0, way), n -> new TreeSet<>());
        for (Object object : match.getObjects()) {
            if (object instanceof Fact fact) {
                places.addAll(fact.places());
            }
        }
    }

    /** All that hold, by name. */
    public List<Condition> all() {
        List<Condition> all = new ArrayList<>();
        holding.forEach((name, places) -> all.add(new Condition(name, List.copyOf(places))));
        return List.copyOf(all);
    }
}
