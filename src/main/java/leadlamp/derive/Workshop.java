package leadlamp.derive;

import static leadlamp.derive.Derived.value;
import static leadlamp.derive.Take.by;
import static leadlamp.derive.Take.every;
import static leadlamp.derive.Take.reading;
import static leadlamp.derive.Take.sheet;
import static leadlamp.derive.Take.sheetLine;
import static leadlamp.derive.Take.total;
import static leadlamp.derive.Take.use;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.calc.Air;
import leadlamp.calc.Compression;
import leadlamp.calc.CrankTrain;
import leadlamp.calc.Fuel;
import leadlamp.calc.Lifting;
import leadlamp.calc.Rounds;
import leadlamp.calc.Sets;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Units;
import leadlamp.quantity.Written;
import leadlamp.record.Gauge;

/** Derived values of tests, lifting, days and first running. */
final class Workshop {
    private Workshop() {
    }

    static Derived entry(String name) {
        return switch (name) {
            case "leak-down loss" -> value(name).from(reading("engine leak-down supply"), reading("engine leak-down pressure"))
                    .by(v -> Compression.leakDown(v.get("engine leak-down supply"), v.get("engine leak-down pressure")))
                    .sum("({engine leak-down supply} - {engine leak-down pressure}) / {engine leak-down supply}").figures(0);
            case "leak-down spread" -> value(name).from(every("engine leak-down")).by(v -> Sets.spread(v.all("engine leak-down")))
                    .sum((v, r) -> "worst " + v.show(Sets.greatest(v.all("engine leak-down")), "engine leak-down") + " - best "
                            + v.show(Sets.least(v.all("engine leak-down")), "engine leak-down")).figures(0);
            case "compression balance" -> value(name).from(every("engine compression")).by(v -> Sets.lowestOverHighest(v.all("engine compression")))
                    .sum((v, r) -> "lowest " + v.show(Sets.least(v.all("engine compression")), "engine compression") + " / highest "
                            + v.show(Sets.greatest(v.all("engine compression")), "engine compression")).figures(0);
            case "compression expected" -> value(name).from(reading("compression ratio"), sheet("standard", "stroke"), sheet("standard", "rod length"),
                    sheetLine("intake closing angle"), Round.figure("exponent of compression", Rounds.CRANKING_EXPONENT), Cooling.airPressure())
                    .by(v -> Compression.cranking(v.get("air pressure"), Compression.effectiveRatio(v.get("compression ratio"),
                            v.get("sheet standard stroke") / 2, v.get("sheet standard rod length"), v.get("sheet intake closing angle")),
                            v.get("exponent of compression")))
                    .sum((v, r) -> Template.fill("{air pressure} x ", v) + Figures.plain(Compression.effectiveRatio(v.get("compression ratio"),
                            v.get("sheet standard stroke") / 2, v.get("sheet standard rod length"), v.get("sheet intake closing angle")), 2)
                            + Template.fill(" to the power {exponent of compression} (ratio {compression ratio} from where the intake closes at "
                                    + "{sheet intake closing angle}) - {air pressure}", v)).figures(1);
            case "compression rise wet" -> value(name).from(reading("engine compression"), reading("engine compression wet"))
                    .by(v -> Compression.rise(v.get("engine compression"), v.get("engine compression wet")))
                    .sum("({engine compression wet} - {engine compression}) / {engine compression}").figures(0);
            case "stand moment" -> value(name).from(mass(), reading("stand overhang"))
                    .by(v -> Lifting.standMoment(v.get("engine mass"), v.get("stand overhang")))
                    .sum("{engine mass} x g x {stand overhang}").figures(0);
            case "sling leg tension" -> value(name).from(mass(), reading("sling leg angle"))
                    .by(v -> Lifting.legTension(v.get("engine mass"), v.get("sling leg angle")))
                    .sum("half of {engine mass} x g / cos of half of {sling leg angle}").figures(0);
            case "lifted share of crane" -> value(name).from(mass(), crane())
                    .by(v -> Lifting.shareOfRating(v.get("engine mass"), v.get("gauge crane")))
                    .sum("{engine mass} / {gauge crane}").figures(0);
            case "count difference" -> value(name).from(total("blanks count in"), total("blanks count out"))
                    .by(v -> v.get("blanks count in") - v.get("blanks count out")).sum("in {blanks count in} - out {blanks count out}").figures(0);
            case "days between steps" -> value(name).from(stepBefore(), thisStep()).at(Workshop::datedSteps)
                    .by(v -> Days.between(v.get("step before"), v.get("this step"))).sum((v, r) -> Days.apart(v, "step before", "this step")).in(Days.DAYS).figures(0);
            case "fuel per cylinder while cranking" -> value(name).from(reading("injector flow"), reading("engine cranking time"))
                    .by(v -> Fuel.volumeIn(v.get("injector flow"), v.get("engine cranking time")))
                    .sum("{injector flow} x {engine cranking time}, injectors open all the time").figures(0);
            case "fume time" -> value(name).from(reading("workshop volume"), sheet("standard", "swept volume"), reading("engine idle speed"),
                    Round.figure("filling at idle", Rounds.IDLE_FILLING), Round.figure("monoxide in the exhaust", Rounds.MONOXIDE_IN_EXHAUST,
                            Units.usual(Dimension.SHARE), 0))
                    .by(v -> Air.timeToFume(v.get("workshop volume"), v.get("filling at idle") * Air.exhaustFlow(v.get("sheet standard swept volume"),
                            v.get("engine idle speed")), Rounds.MONOXIDE_LIMIT.usual(), v.get("monoxide in the exhaust")))
                    .sum((v, r) -> Template.fill("room {workshop volume} / ({filling at idle} x {sheet standard swept volume} x {engine idle speed} / 60 / 2) x ", v)
                            + "0.0001 of monoxide / " + v.show("monoxide in the exhaust") + " (open the doors long before)")
                    .in(Days.MINUTES).figures(0);
            case "overspeed load ratio" -> value(name).from(reading("engine highest speed"), sheet("output", "rev limit"))
                    .by(v -> CrankTrain.loadRatio(v.get("engine highest speed"), v.get("sheet output rev limit")))
                    .sum("({engine highest speed} / {sheet output rev limit}) squared").figures(2);
            case "run-in share" -> value(name).from(reading("engine highest speed"), use("rev limit"))
                    .by(v -> Sets.ratio(v.get("engine highest speed"), v.get("use rev limit")))
                    .sum("{engine highest speed} / {use rev limit}").figures(0);
            default -> null;
        };
    }

    /** Mass as lifted: read or on a label, else the sheet's. */
    private static Take mass() {
        return new Take("engine mass") {
            @Override
            String quantity() {
                return "engine mass";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> read = reading("engine mass").at(site, place);
                if (read.isEmpty()) {
                    read = sheet("engine mass on the stand", "engine mass on the stand").at(site, place);
                }
                if (read.isEmpty()) {
                    read = sheet("masses", "engine").at(site, place);
                }
                return read.map(slot -> new Slot(name(), slot.values(), slot.reduce()));
            }
        };
    }

    /** The rating of the crane among the gauges. */
    private static Take crane() {
        return by("gauge crane", (site, place) -> {
            for (Gauge gauge : site.build.gauges().values()) {
                Optional<Written> range = gauge.range().filter(r -> r.unit().dimension() == Dimension.MASS);
                if (range.isPresent()) {
                    return Optional.of(Site.exact("gauge crane", place, range.get().high(), range.get().unit(), range.get().figures(),
                            List.of(gauge.where())));
                }
            }
            return Optional.empty();
        });
    }

    private static List<String> datedSteps(Site site) {
        List<String> steps = new ArrayList<>();
        for (var s : Days.dated(site)) {
            if (!steps.contains(s.what())) {
                steps.add(s.what());
            }
        }
        return steps;
    }

    private static Take thisStep() {
        return by("this step", (site, place) -> stepTime(site, place, "this step"));
    }

    private static Optional<Value> stepTime(Site site, String step, String name) {
        for (var s : Days.dated(site)) {
            if (s.what().equals(step)) {
                return Days.moment(name, step, s.asides().get("date"), s.asides().getOrDefault("time", ""), s, site);
            }
        }
        return Optional.empty();
    }

    /** The latest dated step that had to be done before this one. */
    private static Take stepBefore() {
        return by("step before", (site, place) -> {
            Value latest = null;
            for (String before : site.words.step(place).map(s -> s.after()).orElse(List.of())) {
                Optional<Value> done = stepTime(site, before, "step before");
                if (done.isPresent() && (latest == null || done.get().low().orElseThrow().value() > latest.low().orElseThrow().value())) {
                    latest = done.get();
                }
            }
            return Optional.ofNullable(latest);
        });
    }
}
