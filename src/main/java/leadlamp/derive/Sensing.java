package leadlamp.derive;

/** Derived values of this topic. */
final class Sensing {
    private Sensing() {
    }

    static Derived entry(String name) {
        return switch (name) {
            default -> null;
        };
    }
}
