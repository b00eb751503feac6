package leadlamp.rank;

/** A condition of the whole build that holds and moves a likelihood: one step up (+1) or down (-1). */
public record Shift(String condition, int by) {
}
