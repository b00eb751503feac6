package leadlamp.derive;

import java.util.List;
import java.util.Optional;
import leadlamp.quantity.Unit;

/**
 * One entry of the table of derived values: from what, for which places, by which formula. What it applies to is said here, once;
 * the formula itself is in {@code calc}.
 *
 * <pre>
 * Derived.value("piston to head gap")
 *         .from(reading("piston height"), reading("head gasket compressed thickness"))
 *         .by(v -&gt; Gap.pistonToHead(v.get("piston height"), v.get("head gasket compressed thickness")))
 *         .sum("{head gasket compressed thickness} - {piston height}");
 * </pre>
 */
final class Derived {
    private final String name;
    private List<Take> takes = List.of();
    private Formula formula;
    private Sum sum;
    private Optional<Places> places = Optional.empty();
    private Optional<Subjects> subjects = Optional.empty();
    private String each = "";
    private int figures = -1;
    private boolean finer;
    private Optional<Unit> unit = Optional.empty();
    private String unitLike = "";

    /** What a value is worked out by: SI in, SI out. */
    interface Formula {
        double of(In in);
    }

    /** The sum in words and figures, without its result. */
    interface Sum {
        String of(In in, double result);
    }

    /** The part or reading that a value is of, and where that stands, by the name that it is worked out under. */
    interface Subjects {
        Optional<PartsAged.Piece> of(Site site, String name);
    }

    /** Where it is worked out, where the vocabulary's group does not say it. */
    interface Places {
        List<String> of(Site site);
    }

    private Derived(String name) {
        this.name = name;
    }

    /** A value of this name; its places are those of the vocabulary's group. */
    static Derived value(String name) {
        return new Derived(name);
    }

    /** What it is worked out from. */
    Derived from(Take... takes) {
        this.takes = List.of(takes);
        return this;
    }

    /** The formula. */
    Derived by(Formula formula) {
        this.formula = formula;
        return this;
    }

    /**
     * The sum in one line, with {@code {name}} for a figure; what stands in square brackets is left out where one of its
     * figures is not there.
     */
    Derived sum(String words) {
        this.sum = (in, result) -> Template.fill(words, in);
        return this;
    }

    /** The sum, put together. */
    Derived sum(Sum sum) {
        this.sum = sum;
        return this;
    }

    /** Places of its own. */
    Derived at(Places places) {
        this.places = Optional.of(places);
        return this;
    }

    /** It stands at each part or reading's own place and is of that part or reading. */
    Derived standing(Subjects subjects) {
        this.subjects = Optional.of(subjects);
        return this;
    }

    /** The part or reading that a value is of, where its group runs over such. */
    Optional<PartsAged.Piece> subject(Site site, String name) {
        return subjects.flatMap(s -> s.of(site, name));
    }

    /** One value for every reading of this quantity, each with what it was taken at. */
    Derived forEach(String quantity) {
        this.each = quantity;
        return this;
    }

    /** Decimals to print; where nothing is said, as many as the finest reading of the same kind has, else three figures in all. */
    Derived figures(int decimals) {
        this.figures = decimals;
        return this;
    }

    /** Decimals more than the readings have: half of 0.01 mm is 0.005 mm. */
    Derived finer() {
        this.finer = true;
        return this;
    }

    boolean isFiner() {
        return finer;
    }

    /** The take in whose unit it is printed, where the first of the same dimension is not the right one. */
    Derived inUnitOf(String take) {
        this.unitLike = take;
        return this;
    }

    /** The unit in which it is always printed. */
    Derived in(Unit unit) {
        this.unit = Optional.of(unit);
        return this;
    }

    Optional<Unit> unit() {
        return unit;
    }

    String name() {
        return name;
    }

    List<Take> takes() {
        return takes;
    }

    Formula formula() {
        return formula;
    }

    Sum sum() {
        return sum;
    }

    Optional<Places> places() {
        return places;
    }

    String each() {
        return each;
    }

    int figures() {
        return figures;
    }

    String unitLike() {
        return unitLike;
    }
}
