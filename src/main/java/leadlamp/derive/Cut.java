package leadlamp.derive;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.record.Dates;
import leadlamp.record.Statement;

/**
 * One entry under machining, put together from what it says.
 *
 * @param at    its place
 * @param said  how the face was worked; empty where that was left out
 * @param depth what came off
 * @param date  when; empty where that is not told
 */
record Cut(String at, Optional<Statement> said, Optional<Statement> depth, String date) {
    /** The entries of a face at a place, in the order of the record. */
    static List<Cut> of(Site site, String face, String place) {
        Map<String, Cut> open = new LinkedHashMap<>();
        List<Cut> cuts = new ArrayList<>();
        for (Statement s : site.said("machining")) {
            if (!s.what().startsWith(face) || !site.related(s.at(), place)) {
                continue;
            }
            Cut cut = open.getOrDefault(s.at(), new Cut(s.at(), Optional.empty(), Optional.empty(), ""));
            switch (s.what().substring(face.length())) {
                case "" -> {
                    if (open.containsKey(s.at())) {
                        cuts.add(cut);
                    }
                    open.put(s.at(), new Cut(s.at(), Optional.of(s), Optional.empty(), s.asides().getOrDefault("date", "")));
                }
                case " removed" -> open.put(s.at(), new Cut(s.at(), cut.said, Optional.of(s), cut.date));
                case " date" -> open.put(s.at(), new Cut(s.at(), cut.said, cut.depth, s.says()));
                default -> {
                }
            }
        }
        cuts.addAll(open.values());
        return cuts;
    }

    /** Whether metal came off and nobody said how much. */
    boolean ofUnknownDepth() {
        return depth.filter(d -> d.value().isPresent()).isEmpty() && said.isPresent() && switch (said.get().says()) {
            case "none", "clean", "blast", "bath", "crack test", "balance", "chase", "paint", "plate", "polish" -> false;
            default -> true;
        };
    }

    /** Whether both days are told and this one comes after. */
    boolean after(String reading) {
        Optional<Dates> made = Dates.read(date).filter(d -> d.monthsAgo() < 0);
        Optional<Dates> read = Dates.read(reading).filter(d -> d.monthsAgo() < 0);
        return made.isPresent() && read.isPresent() && made.get().first().isAfter(read.get().last());
    }
}
