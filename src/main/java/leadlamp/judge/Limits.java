package leadlamp.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.LimitLine;
import leadlamp.record.Place;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * Chooses the limit that applies to a value: the supplier's for that part, else the sheet's, else the trade's most
 * particular one. Where it is open which line applies it gives all that may; a verdict stands only if all of them give it.
 */
final class Limits {
    /** Endings of a worked-out quantity that yields, where it has no limit of its own, to that of the reading it puts right. */
    private static final List<String> PUT_RIGHT = List.of(" corrected", " at setting", " after work", " after cut", " after clean-up",
            " from sizes", " by sizes", " left");
    private static final Set<String> RUN = Set.of("kept", "second-hand", "repaired");

    private final Build build;
    private final Vocabulary words;
    private final TradeLimits trade;
    private final SheetLimits sheet;
    private final Said said;

    Limits(Build build, Vocabulary words, TradeLimits trade, Said said) {
        this.build = build;
        this.words = words;
        this.trade = trade;
        this.sheet = new SheetLimits(build);
        this.said = said;
    }

    /** The limits that may apply; one where it is settled, none where there is none. */
    List<LimitUsed> of(Value value, String quantity, String kind) {
        List<LimitUsed> own = named(value, quantity);
        if (own.isEmpty() && !kind.equals(quantity)) {
            own = named(value, kind);
        }
        if (own.isEmpty()) {
            for (String ending : PUT_RIGHT) {
                if (quantity.endsWith(ending)) {
                    return named(value, quantity.substring(0, quantity.length() - ending.length()));
                }
            }
        }
        return own;
    }

    private List<LimitUsed> named(Value value, String quantity) {
        List<LimitLine> supplied = new ArrayList<>();
        for (LimitLine line : build.limits()) {
            if (line.quantity().equals(quantity)) {
                supplied.add(line);
            }
        }
        List<LimitUsed> used = apply(value, quantity, supplied, LimitUsed.Whose.SUPPLIER);
        if (used.isEmpty()) {
            used = apply(value, quantity, sheet.of(quantity), LimitUsed.Whose.SHEET);
        }
        if (used.isEmpty()) {
            used = apply(value, quantity, trade.of(quantity), LimitUsed.Whose.TRADE);
        }
        return used;
    }

    /** A line that may apply, how particular it is, and what the reader must know of it. */
    private record Candidate(LimitLine line, Holds holds, int particular, boolean newAlone, String note) {
    }

    private List<LimitUsed> apply(Value value, String quantity, List<LimitLine> lines, LimitUsed.Whose whose) {
        List<Candidate> candidates = new ArrayList<>();
        for (LimitLine line : lines) {
            candidate(value, quantity, line).ifPresent(candidates::add);
        }
        candidates = atSpeed(value, candidates);
        int best = -1;
        boolean fit = candidates.stream().anyMatch(c -> !c.newAlone());
        for (Candidate candidate : candidates) {
            if (candidate.holds() == Holds.YES && (!fit || !candidate.newAlone())) {
                best = Math.max(best, candidate.particular());
            }
        }
        List<LimitUsed> used = new ArrayList<>();
        for (Candidate candidate : candidates) {
            boolean open = candidate.holds() == Holds.OPEN && candidate.particular() > best;
            boolean chosen = candidate.holds() == Holds.YES && candidate.particular() == best && (!fit || !candidate.newAlone());
            if (chosen || open) {
                used(value, candidate, whose).ifPresent(used::add);
            }
        }
        return used;
    }

    private Optional<Candidate> candidate(Value value, String quantity, LimitLine line) {
        if (line.least().isEmpty() && line.most().isEmpty() || !line.at().isEmpty() && !Place.covers(line.at(), value.at())) {
            return Optional.empty();
        }
        Holds holds = Holds.YES;
        for (Map.Entry<String, String> word : line.where().entrySet()) {
            holds = holds.and(said.holds(word.getKey(), word.getValue(), value.at()));
        }
        StringBuilder note = new StringBuilder();
        boolean newAlone = false;
        if (!line.when().isEmpty()) {
            When when = when(value, quantity, line.when());
            holds = holds.and(when.holds());
            newAlone = when.newAlone();
            note.append(when.note());
        }
        if (holds == Holds.NO) {
            return Optional.empty();
        }
        String warm = line.asides().get("oil temperature");
        if (warm != null && value.asides().get("oil temperature") != null && !warm.equals(value.asides().get("oil temperature"))) {
            note.append(note.isEmpty() ? "" : "; ").append("the limit is given at ").append(warm).append(", the reading was taken at ")
                    .append(value.asides().get("oil temperature"));
        }
        int particular = 4 * line.where().size() + (line.at().isEmpty() ? 0 : 1 + line.at().split(" ").length)
                + (line.when().isEmpty() ? 0 : 1);
        return Optional.of(new Candidate(line, holds, particular, newAlone, note.toString()));
    }

    private record When(Holds holds, boolean newAlone, String note) {
    }

    private When when(Value value, String quantity, String when) {
        if (when.equals("new") || when.equals("in service")) {
            String part = words.quantity(quantity).map(Quantity::of).orElse("");
            boolean fresh = false;
            boolean run = false;
            if (!part.isEmpty()) {
                fresh = said.holds(part + " state", "new", value.at()) == Holds.YES;
                for (String state : RUN) {
                    run |= said.holds(part + " state", state, value.at()) == Holds.YES;
                }
            }
            if (when.equals("new")) {
                return fresh ? new When(Holds.YES, false, "")
                        : run ? new When(Holds.YES, true, "the limit is that of a new part, and this one has run")
                        : new When(Holds.YES, false, "it is taken that the limit of a new part suits");
            }
            return fresh ? new When(Holds.NO, false, "") : run ? new When(Holds.YES, false, "")
                    : new When(Holds.YES, false, "it is taken that the limit of a part in service suits");
        }
        if (when.equals("idle")) {
            String speed = value.asides().get("speed");
            return speed == null ? new When(Holds.YES, false, "it is taken that it was read at idle")
                    : new When(speed.equals("idle") ? Holds.YES : Holds.NO, false, "");
        }
        String state = value.asides().get("state");
        if (state == null || !Set.of("cold", "hot", "warm").contains(state)) {
            return new When(Holds.YES, false, "it is taken that it was read " + when);
        }
        return new When(state.equals(when) ? Holds.YES : Holds.NO, false, "");
    }

    /** Of lines given for speeds the one of the greatest speed not above that of the reading. */
    private List<Candidate> atSpeed(Value value, List<Candidate> candidates) {
        boolean speeds = candidates.stream().anyMatch(c -> c.line().asides().containsKey("speed"));
        if (!speeds) {
            return candidates;
        }
        String said = value.asides().get("speed");
        if (said == null) {
            List<Candidate> open = new ArrayList<>();
            candidates.forEach(c -> open.add(new Candidate(c.line(), Holds.OPEN, c.particular(), c.newAlone(), c.note())));
            return open;
        }
        double speed = speed(said);
        Candidate best = null;
        double bestSpeed = -1;
        for (Candidate candidate : candidates) {
            String given = candidate.line().asides().get("speed");
            double at = given == null ? 0 : speed(given);
            if (at <= speed * (1 + 1e-9) && at > bestSpeed) {
                best = candidate;
                bestSpeed = at;
            }
        }
        return best == null ? List.of() : List.of(best);
    }

    private double speed(String text) {
        String written = text;
        if (text.equals("idle")) {
            written = build.sheet().word("output", Place.ENGINE, "idle").orElse("0 rpm");
        }
        return Reading.read(written, Dimension.SPEED, Optional.empty()) instanceof Reading.Read read && read.written().figure()
                ? read.written().low() : 0;
    }

    private Optional<LimitUsed> used(Value value, Candidate candidate, LimitUsed.Whose whose) {
        LimitLine line = candidate.line();
        double scale = 1;
        StringBuilder note = new StringBuilder(candidate.note());
        if (!line.times().isEmpty()) {
            OptionalDouble of = size(line.times(), value.at());
            if (of.isEmpty()) {
                return Optional.empty();
            }
            scale = of.getAsDouble();
        }
        for (String span : List.of("span", "at radius")) {
            String given = line.asides().get(span);
            String read = value.asides().get(span);
            if (given != null && read != null && Reading.read(given, Dimension.LENGTH, Optional.empty()) instanceof Reading.Read of
                    && Reading.read(read, Dimension.LENGTH, Optional.empty()) instanceof Reading.Read over && of.written().low() > 0
                    && over.written().low() != of.written().low()) {
                scale *= over.written().low() / of.written().low();
                note.append(note.isEmpty() ? "" : "; ").append("the limit is given over ").append(given).append(" and was brought to ").append(read);
            }
        }
        boolean reason = line.reason() || candidate.newAlone();
        return Optional.of(new LimitUsed(side(line.least(), scale, true), side(line.most(), scale, false), whose, reason, line.basis(), note.toString(),
                whose == LimitUsed.Whose.TRADE ? Optional.empty() : Optional.of(line.line())));
    }

    private static OptionalDouble side(Optional<Written> size, double scale, boolean least) {
        return size.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of((least ? size.get().low() : size.get().high()) * scale);
    }

    /** The size of another quantity that a share is of: read, worked out, or standing on the sheet. */
    private OptionalDouble size(String quantity, String place) {
        double sum = 0;
        int count = 0;
        for (Value value : said.values(quantity, place)) {
            if (value.low().isPresent() && value.high().isPresent()) {
                sum += (value.low().get().value() + value.high().get().value()) / 2;
                count++;
            }
        }
        if (count > 0) {
            return OptionalDouble.of(sum / count);
        }
        for (LimitLine line : sheet.of(quantity)) {
            if (line.standard().isPresent() && (line.at().isEmpty() || Place.covers(line.at(), place))) {
                return OptionalDouble.of(line.standard().get().low());
            }
        }
        for (LimitLine line : build.sheet().limits()) {
            if (line.quantity().equals(quantity) && line.standard().isPresent()) {
                return OptionalDouble.of(line.standard().get().low());
            }
        }
        Optional<Quantity> known = words.quantity(quantity);
        for (String name : List.of(quantity, known.map(Quantity::what).orElse(quantity))) {
            Optional<Written> standard = build.sheet().statement("standard", Place.ENGINE, name).flatMap(s -> s.value());
            if (standard.isPresent()) {
                return OptionalDouble.of(standard.get().low());
            }
        }
        return OptionalDouble.empty();
    }
}
