package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.greatest;
import static leadlamp.derive.Take.mean;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.sheet;
import static leadlamp.derive.Take.use;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.Air;
import leadlamp.calc.CamTiming;
import leadlamp.calc.Rounds;
import leadlamp.calc.Sets;
import leadlamp.calc.Trigger;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.record.Statement;

/** Derived values of trigger disc, sensors, wiring and what guards the engine. */
final class Sensing {
    private static final Unit SPEED = new Unit("m/s", Dimension.LINEAR_SPEED, 1, 0);

    private Sensing() {
    }

    static Derived entry(String name) {
        return switch (name) {
            case "trigger free angle" -> value(name).from(play("amount"), play("at radius"))
                    .by(v -> v.get("trigger disc play amount") == 0 ? 0
                            : Trigger.freeAngle(v.get("trigger disc play amount"), v.get("trigger disc play at radius")))
                    .sum((v, r) -> v.get("trigger disc play amount") == 0 ? "0 mm (play was looked for, and not seen)" : v.show("trigger disc play amount")
                            + " / " + v.show("trigger disc play at radius") + ", as an angle").figures(2);
            case "trigger free share" -> value(name).from(reading("trigger free angle"), teeth(), missing())
                    .by(v -> Trigger.inTeeth(v.get("trigger free angle"), Trigger.toothPitch((int) Math.round(v.get("trigger disc tooth count")),
                            (int) Math.round(v.get("trigger disc missing teeth")))))
                    .sum("{trigger free angle} / (360 crank deg / ({trigger disc tooth count} + {trigger disc missing teeth}))").figures(0);
            case "key side clearance" -> value(name).from(reading("trigger keyway width"), reading("trigger key width"))
                    .by(v -> v.get("trigger keyway width") - v.get("trigger key width")).sum("slot {trigger keyway width} - key {trigger key width}");
            case "crank sensor least gap" -> value(name).from(reading("crank sensor gap"), reading("trigger disc runout"),
                    Take.highest("main bearing clearance"))
                    .by(v -> Trigger.leastGap(v.get("crank sensor gap"), v.get("trigger disc runout"), v.get("main bearing clearance")))
                    .sum("{crank sensor gap} - half of runout {trigger disc runout} - half of clearance {main bearing clearance}").finer();
            case "crank sensor greatest gap" -> value(name).from(reading("crank sensor gap"), reading("trigger disc runout"),
                    Take.highest("main bearing clearance"))
                    .by(v -> Trigger.greatestGap(v.get("crank sensor gap"), v.get("trigger disc runout"), v.get("main bearing clearance")))
                    .sum("{crank sensor gap} + half of runout {trigger disc runout} + half of clearance {main bearing clearance}").finer();
            case "crank sensor gap expected" -> value(name).from(found("crank sensor gap"), found("crank sensor tip length"),
                    reading("crank sensor tip length"))
                    .by(v -> Trigger.gapWithNewTip(v.get("crank sensor gap as found"), v.get("crank sensor tip length as found"),
                            v.get("crank sensor tip length")))
                    .sum("{crank sensor gap as found} + old tip {crank sensor tip length as found} - new tip {crank sensor tip length}");
            case "trigger angle error" -> value(name).from(reading("trigger disc angle to top dead centre"),
                    sheet("trigger", "angle to top dead centre"), teeth(), missing())
                    .by(v -> Math.abs(Trigger.inTeeth(v.get("trigger disc angle to top dead centre") - v.get("sheet trigger angle to top dead centre"),
                            Trigger.toothPitch((int) Math.round(v.get("trigger disc tooth count")),
                                    (int) Math.round(v.get("trigger disc missing teeth"))))))
                    .sum((v, r) -> "(" + Shapes.apart(v, v.get("trigger disc angle to top dead centre"), "", v.get("sheet trigger angle to top dead centre"), "sheet ",
                            "trigger disc angle to top dead centre") + Template.fill(") / (360 crank deg / ({trigger disc tooth count} + "
                                    + "{trigger disc missing teeth}))", v)).figures(2);
            case "cam edge margin" -> value(name).from(reading("cam sensor edge angle"), sheet("trigger", "cam window"), middleOfWindow(),
                    reading("cam gear setting").optional())
                    .by(v -> CamTiming.edgeMargin(v.get("cam sensor edge angle"), v.get("middle of the cam window"), v.get("sheet trigger cam window"),
                            Math.abs(v.get("cam gear setting", 0))))
                    .sum("half of {sheet trigger cam window} - ({cam sensor edge angle} - middle {middle of the cam window})[ - gear moved "
                            + "{cam gear setting}]").figures(1);
            case "sensor resistance corrected" -> value(name).from(reading("crank sensor resistance"), reading("crank sensor temperature"))
                    .by(v -> Trigger.resistanceAt20(v.get("crank sensor resistance"), v.get("crank sensor temperature")))
                    .sum("{crank sensor resistance} / (1 + 0.00393 x ({crank sensor temperature} - 20 °C))").figures(0);
            case "sensor spread cold" -> value(name).from(cold()).by(v -> Sets.spread(v.all("readings of the sensors, cold")))
                    .sum((v, r) -> "highest " + v.show(Sets.greatest(v.all("readings of the sensors, cold")), "readings of the sensors, cold")
                            + " - lowest " + v.show(Sets.least(v.all("readings of the sensors, cold")), "readings of the sensors, cold")).figures(0);
            case "second knock tone" -> value(name).from(mean("cylinder bore"), Round.figure("sound speed in burnt gas", Rounds.BURNT_GAS_SOUND, SPEED, 0))
                    .by(v -> Trigger.secondKnockTone(v.get("cylinder bore"), v.get("sound speed in burnt gas")))
                    .sum("3.054 x {sound speed in burnt gas} / (pi x {cylinder bore})").figures(0);
            case "knock tone" -> value(name).from(mean("cylinder bore"), Round.figure("sound speed in burnt gas", Rounds.BURNT_GAS_SOUND, SPEED, 0))
                    .by(v -> Trigger.knockTone(v.get("cylinder bore"), v.get("sound speed in burnt gas")))
                    .sum("1.841 x {sound speed in burnt gas} / (pi x {cylinder bore})").figures(0);
            case "earth drop error" -> value(name).from(reading("sensor earth voltage drop"), reading("oil pressure sensor span voltage"),
                    fullScale())
                    .by(v -> Trigger.earthError(v.get("sensor earth voltage drop"), v.get("oil pressure sensor span voltage"),
                            v.get("oil pressure sensor full scale")))
                    .sum("{sensor earth voltage drop} / {oil pressure sensor span voltage} x {oil pressure sensor full scale}").figures(2);
            case "sensor rest error" -> value(name).from(atRest(), trueAtRest())
                    .by(v -> Math.abs(v.get("reading at rest") - v.get("true at rest"))).sum("reads {reading at rest}, true {true at rest}").figures(2);
            case "sensor heat margin" -> value(name).from(reading("crank sensor temperature rating"), hottestSensor(), use("hottest day").optional(),
                    reading("workshop air temperature").optional())
                    .by(v -> v.get("crank sensor temperature rating") - (v.has("use hottest day") && v.has("workshop air temperature")
                            ? Air.heatOnHottestDay(v.get("crank sensor temperature"), v.get("workshop air temperature"), v.get("use hottest day"))
                            : v.get("crank sensor temperature")))
                    .sum("rating {crank sensor temperature rating} - {crank sensor temperature}[ - (hottest day {use hottest day} - air when read "
                            + "{workshop air temperature})]").figures(0);
            case "over-boost cut over target" -> value(name).from(Oils.threshold("over-boost cut"), use("boost"))
                    .by(v -> v.get("protection over-boost cut") - v.get("use boost"))
                    .sum("cut {protection over-boost cut} - target {use boost}").figures(2);
            case "fuel pressure cut share" -> value(name).from(Oils.threshold("fuel pressure cut"), basePressure())
                    .by(v -> Sets.ratio(v.get("protection fuel pressure cut"), v.get("engine fuel pressure")))
                    .sum("cut {protection fuel pressure cut} / base {engine fuel pressure}").figures(0);
            case "damper shift angle" -> value(name).from(moved("amount"), moved("at radius"))
                    .by(v -> CamTiming.arc(v.get("moved amount"), v.get("moved at radius")))
                    .sum("{moved amount} / {moved at radius}, as an angle").figures(1);
            default -> null;
        };
    }

    /** What was felt of a disc's play, and how far out; both are nought where it was looked for and not seen. */
    private static Take play(String what) {
        String name = "trigger disc play " + what;
        return by(name, (site, place) -> {
            Optional<Value> felt = site.word("trigger disc", place, "play " + what).flatMap(s -> Site.written(name, place, s));
            return felt.isPresent() ? felt : site.notSeen("trigger disc", place, "play")
                    .map(s -> Site.exact(name, place, 0, Units.usual(Dimension.LENGTH), 1, List.of(s.where())));
        });
    }

    /** Teeth of the disc: counted, else the sheet's, in which the missing ones are counted as well. */
    private static Take teeth() {
        return by("trigger disc tooth count", (site, place) -> {
            Optional<Value> counted = site.store.at("trigger disc tooth count", "engine");
            if (counted.isPresent()) {
                return counted;
            }
            Optional<Statement> all = site.sheet("trigger", "engine", "disc teeth");
            Optional<Statement> gone = site.sheet("trigger", "engine", "missing");
            if (all.isEmpty()) {
                return Optional.empty();
            }
            double present = PartsAged.number(all.get().says()) - gone.map(s -> PartsAged.number(s.says())).orElse(0.0);
            return present >= 1 ? Optional.of(Site.exact("trigger disc tooth count", place, present, Units.si(Dimension.COUNT), 0,
                    List.of(all.get().where()))) : Optional.empty();
        });
    }

    private static Take missing() {
        return by("trigger disc missing teeth", (site, place) -> {
            Optional<Value> counted = site.store.at("trigger disc missing teeth", "engine");
            if (counted.isPresent()) {
                return counted;
            }
            Optional<Statement> gone = site.sheet("trigger", "engine", "missing");
            double count = gone.map(s -> PartsAged.number(s.says())).orElse(0.0);
            return Double.isNaN(count) ? Optional.empty() : Optional.of(Site.exact("trigger disc missing teeth", place, count,
                    Units.si(Dimension.COUNT), 0, gone.map(s -> List.of(s.where())).orElse(List.of())));
        });
    }

    /** A reading of what came out. */
    private static Take found(String quantity) {
        return by(quantity + " as found", (site, place) -> site.store.at(quantity + " as found", place));
    }

    private static Take middleOfWindow() {
        return by("middle of the cam window", (site, place) -> {
            for (Statement s : site.sheetLines("trigger")) {
                if (s.what().equals("cam window middle")) {
                    return Site.written("middle of the cam window", place, s);
                }
            }
            return Optional.empty();
        });
    }

    private static Take cold() {
        return new Take("readings of the sensors, cold") {
            @Override
            String quantity() {
                return "coolant temperature sensor reading";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> read = new ArrayList<>();
                for (String sensor : List.of("coolant temperature sensor reading", "oil temperature sensor reading", "air temperature sensor reading")) {
                    for (Value v : site.store.of(sensor)) {
                        String state = v.asides().getOrDefault("state", "cold");
                        if (v.of().equals(sensor) && state.equals("cold")) {
                            read.add(v);
                        }
                    }
                }
                return read.size() < 2 ? Optional.empty() : Optional.of(new Slot(name(), read, Slot.Reduce.MEAN));
            }
        };
    }

    private static Take fullScale() {
        return by("oil pressure sensor full scale", (site, place) -> {
            for (Value v : site.store.of("oil pressure sensor full scale")) {
                return Optional.of(v);
            }
            return site.sheet("sensors", place, "full scale").flatMap(s -> Site.written("oil pressure sensor full scale", place, s));
        });
    }

    private static Take atRest() {
        return by("reading at rest", (site, place) -> {
            for (String sensor : List.of("oil pressure sensor reading", "fuel pressure sensor reading", "manifold pressure sensor reading")) {
                Optional<Value> v = site.store.at(sensor, place);
                if (v.isPresent() && v.get().of().equals(sensor)) {
                    return v;
                }
            }
            return Optional.empty();
        });
    }

    /** What a pressure sensor should read at rest: nothing, and one of absolute pressure the air's own. */
    private static Take trueAtRest() {
        return by("true at rest", (site, place) -> {
            Unit bar = Units.named("bar", Dimension.PRESSURE).orElseThrow();
            if (!place.startsWith("manifold")) {
                return Optional.of(Site.exact("true at rest", place, 0, bar, 2, List.of()));
            }
            Optional<Value> air = site.store.at("workshop air pressure", "engine");
            return air.isPresent() ? air : Cooling.airPressure().at(site, place).map(slot -> slot.values().get(0));
        });
    }

    private static Take hottestSensor() {
        return by("crank sensor temperature", (site, place) -> {
            Optional<Value> after = site.store.at("crank sensor temperature after stop", place);
            return after.isPresent() ? after : site.store.at("crank sensor temperature", place);
        });
    }

    private static Take basePressure() {
        return new Take("engine fuel pressure") {
            @Override
            String quantity() {
                return "engine fuel pressure";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                for (Value v : site.store.of("engine fuel pressure")) {
                    if (v.of().equals("engine fuel pressure") && (v.at().equals("base") || v.at().equals("engine"))) {
                        return Optional.of(Slot.of(name(), v));
                    }
                }
                return Optional.empty();
            }
        };
    }

    /** How far a damper's ring has moved, as seen. */
    private static Take moved(String what) {
        return by("moved " + what, (site, place) -> {
            for (String part : List.of("crank damper", "crank pulley")) {
                Optional<Statement> said = site.word(part, "engine", "moved " + what);
                if (said.isPresent()) {
                    return Site.written("moved " + what, place, said.get());
                }
            }
            return Optional.empty();
        });
    }
}
