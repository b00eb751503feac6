package leadlamp.derive;

/** Derived values of this topic. */
final class FuelAndSpark {
    private FuelAndSpark() {
    }

    static Derived entry(String name) {
        return switch (name) {
            default -> null;
        };
    }
}
