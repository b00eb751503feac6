package leadlamp.derive;

import java.util.List;

/**
 * A value that could not be worked out, and why.
 *
 * @param quantity the value
 * @param at       where it is wanted; `engine` where no place has what it needs
 * @param readings what the record, the sheet or the tools lack: readings by name, sheet lines as {@code sheet standard bore}
 */
public record Missing(String quantity, String at, List<String> readings) {
    public Missing {
        readings = List.copyOf(readings);
    }
}
