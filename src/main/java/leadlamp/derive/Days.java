package leadlamp.derive;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.record.Dates;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/**
 * Dates and times of the record as figures: seconds since the first day of 1970, local time of the workshop. A date without a
 * time may be any moment of its day, an unsharp date any day between its ends. Today is the latest date of the record.
 */
final class Days {
    static final Unit DAYS = Units.named("days", Dimension.TIME).orElseThrow();
    static final Unit MINUTES = Units.named("min", Dimension.TIME).orElseThrow();
    static final Unit HOURS = Units.named("h", Dimension.TIME).orElseThrow();
    private static final double DAY = 86_400;
    /** Days in a month, for what is told in months. */
    private static final double MONTH = 365.25 / 12;

    private Days() {
    }

    /** Time between two moments of one order; two on one day without a time may be as near as nothing. */
    static double between(double from, double to) {
        return Math.max(0, to - from);
    }

    /** Two moments as they are tried just now, the later first; nothing lies between them where they may be one. */
    static String apart(In v, String from, String to) {
        return v.get(to) > v.get(from) ? moment(v.get(to)) + " less " + moment(v.get(from)) : "0 days (both may be of one moment)";
    }

    private static String moment(double si) {
        LocalDate day = LocalDate.ofEpochDay((long) Math.floor(si / DAY));
        long minutes = Math.round((si - day.toEpochDay() * DAY) / 60);
        return day + " " + minutes / 60 + (minutes % 60 < 10 ? ":0" : ":") + minutes % 60;
    }

    /** When a step was done at a place, as its entry says. */
    static Optional<Value> done(Site site, String name, String step, String place) {
        Value found = null;
        for (Statement s : site.said("steps")) {
            if (s.what().equals(step) && Place.related(s.at(), place) && !s.says().equals("left out") && !s.says().equals("unknown")) {
                Optional<Value> at = moment(name, place, s.asides().getOrDefault("date", ""), s.asides().getOrDefault("time", ""), s, site);
                found = at.orElse(found);
            }
        }
        return Optional.ofNullable(found);
    }

    /** A date, with the time of day where one is written, as a figure with two ends. */
    static Optional<Value> moment(String name, String place, String date, String time, Statement said, Site site) {
        Optional<Dates> read = Dates.read(date);
        if (read.isEmpty()) {
            return Optional.empty();
        }
        double low;
        double high;
        if (read.get().monthsAgo() >= 0) {
            Optional<LocalDate> today = site.today();
            if (today.isEmpty()) {
                return Optional.empty();
            }
            low = today.get().minusMonths(read.get().monthsAgo() + 1L).toEpochDay() * DAY;
            high = (today.get().minusMonths(read.get().monthsAgo()).toEpochDay() + 1) * DAY;
        } else {
            low = read.get().first().toEpochDay() * DAY;
            high = (read.get().last().toEpochDay() + 1) * DAY;
        }
        double minutes = clock(time);
        if (minutes >= 0 && high - low == DAY) {
            low += minutes * 60;
            high = low;
        }
        return Optional.of(between(name, place, low, high, HOURS, said.told().orElse(""), List.of(said.where())));
    }

    /** Minutes of the day; below nought where the text is no time. */
    private static double clock(String time) {
        int colon = time.indexOf(':');
        if (colon < 1 || colon + 3 > time.length()) {
            return -1;
        }
        int hours = Shapes.number(time.substring(0, colon));
        int minutes = Shapes.number(time.substring(colon + 1));
        return hours < 24 && minutes < 60 ? hours * 60 + minutes : -1;
    }

    static Value between(String name, String place, double low, double high, Unit unit, String told, List<Where> where) {
        Optional<Estimate> from = Optional.of(Estimate.exact(low, Dimension.TIME));
        Optional<Estimate> to = low == high ? from : Optional.of(Estimate.exact(high, Dimension.TIME));
        return new Value(name, name, place, from, to, unit, 0, "", false, "", told, new TreeMap<>(), where);
    }

    /** When the joint was closed or tightened: its own step, else the step that its torque's line is dated with. */
    static Take fromJoint() {
        return Take.by("joint tightened", (site, place) -> {
            Optional<Value> closed = done(site, "joint tightened", "joint closed", place);
            if (closed.isPresent()) {
                return closed;
            }
            for (Statement s : site.about("joint torque")) {
                if (s.at().equals(place) && s.asides().containsKey("date")) {
                    return moment("joint tightened", place, s.asides().get("date"), s.asides().getOrDefault("time", ""), s, site);
                }
            }
            return Optional.empty();
        });
    }

    /** The first time that the engine was filled with oil or ran. */
    static Take toStartOrOil() {
        return Take.by("start or oil", (site, place) -> earliest(site, "start or oil", "engine", "oil filled", "oil primed", "first start"));
    }

    /** The earliest of several steps. */
    static Optional<Value> earliest(Site site, String name, String place, String... steps) {
        Value earliest = null;
        for (String step : steps) {
            Optional<Value> done = done(site, name, step, place);
            if (done.isPresent() && (earliest == null
                    || done.get().low().orElseThrow().value() < earliest.low().orElseThrow().value())) {
                earliest = done.get();
            }
        }
        return Optional.ofNullable(earliest);
    }

    /** Age of a part on the latest day of the record: as told, else from its date. */
    static Optional<Value> age(Site site, String name, String part, String place) {
        Optional<Statement> told = PartsAged.word(site, part, place, "age").filter(s -> s.value().isPresent() && s.value().get().figure());
        if (told.isPresent()) {
            return Site.written(name, place, told.get());
        }
        Optional<Statement> made = PartsAged.word(site, part, place, "date made");
        Optional<LocalDate> today = site.today();
        if (made.isEmpty() || today.isEmpty()) {
            return Optional.empty();
        }
        double now = (today.get().toEpochDay() + 0.5) * DAY;
        return moment(name, place, made.get().says(), "", made.get(), site).map(date -> {
            double youngest = Math.max(0, now - date.high().orElseThrow().value());
            double oldest = Math.max(0, now - date.low().orElseThrow().value());
            return between(name, place, youngest, oldest, Units.named("years", Dimension.TIME).orElseThrow(), date.told(), date.places());
        });
    }

    /** All dated entries, for what goes by the order of the work. */
    static List<Statement> dated(Site site) {
        List<Statement> dated = new ArrayList<>();
        for (Statement s : site.said("steps")) {
            if (s.asides().containsKey("date")) {
                dated.add(s);
            }
        }
        return dated;
    }

    /** Length of a month, in seconds. */
    static double month() {
        return MONTH * DAY;
    }
}
