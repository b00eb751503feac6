package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.greatest;
import static leadlamp.derive.Take.known;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.sheet;
import static leadlamp.derive.Take.use;

import java.util.List;
import java.util.Optional;
import leadlamp.calc.Air;
import leadlamp.calc.Fuel;
import leadlamp.calc.Growth;
import leadlamp.calc.Oil;
import leadlamp.calc.Rounds;
import leadlamp.calc.Sets;
import leadlamp.calc.WorkingHeat;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Units;
import leadlamp.record.Statement;

/** Derived values of air, boost, exhaust and the crankcase's breath. */
final class Breathing {
    private Breathing() {
    }

    static Derived entry(String name) {
        return switch (name) {
            case "intake leak share" -> value(name).from(reading("intake manifold leak opening"), reading("intake manifold pressure"),
                    Cooling.airPressure(), Round.figure("discharge of the hole", Rounds.DRILLED_HOLE), idleAir())
                    .by(v -> Air.throughHole(v.get("discharge of the hole"), v.get("intake manifold leak opening"), v.get("air pressure"),
                            v.get("intake manifold pressure"), WorkingHeat.WORKSHOP) / v.get("air at idle"))
                    .sum((v, r) -> v.show(r * v.get("air at idle"), "air at idle") + Template.fill(" (through {intake manifold leak opening} into "
                            + "{intake manifold pressure}) / air at idle {air at idle}", v)).figures(1);
            case "boost leak opening" -> value(name).from(reading("boost path pressure fall"), reading("boost path volume"),
                    reading("boost path test pressure"), BottomEnd.aside("boost path pressure fall", "for"), Cooling.airPressure(),
                    Round.figure("discharge of the hole", Rounds.DRILLED_HOLE))
                    .by(v -> Air.leakArea(v.get("boost path volume"), v.get("boost path pressure fall"), v.get("for of boost path pressure fall"),
                            v.get("discharge of the hole"), v.get("air pressure") + v.get("boost path test pressure")
                                    - v.get("boost path pressure fall") / 2, v.get("air pressure"), WorkingHeat.WORKSHOP))
                    .sum("hole through which {boost path volume} falls by {boost path pressure fall} in {for of boost path pressure fall}").figures(2);
            case "turbo play at wheel" -> value(name).from(reading("turbo shaft radial play"), Take.sheetLine("turbo wheel distance").optional(),
                    Take.sheetLine("turbo gauge distance").optional())
                    .by(v -> Air.playAtWheel(v.get("turbo shaft radial play"), v.get("sheet turbo wheel distance", 1), v.get("sheet turbo gauge distance", 1)))
                    .sum("{turbo shaft radial play}[ x {sheet turbo wheel distance} / {sheet turbo gauge distance}]");
            case "wastegate ratio" -> value(name).from(use("boost"), reading("wastegate crack-open pressure"))
                    .by(v -> Sets.ratio(v.get("use boost"), v.get("wastegate crack-open pressure")))
                    .sum("{use boost} / {wastegate crack-open pressure}").figures(2);
            case "supercharger speed" -> value(name).from(reading("crank pulley diameter"), reading("supercharger pulley diameter"), use("rev limit"))
                    .by(v -> Oil.drivenSpeed(v.get("use rev limit"), v.get("crank pulley diameter"), v.get("supercharger pulley diameter")))
                    .sum("{use rev limit} x {crank pulley diameter} / {supercharger pulley diameter}").figures(0);
            case "manifold growth" -> value(name).from(reading("exhaust manifold end stud distance"), Materials.expansion("exhaust manifold"),
                    Materials.expansion("head"), Materials.rise("rise of the flange", WorkingHeat.FLANGE_RISE),
                    Materials.rise("rise of the head", WorkingHeat.HEAD_AT_FLANGE_RISE))
                    .by(v -> Growth.flangeAgainstHead(v.get("exhaust manifold end stud distance"), v.get("expansion of exhaust manifold"),
                            v.get("rise of the flange"), v.get("expansion of head"), v.get("rise of the head")))
                    .sum("{exhaust manifold end stud distance} x ({expansion of exhaust manifold} x {rise of the flange} - {expansion of head} x "
                            + "{rise of the head}) (assumed heat)").figures(2);
            case "breather gas speed" -> value(name).from(reading("engine blow-by"), reading("breather hose bore"))
                    .by(v -> Oil.lineSpeed(v.get("engine blow-by"), v.get("breather hose bore")))
                    .sum("4 x {engine blow-by} / (pi x {breather hose bore} squared)").figures(1);
            case "blow-by expected" -> value(name).from(reading("air for power"), Round.figure("share that blows by", Rounds.BLOW_BY,
                    Units.usual(Dimension.SHARE), 1))
                    .by(v -> Air.blowBy(v.get("share that blows by"), v.get("air for power"), Air.density(Air.pressureAtHeight(0), WorkingHeat.WORKSHOP)))
                    .sum((v, r) -> v.show("share that blows by") + " x " + v.show("air for power") + " / air "
                            + In.show(Air.density(Air.pressureAtHeight(0), WorkingHeat.WORKSHOP), Oils.DENSITY, 3)).figures(0);
            case "intercooler oil share" -> value(name).from(reading("intercooler oil volume"), sheet("standard", "swept volume"))
                    .by(v -> Sets.ratio(v.get("intercooler oil volume"), v.get("sheet standard swept volume")))
                    .sum("{intercooler oil volume} / {sheet standard swept volume}").figures(1);
            case "throttle open area" -> value(name).from(reading("throttle full open angle"), reading("throttle shut angle"))
                    .by(v -> Air.throttleOpen(v.get("throttle full open angle"), v.get("throttle shut angle")))
                    .sum("1 - cos {throttle full open angle} / cos {throttle shut angle}").figures(0);
            case "throttle spread" -> value(name).from(known("throttle air flow")).by(v -> Sets.spreadShare(v.all("throttle air flow")))
                    .sum((v, r) -> "(" + v.show(Sets.greatest(v.all("throttle air flow")), "throttle air flow") + " - "
                            + v.show(Sets.least(v.all("throttle air flow")), "throttle air flow") + ") / mean " + v.show("throttle air flow")).figures(0);
            case "air lost by heat" -> value(name).from(reading("workshop air temperature"), reading("intake duct air temperature"))
                    .by(v -> Air.lostByHeat(v.get("workshop air temperature"), v.get("intake duct air temperature")))
                    .sum((v, r) -> "1 - " + In.show(v.get("workshop air temperature"), Materials.KELVIN, 1) + " around / "
                            + In.show(v.get("intake duct air temperature"), Materials.KELVIN, 1) + " at the intake").figures(1);
            case "air lost by depression" -> value(name).from(reading("intake duct depression"), Cooling.airPressure())
                    .by(v -> Air.lostByDepression(v.get("intake duct depression"), v.get("air pressure")))
                    .sum("{intake duct depression} / {air pressure}").figures(1);
            case "compressor outlet heat expected" -> value(name).from(use("boost"), reading("intake duct air temperature"), Cooling.airPressure(),
                    reading("intake duct depression").optional(), Round.figure("efficiency of the compressor", Rounds.COMPRESSOR))
                    .by(v -> Air.outlet(v.get("intake duct air temperature"), Air.pressureRatio(v.get("air pressure"), v.get("use boost"),
                            v.get("intake duct depression", 0)), v.get("efficiency of the compressor"), Rounds.AIR_GAMMA.usual()))
                    .sum((v, r) -> In.show(v.get("intake duct air temperature"), Materials.KELVIN, 1) + Template.fill(" x (1 + ((({air pressure} + {use boost}) / "
                            + "({air pressure}[ - {intake duct depression}])) to the power 0.286 - 1) / {efficiency of the compressor}) - 273.15 K", v))
                    .figures(0);
            case "charge heat" -> value(name).from(reading("compressor outlet heat expected"), reading("intercooler effectiveness"),
                    reading("intake duct air temperature"))
                    .by(v -> Air.charge(v.get("compressor outlet heat expected"), v.get("intercooler effectiveness"),
                            v.get("intake duct air temperature")))
                    .sum("{compressor outlet heat expected} - {intercooler effectiveness} x ({compressor outlet heat expected} - "
                            + "{intake duct air temperature})").figures(0);
            case "air for power" -> value(name).from(use("target power"), Round.fuelUse(), Round.figure("air to fuel", Rounds.PETROL_AIR), lambda(),
                    Round.petrolDensity())
                    .by(v -> Air.forPower(v.get("use target power"), v.get("specific fuel use"), v.get("air to fuel"), v.get("use target mixture")))
                    .sum("{use target power} x {specific fuel use} x {air to fuel} x lambda {use target mixture}").figures(0);
            case "air swallowed" -> value(name).from(use("boost").optional(), sheet("standard", "swept volume"), use("rev limit"),
                    Cooling.airPressure(), Round.figure("filling", Rounds.FILLING), reading("charge heat").optional())
                    .by(v -> Air.swallowed(Air.density(v.get("air pressure") + v.get("use boost", 0), v.get("charge heat", WorkingHeat.WORKSHOP)),
                            v.get("sheet standard swept volume"), v.get("use rev limit"), v.get("filling")))
                    .sum((v, r) -> "air " + In.show(Air.density(v.get("air pressure") + v.get("use boost", 0), v.get("charge heat", WorkingHeat.WORKSHOP)),
                            Oils.DENSITY, 3) + Template.fill(" (of {air pressure}[ + {use boost}][ at {charge heat}]) x {sheet standard swept volume} x "
                                    + "{use rev limit} / 60 / 2 x {filling}", v))
                    .figures(0);
            case "push-off force" -> value(name).from(use("boost"), reading("boost hose bore"))
                    .by(v -> Fuel.pushOff(v.get("use boost"), v.get("boost hose bore")))
                    .sum("{use boost} x pi/4 x {boost hose bore} squared").figures(0);
            case "exhaust over boost" -> value(name).from(greatest("exhaust pressure before turbine"), reading("intake manifold pressure"),
                    Cooling.airPressure())
                    .by(v -> Sets.ratio(v.get("exhaust pressure before turbine") + v.get("air pressure"), v.get("intake manifold pressure")))
                    .sum("({exhaust pressure before turbine} + {air pressure}) / {intake manifold pressure}").figures(2);
            case "exhaust heat spread" -> value(name).from(known("exhaust temperature")).by(v -> Sets.spread(v.all("exhaust temperature")))
                    .sum((v, r) -> "hottest " + v.show(Sets.greatest(v.all("exhaust temperature")), "exhaust temperature") + " - coolest "
                            + v.show(Sets.least(v.all("exhaust temperature")), "exhaust temperature")).figures(0);
            case "heat at part" -> value(name).from(reading("loom temperature"), reading("workshop air temperature"), use("hottest day"))
                    .by(v -> Air.heatOnHottestDay(v.get("loom temperature"), v.get("workshop air temperature"), v.get("use hottest day")))
                    .sum("{loom temperature} + hottest day {use hottest day} - air at the reading {workshop air temperature}").figures(0);
            default -> null;
        };
    }

    /** Mixture that is wanted; that which burns all of both where nothing is said. */
    static Take lambda() {
        return by("use target mixture", (site, place) -> {
            Optional<Statement> said = site.word("use", "engine", "target mixture").filter(s -> s.value().isPresent());
            return said.isPresent() ? said.flatMap(s -> Site.written("use target mixture", place, s))
                    : Optional.of(Site.number("use target mixture", place, 1, 2, List.of()));
        });
    }

    /** Air that the engine takes in at idle. */
    private static Take idleAir() {
        return by("air at idle", (site, place) -> {
            Optional<Statement> swept = site.sheet("standard", "engine", "swept volume").filter(s -> s.value().isPresent());
            Optional<Statement> idle = site.sheet("output", "engine", "idle").filter(s -> s.value().isPresent());
            if (swept.isEmpty() || idle.isEmpty()) {
                return Optional.empty();
            }
            double air = Air.swallowed(Air.density(Air.pressureAtHeight(0), WorkingHeat.WORKSHOP), swept.get().value().get().high(),
                    idle.get().value().get().high(), Rounds.IDLE_FILLING.usual());
            return Optional.of(Site.doubtful("air at idle", place, air, air * Rounds.IDLE_FILLING.half() / Rounds.IDLE_FILLING.usual() / Math.sqrt(3),
                    "filling at idle", Units.usual(Dimension.MASS_FLOW), 1, List.of(swept.get().where(), idle.get().where())));
        });
    }
}
