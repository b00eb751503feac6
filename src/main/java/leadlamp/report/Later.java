package leadlamp.report;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;

/**
 * A list that is made when the first of it is asked for. A page shows thousands of lines of what is clear; a terminal shows
 * none of them and need not wait for them.
 */
final class Later<T> extends AbstractList<T> {
    private final Supplier<List<T>> maker;
    private volatile List<T> made;

    Later(Supplier<List<T>> maker) {
        this.maker = maker;
    }

    private List<T> made() {
        List<T> known = made;
        if (known == null) {
            known = maker.get();
            made = known;
        }
        return known;
    }

    @Override
    public T get(int index) {
        return made().get(index);
    }

    @Override
    public int size() {
        return made().size();
    }
}
