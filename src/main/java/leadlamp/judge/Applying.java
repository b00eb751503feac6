package leadlamp.judge;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.LimitLine;
import leadlamp.record.Place;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** Which lines of limits apply to a value: by place, by words, and by how it was read. */
final class Applying {
    /** Two temperatures within this are one, K: a hand thermometer tells no better (common practice, no source). */
    private static final double SAME_HEAT = 5;
    private static final String UNDERSIZE = "undersize";
    private static final String OVERSIZE = "oversize";
    private static final List<String> RUN = List.of("kept", "second-hand", "repaired");
    /** Sizes that are changed on purpose, and whose entries say by how much. */
    private static final Map<String, List<String>> GROUND = Map.of("main journal diameter", List.of("main journal", "crankshaft"),
            "crankpin diameter", List.of("crankpin", "crankshaft"), "journal diameter", List.of("crankshaft"));
    private static final Map<String, List<String>> BORED = Map.of("cylinder bore", List.of("cylinder", "block"),
            "piston skirt diameter", List.of("piston"));
    private static final List<String> HEATS = List.of("oil temperature", "temperature");

    private final Build build;
    private final Vocabulary words;
    private final Said said;
    private final Limits limits;

    Applying(Build build, Vocabulary words, Said said, Limits limits) {
        this.build = build;
        this.words = words;
        this.said = said;
        this.limits = limits;
    }

    /** How a reading suits what a line wants of it, and what is to be said of that. */
    private record Suits(Holds holds, boolean taken, boolean newAlone, String note) {
        static final Suits WELL = new Suits(Holds.YES, false, false, "");
        static final Suits NOT = new Suits(Holds.NO, false, false, "");

        static Suits taken(String note) {
            return new Suits(Holds.YES, true, false, note);
        }

        Suits and(Suits other) {
            return new Suits(holds.and(other.holds), taken || other.taken, newAlone || other.newAlone, Limits.noted(note, other.note));
        }

        Suits noted(String more) {
            return new Suits(holds, taken, newAlone, Limits.noted(note, more));
        }
    }

    /** The lines that apply to a value, or may. */
    List<Candidate> of(List<LimitLine> lines, Value value, String quantity, LimitUsed.Whose whose) {
        List<Candidate> candidates = new ArrayList<>();
        for (LimitLine line : lines) {
            if (!comparable(line, value)) {
                continue;
            }
            Suits suits = new Suits(limits.holdsAt(line.at(), value), false, false, "");
            for (Map.Entry<String, String> word : line.where().entrySet()) {
                suits = suits.and(new Suits(said.holds(word.getKey(), word.getValue(), value.at()), false, false, ""));
            }
            suits = suits.and(when(line.when(), value, quantity)).and(heat(line, value)).and(time(line, value));
            if (suits.holds() != Holds.NO) {
                candidates.add(brought(line, value, suits, whose));
            }
        }
        return newAlone(atSpeed(value, candidates));
    }

    private static boolean comparable(LimitLine line, Value value) {
        Optional<Written> side = line.least().isPresent() ? line.least() : line.most();
        if (side.isEmpty()) {
            return false;
        }
        Unit unit = side.get().unit();
        return !line.times().isEmpty() || Units.comparable(unit, value.unit()) || bare(unit.dimension()) == bare(value.unit().dimension())
                && bare(unit.dimension()) != Dimension.HARDNESS;
    }

    /** A sheet writes a count as a number, and a share without saying of what. */
    private static Dimension bare(Dimension dimension) {
        return switch (dimension) {
            case COUNT -> Dimension.NUMBER;
            case VOLUME_SHARE, MASS_SHARE -> Dimension.SHARE;
            default -> dimension;
        };
    }

    private Suits when(String when, Value value, String quantity) {
        switch (when) {
            case "":
                return Suits.WELL;
            case "new", "in service":
                return age(when.equals("new"), value, quantity);
            case "idle":
                return idle(value.asides().get("speed"));
            default:
                String state = value.asides().getOrDefault("state", "");
                boolean told = state.equals("cold") || state.equals("hot") || state.equals("warm");
                return !told ? Suits.taken("it is taken that it was read " + when) : state.equals(when) ? Suits.WELL : Suits.NOT;
        }
    }

    private Suits idle(String speed) {
        if (speed != null && speed.equals("idle")) {
            return Suits.WELL;
        }
        if (speed == null || speed("idle") == 0) {
            return Suits.taken("it is taken that it was read at idle");
        }
        return speed(speed) <= speed("idle") ? Suits.WELL : Suits.NOT;
    }

    private Suits age(boolean ofNew, Value value, String quantity) {
        boolean found = Marks.found(value.of());
        Holds run = hasRun(quantity, found, value);
        if (run == Holds.OPEN) {
            return Suits.taken(ofNew ? "it is taken that the part is new" : "it is taken that the part has run");
        }
        if (ofNew) {
            return run == Holds.NO ? Suits.WELL : new Suits(Holds.YES, false, true, "the limit is that of a new part, and this one has run");
        }
        return run == Holds.YES ? Suits.WELL : Suits.NOT;
    }

    /** Whether what was measured has run; by the part it is read of, else by those whose readings it was worked out from. */
    private Holds hasRun(String quantity, boolean found, Value value) {
        Optional<Quantity> of = words.quantity(quantity);
        Holds own = of.isPresent() ? partHasRun(of.get().of(), found, value) : Holds.OPEN;
        if (own != Holds.OPEN || of.isEmpty()) {
            return own;
        }
        Set<String> parts = new LinkedHashSet<>();
        for (String from : of.get().from()) {
            words.quantity(from).ifPresent(q -> parts.add(q.of()));
        }
        Holds all = null;
        for (String part : parts) {
            Holds one = partHasRun(part, found, value);
            if (one != Holds.OPEN) {
                all = Holds.of(all, one);
            }
        }
        return all == null ? Holds.OPEN : all;
    }

    private Holds partHasRun(String part, boolean found, Value value) {
        if (part.isEmpty()) {
            return Holds.OPEN;
        }
        String state = found ? part + " as found state" : part + " state";
        boolean fresh = said.holds(state, "new", value.at()) == Holds.YES;
        boolean run = false;
        for (String word : RUN) {
            run |= said.holds(state, word, value.at()) == Holds.YES;
        }
        // What was found in an engine has run in it, unless it is said to be new.
        return fresh == run ? found && !fresh ? Holds.YES : Holds.OPEN : run ? Holds.YES : Holds.NO;
    }

    private static Suits heat(LimitLine line, Value value) {
        Suits suits = Suits.WELL;
        for (String heat : HEATS) {
            Optional<Double> wanted = size(line.asides().get(heat), Dimension.TEMPERATURE);
            if (wanted.isPresent()) {
                String written = line.asides().get(heat);
                Optional<Double> read = size(value.asides().get(heat), Dimension.TEMPERATURE);
                if (read.isEmpty()) {
                    suits = suits.noted("it is taken that it was read at " + written);
                } else if (Math.abs(read.get() - wanted.get()) > SAME_HEAT) {
                    return Suits.NOT;
                }
            }
        }
        return suits;
    }

    /** A fall in ten minutes is not shown by five. */
    private static Suits time(LimitLine line, Value value) {
        Optional<Double> wanted = size(line.asides().get("for"), Dimension.TIME);
        if (wanted.isEmpty()) {
            return Suits.WELL;
        }
        Optional<Double> read = size(value.asides().get("for"), Dimension.TIME);
        if (read.isEmpty()) {
            return Suits.WELL.noted("it is taken that it was read for " + line.asides().get("for"));
        }
        return read.get() < wanted.get() * (1 - 1e-9) ? Suits.NOT : Suits.WELL;
    }

    /** A bend over a length, a swing at a radius: brought to that of the reading; a size: to what was ground or bored on purpose. */
    private Candidate brought(LimitLine line, Value value, Suits suits, LimitUsed.Whose whose) {
        double scale = 1;
        String note = suits.note();
        for (String span : List.of("span", "at radius")) {
            String written = line.asides().get(span);
            Optional<Double> given = size(written, Dimension.LENGTH);
            if (given.isEmpty() || given.get() <= 0) {
                continue;
            }
            Optional<Double> read = size(value.asides().get(span), Dimension.LENGTH);
            boolean over = span.equals("span");
            if (read.isEmpty()) {
                note = Limits.noted(note, "it is taken that it was read " + (over ? "over " : "at a radius of ") + written);
            } else if (Math.abs(read.get() / given.get() - 1) > 1e-9) {
                scale *= read.get() / given.get();
                note = Limits.noted(note, "the limit is given " + (over ? "over " : "at a radius of ") + written + " and was brought to "
                        + value.asides().get(span));
            }
        }
        double shift = whose == LimitUsed.Whose.SHEET ? offStandard(line, value) : 0;
        if (shift != 0) {
            note = Limits.noted(note, "the limit was moved by the " + (shift < 0 ? UNDERSIZE : OVERSIZE));
        }
        return new Candidate(line, suits.holds(), suits.taken(), suits.newAlone(), scale, shift, note);
    }

    /** What a journal was ground under its standard, or a bore is over it: a sheet's limits are those of the standard size. */
    private double offStandard(LimitLine line, Value value) {
        boolean ground = GROUND.containsKey(value.of());
        String word = ground ? UNDERSIZE : OVERSIZE;
        for (String key : line.where().keySet()) {
            if (key.endsWith(word)) {
                return 0;
            }
        }
        for (String part : ground ? GROUND.get(value.of()) : BORED.getOrDefault(value.of(), List.of())) {
            Optional<String> cut = said.text("machining", part + " " + word, value.at());
            Optional<Double> by = size((cut.isPresent() ? cut : said.text(part, word, value.at())).orElse(null), Dimension.LENGTH);
            if (by.isPresent()) {
                return ground ? -by.get() : by.get();
            }
        }
        return 0;
    }

    /** Of lines given for speeds those of the greatest speed that the reading reaches; without a speed any may be meant. */
    private List<Candidate> atSpeed(Value value, List<Candidate> candidates) {
        boolean speeds = false;
        for (Candidate c : candidates) {
            speeds |= c.line().asides().containsKey("speed");
        }
        if (!speeds) {
            return candidates;
        }
        String read = value.asides().get("speed");
        double speed = read == null ? 0 : speed(read);
        double best = -1;
        for (Candidate c : candidates) {
            String given = c.line().asides().get("speed");
            if (read != null && given != null && speed(given) <= speed * (1 + 1e-9)) {
                best = Math.max(best, speed(given));
            }
        }
        List<Candidate> suiting = new ArrayList<>();
        for (Candidate c : candidates) {
            String given = c.line().asides().get("speed");
            if (given == null || read != null && speed(given) == best) {
                suiting.add(c);
            } else if (read == null) {
                suiting.add(new Candidate(c.line(), c.holds(), true, c.newAlone(), c.scale(), c.shift(),
                        Limits.noted(c.note(), "it is taken that it was read at " + given)));
            }
        }
        return suiting;
    }

    /** Idle on a sheet that does not say how fast that is stands below every speed that is written. */
    private double speed(String text) {
        String written = text.equals("idle") ? build.sheet().word("output", Place.ENGINE, "idle").orElse("0 rpm") : text;
        return size(written, Dimension.SPEED).orElse(0.0);
    }

    /** A limit for new parts yields to any other for a part that has run. */
    private static List<Candidate> newAlone(List<Candidate> candidates) {
        List<Candidate> others = new ArrayList<>();
        for (Candidate c : candidates) {
            if (!c.newAlone()) {
                others.add(c);
            }
        }
        return others.isEmpty() ? candidates : others;
    }

    private static Optional<Double> size(String text, Dimension dimension) {
        return text != null && Reading.read(text, dimension, Optional.empty()) instanceof Reading.Read read && read.written().figure()
                && !Double.isInfinite(read.written().low()) && !Double.isInfinite(read.written().high())
                ? Optional.of((read.written().low() + read.written().high()) / 2) : Optional.empty();
    }
}
