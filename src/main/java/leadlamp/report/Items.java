package leadlamp.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.TreeSet;
import leadlamp.audit.Answer;
import leadlamp.audit.Check;
import leadlamp.audit.Finding;
import leadlamp.audit.Gap;
import leadlamp.facts.Condition;
import leadlamp.facts.Fact;
import leadlamp.facts.NotSeen;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.rank.Certainty;
import leadlamp.rank.Chance;
import leadlamp.rank.Ranked;
import leadlamp.rank.Shift;
import leadlamp.rank.Weight;
import leadlamp.record.Where;
import leadlamp.report.ReportModel.Acceptance;
import leadlamp.report.ReportModel.Because;
import leadlamp.report.ReportModel.ClearItem;
import leadlamp.report.ReportModel.Evidence;
import leadlamp.report.ReportModel.Item;
import leadlamp.report.ReportModel.Outcome;
import leadlamp.report.draw.Picture;

/** Turns ranked answers into the items of a report. */
final class Items {
    private final String record;
    private final Lines lines;
    private final Map<String, List<Verdict>> verdicts;
    private final Map<String, Condition> conditions = new TreeMap<>();
    private final Function<Verdict, Optional<String>> settling;
    private List<Picture> gasket = List.of();

    /**
     * @param settling the gauge that would settle an undecided verdict
     */
    Items(String record, Lines lines, Map<String, List<Verdict>> verdicts, List<Condition> conditions,
            Function<Verdict, Optional<String>> settling) {
        this.settling = settling;
        this.record = record;
        this.lines = lines;
        this.verdicts = verdicts;
        for (Condition condition : conditions) {
            this.conditions.put(condition.name(), condition);
        }
    }

    /** The picture of the gaskets on offer, to stand beside what hangs on the gasket. */
    void gasket(List<Picture> picture) {
        gasket = picture;
    }

    List<Item> of(List<Ranked> ranked) {
        List<Item> items = new ArrayList<>(ranked.size());
        for (Ranked one : ranked) {
            items.add(item(one));
        }
        return List.copyOf(items);
    }

    Item item(Ranked ranked) {
        Check check = ranked.check();
        List<Finding> findings = findings(ranked);
        List<Because> because = because(ranked.gaps(), findings.isEmpty());
        List<Fact> facts = new ArrayList<>();
        List<String> ways = new ArrayList<>();
        for (Finding finding : findings) {
            facts.addAll(finding.evidence());
            if (!ways.contains(finding.way())) {
                ways.add(finding.way());
            }
        }
        List<Verdict> concerned = concerned(facts, ranked.gaps());
        return new Item(check.id(), check.topic(), check.question(), ranked.ask().of(),
                ranked.ask().at(), Wording.place(check.askedOf(), ranked.ask()),
                findings.isEmpty() ? Outcome.CANNOT_TELL : Outcome.FOUND, List.copyOf(ways),
                ranked.heaviest().map(Weight::level), weighing(ranked), ranked.certainty().map(Certainty::word),
                ranked.person(), step(ranked.chance()), byWhen(ranked.chance()),
                findings.isEmpty() ? untold(because) : sentences(check, findings, facts), evidence(facts),
                sums(facts, concerned), measures(facts, concerned), check.chain(), check.todo(), check.alsoCheck(),
                check.settleWith(), check.caution(), check.teaches(), check.basis(),
                ranked.accepted().map(a -> new Acceptance(a.reason(), a.who(), a.until(), a.where())), because, room(facts),
                new Later<>(() -> pictures(concerned, facts)));
    }

    /** To the figures of a float, so that two alike stay alike. */
    private static float room(List<Fact> facts) {
        float room = 0;
        for (Fact fact : facts) {
            if (fact instanceof Verdict verdict) {
                room = Math.min(room, (float) Margin.room(verdict));
            }
        }
        return room;
    }

    // --- clear

    ClearItem clear(Ranked one) {
        Answer.Clear clear = (Answer.Clear) one.answer();
        return new ClearItem(one.check().id(), one.check().topic(), one.ask().of(), one.ask().at(),
                Wording.place(one.check().askedOf(), one.ask()), step(one.chance()), one.person(),
                margins(clear.margins()), new Later<>(() -> evidence(clear.grounds())));
    }

    private static String margins(List<Verdict> margins) {
        if (margins.isEmpty()) {
            return "Nothing found; what it needs is recorded.";
        }
        Verdict closest = margins.get(0);
        for (Verdict margin : margins) {
            if (Margin.room(margin) < Margin.room(closest)) {
                closest = margin;
            }
        }
        String text = Wording.against(closest);
        return margins.size() == 1 ? text
                : text + " " + Report.count(margins.size() - 1, "more value has", "more values have") + " more room.";
    }

    // --- sentences

    private static List<Finding> findings(Ranked ranked) {
        if (!(ranked.answer() instanceof Answer.Found found)) {
            return List.of();
        }
        // Heaviest way first; findings of one way stay in the audit's order.
        List<Finding> sorted = new ArrayList<>();
        for (Weight weight : ranked.weights()) {
            for (Finding finding : found.findings()) {
                if (finding.way().equals(weight.way())) {
                    sorted.add(finding);
                }
            }
        }
        return sorted;
    }

    private static String sentences(Check check, List<Finding> findings, List<Fact> facts) {
        List<String> sentences = new ArrayList<>();
        for (Finding finding : findings) {
            String sentence = Sentences.of(check, finding);
            if (!sentences.contains(sentence)) {
                sentences.add(sentence);
            }
        }
        TreeSet<String> tellers = new TreeSet<>();
        for (Fact fact : facts) {
            String told = fact.told();
            if (!told.isEmpty()) {
                tellers.add(told);
            }
        }
        if (!tellers.isEmpty()) {
            sentences.add("Told by: " + String.join(", ", tellers) + "; not seen in this build.");
        }
        return String.join(" ", sentences);
    }

    private static String untold(List<Because> because) {
        List<String> sentences = new ArrayList<>();
        for (Because one : because) {
            String sentence = sentence(one.text());
            if (!sentences.contains(sentence)) {
                sentences.add(sentence);
            }
        }
        return String.join(" ", sentences);
    }

    private static String sentence(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".";
    }

    /** Beside a finding, what is only due later is no news. */
    private List<Because> because(List<Gap> gaps, boolean later) {
        List<Because> because = new ArrayList<>(gaps.size());
        for (Gap gap : gaps) {
            if (gap.why() == Gap.Why.DUE_LATER && !later) {
                continue;
            }
            because.add(new Because(gap.why().word(), gap.need(), gap.places(), gap.readings(), gap.outside(),
                    gap.way(), Wording.gap(gap) + settledBy(gap)));
        }
        return List.copyOf(because);
    }

    /** The gauge in the record, else the kind of gauge, that is fine enough to settle what is too near its limit. */
    private String settledBy(Gap gap) {
        if (gap.why() == Gap.Why.TOO_COARSE) {
            for (Verdict verdict : verdicts.getOrDefault(gap.need(), List.of())) {
                Optional<String> gauge = gap.places().contains(verdict.at()) ? settling.apply(verdict) : Optional.empty();
                if (gauge.isPresent()) {
                    return "; read with the " + gauge.get() + " it would be settled";
                }
            }
        }
        return "";
    }

    // --- when

    private static Optional<String> step(Chance chance) {
        return chance.step().isEmpty() ? Optional.empty() : Optional.of(chance.step());
    }

    private static String byWhen(Chance chance) {
        return switch (chance.standing()) {
            case NEXT -> "Before " + chance.step() + ", which comes next.";
            case PASSED -> "It is closed in since " + chance.step() + "; open it up again before more goes on top.";
            case LATER -> "Before " + chance.step() + ".";
            case NONE -> "No step closes it in.";
        };
    }

    // --- how heavy

    private List<String> weighing(Ranked ranked) {
        if (ranked.weights().isEmpty()) {
            return List.of();
        }
        Weight weight = ranked.weights().get(0);
        String level = (ranked.certainty().isPresent() ? "" : "If it is so: ") + weight.severity().word()
                + (weight.ofTheJoint() ? ", which the sheet says of this joint if it lets go," : "") + " and "
                + weight.likelihood().word() + " is " + weight.level().word() + ".";
        return weight.shifts().isEmpty() ? List.of(level) : List.of(level, shifted(weight));
    }

    private String shifted(Weight weight) {
        List<String> up = new ArrayList<>();
        List<String> down = new ArrayList<>();
        for (Shift shift : weight.shifts()) {
            (shift.by() > 0 ? up : down).add(shift.condition() + lines(shift.condition()));
        }
        if (!up.isEmpty() && !down.isEmpty()) {
            return "The likelihood stays " + weight.usual().word() + ": one step up for " + Wording.join(up)
                    + ", one step down for " + Wording.join(down) + ".";
        }
        String direction = up.isEmpty() ? "down" : "up";
        String reason = Wording.join(up.isEmpty() ? down : up);
        if (weight.likelihood() == weight.usual()) {
            return "The likelihood is " + weight.usual().word() + " already and goes no further " + direction + " for "
                    + reason + ".";
        }
        return "The likelihood goes one step " + direction + ", from " + weight.usual().word() + " to "
                + weight.likelihood().word() + ": " + reason + ".";
    }

    private String lines(String name) {
        Condition condition = conditions.get(name);
        if (condition == null || condition.places().isEmpty()) {
            return "";
        }
        List<String> places = new ArrayList<>();
        for (Where where : condition.places()) {
            String text = where.file() + " line " + where.line();
            if (where.line() > 0 && !places.contains(text)) {
                places.add(where.file().equals(record) ? 0 : places.size(), text);
            }
        }
        return places.isEmpty() ? "" : " (" + String.join(", ", places) + ")";
    }

    // --- evidence

    /** The record's own lines first, for they are what the builder can change. */
    private List<Evidence> evidence(List<Fact> facts) {
        List<Evidence> evidence = new ArrayList<>();
        List<Evidence> sheet = new ArrayList<>();
        Set<Shown> shown = new HashSet<>();
        for (Fact fact : facts) {
            for (Where where : fact.places()) {
                String line = lines.at(where);
                String text = dated(fact, line.isEmpty() ? said(fact, where) : line);
                if (shown.add(new Shown(where, text))) {
                    (where.file().equals(record) ? evidence : sheet).add(new Evidence(where, text));
                }
            }
        }
        evidence.addAll(sheet);
        return List.copyOf(evidence);
    }

    /** The day on which a sign was looked for, where it stands on another line of the entry. */
    private static String dated(Fact fact, String text) {
        Map<String, String> asides = fact instanceof Seen seen ? seen.asides() : fact instanceof NotSeen clear ? clear.asides() : Map.of();
        String date = asides.getOrDefault("date", "");
        return date.isEmpty() || text.contains(date) ? text : text + " (" + date + ")";
    }

    /** A row says many things of one line, and is shown once. */
    private record Shown(String file, int line, String text) {
        Shown(Where where, String text) {
            this(where.file(), where.line(), text);
        }
    }

    /** A line whose text is not at hand, in our own words. */
    private static String said(Fact fact, Where where) {
        if (fact instanceof Verdict verdict) {
            boolean limit = verdict.limit().where().isPresent()
                    && verdict.limit().where().get().compareTo(where) == 0;
            return limit ? "limit of " + verdict.of() + ": " + Amounts.sides(verdict)
                    : Wording.subject(verdict.of(), verdict.at()) + ": " + Amounts.of(verdict.value());
        }
        if (fact instanceof Value value) {
            return Wording.subject(value.of(), value.at()) + ": " + Amounts.of(value);
        }
        if (fact instanceof Stated stated) {
            return Wording.subject(stated.of() + " " + stated.what(), stated.at()) + ": " + stated.says();
        }
        if (fact instanceof OnSheet line) {
            return Wording.subject(line.of() + " " + line.what(), line.at()) + ": " + line.says();
        }
        if (fact instanceof Seen seen) {
            return Wording.subject(seen.of(), seen.at()) + ": " + seen.sign();
        }
        if (fact instanceof NotSeen seen) {
            return Wording.subject(seen.of(), seen.at()) + ": no " + seen.sign();
        }
        return fact instanceof Condition condition ? condition.name() : fact.at();
    }

    // --- figures

    /** The verdicts that a finding rests on, or that are too near a limit to tell. */
    private List<Verdict> concerned(List<Fact> facts, List<Gap> gaps) {
        List<Verdict> concerned = new ArrayList<>();
        for (Fact fact : facts) {
            if (fact instanceof Verdict verdict) {
                concerned.add(verdict);
            }
        }
        for (Gap gap : gaps) {
            if (gap.why() == Gap.Why.TOO_COARSE || gap.why() == Gap.Why.ONE_SIDE_ONLY) {
                for (Verdict verdict : verdicts.getOrDefault(gap.need(), List.of())) {
                    if (gap.places().contains(verdict.at())) {
                        concerned.add(verdict);
                    }
                }
            }
        }
        return concerned;
    }

    private static List<String> sums(List<Fact> facts, List<Verdict> verdicts) {
        List<String> sums = new ArrayList<>();
        for (Verdict verdict : verdicts) {
            sum(verdict.value(), sums);
        }
        for (Fact fact : facts) {
            if (fact instanceof Value value) {
                sum(value, sums);
            }
        }
        return List.copyOf(sums);
    }

    private static void sum(Value value, List<String> sums) {
        String line = Wording.subject(value.of(), value.at()) + ": " + value.sum();
        if (value.derived() && !sums.contains(line)) {
            sums.add(line);
        }
    }

    private static List<String> measures(List<Fact> facts, List<Verdict> verdicts) {
        List<String> measures = new ArrayList<>();
        for (Verdict verdict : verdicts) {
            String line = Wording.against(verdict);
            if (!measures.contains(line)) {
                measures.add(line);
            }
        }
        for (Fact fact : facts) {
            if (fact instanceof Value value) {
                String line = Wording.subject(value.of(), value.at()) + ": " + Amounts.of(value) + ", "
                        + Wording.gauge(value) + ".";
                if (!measures.contains(line)) {
                    measures.add(line);
                }
            }
        }
        return List.copyOf(measures);
    }

    private List<Picture> pictures(List<Verdict> concerned, List<Fact> facts) {
        List<Picture> pictures = new ArrayList<>();
        List<String> drawn = new ArrayList<>();
        for (Verdict verdict : concerned) {
            if (!drawn.contains(verdict.of())) {
                drawn.add(verdict.of());
                Pictures.window(verdict, verdicts.getOrDefault(verdict.of(), List.of(verdict)))
                        .ifPresent(pictures::add);
            }
        }
        if (GasketsOnOffer.concerns(concerned, facts)) {
            pictures.addAll(gasket);
        }
        return List.copyOf(pictures);
    }
}
