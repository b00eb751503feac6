package leadlamp.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leadlamp.words.Vocabulary;

/** What the readers of the sections work with, and what they have gathered so far. */
final class Gathered {
    final Vocabulary words;
    final EngineSheet sheet;
    final Node.Fields tree;
    final Complaints complaints;
    final Places places;
    /** Joints that the sheet names. */
    final Set<String> joints;
    final JointNames jointNames;
    final List<Statement> statements = new ArrayList<>();
    final List<LimitLine> limits = new ArrayList<>();
    final Map<String, Gauge> gauges = new LinkedHashMap<>();
    final List<String> stage = new ArrayList<>();
    final List<Build.Accepted> accepted = new ArrayList<>();
    final List<Build.Photo> photos = new ArrayList<>();
    final List<Statement.Key> leftOut = new ArrayList<>();
    /** Places of which something was said already, so that one slip at many places is said once. */
    final Set<Where> complainedOf = new LinkedHashSet<>();
    String name = "";

    Gathered(Vocabulary words, EngineSheet sheet, Node.Fields tree, Complaints complaints) {
        this.words = words;
        this.sheet = sheet;
        this.tree = tree;
        this.complaints = complaints;
        this.joints = new LinkedHashSet<>(sheet.names("joints"));
        Set<String> names = new LinkedHashSet<>(sheet.layout().names());
        names.addAll(joints);
        this.jointNames = new JointNames(words, joints, Set.copyOf(names));
        if (tree.get("fasteners").orElse(null) instanceof Node.Items items) {
            for (Node item : items.items()) {
                if (item instanceof Node.Fields entry && !entry.fields().isEmpty()) {
                    Node.Field first = entry.fields().get(0);
                    String subject = first.key().equals("joint") ? SheetReader.flat(first.value()) : first.key();
                    if (jointNames.ofItsOwn(subject)) {
                        names.add(subject);
                    }
                }
            }
        }
        this.places = new Places(sheet.layout(), words, names, complaints);
    }
}
