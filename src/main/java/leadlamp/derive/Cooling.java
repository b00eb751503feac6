package leadlamp.derive;

/** Derived values of this topic. */
final class Cooling {
    private Cooling() {
    }

    static Derived entry(String name) {
        return switch (name) {
            default -> null;
        };
    }
}
