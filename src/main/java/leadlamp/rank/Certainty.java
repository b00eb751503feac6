package leadlamp.rank;

import leadlamp.audit.Check;
import leadlamp.audit.Finding;
import leadlamp.facts.Condition;
import leadlamp.facts.Fact;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;

/** How sure a finding is, surest first. */
public enum Certainty {
    /** Measured outside a limit, or seen and recorded. */
    PROVEN("proven"),
    /** From a sign of the past, what somebody told, a trade number or a reason to look. */
    INFERRED("inferred");

    /** What this topic asks of is never there to be seen, only its traces. */
    private static final String OF_THE_PAST = "history";

    private final String word;

    Certainty(String word) {
        this.word = word;
    }

    static Certainty of(Check check, Finding finding) {
        if (check.topic().equals(OF_THE_PAST)) {
            return INFERRED;
        }
        for (Fact fact : finding.evidence()) {
            if (weak(fact)) {
                return INFERRED;
            }
        }
        return PROVEN;
    }

    private static boolean weak(Fact fact) {
        if (fact instanceof Verdict verdict) {
            return verdict.limit().reason() || verdict.limit().whose() == LimitUsed.Whose.TRADE
                    || !verdict.value().told().isEmpty();
        }
        if (fact instanceof Seen seen) {
            return !seen.told().isEmpty() || "found".equals(seen.asides().get("as"));
        }
        return fact instanceof Stated stated && !stated.told().isEmpty()
                || fact instanceof Value value && !value.told().isEmpty()
                || fact instanceof Condition;
    }

    public String word() {
        return word;
    }
}
