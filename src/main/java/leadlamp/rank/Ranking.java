package leadlamp.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.Supplier;
import leadlamp.audit.Answer;
import leadlamp.audit.Audit;
import leadlamp.audit.Check;
import leadlamp.audit.Finding;
import leadlamp.audit.Gap;
import leadlamp.audit.LastChance;
import leadlamp.audit.Severity;
import leadlamp.audit.Way;
import leadlamp.facts.Ask;
import leadlamp.facts.Condition;
import leadlamp.record.Build;
import leadlamp.record.EngineSheet;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.words.Vocabulary;

/**
 * The answers in their order, each in one list.
 *
 * @param found    what was found, worst first; with it, marked, what is accepted though it can hurt somebody
 * @param accepted what was found and the builder lives with, worst first
 * @param open     what cannot be told and is due now, worst first
 * @param groups   those of them that this work reached, each once, under what would settle most
 * @param beyond   the others likewise: what they ask of was closed before, and the record tells of no work there
 * @param later    what cannot be told and is not due yet, worst first
 * @param clear    what is clear, by topic, check and place
 * @param unused   entries under `accepted` that accept nothing that was found
 * @param ranOut   entries under `accepted` whose time is over by the record's own latest date; they accept nothing
 */
public record Ranking(List<Ranked> found, List<Ranked> accepted, List<Ranked> open, List<OpenGroup> groups,
        List<OpenGroup> beyond, List<Ranked> later, List<Ranked> clear, List<Build.Accepted> unused, List<Build.Accepted> ranOut) {

    private static final int YEAR = 4;
    private static final String HARM = "harm if it lets go";

    /** Ranks what came of an audit. */
    public static Ranking of(Audit audit, Course course, Vocabulary words) {
        Map<String, Integer> order = new TreeMap<>();
        for (Course.Rung rung : course.rungs()) {
            order.put(rung.step(), order.size());
        }
        Set<String> holding = new TreeSet<>();
        for (Condition condition : audit.conditions()) {
            holding.add(condition.name());
        }
        return of(audit.answers(), holding, audit.build().sheet(), audit.build().accepted(), latest(audit.build()),
                answer -> chance(audit.lastChance(answer), order),
                () -> new Scope(audit.build(), Course.graph(audit.build(), words), words)::tellsOf, words);
    }

    /** The latest date of the record: no clock is asked, so that an answer is the same tomorrow. */
    private static String latest(Build build) {
        String latest = "";
        for (Statement line : build.statements()) {
            String date = line.asides().getOrDefault("date", "");
            if (year(date) && date.compareTo(latest) > 0) {
                latest = date;
            }
        }
        return latest;
    }

    private static boolean year(String date) {
        for (int i = 0; i < YEAR; i++) {
            if (i >= date.length() || date.charAt(i) < '0' || date.charAt(i) > '9') {
                return false;
            }
        }
        return true;
    }

    /** `2026-03` is over when a day of `2026-04` stands in the record; what is no date never is. */
    private static boolean over(String until, String latest) {
        return year(until) && latest.compareTo(until) > 0 && !latest.startsWith(until);
    }

    private static Chance chance(LastChance last, Map<String, Integer> order) {
        return switch (last.standing()) {
            case NEXT -> new Chance(last.step(), Chance.Standing.NEXT, order.getOrDefault(last.step(), order.size()));
            case PASSED -> new Chance(last.step(), Chance.Standing.PASSED, order.getOrDefault(last.step(), order.size()));
            case LATER -> new Chance(last.step(), Chance.Standing.LATER, order.getOrDefault(last.step(), order.size()));
            case NONE -> Chance.none();
        };
    }

    /**
     * Ranks the answers.
     *
     * @param answers    one a check, subject and place, in whatever order
     * @param conditions named conditions that hold
     * @param sheet      says how bad it is if a joint lets go
     * @param accepted   entries of the record
     * @param latest     the latest date of the record, as `2026-03-14`; empty where it has none
     * @param chances    the last chance of each
     * @param words      the vocabulary
     */
    public static Ranking of(List<Answer> answers, Set<String> conditions, EngineSheet sheet,
            List<Build.Accepted> entries, String latest, Chances chances, Vocabulary words) {
        return of(answers, conditions, sheet, entries, latest, chances, () -> question -> true, words);
    }

    private static Ranking of(List<Answer> answers, Set<String> conditions, EngineSheet sheet, List<Build.Accepted> entries,
            String latest, Chances chances, Supplier<Predicate<Ranked>> scope, Vocabulary words) {
        Scale scale = new Scale(conditions, harms(sheet));
        List<Ranked> found = new ArrayList<>();
        List<Ranked> lived = new ArrayList<>();
        List<Ranked> open = new ArrayList<>();
        List<Ranked> later = new ArrayList<>();
        List<Ranked> clear = new ArrayList<>();
        List<Build.Accepted> accepted = new ArrayList<>();
        List<Build.Accepted> ranOut = new ArrayList<>();
        for (Build.Accepted entry : entries) {
            (over(entry.until(), latest) ? ranOut : accepted).add(entry);
        }
        List<Build.Accepted> unused = new ArrayList<>(accepted);
        for (Answer answer : answers) {
            Optional<Build.Accepted> entry = entry(answer, accepted);
            Ranked ranked = ranked(answer, scale, chances.of(answer), entry);
            if (answer instanceof Answer.Found) {
                entry.ifPresent(unused::remove);
                (entry.isPresent() && !ranked.person() ? lived : found).add(ranked);
            } else if (answer instanceof Answer.CannotTell untold) {
                (untold.later() ? later : open).add(ranked);
            } else {
                clear.add(ranked);
            }
        }
        found.sort(Order.FOUND);
        lived.sort(Order.FOUND);
        open.sort(Order.OPEN);
        later.sort(Order.OPEN);
        clear.sort(Order.CLEAR);
        List<Ranked> ours = new ArrayList<>();
        List<Ranked> beyond = new ArrayList<>();
        if (!open.isEmpty()) {
            Predicate<Ranked> tells = scope.get();
            for (Ranked question : open) {
                (tells.test(question) ? ours : beyond).add(question);
            }
        }
        Wants wants = new Wants(words);
        return new Ranking(List.copyOf(found), List.copyOf(lived), List.copyOf(open), OpenGroup.of(ours, wants), OpenGroup.of(beyond, wants),
                List.copyOf(later), List.copyOf(clear), List.copyOf(unused), List.copyOf(ranOut));
    }

    /** Whether the record says nothing yet that a check could go by: nothing was found, and nothing is clear. */
    public boolean blank() {
        return found.isEmpty() && accepted.isEmpty() && clear.isEmpty() && !(open.isEmpty() && later.isEmpty());
    }

    /** All answers in ranked order: found, accepted, cannot tell, due later, clear. */
    public List<Ranked> all() {
        List<Ranked> all = new ArrayList<>(found);
        all.addAll(accepted);
        all.addAll(open);
        all.addAll(later);
        all.addAll(clear);
        return all;
    }

    /** Whether something at this level or above was found, what is accepted left out. */
    public boolean foundAtLeast(RiskLevel level) {
        return !found.isEmpty() && found.get(0).weights().get(0).level().compareTo(level) <= 0;
    }

    private static Ranked ranked(Answer answer, Scale scale, Chance chance, Optional<Build.Accepted> entry) {
        Optional<Severity> joint = scale.joint(answer.ask());
        List<Weight> weights = new ArrayList<>();
        if (!(answer instanceof Answer.Clear)) {
            for (Way way : answer.check().ways()) {
                if (concerns(answer, way.name())) {
                    weights.add(Weight.of(answer.check(), way, joint, scale.conditions));
                }
            }
        }
        // A stable sort: ways of one weight stay in the order of the page.
        weights.sort((one, other) -> one.level() != other.level() ? one.level().compareTo(other.level())
                : one.severity().compareTo(other.severity()));
        Optional<Certainty> certainty = Optional.empty();
        if (answer instanceof Answer.Found found) {
            certainty = certainty(found, weights.get(0).way());
        }
        return new Ranked(answer, List.copyOf(weights), certainty, chance, entry);
    }

    private static boolean concerns(Answer answer, String way) {
        if (answer instanceof Answer.Found found) {
            for (Finding finding : found.findings()) {
                if (finding.way().equals(way)) {
                    return true;
                }
            }
        } else if (answer instanceof Answer.CannotTell untold) {
            for (Gap gap : untold.gaps()) {
                if (gap.way().equals(way)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The surest finding of the heaviest way. */
    private static Optional<Certainty> certainty(Answer.Found found, String way) {
        Certainty surest = Certainty.INFERRED;
        for (Finding finding : found.findings()) {
            if (finding.way().equals(way) && Certainty.of(found.check(), finding) == Certainty.PROVEN) {
                surest = Certainty.PROVEN;
            }
        }
        return Optional.of(surest);
    }

    private static Optional<Build.Accepted> entry(Answer answer, List<Build.Accepted> accepted) {
        for (Build.Accepted entry : accepted) {
            if (entry.check().equals(answer.check().id()) && fits(entry.at(), answer.ask())) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    /** An entry without a place takes in all places of its check. */
    private static boolean fits(String at, Ask ask) {
        return at.isEmpty() || at.equals(ask.of()) || at.equals(ask.of() + " at " + ask.at())
                || Place.covers(at, ask.at());
    }

    private static List<Statement> harms(EngineSheet sheet) {
        List<Statement> harms = new ArrayList<>();
        for (Statement line : sheet.statements()) {
            if (line.what().equals(HARM) && !line.at().equals(Place.ENGINE)) {
                harms.add(line);
            }
        }
        return harms;
    }

    private record Scale(Set<String> conditions, List<Statement> harms) {
        /** The harm of the joint asked of; where a bolt or row of it has a line of its own, that line. */
        Optional<Severity> joint(Ask ask) {
            Statement nearest = null;
            Place at = Place.of(ask.at());
            for (Statement line : harms) {
                boolean here = Place.of(line.at()).covers(at)
                        || !ask.of().isEmpty() && Place.covers(line.at(), ask.of());
                if (here && (nearest == null || Place.covers(nearest.at(), line.at()))) {
                    nearest = line;
                }
            }
            return nearest == null ? Optional.empty() : severity(nearest.says());
        }

        private static Optional<Severity> severity(String word) {
            for (Severity severity : Severity.values()) {
                if (severity.word().toLowerCase(Locale.ROOT).equals(word.toLowerCase(Locale.ROOT))) {
                    return Optional.of(severity);
                }
            }
            return Optional.empty();
        }
    }
}
