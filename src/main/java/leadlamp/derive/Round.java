package leadlamp.derive;

import java.util.List;
import java.util.Optional;
import leadlamp.calc.Rounds;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;

/** A round figure of the trade as something that a sum takes, with its doubt. */
final class Round {
    private static final Unit NUMBER = Units.si(Dimension.NUMBER);

    private Round() {
    }

    static Take figure(String name, Rounds round) {
        return figure(name, round, NUMBER, 2);
    }

    static Take figure(String name, Rounds round, Unit unit, int figures) {
        return Take.by(name, (site, place) -> Optional.of(Site.doubtful(name, place, round.usual(), round.half() / Math.sqrt(3),
                "round figure, " + name, unit, figures, List.of())));
    }

    /** Fuel for each unit of work, with or without boost. */
    static Take fuelUse() {
        Unit unit = new Unit("g/kWh", Dimension.NUMBER, 1 / 3.6e9, 0);
        return Take.by("specific fuel use", (site, place) -> RingSizes.boosted(site).flatMap(boosted -> figure("specific fuel use",
                boosted ? Rounds.FUEL_USE_BOOSTED : Rounds.FUEL_USE, unit, 0).at(site, place)).map(slot -> slot.values().get(0)));
    }

    static Take petrolDensity() {
        return Take.by("density of petrol", (site, place) -> site.sheet("layout", "engine", "fuel burns").filter(s -> s.says().equals("petrol"))
                .flatMap(s -> figure("density of petrol", Rounds.PETROL_DENSITY, Oils.DENSITY, 0).at(site, place)).map(slot -> slot.values().get(0)));
    }
}
