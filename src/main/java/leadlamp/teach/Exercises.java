package leadlamp.teach;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import leadlamp.audit.Answer;
import leadlamp.audit.Audit;
import leadlamp.audit.Case;
import leadlamp.audit.Check;
import leadlamp.audit.Expected;
import leadlamp.audit.Overlay;
import leadlamp.facts.Ask;
import leadlamp.record.Build;
import leadlamp.record.Fingerprint;
import leadlamp.record.Node;
import leadlamp.record.Place;
import leadlamp.record.Yaml;
import leadlamp.report.Report;
import leadlamp.report.ReportModel;

/**
 * Makes exercises: a sound build, and in it faults taken from the checks' own cases. What is written is read and audited again
 * before it is given out, so that each fault is found by the audit from what the record shows, none hides another, and
 * nothing else is found. Near misses are planted beside them, so that not every odd line is a fault.
 */
public final class Exercises {
    private static final int ID = 12;
    private static final String SOUND = "full-sound-";

    private final Examples examples;
    private final Map<String, Optional<Set<String>>> alone = new ConcurrentHashMap<>();

    public Exercises(Examples examples) {
        this.examples = examples;
    }

    /** Why no exercise could be made, to whoever asked for it. */
    public static final class CannotMake extends Exception {
        private static final long serialVersionUID = 1;

        CannotMake(String sentence) {
            super(sentence, null, false, false);
        }
    }

    /** The topics of which a fault can be planted. */
    public Set<String> topics() {
        Set<String> topics = new TreeSet<>();
        for (Check check : examples.auditor().checks()) {
            topics.add(check.topic());
        }
        return topics;
    }

    /**
     * Makes one.
     *
     * @param topic  of its faults; empty for any
     * @param faults how many
     * @param seed   the same seed, topic and number give the same exercise
     * @param due    checks that are to come first, where they can be had
     */
    public Exercise make(String topic, int faults, long seed, Collection<String> due) throws CannotMake {
        Random random = new Random(seed);
        List<String> builds = builds(topic);
        if (builds.isEmpty()) {
            throw new CannotMake("No check of the topic " + topic + " has a case that can be planted.");
        }
        shuffle(builds, random);
        Set<String> wanted = new TreeSet<>();
        examples.book().cases().stream().filter(c -> due.contains(c.of()) && fault(c)).forEach(c -> wanted.add(c.build()));
        builds.sort((a, b) -> Boolean.compare(wanted.contains(b), wanted.contains(a)));
        int most = 0;
        for (String build : builds) {
            Optional<Exercise> made = on(build, topic, faults, seed, due, random);
            if (made.isPresent()) {
                return made.get();
            }
            most = Math.max(most, planted);
        }
        throw new CannotMake("No more than " + most + (most == 1 ? " fault" : " faults") + " can be planted beside each other"
                + (topic.isEmpty() ? "" : " in the topic " + topic) + " with this seed; ask for fewer, or for another seed.");
    }

    private int planted;

    private Map<String, String> topicOf() {
        Map<String, String> topics = new TreeMap<>();
        examples.auditor().checks().forEach(check -> topics.put(check.id(), check.topic()));
        return topics;
    }

    private List<String> builds(String topic) {
        Map<String, String> topics = topicOf();
        Set<String> builds = new TreeSet<>();
        for (Case one : examples.book().cases()) {
            if (fault(one) && topics.containsKey(one.of()) && (topic.isEmpty() || topics.get(one.of()).equals(topic))
                    && one.build().startsWith(SOUND)) {
                builds.add(one.build());
            }
        }
        return new ArrayList<>(builds);
    }

    private static boolean plain(Case one) {
        return one.sheet().fields().isEmpty() && one.erase().isEmpty() && !one.change().fields().isEmpty();
    }

    private static boolean fault(Case one) {
        return plain(one) && one.expect().values().stream().anyMatch(Expected.FoundBy.class::isInstance);
    }

    private static boolean near(Case one) {
        return plain(one) && one.also().isEmpty() && one.expect().values().stream().allMatch(Expected.IsClear.class::isInstance);
    }

    private Optional<Exercise> on(String build, String topic, int faults, long seed, Collection<String> due, Random random) {
        Overlay.Base base = examples.base(build);
        Map<String, String> topics = topicOf();
        List<Case> wrong = new ArrayList<>();
        List<Case> sound = new ArrayList<>();
        for (Case one : examples.book().cases()) {
            if (one.build().equals(build) && topics.containsKey(one.of()) && (topic.isEmpty() || topics.get(one.of()).equals(topic))) {
                if (fault(one)) {
                    wrong.add(one);
                } else if (near(one)) {
                    sound.add(one);
                }
            }
        }
        long different = wrong.stream().map(Case::of).distinct().count();
        if (different < faults) {
            planted = (int) different;
            return Optional.empty();
        }
        shuffle(wrong, random);
        shuffle(sound, random);
        // A stable sort: what is due comes first, and all else stays as the seed has it.
        wrong.sort((a, b) -> Boolean.compare(due.contains(b.of()), due.contains(a.of())));
        String text = Planting.bare(base.lines());
        List<Case> chosen = new ArrayList<>();
        Set<String> checks = new TreeSet<>();
        Set<String> found = new TreeSet<>();
        for (Case one : wrong) {
            if (chosen.size() == faults) {
                break;
            }
            if (checks.contains(one.of()) || found.stream().anyMatch(f -> f.startsWith(one.of() + " at "))) {
                continue;
            }
            Optional<Set<String>> own = alone(one, base);
            if (own.isEmpty() || own.get().stream().anyMatch(found::contains)) {
                continue;
            }
            Optional<String> next = Planting.plant(text, Exercise.RECORD, one, base.build().sheet(), examples.reader(), random);
            Set<String> both = new TreeSet<>(found);
            both.addAll(own.get());
            Set<String> asked = new TreeSet<>(checks);
            asked.add(one.of());
            if (next.isPresent() && found(next.get(), base).filter(both::equals).isPresent() && apart(next.get(), base, asked)) {
                text = next.get();
                found = both;
                chosen.add(one);
                checks.add(one.of());
            }
        }
        planted = chosen.size();
        if (chosen.size() < faults) {
            return Optional.empty();
        }
        text = withNearMisses(text, sound, faults, checks, found, base, random);
        return Optional.of(exercise(text, seed, topic, chosen, base));
    }

    /** Whether whoever marks it will count a fault for each of these checks: two whose findings share a line would pass as one. */
    private boolean apart(String text, Overlay.Base base, Set<String> checks) {
        for (Marking.Fault fault : Marking.faults(Report.of(examples.auditor().audit(read(text, base)), examples.words()))) {
            Set<String> together = new TreeSet<>();
            for (ReportModel.Item item : fault.items()) {
                if (checks.contains(item.check())) {
                    together.add(item.check());
                }
            }
            if (together.size() > 1) {
                return false;
            }
        }
        return true;
    }

    private String withNearMisses(String planted, List<Case> sound, int many, Set<String> checks, Set<String> found,
            Overlay.Base base, Random random) {
        String text = planted;
        int left = many;
        for (Case one : sound) {
            if (left == 0) {
                break;
            }
            if (!checks.add(one.of())) {
                continue;
            }
            Optional<String> next = Planting.plant(text, Exercise.RECORD, one, base.build().sheet(), examples.reader(), random);
            if (next.isPresent() && !next.get().equals(text) && found(next.get(), base).filter(found::equals).isPresent()) {
                text = next.get();
                left--;
            }
        }
        return text;
    }

    /** What is found of a case alone, written into the sound build; empty where it does not come out as the case expects. */
    private Optional<Set<String>> alone(Case one, Overlay.Base base) {
        return alone.computeIfAbsent(one.build() + " " + one.of() + " " + one.name(), k -> {
            Optional<String> text = Planting.plant(Planting.bare(base.lines()), Exercise.RECORD, one, base.build().sheet(),
                    examples.reader(), new Random(0));
            Optional<Set<String>> found = text.flatMap(t -> found(t, base));
            for (Map.Entry<String, Expected> place : one.expect().entrySet()) {
                if (place.getValue() instanceof Expected.FoundBy by && found.isPresent()
                        && !found.get().contains(one.of() + " at " + place.getKey() + " by " + String.join(", ", by.ways()))) {
                    return Optional.empty();
                }
            }
            return found.filter(all -> !all.isEmpty() && all.stream().allMatch(f -> said(f, one)));
        });
    }

    /** Whether the case says of this finding that it comes. */
    private static boolean said(String finding, Case one) {
        return finding.startsWith(one.of() + " at ")
                || one.also().keySet().stream().anyMatch(check -> finding.startsWith(check + " at "));
    }

    /** All that the audit finds in a text: check, place and ways; empty where the text cannot be read in full. */
    private Optional<Set<String>> found(String text, Overlay.Base base) {
        Build build = read(text, base);
        if (!build.problems().isEmpty() || !build.leftOut().isEmpty()) {
            return Optional.empty();
        }
        Set<String> found = new TreeSet<>();
        for (Answer answer : examples.auditor().audit(build).answers()) {
            if (answer instanceof Answer.Found one) {
                Set<String> ways = new TreeSet<>();
                one.findings().forEach(f -> ways.add(f.way()));
                found.add(answer.check().id() + " at " + place(answer.ask()) + " by " + String.join(", ", ways));
            }
        }
        return Optional.of(found);
    }

    private Build read(String text, Overlay.Base base) {
        Yaml.File file = Yaml.text(text, Exercise.RECORD);
        Node.Fields tree = file.tree().orElseThrow();
        return examples.reader().build(tree, Exercise.RECORD, file.lines(), file.problems(), base.build().sheet(), Fingerprint.NONE);
    }

    /** As a case names it. */
    static String place(Ask ask) {
        return ask.of().isEmpty() ? ask.at() : ask.at().equals(Place.ENGINE) || ask.at().equals(ask.of()) ? ask.of()
                : ask.of() + " at " + ask.at();
    }

    private Exercise exercise(String planted, long seed, String topic, List<Case> chosen, Overlay.Base base) {
        String text = "# An invented record, made for practice" + (topic.isEmpty() ? "" : " in the topic " + topic) + ", with "
                + chosen.size() + (chosen.size() == 1 ? " fault" : " faults") + " in it (seed " + seed + "). No real engine is meant.\n"
                + "# Read it as you would read a colleague's. What you would stop for goes into " + Exercise.ANSWERS + ".\n"
                + planted + (planted.endsWith("\n") ? "" : "\n");
        Audit audit = examples.auditor().audit(read(text, base));
        ReportModel report = Report.of(audit, examples.words());
        List<Exercise.Fault> faults = new ArrayList<>();
        for (Case one : chosen) {
            Set<String> places = new LinkedHashSet<>();
            Set<String> says = new LinkedHashSet<>();
            Set<Integer> lines = new TreeSet<>();
            for (ReportModel.Item item : report.found()) {
                if (item.check().equals(one.of())) {
                    places.add(item.place());
                    says.add(item.text());
                    for (ReportModel.Evidence line : item.evidence()) {
                        if (line.where().file().equals(Exercise.RECORD)) {
                            lines.add(line.where().line());
                        }
                    }
                }
            }
            faults.add(new Exercise.Fault(one.of(), one.name(), List.copyOf(places), List.copyOf(says), List.copyOf(lines)));
        }
        Map<String, String> files = new LinkedHashMap<>();
        String sheet = base.build().sheet().file();
        files.put(sheet, examples.book().files().get(sheet));
        return new Exercise(id(text.getBytes(StandardCharsets.UTF_8)), seed, topic, text, files, List.copyOf(faults));
    }

    /** What an exercise is called by: the first figures of the SHA-256 of its record. */
    static String id(byte[] record) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(record)).substring(0, ID);
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }

    /** The order that a seed gives, the same on every machine. */
    private static <T> void shuffle(List<T> list, Random random) {
        for (int i = list.size() - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            T kept = list.get(i);
            list.set(i, list.get(j));
            list.set(j, kept);
        }
    }
}
