package leadlamp.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.audit.Audit;
import leadlamp.facts.Condition;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.judge.Gauges;
import leadlamp.rank.Chance;
import leadlamp.rank.Course;
import leadlamp.rank.Next;
import leadlamp.rank.OpenGroup;
import leadlamp.rank.Ranked;
import leadlamp.rank.Ranking;
import leadlamp.rank.RiskLevel;
import leadlamp.rank.Want;
import leadlamp.record.Build;
import leadlamp.record.Problem;
import leadlamp.report.ReportModel.Finding;
import leadlamp.report.ReportModel.First;
import leadlamp.report.ReportModel.Group;
import leadlamp.report.ReportModel.Heading;
import leadlamp.report.ReportModel.Item;
import leadlamp.report.ReportModel.LeftOut;
import leadlamp.report.ReportModel.Question;
import leadlamp.report.ReportModel.Standing;
import leadlamp.report.ReportModel.Tally;
import leadlamp.report.ReportModel.Worked;
import leadlamp.report.draw.Picture;
import leadlamp.words.Vocabulary;

/** Puts a report together from the ranked answers. */
public final class Report {
    /** How many of the first things to do stand on the first screen. */
    private static final int FIRST = 5;
    /** More steps than this are not named in a sentence. */
    private static final int MANY = 3;

    private static final List<String> CAUTIONS = List.of(
            "The maker's manual, the rules of the place and licensed practice come before anything said here.",
            "Leadlamp reads a record. It has not seen the engine. What is not written down it cannot know.",
            "Before you turn or start an engine: hands, hair and cloth clear of belts, gears, fan and flywheel;"
                    + " fuel dry and leaks looked for; the right fire extinguisher and a second person in reach;"
                    + " exhaust led outside.",
            "Fuel, oil and coolant under pressure or hot burn and cut. Injection pressure of a diesel goes through skin:"
                    + " never feel for a leak.",
            "Springs, clutch covers, and an engine on a crane or stand hold energy. Let it out, or hold it, before you"
                    + " put a hand there.");
    private static final List<String> LIMITS = List.of(
            "Clear means: asked, recorded, and nothing found by these checks. It never means that the engine will hold.",
            "A risk level is an order of work by severity and likelihood (words and matrix of MIL-STD-882E). It is no"
                    + " measured probability.",
            "A value is called within or outside only where its doubt, at about 95 %, leaves no room for the other"
                    + " (guard band as in ISO 14253-1). Between them it is undecided.",
            "Where the sheet is silent the trade's number is used and said to be so. It is a stand-in for the maker's.",
            "Usual doubts of gauges and the trade's numbers are common practice unless a source is named.");

    private final Build build;
    private final List<Problem> problems;
    private final Ranking ranking;
    private final Course course;
    private final Vocabulary words;
    private final Wording wording;
    private final Items items;
    private final Map<String, List<Verdict>> verdicts;

    private Report(Build build, List<Problem> problems, Ranking ranking, List<Verdict> verdicts,
            List<Condition> conditions, Course course, Vocabulary words) {
        this.build = build;
        this.problems = problems;
        this.ranking = ranking;
        this.course = course;
        this.words = words;
        this.wording = new Wording(words);
        this.verdicts = byQuantity(verdicts);
        this.items = new Items(build.file(), new Lines(build), this.verdicts, conditions,
                Gauges.of(build, words)::settling);
    }

    /** The report of an audit. */
    public static ReportModel of(Audit audit, Vocabulary words) {
        Course course = Course.of(audit.build(), words);
        return new Report(audit.build(), audit.problems(), Ranking.of(audit, course, words), audit.verdicts(),
                audit.conditions(), course, words).model(audit.values());
    }

    /**
     * The report.
     *
     * @param build      the build, as read
     * @param ranking    its answers, ranked
     * @param values     all values, read and worked out
     * @param verdicts   all verdicts
     * @param conditions named conditions that hold
     * @param course     the steps, and where the work stands
     * @param words      the vocabulary
     */
    public static ReportModel of(Build build, Ranking ranking, List<Value> values, List<Verdict> verdicts,
            List<Condition> conditions, Course course, Vocabulary words) {
        return new Report(build, build.problems(), ranking, verdicts, conditions, course, words).model(values);
    }

    private ReportModel model(List<Value> values) {
        List<Picture> gasket = new Later<>(() -> new GasketsOnOffer(build, values, verdicts).picture().map(List::of).orElse(List.of()));
        items.gasket(gasket);
        List<Item> found = items.of(ranking.found());
        List<Item> accepted = items.of(ranking.accepted());
        List<Item> open = items.of(ranking.open());
        List<Item> later = new OneByOne<>(ranking.later().size(), i -> items.item(ranking.later().get(i)));
        List<Group> groups = groups(ranking.groups(), open);
        List<Group> beyond = groups(ranking.beyond(), open);
        List<ReportModel.ClearItem> clear = new OneByOne<>(ranking.clear().size(), i -> items.clear(ranking.clear().get(i)));
        List<Finding> findings = Findings.of("found", found);
        List<Finding> lived = Findings.of("accepted", accepted);
        Tally tally = tally(findings, lived);
        Next next = Next.of(ranking, words);
        return new ReportModel(heading(), new Standing(blank() ? Beginning.SENTENCE : standing(findings),
                blank() ? Beginning.first(build, course) : first(findings, groups), pressing(findings)), tally, found,
                findings, accepted, lived, open, groups, beyond, new Advising(build.sheet(), words, wording).advice(next), later, clear, Topics.of(ranking.clear(), clear), leftOut(), remarks(), new Later<>(() -> worked(values)),
                Pictures.matrix(findings, ranking.found()), Pictures.ladder(course, findings, ranking), CAUTIONS, LIMITS,
                gasket, List.of(), Optional.empty());
    }

    private Heading heading() {
        String name = build.name().isEmpty() ? build.file() : build.name();
        return new Heading(name, build.file(), build.bytes(), build.sheet().name(), build.sheet().file(),
                build.sheet().from(), build.stage(), course.next());
    }

    private Tally tally(List<Finding> findings, List<Finding> lived) {
        int[] levels = new int[RiskLevel.values().length];
        int person = 0;
        for (Ranked found : ranking.found()) {
            levels[found.weights().get(0).level().ordinal()]++;
            person += found.person() ? 1 : 0;
        }
        int low = levels[RiskLevel.LOW.ordinal()] + levels[RiskLevel.ELIMINATED.ordinal()];
        return new Tally(ranking.found().size(), levels[0], levels[1], levels[2], low, person,
                ranking.accepted().size(), ranking.open().size(), ranking.later().size(), ranking.clear().size(),
                problems.size(), told(findings, lived));
    }

    private String told(List<Finding> findings, List<Finding> lived) {
        int[] many = new int[RiskLevel.values().length];
        int person = 0;
        for (Finding finding : findings) {
            many[level(finding.lead())]++;
            person += finding.lead().person() ? 1 : 0;
        }
        List<String> levels = new ArrayList<>();
        for (RiskLevel level : RiskLevel.values()) {
            level(levels, many[level.ordinal()], level);
        }
        StringBuilder text = new StringBuilder("Found ").append(findings.size());
        if (!levels.isEmpty()) {
            text.append(" (").append(String.join(", ", levels)).append(')');
        }
        if (ranking.found().size() > findings.size()) {
            text.append(" at ").append(ranking.found().size()).append(" places");
        }
        if (person > 0) {
            text.append(person == 1 ? ", 1 can hurt somebody" : ", " + person + " can hurt somebody");
        }
        if (!lived.isEmpty()) {
            text.append(". Accepted ").append(lived.size());
        }
        text.append(". Cannot tell ").append(ranking.open().size());
        if (!ranking.later().isEmpty()) {
            text.append(". Due later ").append(ranking.later().size());
        }
        text.append(". Clear ").append(ranking.clear().size());
        if (!problems.isEmpty()) {
            text.append(". Left out ").append(problems.size());
        }
        return text.append('.').toString();
    }

    private static void level(List<String> levels, int many, RiskLevel level) {
        if (many > 0) {
            levels.add(many + " " + level.word());
        }
    }

    // --- what stands before the next step

    private String standing(List<Finding> findings) {
        int right = 0;
        int high = 0;
        int person = 0;
        int at = 0;
        for (Finding finding : findings) {
            boolean pressing = !waits(at);
            at += finding.items().size();
            if (pressing) {
                right++;
                high += finding.lead().risk().orElse(RiskLevel.LOW) == RiskLevel.HIGH ? 1 : 0;
                person += finding.lead().person() ? 1 : 0;
            }
        }
        StringBuilder text = new StringBuilder("Before ").append(before()).append(": ");
        int beyond = 0;
        for (OpenGroup group : ranking.beyond()) {
            beyond += group.answers().size();
        }
        int open = ranking.open().size() - beyond;
        String also = beyond == 0 ? "" : open == 0 ? count(beyond, "question is", "questions are") + " open of parts on which this record tells of no work."
                : ", and " + beyond + " of parts on which this record tells of no work";
        if (right > 0) {
            text.append(count(right, "finding", "findings")).append(" to put right");
            if (high > 0) {
                text.append(right == 1 ? ", and it is High" : high == right ? ", all High" : ", " + high + " of them High");
            }
            if (person > 0) {
                text.append(right == 1 ? ", and it can hurt somebody" : ", " + person + " can hurt somebody");
            }
            text.append(open > 0 ? "; " + count(open, "open question", "open questions") + " to settle" + also + "."
                    : beyond > 0 ? "; " + also : "; no question that is due is open.");
        } else if (open > 0) {
            text.append("nothing found that must be put right first; ")
                    .append(count(open, "open question", "open questions"))
                    .append(" to settle").append(also).append(". What is open is not known to be sound.");
        } else if (beyond > 0) {
            text.append("nothing found that must be put right first; ").append(also).append(" What is open is not known to be sound.");
        } else {
            text.append("nothing found, and no question that is due is open. The record says no more than that.");
        }
        if (!problems.isEmpty()) {
            text.append(' ').append(count(problems.size(), "thing", "things"))
                    .append(" in the files could not be read and ").append(problems.size() == 1 ? "was" : "were")
                    .append(" left out.");
        }
        return text.toString();
    }

    /** Whether the record holds nothing yet that a check could go by. */
    private boolean blank() {
        return ranking.blank() && problems.isEmpty() && Beginning.holdsNothing(build);
    }

    private List<Finding> pressing(List<Finding> findings) {
        List<Finding> pressing = new ArrayList<>();
        int at = 0;
        for (Finding finding : findings) {
            if (!waits(at)) {
                pressing.add(finding);
            }
            at += finding.items().size();
        }
        return List.copyOf(pressing);
    }

    private String before() {
        List<String> next = course.next();
        if (next.isEmpty()) {
            return "the next step";
        }
        return next.size() > MANY ? next.get(0) + " and whatever else comes next" : Wording.join(next);
    }

    static String count(int many, String one, String more) {
        return many + " " + (many == 1 ? one : more);
    }

    /** Whether the finding at this place of the ranking is closed in by a later step only. */
    private boolean waits(int at) {
        return ranking.found().get(at).chance().standing() == Chance.Standing.LATER;
    }

    private List<First> first(List<Finding> findings, List<Group> groups) {
        List<First> first = new ArrayList<>();
        List<First> waiting = new ArrayList<>();
        int at = 0;
        for (Finding finding : findings) {
            Item item = finding.lead();
            String places = finding.items().size() == 1 ? "" : " (" + finding.places() + ")";
            (waits(at) ? waiting : first).add(new First(item.risk().orElseThrow().word(), item.person(),
                    item.text() + places, item.todo(), finding.anchor()));
            at += finding.items().size();
        }
        int room = groups.isEmpty() ? FIRST : FIRST - 1;
        List<First> all = new ArrayList<>(first.size() > room ? first.subList(0, room) : first);
        for (int i = 0; i < groups.size() && all.size() < FIRST; i++) {
            Group group = groups.get(i);
            Item worst = group.items().get(0);
            all.add(new First("Settles " + count(group.items().size(), "question", "questions"), worst.person(),
                    group.todo() + (group.at().isEmpty() ? "" : ", at " + group.at()) + ".", "", "settle-" + (i + 1)));
        }
        for (int i = 0; i < waiting.size() && all.size() < FIRST; i++) {
            all.add(waiting.get(i));
        }
        return List.copyOf(all);
    }

    // --- what cannot be told

    private List<Group> groups(List<OpenGroup> wanted, List<Item> open) {
        Map<String, Item> byAsk = new TreeMap<>();
        for (int i = 0; i < open.size(); i++) {
            byAsk.put(key(ranking.open().get(i)), open.get(i));
        }
        List<Group> groups = new ArrayList<>();
        for (OpenGroup group : wanted) {
            List<Item> inside = new ArrayList<>();
            for (Ranked answer : group.answers()) {
                inside.add(byAsk.get(key(answer)));
            }
            List<String> also = new ArrayList<>();
            for (OpenGroup.Also other : group.also()) {
                also.add(wording.want(other.want(), other.details()));
            }
            groups.add(new Group(todo(group),
                    Wording.places(group.answers().get(0).check().askedOf(), group.places()), wording.gauge(group.want()),
                    inside.get(0).settleWith(), List.copyOf(also), asked(group.answers(), inside),
                    Wording.gaps(Findings.because(inside)), odds(inside), List.copyOf(inside)));
        }
        return List.copyOf(groups);
    }

    private static List<String> odds(List<Item> items) {
        List<ReportModel.Because> odds = new ArrayList<>();
        for (ReportModel.Because gap : Findings.because(items)) {
            if (gap.outside().isPresent()) {
                odds.add(gap);
            }
        }
        return Wording.gaps(odds);
    }

    private static List<Question> asked(List<Ranked> answers, List<Item> items) {
        Map<String, List<String>> places = new LinkedHashMap<>();
        Map<String, Item> worst = new TreeMap<>();
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            places.computeIfAbsent(item.check(), c -> new ArrayList<>()).add(place(answers.get(i)));
            Item known = worst.get(item.check());
            if (known == null || level(item) < level(known)) {
                worst.put(item.check(), item);
            }
        }
        List<Question> asked = new ArrayList<>();
        for (Map.Entry<String, List<String>> one : places.entrySet()) {
            Item item = worst.get(one.getKey());
            asked.add(new Question(item.check(), item.question(), item.risk(), item.person(),
                    Wording.together(one.getValue())));
        }
        return List.copyOf(asked);
    }

    private static String place(Ranked answer) {
        return Wording.place(answer.check().askedOf(), answer.ask());
    }

    private static int level(Item item) {
        return item.risk().map(RiskLevel::ordinal).orElse(RiskLevel.values().length);
    }

    private static String key(Ranked ranked) {
        return ranked.ask().check() + '\n' + ranked.ask().of() + '\n' + ranked.ask().at();
    }

    private String todo(OpenGroup group) {
        Optional<String> finer = group.want().how() == Want.How.FINER
                ? Margin.doubtWanted(verdicts.getOrDefault(group.want().word(), List.of()), group.places())
                : Optional.empty();
        return finer.map(doubt -> "Measure again with a doubt under " + doubt + ": " + group.want().word())
                .orElseGet(() -> wording.want(group.want(), group.details()));
    }

    // --- the rest

    private List<LeftOut> leftOut() {
        List<LeftOut> leftOut = new ArrayList<>();
        for (Problem problem : problems) {
            leftOut.add(new LeftOut(problem.where(), ProblemText.message(problem), ProblemText.block(problem)));
        }
        return List.copyOf(leftOut);
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        for (Build.Accepted entry : ranking.ranOut()) {
            remarks.add("Under accepted, line " + entry.where().line() + ": the time of " + entry.check()
                    + (entry.at().isEmpty() ? "" : " at " + entry.at()) + " ran out (" + entry.until()
                    + "), for the record has a later date. It is accepted no longer.");
        }
        for (Build.Accepted entry : ranking.unused()) {
            remarks.add("Under accepted, line " + entry.where().line() + ": " + entry.check()
                    + (entry.at().isEmpty() ? "" : " at " + entry.at())
                    + " was not found, so there is nothing to accept there.");
        }
        return List.copyOf(remarks);
    }

    private List<Worked> worked(List<Value> values) {
        List<Worked> worked = new ArrayList<>();
        for (Value value : values) {
            if (value.derived()) {
                worked.add(Margin.worked(value, verdict(value)));
            }
        }
        return List.copyOf(worked);
    }

    private Optional<Verdict> verdict(Value value) {
        for (Verdict verdict : verdicts.getOrDefault(value.of(), List.of())) {
            if (verdict.at().equals(value.at())) {
                return Optional.of(verdict);
            }
        }
        return Optional.empty();
    }

    private static Map<String, List<Verdict>> byQuantity(List<Verdict> verdicts) {
        Map<String, List<Verdict>> by = new TreeMap<>();
        for (Verdict verdict : verdicts) {
            by.computeIfAbsent(verdict.of(), q -> new ArrayList<>()).add(verdict);
        }
        return by;
    }
}
