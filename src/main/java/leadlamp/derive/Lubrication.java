package leadlamp.derive;

/** Derived values of this topic. */
final class Lubrication {
    private Lubrication() {
    }

    static Derived entry(String name) {
        return switch (name) {
            default -> null;
        };
    }
}
