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
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import leadlamp.record.Place;
import leadlamp.words.Name;
import leadlamp.words.Names;
import leadlamp.words.Vocabulary;

/** What record and sheet say in words, looked up by the names that limits use: `flywheel material`, `use fuel`. */
final class Said {
    private static final String SHEET = "sheet ";

    private final Vocabulary words;
    private final Map<String, List<Fact>> bySubject = new HashMap<>();
    private final Map<String, List<Value>> values = new HashMap<>();
    private final Map<String, List<Value>> byKind = new HashMap<>();
    private final Map<String, Optional<Name>> names = new HashMap<>();

    Said(Collection<? extends Fact> facts, Collection<Value> values, Vocabulary words) {
        this.words = words;
        for (Fact fact : facts) {
            // What others told settles nothing.
            if (fact instanceof Stated stated && stated.told().isEmpty() && !stated.says().equals("unknown")) {
                put(bySubject, stated.of() + "\n" + stated.what(), stated);
            } else if (fact instanceof OnSheet line && !line.says().equals("unknown")) {
                put(bySubject, SHEET + line.of() + "\n" + line.what(), line);
            }
        }
        for (Value value : values) {
            put(this.values, value.of(), value);
            if (!value.kind().equals(value.of()) && words.quantity(value.kind()).isPresent()) {
                put(byKind, value.kind(), value);
            }
        }
    }

    private static <T> void put(Map<String, List<T>> into, String key, T one) {
        List<T> all = into.get(key);
        if (all == null) {
            all = new ArrayList<>(2);
            into.put(key, all);
        }
        all.add(one);
    }

    /** The values of a quantity. */
    List<Value> values(String quantity) {
        return values.getOrDefault(quantity, List.of());
    }

    /** The values of the quantities of which this one is the kind: head bolts are bolts. */
    List<Value> ofKind(String quantity) {
        return byKind.getOrDefault(quantity, List.of());
    }

    /** What is said of a subject where the place is concerned: of `machining` its `crankshaft undersize`. */
    Optional<String> text(String of, String what, String place) {
        for (Fact fact : bySubject.getOrDefault(of + "\n" + what, List.of())) {
            if (fact instanceof Stated stated && Place.related(fact.at(), place)) {
                return Optional.of(stated.says());
            }
        }
        return Optional.empty();
    }

    /** Whether the word of this name is this one, where the place is concerned. */
    Holds holds(String name, String wanted, String place) {
        Optional<Name> resolved = names.get(name);
        if (resolved == null) {
            resolved = Names.resolve(name, words);
            names.put(name, resolved);
        }
        if (resolved.isEmpty()) {
            return Holds.OPEN;
        }
        Name meant = resolved.get();
        if (meant instanceof Name.QuantityName quantity) {
            return compared(quantity.of(), wanted, place);
        }
        String subject = meant instanceof Name.SheetWord ? SHEET + meant.of() : meant.of();
        Holds holds = holds(subject, meant.what(), wanted, place);
        // What the record does not say of a part the sheet may: its form on its own line, its material under `materials`.
        if (holds == Holds.OPEN && meant instanceof Name.PartWord part && !Marks.found(part.of())) {
            holds = holds(SHEET + part.of(), part.what(), wanted, place);
            if (holds == Holds.OPEN && part.what().equals("material")) {
                holds = holds(SHEET + "materials", part.of(), wanted, place);
            }
        }
        return holds;
    }

    private Holds holds(String subject, String what, String wanted, String place) {
        boolean yes = false;
        boolean no = false;
        for (Fact fact : bySubject.getOrDefault(subject + "\n" + what, List.of())) {
            if (Place.related(fact.at(), place)) {
                boolean one = one(fact instanceof Stated stated ? stated.says() : ((OnSheet) fact).says(), wanted);
                yes |= one;
                no |= !one;
            }
        }
        return yes == no ? Holds.OPEN : yes ? Holds.YES : Holds.NO;
    }

    private static boolean one(String says, String wanted) {
        if (says.equals(wanted) || wanted.equals("recorded")) {
            return true;
        }
        if (wanted.startsWith("over ") || wanted.startsWith("under ")) {
            return sized(says, wanted);
        }
        int from = 0;
        while (from < wanted.length()) {
            int to = wanted.indexOf(", ", from);
            String word = to < 0 ? wanted.substring(from) : wanted.substring(from, to);
            if (says.equals(word)) {
                return true;
            }
            from = to < 0 ? wanted.length() : to + 2;
        }
        return false;
    }

    /** `over 0.8 bar`, against a size said in words such as `use boost: 1.0 bar`. */
    private static boolean sized(String says, String wanted) {
        for (Dimension dimension : Dimension.values()) {
            if (Reading.read(bound(wanted), dimension, Optional.empty()) instanceof Reading.Read limit
                    && Reading.read(says, dimension, Optional.empty()) instanceof Reading.Read read && read.written().figure()) {
                Written size = read.written();
                return wanted.startsWith("over ") ? size.low() > limit.written().high() : size.high() < limit.written().low();
            }
        }
        return false;
    }

    private static String bound(String wanted) {
        return wanted.substring(wanted.indexOf(' ') + 1);
    }

    /** A value against `over` or `under` a size: both of its ends. */
    private Holds compared(String quantity, String wanted, String place) {
        boolean over = wanted.startsWith("over ");
        Holds all = null;
        for (Value value : values(quantity)) {
            if (!Place.related(value.at(), place) || !value.told().isEmpty()) {
                continue;
            }
            if (wanted.equals("recorded")) {
                return Holds.YES;
            }
            if (!over && !wanted.startsWith("under ") || !(Reading.read(bound(wanted), value.unit().dimension(), Optional.empty())
                    instanceof Reading.Read limit)) {
                return Holds.OPEN;
            }
            double edge = over ? limit.written().high() : limit.written().low();
            Holds low = value.low().isEmpty() ? Holds.OPEN : beyond(value.low().get().value(), edge, over);
            Holds high = value.high().isEmpty() ? Holds.OPEN : beyond(value.high().get().value(), edge, over);
            all = Holds.of(all, low == high ? low : Holds.OPEN);
        }
        return all == null ? Holds.OPEN : all;
    }

    private static Holds beyond(double value, double edge, boolean over) {
        return (over ? value > edge : value < edge) ? Holds.YES : Holds.NO;
    }
}
