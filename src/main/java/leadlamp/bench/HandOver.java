package leadlamp.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlamp.quantity.Written;
import leadlamp.rank.RiskLevel;
import leadlamp.record.Build;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.report.Page;
import leadlamp.report.ReportModel;
import leadlamp.report.Wording;

/** What goes along with the engine: what was measured, fitted, tightened, found and accepted, as the record says. */
final class HandOver {
    private final Build build;
    private final ReportModel report;

    HandOver(Build build, ReportModel report) {
        this.build = build;
        this.report = report;
    }

    void write(Page page) {
        page.raw("<h2>Found</h2>\n");
        if (report.findings().isEmpty()) {
            page.raw("<p>Nothing was found by these checks.</p>\n");
        } else {
            page.raw("<ol>\n");
            for (ReportModel.Finding finding : report.findings()) {
                page.raw("<li><strong>").text(finding.lead().risk().map(RiskLevel::word).orElse("Not ranked") + ", " + finding.places())
                        .raw(finding.lead().person() ? ", can hurt somebody" : "").raw(":</strong> ")
                        .text(String.join(" ", finding.texts())).raw("</li>\n");
            }
            page.raw("</ol>\n");
        }
        page.raw("<h2>Accepted</h2>\n");
        List<String> accepted = new ArrayList<>();
        for (Build.Accepted entry : build.accepted()) {
            accepted.add(entry.check() + (entry.at().isEmpty() || entry.at().equals(Place.ENGINE) ? "" : " at " + entry.at()) + ": "
                    + entry.reason() + ", by " + entry.who() + (entry.until().isEmpty() ? "" : ", until " + entry.until()));
        }
        plain(page, accepted, "Nothing.");
        page.raw("<h2>Cannot be told</h2>\n");
        page.element("<p>", report.tally().text(), "</p>");
        table(page, "Measured", measured(), "The record has no reading.");
        table(page, "Fitted", fitted(), "The record has no part.");
        table(page, "Tightened", tightened(), "The record has no torque.");
        photographs(page);
        page.raw("<h2>Handed over</h2>\n<p class=\"sign\">By ______________________ to ______________________ on ______________</p>\n");
    }

    private Map<String, String> measured() {
        Map<String, List<String>> byWord = new TreeMap<>();
        for (Statement line : build.statements()) {
            if (line.form() == Statement.Form.READ && !line.of().startsWith("joint ")) {
                String mark = line.what().isEmpty() ? "" : " " + line.what();
                byWord.computeIfAbsent(line.of() + mark, k -> new ArrayList<>()).add(at(line)
                        + line.value().map(HandOver::written).orElse("") + by(line));
            }
        }
        return joined(byWord);
    }

    /** A state with all the places of it. */
    private Map<String, String> fitted() {
        Map<String, Map<String, List<String>>> byPart = new TreeMap<>();
        for (Statement line : build.statements()) {
            if (line.form() == Statement.Form.STATED && line.what().equals("state") && !line.says().equals("unknown")) {
                byPart.computeIfAbsent(line.of(), p -> new LinkedHashMap<>()).computeIfAbsent(line.says() + told(line), s -> new ArrayList<>())
                        .add(line.at().equals(Place.ENGINE) || line.at().equals(line.of()) ? Place.ENGINE : Wording.place("", line.at()));
            }
        }
        Map<String, List<String>> said = new TreeMap<>();
        byPart.forEach((part, states) -> states.forEach((state, places) -> {
            String together = Wording.together(places);
            said.computeIfAbsent(part, p -> new ArrayList<>()).add(state + (together.isEmpty() ? "" : ": " + together));
        }));
        return joined(said);
    }

    private Map<String, String> tightened() {
        Map<String, String> torques = new LinkedHashMap<>();
        for (Statement line : build.statements()) {
            boolean torque = line.form() == Statement.Form.READ && (line.of().equals("joint torque") || line.of().equals("joint angle"));
            if (torque) {
                torques.merge(line.at(), line.value().map(HandOver::written).orElse("") + by(line), (a, b) -> a + ", then " + b);
            } else if (line.of().equals("joint") && line.what().equals("torque said")) {
                torques.putIfAbsent(line.at(), line.says());
            }
        }
        return torques;
    }

    private static Map<String, String> joined(Map<String, List<String>> byWord) {
        Map<String, String> joined = new TreeMap<>();
        byWord.forEach((word, said) -> joined.put(word, String.join("; ", said)));
        return joined;
    }

    private static String at(Statement line) {
        return line.at().equals(Place.ENGINE) || line.at().equals(line.of()) ? "" : Wording.place("", line.at()) + ": ";
    }

    /** As it was written; a figure of a row has the unit of its row. */
    private static String written(Written value) {
        String text = value.text();
        boolean bare = !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1));
        return bare && !value.unit().word().isEmpty() ? text + " " + value.unit().word() : text;
    }

    private static String by(Statement line) {
        return (line.gauges().isEmpty() ? "" : ", " + String.join(" and ", line.gauges())) + told(line);
    }

    private static String told(Statement line) {
        return line.told().map(t -> ", told by " + t).orElse("");
    }

    private static void table(Page page, String title, Map<String, String> rows, String none) {
        page.element("<h2>", title, "</h2>");
        if (rows.isEmpty()) {
            page.element("<p>", none, "</p>");
            return;
        }
        page.raw("<table>\n<tbody>\n");
        rows.forEach((word, said) -> page.raw("<tr><th scope=\"row\">").text(word).raw("</th><td>").text(said).raw("</td></tr>\n"));
        page.raw("</tbody>\n</table>\n");
    }

    private void photographs(Page page) {
        if (!report.photos().isEmpty()) {
            page.raw("<h2>Photographs</h2>\n");
            report.photos().forEach(page::photo);
        }
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
