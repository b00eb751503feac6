package leadlamp.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlamp.rank.RiskLevel;
import leadlamp.record.Place;
import leadlamp.report.ReportModel.Change;
import leadlamp.report.ReportModel.ClearItem;
import leadlamp.report.ReportModel.Finding;
import leadlamp.report.ReportModel.Item;
import leadlamp.report.ReportModel.Since;
import leadlamp.report.ReportModel.Told;

/**
 * Holds a report against an earlier answer: what is new, what got worse, what is settled. Answers are matched by check and
 * place, so that a line added to the record moves nothing.
 */
public final class Comparison {
    private static final String NEW = "new";
    private static final String WORSE = "worse";
    private static final String SETTLED = "settled";
    private static final String ACCEPTED = "accepted";
    private static final String LATER = "not due";
    private static final String NOT_ASKED = "not asked";

    private final Past past;
    private final List<Change> fresh = new ArrayList<>();
    private final List<Change> worse = new ArrayList<>();
    private final List<Change> settled = new ArrayList<>();
    private final Map<String, Gathered> told = new LinkedHashMap<>();

    /** Changes that are told as one. */
    private static final class Gathered {
        private final String kind;
        private final String before;
        private final String after;
        private final String anchor;
        private final List<String> places = new ArrayList<>();

        Gathered(String kind, String before, String after, String anchor) {
            this.kind = kind;
            this.before = before;
            this.after = after;
            this.anchor = anchor;
        }
    }

    private Comparison(Past past) {
        this.past = past;
    }

    /**
     * The report with what became of the earlier answer.
     *
     * @param file the earlier answer, as it was named
     */
    public static ReportModel with(ReportModel model, Past past, String file) {
        return model.since(new Comparison(past).since(model, file));
    }

    private Since since(ReportModel model, String file) {
        Map<String, Past.Answer> left = new LinkedHashMap<>(past.answers());
        Map<String, String> anchors = anchors(model);
        for (Item item : model.found()) {
            found(item, left.remove(key(item)), anchors.getOrDefault(key(item), ""));
        }
        for (Item item : model.accepted()) {
            Past.Answer was = left.remove(key(item));
            if (was != null && was(was).equals(ReportModel.Outcome.FOUND.word())) {
                change(settled, SETTLED, item.check(), item.of(), item.at(), item.place(), was, ACCEPTED, "", anchors.getOrDefault(key(item), ""));
            }
        }
        for (Item item : model.open()) {
            lost(item, left.remove(key(item)), ReportModel.Outcome.CANNOT_TELL.word());
        }
        for (Item item : model.later()) {
            lost(item, left.remove(key(item)), LATER);
        }
        for (ClearItem item : model.clear()) {
            Past.Answer was = left.remove(Since.key(item.check(), item.of(), item.at()));
            if (was != null && !was(was).equals(ReportModel.Outcome.CLEAR.word())) {
                change(settled, SETTLED, item.check(), item.of(), item.at(), item.place(), was, ReportModel.Outcome.CLEAR.word(), "", "");
            }
        }
        for (Past.Answer was : left.values()) {
            String word = was(was);
            if (word.equals(ReportModel.Outcome.FOUND.word()) || word.equals(ReportModel.Outcome.CANNOT_TELL.word())) {
                change(settled, SETTLED, was.check(), was.of(), was.at(), place(was), was, NOT_ASKED, "", "");
            }
        }
        List<Told> all = told();
        return new Since(file, past.bytes(), sentence(all), all, List.copyOf(fresh), List.copyOf(worse), List.copyOf(settled), before());
    }

    private void found(Item item, Past.Answer was, String anchor) {
        String before = was == null ? NOT_ASKED : was(was);
        String now = ReportModel.Outcome.FOUND.word();
        String risk = item.risk().map(RiskLevel::word).orElse("");
        if (before.equals(ACCEPTED)) {
            change(worse, WORSE, item.check(), item.of(), item.at(), item.place(), was, now, risk, anchor);
        } else if (!before.equals(now)) {
            change(fresh, NEW, item.check(), item.of(), item.at(), item.place(), was, now, risk, anchor);
        } else if (heavier(risk, was.risk())) {
            change(worse, WORSE, item.check(), item.of(), item.at(), item.place(), was, now, risk, anchor);
        }
    }

    /** What was clear before and is no longer known got worse; what was found and is found no longer is settled, if not clear. */
    private void lost(Item item, Past.Answer was, String now) {
        String before = was == null ? NOT_ASKED : was(was);
        if (before.equals(ReportModel.Outcome.FOUND.word()) || before.equals(ACCEPTED)) {
            change(settled, SETTLED, item.check(), item.of(), item.at(), item.place(), was, now, "", "");
        } else if (before.equals(ReportModel.Outcome.CLEAR.word())) {
            change(worse, WORSE, item.check(), item.of(), item.at(), item.place(), was, now, "", "");
        }
    }

    private static boolean heavier(String now, String before) {
        int heavy = -1;
        int light = -1;
        for (RiskLevel level : RiskLevel.values()) {
            heavy = level.word().equals(now) ? level.ordinal() : heavy;
            light = level.word().equals(before) ? level.ordinal() : light;
        }
        return heavy >= 0 && light >= 0 && heavy < light;
    }

    private void change(List<Change> list, String kind, String check, String of, String at, String place, Past.Answer was, String now,
            String risk, String anchor) {
        String before = was == null ? NOT_ASKED : was(was);
        list.add(new Change(check, of, at, before, now));
        String level = was == null || was.risk().isEmpty() || !before.equals(now) ? "" : " (" + was.risk() + ")";
        String after = now + (risk.isEmpty() ? "" : " (" + risk + ")");
        told.computeIfAbsent(kind + '\n' + check + '\n' + before + level + '\n' + after,
                k -> new Gathered(kind, said("was", before) + level, check + '\n' + said("is", now) + (risk.isEmpty() ? "" : " (" + risk + ")"), anchor)).places.add(place);
    }

    private static String said(String verb, String outcome) {
        if (outcome.equals(ReportModel.Outcome.CANNOT_TELL.word())) {
            return verb.equals("was") ? "could not be told" : "cannot be told";
        }
        return verb + " " + outcome;
    }

    private List<Told> told() {
        List<Told> all = new ArrayList<>();
        for (String kind : List.of(NEW, WORSE, SETTLED)) {
            for (Gathered one : told.values()) {
                if (one.kind.equals(kind)) {
                    int line = one.after.indexOf('\n');
                    String places = Wording.together(one.places);
                    all.add(new Told(kind, one.after.substring(0, line) + (places.isEmpty() ? "" : ", " + places) + ": " + one.before + ", "
                            + one.after.substring(line + 1) + ".", one.anchor));
                }
            }
        }
        return List.copyOf(all);
    }

    private static String sentence(List<Told> all) {
        int[] many = new int[3];
        for (Told one : all) {
            many[one.kind().equals(NEW) ? 0 : one.kind().equals(WORSE) ? 1 : 2]++;
        }
        return all.isEmpty() ? "Since the earlier answer nothing is new, nothing is worse and nothing is settled."
                : "Since the earlier answer: " + many[0] + " new, " + many[1] + " worse, " + many[2] + " settled.";
    }

    private Map<String, String> before() {
        Map<String, String> before = new TreeMap<>();
        past.answers().forEach((key, answer) -> before.put(key, was(answer)));
        return before;
    }

    private static String was(Past.Answer answer) {
        return answer.accepted() ? ACCEPTED : answer.later() ? LATER : answer.outcome();
    }

    private static Map<String, String> anchors(ReportModel model) {
        Map<String, String> anchors = new TreeMap<>();
        for (List<Finding> list : List.of(model.findings(), model.lived())) {
            for (Finding finding : list) {
                finding.items().forEach(item -> anchors.put(key(item), finding.anchor()));
            }
        }
        return anchors;
    }

    private static String place(Past.Answer was) {
        String at = Wording.place("", was.at());
        return was.of().isEmpty() || was.of().equals(was.at()) ? at : was.at().equals(Place.ENGINE) ? was.of() : was.of() + " at " + at;
    }

    private static String key(Item item) {
        return Since.key(item.check(), item.of(), item.at());
    }
}
