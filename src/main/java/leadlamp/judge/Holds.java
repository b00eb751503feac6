package leadlamp.judge;

/** Whether something holds: it does, it does not, or it is not known. */
enum Holds {
    YES, NO, OPEN;

    /** Whether both hold. */
    Holds and(Holds other) {
        return this == NO || other == NO ? NO : this == OPEN || other == OPEN ? OPEN : YES;
    }

    /** What holds at one of several places, of which nobody knows which: what all of them say. {@code before} is null at the first. */
    static Holds of(Holds before, Holds next) {
        return before == null || before == next ? next : OPEN;
    }
}
