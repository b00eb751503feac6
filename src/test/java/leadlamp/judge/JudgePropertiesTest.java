package leadlamp.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import leadlamp.derive.Derivation;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.facts.Verdict.Side;
import leadlamp.facts.Verdict.Standing;
import leadlamp.quantity.Estimate;
import leadlamp.record.Build;
import leadlamp.words.Quantity;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What holds of every verdict, whatever the value, its doubt and its limit. */
class JudgePropertiesTest {
    private static final double LAST_PLACES = 1e-12;
    private static final String FLOAT = "crankshaft end float";
    private static final Quantity QUANTITY = Shop.WORDS.quantity(FLOAT).orElseThrow();
    private static final Build MOST = Shop.limits(FLOAT + ": { most: 1 mm }\n").record("").build();
    private static final Build LEAST = Shop.limits(FLOAT + ": { least: -1 mm }\n").record("").build();

    private static Side most(double value, double doubt) {
        return verdict(MOST, plain(value, doubt)).most().orElseThrow();
    }

    private static Verdict verdict(Build build, Value value) {
        return Judge.judge(List.of(value), List.of(), build, Shop.WORDS, TradeLimits.none()).get(0);
    }

    private static Value plain(double value, double doubt) {
        Optional<Estimate> end = Optional.of(Shop.estimate(QUANTITY, value, doubt));
        return value(end, end);
    }

    private static Value value(Optional<Estimate> low, Optional<Estimate> high) {
        return new Value(FLOAT, FLOAT, "engine", low, high, QUANTITY.unit(), 3, "", false, "", "", Map.of(), List.of());
    }

    /** Within is best, outside worst. */
    private static int rank(Side side) {
        return switch (side.standing()) {
            case WITHIN -> 0;
            case UNDECIDED -> 1;
            case OUTSIDE -> 2;
        };
    }

    @Property
    void a_value_nearer_to_its_limit_never_stands_better(@ForAll @DoubleRange(min = -5, max = 5) double one,
            @ForAll @DoubleRange(min = 0, max = 5) double further, @ForAll @DoubleRange(min = 0, max = 2) double doubt) {
        Side near = most(one + further, doubt);
        Side far = most(one, doubt);
        assertThat(rank(near)).isGreaterThanOrEqualTo(rank(far));
        assertThat(near.outside()).isGreaterThanOrEqualTo(far.outside() - LAST_PLACES);
    }

    @Property
    void doubt_grown_never_turns_undecided_into_proven(@ForAll @DoubleRange(min = -5, max = 5) double value,
            @ForAll @DoubleRange(min = 0, max = 2) double doubt, @ForAll @DoubleRange(min = 0, max = 2) double more) {
        Standing small = most(value, doubt).standing();
        Standing great = most(value, doubt + more).standing();
        assertThat(great == small || great == Standing.UNDECIDED).as("%s became %s", small, great).isTrue();
    }

    @Property
    void doubt_grown_never_turns_within_into_outside_nor_the_other_way(@ForAll @DoubleRange(min = -5, max = 5) double value,
            @ForAll @DoubleRange(min = 0, max = 2) double doubt) {
        Standing sharp = most(value, 0).standing();
        Standing blunt = most(value, doubt).standing();
        assertThat(sharp).isNotEqualTo(Standing.UNDECIDED);
        assertThat(blunt == sharp || blunt == Standing.UNDECIDED).isTrue();
    }

    @Property
    void mirrored_limits_mirror_verdicts(@ForAll @DoubleRange(min = -5, max = 5) double value, @ForAll @DoubleRange(min = 0, max = 2) double doubt) {
        Side most = most(value, doubt);
        Side least = verdict(LEAST, plain(-value, doubt)).least().orElseThrow();
        assertThat(least.standing()).isEqualTo(most.standing());
        assertThat(least.outside()).isCloseTo(most.outside(), within(LAST_PLACES));
        assertThat(least.expanded()).isEqualTo(most.expanded());
    }

    @Property
    void mirrored_ranges_and_bounds_mirror_verdicts(@ForAll @DoubleRange(min = -5, max = 5) double low, @ForAll @DoubleRange(min = 0, max = 5) double width,
            @ForAll @DoubleRange(min = 0, max = 1) double doubt, @ForAll boolean openLow, @ForAll boolean openHigh) {
        Optional<Estimate> from = openLow ? Optional.empty() : Optional.of(Shop.estimate(QUANTITY, low, doubt));
        Optional<Estimate> to = openHigh ? Optional.empty() : Optional.of(Shop.estimate(QUANTITY, low + width, doubt));
        Optional<Estimate> mirroredTo = openLow ? Optional.empty() : Optional.of(Shop.estimate(QUANTITY, -low, doubt));
        Optional<Estimate> mirroredFrom = openHigh ? Optional.empty() : Optional.of(Shop.estimate(QUANTITY, -low - width, doubt));
        assertThat(standing(MOST, value(from, to))).isEqualTo(standing(LEAST, value(mirroredFrom, mirroredTo)));
    }

    private static List<Standing> standing(Build build, Value value) {
        return Judge.judge(List.of(value), List.of(), build, Shop.WORDS, TradeLimits.none()).stream()
                .map(v -> v.least().or(v::most).orElseThrow().standing()).toList();
    }

    @Property
    void a_range_is_within_if_both_ends_are_and_outside_if_one_is(@ForAll @DoubleRange(min = -5, max = 5) double low,
            @ForAll @DoubleRange(min = 0, max = 5) double width, @ForAll @DoubleRange(min = 0, max = 1) double doubt) {
        Side range = verdict(MOST, value(Optional.of(Shop.estimate(QUANTITY, low, doubt)), Optional.of(Shop.estimate(QUANTITY, low + width, doubt))))
                .most().orElseThrow();
        Standing from = most(low, doubt).standing();
        Standing to = most(low + width, doubt).standing();
        if (from == Standing.WITHIN && to == Standing.WITHIN) {
            assertThat(range.standing()).isEqualTo(Standing.WITHIN);
        } else if (from == Standing.OUTSIDE || to == Standing.OUTSIDE) {
            assertThat(range.standing()).isEqualTo(Standing.OUTSIDE);
        } else {
            assertThat(range.standing()).isEqualTo(Standing.UNDECIDED);
        }
    }

    @Property
    void a_bound_never_proves_more_than_the_value_that_it_bounds(@ForAll @DoubleRange(min = -5, max = 5) double high,
            @ForAll @DoubleRange(min = 0, max = 5) double under, @ForAll @DoubleRange(min = 0, max = 1) double doubt) {
        Value bound = value(Optional.empty(), Optional.of(Shop.estimate(QUANTITY, high, doubt)));
        Standing said = verdict(MOST, bound).most().orElseThrow().standing();
        Standing real = most(high - under, doubt).standing();
        assertThat(said == Standing.UNDECIDED || said == real).as("under %s said %s, the value itself %s", high, said, real).isTrue();
    }

    @Property(tries = 20)
    void the_order_of_the_values_makes_no_difference(@ForAll long seed) {
        Derivation.Worked worked = SHUFFLED;
        List<Value> values = new ArrayList<>(worked.readings());
        values.addAll(worked.derived());
        List<String> straight = inWords(values);
        Collections.shuffle(values, new Random(seed));
        assertThat(inWords(values)).isEqualTo(straight);
    }

    private static final Build SEVERAL = Shop.limits("""
            cylinder bore: { least: 79.95 mm, most: 80.05 mm }
            cylinder taper: { most: 0.03 mm }
            piston ring end gap: { at: first, least: 0.5 %, times: cylinder bore }
            main bearing clearance: { least: 0.020 mm, most: 0.060 mm }
            """).record("""
            measurements:
              - cylinder bore:
                  at: [top thrust, top pin, mid thrust, mid pin]
                  1:  [80.012, 80.008, 80.045, 80.007]
                  2:  [80.013, 80.009, 80.100, 80.008]
                unit: mm
                with: bore gauge
              - { cylinder bore: under 80.02 mm, at: 3 top thrust }
              - { piston ring end gap: 0.42 mm, at: each first }
              - { cylinder bore: 80.01 mm, at: [3 mid thrust, 3 mid pin] }
              - { main bearing clearance: [0.04, 0.05, 0.06, 0.07], unit: mm }
            """).build();
    private static final Derivation.Worked SHUFFLED = Derivation.work(SEVERAL, Shop.WORDS);

    private static List<String> inWords(List<Value> values) {
        return Judge.judge(values, List.of(), SEVERAL, Shop.WORDS, TradeLimits.none()).stream()
                .map(v -> v.of() + " at " + v.at() + ": " + Shop.Judged.inWords(v) + " by " + v.value().at() + " " + v.limit()).sorted().toList();
    }
}
