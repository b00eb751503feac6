package leadlamp.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import leadlamp.audit.Audit;
import leadlamp.audit.Auditor;
import leadlamp.audit.Casebook;
import leadlamp.audit.Check;
import leadlamp.audit.Rulebase;
import leadlamp.rank.RiskLevel;
import leadlamp.record.Build;
import leadlamp.record.Fingerprint;
import leadlamp.record.EngineSheet;
import leadlamp.record.Node;
import leadlamp.record.Problem;
import leadlamp.record.RecordReader;
import leadlamp.record.Where;
import leadlamp.record.Yaml;
import leadlamp.report.ProblemText;
import leadlamp.report.Report;
import leadlamp.report.ReportModel;
import leadlamp.teach.Examples;
import leadlamp.teach.Inspection;
import leadlamp.teach.Looks;
import leadlamp.teach.Marker;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;

/** Where a record is taken from its file to its report. One desk serves many records, on many threads. */
final class Desk {
    private final Optional<Ahead> ahead;
    private final Vocabulary words;
    private final RecordReader reader;
    private final Supplier<Auditor> auditor;

    Desk() {
        this.ahead = Optional.empty();
        this.words = Words.compiled();
        this.reader = new RecordReader(words);
        Auditor knows = Auditor.compiled();
        this.auditor = () -> knows;
    }

    private Desk(Ahead ahead) {
        this.ahead = Optional.of(ahead);
        this.words = Words.compiled();
        this.reader = new RecordReader(words);
        this.auditor = ahead::auditor;
    }

    /** One for a single record, whose text is taken apart, and what the checks know loaded, while its engine sheet is read. */
    static Desk of(Path record) {
        return new Desk(new Ahead(record, Auditor::compiled));
    }

    /** The same where nothing but answers is wanted of it. */
    static Desk answering(Path record) {
        return new Desk(new Ahead(record, Auditor::answering));
    }

    /**
     * What goes on beside the reading of an engine sheet and a record, on a thread of its own: a record is taken apart, what the
     * checks know is loaded, and then the rule engine.
     */
    private static final class Ahead extends Thread {
        private final Path record;
        private final Supplier<Auditor> loading;
        private Yaml.File text;
        private Auditor auditor;
        private RuntimeException fault;
        private Error worse;

        Ahead(Path record, Supplier<Auditor> loading) {
            this.record = record;
            this.loading = loading;
            setDaemon(true);
            start();
        }

        @Override
        public void run() {
            try {
                tell(RecordReader.text(record));
                tell(loading.get());
            } catch (RuntimeException failed) {
                tell(failed, null);
                return;
            } catch (Error broken) {
                tell(null, broken);
                return;
            }
            try {
                Rulebase.warmUp();
            } catch (RuntimeException | Error e) {
                // It will be told where it matters, when the rules run.
            }
        }

        private synchronized void tell(Yaml.File read) {
            text = read;
            notifyAll();
        }

        private synchronized void tell(Auditor loaded) {
            auditor = loaded;
            notifyAll();
        }

        private synchronized void tell(RuntimeException failed, Error broken) {
            fault = failed;
            worse = broken;
            notifyAll();
        }

        /** The record, taken apart. */
        synchronized Yaml.File text() {
            while (text == null) {
                await();
            }
            return text;
        }

        synchronized Auditor auditor() {
            while (auditor == null) {
                await();
            }
            return auditor;
        }

        /** Waits for word from the thread; what went wrong there goes wrong here. */
        private void await() {
            if (worse != null) {
                throw worse;
            }
            if (fault != null) {
                throw fault;
            }
            try {
                wait();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("stopped", stopped);
            }
        }
    }

    /**
     * What came of one record.
     *
     * @param audit   what came of its audit; absent where it could not be audited at all
     * @param report  its report; likewise
     * @param reasons why it could not be audited, or not in full; each may have several lines
     */
    record Done(Optional<Audit> audit, Optional<ReportModel> report, List<String> reasons) {
        /** Whether something at this level or above was found. */
        boolean foundAtLeast(RiskLevel level) {
            return report.isPresent() && !report.get().found().isEmpty()
                    && report.get().found().get(0).risk().orElse(RiskLevel.LOW).compareTo(level) <= 0;
        }
    }

    List<Check> checks() {
        return auditor.get().checks();
    }

    /** The cases of the checks, for whoever teaches with them. */
    Examples examples() {
        return new Examples(words, auditor.get(), Casebook.compiled());
    }

    /** What an audit says of an engine of which nothing is recorded yet: all that its sheet has, and no more. */
    Done sheet(Path file) {
        EngineSheet sheet = reader.sheet(file);
        List<String> reasons = new ArrayList<>();
        for (Problem problem : sheet.problems()) {
            reasons.add(String.join("\n", ProblemText.block(problem)));
        }
        if (sheet.tree().fields().isEmpty()) {
            return new Done(Optional.empty(), Optional.empty(), List.copyOf(reasons));
        }
        Build build = reader.build(new Node.Fields(List.of(), new Where(sheet.file(), 0, 0)), sheet.file(), List.of(), List.of(),
                sheet, Fingerprint.NONE);
        Audit audit = auditor.get().audit(build);
        return new Done(Optional.of(audit), Optional.of(Report.of(audit, words)), List.copyOf(reasons));
    }

    /** Marks answer files. */
    Marker marker() {
        return new Marker(words, auditor.get());
    }

    /** The looks at an engine, and what was seen of it. */
    Inspection inspection(Done done) {
        return Inspection.of(done.audit().orElseThrow(), done.report().orElseThrow(), Looks.compiled(words), words);
    }

    Vocabulary words() {
        return words;
    }

    /** Audits a record. Whatever goes wrong comes back as a reason. */
    Done audit(Path file) {
        try {
            return read(file);
        } catch (StackOverflowError | OutOfMemoryError tooMuch) {
            return failed(file, "it is too large or too deep to be read");
        } catch (RuntimeException | Error fault) {
            return failed(file, "Leadlamp itself failed (" + fault + "). The record is not to blame; please keep it and"
                    + " tell whoever looks after Leadlamp");
        }
    }

    private static Done failed(Path file, String reason) {
        return new Done(Optional.empty(), Optional.empty(), List.of(file + ": " + reason + "."));
    }

    private Done read(Path file) {
        RecordReader.Result result = ahead.isPresent() && ahead.get().record.equals(file)
                ? reader.read(file, ahead.get()::text) : reader.read(file);
        if (result.build().isEmpty()) {
            List<String> reasons = new ArrayList<>();
            for (Problem problem : result.problems()) {
                reasons.add(String.join("\n", ProblemText.block(problem)));
            }
            return new Done(Optional.empty(), Optional.empty(), List.copyOf(reasons));
        }
        Build build = result.build().get();
        Audit audit = auditor.get().audit(build);
        ReportModel report = Report.of(audit, words);
        int left = report.leftOut().size();
        return new Done(Optional.of(audit), Optional.of(report), left == 0 ? List.of()
                : List.of(left + (left == 1 ? " thing" : " things") + " in its files could not be read; see what was"
                        + " left out in the report."));
    }
}
