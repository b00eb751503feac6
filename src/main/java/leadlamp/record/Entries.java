package leadlamp.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leadlamp.words.Vocabulary;

/** The sections of a build record, entry by entry, into statements. */
final class Entries {
    private static final List<String> SECTIONS = List.of("build", "engine", "use", "stage", "gauges", "machining",
            "measurements", "parts", "fasteners", "observations", "steps", "protection", "photos", "accepted", "note");

    private final Gathered gathered;

    Entries(Vocabulary words, EngineSheet sheet, Node.Fields tree, Complaints complaints) {
        this.gathered = new Gathered(words, sheet, tree, complaints);
    }

    Build build(String file, Fingerprint bytes) {
        SectionEntries sections = new SectionEntries(gathered);
        for (Node.Field section : gathered.tree.fields()) {
            switch (section.key()) {
                case "engine", "note" -> {
                }
                case "build", "use" -> sections.lines(section);
                case "stage" -> sections.stage(section.value());
                case "gauges" -> sections.gauges(section);
                case "protection" -> sections.protection(section);
                case "photos" -> sections.photos(section);
                case "accepted" -> sections.entries("accepted", true).forEach(sections::accepted);
                case "machining" -> sections.entries("machining", true).forEach(new MachiningEntries(gathered)::machined);
                case "measurements" -> sections.entries("measurements", true).forEach(new MeasurementEntries(gathered)::measured);
                case "parts" -> sections.entries("parts", true).forEach(new PartEntries(gathered)::part);
                case "fasteners" -> sections.entries("fasteners", true).forEach(new JointEntries(gathered)::joint);
                case "observations" -> sections.entries("observations", true).forEach(new ObservationEntries(gathered)::observed);
                case "steps" -> sections.entries("steps", true).forEach(new StepEntries(gathered)::step);
                default -> gathered.complaints.unknown(section.where(), section.key(),
                        "\"" + section.key() + "\" is no section of a build record.", SECTIONS, "A record may have: ",
                        "The section was left out.");
            }
        }
        List<Problem> problems = new ArrayList<>(gathered.sheet.problems());
        problems.addAll(gathered.complaints.all());
        problems.sort((a, b) -> a.where().compareTo(b.where()));
        return new Build(file, gathered.name, gathered.sheet, List.copyOf(gathered.statements), List.copyOf(gathered.limits),
                Collections.unmodifiableMap(gathered.gauges), List.copyOf(gathered.stage), List.copyOf(gathered.accepted),
                List.copyOf(gathered.photos), List.copyOf(problems), List.copyOf(gathered.leftOut), bytes);
    }
}
