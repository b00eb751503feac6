package leadlamp.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import leadlamp.rank.Course;
import leadlamp.record.Build;
import leadlamp.record.Statement;
import leadlamp.report.ReportModel.First;

/** What to do first where a record holds nothing yet. */
final class Beginning {
    static final String SENTENCE = "Nothing is recorded yet that a check could go by, so nothing can be told. Begin with this.";
    private static final Set<String> ABOUT = Set.of("build", "use", "steps", "protection");
    private static final String FILL_IN = "To fill in";

    private Beginning() {
    }

    /** What is known without a spanner, then how far the work stands, then what only a whole engine shows. */
    static List<First> first(Build build, Course course) {
        List<First> first = new ArrayList<>();
        if (silent(build, "build")) {
            first.add(new First(FILL_IN, false, "Under build: purpose, arrived and last opened.",
                    "What an engine went through says what to look for.", ""));
        }
        if (silent(build, "use")) {
            first.add(new First(FILL_IN, false, "Under use: duty, fuel and rev limit.",
                    "Limits, and what can hurt somebody, hang on them.", ""));
        }
        if (build.gauges().isEmpty()) {
            first.add(new First(FILL_IN, false, "Under gauges: what you measure with, its resolution and when it was checked.",
                    "A reading is worth no more than its gauge.", ""));
        }
        if (build.stage().isEmpty()) {
            first.add(new First(FILL_IN, false, "Under stage: the furthest step that is done, if any.",
                    "Until it is said every step counts as ahead.", ""));
        }
        String step = course.next().isEmpty() ? ahead(course) : course.next().get(0);
        first.add(new First("To look at", false, "What can only be seen, turned or measured now"
                + (step.isEmpty() ? "" : ", before " + step) + ".",
                "`leadlamp look` of this record lists the looks, cheapest first, with the line to write for each.", ""));
        return List.copyOf(first);
    }

    /** Whether nothing of the engine itself is written down: no part, no reading, no joint, no look. */
    static boolean holdsNothing(Build build) {
        for (Statement line : build.statements()) {
            if (!ABOUT.contains(line.of())) {
                return false;
            }
        }
        return true;
    }

    private static boolean silent(Build build, String section) {
        for (Statement line : build.statements()) {
            if (line.of().equals(section) && !line.what().equals("name")) {
                return false;
            }
        }
        return true;
    }

    private static String ahead(Course course) {
        for (Course.Rung rung : course.rungs()) {
            if (rung.standing() == Course.Standing.AHEAD) {
                return rung.step();
            }
        }
        return "";
    }
}
