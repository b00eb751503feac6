package leadlamp.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.quantity.Dimension;
import leadlamp.record.Statement.Form;
import leadlamp.words.Part;
import leadlamp.words.Quantity;

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
        List<String> with = gaugesOf(entry.get("with"));
        for (String place : at) {
            state.ifPresent(s -> state(of, place, "state", scrapped ? "scrapped" : s.says(), Optional.empty(), rest.asides(), rest.told(),
                    subject.value().where()));
            for (Said said : rest.said()) {
                if (said.figureOf().isPresent()) {
                    figure(said, place, scrapped ? "as found" : "", with, makers(said, state, rest), rest);
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

    /** A figure of the part: a reading by the gauge that is named, the maker's, or what somebody read of it. */
    private void figure(Said said, String place, String mark, List<String> with, boolean makers, Rest rest) {
        List<String> gauges = with.isEmpty() && makers ? List.of(Statement.LABEL) : with;
        Map<String, String> asides = rest.asides();
        if (gauges.isEmpty()) {
            asides = new TreeMap<>(asides);
            asides.put(Statement.OF_PART, "");
        }
        gathered.statements.add(new Statement(Form.READ, said.figureOf().orElseThrow(), place, mark, "", said.value(), gauges,
                Collections.unmodifiableMap(asides), rest.told(), said.where(), complaints.line(said.where())));
    }

    /** Whether it can be the maker's: the part lies in its box, or the figure is a rating, which wear does not change. */
    private boolean makers(Said said, Optional<Said> state, Rest rest) {
        Quantity quantity = words.quantity(said.figureOf().orElseThrow()).orElseThrow();
        if (quantity.dimension() != Dimension.LENGTH || quantity.gauge().filter(g -> !g.equals(Statement.LABEL)).isEmpty()) {
            return true;
        }
        boolean made = rest.says("origin").filter(o -> words.property("parts", "origin").orElseThrow().is("no maker", o)).isPresent();
        return !made && state.filter(s -> words.property("parts", "state").orElseThrow().is("in its box", s.says())).isPresent();
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
