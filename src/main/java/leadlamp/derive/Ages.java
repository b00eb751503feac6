package leadlamp.derive;

import static leadlamp.derive.Derived.value;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.record.Dates;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/**
 * Ages that are held against a limit or against one another: of a gauge's last check, of belts, and of parts whose date mark
 * stands beside an age. All are reckoned on the latest day of the record.
 */
final class Ages {
    private static final Unit MONTHS = Units.named("months", Dimension.TIME).orElseThrow();
    private static final double DAY = 86_400;
    private static final String BELT = "timing belt";
    private static final String SINCE_CHECK = "time since the check";
    private static final String BY_MARK = "age by the date mark";
    private static final String SAID = "age said";
    private static final String BELT_AGE = "age of the belt";
    private static final String SHELF = "time since the belt was made";
    private static final String INTERVAL = "sheet drive change after";

    private Ages() {
    }

    static Derived entry(String name) {
        return switch (name) {
            case "gauge check age" -> value(name).from(sinceCheck()).at(site -> List.copyOf(site.build.gauges().keySet()))
                    .by(v -> v.get(SINCE_CHECK))
                    .sum((v, r) -> v.aside(SINCE_CHECK, "to") + " less " + v.aside(SINCE_CHECK, "from")).in(MONTHS).figures(1);
            case "age against date mark" -> value(name).from(byMark(), said()).at(Ages::marked).standing(Ages::piece)
                    .by(v -> v.get(BY_MARK) - v.get(SAID))
                    .sum("{age by the date mark} by the mark - {age said} as said").in(PartsAged.YEARS).figures(1);
            case "timing belt years" -> value(name).from(ofKeptBelt()).by(v -> v.get(BELT_AGE)).sum("{age of the belt} as said or by its mark")
                    .in(PartsAged.YEARS).figures(1);
            case "timing belt shelf years" -> value(name).from(ofNewBelt()).by(v -> v.get(SHELF))
                    .sum((v, r) -> v.aside(SHELF, "to") + " less " + v.aside(SHELF, "from")).in(PartsAged.YEARS).figures(1);
            case "belt interval" -> value(name).from(interval()).by(v -> v.get(INTERVAL))
                    .sum("the sheet has the belt changed after {sheet drive change after}").in(PartsAged.YEARS).figures(0);
            default -> null;
        };
    }

    private static Take sinceCheck() {
        return Take.by(SINCE_CHECK, "gauge checked", (site, gauge) -> site.word("gauge", gauge, "checked")
                .flatMap(s -> since(site, SINCE_CHECK, gauge, s, MONTHS)));
    }

    /** Names of the parts whose entry has an age and a date mark; either alone has nothing to be held against. */
    private static List<String> marked(Site site) {
        Set<String> names = new LinkedHashSet<>();
        for (Statement s : site.build.statements()) {
            if (ofPart(site, s) && s.what().equals("date made") && site.word(s.of(), s.at(), "age").isPresent()) {
                names.add(new PartsAged.Piece(s.of(), s.at()).name());
            }
        }
        return new ArrayList<>(names);
    }

    private static boolean ofPart(Site site, Statement s) {
        return s.form() == Statement.Form.STATED && !s.of().endsWith(" as found") && site.words.part(s.of()).isPresent();
    }

    /** The part of this name and where its entry has it. */
    static Optional<PartsAged.Piece> piece(Site site, String name) {
        for (Statement s : site.build.statements()) {
            if (ofPart(site, s)) {
                PartsAged.Piece piece = new PartsAged.Piece(s.of(), s.at());
                if (piece.name().equals(name)) {
                    return Optional.of(piece);
                }
            }
        }
        return Optional.empty();
    }

    private static Take byMark() {
        return Take.by(BY_MARK, "any part date made", (site, name) -> piece(site, name)
                .flatMap(p -> site.word(p.part(), p.at(), "date made").flatMap(s -> since(site, BY_MARK, name, s, PartsAged.YEARS))));
    }

    private static Take said() {
        return Take.by(SAID, "any part age", (site, name) -> piece(site, name)
                .flatMap(p -> site.word(p.part(), p.at(), "age").flatMap(s -> Site.written(SAID, name, s))));
    }

    /** A belt that has run: as its entry says, else by its mark. One that is new has no years yet. */
    private static Take ofKeptBelt() {
        return Take.by(BELT_AGE, BELT + " age", (site, drive) -> isNew(site, drive) ? Optional.empty() : Days.age(site, BELT_AGE, BELT, drive));
    }

    private static Take ofNewBelt() {
        return Take.by(SHELF, BELT + " date made", (site, drive) -> isNew(site, drive)
                ? PartsAged.word(site, BELT, drive, "date made").flatMap(s -> since(site, SHELF, drive, s, PartsAged.YEARS)) : Optional.empty());
    }

    private static boolean isNew(Site site, String drive) {
        return PartsAged.word(site, BELT, drive, "state").map(s -> s.says().equals("new") || s.says().equals("ready")).orElse(false);
    }

    /** Of the belt that a companion stands behind, so that the companion's age can be held against it. */
    private static Take interval() {
        return Take.by(INTERVAL, INTERVAL, (site, place) -> PartsAged.driveOf(site, place)
                .flatMap(drive -> DriveLines.line(site, drive, "change after years"))
                .filter(s -> PartsAged.number(s.says()) > 0)
                .map(s -> Site.exact(INTERVAL, place, PartsAged.number(s.says()) * PartsAged.YEARS.factor(), PartsAged.YEARS, 0,
                        List.of(s.where()))));
    }

    /** Time from a date of the record to its latest day; a date that is not sharp gives two ends. */
    private static Optional<Value> since(Site site, String name, String place, Statement dated, Unit unit) {
        Optional<Dates> date = Dates.read(dated.says());
        Optional<LocalDate> today = site.today();
        if (date.isEmpty() || today.isEmpty()) {
            return Optional.empty();
        }
        boolean counted = date.get().monthsAgo() >= 0;
        LocalDate first = counted ? today.get().minusMonths(date.get().monthsAgo() + 1L) : date.get().first();
        LocalDate last = counted ? today.get().minusMonths(date.get().monthsAgo()) : date.get().last();
        Optional<Estimate> high = end(first, today.get());
        Optional<Estimate> low = first.equals(last) ? high : end(last, today.get());
        return Optional.of(new Value(name, name, place, low, high, unit, 1, "", false, "", dated.told().orElse(""),
                Map.of("from", dated.says(), "to", today.get().toString()), List.<Where>of(dated.where())));
    }

    private static Optional<Estimate> end(LocalDate from, LocalDate to) {
        return Optional.of(Estimate.exact(Math.max(0, to.toEpochDay() - from.toEpochDay()) * DAY, Dimension.TIME));
    }
}
