package leadlamp.words;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;

/** The words in which a record is written, a rule asks and a report answers: the same in all of them. */
public interface Vocabulary {
    /** The part of this name, a synonym or a plural. */
    Optional<Part> part(String word);

    Collection<Part> parts();

    /** The quantity of this name, or of a part's (or kind's) synonym with the reading's word or synonym. */
    Optional<Quantity> quantity(String word);

    /** All quantities that have a line of their own; those lent by a kind to its members come by name. */
    Collection<Quantity> quantities();

    Optional<Sign> sign(String word);

    Collection<Sign> signs();

    Optional<Step> step(String word);

    Collection<Step> steps();

    Optional<GaugeKind> gauge(String word);

    Collection<GaugeKind> gauges();

    /**
     * The property of a section (`parts`, `fasteners`, `threads`, `use` ...; `any entry` serves all). Sections of the
     * engine sheet are `sheet` (its top), `sheet layout`, `sheet joints`, `sheet joints gasket` ...; `sheet` may be
     * left out where the record has no section of that name.
     */
    Optional<Property> property(String section, String word);

    /** All properties of a section, `any entry` left out. */
    Collection<Property> properties(String section);

    /** Events of the past (`build: past`), with their gloss. */
    Map<String, String> events();

    /** Named conditions; true where one eases. */
    Map<String, Boolean> conditions();

    /** Groups, with their places as written. */
    Map<String, String> groups();

    /** Other words for the words of a place (`inlet` to `intake`, `lh` to `left`), from places.yaml; a word of a place is none. */
    Map<String, String> placeSynonyms();

    /** Words that places are made of, in the order in which a place is written. One word may serve two axes. */
    Collection<PlaceWord> placeWords();

    /**
     * What a word may mean that does not settle it: the parts or readings that share it, or the readings of which it
     * names only half (`end float`). Empty where it settles one thing, or nothing.
     */
    Collection<String> meanings(String word);

    /** Kinds of words that have more than one way of being written. */
    enum Kind {
        PART, QUANTITY, SIGN, STEP, GAUGE
    }

    /** Every way of writing the words of a kind that settles one thing, to that thing's own name; plurals left out. */
    Map<String, String> spellings(Kind kind);

    /** The nearest of the words, if one is near enough to be meant. Same answer whatever the order of the words. */
    static Optional<String> nearest(String word, Collection<String> words) {
        return Nearest.of(word, words);
    }
}
