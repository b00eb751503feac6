package leadlamp.rank;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import leadlamp.audit.Gap;
import leadlamp.words.Vocabulary;

/** What would close a gap. All signs and words of one part are one look at it. */
final class Wants {
    private static final String OF_THE_SHEET = "sheet ";
    /** A joint is looked at by itself, under its own name; several of which the same is wanted are one job. */
    static final Want JOINTS = new Want(Want.How.JOINT, "");
    private static final String JOINT = "joint";

    private final Vocabulary words;
    /** Questions are sorted into groups round by round, and asked the same each time. */
    private final Map<Gap, List<Wanted>> ofGaps = new IdentityHashMap<>();
    private final Map<Ranked, TreeSet<Want>> ofQuestions = new IdentityHashMap<>();

    Wants(Vocabulary words) {
        this.words = words;
    }

    /** One thing wanted, and of a look what it is for. */
    record Wanted(Want want, String detail) {
    }

    /** What would close this gap; all of it is wanted. */
    List<Wanted> of(Gap gap) {
        List<Wanted> known = ofGaps.get(gap);
        if (known == null) {
            known = find(gap);
            ofGaps.put(gap, known);
        }
        return known;
    }

    private List<Wanted> find(Gap gap) {
        switch (gap.why()) {
            case TOO_COARSE:
                return List.of(new Wanted(new Want(Want.How.FINER, gap.need()), ""));
            case NO_LIMIT:
                return List.of(new Wanted(new Want(Want.How.SHEET, "limit of " + gap.need()), ""));
            default:
                List<Wanted> wanted = new ArrayList<>();
                for (String reading : gap.readings().isEmpty() ? List.of(gap.need()) : gap.readings()) {
                    if (reading.startsWith(OF_THE_SHEET)) {
                        wanted.add(new Wanted(new Want(Want.How.SHEET, reading.substring(OF_THE_SHEET.length())), ""));
                    } else if (gap.why() == Gap.Why.SHEET_SILENT) {
                        wanted.add(new Wanted(new Want(Want.How.SHEET, reading), ""));
                    } else {
                        add(reading, gap.places(), wanted);
                    }
                }
                return wanted;
        }
    }

    /** What stands behind the name of a word that is worked out and never written. */
    private static final List<String> WORKED_OUT = List.of(" against sheet", " over sheet", " under sheet", " in question");
    private static final String AGAINST_WANTED = " class against wanted";
    private static final String WANTED = " class wanted";

    /** A word that the program works out is never to be written down: what it is worked out of is. */
    private static String written(String reading) {
        for (String worked : List.of(AGAINST_WANTED, WANTED)) {
            if (reading.endsWith(worked)) {
                return reading.substring(0, reading.length() - worked.length()) + " class mark";
            }
        }
        for (String worked : WORKED_OUT) {
            if (reading.endsWith(worked)) {
                return reading.substring(0, reading.length() - worked.length());
            }
        }
        return reading;
    }

    private void add(String asked, List<String> places, List<Wanted> wanted) {
        String reading = words.quantity(asked).isPresent() ? asked : written(asked);
        if (words.quantity(reading).isEmpty()) {
            for (int at = reading.lastIndexOf(' '); at > 0; at = reading.lastIndexOf(' ', at - 1)) {
                String part = reading.substring(0, at);
                if (!part.equals(JOINT) && words.part(part).isPresent()) {
                    wanted.add(new Wanted(new Want(Want.How.LOOK, part), reading.substring(at + 1)));
                    return;
                }
            }
            if (reading.startsWith(JOINT + ' ') && !places.isEmpty()) {
                for (String joint : places) {
                    wanted.add(new Wanted(new Want(Want.How.JOINT, joint), reading.substring(JOINT.length() + 1)));
                }
                return;
            }
        }
        wanted.add(new Wanted(new Want(Want.How.RECORD, reading), ""));
    }

    /** All that this question wants, each once. */
    TreeSet<Want> of(Ranked question) {
        TreeSet<Want> known = ofQuestions.get(question);
        if (known == null) {
            known = new TreeSet<>();
            for (Gap gap : question.gaps()) {
                for (Wanted wanted : of(gap)) {
                    known.add(wanted.want());
                }
            }
            ofQuestions.put(question, known);
        }
        return known;
    }

    /** Where it is wanted, in the order of the places. */
    List<String> places(Want want, List<Ranked> answers) {
        TreeSet<String> places = new TreeSet<>(Order::natural);
        if (want.how() == Want.How.JOINT) {
            return List.of();
        }
        for (Ranked answer : answers) {
            for (Gap gap : answer.gaps()) {
                for (Wanted wanted : of(gap)) {
                    if (wanted.want().compareTo(want) == 0) {
                        places.addAll(gap.places());
                    }
                }
            }
        }
        return List.copyOf(places);
    }

    /** Of a look, what it is for, by name. */
    List<String> details(Want want, List<Ranked> answers) {
        TreeSet<String> details = new TreeSet<>();
        for (Ranked answer : answers) {
            for (Gap gap : answer.gaps()) {
                for (Wanted wanted : of(gap)) {
                    if (wanted.want().compareTo(want) == 0 && !wanted.detail().isEmpty()) {
                        details.add(wanted.detail());
                    }
                }
            }
        }
        return List.copyOf(details);
    }
}
