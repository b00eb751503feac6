package leadlamp.report;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import leadlamp.rank.RiskLevel;
import leadlamp.report.ReportModel.ClearItem;
import leadlamp.report.ReportModel.Evidence;
import leadlamp.report.ReportModel.Finding;
import leadlamp.report.ReportModel.First;
import leadlamp.report.ReportModel.Group;
import leadlamp.report.ReportModel.Heading;
import leadlamp.report.ReportModel.Item;
import leadlamp.report.ReportModel.LeftOut;
import leadlamp.report.ReportModel.Photo;
import leadlamp.report.ReportModel.Question;
import leadlamp.report.ReportModel.Told;
import leadlamp.report.ReportModel.Topic;
import leadlamp.report.ReportModel.Worked;
import leadlamp.report.draw.Picture;

/** Writes a report as one page that needs nothing beside it: no network, no script. */
public final class HtmlWriter {
    /** So many things to settle are told on paper in full, as a terminal does. */
    private static final int ON_PAPER = 12;
    private static final String HURT = " <span class=\"person\">can hurt somebody</span>";

    private final ReportModel model;
    private final Page page = new Page();
    private final Set<String> opened = new HashSet<>();
    private final Set<String> shown = new HashSet<>();

    private HtmlWriter(ReportModel model) {
        this.model = model;
        for (First first : model.standing().first()) {
            opened.add(first.anchor());
        }
    }

    /** The page. */
    public static String page(ReportModel model) {
        HtmlWriter writer = new HtmlWriter(model);
        writer.head();
        writer.stands();
        writer.since();
        writer.found();
        writer.cannotTell();
        writer.steps();
        writer.accepted();
        writer.later();
        writer.clear();
        writer.gaskets();
        writer.worked();
        writer.photographs();
        writer.leftOut();
        writer.always();
        return writer.page.toString();
    }

    private void head() {
        Heading heading = model.heading();
        page.begin(heading.name() + ": report", "Leadlamp: report on a build record", heading.name());
        page.element("<p class=\"facts\">", "Record " + heading.file() + "; engine " + heading.sheet()
                + (heading.sheetFile().isEmpty() ? "" : " (" + heading.sheetFile() + ")")
                + (heading.sheetFrom().isEmpty() ? "" : ", from: " + heading.sheetFrom()), "</p>");
        if (!heading.stage().isEmpty()) {
            page.element("<p class=\"facts\">", "Stage: " + String.join(", ", heading.stage())
                    + (heading.next().isEmpty() ? "" : "; next: " + Wording.join(heading.next())), "</p>");
        }
        page.raw("</header>\n<main id=\"main\">\n");
    }

    private void stands() {
        page.raw("<section aria-labelledby=\"stands\">\n<h2 id=\"stands\">Before the next step</h2>\n"
                + "<p class=\"standing\">").text(model.standing().sentence()).raw("</p>\n");
        if (!model.standing().first().isEmpty()) {
            page.raw("<ol class=\"first\">\n");
            for (First first : model.standing().first()) {
                page.raw("<li>").raw(badge(first.mark())).raw(first.person() ? HURT : "").raw(" ");
                if (first.anchor().isEmpty()) {
                    page.element("<strong>", first.text(), "</strong>");
                } else {
                    page.raw("<a href=\"#").text(first.anchor()).raw("\">").text(first.text()).raw("</a>");
                }
                if (!first.todo().isEmpty()) {
                    page.raw("<span class=\"todo\">").raw(first.anchor().isEmpty() ? "" : "<strong>Do:</strong> ").text(first.todo()).raw("</span>\n");
                }
                page.raw("</li>\n");
            }
            page.raw("</ol>\n");
        }
        further();
        page.element("<p class=\"soft\">", model.tally().text(), "</p>");
        page.raw("</section>\n");
    }

    /** What is to be put right before the next step and did not find room among the first things. */
    private void further() {
        String before = "<p>Also to put right before it: ";
        for (Finding finding : model.standing().putRight()) {
            if (!opened.contains(finding.anchor())) {
                page.raw(before).raw("<a href=\"#").text(finding.anchor()).raw("\">").text("finding " + finding.number()).raw("</a>");
                before = ", ";
            }
        }
        page.raw(before.equals(", ") ? ".</p>\n" : "");
    }

    private void steps() {
        if (model.ladder().isPresent()) {
            page.raw("<section aria-labelledby=\"steps\">\n<h2 id=\"steps\">Step by step</h2>\n")
                    .picture(model.ladder().get()).raw("</section>\n");
        }
    }

    private void since() {
        if (model.since().isEmpty()) {
            return;
        }
        page.raw("<section aria-labelledby=\"since\">\n<h2 id=\"since\">Since the earlier answer</h2>\n<p>")
                .text(model.since().get().sentence() + " Held against " + model.since().get().file() + ".").raw("</p>\n");
        String kind = "";
        for (Told told : model.since().get().told()) {
            if (!told.kind().equals(kind)) {
                page.raw(kind.isEmpty() ? "" : "</ul>\n").raw("<h3>").text(Topics.said(told.kind())).raw("</h3>\n<ul>\n");
                kind = told.kind();
            }
            page.raw("<li>");
            if (told.anchor().isEmpty()) {
                page.text(told.text());
            } else {
                page.raw("<a href=\"#").text(told.anchor()).raw("\">").text(told.text()).raw("</a>");
            }
            page.raw("</li>\n");
        }
        page.raw(kind.isEmpty() ? "" : "</ul>\n").raw("</section>\n");
    }

    // --- found

    private void found() {
        page.raw("<section aria-labelledby=\"found\">\n<h2 id=\"found\">Found</h2>\n");
        if (model.findings().isEmpty()) {
            page.raw("<p>Nothing was found. That is all that this record shows; it is no promise.</p>\n");
        }
        for (Finding finding : model.findings()) {
            finding(finding);
        }
        model.matrix().ifPresent(page::picture);
        page.raw("</section>\n");
    }

    private void accepted() {
        if (!model.lived().isEmpty()) {
            page.raw("<section aria-labelledby=\"accepted\">\n<h2 id=\"accepted\">Accepted by the builder</h2>\n");
            for (Finding finding : model.lived()) {
                finding(finding);
            }
            page.raw("</section>\n");
        }
    }

    private void finding(Finding finding) {
        Item item = finding.lead();
        page.raw("<details id=\"").text(finding.anchor()).raw(opened.contains(finding.anchor()) ? "\" open>" : "\">")
                .raw("<summary>").raw(finding.number() + ". ").raw(level(item.risk())).raw(" ")
                .text(item.certainty().orElse("")).raw(item.person() ? HURT : "");
        for (String text : finding.texts()) {
            page.raw("<strong class=\"say\">").text(text).raw("</strong>");
        }
        page.raw("<span class=\"soft\">").text(item.check() + ", " + finding.places())
                .raw("</span></summary>\n<div class=\"inside\">\n<dl>\n");
        item.accepted().ifPresent(a -> entry("Accepted", "By " + a.who()
                + (a.until().isEmpty() ? "" : ", until " + a.until()) + ": " + a.reason()));
        evidence(finding.evidence());
        list("Against limit", finding.measures());
        list("The sum", finding.sums());
        page.raw("</dl>\n");
        for (Picture picture : finding.pictures()) {
            page.picture(picture);
        }
        page.raw("<dl>\n");
        chain(item.chain());
        entry("What to do", item.todo());
        list("Also look at", item.alsoCheck());
        entry("By when", item.byWhen());
        entry("Caution", item.caution());
        list("Why this level", item.weighing());
        list("Still open", finding.open());
        entry("To remember", item.teaches());
        entry("Based on", item.basis());
        page.raw("</dl>\n</div>\n</details>\n");
    }

    private void evidence(List<Evidence> evidence) {
        if (!evidence.isEmpty()) {
            page.raw("<dt>Rests on</dt>\n");
            for (Evidence line : evidence) {
                page.raw("<dd><span class=\"soft\">").text(line.where().toString()).raw("</span> <code>")
                        .text(line.says()).raw("</code></dd>\n");
            }
            for (Photo photo : model.photos()) {
                if (belongs(photo, evidence)) {
                    page.raw("<dd>");
                    photograph(photo);
                    page.raw("</dd>\n");
                }
            }
        }
    }

    // --- photographs

    private static boolean belongs(Photo photo, List<Evidence> evidence) {
        for (Evidence line : photo.lines()) {
            for (Evidence other : evidence) {
                if (line.where().line() == other.where().line() && line.where().file().equals(other.where().file())) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Shown once, where it is first spoken of; from then on it is pointed at. */
    private void photograph(Photo photo) {
        if (shown.add(photo.anchor())) {
            page.photo(photo);
        } else {
            page.raw("<a href=\"#" + photo.anchor() + "\">").text("Photograph " + photo.caption()).raw("</a>");
        }
    }

    private void photographs() {
        if (model.photos().isEmpty()) {
            return;
        }
        page.raw("<section aria-labelledby=\"photos\">\n<h2 id=\"photos\">Photographs</h2>\n<dl class=\"photos\">\n");
        for (Photo photo : model.photos()) {
            page.raw("<dt>").text(photo.caption()).raw("</dt>\n");
            for (Evidence line : photo.lines()) {
                page.raw("<dd><span class=\"soft\">").text(line.where().toString()).raw("</span> <code>").text(line.says())
                        .raw("</code></dd>\n");
            }
            page.raw("<dd>");
            photograph(photo);
            page.raw("</dd>\n");
        }
        page.raw("</dl>\n</section>\n");
    }

    private void gaskets() {
        if (!model.gasket().isEmpty()) {
            page.raw("<section aria-labelledby=\"gaskets\">\n<h2 id=\"gaskets\">Gaskets on offer</h2>\n")
                    .picture(model.gasket().get(0)).raw("</section>\n");
        }
    }

    private void chain(List<String> chain) {
        if (!chain.isEmpty()) {
            page.raw("<dt>Cause to harm</dt>\n<dd><ol>");
            for (String link : chain) {
                page.element("<li>", link, "</li>");
            }
            page.raw("</ol></dd>\n");
        }
    }

    private void entry(String label, String text) {
        if (!text.isEmpty()) {
            page.raw("<dt>").raw(label).raw("</dt>\n").element("<dd>", text, "</dd>");
        }
    }

    private void list(String label, List<String> texts) {
        if (!texts.isEmpty()) {
            page.raw("<dt>").raw(label).raw("</dt>\n");
            for (String text : texts) {
                page.element("<dd>", text, "</dd>");
            }
        }
    }

    private static String level(Optional<RiskLevel> risk) {
        return risk.map(level -> badge(level.word())).orElse("");
    }

    /** The word itself says the level; the look only repeats it. */
    private static String badge(String word) {
        String look = word.indexOf(' ') < 0 ? " " + word.toLowerCase(Locale.ROOT) : "";
        return "<span class=\"level" + look + "\">" + word + "</span>";
    }

    // --- cannot tell

    private void cannotTell() {
        if (model.groups().isEmpty() && model.beyond().isEmpty()) {
            return;
        }
        page.raw("<section aria-labelledby=\"open\">\n<h2 id=\"open\">Cannot tell</h2>\n"
                + "<p>By the reading or look that would settle most.</p>\n");
        groups(model.groups(), 1);
        if (!model.beyond().isEmpty()) {
            page.raw("<h3>On these the record tells of no work</h3>\n<p>They were closed before. If they were opened this time, "
                    + "these questions are due too.</p>\n");
            groups(model.beyond(), model.groups().size() + 1);
        }
        page.raw("</section>\n");
    }

    private void groups(List<Group> groups, int first) {
        int number = first;
        for (Group group : groups) {
            String anchor = "settle-" + number;
            // Paper tells so many in full; of the rest what to do and how much it settles.
            page.raw("<details " + (number > ON_PAPER && !opened.contains(anchor) ? "class=\"list\" " : "") + "id=\"" + anchor
                    + (opened.contains(anchor) ? "\" open>" : "\">")).raw("<summary>" + number + ". <strong>").text(group.todo()
                            + (group.at().isEmpty() ? "" : ", at " + group.at()))
                    .raw("</strong> <span class=\"soft\">settles ")
                    .raw(Report.count(group.items().size(), "question", "questions"))
                    .raw("</span></summary>\n<div class=\"inside\">\n<dl>\n");
            entry("Gauge", group.gauge());
            entry("How", group.how());
            list("Wanted beside it", group.also());
            page.raw("</dl>\n");
            questions(group.asked());
            reasons(group.reasons());
            Set<String> drawn = new HashSet<>();
            for (Item item : group.items()) {
                for (Picture picture : item.pictures()) {
                    if (drawn.add(picture.title())) {
                        page.picture(picture);
                    }
                }
            }
            page.raw("</div>\n</details>\n");
            number++;
        }
    }

    private void questions(List<Question> questions) {
        page.raw("<h3>Questions that hang on it</h3>\n<ul>\n");
        for (Question question : questions) {
            page.raw("<li>").text(question.question()).raw(" <span class=\"soft\">")
                    .text(question.check() + (question.places().isEmpty() ? "" : ", " + question.places()))
                    .raw("</span> ").raw(question.risk().isPresent() ? level(question.risk()) + " if not" : "")
                    .raw(question.person() ? HURT : "").raw("</li>\n");
        }
        page.raw("</ul>\n");
    }

    private void reasons(List<String> reasons) {
        page.raw("<h3>Why it cannot be told</h3>\n<ul>\n");
        for (String reason : reasons) {
            page.element("<li>", reason, "</li>");
        }
        page.raw("</ul>\n");
    }

    private void later() {
        if (model.later().isEmpty()) {
            return;
        }
        page.raw("<section aria-labelledby=\"later\">\n<h2 id=\"later\">Due later</h2>\n<details class=\"list\"><summary>")
                .raw(Report.count(model.later().size(), "question is", "questions are"))
                .raw(" not due yet</summary>\n<div class=\"inside\">\n<ul>\n");
        for (Item item : model.later()) {
            page.raw("<li>").text(item.question()).raw(" <span class=\"soft\">").text(item.check() + ", " + item.place())
                    .raw("</span> ").text(item.byWhen()).raw("</li>\n");
        }
        page.raw("</ul>\n</div>\n</details>\n</section>\n");
    }

    // --- the rest

    private void clear() {
        if (model.topics().isEmpty()) {
            return;
        }
        page.raw("<section aria-labelledby=\"clear\">\n<h2 id=\"clear\">Clear</h2>\n");
        for (Topic topic : model.topics()) {
            page.raw("<details class=\"list\"><summary><strong>").text(Topics.said(topic.topic())).raw("</strong>: ")
                    .raw(topic.clear() + " clear").text(topic.closest().isEmpty() ? ""
                            : "; closest to its limit: " + topic.closest())
                    .raw("</summary>\n<div class=\"inside\">\n<ul>\n");
            for (ClearItem item : topic.items()) {
                page.raw("<li>").text(item.check() + ", " + item.place() + ": ").raw("<span class=\"soft\">")
                        .text(item.text()).raw("</span></li>\n");
            }
            page.raw("</ul>\n</div>\n</details>\n");
        }
        page.raw("</section>\n");
    }

    private void worked() {
        if (model.worked().isEmpty()) {
            return;
        }
        page.raw("<section aria-labelledby=\"worked\">\n<h2 id=\"worked\">Worked out</h2>\n<details class=\"list\"><summary>")
                .raw(Report.count(model.worked().size(), "value", "values"))
                .raw(" with their sums</summary>\n<div class=\"inside\">\n<dl>\n");
        for (Worked worked : model.worked()) {
            page.raw("<dt>").text(Wording.subject(worked.of(), worked.at())).raw("</dt>\n<dd>").text(worked.text())
                    .text(worked.verdict().isEmpty() ? ", no limit" : ", " + worked.verdict() + "; limit "
                            + (worked.least().isEmpty() ? "" : "least " + worked.least() + " ")
                            + (worked.most().isEmpty() ? "" : "most " + worked.most() + " ") + worked.unit()
                            + ", the " + worked.whose() + "'s")
                    .raw("</dd>\n");
            page.element("<dd><code>", worked.sum(), "</code></dd>");
        }
        page.raw("</dl>\n</div>\n</details>\n</section>\n");
    }

    private void leftOut() {
        if (model.leftOut().isEmpty() && model.remarks().isEmpty()) {
            return;
        }
        page.raw("<section aria-labelledby=\"leftout\">\n<h2 id=\"leftout\">Left out</h2>\n");
        for (LeftOut leftOut : model.leftOut()) {
            page.raw("<pre>");
            for (String line : leftOut.block()) {
                page.text(line).raw("\n");
            }
            page.raw("</pre>\n");
        }
        for (String remark : model.remarks()) {
            page.element("<p>", remark, "</p>");
        }
        page.raw("</section>\n");
    }

    private void always() {
        page.raw("<section aria-labelledby=\"always\">\n<h2 id=\"always\">What always stands</h2>\n<ul>\n");
        for (String caution : model.cautions()) {
            page.element("<li>", caution, "</li>");
        }
        page.raw("</ul>\n<h3>What this report does not know</h3>\n<ul>\n");
        for (String limit : model.limits()) {
            page.element("<li>", limit, "</li>");
        }
        page.raw("</ul>\n</section>\n").end(model.heading().file(), model.heading().bytes().hex());
    }
}
