package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.OilGrade;
import leadlamp.calc.Rounds;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.record.LimitLine;
import leadlamp.record.Statement;

/** What the sums of oil take beside their readings. */
final class Oils {
    static final Unit DENSITY = new Unit("kg/m3", Dimension.MASS_PER_VOLUME, 1, 0);
    static final Unit VISCOSITY = new Unit("mm2/s", Dimension.NUMBER, 1e-6, 0);

    private Oils() {
    }

    static Take density() {
        return Round.figure("density of oil", Rounds.HOT_OIL_DENSITY, DENSITY, 0);
    }

    /** Viscosity at 100 degrees of the oil in use: anywhere in its grade's band. */
    static Take viscosity() {
        return Take.by("viscosity of the oil in use", (site, place) -> site.word("use", "engine", "oil").flatMap(said -> band(said,
                "viscosity of the oil in use", place)));
    }

    private static Optional<Value> band(Statement said, String name, String place) {
        return OilGrade.named(said.says()).filter(g -> g.hot() >= 0).map(grade -> {
            double low = grade.leastAt100();
            double high = grade.belowAt100();
            return Site.doubtful(name, place, (low + high) / 2, (high - low) / 2 / Math.sqrt(3), "viscosity within its grade", VISCOSITY, 1,
                    List.of(said.where()));
        });
    }

    /** The least viscosity of the sheet's own grade. */
    static Take sheetViscosity() {
        return Take.by("least viscosity of the sheet's oil", (site, place) -> site.sheet("oil", "engine", "grade").flatMap(said ->
                OilGrade.named(said.says()).map(grade -> Site.exact("least viscosity of the sheet's oil", place, grade.leastAt100(), VISCOSITY, 1,
                        List.of(said.where())))));
    }

    static Optional<OilGrade> grade(Site site) {
        return site.word("use", "engine", "oil").flatMap(said -> OilGrade.named(said.says()));
    }

    /** The widest clearance that the sheet allows a bearing. */
    static Take widest(String clearance) {
        return BottomEnd.limit(clearance, false);
    }

    /** Displacement of the oil pump: as on its label, else as the sheet has it. */
    static Take displacement() {
        return new Take("oil pump displacement") {
            @Override
            String quantity() {
                return "oil pump displacement";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = Take.reading("oil pump displacement").at(site, place);
                return read.isPresent() ? read : Take.sheet("standard", "oil pump displacement").at(site, place)
                        .map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }

    /** Turns of the oil pump for one of the crankshaft: one where it sits on the crank nose. */
    static Take pumpTurns() {
        return Take.by("sheet oil pump drive", (site, place) -> {
            for (Statement s : site.sheetLines("drive")) {
                if (s.what().equals("drives") && s.says().equals("oil pump")) {
                    Optional<Statement> route = DriveLines.line(site, s.at(), "route");
                    Optional<Statement> crank = DriveLines.line(site, s.at(), "teeth crankshaft");
                    Optional<Statement> pump = DriveLines.line(site, s.at(), "teeth oil pump");
                    if (crank.isPresent() && pump.isPresent()) {
                        double turns = PartsAged.number(crank.get().says()) / PartsAged.number(pump.get().says());
                        return turns > 0 && !Double.isInfinite(turns) ? Optional.of(Site.number("sheet oil pump drive", place, turns, 2,
                                List.of(crank.get().where(), pump.get().where()))) : Optional.empty();
                    }
                    if (route.isPresent() && route.get().says().startsWith("crankshaft, oil pump")) {
                        return Optional.of(Site.number("sheet oil pump drive", place, 1, 0, List.of(route.get().where())));
                    }
                }
            }
            return Optional.empty();
        });
    }

    /** Delay of a cut. */
    static Take delay(String protection) {
        return new Take("protection " + protection) {
            @Override
            Optional<Slot> at(Site site, String place) {
                return site.word("protection", "engine", protection + " after").flatMap(s -> Site.written(name(), place, s)).map(v -> Slot.of(name(), v));
            }
        };
    }

    /** Threshold of a guard, where it is one figure. */
    static Take threshold(String protection) {
        return Take.by("protection " + protection, (site, place) -> site.word("protection", "engine", protection + " at")
                .flatMap(s -> Site.written("protection " + protection, place, s)));
    }

    /** Two readings of oil pressure at like speed and heat, the earlier first. */
    static Take likePressures() {
        return new Take("engine oil pressure") {
            @Override
            String quantity() {
                return "engine oil pressure";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> dated = new ArrayList<>();
                for (Value v : site.store.of("engine oil pressure")) {
                    if (v.of().equals("engine oil pressure") && v.plain() && v.asides().containsKey("date")) {
                        dated.add(v);
                    }
                }
                dated.sort((a, b) -> a.asides().get("date").compareTo(b.asides().get("date")));
                for (int i = dated.size() - 1; i > 0; i--) {
                    Value now = dated.get(i);
                    for (int j = i - 1; j >= 0; j--) {
                        Value before = dated.get(j);
                        if (!before.asides().get("date").equals(now.asides().get("date")) && before.at().equals(now.at())
                                && same(before, now, "speed") && same(before, now, "oil temperature")) {
                            return Optional.of(new Slot(name(), List.of(before, now), Slot.Reduce.MEAN));
                        }
                    }
                }
                return Optional.empty();
            }
        };
    }

    private static boolean same(Value one, Value other, String key) {
        return one.asides().getOrDefault(key, "").equals(other.asides().getOrDefault(key, ""));
    }

    /** Leak of all main and big-end bearings against the sheet's widest: the mean of the cubes of their shares. */
    static Take leak() {
        return new Take("leak of the bearings") {
            @Override
            String quantity() {
                return "main bearing clearance";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> shares = new ArrayList<>();
                for (String clearance : List.of("main bearing clearance", "big-end bearing clearance")) {
                    Optional<Double> widest = most(site, clearance);
                    Optional<Slot> all = Take.every(clearance).at(site, "engine");
                    if (widest.isEmpty() || all.isEmpty()) {
                        return Optional.empty();
                    }
                    for (Value v : all.get().values()) {
                        shares.add(share(v, widest.get()));
                    }
                }
                return Optional.of(new Slot(name(), shares, Slot.Reduce.MEAN));
            }
        };
    }

    private static Value share(Value clearance, double widest) {
        Value scaled = Scaled.by(clearance, 1 / widest, "share of the widest clearance", clearance.at());
        return new Value(scaled.of(), scaled.kind(), scaled.at(), scaled.low().map(Oils::number), scaled.plain() ? scaled.low().map(Oils::number)
                : scaled.high().map(Oils::number), Units.si(Dimension.NUMBER), 2, "", scaled.usual(), "", scaled.told(), scaled.asides(),
                scaled.places());
    }

    private static Estimate number(Estimate end) {
        return new Estimate(end.value(), Dimension.NUMBER, end.doubt());
    }

    private static Optional<Double> most(Site site, String quantity) {
        for (LimitLine line : site.build.sheet().limits()) {
            if (line.quantity().equals(quantity) && line.most().isPresent() && line.times().isEmpty()) {
                return Optional.of(line.most().get().low());
            }
        }
        return Optional.empty();
    }

    /** The sheet's least pressure at idle. */
    static Take idlePressure() {
        return Take.by("sheet limits oil pressure for speed", (site, place) -> {
            for (LimitLine line : site.build.sheet().limits()) {
                if (line.quantity().equals("oil pressure for speed") && "idle".equals(line.asides().get("speed")) && line.least().isPresent()) {
                    var w = line.least().get();
                    return Optional.of(Site.exact("sheet limits oil pressure for speed", place, w.low(), w.unit(), w.figures(),
                            List.of(line.line())));
                }
            }
            return Optional.empty();
        });
    }
}
