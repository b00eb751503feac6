package leadlamp.cli;

/** Which Leadlamp this is. */
final class Version {
    /** As the jar's manifest says; one that was never packed has none. */
    static final String NUMBER = number();

    private Version() {
    }

    private static String number() {
        String packed = Version.class.getPackage().getImplementationVersion();
        return packed == null ? "unpacked" : packed;
    }
}
