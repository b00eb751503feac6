package leadlamp.rank;

import leadlamp.audit.Likelihood;
import leadlamp.audit.Severity;

/** Level of a risk, in the words of MIL-STD-882E, highest first. */
public enum RiskLevel {
    HIGH("High"), SERIOUS("Serious"), MEDIUM("Medium"), LOW("Low"), ELIMINATED("Eliminated");

    /** Table III of the standard: a row a severity, a column a likelihood, both in the order of their words. */
    private static final RiskLevel[][] MATRIX = {
        {HIGH, HIGH, HIGH, SERIOUS, MEDIUM, ELIMINATED},
        {HIGH, HIGH, SERIOUS, MEDIUM, MEDIUM, ELIMINATED},
        {SERIOUS, SERIOUS, MEDIUM, MEDIUM, MEDIUM, ELIMINATED},
        {MEDIUM, MEDIUM, LOW, LOW, LOW, ELIMINATED}};

    private final String word;

    RiskLevel(String word) {
        this.word = word;
    }

    /** The cell of the matrix. */
    public static RiskLevel of(Severity severity, Likelihood likelihood) {
        return MATRIX[severity.ordinal()][likelihood.ordinal()];
    }

    public String word() {
        return word;
    }
}
