package leadlamp.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import leadlamp.report.HtmlWriter;
import leadlamp.report.JsonWriter;
import leadlamp.report.ReportModel;
import leadlamp.report.SarifWriter;
import leadlamp.report.TerminalWriter;

/** The forms in which a report is written. */
enum Form {
    TERMINAL("terminal", ".txt"), HTML("html", ".html"), JSON("json", ".json"), SARIF("sarif", ".sarif");

    /** How much a terminal shows. */
    enum Amount {
        BRIEF, USUAL, ALL
    }

    private final String word;
    private final String ending;

    Form(String word, String ending) {
        this.word = word;
        this.ending = ending;
    }

    static Form named(String word) throws Complaint {
        List<String> known = new ArrayList<>();
        for (Form form : values()) {
            if (form.word.equals(word)) {
                return form;
            }
            known.add(form.word);
        }
        throw Arguments.unknown("form", word, known);
    }

    /** What the name of a file of this form ends in. */
    String ending() {
        return ending;
    }

    /** Whether several reports can stand in one stream. */
    boolean together() {
        return this != HTML;
    }

    /** Writes one report. */
    void write(ReportModel model, Say say, Amount amount, OutputStream out) throws IOException {
        switch (this) {
            case TERMINAL -> out.write((amount == Amount.BRIEF ? TerminalWriter.brief(model, say.cut(), say.colour())
                    : TerminalWriter.full(model, amount == Amount.ALL, say.width(), say.colour())).getBytes(StandardCharsets.UTF_8));
            case HTML -> out.write(HtmlWriter.page(model).getBytes(StandardCharsets.UTF_8));
            case JSON -> JsonWriter.write(model, out);
            case SARIF -> SarifWriter.write(List.of(model), Version.NUMBER, out);
        }
    }

    /** Writes several reports into one stream. */
    void write(List<ReportModel> models, Say say, Amount amount, OutputStream out) throws IOException {
        switch (this) {
            case JSON -> JsonWriter.write(models, out);
            case SARIF -> SarifWriter.write(models, Version.NUMBER, out);
            default -> {
                boolean first = true;
                for (ReportModel model : models) {
                    if (!first && amount != Amount.BRIEF) {
                        out.write('\n');
                    }
                    first = false;
                    write(model, say, amount, out);
                }
            }
        }
    }
}
