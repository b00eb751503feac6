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

    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line + ":" + column;
    }
}
