package leadlamp.audit;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import leadlamp.record.Build;
import leadlamp.record.Place;
import leadlamp.record.SheetLayout;
import leadlamp.record.Statement;
import leadlamp.words.StepGraph;
import leadlamp.words.Vocabulary;

/** How far the work is, by `stage`, `next` and the steps that the record says are done. */
final class Work implements Progress {
    private final StepGraph graph;
    private final Set<String> behind;
    private final Set<String> due;
    private final boolean all;
    private final Map<String, List<String>> closing = new HashMap<>();

    Work(Build build, Vocabulary words) {
        this.graph = graph(build, words);
        Set<String> done = new LinkedHashSet<>(build.stage());
        Set<String> next = new LinkedHashSet<>();
        for (Statement s : build.statements()) {
            if (s.of().equals("steps") && s.told().isEmpty()) {
                switch (s.says()) {
                    case "next" -> next.add(s.what());
                    case "planned", "left out", "unknown" -> {
                    }
                    default -> {
                        // A step that is done many times is done of one thing there, and not yet of all.
                        if (s.at().equals(Place.ENGINE)) {
                            done.add(s.what());
                        }
                    }
                }
            }
        }
        this.behind = new HashSet<>(graph.behind(done));
        this.due = new HashSet<>(graph.dueNow(next, done));
        this.all = graph.allDue(next);
    }

    private static StepGraph graph(Build build, Vocabulary words) {
        if (!(build.sheet().layout() instanceof SheetLayout layout)) {
            return new StepGraph(words, w -> Optional.empty(), List.of(), Map.<String, Collection<String>>of());
        }
        Function<String, Optional<Boolean>> has = word -> {
            Optional<Boolean> settled = layout.layoutWord(word);
            return settled.isEmpty() && word.equals("flat followers with a new cam") ? newCam(build) : settled;
        };
        return new StepGraph(words, has, layout.order(), layout.hidden());
    }

    /** Whether the camshaft is new or reground; empty where the record does not say. */
    private static Optional<Boolean> newCam(Build build) {
        Optional<Boolean> fresh = Optional.empty();
        for (Statement s : build.statements()) {
            if (s.of().equals("camshaft") && s.what().equals("state")) {
                fresh = Optional.of(fresh.orElse(false) || s.says().equals("new"));
            } else if (s.of().equals("machining") && s.what().equals("camshaft") && s.says().equals("grind")) {
                return Optional.of(true);
            }
        }
        return fresh;
    }

    StepGraph graph() {
        return graph;
    }

    Set<String> allBehind() {
        return behind;
    }

    Set<String> allDueNow() {
        return due;
    }

    @Override
    public boolean behind(String step) {
        return behind.contains(step);
    }

    @Override
    public boolean dueNow(String step) {
        return due.contains(step);
    }

    @Override
    public boolean allDue() {
        return all;
    }

    @Override
    public List<String> closing(String word) {
        List<String> steps = closing.get(word);
        if (steps == null) {
            steps = graph.closing(word);
            closing.put(word, steps);
        }
        return steps;
    }

    @Override
    public List<String> following(String step) {
        return graph.following(step);
    }

    @Override
    public int order(String step) {
        return graph.order(step);
    }
}
