package leadlamp.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.quantity.Written;
import leadlamp.record.Statement.Form;
import leadlamp.words.Property;
import leadlamp.words.Vocabulary;

/** Entries under `fasteners`: the torque or stages of a joint, its threads and its lengths. */
final class JointEntries extends EntryReader {
    private static final List<String> NO_TORQUE = List.of("as found", "by hand", "not yet", "unknown", "not read");

    JointEntries(Gathered gathered) {
        super(gathered);
    }

    void joint(Node.Fields entry) {
        Subject subject = subject(entry, "joint", "torque", "stages");
        if (subject == null) {
            return;
        }
        String joint = subject.word();
        List<String> at = jointPlaces(joint, entry, subject);
        if (at.isEmpty()) {
            return;
        }
        List<String> with = gaugesOf(entry.get("with"));
        Rest rest = rest(entry, subject, "fasteners", joint, List.of("fasteners"));
        Map<String, String> asides = rest.asides();
        if (with.size() > 1 && rest.says("setting").isPresent()) {
            asides = new TreeMap<>(asides);
            asides.put("through", String.join(", ", with));
        }
        for (String place : at) {
            torque(place, subject, with, rest, asides);
            for (Said said : rest.said()) {
                if (said.what().equals("lengths")) {
                    continue;
                }
                if (Set.of("setting", "locker torque factor", "uses", "marked").contains(said.what()) && said.value().isPresent()) {
                    read("joint " + said.what(), place, said, List.of("label"), rest);
                    if (said.what().equals("uses") || said.what().equals("marked")) {
                        state("joint", place, said.what(), said.says(), said.value(), Map.of(), rest.told(), said.where());
                    }
                } else {
                    state("joint", place, said.what(), said.says(), said.value(), Map.of(), rest.told(), said.where());
                }
            }
            entry.get("threads").ifPresent(threads -> threads(place, threads, joint, rest));
            entry.get("lengths").ifPresent(lengths -> lengths(place, lengths, rest));
        }
    }

    private List<String> jointPlaces(String joint, Node.Fields entry, Subject subject) {
        JointNames names = gathered.jointNames;
        if (!names.listed(joint)) {
            if (names.placeOfListed(joint) && places.refusesBolt(joint, subject.where(), "The entry was left out.")) {
                return List.of();
            }
            if (names.placeOfListed(joint) || names.ofItsOwn(joint)) {
                return List.of(joint);
            }
            noJoint(joint, subject);
            return List.of();
        }
        List<String> places = new ArrayList<>();
        for (String place : gathered.sheet.layout().places("each joint").orElse(List.of())) {
            if (place.equals(joint) || place.startsWith(joint + " ")) {
                places.add(place);
            }
        }
        if (places.size() < 2) {
            if (places.isEmpty() || entry.get("at").isEmpty() || places.get(0).equals(joint)) {
                return places.isEmpty() ? List.of(joint) : places;
            }
        }
        if (entry.get("at").isEmpty()) {
            complaints.add(subject.where(), joint.length(), "Which " + joint + "? This engine has " + places.size() + ".",
                    "Write `at: each` if it holds of all of them.", Optional.empty(), "The entry was left out.");
            return List.of();
        }
        List<String> meant = new ArrayList<>();
        for (Node.Scalar item : SheetReader.scalars(entry.get("at").get())) {
            String text = item.text().strip().toLowerCase(Locale.ROOT);
            if (text.equals("each")) {
                meant.addAll(places);
                continue;
            }
            List<String> some = new ArrayList<>();
            for (String part : text.split(" *, *")) {
                for (String place : places) {
                    if (place.equals(part) || place.equals(joint + " " + part) || place.endsWith(" " + part) || part.startsWith("each ")
                            && Place.covers(part.substring(5), place)) {
                        some.add(place);
                    }
                }
            }
            if (some.isEmpty()) {
                complaints.unknown(item.where(), item.text(), "\"" + item.text() + "\" is no place of " + joint + ".", places, "Places: ",
                        "The entry was left out.");
                return List.of();
            }
            meant.addAll(some);
        }
        return meant;
    }

    private void noJoint(String joint, Subject subject) {
        JointNames names = gathered.jointNames;
        if (names.reading(joint)) {
            complaints.add(subject.where(), joint.length(), "\"" + joint + "\" is a reading and no joint.",
                    "A reading stands under `measurements`.", Optional.empty(), "The entry was left out.");
            return;
        }
        Optional<String> begun = names.begins(joint);
        if (begun.isPresent()) {
            String rest = joint.substring(begun.get().length() + 1);
            complaints.add(subject.where(), joint.length(), "\"" + rest + "\" is no place of the joint " + begun.get() + ".",
                    "The joint alone, or with the number, row or corner of a bolt. Another joint ends in the name of a part.", begun,
                    "The entry was left out.");
            return;
        }
        complaints.unknown(subject.where(), joint, "\"" + joint + "\" is no joint of the engine sheet.", gathered.joints, "Joints: ",
                "The entry was left out. A joint that the sheet lacks is named as `this to that`.");
    }

    private void torque(String place, Subject subject, List<String> with, Rest rest, Map<String, String> asides) {
        List<Node.Scalar> stages = SheetReader.scalars(subject.value());
        if (stages.size() == 1) {
            String text = stages.get(0).text().strip().toLowerCase(Locale.ROOT);
            if (NO_TORQUE.contains(text)) {
                state("joint", place, "torque said", text.equals("not read") ? "unknown" : text, Optional.empty(), asides, rest.told(),
                        stages.get(0).where());
                return;
            }
        }
        double angle = 0;
        Node.Scalar turned = null;
        Node.Scalar tight = null;
        for (Node.Scalar stage : stages) {
            String text = SheetReader.turn(stage.text());
            Reading.Result torque = Reading.read(text, Dimension.TORQUE, Optional.empty());
            if (torque instanceof Reading.Read) {
                tight = stage;
                continue;
            }
            if (Reading.read(text, Dimension.ANGLE, Optional.empty()) instanceof Reading.Read turn) {
                angle += turn.written().high();
                turned = stage;
                continue;
            }
            Reading.Unread unread = (Reading.Unread) torque;
            Optional<String> near = Vocabulary.nearest(stage.text(), NO_TORQUE);
            complaints.add(SheetReader.moved(stage.where(), unread.offset()), unread.length(), unread.what(),
                    "A torque such as 23 N·m, stages such as [25 N·m, then 90 deg], or: as found, by hand, not yet, unknown.",
                    near.isPresent() ? near : unread.nearest(), "The rest of the joint was read; checks that need its torque say \"cannot tell\".");
            gathered.leftOut.add(new Statement.Key(Form.READ, "joint torque", place, ""));
            return;
        }
        if (stages.size() > 1) {
            state("joint", place, "stages", SheetReader.flat(subject.value()), Optional.empty(), Map.of(), rest.told(), subject.value().where());
        }
        if (tight != null) {
            Reading.Read torque = (Reading.Read) Reading.read(SheetReader.turn(tight.text()), Dimension.TORQUE, Optional.empty());
            gathered.statements.add(new Statement(Form.READ, "joint torque", place, "", "", Optional.of(torque.written()), with, asides, rest.told(),
                    tight.where(), complaints.line(tight.where())));
        }
        if (turned != null) {
            Unit deg = Units.named("deg").orElseThrow();
            gathered.statements.add(new Statement(Form.READ, "joint angle", place, "", "", Optional.of(new Written(Written.Form.PLAIN, angle, angle,
                    deg, 0, turned.text())), with, asides, rest.told(), turned.where(), complaints.line(turned.where())));
        }
    }

    private void threads(String place, Node threads, String joint, Rest rest) {
        if (!(threads instanceof Node.Fields fields)) {
            complaints.add(threads.where(), 0, "`threads` wants words of its own.", "As { condition: clean, lubricant: dry }.",
                    Optional.empty(), "The rest of \"" + joint + "\" was read.");
            return;
        }
        for (Node.Field line : fields.fields()) {
            Optional<Property> property = words.property("threads", line.key());
            if (property.isEmpty()) {
                if (complaints.line(line.where()).isEmpty() || once(line.where())) {
                    List<String> can = new ArrayList<>();
                    words.properties("threads").forEach(p -> can.add(p.name()));
                    complaints.unknown(line.where(), line.key(), "\"" + line.key() + "\" is not something a thread can have.", can,
                            "A thread can have: ", "The rest of \"" + joint + "\" was read; checks that need it say \"cannot tell\".");
                }
                continue;
            }
            for (Node.Scalar item : SheetReader.scalars(line.value())) {
                Optional<Said> said = value(property.get(), item, "", joint, "");
                if (said.isEmpty()) {
                    gathered.leftOut.add(new Statement.Key(Form.STATED, "joint", place, property.get().name()));
                } else if (said.get().value().isPresent() && property.get().name().equals("locker torque factor")) {
                    read("joint locker torque factor", place, said.get(), List.of("label"), rest);
                } else {
                    state("joint", place, property.get().name(), said.get().says(), said.get().value(), Map.of(), rest.told(), item.where());
                }
            }
        }
    }

    private void lengths(String place, Node lengths, Rest rest) {
        if (!(lengths instanceof Node.Fields fields)) {
            complaints.add(lengths.where(), 0, "`lengths` wants a length for each position.", "As { 1: 25 mm, 3: 40 mm }.", Optional.empty(),
                    "The rest of the joint was read.");
            return;
        }
        state("joint", place, "lengths", SheetReader.flat(lengths), Optional.empty(), Map.of(), rest.told(), lengths.where());
        for (Node.Field line : fields.fields()) {
            if (places.refusesBolt(place + " " + line.key(), line.where(), "The other lengths were read.")) {
                continue;
            }
            String text = SheetReader.flat(line.value());
            Reading.Result result = Reading.read(text, Dimension.LENGTH, Optional.empty());
            if (result instanceof Reading.Read read && read.written().figure()) {
                gathered.statements.add(new Statement(Form.READ, "bolt free length", place + " " + line.key(), "", "", Optional.of(read.written()),
                        List.of("rule"), Map.of(), rest.told(), line.value().where(), complaints.line(line.value().where())));
            } else if (result instanceof Reading.Unread unread && once(line.value().where())) {
                complaints.add(SheetReader.moved(line.value().where(), unread.offset()), unread.length(), unread.what(), unread.expected(),
                        unread.nearest(), "The other lengths were read.");
                gathered.leftOut.add(new Statement.Key(Form.READ, "bolt free length", place + " " + line.key(), ""));
            }
        }
    }

    private void read(String quantity, String place, Said said, List<String> with, Rest rest) {
        gathered.statements.add(new Statement(Form.READ, quantity, place, "", "", said.value(), with, rest.asides(), rest.told(), said.where(),
                complaints.line(said.where())));
    }
}
