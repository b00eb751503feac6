package leadlamp.derive;

/** Derived values of this topic. */
final class BottomEnd {
    private BottomEnd() {
    }

    static Derived entry(String name) {
        return switch (name) {
            default -> null;
        };
    }
}
