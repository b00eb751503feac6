package leadlamp.quantity;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A value in SI units and, for each source of doubt, sensitivity times standard uncertainty (signed). A reading used
 * twice counts once, and a shared gauge's error cancels in a difference, for sources of one name add up before they
 * are squared (JCGM 100, first order).
 */
public record Estimate(double value, Dimension dimension, SortedMap<String, Double> doubt) {
    public Estimate {
        doubt = doubt.isEmpty() ? Collections.emptySortedMap() : Collections.unmodifiableSortedMap(new TreeMap<>(doubt));
    }

    /** A value without doubt. */
    public static Estimate exact(double value, Dimension dimension) {
        return new Estimate(value, dimension, Collections.emptySortedMap());
    }

    /** Root of the sum of squares over the sources (JCGM 100). */
    public double standardUncertainty() {
        double sum = 0;
        for (double part : doubt.values()) {
            sum += part * part;
        }
        return Math.sqrt(sum);
    }

    /** The source that weighs most; empty where there is no doubt. Ties go to the first by name. */
    public String chiefSource() {
        String chief = "";
        double most = 0;
        for (var part : doubt.entrySet()) {
            if (Math.abs(part.getValue()) > most) {
                most = Math.abs(part.getValue());
                chief = part.getKey();
            }
        }
        return chief;
    }
}
