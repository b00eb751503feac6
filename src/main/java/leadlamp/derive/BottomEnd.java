package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.all;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.ends;
import static leadlamp.derive.Take.every;
import static leadlamp.derive.Take.everyOfAll;
import static leadlamp.derive.Take.greatest;
import static leadlamp.derive.Take.least;
import static leadlamp.derive.Take.mean;
import static leadlamp.derive.Take.ofBoth;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.removed;
import static leadlamp.derive.Take.sheet;
import static leadlamp.derive.Take.sheetStandard;
import static leadlamp.derive.Take.use;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.Bearings;
import leadlamp.calc.Bores;
import leadlamp.calc.CrankTrain;
import leadlamp.calc.Fits;
import leadlamp.calc.Flywheel;
import leadlamp.calc.Gap;
import leadlamp.calc.Growth;
import leadlamp.calc.Preload;
import leadlamp.calc.Rings;
import leadlamp.calc.Sets;
import leadlamp.calc.WorkingHeat;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Units;
import leadlamp.record.LimitLine;

/** Derived values of cylinders, pistons, rings, bearings, crankshaft and rods. */
final class BottomEnd {
    private BottomEnd() {
    }

    static Derived entry(String name) {
        return switch (name) {
            // cylinders
            case "cylinder taper" -> value(name).from(Shapes.along("cylinder bore"))
                    .by(v -> Shapes.alongOneWay(v.all("cylinder bore"), v.placesOf("cylinder bore")))
                    .sum((v, r) -> Shapes.greatestLessLeast(v, "cylinder bore", Shapes.taperPair(v.all("cylinder bore"),
                            v.placesOf("cylinder bore"))));
            case "cylinder ovality" -> value(name).from(Shapes.around("cylinder bore"))
                    .by(v -> Shapes.atOneHeight(v.all("cylinder bore"), v.placesOf("cylinder bore")))
                    .sum((v, r) -> Shapes.greatestLessLeast(v, "cylinder bore", Shapes.ovalityPair(v.all("cylinder bore"),
                            v.placesOf("cylinder bore"))));
            case "cylinder oversize" -> value(name).from(mean("cylinder bore"), sheet("standard", "bore"))
                    .by(v -> Bores.oversize(v.get("cylinder bore"), v.get("sheet standard bore")))
                    .sum("mean bore {cylinder bore} - standard {sheet standard bore}");
            case "cylinder bore over last size" -> value(name).from(mean("cylinder bore"), sheet("standard", "bore"), CrankSizes.lastOversize())
                    .by(v -> Bores.oversize(v.get("cylinder bore"), v.get("sheet standard bore")) - v.get("sheet standard oversizes"))
                    .sum("mean bore {cylinder bore} - standard {sheet standard bore} - last oversize {sheet standard oversizes}");
            case "cylinder wall left" -> value(name).from(CrankSizes.wall(), CrankSizes.boredSince())
                    .by(v -> v.get("cylinder wall") - v.get("bored since") / 2)
                    .sum("wall {cylinder wall} - half of {bored since} bored since").finer();
            case "cylinder top wear" -> value(name).from(boresAt("top"), boresAt("unworn"))
                    .by(v -> Sets.greatest(v.all("cylinder bore top")) - Sets.mean(v.all("cylinder bore unworn")))
                    .sum((v, r) -> "top " + v.show(Sets.greatest(v.all("cylinder bore top")), "cylinder bore top") + " - unworn "
                            + v.show(Sets.mean(v.all("cylinder bore unworn")), "cylinder bore unworn"));
            case "cylinder wear rate" -> value(name).from(reading("cylinder top wear"), distance("claimed distance"))
                    .by(v -> v.get("cylinder top wear") / v.get("build claimed distance") * 1e7)
                    .sum("top wear {cylinder top wear} / {build claimed distance} x 10000 km").figures(3);
            case "cylinder wear ratio" -> value(name).from(boresAt("top"), boresAt("bottom"), boresAt("unworn"))
                    .by(v -> Bores.wearRatio(Sets.greatest(v.all("cylinder bore top")), Sets.mean(v.all("cylinder bore bottom")),
                            Sets.mean(v.all("cylinder bore unworn"))))
                    .sum((v, r) -> {
                        String unworn = v.show(Sets.mean(v.all("cylinder bore unworn")), "cylinder bore unworn");
                        return "(top " + v.show(Sets.greatest(v.all("cylinder bore top")), "cylinder bore top") + " - unworn " + unworn + ") / (bottom "
                                + v.show(Sets.mean(v.all("cylinder bore bottom")), "cylinder bore bottom") + " - unworn " + unworn + ")";
                    }).figures(2);
            case "cylinder bore after clean-up" -> value(name).from(greatest("cylinder bore"), greatest("cylinder pit depth"))
                    .by(v -> Bores.afterCleanUp(v.get("cylinder bore"), v.get("cylinder pit depth")))
                    .sum("bore {cylinder bore} + 2 x pit {cylinder pit depth}");
            // pistons and pins
            case "piston clearance" -> value(name).from(Shapes.inTravel("cylinder bore", Slot.Reduce.LEAST), reading("piston skirt diameter"))
                    .by(v -> Fits.clearance(v.get("cylinder bore"), v.get("piston skirt diameter")))
                    .sum("smallest bore {cylinder bore} - skirt {piston skirt diameter}");
            case "piston clearance hot" -> value(name).from(reading("piston clearance"), reading("piston skirt diameter"),
                    Shapes.inTravel("cylinder bore", Slot.Reduce.LEAST), Materials.expansion("piston"), Materials.expansion("cylinder", "liner", "block"),
                    riseOfSkirt(), riseOfWall())
                    .by(v -> Growth.clearanceHot(v.get("piston clearance"), v.get("piston skirt diameter"), v.get("expansion of piston"),
                            v.get("rise of the skirt"), v.get("cylinder bore"), v.get("expansion of cylinder"), v.get("rise of the wall")))
                    .sum("{piston clearance} - {piston skirt diameter} x {expansion of piston} x {rise of the skirt} + {cylinder bore} x "
                            + "{expansion of cylinder} x {rise of the wall} (plain expansion: a skirt with struts closes less)");
            case "piston hot room over sheet" -> value(name).from(reading("piston clearance"), reading("piston skirt diameter"),
                    PistonAlloys.fitted(), PistonAlloys.ofSheet(), limit("piston clearance", true))
                    .by(v -> v.get("piston clearance") - v.get("sheet limits piston clearance least") - v.get("piston skirt diameter")
                            * WorkingHeat.SKIRT_RISE * (v.get("expansion of piston") - v.get("expansion of the sheet's piston")))
                    .sum("{piston clearance} - sheet's least {sheet limits piston clearance least} - {piston skirt diameter} x "
                            + PistonAlloys.RISE + " x ({expansion of piston} - {expansion of the sheet's piston}) (assumed heat)").finer();
            case "piston mass spread" -> value(name).from(every("piston mass"), every("gudgeon pin mass").optional())
                    .by(v -> Sets.spread(Shapes.together(v, "piston mass", "gudgeon pin mass")))
                    .sum((v, r) -> "heaviest " + v.show(Sets.greatest(Shapes.together(v, "piston mass", "gudgeon pin mass")), "piston mass")
                            + " - lightest " + v.show(Sets.least(Shapes.together(v, "piston mass", "gudgeon pin mass")), "piston mass")
                            + (v.has("gudgeon pin mass") ? ", pin and all" : ", without pins"));
            case "connecting rod big end mass spread" -> spread(name, "connecting rod big end mass", "heaviest", "lightest");
            case "connecting rod small end mass spread" -> spread(name, "connecting rod small end mass", "heaviest", "lightest");
            case "piston height difference" -> offTheRest(name, "piston height", "each cylinder");
            case "gudgeon pin clearance in piston" -> clearance(name, "piston pin bore", "gudgeon pin diameter", "pin bore", "pin");
            case "gudgeon pin clearance in rod" -> clearance(name, "small-end bush bore", "gudgeon pin diameter", "bush", "pin");
            case "gudgeon pin end float" -> value(name).from(reading("piston clip distance"), reading("gudgeon pin length"))
                    .by(v -> Fits.gapOverParts(v.get("piston clip distance"), v.get("gudgeon pin length")))
                    .sum("between clips {piston clip distance} - pin {gudgeon pin length}");
            case "piston height from sizes" -> value(name).from(sheet("standard", "stroke"), sheet("standard", "rod length"),
                    compressionHeight(), blockHeight())
                    .by(v -> CrankTrain.heightFromSizes(v.get("sheet standard stroke") / 2, v.get("sheet standard rod length"),
                            v.get("piston compression height"), v.get("block height")))
                    .sum((v, r) -> "half stroke " + v.show(v.get("sheet standard stroke") / 2, "sheet standard stroke") + " + rod "
                            + v.show("sheet standard rod length") + " + compression height " + v.show("piston compression height")
                            + " - block " + v.show("block height"))
                    .inUnitOf("block height");
            case "piston to head gap" -> value(name).from(reading("piston height"), reading("head gasket compressed thickness"),
                    reading("head squish recess").optional())
                    .by(v -> Gap.pistonToHead(v.get("head gasket compressed thickness"), v.get("piston height"),
                            v.get("head squish recess", 0)))
                    .sum("{head gasket compressed thickness} - {piston height}[ + recess {head squish recess}]");
            case "piston to head gap at speed" -> value(name).from(reading("piston to head gap"), use("rev limit"),
                    sheet("standard", "stroke"), sheet("standard", "rod length"), sheet("masses", "reciprocating"),
                    sheet("standard", "rod section"), Materials.modulus("connecting rod"), reading("piston clearance").optional())
                    .by(v -> Gap.atSpeed(v.get("piston to head gap"), CrankTrain.rodStretch(CrankTrain.topLoad(
                            v.get("sheet masses reciprocating"), v.get("sheet standard stroke") / 2, v.get("sheet standard rod length"),
                            v.get("use rev limit")), v.get("sheet standard rod length"), v.get("sheet standard rod section"),
                            v.get("modulus of connecting rod")), Math.max(0, v.get("piston clearance", 0)) / 2))
                    .sum((v, r) -> v.show("piston to head gap") + " - stretch of the rod " + In.show(v.get("piston to head gap")
                            - Math.max(0, v.get("piston clearance", 0)) / 2 - r, Units.usual(Dimension.LENGTH), 3)
                            + Template.fill(" (at {use rev limit})[ - half of piston clearance {piston clearance}]", v));
            case "piston to head gap difference" -> value(name).from(reading("piston to head gap"), reading("squish wire thickness"))
                    .by(v -> v.get("piston to head gap") - v.get("squish wire thickness"))
                    .sum("worked out {piston to head gap} - wire {squish wire thickness}");
            // rings
            case "piston ring least gap" -> value(name).from(mean("cylinder bore"), RingSizes.gapFactor())
                    .by(v -> Rings.leastGap(v.get("gap factor of the duty"), v.get("cylinder bore")))
                    .sum((v, r) -> Figures.plain(v.get("gap factor of the duty"), 4) + " x bore " + v.show("cylinder bore")).figures(2);
            case "piston ring gap hot" -> value(name).from(reading("piston ring end gap"), mean("cylinder bore"),
                    Materials.steelExpansion("ring"), RingSizes.ringRise(), Materials.expansion("cylinder", "liner", "block"),
                    Materials.rise("rise of the wall", WorkingHeat.TOP_WALL_RISE))
                    .by(v -> Rings.gapHot(v.get("piston ring end gap"), v.get("cylinder bore"), v.get("expansion of ring"),
                            v.get("rise of the ring"), v.get("expansion of cylinder"), v.get("rise of the wall")))
                    .sum("{piston ring end gap} - pi x {cylinder bore} x ({expansion of ring} x {rise of the ring} - {expansion of cylinder} x "
                            + "{rise of the wall}) (assumed heat)");
            case "piston ring end gap corrected" -> value(name).from(reading("piston ring end gap"), RingSizes.boreAtTheGap(),
                    RingSizes.smallestBore())
                    .by(v -> Rings.gapAt(v.get("piston ring end gap"), v.get("bore at the gap"), v.get("smallest bore")))
                    .sum("{piston ring end gap} - pi x (bore where it was gauged {bore at the gap} - smallest bore {smallest bore})");
            case "piston ring excess gap" -> value(name).from(reading("piston ring end gap"), RingSizes.boreAtTheGap(1),
                    sheet("standard", "bore"), RingSizes.newGap())
                    .by(v -> Rings.excessGap(v.get("piston ring end gap"), v.get("sheet limits piston ring end gap"),
                            v.get("bore at the gap"), v.get("sheet standard bore")))
                    .sum("{piston ring end gap} - new {sheet limits piston ring end gap} - pi x (bore {bore at the gap} - standard "
                            + "{sheet standard bore})");
            case "piston ring side clearance from sizes" -> value(name).from(greatest("piston groove width"), least("piston ring width"))
                    .by(v -> Fits.gapOverParts(v.get("piston groove width"), v.get("piston ring width")))
                    .sum("groove {piston groove width} - ring {piston ring width}");
            case "piston ring room behind" -> value(name).from(least("piston groove depth"), greatest("piston ring radial thickness"))
                    .by(v -> Rings.grooveDepthBehind(v.get("piston groove depth"), v.get("piston ring radial thickness")))
                    .sum("groove {piston groove depth} - ring {piston ring radial thickness}");
            case "piston ring gap separation" -> value(name).from(all("piston ring gap angle", 2))
                    .by(v -> Rings.gapSeparation(RingSizes.fromTheTop(v.all("piston ring gap angle"), v.placesOf("piston ring gap angle"))))
                    .sum((v, r) -> RingSizes.nearestGaps(v, r));
            // plain bearings
            case "main bearing clearance" -> clearanceEnds(name, "main bearing bore with shells", "main journal diameter", "journal");
            case "big-end bearing clearance" -> clearanceEnds(name, "big-end bearing bore with shells", "crankpin diameter", "crankpin");
            case "main bearing clearance by sizes" -> bySizes(name, "main housing bore", "main shell wall", "main journal diameter");
            case "big-end bearing clearance by sizes" -> bySizes(name, "big-end housing bore", "big-end shell wall", "crankpin diameter");
            case "plain bearing clearance by sizes" -> bySizes(name, "bearing housing bore", "shell wall", "journal diameter");
            case "main bearing method difference" -> difference(name, "main bearing clearance", "main bearing clearance by sizes");
            case "big-end bearing method difference" -> difference(name, "big-end bearing clearance", "big-end bearing clearance by sizes");
            case "plain bearing method difference" -> difference(name, "plain bearing clearance", "plain bearing clearance by sizes");
            case "main bearing clearance over journal" -> overJournal(name, "main bearing clearance", "main journal diameter");
            case "big-end bearing clearance over journal" -> overJournal(name, "big-end bearing clearance", "crankpin diameter");
            case "plain bearing clearance over journal" -> overJournal(name, "plain bearing clearance", "journal diameter");
            case "plain bearing strip spread" -> value(name).from(CrankSizes.strip()).by(v -> v.get("width of the strip"))
                    .sum((v, r) -> "widest " + v.aside("width of the strip", "most") + " - narrowest " + v.aside("width of the strip", "least"));
            case "shell size mismatch" -> value(name).from(CrankSizes.shellMark(), reading("journal undersize"))
                    .by(v -> v.get("shell size mark") - v.get("journal undersize"))
                    .sum("marked {shell size mark} - journal {journal undersize}");
            case "main bearing clearance spread" -> spread(name, "main bearing clearance", "widest", "tightest");
            case "main housing ovality" -> ovality(name, "main housing bore");
            case "big-end housing ovality" -> ovality(name, "big-end housing bore");
            case "bearing housing ovality" -> ovality(name, "bearing housing bore");
            case "cap joint step" -> value(name).from(Shapes.bothSides("bearing housing bore"))
                    .by(v -> Bearings.capJointStep(Shapes.bySide(v, "bearing housing bore", true), Shapes.bySide(v, "bearing housing bore", false)))
                    .sum((v, r) -> "half of (" + Shapes.apart(v, Shapes.bySide(v, "bearing housing bore", true), "",
                            Shapes.bySide(v, "bearing housing bore", false), "", "bearing housing bore") + ")").finer();
            case "shell crush" -> value(name).from(reading("shell stand"), CrankSizes.housingOfShell(), CrankSizes.standardHousing())
                    .by(v -> Bearings.crushLeft(v.get("shell stand"), v.get("bearing housing bore"), v.get("sheet limits bearing housing bore")))
                    .sum("stand {shell stand} - pi/2 x (housing {bearing housing bore} - sheet {sheet limits bearing housing bore})").finer();
            case "shell hole open share" -> value(name).from(greatest("main shell hole offset"), reading("main shell hole diameter"),
                    reading("main housing oil hole diameter"))
                    .by(v -> Bearings.holeOpen(v.get("main shell hole diameter"), v.get("main housing oil hole diameter"),
                            Math.max(0, v.get("main shell hole offset"))))
                    .sum("overlap of holes {main shell hole diameter} and {main housing oil hole diameter}, {main shell hole offset} apart, "
                            + "over the smaller").figures(0);
            case "main journal taper" -> journalTaper(name, "main journal diameter");
            case "crankpin taper" -> journalTaper(name, "crankpin diameter");
            case "journal taper" -> journalTaper(name, "journal diameter");
            case "main journal ovality" -> ovality(name, "main journal diameter");
            case "crankpin ovality" -> ovality(name, "crankpin diameter");
            case "journal ovality" -> ovality(name, "journal diameter");
            case "main journal undersize" -> undersize(name, "main journal diameter");
            case "crankpin undersize" -> undersize(name, "crankpin diameter");
            case "journal undersize" -> undersize(name, "journal diameter");
            case "main journal case left" -> caseLeft(name, "main journal undersize");
            case "crankpin case left" -> caseLeft(name, "crankpin undersize");
            case "journal case left" -> caseLeft(name, "journal undersize");
            case "main journal size difference" -> offTheRest(name, "main journal diameter", "each main bearing");
            case "crankpin size difference" -> offTheRest(name, "crankpin diameter", "each crankpin");
            case "journal size difference" -> offTheRest(name, "journal diameter", "each plain bearing");
            case "fillet height over film" -> value(name).from(greatest("journal fillet radius"), CrankSizes.widthAtTheWebs(), reading("shell width"),
                    reading("shell chamfer"), least("plain bearing clearance"))
                    .by(v -> Bearings.filletHeight(v.get("journal fillet radius"), CrankSizes.edgeFromWeb(v)) - v.get("plain bearing clearance") / 2)
                    .sum((v, r) -> CrankSizes.filletInWords(v)).finer();
            // crankshaft
            case "crankshaft bow" -> value(name).from(reading("main journal runout")).by(v -> Bearings.bow(v.get("main journal runout")))
                    .sum("half of {main journal runout}").finer();
            case "crankshaft adjacent runout" -> value(name).from(neighbour("main journal runout"), neighbour("main journal runout angle"))
                    .by(v -> Shapes.worstNeighbour(v))
                    .sum((v, r) -> Shapes.neighbours(v));
            case "bow share of clearance" -> value(name).from(reading("crankshaft bow"), least("main bearing clearance"))
                    .by(v -> Bearings.shareOfClearance(v.get("crankshaft bow"), v.get("main bearing clearance")))
                    .sum("bow {crankshaft bow} / half of the clearance {main bearing clearance}").figures(0);
            case "crankshaft end float from sizes" -> value(name).from(reading("thrust journal width"), thrustHousing(),
                    washers())
                    .by(v -> Bearings.endFloat(v.get("thrust journal width"), v.get("sheet standard thrust housing width"),
                            v.all("thrust washer thickness")[0], v.all("thrust washer thickness")[1]))
                    .sum((v, r) -> "journal " + v.show("thrust journal width") + " - housing " + v.show("sheet standard thrust housing width")
                            + Shapes.each(v, "thrust washer thickness", " - washer "));
            case "crankshaft end float share" -> value(name).from(reading("crankshaft end float"), limit("crankshaft end float", true),
                    limit("crankshaft end float", false))
                    .by(v -> Bearings.shareOfBand(v.get("crankshaft end float"), v.get("sheet limits crankshaft end float least"),
                            v.get("sheet limits crankshaft end float most")))
                    .sum("({crankshaft end float} - {sheet limits crankshaft end float least}) / ({sheet limits crankshaft end float most} - "
                            + "{sheet limits crankshaft end float least})").figures(0);
            case "connecting rod side clearance from sizes" -> value(name).from(reading("crankpin width"), rodsOnPin())
                    .by(v -> Bearings.sideClearance(v.get("crankpin width"), v.all("connecting rod width")))
                    .sum((v, r) -> "crankpin " + v.show("crankpin width") + " - rod " + Shapes.list(v, "connecting rod width"));
            case "connecting rod bend per 100 mm" -> scaled(name, "connecting rod bend", 0.1);
            case "connecting rod twist per 100 mm" -> scaled(name, "connecting rod twist", 0.1);
            case "liner protrusion spread" -> value(name).from(all("liner protrusion", 2))
                    .by(v -> Sets.spread(v.all("liner protrusion")))
                    .sum((v, r) -> "highest " + v.show(Sets.greatest(v.all("liner protrusion")), "liner protrusion") + " - lowest "
                            + v.show(Sets.least(v.all("liner protrusion")), "liner protrusion"));
            case "liner protrusion difference" -> value(name).from(ofBoth("liner protrusion"))
                    .by(v -> Shapes.betweenNeighbours(v, "liner protrusion"))
                    .sum((v, r) -> Shapes.nearestPoints(v, "liner protrusion"));
            case "liner pit share" -> value(name).from(greatest("liner pit depth"), least("liner wall"))
                    .by(v -> Bores.pitShare(v.get("liner pit depth"), v.get("liner wall")))
                    .sum("pit {liner pit depth} / wall {liner wall}").figures(0);
            case "allowed unbalance" -> value(name).from(grade(), reading("rotating assembly mass"), use("rev limit"))
                    .by(v -> Flywheel.allowedUnbalance(v.get("sheet balance grade"), v.get("rotating assembly mass"), v.get("use rev limit")))
                    .sum("grade {sheet balance grade} x {rotating assembly mass} / (2 x pi x {use rev limit} / 60)").figures(0);
            case "crankshaft centre rise" -> value(name).from(CrankSizes.rise()).by(v -> v.get("rise of the crankshaft"))
                    .sum((v, r) -> v.aside("rise of the crankshaft", "sum")).finer();
            case "bob weight change" -> value(name).from(mean("piston mass"), sheet("masses", "piston"), sheet("balance", "bob weight"),
                    CrankSizes.balancedShare(), CrankSizes.pistonsOfOnePin())
                    .by(v -> v.get("pistons of one crankpin") * v.get("sheet balance share")
                            * (v.get("piston mass") - v.get("sheet masses piston")) / v.get("sheet balance bob weight"))
                    .sum("{pistons of one crankpin} x {sheet balance share} x (piston {piston mass} - sheet {sheet masses piston}) / bob weight "
                            + "{sheet balance bob weight}").figures(1);
            case "turning torque jump" -> value(name).from(Rises.here(), Rises.others()).at(Rises::places)
                    .by(v -> Sets.ratio(v.get("rise here"), Sets.median(v.all("rises of its mates"))))
                    .sum((v, r) -> "rise here " + v.show("rise here") + " / middle of the rises of its mates "
                            + v.show(Sets.median(v.all("rises of its mates")), "rises of its mates")).figures(1);
            case "rod bolt stress" -> value(name).from(reading("rod bolt stretch"), Fasteners.rodBoltLength(), Materials.boltModulus())
                    .by(v -> Preload.stressFromStretch(v.get("modulus of bolt steel"), v.get("rod bolt stretch"),
                            v.get("rod bolt effective length")))
                    .sum("{modulus of bolt steel} x {rod bolt stretch} / {rod bolt effective length}").figures(0);
            case "rod cap load at rev limit" -> value(name).from(reading("piston mass"), reading("gudgeon pin mass"),
                    reading("connecting rod big end mass"), reading("connecting rod small end mass"), use("rev limit"),
                    sheet("standard", "stroke"), sheet("standard", "rod length"))
                    .by(v -> CrankTrain.capLoad(v.get("piston mass") + v.get("gudgeon pin mass") + v.get("connecting rod small end mass"),
                            v.get("connecting rod big end mass"), v.get("sheet standard stroke") / 2, v.get("sheet standard rod length"),
                            v.get("use rev limit")))
                    .sum("((piston {piston mass} + pin {gudgeon pin mass} + small end {connecting rod small end mass}) x (1 + half of {sheet standard stroke} "
                            + "/ {sheet standard rod length}) + big end {connecting rod big end mass}) x half of {sheet standard stroke} x "
                            + "(2 x pi x {use rev limit} / 60) squared")
                    .figures(0);
            case "rod clamp over cap load" -> value(name).from(CrankSizes.clampOfRod(), reading("rod cap load at rev limit"))
                    .by(v -> Sets.ratio(v.get("clamp of the rod's bolts"), v.get("rod cap load at rev limit")))
                    .sum((v, r) -> v.aside("clamp of the rod's bolts", "sum") + " / cap load " + v.show("rod cap load at rev limit")).figures(2);
            case "connecting rod speed in hand" -> value(name).from(reading("connecting rod rated speed"), use("rev limit"))
                    .by(v -> v.get("connecting rod rated speed") - v.get("use rev limit"))
                    .sum("rated {connecting rod rated speed} - rev limit {use rev limit}");
            case "valve piston clearance difference" -> value(name).from(reading("valve piston clearance"), CrankSizes.roomOfItsMates())
                    .by(v -> v.get("valve piston clearance") - Sets.median(v.all("room of its mates")))
                    .sum((v, r) -> v.show("valve piston clearance") + " - middle of its mates "
                            + v.show(Sets.median(v.all("room of its mates")), "room of its mates"));
            case "rod bolt inertia load share" -> value(name).from(reading("rod bolt stress"), Fasteners.rodBoltArea(),
                    reading("rod cap load at rev limit"), Fasteners.boltsOfRod())
                    .by(v -> v.get("rod cap load at rev limit") / (Preload.load(v.get("rod bolt stress area"), v.get("rod bolt stress"))
                            * v.get("bolts of one rod")))
                    .sum("cap load {rod cap load at rev limit} / ({bolts of one rod} bolts x {rod bolt stress} x {rod bolt stress area})")
                    .figures(0);
            case "reciprocating load ratio" -> value(name).from(use("rev limit"), sheet("output", "rev limit"))
                    .by(v -> CrankTrain.loadRatio(v.get("use rev limit"), v.get("sheet output rev limit")))
                    .sum("({use rev limit} / {sheet output rev limit}) squared").figures(2);
            case "mean piston speed" -> value(name).from(sheet("standard", "stroke"), use("rev limit"))
                    .by(v -> CrankTrain.meanPistonSpeed(v.get("sheet standard stroke"), v.get("use rev limit")))
                    .sum("2 x stroke {sheet standard stroke} x {use rev limit} / 60").figures(1);
            case "damper fit" -> clearance(name, "crank damper bore", "crank nose diameter", "damper", "nose");
            case "second order force" -> value(name).from(fourInLine(), sheet("masses", "reciprocating"), sheet("standard", "stroke"),
                    sheet("standard", "rod length"), use("rev limit"))
                    .by(v -> CrankTrain.secondOrderForce(v.get("sheet masses reciprocating"), v.get("sheet standard stroke") / 2,
                            v.get("sheet standard rod length"), v.get("use rev limit")))
                    .sum("4 x {sheet masses reciprocating} x (half of {sheet standard stroke}) squared / {sheet standard rod length} x "
                            + "(2 x pi x {use rev limit} / 60) squared").figures(0);
            case "crankshaft plug pressure" -> value(name).from(reading("crankshaft plug radius"), use("rev limit"),
                    Take.highest("engine oil pressure"), Oils.density())
                    .by(v -> Bearings.plugPressure(v.get("engine oil pressure"), v.get("density of oil"), v.get("use rev limit"),
                            v.get("crankshaft plug radius"), 0))
                    .sum("{engine oil pressure} + {density of oil} x (2 x pi x {use rev limit} / 60 x {crankshaft plug radius}) squared / 2").figures(1);
            case "crankshaft plug force" -> value(name).from(reading("crankshaft plug pressure"), reading("crankshaft plug diameter"),
                    reading("crankshaft plug mass"), reading("crankshaft plug radius"), use("rev limit"))
                    .by(v -> Bearings.plugForce(v.get("crankshaft plug pressure"), v.get("crankshaft plug diameter"),
                            v.get("crankshaft plug mass"), v.get("crankshaft plug radius"), v.get("use rev limit")))
                    .sum("{crankshaft plug pressure} x pi/4 x {crankshaft plug diameter} squared + {crankshaft plug mass} x "
                            + "{crankshaft plug radius} x (2 x pi x {use rev limit} / 60) squared").figures(0);
            default -> null;
        };
    }

    private static Derived spread(String name, String of, String most, String least) {
        return value(name).from(every(of)).by(v -> Sets.spread(v.all(of)))
                .sum((v, r) -> most + " " + v.show(Sets.greatest(v.all(of)), of) + " - " + least + " " + v.show(Sets.least(v.all(of)), of));
    }

    private static Derived clearance(String name, String hole, String shaft, String holeWord, String shaftWord) {
        return value(name).from(reading(hole), reading(shaft)).by(v -> Fits.clearance(v.get(hole), v.get(shaft)))
                .sum(holeWord + " {" + hole + "} - " + shaftWord + " {" + shaft + "}");
    }

    private static Derived clearanceEnds(String name, String bore, String journal, String word) {
        return value(name).from(ends(bore), ends(journal)).by(v -> Fits.clearance(v.get(bore), v.get(journal)))
                .sum("bore {" + bore + "} - " + word + " {" + journal + "}");
    }

    private static Derived bySizes(String name, String housing, String wall, String journal) {
        return value(name).from(mean(housing), walls(wall), mean(journal))
                .by(v -> Fits.bearingClearance(v.get(housing), v.all(wall)[0], v.all(wall)[1], v.get(journal)))
                .sum((v, r) -> "housing " + v.show(housing) + Shapes.each(v, wall, " - wall ") + " - journal " + v.show(journal))
                .inUnitOf(journal);
    }

    /** The walls of both halves; one reading said of the whole bearing serves for both. */
    private static Take walls(String wall) {
        return new Take(wall) {
            @Override
            String quantity() {
                return wall;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> both = all(wall, 2).at(site, place);
                return both.isPresent() ? both
                        : reading(wall).at(site, place).map(one -> new Slot(wall, List.of(one.values().get(0), one.values().get(0)),
                                Slot.Reduce.SUM));
            }
        };
    }

    private static Derived difference(String name, String one, String other) {
        return value(name).from(directly(one), mean(other)).by(v -> v.get(one) - v.get(other))
                .sum("read {" + one + "} - by sizes {" + other + "}");
    }

    /** A clearance that was read straight, by plastic gauge or the like. */
    private static Take directly(String quantity) {
        return new Take(quantity) {
            @Override
            String quantity() {
                return quantity;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                return reading(quantity).at(site, place).filter(slot -> !slot.values().get(0).derived());
            }
        };
    }

    private static Derived overJournal(String name, String clearance, String journal) {
        return value(name).from(reading(clearance), mean(journal)).by(v -> Bearings.overJournal(v.get(clearance), v.get(journal)))
                .sum("{" + clearance + "} / {" + journal + "}").figures(3);
    }

    private static Derived ovality(String name, String of) {
        return value(name).from(Shapes.around(of)).by(v -> Shapes.atOneHeight(v.all(of), v.placesOf(of)))
                .sum((v, r) -> Shapes.greatestLessLeast(v, of, Shapes.ovalityPair(v.all(of), v.placesOf(of))));
    }

    private static Derived journalTaper(String name, String of) {
        return value(name).from(Shapes.along(of)).by(v -> Shapes.alongOneWay(v.all(of), v.placesOf(of)))
                .sum((v, r) -> Shapes.greatestLessLeast(v, of, Shapes.taperPair(v.all(of), v.placesOf(of))));
    }

    private static Derived undersize(String name, String of) {
        return value(name).from(sheetStandard(of), mean(of)).by(v -> Bearings.undersize(v.get("sheet limits " + of), v.get(of)))
                .sum("standard {sheet limits " + of + "} - {" + of + "}").inUnitOf(of);
    }

    private static Derived caseLeft(String name, String undersize) {
        return value(name).from(CrankSizes.caseDepth(), reading(undersize))
                .by(v -> Bearings.caseLeft(v.get("sheet case depth"), Math.max(0, v.get(undersize))))
                .sum("case {sheet case depth} - half of {" + undersize + "}");
    }

    /** One place's mean against the middle of the means of all others: four readings of one journal are one journal. */
    private static Derived offTheRest(String name, String of, String group) {
        String rest = "others of " + of;
        return value(name).from(reading(of), others(of, rest, group))
                .by(v -> Sets.offTheRest(v.get(of), Shapes.means(v, rest, group)))
                .sum((v, r) -> v.show(of) + " - middle of the others " + v.show(Sets.median(Shapes.means(v, rest, group)), of));
    }

    private static Take others(String of, String name, String group) {
        Take every = everyOfAll(of);
        return new Take(name) {
            @Override
            String quantity() {
                return of;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                return every.at(site, place).flatMap(slot -> {
                    List<Value> others = new ArrayList<>(slot.values());
                    others.removeIf(v -> Placing.shortened(v.at(), group).equals(place));
                    return others.isEmpty() ? Optional.empty() : Optional.of(new Slot(name(), others, Slot.Reduce.MEAN));
                });
            }
        };
    }

    /** The heat that the record tells of the piston, over the workshop's; an assumed one would decide the answer by itself. */
    private static Take riseOfSkirt() {
        return by("rise of the skirt", "use running temperature", (site, place) -> site.word("use", "engine", "running temperature")
                .flatMap(s -> Site.written("rise of the skirt", place, s)).flatMap(v -> overWorkshop("rise of the skirt", place, v)));
    }

    /** A wall beside the skirt is about as hot as the coolant behind it. */
    private static Take riseOfWall() {
        return by("rise of the wall", "coolant temperature", (site, place) -> site.store.at("coolant temperature", place)
                .flatMap(v -> overWorkshop("rise of the wall", place, v)));
    }

    private static Optional<Value> overWorkshop(String name, String place, Value hot) {
        if (!hot.plain()) {
            return Optional.empty();
        }
        Estimate end = hot.low().orElseThrow();
        Optional<Estimate> rise = Optional.of(new Estimate(end.value() - WorkingHeat.WORKSHOP, Dimension.TEMPERATURE_DIFFERENCE, end.doubt()));
        return Optional.of(new Value(name, name, place, rise, rise, Materials.KELVIN, hot.figures(), "", hot.usual(), "", hot.told(),
                java.util.Map.of(), hot.places()));
    }

    private static Derived scaled(String name, String of, double wanted) {
        return value(name).from(reading(of), aside(of, "span")).by(v -> Fits.scaled(v.get(of), v.get("span of " + of), wanted))
                .sum("{" + of + "} x 100 mm / {span of " + of + "}").figures(3);
    }

    /** What a reading was taken at: its span, its radius. */
    static Take aside(String quantity, String key) {
        return by(key + " of " + quantity, (site, place) -> reading(quantity).at(site, place)
                .flatMap(slot -> Asides.size(key + " of " + quantity, place, slot.values().get(0), key)));
    }

    private static Take boresAt(String height) {
        return new Take("cylinder bore " + height) {
            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> bores = new ArrayList<>();
                for (Value bore : site.store.within("cylinder bore", place)) {
                    if (bore.of().equals("cylinder bore") && (" " + bore.at() + " ").contains(" " + height + " ")) {
                        bores.add(bore);
                    }
                }
                return bores.isEmpty() ? Optional.empty() : Optional.of(new Slot(name(), bores, Slot.Reduce.MEAN));
            }
        };
    }

    private static Take distance(String what) {
        return by("build " + what, (site, place) -> site.word("build", "engine", what)
                .filter(s -> s.value().isPresent() && s.value().get().unit().dimension() == Dimension.LENGTH)
                .flatMap(s -> Site.written("build " + what, place, s)));
    }

    /** Compression height as read or as the maker gives it; else the sheet's. */
    private static Take compressionHeight() {
        return orSheet("piston compression height", "piston compression height");
    }

    /** Block height as read; else the sheet's less what was cut. */
    private static Take blockHeight() {
        return new Take("block height") {
            @Override
            String quantity() {
                return "block height";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = reading("block height").at(site, place);
                if (read.isPresent()) {
                    return read;
                }
                Optional<Slot> standard = sheet("standard", "block height").at(site, place);
                Optional<Slot> cut = removed("block face").at(site, place);
                if (standard.isEmpty() || cut.isEmpty()) {
                    return Optional.empty();
                }
                Value size = standard.get().values().get(0);
                double off = 0;
                List<leadlamp.record.Where> where = new ArrayList<>(size.places());
                for (Value one : cut.get().values()) {
                    off += one.high().orElseThrow().value();
                    where.addAll(one.places());
                }
                return Optional.of(Slot.of("block height", Site.exact("block height", place, size.low().orElseThrow().value() - off,
                        size.unit(), size.figures(), where)));
            }
        };
    }

    /** A reading, else the sheet's standard size of it. */
    static Take orSheet(String quantity, String line) {
        return new Take(quantity) {
            @Override
            String quantity() {
                return quantity;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = reading(quantity).at(site, place);
                return read.isPresent() ? read : sheet("standard", line).at(site, place)
                        .map(slot -> new Slot(quantity, slot.values(), Slot.Reduce.ONE));
            }
        };
    }

    private static Take thrustHousing() {
        return sheet("standard", "thrust housing width");
    }

    private static Take washers() {
        return new Take("thrust washer thickness") {
            @Override
            String quantity() {
                return "thrust washer thickness";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> read = site.store.within("thrust washer thickness", "engine");
                if (read.isEmpty()) {
                    read = site.store.at("thrust washer thickness", "engine").map(List::of).orElse(List.of());
                }
                if (read.isEmpty()) {
                    return Optional.empty();
                }
                Value front = read.get(0);
                return Optional.of(new Slot(name(), List.of(front, read.size() > 1 ? read.get(1) : front), Slot.Reduce.SUM));
            }
        };
    }

    /** One side of the sheet's own limit. */
    static Take limit(String quantity, boolean least) {
        String name = "sheet limits " + quantity + (least ? " least" : " most");
        return by(name, (site, place) -> {
            for (LimitLine line : site.build.sheet().limits()) {
                if (line.quantity().equals(quantity) && (line.at().isEmpty() || site.store.covers(line.at(), place))) {
                    var size = least ? line.least() : line.most();
                    if (size.isPresent() && line.times().isEmpty()) {
                        return Optional.of(Site.exact(name, place, size.get().low(), size.get().unit(), size.get().figures(), List.of(line.line())));
                    }
                }
            }
            return Optional.empty();
        });
    }

    /** The rods that share a crankpin with this one, itself among them. */
    private static Take rodsOnPin() {
        return new Take("connecting rod width") {
            @Override
            String quantity() {
                return "connecting rod width";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> rods = new ArrayList<>();
                for (String bigEnd : Shapes.sharing(site, place)) {
                    Optional<Slot> rod = reading("connecting rod width").at(site, bigEnd);
                    if (rod.isEmpty()) {
                        return Optional.empty();
                    }
                    rods.addAll(rod.get().values());
                }
                return Optional.of(new Slot(name(), rods, Slot.Reduce.SUM));
            }
        };
    }

    /** A main's own reading and those of the mains beside it. */
    private static Take neighbour(String quantity) {
        return new Take(quantity) {
            @Override
            String quantity() {
                return quantity;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                if (!place.startsWith("main ")) {
                    return Optional.empty();
                }
                int number = Shapes.number(place.substring(5));
                List<Value> values = new ArrayList<>();
                Optional<Value> here = site.store.at(quantity, place);
                if (here.isEmpty()) {
                    return Optional.empty();
                }
                values.add(here.get());
                for (int beside : new int[] {number - 1, number + 1}) {
                    site.store.at(quantity, "main " + beside).ifPresent(values::add);
                }
                return values.size() < 2 ? Optional.empty() : Optional.of(new Slot(quantity, values, Slot.Reduce.MEAN));
            }
        };
    }

    private static Take grade() {
        return by("sheet balance grade", (site, place) -> site.sheet("balance", "engine", "grade").flatMap(s -> {
            String text = s.says().startsWith("G") ? s.says().substring(1).strip() : s.says();
            try {
                return Optional.of(Site.exact("sheet balance grade", place, Double.parseDouble(text) / 1000,
                        new leadlamp.quantity.Unit("mm/s", Dimension.LINEAR_SPEED, 1e-3, 0), 1, List.of(s.where())));
            } catch (NumberFormatException none) {
                return Optional.empty();
            }
        }));
    }

    /** Only an in-line four shakes so; of other engines nothing is said. */
    private static Take fourInLine() {
        return by("sheet layout cylinders", (site, place) -> site.sheet("layout", "engine", "cylinders")
                .filter(s -> s.says().strip().equals("4") && site.sheet("layout", "engine", "arrangement")
                        .map(a -> a.says().equals("in-line")).orElse(false))
                .map(s -> Site.exact("sheet layout cylinders", place, 4, Units.si(Dimension.NUMBER), 0, List.of(s.where()))));
    }
}
