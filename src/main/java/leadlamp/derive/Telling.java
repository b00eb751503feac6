package leadlamp.derive;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.record.Dates;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.words.Part;
import leadlamp.words.Quantity;

/** What the record tells of parts at places, for words that are worked out of it, and those words said. */
final class Telling {
    /** Lines that one entry may stand on, spread over several. */
    private static final int ONE_ENTRY = 12;

    final Site site;
    private final Consumer<String> need;
    private final List<Stated> said;
    private final Consumer<Missing> lacking;
    private final Map<String, List<Statement>> signs = new HashMap<>();
    private String[] faceCuts;

    Telling(Site site, Consumer<String> need, List<Stated> said, Consumer<Missing> lacking) {
        this.site = site;
        this.need = need;
        this.said = said;
        this.lacking = lacking;
        for (Statement s : site.build.statements()) {
            if (s.form() == Statement.Form.SEEN || s.form() == Statement.Form.NOT_SEEN) {
                signs.computeIfAbsent(s.of() + " " + s.what(), k -> new ArrayList<>()).add(s);
            }
        }
    }

    // --- places

    /** The places of a group: the sheet's, else those at which one of the quantities was read. */
    List<String> places(String group, String... quantities) {
        Optional<List<String>> given = site.places(group);
        if (given.isPresent()) {
            return given.get();
        }
        Set<String> places = new LinkedHashSet<>();
        for (String quantity : quantities) {
            for (String at : site.store.places(quantity)) {
                if (!Store.untold(at) && !at.equals(Place.ENGINE)) {
                    places.add(Placing.shortened(at, group));
                }
            }
        }
        places.remove("");
        return List.copyOf(places);
    }

    // --- what is told

    /** A word of one of the parts at the place, or at a place that belongs to it, that is one of these. */
    Optional<Statement> word(List<String> parts, String place, String what, String... says) {
        for (String part : parts) {
            for (Statement s : site.said(part)) {
                if (s.what().equals(what) && site.related(s.at(), place) && (says.length == 0 || List.of(says).contains(s.says()))) {
                    return Optional.of(s);
                }
            }
        }
        return Optional.empty();
    }

    /** Machining of one of the parts, there, by one of these ways. */
    Optional<Statement> machined(List<String> parts, String place, String... by) {
        for (Statement s : site.said("machining")) {
            if (parts.contains(s.what()) && List.of(by).contains(s.says()) && site.related(s.at(), place)) {
                return Optional.of(s);
            }
        }
        return Optional.empty();
    }

    /** The ways of machining that cut a face, by the vocabulary. */
    String[] faceCuts() {
        if (faceCuts == null) {
            faceCuts = site.words.property("machining", "by").orElseThrow().kinds().get("cuts a face").toArray(new String[0]);
        }
        return faceCuts;
    }

    /** A sign seen on one of the parts, there. */
    Optional<Statement> seen(List<String> parts, String place, String... of) {
        return sign(parts, place, true, of);
    }

    /** A sign seen on one of the parts there, or looked for and not there. */
    Optional<Statement> looked(List<String> parts, String place, String... of) {
        return sign(parts, place, false, of);
    }

    /** All that was seen of a sign on one part, or looked for and not there, in the order of the record. */
    List<Statement> signs(String part, String sign) {
        return signs.getOrDefault(part + " " + sign, List.of());
    }

    private Optional<Statement> sign(List<String> parts, String place, boolean there, String... of) {
        for (String part : parts) {
            for (String sign : of) {
                for (Statement s : signs.getOrDefault(part + " " + sign, List.of())) {
                    if ((!there || s.form() == Statement.Form.SEEN) && site.related(s.at(), place)) {
                        return Optional.of(s);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** All signs that were seen, or looked for in one's own person and not there, of the engine as it goes together. */
    List<Statement> signs() {
        List<Statement> all = new ArrayList<>();
        for (Statement s : site.build.statements()) {
            boolean looked = s.form() == Statement.Form.SEEN || s.form() == Statement.Form.NOT_SEEN && s.told().isEmpty();
            if (looked && !s.asides().getOrDefault("as", "").equals("found")) {
                all.add(s);
            }
        }
        return all;
    }

    /** What owner or papers tell of its past. */
    Optional<Statement> past(String... events) {
        for (Statement s : site.said("build")) {
            if (s.what().equals("past") && List.of(events).contains(s.says())) {
                return Optional.of(s);
            }
        }
        return Optional.empty();
    }

    /** Where a value of one of the quantities stands, at the place or within it; worked out first where it is one that is. */
    Optional<Value> value(String place, String... quantities) {
        for (String name : quantities) {
            site.words.quantity(name).filter(q -> !q.from().isEmpty()).map(Quantity::name).ifPresent(need);
            Optional<Value> here = site.store.at(name, place).filter(v -> v.told().isEmpty());
            if (here.isPresent()) {
                return here;
            }
            for (Value within : site.store.within(name, place)) {
                if (within.told().isEmpty()) {
                    return Optional.of(within);
                }
            }
        }
        return Optional.empty();
    }

    /** A reading of one of the quantities, there; what was worked out does not count. */
    Optional<Value> reading(String place, String... quantities) {
        for (String name : quantities) {
            for (Value v : site.store.of(name)) {
                if (!v.derived() && v.told().isEmpty() && !Store.untold(v.at()) && !v.of().endsWith(" as found") && !v.of().endsWith(" as trial")
                        && site.related(v.at(), place)) {
                    return Optional.of(v);
                }
            }
        }
        return Optional.empty();
    }

    // --- dates

    /** First and last day that a line of the record may mean; empty where its entry bears no date. */
    private Optional<Dates> date(Statement s) {
        String date = s.asides().getOrDefault("date", "");
        if (date.isEmpty() && s.of().equals("machining")) {
            date = machiningDate(s);
        }
        return Dates.read(date).filter(d -> d.monthsAgo() < 0);
    }

    /** The date of the same entry, which stands as a word of its own. */
    private String machiningDate(Statement s) {
        for (Statement date : site.said("machining")) {
            boolean same = date.where().file().equals(s.where().file()) && date.where().line() >= s.where().line()
                    && date.where().line() - s.where().line() < ONE_ENTRY;
            if (same && date.what().equals(s.what() + " date") && date.at().equals(s.at())) {
                return date.says();
            }
        }
        return "";
    }

    /** Whether the entry bears a date. */
    boolean dated(Statement s) {
        return date(s).isPresent();
    }

    /** Whether the one line is surely older than the other. */
    boolean before(Statement one, Statement other) {
        Optional<LocalDate> last = date(one).map(Dates::last);
        Optional<LocalDate> first = date(other).map(Dates::first);
        return last.isPresent() && first.isPresent() && last.get().isBefore(first.get());
    }

    // --- what is said

    void say(String of, String at, String what, String says, List<Where> where) {
        say(of, at, what, says, "", where);
    }

    /** What rests on somebody else's word is told by him. */
    void say(String of, String at, String what, String says, Optional<Statement> by) {
        by.ifPresent(s -> say(of, at, what, says, s.told().orElse(""), List.of(s.where())));
    }

    void say(String of, String at, String what, String says, String told, List<Where> where) {
        said.add(new Stated(of, site.words.part(of).map(Part::kind).orElse(of), at, what, says, told, Map.of("sum", says), List.copyOf(where)));
    }

    void sayBy(String of, String at, String what, String says, Optional<Value> by) {
        by.ifPresent(v -> say(of, at, what, says, v.places()));
    }

    void lack(String word, String at, String... readings) {
        lacking.accept(new Missing(word, at, List.of(readings)));
    }

    /** What was said of a subject before, such as that two ways of reading it differ. */
    Optional<Stated> told(String of, String at, String what) {
        for (Stated one : said) {
            if (one.of().equals(of) && one.what().equals(what) && one.at().equals(at)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    /** What was said so of a subject before, one of these. */
    List<Stated> all(String of, String at, String what, List<String> says) {
        List<Stated> all = new ArrayList<>();
        for (Stated one : said) {
            if (one.of().equals(of) && one.what().equals(what) && one.at().equals(at) && says.contains(one.says())) {
                all.add(one);
            }
        }
        return all;
    }

    /** A number or a word as it is read aloud: without blanks, dashes and capitals. */
    static String letters(String text) {
        StringBuilder letters = new StringBuilder();
        for (char c : text.toLowerCase(Locale.ROOT).toCharArray()) {
            if (Character.isLetterOrDigit(c)) {
                letters.append(c);
            }
        }
        return letters.toString();
    }
}
