package leadlamp.audit;

import java.util.List;

/**
 * One rule as it stands in its file, taken apart. This is the whole of what a rule may say.
 *
 * @param check   the check it belongs to, or the condition
 * @param way     the way of the check; for a condition what stands after its name, may be empty
 * @param stage   when it is run, and what comes of it
 * @param clauses what must hold, in the order written
 */
public record RulebaseRule(String check, String way, Stage stage, List<Clause> clauses) {

    /** The stages of an audit, and of reading the past. Each is run to its end and frozen before the next. */
    public enum Stage {
        /** A check finds. */
        CHECK,
        /** A named condition holds. */
        CONDITION,
        /** A sign of the past is shown, or set aside. */
        SIGN,
        /** A sign that is shown speaks for an event, or against it. */
        EVENT
    }

    /** A rule of a check or of a condition. */
    public RulebaseRule(String check, String way, boolean sets, List<Clause> clauses) {
        this(check, way, sets ? Stage.CONDITION : Stage.CHECK, clauses);
    }

    /** Whether it sets a condition, not a finding. */
    public boolean sets() {
        return stage == Stage.CONDITION;
    }

    /** The rule's name in its file: `check: way`. */
    public String name() {
        return way.isEmpty() ? check : check + ": " + way;
    }

    /** How a clause counts. */
    public enum Sort {
        /** There is such a fact; it is evidence. */
        THERE,
        /** There is none. */
        NOT,
        /** There is such a fact, and it is not evidence. */
        EXISTS
    }

    /** One line of a rule: a pattern, or `not` or `exists` with one or more. */
    public record Clause(Sort sort, List<Match> matches) {
    }

    /**
     * One pattern.
     *
     * @param fact  simple name of the fact
     * @param bound the variable that it is bound to, with its dollar; empty where there is none
     * @param tests what is asked of the fact
     */
    public record Match(String fact, String bound, List<Test> tests) {
    }

    /** One thing asked of a fact, or one name given to a field of it. */
    public sealed interface Test {
        /** {@code of == "cam gear pin"}, or {@code says in ( "hollow", "slotted" )}. */
        record Says(String field, List<String> words) implements Test {
        }

        /** {@code at == $gear}. */
        record Same(String field, String variable) implements Test {
        }

        /** {@code below}. */
        record Flag(String flag) implements Test {
        }

        /** {@code near( $gear )}. */
        record Tie(String tie, String variable) implements Test {
        }

        /** {@code $form : says}. */
        record Name(String variable, String field) implements Test {
        }
    }
}
