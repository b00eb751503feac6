package leadlamp.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.audit.Check;
import leadlamp.audit.Finding;
import leadlamp.facts.Fact;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;

/**
 * Fills the sentence of a way: `{place}` and `{of}` as they stand in a record, what the rule binds, and of its verdicts `{value}`, `{limit}`,
 * `{gauge}` and `{spot}`, the place at which the worst of several was read, each with ` of QUANTITY` where the rule matches more than one. A value that has no verdict gives `{value}`
 * and `{gauge}` likewise.
 */
public final class Sentences {
    private Sentences() {
    }

    /** The sentence of this finding. */
    public static String of(Check check, Finding finding) {
        return fill(check.way(finding.way()).found(), finding);
    }

    static String fill(String sentence, Finding finding) {
        StringBuilder out = new StringBuilder(sentence.length() + 32);
        int from = 0;
        int open = sentence.indexOf('{');
        while (open >= 0) {
            int close = sentence.indexOf('}', open);
            if (close < 0) {
                break;
            }
            out.append(sentence, from, open);
            String name = sentence.substring(open + 1, close).strip();
            Optional<String> said = said(name, finding);
            // A name that nothing binds stays as it was written: a test holds that no page has one.
            out.append(said.orElse("{" + name + "}"));
            from = close + 1;
            open = sentence.indexOf('{', from);
        }
        out.append(sentence, from, sentence.length());
        if (sentence.startsWith("{") && out.length() > 0) {
            out.setCharAt(0, Character.toUpperCase(out.charAt(0)));
        }
        return out.toString();
    }

    /** The names that a sentence asks for, in their order. */
    public static List<String> names(String sentence) {
        List<String> names = new ArrayList<>();
        int open = sentence.indexOf('{');
        while (open >= 0) {
            int close = sentence.indexOf('}', open);
            if (close < 0) {
                break;
            }
            names.add(sentence.substring(open + 1, close).strip());
            open = sentence.indexOf('{', close);
        }
        return names;
    }

    private static Optional<String> said(String name, Finding finding) {
        Map<String, String> bound = finding.bound();
        if (bound.containsKey(name)) {
            return Optional.of(bound.get(name));
        }
        switch (name) {
            case "place":
                return Optional.of(place(finding.ask().at()));
            case "of":
                return Optional.of(finding.ask().of());
            default:
                int split = name.indexOf(" of ");
                String what = split < 0 ? name : name.substring(0, split);
                String quantity = split < 0 ? "" : name.substring(split + 4).strip();
                return verdict(finding, quantity).flatMap(v -> of(what, v))
                        .or(() -> value(finding, quantity).flatMap(v -> of(what, v)));
        }
    }

    /** A place as a sentence says it; of several, which one it is was not told. */
    private static String place(String at) {
        if (at.equals("one of each")) {
            return "(one of them all)";
        }
        return at.startsWith("one of ") || at.startsWith("some of ") ? "(" + at + ")" : at;
    }

    /** A value that was not held against a limit. */
    private static Optional<Value> value(Finding finding, String quantity) {
        for (Fact fact : finding.evidence()) {
            if (fact instanceof Value value
                    && (quantity.isEmpty() || value.of().equals(quantity) || value.kind().equals(quantity))) {
                return Optional.of(value);
            }
        }
        return Optional.empty();
    }

    private static Optional<String> of(String what, Value value) {
        return switch (what) {
            case "value" -> Optional.of(Amounts.of(value));
            case "gauge" -> Optional.of(gauge(value));
            default -> Optional.empty();
        };
    }

    private static String gauge(Value value) {
        return value.gauge().isEmpty() ? "no named gauge" : value.gauge();
    }

    private static Optional<String> of(String what, Verdict verdict) {
        return switch (what) {
            case "value" -> Optional.of(Amounts.of(verdict));
            case "limit" -> Optional.of(Amounts.side(verdict) + Wording.whoseShort(verdict.limit()));
            case "band" -> Optional.of(Amounts.sides(verdict) + Wording.whoseShort(verdict.limit()));
            case "gauge" -> Optional.of(gauge(verdict.value()));
            case "spot" -> Optional.of(place(verdict.value().at()));
            default -> Optional.empty();
        };
    }

    private static Optional<Verdict> verdict(Finding finding, String quantity) {
        for (Fact fact : finding.evidence()) {
            if (fact instanceof Verdict verdict
                    && (quantity.isEmpty() || verdict.of().equals(quantity) || verdict.kind().equals(quantity))) {
                return Optional.of(verdict);
            }
        }
        return Optional.empty();
    }
}
