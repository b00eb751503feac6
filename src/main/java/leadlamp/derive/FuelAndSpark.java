package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.every;
import static leadlamp.derive.Take.greatest;
import static leadlamp.derive.Take.mean;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.sheet;
import static leadlamp.derive.Take.use;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.Compression;
import leadlamp.calc.Fuel;
import leadlamp.calc.Rounds;
import leadlamp.calc.Sets;
import leadlamp.calc.Spark;
import leadlamp.calc.WorkingHeat;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.record.Statement;

/** Derived values of injectors, fuel pump, spark and carburettors. */
final class FuelAndSpark {
    private static final Unit KILOVOLT = Units.named("kV").orElseThrow();

    private FuelAndSpark() {
    }

    /** Air for each litre of petrol over that for each litre of the blend, each part's air and weight in it. */
    private static String blendInWords(In v) {
        double share = v.get("fuel ethanol share");
        String petrol = Template.fill("{air to petrol} x {density of petrol}", v);
        return petrol + " / (" + Figures.plain(share, 2) + Template.fill(" x {air to ethanol} x {density of ethanol} + ", v)
                + Figures.plain(1 - share, 2) + " x " + petrol + ") - 1";
    }

    static Derived entry(String name) {
        return switch (name) {
            case "injector share at target" -> value(name).from(use("target power"), reading("injector flow"), injectors(), Round.fuelUse(),
                    Round.petrolDensity(), reading("injector dead time").optional(), use("rev limit"), across().optional(), ratedPressure().optional())
                    .by(v -> Fuel.duty(Fuel.massFlow(v.get("use target power"), v.get("specific fuel use")), (int) Math.round(v.get("injectors")),
                            v.has("engine fuel pressure") && v.has("injector rated pressure")
                                    ? Fuel.flowAt(v.get("injector flow"), v.get("engine fuel pressure"), v.get("injector rated pressure"))
                                    : v.get("injector flow"),
                            v.get("density of petrol"), v.get("injector dead time", 0), Fuel.injectionsASecond(v.get("use rev limit"))))
                    .sum("{use target power} x {specific fuel use} / ({injectors} x {injector flow} x {density of petrol})[, flow brought from "
                            + "{injector rated pressure} to {engine fuel pressure}][, dead time {injector dead time}]").figures(0);
            case "injector spread" -> value(name).from(every("injector flow")).by(v -> Sets.spreadShare(v.all("injector flow")))
                    .sum((v, r) -> "(" + v.show(Sets.greatest(v.all("injector flow")), "injector flow") + " - "
                            + v.show(Sets.least(v.all("injector flow")), "injector flow") + ") / mean " + v.show("injector flow")).figures(1);
            case "leanest cylinder mixture" -> value(name).from(every("injector flow"), use("target mixture"))
                    .by(v -> Fuel.leanest(v.get("use target mixture"), v.all("injector flow")))
                    .sum((v, r) -> v.show("use target mixture") + " x mean " + v.show("injector flow") + " / least "
                            + v.show(Sets.least(v.all("injector flow")), "injector flow")).figures(2);
            case "fuel error from pressure" -> value(name).from(base(), sheet("fuelling", "base pressure"))
                    .by(v -> Fuel.errorFromPressure(v.get("engine fuel pressure"), v.get("sheet fuelling base pressure")))
                    .sum("root of ({engine fuel pressure} / {sheet fuelling base pressure}) - 1").figures(1);
            case "pump flow over demand" -> value(name).from(reading("fuel pump flow"), use("target power"), Round.fuelUse(), Round.petrolDensity())
                    .by(v -> Fuel.pumpOverDemand(v.get("fuel pump flow"), v.get("density of petrol"),
                            Fuel.massFlow(v.get("use target power"), v.get("specific fuel use"))))
                    .sum("{fuel pump flow} x {density of petrol} / ({use target power} x {specific fuel use})").figures(2);
            case "rail pressure difference" -> value(name).from(rail(), manifold())
                    .by(v -> Fuel.acrossInjector(v.get("engine fuel pressure"), v.get("boost at the manifold")))
                    .sum("rail {engine fuel pressure} - manifold {boost at the manifold}").figures(2);
            case "charge heat at compression end" -> value(name).from(greatest("compression ratio"), sheet("standard", "compression ratio"),
                    reading("charge heat").optional(), Round.figure("exponent of compression", Rounds.CRANKING_EXPONENT))
                    .by(v -> Compression.endTemperature(v.get("charge heat", WorkingHeat.WORKSHOP), v.get("compression ratio"),
                            v.get("exponent of compression")) / Compression.endTemperature(WorkingHeat.WORKSHOP,
                                    v.get("sheet standard compression ratio"), v.get("exponent of compression")))
                    .sum((v, r) -> "(ratio " + v.show("compression ratio") + " / sheet " + v.show("sheet standard compression ratio") + ") to the power "
                            + Figures.plain(v.get("exponent of compression") - 1, 2) + (v.has("charge heat") ? " x charge " + In.show(v.get("charge heat"),
                                    Materials.KELVIN, 0) + " / " + In.show(WorkingHeat.WORKSHOP, Materials.KELVIN, 0) : "")).figures(3);
            case "power per litre ratio" -> value(name).from(use("target power"), sheet("output", "power"))
                    .by(v -> Sets.ratio(v.get("use target power"), v.get("sheet output power")))
                    .sum("{use target power} / {sheet output power}").figures(2);
            case "spark voltage share" -> value(name).from(reading("spark plug gap"), reading("compression ratio"), coilOutput(),
                    use("boost").optional(), Round.figure("exponent of compression", Rounds.CRANKING_EXPONENT), Cooling.airPressure())
                    .by(v -> {
                        double charge = v.get("air pressure") + v.get("use boost", 0);
                        return Spark.jumpVoltage(Compression.endPressure(charge, v.get("compression ratio"), v.get("exponent of compression")),
                                v.get("spark plug gap"), Compression.endTemperature(WorkingHeat.WORKSHOP, v.get("compression ratio"),
                                        v.get("exponent of compression"))) / v.get("coil output");
                    })
                    .sum((v, r) -> In.show(r * v.get("coil output"), KILOVOLT, 1) + Template.fill(" (to jump {spark plug gap} at ratio {compression ratio}[ and boost "
                            + "{use boost}]) / {coil output}", v)).figures(0);
            case "coil charge share" -> value(name).from(reading("coil charge time"), use("rev limit"), sparks())
                    .by(v -> Spark.chargeShare(v.get("coil charge time"), Spark.timeBetween(v.get("use rev limit"), v.get("sparks of one coil in a turn"))))
                    .sum((v, r) -> v.show("coil charge time") + " / " + v.show(v.get("coil charge time") / r, "coil charge time") + " between its sparks").figures(0);
            case "coil charge time needed" -> value(name).from(reading("coil inductance"), reading("coil resistance"), reading("coil volts"),
                    reading("coil current"))
                    .by(v -> Spark.chargeTime(v.get("coil inductance"), v.get("coil resistance"), v.get("coil volts"), v.get("coil current")))
                    .sum("-({coil inductance} / {coil resistance}) x ln(1 - {coil current} x {coil resistance} / {coil volts})")
                    .in(Units.named("ms", Dimension.TIME).orElseThrow()).figures(2);
            case "timing error" -> value(name).from(reading("engine ignition timing"), reading("engine ignition timing commanded"))
                    .by(v -> v.get("engine ignition timing") - v.get("engine ignition timing commanded"))
                    .sum("read {engine ignition timing} - asked {engine ignition timing commanded}").figures(1);
            case "timing drift" -> value(name).from(errors()).by(v -> Sets.spread(v.all("timing errors")))
                    .sum((v, r) -> "greatest error " + v.show(Sets.greatest(v.all("timing errors")), "timing errors") + " - least ("
                            + v.show(Sets.least(v.all("timing errors")), "timing errors") + ")").figures(1);
            case "fuel hose rating ratio" -> value(name).from(reading("fuel hose pressure rating"), Take.highest("engine fuel pressure"))
                    .by(v -> Sets.ratio(v.get("fuel hose pressure rating"), v.get("engine fuel pressure")))
                    .sum("{fuel hose pressure rating} / {engine fuel pressure}").figures(1);
            case "fuel push-off force" -> value(name).from(Take.highest("engine fuel pressure"), reading("fuel hose bore"))
                    .by(v -> Fuel.pushOff(v.get("engine fuel pressure"), v.get("fuel hose bore")))
                    .sum("{engine fuel pressure} x pi/4 x {fuel hose bore} squared").figures(0);
            case "blend extra fuel" -> value(name).from(ethanol(), Round.figure("air to petrol", Rounds.PETROL_AIR), Round.figure("air to ethanol",
                    Rounds.ETHANOL_AIR), Round.figure("density of petrol", Rounds.PETROL_DENSITY, Oils.DENSITY, 0),
                    Round.figure("density of ethanol", Rounds.ETHANOL_DENSITY, Oils.DENSITY, 0))
                    .by(v -> {
                        double share = v.get("fuel ethanol share");
                        double mass = Fuel.massShare(share, v.get("density of ethanol"), v.get("density of petrol"));
                        double air = Fuel.airOfBlend(mass, v.get("air to ethanol"), v.get("air to petrol"));
                        double density = share * v.get("density of ethanol") + (1 - share) * v.get("density of petrol");
                        return Fuel.extraVolume(v.get("air to petrol"), v.get("density of petrol"), air, density);
                    })
                    .sum((v, r) -> blendInWords(v)).figures(0);
            case "float closing force" -> value(name).from(Take.sheetLine("float closing force"), reading("carburettor feed pressure"),
                    reading("float valve seat diameter"))
                    .by(v -> Fuel.floatMargin(v.get("sheet float closing force"), v.get("carburettor feed pressure"),
                            v.get("float valve seat diameter")))
                    .sum("{sheet float closing force} - {carburettor feed pressure} x pi/4 x {float valve seat diameter} squared").figures(2);
            case "fuel spilled in a minute" -> value(name).from(reading("fuel pump flow")).by(v -> Fuel.volumeIn(v.get("fuel pump flow"), 60))
                    .sum("{fuel pump flow} x 1 min").figures(0);
            default -> null;
        };
    }

    private static Take injectors() {
        return by("injectors", (site, place) -> site.places("each injector").filter(p -> !p.isEmpty()).map(p -> Site.number("injectors", place,
                p.size(), 0, site.sheet("layout", "engine", "fuel injectors").map(s -> List.of(s.where())).orElse(List.of()))));
    }

    private static Take pressureAt(String name, String... places) {
        return new Take(name) {
            @Override
            String quantity() {
                return "engine fuel pressure";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                for (String which : places) {
                    for (Value v : site.store.of("engine fuel pressure")) {
                        if (v.of().equals("engine fuel pressure") && v.at().equals(which)) {
                            return Optional.of(Slot.of(name, v));
                        }
                    }
                }
                return Optional.empty();
            }
        };
    }

    private static Take base() {
        return pressureAt("engine fuel pressure", "base", "engine");
    }

    private static Take across() {
        return base();
    }

    private static Take rail() {
        return pressureAt("engine fuel pressure", "boost", "base", "engine");
    }

    /** Pressure at which the injector's flow is stated: its own, else the sheet's. */
    private static Take ratedPressure() {
        return by("injector rated pressure", (site, place) -> {
            Optional<Value> own = site.store.at("injector rated pressure", place);
            return own.isPresent() ? own : site.sheet("fuelling", "engine", "at").flatMap(s -> Site.written("injector rated pressure", place, s));
        });
    }

    /** Gauge pressure in the manifold at boost: that wanted; none on an engine that is not boosted. */
    private static Take manifold() {
        return by("boost at the manifold", (site, place) -> {
            Optional<Statement> boost = site.word("use", "engine", "boost").filter(s -> s.value().isPresent());
            Unit bar = Units.named("bar", Dimension.PRESSURE).orElseThrow();
            return boost.isPresent() ? boost.flatMap(s -> Site.written("boost at the manifold", place, s))
                    : RingSizes.boosted(site).filter(b -> !b).map(b -> Site.exact("boost at the manifold", place, 0, bar, 1, List.of()));
        });
    }

    private static Take coilOutput() {
        return new Take("coil output") {
            @Override
            String quantity() {
                return "coil output";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> here = reading("coil output").at(site, place);
                return here.isPresent() ? here : mean("coil output").at(site, "engine");
            }
        };
    }

    /** Sparks that one coil makes in a turn: half of one where each cylinder has its own, else in proportion. */
    private static Take sparks() {
        return by("sparks of one coil in a turn", (site, place) -> {
            Optional<List<String>> coils = site.places("each coil").filter(p -> !p.isEmpty());
            Optional<List<String>> cylinders = site.places("each cylinder").filter(p -> !p.isEmpty());
            return coils.isEmpty() || cylinders.isEmpty() ? Optional.empty() : Optional.of(Site.number("sparks of one coil in a turn", place,
                    cylinders.get().size() / (2.0 * coils.get().size()), 2, List.of()));
        });
    }

    /** Errors of the timing at several speeds. */
    private static Take errors() {
        return new Take("timing errors") {
            @Override
            String quantity() {
                return "engine ignition timing";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> errors = new ArrayList<>();
                for (Value read : site.store.of("engine ignition timing")) {
                    for (Value asked : site.store.of("engine ignition timing commanded")) {
                        if (read.of().equals("engine ignition timing") && read.plain() && asked.plain() && !read.asides().getOrDefault("speed", "")
                                .isEmpty() && read.asides().get("speed").equals(asked.asides().get("speed"))) {
                            errors.add(Differences.of("timing errors", read, asked));
                        }
                    }
                }
                return errors.size() < 2 ? Optional.empty() : Optional.of(new Slot(name(), errors, Slot.Reduce.MEAN));
            }
        };
    }

    private static Take ethanol() {
        return by("fuel ethanol share", (site, place) -> {
            Optional<Value> tested = site.store.at("fuel ethanol share", "engine");
            return tested.isPresent() ? tested : site.word("use", "engine", "ethanol share").flatMap(s -> Site.written("fuel ethanol share", place, s));
        });
    }
}
