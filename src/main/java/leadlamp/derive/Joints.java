package leadlamp.derive;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import leadlamp.calc.BoltClass;
import leadlamp.calc.ScrewThread;
import leadlamp.calc.Threads;
import leadlamp.calc.TorqueFactor;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.quantity.Written;
import leadlamp.record.Gauge;
import leadlamp.record.Place;
import leadlamp.record.Statement;

/** What the sums of a joint take from its words: thread, class, what is on the thread, wrench. */
final class Joints {
    private static final Unit MPA = Units.named("MPa").orElseThrow();
    static final Unit MM2 = Units.named("mm2").orElseThrow();
    private static final Unit MM = Units.named("mm").orElseThrow();

    private Joints() {
    }

    /** The joint's thread as record or sheet names it. */
    static Optional<ScrewThread> thread(Site site, String joint) {
        return site.either("joint", joint, "thread").flatMap(s -> Threads.named(s.says()));
    }

    static Take diameter() {
        return ofThread("joint thread diameter", "thread", joint -> joint.diameter(), MM, 0);
    }

    static Take pitch() {
        return ofThread("joint thread pitch", "thread", joint -> joint.pitch(), MM, 2);
    }

    static Take area() {
        return ofThread("thread stress area", "thread", ScrewThread::stressArea, MM2, 1);
    }

    /** The rule of the thread's family with its figures. */
    static String areaInWords(In v) {
        ScrewThread thread = Threads.named(v.aside("thread stress area", "thread")).orElseThrow();
        return "pi/4 x (" + Figures.text(thread.diameter(), MM, 4) + " - " + Figures.text(thread.diameter() - thread.stressDiameter(), MM, 4)
                + " at pitch " + Figures.text(thread.pitch(), MM, 4) + ") squared (" + thread.name() + ")";
    }

    private interface OfThread {
        double of(ScrewThread thread);
    }

    private static Take ofThread(String name, String what, OfThread figure, Unit unit, int figures) {
        return new Take(name) {
            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Statement> said = site.either("joint", place, what);
                Optional<ScrewThread> thread = said.flatMap(s -> Threads.named(s.says()));
                return thread.map(t -> {
                    Value exact = Site.exact(name, place, figure.of(t), unit, figures, List.of(said.get().where()));
                    return Slot.of(name, new Value(exact.of(), exact.kind(), exact.at(), exact.low(), exact.high(), unit, figures, "", false, "",
                            said.get().told().orElse(""), Map.of("thread", t.name()), exact.places()));
                });
            }

            @Override
            String lacks() {
                return "joint thread";
            }
        };
    }

    /** Proof stress of the bolt's class. */
    static Take proof() {
        return new Take("proof stress of the class") {
            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Statement> said = site.either("joint", place, "class");
                Optional<ScrewThread> thread = thread(site, place);
                if (said.isEmpty() || thread.isEmpty()) {
                    return Optional.empty();
                }
                return BoltClass.named(said.get().says(), thread.get().diameter())
                        .map(c -> Slot.of(name(), Site.exact(name(), place, c.proof(), MPA, 0, List.of(said.get().where()))));
            }

            @Override
            String lacks() {
                return "joint class";
            }
        };
    }

    /**
     * Torque over clamp force and diameter, as the thread was: the locker's own figure; else that of spoilt threads, of
     * locker, of what is on them. Its doubt has the name of what is on the thread, so that it cancels where the sheet has the same.
     */
    static Take factor() {
        return new Take("joint torque factor") {
            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Value> own = site.store.at("joint locker torque factor", place);
                if (own.isPresent()) {
                    return Optional.of(Slot.of(name(), own.get()));
                }
                Optional<Statement> condition = told(site.word("joint", place, "condition"));
                Optional<Statement> locker = told(site.word("joint", place, "thread-locker"));
                Optional<Statement> lubricant = told(site.word("joint", place, "lubricant"));
                if (condition.isPresent() && TorqueFactor.ofCondition(condition.get().says()).isPresent()) {
                    return slot(name(), place, TorqueFactor.ofCondition(condition.get().says()).get(), condition.get());
                }
                return onThread(name(), place, locker, lubricant);
            }

            @Override
            String lacks() {
                return "joint lubricant";
            }
        };
    }

    /** The same as the sheet has it. */
    static Take sheetFactor() {
        return new Take("sheet torque factor") {
            @Override
            Optional<Slot> at(Site site, String place) {
                return onThread(name(), place, site.sheet("joint", place, "thread-locker"), site.sheet("joint", place, "lubricant"));
            }

            @Override
            String lacks() {
                return "sheet joint lubricant";
            }
        };
    }

    private static Optional<Statement> told(Optional<Statement> said) {
        return said.filter(s -> !s.says().equals("unknown"));
    }

    private static Optional<Slot> onThread(String name, String place, Optional<Statement> locker, Optional<Statement> lubricant) {
        if (locker.isPresent() && !locker.get().says().equals("none") && !locker.get().says().equals("patch")) {
            return slot(name, place, TorqueFactor.ofThreadLocker(), locker.get().says().equals("none") ? locker.get()
                    : locker.get(), "thread-locker");
        }
        return lubricant.flatMap(said -> TorqueFactor.ofLubricant(said.says()).flatMap(factor -> slot(name, place, factor, said)));
    }

    private static Optional<Slot> slot(String name, String place, TorqueFactor factor, Statement said) {
        return slot(name, place, factor, said, said.says());
    }

    private static Optional<Slot> slot(String name, String place, TorqueFactor factor, Statement said, String word) {
        double half = (factor.high() - factor.low()) / 2;
        return Optional.of(Slot.of(name, Site.doubtful(name, place, factor.usual(), half / 2, "friction of threads, " + word,
                Units.si(Dimension.NUMBER), 2, List.of(said.where()))));
    }

    /** A size on the joint's sheet line. */
    static Take onSheet(String what) {
        return Take.sheet("joint", what);
    }

    /** Bolts of one place of the joint: the sheet's, else as counted. */
    static Take bolts() {
        return Take.by("joint bolts", (site, place) -> {
            Optional<Statement> sheet = site.sheet("joint", place, "bolts").filter(s -> s.value().isPresent());
            Optional<Statement> said = sheet.isPresent() ? sheet : site.word("joint", place, "bolts").filter(s -> s.value().isPresent());
            return said.map(s -> Site.number("joint bolts", place, s.value().get().high(), 0, List.of(s.where())));
        });
    }

    /** Top of the range of the wrench that the joint was tightened with. */
    static Take topOfWrench() {
        return ofWrench("gauge range", Written::high);
    }

    /** Low end of that range; none where it is written from nought. */
    static Take lowestMark() {
        return ofWrench("lowest mark of the wrench", Written::low);
    }

    private static Take ofWrench(String name, ToDoubleFunction<Written> end) {
        return Take.by(name, "gauge range", (site, place) -> {
            for (Statement s : site.about("joint torque")) {
                if (s.form() == Statement.Form.READ && s.at().equals(place)) {
                    for (String each : s.gauges()) {
                        Gauge gauge = site.build.gauges().get(each);
                        Optional<Written> range = gauge == null ? Optional.empty() : gauge.range();
                        if (range.isPresent() && range.get().unit().dimension() == Dimension.TORQUE
                                && !gauge.kinds().contains("torque multiplier") && end.applyAsDouble(range.get()) > 0) {
                            return Optional.of(Site.exact(name, place, end.applyAsDouble(range.get()), range.get().unit(),
                                    range.get().figures(), List.of(gauge.where())));
                        }
                    }
                }
            }
            return Optional.empty();
        });
    }

    /** What the wrench itself was set to: the joint's torque, or its setting where something stood between. */
    static Take atTheWrench() {
        return new Take("torque at the wrench") {
            @Override
            String quantity() {
                return "joint torque";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> set = Take.reading("joint setting").at(site, place);
                Optional<Slot> torque = set.isPresent() ? set : Take.reading("joint torque").at(site, place);
                return torque.map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }

    /** The joints, and where lengths were read bolt by bolt, each of those places. */
    static List<String> boltByBolt(Site site, String group, String quantity) {
        Set<String> places = new LinkedHashSet<>();
        for (String joint : joints(site, group)) {
            Set<String> longer = new LinkedHashSet<>();
            for (Value value : site.store.within(quantity, joint)) {
                longer.add(value.at());
            }
            if (longer.isEmpty()) {
                longer.add(joint);
            }
            places.addAll(longer);
        }
        return List.copyOf(places);
    }

    /** The joints, and where one of these was read bolt by bolt or hole by hole each of those places: one hole may be unlike its mates. */
    static List<String> holeByHole(Site site, String group, String... quantities) {
        Set<String> places = new LinkedHashSet<>();
        for (String joint : joints(site, group)) {
            Set<String> longer = new LinkedHashSet<>();
            boolean whole = true;
            for (String quantity : quantities) {
                List<Value> within = site.store.within(quantity, joint);
                for (Value value : within) {
                    longer.add(value.at());
                }
                // What is told of them all besides holds for those that are not named.
                whole &= within.isEmpty() || site.store.at(quantity, joint).isPresent();
            }
            if (whole) {
                places.add(joint);
            }
            places.addAll(longer);
        }
        return List.copyOf(places);
    }

    /** The joints of a group: those of the sheet and those that the record names. */
    static List<String> joints(Site site, String group) {
        return site.joints(group);
    }

    static List<String> gather(Site site, String group) {
        Set<String> joints = new LinkedHashSet<>(site.places(group).orElse(List.of()));
        if (group.equals("each joint") || group.equals("each joint with a torque")) {
            for (Value value : site.store.of("joint torque")) {
                joints.add(value.at());
            }
            for (Statement s : site.said("joint")) {
                if (s.at().contains(" to ") && !Place.covered(joints, s.at())) {
                    joints.add(s.at());
                }
            }
        }
        return List.copyOf(joints);
    }

    /** Washers in the stack: as read; none where neither record nor sheet has a washer. */
    static Take washers() {
        return new Take("washer thickness") {
            @Override
            String quantity() {
                return "washer thickness";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = Take.reading("washer thickness").at(site, place);
                if (read.isPresent()) {
                    return read;
                }
                Optional<Statement> washer = site.word("joint", place, "washer");
                Optional<Statement> sheet = site.sheet("joint", place, "washer");
                boolean asSheet = washer.isEmpty() || washer.get().says().equals("as sheet");
                boolean none = washer.map(s -> s.says().equals("none")).orElse(false)
                        || asSheet && (sheet.isEmpty() || sheet.get().says().equals("none"));
                return none ? Optional.of(Slot.of(name(), Site.exact(name(), place, 0, MM, 2, washer.map(s -> List.of(s.where()))
                        .orElse(List.of())))) : Optional.empty();
            }
        };
    }
}
