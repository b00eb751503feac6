package leadlamp.derive;

import java.util.List;
import java.util.Optional;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;

/** What the sums of oil take beside their readings. */
final class Oils {
    private static final Unit DENSITY = new Unit("kg/m3", Dimension.MASS_PER_VOLUME, 1, 0);
    /** Density of engine oil at working heat, kg/m³; from memory: oil makers' data sheets, 800 to 870 by grade and heat. */
    private static final double OIL = 830;

    private Oils() {
    }

    static Take density() {
        return Take.by("density of oil", (site, place) -> Optional.of(Site.doubtful("density of oil", place, OIL, 20, "density of oil", DENSITY, 0,
                List.of())));
    }
}
