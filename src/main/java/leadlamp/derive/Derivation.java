package leadlamp.derive;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.quantity.Estimate;
import leadlamp.record.Build;
import leadlamp.record.Problem;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * Works out all that follows from the readings of one build: values, words, and for each that cannot be had, the readings
 * that are lacking. Entries of the table run in order of dependence; only those whose readings can be there are tried.
 */
public final class Derivation {
    /** Asks for all that can be worked out. */
    public static final Predicate<String> EVERY = name -> true;
    private static final double TWICE = 2;

    private final Site site;
    private static final String FROM_SIZES = " from sizes";

    private final Predicate<String> wanted;
    private final Map<String, State> states = new HashMap<>();
    private final Deque<String> chain = new ArrayDeque<>();
    private final List<Value> derived = new ArrayList<>();
    private final List<Stated> said = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private Map<String, List<String>> membersByKind;
    private final Map<String, List<Missing>> missing = new LinkedHashMap<>();

    private enum State {
        BEGUN, DONE
    }

    /**
     * What came of one build.
     *
     * @param readings what the record reads, with its doubt
     * @param derived  what was worked out, where it was not read
     * @param words    what was worked out in words: yes, no, a class to fit, two ways that differ
     * @param missing  what could not be worked out, and what it lacks
     * @param problems what a formula refused that is asked for, with the reading at the bench and its line
     */
    public record Worked(List<Value> readings, List<Value> derived, List<Stated> words, List<Missing> missing,
            List<Problem> problems) {
    }

    private Derivation(Site site, Predicate<String> wanted) {
        this.site = site;
        this.wanted = wanted;
    }

    /** Works out all that follows from a build. */
    public static Worked work(Build build, Vocabulary words) {
        return work(build, words, EVERY);
    }

    /**
     * Works out what is wanted of it, and what that rests on.
     *
     * @param wanted whether a quantity, or the kind that it is of, is asked for: what no check reads need not be worked out
     */
    public static Worked work(Build build, Vocabulary words, Predicate<String> wanted) {
        return work(build, words, wanted, EVERY);
    }

    /**
     * Works out what is wanted of it, and what that rests on.
     *
     * @param told whether a word that may be worked out, by its name in {@link #wordsWorkedOut}, is asked for; those that are worked
     *             out together come together
     */
    public static Worked work(Build build, Vocabulary words, Predicate<String> wanted, Predicate<String> told) {
        return work(build, words, wanted, wanted, told);
    }

    /**
     * Works out what is wanted of it, and what that rests on.
     *
     * @param asked  whether a quantity is asked for: a figure that its formula refuses leaves a question open, and is told. What is
     *               worked out for whoever wants to see it and asked for by nobody is only left out
     * @param wanted whether a quantity is to be worked out, asked for or not
     */
    public static Worked work(Build build, Vocabulary words, Predicate<String> asked, Predicate<String> wanted, Predicate<String> told) {
        Readings readings = Readings.read(build, words);
        Derivation derivation = new Derivation(new Site(build, words, readings), wanted);
        derivation.need(asked);
        SaidWords.all(derivation.site, derivation::need, derivation.said, derivation::lacking, told);
        List<Problem> problems = List.copyOf(derivation.problems);
        if (asked != wanted) {
            derivation.need(wanted);
            derivation.derived.sort(derivation.byTheVocabulary());
        }
        derivation.derived.addAll(OfReadings.of(derivation.site, readings.values(), wanted));
        List<Missing> missing = new ArrayList<>();
        derivation.missing.values().forEach(missing::addAll);
        return new Worked(List.copyOf(readings.values()), List.copyOf(derivation.derived), List.copyOf(derivation.said),
                List.copyOf(missing), problems);
    }

    private void need(Predicate<String> those) {
        for (Quantity quantity : site.words.quantities()) {
            if (!quantity.from().isEmpty() && (those.test(quantity.name()) || those.test(quantity.kind()))) {
                need(quantity.name());
            }
        }
    }

    /** Values in the order of their quantities; those of one quantity stay as they stood. */
    private Comparator<Value> byTheVocabulary() {
        Map<String, Integer> order = new HashMap<>();
        for (Quantity quantity : site.words.quantities()) {
            order.put(quantity.name(), order.size());
        }
        return (a, b) -> Integer.compare(order.getOrDefault(a.of(), order.size()), order.getOrDefault(b.of(), order.size()));
    }

    /**
     * The words that may be worked out, as subject and property (`use rev limit over sheet`), or the property alone where any
     * subject may have it (`class wanted`), with what each may say; an empty list where the sheet's own words stand there.
     */
    public static Map<String, List<String>> wordsWorkedOut() {
        return SaidWords.names();
    }

    /** Works a quantity out, and first what it rests on, unless that was done before. */
    private void need(String name) {
        State state = states.get(name);
        if (state == State.DONE) {
            return;
        }
        if (state == State.BEGUN) {
            List<String> ring = new ArrayList<>(chain);
            throw new IllegalStateException("The table of derived values runs in a ring: " + String.join(" <- ", ring) + " <- "
                    + name + ".");
        }
        Optional<Quantity> quantity = site.words.quantity(name).filter(q -> !q.from().isEmpty());
        if (quantity.isEmpty()) {
            states.put(name, State.DONE);
            return;
        }
        states.put(name, State.BEGUN);
        chain.push(name);
        if (possible(quantity.get())) {
            Table.entry(name).ifPresent(entry -> work(entry, quantity.get()));
        } else {
            lacking(new Missing(name, "engine", behind(quantity.get(), new HashSet<>())));
        }
        if (!site.alike.isEmpty() && name.endsWith(" spread")) {
            alike(quantity.get());
        }
        chain.pop();
        states.put(name, State.DONE);
    }

    /** Whether at least one reading behind a quantity can be there, or a cut or a date that it rests on; else it need not be tried. */
    private boolean possible(Quantity quantity) {
        boolean readings = false;
        for (String from : quantity.from()) {
            Optional<Quantity> behind = site.words.quantity(from);
            if (behind.isEmpty()) {
                if (from.startsWith("machining ") && sayable(from) || from.startsWith("steps ") && !site.said("steps").isEmpty()) {
                    return true;
                }
                continue;
            }
            readings = true;
            if (there(behind.get())) {
                return true;
            }
            if (!behind.get().from().isEmpty() && states.get(behind.get().name()) != State.BEGUN) {
                need(behind.get().name());
                if (there(behind.get())) {
                    return true;
                }
            }
        }
        return !readings;
    }

    private boolean there(Quantity quantity) {
        return site.store.has(quantity.name()) || site.store.has(quantity.kind());
    }

    /** The readings behind a quantity: those that are read, down to the last. */
    private List<String> behind(Quantity quantity, Set<String> seen) {
        Set<String> names = new LinkedHashSet<>();
        for (String from : quantity.from()) {
            Optional<Quantity> behind = site.words.quantity(from);
            if (behind.isEmpty() || behind.get().from().isEmpty() || !seen.add(from)) {
                if (behind.isPresent() ? !there(behind.get()) : !sayable(from)) {
                    names.add(behind.map(Quantity::name).orElse(from));
                }
            } else if (!there(behind.get())) {
                names.addAll(behind(behind.get(), seen));
            }
        }
        return List.copyOf(names);
    }

    /** Whether record or sheet has the words that a name stands for: `use rev limit`, `sheet standard stroke`. */
    private boolean sayable(String from) {
        int blank = from.indexOf(' ');
        String section = blank < 0 ? from : from.substring(0, blank);
        String rest = blank < 0 ? "" : from.substring(blank + 1);
        if (section.equals("sheet")) {
            return site.onSheet(rest);
        }
        return switch (section) {
            case "use", "build", "machining", "protection" -> site.word(section, "engine", rest).isPresent();
            default -> false;
        };
    }

    private void lacking(Missing lacking) {
        missing.computeIfAbsent(lacking.quantity(), q -> new ArrayList<>()).add(lacking);
    }

    private void work(Derived entry, Quantity quantity) {
        for (Take take : entry.takes()) {
            if (!take.quantity().isEmpty()) {
                site.words.quantity(take.quantity()).ifPresent(q -> need(q.name()));
            }
            take.others().forEach(this::need);
        }
        if (!entry.each().isEmpty()) {
            for (Value value : List.copyOf(site.store.of(entry.each()))) {
                if (!value.of().endsWith(" as found") && !value.of().endsWith(" as trial")) {
                    one(entry, quantity, value.at(), Optional.of(value));
                }
            }
            return;
        }
        List<String> members = members(quantity);
        members.forEach(this::need);
        for (String place : new Placing(site, entry, quantity).places()) {
            if (members.isEmpty() || !told(members, place)) {
                one(entry, quantity, place, Optional.empty());
            }
        }
    }

    /** A spread of which no more is told than what it does not exceed. */
    private void alike(Quantity spread) {
        for (Value told : site.alike) {
            if (!spread.from().contains(told.of()) || told.unit().dimension() != spread.dimension()) {
                continue;
            }
            String at = Placing.shortened(told.at(), spread.group());
            List<String> places = site.places(spread.group()).orElse(List.of());
            for (String place : places) {
                at = site.store.covers(place, told.at()) ? place : at;
            }
            if (site.store.at(spread.name(), at).isPresent()) {
                continue;
            }
            Value value = new Value(spread.name(), spread.kind(), at, told.low(), told.high(), told.unit(), told.figures(), "", told.usual(),
                    told.of() + " " + told.sum() + " = at most " + Figures.text(told.high().get().value(), told.unit(), told.figures()),
                    told.told(), told.asides(), told.places());
            derived.add(value);
            site.store.add(value);
        }
    }

    /** The quantities of which this one is the kind: what is said of every plain bearing is said of a main by its own name. */
    private List<String> members(Quantity kind) {
        if (membersByKind == null) {
            membersByKind = new HashMap<>();
            for (Quantity quantity : site.words.quantities()) {
                if (!quantity.kind().equals(quantity.name()) && !quantity.from().isEmpty()) {
                    membersByKind.computeIfAbsent(quantity.kind(), k -> new ArrayList<>()).add(quantity.name());
                }
            }
        }
        return membersByKind.getOrDefault(kind.name(), List.of());
    }

    private boolean told(List<String> members, String place) {
        for (String member : members) {
            for (Value value : site.store.of(member)) {
                if (site.related(value.at(), place)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** One place. */
    private void one(Derived entry, Quantity quantity, String place, Optional<Value> given) {
        List<Slot> slots = new ArrayList<>();
        Set<String> lacking = new LinkedHashSet<>();
        for (Take take : entry.takes()) {
            if (given.isPresent() && take.quantity().equals(entry.each())) {
                slots.add(Slot.of(take.name(), given.get()));
                continue;
            }
            Optional<Slot> slot;
            try {
                slot = take.at(site, place);
            } catch (IllegalArgumentException outside) {
                slot = Optional.empty();
            }
            if (slot.isPresent()) {
                slots.add(slot.get());
            } else if (!take.isOptional()) {
                lacking.addAll(behind(take, place));
            }
        }
        if (!lacking.isEmpty()) {
            if (!Store.untold(place)) {
                lacking(new Missing(quantity.name(), place, List.copyOf(lacking)));
            }
            return;
        }
        Working working = new Working(entry, quantity, place, slots);
        Value value;
        try {
            value = working.value();
        } catch (IllegalArgumentException refused) {
            refuse(quantity, place, working, refused);
            return;
        }
        if (value.low().isEmpty() && value.high().isEmpty()) {
            lacking(new Missing(quantity.name(), place, names(slots)));
            return;
        }
        Optional<Value> read = given.isPresent() ? Optional.empty() : readAt(quantity, place);
        if (Warmth.fit(quantity) && !Store.untold(place)) {
            fit(quantity, place, slots, value);
        }
        readTwin(quantity, place, value);
        if (read.isPresent()) {
            compare(quantity, read.get(), value);
            if (read.get().told().isEmpty()) {
                return;
            }
        }
        if (read.isEmpty() && given.isEmpty() && !site.store.within(quantity.name(), place).isEmpty() && quantity.gauge().isPresent()) {
            return;
        }
        Optional<PartsAged.Piece> subject = entry.subject(site, place);
        Value worked = subject.isPresent() ? standing(value, subject.get()) : value;
        derived.add(worked);
        site.store.add(worked);
    }

    /** What every hole less a shaft says beside its own name. */
    private void fit(Quantity quantity, String place, List<Slot> slots, Value value) {
        if (wanted.test("fit by sizes")) {
            derived.add(ofSubject("fit by sizes", quantity.name(), value));
        }
        if (!wanted.test("warmth shift")) {
            return;
        }
        List<String> lacks = new ArrayList<>();
        Optional<Working> shift = Warmth.of(site, quantity, place, slots, lacks);
        if (shift.isPresent()) {
            derived.add(ofSubject("warmth shift", quantity.name(), shift.get().value()));
        } else if (!lacks.isEmpty()) {
            lacking(new Missing("warmth shift", place, List.copyOf(lacks)));
        }
    }

    /** The same value under another name, of the quantity that is its subject. */
    private static Value ofSubject(String name, String subject, Value v) {
        return new Value(name, subject, v.at(), v.low(), v.high(), v.unit(), v.figures(), v.gauge(), v.usual(), v.redone(), v.told(), v.asides(),
                v.places());
    }

    /** A value of a group that runs over parts or readings: which one it is of stands as its kind, at that one's own place. */
    private static Value standing(Value v, PartsAged.Piece of) {
        return new Value(v.of(), of.part(), of.at(), v.low(), v.high(), v.unit(), v.figures(), v.gauge(), v.usual(), v.redone(), v.told(),
                v.asides(), v.places());
    }

    private static List<String> names(List<Slot> slots) {
        List<String> names = new ArrayList<>();
        slots.forEach(slot -> names.add(slot.name()));
        return names;
    }

    /** What a sum lacks under one of its names: the readings behind it, where it is worked out itself. */
    private List<String> behind(Take take, String place) {
        Optional<Quantity> quantity = take.quantity().isEmpty() ? Optional.empty() : site.words.quantity(take.quantity());
        if (quantity.isEmpty() || quantity.get().from().isEmpty()) {
            return List.of(quantity.map(Quantity::name).orElse(take.lacks(site, place)));
        }
        for (Missing known : missing.getOrDefault(quantity.get().name(), List.of())) {
            if (site.related(known.at(), place) && !known.readings().isEmpty()) {
                return known.readings();
            }
        }
        List<String> behind = behind(quantity.get(), new HashSet<>());
        return behind.isEmpty() ? List.of(quantity.get().name()) : behind;
    }

    private Optional<Value> readAt(Quantity quantity, String place) {
        return site.store.at(quantity.name(), place).filter(v -> !v.derived());
    }

    /** What is foretold under a name of its own (`crankshaft end float from sizes`) is held against the reading of that thing. */
    private void readTwin(Quantity quantity, String place, Value worked) {
        String name = quantity.name();
        String twin = name.endsWith(FROM_SIZES) ? name.substring(0, name.length() - FROM_SIZES.length()) : name.equals("valve lift expected")
                ? "valve lift" : "";
        // What is foretold of a reading that is itself changed by the work is no second way to it.
        if (twin.isEmpty() || quantity.from().contains(twin)) {
            return;
        }
        Optional<Quantity> read = site.words.quantity(twin);
        if (read.isPresent()) {
            readAt(read.get(), place).ifPresent(value -> compare(read.get(), value, worked));
        }
    }

    /** A value that was read and is worked out too: the reading stands, and what differs beyond both doubts is said. */
    private void compare(Quantity quantity, Value read, Value worked) {
        if (read.low().isEmpty() || read.high().isEmpty() || worked.low().isEmpty() || worked.high().isEmpty()
                || read.asides().containsKey(Readings.SAID) && !read.plain()) {
            return;
        }
        double apart;
        double doubt;
        if (read.low().get().value() > worked.high().get().value()) {
            apart = read.low().get().value() - worked.high().get().value();
            doubt = together(read.low().get(), worked.high().get());
        } else if (worked.low().get().value() > read.high().get().value()) {
            apart = worked.low().get().value() - read.high().get().value();
            doubt = together(worked.low().get(), read.high().get());
        } else {
            apart = 0;
            doubt = 0;
        }
        if (wanted.test("stack difference") && Warmth.fit(quantity) && read.plain() && worked.plain()) {
            Value difference = Differences.of("stack difference", read, worked);
            derived.add(new Value("stack difference", quantity.name(), worked.at(), difference.low(), difference.high(), read.unit(),
                    Math.max(read.figures(), worked.figures()), "", difference.usual(), "read " + Figures.text(read.low().get().value(),
                    read.unit(), read.figures()) + " - by sizes " + Figures.text(worked.low().get().value(), worked.unit(), worked.figures())
                    + " = " + Figures.text(difference.low().get().value(), read.unit(), Math.max(read.figures(), worked.figures())),
                    difference.told(), Map.of(), difference.places()));
        }
        boolean differ = apart > TWICE * doubt && apart > 1e-9 * Math.abs(read.low().get().value());
        Map<String, String> asides = new TreeMap<>();
        asides.put("read", Figures.text(read.low().get().value(), read.unit(), read.figures()));
        asides.put("worked out", worked.sum());
        List<Where> places = new ArrayList<>(read.places());
        Differences.join(places, worked.places());
        said.add(new Stated(quantity.name(), quantity.kind(), worked.at(), "two ways", differ ? "differ" : "agree",
                read.told().isEmpty() ? worked.told() : read.told(), Map.copyOf(asides), List.copyOf(places)));
    }

    /** Standard uncertainty of the difference; a source that both share cancels as far as it is the same in both. */
    private static double together(Estimate one, Estimate other) {
        Set<String> sources = new LinkedHashSet<>(one.doubt().keySet());
        sources.addAll(other.doubt().keySet());
        double sum = 0;
        for (String source : sources) {
            double part = one.doubt().getOrDefault(source, 0.0) - other.doubt().getOrDefault(source, 0.0);
            sum += part * part;
        }
        return Math.sqrt(sum);
    }

    private void refuse(Quantity quantity, String place, Working working, IllegalArgumentException refused) {
        String why = refused.getMessage();
        Optional<Value> first = working.suspect(why);
        Where where = first.map(v -> v.places().get(0)).orElse(new Where(site.build.file(), 0, 0));
        String line = "";
        for (List<Statement> all : List.of(site.build.statements(), site.build.sheet().statements())) {
            for (Statement s : all) {
                if (line.isEmpty() && s.where().equals(where)) {
                    line = s.text();
                }
            }
        }
        String at = place.equals("engine") ? "" : " at " + place;
        problems.add(new Problem(where, 0, line, "The " + quantity.name() + at + " cannot be worked out from " + working.inWords(first)
                + ": " + why + (why.endsWith(".") ? "" : "."), "Look at " + first.map(v -> "the " + v.of() + (v.at().equals("engine") ? ""
                : " at " + v.at())).orElse("these figures") + " again.", Optional.empty(),
                "The readings were kept; checks that need the " + quantity.name() + " say \"cannot tell\"."));
        lacking(new Missing(quantity.name(), place, names(working.slots())));
    }
}
