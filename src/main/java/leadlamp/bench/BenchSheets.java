package leadlamp.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.audit.Audit;
import leadlamp.facts.Fact;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.LimitLine;
import leadlamp.record.Node;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.report.Amounts;
import leadlamp.report.Page;
import leadlamp.report.ReportModel;
import leadlamp.report.Wording;
import leadlamp.words.Quantity;
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
        return page.end(build.file(), build.bytes()).toString();
    }

    // --- tightening

    private String tightening() {
        Page page = begin("Tightening", MANUAL + " A torque holds for the thread state that it is given for, and for no other.");
        for (String joint : build.sheet().names("joints")) {
            new JointSheet(build, joint).write(page);
        }
        return end(page);
    }

    // --- clearances

    private String clearances() {
        Page page = begin("Clearances", MANUAL + " What is read already is filled in; the rest is for the pencil.");
        Map<String, List<LimitLine>> byQuantity = new LinkedHashMap<>();
        for (LimitLine limit : build.sheet().limits()) {
            byQuantity.computeIfAbsent(limit.quantity(), q -> new ArrayList<>()).add(limit);
        }
        for (Map.Entry<String, List<LimitLine>> one : byQuantity.entrySet()) {
            Optional<Quantity> quantity = words.quantity(one.getKey());
            page.element("<h2>", one.getKey(), "</h2>");
            quantity.ifPresent(q -> page.element("<p class=\"soft\">", q.gloss()
                    + (q.derived() && !q.from().isEmpty() ? "; worked out from " + String.join(", ", q.from()) : "")
                    + q.gauge().map(g -> "; usual gauge: " + g).orElse(""), "</p>"));
            for (LimitLine limit : one.getValue()) {
                page.element("<p>", "Limit: " + said(limit), "</p>");
            }
            readings(page, one.getKey(), quantity);
        }
        return end(page);
    }

    private static String said(LimitLine limit) {
        List<String> parts = new ArrayList<>();
        limit.standard().map(Written::text).ifPresent(t -> parts.add("standard " + t));
        limit.least().map(Written::text).ifPresent(t -> parts.add("least " + t));
        limit.most().map(Written::text).ifPresent(t -> parts.add("most " + t));
        if (!limit.times().isEmpty()) {
            parts.add("times " + limit.times());
        }
        if (!limit.at().isEmpty()) {
            parts.add("at " + limit.at());
        }
        if (!limit.when().isEmpty()) {
            parts.add("when " + limit.when());
        }
        limit.where().forEach((word, says) -> parts.add("where " + word + " is " + says));
        limit.asides().forEach((word, says) -> parts.add(word + " " + says));
        return String.join(", ", parts);
    }

    private void readings(Page page, String of, Optional<Quantity> quantity) {
        List<String> places = quantity.flatMap(q -> build.sheet().layout().places(q.group()))
                .orElse(List.of(Place.ENGINE));
        page.raw("<div class=\"wide\"><table>\n<thead><tr><th scope=\"col\">Where</th><th scope=\"col\">Read</th>"
                + "<th scope=\"col\">Against the limit</th><th scope=\"col\">Read at the bench</th></tr></thead>\n<tbody>\n");
        for (String place : places.isEmpty() ? List.of(Place.ENGINE) : places) {
            List<String> read = new ArrayList<>();
            for (Value value : audit.values()) {
                if (value.of().equals(of) && Place.covers(place, value.at())) {
                    String longer = value.at().equals(place) ? "" : value.at() + ": ";
                    read.add(longer + Amounts.of(value));
                }
            }
            String standing = "";
            for (Verdict verdict : audit.verdicts()) {
                if (verdict.of().equals(of) && verdict.at().equals(place)) {
                    standing = Wording.standing(verdict);
                }
            }
            page.raw("<tr><th scope=\"row\">").text(place.equals(Place.ENGINE) ? "engine" : Wording.place("", place))
                    .raw("</th><td>").text(String.join("; ", read)).raw("</td><td>").text(standing)
                    .raw("</td><td class=\"write\"></td></tr>\n");
        }
        page.raw("</tbody>\n</table></div>\n");
    }

    // --- what to order

    private String orderList() {
        Page page = begin("Order list", "Check part numbers against the engine's own number. " + MANUAL);
        page.raw("<h2>Missing</h2>\n");
        List<String> missing = new ArrayList<>();
        Map<String, String> states = new TreeMap<>();
        List<String> wanted = new ArrayList<>();
        for (Fact fact : audit.facts()) {
            if (fact instanceof Stated stated && stated.what().equals("state")) {
                states.merge(stated.of(), stated.says(), (a, b) -> a.equals("new") ? b : a);
                if (stated.says().equals("missing")) {
                    missing.add(Wording.subject(stated.of(), stated.at()));
                }
            } else if (fact instanceof Stated stated && stated.what().equals("class wanted")) {
                wanted.add(Wording.subject(stated.of(), stated.at()) + ": " + stated.says());
            }
        }
        list(page, missing, "The record names no part that is missing.");
        page.raw("<h2>Sizes and classes worked out</h2>\n");
        list(page, wanted, "Nothing can be worked out: the sheet has no table, or a reading is missing.");
        page.raw("<h2>Renewed at every build, by the sheet</h2>\n");
        List<String> renew = new ArrayList<>();
        for (String part : items("renew always", "parts")) {
            String state = states.getOrDefault(part, "");
            renew.add(part + (state.equals("new") || state.equals("ready") ? ": there, new"
                    : state.isEmpty() ? ": not in the record; order it" : ": recorded as " + state + "; order it"));
        }
        for (String joint : items("renew always", "bolts of")) {
            renew.add("bolts of " + joint + bolts(joint));
        }
        list(page, renew, "The sheet names none.");
        page.raw("<h2>To be put right</h2>\n");
        List<String> findings = new ArrayList<>();
        for (ReportModel.Finding finding : report.findings()) {
            findings.add(finding.lead().todo() + " (" + finding.lead().check() + ", " + finding.places() + ")");
        }
        list(page, findings, "Nothing was found.");
        return end(page);
    }

    private String bolts(String joint) {
        return build.sheet().word("joint", joint, "bolts").map(b -> ": " + b).orElse("")
                + build.sheet().word("joint", joint, "thread").map(t -> " of " + t).orElse("");
    }

    private List<String> items(String... keys) {
        List<String> items = new ArrayList<>();
        build.sheet().below(keys).filter(Node.Items.class::isInstance).map(Node.Items.class::cast)
                .ifPresent(list -> list.items().forEach(item -> {
                    if (item instanceof Node.Scalar word) {
                        items.add(word.text());
                    }
                }));
        return items;
    }

    private static void list(Page page, List<String> texts, String none) {
        if (texts.isEmpty()) {
            page.element("<p>", none, "</p>");
            return;
        }
        page.raw("<table>\n<tbody>\n");
        for (String text : texts) {
            page.raw("<tr><td class=\"tick\"></td><td>").text(text).raw("</td></tr>\n");
        }
        page.raw("</tbody>\n</table>\n");
    }

    // --- first start

    private String firstStart() {
        Page page = begin("First start", MANUAL);
        page.raw("<h2>Before anything turns</h2>\n<ul>\n");
        for (String caution : report.cautions()) {
            page.element("<li>", caution, "</li>");
        }
        page.raw("</ul>\n<h2>Open before the start</h2>\n");
        page.element("<p>", report.standing().sentence() + " " + report.tally().text(), "</p>");
        page.raw("<h2>In this order</h2>\n<table>\n<thead><tr><th scope=\"col\">Done</th><th scope=\"col\">Step</th>"
                + "<th scope=\"col\">What it is</th></tr></thead>\n<tbody>\n");
        for (String step : new Start(build, words).steps()) {
            page.raw("<tr><td class=\"tick\"></td><th scope=\"row\">").text(step).raw("</th><td>")
                    .text(words.step(step).map(s -> s.gloss()).orElse("")).raw("</td></tr>\n");
        }
        page.raw("</tbody>\n</table>\n<h2>Stop at once</h2>\n<ul>\n");
        for (String stop : new Start(build, words).stops()) {
            page.element("<li>", stop, "</li>");
        }
        page.raw("</ul>\n");
        return end(page);
    }

    // --- hand-over

    private String handOver() {
        Page page = begin("Hand-over", "What the record says was measured, fitted, tightened and accepted. It is no promise"
                + " that the engine will hold.");
        page.raw("<h2>Found</h2>\n");
        List<String> found = new ArrayList<>();
        for (ReportModel.Finding finding : report.findings()) {
            found.add(finding.lead().risk().map(r -> r.word() + ": ").orElse("") + String.join(" ", finding.texts()));
        }
        plain(page, found, "Nothing was found by these checks.");
        page.raw("<h2>Accepted</h2>\n");
        List<String> accepted = new ArrayList<>();
        for (Build.Accepted entry : build.accepted()) {
            accepted.add(entry.check() + (entry.at().isEmpty() ? "" : " at " + entry.at()) + ": " + entry.reason() + ", by "
                    + entry.who() + (entry.until().isEmpty() ? "" : ", until " + entry.until()));
        }
        plain(page, accepted, "Nothing.");
        page.raw("<h2>Cannot be told</h2>\n");
        page.element("<p>", report.tally().text(), "</p>");
        said(page, "Measured", Statement.Form.READ, "");
        said(page, "Fitted", Statement.Form.STATED, "state");
        page.raw("<h2>Tightened</h2>\n");
        List<String> torques = new ArrayList<>();
        for (Statement line : build.statements()) {
            if (line.form() == Statement.Form.READ && line.of().equals("joint torque")) {
                torques.add(line.at() + ": " + line.value().map(BenchSheets::written).orElse("") + by(line));
            }
        }
        plain(page, torques, "The record has no torque.");
        return end(page);
    }

    private void said(Page page, String title, Statement.Form form, String what) {
        Map<String, List<String>> byWord = new TreeMap<>();
        for (Statement line : build.statements()) {
            boolean wanted = line.form() == form && (form == Statement.Form.READ ? !line.of().startsWith("joint ")
                    : line.what().equals(what));
            if (wanted) {
                String value = form == Statement.Form.READ ? line.value().map(BenchSheets::written).orElse("") + by(line)
                        : line.says();
                String mark = form == Statement.Form.READ && !line.what().isEmpty() ? " " + line.what() : "";
                byWord.computeIfAbsent(line.of() + mark, k -> new ArrayList<>())
                        .add((line.at().equals(Place.ENGINE) ? "" : Wording.place("", line.at()) + ": ") + value);
            }
        }
        page.element("<h2>", title, "</h2>");
        page.raw("<table>\n<tbody>\n");
        for (Map.Entry<String, List<String>> one : byWord.entrySet()) {
            page.raw("<tr><th scope=\"row\">").text(one.getKey()).raw("</th><td>")
                    .text(String.join("; ", one.getValue())).raw("</td></tr>\n");
        }
        page.raw("</tbody>\n</table>\n");
    }

    /** As it was written; a figure of a row has the unit of its row. */
    private static String written(Written value) {
        String text = value.text();
        boolean bare = !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1));
        return bare && !value.unit().word().isEmpty() ? text + " " + value.unit().word() : text;
    }

    private static String by(Statement line) {
        String gauge = line.gauges().isEmpty() ? "" : ", " + String.join(" and ", line.gauges());
        return gauge + line.told().map(t -> ", told by " + t).orElse("");
    }

    private static void plain(Page page, List<String> texts, String none) {
        if (texts.isEmpty()) {
            page.element("<p>", none, "</p>");
        } else {
            page.raw("<ul>\n");
            texts.forEach(text -> page.element("<li>", text, "</li>"));
            page.raw("</ul>\n");
        }
    }
}
