package leadlamp.teach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlamp.audit.Audit;
import leadlamp.audit.Gap;
import leadlamp.audit.Past;
import leadlamp.facts.Fact;
import leadlamp.facts.NotSeen;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.past.Story;
import leadlamp.past.Teller;
import leadlamp.rank.Course;
import leadlamp.rank.Ranked;
import leadlamp.rank.Ranking;
import leadlamp.rank.RiskLevel;
import leadlamp.rank.Weight;
import leadlamp.record.Build;
import leadlamp.record.Where;
import leadlamp.report.Amounts;
import leadlamp.report.ReportModel;
import leadlamp.report.Wording;
import leadlamp.words.Name;
import leadlamp.words.Names;
import leadlamp.words.Vocabulary;

/**
 * An engine with an unknown past, looked at: what the plan of looks asks of it, what the record answers, what stays unknown
 * and the worst that could hide there, which look is worth its effort next, and what a buyer must reckon with. It never
 * says what an engine is worth.
 *
 * @param name    what it is called
 * @param engine  the engine sheet's name
 * @param visited whether the record holds anything
 * @param entries the looks that this engine has something for, in the order of the plan
 * @param tables  compression and leak-down across the cylinders
 * @param reckon  findings to reckon with, worst first
 * @param outside readings of the looks that are proven outside their limit
 * @param signs   signs that were seen and want explaining
 * @param past    what probably happened before, each event with how well it stands
 * @param next    the looks that are worth most next, the best first
 * @param open    what cannot be told in all, a sentence
 * @param file    the record or sheet
 * @param bytes   SHA-256 of the record; empty where it is a sheet
 */
public record Inspection(String name, String engine, boolean visited, List<Entry> entries, List<Cylinders.Table> tables,
        List<ReportModel.Finding> reckon, List<String> outside, List<String> signs, List<String> past, List<Advice> next, String open, String file, String bytes) {
    /** So many facts of a look are told. */
    private static final int TOLD = 12;
    private static final int BEST = 3;
    static final List<String> CAUTIONS = List.of(
            "The maker's manual, the rules of the place and the seller's leave come before anything said here.",
            "Do nothing that you were not trained for: fuel, hot coolant, springs, belts, exhaust gas, and whatever hangs on a jack"
                    + " hurt people.",
            "These looks say what was seen. They never say what an engine is worth, and a clean sheet is no promise.");

    /** How far a look is answered. */
    enum Standing {
        ANSWERED("answered"), PARTLY("answered in part"), OPEN("not done");

        private final String word;

        Standing(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /**
     * A look, and how it stands.
     *
     * @param write   the lines to write the answer in
     * @param said    what the record says
     * @param missing its words that the record is silent on
     * @param hides   what could hide behind it while it is open
     */
    record Entry(Look look, Standing standing, List<String> write, List<String> said, List<String> missing, Hides hides) {
    }

    /**
     * What hides behind a look that is not done.
     *
     * @param worst    the worst level of the open questions that hang on it; absent where none does
     * @param question the worst of them, with its harm
     * @param high     how many of them are of the worst level
     * @param all      how many there are
     * @param alone    how many of them it settles with nothing beside it
     * @param past     what it speaks of in the past
     * @param raised   what of that a sign or a reading of another look has raised
     * @param value    what it would settle, all in all
     */
    record Hides(Optional<RiskLevel> worst, String question, int high, int all, int alone, List<String> past,
            List<String> raised, long value) {
    }

    /** A look that is worth its effort, and why. */
    record Advice(Look look, String why) {
    }

    /** Makes it. */
    public static Inspection of(Audit audit, ReportModel report, List<Look> looks, Vocabulary words) {
        return new Making(audit, report, words).inspection(looks);
    }

    private static final class Making {
        private final Audit audit;
        private final ReportModel report;
        private final Vocabulary words;
        private final Forms forms;
        private final Story story;
        private final List<Ranked> open = new ArrayList<>();
        /** Events that a look speaks of at which something bad was seen or read. */
        private final Set<String> raised = new LinkedHashSet<>();
        private final Set<String> outside = new LinkedHashSet<>();
        private final Set<String> signs = new LinkedHashSet<>();

        Making(Audit audit, ReportModel report, Vocabulary words) {
            this.audit = audit;
            this.report = report;
            this.words = words;
            this.story = Teller.story(audit, Past.compiled());
            this.forms = new Forms(audit.build().sheet(), words);
            Ranking ranking = Ranking.of(audit, Course.of(audit.build(), words), words);
            open.addAll(ranking.open());
            open.addAll(ranking.later());
        }

        Inspection inspection(List<Look> looks) {
            List<Entry> entries = new ArrayList<>();
            looks.forEach(this::bad);
            for (Look look : looks) {
                List<String> wanted = look.record().stream().filter(forms::has).toList();
                if (!wanted.isEmpty()) {
                    entries.add(entry(look, wanted));
                }
            }
            Build build = audit.build();
            List<ReportModel.Finding> reckon = report.findings().stream().filter(f -> f.lead().person()
                    || f.lead().risk().orElse(RiskLevel.LOW).compareTo(RiskLevel.SERIOUS) <= 0).toList();
            return new Inspection(build.name().isEmpty() ? build.sheet().name() : build.name(), build.sheet().name(),
                    !build.statements().isEmpty(), List.copyOf(entries), Cylinders.of(audit), reckon,
                    List.copyOf(outside), List.copyOf(signs), past(), next(entries), unknown(),
                    build.file(), build.bytes().hex());
        }

        /** What was seen or read at a look and is not as it should be. */
        private void bad(Look look) {
            for (String word : look.record()) {
                for (Fact fact : facts(word)) {
                    if (fact instanceof Seen seen && !words.sign(seen.sign()).map(s -> s.sound()).orElse(false)) {
                        signs.add(Wording.subject(seen.of(), seen.at()) + ": " + seen.sign() + told(seen.told())
                                + line(seen.places()));
                        raised.addAll(look.tells());
                    } else if (fact instanceof Value value) {
                        for (Verdict verdict : audit.verdicts()) {
                            if (verdict.value().equals(value) && verdict.isOutside()) {
                                outside.add(Wording.subject(value.of(), value.at()) + ": " + Amounts.of(verdict) + ", "
                                        + Wording.standing(verdict) + "; " + Amounts.sides(verdict) + line(value.places()));
                                raised.addAll(look.tells());
                            }
                        }
                    }
                }
            }
        }

        /** What the reasoning on the past makes of the same record; it is told in full by a command of its own. */
        private List<String> past() {
            List<String> past = new ArrayList<>();
            List<Story.Chapter> all = new ArrayList<>(story.chapters());
            all.addAll(story.faint());
            for (Story.Chapter chapter : all) {
                long open = chapter.open().size();
                past.add(LessonText.upper(chapter.event().event()) + ": " + chapter.standing().word() + (open == 0 ? ""
                        : "; nobody is recorded to have looked for " + open + (open == 1 ? " damage" : " kinds of damage")
                        + " that follows"));
            }
            return List.copyOf(past);
        }

        private String stands(String event) {
            String gloss = words.events().getOrDefault(event, event);
            List<Story.Chapter> all = new ArrayList<>(story.chapters());
            all.addAll(story.faint());
            for (Story.Chapter chapter : all) {
                if (chapter.event().word().equals(event)) {
                    return gloss + " (" + chapter.standing().word() + ")";
                }
            }
            return gloss;
        }

        private Entry entry(Look look, List<String> wanted) {
            Set<String> said = new LinkedHashSet<>();
            List<String> missing = new ArrayList<>();
            int met = 0;
            for (String word : wanted) {
                List<Fact> facts = facts(word);
                if (facts.isEmpty()) {
                    missing.add(word);
                } else {
                    met++;
                    tell(facts, said);
                }
            }
            Standing standing = met == 0 ? Standing.OPEN : met == wanted.size() ? Standing.ANSWERED : Standing.PARTLY;
            List<String> told = new ArrayList<>(said);
            return new Entry(look, standing, forms.lines(look), List.copyOf(told.size() > TOLD ? told.subList(0, TOLD) : told),
                    List.copyOf(missing), hides(look));
        }

        /** What the record itself says of a word; what somebody told stands with it and is marked. */
        private List<Fact> facts(String word) {
            Name name = Names.resolve(word, words).orElseThrow();
            List<Fact> facts = new ArrayList<>();
            for (Fact fact : audit.facts()) {
                if (fact instanceof Seen seen && name instanceof Name.SignOf && ofIt(name, seen.of(), seen.kind())
                        && seen.sign().equals(name.what())
                        || fact instanceof NotSeen clear && name instanceof Name.SignOf && ofIt(name, clear.of(), clear.kind())
                                && clear.sign().equals(name.what())
                        || fact instanceof Value value && name instanceof Name.QuantityName && (value.of().equals(name.of())
                                || value.kind().equals(name.of())) && !value.derived()
                        || fact instanceof Stated stated && !(name instanceof Name.SignOf) && ofIt(name, stated.of(), stated.kind())
                                && stated.what().equals(name.what())) {
                    facts.add(fact);
                }
            }
            return facts;
        }

        private static boolean ofIt(Name name, String of, String kind) {
            return name.of().equals(of) || name.of().equals(kind);
        }

        private void tell(List<Fact> facts, Set<String> said) {
            for (Fact fact : facts) {
                if (fact instanceof Seen seen) {
                    boolean sound = words.sign(seen.sign()).map(s -> s.sound()).orElse(false);
                    said.add((sound ? "Sound: " : "Seen: ") + Wording.subject(seen.of(), seen.at()) + ", " + seen.sign()
                            + told(seen.told()) + line(seen.places()));
                } else if (fact instanceof NotSeen clear) {
                    said.add("Looked for and not there: " + Wording.subject(clear.of(), clear.at()) + ", " + clear.sign()
                            + line(clear.places()));
                } else if (fact instanceof Value value) {
                    String standing = "";
                    for (Verdict verdict : audit.verdicts()) {
                        if (verdict.value().equals(value)) {
                            standing = ", " + Wording.standing(verdict) + "; " + Amounts.sides(verdict);
                        }
                    }
                    said.add("Read: " + Wording.subject(value.of(), value.at()) + ", " + Amounts.of(value) + standing
                            + told(value.told()) + line(value.places()));
                } else if (fact instanceof Stated stated) {
                    said.add("Written: " + Wording.subject(stated.of(), stated.at()) + ", " + stated.what() + " " + stated.says()
                            + told(stated.told()) + line(stated.places()));
                }
            }
        }

        private static String told(String who) {
            return who.isEmpty() ? "" : ", only told by " + who;
        }

        private static String line(List<Where> places) {
            return places.isEmpty() ? "" : " (line " + places.get(0).line() + ")";
        }

        private Hides hides(Look look) {
            Optional<RiskLevel> worst = Optional.empty();
            Ranked chief = null;
            int high = 0;
            int all = 0;
            int alone = 0;
            long value = 0;
            for (Ranked question : open) {
                boolean hangs = false;
                boolean rest = false;
                for (Gap gap : question.gaps()) {
                    List<String> wants = gap.readings().isEmpty() ? List.of(gap.need()) : gap.readings();
                    boolean here = speaks(look, gap.need()) || wants.stream().anyMatch(w -> speaks(look, w));
                    hangs |= here;
                    rest |= !speaks(look, gap.need()) && !wants.stream().allMatch(w -> speaks(look, w));
                }
                if (!hangs) {
                    continue;
                }
                RiskLevel level = question.heaviest().map(Weight::level).orElse(RiskLevel.LOW);
                all++;
                alone += rest ? 0 : 1;
                value += Worth.question(level, !rest);
                int order = worst.map(level::compareTo).orElse(-1);
                if (order < 0) {
                    worst = Optional.of(level);
                    chief = question;
                    high = 0;
                }
                high += order <= 0 ? 1 : 0;
            }
            List<String> past = new ArrayList<>();
            List<String> here = new ArrayList<>();
            for (String event : look.tells()) {
                past.add(words.events().getOrDefault(event, event));
                if (raised.contains(event)) {
                    here.add(stands(event));
                }
            }
            return new Hides(worst, chief == null ? "" : question(chief), high, all, alone, List.copyOf(past), List.copyOf(here),
                    value + Worth.raised(here.size()));
        }

        /** A need of a kind (`plain bearing clearance`) is spoken of by a look at a member of that kind, and the other way round. */
        private boolean speaks(Look look, String need) {
            for (String word : look.record()) {
                if (word.equals(need) || kind(word).equals(need) || kind(need).equals(word)) {
                    return true;
                }
            }
            return false;
        }

        private String kind(String word) {
            Optional<Name> name = Names.resolve(word, words);
            if (name.isPresent() && name.get() instanceof Name.QuantityName reading) {
                return words.quantity(reading.quantity()).map(q -> q.kind()).orElse(word);
            }
            if (name.isPresent() && name.get() instanceof Name.SignOf sign) {
                return words.part(sign.of()).map(p -> p.kind() + " " + sign.what()).orElse(word);
            }
            return word;
        }

        private static String question(Ranked ranked) {
            List<String> chain = ranked.check().chain();
            return ranked.check().question() + (chain.isEmpty() ? "" : " If not: " + chain.get(chain.size() - 1) + ".");
        }

        /** Those that are worth most for what they cost, {@link Worth}. */
        private List<Advice> next(List<Entry> entries) {
            List<Entry> left = new ArrayList<>();
            for (Entry entry : entries) {
                if (entry.standing() != Standing.ANSWERED && (entry.hides().worst().isPresent()
                        || !entry.hides().raised().isEmpty())) {
                    left.add(entry);
                }
            }
            left.sort(Comparator.comparing(Making::worth).thenComparingInt(e -> e.look().depth().order())
                    .thenComparing(e -> e.look().id()));
            if (left.isEmpty()) {
                for (Entry entry : entries) {
                    if (entry.standing() == Standing.OPEN && !entry.look().tells().isEmpty()) {
                        return List.of(new Advice(entry.look(), "No open question of a check hangs on a look that is left. This one"
                                + " goes least deep, and speaks of: " + Wording.join(entry.hides().past()) + "."));
                    }
                }
                return List.of();
            }
            List<Advice> advice = new ArrayList<>();
            for (Entry entry : left.subList(0, Math.min(BEST, left.size()))) {
                advice.add(new Advice(entry.look(), why(entry)));
            }
            return List.copyOf(advice);
        }

        private static Worth worth(Entry entry) {
            return new Worth(entry.hides().value(), entry.look().depth().reach());
        }

        private static String why(Entry entry) {
            Hides hides = entry.hides();
            List<String> why = new ArrayList<>();
            if (!hides.raised().isEmpty()) {
                why.add("What was seen elsewhere has raised: " + String.join("; ", hides.raised()) + ". It speaks for or against.");
            }
            hides.worst().ifPresent(worst -> why.add((hides.all() == 1 ? "One open question hangs"
                    : hides.all() + " open questions hang") + " on it, " + hides.high() + " of them " + worst.word()
                    + (hides.alone() == 0 ? "; each wants something beside it." : "; it settles " + hides.alone() + " by itself.")));
            why.add("To get at it: " + entry.look().depth().means() + ".");
            return String.join(" ", why);
        }

        private String unknown() {
            int[] levels = new int[RiskLevel.values().length];
            for (Ranked question : open) {
                levels[question.heaviest().map(Weight::level).orElse(RiskLevel.LOW).ordinal()]++;
            }
            List<String> said = new ArrayList<>();
            for (RiskLevel level : RiskLevel.values()) {
                if (levels[level.ordinal()] > 0) {
                    said.add(levels[level.ordinal()] + " " + level.word());
                }
            }
            if (open.isEmpty()) {
                return "No question of the checks is open. That is no word that the engine is sound.";
            }
            Ranked worst = open.get(0);
            for (Ranked question : open) {
                if (question.heaviest().map(Weight::level).orElse(RiskLevel.LOW)
                        .compareTo(worst.heaviest().map(Weight::level).orElse(RiskLevel.LOW)) < 0) {
                    worst = question;
                }
            }
            return open.size() + " questions of the checks cannot be told (" + String.join(", ", said) + "). The worst that they hide: "
                    + question(worst);
        }
    }

    /** How many looks stand so. */
    int count(Standing standing) {
        return (int) entries.stream().filter(e -> e.standing() == standing).count();
    }
}
