package leadlamp.derive;

/** Derived values of this topic. */
final class Fasteners {
    private Fasteners() {
    }

    static Derived entry(String name) {
        return switch (name) {
            default -> null;
        };
    }
}
