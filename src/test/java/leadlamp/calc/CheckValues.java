package leadlamp.calc;

import java.util.List;

/** Prints how many of the printed check values our formulas work out, by theme, and why the others are left out. */
final class CheckValues {
    private static final List<Class<?>> THEMES = List.of(BearingsAndOilInPrintTest.class, ClutchAndFlywheelInPrintTest.class,
            ConformityInPrintTest.class, EngineGeometryInPrintTest.class, FastenersInPrintTest.class, PairedSizesInPrintTest.class,
            ThermalAndFlowInPrintTest.class, UncertaintyInPrintTest.class);

    private CheckValues() {
    }

    public static void main(String[] none) throws ClassNotFoundException {
        for (Class<?> theme : THEMES) {
            Class.forName(theme.getName());
        }
        Sums.ALL.forEach(sums -> System.out.println(sums.tally()));
    }
}
