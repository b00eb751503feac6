package leadlamp.calc;

/** What a formula cannot mean is refused here, in the words of the bench. */
final class Argument {
    private Argument() {
    }

    static void finite(String name, double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("The " + name + " must be a number.");
        }
    }

    static void aboveZero(String name, double value) {
        finite(name, value);
        if (value <= 0) {
            throw new IllegalArgumentException("The " + name + " must be above zero.");
        }
    }

    static void notBelowZero(String name, double value) {
        finite(name, value);
        if (value < 0) {
            throw new IllegalArgumentException("The " + name + " must not be below zero.");
        }
    }

    static void aboveOne(String name, double value) {
        finite(name, value);
        if (value <= 1) {
            throw new IllegalArgumentException("The " + name + " must be above 1.");
        }
    }

    static void share(String name, double value) {
        finite(name, value);
        if (value < 0 || value > 1) {
            throw new IllegalArgumentException("The " + name + " must lie from 0 to 100 %.");
        }
    }

    static void belowOne(String name, double value) {
        finite(name, value);
        if (value < 0 || value >= 1) {
            throw new IllegalArgumentException("The " + name + " must lie from 0 to below 100 %.");
        }
    }

    static void belowRightAngle(String name, double value) {
        finite(name, value);
        if (value < 0 || value >= Math.PI / 2) {
            throw new IllegalArgumentException("The " + name + " must lie from 0 to below 90 degrees.");
        }
    }

    static void atLeast(String name, int value, int least) {
        if (value < least) {
            throw new IllegalArgumentException("The " + name + " must be at least " + least + ".");
        }
    }

    static void some(String name, double[] values) {
        several(name, values, 1);
    }

    static void two(String name, double[] values) {
        several(name, values, 2);
    }

    private static void several(String name, double[] values, int least) {
        if (values.length < least) {
            throw new IllegalArgumentException("Of the " + name + " at least " + (least == 1 ? "one is" : "two are")
                    + " wanted.");
        }
        for (double value : values) {
            if (Double.isNaN(value) || Double.isInfinite(value)) {
                throw new IllegalArgumentException("Each of the " + name + " must be a number.");
            }
        }
    }
}
