package leadlamp.audit;

import java.util.List;

/**
 * The page of a named condition: `rules/conditions/<condition>.yaml`.
 *
 * @param name      the condition
 * @param reads     words that its rule reads
 * @param settledBy words that must be known before it can be said not to hold; those that it reads where nothing is said
 * @param why       why it moves a likelihood
 * @param patterns  what its rule matches
 */
public record ConditionPage(String name, List<String> reads, List<String> settledBy, String why,
        List<Way.Pattern> patterns) {
}
