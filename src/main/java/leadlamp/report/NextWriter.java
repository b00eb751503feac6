package leadlamp.report;

import leadlamp.report.ReportModel.Advice;
import leadlamp.report.ReportModel.Finding;
import leadlamp.report.ReportModel.Group;
import leadlamp.report.ReportModel.Item;

/** Writes what to do next, for a terminal. */
public final class NextWriter {
    private static final int LABEL = 14;

    private NextWriter() {
    }

    /** What to put right and settle before the next step, and the one reading that settles most. */
    public static String text(ReportModel model, int width, boolean colour) {
        Sheet out = new Sheet(width, colour);
        out.strong(model.heading().name());
        out.wrap("", 0, model.standing().sentence());
        int number = 1;
        for (Finding finding : model.findings()) {
            Item item = finding.lead();
            if (number == 1) {
                out.title("Put right");
            }
            out.level(number(number++), item.risk().orElseThrow(), (item.person() ? ", CAN HURT SOMEBODY" : "") + "  "
                    + item.check() + ", " + finding.places());
            out.wrap("    ", 4, String.join(" ", finding.texts()) + " " + item.todo());
            out.wrap("    ", 4, item.byWhen());
        }
        number = 1;
        for (Group group : model.groups()) {
            if (number == 1) {
                out.title("Settle");
            }
            out.wrap(number(number++), 4, group.todo() + (group.at().isEmpty() ? "" : ", at " + group.at()) + " ("
                    + Report.count(group.items().size(), "question", "questions")
                    + (group.items().get(0).person() ? "; CAN HURT SOMEBODY" : "") + ").");
        }
        model.advice().ifPresent(advice -> advice(out, advice));
        out.blank();
        out.wrap("", 0, model.tally().text());
        return out.toString();
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
