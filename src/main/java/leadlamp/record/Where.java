package leadlamp.record;

/** Where something was written: file, line and column, both counted from 1; line 0 where a file as a whole is meant. */
public record Where(String file, int line, int column) implements Comparable<Where> {
    @Override
    public int compareTo(Where other) {
        int byFile = file.compareTo(other.file);
        if (byFile != 0) {
            return byFile;
        }
        return line != other.line ? Integer.compare(line, other.line) : Integer.compare(column, other.column);
    }

    // Written by hand: what the compiler makes of a record costs milliseconds at its first call.
    @Override
    public boolean equals(Object other) {
        return other instanceof Where where && line == where.line && column == where.column && file.equals(where.file);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * file.hashCode() + line) + column;
    }

    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line + ":" + column;
    }
}
