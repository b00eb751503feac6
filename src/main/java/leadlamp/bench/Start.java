package leadlamp.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.LimitLine;
import leadlamp.record.WorkOrder;
import leadlamp.words.StepGraph;
import leadlamp.words.Vocabulary;

/** The steps of a first start in their order, and when to stop. */
final class Start {
    private static final String FILLING = "oil filled";
    private static final String LOAD = "first load";
    private static final String PRESSURE = "oil pressure for speed";

    private final Build build;
    private final StepGraph graph;

    Start(Build build, Vocabulary words) {
        this.build = build;
        this.graph = WorkOrder.of(build, words);
    }

    /** From filling the oil to the first load, as far as the first load waits for it. */
    List<String> steps() {
        Set<String> before = graph.behind(List.of(LOAD));
        int filling = graph.order(FILLING);
        List<String> steps = new ArrayList<>();
        for (String step : graph.steps()) {
            if (before.contains(step) && graph.order(step) >= filling) {
                steps.add(step);
            }
        }
        return steps;
    }

    /** What to read off and keep, with the sheet's figure beside it. */
    List<String> readings() {
        List<String> readings = new ArrayList<>(List.of("Oil pressure seen after, seconds of cranking", "Oil pressure, cold, at the speed of the start",
                "Oil temperature"));
        for (LimitLine limit : build.sheet().limits()) {
            if (limit.quantity().equals(PRESSURE)) {
                List<String> at = new ArrayList<>();
                limit.asides().forEach((word, says) -> at.add(word + " " + says));
                readings.add("Oil pressure at " + String.join(", ", at) + "; least " + limit.least().map(Written::text).orElse("not given"));
            }
        }
        if (graph.steps().contains("coolant filled")) {
            readings.add("Coolant temperature when the thermostat opens");
        }
        readings.add("Leaks looked for, cold and hot");
        readings.add("Noises, and where");
        return readings;
    }

    /** The sheet's pressures, and what is common practice, no source. */
    List<String> stops() {
        List<String> stops = new ArrayList<>();
        for (LimitLine limit : build.sheet().limits()) {
            if (limit.quantity().equals(PRESSURE)) {
                List<String> at = new ArrayList<>();
                limit.asides().forEach((word, says) -> at.add(word + " " + says));
                stops.add("Oil pressure under " + limit.least().map(Written::text).orElse("the sheet's least") + " at "
                        + String.join(", ", at) + " (the engine sheet).");
            }
        }
        stops.add("No oil pressure on the gauge when the manual says that it should be there.");
        stops.add("A knock, a scrape or a squeal that was not there before.");
        stops.add("Fuel, oil or coolant that runs where it should not. Fuel first: switch off, then look.");
        stops.add("Coolant over the sheet's heat, or a gauge that does not move at all.");
        stops.add("Smoke that does not clear, or a smell of something that burns.");
        stops.add("An engine that runs away: shut its air and its fuel, and keep out of the plane of the flywheel.");
        return stops;
    }
}
