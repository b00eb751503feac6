package leadlamp.judge;

/** Whether something holds: it does, it does not, or it is not known. */
enum Holds {
    YES, NO, OPEN;

    Holds and(Holds other) {
        return this == NO || other == NO ? NO : this == OPEN || other == OPEN ? OPEN : YES;
    }
}
