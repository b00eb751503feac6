package leadlamp.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** Makes facts of what record and sheet say in words. What they say in figures, the derivation reads. */
final class FactsOf {
    static final String AS_FOUND = " as found";
    static final String AS_TRIAL = " as trial";
    private static final Set<String> OTHER = Set.of("new", "second-hand", "ready");
    /** Faces and ends, with the part that they go and come with. */
    private static final Map<String, String> BELONGS = Map.of("cam lobe", "camshaft", "head face", "head", "combustion chamber", "head", "block face",
            "block", "valve tip", "valve", "valve seat", "seat insert");
    /** What is worked on when a part is tight in it. */
    private static final Map<String, String> SEAT = Map.of("camshaft", "cam bearing");
    private static final Set<String> METAL_OFF = Set.of("mill", "grind", "cut", "turn", "lap", "hone", "bore", "insert", "line bore", "line hone");
    /** What goes deeper than a cut. */
    private static final Set<String> DEEP = Set.of("cracked", "broken", "bent", "moved", "play");

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
    private static Map<String, List<String>> renewed(Build build) {
        Map<String, List<String>> renewed = new HashMap<>();
        for (Statement s : build.statements()) {
            if (s.form() == Statement.Form.STATED && s.what().equals("state") && OTHER.contains(s.says())) {
                renewed.computeIfAbsent(s.of(), part -> new ArrayList<>()).add(s.at());
            }
        }
        return renewed;
    }

    /** That nothing was seen on the part that came out says nothing of the one that goes in. */
    private static boolean ofTheOldOne(Statement s, Map<String, List<String>> renewed) {
        if (found(s)) {
            for (String part : List.of(s.of(), BELONGS.getOrDefault(s.of(), s.of()))) {
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
    private static boolean workedAway(Build build, Statement seen) {
        if (!found(seen) || DEEP.contains(seen.what())) {
            return false;
        }
        Set<String> parts = new HashSet<>(List.of(seen.of(), BELONGS.getOrDefault(seen.of(), seen.of()), SEAT.getOrDefault(seen.of(), seen.of())));
        for (Statement s : build.statements()) {
            if (s.form() == Statement.Form.STATED && s.of().equals("machining") && METAL_OFF.contains(s.says()) && parts.contains(s.what())
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
                    : new NotSeen(s.of(), kind(s.of()), s.at(), s.what(), places);
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

    private String find(String of) {
        for (String mark : List.of(AS_FOUND, AS_TRIAL)) {
            if (of.endsWith(mark)) {
                return find(of.substring(0, of.length() - mark.length())) + mark;
            }
        }
        Optional<Part> part = words.part(of);
        if (part.isPresent() && part.get().name().equals(of)) {
            return part.get().kind();
        }
        Optional<Quantity> quantity = words.quantity(of);
        return quantity.isPresent() && quantity.get().name().equals(of) ? quantity.get().kind() : of;
    }
}
