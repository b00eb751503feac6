package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.known;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.Sets;
import leadlamp.calc.Springs;
import leadlamp.facts.Value;
import leadlamp.record.Place;
import leadlamp.record.Statement;

/** What one valve shows beside its mates, springs beside those that the maker fitted, and the rest that a set of adjusters is given. */
final class ValveMates {
    private static final String STANDARD_LOAD = "sheet limits valve spring open load";
    private static final String MASS = "moving mass over the sheet's";

    private ValveMates() {
    }

    static Derived entry(String name) {
        return switch (name) {
            case "valve spring load against mates" -> value(name).from(whereNoLimit(reading("valve spring seat load")), mates("valve spring seat load"))
                    .by(v -> Sets.ratio(v.get("valve spring seat load"), Sets.mean(v.all("mates' valve spring seat load"))) - 1)
                    .sum((v, r) -> v.show("valve spring seat load") + " / mean of its mates "
                            + v.show(Sets.mean(v.all("mates' valve spring seat load")), "valve spring seat load") + " - 1").figures(0);
            case "retainer depth difference" -> value(name).from(reading("spring retainer depth"), mates("spring retainer depth"))
                    .by(v -> Math.abs(v.get("spring retainer depth") - Sets.mean(v.all("mates' spring retainer depth"))))
                    .sum((v, r) -> Shapes.apart(v, v.get("spring retainer depth"), "", Sets.mean(v.all("mates' spring retainer depth")),
                            "mean of its mates ", "spring retainer depth"));
            case "valve recession against mates" -> value(name).from(whereNoLimit(reading("valve recession")), mates("valve recession"))
                    .by(v -> v.get("valve recession") - Sets.mean(v.all("mates' valve recession")))
                    .sum((v, r) -> v.show("valve recession") + " - mean of its mates "
                            + v.show(Sets.mean(v.all("mates' valve recession")), "valve recession"));
            case "cam lobe below its sisters" -> value(name).from(reading("cam lobe height"), mates("cam lobe height"))
                    .by(v -> Sets.mean(v.all("mates' cam lobe height")) - v.get("cam lobe height"))
                    .sum((v, r) -> "mean of its sisters " + v.show(Sets.mean(v.all("mates' cam lobe height")), "cam lobe height") + " - "
                            + v.show("cam lobe height"));
            case "adjuster leak-down ratio" -> value(name).from(whereNoLimit(known("lash adjuster leak-down time")))
                    .by(v -> Sets.ratio(Sets.greatest(v.all("lash adjuster leak-down time")), Sets.least(v.all("lash adjuster leak-down time"))))
                    .sum((v, r) -> "slowest " + v.show(Sets.greatest(v.all("lash adjuster leak-down time")), "lash adjuster leak-down time")
                            + " / quickest " + v.show(Sets.least(v.all("lash adjuster leak-down time")), "lash adjuster leak-down time")).figures(1);
            case "adjuster bleed wait" -> value(name).from(step("cams or rockers down", false, "rockers fitted", "cams fitted"),
                    step("turned", true, "timing drive fitted", "turned by hand", "turned plugs out"))
                    .by(v -> Days.between(v.get("cams or rockers down"), v.get("turned")))
                    .sum((v, r) -> Days.apart(v, "cams or rockers down", "turned")).in(Days.MINUTES).figures(0);
            case "valve spring margin against standard" -> value(name).from(reading("valve spring open load"), standardLoad(), ValveGear.lift(),
                    sheet("standard", "valve lift"), Take.use("rev limit"), sheet("output", "rev limit"), mass(), sameLobes())
                    .by(v -> Springs.marginAgainst(Sets.ratio(v.get("valve spring open load"), v.get(STANDARD_LOAD)),
                            v.get(MASS), Sets.ratio(v.get("valve lift"), v.get("sheet standard valve lift")),
                            Sets.ratio(v.get("use rev limit"), v.get("sheet output rev limit"))))
                    .sum("({valve spring open load} / sheet {" + STANDARD_LOAD + "}) / (mass {" + MASS + "} x ({valve lift} / sheet {sheet standard "
                            + "valve lift}) x ({use rev limit} / sheet {sheet output rev limit}) squared)").figures(2);
            case "weakest valve spring margin" -> value(name).from(Take.lowest("valve spring margin against standard"))
                    .by(v -> v.get("valve spring margin against standard")).sum("least of all valves {valve spring margin against standard}").figures(2);
            default -> null;
        };
    }

    /** Readings at the other cylinders' valves of the same side and end. */
    private static Take mates(String quantity) {
        return new Take("mates' " + quantity) {
            @Override
            String quantity() {
                return quantity;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> mates = ofMates(site, quantity, place);
                return mates.isEmpty() ? Optional.empty() : Optional.of(new Slot(name(), mates, Slot.Reduce.MEAN));
            }
        };
    }

    /** Whether a valve has mates of which the same was read. */
    static boolean read(Site site, String quantity, String place) {
        return !ofMates(site, quantity, place).isEmpty();
    }

    private static List<Value> ofMates(Site site, String quantity, String place) {
        List<Value> mates = new ArrayList<>();
        for (Value v : site.store.of(quantity)) {
            boolean mate = v.of().equals(quantity) && !v.at().equals(place) && kind(v.at()).equals(kind(place));
            if (mate && v.plain() && v.told().isEmpty() && !Store.untold(v.at())) {
                mates.add(v);
            }
        }
        return mates;
    }

    /** Side and end of a valve, without its cylinder. */
    private static String kind(String place) {
        int blank = place.indexOf(' ');
        return blank > 0 && Character.isDigit(place.charAt(0)) ? place.substring(blank + 1) : place;
    }

    /** A reading that neither sheet nor supplier judges: only then do its mates have a say. */
    private static Take whereNoLimit(Take take) {
        return new Take(take.name()) {
            @Override
            String quantity() {
                return take.quantity();
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                return ValveGearQuestions.limited(site, take.name(), place) ? Optional.empty() : take.at(site, place);
            }
        };
    }

    /** The last step that loads the adjusters, or the first after it that turns the engine; only where its time of day is told. */
    private static Take step(String name, boolean turning, String... steps) {
        return by(name, "steps " + steps[0], (site, place) -> {
            Optional<Value> down = turning ? step(name, false, "rockers fitted", "cams fitted").at(site, place).map(s -> s.values().get(0))
                    : Optional.empty();
            Value found = null;
            for (String step : steps) {
                Optional<Value> done = Days.done(site, name, step, place).filter(Value::plain);
                if (done.isEmpty()) {
                    continue;
                }
                double at = moment(done.get());
                boolean after = down.isEmpty() || at >= moment(down.get());
                boolean nearer = found == null || (turning ? at < moment(found) : at > moment(found));
                found = after && nearer ? done.get() : found;
            }
            return turning && down.isEmpty() ? Optional.empty() : Optional.ofNullable(found);
        });
    }

    private static double moment(Value value) {
        return value.low().orElseThrow().value();
    }

    private static Take standardLoad() {
        return by(STANDARD_LOAD, (site, place) -> ValveGear.middle(STANDARD_LOAD, "valve spring open load").at(site, place)
                .map(slot -> slot.values().get(0)));
    }

    /** As weighed over the sheet's; one where nothing that moves with the valve is of another make. */
    private static Take mass() {
        return by(MASS, "valve moving mass", (site, place) -> {
            Optional<Value> read = site.store.at("valve moving mass", place).filter(v -> v.plain() && v.told().isEmpty());
            Optional<Statement> standard = site.sheet("standard", place, "valve moving mass").filter(s -> s.value().isPresent());
            if (read.isPresent() && standard.isPresent()) {
                double ratio = read.get().low().orElseThrow().value() / standard.get().value().get().high();
                return Optional.of(Site.number(MASS, place, ratio, 2, read.get().places()));
            }
            for (String part : List.of("valve", "spring retainer", "collet", "cam follower", "rocker", "pushrod")) {
                for (Statement s : site.said(part)) {
                    if (s.what().equals("origin") && List.of(ValveGearQuestions.OTHER).contains(s.says()) && site.related(s.at(), place)) {
                        return Optional.empty();
                    }
                }
            }
            return Optional.of(Site.number(MASS, place, 1, 0, List.of()));
        });
    }

    /** Springs are only reckoned beside the maker's on the maker's own lobes: two makers count the degrees of a lobe by two rules. */
    private static Take sameLobes() {
        return by("the sheet's own lobes", "valve spring rated speed", (site, place) -> {
            for (Statement s : site.said("camshaft")) {
                boolean other = s.what().equals("origin") && List.of(ValveGearQuestions.NOT_MAKERS).contains(s.says());
                if (other && site.related(s.at(), place)) {
                    return Optional.empty();
                }
            }
            return Optional.of(Site.number("the sheet's own lobes", Place.ENGINE, 1, 0, List.of()));
        });
    }
}
