package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.all;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.greatest;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.said;
import static leadlamp.derive.Take.sheetLine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.Ageing;
import leadlamp.calc.CamTiming;
import leadlamp.calc.Drives;
import leadlamp.calc.Friction;
import leadlamp.calc.Lift;
import leadlamp.calc.Pins;
import leadlamp.calc.Preload;
import leadlamp.calc.Sets;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.record.Statement;

/** Derived values of belts, chains, gears, their pins and keys, and of cam timing. */
final class CamDrive {
    /** Runs that go up and down between crankshaft and head in a plain layout: geometry. */
    private static final int RUNS = 2;
    /** Pressure angle of common gear teeth; from memory: ISO 53, basic rack. */
    private static final double PRESSURE_ANGLE = Math.toRadians(20);

    /** Doubt, at 95 %, of a tension that is worked out of the note of a run; common practice, no source. */
    private static final double STIFF_RUN = 0.10;

    private CamDrive() {
    }

    /** What was used over what is allowed, of the share that is greatest. */
    private static String lifeInWords(In v, double share) {
        String name = "shares of life used";
        double[] shares = v.all(name);
        int which = 0;
        for (int i = 0; i < shares.length; i++) {
            which = shares[i] == share ? i : which;
        }
        boolean least = v.lowEnd(name, which);
        return v.aside(name, which, least ? "least used" : "most used") + " / " + v.aside(name, which, "life");
    }

    /** Full lift of one of two camshafts, off top dead centre. */
    private static Take centreOf(String camshaft) {
        return Take.by(camshaft + " lobe centre", "camshaft lobe centre", (site, place) -> site.store.at("camshaft lobe centre", camshaft));
    }

    /** How far from full lift the valve stands at top dead centre, turned so or the other way. */
    private static String nearTop(In v) {
        double on = Math.abs(Math.IEEEremainder(v.get("turned crank degrees") - v.get("sheet lobe centre"), 4 * Math.PI));
        double back = Math.abs(Math.IEEEremainder(-v.get("turned crank degrees") - v.get("sheet lobe centre"), 4 * Math.PI));
        return v.show(Math.min(on, back), "sheet lobe centre");
    }

    static Derived entry(String name) {
        return switch (name) {
            // what places the gear
            case "cam gear pin section" -> value(name).from(reading("cam gear pin diameter"), pinWall())
                    .by(v -> v.get("wall share of the pin") * Drives.solidPinSection(v.get("cam gear pin diameter")))
                    .sum("pi/4 x {cam gear pin diameter} squared, a solid pin").figures(1);
            case "cam gear pin capacity" -> value(name).from(reading("cam gear pin section"), shearOfPin(), reading("cam gear pin circle radius"))
                    .by(v -> Drives.pinTorque(v.get("shear strength of the pin") * v.get("cam gear pin section"),
                            v.get("cam gear pin circle radius")))
                    .sum("{shear strength of the pin} x {cam gear pin section} x {cam gear pin circle radius}").figures(0);
            case "peak cam torque" -> value(name).from(greatest("valve spring seat load"), greatest("valve spring open load"), greatestLift(),
                    ValveGear.duration())
                    .by(v -> Drives.peakLobeTorque(v.get("valve spring seat load"), v.get("valve spring open load"), v.get("valve lift"),
                            v.get("sheet timing cam duration")))
                    .sum("(mean of {valve spring seat load} and {valve spring open load}) x pi x {valve lift} / half of {sheet timing cam duration} (one "
                            + "lobe, a rough value)").figures(1);
            case "cam gear rock" -> value(name).from(reading("cam gear pin hole diameter"), reading("camshaft pin hole diameter"),
                    reading("cam gear pin diameter"), reading("cam gear pin circle radius"))
                    .by(v -> CamTiming.pinRock(v.get("cam gear pin hole diameter"), v.get("camshaft pin hole diameter"),
                            v.get("cam gear pin diameter"), v.get("cam gear pin circle radius")))
                    .sum("2 x arctan(({cam gear pin hole diameter} - {cam gear pin diameter} + {camshaft pin hole diameter} - "
                            + "{cam gear pin diameter}) / {cam gear pin circle radius})").figures(2);
            case "cam gear seat gap" -> value(name).from(reading("cam gear pin length"), reading("cam gear pin hole depth"),
                    reading("camshaft pin hole depth"))
                    .by(v -> v.get("cam gear pin length") - v.get("cam gear pin hole depth") - v.get("camshaft pin hole depth"))
                    .sum("pin {cam gear pin length} - holes {cam gear pin hole depth} - {camshaft pin hole depth}");
            case "crank gear rock" -> value(name).from(reading("crank nose keyway width"), reading("crank gear keyway width"),
                    reading("crank key width"), reading("crank nose diameter"))
                    .by(v -> CamTiming.keyRock(v.get("crank nose keyway width"), v.get("crank gear keyway width"), v.get("crank key width"),
                            v.get("crank nose diameter") / 2))
                    .sum("arctan(({crank nose keyway width} - {crank key width} + {crank gear keyway width} - {crank key width}) / half of "
                            + "{crank nose diameter})").figures(2);
            case "crank pulley grip" -> value(name).from(clampOf("crank pulley to crankshaft"), sheetLine("crank pulley face radius"), frictionOf(
                    "friction of the faces", Friction.STEEL_ON_STEEL))
                    .by(v -> Preload.grip(v.get("friction of the faces"), v.get("clamp force"), v.get("sheet crank pulley face radius"), 1))
                    .sum("{friction of the faces} x {clamp force} x {sheet crank pulley face radius}").figures(0);
            case "adjustable gear grip" -> value(name).from(clampOfAdjuster(), sheetLine("cam gear bolt circle"), frictionOf("friction of the faces",
                    Friction.LIGHT_METAL))
                    .by(v -> Preload.grip(v.get("friction of the faces"), v.get("clamp force"), v.get("sheet cam gear bolt circle") / 2, 1))
                    .sum("{friction of the faces} x {clamp force} x half of {sheet cam gear bolt circle}").figures(1);
            // timing
            case "true top dead centre" -> value(name).from(reading("crankshaft stop reading before"), reading("crankshaft stop reading after"))
                    .by(v -> CamTiming.trueTopDeadCentre(v.get("crankshaft stop reading before"), v.get("crankshaft stop reading after")))
                    .sum("half of ({crankshaft stop reading before} + {crankshaft stop reading after})").figures(1);
            case "timing mark error" -> value(name).from(reading("timing mark reading"), reading("true top dead centre"))
                    .by(v -> Math.abs(CamTiming.markError(v.get("timing mark reading"), v.get("true top dead centre"))))
                    .sum((v, r) -> Shapes.apart(v, v.get("timing mark reading"), "mark ", v.get("true top dead centre"), "true ", "true top dead centre")).figures(1);
            case "turned crank degrees" -> value(name).from(said("cam gear", "witness mark turned"))
                    .by(v -> CamTiming.crankOfCam(v.get("cam gear witness mark turned"))).sum("2 x {cam gear witness mark turned}").figures(0);
            case "valve lift at top dead centre" -> value(name).from(reading("turned crank degrees"), ValveGear.lift(), lobeCentre(), ValveGear.duration())
                    .by(v -> {
                        var lift = Lift.harmonic(v.get("valve lift"), v.get("sheet lobe centre"), v.get("sheet timing cam duration"));
                        return Math.max(lift.applyAsDouble(v.get("turned crank degrees")), lift.applyAsDouble(-v.get("turned crank degrees")));
                    })
                    .sum((v, r) -> r == 0 ? "0 mm (shut: " + v.show("turned crank degrees") + " off)" : "half of " + v.show("valve lift") + " x (1 + cos ("
                            + "360 deg x " + nearTop(v) + " / " + v.show("sheet timing cam duration") + "))").figures(1);
            case "cam timing error" -> value(name).from(reading("camshaft lobe centre"), lobeCentre())
                    .by(v -> exhaust(v.place()) ? v.get("sheet lobe centre") - v.get("camshaft lobe centre")
                            : v.get("camshaft lobe centre") - v.get("sheet lobe centre"))
                    .sum((v, r) -> exhaust(v.place()) ? "sheet " + v.show("sheet lobe centre") + " - read " + v.show("camshaft lobe centre")
                            : "read " + v.show("camshaft lobe centre") + " - sheet " + v.show("sheet lobe centre")).figures(1);
            case "cam lobe separation" -> value(name).from(centreOf("intake"), centreOf("exhaust"))
                    .by(v -> CamTiming.separation(v.get("intake lobe centre"), v.get("exhaust lobe centre")))
                    .sum("half of ({intake lobe centre} + {exhaust lobe centre})").figures(1);
            case "cam teeth out" -> value(name).from(reading("cam timing error"), DriveLines.camTeeth(), reading("cam gear setting").optional())
                    .by(v -> Math.abs(CamTiming.teethOut(v.get("cam timing error") - v.get("cam gear setting", 0), (int) Math.round(v.get("sheet drive teeth")))))
                    .sum((v, r) -> offItsSetting(v) + " / (720 crank deg / " + v.show("sheet drive teeth") + " teeth)").figures(2);
            case "cam phaser free play in crank degrees" -> value(name).from(reading("cam phaser free play"))
                    .by(v -> CamTiming.crankOfCam(v.get("cam phaser free play"))).sum("2 x {cam phaser free play}").figures(1);
            case "shaft phase error in crank degrees" -> value(name).from(phaseError(), turns())
                    .at(site -> site.places("each timed shaft").orElse(List.of()))
                    .by(v -> Math.abs(CamTiming.crankOfShaft(v.get("balance shaft phase error"), v.get("sheet timed shafts turns"))))
                    .sum("{balance shaft phase error} / {sheet timed shafts turns}").figures(1);
            // belts, chains, gears
            case "companion age at next change" -> value(name).from(PartsAged.age(), PartsAged.untilBelt())
                    .by(v -> Ageing.at(v.get("part age"), v.get("belt due again in")))
                    .sum("age {part age} + {belt due again in} until the belt is due again").figures(1).in(PartsAged.YEARS);
            case "life used" -> value(name).from(PartsAged.used()).at(PartsAged::dated).standing(Ages::piece)
                    .by(v -> Sets.greatest(v.all("shares of life used")))
                    .sum((v, r) -> lifeInWords(v, r)).figures(0);
            case "belt tension from note" -> value(name).from(sheetLine("belt mass"), reading("timing belt span length"),
                    reading("timing belt span frequency"), stiffRun())
                    .by(v -> v.get("stiffness of the run") * Drives.tensionFromNote(v.get("sheet belt mass"), v.get("timing belt span length"),
                            v.get("timing belt span frequency")))
                    .sum("{stiffness of the run} for the run's stiffness x 4 x {sheet belt mass} x {timing belt span length} squared x {timing belt span frequency} "
                            + "squared").figures(0);
            case "belt swelling" -> value(name).from(reading("old timing belt width"), DriveLines.ofDrive("width"))
                    .by(v -> Drives.swelling(v.get("old timing belt width"), v.get("sheet drive width")))
                    .sum("{old timing belt width} / {sheet drive width} - 1").figures(1);
            case "belt mark return" -> value(name).from(DriveLines.teeth("timing belt"), DriveLines.teeth("crank gear"))
                    .by(v -> Drives.markReturn((int) Math.round(v.get("teeth of timing belt")), (int) Math.round(v.get("teeth of crank gear"))))
                    .sum((v, r) -> Math.round(r * v.get("teeth of crank gear")) + Template.fill(" (the least that {teeth of timing belt} and {teeth of crank gear} both "
                            + "go into) / {teeth of crank gear}", v)).figures(0);
            case "tensioner slack to take up" -> value(name).from(reading("cam drop"))
                    .by(v -> Drives.slack(v.get("cam drop"), RUNS)).sum("{cam drop} x 2 runs");
            case "tensioner travel left" -> value(name).from(extension(), extensionLimit("least").optional(), extensionLimit("most"))
                    .by(v -> Math.min(Drives.travelLeft(v.get("sheet tensioner extension most"), v.get("tensioner extension"), 0),
                            v.has("sheet tensioner extension least")
                                    ? v.get("tensioner extension") - v.get("sheet tensioner extension least") : Double.POSITIVE_INFINITY))
                    .sum((v, r) -> !v.has("sheet tensioner extension least") || v.get("sheet tensioner extension most") - v.get("tensioner extension")
                            <= v.get("tensioner extension") - v.get("sheet tensioner extension least") ? "most "
                            + v.show("sheet tensioner extension most") + " - " + v.show("tensioner extension") : v.show("tensioner extension")
                            + " - least " + v.show("sheet tensioner extension least"));
            case "tensioner travel share" -> value(name).from(extension(), ofTensioner("travel"))
                    .by(v -> Math.min(v.get("tensioner extension"), Drives.travelLeft(v.get("sheet tensioner travel"), v.get("tensioner extension"),
                            0)) / v.get("sheet tensioner travel"))
                    .sum((v, r) -> (v.get("tensioner extension") <= v.get("sheet tensioner travel") / 2 ? v.show("tensioner extension")
                            : "(" + v.show("sheet tensioner travel") + " - " + v.show("tensioner extension") + ")")
                            + " to the nearer end / travel " + v.show("sheet tensioner travel")).figures(0);
            case "timing belt width difference" -> value(name).from(reading("timing belt width"), DriveLines.ofDrive("width"))
                    .by(v -> v.get("timing belt width") - v.get("sheet drive width"))
                    .sum("{timing belt width} - sheet {sheet drive width}");
            case "chain elongation" -> value(name).from(reading("timing chain length over links"), links(), DriveLines.ofDrive("pitch"))
                    .by(v -> Drives.elongation(v.get("timing chain length over links"), (int) Math.round(v.get("links of the reading")),
                            v.get("sheet drive pitch")))
                    .sum("{timing chain length over links} / ({links of the reading} x {sheet drive pitch}) - 1").figures(2);
            case "chain lag" -> value(name).from(reading("chain elongation"), DriveLines.ofDrive("run length"), DriveLines.pitchRadius())
                    .by(v -> CamTiming.lagFromLength(v.get("chain elongation"), v.get("sheet drive run length"), v.get("pitch radius of the cam gear")))
                    .sum("2 x {chain elongation} x {sheet drive run length} / {pitch radius of the cam gear}").figures(1);
            case "gear backlash from sizes" -> value(name).from(backlashBefore(), reading("cam drop"))
                    .by(v -> v.get("timing gear backlash") + Drives.backlashChange(-v.get("cam drop"), PRESSURE_ANGLE))
                    .sum("{timing gear backlash} - 2 x {cam drop} x tan 20 deg");
            case "gear misalignment" -> value(name).from(lineDifference(), sheetLine("centre distance"))
                    .by(v -> Math.abs(Drives.misalignment(v.get("cam gear line difference"), v.get("sheet centre distance"))))
                    .sum("arctan({cam gear line difference} / {sheet centre distance})").figures(2);
            default -> null;
        };
    }

    private static String offItsSetting(In v) {
        double error = v.get("cam timing error");
        double set = v.get("cam gear setting", 0);
        if (!v.has("cam gear setting")) {
            return v.show(Math.abs(error), "cam timing error");
        }
        return error >= set ? "(" + v.show("cam timing error") + " - set " + v.show("cam gear setting") + ")"
                : "(set " + v.show("cam gear setting") + " - " + v.show("cam timing error") + ")";
    }

    private static boolean exhaust(String place) {
        return (" " + place + " ").contains(" exhaust ");
    }

    /** Share of a solid section that a pin has; only of a solid pin is it known from its diameter alone. */
    private static Take pinWall() {
        return by("wall share of the pin", (site, place) -> site.either("cam gear pin", place, "form").filter(s -> s.says().equals("solid"))
                .map(s -> Site.number("wall share of the pin", place, 1, 0, List.of(s.where()))));
    }

    /** Shear strength of the pin: of its tensile strength where that is known; a hardened dowel of the sheet's own kind by its standard. */
    private static Take shearOfPin() {
        return by("shear strength of the pin", (site, place) -> {
            Optional<Value> strength = site.store.at("cam gear pin strength", place);
            if (strength.isPresent()) {
                return Optional.of(Scaled.by(strength.get(), Drives.shearOfYield(1), "shear strength of the pin", place));
            }
            Optional<Value> diameter = site.store.at("cam gear pin diameter", place);
            Optional<Statement> maker = site.word("cam gear pin", place, "origin").filter(s -> s.says().equals("maker's"));
            if (diameter.isEmpty() || maker.isEmpty() || diameter.get().low().isEmpty()) {
                return Optional.empty();
            }
            double nominal = Math.round(diameter.get().low().get().value() * 1000) / 1000.0;
            var load = Pins.dowel(nominal);
            if (load.isEmpty()) {
                return Optional.empty();
            }
            Unit mpa = Units.named("MPa").orElseThrow();
            double shear = load.getAsDouble() / 2 / (Math.PI / 4 * nominal * nominal);
            return Optional.of(Site.doubtful("shear strength of the pin", place, shear, shear * 0.05, "strength of a hardened dowel", mpa, 0,
                    List.of(maker.get().where())));
        });
    }

    private static Take greatestLift() {
        return new Take("valve lift") {
            @Override
            String quantity() {
                return "valve lift";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = greatest("valve lift").at(site, place);
                return read.isPresent() ? read : ValveGear.lift().at(site, place);
            }
        };
    }

    static Take frictionOf(String name, double friction) {
        return by(name, (site, place) -> Optional.of(Site.doubtful(name, place, friction, friction * Friction.DOUBT / 2, name,
                Units.si(Dimension.NUMBER), 2, List.of())));
    }

    /** Clamp of all bolts of one joint: by its torque; one that is turned on by an angle is at its class's proof load. */
    static Take clampOf(String joint) {
        return new Take("clamp force") {
            @Override
            String quantity() {
                return "clamp force";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                return clamp(site, joint, place).map(v -> Slot.of(name(), v));
            }
        };
    }

    private static Optional<Value> clamp(Site site, String joint, String place) {
        Optional<Value> force = site.store.at("joint angle", joint).isPresent() ? site.store.at("proof load", joint)
                : site.store.at("clamp force", joint);
        Optional<Slot> bolts = Joints.bolts().at(site, joint);
        if (force.isEmpty() || bolts.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Scaled.by(force.get(), bolts.get().values().get(0).low().orElseThrow().value(), "clamp force", place));
    }

    private static Take clampOfAdjuster() {
        return new Take("clamp force") {
            @Override
            String quantity() {
                return "clamp force";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                for (String joint : Joints.joints(site, "each joint")) {
                    if (joint.contains("cam gear") && !joint.contains("to camshaft") && (joint.endsWith(" " + place) || !joint.endsWith("intake")
                            && !joint.endsWith("exhaust"))) {
                        return clamp(site, joint, place).map(v -> Slot.of(name(), v));
                    }
                }
                return Optional.empty();
            }
        };
    }

    /** The sheet's lobe centre of the place's side. */
    private static Take lobeCentre() {
        return by("sheet lobe centre", (site, place) -> {
            String side = exhaust(place) ? "exhaust" : "intake";
            return site.sheet("timing", "engine", side + " lobe centre").flatMap(s -> Site.written("sheet lobe centre", place, s));
        });
    }

    private static Take phaseError() {
        return new Take("balance shaft phase error") {
            @Override
            String quantity() {
                return "balance shaft phase error";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = reading("balance shaft phase error").at(site, place);
                return read.isPresent() || !place.startsWith("balance shaft ") ? read
                        : reading("balance shaft phase error").at(site, place.substring("balance shaft ".length()));
            }
        };
    }

    private static Take turns() {
        return by("sheet timed shafts turns", (site, place) -> {
            for (Statement s : site.sheetLines("timed shafts")) {
                if (s.what().equals("turns") && (s.at().equals(place) || s.at().endsWith(" " + place))) {
                    double turns = PartsAged.number(s.says());
                    return turns > 0 ? Optional.of(Site.number("sheet timed shafts turns", place, turns, 1, List.of(s.where()))) : Optional.empty();
                }
            }
            return Optional.empty();
        });
    }

    /** How far plunger or pointer of the drive's tensioner stands out, told at its own name or at its belt or chain. */
    private static Take extension() {
        return new Take("tensioner extension") {
            @Override
            Optional<Slot> at(Site site, String place) {
                String part = tensioner(site, place);
                Optional<Value> here = best(site, part + " extension", place);
                Optional<Value> any = here.isPresent() ? here : DriveLines.ofTensioner(site, place)
                        .flatMap(drive -> site.store.at(part + " extension", drive));
                return any.map(v -> Slot.of(name(), v));
            }

            @Override
            String lacks(Site site, String place) {
                return tensioner(site, place) + " extension";
            }
        };
    }

    private static String tensioner(Site site, String place) {
        boolean chain = DriveLines.ofTensioner(site, place).filter(d -> DriveLines.kind(site, d).equals("chain")).isPresent();
        return chain ? "chain tensioner" : "belt tensioner";
    }

    private static Optional<Value> best(Site site, String quantity, String place) {
        Optional<Value> here = site.store.at(quantity, place);
        if (here.isPresent()) {
            return here;
        }
        List<Value> all = new ArrayList<>();
        for (Value v : site.store.of(quantity)) {
            if (v.of().equals(quantity)) {
                all.add(v);
            }
        }
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    private static Take extensionLimit(String side) {
        return ofTensioner("extension " + side);
    }

    /** A size of the sheet's line on the tensioner of this drive. */
    private static Take ofTensioner(String what) {
        return by("sheet tensioner " + what, "sheet drive tensioner", (site, place) -> DriveLines.ofTensioner(site, place)
                .flatMap(drive -> DriveLines.line(site, drive, "tensioner " + what))
                .flatMap(s -> Site.written("sheet tensioner " + what, place, s)));
    }

    /** A short stiff run sounds higher than a string; common practice, no source: a tenth either way. */
    private static Take stiffRun() {
        return by("stiffness of the run", (site, place) -> Optional.of(Site.doubtful("stiffness of the run", place, 1, STIFF_RUN / 2,
                "stiffness of the run", Units.si(Dimension.NUMBER), 2, List.of())));
    }

    private static Take links() {
        return by("links of the reading", (site, place) -> reading("timing chain length over links").at(site, place)
                .map(slot -> slot.values().get(0)).flatMap(v -> {
                    double links = PartsAged.number(v.asides().getOrDefault("links", ""));
                    return links >= 1 ? Optional.of(Site.number("links of the reading", place, links, 0, v.places())) : Optional.empty();
                }));
    }

    /** Backlash of the gears that turn the camshafts, which a skim brings nearer; of others nothing changes. */
    private static Take backlashBefore() {
        return new Take("timing gear backlash") {
            @Override
            String quantity() {
                return "timing gear backlash";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<String> drive = DriveLines.ofCamshafts(site).filter(d -> DriveLines.kind(site, d).equals("gear"));
                return drive.isPresent() && drive.get().equals(place) ? reading("timing gear backlash").at(site, place) : Optional.empty();
            }
        };
    }

    private static Take lineDifference() {
        return new Take("cam gear line difference") {
            @Override
            String quantity() {
                return "cam gear line difference";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                String side = place.startsWith("cam gear ") ? place.substring("cam gear ".length()) : place;
                return reading("cam gear line difference").at(site, side);
            }
        };
    }
}
