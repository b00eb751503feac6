package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.greatest;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.sheet;
import static leadlamp.derive.Take.sheetLine;
import static leadlamp.derive.Take.use;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.Air;
import leadlamp.calc.Coolant;
import leadlamp.calc.Engagement;
import leadlamp.calc.Fits;
import leadlamp.calc.Rounds;
import leadlamp.calc.Sets;
import leadlamp.calc.Spark;
import leadlamp.calc.Water;
import leadlamp.calc.WorkingHeat;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.record.Statement;

/** Derived values of coolant, thermostat, fan, radiator and pump. */
final class Cooling {
    private static final Unit RESISTIVITY = new Unit("ohm mm2/m", Dimension.NUMBER, 1e-6, 0);
    private static final Unit CELSIUS = Units.usual(Dimension.TEMPERATURE);
    private static final Unit BAR = Units.named("bar", Dimension.PRESSURE).orElseThrow();

    private Cooling() {
    }

    static Derived entry(String name) {
        return switch (name) {
            case "coolant boiling point" -> value(name).from(cap(), reading("coolant concentration"), airPressure(), glycol())
                    .by(v -> Coolant.boils(v.get("propylene glycol") > 0.5 ? Coolant.Glycol.PROPYLENE : Coolant.Glycol.ETHYLENE,
                            v.get("coolant concentration"), v.get("air pressure"), v.get("radiator cap opening pressure")))
                    .sum("water under {air pressure} + cap {radiator cap opening pressure}, {coolant concentration} of glycol in it").figures(0);
            case "coolant freezing point" -> value(name).from(reading("coolant concentration"), glycol())
                    .by(v -> Coolant.freezes(v.get("propylene glycol") > 0.5 ? Coolant.Glycol.PROPYLENE : Coolant.Glycol.ETHYLENE,
                            v.get("coolant concentration")))
                    .sum((v, r) -> v.show("coolant concentration") + " of " + (v.get("propylene glycol") > 0.5 ? "propylene" : "ethylene") + " glycol")
                    .figures(0);
            case "boil margin" -> value(name).from(reading("coolant boiling point"), hottest())
                    .by(v -> v.get("coolant boiling point") - v.get("hottest coolant"))
                    .sum("boils at {coolant boiling point} - hottest coolant {hottest coolant}").figures(0);
            case "fan margin" -> value(name).from(fanOn(), reading("thermostat full open temperature"))
                    .by(v -> v.get("fan switch switch-on temperature") - v.get("thermostat full open temperature"))
                    .sum("fan on {fan switch switch-on temperature} - thermostat open {thermostat full open temperature}").figures(0);
            case "fan span" -> value(name).from(fanOn(), reading("fan switch switch-off temperature"))
                    .by(v -> v.get("fan switch switch-on temperature") - v.get("fan switch switch-off temperature"))
                    .sum("on {fan switch switch-on temperature} - off {fan switch switch-off temperature}").figures(0);
            case "thermostat error" -> value(name).from(tested(), stamped())
                    .by(v -> Math.abs(v.get("thermostat opening temperature") - v.get("parts thermostat opening temperature")))
                    .sum("tested {thermostat opening temperature} - stamped {parts thermostat opening temperature}").figures(0);
            case "thermostat bypass gap" -> value(name).from(reading("thermostat housing bypass depth"), reading("thermostat foot reach"),
                    reading("thermostat lift"))
                    .by(v -> Water.bypassGap(v.get("thermostat housing bypass depth"), v.get("thermostat foot reach"), v.get("thermostat lift")))
                    .sum("{thermostat housing bypass depth} - foot {thermostat foot reach} - lift {thermostat lift}");
            case "warm-up margin" -> value(name).from(reading("thermostat opening temperature"), sheet("cooling", "warm-up ends"))
                    .by(v -> v.get("thermostat opening temperature") - v.get("sheet cooling warm-up ends"))
                    .sum("opens {thermostat opening temperature} - warm-up ends {sheet cooling warm-up ends}").figures(0);
            case "coolant share" -> value(name).from(reading("coolant concentrate added"), sheet("coolant", "volume"))
                    .by(v -> Water.share(v.get("coolant concentrate added"), 1, v.get("sheet coolant volume")))
                    .sum("{coolant concentrate added} / {sheet coolant volume}").figures(0);
            case "coolant air left" -> value(name).from(sheet("coolant", "volume"), reading("coolant filled volume"),
                    reading("coolant water left").optional())
                    .by(v -> Water.airLeft(v.get("sheet coolant volume"), 0, v.get("coolant filled volume"), v.get("coolant water left", 0)))
                    .sum("{sheet coolant volume} - poured {coolant filled volume}[ - water left {coolant water left}]").figures(0);
            case "coolant growth" -> value(name).from(sheet("coolant", "volume"), Round.figure("growth of coolant", Rounds.COOLANT_GROWTH,
                    Units.usual(Dimension.SHARE), 1))
                    .by(v -> Water.growth(v.get("sheet coolant volume"), v.get("growth of coolant")))
                    .sum("{sheet coolant volume} x {growth of coolant}").figures(0);
            case "header air left hot" -> value(name).from(reading("header tank air space"), reading("coolant growth"))
                    .by(v -> Water.airHot(v.get("header tank air space"), v.get("coolant growth")))
                    .sum("air cold {header tank air space} - growth {coolant growth}").figures(0);
            case "water pump speed ratio" -> value(name).from(reading("crank pulley diameter"), reading("water pump pulley diameter"),
                    sheet("standard", "crank pulley diameter").optional(), sheet("standard", "water pump pulley diameter").optional(),
                    use("rev limit"), sheet("output", "rev limit"))
                    .by(v -> v.get("crank pulley diameter") / v.get("water pump pulley diameter") * v.get("use rev limit")
                            / (v.get("sheet standard crank pulley diameter", v.get("crank pulley diameter"))
                                    / v.get("sheet standard water pump pulley diameter", v.get("water pump pulley diameter"))
                                    * v.get("sheet output rev limit")))
                    .sum((v, r) -> Template.fill("({crank pulley diameter} / {water pump pulley diameter} x {use rev limit}) / (", v)
                            + v.show(v.has("sheet standard crank pulley diameter") ? "sheet standard crank pulley diameter" : "crank pulley diameter") + " / "
                            + v.show(v.has("sheet standard water pump pulley diameter") ? "sheet standard water pump pulley diameter"
                                    : "water pump pulley diameter") + " x sheet " + v.show("sheet output rev limit") + ")").figures(2);
            case "radiator heat ratio" -> value(name).from(use("target power"), sheet("output", "power"), reading("radiator core area"),
                    sheetLine("radiator core area"))
                    .by(v -> Water.coreHeatRatio(v.get("use target power"), v.get("radiator core area"), v.get("sheet output power"),
                            v.get("sheet radiator core area")))
                    .sum("({use target power} / {radiator core area}) / ({sheet output power} / {sheet radiator core area})").figures(2);
            case "radiator drop" -> value(name).from(reading("radiator inlet temperature"), reading("radiator outlet temperature"))
                    .by(v -> v.get("radiator inlet temperature") - v.get("radiator outlet temperature"))
                    .sum("in {radiator inlet temperature} - out {radiator outlet temperature}").figures(0);
            case "coolant volts rise" -> value(name).from(volts())
                    .by(v -> Sets.greatest(v.all("coolant volts")) - Sets.least(v.all("coolant volts")))
                    .sum((v, r) -> "loads on " + v.show(Sets.greatest(v.all("coolant volts")), "coolant volts") + " - loads off "
                            + v.show(Sets.least(v.all("coolant volts")), "coolant volts")).figures(2);
            case "fan volt drop" -> value(name).from(reading("fan current"), reading("fan wire length"), reading("fan wire section"),
                    Round.figure("resistivity of copper", Rounds.COPPER, RESISTIVITY, 4))
                    .by(v -> Spark.voltDrop(v.get("fan current"), v.get("fan wire length"), v.get("fan wire section"), v.get("resistivity of copper")))
                    .sum("{fan current} x 2 x {fan wire length} x {resistivity of copper} / {fan wire section}").figures(2);
            case "fan swept share" -> value(name).from(reading("fan swept area"), reading("radiator core area"))
                    .by(v -> Sets.ratio(v.get("fan swept area"), v.get("radiator core area")))
                    .sum("{fan swept area} / {radiator core area}").figures(0);
            case "core plug grip" -> value(name).from(reading("core plug diameter"), reading("block core plug hole"))
                    .by(v -> Fits.interference(v.get("core plug diameter"), v.get("block core plug hole")))
                    .sum("plug {core plug diameter} - hole {block core plug hole}");
            case "pressure fall corrected" -> value(name).from(reading("water jacket pressure fall"), reading("water jacket test pressure"),
                    airBeforeAndAfter())
                    .by(v -> Water.fallLessCooling(v.get("water jacket pressure fall"), v.get("water jacket test pressure") + Air.pressureAtHeight(0),
                            v.all("workshop air temperature")[0], v.all("workshop air temperature")[1]))
                    .sum((v, r) -> Template.fill("fall {water jacket pressure fall} - ({water jacket test pressure} + ", v) + In.show(Air.pressureAtHeight(0), BAR, 2)
                            + ") x (" + In.show(v.all("workshop air temperature")[0], Materials.KELVIN, 1) + " - "
                            + In.show(v.all("workshop air temperature")[1], Materials.KELVIN, 1) + ") / "
                            + In.show(v.all("workshop air temperature")[0], Materials.KELVIN, 1)).figures(3);
            case "coolant pressure excess" -> value(name).from(reading("coolant pressure"), reading("coolant temperature"))
                    .by(v -> v.get("coolant pressure") - Math.max(0, Coolant.waterPressure(v.get("coolant temperature"))
                            - Coolant.waterPressure(WorkingHeat.WORKSHOP)))
                    .sum((v, r) -> v.show("coolant pressure") + " - " + In.show(v.get("coolant pressure") - r, BAR, 2) + " that water gives (from "
                            + In.show(WorkingHeat.WORKSHOP, CELSIUS, 0) + " to " + v.show("coolant temperature") + ")").figures(2);
            case "bolt reach in pump" -> value(name).from(reading("bolt free length"), greatest("water pump flange thickness"), Joints.washers())
                    .at(site -> Joints.boltByBolt(site, "each joint with several lengths", "bolt free length"))
                    .by(v -> Engagement.reach(v.get("bolt free length"), v.get("water pump flange thickness"), v.get("washer thickness")))
                    .sum("bolt {bolt free length} - flange {water pump flange thickness} - washer {washer thickness}");
            default -> null;
        };
    }

    private static Take cap() {
        return new Take("radiator cap opening pressure") {
            @Override
            String quantity() {
                return "radiator cap opening pressure";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = reading("radiator cap opening pressure").at(site, place);
                return read.isPresent() ? read : sheet("coolant", "cap").at(site, place).map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }

    /** Air pressure where the engine is used; at the height of the sea where no height is told. */
    static Take airPressure() {
        return by("air pressure", (site, place) -> {
            Optional<Statement> height = site.word("use", "engine", "height above sea").filter(s -> s.value().isPresent());
            double metres = height.map(s -> s.value().get().high()).orElse(0.0);
            return Optional.of(Site.doubtful("air pressure", place, Air.pressureAtHeight(metres), 1500, "weather", BAR, 2,
                    height.map(s -> List.of(s.where())).orElse(List.of())));
        });
    }

    /** One for propylene glycol, nought for the usual ethylene glycol, by the coolant's kind. */
    private static Take glycol() {
        return by("propylene glycol", (site, place) -> {
            boolean propylene = site.either("coolant", "engine", "kind").map(s -> s.says().contains("propylene")).orElse(false);
            return Optional.of(Site.number("propylene glycol", place, propylene ? 1 : 0, 0, List.of()));
        });
    }

    /** The hottest that the coolant is let become: what the lamp or cut says, else the fan's switch. */
    private static Take hottest() {
        return new Take("hottest coolant") {
            @Override
            Optional<Slot> at(Site site, String place) {
                for (String guard : List.of("over-temperature lamp", "over-temperature cut")) {
                    Optional<Value> threshold = site.word("protection", "engine", guard + " at").flatMap(s -> Site.written(name(), place, s));
                    if (threshold.isPresent()) {
                        return threshold.map(v -> Slot.of(name(), v));
                    }
                }
                return fanOn().at(site, place).map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }

            @Override
            String lacks() {
                return "fan switch switch-on temperature";
            }
        };
    }

    private static Take fanOn() {
        return new Take("fan switch switch-on temperature") {
            @Override
            String quantity() {
                return "fan switch switch-on temperature";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = reading("fan switch switch-on temperature").at(site, place);
                return read.isPresent() ? read : sheet("cooling", "fan on").at(site, place).map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }

    /** Where the thermostat opened in the pan: a reading, no maker's figure. */
    private static Take tested() {
        return new Take("thermostat opening temperature") {
            @Override
            String quantity() {
                return "thermostat opening temperature";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                return reading("thermostat opening temperature").at(site, place).filter(slot -> !slot.values().get(0).gauge().equals("label"));
            }
        };
    }

    private static Take stamped() {
        return by("parts thermostat opening temperature", (site, place) -> {
            for (Statement s : site.build.statements()) {
                if (s.form() == Statement.Form.READ && s.of().equals("thermostat opening temperature") && s.gauges().equals(List.of("label"))) {
                    return Site.written("parts thermostat opening temperature", place, s);
                }
            }
            return site.sheet("coolant", "engine", "thermostat").flatMap(s -> Site.written("parts thermostat opening temperature", place, s));
        });
    }

    private static Take volts() {
        return new Take("coolant volts") {
            @Override
            String quantity() {
                return "coolant volts";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> read = new ArrayList<>(site.store.of("coolant volts"));
                read.removeIf(v -> !v.of().equals("coolant volts"));
                return read.size() < 2 ? Optional.empty() : Optional.of(new Slot(name(), read, Slot.Reduce.MEAN));
            }
        };
    }

    private static Take airBeforeAndAfter() {
        return new Take("workshop air temperature") {
            @Override
            String quantity() {
                return "workshop air temperature";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> read = new ArrayList<>(site.store.of("workshop air temperature"));
                if (read.isEmpty()) {
                    return Optional.empty();
                }
                Value last = read.get(read.size() - 1);
                return Optional.of(new Slot(name(), List.of(read.get(0), last), Slot.Reduce.MEAN));
            }
        };
    }
}
