package leadlamp.facts;

import java.util.List;
import leadlamp.record.Where;

/**
 * One check asked at one place. A rule begins with it.
 *
 * @param check the check's name
 * @param of    the part, joint or reading where the group runs over those, else empty; never a line number
 * @param at    the place
 */
public record Ask(String check, String of, String at) implements Fact {
    @Override
    public List<Where> places() {
        return List.of();
    }

    // Written out: those that come of themselves cost a noticeable part of a start when they are first used.
    @Override
    public boolean equals(Object other) {
        return other instanceof Ask ask && at.equals(ask.at) && check.equals(ask.check) && of.equals(ask.of);
    }

    @Override
    public int hashCode() {
        return (check.hashCode() * 31 + of.hashCode()) * 31 + at.hashCode();
    }
}
