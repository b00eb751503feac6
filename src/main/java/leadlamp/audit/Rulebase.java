package leadlamp.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadlamp.facts.Ask;
import leadlamp.facts.Condition;
import leadlamp.facts.Fact;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/**
 * The rules. An audit loads only the rules that can fire on its facts, and none of the rule engine where no rule can: the
 * whole rulebase would cost a second to build and be no quicker to run. A loaded set of rules is kept for the next audit that
 * wants the same; each audit has a session of its own. Threads may share one.
 */
public final class Rulebase {
    private static final int KEPT = 32;
    private static final Map<String, String> QUIET = Map.of("slf4j.internal.verbosity", "ERROR",
            "slf4j.provider", "org.slf4j.helpers.NOP_FallbackServiceProvider");

    private final RulebaseFile file;
    private final Map<List<Integer>, KieBase> loaded = new LinkedHashMap<>(KEPT, 0.75f, true);

    private Rulebase(RulebaseFile file) {
        this.file = file;
    }

    private static final class Compiled {
        private static final Rulebase ONE = new Rulebase(RulebaseFile.compiled());
    }

    /** The rules compiled with the project. */
    public static Rulebase compiled() {
        return Compiled.ONE;
    }

    /** The rules of the past compiled with the project. */
    static Rulebase past() {
        return new Rulebase(RulebaseFile.compiled(PastFile.RULES));
    }

    /** The given rules. */
    public static Rulebase of(List<RulebaseRule> rules) {
        return new Rulebase(RulebaseFile.of(rules));
    }

    /**
     * Has the rule engine load itself, by a rule of each sort on a fact or two, while another thread still reads the record.
     * Nothing rests on it but the time that a first audit takes.
     */
    public static void warmUp() {
        List<Fact> facts = List.of(new Ask("warm", "", "engine"), new Condition("up", List.of()));
        List<RulebaseRule.Match> there = List.of(
                new RulebaseRule.Match("Ask", "", List.of(new RulebaseRule.Test.Says("check", List.of("warm")),
                        new RulebaseRule.Test.Name("$place", "at"))),
                new RulebaseRule.Match("Condition", "", List.of(new RulebaseRule.Test.Says("name", List.of("up", "down")),
                        new RulebaseRule.Test.Same("at", "$place"), new RulebaseRule.Test.Tie("near", "$place"))),
                new RulebaseRule.Match("Verdict", "", List.of(new RulebaseRule.Test.Flag("below"))));
        List<RulebaseRule> rules = List.of(new RulebaseRule("warm", "up", false, List.of(
                new RulebaseRule.Clause(RulebaseRule.Sort.THERE, there.subList(0, 1)),
                new RulebaseRule.Clause(RulebaseRule.Sort.THERE, there.subList(1, 2)),
                new RulebaseRule.Clause(RulebaseRule.Sort.NOT, there.subList(2, 3)))));
        fire(base(rules), facts, "findings", new Findings());
    }

    /** What the rules of checks find, in our own order. Conditions are among the facts. */
    public List<Finding> run(Collection<Ask> asks, Collection<? extends Fact> facts) {
        List<Fact> all = new ArrayList<>(asks.size() + facts.size());
        all.addAll(asks);
        all.addAll(facts);
        Findings findings = new Findings();
        fire(RulebaseRule.Stage.CHECK, all, "findings", findings);
        return findings.all();
    }

    /** Which named conditions hold, by name. This is run to its end before any check. */
    public List<Condition> conditions(Collection<? extends Fact> facts) {
        Conditions holding = new Conditions();
        fire(RulebaseRule.Stage.CONDITION, facts, "conditions", holding);
        return holding.all();
    }

    /** Which signs of the past are shown and which are set aside: run to its end before any event is weighed. */
    Marks signs(Collection<? extends Fact> facts) {
        Marks marks = new Marks();
        fire(RulebaseRule.Stage.SIGN, facts, "marks", marks);
        return marks;
    }

    /** What speaks for which event, and what against it. */
    Marks events(Collection<? extends Fact> facts) {
        Marks marks = new Marks();
        fire(RulebaseRule.Stage.EVENT, facts, "marks", marks);
        return marks;
    }

    private void fire(RulebaseRule.Stage stage, Collection<? extends Fact> facts, String global, Object into) {
        RulebaseFile.Chosen chosen = file.canFire(stage, facts);
        if (!chosen.rules().isEmpty()) {
            fire(loaded(chosen.rules()), chosen.facts(), global, into);
        }
    }

    private KieBase loaded(List<Integer> rules) {
        synchronized (loaded) {
            KieBase base = loaded.get(rules);
            if (base != null) {
                return base;
            }
        }
        KieBase base = base(file.rules(rules));
        synchronized (loaded) {
            loaded.put(rules, base);
            if (loaded.size() > KEPT) {
                loaded.remove(loaded.keySet().iterator().next());
            }
        }
        return base;
    }

    private static void fire(KieBase base, Collection<? extends Fact> facts, String global, Object into) {
        KieSession session = base.newKieSession();
        try {
            session.setGlobal(global, into);
            for (Fact fact : facts) {
                session.insert(fact);
            }
            session.fireAllRules();
        } finally {
            session.dispose();
        }
    }

    private static KieBase base(List<RulebaseRule> rules) {
        // Drools asks for a logger before it does anything: spare it the search for one, and the notice that there is none.
        for (Map.Entry<String, String> quiet : QUIET.entrySet()) {
            if (System.getProperty(quiet.getKey()) == null) {
                System.setProperty(quiet.getKey(), quiet.getValue());
            }
        }
        return RulebaseModels.base(rules);
    }
}
