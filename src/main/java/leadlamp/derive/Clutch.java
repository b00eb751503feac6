package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.greatest;
import static leadlamp.derive.Take.least;
import static leadlamp.derive.Take.mean;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.removed;
import static leadlamp.derive.Take.sheet;
import static leadlamp.derive.Take.sheetLine;
import static leadlamp.derive.Take.use;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.Clutches;
import leadlamp.calc.Fits;
import leadlamp.calc.Flywheel;
import leadlamp.calc.Preload;
import leadlamp.calc.Rounds;
import leadlamp.calc.Sets;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Units;
import leadlamp.record.LimitLine;
import leadlamp.record.Node;
import leadlamp.record.Statement;

/** Derived values of clutch, flywheel and what joins engine and gearbox. */
final class Clutch {
    private static final double POISSON_OF_IRON = 0.26;

    private Clutch() {
    }

    static Derived entry(String name) {
        return switch (name) {
            case "friction disc wear left" -> value(name).from(least("friction disc thickness"), disc(false), disc(true))
                    .by(v -> Clutches.wearLeft(v.get("friction disc thickness"), v.get("sheet friction disc standard"), v.get("sheet friction disc least")))
                    .sum("({friction disc thickness} - least {sheet friction disc least}) / (new {sheet friction disc standard} - least "
                            + "{sheet friction disc least})").figures(0);
            case "clutch stack height" -> value(name).from(allOf("friction disc thickness"), allOf("floating plate thickness").optional())
                    .by(v -> sum(v.all("friction disc thickness")) + sum(v.all("floating plate thickness")))
                    .sum((v, r) -> (Shapes.each(v, "friction disc thickness", " + disc ") + Shapes.each(v, "floating plate thickness", " + plate ")).substring(3));
            case "clutch wear rate" -> value(name).from(disc(false), reading("old friction disc thickness"), hours())
                    .by(v -> Clutches.wearRate(v.get("sheet friction disc standard"), v.get("old friction disc thickness"), v.get("use running time")) * 3600)
                    .sum("(new {sheet friction disc standard} - {old friction disc thickness}) / {use running time} x 1 h").figures(4);
            case "clutch capacity" -> value(name).from(reading("clutch cover clamp load"), faces(), radius("friction disc outer diameter"),
                    radius("friction disc inner diameter"), Round.figure("friction of the facing", Rounds.CLUTCH_FACING_LOW))
                    .by(v -> Clutches.capacity(v.get("friction of the facing"), v.get("clutch cover clamp load"), Math.min(
                            Clutches.wearRadius(v.get("friction disc outer diameter") / 2, v.get("friction disc inner diameter") / 2),
                            Clutches.pressureRadius(v.get("friction disc outer diameter") / 2, v.get("friction disc inner diameter") / 2)),
                            (int) Math.round(v.get("faces that rub"))))
                    .sum((v, r) -> Template.fill("{friction of the facing} x {clutch cover clamp load} x {faces that rub} faces x radius ", v)
                            + v.show(r / v.get("friction of the facing") / v.get("clutch cover clamp load") / Math.round(v.get("faces that rub")),
                                    "friction disc outer diameter") + Template.fill(" (between {friction disc inner diameter} and "
                                            + "{friction disc outer diameter} across)", v)).figures(0);
            case "clutch margin" -> value(name).from(reading("clutch capacity"), use("target torque"))
                    .by(v -> Sets.ratio(v.get("clutch capacity"), v.get("use target torque"))).sum("{clutch capacity} / {use target torque}").figures(2);
            case "flywheel step change" -> value(name).from(removed("flywheel"), reading("flywheel step height"))
                    .by(v -> v.get("machining flywheel removed")).sum("{machining flywheel removed} off the friction face, step now "
                            + "{flywheel step height}");
            case "flywheel grip" -> value(name).from(CamDrive.clampOf("flywheel to crankshaft"), sheetLine("flywheel bolt circle"),
                    Round.figure("friction of the flange", Rounds.FLYWHEEL_FLANGE))
                    .by(v -> Preload.grip(v.get("friction of the flange"), v.get("clamp force"), v.get("sheet flywheel bolt circle") / 2, 1))
                    .sum("{friction of the flange} x {clamp force} x half of {sheet flywheel bolt circle}").figures(0);
            case "flywheel runout at friction radius" -> value(name).from(reading("flywheel face runout"),
                    BottomEnd.aside("flywheel face runout", "at radius"), meanRadius())
                    .by(v -> Fits.scaled(v.get("flywheel face runout"), v.get("at radius of flywheel face runout"), v.get("mean friction radius")))
                    .sum("{flywheel face runout} x {mean friction radius} / {at radius of flywheel face runout}").finer();
            case "over-rev speed" -> value(name).from(use("rev limit"), worstShift())
                    .by(v -> Flywheel.overSpeed(v.get("use rev limit"), v.get("ratio of a missed gear")))
                    .sum("{use rev limit} x {ratio of a missed gear}").figures(0);
            case "flywheel hoop stress" -> value(name).from(reading("flywheel outer diameter"), speedToProve(), Materials.density("flywheel"),
                    sheetLine("flywheel bore diameter").optional())
                    .by(v -> Flywheel.boreStress(v.get("density of flywheel"), v.get("over-rev speed"), v.get("flywheel outer diameter") / 2,
                            v.get("sheet flywheel bore diameter", v.get("flywheel outer diameter") * 0.1) / 2, POISSON_OF_IRON))
                    .sum((v, r) -> Template.fill("{density of flywheel} x (2 x pi x {over-rev speed} / 60) squared / 4 x ((3 + ", v) + POISSON_OF_IRON
                            + Template.fill(") x (half of {flywheel outer diameter}) squared + (1 - ", v) + POISSON_OF_IRON + ") x (half of bore "
                            + v.show(v.get("sheet flywheel bore diameter", v.get("flywheel outer diameter") * 0.1), "flywheel outer diameter") + ") squared)")
                    .figures(1);
            case "disc speed pedal down" -> value(name).from(use("rev limit"), worstShift())
                    .by(v -> Clutches.discSpeedPedalDown(v.get("use rev limit"), v.get("ratio of a missed gear"), 1))
                    .sum("{use rev limit} x {ratio of a missed gear}").figures(0);
            case "spigot clearance" -> value(name).from(reading("spigot bearing bore"), reading("gearbox shaft nose diameter"))
                    .by(v -> Fits.clearance(v.get("spigot bearing bore"), v.get("gearbox shaft nose diameter")))
                    .sum("bearing {spigot bearing bore} - nose {gearbox shaft nose diameter}");
            case "plate lift" -> value(name).from(reading("release bearing travel"), sheetLine("cover ratio"), reading("release fork free play").optional())
                    .by(v -> Clutches.plateLift(v.get("release bearing travel"), v.get("release fork free play", 0), v.get("sheet cover ratio")))
                    .sum("({release bearing travel}[ - free play {release fork free play}]) / {sheet cover ratio}").figures(2);
            case "release travel expected" -> value(name).from(reading("clutch pedal travel"), reading("master cylinder bore"),
                    reading("slave cylinder bore"), sheetLine("pedal ratio"), sheetLine("fork ratio").optional())
                    .by(v -> Clutches.releaseTravel(v.get("clutch pedal travel"), v.get("sheet pedal ratio"), v.get("master cylinder bore"),
                            v.get("slave cylinder bore"), v.get("sheet fork ratio", 1)))
                    .sum("{clutch pedal travel} / {sheet pedal ratio} x ({master cylinder bore} / {slave cylinder bore}) squared[ / {sheet fork ratio}]")
                    .figures(1);
            case "release load ratio" -> value(name).from(reading("clutch cover release load"), sheet("clutch", "release load"))
                    .by(v -> Sets.ratio(v.get("clutch cover release load"), v.get("sheet clutch release load")))
                    .sum("{clutch cover release load} / {sheet clutch release load}").figures(2);
            case "thrust pressure" -> value(name).from(reading("clutch cover release load"), mean("thrust washer face area"))
                    .by(v -> Clutches.thrustPressure(v.get("clutch cover release load"), v.get("thrust washer face area")))
                    .sum("{clutch cover release load} / {thrust washer face area}").figures(1);
            case "bell housing offset" -> value(name).from(greatest("bell housing bore runout")).by(v -> Clutches.offset(v.get("bell housing bore runout")))
                    .sum("half of {bell housing bore runout}").finer();
            case "disc backlash angle" -> value(name).from(reading("friction disc edge backlash"), reading("friction disc outer diameter"))
                    .by(v -> Clutches.backlashAngle(v.get("friction disc edge backlash"), v.get("friction disc outer diameter")))
                    .sum("{friction disc edge backlash} / half of {friction disc outer diameter}, as an angle").figures(1);
            case "ring gear interference" -> value(name).from(reading("flywheel ring seat diameter"), reading("ring gear bore"))
                    .by(v -> Fits.interference(v.get("flywheel ring seat diameter"), v.get("ring gear bore")))
                    .sum("seat {flywheel ring seat diameter} - bore {ring gear bore}");
            case "ring gear heat needed" -> value(name).from(reading("ring gear interference"), reading("flywheel ring seat diameter"),
                    Materials.steelExpansion("ring gear"), Round.figure("room to drop on", Rounds.DROP_ON_ROOM, Units.usual(Dimension.LENGTH), 1))
                    .by(v -> Fits.heatToDropOn(Math.max(0, v.get("ring gear interference")), v.get("room to drop on"), v.get("expansion of ring gear"),
                            v.get("flywheel ring seat diameter")))
                    .sum("({ring gear interference} + room {room to drop on}) / ({expansion of ring gear} x {flywheel ring seat diameter})").figures(0);
            default -> null;
        };
    }

    private static double sum(double[] figures) {
        double sum = 0;
        for (double figure : figures) {
            sum += figure;
        }
        return sum;
    }

    private static Take allOf(String quantity) {
        return new Take(quantity) {
            @Override
            String quantity() {
                return quantity;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> all = new ArrayList<>(site.store.of(quantity));
                all.removeIf(v -> !v.of().equals(quantity) || Store.untold(v.at()));
                return all.isEmpty() ? Optional.empty() : Optional.of(new Slot(name(), all, Slot.Reduce.SUM));
            }
        };
    }

    /** A disc's size when new, or the least it may have. */
    private static Take disc(boolean least) {
        String name = "sheet friction disc " + (least ? "least" : "standard");
        return new Take(name) {
            @Override
            Optional<Slot> at(Site site, String place) {
                for (LimitLine line : site.build.sheet().limits()) {
                    var size = least ? line.least() : line.standard();
                    if (line.quantity().equals("friction disc thickness") && size.isPresent()) {
                        return Optional.of(Slot.of(name, Site.exact(name, place, size.get().low(), size.get().unit(), size.get().figures(),
                                List.of(line.line()))));
                    }
                }
                return Optional.empty();
            }

            @Override
            String lacks() {
                return "sheet limits friction disc thickness";
            }
        };
    }

    private static Take hours() {
        return by("use running time", (site, place) -> {
            Optional<Value> said = site.word("use", "engine", "running time").flatMap(s -> Site.written("use running time", place, s));
            return said.isPresent() ? said : site.store.at("engine running time", "engine");
        });
    }

    /** Faces that rub: two to each disc, unless the sheet counts them. */
    private static Take faces() {
        return by("faces that rub", (site, place) -> {
            Optional<Statement> faces = site.sheet("clutch", "engine", "faces");
            Optional<Statement> discs = site.sheet("layout", "engine", "clutch discs");
            double count = faces.map(s -> PartsAged.number(s.says())).orElseGet(() -> discs.map(s -> 2 * PartsAged.number(s.says())).orElse(Double.NaN));
            return count >= 1 ? Optional.of(Site.number("faces that rub", place, count, 0, faces.or(() -> discs).map(s -> List.of(s.where()))
                    .orElse(List.of()))) : Optional.empty();
        });
    }

    private static Take radius(String diameter) {
        return new Take(diameter) {
            @Override
            String quantity() {
                return diameter;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                return reading(diameter).at(site, place);
            }
        };
    }

    private static Take meanRadius() {
        return by("mean friction radius", (site, place) -> {
            Optional<Statement> sheet = site.sheet("clutch", "engine", "mean radius");
            if (sheet.isPresent()) {
                return Site.written("mean friction radius", place, sheet.get());
            }
            Optional<Slot> outer = mean("friction disc outer diameter").at(site, "engine");
            Optional<Slot> inner = mean("friction disc inner diameter").at(site, "engine");
            if (outer.isEmpty() || inner.isEmpty()) {
                return Optional.empty();
            }
            Value first = outer.get().values().get(0);
            double radius = Clutches.wearRadius(middle(first) / 2, middle(inner.get().values().get(0)) / 2);
            return Optional.of(Site.exact("mean friction radius", place, radius, first.unit(), first.figures(), first.places()));
        });
    }

    private static double middle(Value v) {
        return v.low().or(v::high).orElseThrow().value();
    }

    /** The widest step between two neighbouring gears: what a missed shift does to the speed. */
    private static Take worstShift() {
        return by("ratio of a missed gear", (site, place) -> {
            Optional<Node> gears = Optional.empty();
            for (String section : List.of("clutch", "gearbox", "output")) {
                gears = gears.isPresent() ? gears : site.build.sheet().below(section, "gear ratios");
            }
            if (gears.isEmpty() || !(gears.get() instanceof Node.Items items)) {
                return Optional.empty();
            }
            List<Double> ratios = new ArrayList<>();
            for (Node item : items.items()) {
                if (item instanceof Node.Scalar scalar && PartsAged.number(scalar.text()) > 0) {
                    ratios.add(PartsAged.number(scalar.text()));
                }
            }
            double widest = 0;
            for (int i = 1; i < ratios.size(); i++) {
                widest = Math.max(widest, ratios.get(i - 1) / ratios.get(i));
            }
            return widest > 0 ? Optional.of(Site.number("ratio of a missed gear", place, widest, 2, List.of(gears.get().where()))) : Optional.empty();
        });
    }

    /** The speed that a flywheel must be proved at: after a missed gear, else the rev limit. */
    private static Take speedToProve() {
        return new Take("over-rev speed") {
            @Override
            String quantity() {
                return "over-rev speed";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> over = reading("over-rev speed").at(site, place);
                return over.isPresent() ? over : use("rev limit").at(site, place).map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }
}
