package leadlamp.report;

import static leadlamp.audit.Likelihood.OCCASIONAL;
import static leadlamp.audit.Likelihood.PROBABLE;
import static leadlamp.audit.Likelihood.REMOTE;
import static leadlamp.audit.Severity.CATASTROPHIC;
import static leadlamp.audit.Severity.CRITICAL;
import static leadlamp.audit.Severity.MARGINAL;
import static leadlamp.rank.Handmade.MM;
import static leadlamp.rank.Handmade.RECORD;
import static leadlamp.rank.Handmade.WORDS;
import static leadlamp.rank.Handmade.accepted;
import static leadlamp.rank.Handmade.below;
import static leadlamp.rank.Handmade.chances;
import static leadlamp.rank.Handmade.check;
import static leadlamp.rank.Handmade.clear;
import static leadlamp.rank.Handmade.found;
import static leadlamp.rank.Handmade.gap;
import static leadlamp.rank.Handmade.later;
import static leadlamp.rank.Handmade.missing;
import static leadlamp.rank.Handmade.read;
import static leadlamp.rank.Handmade.seen;
import static leadlamp.rank.Handmade.sheet;
import static leadlamp.rank.Handmade.stated;
import static leadlamp.rank.Handmade.untold;
import static leadlamp.rank.Handmade.way;
import static leadlamp.rank.Handmade.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.audit.Answer;
import leadlamp.audit.Check;
import leadlamp.audit.Finding;
import leadlamp.audit.Gap;
import leadlamp.audit.Way;
import leadlamp.facts.Condition;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.rank.Chance;
import leadlamp.rank.Course;
import leadlamp.rank.Ranking;
import leadlamp.record.Build;
import leadlamp.record.Fingerprint;
import leadlamp.record.Problem;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/** A report of an invented build, put together from answers made by hand. */
final class Example {
    /** What a record could hold to do harm to a terminal or a page. */
    static final String NASTY = "<script>alert('x')</script> & \u001B[31mred\u009B0m \u202Eturned";

    private Example() {
    }

    static ReportModel report() {
        return report(RECORD, "Hill-climb three, spring rebuild", true);
    }

    /** Nothing found, nothing open. */
    static ReportModel quiet() {
        Verdict pin = within(read("cam gear pin diameter", "intake", 5.001, 3, 0.004, "micrometer 0-25", 20), 4.97, 5.02);
        Ranking ranking = Ranking.of(List.of(clear(pinCheck(), "intake", pin)), Set.of(), sheet(), List.of(), "",
                chances(Map.of()), WORDS);
        return Report.of(build(RECORD, "Sound three", List.of()), ranking, List.of(), List.of(pin), List.of(),
                course(), WORDS);
    }

    /** The same report of a record whose name is given. */
    static ReportModel report(String file, String name, boolean problems) {
        Value measured = read("cam gear pin diameter", "exhaust", 4.90, 2, 0.006, "micrometer 0-25", 32);
        Verdict thin = below(measured, 4.97, LimitUsed.Whose.TRADE);
        Verdict sound = within(clearance("main 1", 0.037), 0.020, 0.055);
        Verdict close = undecided(clearance("main 2", 0.057), 0.020, 0.055);
        Check pin = pinCheck();
        Check locker = check("thread-locker-on-torque-figure", "fasteners", MARGINAL, OCCASIONAL, Map.of(), false,
                List.of(new Way("form", List.of(), List.of(), "{locker} thread-locker stands under a torque that is "
                        + "for a dry thread: {place}.", Map.of(), Optional.empty(), Optional.empty(), List.of())));
        Check hose = check("fuel-hose-old", "fuel-and-spark", CRITICAL, OCCASIONAL, Map.of(), true,
                List.of(new Way("form", List.of(), List.of(), "The fuel hose is {form}.", Map.of(), Optional.empty(),
                        Optional.empty(), List.of())));
        Check disc = check("trigger-disc-loose", "sensing", MARGINAL, REMOTE);
        Check clearance = check("bearing-oil-clearance", "bottom-end", CATASTROPHIC, OCCASIONAL);
        Check taper = check("journal-taper", "bottom-end", MARGINAL, OCCASIONAL);
        Check pressure = check("oil-pressure-seen", "start-up", CATASTROPHIC, PROBABLE);

        List<Answer> answers = new ArrayList<>();
        answers.add(found(pin, "intake", "form", stated("cam gear pin", "intake", "form", "hollow", 31)));
        answers.add(found(pin, "exhaust", "size", thin));
        answers.add(bound(found(locker, "oil pump to block", "form",
                stated("joint", "oil pump to block", "thread-locker", "medium", 40)), "locker", "medium"));
        answers.add(found(hose, "engine", "form", seen("fuel hose", "engine", "cracked", "owner", 45)));
        answers.add(found(disc, "engine", "form", seen("trigger disc", "engine", "play", "", 44)));
        answers.add(untold(clearance, "main 2",
                gap(Gap.Why.TOO_COARSE, "main bearing clearance", OptionalDouble.of(0.42), "main 2")));
        answers.add(untold(clearance, "main 3", missing("main journal diameter", "main 3"),
                missing("main bearing bore with shells", "main 3")));
        answers.add(untold(clearance, "main 4", missing("main journal diameter", "main 4")));
        answers.add(untold(taper, "main 4", missing("main journal diameter", "main 4")));
        answers.add(untold(pin, "left", gap(Gap.Why.SHEET_SILENT, "cam gear pin form", OptionalDouble.empty(), "left")));
        answers.add(later(pressure, "engine", missing("engine oil pressure", "engine")));
        answers.add(clear(clearance, "main 1", sound));

        Ranking ranking = Ranking.of(answers, Set.of("rev limit raised"),
                sheet(new String[] {"joint", "oil pump to block", "harm if it lets go", "Catastrophic"}),
                List.of(accepted("trigger-disc-loose", ""), accepted("no-such-finding", "3")), "",
                chances(Map.of("cam-gear-pin-hollow", new Chance("timing drive fitted", Chance.Standing.NEXT, 0),
                        "thread-locker-on-torque-figure", new Chance("sump fitted", Chance.Standing.LATER, 3),
                        "bearing-oil-clearance", new Chance("crankshaft laid", Chance.Standing.PASSED, 2))), WORDS);
        return Report.of(build(file, name, problems ? List.of(problem()) : List.of()), ranking,
                List.of(measured, sound.value(), close.value()), List.of(thin, sound, close),
                List.of(new Condition("rev limit raised", List.of(new Where(RECORD, 12, 8)))), course(),
                WORDS);
    }

    static Check pinCheck() {
        return check("cam-gear-pin-hollow", "cam-drive", CATASTROPHIC, OCCASIONAL,
                new TreeMap<>(Map.of("rev limit raised", 1, "valves clear pistons", -1)), false,
                List.of(way("form"), new Way("size", List.of("cam gear pin diameter"), List.of(),
                        "The pin of the {place} cam gear measures {value}. The least allowed is {limit}.", Map.of(),
                        Optional.empty(), Optional.empty(), List.of())));
    }

    static Problem problem() {
        return new Problem(new Where(RECORD, 23, 36), 12,
                "    threads: { condition: residue, thread-loker: medium }",
                "\"thread-loker\" is not something a thread can have.",
                "A thread can have: condition, thread-locker, lubricant.", Optional.of("thread-locker"),
                "The rest of \"oil pump to block\" was read; checks that need its thread-locker say \"cannot tell\".");
    }

    private static Answer bound(Answer answer, String name, String word) {
        Answer.Found found = (Answer.Found) answer;
        return new Answer.Found(found.check(), found.ask(), found.findings().stream()
                .map(f -> new Finding(f.ask(), f.way(), f.evidence(), Map.of(name, word))).toList(),
                List.of());
    }

    private static Value clearance(String at, double mm) {
        Estimate estimate = new Estimate(mm / 1000, Dimension.LENGTH,
                new TreeMap<>(Map.of("bore gauge A", 0.000003, "micrometer 25-50", 0.000002)));
        return new Value("main bearing clearance", "plain bearing clearance", at, Optional.of(estimate),
                Optional.of(estimate), MM, 3, "", false, "48.022 - 47.985 = " + Amounts.number(mm, 3) + " mm", "",
                Map.of(), List.of(new Where(RECORD, 60, 5), new Where(RECORD, 64, 5)));
    }

    private static Verdict undecided(Value value, double leastMm, double mostMm) {
        Verdict.Side within = new Verdict.Side(Verdict.Standing.WITHIN, 0, 0.0000072, "bore gauge A");
        Verdict.Side open = new Verdict.Side(Verdict.Standing.UNDECIDED, 0.42, 0.0000072, "bore gauge A");
        return new Verdict(value.of(), value.kind(), value.at(), Optional.of(within), Optional.of(open), value,
                new LimitUsed(OptionalDouble.of(leastMm / 1000), OptionalDouble.of(mostMm / 1000),
                        LimitUsed.Whose.SHEET, false, "Tarn 12", "",
                        Optional.of(new Where("engines/tarn-12.yaml", 99, 3))));
    }

    private static Build build(String file, String name, List<Problem> problems) {
        List<Statement> statements = List.of(line(31, "- { cam gear pin: kept, at: intake, form: hollow }"),
                line(32, "- { cam gear pin diameter: 4.90 mm, at: exhaust, with: micrometer 0-25 }"),
                line(40, "- oil pump to block: 23 N·m"), line(44, "- { trigger disc: play, amount: 0.8 mm }"),
                line(45, "- { fuel hose: cracked, told by: owner, note: \"" + NASTY + "\" }"));
        return new Build(file, name, sheet(), statements, List.of(), Map.of(), List.of("head torqued"), List.of(),
                List.of(), problems, List.of(), Fingerprint.of("example".getBytes(StandardCharsets.UTF_8)));
    }

    private static Statement line(int number, String text) {
        return new Statement(Statement.Form.STATED, "part", "engine", "what" + number, "word", Optional.empty(),
                List.of(), Map.of(), Optional.empty(), new Where(RECORD, number, 5), text);
    }

    private static Course course() {
        return new Course(List.of(new Course.Rung("engine stripped", Course.Standing.BEHIND),
                new Course.Rung("block washed", Course.Standing.BEHIND),
                new Course.Rung("crankshaft laid", Course.Standing.BEHIND),
                new Course.Rung("head torqued", Course.Standing.BEHIND),
                new Course.Rung("timing drive fitted", Course.Standing.NEXT),
                new Course.Rung("belt cover fitted", Course.Standing.AHEAD),
                new Course.Rung("sump fitted", Course.Standing.AHEAD),
                new Course.Rung("first start", Course.Standing.AHEAD)), List.of("timing drive fitted"));
    }
}
