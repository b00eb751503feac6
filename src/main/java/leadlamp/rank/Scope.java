package leadlamp.rank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlamp.audit.Gap;
import leadlamp.audit.Way;
import leadlamp.record.Build;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.words.Name;
import leadlamp.words.Names;
import leadlamp.words.Property;
import leadlamp.words.Quantity;
import leadlamp.words.StepGraph;
import leadlamp.words.Vocabulary;

/**
 * How far this work reached, by what the record tells of it. Somebody who changed a belt with the engine in the car did not
 * have its pistons out: a question that an earlier step closed, of parts on which the record tells of no work, is open all
 * the same, but it is not what that builder can settle first.
 *
 * <p>A question is of this work where a step that closes it was done in it, or follows one that was; where a part that it
 * asks of was fitted new, cut, looked at for just that, or read; and where its joint is named. A record that tells of no
 * step, or of the crankshaft going in, is taken to be of the whole engine.
 */
final class Scope {
    private static final String STRIPPED = "engine stripped";
    private static final String CRANK_IN = "crankshaft laid";
    private static final String STEPS = "steps";
    private static final String MACHINING = "machining";
    private static final String BETWEEN = " to ";
    private static final Set<String> NOT_DONE = Set.of("next", "planned");
    /** States of a part that tell of work, in the words of the vocabulary; one that stayed, or is only there, tells of none. */
    private static final String PUT_IN = "put in";

    private final Build build;
    private final StepGraph graph;
    private final Vocabulary words;
    private final Property state;
    private final boolean whole;
    private final Map<String, List<Statement>> said = new HashMap<>();
    private final Set<String> reached = new HashSet<>();
    /** Steps that are done or due now: only what they close is closed or about to be. */
    private final Set<String> closed = new HashSet<>();

    Scope(Build build, StepGraph graph, Vocabulary words) {
        this.build = build;
        this.graph = graph;
        this.words = words;
        this.state = words.property("parts", "state").orElseThrow();
        Set<String> done = new HashSet<>();
        Set<String> next = new HashSet<>();
        for (Statement line : build.statements()) {
            List<Statement> alike = said.get(line.of());
            if (alike == null) {
                alike = new ArrayList<>();
                said.put(line.of(), alike);
            }
            alike.add(line);
            if (!line.of().equals(STEPS) || line.told().isPresent()) {
                continue;
            }
            if (line.says().equals("next")) {
                next.add(line.what());
            } else if (!NOT_DONE.contains(line.says()) && line.at().equals(Place.ENGINE)) {
                done.add(line.what());
            }
        }
        Set<String> behind = new HashSet<>(build.stage());
        behind.addAll(done);
        closed.addAll(graph.behind(behind));
        closed.addAll(graph.dueNow(next, behind));
        // To take a thing off, or to look first, is not yet to build.
        Set<String> before = new HashSet<>(graph.behind(Set.of(STRIPPED)));
        before.remove(STRIPPED);
        done.removeAll(before);
        boolean silent = done.isEmpty();
        done.addAll(next);
        for (String step : graph.steps()) {
            boolean follows = done.contains(step) || readies(step, next);
            for (String first : graph.after(step)) {
                follows |= reached.contains(first) && !next.contains(first);
            }
            if (follows) {
                reached.add(step);
            }
        }
        // Where the crankshaft was out all that lies over it was open, whether a line says so or not.
        this.whole = silent || graph.allDue(next) || reached.contains(CRANK_IN);
    }

    /** Whether a step makes ready the very part that goes on next: `oil pump packed` before `oil pump fitted`. */
    private boolean readies(String step, Set<String> next) {
        String part = step.substring(0, Math.max(0, step.lastIndexOf(' ')));
        if (words.part(part).isEmpty()) {
            return false;
        }
        for (String on : next) {
            if (on.startsWith(part + " ") && graph.after(on).contains(step)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the record tells of work on what this question asks of. */
    boolean tellsOf(Ranked question) {
        if (whole) {
            return true;
        }
        String at = question.ask().at();
        String joint = joint(question);
        if (!joint.isEmpty()) {
            return named(joint) || joined(joint);
        }
        if (silent(question)) {
            return false;
        }
        if (bearsNewPart(at)) {
            return true;
        }
        for (Way way : question.check().ways()) {
            for (String need : way.needs()) {
                if (workedOn(need, at)) {
                    return true;
                }
            }
        }
        Set<String> closing = new HashSet<>();
        boolean ofParts = false;
        for (Gap gap : question.gaps()) {
            for (String reading : gap.readings().isEmpty() ? List.of(gap.need()) : gap.readings()) {
                ofParts |= closes(reading, closing);
            }
        }
        if (closing.isEmpty()) {
            for (Way way : question.check().ways()) {
                for (String need : way.needs()) {
                    ofParts |= closes(need, closing);
                }
            }
        }
        question.check().lastChance().ifPresent(closing::add);
        closing.retainAll(closed);
        if (closing.isEmpty()) {
            return !ofParts;
        }
        closing.retainAll(reached);
        return !closing.isEmpty();
    }

    private static String joint(Ranked question) {
        String of = question.ask().of();
        return of.contains(BETWEEN) ? of : question.ask().at().contains(BETWEEN) ? question.ask().at() : "";
    }

    /** Whether the record says anything of this joint, or of a bolt of it. */
    private boolean named(String joint) {
        for (Statement line : build.statements()) {
            if (line.at().equals(joint) || line.at().startsWith(joint + " ") || joint.startsWith(line.at() + " ") && line.at().contains(BETWEEN)) {
                return true;
            }
        }
        return false;
    }

    /** Whether it is asked only of what was renewed or cut, and the record says nothing of that part: nobody told of work on it. */
    private boolean silent(Ranked question) {
        if (silent(question.check().applies(), question.ask().at())) {
            return true;
        }
        for (Way way : question.check().ways()) {
            if (!silent(way.applies(), question.ask().at())) {
                return false;
            }
        }
        return true;
    }

    private boolean silent(Map<String, List<String>> applies, String at) {
        for (String word : applies.keySet()) {
            Optional<Name> name = Names.resolve(word, words);
            boolean state = name.isPresent() && name.get() instanceof Name.PartWord && name.get().what().equals("state");
            boolean work = name.isPresent() && name.get() instanceof Name.SectionWord && name.get().of().equals(MACHINING);
            if ((state || work) && !told(name.get(), at)) {
                return true;
            }
        }
        return false;
    }

    private boolean told(Name name, String at) {
        for (Statement line : said.getOrDefault(name.of(), List.of())) {
            if (line.what().equals(name.what()) && Place.related(line.at(), at)) {
                return true;
            }
        }
        return false;
    }

    /** Whether what this joint holds was fitted: by the steps of that part, and where it has none by what closes the joint. */
    private boolean joined(String joint) {
        List<String> closing = graph.closing("joint " + joint);
        for (String step : closing) {
            if (closed.contains(step) && !reached.contains(step)) {
                return false;
            }
        }
        String part = joint.substring(0, joint.indexOf(BETWEEN));
        boolean own = false;
        for (String step : graph.steps()) {
            if (step.startsWith(part + " ") || step.startsWith(part + "s ")) {
                own = true;
                if (reached.contains(step) && closed.contains(step)) {
                    return true;
                }
            }
        }
        if (putIn(part, Place.ENGINE)) {
            return true;
        }
        if (!own) {
            for (String step : closing) {
                if (reached.contains(step) && closed.contains(step)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether the part of this word was put in or cut at a place, or just this was read or looked for. */
    private boolean workedOn(String word, String at) {
        Optional<Name> name = Names.resolve(word, words);
        if (name.isEmpty()) {
            return false;
        }
        Name known = name.get();
        if (known instanceof Name.QuantityName reading) {
            Optional<Quantity> quantity = words.quantity(reading.quantity());
            if (quantity.isPresent() && !quantity.get().of().isEmpty() && putIn(quantity.get().of(), at)) {
                return true;
            }
        } else if (known instanceof Name.PartWord || known instanceof Name.SignOf) {
            if (putIn(known.of(), at)) {
                return true;
            }
        } else if (!(known instanceof Name.SectionWord) || !known.of().equals(MACHINING)) {
            return false;
        }
        return !(known instanceof Name.PartWord) && told(known, at);
    }

    /** Whether a place that is named by its part, as a seal is (`cam seal intake`), has a new one. */
    private boolean bearsNewPart(String at) {
        for (int end = at.length(); end > 0; end = at.lastIndexOf(' ', end - 1)) {
            if (words.part(at.substring(0, end)).isPresent()) {
                return putIn(at.substring(0, end), end == at.length() ? Place.ENGINE : at.substring(end + 1))
                        || putIn(at.substring(0, end), at);
            }
        }
        return false;
    }

    private boolean putIn(String part, String at) {
        for (Statement line : said.getOrDefault(part, List.of())) {
            if (line.what().equals("state") && state.is(PUT_IN, line.says()) && Place.related(line.at(), at)) {
                return true;
            }
        }
        for (Statement line : said.getOrDefault(MACHINING, List.of())) {
            if (line.what().equals(part) && !line.says().equals("none") && Place.related(line.at(), at)) {
                return true;
            }
        }
        return false;
    }

    /** Adds the steps that close what this word names; tells whether it names a part, a reading or a step at all. */
    private boolean closes(String word, Set<String> steps) {
        Optional<Name> name = Names.resolve(word, words);
        if (name.isEmpty()) {
            return false;
        }
        Name known = name.get();
        if (known instanceof Name.QuantityName reading) {
            steps.addAll(graph.closing(reading.quantity()));
            return true;
        }
        if (known instanceof Name.PartWord) {
            steps.addAll(graph.closing(known.of()));
            return true;
        }
        if (known instanceof Name.SignOf) {
            steps.addAll(graph.closing(known.of() + " " + known.what()));
            return true;
        }
        if (known instanceof Name.SectionWord && known.of().equals(STEPS)) {
            steps.add(known.what());
            steps.addAll(graph.following(known.what()));
            return true;
        }
        if (known instanceof Name.SectionWord && known.of().equals(MACHINING)) {
            for (String part = known.what(); !part.isEmpty(); part = part.substring(0, Math.max(0, part.lastIndexOf(' ')))) {
                if (words.part(part).isPresent()) {
                    steps.addAll(graph.closing(part));
                    return true;
                }
            }
        }
        return false;
    }
}
