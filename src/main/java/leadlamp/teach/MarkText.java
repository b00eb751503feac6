package leadlamp.teach;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlamp.record.Problem;
import leadlamp.rank.RiskLevel;
import leadlamp.report.Page;
import leadlamp.report.ProblemText;
import leadlamp.report.ReportModel;
import leadlamp.report.Sheet;

/** Writes what came of marking, for a terminal, and the key of a class. */
public final class MarkText {
    private MarkText() {
    }

    /** One answer file, marked. */
    public static String of(Marking marking, Practice practice, int width, boolean colour) {
        Sheet out = new Sheet(width, colour);
        String who = marking.answers().apprentice();
        out.strong((who.isEmpty() ? "Exercise " : who + ", exercise ") + marking.answers().exercise());
        int all = marking.found().size() + marking.missed().size();
        out.wrap("", 0, "Found " + marking.found().size() + " of " + all + (all == 1 ? " fault" : " faults") + ". Alarms on sound entries: "
                + marking.alarms().size() + ".");
        if (!marking.problems().isEmpty()) {
            out.title("Not marked");
            for (Problem problem : marking.problems()) {
                ProblemText.block(problem).forEach(out::verbatim);
            }
        }
        if (!marking.missed().isEmpty()) {
            out.title("Missed, the worst first");
            marking.missed().forEach(fault -> fault(fault, out));
        }
        if (!marking.found().isEmpty()) {
            out.title("Found");
            for (Marking.Hit hit : marking.found()) {
                out.wrap("  - ", 4, hit.fault().lead().check() + ", " + hit.fault().lead().place() + ": " + hit.fault().lead().text());
            }
        }
        if (!marking.alarms().isEmpty()) {
            out.title("Alarms on sound entries");
            for (Marking.Alarm alarm : marking.alarms()) {
                Answers.Entry entry = alarm.answer();
                out.wrap("  - ", 4, (entry.check().isEmpty() ? "line " + entry.line() : entry.check())
                        + (entry.at().isEmpty() ? "" : " at " + entry.at()) + " (" + entry.where() + "): " + alarm.says());
            }
        }
        out.title("To practise next");
        List<String> due = practice.due();
        if (due.isEmpty()) {
            out.wrap("  ", 2, "Nothing is due; take another topic.");
        }
        due.forEach(check -> out.wrap("  - ", 4, check + " (leadlamp why " + check + ")"));
        return out.toString();
    }

    private static void fault(Marking.Fault fault, Sheet out) {
        ReportModel.Item item = fault.lead();
        out.level("  ", item.risk().orElse(RiskLevel.LOW), (item.person() ? ", CAN HURT SOMEBODY" : "") + "  " + item.check() + ", "
                + item.place());
        out.wrap("    ", 4, item.text());
        for (ReportModel.Evidence line : item.evidence()) {
            out.wrap("    ", 6, "line " + line.where().line() + ": " + line.says());
        }
        out.wrap("    ", 4, "Asked: " + item.question());
        out.wrap("    ", 4, "How it wrecks an engine: " + String.join("; ", item.chain()) + ".");
        out.wrap("    ", 4, "To settle it: " + item.settleWith());
        if (!item.caution().isEmpty()) {
            out.wrap("    ", 4, "Caution: " + item.caution());
        }
        out.wrap("    ", 4, "To remember: " + item.teaches());
        out.wrap("    ", 4, "The lesson: leadlamp why " + item.check());
    }

    /** A class in one table, and what it misses most. */
    public static String table(Map<String, Marking> byName, int width, boolean colour) {
        Sheet out = new Sheet(width, colour);
        out.strong("A class of " + byName.size());
        Map<String, int[]> checks = new TreeMap<>();
        Map<String, Integer> wrong = new TreeMap<>();
        for (Map.Entry<String, Marking> one : byName.entrySet()) {
            Marking marking = one.getValue();
            String who = marking.answers().apprentice();
            out.wrap("  ", 4, one.getKey() + (who.isEmpty() ? "" : " " + who) + ": found " + marking.found().size() + " of "
                    + (marking.found().size() + marking.missed().size()) + ", alarms " + marking.alarms().size()
                    + (marking.problems().isEmpty() ? "" : ", not taken in full: " + marking.problems().size()));
            for (Marking.Seen seen : marking.seen()) {
                int[] count = checks.computeIfAbsent(seen.check(), c -> new int[2]);
                count[0]++;
                count[1] += seen.found() ? 0 : 1;
            }
            for (Marking.Alarm alarm : marking.alarms()) {
                if (!alarm.answer().check().isEmpty()) {
                    wrong.merge(alarm.answer().check(), 1, Integer::sum);
                }
            }
        }
        out.title("Missed most");
        List<String> order = new ArrayList<>(checks.keySet());
        order.sort((a, b) -> {
            int[] one = checks.get(a);
            int[] other = checks.get(b);
            int byMissed = Integer.compare(other[1], one[1]);
            int byShare = Integer.compare(other[1] * one[0], one[1] * other[0]);
            return byMissed != 0 ? byMissed : byShare != 0 ? byShare : a.compareTo(b);
        });
        order.forEach(check -> out.wrap("  ", 4, check + ": missed " + checks.get(check)[1] + " of " + checks.get(check)[0]));
        if (!wrong.isEmpty()) {
            out.title("Alarms on sound entries, by check");
            wrong.forEach((check, many) -> out.wrap("  ", 4, check + ": " + many));
        }
        return out.toString();
    }

    /** The key of a class set, a page to print. */
    public static String key(Map<String, Exercise> byName) {
        Page page = new Page();
        page.begin("Answer key", "Leadlamp: exercises", "Answer key");
        page.element("<p class=\"facts\">", "For the teacher. Engines and faults are invented.", "</p>");
        page.raw("</header>\n<main id=\"main\" class=\"sheet\">\n");
        byName.forEach((name, exercise) -> {
            page.element("<h2>", name + ": exercise " + exercise.id() + ", seed " + exercise.seed(), "</h2>");
            page.raw("<div class=\"wide\"><table>\n<thead><tr><th scope=\"col\">Check</th><th scope=\"col\">Lines</th>"
                    + "<th scope=\"col\">What was planted</th><th scope=\"col\">What the audit says</th></tr></thead>\n<tbody>\n");
            for (Exercise.Fault fault : exercise.faults()) {
                List<String> lines = fault.lines().stream().map(String::valueOf).toList();
                page.raw("<tr><th scope=\"row\">").text(fault.check() + ", " + String.join("; ", fault.places())).raw("</th><td>")
                        .text(String.join(", ", lines)).raw("</td><td>").text(LessonText.upper(fault.name())).raw("</td><td>")
                        .text(String.join(" ", fault.says())).raw("</td></tr>\n");
            }
            page.raw("</tbody>\n</table></div>\n");
        });
        return page.end("the cases of the rules", "").toString();
    }
}
