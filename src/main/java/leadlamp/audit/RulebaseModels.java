package leadlamp.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leadlamp.facts.Fact;
import org.drools.core.BaseConfigurationFactories;
import org.drools.core.impl.KnowledgeBaseImpl;
import org.drools.kiesession.rulebase.InternalKnowledgeBase;
import org.drools.kiesession.rulebase.SessionsAwareKnowledgeBase;
import org.drools.model.Condition;
import org.drools.model.Consequence;
import org.drools.model.Constraint;
import org.drools.model.Drools;
import org.drools.model.Global;
import org.drools.model.Index;
import org.drools.model.Index.ConstraintType;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.consequences.ConsequenceImpl;
import org.drools.model.constraints.SingleConstraint1;
import org.drools.model.constraints.SingleConstraint2;
import org.drools.model.functions.Block2;
import org.drools.model.functions.Function1;
import org.drools.model.functions.HashedExpression;
import org.drools.model.functions.Predicate1;
import org.drools.model.functions.Predicate2;
import org.drools.model.impl.DeclarationImpl;
import org.drools.model.impl.GlobalImpl;
import org.drools.model.impl.ModelImpl;
import org.drools.model.impl.RuleImpl;
import org.drools.model.index.AlphaIndexImpl;
import org.drools.model.index.BetaIndexImpl;
import org.drools.model.patterns.CompositePatterns;
import org.drools.model.patterns.ExistentialPatternImpl;
import org.drools.model.patterns.PatternImpl;
import org.drools.model.view.BindViewItem1;
import org.drools.modelcompiler.KiePackagesBuilder;
import org.drools.modelcompiler.consequence.DroolsImpl;
import org.kie.api.KieBaseConfiguration;
import org.kie.api.conf.ConfigurationKey;
import org.kie.api.conf.OptionKey;
import org.kie.api.conf.OptionsConfiguration;
import org.kie.internal.builder.KnowledgeBuilderConfiguration;
import org.kie.internal.builder.conf.KnowledgeBuilderOption;
import org.kie.internal.builder.conf.MultiValueKieBuilderOption;
import org.kie.internal.builder.conf.PropertySpecificOption;
import org.kie.internal.builder.conf.SingleValueKieBuilderOption;
import org.kie.internal.conf.CompositeBaseConfiguration;
import org.kie.internal.utils.ChainedProperties;

/**
 * Rules as the model that Drools runs. The usual way has it write classes for each constraint of each rule, some thirty a
 * check; a rule here says so little that one class a sort of constraint serves all of them.
 *
 * <p>Each constraint carries a text that is the same for the same constraint, by which Drools shares its nodes.
 */
final class RulebaseModels {
    private static final String PACKAGE = "leadlamp.rules";

    private final Global<Findings> findings = new GlobalImpl<>(Findings.class, PACKAGE, "findings");
    private final Global<Conditions> conditions = new GlobalImpl<>(Conditions.class, PACKAGE, "conditions");
    private final Global<Marks> marks;

    /** An audit that reads nothing of the past is spared what only that wants. */
    private RulebaseModels(boolean past) {
        marks = past ? new GlobalImpl<>(Marks.class, PACKAGE, "marks") : null;
    }

    static InternalKnowledgeBase base(List<RulebaseRule> rules) {
        boolean past = !rules.isEmpty() && rules.get(0).stage().compareTo(RulebaseRule.Stage.CONDITION) > 0;
        RulebaseModels models = new RulebaseModels(past);
        ModelImpl model = new ModelImpl(PACKAGE);
        model.addGlobal(models.findings);
        model.addGlobal(models.conditions);
        if (past) {
            model.addGlobal(models.marks);
        }
        for (RulebaseRule rule : rules) {
            model.addRule(models.rule(rule));
        }
        KnowledgeBaseImpl base = new KnowledgeBaseImpl(PACKAGE, Usual.SETTINGS);
        base.kBaseInternal_addPackages(
                new KiePackagesBuilder(Usual.SETTINGS, new FactsNeverChange(), List.of(model)).build().getKiePackages(), List.of());
        return new SessionsAwareKnowledgeBase(base);
    }

    /** The loader of our classes; the system's where they lie among Java's own and have none. */
    private static ClassLoader loader() {
        ClassLoader own = RulebaseModels.class.getClassLoader();
        return own == null ? ClassLoader.getSystemClassLoader() : own;
    }

    /** The settings that rules run with. */
    static KieBaseConfiguration settings() {
        return Usual.SETTINGS;
    }

    /**
     * Drools' own settings, put together once, and without the search for files of settings and for classes written while it
     * runs: we have neither, and the search takes longer than the rules do.
     */
    private static final class Usual {
        private static final CompositeBaseConfiguration SETTINGS = new CompositeBaseConfiguration(new ChainedProperties(),
                loader(), BaseConfigurationFactories.baseConf, BaseConfigurationFactories.ruleConf);
    }

    private Rule rule(RulebaseRule rule) {
        Map<String, Variable<String>> variables = new HashMap<>();
        List<Condition> clauses = new ArrayList<>(rule.clauses().size());
        int number = 0;
        for (RulebaseRule.Clause clause : rule.clauses()) {
            List<Condition> patterns = new ArrayList<>(clause.matches().size());
            for (RulebaseRule.Match match : clause.matches()) {
                patterns.add(pattern(match, number++, variables));
            }
            clauses.add(clause(clause.sort(), patterns));
        }
        Consequence then = switch (rule.stage()) {
            case CHECK -> new ConsequenceImpl(new Find().asBlockN(), new Variable<?>[] {findings}, true, false, "java");
            case CONDITION -> new ConsequenceImpl(new Hold().asBlockN(), new Variable<?>[] {conditions}, true, false, "java");
            default -> new ConsequenceImpl(new Tell().asBlockN(), new Variable<?>[] {marks}, true, false, "java");
        };
        return new RuleImpl(PACKAGE, rule.name(), null,
                new CompositePatterns(Condition.Type.AND, clauses, Map.of(RuleImpl.DEFAULT_CONSEQUENCE_NAME, then)));
    }

    private static Condition clause(RulebaseRule.Sort sort, List<Condition> patterns) {
        Condition all = patterns.size() == 1 ? patterns.get(0) : new CompositePatterns(Condition.Type.AND, patterns);
        return switch (sort) {
            case THERE -> all;
            case NOT -> new ExistentialPatternImpl(all, Condition.Type.NOT);
            case EXISTS -> new ExistentialPatternImpl(all, Condition.Type.EXISTS);
        };
    }

    private static PatternImpl<Fact> pattern(RulebaseRule.Match match, int number, Map<String, Variable<String>> variables) {
        @SuppressWarnings("unchecked")
        Class<Fact> type = (Class<Fact>) RulebaseFields.type(RulebaseFields.fact(match.fact()));
        Variable<Fact> fact = new DeclarationImpl<>(type, match.bound().isEmpty() ? "GENERATED_" + number : match.bound());
        PatternImpl<Fact> pattern = new PatternImpl<>(fact);
        for (RulebaseRule.Test test : match.tests()) {
            if (test instanceof RulebaseRule.Test.Says says) {
                int field = RulebaseFields.word(says.field());
                if (says.words().size() == 1) {
                    Is is = new Is(match.fact(), field, says.words().get(0));
                    pattern.addConstraint(one(fact, is, is.getExpressionHash(), new AlphaIndexImpl<>(String.class,
                            ConstraintType.EQUAL, field, new Function1.Impl<>(new Read(match.fact(), field)), is.word)));
                } else {
                    In in = new In(match.fact(), field, says.words().toArray(new String[0]));
                    pattern.addConstraint(one(fact, in, in.getExpressionHash(), null));
                }
            } else if (test instanceof RulebaseRule.Test.Flag flag) {
                So so = new So(match.fact(), RulebaseFields.flag(flag.flag()));
                pattern.addConstraint(one(fact, so, so.getExpressionHash(), null));
            } else if (test instanceof RulebaseRule.Test.Same same) {
                int field = RulebaseFields.word(same.field());
                SameAs as = new SameAs(match.fact(), field);
                pattern.addConstraint(two(fact, variables.get(same.variable()), as, as.getExpressionHash(),
                        new BetaIndexImpl<>(String.class, ConstraintType.EQUAL, field,
                                new Function1.Impl<>(new Read(match.fact(), field)), new Function1.Impl<>(new Itself()),
                                String.class)));
            } else if (test instanceof RulebaseRule.Test.Tie tie) {
                Tied tied = new Tied(match.fact(), RulebaseFields.tie(tie.tie()));
                pattern.addConstraint(two(fact, variables.get(tie.variable()), tied, tied.getExpressionHash(), null));
            } else if (test instanceof RulebaseRule.Test.Name named) {
                Variable<String> variable = new DeclarationImpl<>(String.class, named.variable());
                variables.put(named.variable(), variable);
                pattern.addBinding(new BindViewItem1<>(variable,
                        new Function1.Impl<>(new Read(match.fact(), RulebaseFields.word(named.field()))), fact, null, null));
            }
        }
        return pattern;
    }

    private static Constraint one(Variable<Fact> fact, Predicate1<Fact> predicate, String text, Index index) {
        SingleConstraint1<Fact> constraint = new SingleConstraint1<>(text, fact, new Predicate1.Impl<>(predicate));
        constraint.setIndex(index);
        return constraint;
    }

    private static Constraint two(Variable<Fact> fact, Variable<String> word, Predicate2<Fact, String> predicate, String text,
            Index index) {
        SingleConstraint2<Fact, String> constraint = new SingleConstraint2<>(text + " " + word.getName(), fact, word,
                new Predicate2.Impl<>(predicate));
        constraint.setIndex(index);
        return constraint;
    }

    /** Spares Drools the watch over each field of each fact: none ever changes. It asks this configuration for nothing else. */
    private static final class FactsNeverChange implements KnowledgeBuilderConfiguration {
        @Override
        @SuppressWarnings("unchecked")
        public <C extends SingleValueKieBuilderOption> C getOption(OptionKey<C> option) {
            return option.equals(PropertySpecificOption.KEY) ? (C) PropertySpecificOption.DISABLED : null;
        }

        @Override
        public <C extends KnowledgeBuilderOption> void setOption(C option) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void makeImmutable() {
            // It is.
        }

        @Override
        public ClassLoader getClassLoader() {
            return loader();
        }

        @Override
        public <X extends OptionsConfiguration<KnowledgeBuilderOption, SingleValueKieBuilderOption,
                MultiValueKieBuilderOption>> X as(ConfigurationKey<X> kind) {
            throw new UnsupportedOperationException();
        }

        @Override
        public boolean setProperty(String name, String value) {
            return false;
        }

        @Override
        public String getProperty(String name) {
            return null;
        }
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

    /** What every rule of the past does. */
    private record Tell() implements Block2<Drools, Marks>, HashedExpression {
        @Override
        public void execute(Drools drools, Marks marks) {
            marks.told(((DroolsImpl) drools).asKnowledgeHelper().getMatch());
        }

        @Override
        public String getExpressionHash() {
            return "tell";
        }
    }
}
