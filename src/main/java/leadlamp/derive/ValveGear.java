package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.cutSince;
import static leadlamp.derive.Take.every;
import static leadlamp.derive.Take.greatest;
import static leadlamp.derive.Take.known;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.sheet;
import static leadlamp.derive.Take.sheetLine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.CamMoves;
import leadlamp.calc.Fits;
import leadlamp.calc.Gap;
import leadlamp.calc.Sets;
import leadlamp.calc.Springs;
import leadlamp.calc.ValveRoom;
import leadlamp.calc.Valves;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.record.LimitLine;
import leadlamp.record.Statement;

/** Derived values of valves, springs, lash, lobes and what lies between. */
final class ValveGear {
    private static final Unit SLOPE = new Unit("mm/crank deg", Dimension.NUMBER, 0.001 * 180 / Math.PI, 0);

    private ValveGear() {
    }

    static Derived entry(String name) {
        return switch (name) {
            case "valve piston clearance corrected" -> value(name).from(reading("valve piston clearance"), reading("trial gasket thickness"),
                    reading("head gasket compressed thickness"), cutSince("valve piston clearance", "head face", "block face"))
                    .by(v -> Gap.trialCorrected(v.get("valve piston clearance"), v.get("trial gasket thickness"),
                            v.get("head gasket compressed thickness"), v.get("cut since valve piston clearance")))
                    .sum("{valve piston clearance} + fitted gasket {head gasket compressed thickness} - trial gasket {trial gasket thickness} - cut "
                            + "since {cut since valve piston clearance}");
            case "valve piston clearance at setting" -> value(name).from(reading("valve piston clearance"), reading("cam gear setting"), slope())
                    .by(v -> ValveRoom.atSetting(v.get("valve piston clearance"), v.get("slope of the room"),
                            towardsPiston(v.place(), v.get("cam gear setting"))))
                    .sum((v, r) -> v.show("valve piston clearance") + (towardsPiston(v.place(), v.get("cam gear setting")) < 0 ? " + " : " - ")
                            + v.show(Math.abs(v.get("cam gear setting")), "cam gear setting") + " x " + v.show("slope of the room"));
            case "valve to valve gap" -> value(name).from(Overlap.lifts(), Overlap.head("intake"), Overlap.head("exhaust"),
                    sheet("standard", "valve centres"), Overlap.lean("intake"), Overlap.lean("exhaust"))
                    .by(Overlap::gap).sum((v, r) -> Overlap.words(v)).inUnitOf("sheet standard valve centres");
            case "lash shim wanted" -> value(name).from(reading("lash shim thickness"), reading("valve lash"), wantedLash())
                    .by(v -> Valves.shimWanted(v.get("lash shim thickness"), v.get("valve lash"), v.get("sheet limits valve lash")))
                    .sum("shim {lash shim thickness} + lash {valve lash} - wanted {sheet limits valve lash}");
            case "lash adjuster preload from sizes" -> value(name).from(preload(), reading("valve stem height"),
                    sheet("standard", "valve stem height"), reading("cam lobe base circle").optional(),
                    sheet("standard", "cam lobe base circle").optional())
                    .by(v -> v.get("sheet limits lash adjuster preload") + Valves.preloadChangeBucket(v.get("valve stem height")
                            - v.get("sheet standard valve stem height"), v.has("cam lobe base circle") && v.has("sheet standard cam lobe base circle")
                                    ? Math.max(0, v.get("sheet standard cam lobe base circle") - v.get("cam lobe base circle")) / 2 : 0))
                    .sum("{sheet limits lash adjuster preload} + stem {valve stem height} - standard {sheet standard valve stem height}");
            case "lash adjuster pump-up" -> value(name).from(reading("lash adjuster preload"), sheetLine("lash adjuster travel"))
                    .by(v -> Math.max(0, v.get("sheet lash adjuster travel") - v.get("lash adjuster preload")))
                    .sum("travel {sheet lash adjuster travel} - preload {lash adjuster preload}");
            case "spring bind margin" -> value(name).from(reading("valve spring installed height"), reading("valve spring solid height"), lift())
                    .by(v -> Springs.bindMargin(v.get("valve spring installed height"), v.get("valve lift"), v.get("valve spring solid height")))
                    .sum("installed {valve spring installed height} - lift {valve lift} - solid {valve spring solid height}");
            case "retainer to seal gap" -> value(name).from(reading("spring retainer height over seal"), lift())
                    .by(v -> Springs.retainerRoom(v.get("spring retainer height over seal"), v.get("valve lift")))
                    .sum("closed {spring retainer height over seal} - lift {valve lift}");
            case "valve spring load corrected" -> value(name).from(reading("valve spring seat load"), reading("valve spring rate"),
                    reading("valve spring installed height"), sheetHeight())
                    .by(v -> Springs.loadAt(v.get("valve spring seat load"), v.get("valve spring rate"), v.get("valve spring installed height"),
                            v.get("sheet limits valve spring installed height")))
                    .sum("{valve spring seat load} + {valve spring rate} x ({valve spring installed height} - {sheet limits valve spring installed "
                            + "height})").figures(0);
            case "valve float speed" -> value(name).from(reading("valve spring open load"), reading("valve moving mass"), lift(), duration())
                    .by(v -> Springs.floatSpeed(v.get("valve spring open load"), v.get("valve moving mass"), v.get("valve lift"),
                            v.get("sheet timing cam duration")))
                    .sum("{sheet timing cam duration} / (2 x pi) x root of (2 x {valve spring open load} / ({valve moving mass} x {valve lift})) x 60 / (2 x pi)").figures(0);
            case "valve spring frequency" -> value(name).from(reading("valve spring rate"), sheetLine("spring mass"))
                    .by(v -> Springs.frequency(v.get("valve spring rate"), v.get("sheet spring mass")))
                    .sum("root of ({valve spring rate} / {sheet spring mass}) / 2").figures(0);
            case "retainer depth spread" -> value(name).from(known("spring retainer depth")).by(v -> Sets.spread(v.all("spring retainer depth")))
                    .sum((v, r) -> "highest " + v.show(Sets.greatest(v.all("spring retainer depth")), "spring retainer depth") + " - lowest "
                            + v.show(Sets.least(v.all("spring retainer depth")), "spring retainer depth"));
            case "valve recession after work" -> value(name).from(reading("valve recession"), seatSunk(), cutSince("valve recession", "head face"))
                    .by(v -> Valves.recessionAfter(v.get("valve recession"), v.get("valve seat sunk since"), v.get("cut since valve recession")))
                    .sum("{valve recession} + seat sunk since {valve seat sunk since} - head cut since {cut since valve recession}");
            case "valve recession spread" -> value(name).from(every("valve recession")).by(v -> Sets.spread(v.all("valve recession")))
                    .sum((v, r) -> "deepest " + v.show(Sets.greatest(v.all("valve recession")), "valve recession") + " - shallowest "
                            + v.show(Sets.least(v.all("valve recession")), "valve recession"));
            case "lobe lift" -> value(name).from(reading("cam lobe height"), reading("cam lobe base circle"))
                    .by(v -> Valves.lobeLift(v.get("cam lobe height"), v.get("cam lobe base circle")))
                    .sum("nose {cam lobe height} - base {cam lobe base circle}");
            case "lobe lift difference" -> value(name).from(reading("lobe lift"), ofItsKind())
                    .by(v -> Math.abs(v.get("lobe lift") - Sets.mean(v.all("lobe lifts of its kind"))))
                    .sum((v, r) -> Shapes.apart(v, v.get("lobe lift"), "", Sets.mean(v.all("lobe lifts of its kind")), "mean of its kind ", "lobe lift"))
                    .finer();
            case "valve lift expected" -> value(name).from(reading("lobe lift"), ratio(), lash())
                    .by(v -> Valves.liftAtValve(v.get("lobe lift"), v.get("rocker ratio"), v.get("valve lash")))
                    .sum("lobe {lobe lift} x {rocker ratio} - lash {valve lash}");
            case "pushrod length wanted" -> value(name).from(pushrodLength(), Take.removed("head face"), Take.removed("block face"),
                    sheet("standard", "head gasket compressed thickness"), reading("head gasket compressed thickness"),
                    reading("valve stem height").optional(), sheet("standard", "valve stem height").optional(), armRatio())
                    .by(v -> Valves.pushrodWanted(v.get("sheet limits pushrod length"), v.get("machining head face removed")
                            + v.get("machining block face removed"), v.get("sheet standard head gasket compressed thickness"),
                            v.get("head gasket compressed thickness"), stemRise(v), v.get("pushrod arm over valve arm"), 0, 0))
                    .sum("{sheet limits pushrod length} - (cuts {machining head face removed} + {machining block face removed} + standard gasket "
                            + "{sheet standard head gasket compressed thickness} - fitted gasket {head gasket compressed thickness})[ - stem rise "
                            + "({valve stem height} - {sheet standard valve stem height}) x {pushrod arm over valve arm}]");
            case "rocker clearance" -> value(name).from(greatest("rocker bore"), Take.least("rocker shaft diameter"))
                    .by(v -> Fits.clearance(v.get("rocker bore"), v.get("rocker shaft diameter")))
                    .sum("bore {rocker bore} - shaft {rocker shaft diameter}");
            case "follower clearance" -> value(name).from(reading("cam follower bore"), reading("cam follower diameter"))
                    .by(v -> Fits.clearance(v.get("cam follower bore"), v.get("cam follower diameter")))
                    .sum("bore {cam follower bore} - follower {cam follower diameter}");
            case "cam bearing clearance" -> value(name).from(Take.ends("cam bearing bore"), Take.ends("camshaft journal diameter"))
                    .by(v -> Fits.clearance(v.get("cam bearing bore"), v.get("camshaft journal diameter")))
                    .sum("bore {cam bearing bore} - journal {camshaft journal diameter}");
            case "adjuster bleed ratio" -> value(name).from(known("lash adjuster bleed hole"))
                    .by(v -> Valves.areaRatio(Sets.greatest(v.all("lash adjuster bleed hole")), Sets.least(v.all("lash adjuster bleed hole"))))
                    .sum((v, r) -> "(largest " + v.show(Sets.greatest(v.all("lash adjuster bleed hole")), "lash adjuster bleed hole") + " / smallest "
                            + v.show(Sets.least(v.all("lash adjuster bleed hole")), "lash adjuster bleed hole") + ") squared").figures(2);
            case "inner spring bind margin" -> value(name).from(reading("inner valve spring installed height"),
                    reading("inner valve spring solid height"), lift())
                    .by(v -> Springs.bindMargin(v.get("inner valve spring installed height"), v.get("valve lift"),
                            v.get("inner valve spring solid height")))
                    .sum("installed {inner valve spring installed height} - lift {valve lift} - solid {inner valve spring solid height}");
            case "valve tip ground" -> value(name).from(Take.removed("valve tip")).by(v -> v.get("machining valve tip removed"))
                    .sum("ground off {machining valve tip removed}");
            case "valve tip sweep share" -> value(name).from(reading("valve tip sweep width"), reading("valve stem diameter"))
                    .by(v -> Sets.ratio(v.get("valve tip sweep width"), v.get("valve stem diameter")))
                    .sum("mark {valve tip sweep width} / stem {valve stem diameter}").figures(0);
            case "pushrod length error" -> value(name).from(reading("pushrod length"), reading("pushrod length wanted"))
                    .by(v -> v.get("pushrod length") - v.get("pushrod length wanted"))
                    .sum("{pushrod length} - wanted {pushrod length wanted}");
            default -> ValveMates.entry(name);
        };
    }

    /** Crank angle towards the piston: an intake camshaft early, an exhaust camshaft late; a gear's setting is plus where it is late. */
    private static double towardsPiston(String place, double setting) {
        return (" " + place + " ").contains(" exhaust ") ? setting : -setting;
    }

    private static double stemRise(In v) {
        return v.has("valve stem height") && v.has("sheet standard valve stem height")
                ? v.get("valve stem height") - v.get("sheet standard valve stem height") : 0;
    }

    private static Take slope() {
        return by("slope of the room", (site, place) -> Optional.of(Site.doubtful("slope of the room", place, CamMoves.SLOPE,
                CamMoves.SLOPE_HALF / Math.sqrt(3), "the trade's slope of valve room", SLOPE, 2, List.of())));
    }

    /** Lift at the valve: as read, as expected from the lobe, else the sheet's. */
    static Take lift() {
        return new Take("valve lift") {
            @Override
            String quantity() {
                return "valve lift";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = reading("valve lift").at(site, place);
                if (read.isEmpty()) {
                    read = reading("valve lift expected").at(site, place);
                }
                if (read.isEmpty() && ofTheSheetsLift(site, place)) {
                    read = sheet("standard", "valve lift").at(site, place);
                }
                return read.map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }

    /** Whether nothing is told of lobes or rockers of another drawing: only then is the sheet's lift that of the engine as built. */
    private static boolean ofTheSheetsLift(Site site, String place) {
        for (String part : List.of("camshaft", "rocker")) {
            for (Statement s : site.said(part)) {
                if (s.what().equals("origin") && List.of(ValveGearQuestions.OTHER).contains(s.says()) && site.related(s.at(), place)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The line of a lift that is proven to be more than the sheet's, by what speaks of other lobes or rockers. */
    static Optional<Statement> liftOver(Site site, String valve) {
        Optional<Value> lift = site.store.at("valve lift", valve).filter(v -> v.low().isPresent() && v.told().isEmpty());
        Optional<Statement> standard = site.sheet("standard", valve, "valve lift").filter(s -> s.value().isPresent());
        if (lift.isEmpty() || standard.isEmpty()) {
            return Optional.empty();
        }
        double most = standard.get().value().get().high();
        for (LimitLine line : site.build.sheet().limits()) {
            if (line.quantity().equals("valve lift") && line.most().isPresent() && (line.at().isEmpty() || site.store.covers(line.at(), valve))) {
                most = Math.max(most, line.most().get().high());
            }
        }
        if (lift.get().low().get().value() - 2 * lift.get().low().get().standardUncertainty() <= most * (1 + Valves.MORE_LIFT)) {
            return Optional.empty();
        }
        for (Statement s : site.build.statements()) {
            if (s.form() == Statement.Form.READ && s.of().equals("valve lift") && lift.get().places().contains(s.where())) {
                return Optional.of(s);
            }
        }
        return Optional.empty();
    }

    static Take duration() {
        return by("sheet timing cam duration", (site, place) -> {
            Optional<Value> label = site.store.at("camshaft duration", place);
            return label.isPresent() ? label : site.sheet("timing", "engine", "cam duration")
                    .flatMap(s -> Site.written("sheet timing cam duration", place, s));
        });
    }

    /** The lash that the sheet wants: the middle of its band. */
    private static Take wantedLash() {
        return middle("sheet limits valve lash", "valve lash");
    }

    private static Take preload() {
        return middle("sheet limits lash adjuster preload", "lash adjuster preload");
    }

    private static Take sheetHeight() {
        return middle("sheet limits valve spring installed height", "valve spring installed height");
    }

    static Take middle(String name, String quantity) {
        return by(name, (site, place) -> {
            for (LimitLine line : site.build.sheet().limits()) {
                if (line.quantity().equals(quantity) && (line.at().isEmpty() || site.store.covers(line.at(), place)) && line.times().isEmpty()) {
                    if (line.standard().isPresent()) {
                        var w = line.standard().get();
                        return Optional.of(Site.exact(name, place, (w.low() + w.high()) / 2, w.unit(), w.figures(), List.of(line.line())));
                    }
                    if (line.least().isPresent() && line.most().isPresent()) {
                        var w = line.least().get();
                        return Optional.of(Site.exact(name, place, (w.low() + line.most().get().low()) / 2, w.unit(), w.figures(),
                                List.of(line.line())));
                    }
                }
            }
            return Optional.empty();
        });
    }

    private static Take pushrodLength() {
        return by("sheet limits pushrod length", (site, place) -> {
            Optional<Slot> limit = middle("sheet limits pushrod length", "pushrod length").at(site, place);
            return limit.isPresent() ? limit.map(s -> s.values().get(0)) : sheet("standard", "pushrod length").at(site, place)
                    .map(s -> s.values().get(0));
        });
    }

    /** Pushrod arm over valve arm: one over the rocker's ratio. */
    private static Take armRatio() {
        return by("pushrod arm over valve arm", (site, place) -> ratio().at(site, place).map(slot -> slot.values().get(0))
                .filter(v -> v.low().isPresent() && v.low().get().value() > 0)
                .map(v -> Site.number("pushrod arm over valve arm", place, 1 / v.low().get().value(), 2, v.places())));
    }

    /** Rocker ratio; one where no rocker stands between. */
    private static Take ratio() {
        return new Take("rocker ratio") {
            @Override
            String quantity() {
                return "rocker ratio";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = BottomEnd.orSheet("rocker ratio", "rocker ratio").at(site, place);
                Optional<Statement> rockers = site.sheet("layout", "engine", "rockers");
                return read.isPresent() ? read : rockers.filter(s -> s.says().equals("none"))
                        .map(s -> Slot.of(name(), Site.number(name(), place, 1, 0, List.of(s.where()))));
            }
        };
    }

    /** Lash as read; none where it is taken up by oil. */
    private static Take lash() {
        return new Take("valve lash") {
            @Override
            String quantity() {
                return "valve lash";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = reading("valve lash").at(site, place);
                return read.isPresent() ? read : site.sheet("layout", "engine", "lash").filter(s -> s.says().equals("hydraulic"))
                        .map(s -> Slot.of(name(), Site.exact(name(), place, 0, Units.usual(Dimension.LENGTH), 2, List.of(s.where()))));
            }
        };
    }

    /** How far the seat's work sank the valve after its recession was read. */
    private static Take seatSunk() {
        return by("valve seat sunk since", (site, place) -> cutSince("valve recession", "valve seat").at(site, place)
                .map(slot -> slot.values().get(0)));
    }

    /** Lifts of all lobes of the same side. */
    private static Take ofItsKind() {
        return new Take("lobe lifts of its kind") {
            @Override
            String quantity() {
                return "lobe lift";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                boolean exhaust = (" " + place + " ").contains(" exhaust ");
                List<Value> kind = new ArrayList<>();
                for (Value v : site.store.of("lobe lift")) {
                    if ((" " + v.at() + " ").contains(" exhaust ") == exhaust && !Store.untold(v.at())) {
                        kind.add(v);
                    }
                }
                return kind.size() < 2 ? Optional.empty() : Optional.of(new Slot(name(), kind, Slot.Reduce.MEAN));
            }
        };
    }
}
