package leadlamp.facts;

import java.util.function.Supplier;

/**
 * How a value was worked out, in one line that a builder can redo. It is put into words when somebody asks for it: of a thousand
 * sums of an audit a few are told. Two are the same where their words are.
 */
public final class Redone {
    /** Of what was not worked out. */
    static final Redone NOT = new Redone("");

    private final Supplier<String> telling;
    private String text;

    private Redone(String text) {
        this.telling = null;
        this.text = text;
    }

    private Redone(Supplier<String> telling) {
        this.telling = telling;
    }

    static Redone of(String text) {
        return text.isEmpty() ? NOT : new Redone(text);
    }

    /** One that is put into words when it is asked for; never an empty one. */
    public static Redone when(Supplier<String> telling) {
        return new Redone(telling);
    }

    synchronized String text() {
        if (text == null) {
            text = telling.get();
        }
        return text;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Redone sum && text().equals(sum.text());
    }

    @Override
    public int hashCode() {
        return text().hashCode();
    }

    @Override
    public String toString() {
        return text();
    }
}
