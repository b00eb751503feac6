package leadlamp.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.record.Statement.Form;
import leadlamp.words.Part;

/** Entries under `parts`: the state of a part, its words, the maker's figures and the limits that came with it. */
final class PartEntries extends EntryReader {
    PartEntries(Gathered gathered) {
        super(gathered);
    }

    void part(Node.Fields entry) {
        Subject subject = subject(entry, "part", "state");
        if (subject == null) {
            return;
        }
        Optional<Part> known = words.part(subject.word());
        if (known.isEmpty()) {
            noPart(subject);
            return;
        }
        Part part = known.get();
        List<String> at = places.read(entry.get("at"), part.group(), part.name(), subject.where());
        if (at.isEmpty()) {
            return;
        }
        Optional<Said> state = value(words.property("parts", "state").orElseThrow(), subject.scalar(), part.name(), part.name(), "");
        if (state.isEmpty()) {
            at.forEach(p -> gathered.leftOut.add(new Statement.Key(Form.STATED, part.name(), p, "state")));
        }
        boolean scrapped = state.isPresent() && state.get().says().equals("scrapped");
        String of = scrapped ? part.name() + " as found" : part.name();
        Rest rest = rest(entry, subject, "parts", part.name(), List.of("parts"));
        for (String place : at) {
            state.ifPresent(s -> state(of, place, "state", scrapped ? "scrapped" : s.says(), Optional.empty(), rest.asides(), rest.told(),
                    subject.value().where()));
            for (Said said : rest.said()) {
                if (said.figureOf().isPresent()) {
                    gathered.statements.add(new Statement(Form.READ, said.figureOf().get(), place, scrapped ? "as found" : "", "", said.value(),
                            List.of("label"), rest.asides(), rest.told(), said.where(), complaints.line(said.where())));
                } else {
                    state(of, place, said.what(), said.says(), said.value(), Map.of(), rest.told(), said.where());
                }
            }
        }
        entry.get("limits").filter(Node.Fields.class::isInstance).ifPresent(node -> {
            for (Node.Field line : ((Node.Fields) node).fields()) {
                List<LimitLine> came = SheetReader.limitLines(line, "the limits that came with the " + part.name(), words, complaints);
                came.forEach(limit -> gathered.limits.addAll(atItsPart(limit, at)));
            }
        });
    }

    /** What came with a part holds where that part is, unless the line names a place of its own or limits what an engine has once. */
    private List<LimitLine> atItsPart(LimitLine limit, List<String> at) {
        boolean once = words.quantity(limit.quantity()).filter(q -> q.group().equals(Place.ENGINE)).isPresent();
        if (once || !limit.at().isEmpty() || at.contains(Place.ENGINE)) {
            return List.of(limit);
        }
        List<LimitLine> each = new ArrayList<>();
        for (String place : at) {
            each.add(new LimitLine(limit.quantity(), place, limit.standard(), limit.least(), limit.most(), limit.times(), limit.when(),
                    limit.where(), limit.asides(), limit.reason(), limit.basis(), limit.line()));
        }
        return each;
    }
}
