package leadlamp.derive;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlamp.calc.Ageing;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/**
 * Ages and lives of parts. A part at a place is named as the sheet's drive lines name it, part and place together: `belt idler
 * low`, `cam seal intake`; what an engine has once by its own name.
 */
final class PartsAged {
    static final Unit YEARS = Units.named("years", Dimension.TIME).orElseThrow();
    private static final Unit KM = Units.named("km", Dimension.LENGTH).orElseThrow();

    private PartsAged() {
    }

    /** A part and where it is. */
    record Piece(String part, String at) {
        String name() {
            return at.equals(Place.ENGINE) || at.equals(part) ? part : at.startsWith(part + " ") ? at : part + " " + at;
        }
    }

    /** The piece of this name. */
    static Optional<Piece> piece(Site site, String name) {
        if (site.words.part(name).isPresent()) {
            return Optional.of(new Piece(site.words.part(name).get().name(), Place.ENGINE));
        }
        for (int blank = name.lastIndexOf(' '); blank > 0; blank = name.lastIndexOf(' ', blank - 1)) {
            var part = site.words.part(name.substring(0, blank));
            if (part.isPresent()) {
                return Optional.of(new Piece(part.get().name(), name.substring(blank + 1)));
            }
        }
        return Optional.empty();
    }

    /** What the record says of a part; one that is named after itself stands at its own name. */
    static Optional<Statement> word(Site site, String part, String at, String what) {
        Optional<Statement> here = site.word(part, at, what);
        if (here.isEmpty() && at.equals(Place.ENGINE)) {
            here = site.word(part, part, what);
        }
        return here.isPresent() ? here : site.word(part, part + " " + at, what);
    }

    /** Names of the parts that the record gives an age, a date or a distance. */
    static List<String> dated(Site site) {
        Set<String> names = new LinkedHashSet<>();
        for (Statement s : site.build.statements()) {
            if (s.form() == Statement.Form.STATED && (s.what().equals("age") || s.what().equals("date made") || s.what().equals("distance")
                    || s.what().equals("running")) && !s.of().endsWith(" as found") && site.words.part(s.of()).isPresent()) {
                names.add(new Piece(s.of(), s.at()).name());
            }
        }
        return new ArrayList<>(names);
    }

    /** Age of the piece at the place; nothing for one that is new and carries no date. */
    static Take age() {
        return new Take("part age") {
            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Piece> piece = piece(site, place);
                Optional<Value> age = piece.flatMap(p -> Days.age(site, name(), p.part(), p.at()));
                if (age.isPresent()) {
                    return age.map(v -> Slot.of(name(), v));
                }
                Optional<Statement> isNew = piece.flatMap(p -> word(site, p.part(), p.at(), "state"))
                        .filter(s -> s.says().equals("new") || s.says().equals("ready"));
                return isNew.map(s -> Slot.of(name(), Site.exact(name(), place, 0, YEARS, 0, List.of(s.where()))));
            }

            @Override
            String lacks(Site site, String place) {
                return piece(site, place).map(p -> p.part() + " age").orElse("any part age");
            }
        };
    }

    /** Time until the belt that a companion shares is due again. */
    static Take untilBelt() {
        return Take.by("belt due again in", (site, place) -> {
            Optional<String> drive = driveOf(site, place);
            Optional<Statement> years = drive.flatMap(d -> DriveLines.line(site, d, "change after years"));
            if (years.isEmpty()) {
                return Optional.empty();
            }
            double interval = number(years.get().says()) * YEARS.factor();
            Optional<Statement> state = word(site, "timing belt", drive.get(), "state");
            if (state.isPresent() && (state.get().says().equals("new") || state.get().says().equals("ready"))) {
                return Optional.of(Site.exact("belt due again in", place, interval, YEARS, 0, List.of(years.get().where(), state.get().where())));
            }
            Optional<Value> age = Days.age(site, "belt age", "timing belt", drive.get());
            return age.map(a -> {
                List<Where> where = new ArrayList<>(List.of(years.get().where()));
                where.addAll(a.places());
                return Days.between("belt due again in", place, Math.max(0, interval - a.high().orElseThrow().value()),
                        Math.max(0, interval - a.low().orElseThrow().value()), YEARS, a.told(), where);
            });
        });
    }

    /** The belt drive whose line names the companion. */
    static Optional<String> driveOf(Site site, String companion) {
        for (Statement s : site.sheetLines("drive")) {
            if ((s.what().equals("shares the belt") || s.what().equals("route")) && (", " + s.says() + ",").contains(", " + companion + ",")) {
                return Optional.of(s.at());
            }
        }
        return DriveLines.ofCamshafts(site);
    }

    /** A plain number, as `years: 3` has it; not a number where the text is none. */
    static double number(String text) {
        int end = 0;
        while (end < text.length() && (Character.isDigit(text.charAt(end)) || text.charAt(end) == '.')) {
            end++;
        }
        try {
            return end == 0 ? Double.NaN : Double.parseDouble(text.substring(0, end));
        } catch (NumberFormatException none) {
            return Double.NaN;
        }
    }

    /** Years, distance or hours that the sheet allows a piece. */
    private static Optional<Statement> life(Site site, String name, String what) {
        Optional<Piece> piece = piece(site, name);
        for (Statement s : site.sheetLines("lives")) {
            if (s.what().equals(what) && (s.at().equals(name) || piece.isPresent() && s.at().equals(piece.get().part()))) {
                return Optional.of(s);
            }
        }
        if (piece.isPresent() && piece.get().part().equals("timing belt")) {
            Optional<String> drive = piece.get().at().equals(Place.ENGINE) ? DriveLines.ofCamshafts(site) : Optional.of(piece.get().at());
            return drive.flatMap(d -> DriveLines.line(site, d, "change after " + what));
        }
        return Optional.empty();
    }

    /** Shares of life used by years, distance and hours, those that record and sheet both give. */
    static Take used() {
        return new Take("shares of life used") {
            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> shares = new ArrayList<>();
                Optional<Piece> piece = piece(site, place);
                if (piece.isEmpty()) {
                    return Optional.empty();
                }
                life(site, place, "years").ifPresent(life -> Days.age(site, "age", piece.get().part(), piece.get().at()).ifPresent(age ->
                        shares.add(share(place, age, number(life.says()) * YEARS.factor(), life))));
                life(site, place, "distance").filter(s -> s.value().isPresent()).ifPresent(life -> word(site, piece.get().part(), piece.get().at(),
                        "distance").flatMap(s -> Site.written("distance", place, s)).ifPresent(run -> shares.add(share(place, run,
                                life.value().get().high(), life))));
                life(site, place, "running").filter(s -> s.value().isPresent()).ifPresent(life -> word(site, piece.get().part(), piece.get().at(),
                        "running").flatMap(s -> Site.written("running", place, s)).ifPresent(run -> shares.add(share(place, run,
                                life.value().get().high(), life))));
                return shares.isEmpty() ? Optional.empty() : Optional.of(new Slot(name(), shares, Slot.Reduce.GREATEST));
            }

            @Override
            String lacks() {
                return "sheet lives";
            }
        };
    }

    private static Value share(String place, Value used, double allowed, Statement life) {
        List<Where> where = new ArrayList<>(used.places());
        where.add(life.where());
        double low = Ageing.lifeShare(used.low().map(e -> e.value()).orElse(0.0), allowed);
        double high = used.high().map(e -> Ageing.lifeShare(e.value(), allowed)).orElse(Double.POSITIVE_INFINITY);
        Unit percent = Units.usual(Dimension.SHARE);
        Value range = Days.between("share of life", place, low, high, percent, used.told(), where);
        return new Value(range.of(), range.kind(), place, range.low().map(e -> leadlamp.quantity.Estimate.exact(low, Dimension.SHARE)),
                low == high ? range.low().map(e -> leadlamp.quantity.Estimate.exact(low, Dimension.SHARE))
                        : Double.isInfinite(high) ? Optional.empty() : Optional.of(leadlamp.quantity.Estimate.exact(high, Dimension.SHARE)),
                percent, 0, "", false, "", used.told(), java.util.Map.of("least used", Figures.text(used.low().map(e -> e.value()).orElse(0.0),
                        used.unit(), 1), "most used", Figures.text(used.high().map(e -> e.value()).orElse(0.0), used.unit(), 1), "life", Figures.text(allowed, used.unit(), allowed % used.unit().factor() == 0 ? 0 : 1)), where);
    }

    /** Distances, for other sums. */
    static Unit kilometres() {
        return KM;
    }
}
