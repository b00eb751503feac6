package leadlamp.derive;

/** Derived values of this topic. */
final class CamDrive {
    private CamDrive() {
    }

    static Derived entry(String name) {
        return switch (name) {
            default -> null;
        };
    }
}
