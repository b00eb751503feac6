package leadlamp.derive;

import java.util.List;

/**
 * A value that could not be worked out, and why.
 *
 * @param quantity the value
 * @param at       where it is wanted; `engine` where no place has what it needs
 * @param readings what the record, the sheet or the tools lack: readings by name, sheet lines as {@code sheet standard bore}
 * @param coarse   whether they are all there, and their doubt alone leaves it open
 */
public record Missing(String quantity, String at, List<String> readings, boolean coarse) {
    public Missing {
        readings = List.copyOf(readings);
    }

    /** Something is lacking. */
    public Missing(String quantity, String at, List<String> readings) {
        this(quantity, at, readings, false);
    }
}
