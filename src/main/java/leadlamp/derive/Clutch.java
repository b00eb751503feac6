package leadlamp.derive;

/** Derived values of this topic. */
final class Clutch {
    private Clutch() {
    }

    static Derived entry(String name) {
        return switch (name) {
            default -> null;
        };
    }
}
