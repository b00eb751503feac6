package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.all;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.greatest;
import static leadlamp.derive.Take.least;
import static leadlamp.derive.Take.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlamp.calc.Engagement;
import leadlamp.calc.Fits;
import leadlamp.calc.Friction;
import leadlamp.calc.Growth;
import leadlamp.calc.Preload;
import leadlamp.calc.Sets;
import leadlamp.calc.SoftMetal;
import leadlamp.calc.WorkingHeat;
import leadlamp.calc.Wrenches;
import leadlamp.facts.Value;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Units;
import leadlamp.record.Statement;

/** Derived values of joints, bolts and wrenches. */
final class Fasteners {
    /** A bolt that differs by more was made to another length: none grows by so much and is still whole (common practice, no source). */
    private static final double OTHER_BOLT = 0.03;

    private Fasteners() {
    }

    static Derived entry(String name) {
        return switch (name) {
            // clamp force
            case "clamp force" -> value(name).from(reading("joint torque"), Joints.factor(), Joints.diameter())
                    .at(site -> Joints.joints(site, "each joint with a torque"))
                    .by(v -> Preload.fromTorque(v.get("joint torque"), v.get("joint torque factor"), v.get("joint thread diameter")))
                    .sum("{joint torque} / (factor {joint torque factor} x {joint thread diameter})").figures(0);
            case "clamp force at stated threads" -> value(name).from(Joints.onSheet("torque"), Joints.sheetFactor(), Joints.diameter())
                    .at(site -> Joints.joints(site, "each joint with a torque"))
                    .by(v -> Preload.fromTorque(v.get("sheet joint torque"), v.get("sheet torque factor"), v.get("joint thread diameter")))
                    .sum("sheet {sheet joint torque} / (factor {sheet torque factor} x {joint thread diameter})").figures(0);
            case "clamp force ratio" -> value(name).from(reading("clamp force"), reading("clamp force at stated threads"))
                    .by(v -> Sets.ratio(v.get("clamp force"), v.get("clamp force at stated threads")))
                    .sum("{clamp force} / {clamp force at stated threads}").figures(2);
            case "stress area" -> value(name).from(Joints.area()).at(site -> Joints.joints(site, "each joint"))
                    .by(v -> v.get("thread stress area")).sum((v, r) -> Joints.areaInWords(v)).figures(1);
            case "proof load" -> value(name).from(reading("stress area"), Joints.proof()).at(site -> Joints.joints(site, "each joint"))
                    .by(v -> Preload.load(v.get("stress area"), v.get("proof stress of the class")))
                    .sum("{stress area} x {proof stress of the class}").figures(0);
            case "proof share" -> value(name).from(reading("clamp force"), reading("proof load"))
                    .by(v -> Sets.ratio(v.get("clamp force"), v.get("proof load"))).sum("{clamp force} / {proof load}").figures(0);
            case "torque ratio" -> value(name).from(reading("joint torque"), Joints.onSheet("torque"))
                    .by(v -> Sets.ratio(v.get("joint torque"), v.get("sheet joint torque"))).sum("{joint torque} / sheet {sheet joint torque}")
                    .figures(2);
            case "applied torque" -> value(name).from(reading("joint setting"), reading("wrench length"), adaptor())
                    .by(v -> Wrenches.applied(v.get("joint setting"), v.get("wrench length"), v.get("wrench adaptor length")))
                    .sum("{joint setting} x ({wrench length} + {wrench adaptor length}) / {wrench length}");
            case "torque share of range" -> value(name).from(Joints.atTheWrench(), Joints.topOfWrench())
                    .by(v -> Wrenches.shareOfTop(v.get("torque at the wrench"), v.get("gauge range")))
                    .sum("{torque at the wrench} / top of the wrench {gauge range}").figures(0);
            case "torque over lowest mark" -> value(name).from(Joints.atTheWrench(), Joints.lowestMark())
                    .by(v -> Sets.ratio(v.get("torque at the wrench"), v.get("lowest mark of the wrench")))
                    .sum("{torque at the wrench} / lowest mark of the wrench {lowest mark of the wrench}").figures(2);
            case "running torque share" -> value(name).from(greatest("bolt running torque"), reading("joint torque"))
                    .by(v -> Wrenches.share(v.get("bolt running torque"), v.get("joint torque")))
                    .sum("{bolt running torque} / {joint torque}").figures(0);
            // threads
            case "engaged length" -> value(name).from(reading("bolt free length"), reading("joint face clamped height"), Joints.washers(),
                    reading("threaded hole counterbore depth"), reading("threaded hole depth").optional())
                    .at(site -> Joints.holeByHole(site, "each joint", "bolt free length", "threaded hole depth"))
                    .by(v -> Engagement.engaged(Engagement.reach(v.get("bolt free length"), v.get("joint face clamped height"),
                            v.get("washer thickness")), v.get("threaded hole counterbore depth"),
                            v.get("threaded hole depth", v.get("bolt free length"))))
                    .sum((v, r) -> v.has("threaded hole depth") && v.get("threaded hole depth") <= r * (1 + 1e-9) ? "all of the thread " + v.show("threaded hole depth")
                            : Template.fill("bolt {bolt free length} - clamped {joint face clamped height} - washer {washer thickness} - counterbore "
                                    + "{threaded hole counterbore depth}[ (thread {threaded hole depth} deep)]", v));
            case "engagement in diameters" -> value(name).from(reading("engaged length"), Joints.diameter())
                    .at(site -> Joints.holeByHole(site, "each joint", "engaged length"))
                    .by(v -> Engagement.inDiameters(Math.max(0, v.get("engaged length")), v.get("joint thread diameter")))
                    .sum("{engaged length} / {joint thread diameter}").figures(2);
            case "pull-out force" -> value(name).from(reading("engaged length"), Joints.diameter(), shearStrength())
                    .at(site -> Joints.holeByHole(site, "each joint in soft metal", "engaged length"))
                    .by(v -> Engagement.pullOut(v.get("shear strength of the casting"), v.get("joint thread diameter"),
                            Math.max(0, v.get("engaged length"))))
                    .sum("{shear strength of the casting} x 0.875 x pi x {joint thread diameter} x {engaged length}").figures(0);
            case "hole bottom room" -> value(name).from(reading("threaded hole depth"), reading("bolt free length"),
                    reading("joint face clamped height"), Joints.washers())
                    .at(site -> Joints.holeByHole(site, "each joint with blind holes", "bolt free length", "threaded hole depth"))
                    .by(v -> Engagement.bottomRoom(v.get("threaded hole depth"), Engagement.reach(v.get("bolt free length"),
                            v.get("joint face clamped height"), v.get("washer thickness"))))
                    .sum("hole {threaded hole depth} - (bolt {bolt free length} - clamped {joint face clamped height} - washer {washer thickness})");
            case "shank margin" -> value(name).from(reading("bolt shank length"), reading("joint face clamped height"), Joints.washers(),
                    reading("threaded hole counterbore depth").optional())
                    .at(site -> Joints.joints(site, "each joint"))
                    .by(v -> Engagement.shankMargin(v.get("joint face clamped height"), 0, v.get("washer thickness"),
                            v.get("threaded hole counterbore depth", 0), v.get("bolt shank length")))
                    .sum("clamped {joint face clamped height} + washer {washer thickness}[ + counterbore {threaded hole counterbore depth}] - "
                            + "shank {bolt shank length}");
            case "insert length in diameters" -> value(name).from(least("thread insert length"), Joints.diameter())
                    .by(v -> Engagement.inDiameters(v.get("thread insert length"), v.get("joint thread diameter")))
                    .sum("{thread insert length} / {joint thread diameter}").figures(2);
            case "thread beyond nut" -> value(name).from(least("stud protrusion"), reading("joint face clamped height"), Joints.washers(),
                    reading("nut height"), Joints.pitch())
                    .by(v -> Engagement.beyondNut(v.get("stud protrusion"), v.get("joint face clamped height"), 0, v.get("washer thickness"),
                            v.get("nut height"), v.get("joint thread pitch")))
                    .sum("(stud {stud protrusion} - clamped {joint face clamped height} - washer {washer thickness} - nut {nut height}) / pitch "
                            + "{joint thread pitch}").figures(1);
            case "stud protrusion spread" -> value(name).from(all("stud protrusion", 2)).by(v -> Sets.spread(v.all("stud protrusion")))
                    .sum((v, r) -> "highest " + v.show(Sets.greatest(v.all("stud protrusion")), "stud protrusion") + " - lowest "
                            + v.show(Sets.least(v.all("stud protrusion")), "stud protrusion"));
            // lengths, stretch, angle
            case "bolt growth" -> value(name).from(reading("bolt free length"), reading("bolt length as new"))
                    .at(site -> Joints.boltByBolt(site, "each joint", "bolt free length"))
                    .by(v -> v.get("bolt free length") - v.get("bolt length as new")).sum("{bolt free length} - new {bolt length as new}");
            case "bolt length difference" -> value(name).from(reading("bolt free length"), ofTheJoint())
                    .at(site -> Joints.boltByBolt(site, "each joint", "bolt free length"))
                    .by(v -> Math.abs(Sets.offTheRest(v.get("bolt free length"), Shapes.others(v, "bolt free length", "bolts of the joint"))))
                    .sum((v, r) -> Shapes.apart(v, v.get("bolt free length"), "", Sets.median(Shapes.others(v, "bolt free length", "bolts of the joint")),
                            "middle of the others ", "bolt free length"));
            case "stretch expected" -> value(name).from(reading("clamp force"), effectiveLength(), Joints.area(), Materials.boltModulus())
                    .by(v -> Preload.stretchOf(v.get("clamp force"), v.get("modulus of bolt steel"),
                            v.get("bolt effective length") / v.get("thread stress area")))
                    .sum("{clamp force} x {bolt effective length} / ({modulus of bolt steel} x {thread stress area})").figures(2);
            // the clamp that the stretch shows, beside the one that the torque promises
            case "clamp from stretch" -> value(name).from(least("bolt stretch"), effectiveLength(), Joints.area(), Materials.boltModulus())
                    .by(v -> Preload.fromStretch(v.get("modulus of bolt steel"), v.get("bolt stretch"),
                            v.get("bolt effective length") / v.get("thread stress area")))
                    .sum("{modulus of bolt steel} x {thread stress area} x {bolt stretch} / {bolt effective length}").figures(0);
            case "clamp method difference" -> value(name).from(reading("clamp from stretch"), reading("clamp force"))
                    .by(v -> Sets.ratio(v.get("clamp from stretch"), v.get("clamp force")) - 1)
                    .sum("by stretch {clamp from stretch} / by torque {clamp force} - 1").figures(0);
            case "torque factor from stretch" -> value(name).from(reading("joint torque"), reading("clamp from stretch"), Joints.diameter())
                    .by(v -> Preload.factorFrom(v.get("joint torque"), v.get("clamp from stretch"), v.get("joint thread diameter")))
                    .sum("{joint torque} / ({clamp from stretch} x {joint thread diameter})").figures(3);
            case "wrench setting wanted" -> value(name).from(Joints.onSheet("torque"), reading("wrench length"), adaptor())
                    .by(v -> Wrenches.settingFor(v.get("sheet joint torque"), v.get("wrench length"), v.get("wrench adaptor length")))
                    .sum("sheet {sheet joint torque} x {wrench length} / ({wrench length} + {wrench adaptor length})").figures(1);
            case "final torque wanted" -> value(name).from(Joints.onSheet("torque"), greatest("bolt running torque"))
                    .by(v -> Wrenches.finalTorque(v.get("sheet joint torque"), v.get("bolt running torque")))
                    .sum("sheet {sheet joint torque} + running torque {bolt running torque}").figures(1);
            case "angle sum" -> value(name).from(reading("joint angle")).by(v -> v.get("joint angle")).sum("{joint angle} in all");
            case "angle strain" -> value(name).from(reading("angle sum"), Joints.pitch(), reading("joint face grip length"))
                    .by(v -> Preload.strainOfAngle(v.get("joint thread pitch"), v.get("angle sum"), v.get("joint face grip length")))
                    .sum("pitch {joint thread pitch} x {angle sum} / (360 deg x grip {joint face grip length})").figures(2);
            // what lies under the head, and in the joint
            case "head pressure" -> value(name).from(reading("clamp force"), reading("washer outer diameter"), reading("washer hole diameter"))
                    .by(v -> Preload.underHead(v.get("clamp force"), v.get("washer outer diameter"), v.get("washer hole diameter")))
                    .sum("{clamp force} / (pi/4 x ({washer outer diameter} squared - {washer hole diameter} squared))").figures(0);
            case "clamp loss by coating" -> value(name).from(reading("joint face coating thickness"), reading("joint face grip length"),
                    Joints.area(), Materials.boltModulus(), reading("clamp force"))
                    .at(site -> Joints.joints(site, "each joint"))
                    .by(v -> Preload.lossBySettling(v.get("joint face coating thickness"), v.get("modulus of bolt steel"),
                            v.get("thread stress area"), v.get("joint face grip length")) / v.get("clamp force"))
                    .sum("film {joint face coating thickness} x {modulus of bolt steel} x {thread stress area} / grip {joint face grip length} / clamp "
                            + "{clamp force}").figures(0);
            case "shank clearance" -> value(name).from(greatest("joint face hole diameter"), least("bolt shank diameter"))
                    .by(v -> Fits.clearance(v.get("joint face hole diameter"), v.get("bolt shank diameter")))
                    .sum("hole {joint face hole diameter} - shank {bolt shank diameter}");
            case "dowel room" -> value(name).from(reading("dowel recess depth"), reading("dowel protrusion"))
                    .by(v -> v.get("dowel recess depth") - v.get("dowel protrusion")).sum("recess {dowel recess depth} - dowel {dowel protrusion}");
            case "growth stress" -> value(name).from(Materials.boltModulus(), castingExpansion(), Materials.steelExpansion("bolt steel"),
                    heat())
                    .at(site -> Joints.joints(site, "each joint in soft metal"))
                    .by(v -> Growth.stress(v.get("modulus of bolt steel"), v.get("expansion of the casting"), v.get("expansion of bolt steel"),
                            v.get("use running temperature"), 1))
                    .sum("{modulus of bolt steel} x ({expansion of the casting} - {expansion of bolt steel}) x {use running temperature} (an upper "
                            + "bound)").figures(0);
            case "grub screw grip" -> value(name).from(reading("joint torque"), Joints.factor(), Joints.diameter(),
                    reading("grub screw shaft diameter"), friction())
                    .by(v -> Preload.grubScrew(v.get("friction on a shaft"), Preload.fromTorque(v.get("joint torque"),
                            v.get("joint torque factor"), v.get("joint thread diameter")), v.get("grub screw shaft diameter")))
                    .sum("2 x {friction on a shaft} x {joint torque} / (factor {joint torque factor} x {joint thread diameter}) x half of "
                            + "{grub screw shaft diameter}").figures(1);
            case "locker cure time" -> value(name).from(Days.fromJoint(), Days.toStartOrOil())
                    .at(site -> Joints.joints(site, "each joint with thread-locker"))
                    .by(v -> Days.between(v.get("joint tightened"), v.get("start or oil"))).sum((v, r) -> Days.apart(v, "joint tightened", "start or oil")).in(Days.HOURS).figures(0);
            default -> null;
        };
    }

    private static Take adaptor() {
        return new Take("wrench adaptor length") {
            @Override
            String quantity() {
                return "wrench adaptor length";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = reading("wrench adaptor length").at(site, place);
                return read.isPresent() ? read : site.word("joint", place, "adaptor").filter(s -> s.value().isPresent())
                        .flatMap(s -> Site.written(name(), place, s)).map(v -> Slot.of(name(), v));
            }
        };
    }

    /** All bolts of the joint that this one belongs to; nothing where the joint is meant to have several lengths. */
    private static Take ofTheJoint() {
        return new Take("bolts of the joint") {
            @Override
            String quantity() {
                return "bolt free length";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                int blank = place.lastIndexOf(' ');
                String joint = blank < 0 ? place : place.substring(0, blank);
                if (site.either("joint", joint, "lengths").isPresent()) {
                    return Optional.empty();
                }
                Optional<Double> own = reading("bolt free length").at(site, place).flatMap(slot -> slot.values().get(0).low()).map(Estimate::value);
                Optional<Slot> all = all("bolt free length", 2).at(site, joint);
                List<Value> mates = new ArrayList<>();
                for (Value v : all.isEmpty() ? List.<Value>of() : all.get().values()) {
                    if (own.isEmpty() || v.low().isEmpty() || Math.abs(v.low().get().value() / own.get() - 1) < OTHER_BOLT) {
                        mates.add(v);
                    }
                }
                return mates.size() > 1 ? Optional.of(new Slot(name(), List.copyOf(mates), Slot.Reduce.MEAN)) : Optional.empty();
            }
        };
    }

    private static Take effectiveLength() {
        return new Take("bolt effective length") {
            @Override
            String quantity() {
                return "bolt effective length";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = reading("bolt effective length").at(site, place);
                return read.isPresent() ? read : site.sheet("joint", place, "effective length").flatMap(s -> Site.written(name(), place, s))
                        .map(v -> Slot.of(name(), v));
            }
        };
    }

    /** Shear strength of the casting that a thread is cut in, by its metal. */
    private static Take shearStrength() {
        return new Take("shear strength of the casting") {
            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Statement> into = site.either("joint", place, "into");
                return into.flatMap(s -> {
                    OptionalDouble shear = SoftMetal.shear(s.says());
                    return shear.isEmpty() ? Optional.empty() : Optional.of(Slot.of(name(), Site.doubtful(name(), place,
                            shear.getAsDouble(), shear.getAsDouble() * SoftMetal.DOUBT / 2, "strength of the casting",
                            Units.named("MPa").orElseThrow(), 0, List.of(s.where()))));
                });
            }

            @Override
            String lacks() {
                return "sheet joint into";
            }
        };
    }

    private static Take castingExpansion() {
        return new Take("expansion of the casting") {
            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Statement> into = site.either("joint", place, "into");
                return into.flatMap(s -> leadlamp.calc.Material.named(s.says())).map(m -> Slot.of(name(), Site.doubtful(name(), place,
                        m.expansion(), m.expansionDoubt() / Math.sqrt(3), name(), Materials.PER_KELVIN, 1, List.of(into.get().where()))));
            }

            @Override
            String lacks() {
                return "sheet joint into";
            }
        };
    }

    /** How much hotter than the workshop the joint runs: as said, else as castings and bolts usually do. */
    private static Take heat() {
        return new Take("use running temperature") {
            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Statement> said = site.word("use", place, "running temperature").filter(s -> s.value().isPresent());
                return said.isPresent()
                        ? Optional.of(Slot.of(name(), Site.exact(name(), place, said.get().value().get().high() - WorkingHeat.WORKSHOP,
                                Materials.KELVIN, 0, List.of(said.get().where()))))
                        : Materials.rise(name(), WorkingHeat.BLOCK_RISE).at(site, place);
            }
        };
    }

    private static Take friction() {
        return by("friction on a shaft", (site, place) -> Optional.of(Site.doubtful("friction on a shaft", place, Friction.GRUB_SCREW,
                Friction.GRUB_SCREW * Friction.DOUBT / 2, "friction of the grub screw", Units.si(leadlamp.quantity.Dimension.NUMBER), 2,
                List.of())));
    }

    // --- rod bolts, for the bottom end

    static Take rodBoltLength() {
        return new Take("rod bolt effective length") {
            @Override
            String quantity() {
                return "rod bolt effective length";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = reading("rod bolt effective length").at(site, place);
                return read.isPresent() ? read : rodJoint(site, place).flatMap(joint -> site.sheet("joint", joint, "effective length"))
                        .flatMap(s -> Site.written(name(), place, s)).map(v -> Slot.of(name(), v));
            }
        };
    }

    static Take rodBoltArea() {
        return by("rod bolt stress area", (site, place) -> rodJoint(site, place).flatMap(joint -> Joints.thread(site, joint)
                .map(t -> Site.exact("rod bolt stress area", place, t.stressArea(), Units.named("mm2").orElseThrow(), 1,
                        site.either("joint", joint, "thread").map(s -> List.of(s.where())).orElse(List.of())))));
    }

    static Take boltsOfRod() {
        return by("bolts of one rod", (site, place) -> rodJoint(site, place).flatMap(joint -> site.sheet("joint", joint, "bolts"))
                .filter(s -> s.value().isPresent())
                .map(s -> Site.number("bolts of one rod", place, s.value().get().high(), 0, List.of(s.where()))));
    }

    /** The joint of the rod whose bolt or big end stands at a place. */
    static Optional<String> rodJoint(Site site, String place) {
        String number = place.startsWith("big end ") ? place.substring(8) : place;
        int blank = number.indexOf(' ');
        String rod = blank < 0 ? number : number.substring(0, blank);
        for (String joint : Joints.joints(site, "each joint")) {
            if (joint.equals("rod cap to rod " + rod) || joint.equals("rod cap to rod")) {
                return Optional.of(joint);
            }
        }
        return Optional.empty();
    }
}
