package leadlamp.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlamp.facts.Ask;
import leadlamp.facts.Fact;
import leadlamp.record.Where;
import org.kie.api.runtime.rule.Match;

/** Where rules put what they find: `findings.found( drools.getMatch() );`. The facts that matched are the evidence. */
public final class Findings {
    private final List<Finding> found = new ArrayList<>();

    /** Takes what a rule matched. */
    public void found(Match match) {
        Ask asked = null;
        List<Fact> evidence = new ArrayList<>();
        for (Object object : match.getObjects()) {
            if (object instanceof Ask ask) {
                asked = ask;
            } else if (object instanceof Fact fact) {
                evidence.add(fact);
            }
        }
        String name = match.getRule().getName();
        if (asked == null) {
            throw new IllegalStateException("The rule \"" + name + "\" does not begin with its Ask.");
        }
        evidence.sort(Findings::compare);
        found.add(new Finding(asked, name.substring(name.indexOf(": ") + 2), List.copyOf(evidence), bound(match)));
    }

    private static Map<String, String> bound(Match match) {
        Map<String, String> bound = new TreeMap<>();
        for (String name : match.getDeclarationIds()) {
            if (name.startsWith("$") && match.getDeclarationValue(name) instanceof String word) {
                bound.put(name.substring(1), word);
            }
        }
        return bound;
    }

    /** All that was found, in our own order and each once, whatever order the rules fired in. */
    public List<Finding> all() {
        List<Finding> sorted = new ArrayList<>(found);
        sorted.sort(Findings::compare);
        List<Finding> once = new ArrayList<>();
        for (Finding finding : sorted) {
            if (once.isEmpty() || compare(once.get(once.size() - 1), finding) != 0) {
                once.add(finding);
            }
        }
        return List.copyOf(once);
    }

    private static int compare(Finding one, Finding other) {
        int order = one.ask().check().compareTo(other.ask().check());
        order = order != 0 ? order : one.ask().at().compareTo(other.ask().at());
        order = order != 0 ? order : one.ask().of().compareTo(other.ask().of());
        order = order != 0 ? order : one.way().compareTo(other.way());
        for (int i = 0; order == 0 && i < one.evidence().size() && i < other.evidence().size(); i++) {
            order = compare(one.evidence().get(i), other.evidence().get(i));
        }
        order = order != 0 ? order : Integer.compare(one.evidence().size(), other.evidence().size());
        return order != 0 || one.bound().equals(other.bound()) ? order : one.bound().toString().compareTo(other.bound().toString());
    }

    /** By line; then by kind of fact and by its words. What a fact is as text comes last, for it is dear at the first call. */
    private static int compare(Fact one, Fact other) {
        if (one == other) {
            return 0;
        }
        int order = compare(one.places(), other.places());
        int type = RulebaseFields.fact(one);
        order = order != 0 ? order : Integer.compare(type, RulebaseFields.fact(other));
        if (order == 0) {
            for (String field : RulebaseFields.words(RulebaseFields.facts().get(type))) {
                int number = RulebaseFields.word(field);
                order = order != 0 ? order : RulebaseFields.read(one, number).compareTo(RulebaseFields.read(other, number));
            }
        }
        return order != 0 || one.equals(other) ? order : one.toString().compareTo(other.toString());
    }

    private static int compare(List<Where> one, List<Where> other) {
        for (int i = 0; i < one.size() && i < other.size(); i++) {
            int order = one.get(i).compareTo(other.get(i));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(one.size(), other.size());
    }
}
