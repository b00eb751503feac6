package leadlamp.derive;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlamp.record.Place;
import leadlamp.record.SheetLayout;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.record.WorkOrder;
import leadlamp.words.StepGraph;

/** How far the work is, as far as a word may say it: which steps are behind, and which the next one brings. */
final class HowFar {
    private final StepGraph graph;
    private final Site site;
    private final Set<String> behind;
    private final Set<String> due;
    private final boolean nextSaid;

    private HowFar(StepGraph graph, Site site, Set<String> done, Set<String> next) {
        this.graph = graph;
        this.site = site;
        this.behind = graph.behind(done);
        this.due = graph.dueNow(next, done);
        this.nextSaid = !next.isEmpty();
    }

    /** By `stage`, by the steps that are written down as done, and by `next`; empty where the sheet gives no layout. */
    static Optional<HowFar> of(Site site) {
        if (!(site.build.sheet().layout() instanceof SheetLayout)) {
            return Optional.empty();
        }
        StepGraph graph = WorkOrder.of(site.build, site.words);
        Set<String> done = new LinkedHashSet<>(site.build.stage());
        Set<String> next = new LinkedHashSet<>();
        for (Statement s : site.said("steps")) {
            if (s.told().isEmpty()) {
                switch (s.says()) {
                    case "next" -> next.add(s.what());
                    case "planned", "left out", "unknown" -> {
                    }
                    default -> {
                        if (s.at().equals(Place.ENGINE)) {
                            done.add(s.what());
                        }
                    }
                }
            }
        }
        return Optional.of(new HowFar(graph, site, done, next));
    }

    /** Whether this engine has the step. */
    boolean has(String step) {
        return graph.order(step) < graph.steps().size();
    }

    /** Whether the record says that nobody knows of this step. */
    boolean isOpen(String step) {
        return own(step).map(s -> s.says().equals("unknown")).orElse(false);
    }

    /**
     * `done` for what is behind, `next` for what is next or comes before it, `later` for all else; empty where it is not
     * known. Without a `next` nobody can tell what is further on.
     */
    Optional<String> stands(String step) {
        if (isOpen(step)) {
            return Optional.empty();
        }
        if (behind.contains(step)) {
            return Optional.of("done");
        }
        if (due.contains(step)) {
            return Optional.of("next");
        }
        return nextSaid ? Optional.of("later") : Optional.empty();
    }

    /** The lines that it rests on: the step's own, else those of `next`. */
    List<Where> lines(String step) {
        Optional<Statement> own = own(step);
        if (own.isPresent()) {
            return List.of(own.get().where());
        }
        List<Where> lines = new ArrayList<>();
        for (Statement s : site.said("steps")) {
            if (s.says().equals("next")) {
                lines.add(s.where());
            }
        }
        return lines;
    }

    private Optional<Statement> own(String step) {
        return site.word("steps", Place.ENGINE, step).filter(s -> !s.says().equals("planned"));
    }
}
