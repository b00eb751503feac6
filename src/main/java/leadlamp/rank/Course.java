package leadlamp.rank;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leadlamp.record.Build;
import leadlamp.record.Statement;
import leadlamp.record.WorkOrder;
import leadlamp.words.StepGraph;
import leadlamp.words.Vocabulary;

/**
 * The steps of this engine in their order, and where the work stands.
 *
 * @param rungs all its steps, first to last
 * @param next  the steps that the record means to do next; empty where it does not say
 */
public record Course(List<Rung> rungs, List<String> next) {
    /** Where a step stands. */
    public enum Standing {
        /** The record says that it is done. */
        BEHIND,
        /** It is done next. */
        NEXT,
        /** It comes later. */
        AHEAD
    }

    /** One step. */
    public record Rung(String step, Standing standing) {
    }

    private static final String STEPS = "steps";
    private static final Set<String> NOT_DONE = Set.of("next", "planned", "left out", "unknown");

    /** The steps of the engine of this build. */
    public static Course of(Build build, Vocabulary words) {
        StepGraph graph = graph(build, words);
        Set<String> done = new LinkedHashSet<>(build.stage());
        Set<String> next = new LinkedHashSet<>();
        for (Statement line : build.statements()) {
            if (line.of().equals(STEPS) && line.told().isEmpty()) {
                if (line.says().equals("next")) {
                    next.add(line.what());
                } else if (!NOT_DONE.contains(line.says())) {
                    done.add(line.what());
                }
            }
        }
        Set<String> behind = graph.behind(done);
        List<Rung> rungs = new ArrayList<>();
        for (String step : graph.steps()) {
            rungs.add(new Rung(step, next.contains(step) ? Standing.NEXT
                    : behind.contains(step) ? Standing.BEHIND : Standing.AHEAD));
        }
        return new Course(List.copyOf(rungs), List.copyOf(next));
    }

    static StepGraph graph(Build build, Vocabulary words) {
        return WorkOrder.of(build, words);
    }
}
