package leadlamp.audit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leadlamp.record.Build;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.WorkOrder;
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
        this.graph = WorkOrder.of(build, words);
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
