package leadlamp.judge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.facts.Fact;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import leadlamp.record.Place;
import leadlamp.words.Name;
import leadlamp.words.Names;
import leadlamp.words.Vocabulary;

/** What record and sheet say in words, looked up by the names that limits use: `flywheel material`, `use fuel`. */
final class Said {
    private final Vocabulary words;
    private final Map<String, List<Fact>> bySubject = new HashMap<>();
    private final Map<String, List<Value>> values = new HashMap<>();
    private final Map<String, Optional<Name>> names = new HashMap<>();

    Said(Collection<? extends Fact> facts, Collection<Value> values, Vocabulary words) {
        this.words = words;
        for (Fact fact : facts) {
            if (fact instanceof Stated stated) {
                bySubject.computeIfAbsent(stated.of() + "\n" + stated.what(), k -> new ArrayList<>()).add(stated);
            } else if (fact instanceof OnSheet line) {
                bySubject.computeIfAbsent("sheet " + line.of() + "\n" + line.what(), k -> new ArrayList<>()).add(line);
            }
        }
        for (Value value : values) {
            this.values.computeIfAbsent(value.of(), k -> new ArrayList<>()).add(value);
        }
    }

    /** The values of a quantity that hold at a place or belong to it. */
    List<Value> values(String quantity, String place) {
        List<Value> near = new ArrayList<>();
        for (Value value : values.getOrDefault(quantity, List.of())) {
            if (Place.related(value.at(), place)) {
                near.add(value);
            }
        }
        return near;
    }

    /** Whether the word of this name is this one, where the place is concerned. */
    Holds holds(String name, String wanted, String place) {
        Name meant = names.computeIfAbsent(name, n -> Names.resolve(n, words)).orElse(null);
        if (meant == null) {
            return Holds.OPEN;
        }
        if (meant instanceof Name.QuantityName quantity) {
            return compared(quantity.of(), wanted, place);
        }
        String subject = meant instanceof Name.SheetWord ? "sheet " + meant.of() : meant.of();
        List<Fact> said = bySubject.getOrDefault(subject + "\n" + meant.what(), List.of());
        if (said.isEmpty() && meant instanceof Name.PartWord part) {
            // What the record does not say of a part the sheet may: its form on its own line, its material under `materials`.
            said = bySubject.getOrDefault("sheet " + part.of() + "\n" + part.what(), List.of());
            if (said.isEmpty() && part.what().equals("material")) {
                said = bySubject.getOrDefault("sheet materials\n" + part.of(), List.of());
            }
        }
        Holds holds = Holds.OPEN;
        for (Fact fact : said) {
            if (!Place.related(fact.at(), place)) {
                continue;
            }
            String says = fact instanceof Stated stated ? stated.says() : ((OnSheet) fact).says();
            if (says.equals("unknown")) {
                continue;
            }
            if (one(says, wanted)) {
                return Holds.YES;
            }
            holds = Holds.NO;
        }
        return holds;
    }

    private static boolean one(String says, String wanted) {
        if (says.equals(wanted) || wanted.equals("recorded")) {
            return true;
        }
        if (wanted.startsWith("over ") || wanted.startsWith("under ")) {
            return sized(says, wanted);
        }
        for (String word : wanted.split(", ")) {
            if (says.equals(word)) {
                return true;
            }
        }
        return false;
    }

    /** `over 0.8 bar`, against a size said in words such as `use boost: 1.0 bar`. */
    private static boolean sized(String says, String wanted) {
        String bound = wanted.substring(wanted.indexOf(' ') + 1);
        for (leadlamp.quantity.Dimension dimension : leadlamp.quantity.Dimension.values()) {
            if (Reading.read(bound, dimension, Optional.empty()) instanceof Reading.Read limit
                    && Reading.read(says, dimension, Optional.empty()) instanceof Reading.Read read && read.written().figure()) {
                Written size = read.written();
                return wanted.startsWith("over ") ? size.low() > limit.written().high() : size.high() < limit.written().low();
            }
        }
        return false;
    }

    private Holds compared(String quantity, String wanted, String place) {
        for (Value value : values(quantity, place)) {
            boolean over = wanted.startsWith("over ");
            String bound = wanted.substring(wanted.indexOf(' ') + 1);
            if (value.plain() && (over || wanted.startsWith("under "))
                    && Reading.read(bound, value.unit().dimension(), Optional.empty()) instanceof Reading.Read limit) {
                double is = value.low().get().value();
                return (over ? is > limit.written().high() : is < limit.written().low()) ? Holds.YES : Holds.NO;
            }
        }
        return Holds.OPEN;
    }
}
