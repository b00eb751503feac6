package leadlamp.teach;

import java.util.List;
import java.util.Locale;
import leadlamp.rank.RiskLevel;
import leadlamp.report.Page;
import leadlamp.report.ReportModel;
import leadlamp.words.Vocabulary;

/** Writes an inspection as a page to print and take along, or to read after the visit. */
public final class LookPage {
    private LookPage() {
    }

    /** The page. */
    public static String of(Inspection inspection) {
        Page page = new Page();
        page.begin("Looks: " + inspection.name(), "Leadlamp: looks at an engine", inspection.name());
        page.element("<p class=\"facts\">", "Engine " + inspection.engine() + ". " + inspection.count(Inspection.Standing.ANSWERED)
                + " of " + inspection.entries().size() + " looks answered, " + inspection.count(Inspection.Standing.PARTLY)
                + " in part, " + inspection.count(Inspection.Standing.OPEN) + " not done.", "</p>");
        page.raw("<ul>\n");
        Inspection.CAUTIONS.forEach(caution -> page.element("<li>", caution, "</li>"));
        page.raw("</ul>\n</header>\n<main id=\"main\" class=\"sheet\">\n");
        if (inspection.visited()) {
            after(inspection, page);
        }
        next(inspection, page);
        looks(inspection, page);
        return page.end(inspection.file(), inspection.bytes()).toString();
    }

    /** The plan of all looks, for the handbook. */
    static String plan(List<Look> looks, Vocabulary words, String made) {
        Page page = new Page();
        page.begin("Looks: handbook", "Leadlamp: handbook", "Looks at an engine with an unknown past");
        page.raw("<ul>\n");
        Inspection.CAUTIONS.forEach(caution -> page.element("<li>", caution, "</li>"));
        page.raw("</ul>\n<p><a href=\"index.html\">All topics</a></p>\n</header>\n<main id=\"main\" class=\"sheet\">\n");
        String depth = "";
        for (Look look : looks) {
            depth = begin(look, depth, page);
            entry(page, "Record", String.join(", ", look.record()));
            entry(page, "Speaks of", String.join("; ", look.tells().stream().map(e -> words.events().getOrDefault(e, e)).toList()));
            entry(page, "Based on", LessonText.upper(look.basis()) + "; " + look.id());
            page.raw("</dl>\n");
        }
        return page.end(made, "").toString();
    }

    private static void after(Inspection inspection, Page page) {
        page.raw("<h2>To reckon with before money changes hands</h2>\n");
        if (inspection.reckon().isEmpty()) {
            page.raw("<p>Nothing of level High or Serious was found by what was looked at.</p>\n");
        } else {
            page.raw("<ol>\n");
            for (ReportModel.Finding finding : inspection.reckon()) {
                RiskLevel level = finding.lead().risk().orElse(RiskLevel.LOW);
                page.raw("<li><span class=\"level " + level.word().toLowerCase(Locale.ROOT) + "\">" + level.word() + "</span> ")
                        .text(finding.lead().certainty().orElse(""))
                        .raw(finding.lead().person() ? " <span class=\"person\">can hurt somebody</span>" : "").raw(" ")
                        .element("<span class=\"soft\">", finding.lead().check() + ", " + finding.places(), "</span>");
                finding.texts().forEach(text -> page.element("<p>", text, "</p>"));
                page.element("<p>", "To put it right: " + finding.lead().todo(), "</p>").raw("</li>\n");
            }
            page.raw("</ol>\n");
        }
        listed("Readings outside their limit", inspection.outside(), page);
        listed("Signs that want explaining", inspection.signs(), page);
        listed("What probably happened before (in full: leadlamp past)", inspection.past(), page);
        for (Cylinders.Table table : inspection.tables()) {
            page.element("<h2>", table.title() + " across the cylinders", "</h2>");
            page.raw("<div class=\"wide\"><table>\n<thead><tr><th scope=\"col\">Cylinder</th><th scope=\"col\">Read</th>"
                    + "<th scope=\"col\">To the best</th><th scope=\"col\">Against the limit</th></tr></thead>\n<tbody>\n");
            for (List<String> row : table.rows()) {
                page.raw("<tr><th scope=\"row\">").text(row.get(0)).raw("</th>");
                row.subList(1, row.size()).forEach(cell -> page.raw("<td>").text(cell).raw("</td>"));
                page.raw("</tr>\n");
            }
            page.raw("</tbody>\n</table></div>\n<ul>\n");
            table.reads().forEach(read -> page.element("<li>", read, "</li>"));
            page.raw("</ul>\n");
        }
        page.raw("<h2>What the looks say</h2>\n<dl>\n");
        for (Inspection.Entry entry : inspection.entries()) {
            if (entry.standing() != Inspection.Standing.OPEN) {
                page.element("<dt>", entry.look().id() + " (" + entry.standing().word() + ")", "</dt>");
                page.element("<dd>", entry.look().question(), "</dd>");
                entry.said().forEach(said -> page.element("<dd>", said + ".", "</dd>"));
                if (!entry.missing().isEmpty()) {
                    page.element("<dd>", "Not recorded: " + String.join(", ", entry.missing()) + ".", "</dd>");
                }
            }
        }
        page.raw("</dl>\n<h2>What stays unknown</h2>\n").element("<p class=\"standing\">", inspection.open(), "</p>");
    }

    private static void listed(String title, List<String> texts, Page page) {
        if (!texts.isEmpty()) {
            page.element("<h3>", title, "</h3>").raw("<ul>\n");
            texts.forEach(text -> page.element("<li>", text + ".", "</li>"));
            page.raw("</ul>\n");
        }
    }

    private static void next(Inspection inspection, Page page) {
        if (inspection.next().isEmpty()) {
            return;
        }
        page.raw("<h2>The look that is worth its effort next</h2>\n<ol>\n");
        for (Inspection.Advice advice : inspection.next()) {
            page.raw("<li>").text(advice.look().id() + " (" + advice.look().depth().name() + "): " + advice.look().look() + " "
                    + advice.why()).raw("</li>\n");
        }
        page.raw("</ol>\n");
    }

    private static void looks(Inspection inspection, Page page) {
        String depth = "";
        for (Inspection.Entry entry : inspection.entries()) {
            if (entry.standing() == Inspection.Standing.ANSWERED) {
                continue;
            }
            Look look = entry.look();
            depth = begin(look, depth, page);
            if (inspection.visited()) {
                entry(page, "Hides", LookText.hides(entry.hides()));
            }
            page.raw("<dt>Write</dt>\n<dd><pre>").text(entry.write().isEmpty() ? "" : entry.write().get(0));
            entry.write().subList(Math.min(1, entry.write().size()), entry.write().size()).forEach(line -> page.raw("\n").text(line));
            page.raw("</pre></dd>\n");
            entry(page, "Based on", LessonText.upper(look.basis()) + "; " + look.id());
            page.raw("</dl>\n");
        }
    }

    /** What every look begins with, under its depth where that is a new one; the depth. */
    private static String begin(Look look, String before, Page page) {
        String depth = look.depth().name();
        if (!depth.equals(before)) {
            page.element("<h2>", LessonText.upper(depth) + ": " + look.depth().means(), "</h2>");
        }
        page.element("<h3>", look.question(), "</h3>").raw("<dl>\n");
        entry(page, "Look", look.look());
        entry(page, "Good", look.good());
        entry(page, "Bad", look.bad());
        entry(page, "Caution", look.caution());
        return depth;
    }

    private static void entry(Page page, String label, String text) {
        if (!text.isEmpty()) {
            page.raw("<dt>" + label + "</dt>\n").element("<dd>", text, "</dd>");
        }
    }
}
