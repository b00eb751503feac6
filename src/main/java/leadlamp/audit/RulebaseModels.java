package leadlamp.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leadlamp.facts.Fact;
import org.drools.kiesession.rulebase.InternalKnowledgeBase;
import org.drools.model.Drools;
import org.drools.model.Global;
import org.drools.model.Index.ConstraintType;
import org.drools.model.PatternDSL;
import org.drools.model.Rule;
import org.drools.model.RuleItemBuilder;
import org.drools.model.Variable;
import org.drools.model.functions.Block2;
import org.drools.model.functions.Function1;
import org.drools.model.functions.HashedExpression;
import org.drools.model.functions.Predicate1;
import org.drools.model.functions.Predicate2;
import org.drools.model.impl.ModelImpl;
import org.drools.model.view.ViewItemBuilder;
import org.drools.modelcompiler.KieBaseBuilder;
import org.drools.modelcompiler.consequence.DroolsImpl;

/**
 * Rules as the model that Drools runs. The usual way has it write classes for each constraint of each rule, some thirty a
 * check; a rule here says so little that one class a sort of constraint serves all of them.
 *
 * <p>Each constraint carries a text that is the same for the same constraint, by which Drools shares its nodes.
 */
final class RulebaseModels {
    private static final String PACKAGE = "leadlamp.rules";

    private final Global<Findings> findings = PatternDSL.globalOf(Findings.class, PACKAGE, "findings");
    private final Global<Conditions> conditions = PatternDSL.globalOf(Conditions.class, PACKAGE, "conditions");

    private RulebaseModels() {
    }

    static InternalKnowledgeBase base(List<RulebaseRule> rules) {
        RulebaseModels models = new RulebaseModels();
        ModelImpl model = new ModelImpl(PACKAGE);
        model.addGlobal(models.findings);
        model.addGlobal(models.conditions);
        for (RulebaseRule rule : rules) {
            model.addRule(models.rule(rule));
        }
        return KieBaseBuilder.createKieBaseFromModel(model);
    }

    private Rule rule(RulebaseRule rule) {
        Map<String, Variable<String>> variables = new HashMap<>();
        RuleItemBuilder<?>[] items = new RuleItemBuilder<?>[rule.clauses().size() + 1];
        int at = 0;
        int pattern = 0;
        for (RulebaseRule.Clause clause : rule.clauses()) {
            List<PatternDSL.PatternDef<Fact>> matches = new ArrayList<>();
            for (RulebaseRule.Match match : clause.matches()) {
                matches.add(pattern(match, pattern++, variables));
            }
            items[at++] = item(clause.sort(), matches);
        }
        items[at] = rule.sets() ? PatternDSL.on(conditions).execute(new Hold()) : PatternDSL.on(findings).execute(new Find());
        return PatternDSL.rule(PACKAGE, rule.name()).build(items);
    }

    private static RuleItemBuilder<?> item(RulebaseRule.Sort sort, List<PatternDSL.PatternDef<Fact>> matches) {
        PatternDSL.PatternDef<Fact> first = matches.get(0);
        if (sort == RulebaseRule.Sort.THERE) {
            return first;
        }
        ViewItemBuilder<?>[] rest = matches.subList(1, matches.size()).toArray(new ViewItemBuilder<?>[0]);
        return sort == RulebaseRule.Sort.NOT ? PatternDSL.not(first, rest) : PatternDSL.exists(first, rest);
    }

    private static PatternDSL.PatternDef<Fact> pattern(RulebaseRule.Match match, int number,
            Map<String, Variable<String>> variables) {
        @SuppressWarnings("unchecked")
        Class<Fact> type = (Class<Fact>) RulebaseFields.type(RulebaseFields.fact(match.fact()));
        String name = match.bound().isEmpty() ? "GENERATED_" + number : match.bound();
        PatternDSL.PatternDef<Fact> pattern = PatternDSL.pattern(PatternDSL.declarationOf(type, name));
        for (RulebaseRule.Test test : match.tests()) {
            if (test instanceof RulebaseRule.Test.Says says) {
                int field = RulebaseFields.word(says.field());
                if (says.words().size() == 1) {
                    Is is = new Is(match.fact(), field, says.words().get(0));
                    pattern.expr(is.getExpressionHash(), is, PatternDSL.alphaIndexedBy(String.class, ConstraintType.EQUAL,
                            field, new Read(match.fact(), field), is.word));
                } else {
                    In in = new In(match.fact(), field, says.words().toArray(new String[0]));
                    pattern.expr(in.getExpressionHash(), in);
                }
            } else if (test instanceof RulebaseRule.Test.Flag flag) {
                So so = new So(match.fact(), RulebaseFields.flag(flag.flag()));
                pattern.expr(so.getExpressionHash(), so);
            } else if (test instanceof RulebaseRule.Test.Same same) {
                int field = RulebaseFields.word(same.field());
                SameAs as = new SameAs(match.fact(), field);
                pattern.expr(as.getExpressionHash() + same.variable(), variables.get(same.variable()), as,
                        PatternDSL.betaIndexedBy(String.class, ConstraintType.EQUAL, field, new Read(match.fact(), field),
                                new Itself(), String.class));
            } else if (test instanceof RulebaseRule.Test.Tie tie) {
                Tied tied = new Tied(match.fact(), RulebaseFields.tie(tie.tie()));
                pattern.expr(tied.getExpressionHash() + tie.variable(), variables.get(tie.variable()), tied);
            } else if (test instanceof RulebaseRule.Test.Name named) {
                Variable<String> variable = PatternDSL.declarationOf(String.class, named.variable());
                variables.put(named.variable(), variable);
                pattern.bind(variable, new Read(match.fact(), RulebaseFields.word(named.field())));
            }
        }
        return pattern;
    }

    /** The word in a field. */
    private record Read(String fact, int field) implements Function1<Fact, String>, HashedExpression {
        @Override
        public String apply(Fact given) {
            return RulebaseFields.read(given, field);
        }

        @Override
        public String getExpressionHash() {
            return "read " + fact + " " + field;
        }
    }

    /** A word bound before, as it is. */
    private record Itself() implements Function1<String, String>, HashedExpression {
        @Override
        public String apply(String word) {
            return word;
        }

        @Override
        public String getExpressionHash() {
            return "itself";
        }
    }

    /** A field holds this word. */
    private record Is(String fact, int field, String word) implements Predicate1<Fact>, HashedExpression {
        @Override
        public boolean test(Fact given) {
            return word.equals(RulebaseFields.read(given, field));
        }

        @Override
        public String getExpressionHash() {
            return "is " + fact + " " + field + " " + word;
        }
    }

    /** A field holds one of these words. */
    private record In(String fact, int field, String[] words) implements Predicate1<Fact>, HashedExpression {
        @Override
        public boolean test(Fact given) {
            String says = RulebaseFields.read(given, field);
            for (String word : words) {
                if (word.equals(says)) {
                    return true;
                }
            }
            return false;
        }

        @Override
        public String getExpressionHash() {
            return "in " + fact + " " + field + " " + String.join("|", words);
        }
    }

    /** A flag is up. */
    private record So(String fact, int flag) implements Predicate1<Fact>, HashedExpression {
        @Override
        public boolean test(Fact given) {
            return RulebaseFields.holds(given, flag);
        }

        @Override
        public String getExpressionHash() {
            return "so " + fact + " " + flag;
        }
    }

    /** A field holds the word bound before. */
    private record SameAs(String fact, int field) implements Predicate2<Fact, String>, HashedExpression {
        @Override
        public boolean test(Fact given, String word) {
            return word.equals(RulebaseFields.read(given, field));
        }

        @Override
        public String getExpressionHash() {
            return "same " + fact + " " + field;
        }
    }

    /** The fact is tied to the place bound before. */
    private record Tied(String fact, int tie) implements Predicate2<Fact, String>, HashedExpression {
        @Override
        public boolean test(Fact given, String place) {
            return RulebaseFields.tied(given, tie, place);
        }

        @Override
        public String getExpressionHash() {
            return "tied " + fact + " " + tie;
        }
    }

    /** What every rule of a check does. */
    private record Find() implements Block2<Drools, Findings>, HashedExpression {
        @Override
        public void execute(Drools drools, Findings findings) {
            findings.found(((DroolsImpl) drools).asKnowledgeHelper().getMatch());
        }

        @Override
        public String getExpressionHash() {
            return "find";
        }
    }

    /** What every rule of a condition does. */
    private record Hold() implements Block2<Drools, Conditions>, HashedExpression {
        @Override
        public void execute(Drools drools, Conditions conditions) {
            conditions.holds(((DroolsImpl) drools).asKnowledgeHelper().getMatch());
        }

        @Override
        public String getExpressionHash() {
            return "hold";
        }
    }
}
