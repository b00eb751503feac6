package leadlamp.derive;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.Dates;
import leadlamp.record.LimitLine;
import leadlamp.record.Node;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** One build as the sums see it: its words by subject, its values by quantity, its places, its days. */
final class Site {
    final Build build;
    final Vocabulary words;
    final Store store;
    final List<Value> alike;
    private final List<LimitLine> standards = new ArrayList<>();
    private final Map<String, Subject> said = new HashMap<>();
    private final Map<String, Subject> onSheet = new HashMap<>();
    private final Map<String, List<Statement>> about = new HashMap<>();
    private Optional<LocalDate> today;
    private Set<String> sheetNames;
    private Optional<HowFar> howFar;
    private final Map<String, Joined> joints = new HashMap<>();

    /**
     * The joints of a group.
     *
     * @param torques how many joints had a torque when they were gathered: one more may be one more joint
     */
    private record Joined(List<String> joints, int torques) {
    }

    Site(Build build, Vocabulary words, Readings readings) {
        this.build = build;
        this.words = words;
        this.alike = readings.alike();
        this.store = new Store(banks(build));
        readings.values().forEach(store::add);
        for (Statement s : build.statements()) {
            if (s.form() == Statement.Form.STATED) {
                put(said, s);
            }
            List<Statement> same = about.get(s.of());
            if (same == null) {
                same = new ArrayList<>();
                about.put(s.of(), same);
            }
            same.add(s);
        }
        for (Statement s : build.sheet().statements()) {
            put(onSheet, s);
        }
        for (LimitLine line : build.sheet().limits()) {
            if (line.standard().isPresent()) {
                standards.add(line);
            }
        }
    }

    /** All that the record says of a subject, in whatever form, as it stands there. */
    List<Statement> about(String of) {
        return about.getOrDefault(of, List.of());
    }

    /** Statements of one subject, and the same by their property. */
    private static final class Subject {
        private final List<Statement> all = new ArrayList<>();
        private final Map<String, List<Statement>> byWhat = new HashMap<>();
    }

    private static void put(Map<String, Subject> subjects, Statement s) {
        Subject subject = subjects.get(s.of());
        if (subject == null) {
            subject = new Subject();
            subjects.put(s.of(), subject);
        }
        subject.all.add(s);
        List<Statement> same = subject.byWhat.get(s.what());
        if (same == null) {
            same = new ArrayList<>(2);
            subject.byWhat.put(s.what(), same);
        }
        same.add(s);
    }

    private static List<Statement> of(Map<String, Subject> subjects, String of, String what) {
        Subject subject = subjects.get(of);
        List<Statement> same = subject == null ? null : subject.byWhat.get(what);
        return same == null ? List.of() : same;
    }

    /** All that the record says in words of a subject. */
    List<Statement> said(String of) {
        Subject subject = said.get(of);
        return subject == null ? List.of() : subject.all;
    }

    /** All lines of the sheet on a subject or section. */
    List<Statement> sheetLines(String of) {
        Subject subject = onSheet.get(of);
        return subject == null ? List.of() : subject.all;
    }

    /** Whether the sheet has a line on a subject, or on `subject property`. */
    boolean onSheet(String name) {
        if (sheetNames == null) {
            sheetNames = new HashSet<>();
            for (Map.Entry<String, Subject> subject : onSheet.entrySet()) {
                sheetNames.add(subject.getKey());
                for (String what : subject.getValue().byWhat.keySet()) {
                    sheetNames.add(subject.getKey() + " " + what);
                }
            }
        }
        return sheetNames.contains(name);
    }

    /** What the record says at a place, or at a shorter one that holds there too; of two the later. */
    Optional<Statement> word(String of, String at, String what) {
        return holding(of(said, of, what), at);
    }

    /** The sheet's line for a place. */
    Optional<Statement> sheet(String of, String at, String what) {
        return holding(of(onSheet, of, what), at);
    }

    /** What the record says, else the sheet. */
    Optional<Statement> either(String of, String at, String what) {
        Optional<Statement> own = word(of, at, what).filter(s -> !s.says().equals("unknown"));
        return own.isPresent() ? own : sheet(of, at, what);
    }

    /** The line that says that a sign was looked for here and not seen; of two the later entry stands. */
    Optional<Statement> notSeen(String of, String at, String sign) {
        Statement last = null;
        for (Statement s : build.statements()) {
            boolean looked = s.form() == Statement.Form.SEEN || s.form() == Statement.Form.NOT_SEEN;
            if (looked && s.of().equals(of) && s.what().equals(sign) && s.told().isEmpty() && store.covers(s.at(), at)
                    && !s.asides().getOrDefault("as", "").equals("found")) {
                last = s;
            }
        }
        return Optional.ofNullable(last).filter(s -> s.form() == Statement.Form.NOT_SEEN);
    }

    private static Map<String, String> banks(Build build) {
        Map<String, String> banks = new HashMap<>();
        build.sheet().below("layout", "banks").ifPresent(node -> {
            if (node instanceof Node.Fields fields) {
                for (Node.Field bank : fields.fields()) {
                    if (bank.value() instanceof Node.Items cylinders) {
                        for (Node cylinder : cylinders.items()) {
                            if (cylinder instanceof Node.Scalar number) {
                                banks.put(number.text(), bank.key());
                            }
                        }
                    }
                }
            }
        });
        return banks;
    }

    /** Whether one of two places holds at the other. */
    boolean related(String one, String other) {
        return store.covers(one, other) || store.covers(other, one);
    }

    private Optional<Statement> holding(List<Statement> statements, String at) {
        Statement best = null;
        for (Statement s : statements) {
            if (store.covers(s.at(), at) && (best == null || store.covers(best.at(), s.at()))) {
                best = s;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The places of a group, where the sheet settles it. */
    Optional<List<String>> places(String group) {
        return build.sheet().layout().places(group);
    }

    /** The latest day that the record names: the day on which ages are reckoned. Never the clock. */
    Optional<LocalDate> today() {
        if (today == null) {
            LocalDate latest = null;
            for (Statement s : build.statements()) {
                String date = s.asides().get("date");
                latest = later(latest, date == null ? "" : date);
                if (s.what().equals("checked") || s.what().equals("date made") || s.what().endsWith(" date")) {
                    latest = later(latest, s.says());
                }
            }
            today = Optional.ofNullable(latest);
        }
        return today;
    }

    private static LocalDate later(LocalDate latest, String text) {
        if (text.isEmpty()) {
            return latest;
        }
        Optional<Dates> read = Dates.read(text).filter(d -> d.monthsAgo() < 0);
        if (read.isEmpty()) {
            return latest;
        }
        LocalDate day = read.get().first();
        return latest == null || day.isAfter(latest) ? day : latest;
    }

    /** How far the work is, where the sheet gives a layout. */
    Optional<HowFar> howFar() {
        if (howFar == null) {
            howFar = HowFar.of(this);
        }
        return howFar;
    }

    /** The joints of a group: those of the sheet and those that the record names. */
    List<String> joints(String group) {
        int torques = store.of("joint torque").size();
        Joined known = joints.get(group);
        if (known == null || known.torques != torques) {
            known = new Joined(Joints.gather(this, group), torques);
            joints.put(group, known);
        }
        return known.joints;
    }

    /** Limits of the sheet that give a standard size of a quantity or its kind, for a place. */
    Optional<LimitLine> standard(Quantity quantity, String at) {
        Optional<LimitLine> best = Optional.empty();
        for (LimitLine line : standards) {
            if ((line.quantity().equals(quantity.name()) || line.quantity().equals(quantity.kind())
                    || memberAt(line.quantity(), quantity, at)) && (line.at().isEmpty() || store.covers(line.at(), at))
                    && (best.isEmpty() || !line.at().isEmpty())) {
                best = Optional.of(line);
            }
        }
        return best;
    }

    /** Whether a line is of one kind of the quantity, and the place one of that kind's: a main housing's bore at main 1. */
    private boolean memberAt(String member, Quantity of, String at) {
        Optional<Quantity> quantity = words.quantity(member);
        if (quantity.isEmpty() || !quantity.get().kind().equals(of.name())) {
            return false;
        }
        for (String place : places(quantity.get().group()).orElse(List.of())) {
            if (related(place, at)) {
                return true;
            }
        }
        return false;
    }

    /** A figure that is no reading, as a value without doubt: a size of the sheet, a number that a word stands for. */
    static Value exact(String name, String at, double si, Unit unit, int figures, List<Where> places) {
        Optional<Estimate> end = Optional.of(Estimate.exact(si, unit.dimension()));
        return new Value(name, name, at, end, end, unit, figures, "", false, "", "", Map.of(), places);
    }

    /** A figure with one doubt of its own, standard uncertainty. */
    static Value doubtful(String name, String at, double si, double doubt, String source, Unit unit, int figures,
            List<Where> places) {
        java.util.TreeMap<String, Double> parts = new java.util.TreeMap<>();
        if (doubt > 0) {
            parts.put(source, doubt);
        }
        Optional<Estimate> end = Optional.of(new Estimate(si, unit.dimension(), parts));
        return new Value(name, name, at, end, end, unit, figures, "", false, "", "", Map.of(), places);
    }

    /** A number that has no unit. */
    static Value number(String name, String at, double value, int figures, List<Where> places) {
        return exact(name, at, value, Units.si(Dimension.NUMBER), figures, places);
    }

    /** A written size without doubt; a range or `plus or minus` keeps its ends. */
    static Optional<Value> written(String name, String at, Statement s) {
        if (s.value().isEmpty() || !s.value().get().figure()) {
            return Optional.empty();
        }
        Written w = s.value().get();
        Dimension dimension = w.unit().dimension();
        Optional<Estimate> low = Double.isInfinite(w.low()) ? Optional.empty()
                : Optional.of(Estimate.exact(w.low(), dimension));
        Optional<Estimate> high = w.low() == w.high() ? low : Double.isInfinite(w.high()) ? Optional.empty()
                : Optional.of(Estimate.exact(w.high(), dimension));
        return Optional.of(new Value(name, name, at, low, high, w.unit(), w.figures(), "", false, "", s.told().orElse(""),
                Map.of(), List.of(s.where())));
    }
}
