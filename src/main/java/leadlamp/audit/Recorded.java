package leadlamp.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leadlamp.facts.Condition;
import leadlamp.facts.Fact;
import leadlamp.facts.NotSeen;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** The facts of one build by the words that `needs`, `heeds` and `applies` call them: by their own name and by their kind's. */
final class Recorded {
    private final Vocabulary words;
    private final Map<String, String> kinds = new HashMap<>();
    private final Map<String, List<Fact>> byWord = new HashMap<>();
    private final Map<String, List<Verdict>> verdicts = new HashMap<>();
    private final Map<String, Map<String, List<Fact>>> nearFacts = new HashMap<>();
    private final Map<String, Map<String, List<Verdict>>> nearVerdicts = new HashMap<>();
    private final Map<String, List<String>> leftOut = new HashMap<>();
    private final Map<String, Map<String, List<Fact>>> bySubject = new HashMap<>();

    Recorded(List<? extends Fact> facts, List<Statement.Key> unreadable, Vocabulary words) {
        this.words = words;
        for (Fact fact : facts) {
            take(fact);
        }
        for (Statement.Key key : unreadable) {
            String word = switch (key.form()) {
                case READ -> key.what().isEmpty() ? key.of() : key.of() + " " + key.what();
                case ON_SHEET -> "sheet " + key.of() + " " + key.what();
                default -> key.of() + " " + key.what();
            };
            leftOut.computeIfAbsent(word, w -> new ArrayList<>()).add(key.at());
        }
    }

    private void take(Fact fact) {
        if (fact instanceof Stated said) {
            put(said.of(), said.kind(), said.what(), "", fact);
        } else if (fact instanceof Seen seen) {
            put(seen.of(), seen.kind(), seen.sign(), "", fact);
            put(seen.of(), seen.kind(), "any sign", "", fact);
        } else if (fact instanceof NotSeen clear) {
            put(clear.of(), clear.kind(), clear.sign(), "", fact);
            put(clear.of(), clear.kind(), "any sign", "", fact);
        } else if (fact instanceof OnSheet line) {
            if (line.of().equals(line.what())) {
                put("sheet " + line.of(), fact);
            } else {
                put(line.of(), line.kind(), line.what(), "sheet ", fact);
            }
        } else if (fact instanceof Value value) {
            put(value.of(), fact);
            if (ofKind(value.of(), value.kind())) {
                put(value.kind(), fact);
            }
        } else if (fact instanceof Verdict verdict) {
            put(verdict.of(), verdict);
            if (ofKind(verdict.of(), verdict.kind())) {
                put(verdict.kind(), verdict);
            }
        } else if (fact instanceof Condition condition) {
            put("condition " + condition.name(), fact);
        }
    }

    /** Whether it is a quantity of that kind. One worked out for each reading bears the reading's name there, and is none of it. */
    private boolean ofKind(String of, String kind) {
        if (kind.equals(of)) {
            return false;
        }
        String known = kinds.get(of);
        if (known == null) {
            known = words.quantity(of).map(Quantity::kind).orElse(kind);
            kinds.put(of, known);
        }
        return known.equals(kind);
    }

    private void put(String of, String kind, String what, String before, Fact fact) {
        String rest = " ".concat(what);
        put(before.concat(of).concat(rest), fact);
        if (!kind.equals(of)) {
            put(before.concat(kind).concat(rest), fact);
        }
    }

    private void put(String word, Fact fact) {
        List<Fact> facts = byWord.get(word);
        if (facts == null) {
            facts = new ArrayList<>(4);
            byWord.put(word, facts);
        }
        facts.add(fact);
    }

    private void put(String word, Verdict verdict) {
        List<Verdict> all = verdicts.get(word);
        if (all == null) {
            all = new ArrayList<>(4);
            verdicts.put(word, all);
        }
        all.add(verdict);
    }

    /** Facts that the word names, verdicts left out. */
    List<Fact> of(String word) {
        return byWord.getOrDefault(word, List.of());
    }

    /**
     * Of these facts those that concern what the question is of. A value worked out of each reading, or each part, of a group
     * bears the name of that one as its kind, and says nothing of another.
     */
    List<Fact> of(String word, String subject) {
        List<Fact> all = of(word);
        if (subject.isEmpty() || all.isEmpty()) {
            return all;
        }
        Map<String, List<Fact>> known = bySubject.get(word);
        if (known == null) {
            known = sorted(all);
            bySubject.put(word, known);
        }
        List<Fact> own = known.get(subject);
        return own == null ? known.get("") : own;
    }

    /** Facts by the one that they are of; under no name those that are of none, which stand under each name too. */
    private Map<String, List<Fact>> sorted(List<Fact> all) {
        Map<String, List<Fact>> sorted = new HashMap<>();
        List<Fact> ofNone = new ArrayList<>();
        sorted.put("", ofNone);
        for (Fact fact : all) {
            String one = one(fact);
            if (one.isEmpty()) {
                sorted.values().forEach(facts -> facts.add(fact));
                continue;
            }
            List<Fact> own = sorted.get(one);
            if (own == null) {
                own = new ArrayList<>(ofNone);
                sorted.put(one, own);
            }
            own.add(fact);
        }
        return sorted;
    }

    /** The one of a group that a value was worked out of; empty where it is of none. */
    private String one(Fact fact) {
        return fact instanceof Value value && !value.kind().equals(value.of()) && !ofKind(value.of(), value.kind())
                && words.quantity(value.of()).isPresent() ? value.kind() : "";
    }

    /** Verdicts on the quantity, or on all of its kind. */
    List<Verdict> verdicts(String quantity) {
        return verdicts.getOrDefault(quantity, List.of());
    }

    /** Facts that the word names and that stand at the place, or at one that belongs to it or holds there. */
    List<Fact> near(String word, String place) {
        List<Fact> all = of(word);
        return all.isEmpty() ? all : near(nearFacts, all, word, place);
    }

    /** Verdicts on the quantity there. */
    List<Verdict> verdictsNear(String quantity, String place) {
        List<Verdict> all = verdicts(quantity);
        return all.isEmpty() ? all : near(nearVerdicts, all, quantity, place);
    }

    /** One question is asked at each of hundreds of places, and a need is looked up for each: the pairs are worked out once. */
    private static <F extends Fact> List<F> near(Map<String, Map<String, List<F>>> known, List<F> all, String word, String place) {
        Map<String, List<F>> byPlace = known.get(word);
        if (byPlace == null) {
            byPlace = new HashMap<>();
            known.put(word, byPlace);
        }
        List<F> near = byPlace.get(place);
        if (near == null) {
            near = new ArrayList<>(4);
            Place asked = Place.of(place);
            String last = "";
            boolean stands = false;
            for (F fact : all) {
                if (!fact.at().equals(last)) {
                    last = fact.at();
                    stands = last.equals(place) || !Untold.is(last) && asked.related(Place.of(last));
                }
                if (stands) {
                    near.add(fact);
                }
            }
            byPlace.put(place, near);
        }
        return near;
    }

    /** Places at which something of this name stands in the record and could not be read. */
    List<String> leftOut(String word) {
        return leftOut.getOrDefault(word, List.of());
    }
}
