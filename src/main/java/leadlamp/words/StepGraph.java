package leadlamp.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The steps of one engine in the order in which they are done, and what each closes. A step that its layout does not
 * have is left out, and its own `after` stand in for it. The order lines of the engine sheet are added; where one turns
 * a line of the vocabulary round, the sheet's stands.
 */
public final class StepGraph {
    private final Vocabulary words;
    private final Map<String, Step> known = new LinkedHashMap<>();
    private final Set<String> absent = new HashSet<>();
    private final Map<String, Set<String>> after = new LinkedHashMap<>();
    private final Map<String, Set<String>> closes = new HashMap<>();
    private final Map<String, List<String>> closing = new HashMap<>();
    private final Map<String, Integer> place = new HashMap<>();
    private final List<String> refused = new ArrayList<>();
    private final List<String> order;

    /**
     * @param layout whether the engine's layout has what a step goes by (`belt drive`); empty where nobody knows
     * @param sheet  the sheet's own order, the first step before the one that waits for it
     * @param hidden what the sheet says is hidden, by the step that hides it
     */
    public StepGraph(Vocabulary words, Function<String, Optional<Boolean>> layout, List<Map.Entry<String, String>> sheet,
            Map<String, ? extends Collection<String>> hidden) {
        this.words = words;
        int number = 0;
        for (Step step : words.steps()) {
            known.put(step.name(), step);
            place.put(step.name(), number++);
            if (!step.onlyFor().isEmpty() && !layout.apply(step.onlyFor()).orElse(true)) {
                absent.add(step.name());
            }
        }
        for (Step step : known.values()) {
            Set<String> first = new LinkedHashSet<>(step.after());
            for (var more : step.afterFor().entrySet()) {
                if (layout.apply(more.getKey()).orElse(false)) {
                    first.addAll(more.getValue());
                }
            }
            after.put(step.name(), first);
            closes.put(step.name(), new LinkedHashSet<>(step.closes()));
        }
        for (String step : absent) {
            bridge(step);
        }
        for (var line : sheet) {
            add(line.getKey(), line.getValue());
        }
        for (var hides : hidden.entrySet()) {
            Optional<Step> step = words.step(hides.getKey());
            if (step.isEmpty()) {
                refused.add("\"" + hides.getKey() + "\" under `hidden by` is no step" + near(hides.getKey()));
            } else {
                moved(hides.getValue(), step.get().name());
            }
        }
        order = sorted();
        for (int i = 0; i < order.size(); i++) {
            place.put(order.get(i), i);
            for (String word : closes.get(order.get(i))) {
                String key = Index.key(word);
                List<String> steps = closing.get(key);
                if (steps == null) {
                    steps = new ArrayList<>();
                    closing.put(key, steps);
                }
                steps.add(order.get(i));
            }
        }
    }

    /** The steps of this engine, each after all that it waits for; ties as the vocabulary lists them. */
    public List<String> steps() {
        return order;
    }

    /** Lines of the sheet that could not be taken, each with why, as sentences. */
    public List<String> refused() {
        return Collections.unmodifiableList(refused);
    }

    /** What must be done first, straight. */
    public Set<String> after(String step) {
        return Collections.unmodifiableSet(after.getOrDefault(step, Set.of()));
    }

    /** Steps that wait straight for this one, in their order. */
    public List<String> following(String step) {
        List<String> following = new ArrayList<>();
        for (String other : order) {
            if (after.get(other).contains(step)) {
                following.add(other);
            }
        }
        return following;
    }

    /** Where a step stands in the order, from 0; after all others where this engine does not have it. */
    public int order(String step) {
        Integer number = absent.contains(step) ? null : place.get(step);
        return number == null ? order.size() : number;
    }

    /** What the step closes: parts, readings, signs, joints (`joint oil pump to block`), plugs and seals by name. */
    public Set<String> closes(String step) {
        return Collections.unmodifiableSet(closes.getOrDefault(step, Set.of()));
    }

    /** These steps and every step before one of them. */
    public Set<String> behind(Collection<String> stage) {
        Set<String> behind = new LinkedHashSet<>();
        for (String step : stage) {
            reach(step, behind);
        }
        return inOrder(behind);
    }

    /**
     * The steps whose closing is at hand: `next` and every step before it that is not behind; where no next step is
     * named, those whose `after` is all behind.
     */
    public Set<String> dueNow(Collection<String> next, Collection<String> stage) {
        Set<String> behind = behind(stage);
        Set<String> due = new LinkedHashSet<>();
        if (next.isEmpty()) {
            for (String step : order) {
                if (!behind.contains(step) && behind.containsAll(after.get(step))) {
                    due.add(step);
                }
            }
            return inOrder(due);
        }
        for (String step : next) {
            reach(step, due);
        }
        due.removeAll(behind);
        return inOrder(due);
    }

    /** Whether everything open is due before one of these steps. */
    public boolean allDue(Collection<String> next) {
        for (String step : next) {
            if (known.containsKey(step) && known.get(step).dueAll()) {
                return true;
            }
        }
        return false;
    }

    /**
     * The steps that close a thing, in their order. A part closes all that is read of it or seen at it, unless a step names
     * just that sign of it; what is closed of a kind is closed of its members, where no step names the member itself.
     *
     * @param word a part, a reading, a sign, a sign of a part, `joint` with its name, or a name of the sheet
     */
    public List<String> closing(String word) {
        Set<String> own = new LinkedHashSet<>();
        Set<String> ofKind = new LinkedHashSet<>();
        Optional<Quantity> quantity = words.quantity(word);
        if (quantity.isPresent() && !words.part(word).isPresent()) {
            Quantity of = quantity.get();
            own.add(of.name());
            ofKind.add(of.kind());
            part(of.of(), own, ofKind);
        } else {
            own.add(word);
            seen(word, own, ofKind);
        }
        Set<String> steps = named(own);
        if (steps.isEmpty()) {
            steps = named(ofKind);
        }
        if (steps.isEmpty() && quantity.isPresent()) {
            for (String from : quantity.get().from()) {
                if (!from.equals(word) && words.quantity(from).isPresent()) {
                    steps.addAll(closing(from));
                }
            }
        }
        return List.copyOf(inOrder(steps));
    }

    /** The first step that closes a thing and is not behind. */
    public Optional<String> firstClosing(String word, Set<String> behind) {
        for (String step : closing(word)) {
            if (!behind.contains(step)) {
                return Optional.of(step);
            }
        }
        return Optional.empty();
    }

    private void part(String name, Set<String> own, Set<String> ofKind) {
        Optional<Part> part = words.part(name);
        if (part.isPresent()) {
            own.add(part.get().name());
            ofKind.addAll(part.get().kinds());
        }
    }

    /** A part, a sign at a part, or a name of the sheet that begins with a part or joint: `cam seal intake`. */
    private void seen(String word, Set<String> own, Set<String> ofKind) {
        if (words.part(word).isPresent()) {
            part(word, own, ofKind);
            return;
        }
        for (int i = word.lastIndexOf(' '); i > 0; i = word.lastIndexOf(' ', i - 1)) {
            String before = word.substring(0, i);
            String rest = word.substring(i + 1);
            if (closing.containsKey(Index.key(before)) && before.startsWith("joint ")) {
                own.add(before);
                return;
            }
            Optional<Part> part = words.part(before);
            if (part.isPresent()) {
                Optional<Sign> sign = words.sign(rest);
                if (sign.isPresent() && closing.containsKey(Index.key(part.get().name() + " " + sign.get().name()))) {
                    own.add(part.get().name() + " " + sign.get().name());
                    return;
                }
                part(before, own, ofKind);
                if (sign.isPresent()) {
                    own.add(sign.get().name());
                    own.add(part.get().name() + " " + sign.get().name());
                    for (String kind : part.get().kinds()) {
                        ofKind.add(kind + " " + sign.get().name());
                    }
                }
                return;
            }
        }
    }

    private Set<String> named(Set<String> these) {
        Set<String> steps = new LinkedHashSet<>();
        for (String word : these) {
            steps.addAll(closing.getOrDefault(Index.key(word), List.of()));
        }
        return steps;
    }

    private Set<String> inOrder(Set<String> steps) {
        if (steps.isEmpty()) {
            return Set.of();
        }
        Set<String> sorted = new LinkedHashSet<>();
        for (String step : order) {
            if (steps.contains(step)) {
                sorted.add(step);
            }
        }
        return Collections.unmodifiableSet(sorted);
    }

    private void reach(String step, Set<String> reached) {
        if (after.containsKey(step) && reached.add(step)) {
            for (String first : after.get(step)) {
                reach(first, reached);
            }
        }
    }

    /** What the sheet hides behind one step is closed by that step and, for that name, by no other. */
    private void moved(Collection<String> names, String step) {
        for (Set<String> closed : closes.values()) {
            for (String name : names) {
                closed.remove(name);
            }
        }
        closes.get(step).addAll(names);
    }

    /** Takes a step out of the order: whoever waited for it waits for what it waited for. */
    private void bridge(String step) {
        for (Set<String> first : after.values()) {
            if (first.remove(step)) {
                first.addAll(after.get(step));
            }
        }
    }

    private void add(String firstWord, String thenWord) {
        Optional<Step> first = words.step(firstWord);
        Optional<Step> then = words.step(thenWord);
        if (first.isEmpty() || then.isEmpty()) {
            String wrong = first.isEmpty() ? firstWord : thenWord;
            refused.add("\"" + wrong + "\" under `order` is no step" + near(wrong));
            return;
        }
        String before = first.get().name();
        String later = then.get().name();
        if (absent.contains(before) || absent.contains(later)) {
            refused.add("This engine does not have the step \"" + (absent.contains(before) ? before : later)
                    + "\", which `order` names. The line was left out.");
            return;
        }
        boolean turned = after.get(before).remove(later);
        List<String> way = new ArrayList<>();
        if (before.equals(later) || waits(before, later, way, new HashSet<>())) {
            if (turned) {
                after.get(before).add(later);
            }
            Collections.reverse(way);
            way.add(before);
            refused.add("`order` puts \"" + before + "\" before \"" + later + "\", but it waits for that step: "
                    + String.join(", then ", before.equals(later) ? List.of(later) : way) + ". The line was left out.");
            return;
        }
        after.get(later).add(before);
    }

    /** Whether one step waits for another; the way holds the steps between, last first. */
    private boolean waits(String step, String other, List<String> way, Set<String> tried) {
        if (!tried.add(step)) {
            return false;
        }
        for (String first : after.get(step)) {
            way.add(first);
            if (first.equals(other) || waits(first, other, way, tried)) {
                return true;
            }
            way.remove(way.size() - 1);
        }
        return false;
    }

    private String near(String word) {
        List<String> names = new ArrayList<>(known.keySet());
        return Nearest.of(word, names).map(n -> "; the nearest word is \"" + n + "\".").orElse(".");
    }

    private List<String> sorted() {
        Map<String, Integer> waiting = new LinkedHashMap<>();
        Map<String, List<String>> followers = new HashMap<>();
        for (String step : known.keySet()) {
            if (!absent.contains(step)) {
                for (String first : after.get(step)) {
                    List<String> behind = followers.get(first);
                    if (behind == null) {
                        behind = new ArrayList<>();
                        followers.put(first, behind);
                    }
                    behind.add(step);
                }
                waiting.put(step, after.get(step).size());
            }
        }
        // By their number in the vocabulary: of what could be done, the step that stands first there is done first.
        TreeMap<Integer, String> free = new TreeMap<>();
        for (var step : waiting.entrySet()) {
            if (step.getValue() == 0) {
                free.put(place.get(step.getKey()), step.getKey());
            }
        }
        List<String> sorted = new ArrayList<>();
        while (!free.isEmpty()) {
            String step = free.pollFirstEntry().getValue();
            sorted.add(step);
            for (String follower : followers.getOrDefault(step, List.of())) {
                int left = waiting.get(follower) - 1;
                waiting.put(follower, left);
                if (left == 0) {
                    free.put(place.get(follower), follower);
                }
            }
        }
        if (sorted.size() < waiting.size()) {
            sorted.forEach(waiting::remove);
            throw new VocabularyException("steps.yaml", "these steps wait for one another in a ring: "
                    + String.join(", ", new TreeSet<>(waiting.keySet())));
        }
        return List.copyOf(sorted);
    }
}
