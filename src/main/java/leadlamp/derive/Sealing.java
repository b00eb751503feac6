package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.cutSince;
import static leadlamp.derive.Take.greatest;
import static leadlamp.derive.Take.least;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.use;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.Fits;
import leadlamp.calc.Gap;
import leadlamp.calc.Preload;
import leadlamp.calc.Seals;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Units;
import leadlamp.record.Statement;

/** Derived values of rings, sealant, gaskets, lips and plugs. */
final class Sealing {
    private static final double HUNDRED_MM = 0.1;

    private Sealing() {
    }

    static Derived entry(String name) {
        return switch (name) {
            case "sealing ring squeeze", "pick-up seal squeeze" -> {
                String gap = "joint face gap";
                Derived squeeze = value(name).from(reading("sealing ring section"), reading("ring seat depth"), reading(gap).optional())
                        .by(v -> Seals.squeeze(v.get("sealing ring section"), v.get("ring seat depth"), Math.max(0, v.get(gap, 0))))
                        .sum("({sealing ring section} - {ring seat depth}[ - gap {joint face gap}]) / {sealing ring section}").figures(1);
                yield name.equals("pick-up seal squeeze") ? squeeze.at(site -> List.of("pick-up seal")) : squeeze;
            }
            case "sealing ring squeeze after cut" -> value(name).from(reading("sealing ring section"), reading("ring seat depth left"))
                    .by(v -> Seals.squeeze(v.get("sealing ring section"), v.get("ring seat depth left"), 0))
                    .sum("({sealing ring section} - {ring seat depth left}) / {sealing ring section}").figures(1);
            case "sealing ring set" -> value(name).from(reading("sealing ring section as new"), reading("sealing ring section"),
                    reading("ring seat depth"))
                    .by(v -> Seals.set(v.get("sealing ring section as new"), v.get("sealing ring section"), v.get("ring seat depth")))
                    .sum("({sealing ring section as new} - {sealing ring section}) / ({sealing ring section as new} - {ring seat depth})").figures(0);
            case "sealing ring stretch" -> value(name).from(reading("ring seat diameter"), reading("sealing ring inside diameter"))
                    .by(v -> Seals.stretch(v.get("ring seat diameter"), v.get("sealing ring inside diameter")))
                    .sum("{ring seat diameter} / {sealing ring inside diameter} - 1").figures(1);
            case "sealing ring fill" -> value(name).from(reading("sealing ring section"), reading("ring seat depth"), reading("ring seat width"))
                    .by(v -> Seals.fill(v.get("sealing ring section"), v.get("ring seat depth"), v.get("ring seat width")))
                    .sum("pi/4 x {sealing ring section} squared / ({ring seat depth} x {ring seat width})").figures(0);
            case "sealant inward volume" -> value(name).from(reading("sealant bead diameter"), reading("joint face width"), reading("joint face gap"))
                    .by(v -> Seals.inward(v.get("sealant bead diameter"), v.get("joint face width"), v.get("joint face gap")))
                    .sum("half of (pi/4 x {sealant bead diameter} squared - {joint face width} x {joint face gap})").figures(1);
            case "sealant open time" -> value(name).from(step("sealant laid"), step("joint closed"))
                    .by(v -> Days.between(v.get("sealant laid"), v.get("joint closed")))
                    .sum((v, r) -> Days.apart(v, "sealant laid", "joint closed")).in(Days.MINUTES).figures(0);
            case "sealant cure time" -> value(name).from(step("joint closed"), Days.toStartOrOil())
                    .by(v -> Days.between(v.get("joint closed"), v.get("start or oil"))).sum((v, r) -> Days.apart(v, "joint closed", "start or oil")).in(Days.HOURS).figures(0);
            case "sealant cure time needed" -> value(name).from(cureTime()).by(v -> v.get("sheet sealants cure time"))
                    .sum("the sealant's own: {sheet sealants cure time}").figures(0).inUnitOf("sheet sealants cure time");
            case "seating pressure" -> value(name).from(clampOfJoint(), reading("gasket area"))
                    .by(v -> Preload.seatingPressure(v.get("clamp of all bolts"), v.get("gasket area")))
                    .sum("{clamp of all bolts} / {gasket area}").figures(0);
            case "gasket open share" -> value(name).from(least("gasket hole diameter"), reading("joint face passage diameter"))
                    .by(v -> Seals.openShare(v.get("gasket hole diameter"), v.get("joint face passage diameter")))
                    .sum("({gasket hole diameter} / {joint face passage diameter}) squared").figures(0);
            case "main bearing clearance with film" -> value(name).from(reading("joint face gap"), bearingOfJoint())
                    .by(v -> Seals.clearanceWithFilm(v.get("main bearing clearance"), v.get("joint face gap")))
                    .sum("dry {main bearing clearance} + film {joint face gap}").inUnitOf("main bearing clearance");
            case "joint face step after cut" -> value(name).from(reading("joint face step"), cutOfFace())
                    .by(v -> Math.abs(Gap.jointStep(v.get("cut since joint face step"), 0, v.get("joint face step"))))
                    .sum("step {joint face step} + cut of the face since then {cut since joint face step}");
            case "flatness per 100 mm" -> value(name).from(greatest("joint face flatness"), BottomEnd.aside("joint face flatness", "span"))
                    .by(v -> Fits.scaled(v.get("joint face flatness"), v.get("span of joint face flatness"), HUNDRED_MM))
                    .sum("{joint face flatness} x 100 mm / {span of joint face flatness}").figures(3);
            case "seal grip" -> value(name).from(freeGrip(), greatest("seal land groove depth"))
                    .by(v -> Seals.lipGrip(v.get("sheet seals interference"), Math.max(0, v.get("seal land groove depth"))))
                    .sum("free lip {sheet seals interference} - 2 x groove {seal land groove depth}");
            case "seal speed" -> value(name).from(reading("seal land diameter"), speedOfShaft())
                    .by(v -> Seals.lipSpeed(v.get("seal land diameter"), v.get("use rev limit")))
                    .sum("pi x {seal land diameter} x {use rev limit} / 60").figures(1);
            case "seal lead angle" -> value(name).from(reading("seal land string advance"), reading("seal land diameter"), turnsOfString())
                    .by(v -> Math.abs(Seals.leadAngle(v.get("seal land string advance"), v.get("seal land diameter"), v.get("turns of the string test"))))
                    .sum("arctan({seal land string advance} / (pi x {seal land diameter} x {turns of the string test}))").figures(2);
            case "seal offset" -> value(name).from(reading("seal bore runout"), reading("seal land runout").optional())
                    .by(v -> Seals.lipFollow(v.get("seal bore runout"), v.get("seal land runout", 0)))
                    .sum("half of {seal bore runout}[ + runout of the land {seal land runout}]").finer();
            case "lip rest time" -> value(name).from(step("rear seal fitted"), firstTurned()).at(site -> List.of("rear crank seal"))
                    .by(v -> Days.between(v.get("rear seal fitted"), v.get("first turned")))
                    .sum("from the seal fitted to the shaft first turned").in(Days.HOURS).figures(0);
            case "seal temperature" -> value(name).from(use("running temperature")).by(v -> v.get("use running temperature"))
                    .sum("as the record has it: {use running temperature}").inUnitOf("use running temperature");
            case "seal shelf years" -> value(name).from(shelf()).by(v -> v.get("age of the new seal")).sum("{age of the new seal} as said or by its mark")
                    .in(PartsAged.YEARS).figures(1);
            case "press fit" -> value(name).from(reading("shaft seal diameter"), reading("seal bore diameter"))
                    .by(v -> Fits.interference(v.get("shaft seal diameter"), v.get("seal bore diameter")))
                    .sum("outside {shaft seal diameter} - bore {seal bore diameter}");
            case "blank force" -> value(name).from(reading("blank diameter"), pressureOfBlank())
                    .by(v -> Preload.gasLoad(v.get("sheet pressure"), v.get("blank diameter")))
                    .sum("{sheet pressure} x pi/4 x {blank diameter} squared").figures(0);
            case "washer thickness lost" -> value(name).from(reading("sealing washer thickness as new"), reading("sealing washer thickness"))
                    .by(v -> Seals.lostShare(v.get("sealing washer thickness as new"), v.get("sealing washer thickness")))
                    .sum("1 - {sealing washer thickness} / new {sealing washer thickness as new}").figures(0);
            default -> null;
        };
    }

    private static Take step(String step) {
        return new Take(step) {
            @Override
            Optional<Slot> at(Site site, String place) {
                return Days.done(site, step, step, place).map(v -> Slot.of(step, v));
            }

            @Override
            String lacks() {
                return "steps " + step;
            }
        };
    }

    /** The cure time of the sealant that the joint's sheet line names. */
    private static Take cureTime() {
        return by("sheet sealants cure time", (site, place) -> site.sheet("joint", place, "sealant").flatMap(sealant -> {
            for (Statement s : site.sheetLines("sealants")) {
                if (s.at().equals(sealant.says()) && s.what().equals("cure time")) {
                    return Site.written("sheet sealants cure time", place, s);
                }
            }
            return Optional.empty();
        }));
    }

    static Take clampOfJoint() {
        return new Take("clamp of all bolts") {
            @Override
            String quantity() {
                return "clamp force";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                return CamDrive.clampOf(place).at(site, place).map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }

    /** Clearance of the main bearing that the joint's face cuts through. */
    private static Take bearingOfJoint() {
        return new Take("main bearing clearance") {
            @Override
            String quantity() {
                return "main bearing clearance";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Statement> halves = site.sheet("joint", place, "halves of");
                List<Value> values = new ArrayList<>();
                if (halves.isPresent()) {
                    for (Value v : site.store.of("main bearing clearance")) {
                        if (v.of().equals("main bearing clearance") && (halves.get().says().equals("main bearing") || v.at().equals(halves.get().says()))) {
                            values.add(v);
                        }
                    }
                }
                return values.isEmpty() ? Optional.empty()
                        : Optional.of(new Slot(name(), values, values.size() == 1 ? Slot.Reduce.ONE : Slot.Reduce.LEAST));
            }
        };
    }

    /** What was cut, since the step was read, off the face that the joint's sheet line says it meets; nothing where it says none. */
    private static Take cutOfFace() {
        return new Take("cut since joint face step") {
            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Statement> face = site.sheet("joint", place, "meets");
                return face.isPresent() ? cutSince("joint face step", face.get().says()).at(site, place)
                        : Optional.of(Slot.of(name(), Site.exact(name(), place, 0, Units.usual(Dimension.LENGTH), 2, List.of())));
            }

            @Override
            String lacks() {
                return "machining face removed";
            }
        };
    }

    /** The first time that the crankshaft was turned after the seal had gone on; what was turned before does not count. */
    private static Take firstTurned() {
        return by("first turned", "steps turned by hand", (site, place) -> {
            Optional<Value> fitted = Days.done(site, "first turned", "rear seal fitted", place);
            Value first = null;
            for (String step : List.of("pistons fitted", "turned by hand", "turned plugs out", "oil primed", "first start")) {
                Optional<Value> turned = Days.done(site, "first turned", step, "engine").filter(v -> fitted.isPresent()
                        && v.high().orElseThrow().value() > fitted.get().low().orElseThrow().value());
                if (turned.isPresent() && (first == null || turned.get().low().orElseThrow().value() < first.low().orElseThrow().value())) {
                    first = turned.get();
                }
            }
            return Optional.ofNullable(first);
        });
    }

    /** How long a new seal has lain, as its entry has it. */
    private static Take shelf() {
        String name = "age of the new seal";
        return by(name, "any part age", (site, place) -> {
            Optional<Value> age = Optional.empty();
            for (String part : List.of("shaft seal", "sealing ring", "seal")) {
                age = age.or(() -> Days.age(site, name, part, place));
            }
            return age.or(() -> PartsAged.piece(site, place).flatMap(p -> Days.age(site, name, p.part(), p.at())
                    .or(() -> Days.age(site, name, p.part(), place))));
        });
    }

    private static Take freeGrip() {
        return by("sheet seals interference", (site, place) -> {
            for (Statement s : site.sheetLines("seals")) {
                if (s.at().equals(place) && s.what().equals("interference")) {
                    return Site.written("sheet seals interference", place, s);
                }
            }
            return Optional.empty();
        });
    }

    /** Speed of the shaft under the lip at the rev limit; a camshaft turns at half of it. */
    private static Take speedOfShaft() {
        return by("use rev limit", (site, place) -> use("rev limit").at(site, place).map(slot -> slot.values().get(0))
                .map(v -> place.startsWith("cam ") ? Scaled.by(v, 0.5, "use rev limit", place) : v));
    }

    private static Take turnsOfString() {
        return by("turns of the string test", (site, place) -> reading("seal land string advance").at(site, place)
                .map(slot -> slot.values().get(0)).flatMap(v -> {
                    double turns = PartsAged.number(v.asides().getOrDefault("turns", v.asides().getOrDefault("for", "")));
                    return turns > 0 ? Optional.of(Site.number("turns of the string test", place, turns, 0, v.places())) : Optional.empty();
                }));
    }

    /** The pressure behind a blank, where the sheet has one for it; else what the oil's relief valve lets through. */
    private static Take pressureOfBlank() {
        return by("sheet pressure", (site, place) -> {
            Optional<Value> named = Take.sheetLine("pressure").at(site, place).map(slot -> slot.values().get(0));
            return named.isPresent() ? named : Take.sheetStandard("relief valve opening pressure").at(site, place).map(slot -> slot.values().get(0));
        });
    }
}
