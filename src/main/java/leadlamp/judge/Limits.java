package leadlamp.judge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlamp.derive.Readings;
import leadlamp.facts.Fact;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.LimitLine;
import leadlamp.record.Node;
import leadlamp.record.Place;
import leadlamp.record.Where;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * Chooses the limit for a value: the supplier's for that part, else the sheet's, else the trade's, and among those of one hand
 * the most particular. Where it is open which line applies, all that may are given, and a verdict stands only if all give it.
 */
public final class Limits {
    private static final double SAME_SPEED = 0.02;
    private static final double SAME_HEAT = 5;
    private static final String FOUND = " as found";

    private final Build build;
    private final Vocabulary words;
    private final TradeLimits trade;
    private final Map<String, List<LimitLine>> supplier = new HashMap<>();
    private final Map<String, List<LimitLine>> sheet = new HashMap<>();
    private final Map<String, List<Value>> values = new HashMap<>();
    private final Map<String, String> banks = new HashMap<>();
    private final List<? extends Fact> facts;
    private Map<String, List<Fact>> byWord;

    Limits(List<Value> values, List<? extends Fact> facts, Build build, Vocabulary words, TradeLimits trade) {
        this.build = build;
        this.words = words;
        this.trade = trade;
        this.facts = facts;
        for (Value value : values) {
            this.values.computeIfAbsent(value.of(), q -> new ArrayList<>()).add(value);
        }
        put(build.limits(), supplier);
        put(build.sheet().limits(), sheet);
        for (LimitLine line : ImpliedLimits.of(build)) {
            if (!sheet.containsKey(line.quantity()) || !stated(line.quantity())) {
                sheet.computeIfAbsent(line.quantity(), q -> new ArrayList<>()).add(line);
            }
        }
        banks();
    }

    /** Whether the sheet's own `limits` speak of the quantity; then what it implies elsewhere is not asked. */
    private boolean stated(String quantity) {
        for (LimitLine line : build.sheet().limits()) {
            if (line.quantity().equals(quantity)) {
                return true;
            }
        }
        return false;
    }

    private static void put(List<LimitLine> lines, Map<String, List<LimitLine>> into) {
        for (LimitLine line : lines) {
            into.computeIfAbsent(line.quantity(), q -> new ArrayList<>()).add(line);
        }
    }

    private void banks() {
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
    }

    /** How particular a line is: what narrows it, place before words before state. */
    static int particular(LimitLine line) {
        int place = line.at().isEmpty() ? 0 : line.at().split(" ").length;
        return 100 * place + 10 * line.where().size() + (line.when().isEmpty() ? 0 : 1);
    }

    /** The limits that apply to a value, the surest first; empty where there is none. */
    List<LimitUsed> of(Value value) {
        String name = value.of().endsWith(FOUND) ? value.of().substring(0, value.of().length() - FOUND.length()) : value.of();
        Optional<Quantity> quantity = words.quantity(name);
        List<String> names = new ArrayList<>(List.of(name));
        if (quantity.isPresent() && !quantity.get().kind().equals(name)) {
            names.add(quantity.get().kind());
        }
        for (String each : names) {
            List<LimitUsed> chosen = chosen(supplier.getOrDefault(each, List.of()), value, name, LimitUsed.Whose.SUPPLIER);
            if (!chosen.isEmpty()) {
                return chosen;
            }
        }
        for (String each : names) {
            List<LimitUsed> chosen = chosen(sheet.getOrDefault(each, List.of()), value, name, LimitUsed.Whose.SHEET);
            if (!chosen.isEmpty()) {
                return chosen;
            }
        }
        for (String each : names) {
            List<LimitUsed> chosen = chosen(trade.of(each), value, name, LimitUsed.Whose.TRADE);
            if (!chosen.isEmpty()) {
                return chosen;
            }
        }
        return List.of();
    }

    /** One line that applies, or may. */
    private record Candidate(LimitLine line, boolean open, boolean reason, double scale, String note) {
    }

    private List<LimitUsed> chosen(List<LimitLine> lines, Value value, String quantity, LimitUsed.Whose whose) {
        List<Candidate> candidates = new ArrayList<>();
        for (LimitLine line : lines) {
            if (line.least().isPresent() || line.most().isPresent()) {
                apply(line, value, quantity).ifPresent(candidates::add);
            }
        }
        candidates = forSpeed(candidates, value);
        candidates = newAlone(candidates);
        if (candidates.isEmpty()) {
            return List.of();
        }
        int best = -1;
        for (Candidate c : candidates) {
            best = c.open() ? best : Math.max(best, particular(c.line()));
        }
        List<Candidate> sure = new ArrayList<>();
        List<Candidate> open = new ArrayList<>();
        for (Candidate c : candidates) {
            if (c.open() && particular(c.line()) >= best) {
                open.add(c);
            } else if (!c.open() && particular(c.line()) == best) {
                sure.add(c);
            }
        }
        List<LimitUsed> used = new ArrayList<>();
        merged(sure, value, whose, !open.isEmpty()).ifPresent(used::add);
        for (Candidate c : open) {
            merged(List.of(c), value, whose, true).ifPresent(used::add);
        }
        return used;
    }

    /** Lines of equal standing give their sides together, the narrower of each. */
    private Optional<LimitUsed> merged(List<Candidate> lines, Value value, LimitUsed.Whose whose, boolean open) {
        OptionalDouble least = OptionalDouble.empty();
        OptionalDouble most = OptionalDouble.empty();
        boolean reason = false;
        List<String> notes = new ArrayList<>();
        Optional<Candidate> first = Optional.empty();
        for (Candidate c : lines) {
            OptionalDouble times = times(c.line(), value);
            if (!c.line().times().isEmpty() && times.isEmpty()) {
                continue;
            }
            double factor = c.scale() * times.orElse(1);
            if (c.line().least().isPresent()) {
                double side = c.line().least().get().low() * factor;
                least = least.isEmpty() ? OptionalDouble.of(side) : OptionalDouble.of(Math.max(least.getAsDouble(), side));
            }
            if (c.line().most().isPresent()) {
                double side = c.line().most().get().high() * factor;
                most = most.isEmpty() ? OptionalDouble.of(side) : OptionalDouble.of(Math.min(most.getAsDouble(), side));
            }
            reason |= c.reason();
            if (!c.note().isEmpty() && !notes.contains(c.note())) {
                notes.add(c.note());
            }
            if (!c.line().times().isEmpty()) {
                notes.add("reckoned from the " + c.line().times());
            }
            first = first.isPresent() ? first : Optional.of(c);
        }
        if (first.isEmpty()) {
            return Optional.empty();
        }
        if (open) {
            notes.add("which line applies is not settled");
        }
        LimitLine line = first.get().line();
        Optional<Where> where = whose == LimitUsed.Whose.TRADE ? Optional.empty() : Optional.of(line.line());
        String basis = line.basis().isEmpty() ? build.sheet().name() : line.basis();
        return Optional.of(new LimitUsed(least, most, whose, reason, basis, String.join("; ", notes), where));
    }

    /** What the shares of a line are of, at the value's place. */
    private OptionalDouble times(LimitLine line, Value value) {
        if (line.times().isEmpty()) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        int count = 0;
        Value holding = null;
        for (Value other : values.getOrDefault(line.times(), List.of())) {
            if (other.low().isEmpty() || other.high().isEmpty()) {
                continue;
            }
            if (covers(other.at(), value.at())) {
                holding = holding == null || covers(holding.at(), other.at()) ? other : holding;
            } else if (covers(value.at(), other.at()) || cylinder(value.at()).equals(cylinder(other.at())) && !cylinder(value.at()).isEmpty()) {
                sum += middle(other);
                count++;
            }
        }
        if (holding != null) {
            return OptionalDouble.of(middle(holding));
        }
        return count > 0 ? OptionalDouble.of(sum / count) : OptionalDouble.empty();
    }

    /** The cylinder that a place belongs to, so that a bore read at `1 top thrust` serves the ring of `1 first`. */
    private static String cylinder(String place) {
        int blank = place.indexOf(' ');
        String first = blank < 0 ? place : place.substring(0, blank);
        return !first.isEmpty() && Character.isDigit(first.charAt(0)) ? first : "";
    }

    private static double middle(Value value) {
        return (value.low().get().value() + value.high().get().value()) / 2;
    }

    boolean covers(String shorter, String longer) {
        if (Place.covers(shorter, longer)) {
            return true;
        }
        if (banks.isEmpty()) {
            return false;
        }
        String before = longer.startsWith("big end ") ? "big end " : "";
        String rest = longer.substring(before.length());
        int blank = rest.indexOf(' ');
        String bank = banks.get(blank < 0 ? rest : rest.substring(0, blank));
        return bank != null && Place.covers(shorter, longer + " " + bank);
    }

    /** Whether a line applies; empty where it does not. */
    private Optional<Candidate> apply(LimitLine line, Value value, String quantity) {
        if (!line.at().isEmpty() && !covers(line.at(), value.at()) && !named(line.at(), value)) {
            return Optional.empty();
        }
        boolean open = false;
        boolean reason = line.reason();
        List<String> notes = new ArrayList<>();
        double scale = 1;
        String state = value.asides().getOrDefault("state", "");
        switch (line.when()) {
            case "cold", "hot" -> {
                if (state.equals("cold") || state.equals("hot") || state.equals("warm")) {
                    if (!state.equals(line.when())) {
                        return Optional.empty();
                    }
                } else {
                    notes.add("taken as read " + line.when());
                }
            }
            case "idle" -> {
                Optional<Double> speed = speed(value.asides().get("speed"));
                Optional<Double> idle = idle();
                if (speed.isPresent() && idle.isPresent()) {
                    if (Math.abs(speed.get() - idle.get()) > 0.25 * idle.get()) {
                        return Optional.empty();
                    }
                } else if (!"idle".equals(value.asides().get("speed"))) {
                    notes.add("taken as read at idle");
                }
            }
            case "new", "in service" -> {
                Optional<Boolean> run = hasRun(quantity, value.at());
                if (run.isEmpty()) {
                    open = true;
                } else if (run.get() != line.when().equals("in service")) {
                    if (line.when().equals("in service")) {
                        return Optional.empty();
                    }
                    reason = true;
                    notes.add(NEW_ALONE);
                }
            }
            default -> {
            }
        }
        for (Map.Entry<String, String> word : line.where().entrySet()) {
            Optional<Boolean> holds = holds(word.getKey(), word.getValue(), value.at());
            if (holds.isPresent() && !holds.get()) {
                return Optional.empty();
            }
            open |= holds.isEmpty();
        }
        for (String span : List.of("span", "at radius")) {
            if (line.asides().containsKey(span)) {
                Optional<Double> of = length(line.asides().get(span));
                Optional<Double> read = length(value.asides().get(span));
                if (of.isPresent() && read.isPresent() && of.get() > 0) {
                    scale *= read.get() / of.get();
                    if (Math.abs(read.get() / of.get() - 1) > 1e-9) {
                        notes.add("brought from " + line.asides().get(span) + " to " + value.asides().get(span));
                    }
                } else if (of.isPresent()) {
                    notes.add("taken as read over " + line.asides().get(span));
                }
            }
        }
        for (String heat : List.of("oil temperature", "temperature")) {
            Optional<Double> of = temperature(line.asides().get(heat));
            if (of.isPresent()) {
                Optional<Double> read = temperature(value.asides().get(heat));
                if (read.isEmpty()) {
                    notes.add("taken as read at " + line.asides().get(heat));
                } else if (Math.abs(read.get() - of.get()) > SAME_HEAT) {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(new Candidate(line, open, reason, scale, String.join("; ", notes)));
    }

    private static final String NEW_ALONE = "a limit for new parts";

    /** A line for a named part: `belt idler` of `lives` holds for the piece whose kind of value names it. */
    private static boolean named(String at, Value value) {
        return at.equals(value.kind()) || at.equals(value.kind() + " " + value.at()) || at.equals(value.at());
    }

    /**
     * A list of pressures by speed: the line of the highest speed that the reading reaches, for pressure rises with speed. A
     * reading without a speed leaves it open which line applies.
     */
    private List<Candidate> forSpeed(List<Candidate> candidates, Value value) {
        boolean bySpeed = false;
        for (Candidate c : candidates) {
            bySpeed |= c.line().asides().containsKey("speed");
        }
        if (!bySpeed) {
            return candidates;
        }
        Optional<Double> read = speed(value.asides().get("speed"));
        List<Candidate> suiting = new ArrayList<>();
        Candidate highest = null;
        double highestSpeed = -1;
        for (Candidate c : candidates) {
            String text = c.line().asides().get("speed");
            if (text == null) {
                suiting.add(c);
                continue;
            }
            Optional<Double> of = speed(text);
            boolean both = text.equals("idle") && "idle".equals(value.asides().get("speed"));
            if (both) {
                return List.of(c);
            }
            if (read.isEmpty() || of.isEmpty()) {
                suiting.add(new Candidate(c.line(), true, c.reason(), c.scale(), c.note()));
            } else if (of.get() <= read.get() * (1 + SAME_SPEED) && of.get() > highestSpeed) {
                highest = c;
                highestSpeed = of.get();
            }
        }
        if (highest != null) {
            suiting.add(highest);
        }
        return suiting;
    }

    /** A limit for new parts alone gives way to any other for a part that has run. */
    private static List<Candidate> newAlone(List<Candidate> candidates) {
        List<Candidate> others = new ArrayList<>();
        for (Candidate c : candidates) {
            if (!c.note().contains(NEW_ALONE)) {
                others.add(c);
            }
        }
        return others.isEmpty() ? candidates : others;
    }

    private Optional<Double> speed(String text) {
        if (text == null || text.isEmpty()) {
            return Optional.empty();
        }
        return text.equals("idle") ? idle() : size(text, Dimension.SPEED);
    }

    private Optional<Double> idle() {
        return build.sheet().statement("output", Place.ENGINE, "idle").flatMap(s -> s.value()).map(Written::low);
    }

    private static Optional<Double> length(String text) {
        return text == null ? Optional.empty() : size(text, Dimension.LENGTH);
    }

    private static Optional<Double> temperature(String text) {
        return text == null ? Optional.empty() : size(text, Dimension.TEMPERATURE);
    }

    private static Optional<Double> size(String text, Dimension dimension) {
        return Reading.read(text, dimension, Optional.empty()) instanceof Reading.Read read && read.written().figure()
                ? Optional.of((read.written().low() + read.written().high()) / 2) : Optional.empty();
    }

    /** Whether the part that a quantity is read of has run; not known where its state is not. */
    private Optional<Boolean> hasRun(String quantity, String at) {
        Optional<Quantity> of = words.quantity(quantity);
        if (of.isEmpty()) {
            return Optional.empty();
        }
        List<String> parts = new ArrayList<>(List.of(of.get().of()));
        for (String from : of.get().from()) {
            words.quantity(from).map(Quantity::of).filter(p -> !p.isEmpty()).ifPresent(parts::add);
        }
        boolean known = false;
        for (String part : parts) {
            for (Fact fact : word(part + " state")) {
                if (fact instanceof Stated said && related(said.at(), at)) {
                    switch (said.says()) {
                        case "kept", "second-hand", "repaired", "there" -> {
                            return Optional.of(true);
                        }
                        case "new" -> known = true;
                        default -> {
                        }
                    }
                }
            }
        }
        return known ? Optional.of(false) : Optional.empty();
    }

    private boolean related(String one, String other) {
        return covers(one, other) || covers(other, one);
    }

    /** Whether words of record or sheet hold at a place; empty where nothing is said. */
    private Optional<Boolean> holds(String key, String wanted, String at) {
        boolean onSheetAlone = key.startsWith("sheet ");
        String name = onSheetAlone ? key.substring(6) : key;
        List<Fact> said = onSheetAlone ? List.of() : word(name);
        Optional<Boolean> record = holdsIn(said, wanted, at);
        if (record.isPresent()) {
            return record;
        }
        Optional<Boolean> sheetSays = holdsIn(word("sheet " + name), wanted, at);
        if (sheetSays.isEmpty() && name.endsWith(" material")) {
            sheetSays = holdsIn(word("sheet materials " + name.substring(0, name.length() - 9)), wanted, at);
        }
        if (sheetSays.isPresent()) {
            return sheetSays;
        }
        for (Value value : values.getOrDefault(name, List.of())) {
            if (related(value.at(), at)) {
                Optional<Boolean> bound = bound(value.low().map(Estimate::value), value.high().map(Estimate::value), wanted,
                        value.unit().dimension());
                if (bound.isPresent()) {
                    return bound;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Boolean> holdsIn(List<Fact> facts, String wanted, String at) {
        Optional<Boolean> holds = Optional.empty();
        for (Fact fact : facts) {
            String says = fact instanceof Stated said ? said.says() : fact instanceof OnSheet line ? line.says() : "";
            if (says.isEmpty() || says.equals("unknown") || !related(fact.at(), at)) {
                continue;
            }
            boolean one = wanted.equals("recorded") || List.of(wanted.split(", ")).contains(says) || sized(says, wanted);
            holds = Optional.of(holds.orElse(false) || one);
        }
        return holds;
    }

    /** A size in words against `over 0.8 bar` or `under ...`. */
    private static boolean sized(String says, String wanted) {
        if (!wanted.startsWith("over ") && !wanted.startsWith("under ")) {
            return false;
        }
        for (Dimension dimension : List.of(Dimension.PRESSURE, Dimension.SPEED, Dimension.TORQUE, Dimension.POWER, Dimension.LENGTH,
                Dimension.TEMPERATURE, Dimension.VOLUME, Dimension.SHARE, Dimension.NUMBER)) {
            if (Reading.read(says, dimension, Optional.empty()) instanceof Reading.Read read && read.written().figure()) {
                Optional<Boolean> bound = bound(Optional.of(read.written().low()), Optional.of(read.written().high()), wanted, dimension);
                if (bound.isPresent()) {
                    return bound.get();
                }
            }
        }
        return false;
    }

    private static Optional<Boolean> bound(Optional<Double> low, Optional<Double> high, String wanted, Dimension dimension) {
        boolean over = wanted.startsWith("over ");
        if (!over && !wanted.startsWith("under ") || low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> edge = size(wanted.substring(over ? 5 : 6), dimension);
        return edge.map(e -> over ? low.get() > e : high.get() < e);
    }

    private List<Fact> word(String name) {
        if (byWord == null) {
            byWord = new LinkedHashMap<>();
            for (Fact fact : facts) {
                if (fact instanceof Stated said) {
                    byWord.computeIfAbsent(said.of() + " " + said.what(), w -> new ArrayList<>()).add(said);
                } else if (fact instanceof OnSheet line) {
                    byWord.computeIfAbsent("sheet " + line.of() + " " + line.what(), w -> new ArrayList<>()).add(line);
                }
            }
        }
        return byWord.getOrDefault(name, List.of());
    }

    /** How a value was said, where it was not said plainly. */
    static String said(Value value) {
        return value.asides().getOrDefault(Readings.SAID, "");
    }
}
