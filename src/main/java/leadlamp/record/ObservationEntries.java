package leadlamp.record;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.record.Statement.Form;
import leadlamp.words.Part;
import leadlamp.words.Sign;

/** Entries under `observations`: a sign, or `clear` of signs that were looked for. */
final class ObservationEntries extends EntryReader {
    private static final String DATE = "date";

    ObservationEntries(Gathered gathered) {
        super(gathered);
    }

    void observed(Node.Fields entry) {
        Subject subject = subject(entry, "of", "sign", "what");
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
        Rest rest = with(gaugesOf(entry.get("with"), "What was seen was kept."),
                dated(rest(entry, subject, "observations", part.name(), List.of("observations"))));
        boolean found = asFound(rest);
        String mark = found ? "as found" : "";
        for (Node.Scalar item : SheetReader.scalars(subject.value())) {
            String text = item.text();
            if (text.equals("unknown")) {
                for (String place : at) {
                    state("observations", place, part.name(), "unknown", Optional.empty(), rest.asides(), rest.told(), item.where());
                }
                continue;
            }
            if (text.equals("clear")) {
                clear(entry, part, at, rest, item);
                continue;
            }
            Optional<Sign> sign = words.sign(text);
            if (sign.isEmpty()) {
                noSign(item, part);
                continue;
            }
            String saw = sign.get().name();
            for (String place : at) {
                Map<String, String> asides = new TreeMap<>(rest.asides());
                rest.said().forEach(s -> asides.put(s.what(), s.says()));
                if (found) {
                    asides.put("as", "found");
                }
                gathered.statements.add(new Statement(Form.SEEN, part.name(), place, saw, "", Optional.empty(), List.of(),
                        Collections.unmodifiableMap(asides), rest.told(), item.where(), complaints.line(item.where())));
                for (Said said : rest.said()) {
                    if (said.what().equals(DATE)) {
                        continue;
                    }
                    state(part.name(), place, saw + " " + said.what(), said.says(), said.value(), Map.of(), rest.told(), said.where());
                }
                for (String out : sign.get().sound() ? sign.get().rulesOut() : List.<String>of()) {
                    notSeen(part.name(), place, out, rest, item.where());
                }
            }
        }
    }

    /** The day on which it was looked at goes with each sign, seen or not. */
    private static Rest dated(Rest rest) {
        Optional<String> date = rest.says(DATE).filter(says -> !says.equals("unknown"));
        if (date.isEmpty()) {
            return rest;
        }
        Map<String, String> asides = new TreeMap<>(rest.asides());
        asides.put(DATE, date.get());
        return new Rest(rest.said(), Collections.unmodifiableMap(asides), rest.told());
    }

    private void clear(Node.Fields entry, Part part, List<String> at, Rest rest, Node.Scalar item) {
        Optional<Node> of = entry.get("of");
        if (of.isEmpty() || entry.fields().get(0).key().equals("of")) {
            complaints.add(item.where(), item.text().length(), "`clear` of what?",
                    "Write the signs that were looked for: `of: [cracked, scored]`.", Optional.empty(), "The entry was left out.");
            return;
        }
        for (Node.Scalar looked : SheetReader.scalars(of.get())) {
            Optional<Sign> sign = words.sign(looked.text());
            if (sign.isEmpty()) {
                noSign(looked, part);
                continue;
            }
            for (String place : at) {
                notSeen(part.name(), place, sign.get().name(), rest, looked.where());
                for (String out : sign.get().sound() ? List.<String>of() : sign.get().rulesOut()) {
                    notSeen(part.name(), place, out, rest, looked.where());
                }
            }
        }
    }

    /** What it was looked at or measured with stands beside what was seen. */
    private static Rest with(List<String> gauges, Rest rest) {
        if (gauges.isEmpty()) {
            return rest;
        }
        Map<String, String> asides = new TreeMap<>(rest.asides());
        asides.put("with", String.join(", ", gauges));
        return new Rest(rest.said(), Collections.unmodifiableMap(asides), rest.told());
    }

    private static boolean asFound(Rest rest) {
        return rest.says("as").filter("found"::equals).isPresent();
    }

    private void notSeen(String part, String place, String sign, Rest rest, Where where) {
        Map<String, String> asides = new TreeMap<>(rest.asides());
        if (asFound(rest)) {
            asides.put("as", "found");
        }
        gathered.statements.add(new Statement(Form.NOT_SEEN, part, place, sign, "", Optional.empty(), List.of(),
                Collections.unmodifiableMap(asides), rest.told(), where, complaints.line(where)));
    }
}
