package leadlamp.judge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlamp.calc.Conformity;
import leadlamp.derive.Readings;
import leadlamp.facts.Fact;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.facts.Verdict.Side;
import leadlamp.facts.Verdict.Standing;
import leadlamp.quantity.Estimate;
import leadlamp.record.Build;
import leadlamp.record.Place;
import leadlamp.words.Vocabulary;

/**
 * Holds each value against the one limit that applies.
 *
 * <p>The guard band is the expanded uncertainty, twice the standard uncertainty: a value is within or outside only when
 * that is proven (ISO 14253-1; JCGM 106, guarded acceptance and guarded rejection). Between them it is undecided, and
 * the verdict carries the probability of being outside.
 */
public final class Judge {
    /** Coverage factor of the guard band, about 95 % (JCGM 100, 6.3.3). */
    private static final double COVERAGE = 2;

    private final Build build;
    private final Vocabulary words;
    private final Limits limits;

    private Judge(Build build, Vocabulary words, TradeLimits trade, Said said) {
        this.build = build;
        this.words = words;
        this.limits = new Limits(build, words, trade, said);
    }

    /**
     * The verdicts on all values that have a limit, and the worst of longer places at the shorter ones of their group.
     *
     * @param values values read and worked out
     * @param facts  what record and sheet say in words
     */
    public static List<Verdict> judge(List<Value> values, Collection<? extends Fact> facts, Build build, Vocabulary words,
            TradeLimits trade) {
        Judge judge = new Judge(build, words, trade, new Said(facts, values, words));
        List<Verdict> verdicts = new ArrayList<>();
        for (Value value : values) {
            judge.verdict(value).ifPresent(verdicts::add);
        }
        judge.gather(verdicts);
        return List.copyOf(verdicts);
    }

    private Optional<Verdict> verdict(Value value) {
        if (value.of().endsWith(" as trial")) {
            return Optional.empty();
        }
        boolean found = value.of().endsWith(" as found");
        String quantity = found ? value.of().substring(0, value.of().length() - " as found".length()) : value.of();
        String kind = found && value.kind().endsWith(" as found") ? value.kind().substring(0, value.kind().length() - " as found".length())
                : value.kind();
        Verdict verdict = null;
        for (LimitUsed limit : limits.of(value, quantity, kind)) {
            Verdict one = held(value, limit);
            verdict = verdict == null ? one : open(verdict, one);
        }
        return Optional.ofNullable(verdict).filter(v -> v.least().isPresent() || v.most().isPresent());
    }

    private Verdict held(Value value, LimitUsed limit) {
        Optional<Side> least = limit.least().isPresent() ? side(value, limit.least(), true) : Optional.empty();
        Optional<Side> most = limit.most().isPresent() ? side(value, limit.most(), false) : Optional.empty();
        return new Verdict(value.of(), value.kind(), value.at(), least, most, value, limit);
    }

    /**
     * How a value stands against one side. A bound says nothing of the side at which it is open. Of a range each end must
     * hold; at one single place one end proven outside is enough, of several places both must be.
     */
    private static Optional<Side> side(Value value, OptionalDouble limit, boolean least) {
        Optional<Estimate> near = least ? value.low() : value.high();
        Optional<Estimate> far = least ? value.high() : value.low();
        if (near.isEmpty()) {
            return Optional.empty();
        }
        double at = limit.getAsDouble();
        Standing standing = standing(near.get(), at, least);
        String said = value.asides().getOrDefault(Readings.SAID, "");
        boolean several = said.equals(Readings.RANGE_OF_SEVERAL) || said.equals(Readings.BOUND_OF_SEVERAL);
        if (standing == Standing.OUTSIDE && several && (far.isEmpty() || standing(far.get(), at, least) != Standing.OUTSIDE)) {
            standing = Standing.UNDECIDED;
        }
        if (standing == Standing.OUTSIDE && far.isEmpty() && !said.equals(Readings.END_MET)) {
            // `under 0.05` against a most of 0.04: the reading is no more than that, and may be anything below.
            standing = Standing.UNDECIDED;
        }
        if (said.equals(Readings.MEAN) && (standing == Standing.WITHIN || !value.at().startsWith("one of "))) {
            standing = Standing.UNDECIDED;
        }
        if (!value.told().isEmpty() && standing == Standing.WITHIN) {
            standing = Standing.UNDECIDED;
        }
        double standard = near.get().standardUncertainty();
        double outside = 1 - Conformity.probability(near.get().value(), standard, least ? at : Double.NEGATIVE_INFINITY,
                least ? Double.POSITIVE_INFINITY : at);
        return Optional.of(new Side(standing, outside, COVERAGE * standard, near.get().chiefSource()));
    }

    private static Standing standing(Estimate end, double limit, boolean least) {
        double expanded = COVERAGE * end.standardUncertainty();
        Conformity.Zone zone = Conformity.zone(end.value(), expanded, least ? limit : Double.NEGATIVE_INFINITY,
                least ? Double.POSITIVE_INFINITY : limit);
        return switch (zone) {
            case WITHIN -> Standing.WITHIN;
            case BELOW, ABOVE -> Standing.OUTSIDE;
            default -> Standing.UNDECIDED;
        };
    }

    /** Of two lines of which it is open which applies, only what both give stands. */
    private static Verdict open(Verdict one, Verdict other) {
        Optional<Side> least = both(one.least(), other.least());
        Optional<Side> most = both(one.most(), other.most());
        LimitUsed limit = one.limit();
        String note = (limit.note().isEmpty() ? "" : limit.note() + "; ") + "it is open which of several limits applies";
        return new Verdict(one.of(), one.kind(), one.at(), least, most, one.value(), new LimitUsed(limit.least(), limit.most(), limit.whose(),
                limit.reason() || other.limit().reason(), limit.basis(), limit.note().contains("it is open which") ? limit.note() : note,
                limit.where()));
    }

    private static Optional<Side> both(Optional<Side> one, Optional<Side> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isPresent() ? undecided(one.get()) : other.isPresent() ? undecided(other.get()) : one;
        }
        return one.get().standing() == other.get().standing() ? one : undecided(one.get());
    }

    private static Optional<Side> undecided(Side side) {
        return Optional.of(new Side(Standing.UNDECIDED, side.outside(), side.expanded(), side.chiefSource()));
    }

    /** The worst verdict of longer places stands at the shorter one of the quantity's group too. */
    private void gather(List<Verdict> verdicts) {
        Map<String, List<String>> groups = new HashMap<>();
        Map<String, Verdict> direct = new HashMap<>();
        for (Verdict verdict : verdicts) {
            direct.put(verdict.of() + "\n" + verdict.at(), verdict);
        }
        Map<String, Verdict> gathered = new LinkedHashMap<>();
        for (Verdict verdict : verdicts) {
            if (verdict.at().equals(Place.ENGINE) || verdict.at().startsWith("one of ") || verdict.at().startsWith("some of ")) {
                continue;
            }
            String name = verdict.of().endsWith(" as found") ? verdict.of().substring(0, verdict.of().length() - " as found".length()) : verdict.of();
            List<String> places = groups.computeIfAbsent(name, this::places);
            if (places.contains(verdict.at())) {
                continue;
            }
            for (String place : places) {
                if (Place.covers(place, verdict.at())) {
                    String key = verdict.of() + "\n" + place;
                    Verdict before = gathered.containsKey(key) ? gathered.get(key) : direct.get(key);
                    gathered.put(key, before == null ? at(verdict, place) : worse(before, at(verdict, place)));
                    break;
                }
            }
        }
        verdicts.removeIf(v -> gathered.containsKey(v.of() + "\n" + v.at()));
        verdicts.addAll(gathered.values());
    }

    private List<String> places(String quantity) {
        return words.quantity(quantity).map(q -> q.group().equals(Place.ENGINE) ? List.of(Place.ENGINE)
                : build.sheet().layout().places(q.group()).orElse(List.of())).orElse(List.of());
    }

    private static Verdict at(Verdict verdict, String place) {
        return new Verdict(verdict.of(), verdict.kind(), place, verdict.least(), verdict.most(), verdict.value(), verdict.limit());
    }

    /** The worse of two: value and limit are those of the one that stands worse on its worst side; each side keeps the worse standing. */
    private static Verdict worse(Verdict one, Verdict other) {
        Verdict chief = rank(other) > rank(one) ? other : one;
        return new Verdict(chief.of(), chief.kind(), chief.at(), worse(one.least(), other.least()), worse(one.most(), other.most()),
                chief.value(), chief.limit());
    }

    private static Optional<Side> worse(Optional<Side> one, Optional<Side> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isPresent() ? one : other;
        }
        int byStanding = rank(one.get()) - rank(other.get());
        return byStanding > 0 || byStanding == 0 && one.get().outside() >= other.get().outside() ? one : other;
    }

    private static double rank(Verdict verdict) {
        double least = verdict.least().map(s -> rank(s) + s.outside()).orElse(0.0);
        double most = verdict.most().map(s -> rank(s) + s.outside()).orElse(0.0);
        return Math.max(least, most);
    }

    private static int rank(Side side) {
        return switch (side.standing()) {
            case OUTSIDE -> 4;
            case UNDECIDED -> 2;
            case WITHIN -> 0;
        };
    }
}
