package leadlamp.audit;

/** How bad it is, in the words of MIL-STD-882E, worst first. */
public enum Severity {
    CATASTROPHIC("Catastrophic"), CRITICAL("Critical"), MARGINAL("Marginal"), NEGLIGIBLE("Negligible");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
