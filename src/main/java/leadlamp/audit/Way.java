package leadlamp.audit;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One way in which a check can be wrong: one rule, one sentence. */
public final class Way {
    private final String name;
    private final List<String> needs;
    private final List<String> heeds;
    private final String found;
    private final Map<String, List<String>> applies;
    private final Optional<Severity> severity;
    private final Optional<Likelihood> likelihood;
    private final List<Pattern> patterns;
    private final Check check;
    private final int number;
    private final Sought[] sought;

    /**
     * One pattern of the rule, as far as it quotes words.
     *
     * @param fact    name of the fact: Stated, Seen, OnSheet, Value, Verdict, Condition (Ask is left out)
     * @param negated whether it stands under `not`
     * @param quoted  field to the words quoted for it, as `of` to [cam gear pin]; only == and in
     * @param flags   boolean fields asked: below, above, outside, left
     * @param places  how `at` is tied: the constraint as written, empty where it is not
     */
    public record Pattern(String fact, boolean negated, Map<String, List<String>> quoted, List<String> flags,
            String places) {
        /** The words quoted for a field; empty where none are. */
        public List<String> quoted(String field) {
            List<String> words = quoted.get(field);
            return words == null ? List.of() : words;
        }
    }

    /**
     * A way.
     *
     * @param name       its name; the rule is `check: way`
     * @param needs      words without which silence is no pass
     * @param heeds      words that may excuse or change the answer; never asked for
     * @param found      the sentence, with `{place}` and the names that the rule binds
     * @param applies    words that narrow this way alone
     * @param severity   in place of the page's
     * @param likelihood in place of the page's
     * @param patterns   what its rule matches, read off the rule's syntax tree when the project is built
     */
    public Way(String name, List<String> needs, List<String> heeds, String found, Map<String, List<String>> applies,
            Optional<Severity> severity, Optional<Likelihood> likelihood, List<Pattern> patterns) {
        this(name, needs, heeds, found, applies, severity, likelihood, patterns, null, 0);
    }

    /** A way whose sentence stays with its check until somebody reads it. */
    Way(String name, List<String> needs, List<String> heeds, Map<String, List<String>> applies,
            Optional<Severity> severity, Optional<Likelihood> likelihood, List<Pattern> patterns, Check check,
            int number) {
        this(name, needs, heeds, null, applies, severity, likelihood, patterns, check, number);
    }

    private Way(String name, List<String> needs, List<String> heeds, String found, Map<String, List<String>> applies,
            Optional<Severity> severity, Optional<Likelihood> likelihood, List<Pattern> patterns, Check check,
            int number) {
        this.name = name;
        this.needs = needs;
        this.heeds = heeds;
        this.found = found;
        this.applies = applies;
        this.severity = severity;
        this.likelihood = likelihood;
        this.patterns = patterns;
        this.check = check;
        this.number = number;
        this.sought = new Sought[needs.size()];
    }

    /**
     * What its rule seeks of a word that it needs.
     *
     * @param index the word's, among the needs
     * @param need  the word taken apart, for the place asked
     */
    Sought sought(Check of, int index, Need need) {
        String word = needs.get(index);
        if (!need.word().equals(word)) {
            // `any part state` is another word for each part.
            return Sought.of(of, this, word, need);
        }
        // Threads may work it out twice, and it comes out the same.
        Sought known = sought[index];
        if (known == null) {
            known = Sought.of(of, this, word, need);
            sought[index] = known;
        }
        return known;
    }

    /** Its name; the rule is `check: way`. */
    public String name() {
        return name;
    }

    /** Words without which silence is no pass. */
    public List<String> needs() {
        return needs;
    }

    /** Words that may excuse or change the answer; never asked for. */
    public List<String> heeds() {
        return heeds;
    }

    /** The sentence, with `{place}` and the names that the rule binds. */
    public String found() {
        return found == null ? check.texts().found().get(number) : found;
    }

    /** Words that narrow this way alone. */
    public Map<String, List<String>> applies() {
        return applies;
    }

    public Optional<Severity> severity() {
        return severity;
    }

    public Optional<Likelihood> likelihood() {
        return likelihood;
    }

    /** What its rule matches. */
    public List<Pattern> patterns() {
        return patterns;
    }

    @Override
    public String toString() {
        return name;
    }
}
