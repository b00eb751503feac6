package leadlamp.audit;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The page of a check: all that is not its logic. The keys are those of `rules/<topic>/<check>.yaml`. What decides
 * whether and where it is asked is at hand; its ways and its sentences are decoded when somebody wants them, so that a
 * start does not grow with what is written on the pages.
 */
public final class Check {
    private final String id;
    private final String topic;
    private final String askedOf;
    private final Map<String, List<String>> applies;
    private final Severity severity;
    private final Likelihood likelihood;
    private final Map<String, Integer> shifts;
    private final boolean person;
    private final Optional<String> lastChance;
    private final Compiled compiled;
    private final int waysAt;
    private final int textsAt;
    private List<Way> ways;
    private Texts texts;

    /** The sentences of a page. */
    record Texts(String question, List<String> chain, String todo, List<String> alsoCheck, String settleWith,
            String caution, String teaches, String basis, List<String> alsoCovers, List<String> found) {
    }

    /**
     * A page.
     *
     * @param askedOf group of the vocabulary
     * @param applies word to the words of it that must hold for the check to be asked; empty where the group is enough
     * @param shifts  condition to +1 or -1 step of likelihood
     * @param todo    the page's `do`
     */
    public Check(String id, String topic, String question, String askedOf, Map<String, List<String>> applies,
            List<Way> ways, Severity severity, Likelihood likelihood, Map<String, Integer> shifts, List<String> chain,
            String todo, List<String> alsoCheck, String settleWith, boolean person, String caution, String teaches,
            String basis, List<String> alsoCovers, Optional<String> lastChance) {
        this.id = id;
        this.topic = topic;
        this.askedOf = askedOf;
        this.applies = applies;
        this.severity = severity;
        this.likelihood = likelihood;
        this.shifts = shifts;
        this.person = person;
        this.lastChance = lastChance;
        this.compiled = null;
        this.waysAt = 0;
        this.textsAt = 0;
        this.ways = List.copyOf(ways);
        this.texts = new Texts(question, List.copyOf(chain), todo, List.copyOf(alsoCheck), settleWith, caution, teaches,
                basis, List.copyOf(alsoCovers), List.of());
    }

    Check(Compiled compiled, int waysAt, int textsAt, String id, String topic, String askedOf,
            Map<String, List<String>> applies, Severity severity, Likelihood likelihood, Map<String, Integer> shifts,
            boolean person, Optional<String> lastChance) {
        this.id = id;
        this.topic = topic;
        this.askedOf = askedOf;
        this.applies = applies;
        this.severity = severity;
        this.likelihood = likelihood;
        this.shifts = shifts;
        this.person = person;
        this.lastChance = lastChance;
        this.compiled = compiled;
        this.waysAt = waysAt;
        this.textsAt = textsAt;
    }

    public String id() {
        return id;
    }

    public String topic() {
        return topic;
    }

    /** Group of the vocabulary. */
    public String askedOf() {
        return askedOf;
    }

    /** Word to the words of it that must hold for the check to be asked; empty where the group is enough. */
    public Map<String, List<String>> applies() {
        return applies;
    }

    public Severity severity() {
        return severity;
    }

    public Likelihood likelihood() {
        return likelihood;
    }

    /** Condition to +1 or -1 step of likelihood. */
    public Map<String, Integer> shifts() {
        return shifts;
    }

    /** Whether it can hurt somebody. */
    public boolean person() {
        return person;
    }

    /** The step before which it must be settled, where none closes a need or it is sooner. */
    public Optional<String> lastChance() {
        return lastChance;
    }

    /** In the order of the page. */
    public List<Way> ways() {
        List<Way> known = ways;
        if (known == null) {
            known = compiled.ways(this, waysAt);
            ways = known;
        }
        return known;
    }

    /** The way of this name. */
    public Way way(String name) {
        for (Way way : ways()) {
            if (way.name().equals(name)) {
                return way;
            }
        }
        throw new IllegalArgumentException(id + " has no way " + name);
    }

    public String question() {
        return texts().question();
    }

    public List<String> chain() {
        return texts().chain();
    }

    /** The page's `do`. */
    public String todo() {
        return texts().todo();
    }

    public List<String> alsoCheck() {
        return texts().alsoCheck();
    }

    public String settleWith() {
        return texts().settleWith();
    }

    public String caution() {
        return texts().caution();
    }

    public String teaches() {
        return texts().teaches();
    }

    public String basis() {
        return texts().basis();
    }

    public List<String> alsoCovers() {
        return texts().alsoCovers();
    }

    Texts texts() {
        Texts known = texts;
        if (known == null) {
            known = compiled.texts(textsAt);
            texts = known;
        }
        return known;
    }

    @Override
    public String toString() {
        return id;
    }
}
