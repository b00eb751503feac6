package leadlamp.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.facts.Fact;
import leadlamp.facts.NotSeen;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.record.Build;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.words.Part;
import leadlamp.words.Property;
import leadlamp.words.Quantity;
import leadlamp.words.Sign;
import leadlamp.words.Vocabulary;

/** Makes facts of what record and sheet say in words. What they say in figures, the derivation reads. */
final class FactsOf {
    static final String AS_FOUND = " as found";
    static final String AS_TRIAL = " as trial";
    /** States of a part that goes in where another came out, and ways of machining that take away what a face shows; of the vocabulary. */
    private static final String ANOTHER = "another part";
    private static final String METAL_OFF = "takes metal off";

    private final Vocabulary words;
    private final Map<String, String> kinds = new HashMap<>();

    FactsOf(Vocabulary words) {
        this.words = words;
    }

    /** One fact a statement, in their order: the record's, then the sheet's. */
    List<Fact> build(Build build) {
        List<Fact> facts = new ArrayList<>(build.statements().size() + build.sheet().statements().size());
        Map<String, List<String>> renewed = renewed(build);
        for (Statement statement : build.statements()) {
            Fact fact = fact(statement);
            if (fact != null && !(fact instanceof NotSeen && ofTheOldOne(statement, renewed))) {
                boolean gone = fact instanceof Seen && (ofTheOldOne(statement, renewed) || workedAway(build, statement)
                        || (found(statement) || trial(statement)) && lookedSince(build, statement));
                facts.add(gone ? ((Seen) fact).gone() : fact);
            }
        }
        for (Statement line : build.sheet().statements()) {
            facts.add(new OnSheet(line.of(), kind(line.of()), line.at(), line.what(), line.says(), List.of(line.where())));
        }
        return facts;
    }

    /** The parts in whose place another one goes, with those places. */
    private Map<String, List<String>> renewed(Build build) {
        Map<String, List<String>> renewed = new HashMap<>();
        Property state = words.property("parts", "state").orElseThrow();
        for (Statement s : build.statements()) {
            if (s.form() == Statement.Form.STATED && s.what().equals("state") && state.is(ANOTHER, s.says())) {
                renewed.computeIfAbsent(s.of(), part -> new ArrayList<>()).add(s.at());
            }
        }
        return renewed;
    }

    /** That nothing was seen on the part that came out says nothing of the one that goes in. */
    private boolean ofTheOldOne(Statement s, Map<String, List<String>> renewed) {
        if (found(s) && !renewed.isEmpty()) {
            for (String part : List.of(s.of(), part(s.of()).map(Part::goesWith).orElse(""))) {
                for (String place : renewed.getOrDefault(part, List.of())) {
                    if (Place.related(place, s.at())) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** Whether metal was taken off where a face was found hurt. */
    private boolean workedAway(Build build, Statement seen) {
        if (!found(seen) || words.sign(seen.what()).filter(Sign::deep).isPresent()) {
            return false;
        }
        Optional<Part> part = part(seen.of());
        List<String> parts = List.of(seen.of(), part.map(Part::goesWith).orElse(""), part.map(Part::runsIn).orElse(""));
        Property by = words.property("machining", "by").orElseThrow();
        for (Statement s : build.statements()) {
            if (s.form() == Statement.Form.STATED && s.of().equals("machining") && by.is(METAL_OFF, s.says()) && parts.contains(s.what())
                    && Place.related(s.at(), seen.at())) {
                return true;
            }
        }
        return false;
    }

    private static boolean trial(Statement s) {
        return s.asides().getOrDefault("as", "").equals("trial");
    }

    private static boolean found(Statement s) {
        return s.asides().getOrDefault("as", "").equals("found");
    }

    /** Whether the same sign was looked for on the engine as it goes together, and was not there any more. */
    private static boolean lookedSince(Build build, Statement seen) {
        for (Statement s : build.statements()) {
            if (s.form() == Statement.Form.NOT_SEEN && s.of().equals(seen.of()) && s.what().equals(seen.what()) && s.told().isEmpty()
                    && !found(s) && Place.related(s.at(), seen.at())) {
                return true;
            }
        }
        return false;
    }

    private Fact fact(Statement s) {
        List<Where> places = List.of(s.where());
        return switch (s.form()) {
            // How far the work is proves nothing, and no rule reads it.
            case STATED -> s.of().equals("stage") ? null : new Stated(s.of(), kind(s.of()), s.at(), s.what(), s.says(),
                    s.told().orElse(""), s.asides(), places);
            case SEEN -> new Seen(s.of(), kind(s.of()), s.at(), s.what(), s.told().orElse(""), s.asides(), places);
            case NOT_SEEN -> s.told().isPresent() ? null
                    : new NotSeen(s.of(), kind(s.of()), s.at(), s.what(), s.asides(), places);
            case ON_SHEET -> new OnSheet(s.of(), kind(s.of()), s.at(), s.what(), s.says(), places);
            case READ -> null;
        };
    }

    /** The kind of a subject, its own name where it has none. What came out is of no kind that goes in. */
    String kind(String of) {
        String known = kinds.get(of);
        if (known == null) {
            known = find(of);
            kinds.put(of, known);
        }
        return known;
    }

    private Optional<Part> part(String of) {
        return words.part(of).filter(known -> known.name().equals(of));
    }

    private String find(String of) {
        for (String mark : List.of(AS_FOUND, AS_TRIAL)) {
            if (of.endsWith(mark)) {
                return find(of.substring(0, of.length() - mark.length())) + mark;
            }
        }
        Optional<Part> part = part(of);
        if (part.isPresent()) {
            return part.get().kind();
        }
        Optional<Quantity> quantity = words.quantity(of);
        return quantity.isPresent() && quantity.get().name().equals(of) ? quantity.get().kind() : of;
    }
}
