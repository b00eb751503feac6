package leadlamp.derive;

/** Derived values of this topic. */
final class Sealing {
    private Sealing() {
    }

    static Derived entry(String name) {
        return switch (name) {
            default -> null;
        };
    }
}
