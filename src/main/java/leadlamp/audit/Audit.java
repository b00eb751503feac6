package leadlamp.audit;

import java.util.List;
import java.util.Map;
import leadlamp.facts.Ask;
import leadlamp.facts.Condition;
import leadlamp.facts.Fact;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.record.Build;
import leadlamp.record.Problem;

/**
 * What came of auditing one build.
 *
 * @param build      the record, read against its sheet
 * @param answers    one a check, subject and place; by check, subject and place
 * @param chances    the last chance of each answer, by what was asked
 * @param conditions named conditions that hold, by name
 * @param facts      all that a rule could match: words, values, verdicts and conditions
 * @param values     what was read and worked out
 * @param verdicts   what was held against its limit
 * @param problems   what could not be read or worked out, in the order of the files
 */
public record Audit(Build build, List<Answer> answers, Map<Ask, LastChance> chances, List<Condition> conditions,
        List<Fact> facts, List<Value> values, List<Verdict> verdicts, List<Problem> problems) {

    /** The last chance of an answer. */
    public LastChance lastChance(Answer answer) {
        return chances.getOrDefault(answer.ask(), LastChance.NONE);
    }
}
