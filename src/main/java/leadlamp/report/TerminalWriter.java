package leadlamp.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.rank.RiskLevel;
import leadlamp.report.ReportModel.Evidence;
import leadlamp.report.ReportModel.Finding;
import leadlamp.report.ReportModel.First;
import leadlamp.report.ReportModel.Group;
import leadlamp.report.ReportModel.Item;
import leadlamp.report.ReportModel.LeftOut;
import leadlamp.report.ReportModel.Question;
import leadlamp.report.ReportModel.Told;
import leadlamp.report.ReportModel.Topic;

/** Writes a report for a terminal. What matters most stands last, for that is what a terminal shows. */
public final class TerminalWriter {
    private static final int LABEL = 10;
    private static final int INDENT = 4;
    /** So many things to settle are told; the others, which hide less harm, are counted by topic. */
    private static final int DETAILED = 12;
    /** So many questions of a list that is not due are named; the rest are counted. */
    private static final int LATER = 3;

    private final ReportModel model;
    private final boolean all;
    private final Sheet out;

    private TerminalWriter(ReportModel model, boolean all, int width, boolean colour) {
        this.model = model;
        this.all = all;
        this.out = new Sheet(width, colour);
    }

    /** The usual report: the first things to settle are told, what lies beyond them is counted. */
    public static String full(ReportModel model, int width, boolean colour) {
        return full(model, false, width, colour);
    }

    /** The report; with everything that is open, whether it is of this work or not. */
    public static String full(ReportModel model, boolean all, int width, boolean colour) {
        TerminalWriter writer = new TerminalWriter(model, all, width, colour);
        writer.heading();
        writer.found("Found", model.findings());
        writer.cannotTell();
        writer.found("Accepted by the builder", model.lived());
        writer.later();
        writer.clear();
        writer.leftOut();
        writer.always();
        writer.since();
        writer.last();
        return writer.out.toString();
    }

    /** One line a finding, one a thing to settle, and how much there is of each. */
    public static String brief(ReportModel model, int width, boolean colour) {
        TerminalWriter writer = new TerminalWriter(model, false, width, colour);
        for (Finding finding : model.findings()) {
            writer.line(finding, "");
        }
        for (Finding finding : model.lived()) {
            writer.line(finding, "accepted, ");
        }
        for (Group group : model.groups()) {
            writer.out.cut("Cannot tell  " + order(group) + " (" + Report.count(group.items().size(), "question",
                    "questions") + ")");
        }
        int beyond = questions(model.beyond());
        if (beyond > 0) {
            writer.out.cut("Cannot tell  " + Report.count(beyond, "question", "questions") + " of parts on which the record tells of no work ("
                    + topics(model.beyond()) + ")");
        }
        for (LeftOut leftOut : model.leftOut()) {
            writer.out.cut("Left out  " + leftOut.where() + ": " + leftOut.message());
        }
        model.since().ifPresent(since -> {
            for (Told told : since.told()) {
                writer.out.cut(Topics.said(told.kind()) + "  " + told.text());
            }
            writer.out.wrap("", 0, since.sentence());
        });
        writer.out.wrap("", 0, model.heading().name() + ": " + model.tally().text());
        return writer.out.toString();
    }

    private void line(Finding finding, String mark) {
        Item item = finding.lead();
        String where = finding.evidence().isEmpty() ? "" : "  (" + finding.evidence().get(0).where() + ")";
        out.cut(level(item.risk()) + "  " + mark + (item.person() ? "can hurt somebody, " : "") + item.check() + ", "
                + finding.places() + ": " + finding.texts().get(0) + where);
    }

    private static String level(Optional<RiskLevel> risk) {
        return risk.map(RiskLevel::word).orElse("Not ranked");
    }

    private void heading() {
        ReportModel.Heading heading = model.heading();
        out.strong(heading.name());
        out.wrap("", 0, "Record " + heading.file() + (heading.sheet().isEmpty() ? "" : ", engine " + heading.sheet())
                + (heading.sheetFile().isEmpty() ? "" : " (" + heading.sheetFile() + ")") + ".");
        if (!heading.stage().isEmpty()) {
            out.wrap("", 0, "Stage: " + String.join(", ", heading.stage()) + "."
                    + (heading.next().isEmpty() ? "" : " Next: " + Wording.join(heading.next()) + "."));
        }
        out.blank();
        out.wrap("", 0, model.standing().sentence());
    }

    // --- found

    private void found(String title, List<Finding> findings) {
        if (findings.isEmpty()) {
            if (title.equals("Found")) {
                out.title(title);
                out.wrap("  ", 2, "Nothing was found. That is all that this record shows; it is no promise.");
            }
            return;
        }
        out.title(title);
        for (Finding finding : findings) {
            out.blank();
            finding(finding);
        }
    }

    private void finding(Finding finding) {
        Item item = finding.lead();
        String number = finding.number() + ".";
        out.level(pad(number, INDENT), item.risk().orElse(RiskLevel.LOW), item.certainty().map(c -> ", " + c).orElse("")
                + (item.person() ? ", CAN HURT SOMEBODY" : "") + "  " + item.check() + ", " + finding.places());
        for (String text : finding.texts()) {
            out.wrap(" ".repeat(INDENT), INDENT, text);
        }
        item.accepted().ifPresent(a -> labelled("Accepted", "by " + a.who()
                + (a.until().isEmpty() ? "" : " until " + a.until()) + ": " + a.reason()));
        for (Evidence evidence : finding.evidence()) {
            labelled("Line", evidence.where() + "  " + evidence.says());
        }
        for (String measure : finding.measures()) {
            labelled("Measure", measure);
        }
        for (String sum : finding.sums()) {
            labelled("Sum", sum);
        }
        labelled("Why", String.join(" > ", item.chain()));
        labelled("Do", item.todo());
        labelled("Also look", String.join("; ", item.alsoCheck()));
        labelled("By when", item.byWhen());
        labelled("Caution", item.caution());
        labelled("Weight", String.join(" ", item.weighing()));
        labelled("Basis", item.basis());
        for (String open : finding.open()) {
            labelled("Open", open + ".");
        }
    }

    private void labelled(String label, String text) {
        if (!text.isEmpty()) {
            out.wrap(" ".repeat(INDENT) + pad(label, LABEL), INDENT + LABEL, text);
        }
    }

    // --- cannot tell

    private void cannotTell() {
        if (model.groups().isEmpty() && model.beyond().isEmpty()) {
            return;
        }
        out.title("Cannot tell");
        int told = all ? model.groups().size() : Math.min(DETAILED, model.groups().size());
        groups(model.groups().subList(0, told), 1);
        List<Group> rest = model.groups().subList(told, model.groups().size());
        if (!rest.isEmpty()) {
            out.blank();
            out.wrap("  ", 2, "Of less harm: " + Report.count(rest.size(), "reading or look more settles ", "readings and looks more settle ")
                    + Report.count(questions(rest), "question", "questions") + " (" + topics(rest) + "). --all tells them.");
        }
        if (!model.beyond().isEmpty()) {
            out.blank();
            out.wrap("  ", 2, Report.count(questions(model.beyond()), "question more is", "questions more are")
                    + " open of parts on which this record tells of no work (" + topics(model.beyond())
                    + "). They were closed before; if they were opened this time, these are due too."
                    + (all ? "" : " --all tells them."));
            if (all) {
                groups(model.beyond(), told + 1);
            }
        }
    }

    private static int questions(List<Group> groups) {
        int many = 0;
        for (Group group : groups) {
            many += group.items().size();
        }
        return many;
    }

    /** How many questions of each topic: `bottom end 6, head 2`. */
    private static String topics(List<Group> groups) {
        Map<String, Integer> many = new TreeMap<>();
        for (Group group : groups) {
            for (Item item : group.items()) {
                many.merge(item.topic().replace('-', ' '), 1, Integer::sum);
            }
        }
        StringBuilder text = new StringBuilder();
        for (Map.Entry<String, Integer> topic : many.entrySet()) {
            text.append(text.length() == 0 ? "" : ", ").append(topic.getKey()).append(' ').append(topic.getValue());
        }
        return text.toString();
    }

    private void groups(List<Group> groups, int first) {
        int number = first;
        for (Group group : groups) {
            out.blank();
            out.wrap(pad(number++ + ".", INDENT), INDENT, order(group) + ".");
            labelled("Gauge", group.gauge());
            labelled("How", group.how());
            if (!group.also().isEmpty()) {
                labelled("Also", String.join("; ", group.also()));
            }
            for (Question question : group.asked()) {
                labelled("Settles", question.question() + " (" + question.check()
                        + (question.places().isEmpty() ? "" : ", " + question.places()) + "; "
                        + question.risk().map(r -> r.word() + " if not").orElse("not ranked")
                        + (question.person() ? "; CAN HURT SOMEBODY" : "") + ")");
            }
            for (String odds : group.odds()) {
                labelled("Because", odds + ".");
            }
        }
    }

    private static String order(Group group) {
        return group.todo() + (group.at().isEmpty() ? "" : ", at " + group.at());
    }

    private void later() {
        if (model.later().isEmpty()) {
            return;
        }
        out.title("Due later");
        List<String> named = new ArrayList<>();
        for (int i = 0; i < model.later().size() && named.size() < LATER; i++) {
            String check = model.later().get(i).check();
            if (!named.contains(check)) {
                named.add(check);
            }
        }
        out.wrap("  ", 2, Report.count(model.later().size(), "question is", "questions are")
                + " not due yet; the worst of them: " + Wording.join(named) + ".");
    }

    // --- the rest

    private void clear() {
        if (model.topics().isEmpty()) {
            return;
        }
        out.title("Clear");
        for (Topic topic : model.topics()) {
            out.wrap("  " + pad(Topics.said(topic.topic()), 18), 20, topic.clear() + " clear"
                    + (topic.closest().isEmpty() ? "" : "; closest to its limit: " + topic.closest()));
        }
    }

    private void leftOut() {
        if (model.leftOut().isEmpty() && model.remarks().isEmpty()) {
            return;
        }
        out.title("Left out");
        for (LeftOut leftOut : model.leftOut()) {
            out.blank();
            for (String line : leftOut.block()) {
                out.verbatim(line);
            }
        }
        for (String remark : model.remarks()) {
            out.blank();
            out.wrap("  ", 2, remark);
        }
    }

    private void always() {
        out.title("Always");
        for (String caution : model.cautions()) {
            out.wrap("  - ", 4, caution);
        }
    }

    private void since() {
        if (model.since().isEmpty()) {
            return;
        }
        out.title("Since the earlier answer (" + model.since().get().file() + ")");
        for (Told told : model.since().get().told()) {
            out.wrap("  " + pad(Topics.said(told.kind()), LABEL), 2 + LABEL, told.text());
        }
    }

    private void last() {
        out.title("In short");
        model.since().ifPresent(since -> out.wrap("  ", 2, since.sentence()));
        out.wrap("  ", 2, model.tally().text());
        out.wrap("  ", 2, model.standing().sentence());
        if (!model.standing().first().isEmpty()) {
            First first = model.standing().first().get(0);
            out.wrap("  First: ", 9, first.text() + (first.todo().isEmpty() ? "" : " " + first.todo()));
            for (First then : model.standing().first()) {
                if (then.anchor().isEmpty() && then != first) {
                    out.wrap("  Then:  ", 9, then.text() + " " + then.todo());
                }
            }
        }
    }

    private static String pad(String text, int width) {
        return text.length() < width ? text + " ".repeat(width - text.length()) : text + " ";
    }
}
