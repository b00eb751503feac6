package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.every;
import static leadlamp.derive.Take.greatest;
import static leadlamp.derive.Take.least;
import static leadlamp.derive.Take.mean;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.sheet;
import static leadlamp.derive.Take.use;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.Bearings;
import leadlamp.calc.OilGrade;
import leadlamp.calc.Oil;
import leadlamp.calc.Rounds;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Units;
import leadlamp.record.Place;
import leadlamp.record.Statement;

/** Derived values of oil pump, oil, filling, turbocharger feed, plugs and dirt. */
final class Lubrication {
    private Lubrication() {
    }

    static Derived entry(String name) {
        return switch (name) {
            case "oil pump rotor end float from sizes" -> value(name).from(reading("oil pump body depth"), reading("oil pump rotor thickness"),
                    reading("gasket thickness").optional(), reading("oil pump cover wear").optional())
                    .by(v -> Oil.pumpEndFloat(v.get("oil pump body depth"), v.get("gasket thickness", 0), v.get("oil pump cover wear", 0),
                            v.get("oil pump rotor thickness")))
                    .sum("body {oil pump body depth}[ + gasket {gasket thickness}][ + wear of the cover {oil pump cover wear}] - rotor "
                            + "{oil pump rotor thickness}");
            case "oil pump speed" -> value(name).from(use("rev limit"), Oils.pumpTurns())
                    .by(v -> Oil.drivenSpeed(v.get("use rev limit"), v.get("sheet oil pump drive"), 1))
                    .sum("{use rev limit} x {sheet oil pump drive}").figures(0);
            case "oil pump drive torque" -> value(name).from(opening(), Oils.displacement())
                    .by(v -> Oil.driveTorque(v.get("relief valve opening pressure"), v.get("oil pump displacement")))
                    .sum("{relief valve opening pressure} x {oil pump displacement} / (2 x pi)").figures(2);
            case "relief pressure from spring" -> value(name).from(reading("relief spring load"), reading("relief valve diameter"))
                    .by(v -> Oil.reliefPressure(v.get("relief spring load"), v.get("relief valve diameter")))
                    .sum("{relief spring load} / (pi/4 x {relief valve diameter} squared)").figures(2);
            case "pick-up gap" -> value(name).from(reading("sump depth from rail"), reading("pick-up depth from rail"),
                    reading("sump gasket thickness").optional())
                    .by(v -> Oil.pickUpGap(v.get("sump depth from rail"), v.get("sump gasket thickness", 0), v.get("pick-up depth from rail")))
                    .sum("sump {sump depth from rail}[ + gasket {sump gasket thickness}] - pick-up {pick-up depth from rail}");
            case "pick-up gap for full flow" -> value(name).from(reading("pick-up pipe bore"), reading("pick-up mouth diameter"))
                    .by(v -> Oil.fullFlowGap(v.get("pick-up pipe bore"), v.get("pick-up mouth diameter")))
                    .sum("{pick-up pipe bore} squared / (4 x {pick-up mouth diameter})");
            case "pick-up free area" -> value(name).from(reading("pick-up screen area"), reading("pick-up screen open share"),
                    reading("pick-up screen blocked share"))
                    .by(v -> Oil.freeArea(v.get("pick-up screen area"), v.get("pick-up screen open share"), v.get("pick-up screen blocked share")))
                    .sum("{pick-up screen area} x {pick-up screen open share} x (100 % - {pick-up screen blocked share})").figures(0);
            case "oil film number" -> value(name).from(Oils.viscosity(), Oils.sheetViscosity(), greatest("plain bearing clearance"), widestOfKind())
                    .by(v -> Bearings.filmRatio(v.get("viscosity of the oil in use"), v.get("least viscosity of the sheet's oil"),
                            v.get("plain bearing clearance"), v.get("widest clearance of the sheet")))
                    .sum("({viscosity of the oil in use} / sheet {least viscosity of the sheet's oil}) x (sheet's widest {widest clearance of the "
                            + "sheet} / {plain bearing clearance}) squared").figures(2);
            case "oil pressure for speed" -> value(name).from(reading("engine oil pressure")).forEach("engine oil pressure")
                    .by(v -> v.get("engine oil pressure")).sum((v, r) -> "read " + v.show("engine oil pressure")
                            + (v.aside("engine oil pressure", "speed").isEmpty() ? "" : " at " + v.aside("engine oil pressure", "speed")));
            case "oil pressure trend" -> value(name).from(Oils.likePressures())
                    .by(v -> v.all("engine oil pressure")[0] - v.all("engine oil pressure")[1])
                    .sum((v, r) -> "earlier " + v.show(v.all("engine oil pressure")[0], "engine oil pressure") + " - later "
                            + v.show(v.all("engine oil pressure")[1], "engine oil pressure"));
            case "oil cut turns" -> value(name).from(Oils.delay("low oil pressure cut"), use("rev limit"))
                    .by(v -> Oil.turnsInTime(v.get("use rev limit"), v.get("protection low oil pressure cut")))
                    .sum("{use rev limit} / 60 x {protection low oil pressure cut}").figures(0);
            case "oil surface rise" -> value(name).from(reading("sump width"), use("side acceleration"))
                    .by(v -> Oil.surfaceRise(v.get("sump width"), v.get("use side acceleration")))
                    .sum((v, r) -> "half of " + v.show("sump width") + " x " + Figures.plain(v.get("use side acceleration") / Oil.STANDARD_GRAVITY, 2) + " of gravity").figures(0);
            case "oil left over pick-up" -> value(name).from(reading("sump oil depth"), reading("pick-up gap to sump floor").optional(),
                    reading("sump width"), reading("pick-up distance from sump wall"), use("side acceleration"))
                    .by(v -> Oil.overPickUp(v.get("sump oil depth") - v.get("pick-up gap to sump floor", 0),
                            -Math.abs(v.get("sump width") / 2 - v.get("pick-up distance from sump wall")), v.get("use side acceleration")))
                    .sum((v, r) -> Template.fill("depth {sump oil depth}[ - pick-up gap {pick-up gap to sump floor}] - pick-up from the middle ", v)
                            + v.show(Math.abs(v.get("sump width") / 2 - v.get("pick-up distance from sump wall")), "sump width") + " x "
                            + Figures.plain(v.get("use side acceleration") / Oil.STANDARD_GRAVITY, 2) + " of gravity").figures(0);
            case "tray gap at speed" -> value(name).from(reading("windage tray gap"), reading("crankshaft end float"))
                    .by(v -> Oil.roomAfterFloat(v.get("windage tray gap"), v.get("crankshaft end float"), 0, 0))
                    .sum("{windage tray gap} - float {crankshaft end float}");
            case "oil fill expected" -> value(name).from(sheet("oil", "volume"), reading("oil filter volume").optional(),
                    sheet("oil", "filter volume").optional(), reading("oil cooler volume").optional(), lineVolumes().optional())
                    .by(v -> v.get("sheet oil volume") + (v.has("oil filter volume") && v.has("sheet oil filter volume")
                            ? v.get("oil filter volume") - v.get("sheet oil filter volume") : 0) + v.get("oil cooler volume", 0)
                            + v.get("oil line volume", 0))
                    .sum("{sheet oil volume}[ + filter {oil filter volume} - sheet's filter {sheet oil filter volume}][ + cooler "
                            + "{oil cooler volume}][ + lines {oil line volume}]").figures(0);
            case "oil fill time" -> value(name).from(reading("oil fill expected"), Oils.displacement(), reading("engine cranking speed"),
                    Oils.pumpTurns(), Round.figure("filling of the pump", Rounds.PUMP_FILLING))
                    .by(v -> Oil.fillTime(v.get("oil fill expected"), Oil.flowOfPump(v.get("oil pump displacement"),
                            v.get("engine cranking speed") * v.get("sheet oil pump drive"), v.get("filling of the pump"))))
                    .sum("{oil fill expected} / ({oil pump displacement} x {engine cranking speed} / 60 x {sheet oil pump drive} x {filling of the pump})")
                    .figures(0);
            case "idle pressure foretold" -> value(name).from(Oils.idlePressure(), Oils.viscosity(), Oils.sheetViscosity(), Oils.leak(),
                    bigEnds())
                    .by(v -> Oil.idleForetold(v.get("sheet limits oil pressure for speed"), v.get("viscosity of the oil in use")
                            / v.get("least viscosity of the sheet's oil"), cubes(v.all("leak of the bearings"))))
                    .sum((v, r) -> Template.fill("{sheet limits oil pressure for speed} x {viscosity of the oil in use} / {least viscosity of the sheet's oil} / ", v)
                            + Figures.plain(cubes(v.all("leak of the bearings")), 3) + " (mean of the cubes of clearance over the sheet's widest)").figures(1);
            case "oil line speed" -> value(name).from(Oils.displacement(), use("rev limit"), Oils.pumpTurns(), reading("oil line bore"),
                    Round.figure("filling of the pump", Rounds.PUMP_FILLING))
                    .by(v -> Oil.lineSpeed(Oil.flowOfPump(v.get("oil pump displacement"), v.get("use rev limit") * v.get("sheet oil pump drive"),
                            v.get("filling of the pump")), v.get("oil line bore")))
                    .sum("4 x {oil pump displacement} x {use rev limit} / 60 x {sheet oil pump drive} x {filling of the pump} / (pi x {oil line bore} "
                            + "squared)").figures(1);
            case "scavenge ratio" -> value(name).from(reading("oil pump scavenge displacement"), reading("oil pump displacement"))
                    .by(v -> Oil.scavengeRatio(v.get("oil pump scavenge displacement"), v.get("oil pump displacement")))
                    .sum("{oil pump scavenge displacement} / {oil pump displacement}").figures(2);
            case "oil viscosity at coldest start" -> value(name).from(use("coldest start"), thickest())
                    .by(v -> v.get("thickest at coldest start") * 1e6).sum("the thickest that the grade may be at {use coldest start}").figures(0);
            case "open feed share" -> value(name).from(reading("balance shaft feed hole"), leakage())
                    .by(v -> Oil.bearingLeakShare(v.get("balance shaft feed hole"), v.get("area that the mains leak through")))
                    .sum("pi/4 x {balance shaft feed hole} squared / {area that the mains leak through}").figures(0);
            case "jet flow share" -> value(name).from(hole(), sheetHole())
                    .by(v -> Oil.jetShare(v.get("piston jet hole diameter"), v.get("sheet jets hole")))
                    .sum("({piston jet hole diameter} / {sheet jets hole}) squared").figures(0);
            case "gallery plug inner end" -> value(name).from(reading("gallery plug depth"), reading("gallery plug length"),
                    reading("gallery plug drilling distance"))
                    .by(v -> Oil.plugInnerEnd(v.get("gallery plug depth"), v.get("gallery plug length"), v.get("gallery plug drilling distance")))
                    .sum("depth {gallery plug depth} + length {gallery plug length} - drilling {gallery plug drilling distance}");
            case "crankshaft plug gap" -> value(name).from(Take.lowest("connecting rod side clearance"), reading("crankshaft plug stand"))
                    .by(v -> v.get("connecting rod side clearance") - v.get("crankshaft plug stand"))
                    .sum("{connecting rod side clearance} - stand {crankshaft plug stand}");
            case "particle share of clearance" -> value(name).from(greatest("cloth largest particle"), least("plain bearing clearance"))
                    .by(v -> Bearings.shareOfClearance(v.get("cloth largest particle"), v.get("plain bearing clearance")))
                    .sum("{cloth largest particle} / half of {plain bearing clearance}").figures(0);
            case "dirt unexplained" -> value(name).from(Take.total("engine piece missing"), Take.total("engine piece found"))
                    .by(v -> v.get("engine piece missing") - v.get("engine piece found"))
                    .sum("missing {engine piece missing} - found {engine piece found}");
            case "plugs unaccounted" -> value(name).from(listedPlugs(), reading("gallery plug count"))
                    .by(v -> v.get("sheet plugs") - v.get("gallery plug count")).sum("listed {sheet plugs} - fitted {gallery plug count}").figures(0);
            case "turbo feed flow" -> value(name).from(reading("turbo oil feed restrictor bore"), Take.highest("engine oil pressure"),
                    Oils.density(), Round.figure("discharge of the hole", Rounds.DRILLED_HOLE))
                    .by(v -> Oil.orificeFlow(v.get("discharge of the hole"), v.get("turbo oil feed restrictor bore"), v.get("engine oil pressure"),
                            v.get("density of oil")))
                    .sum("{discharge of the hole} x pi/4 x {turbo oil feed restrictor bore} squared x root of (2 x {engine oil pressure} / {density of "
                            + "oil})").figures(2);
            case "turbo drain head ratio" -> value(name).from(reading("turbo oil drain height"), reading("engine crankcase pressure"), Oils.density())
                    .by(v -> Oil.drainHead(v.get("density of oil"), v.get("turbo oil drain height"), v.get("engine crankcase pressure")))
                    .sum("{density of oil} x g x {turbo oil drain height} / {engine crankcase pressure}").figures(2);
            case "turbo drain slope" -> value(name).from(reading("turbo oil drain fall"), reading("turbo oil drain length"))
                    .by(v -> Oil.slope(v.get("turbo oil drain fall"), v.get("turbo oil drain length")))
                    .sum("arcsin({turbo oil drain fall} / {turbo oil drain length})").figures(0);
            case "dew point margin" -> value(name).from(reading("workshop air temperature"), reading("workshop air humidity"),
                    least("engine metal temperature"))
                    .by(v -> v.get("engine metal temperature") - Oil.dewPoint(v.get("workshop air temperature"), v.get("workshop air humidity")))
                    .sum((v, r) -> "metal " + v.show("engine metal temperature") + " - dew point " + v.show(Oil.dewPoint(
                            v.get("workshop air temperature"), v.get("workshop air humidity")), "workshop air temperature")).figures(0);
            case "storage oil share" -> value(name).from(storageOil(), reading("combustion chamber volume"))
                    .by(v -> Oil.storageShare(v.get("protection cylinder oil volume"), v.get("combustion chamber volume")))
                    .sum("{protection cylinder oil volume} / {combustion chamber volume}").figures(0);
            case "jacket silt share" -> value(name).from(greatest("water jacket silt depth"), reading("block jacket height"))
                    .by(v -> Oil.storageShare(v.get("water jacket silt depth"), v.get("block jacket height")))
                    .sum("{water jacket silt depth} / {block jacket height}").figures(0);
            default -> null;
        };
    }

    /** Mean of the cubes: oil leaks with the cube of a gap. */
    private static double cubes(double[] shares) {
        double sum = 0;
        for (double share : shares) {
            sum += Math.pow(share, Rounds.GAP_CUBE.usual());
        }
        return sum / shares.length;
    }

    /** Opening pressure as read, as the spring gives it, else the sheet's. */
    private static Take opening() {
        return new Take("relief valve opening pressure") {
            @Override
            String quantity() {
                return "relief valve opening pressure";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = reading("relief valve opening pressure").at(site, place);
                if (read.isEmpty()) {
                    read = reading("relief pressure from spring").at(site, place);
                }
                if (read.isEmpty()) {
                    read = Take.sheetStandard("relief valve opening pressure").at(site, place);
                }
                return read.map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }

    private static Take widestOfKind() {
        return by("widest clearance of the sheet", (site, place) -> {
            String quantity = place.startsWith("main ") ? "main bearing clearance" : place.startsWith("big end ") ? "big-end bearing clearance"
                    : "cam bearing clearance";
            return BottomEnd.limit(quantity, false).at(site, place).map(slot -> slot.values().get(0));
        });
    }

    /** What the sum of all bearings wants besides the mains, so that it is worked out after them. */
    private static Take bigEnds() {
        return every("big-end bearing clearance").renamed("big ends").optional();
    }

    private static Take lineVolumes() {
        return new Take("oil line volume") {
            @Override
            String quantity() {
                return "oil line volume";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> lines = new ArrayList<>();
                for (Value v : site.store.of("oil line volume")) {
                    lines.add(v);
                }
                return lines.isEmpty() ? Optional.empty() : Optional.of(new Slot(name(), lines, Slot.Reduce.SUM));
            }
        };
    }

    /** The thickest that the grade may be on the coldest start. */
    private static Take thickest() {
        return by("thickest at coldest start", (site, place) -> {
            Optional<OilGrade> grade = Oils.grade(site).filter(g -> g.forWinter() && g.hot() >= 0);
            Optional<Statement> cold = site.word("use", "engine", "coldest start").filter(s -> s.value().isPresent());
            if (grade.isEmpty() || cold.isEmpty()) {
                return Optional.empty();
            }
            double most = grade.get().mostAt(cold.get().value().get().low(), Rounds.HOT_OIL_DENSITY.usual());
            return Optional.of(Site.exact("thickest at coldest start", place, most, Oils.VISCOSITY, 0, List.of(cold.get().where())));
        });
    }

    /** Area round all main journals that oil leaks through. */
    private static Take leakage() {
        return new Take("area that the mains leak through") {
            @Override
            String quantity() {
                return "main bearing clearance";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> clearances = every("main bearing clearance").at(site, Place.ENGINE);
                if (clearances.isEmpty()) {
                    return Optional.empty();
                }
                List<Value> areas = new ArrayList<>();
                for (Value clearance : clearances.get().values()) {
                    Optional<Slot> journal = mean("main journal diameter").at(site, clearance.at());
                    if (journal.isEmpty()) {
                        return Optional.empty();
                    }
                    double diameter = 0;
                    for (Value v : journal.get().values()) {
                        diameter += v.low().or(v::high).orElseThrow().value() / journal.get().values().size();
                    }
                    Value area = Scaled.by(clearance, Math.PI * diameter, name(), clearance.at());
                    areas.add(new Value(name(), name(), clearance.at(), area.low(), area.high(), Units.named("mm2").orElseThrow(), 1, "", false, "",
                            area.told(), area.asides(), area.places()));
                }
                return Optional.of(new Slot(name(), areas, Slot.Reduce.SUM));
            }
        };
    }

    private static Take hole() {
        return new Take("piston jet hole diameter") {
            @Override
            String quantity() {
                return "piston jet hole diameter";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> jet = reading("piston jet hole diameter").at(site, place);
                if (jet.isEmpty()) {
                    jet = reading("restrictor hole").at(site, place);
                }
                if (jet.isEmpty() && place.equals("head oil restrictor")) {
                    jet = reading("head oil restrictor hole").at(site, Place.ENGINE);
                }
                return jet.map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }

    private static Take sheetHole() {
        return by("sheet jets hole", (site, place) -> {
            for (Statement s : site.sheetLines("jets")) {
                if (s.what().equals("hole") && (s.at().equals(place) || Character.isDigit(place.charAt(0)) && s.at().startsWith("piston jet"))) {
                    return Site.written("sheet jets hole", place, s);
                }
            }
            return Optional.empty();
        });
    }

    /** Gallery plugs that the sheet lists. */
    private static Take listedPlugs() {
        return by("sheet plugs", (site, place) -> site.places("each gallery plug").map(plugs -> Site.exact("sheet plugs", place, plugs.size(),
                Units.si(Dimension.COUNT), 0, List.of())));
    }

    private static Take storageOil() {
        return by("protection cylinder oil volume", (site, place) -> site.word("protection", "engine", "preserving cylinder oil volume")
                .flatMap(s -> Site.written("protection cylinder oil volume", place, s)));
    }
}
