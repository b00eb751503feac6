package leadlamp.judge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.LimitLine;
import leadlamp.record.Place;
import leadlamp.words.Listed;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * Chooses the limit that applies to a value: the supplier's for that part, else the sheet's, else the trade's, and of one
 * hand's lines the most particular. A line under the quantity's own name goes before one under its kind's. Where it is open which line
 * applies it gives all that may; a verdict stands only if all of them give it.
 */
final class Limits {
    /** Endings of a worked-out quantity that, where it has no limit of its own, is held against that of the reading it puts right. */
    private static final List<String> PUT_RIGHT = List.of(" corrected", " at setting", " after work", " after cut", " after clean-up",
            " from sizes", " by sizes", " left", " with film");

    private static final String JOINT_TORQUE = "joint torque";
    private static final String ROD_CAP = "rod cap to rod ";

    private final Build build;
    private final Vocabulary words;
    private final TradeLimits trade;
    private final Said said;
    private final Applying applying;
    private final Map<String, List<LimitLine>> supplied;
    private final Map<String, List<LimitLine>> sheet;
    private final Map<String, List<LimitLine>> elsewhere;
    private final Map<String, List<LimitLine>> ofGauges;
    private final Map<String, List<Pile>> piles = new HashMap<>();
    private final Map<String, String> banks;

    /** One hand's lines under one name. */
    private record Pile(LimitUsed.Whose whose, List<LimitLine> lines) {
    }

    Limits(Build build, Vocabulary words, TradeLimits trade, Said said) {
        this.build = build;
        this.words = words;
        this.trade = trade;
        this.said = said;
        this.banks = SheetLimits.banks(build.sheet());
        this.applying = new Applying(build, words, said, this);
        this.supplied = byQuantity(build.limits());
        this.sheet = byQuantity(build.sheet().limits());
        this.elsewhere = byQuantity(SheetLimits.of(build.sheet()));
        this.ofGauges = byQuantity(SheetLimits.ofGauges(build));
    }

    private static Map<String, List<LimitLine>> byQuantity(List<LimitLine> lines) {
        Map<String, List<LimitLine>> all = new HashMap<>();
        for (LimitLine line : lines) {
            List<LimitLine> of = all.get(line.quantity());
            if (of == null) {
                of = new ArrayList<>(2);
                all.put(line.quantity(), of);
            }
            of.add(line);
        }
        return all;
    }

    /** The limits that may apply; one where it is settled, none where there is none. */
    List<LimitUsed> of(Value value) {
        List<Pile> lines = piles(Marks.unmarked(value.of()));
        if (lines.isEmpty()) {
            return List.of();
        }
        List<String> places = meant(value);
        if (places.isEmpty()) {
            return at(value, lines);
        }
        // At one of several places any of their limits may be the one; where one place has none, nobody can say.
        List<LimitUsed> all = new ArrayList<>();
        for (String place : places) {
            List<LimitUsed> here = at(at(value, place), lines);
            if (here.isEmpty()) {
                return here;
            }
            for (LimitUsed limit : here) {
                addNew(limit, all);
            }
        }
        return all;
    }

    private static Value at(Value value, String place) {
        return new Value(value.of(), value.kind(), place, value.low(), value.high(), value.unit(), value.figures(), value.gauge(),
                value.usual(), value.redone(), value.told(), value.asides(), value.places());
    }

    private static void addNew(LimitUsed limit, List<LimitUsed> all) {
        for (LimitUsed known : all) {
            if (known.whose() == limit.whose() && known.least().equals(limit.least()) && known.most().equals(limit.most())) {
                return;
            }
        }
        all.add(limit);
    }

    private List<LimitUsed> at(Value value, List<Pile> piles) {
        List<LimitUsed> open = new ArrayList<>();
        for (Pile pile : piles) {
            if (pile.whose() == LimitUsed.Whose.SUPPLIER && Marks.found(value.of())) {
                // What came with a new part says nothing of the old one.
                continue;
            }
            Choice choice = choose(pile.lines(), value, Marks.unmarked(value.of()), pile.whose());
            open.addAll(choice.open());
            if (choice.settled()) {
                List<LimitUsed> used = new ArrayList<>(choice.applying());
                used.addAll(open);
                return choice.applying().isEmpty() ? List.of() : used;
            }
        }
        // Of two lines on one open word one will hold; whether a single one holds at all is not known, and then there is no limit.
        return open.size() > 1 ? open : List.of();
    }

    /** All lines that may concern a quantity, in the order in which they are asked. */
    private List<Pile> piles(String quantity) {
        List<Pile> known = piles.get(quantity);
        if (known == null) {
            known = new ArrayList<>(2);
            List<String> names = names(quantity);
            for (String name : names) {
                pile(LimitUsed.Whose.SUPPLIER, supplied.get(name), known);
            }
            for (String name : names) {
                pile(LimitUsed.Whose.SHEET, sheet.get(name), known);
            }
            for (String name : names) {
                pile(LimitUsed.Whose.SHEET, elsewhere.get(name), known);
                pile(LimitUsed.Whose.SUPPLIER, ofGauges.get(name), known);
            }
            for (String name : names) {
                pile(LimitUsed.Whose.TRADE, trade.of(name), known);
            }
            piles.put(quantity, known);
        }
        return known;
    }

    private static void pile(LimitUsed.Whose whose, List<LimitLine> lines, List<Pile> into) {
        if (lines != null && !lines.isEmpty()) {
            into.add(new Pile(whose, lines));
        }
    }

    /** The names under which a quantity's limits may stand, its own first. */
    private List<String> names(String quantity) {
        List<String> names = new ArrayList<>(2);
        names.add(quantity);
        Optional<Quantity> of = words.quantity(quantity);
        kind(of, names);
        putRight(quantity, of, names);
        return names;
    }

    private static void kind(Optional<Quantity> of, List<String> names) {
        if (of.isPresent() && !names.contains(of.get().kind())) {
            names.add(of.get().kind());
        }
    }

    private void putRight(String quantity, Optional<Quantity> of, List<String> names) {
        for (String ending : PUT_RIGHT) {
            if (quantity.endsWith(ending)) {
                Optional<Quantity> reading = words.quantity(quantity.substring(0, quantity.length() - ending.length()));
                if (reading.isEmpty() && of.isPresent() && !of.get().from().isEmpty() && ending.equals(" corrected")) {
                    reading = words.quantity(of.get().from().get(0));
                }
                if (reading.isPresent() && of.isPresent() && reading.get().dimension() == of.get().dimension()) {
                    names.add(reading.get().name());
                    kind(reading, names);
                }
            }
        }
    }

    /**
     * What one hand's lines under one name come to.
     *
     * @param applying those of which one applies; a single one where it is settled which
     * @param open     those that may apply besides
     * @param settled  whether one applies for certain, even if its figure cannot be worked out
     */
    private record Choice(List<LimitUsed> applying, List<LimitUsed> open, boolean settled) {
    }

    private Choice choose(List<LimitLine> lines, Value value, String quantity, LimitUsed.Whose whose) {
        List<Candidate> candidates = this.applying.of(lines, value, quantity, whose);
        int best = -1;
        for (Candidate c : candidates) {
            if (c.sure()) {
                best = Math.max(best, particular(c.line()));
            }
        }
        List<Candidate> sure = new ArrayList<>();
        Map<String, List<Candidate>> taken = new LinkedHashMap<>();
        List<LimitUsed> open = new ArrayList<>();
        for (Candidate c : candidates) {
            int particular = particular(c.line());
            if (c.sure() && particular == best) {
                sure.add(c);
            } else if (c.holds() == Holds.OPEN && particular >= best) {
                used(List.of(c), value, whose, open);
            } else if (c.holds() == Holds.YES && c.taken() && particular >= best) {
                keepBest(taken, c);
            }
        }
        List<LimitUsed> applying = new ArrayList<>();
        if (!sure.isEmpty()) {
            used(sure, value, whose, applying);
        }
        for (List<Candidate> alike : taken.values()) {
            used(alike, value, whose, applying);
        }
        return new Choice(applying, open, !sure.isEmpty() || !taken.isEmpty());
    }

    /** Lines that hold if the reading was taken in one way, of which the record says nothing: of each way the most particular. */
    private static void keepBest(Map<String, List<Candidate>> taken, Candidate c) {
        String way = c.line().when() + "\n" + c.line().asides().getOrDefault("speed", "");
        List<Candidate> alike = taken.get(way);
        if (alike == null) {
            alike = new ArrayList<>();
            taken.put(way, alike);
        }
        int best = alike.isEmpty() ? -1 : particular(alike.get(0).line());
        if (particular(c.line()) > best) {
            alike.clear();
        }
        if (particular(c.line()) >= best) {
            alike.add(c);
        }
    }

    /** How particular a line is: place before words, words before how it was read. */
    static int particular(LimitLine line) {
        int place = 0;
        if (!line.at().isEmpty()) {
            place = 1;
            for (int i = 0; i < line.at().length(); i++) {
                place += line.at().charAt(i) == ' ' ? 1 : 0;
            }
        }
        return 1000 * place + 10 * line.where().size() + (line.when().isEmpty() ? 0 : 1) + (line.asides().containsKey("speed") ? 1 : 0);
    }

    /** Adds lines that all apply as one, the narrower of each side; nothing where a share is of a size that is not known. */
    private void used(List<Candidate> lines, Value value, LimitUsed.Whose whose, List<LimitUsed> into) {
        OptionalDouble least = OptionalDouble.empty();
        OptionalDouble most = OptionalDouble.empty();
        boolean reason = false;
        String note = "";
        LimitLine first = null;
        for (Candidate c : lines) {
            LimitLine line = c.line();
            double scale = c.scale();
            if (!line.times().isEmpty()) {
                OptionalDouble size = size(line.times(), value);
                if (size.isEmpty()) {
                    continue;
                }
                scale *= size.getAsDouble();
                note = noted(note, "worked from the " + line.times());
            }
            if (line.least().isPresent()) {
                double side = line.least().get().low() * scale + c.shift();
                least = OptionalDouble.of(least.isPresent() ? Math.max(least.getAsDouble(), side) : side);
            }
            if (line.most().isPresent()) {
                double side = line.most().get().high() * scale + c.shift();
                most = OptionalDouble.of(most.isPresent() ? Math.min(most.getAsDouble(), side) : side);
            }
            reason |= line.reason() || c.newAlone();
            note = noted(note, c.note());
            first = first == null ? line : first;
        }
        if (first != null) {
            into.add(new LimitUsed(least, most, whose, reason, first.basis(), note,
                    whose == LimitUsed.Whose.TRADE ? Optional.empty() : Optional.of(first.line())));
        }
    }

    static String noted(String note, String more) {
        return more.isEmpty() || note.contains(more) ? note : note.isEmpty() ? more : note + "; " + more;
    }

    /** The size of another quantity that a share is of: read or worked out at the place, else standing on the sheet. */
    private OptionalDouble size(String quantity, Value value) {
        OptionalDouble size = sizeOf(said.values(quantity), value);
        size = size.isPresent() ? size : sizeOf(said.ofKind(quantity), value);
        return size.isPresent() ? size : onSheet(quantity, value);
    }

    private OptionalDouble sizeOf(List<Value> all, Value value) {
        Value holding = null;
        double sum = 0;
        int count = 0;
        for (Value other : all) {
            if (other.low().isEmpty() || other.high().isEmpty() || Marks.untold(other.at())) {
                continue;
            }
            if (covers(other.at(), value.at())) {
                holding = holding == null || covers(holding.at(), other.at()) ? other : holding;
            } else if (covers(value.at(), other.at()) || sameCylinder(value.at(), other.at()) || drives(other.at(), value)) {
                sum += middle(other);
                count++;
            }
        }
        if (holding != null) {
            return OptionalDouble.of(middle(holding));
        }
        return count > 0 ? OptionalDouble.of(sum / count) : OptionalDouble.empty();
    }

    private static double middle(Value value) {
        Estimate low = value.low().orElseThrow();
        return value.plain() ? low.value() : (low.value() + value.high().orElseThrow().value()) / 2;
    }

    /** A bore read at `1 top thrust` serves the ring of `1 first`. */
    private static boolean sameCylinder(String one, String other) {
        Optional<String> cylinder = Marks.cylinder(one);
        return cylinder.isPresent() && cylinder.equals(Marks.cylinder(other));
    }

    /** Whether a drive of the sheet names the part that a value is of: the belt's years are those of its idler. */
    private boolean drives(String drive, Value value) {
        Set<String> parts = parts(value);
        for (String line : parts.isEmpty() ? List.<String>of() : List.of("shares the belt", "route")) {
            String named = build.sheet().word("drive", drive, line).orElse("");
            for (String part : parts) {
                if ((", " + named + ",").contains(", " + part + ",")) {
                    return true;
                }
            }
        }
        return false;
    }

    /** How sheet lines name the part that is the kind of a value: `belt idler low`, `belt idler`, or its place's own name. */
    private Set<String> parts(Value value) {
        return words.part(value.kind()).isEmpty() ? Set.of()
                : new TreeSet<>(List.of(value.kind(), value.kind() + " " + value.at(), value.at()));
    }

    private OptionalDouble onSheet(String quantity, Value value) {
        for (LimitLine line : build.sheet().limits()) {
            if (line.quantity().equals(quantity) && line.standard().isPresent()
                    && (line.at().isEmpty() || covers(line.at(), value.at()) || sameCylinder(line.at(), value.at()))) {
                return OptionalDouble.of(line.standard().get().low());
            }
        }
        String what = words.quantity(quantity).map(Quantity::what).orElse(quantity);
        for (String name : List.of(quantity, what)) {
            Optional<Written> standard = build.sheet().statement("standard", Place.ENGINE, name).flatMap(s -> s.value());
            if (standard.isPresent()) {
                return OptionalDouble.of(standard.get().low());
            }
        }
        return OptionalDouble.empty();
    }

    /** Whether a line's place holds at the value's. */
    Holds holdsAt(String at, Value value) {
        if (at.isEmpty() || covers(at, value.at()) || parts(value).contains(at) || value.of().equals(JOINT_TORQUE) && bolt(at, value.at())) {
            return Holds.YES;
        }
        return Marks.untold(value.at()) || Marks.untold(at) ? Holds.OPEN : Holds.NO;
    }

    /** Whether a bolt's place lies in the joint: what came with the bolts is for the torque of the whole. Those of a rod stand at its big end. */
    private static boolean bolt(String at, String joint) {
        return Marks.joint(at).filter(joint::equals).isPresent()
                || joint.startsWith(ROD_CAP) && Marks.cylinder(at).filter(rod -> joint.equals(ROD_CAP + rod)).isPresent();
    }

    /** The places that `one of ...` names; none where it is told which, or where the sheet does not say which there are. */
    private List<String> meant(Value value) {
        if (!Marks.untold(value.at())) {
            return List.of();
        }
        String named = value.at().substring(value.at().indexOf(" of ") + 4);
        if (named.equals("each")) {
            return words.quantity(Marks.unmarked(value.of())).flatMap(q -> places(q.group())).orElse(List.of());
        }
        return Listed.in(named);
    }

    /** The places of a group, as far as the sheet gives them. */
    Optional<List<String>> places(String group) {
        return group.equals(Place.ENGINE) ? Optional.of(List.of(Place.ENGINE)) : build.sheet().layout().places(group);
    }

    /** Whether what holds at the shorter place holds at the longer one; of a vee the bank of a cylinder counts as said. */
    boolean covers(String shorter, String longer) {
        if (Place.covers(shorter, longer)) {
            return true;
        }
        if (banks.isEmpty()) {
            return false;
        }
        String bank = Marks.cylinder(longer).map(banks::get).orElse(null);
        return bank != null && Place.covers(shorter, longer + " " + bank);
    }
}
