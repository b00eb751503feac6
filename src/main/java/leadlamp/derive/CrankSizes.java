package leadlamp.derive;

import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.greatest;
import static leadlamp.derive.Take.least;
import static leadlamp.derive.Take.mean;
import static leadlamp.derive.Take.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import leadlamp.calc.CaseDepth;
import leadlamp.calc.CrankTrain;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.record.Gauge;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/** What sums of cylinders, bearings and rods take beside their readings: marks, strips, cuts, clamp. */
final class CrankSizes {
    static final String STRIP = "plastic gauge";
    private static final Unit MM = Units.usual(Dimension.LENGTH);
    private static final double MILLIMETRE = 1e-3;
    private static final double THOU = 25.4e-6;
    private static final double INCH = 25.4e-3;
    private static final double HALF = 0.5;

    private CrankSizes() {
    }

    // --- cylinders

    /** The largest oversize that the sheet lists. */
    static Take lastOversize() {
        String name = "sheet standard oversizes";
        return by(name, (site, place) -> site.sheet("standard", Place.ENGINE, "oversizes").flatMap(s -> largest(s.says())
                .map(size -> Site.exact(name, place, size, MM, 2, List.of(s.where())))));
    }

    private static Optional<Double> largest(String list) {
        Optional<Double> largest = Optional.empty();
        for (String one : list.split(",")) {
            if (Reading.read(one.strip(), Dimension.LENGTH, Optional.empty()) instanceof Reading.Read read && read.written().figure()) {
                double size = read.written().high();
                largest = Optional.of(largest.isPresent() ? Math.max(largest.get(), size) : size);
            }
        }
        return largest;
    }

    /** The wall as it is now; where it was only read before the work, that. On the thrust side where the sides are told. */
    static Take wall() {
        return new Take("cylinder wall") {
            @Override
            String quantity() {
                return "cylinder wall";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> now = thrust(site, place, "cylinder wall");
                return now.isPresent() ? now : thrust(site, place, "cylinder wall as found");
            }
        };
    }

    private static Optional<Slot> thrust(Site site, String place, String quantity) {
        List<Value> thrust = new ArrayList<>();
        for (Value value : site.store.within(quantity, place)) {
            if (value.at().endsWith(" thrust")) {
                thrust.add(value);
            }
        }
        return thrust.isEmpty() ? least(quantity).at(site, place).map(slot -> new Slot("cylinder wall", slot.values(), slot.reduce()))
                : Optional.of(new Slot("cylinder wall", thrust, thrust.size() == 1 ? Slot.Reduce.ONE : Slot.Reduce.LEAST));
    }

    /** What was bored out since the wall was read: nothing where the wall was read as it is now. */
    static Take boredSince() {
        return new Take("bored since") {
            @Override
            String quantity() {
                return "cylinder bore";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> now = reading("cylinder wall").at(site, place);
                if (now.isPresent()) {
                    return Optional.of(Slot.of(name(), Site.exact(name(), place, 0, MM, 2, List.of())));
                }
                Optional<Slot> after = greatest("cylinder bore").at(site, place);
                Optional<Slot> before = least("cylinder bore as found").at(site, place).or(() -> Take.sheet("standard", "bore").at(site, place));
                if (after.isEmpty() || before.isEmpty()) {
                    return Optional.empty();
                }
                Value larger = after.get().values().get(0);
                for (Value bore : after.get().values()) {
                    larger = bore.high().orElseThrow().value() > larger.high().orElseThrow().value() ? bore : larger;
                }
                Value smaller = before.get().values().get(0);
                for (Value bore : before.get().values()) {
                    smaller = bore.low().orElseThrow().value() < smaller.low().orElseThrow().value() ? bore : smaller;
                }
                Value cut = Differences.of(name(), plainAt(larger, larger.high()), plainAt(smaller, smaller.low()));
                return Optional.of(Slot.of(name(), named(cut, place)));
            }
        };
    }

    private static Value plainAt(Value value, Optional<Estimate> both) {
        return new Value(value.of(), value.kind(), value.at(), both, both, value.unit(), value.figures(), value.gauge(), value.usual(), "",
                value.told(), value.asides(), value.places());
    }

    private static Value named(Value value, String place) {
        return new Value(value.of(), value.of(), place, value.low(), value.high(), value.unit(), value.figures(), "", value.usual(), "",
                value.told(), Map.of(), value.places());
    }

    // --- bearings

    /** The housing that a shell lies in: main 2 of `main 2 upper`. */
    static Take housingOfShell() {
        return new Take("bearing housing bore") {
            @Override
            String quantity() {
                return "bearing housing bore";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                return mean("bearing housing bore").at(site, Bearing.of(place));
            }
        };
    }

    /** The size that the sheet gives the housing of a main or of a big end. */
    static Take standardHousing() {
        return new Take("sheet limits bearing housing bore") {
            @Override
            Optional<Slot> at(Site site, String place) {
                return Take.sheetStandard(Bearing.housing(place) + " bore").at(site, place)
                        .map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }

    /** A clearance that was read with a strip, and how wide the strip was at its ends. */
    static Take strip() {
        String name = "width of the strip";
        return new Take(name) {
            @Override
            String quantity() {
                return "plain bearing clearance";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                return ofStrip(site, place).map(v -> {
                    Value spread = Differences.of(name, plainAt(v, v.high()), plainAt(v, v.low()));
                    return Slot.of(name, new Value(name, name, place, spread.low(), spread.high(), v.unit(), v.figures(), v.gauge(), v.usual(),
                            "", v.told(), Map.of("least", text(v, v.low()), "most", text(v, v.high())), v.places()));
                });
            }
        };
    }

    private static String text(Value v, Optional<Estimate> end) {
        return Figures.text(end.orElseThrow().value(), v.unit(), v.figures());
    }

    /** The clearance of a bearing that was read with a strip, both ends told. */
    static Optional<Value> ofStrip(Site site, String place) {
        return site.store.at("plain bearing clearance", place).filter(v -> !v.derived() && v.low().isPresent() && v.high().isPresent()
                && stripGauge(site, v.gauge()));
    }

    private static boolean stripGauge(Site site, String gauge) {
        Gauge known = site.build.gauges().get(gauge);
        return gauge.equals(STRIP) || known != null && known.kinds().contains(STRIP);
    }

    /** The undersize that is marked on a bearing's shells, or told of them. */
    static Take shellMark() {
        String name = "shell size mark";
        return by(name, (site, place) -> {
            for (String shell : Bearing.shells(place)) {
                for (Statement s : site.said(shell)) {
                    if (site.related(s.at(), place) && s.told().isEmpty()) {
                        if (s.what().equals("undersize") && s.value().isPresent()) {
                            return Site.written(name, place, s);
                        }
                        Optional<Double> mark = s.what().equals("size mark") ? undersize(s.says()) : Optional.empty();
                        if (mark.isPresent()) {
                            return Optional.of(Site.exact(name, place, mark.get(), MM, 2, List.of(s.where())));
                        }
                    }
                }
            }
            return Optional.empty();
        });
    }

    /** A mark as shells bear it: `standard`, `-0.25`, `0.50 mm`, `.010`, `020`; empty where it is none. */
    static Optional<Double> undersize(String mark) {
        String text = mark.strip().toLowerCase(Locale.ROOT);
        if (text.equals("standard") || text.equals("std") || text.equals("std.")) {
            return Optional.of(0.0);
        }
        String bare = text.startsWith("-") || text.startsWith("+") || text.startsWith("−") ? text.substring(1).strip() : text;
        bare = bare.startsWith("u/s ") ? bare.substring(4).strip() : bare;
        if (Reading.read(bare, Dimension.LENGTH, Optional.empty()) instanceof Reading.Read read && read.written().figure()) {
            return Optional.of(read.written().high());
        }
        try {
            double figure = Double.parseDouble(bare.startsWith(".") ? "0" + bare : bare);
            if (figure < 0 || figure > 100) {
                return Optional.empty();
            }
            // Makers stamp hundredths of a millimetre, thousandths of an inch, or the inch itself.
            return Optional.of(figure >= 5 ? figure * THOU : figure < 0.1 ? figure * INCH : figure * MILLIMETRE);
        } catch (NumberFormatException none) {
            return Optional.empty();
        }
    }

    /** What lies between the webs beside the shell: the rod that may be pushed against one, else the journal. */
    static Take widthAtTheWebs() {
        return new Take("width at the webs") {
            @Override
            String quantity() {
                return "journal width";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> rod = Bearing.isMain(place) ? Optional.empty() : reading("connecting rod width").at(site, place);
                return (rod.isPresent() ? rod : reading("journal width").at(site, place))
                        .map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }

    /** How far from the web the bearing edge of the shell begins. */
    static double edgeFromWeb(In v) {
        return Math.max(0, (v.get("width at the webs") - v.get("shell width")) / 2 + v.get("shell chamfer"));
    }

    /** The fillet's height at the edge of the shell, first where that edge is. */
    static String filletInWords(In v) {
        double edge = edgeFromWeb(v);
        String at = Figures.text(edge, MM, 3);
        String fillet = v.show("journal fillet radius");
        double open = (v.get("width at the webs") - v.get("shell width")) / 2 + v.get("shell chamfer");
        String where = open < 0 ? "" : Template.fill("edge from the web half of ({width at the webs} - shell {shell width}) + chamfer {shell chamfer} = ", v)
                + at + "; ";
        String height = edge >= v.get("journal fillet radius") ? "no fillet there, 0 mm"
                : "fillet " + fillet + " - root of (" + fillet + " squared - (" + fillet + " - " + at + ") squared)";
        return where + height + " - half of " + v.show("plain bearing clearance");
    }

    /** Depth of the hard skin: the sheet's, else what the way of hardening gives. A skin that goes right through has none. */
    static Take caseDepth() {
        String name = "sheet case depth";
        return by(name, "crankshaft hardening", (site, place) -> {
            for (Statement s : site.build.sheet().statements()) {
                if (s.what().equals("case depth") || s.what().endsWith(" case depth")) {
                    return Site.written(name, place, s);
                }
            }
            return site.word("crankshaft", Place.ENGINE, "hardening").flatMap(s -> CaseDepth.named(s.says()).map(skin -> {
                Optional<Estimate> least = Optional.of(Estimate.exact(skin.least(), Dimension.LENGTH));
                Optional<Estimate> most = Optional.of(Estimate.exact(skin.most(), Dimension.LENGTH));
                return new Value(name, name, place, least, most, MM, 2, "", true, "", s.told().orElse(""), Map.of(), List.of(s.where()));
            }));
        });
    }

    // --- crankshaft and rods

    /** What the caps or saddles lost, as a rise of the crankshaft. */
    static Take rise() {
        String name = "rise of the crankshaft";
        return by(name, "machining main housing removed", (site, place) -> {
            Optional<Value> saddle = cut(site, "main housing");
            if (saddle.isPresent()) {
                return Optional.of(rise(name, place, saddle.get(), 1, "metal off the saddles "));
            }
            return cut(site, "main cap").map(cut -> rise(name, place, cut, HALF, "half of what came off the caps, bored back to size, "));
        });
    }

    private static Optional<Value> cut(Site site, String part) {
        Optional<Value> most = Optional.empty();
        for (Statement s : site.said("machining")) {
            if (s.what().equals(part + " removed")) {
                Optional<Value> here = Site.written(part + " removed", Place.ENGINE, s).filter(v -> v.high().isPresent());
                most = here.isPresent() && (most.isEmpty() || here.get().high().get().value() > most.get().high().orElseThrow().value()) ? here
                        : most;
            }
        }
        return most;
    }

    private static Value rise(String name, String place, Value cut, double share, String words) {
        double rise = share == HALF ? CrankTrain.centreRiseOnSize(cut.high().orElseThrow().value()) : cut.high().orElseThrow().value();
        Value exact = Site.exact(name, place, rise, cut.unit(), cut.figures(), cut.places());
        return new Value(name, name, place, exact.low(), exact.high(), cut.unit(), cut.figures(), "", false, "", cut.told(),
                Map.of("sum", words + Figures.text(cut.high().orElseThrow().value(), cut.unit(), cut.figures())), cut.places());
    }

    /** Clamp of all bolts of a rod: by their stretch, else by the torque. */
    static Take clampOfRod() {
        String name = "clamp of the rod's bolts";
        return new Take(name) {
            @Override
            String quantity() {
                return "rod bolt stress";
            }

            @Override
            List<String> others() {
                return List.of("clamp force");
            }

            @Override
            String lacks() {
                return "rod bolt stretch";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> bolts = Fasteners.boltsOfRod().at(site, place);
                if (bolts.isEmpty()) {
                    return Optional.empty();
                }
                double count = bolts.get().values().get(0).low().orElseThrow().value();
                Optional<Slot> stress = least("rod bolt stress").at(site, place);
                Optional<Slot> area = Fasteners.rodBoltArea().at(site, place);
                if (stress.isPresent() && area.isPresent()) {
                    Value weakest = weakest(stress.get().values());
                    double square = area.get().values().get(0).low().orElseThrow().value();
                    return Optional.of(Slot.of(name, force(weakest, count * square, place, Math.round(count) + " bolts x "
                            + Figures.text(weakest.low().orElseThrow().value(), weakest.unit(), 0) + " x " + Figures.text(square, Joints.MM2, 1))));
                }
                return Fasteners.rodJoint(site, place).flatMap(joint -> site.store.at("clamp force", joint)).filter(v -> v.low().isPresent())
                        .map(clamp -> Slot.of(name, force(clamp, count, place, Math.round(count) + " bolts x "
                                + Figures.text(clamp.low().orElseThrow().value(), clamp.unit(), 0))));
            }
        };
    }

    private static Value weakest(List<Value> stresses) {
        Value weakest = stresses.get(0);
        for (Value one : stresses) {
            weakest = one.low().isPresent() && one.low().get().value() < weakest.low().orElseThrow().value() ? one : weakest;
        }
        return weakest;
    }

    private static Value force(Value one, double times, String place, String sum) {
        Unit newton = Units.si(Dimension.FORCE);
        Value all = Scaled.by(one, times, "clamp of the rod's bolts", place);
        Optional<Estimate> low = all.low().map(e -> new Estimate(e.value(), Dimension.FORCE, e.doubt()));
        Optional<Estimate> high = all.plain() ? low : all.high().map(e -> new Estimate(e.value(), Dimension.FORCE, e.doubt()));
        return new Value(all.of(), all.of(), place, low, high, newton, 0, "", all.usual(), "", all.told(), Map.of("sum", sum), all.places());
    }

    /** Room of the valves of the same side in the other cylinders, and beside this one. */
    static Take roomOfItsMates() {
        return new Take("room of its mates") {
            @Override
            String quantity() {
                return "valve piston clearance";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                String side = (" " + place + " ").contains(" exhaust ") ? "exhaust" : "intake";
                List<Value> mates = new ArrayList<>();
                for (Value value : site.store.of("valve piston clearance")) {
                    if (value.of().equals("valve piston clearance") && !value.at().equals(place) && value.plain() && !Store.untold(value.at())
                            && (" " + value.at() + " ").contains(" " + side + " ")) {
                        mates.add(value);
                    }
                }
                return mates.size() < 2 ? Optional.empty() : Optional.of(new Slot(name(), mates, Slot.Reduce.MEAN));
            }
        };
    }

    /** Share of the reciprocating weight that the bob weights stand for. */
    static Take balancedShare() {
        return Take.sheet("balance", "share");
    }

    static Take pistonsOfOnePin() {
        String name = "pistons of one crankpin";
        return by(name, (site, place) -> Optional.of(Site.number(name, place, Shapes.sharing(site, "big end 1").size(), 0, List.<Where>of())));
    }
}
