package leadlamp.derive;

/** Derived values of this topic. */
final class Workshop {
    private Workshop() {
    }

    static Derived entry(String name) {
        return switch (name) {
            default -> null;
        };
    }
}
