package leadlamp.record;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.record.Statement.Form;
import leadlamp.words.Part;
import leadlamp.words.Property;

/** Entries under `machining`: what was done to a part or face. */
final class MachiningEntries extends EntryReader {
    MachiningEntries(Gathered gathered) {
        super(gathered);
    }

    void machined(Node.Fields entry) {
        Subject subject = subject(entry, "of", "by");
        if (subject == null) {
            return;
        }
        Optional<Part> part = words.part(subject.word());
        if (part.isEmpty()) {
            noPart(subject);
            return;
        }
        List<String> at = places.read(entry.get("at"), part.get().group(), part.get().name(), subject.where());
        Property by = words.property("machining", "by").orElseThrow();
        Optional<Said> done = value(by, subject.scalar(), part.get().name(), "machining", "");
        if (at.isEmpty() || done.isEmpty()) {
            at.forEach(p -> gathered.leftOut.add(new Statement.Key(Form.STATED, "machining", p, part.get().name())));
            return;
        }
        Rest rest = rest(entry, subject, "machining", part.get().name(), List.of("machining"));
        for (String place : at) {
            state("machining", place, part.get().name(), done.get().says(), Optional.empty(), rest.asides(), rest.told(),
                    subject.value().where());
            for (Said said : rest.said()) {
                state("machining", place, part.get().name() + " " + said.what(), said.says(), said.value(), Map.of(), rest.told(),
                        said.where());
            }
        }
    }
}
