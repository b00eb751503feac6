package leadlamp.derive;

/** Derived values of this topic. */
final class ValveGear {
    private ValveGear() {
    }

    static Derived entry(String name) {
        return switch (name) {
            default -> null;
        };
    }
}
