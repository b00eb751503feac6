package leadlamp.judge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * Holds each value against the one limit that applies, side by side.
 *
 * <p>The guard band is the expanded uncertainty, twice the standard one: within or outside is only what lies so with all of its
 * doubt (ISO 14253-1, JCGM 106). A one-sided band of 1.65 would prove at 95 %; the wider one is taken because a builder can redo it
 * with the figures that are printed, value and doubt, and because a doubt that rests on usual figures is itself not sharp. At one limit it
 * proves at 97.7 %.
 */
public final class Judge {
    private static final double TWICE = 2;
    private static final String TRIAL = " as trial";

    private final Limits limits;
    private final List<Verdict> verdicts = new ArrayList<>();

    private Judge(Limits limits) {
        this.limits = limits;
    }

    /** Verdicts of all values that have a limit, and of the shorter places that their groups ask. */
    public static List<Verdict> judge(List<Value> values, Build build, Vocabulary words, TradeLimits trade) {
        return judge(values, List.of(), build, words, trade);
    }

    /**
     * The same, with the facts whose words a limit may be narrowed by.
     *
     * @param facts what record and sheet say in words
     */
    public static List<Verdict> judge(List<Value> values, List<? extends Fact> facts, Build build, Vocabulary words, TradeLimits trade) {
        Judge judge = new Judge(new Limits(values, facts, build, words, trade));
        for (Value value : values) {
            if (!value.of().endsWith(TRIAL)) {
                judge.one(value);
            }
        }
        judge.shorterPlaces(build, words);
        return judge.verdicts;
    }

    private void one(Value value) {
        List<LimitUsed> used = limits.of(value);
        if (used.isEmpty()) {
            return;
        }
        Verdict verdict = against(value, used.get(0));
        for (int i = 1; i < used.size(); i++) {
            verdict = both(verdict, against(value, used.get(i)));
        }
        if (verdict.least().isPresent() || verdict.most().isPresent()) {
            verdicts.add(verdict);
        }
    }

    private static Verdict against(Value value, LimitUsed limit) {
        Optional<Side> least = limit.least().isPresent() ? side(value, limit.least().getAsDouble(), true) : Optional.empty();
        Optional<Side> most = limit.most().isPresent() ? side(value, limit.most().getAsDouble(), false) : Optional.empty();
        return new Verdict(value.of(), value.kind(), value.at(), least, most, value, limit);
    }

    /** What stands only if all lines that may apply give it. */
    private static Verdict both(Verdict one, Verdict other) {
        return new Verdict(one.of(), one.kind(), one.at(), agreed(one.least(), other.least()), agreed(one.most(), other.most()), one.value(),
                one.limit());
    }

    private static Optional<Side> agreed(Optional<Side> one, Optional<Side> other) {
        if (one.isEmpty() && other.isEmpty()) {
            return one;
        }
        if (one.isPresent() && other.isPresent() && one.get().standing() == other.get().standing()) {
            return one.get().outside() >= other.get().outside() ? one : other;
        }
        Side known = one.or(() -> other).get();
        double outside = one.isPresent() && other.isPresent() ? Math.max(one.get().outside(), other.get().outside()) : known.outside();
        return Optional.of(new Side(Standing.UNDECIDED, outside, known.expanded(), known.chiefSource()));
    }

    /** One side of a limit. */
    private static Optional<Side> side(Value value, double limit, boolean least) {
        Optional<Estimate> near = least ? value.low() : value.high();
        Optional<Estimate> far = least ? value.high() : value.low();
        String said = Limits.said(value);
        if (near.isEmpty()) {
            // A bound that says nothing of this side, unless all that it leaves lies outside.
            if (far.isPresent() && standing(far.get(), limit, least) == Standing.OUTSIDE) {
                return Optional.of(told(value, Standing.OUTSIDE, far.get(), limit, least));
            }
            return Optional.empty();
        }
        Standing standing = standing(near.get(), limit, least);
        if (said.equals(Readings.MEAN)) {
            // A mean proves no place; one that is itself outside does so for one of them at least.
            return standing == Standing.OUTSIDE ? Optional.of(told(value, standing, near.get(), limit, least)) : Optional.empty();
        }
        if (standing == Standing.OUTSIDE) {
            boolean severalPlaces = said.equals(Readings.RANGE_OF_SEVERAL) || said.equals(Readings.BOUND_OF_SEVERAL);
            boolean met = far.isPresent() ? !severalPlaces : said.equals(Readings.END_MET);
            boolean bothOut = far.isPresent() && standing(far.get(), limit, least) == Standing.OUTSIDE;
            standing = met || bothOut ? Standing.OUTSIDE : Standing.UNDECIDED;
        }
        return Optional.of(told(value, standing, near.get(), limit, least));
    }

    /** What others told proves nothing inside. */
    private static Side told(Value value, Standing standing, Estimate end, double limit, boolean least) {
        double standard = end.standardUncertainty();
        double within = least ? Conformity.probability(end.value(), standard, limit, Double.POSITIVE_INFINITY)
                : Conformity.probability(end.value(), standard, Double.NEGATIVE_INFINITY, limit);
        Standing stands = standing == Standing.WITHIN && !value.told().isEmpty() ? Standing.UNDECIDED : standing;
        return new Side(stands, Math.min(1, Math.max(0, 1 - within)), TWICE * standard, end.chiefSource());
    }

    private static Standing standing(Estimate end, double limit, boolean least) {
        double expanded = TWICE * end.standardUncertainty();
        Conformity.Zone zone = least ? Conformity.zone(end.value(), expanded, limit, Double.POSITIVE_INFINITY)
                : Conformity.zone(end.value(), expanded, Double.NEGATIVE_INFINITY, limit);
        return switch (zone) {
            case WITHIN -> Standing.WITHIN;
            case BELOW, ABOVE -> Standing.OUTSIDE;
            case UNDECIDED -> Standing.UNDECIDED;
        };
    }

    /** The worst verdict of longer places also stands at the shorter one that a group asks. */
    private void shorterPlaces(Build build, Vocabulary words) {
        Map<String, List<Verdict>> byQuantity = new LinkedHashMap<>();
        for (Verdict verdict : verdicts) {
            if (!untold(verdict.at())) {
                byQuantity.computeIfAbsent(verdict.of(), q -> new ArrayList<>()).add(verdict);
            }
        }
        for (Map.Entry<String, List<Verdict>> each : byQuantity.entrySet()) {
            String name = each.getKey().endsWith(" as found") ? each.getKey().substring(0, each.getKey().length() - 9) : each.getKey();
            Optional<Quantity> quantity = words.quantity(name);
            if (quantity.isEmpty()) {
                continue;
            }
            verdicts.addAll(shorter(each.getValue(), places(build, words, quantity.get(), each.getValue())));
        }
    }

    private static boolean untold(String place) {
        return place.startsWith("one of ") || place.startsWith("some of ");
    }

    private Set<String> places(Build build, Vocabulary words, Quantity quantity, List<Verdict> verdicts) {
        Set<String> places = new LinkedHashSet<>();
        Optional<List<String>> group = build.sheet().layout().places(quantity.group());
        group.ifPresent(places::addAll);
        words.part(quantity.of()).flatMap(part -> build.sheet().layout().places(part.group())).ifPresent(places::addAll);
        if (quantity.group().equals(Place.ENGINE)) {
            places.add(Place.ENGINE);
        }
        for (Verdict verdict : verdicts) {
            if (group.isEmpty()) {
                cut(verdict.at()).ifPresent(places::add);
            }
            joint(verdict.at()).ifPresent(places::add);
        }
        return places;
    }

    /** Cylinder, main or big end of a longer place, for a sheet that does not say how many there are. */
    private static Optional<String> cut(String at) {
        String[] words = at.split(" ");
        if (words.length > 1 && Character.isDigit(words[0].charAt(0)) && !at.contains(" and ")) {
            return Optional.of(words[0]);
        }
        if (words.length > 2 && words[0].equals("main")) {
            return Optional.of("main " + words[1]);
        }
        if (words.length > 3 && words[0].equals("big") && words[1].equals("end")) {
            return Optional.of("big end " + words[2]);
        }
        return Optional.empty();
    }

    /** The joint of a bolt's place: `head to block` of `head to block 7`. */
    private static Optional<String> joint(String at) {
        int blank = at.lastIndexOf(' ');
        return at.contains(" to ") && blank > 0 && Character.isDigit(at.charAt(blank + 1)) ? Optional.of(at.substring(0, blank)) : Optional.empty();
    }

    /** Verdicts of the shorter places out of those of the longer ones. */
    private List<Verdict> shorter(List<Verdict> verdicts, Set<String> places) {
        List<Verdict> shorter = new ArrayList<>();
        for (String place : places) {
            Optional<Verdict> worst = Optional.empty();
            boolean own = false;
            for (Verdict verdict : verdicts) {
                if (verdict.at().equals(place)) {
                    own = true;
                    break;
                }
                if (limits.covers(place, verdict.at())) {
                    worst = Optional.of(worst.isPresent() ? worse(worst.get(), verdict) : verdict);
                }
            }
            if (!own && worst.isPresent()) {
                Verdict w = worst.get();
                shorter.add(new Verdict(w.of(), w.kind(), place, w.least(), w.most(), w.value(), w.limit()));
            }
        }
        return shorter;
    }

    /** Side by side the worse of two; value and limit are those of the one that is worse as a whole. */
    private static Verdict worse(Verdict one, Verdict other) {
        Verdict leading = badness(other) > badness(one) ? other : one;
        return new Verdict(one.of(), one.kind(), one.at(), worse(one.least(), other.least()), worse(one.most(), other.most()), leading.value(),
                leading.limit());
    }

    private static Optional<Side> worse(Optional<Side> one, Optional<Side> other) {
        if (one.isEmpty() || other.isEmpty()) {
            // A side of which one place says nothing is not cleared by another.
            Optional<Side> known = one.or(() -> other);
            return known.filter(side -> side.standing() != Standing.WITHIN);
        }
        return badness(other.get()) > badness(one.get()) ? other : one;
    }

    private static double badness(Verdict verdict) {
        return Math.max(verdict.least().map(Judge::badness).orElse(0.0), verdict.most().map(Judge::badness).orElse(0.0));
    }

    private static double badness(Side side) {
        return switch (side.standing()) {
            case WITHIN -> side.outside();
            case UNDECIDED -> 1 + side.outside();
            case OUTSIDE -> 2 + side.outside();
        };
    }
}
