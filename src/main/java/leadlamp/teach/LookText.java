package leadlamp.teach;

import java.util.List;
import leadlamp.rank.RiskLevel;
import leadlamp.report.ReportModel;
import leadlamp.report.Sheet;

/** Writes an inspection for a terminal. */
public final class LookText {
    private LookText() {
    }

    /** What the visit said, where there was one, and the looks that are left. */
    public static String of(Inspection inspection, int width, boolean colour) {
        Sheet out = new Sheet(width, colour);
        out.strong("Looks at " + inspection.name());
        out.wrap("", 0, "Engine " + inspection.engine() + ". " + inspection.count(Inspection.Standing.ANSWERED) + " of "
                + inspection.entries().size() + " looks answered, " + inspection.count(Inspection.Standing.PARTLY)
                + " in part, " + inspection.count(Inspection.Standing.OPEN) + " not done.");
        if (inspection.visited()) {
            after(inspection, out);
        }
        sheet(inspection, out);
        out.title("What always stands");
        Inspection.CAUTIONS.forEach(caution -> out.wrap("  - ", 4, caution));
        return out.toString();
    }

    private static void after(Inspection inspection, Sheet out) {
        out.title("To reckon with before money changes hands");
        int number = 1;
        for (ReportModel.Finding finding : inspection.reckon()) {
            String text = number++ + ".";
            out.level(text + " ".repeat(Math.max(1, 4 - text.length())), finding.lead().risk().orElse(RiskLevel.LOW), " "
                    + finding.lead().certainty().orElse("") + (finding.lead().person() ? ", CAN HURT SOMEBODY" : "") + "  "
                    + finding.lead().check() + ", " + finding.places());
            out.wrap("    ", 4, String.join(" ", finding.texts()));
            out.wrap("    ", 4, "To put it right: " + finding.lead().todo());
        }
        if (inspection.reckon().isEmpty()) {
            out.wrap("  ", 2, "Nothing of level High or Serious was found by what was looked at.");
        }
        listed(out, "Readings outside their limit:", inspection.outside());
        listed(out, "Signs that want explaining:", inspection.signs());
        listed(out, "What probably happened before (in full: leadlamp past):", inspection.past());
        for (Cylinders.Table table : inspection.tables()) {
            out.title(table.title() + " across the cylinders");
            for (List<String> row : table.rows()) {
                out.wrap("  " + row.get(0) + "  ", 5, row.get(1) + "; " + row.get(2) + (row.get(3).isEmpty() ? "" : "; " + row.get(3)));
            }
            table.reads().forEach(read -> out.wrap("  - ", 4, read));
        }
        out.title("What the looks say");
        for (Inspection.Entry entry : inspection.entries()) {
            if (entry.standing() != Inspection.Standing.OPEN) {
                out.wrap("  ", 2, entry.look().id() + " (" + entry.standing().word() + "): " + entry.look().question());
                entry.said().forEach(said -> out.wrap("    - ", 6, said + "."));
                if (!entry.missing().isEmpty()) {
                    out.wrap("    - ", 6, "Not recorded: " + String.join(", ", entry.missing()) + ".");
                }
            }
        }
        out.title("What stays unknown");
        out.wrap("  ", 2, inspection.open());
    }

    private static void listed(Sheet out, String title, List<String> texts) {
        if (!texts.isEmpty()) {
            out.wrap("  ", 2, title);
            texts.forEach(text -> out.wrap("  - ", 4, text + "."));
        }
    }

    private static void sheet(Inspection inspection, Sheet out) {
        if (!inspection.next().isEmpty()) {
            out.title("The look that is worth its effort next");
            int number = 1;
            for (Inspection.Advice advice : inspection.next()) {
                out.wrap("  " + number++ + ". ", 5, advice.look().id() + " (" + advice.look().depth().name() + "): "
                        + advice.look().look());
                out.wrap("     ", 5, advice.why());
            }
        }
        String depth = "";
        for (Inspection.Entry entry : inspection.entries()) {
            if (entry.standing() == Inspection.Standing.ANSWERED) {
                continue;
            }
            Look look = entry.look();
            if (!look.depth().name().equals(depth)) {
                depth = look.depth().name();
                out.title(LessonText.upper(depth) + ": " + look.depth().means());
            }
            out.wrap("  ", 2, "[ ] " + look.id() + ": " + look.question());
            out.wrap("      Look:    ", 15, look.look());
            out.wrap("      Good:    ", 15, look.good());
            out.wrap("      Bad:     ", 15, look.bad());
            if (!look.caution().isEmpty()) {
                out.wrap("      Caution: ", 15, look.caution());
            }
            if (inspection.visited()) {
                out.wrap("      Hides:   ", 15, hides(entry.hides()));
            }
            for (String line : entry.write()) {
                out.wrap("      " + (line.startsWith(" ") ? "  " : "") , 12, line.strip());
            }
        }
    }

    /** The worst that could hide behind a look that is not done. */
    static String hides(Inspection.Hides hides) {
        StringBuilder text = new StringBuilder();
        hides.worst().ifPresent(level -> text.append(level.word()).append(": ").append(hides.question()));
        if (!hides.past().isEmpty()) {
            text.append(text.length() == 0 ? "It speaks of: " : " It speaks of: ").append(String.join("; ", hides.past())).append('.');
        }
        return text.length() == 0 ? "No check asks about it." : text.toString();
    }
}
