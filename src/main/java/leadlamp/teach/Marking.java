package leadlamp.teach;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import leadlamp.record.Place;
import leadlamp.record.Problem;
import leadlamp.report.ReportModel;

/**
 * An answer file, marked against what the audit finds in the record beside it. Findings that rest on the same lines are one
 * fault; whoever names one of its lines or one of its checks has found it.
 *
 * @param answers  what was answered
 * @param found    faults that were found, worst first
 * @param missed   faults that were missed, worst first
 * @param alarms   answers that no fault stands behind
 * @param problems what of the file could not be taken
 */
public record Marking(Answers answers, List<Hit> found, List<Fault> missed, List<Alarm> alarms, List<Problem> problems) {
    /**
     * What the audit finds at one root.
     *
     * @param items its findings, worst first
     * @param lines lines of the record that it rests on
     */
    record Fault(List<ReportModel.Item> items, Set<Integer> lines) {
        ReportModel.Item lead() {
            return items.get(0);
        }
    }

    /** A fault, and the answer that found it. */
    record Hit(Fault fault, Answers.Entry answer) {
    }

    /** An answer behind which no fault stands, and what the audit says there. */
    record Alarm(Answers.Entry answer, String says) {
    }

    /** Marks. */
    public static Marking of(Answers answers, ReportModel report) {
        List<Fault> faults = faults(report);
        List<Hit> found = new ArrayList<>();
        List<Alarm> alarms = new ArrayList<>();
        Set<Fault> met = new LinkedHashSet<>();
        for (Answers.Entry entry : answers.entries()) {
            Optional<Fault> fault = fault(entry, faults);
            if (fault.isEmpty()) {
                alarms.add(new Alarm(entry, says(entry, report)));
            } else if (met.add(fault.get())) {
                found.add(new Hit(fault.get(), entry));
            }
        }
        List<Fault> missed = new ArrayList<>(faults);
        boolean nothingMarked = answers.exercise().isEmpty() || !answers.problems().isEmpty() && answers.entries().isEmpty();
        missed.removeAll(met);
        found.sort((a, b) -> Integer.compare(faults.indexOf(a.fault()), faults.indexOf(b.fault())));
        return new Marking(answers, List.copyOf(found), nothingMarked ? List.of() : List.copyOf(missed), List.copyOf(alarms),
                answers.problems());
    }

    /** Findings that share a line of the record, put together; in the order of the worst of each. */
    static List<Fault> faults(ReportModel report) {
        List<List<ReportModel.Item>> groups = new ArrayList<>();
        List<Set<Integer>> lines = new ArrayList<>();
        for (ReportModel.Item item : report.found()) {
            Set<Integer> own = new TreeSet<>();
            for (ReportModel.Evidence evidence : item.evidence()) {
                if (evidence.where().file().equals(report.heading().file()) && evidence.where().line() > 0) {
                    own.add(evidence.where().line());
                }
            }
            int home = -1;
            for (int i = 0; i < groups.size(); i++) {
                boolean same = groups.get(i).get(0).check().equals(item.check());
                boolean shared = lines.get(i).stream().anyMatch(own::contains);
                if (!same && !shared) {
                    continue;
                }
                if (home < 0) {
                    home = i;
                    groups.get(i).add(item);
                    lines.get(i).addAll(own);
                } else {
                    groups.get(home).addAll(groups.remove(i));
                    lines.get(home).addAll(lines.remove(i));
                    i--;
                }
            }
            if (home < 0) {
                groups.add(new ArrayList<>(List.of(item)));
                lines.add(own);
            }
        }
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            groups.get(i).sort((a, b) -> Integer.compare(report.found().indexOf(a), report.found().indexOf(b)));
            faults.add(new Fault(List.copyOf(groups.get(i)), lines.get(i)));
        }
        faults.sort((a, b) -> Integer.compare(report.found().indexOf(a.lead()), report.found().indexOf(b.lead())));
        return faults;
    }

    private static Optional<Fault> fault(Answers.Entry entry, List<Fault> faults) {
        for (Fault fault : faults) {
            for (ReportModel.Item item : fault.items()) {
                if (item.check().equals(entry.check()) && (entry.at().isEmpty() || there(entry.at(), item)
                        || fault.lines().contains(entry.line()))) {
                    return Optional.of(fault);
                }
            }
        }
        if (entry.check().isEmpty()) {
            return faults.stream().filter(fault -> fault.lines().contains(entry.line())).findFirst();
        }
        return Optional.empty();
    }

    private static boolean there(String at, ReportModel.Item item) {
        return at.equals(item.at()) || at.equals(item.place()) || at.equals(item.of()) || Place.related(at, item.at());
    }

    private static String says(Answers.Entry entry, ReportModel report) {
        for (ReportModel.Item item : report.found()) {
            if (item.check().equals(entry.check())) {
                return "The right question at another place: it is found at " + item.place() + ".";
            }
        }
        if (!entry.check().isEmpty()) {
            for (ReportModel.Topic topic : report.topics()) {
                for (ReportModel.ClearItem item : topic.items()) {
                    if (item.check().equals(entry.check()) && (entry.at().isEmpty() || entry.at().equals(item.at())
                            || entry.at().equals(item.place()))) {
                        return "The audit calls it clear at " + item.place() + ": " + item.text();
                    }
                }
            }
            return "The audit finds nothing by this check.";
        }
        return "No finding of the audit rests on line " + entry.line() + ".";
    }

    /** Checks that were to be seen: each fault by its worst finding, and whether it was found. */
    public List<Seen> seen() {
        List<Seen> seen = new ArrayList<>();
        found.forEach(hit -> seen.add(new Seen(hit.fault().lead().check(), true)));
        missed.forEach(fault -> seen.add(new Seen(fault.lead().check(), false)));
        return seen;
    }

    /** A check that was to be seen. */
    public record Seen(String check, boolean found) {
    }
}
