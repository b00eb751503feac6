package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.RingGaps;
import leadlamp.calc.WorkingHeat;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;
import leadlamp.record.LimitLine;
import leadlamp.record.Statement;

/** What the sums of piston rings need beside their readings. */
final class RingSizes {
    private static final Unit PER_MM = new Unit("mm for each mm", Dimension.NUMBER, 1, 0);

    private RingSizes() {
    }

    /** Least gap of a first ring for each mm of bore, by what is asked of the engine. Other rings have no such figure. */
    static Take gapFactor() {
        return Take.by("gap factor of the duty", (site, place) -> {
            if (!place.endsWith(" first")) {
                return Optional.empty();
            }
            Optional<Boolean> boosted = boosted(site);
            Optional<Statement> duty = site.word("use", "engine", "duty");
            if (boosted.isEmpty() || duty.isEmpty()) {
                return Optional.empty();
            }
            double factor = boosted.get() ? RingGaps.BOOSTED : hard(site) ? RingGaps.COMPETITION : RingGaps.ROAD;
            return Optional.of(Site.doubtful("gap factor of the duty", place, factor, factor * RingGaps.DOUBT / 2,
                    "rule of thumb for ring gaps", PER_MM, 4, List.of(duty.get().where())));
        });
    }

    private static boolean hard(Site site) {
        for (Statement s : site.said("use")) {
            if (s.what().equals("duty") && (s.says().equals("competition") || s.says().equals("track"))) {
                return true;
            }
        }
        return false;
    }

    /** Whether the engine is boosted; not known where neither record nor sheet says. */
    static Optional<Boolean> boosted(Site site) {
        Optional<Statement> boost = site.word("use", "engine", "boost").filter(s -> s.value().isPresent());
        if (boost.isPresent()) {
            return Optional.of(boost.get().value().get().high() > 0);
        }
        Optional<Statement> turbo = site.sheet("layout", "engine", "turbochargers");
        Optional<Statement> blower = site.sheet("layout", "engine", "supercharger");
        if (turbo.isPresent() && !turbo.get().says().equals("none") || blower.isPresent() && !blower.get().says().equals("none")) {
            return Optional.of(true);
        }
        return turbo.isPresent() && blower.isPresent() ? Optional.of(false) : Optional.empty();
    }

    static Take ringRise() {
        return Take.by("rise of the ring", (site, place) -> boosted(site).flatMap(boosted -> Materials.rise("rise of the ring",
                boosted ? WorkingHeat.BOOSTED_RING_RISE : WorkingHeat.RING_RISE).at(site, place)).map(slot -> slot.values().get(0)));
    }

    /** The gap of a new ring: the middle of the sheet's band. */
    static Take newGap() {
        String name = "sheet limits piston ring end gap";
        return Take.by(name, (site, place) -> {
            Optional<Value> gap = Optional.empty();
            for (LimitLine line : site.build.sheet().limits()) {
                if (line.quantity().equals("piston ring end gap") && line.times().isEmpty() && line.least().isPresent() && line.most().isPresent()
                        && !line.when().equals("in service") && (line.at().isEmpty() || site.store.covers(line.at(), place))) {
                    double least = line.least().get().low();
                    double most = line.most().get().low();
                    gap = Optional.of(Site.doubtful(name, place, (least + most) / 2, (most - least) / 2 / Math.sqrt(3), "gap of the new ring",
                            line.least().get().unit(), line.least().get().figures(), List.of(line.line())));
                }
            }
            return gap;
        });
    }

    /** The bore that a ring's gap was gauged in: at the height that was told, else anywhere between the smallest and the greatest. */
    static Take boreAtTheGap() {
        return boreAtTheGap(2);
    }

    /** The same, where so many readings of it are enough. */
    static Take boreAtTheGap(int enough) {
        return new Take("bore at the gap") {
            @Override
            String quantity() {
                return "cylinder bore";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                String height = site.store.at("piston ring end gap", place).map(v -> v.asides().getOrDefault("gauged at", "")).orElse("");
                List<Value> told = new ArrayList<>();
                List<Value> all = bores(site, place);
                for (Value bore : all) {
                    if (!height.isEmpty() && (" " + bore.at() + " ").contains(" " + height + " ")) {
                        told.add(bore);
                    }
                }
                if (!told.isEmpty()) {
                    return Optional.of(new Slot(name(), told, told.size() == 1 ? Slot.Reduce.ONE : Slot.Reduce.MEAN));
                }
                if (all.isEmpty() && enough == 1) {
                    // A bore that was read once, and nobody wrote at which height.
                    return Take.mean("cylinder bore").at(site, place).map(slot -> new Slot(name(), slot.values(), Slot.Reduce.MEAN));
                }
                return all.size() < enough ? Optional.empty() : Optional.of(Slot.of(name(), all.size() == 1 ? all.get(0)
                        : somewhere(name(), place, all)));
            }
        };
    }

    /** Between the smallest and the greatest bore, and nobody wrote where: the middle, and that as a doubt. */
    private static Value somewhere(String name, String place, List<Value> bores) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Value bore : bores) {
            least = Math.min(least, bore.low().orElseGet(() -> bore.high().orElseThrow()).value());
            most = Math.max(most, bore.high().orElseGet(() -> bore.low().orElseThrow()).value());
        }
        Value first = bores.get(0);
        double doubt = (most - least) / 2 / Math.sqrt(3);
        return Site.doubtful(name, place, (least + most) / 2, doubt, "where in its bore the ring was gauged", first.unit(),
                first.figures(), first.places());
    }

    /** The smallest bore in the travel of a ring. */
    static Take smallestBore() {
        return new Take("smallest bore") {
            @Override
            String quantity() {
                return "cylinder bore";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> all = bores(site, place);
                return all.size() < 2 ? Optional.empty() : Optional.of(new Slot(name(), all, Slot.Reduce.LEAST));
            }
        };
    }

    private static List<Value> bores(Site site, String ring) {
        return Shapes.boresOfRing().at(site, ring).map(Slot::values).orElse(List.of());
    }

    /** The two neighbours whose gaps lie nearest: one angle less the other, or round by the nought. */
    static String nearestGaps(In v, double least) {
        double[] angles = fromTheTop(v.all("piston ring gap angle"), v.placesOf("piston ring gap angle"));
        for (int i = 1; i < angles.length; i++) {
            double apart = Math.abs(angles[i] - angles[i - 1]);
            String text = Shapes.apart(v, angles[i], "", angles[i - 1], "", "piston ring gap angle");
            if (Math.abs(apart - least) < 1e-9) {
                return text;
            }
            if (Math.abs(2 * Math.PI - apart - least) < 1e-9) {
                return "360 deg - (" + text + ")";
            }
        }
        return "half of 360 deg";
    }

    /** Clock places from the top ring down. */
    static double[] fromTheTop(double[] angles, List<String> places) {
        double[] ordered = new double[angles.length];
        int n = 0;
        for (String ring : List.of(" first", " second", " oil")) {
            for (int i = 0; i < angles.length; i++) {
                if (places.get(i).endsWith(ring)) {
                    ordered[n++] = angles[i];
                }
            }
        }
        return n == ordered.length ? ordered : angles;
    }
}
