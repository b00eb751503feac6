package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.all;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.cutSince;
import static leadlamp.derive.Take.every;
import static leadlamp.derive.Take.greatest;
import static leadlamp.derive.Take.least;
import static leadlamp.derive.Take.mean;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.removed;
import static leadlamp.derive.Take.sheet;
import static leadlamp.derive.Take.sheetLine;
import static leadlamp.derive.Take.sheetStandard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.CamTiming;
import leadlamp.calc.Compression;
import leadlamp.calc.Engagement;
import leadlamp.calc.Fits;
import leadlamp.calc.Gap;
import leadlamp.calc.Preload;
import leadlamp.calc.Sets;
import leadlamp.calc.WorkingHeat;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Units;
import leadlamp.record.Statement;

/** Derived values of head, gasket and seats, and of what machining did to them. */
final class Head {
    private Head() {
    }

    static Derived entry(String name) {
        return switch (name) {
            // ratio and volumes
            case "compression ratio" -> value(name).from(reading("combustion chamber volume"), reading("piston crown volume"),
                    reading("head gasket compressed thickness"), reading("head gasket bore"), reading("piston height"), mean("cylinder bore"),
                    sheet("standard", "stroke"))
                    .by(v -> Compression.ratioOf(v.get("cylinder bore"), v.get("sheet standard stroke"), v.get("combustion chamber volume"),
                            v.get("head gasket bore"), v.get("head gasket compressed thickness"), v.get("piston height"),
                            v.get("piston crown volume")))
                    .sum((v, r) -> {
                        double gasket = Compression.disc(v.get("head gasket bore"), v.get("head gasket compressed thickness"));
                        double deck = -Compression.disc(v.get("cylinder bore"), v.get("piston height"));
                        double swept = Compression.swept(v.get("cylinder bore"), v.get("sheet standard stroke"));
                        double clearance = v.get("combustion chamber volume") + gasket + deck + v.get("piston crown volume");
                        return "chamber " + cm3(v.get("combustion chamber volume")) + " + gasket " + cm3(gasket) + " + deck " + cm3(deck)
                                + " + crown " + cm3(v.get("piston crown volume")) + " = " + cm3(clearance) + "; (swept " + cm3(swept) + " + "
                                + cm3(clearance) + ") / " + cm3(clearance);
                    }).figures(2);
            case "compression ratio spread" -> value(name).from(every("compression ratio"))
                    .by(v -> Sets.spread(v.all("compression ratio")))
                    .sum((v, r) -> "highest " + v.show(Sets.greatest(v.all("compression ratio")), "compression ratio") + " - lowest "
                            + v.show(Sets.least(v.all("compression ratio")), "compression ratio")).figures(2);
            case "combustion chamber volume spread" -> value(name).from(every("combustion chamber volume"))
                    .by(v -> Sets.spread(v.all("combustion chamber volume")))
                    .sum((v, r) -> "largest " + v.show(Sets.greatest(v.all("combustion chamber volume")), "combustion chamber volume")
                            + " - smallest " + v.show(Sets.least(v.all("combustion chamber volume")), "combustion chamber volume"));
            case "swept volume" -> value(name).from(every("cylinder bore"), sheet("standard", "stroke"), cylinders())
                    .by(v -> Compression.sweptByAll(Sets.mean(v.all("cylinder bore")), v.get("sheet standard stroke"),
                            (int) Math.round(v.get("sheet layout cylinders"))))
                    .sum((v, r) -> v.show("sheet layout cylinders") + " x pi/4 x " + v.show("cylinder bore") + " squared x "
                            + v.show("sheet standard stroke")).figures(1);
            // the gasket that the machining asks for
            case "head gasket thickness needed" -> value(name).from(sheet("standard", "head gasket compressed thickness"),
                    removed("block face"), removed("head face"))
                    .by(v -> Gap.gasketNeeded(v.get("sheet standard head gasket compressed thickness"),
                            v.get("machining block face removed"), v.get("machining head face removed")))
                    .sum("{sheet standard head gasket compressed thickness} + block face {machining block face removed} + head face "
                            + "{machining head face removed}");
            case "head gasket thickness over needed" -> value(name).from(reading("head gasket compressed thickness"),
                    reading("head gasket thickness needed"))
                    .by(v -> v.get("head gasket compressed thickness") - v.get("head gasket thickness needed"))
                    .sum("fitted {head gasket compressed thickness} - needed {head gasket thickness needed}");
            case "head gasket thinnest" -> value(name).from(BottomEnd.limit("piston to head gap", true), everyHeight(),
                    least("head squish recess").optional())
                    .by(v -> Gap.gasketForGap(v.get("sheet limits piston to head gap least"), Sets.greatest(v.all("piston height")),
                            v.get("head squish recess", 0)))
                    .sum((v, r) -> "least gap " + v.show("sheet limits piston to head gap least") + " + highest piston "
                            + v.show(Sets.greatest(v.all("piston height")), "piston height")
                            + (v.has("head squish recess") ? " - recess " + v.show("head squish recess") : ""));
            case "head gasket thickest" -> value(name).from(BottomEnd.limit("piston to head gap", false), everyHeight(),
                    greatest("head squish recess").optional())
                    .by(v -> Gap.gasketForGap(v.get("sheet limits piston to head gap most"), Sets.least(v.all("piston height")),
                            v.get("head squish recess", 0)))
                    .sum((v, r) -> "most gap " + v.show("sheet limits piston to head gap most") + " + lowest piston "
                            + v.show(Sets.least(v.all("piston height")), "piston height")
                            + (v.has("head squish recess") ? " - recess " + v.show("head squish recess") : ""));
            case "head gasket thickness for ratio" -> value(name).from(sheet("standard", "compression ratio"), mean("cylinder bore"),
                    sheet("standard", "stroke"), mean("combustion chamber volume"), reading("head gasket bore"), mean("piston height"),
                    mean("piston crown volume"))
                    .by(v -> Gap.gasketForRatio(v.get("sheet standard compression ratio"), v.get("cylinder bore"),
                            v.get("sheet standard stroke"), v.get("combustion chamber volume"), v.get("head gasket bore"),
                            v.get("piston height"), v.get("piston crown volume")))
                    .sum((v, r) -> {
                        String gasket = cm3(Compression.disc(v.get("head gasket bore"), r));
                        return "swept " + cm3(Compression.swept(v.get("cylinder bore"), v.get("sheet standard stroke")))
                                + Template.fill(" / ({sheet standard compression ratio} - 1) - chamber {combustion chamber volume} - crown "
                                        + "{piston crown volume} - deck ", v)
                                + "(" + cm3(-Compression.disc(v.get("cylinder bore"), v.get("piston height"))) + ") = " + gasket + "; " + gasket
                                + Template.fill(" / (pi/4 x {head gasket bore} squared)", v);
                    }).inUnitOf("piston height");
            // faces, dowels, bolts
            case "head height lost" -> value(name).from(sheetStandard("head height"), least("head height"))
                    .by(v -> Gap.heightLost(v.get("sheet limits head height"), v.get("head height")))
                    .sum("standard {sheet limits head height} - {head height}").inUnitOf("head height");
            case "face gap together" -> value(name).from(greatest("head face flatness"), greatest("block face flatness"))
                    .by(v -> Gap.together(v.get("head face flatness"), v.get("block face flatness")))
                    .sum("head {head face flatness} + block {block face flatness}");
            case "fire ring room" -> value(name).from(reading("head gasket bore"), greatest("cylinder bore"),
                    reading("head gasket float on dowels"), reading("cylinder chamfer"))
                    .by(v -> Gap.fireRingRoom(v.get("head gasket bore"), v.get("cylinder bore"), Math.max(0, v.get("head gasket float on dowels")),
                            Math.max(0, v.get("cylinder chamfer"))))
                    .sum("half of (gasket {head gasket bore} - bore {cylinder bore} - float {head gasket float on dowels}) - chamfer "
                            + "{cylinder chamfer}").inUnitOf("cylinder chamfer").figures(2);
            case "head bolt room" -> value(name).from(reading("head bolt hole depth"), reading("head bolt free length"),
                    reading("head height at bolt"), reading("head gasket compressed thickness"), headBoltWasher())
                    .by(v -> Engagement.bottomRoom(v.get("head bolt hole depth"), Engagement.reach(v.get("head bolt free length"),
                            v.get("head height at bolt"), v.get("head gasket compressed thickness"), v.get("head bolt washer thickness"))))
                    .sum("hole {head bolt hole depth} - (bolt {head bolt free length} - head {head height at bolt} - gasket "
                            + "{head gasket compressed thickness} - washer {head bolt washer thickness})").inUnitOf("head bolt hole depth");
            case "head dowel room" -> value(name).from(reading("head gasket compressed thickness"), reading("head dowel hole depth"),
                    reading("head dowel protrusion"))
                    .by(v -> Gap.dowelRoom(v.get("head gasket compressed thickness"), v.get("head dowel hole depth"), v.get("head dowel protrusion")))
                    .sum("gasket {head gasket compressed thickness} + hole {head dowel hole depth} - dowel {head dowel protrusion}")
                    .inUnitOf("head dowel protrusion");
            case "bow share of cam clearance" -> value(name).from(greatest("head face flatness before cut"), least("cam bearing clearance"))
                    .by(v -> Sets.ratio(v.get("head face flatness before cut"), v.get("cam bearing clearance")))
                    .sum("bow {head face flatness before cut} / clearance {cam bearing clearance}").figures(0);
            case "head hardness drop" -> value(name).from(spot("cool"), spot("hot"))
                    .by(v -> Sets.dropShare(v.get("head hardness at cool place"), v.get("head hardness at hot place")))
                    .sum("1 - hot place {head hardness at hot place} / cool place {head hardness at cool place}").figures(0);
            // what came down with the head
            case "cam drop" -> value(name).from(removed("head face"), removed("block face"),
                    sheet("standard", "head gasket compressed thickness"), reading("head gasket compressed thickness"))
                    .by(v -> Gap.camDrop(v.get("machining head face removed"), v.get("machining block face removed"),
                            v.get("sheet standard head gasket compressed thickness"), v.get("head gasket compressed thickness")))
                    .sum("head face {machining head face removed} + block face {machining block face removed} + standard gasket "
                            + "{sheet standard head gasket compressed thickness} - fitted gasket {head gasket compressed thickness}");
            case "cam lag from skim" -> value(name).from(reading("cam drop"), DriveLines.runAngle(), DriveLines.pitchRadius())
                    .by(v -> CamTiming.lagFromDrop(v.get("cam drop"), v.get("sheet drive run angle"), v.get("pitch radius of the cam gear")))
                    .sum("2 x drop {cam drop} x cos {sheet drive run angle} / pitch radius {pitch radius of the cam gear}").figures(2);
            case "port step from skim" -> value(name).from(reading("cam drop"), sheetLine("intake face angle"))
                    .by(v -> Math.abs(Gap.portSlide(v.get("cam drop"), v.get("sheet intake face angle"))))
                    .sum("drop {cam drop} x cos {sheet intake face angle}");
            case "flange gap from skim" -> value(name).from(reading("cam drop"), sheetLine("intake face angle"))
                    .by(v -> Gap.flangeClosing(v.get("cam drop"), v.get("sheet intake face angle")))
                    .sum("drop {cam drop} x sin {sheet intake face angle}");
            case "clamp over gas load" -> value(name).from(clampOfHead(), peakPressure(), reading("head gasket bore"))
                    .by(v -> Sets.ratio(v.get("clamp for one cylinder"), Preload.gasLoad(v.get("peak pressure"), v.get("head gasket bore"))))
                    .sum("clamp for one cylinder {clamp for one cylinder} / ({peak pressure} x pi/4 x {head gasket bore} squared)").figures(2);
            case "target torque ratio" -> value(name).from(Take.use("target torque"), sheet("output", "torque"))
                    .by(v -> Sets.ratio(v.get("use target torque"), v.get("sheet output torque")))
                    .sum("{use target torque} asked / sheet {sheet output torque}").figures(2);
            case "head bolt loosening share" -> value(name).from(least("head bolt loosening torque"),
                    Take.known("head bolt loosening torque").renamed("all head bolts"))
                    .by(v -> Sets.ratio(v.get("head bolt loosening torque"), Sets.mean(v.all("all head bolts"))))
                    .sum((v, r) -> "slackest " + v.show("head bolt loosening torque") + " / mean "
                            + v.show(Sets.mean(v.all("all head bolts")), "all head bolts")).figures(0);
            // seats, guides, tips
            case "seat insert interference" -> value(name).from(reading("seat insert diameter"), reading("head seat counterbore"))
                    .by(v -> Fits.interference(v.get("seat insert diameter"), v.get("head seat counterbore")))
                    .sum("insert {seat insert diameter} - counterbore {head seat counterbore}");
            case "seat insert interference hot" -> value(name).from(reading("seat insert interference"), Materials.expansion("head"),
                    Materials.expansion("seat insert"), reading("head seat counterbore"), Materials.rise("rise of the head", WorkingHeat.HEAD_RISE))
                    .by(v -> Fits.interferenceHot(v.get("seat insert interference"), v.get("expansion of head"), v.get("expansion of seat insert"),
                            v.get("head seat counterbore"), v.get("rise of the head")))
                    .sum("{seat insert interference} - ({expansion of head} - {expansion of seat insert}) x {head seat counterbore} x "
                            + "{rise of the head} (assumed heat)");
            case "valve guide interference" -> value(name).from(reading("valve guide diameter"), reading("head guide hole"))
                    .by(v -> Fits.interference(v.get("valve guide diameter"), v.get("head guide hole")))
                    .sum("guide {valve guide diameter} - hole {head guide hole}");
            case "valve stem clearance" -> value(name).from(Take.ends("valve guide bore"), Take.ends("valve stem diameter"))
                    .by(v -> Fits.clearance(v.get("valve guide bore"), v.get("valve stem diameter")))
                    .sum("guide {valve guide bore} - stem {valve stem diameter}");
            case "valve guide bell-mouth" -> value(name).from(all("valve guide bore", 2)).by(v -> Sets.spread(v.all("valve guide bore")))
                    .sum((v, r) -> "largest " + v.show(Sets.greatest(v.all("valve guide bore")), "valve guide bore") + " - smallest "
                            + v.show(Sets.least(v.all("valve guide bore")), "valve guide bore"));
            case "ring seat depth left" -> value(name).from(reading("ring seat depth"), cutOfSeatsFace())
                    .by(v -> Gap.depthLeft(v.get("ring seat depth"), v.get("cut since ring seat depth")))
                    .sum("{ring seat depth} - cut since then {cut since ring seat depth}");
            case "injector tip height after cut" -> value(name).from(reading("injector tip height"),
                    cutSince("injector tip height", "head face"), reading("injector washer thickness").optional(),
                    sheet("standard", "injector washer thickness").optional())
                    .by(v -> Gap.tipAfterCut(v.get("injector tip height"), v.get("cut since injector tip height"),
                            v.has("injector washer thickness") && v.has("sheet standard injector washer thickness")
                                    ? v.get("injector washer thickness") - v.get("sheet standard injector washer thickness") : 0))
                    .sum("{injector tip height} + cut since then {cut since injector tip height}[ - (washer {injector washer thickness} - standard "
                            + "{sheet standard injector washer thickness})]");
            default -> null;
        };
    }

    /** What was cut, since a ring seat was read, off the face that the sheet says it lies in; off either where the sheet does not say. */
    private static Take cutOfSeatsFace() {
        return new Take("cut since ring seat depth") {
            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Statement> face = site.sheet("seals", place, "face");
                return face.isPresent() ? cutSince("ring seat depth", face.get().says()).at(site, place)
                        : cutSince("ring seat depth", "block face", "head face").at(site, place);
            }

            @Override
            String lacks() {
                return "machining block face removed";
            }
        };
    }

    /** The greatest gas pressure: as whoever maps the engine gives it, else the sheet's. */
    private static Take peakPressure() {
        return by("peak pressure", "use peak pressure", (site, place) -> Take.use("peak pressure").at(site, place)
                .or(() -> sheetLine("peak pressure").at(site, place)).map(slot -> slot.values().get(0)));
    }

    private static String cm3(double volume) {
        return Figures.text(volume, Units.named("cm3").orElseThrow(), 2);
    }

    /** The heights of all pistons; those that were read, for an engine of one cylinder. */
    private static Take everyHeight() {
        return new Take("piston height") {
            @Override
            String quantity() {
                return "piston height";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> all = every("piston height").at(site, place);
                return all.isPresent() ? all : site.places("each cylinder").filter(p -> p.size() == 1)
                        .flatMap(p -> reading("piston height").at(site, p.get(0)));
            }
        };
    }

    private static Take cylinders() {
        return by("sheet layout cylinders", (site, place) -> site.places("each cylinder").map(cylinders -> Site.exact("sheet layout cylinders",
                place, cylinders.size(), Units.si(Dimension.NUMBER), 0, site.sheet("layout", "engine", "cylinders")
                        .map(s -> List.of(s.where())).orElse(List.of()))));
    }

    private static Take spot(String which) {
        return new Take("head hardness at " + which + " place") {
            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> values = new ArrayList<>();
                for (Value v : site.store.of("head hardness")) {
                    if (v.of().equals("head hardness") && v.at().endsWith(which + " place") && site.related(place, v.at())) {
                        values.add(v);
                    }
                }
                return values.isEmpty() ? Optional.empty() : Optional.of(new Slot(name(), values, Slot.Reduce.MEAN));
            }

            @Override
            String lacks() {
                return "head hardness";
            }
        };
    }

    private static Take headBoltWasher() {
        return new Take("head bolt washer thickness") {
            @Override
            String quantity() {
                return "head bolt washer thickness";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = reading("head bolt washer thickness").at(site, place);
                return read.isPresent() ? read : Joints.washers().at(site, place).map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }

    /**
     * Clamp of the head bolts that one cylinder has: by their torque; bolts that are turned on by an angle are at the yield of
     * their class, whose proof stress is taken.
     */
    private static Take clampOfHead() {
        return new Take("clamp for one cylinder") {
            @Override
            String quantity() {
                return "clamp force";
            }

            @Override
            List<String> others() {
                return List.of("proof load");
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                String joint = "head to block";
                Optional<Statement> bolts = site.sheet("joint", joint, "bolts").filter(s -> s.value().isPresent());
                Optional<List<String>> cylinders = site.places("each cylinder");
                Optional<List<String>> heads = site.places("each head");
                Optional<Value> force = site.store.at("joint angle", joint).isPresent() ? site.store.at("proof load", joint)
                        : site.store.at("clamp force", joint);
                if (bolts.isEmpty() || cylinders.isEmpty() || force.isEmpty()) {
                    return Optional.empty();
                }
                double share = bolts.get().value().get().high() * heads.map(List::size).orElse(1) / cylinders.get().size();
                return Optional.of(Slot.of(name(), Scaled.by(force.get(), share, name(), place)));
            }
        };
    }
}
