package leadlamp.judge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import leadlamp.calc.Conformity;
import leadlamp.derive.Derivation;
import leadlamp.derive.Readings;
import leadlamp.facts.Fact;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.facts.Verdict.Side;
import leadlamp.facts.Verdict.Standing;
import leadlamp.quantity.Estimate;
import leadlamp.record.Build;
import leadlamp.words.Part;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * Holds each value against the one limit that applies, side by side.
 *
 * <p>The guard band is the expanded uncertainty, twice the standard uncertainty: a value is within or outside only when
 * that is proven (ISO 14253-1; JCGM 106, guarded acceptance and guarded rejection). A builder can redo it with the two figures
 * that are printed, value and doubt. Between them it is undecided, and the verdict carries the probability of being outside.
 */
public final class Judge {
    /** Coverage factor of the guard band, about 95 % (JCGM 100, 6.3.3). */
    static final double COVERAGE = 2;
    /** The probability of being outside where what was written leaves it wholly open. */
    private static final double EVEN = 0.5;
    /** So many standard uncertainties away what is left of the normal curve is lost in the last place of a one. */
    private static final double CERTAIN = 9;

    private final Build build;
    private final Vocabulary words;
    private final Limits limits;

    private Judge(Build build, Vocabulary words, Limits limits) {
        this.build = build;
        this.words = words;
        this.limits = limits;
    }

    /**
     * The verdicts on all values that have a limit, and the worst of longer places at the shorter ones of their group.
     *
     * @param values values read and worked out
     * @param facts  what record and sheet say in words
     */
    public static List<Verdict> judge(List<Value> values, Collection<? extends Fact> facts, Build build, Vocabulary words,
            TradeLimits trade) {
        return judge(values, facts, build, words, trade, Derivation.EVERY);
    }

    /** The verdicts on those alone whose quantity, or its kind, is wanted; a limit may rest on any value. */
    public static List<Verdict> judge(List<Value> values, Collection<? extends Fact> facts, Build build, Vocabulary words,
            TradeLimits trade, Predicate<String> wanted) {
        Said said = new Said(facts, values, words);
        Judge judge = new Judge(build, words, new Limits(build, words, trade, said));
        List<Verdict> verdicts = new ArrayList<>();
        for (Value value : values) {
            if (wanted.test(value.of()) || wanted.test(value.kind())) {
                judge.verdict(value, verdicts);
            }
        }
        judge.gather(verdicts);
        return List.copyOf(verdicts);
    }

    private void verdict(Value value, List<Verdict> into) {
        if (Marks.trial(value.of())) {
            return;
        }
        Verdict verdict = null;
        for (LimitUsed limit : limits.of(value)) {
            Verdict one = held(value, limit);
            verdict = verdict == null ? one : open(verdict, one);
        }
        if (verdict != null && (verdict.least().isPresent() || verdict.most().isPresent())) {
            into.add(verdict);
        }
    }

    private static Verdict held(Value value, LimitUsed limit) {
        return new Verdict(value.of(), value.kind(), value.at(), side(value, limit.least(), true), side(value, limit.most(), false),
                value, limit);
    }

    /** How a value stands against one side; absent where the limit has none or the value says nothing of it. */
    private static Optional<Side> side(Value value, OptionalDouble limit, boolean least) {
        if (limit.isEmpty()) {
            return Optional.empty();
        }
        double at = limit.getAsDouble();
        Optional<Estimate> near = least ? value.low() : value.high();
        Optional<Estimate> far = least ? value.high() : value.low();
        if (near.isEmpty()) {
            // `under 0.02` says nothing of a least, unless all that it leaves is too little.
            return outside(far, at, least) ? Optional.of(side(far.get(), at, least, Standing.OUTSIDE)) : Optional.empty();
        }
        Standing standing = standing(near.get(), at, least);
        String said = value.asides().getOrDefault(Readings.SAID, "");
        if (standing == Standing.OUTSIDE && !met(far, said) && !outside(far, at, least)) {
            return Optional.of(untold(near.get()));
        }
        if (standing == Standing.WITHIN && said.equals(Readings.MEAN)) {
            return Optional.of(untold(near.get()));
        }
        if (standing == Standing.WITHIN && !value.told().isEmpty()) {
            standing = Standing.UNDECIDED;
        }
        return Optional.of(side(near.get(), at, least, standing));
    }

    private static boolean outside(Optional<Estimate> end, double limit, boolean least) {
        return end.isPresent() && standing(end.get(), limit, least) == Standing.OUTSIDE;
    }

    /**
     * Whether the near end was met at this very place. Of a range both ends were, at one single place; of the ends of several places nobody
     * knows where. `under 0.05` was met only where it says so: it is no more than that, and may be anything below.
     */
    private static boolean met(Optional<Estimate> far, String said) {
        if (said.equals(Readings.RANGE_OF_SEVERAL) || said.equals(Readings.BOUND_OF_SEVERAL)) {
            return false;
        }
        return far.isPresent() || said.equals(Readings.END_MET);
    }

    private static Side side(Estimate end, double limit, boolean least, Standing standing) {
        double standard = end.standardUncertainty();
        double room = least ? end.value() - limit : limit - end.value();
        double outside = room > CERTAIN * standard ? 0 : room < -CERTAIN * standard ? 1 : 1 - Conformity.probability(end.value(), standard,
                least ? limit : Double.NEGATIVE_INFINITY, least ? Double.POSITIVE_INFINITY : limit);
        return new Side(standing, Math.min(1, Math.max(0, outside)), COVERAGE * standard, end.chiefSource());
    }

    private static Side untold(Estimate end) {
        return new Side(Standing.UNDECIDED, EVEN, COVERAGE * end.standardUncertainty(), end.chiefSource());
    }

    static Standing standing(Estimate end, double limit, boolean least) {
        double expanded = COVERAGE * end.standardUncertainty();
        Conformity.Zone zone = Conformity.zone(end.value(), expanded, least ? limit : Double.NEGATIVE_INFINITY,
                least ? Double.POSITIVE_INFINITY : limit);
        return switch (zone) {
            case WITHIN -> Standing.WITHIN;
            case BELOW, ABOVE -> Standing.OUTSIDE;
            case UNDECIDED -> Standing.UNDECIDED;
        };
    }

    /** Of limits of which it is open which applies, only what all give stands. */
    private static Verdict open(Verdict one, Verdict other) {
        LimitUsed first = one.limit();
        LimitUsed limit = new LimitUsed(first.least(), first.most(), first.whose(), first.reason() || other.limit().reason(), first.basis(),
                Limits.noted(first.note(), "it is open which of several limits applies"), first.where());
        return new Verdict(one.of(), one.kind(), one.at(), agreed(one.least(), other.least()), agreed(one.most(), other.most()), one.value(),
                limit);
    }

    private static Optional<Side> agreed(Optional<Side> one, Optional<Side> other) {
        if (one.isEmpty() && other.isEmpty()) {
            return one;
        }
        if (one.isEmpty() || other.isEmpty()) {
            Side known = one.isPresent() ? one.get() : other.get();
            return Optional.of(new Side(Standing.UNDECIDED, EVEN, known.expanded(), known.chiefSource()));
        }
        Side a = one.get();
        Side b = other.get();
        if (a.standing() == b.standing()) {
            return a.outside() >= b.outside() ? one : other;
        }
        return Optional.of(new Side(Standing.UNDECIDED, (a.outside() + b.outside()) / 2, Math.max(a.expanded(), b.expanded()),
                a.chiefSource()));
    }

    /** The worst verdict of longer places stands at the shorter one of the quantity's group too, with what was read there. */
    private void gather(List<Verdict> verdicts) {
        Map<String, List<Verdict>> byQuantity = new LinkedHashMap<>();
        for (Verdict verdict : verdicts) {
            if (!Marks.untold(verdict.at())) {
                // What others told proves nothing, and so it is kept apart from the builder's own.
                String key = verdict.value().told().isEmpty() ? verdict.of() : verdict.of() + " told";
                List<Verdict> of = byQuantity.get(key);
                if (of == null) {
                    of = new ArrayList<>();
                    byQuantity.put(key, of);
                }
                of.add(verdict);
            }
        }
        for (List<Verdict> of : byQuantity.values()) {
            for (Map.Entry<String, List<Verdict>> shorter : shorter(of).entrySet()) {
                List<Verdict> here = shorter.getValue();
                for (Verdict verdict : of) {
                    if (verdict.at().equals(shorter.getKey())) {
                        here.add(verdict);
                        remove(verdict, verdicts);
                    }
                }
                verdicts.add(worst(here, shorter.getKey()));
            }
        }
    }

    private static void remove(Verdict verdict, List<Verdict> verdicts) {
        for (int i = verdicts.size() - 1; i >= 0; i--) {
            if (verdicts.get(i) == verdict) {
                verdicts.remove(i);
                return;
            }
        }
    }

    /** What belongs to the shorter places of its group: of the quantity, of its part, and of the joint that a bolt is in. */
    private Map<String, List<Verdict>> shorter(List<Verdict> of) {
        Quantity quantity = words.quantity(Marks.unmarked(of.get(0).of())).orElse(null);
        Set<String> places = new LinkedHashSet<>();
        boolean settled = false;
        boolean rodBolt = false;
        if (quantity != null) {
            places.addAll(limits.places(quantity.group()).orElse(List.of()));
            settled = !places.isEmpty();
            Part part = words.part(quantity.of()).orElse(null);
            if (part != null && !part.group().equals(quantity.group())) {
                places.addAll(limits.places(part.group()).orElse(List.of()));
            }
            rodBolt = quantity.of().equals("rod bolt");
        }
        Map<String, List<Verdict>> shorter = new LinkedHashMap<>();
        for (Verdict verdict : of) {
            String at = verdict.at();
            if (!settled || !places.contains(at)) {
                for (String place : places) {
                    if (!place.equals(at) && limits.covers(place, at)) {
                        put(place, verdict, shorter);
                    }
                }
            }
            Optional<String> trunk = settled ? Optional.empty() : Marks.trunk(at);
            if (trunk.isPresent() && !trunk.get().equals(at)) {
                put(trunk.get(), verdict, shorter);
            }
            Optional<String> joint = rodBolt ? Marks.cylinder(at) : Marks.joint(at);
            if (joint.isPresent()) {
                put(rodBolt ? "rod cap to rod " + joint.get() : joint.get(), verdict, shorter);
            }
        }
        return shorter;
    }

    private static void put(String place, Verdict verdict, Map<String, List<Verdict>> into) {
        List<Verdict> all = into.get(place);
        if (all == null) {
            all = new ArrayList<>();
            into.put(place, all);
        }
        if (all.isEmpty() || all.get(all.size() - 1) != verdict) {
            all.add(verdict);
        }
    }

    /** Side by side the worst; value and limit are those of the verdict that is worst as a whole: of those proven outside the farthest. */
    private static Verdict worst(List<Verdict> of, String place) {
        Verdict chief = of.get(0);
        Optional<Side> least = Optional.empty();
        Optional<Side> most = Optional.empty();
        boolean silentLeast = false;
        boolean silentMost = false;
        for (Verdict verdict : of) {
            int order = Double.compare(badness(verdict), badness(chief));
            order = order != 0 ? order : Float.compare(beyond(verdict), beyond(chief));
            chief = order > 0 || order == 0 && verdict.at().compareTo(chief.at()) < 0 ? verdict : chief;
            least = worse(least, verdict.least());
            most = worse(most, verdict.most());
            silentLeast |= verdict.least().isEmpty() && verdict.limit().least().isPresent();
            silentMost |= verdict.most().isEmpty() && verdict.limit().most().isPresent();
        }
        // A side of which one place says nothing is not cleared by the others.
        least = silentLeast && within(least) ? Optional.empty() : least;
        most = silentMost && within(most) ? Optional.empty() : most;
        return new Verdict(chief.of(), chief.kind(), place, least, most, chief.value(), chief.limit());
    }

    private static boolean within(Optional<Side> side) {
        return side.isPresent() && side.get().standing() == Standing.WITHIN;
    }

    private static Optional<Side> worse(Optional<Side> one, Optional<Side> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isPresent() ? one : other;
        }
        return badness(other.get()) > badness(one.get()) ? other : one;
    }

    private static double badness(Verdict verdict) {
        double least = verdict.least().isPresent() ? badness(verdict.least().get()) : -1;
        double most = verdict.most().isPresent() ? badness(verdict.most().get()) : -1;
        return Math.max(least, most);
    }

    /** Once it is proven outside the odds say no more: how far outside it is does. */
    private static double badness(Side side) {
        return switch (side.standing()) {
            case WITHIN -> side.outside();
            case UNDECIDED -> 2 + side.outside();
            case OUTSIDE -> 4;
        };
    }

    /** How far a value lies beyond the side that it is proven to break; to the figures of a float, so that two alike stay alike. */
    private static float beyond(Verdict verdict) {
        double least = verdict.isBelow() ? beyond(verdict, verdict.limit().least(), true) : 0;
        double most = verdict.isAbove() ? beyond(verdict, verdict.limit().most(), false) : 0;
        return (float) Math.max(least, most);
    }

    private static double beyond(Verdict verdict, OptionalDouble limit, boolean least) {
        Value value = verdict.value();
        Optional<Estimate> end = least ? value.low().or(value::high) : value.high().or(value::low);
        return end.isEmpty() || limit.isEmpty() ? 0 : least ? limit.getAsDouble() - end.get().value() : end.get().value() - limit.getAsDouble();
    }
}
