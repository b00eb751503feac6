package leadlamp.derive;

/** Derived values of this topic. */
final class Head {
    private Head() {
    }

    static Derived entry(String name) {
        return switch (name) {
            default -> null;
        };
    }
}
