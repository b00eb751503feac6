package leadlamp.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import leadlamp.audit.Audit;
import leadlamp.record.Build;
import leadlamp.report.Page;
import leadlamp.report.ReportModel;
import leadlamp.words.Vocabulary;

/** Sheets to print and take to the bench, made from a record and its engine sheet. */
public final class BenchSheets {
    private static final String MANUAL = "The maker's manual comes before this sheet. A figure is the engine sheet's where it"
            + " is not said otherwise.";

    private final Audit audit;
    private final Build build;
    private final ReportModel report;
    private final Vocabulary words;

    private BenchSheets(Audit audit, ReportModel report, Vocabulary words) {
        this.audit = audit;
        this.build = audit.build();
        this.report = report;
        this.words = words;
    }

    /** The sheets, by the name of their file. */
    public static Map<String, String> of(Audit audit, ReportModel report, Vocabulary words) {
        BenchSheets sheets = new BenchSheets(audit, report, words);
        Map<String, String> all = new LinkedHashMap<>();
        all.put("tightening.html", sheets.tightening());
        all.put("clearances.html", sheets.clearances());
        all.put("order-list.html", sheets.orderList());
        all.put("first-start.html", sheets.firstStart());
        all.put("hand-over.html", sheets.handOver());
        return all;
    }

    private Page begin(String title, String caution) {
        Page page = new Page();
        page.begin(title + ": " + report.heading().name(), title, report.heading().name());
        page.element("<p class=\"facts\">", "Engine " + report.heading().sheet() + "; record " + build.file(), "</p>");
        page.element("<p class=\"facts\">", caution, "</p>");
        return page.raw("</header>\n<main id=\"main\" class=\"sheet\">\n");
    }

    private String end(Page page) {
        return page.end(build.file(), build.bytes().hex()).toString();
    }

    private String tightening() {
        Page page = begin("Tightening", MANUAL + " A torque holds for the thread state that it is given for, and for no other.");
        for (String joint : build.sheet().names("joints")) {
            new JointSheet(build, joint).write(page);
        }
        if (build.sheet().names("joints").isEmpty()) {
            page.raw("<p>The engine sheet has no joints. Copy them from the manual first.</p>\n");
        }
        return end(page);
    }

    private String clearances() {
        Page page = begin("Clearances", MANUAL + " What is read already is filled in; the rest is for the pencil.");
        report.gasket().forEach(page::picture);
        new ClearanceSheet(audit, words).write(page);
        return end(page);
    }

    private String orderList() {
        Page page = begin("Order list", "Check part numbers against the engine's own number. " + MANUAL);
        new OrderList(audit, report).write(page);
        return end(page);
    }

    private String firstStart() {
        Page page = begin("First start", MANUAL);
        Start start = new Start(build, words);
        page.raw("<h2>Before anything turns</h2>\n<ul>\n");
        for (String caution : report.cautions()) {
            page.element("<li>", caution, "</li>");
        }
        page.raw("</ul>\n<h2>Open before the start</h2>\n");
        page.element("<p>", report.standing().sentence() + " " + report.tally().text(), "</p>");
        page.raw("<h2>In this order</h2>\n<table>\n<thead><tr><th scope=\"col\">Done</th><th scope=\"col\">Step</th>"
                + "<th scope=\"col\">What it is</th></tr></thead>\n<tbody>\n");
        for (String step : start.steps()) {
            page.raw("<tr><td class=\"tick\"></td><th scope=\"row\">").text(step).raw("</th><td>")
                    .text(words.step(step).map(s -> s.gloss()).orElse("")).raw("</td></tr>\n");
        }
        page.raw("</tbody>\n</table>\n<h2>Stop at once</h2>\n<ul>\n");
        for (String stop : start.stops()) {
            page.element("<li>", stop, "</li>");
        }
        page.raw("</ul>\n<h2>Write down while it runs</h2>\n<table>\n<tbody>\n");
        for (String reading : start.readings()) {
            page.raw("<tr><th scope=\"row\">").text(reading).raw("</th><td class=\"write\"></td></tr>\n");
        }
        page.raw("</tbody>\n</table>\n");
        return end(page);
    }

    private String handOver() {
        Page page = begin("Hand-over", "What the record says was measured, fitted, tightened and accepted. It is no promise"
                + " that the engine will hold.");
        new HandOver(build, report).write(page);
        return end(page);
    }
}
