package leadlamp.facts;

import java.util.List;
import java.util.Map;
import leadlamp.record.Where;

/**
 * One thing the record says in words: the intake cam gear pin's form is hollow.
 *
 * @param of     the part, `joint`, `gauge`, or the section (`use`, `steps`, `machining`, `protection`, `build`, `observations`)
 * @param kind   the kind of the part (`bolt`), its own name where it has none
 * @param at     the place
 * @param what   the property
 * @param says   the word
 * @param told   who told it; empty where it is the builder's own knowledge
 * @param asides the rest of its entry, in words
 * @param places its lines
 */
public record Stated(String of, String kind, String at, String what, String says, String told,
        Map<String, String> asides, List<Where> places) implements Fact {
}
