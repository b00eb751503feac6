package leadlamp.calc;

import java.util.Arrays;

/** What a set of readings of one thing says: spread, middle, odd one out. */
public final class Sets {
    private Sets() {
    }

    /**
     * Largest less smallest.
     *
     * <p>greatest − least.
     *
     * @param readings readings; at least one
     * @return spread, in the readings' unit
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double spread(double... readings) {
        Argument.some("readings", readings);
        return greatest(readings) - least(readings);
    }

    /**
     * Smallest of the readings.
     *
     * @param readings readings; at least one
     * @return least, in the readings' unit
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double least(double... readings) {
        Argument.some("readings", readings);
        double least = readings[0];
        for (double reading : readings) {
            least = Math.min(least, reading);
        }
        return least;
    }

    /**
     * Largest of the readings.
     *
     * @param readings readings; at least one
     * @return greatest, in the readings' unit
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double greatest(double... readings) {
        Argument.some("readings", readings);
        double greatest = readings[0];
        for (double reading : readings) {
            greatest = Math.max(greatest, reading);
        }
        return greatest;
    }

    /**
     * Mean of the readings.
     *
     * <p>sum / count.
     *
     * @param readings readings; at least one
     * @return mean, in the readings' unit
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double mean(double... readings) {
        Argument.some("readings", readings);
        double sum = 0;
        for (double reading : readings) {
            sum += reading;
        }
        return sum / readings.length;
    }

    /**
     * Middle value of the readings; of an even number, half way between the middle two.
     *
     * @param readings readings; at least one
     * @return median, in the readings' unit
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double median(double... readings) {
        Argument.some("readings", readings);
        double[] sorted = readings.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /**
     * How far one reading is from the median of the others.
     *
     * <p>reading − median of the rest.
     *
     * @param reading reading
     * @param rest    other readings; at least one
     * @return difference, in the readings' unit
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double offTheRest(double reading, double... rest) {
        Argument.finite("reading", reading);
        Argument.some("other readings", rest);
        return reading - median(rest);
    }

    /**
     * Spread of repeated readings as a standard deviation, with one less than their count.
     *
     * <p>√(Σ (x − mean)² / (n − 1)).
     *
     * @param readings repeated readings; at least two
     * @return standard deviation, in the readings' unit
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "JCGM 100, 4.2.2"
     */
    public static double standardDeviation(double... readings) {
        Argument.two("repeated readings", readings);
        double mean = mean(readings);
        double sum = 0;
        for (double reading : readings) {
            sum += (reading - mean) * (reading - mean);
        }
        return Math.sqrt(sum / (readings.length - 1));
    }

    /**
     * Balance of a set, as of compression readings.
     *
     * <p>least / greatest.
     *
     * @param readings readings; at least one
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double lowestOverHighest(double... readings) {
        Argument.some("readings", readings);
        if (greatest(readings) <= 0) {
            throw new IllegalArgumentException("The highest of the readings must be above zero.");
        }
        return least(readings) / greatest(readings);
    }

    /**
     * Spread as a share of the mean, as of injectors or throttles.
     *
     * <p>(greatest − least) / mean.
     *
     * @param readings readings; at least one
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double spreadShare(double... readings) {
        Argument.some("readings", readings);
        if (mean(readings) == 0) {
            throw new IllegalArgumentException("The mean of the readings must not be zero.");
        }
        return (greatest(readings) - least(readings)) / Math.abs(mean(readings));
    }

    /**
     * Fall from one reading to another as a share of the first, as of hardness from a cool place to a hot one.
     *
     * <p>1 − there / here.
     *
     * @param here  reading at the sound place; above zero
     * @param there reading at the doubtful place; not below zero
     * @return share
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double dropShare(double here, double there) {
        Argument.aboveZero("reading at the sound place", here);
        Argument.notBelowZero("reading at the doubtful place", there);
        return 1 - there / here;
    }

    /**
     * One value over another.
     *
     * @param value value
     * @param over  value it is held against
     * @return number
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double ratio(double value, double over) {
        Argument.finite("value", value);
        Argument.finite("value it is held against", over);
        if (over == 0) {
            throw new IllegalArgumentException("The value it is held against must not be zero.");
        }
        return value / over;
    }

    /**
     * How far a reading is from the nearest step of its gauge: nothing where the gauge can show it.
     *
     * <p>|reading − step · whole number|.
     *
     * @param reading reading
     * @param step    resolution of the gauge; above zero
     * @return distance, in the readings' unit; at most half a step
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double offStep(double reading, double step) {
        Argument.finite("reading", reading);
        Argument.aboveZero("resolution of the gauge", step);
        return Math.abs(Math.IEEEremainder(reading, step));
    }

    /**
     * Where a reading lies in the range of its gauge.
     *
     * <p>(reading − bottom) / (top − bottom).
     *
     * @param reading reading
     * @param bottom  bottom of the gauge's range
     * @param top     top of the gauge's range
     * @return share; below 0 or above 1 is outside
     * @throws IllegalArgumentException if an argument is outside the range above or not finite
     * @see "definition"
     */
    public static double placeInRange(double reading, double bottom, double top) {
        Argument.finite("reading", reading);
        Argument.finite("bottom of the gauge's range", bottom);
        Argument.finite("top of the gauge's range", top);
        if (top <= bottom) {
            throw new IllegalArgumentException("The top of the gauge's range must be above its bottom.");
        }
        return (reading - bottom) / (top - bottom);
    }
}
