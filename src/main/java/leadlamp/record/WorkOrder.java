package leadlamp.record;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.words.StepGraph;
import leadlamp.words.Vocabulary;

/** The steps of one engine in their order: by its sheet, and where the sheet leaves it to the record, by that. */
public final class WorkOrder {
    private WorkOrder() {
    }

    /** Of a build. */
    public static StepGraph of(Build build, Vocabulary words) {
        return build.sheet().layout() instanceof SheetLayout layout ? layout.steps(layout.asksForNewCam() ? newCam(build) : Optional.empty())
                : unsettled(words);
    }

    /** Of an engine of which nothing is recorded yet. */
    public static StepGraph of(EngineSheet sheet, Vocabulary words) {
        return sheet.layout() instanceof SheetLayout layout ? layout.steps(Optional.empty()) : unsettled(words);
    }

    private static StepGraph unsettled(Vocabulary words) {
        return new StepGraph(words, word -> Optional.empty(), List.of(), Map.of());
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
}
