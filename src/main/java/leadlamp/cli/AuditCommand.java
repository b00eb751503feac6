package leadlamp.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import leadlamp.rank.RiskLevel;
import leadlamp.record.Build;
import leadlamp.report.Photographs;
import leadlamp.report.Plain;
import leadlamp.report.ReportModel;

/** The ranked risk report of one record or many. */
final class AuditCommand {
    private static final String AS = "--as";
    private static final String OUT = "--out";
    private static final String AT_LEAST = "--at-least";
    private static final String BRIEF = "--brief";
    private static final String ALL = "--all";
    private static final String SINCE = "--since";
    private static final int CLEAN = 0;
    private static final int FOUND = 1;
    private static final int NOT_IN_FULL = 2;
    /** So many records for each core are under way at once; the others wait, so that memory does not grow with them. */
    private static final int AHEAD = 4;

    private final Say say;
    private final Form form;
    private final Form.Amount amount;
    private final RiskLevel level;
    private final List<Path> records;
    private final Optional<Target> target;
    private final Optional<Earlier> earlier;
    private int status = CLEAN;
    private int loud;
    private int notInFull;

    private AuditCommand(Arguments arguments, Say say) throws Complaint {
        if (arguments.words().isEmpty()) {
            throw new Complaint("Which record? Name a file or a folder after audit.");
        }
        this.say = say;
        this.form = Form.named(arguments.value(AS).orElse("terminal"));
        this.amount = arguments.has(BRIEF) ? Form.Amount.BRIEF : arguments.has(ALL) ? Form.Amount.ALL : Form.Amount.USUAL;
        this.level = level(arguments.value(AT_LEAST).orElse(RiskLevel.HIGH.word()));
        this.records = Records.named(arguments.words());
        this.target = arguments.value(OUT).isPresent()
                ? Optional.of(Target.of(arguments.value(OUT).get(), records.size())) : Optional.empty();
        this.earlier = arguments.value(SINCE).isPresent() ? Optional.of(Earlier.of(arguments.value(SINCE).get())) : Optional.empty();
        if (amount != Form.Amount.USUAL && form != Form.TERMINAL) {
            throw new Complaint((amount == Form.Amount.BRIEF ? BRIEF : ALL) + " is for the terminal; leave it out, or leave --as out.");
        }
        if (arguments.has(BRIEF) && arguments.has(ALL)) {
            throw new Complaint("--brief and --all do not go together; leave one out.");
        }
        if (records.size() > 1 && target.isEmpty() && !form.together()) {
            throw new Complaint("Several pages want a folder: name one with --out.");
        }
    }

    static int run(List<String> typed, Say say) throws Complaint, IOException {
        Arguments arguments = Arguments.of(typed, Map.of(AS, "a form", OUT, "a file or a folder", AT_LEAST,
                "a risk level", BRIEF, "", ALL, "", SINCE, "an earlier JSON answer"));
        AuditCommand command = new AuditCommand(arguments, say);
        if (command.records.size() == 1) {
            Path record = command.records.get(0);
            // The pages and the data list all that was worked out; the terminal and the code host have the answers alone.
            command.one(command.form == Form.TERMINAL || command.form == Form.SARIF ? Desk.answering(record) : Desk.of(record));
        } else {
            command.many(new Desk());
        }
        return command.status;
    }

    private static RiskLevel level(String word) throws Complaint {
        List<String> known = new ArrayList<>();
        for (RiskLevel level : RiskLevel.values()) {
            if (level.word().toLowerCase(Locale.ROOT).equals(word.toLowerCase(Locale.ROOT))) {
                return level;
            }
            known.add(level.word().toLowerCase(Locale.ROOT));
        }
        throw Arguments.unknown("risk level", word, known.subList(0, RiskLevel.LOW.ordinal() + 1));
    }

    private void one(Desk desk) throws Complaint, IOException {
        Path record = records.get(0);
        Desk.Done done = desk.audit(record);
        count(record, done);
        if (done.report().isEmpty()) {
            return;
        }
        ReportModel report = whole(record, done);
        if (target.isPresent()) {
            Path file = target.get().file(record, form);
            write(report, file);
            say.result(line(report, file));
        } else {
            form.write(report, say, amount, say.out());
        }
    }

    private void many(Desk desk) throws Complaint, IOException {
        int cores = Math.min(Runtime.getRuntime().availableProcessors(), records.size());
        ExecutorService pool = Executors.newFixedThreadPool(cores);
        List<ReportModel> together = new ArrayList<>();
        StringBuilder summary = new StringBuilder();
        try {
            Deque<Future<Desk.Done>> under = new ArrayDeque<>();
            Iterator<Path> waiting = records.iterator();
            for (Path record : records) {
                while (waiting.hasNext() && under.size() < cores * AHEAD) {
                    Path next = waiting.next();
                    under.add(pool.submit(() -> desk.audit(next)));
                }
                Desk.Done done = under.remove().get();
                count(record, done);
                if (done.report().isPresent()) {
                    summary.append(report(record, whole(record, done), together));
                } else {
                    summary.append(record).append(": not audited.\n");
                }
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new Complaint("Stopped before all records were audited.");
        } catch (ExecutionException fault) {
            throw new IllegalStateException(fault.getCause());
        } finally {
            pool.shutdownNow();
        }
        if (target.isEmpty() && form != Form.TERMINAL) {
            form.write(together, say, amount, say.out());
        }
        summary(summary.append(total()).toString());
    }

    /** The report with what stands beside the record: an earlier answer, and for a page its photographs. */
    private ReportModel whole(Path record, Desk.Done done) {
        ReportModel report = done.report().orElseThrow();
        if (earlier.isPresent()) {
            report = earlier.get().beside(report, say);
        }
        Build build = done.audit().orElseThrow().build();
        if (form == Form.HTML && !build.photos().isEmpty()) {
            report = report.photos(Photographs.of(build, record));
            for (ReportModel.Photo photo : report.photos()) {
                if (!photo.problem().isEmpty()) {
                    say.remark(photo.problem());
                }
            }
        }
        return report;
    }

    /** Writes the report, or keeps it for the stream that holds them all; gives its line of the summary. */
    private String report(Path record, ReportModel report, List<ReportModel> together) throws Complaint, IOException {
        if (target.isPresent()) {
            Path file = target.get().file(record, form);
            write(report, file);
            return line(report, file);
        }
        if (form == Form.TERMINAL) {
            form.write(report, say, amount, say.out());
            if (amount != Form.Amount.BRIEF) {
                say.result("\n");
            }
        } else {
            together.add(report);
        }
        return line(report, record);
    }

    private static String line(ReportModel report, Path file) {
        return Plain.of(report.heading().name() + " (" + file + "): " + report.tally().text()) + "\n";
    }

    private String total() {
        return records.size() + " records; " + loud + " with something found at " + level.word() + " or above; "
                + notInFull + " not audited in full.\n";
    }

    /** A summary never stands among data: it goes to the reader's eye, not into the stream of reports. */
    private void summary(String text) throws IOException {
        if (target.isEmpty() && form != Form.TERMINAL) {
            for (String line : text.split("\n")) {
                say.remark(line);
            }
        } else {
            say.result(text);
        }
    }

    private void write(ReportModel report, Path file) throws Complaint, IOException {
        Say plain = new Say(say.out(), say.err(), say.width(), false, false);
        try (OutputStream out = Target.open(file, records)) {
            form.write(report, plain, amount, out);
        }
    }

    private void count(Path record, Desk.Done done) {
        for (String reason : done.reasons()) {
            say.remark(done.report().isPresent() ? record + ": " + reason : reason);
        }
        if (!done.reasons().isEmpty()) {
            status = NOT_IN_FULL;
            notInFull++;
        }
        if (done.foundAtLeast(level)) {
            status = Math.max(status, FOUND);
            loud++;
        }
    }
}
