package leadlamp.audit;

/** How likely it is, in the words of MIL-STD-882E, likeliest first. */
public enum Likelihood {
    FREQUENT("Frequent"), PROBABLE("Probable"), OCCASIONAL("Occasional"), REMOTE("Remote"), IMPROBABLE("Improbable"),
    ELIMINATED("Eliminated");

    private final String word;

    Likelihood(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
