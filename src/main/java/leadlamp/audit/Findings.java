package leadlamp.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import leadlamp.facts.Ask;
import leadlamp.facts.Fact;
import leadlamp.record.Where;
import org.kie.api.runtime.rule.Match;

/** Where rules put what they find: `findings.found( drools.getMatch() );`. The facts that matched are the evidence. */
public final class Findings {
    private static final Comparator<Fact> BY_LINE = Comparator.comparing(Findings::first)
            .thenComparing(RulebaseFields::fact).thenComparing(Object::toString);
    private static final Comparator<Finding> OUR_ORDER = Comparator.comparing((Finding finding) -> finding.ask().check())
            .thenComparing(finding -> finding.ask().at()).thenComparing(finding -> finding.ask().of())
            .thenComparing(Finding::way).thenComparing(Findings::lines).thenComparing(finding -> finding.bound().toString())
            .thenComparing(finding -> finding.evidence().toString());
    private static final Where NOWHERE = new Where("", 0, 0);

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
        evidence.sort(BY_LINE);
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
        sorted.sort(OUR_ORDER);
        List<Finding> once = new ArrayList<>();
        for (Finding finding : sorted) {
            if (once.isEmpty() || !once.get(once.size() - 1).equals(finding)) {
                once.add(finding);
            }
        }
        return List.copyOf(once);
    }

    private static Where first(Fact fact) {
        return fact.places().isEmpty() ? NOWHERE : fact.places().get(0);
    }

    private static String lines(Finding finding) {
        StringBuilder lines = new StringBuilder();
        for (Fact fact : finding.evidence()) {
            Where where = first(fact);
            lines.append(where.file()).append(String.format(Locale.ROOT, ":%09d:%09d ", where.line(), where.column()));
        }
        return lines.toString();
    }
}
