package leadlamp.cli;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leadlamp.report.Comparison;
import leadlamp.report.Past;
import leadlamp.report.ReportModel;

/** An answer that was kept, to hold a new one against. */
final class Earlier {
    private final String file;
    private final List<Past> answers;

    private Earlier(String file, List<Past> answers) {
        this.file = file;
        this.answers = answers;
    }

    static Earlier of(String word) throws Complaint {
        Path path = Records.path(word);
        try (InputStream in = new BufferedInputStream(Files.newInputStream(path))) {
            return new Earlier(word, Past.read(in));
        } catch (IllegalArgumentException none) {
            throw new Complaint(Say.quoted(word) + " cannot be compared with. " + none.getMessage()
                    + " Keep one with `leadlamp audit RECORD --as json --out OLD.json`.");
        } catch (IOException unreadable) {
            throw new Complaint("The earlier answer " + Say.quoted(word) + " cannot be read.");
        }
    }

    /** The report held against the answer that was given to the same record; where there is none, as it is. */
    ReportModel beside(ReportModel report, Say say) {
        for (Past past : answers) {
            if (answers.size() == 1 || past.file().equals(report.heading().file())) {
                if (!past.engine().equals(report.heading().sheet())) {
                    say.remark(Say.quoted(file) + " is about another engine, " + past.engine() + ".");
                }
                return Comparison.with(report, past, file);
            }
        }
        say.remark(Say.quoted(file) + " holds no answer about " + report.heading().file() + ".");
        return report;
    }
}
