package leadlamp.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leadlamp.report.ReportModel.Advice;
import leadlamp.report.ReportModel.Finding;
import leadlamp.report.ReportModel.First;
import leadlamp.report.ReportModel.Group;
import leadlamp.report.ReportModel.Item;

/** Writes what to do next, for a terminal. */
public final class NextWriter {
    private static final int LABEL = 14;
    /** So many things to settle are named; the rest are counted. */
    private static final int NAMED = 12;

    private NextWriter() {
    }

    /** What to put right and settle before the next step, and the one reading that settles most. */
    public static String text(ReportModel model, int width, boolean colour) {
        Sheet out = new Sheet(width, colour);
        out.strong(model.heading().name());
        out.wrap("", 0, model.standing().sentence());
        beginning(out, model);
        int number = 1;
        for (Finding finding : model.standing().putRight()) {
            Item item = finding.lead();
            if (number == 1) {
                out.title("Put right");
            }
            out.level(number(number++), item.risk().orElseThrow(), (item.person() ? ", CAN HURT SOMEBODY" : "") + "  "
                    + item.check() + ", " + finding.places());
            out.wrap("    ", 4, String.join(" ", finding.texts()) + " " + item.todo());
            out.wrap("    ", 4, item.byWhen());
        }
        waiting(out, model);
        number = 1;
        int counted = 0;
        for (Group group : model.groups()) {
            if (number == 1) {
                out.title("Settle");
            }
            if (number > NAMED && model.groups().size() > NAMED + 1) {
                counted += group.items().size();
                continue;
            }
            out.wrap(number(number++), 4, group.todo() + (group.at().isEmpty() ? "" : ", at " + group.at()) + " ("
                    + Report.count(group.items().size(), "question", "questions")
                    + (group.items().get(0).person() ? "; CAN HURT SOMEBODY" : "") + ").");
        }
        if (counted > 0) {
            out.wrap("    ", 4, "And " + (model.groups().size() - NAMED) + " more readings and looks, with "
                    + Report.count(counted, "question", "questions") + ": `leadlamp audit` lists them.");
        }
        model.advice().ifPresent(advice -> advice(out, advice));
        out.blank();
        out.wrap("", 0, model.tally().text());
        return out.toString();
    }

    private static void beginning(Sheet out, ReportModel model) {
        int number = 1;
        for (First first : model.standing().first()) {
            if (first.anchor().isEmpty()) {
                if (number == 1) {
                    out.title("To begin with");
                }
                out.wrap(number(number++), 4, first.text() + " " + first.todo());
            }
        }
    }

    /** What a later step closes in is no matter of the next one: it is counted, and its first chance named. */
    private static void waiting(Sheet out, ReportModel model) {
        List<Finding> waiting = new ArrayList<>(model.findings());
        waiting.removeAll(model.standing().putRight());
        if (!waiting.isEmpty()) {
            out.title("Can wait");
            Item worst = waiting.get(0).lead();
            out.wrap("    ", 4, Report.count(waiting.size(), "finding", "findings") + " that a later step closes in; the worst is "
                    + worst.check() + ", to be put right " + lower(worst.byWhen()) + " `leadlamp audit` tells them all.");
        }
    }

    private static String lower(String sentence) {
        return sentence.isEmpty() ? "later." : sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }

    private static void advice(Sheet out, Advice advice) {
        out.title("The one that settles most");
        out.wrap("  ", 2, advice.todo() + (advice.at().isEmpty() ? "" : ", at " + advice.at()) + ".");
        labelled(out, "Gauge", advice.gauge());
        labelled(out, "How", advice.how());
        labelled(out, "To get at it", advice.reach());
        for (String because : advice.because()) {
            labelled(out, "Why", because);
        }
    }

    private static void labelled(Sheet out, String label, String text) {
        if (!text.isEmpty()) {
            out.wrap("  " + label + " ".repeat(LABEL - label.length()), LABEL + 2, text);
        }
    }

    private static String number(int number) {
        String text = number + ".";
        return text + " ".repeat(Math.max(1, 4 - text.length()));
    }
}
