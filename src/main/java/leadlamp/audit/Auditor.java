package leadlamp.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import leadlamp.derive.Derivation;
import leadlamp.facts.Ask;
import leadlamp.facts.Condition;
import leadlamp.facts.Fact;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.judge.Judge;
import leadlamp.judge.TradeLimits;
import leadlamp.record.Build;
import leadlamp.record.EngineSheet;
import leadlamp.record.LimitLine;
import leadlamp.record.Problem;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;

/**
 * Audits builds: from statements to facts, from readings to what follows from them, each value against its limit, the
 * named conditions, the questions, what the rules find, and the answers. What it knows is loaded once and serves many
 * records; threads may share one.
 */
public final class Auditor {
    private static final String ANY_PART = Need.ANY_PART + " ";

    private final Vocabulary words;
    private final List<Check> checks;
    private final Map<String, ConditionPage> conditions = new HashMap<>();
    private final Rulebase rules;
    private final TradeLimits trade;
    private final Supplier<Past> past;
    private final Map<String, Optional<Need>> needs;
    private final Wanted wanted;

    private Auditor(Vocabulary words, List<Check> checks, List<ConditionPage> conditions, Rulebase rules, TradeLimits trade,
            Supplier<Past> past, Wanted wanted, Map<String, Optional<Need>> needs) {
        this.words = words;
        this.needs = needs;
        this.wanted = wanted;
        this.checks = checks;
        for (ConditionPage page : conditions) {
            this.conditions.put(page.name(), page);
        }
        this.rules = rules;
        this.trade = trade;
        this.past = past;
    }

    /** With what the program carries. */
    public static Auditor compiled() {
        Compiled pages = CheckPages.compiled();
        TradeLimits trade = TradeLimits.compiled();
        Predicate<String> asked = askedBy(pages.needs().values(), trade);
        return new Auditor(Words.compiled(), pages.checks(), pages.conditions(), Rulebase.compiled(), trade, Past::compiled,
                new Wanted(asked, Derivation.EVERY, Derivation.EVERY, true), pages.needs());
    }

    /** The quantities that a check, a condition or a limit reads. */
    private static Predicate<String> askedBy(Iterable<Optional<Need>> needs, TradeLimits trade) {
        Set<String> asked = new HashSet<>(trade.sizes());
        for (Optional<Need> need : needs) {
            need.ifPresent(n -> asked.add(n.of()));
        }
        return asked::contains;
    }

    /**
     * With what the program carries, working out no more than its checks can ask for: a value that no check, condition or
     * limit reads is not worth its time where only the answers are wanted.
     */
    public static Auditor answering() {
        Auditor all = compiled();
        return new Auditor(all.words, all.checks, List.copyOf(all.conditions.values()), all.rules, all.trade, all.past,
                new Wanted(all.wanted.asked, all.wanted.asked, Derivation.EVERY, false), all.needs);
    }

    /** With pages, rules and limits of the caller's. */
    public static Auditor of(Vocabulary words, CheckPages.Pages pages, Rulebase rules, TradeLimits trade) {
        return of(words, pages, rules, trade, Past.of(PastPages.none(words)));
    }

    /** With pages, rules, limits and knowledge of the past of the caller's. */
    public static Auditor of(Vocabulary words, CheckPages.Pages pages, Rulebase rules, TradeLimits trade, Past past) {
        return new Auditor(words, pages.checks(), pages.conditions(), rules, trade, () -> past, Wanted.ALL, new ConcurrentHashMap<>());
    }

    /** One that asks a single check, with what its own words and those of the conditions want worked out, and no more. */
    static Auditor ofOne(Check check, List<ConditionPage> conditions, Vocabulary words, Rulebase rules, TradeLimits trade,
            Past past) {
        return new Auditor(words, List.of(check), conditions, rules, trade, () -> past, wantedBy(check, conditions, words, trade),
                new ConcurrentHashMap<>());
    }

    /**
     * What is to be worked out.
     *
     * @param asked      quantities that a question rests on, by name or by kind
     * @param quantities those that are worked out, asked for or not
     * @param words      by their names in {@link Derivation#wordsWorkedOut}
     * @param all        whether all that is known of an answer is wanted, and not what is told at the terminal alone
     */
    private record Wanted(Predicate<String> asked, Predicate<String> quantities, Predicate<String> words, boolean all) {
        private static final Wanted ALL = new Wanted(Derivation.EVERY, Derivation.EVERY);

        Wanted(Predicate<String> quantities, Predicate<String> words) {
            this(quantities, quantities, words, true);
        }

        /** And the sizes that the sheet's own limits are shares of. */
        Wanted withSizesOf(EngineSheet sheet) {
            Set<String> sizes = new HashSet<>();
            for (LimitLine line : sheet.limits()) {
                sizes.add(line.times());
            }
            if (asked == Derivation.EVERY) {
                return this;
            }
            Predicate<String> more = name -> asked.test(name) || sizes.contains(name);
            return new Wanted(more, quantities == asked ? more : quantities, words, all);
        }
    }

    /** What a check's own words, those of the conditions and those of the trade's limits want worked out. */
    private static Wanted wantedBy(Check check, Iterable<ConditionPage> conditions, Vocabulary words, TradeLimits trade) {
        Set<String> read = new HashSet<>(check.applies().keySet());
        for (Way way : check.ways()) {
            read.addAll(way.needs());
            read.addAll(way.heeds());
            read.addAll(way.applies().keySet());
        }
        for (ConditionPage condition : conditions) {
            read.addAll(condition.reads());
            read.addAll(condition.settledBy());
        }
        Set<String> wanted = new HashSet<>();
        for (String word : read) {
            Need.of(word, words).filter(need -> need.kind() == Need.Kind.READING).ifPresent(need -> wanted.add(need.of()));
        }
        for (LimitLine limit : trade.lines()) {
            String kind = words.quantity(limit.quantity()).map(Quantity::kind).orElse("");
            if (wanted.contains(limit.quantity()) || wanted.contains(kind)) {
                read.addAll(limit.where().keySet());
                wanted.add(limit.times());
            }
        }
        // What a check asks of the past may rest on any reading.
        return read.stream().anyMatch(Past.WORDS::contains) ? Wanted.ALL : new Wanted(wanted::contains, word -> asks(read, word));
    }

    /** Whether words of needs ask for a word that is worked out, whose name may leave its subject out. */
    private static boolean asks(Set<String> read, String word) {
        if (read.contains(word)) {
            return true;
        }
        for (String asked : read) {
            if (asked.endsWith(word) && asked.charAt(asked.length() - word.length() - 1) == ' '
                    || asked.startsWith(ANY_PART) && word.endsWith(asked.substring(ANY_PART.length()))) {
                return true;
            }
        }
        return false;
    }

    /** The same, asking one check alone: enough for whoever wants that check's answers and no ranking of all. */
    public Auditor asking(String id) {
        return asking(check(id), wanted);
    }

    /**
     * The same, asking one check alone, and with no more worked out than its own words and those of the conditions name. A limit or a
     * word may rest on more than that: whoever knows what the answer should be takes it where it is so, and else asks again.
     */
    public Auditor briefly(String id) {
        Optional<Check> check = check(id);
        return asking(check, check.map(c -> wantedBy(c, conditions.values(), words, trade)).orElse(wanted));
    }

    private Auditor asking(Optional<Check> check, Wanted worked) {
        return new Auditor(words, check.map(List::of).orElse(List.of()), List.copyOf(conditions.values()), rules, trade, past, worked,
                needs);
    }

    /** Its checks, by id. */
    public List<Check> checks() {
        return checks;
    }

    /** The check of this name. */
    public Optional<Check> check(String id) {
        for (Check check : checks) {
            if (check.id().equals(id)) {
                return Optional.of(check);
            }
        }
        return Optional.empty();
    }

    /** Audits one build. */
    public Audit audit(Build build) {
        return audit(build, facts -> facts);
    }

    /** Audits many, on all cores; the answers stand in the order of the builds. */
    public List<Audit> audit(List<Build> builds) {
        int cores = Math.min(Runtime.getRuntime().availableProcessors(), builds.size());
        if (cores < 2) {
            List<Audit> audits = new ArrayList<>();
            builds.forEach(b -> audits.add(audit(b)));
            return audits;
        }
        ExecutorService pool = Executors.newFixedThreadPool(cores);
        try {
            List<Future<Audit>> working = new ArrayList<>();
            for (Build build : builds) {
                working.add(pool.submit(() -> audit(build)));
            }
            List<Audit> audits = new ArrayList<>();
            for (Future<Audit> one : working) {
                audits.add(one.get());
            }
            return audits;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the audit was stopped", stopped);
        } catch (ExecutionException failed) {
            throw failed.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(failed.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    /** Audits one build with its facts given to the rules in an order of the caller's, which must make no difference. */
    Audit audit(Build build, UnaryOperator<List<Fact>> order) {
        List<Fact> facts = new FactsOf(words).build(build);
        boolean past = Past.asked(facts);
        Wanted wanted = past ? Wanted.ALL : this.wanted.withSizesOf(build.sheet());
        Derivation.Worked worked = Derivation.work(build, words, wanted.asked, wanted.quantities, wanted.words);
        List<Value> values = new ArrayList<>(worked.readings());
        values.addAll(worked.derived());
        facts.addAll(values);
        facts.addAll(worked.words());
        List<Verdict> verdicts = Judge.judge(values, facts, build, words, trade, wanted.quantities);
        facts.addAll(verdicts);
        if (past) {
            facts.addAll(this.past.get().words(facts));
        }
        List<Condition> holding = rules.conditions(order.apply(facts));
        facts.addAll(holding);

        Recorded recorded = new Recorded(facts, build.leftOut(), words);
        Groups groups = new Groups(build, facts, words);
        Needs wants = new Needs(recorded, groups, words, worked.missing(), needs, conditions);
        Work work = new Work(build, words);
        Asks asks = new Asks(groups, recorded, wants, work, conditions);
        List<Asks.Question> questions = asks.all(checks);
        List<Ask> asked = new ArrayList<>(questions.size());
        for (Asks.Question question : questions) {
            asked.add(question.ask());
        }
        List<Finding> found = rules.run(asked, order.apply(facts));

        Answers answers = new Answers(wants, asks, work, words, build.sheet(), found, this.wanted.all);
        List<Answer> all = new ArrayList<>(questions.size());
        Map<Ask, LastChance> chances = new HashMap<>();
        for (Asks.Question question : questions) {
            Answers.Told told = answers.answer(question);
            all.add(told.answer());
            chances.put(question.ask(), told.chance());
        }
        all.sort(Auditor::byCheckAndPlace);
        return new Audit(build, Collections.unmodifiableList(all), chances, holding, Collections.unmodifiableList(facts),
                Collections.unmodifiableList(values), verdicts, problems(build, worked.problems()));
    }

    private static List<Problem> problems(Build build, List<Problem> worked) {
        if (worked.isEmpty()) {
            return build.problems();
        }
        List<Problem> all = new ArrayList<>(build.problems());
        all.addAll(worked);
        all.sort((a, b) -> a.where().compareTo(b.where()));
        return Collections.unmodifiableList(all);
    }

    private static int byCheckAndPlace(Answer one, Answer other) {
        int byCheck = one.check().id().compareTo(other.check().id());
        if (byCheck != 0) {
            return byCheck;
        }
        int bySubject = Natural.compare(one.ask().of(), other.ask().of());
        return bySubject != 0 ? bySubject : Natural.compare(one.ask().at(), other.ask().at());
    }
}
