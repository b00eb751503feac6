package leadlamp.report;

import java.util.AbstractList;
import java.util.function.IntFunction;

/** A list of which each entry is made when it is first asked for: a terminal names the first few of hundreds. */
final class OneByOne<T> extends AbstractList<T> {
    private final Object[] made;
    private final IntFunction<T> maker;

    OneByOne(int size, IntFunction<T> maker) {
        this.made = new Object[size];
        this.maker = maker;
    }

    @Override
    @SuppressWarnings("unchecked")
    public T get(int index) {
        if (made[index] == null) {
            made[index] = maker.apply(index);
        }
        return (T) made[index];
    }

    @Override
    public int size() {
        return made.length;
    }
}
