package leadlamp.derive;

import java.util.List;
import leadlamp.facts.Value;

/** What a sum has under one name: one value, or several that it takes together. */
record Slot(String name, List<Value> values, Reduce reduce) {
    /** How several values become one figure. */
    enum Reduce {
        ONE, MEAN, LEAST, GREATEST, SUM
    }

    Slot {
        values = List.copyOf(values);
    }

    static Slot of(String name, Value value) {
        return new Slot(name, List.of(value), Reduce.ONE);
    }

    double figure(double[] now) {
        double figure = now[0];
        for (int i = 1; i < now.length; i++) {
            switch (reduce) {
                case LEAST -> figure = Math.min(figure, now[i]);
                case GREATEST -> figure = Math.max(figure, now[i]);
                case MEAN, SUM -> figure += now[i];
                default -> {
                }
            }
        }
        return reduce == Reduce.MEAN ? figure / now.length : figure;
    }
}
