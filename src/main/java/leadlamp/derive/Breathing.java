package leadlamp.derive;

/** Derived values of this topic. */
final class Breathing {
    private Breathing() {
    }

    static Derived entry(String name) {
        return switch (name) {
            default -> null;
        };
    }
}
