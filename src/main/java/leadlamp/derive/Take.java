package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Units;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.words.Quantity;

/**
 * One thing that a sum takes, and from which place. A shorter place holds at the longer ones; of readings at longer places
 * (`1 top thrust` for cylinder 1) the entry says what it wants of them.
 */
abstract class Take {
    private final String name;
    private boolean optional;

    Take(String name) {
        this.name = name;
    }

    /** What the formula calls it. */
    String name() {
        return name;
    }

    /** What is said to be lacking where it is not there. */
    String lacks() {
        return name;
    }

    /** The same at one place, where that says it better. */
    String lacks(Site site, String place) {
        return lacks();
    }

    /** Whether the place of a reading is one that the sum may be done at. */
    boolean placed() {
        return true;
    }

    boolean isOptional() {
        return optional;
    }

    /** The quantity that is read or worked out before; empty where it is none. */
    String quantity() {
        return "";
    }

    /** Other quantities that may stand in for it, which must be worked out first as well. */
    List<String> others() {
        return List.of();
    }

    /** What is there for a place; empty where nothing is. */
    abstract Optional<Slot> at(Site site, String place);

    /** The same, but the sum does without it. */
    Take optional() {
        optional = true;
        return this;
    }

    /** The same under another name, where a sum takes one quantity twice. */
    Take renamed(String other) {
        Take same = this;
        return new Take(other) {
            @Override
            String quantity() {
                return same.quantity();
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                return same.at(site, place).map(slot -> new Slot(other, slot.values(), slot.reduce()));
            }
        };
    }

    /** A reading at the place. Of several at longer places their mean. */
    static Take reading(String quantity) {
        return new OfPlace(quantity, Slot.Reduce.MEAN, false);
    }

    /** The mean of the readings that belong to the place. */
    static Take mean(String quantity) {
        return new OfPlace(quantity, Slot.Reduce.MEAN, false);
    }

    /** The least of them. */
    static Take least(String quantity) {
        return new OfPlace(quantity, Slot.Reduce.LEAST, false);
    }

    /** The greatest of them. */
    static Take greatest(String quantity) {
        return new OfPlace(quantity, Slot.Reduce.GREATEST, false);
    }

    /** The sum of them: both halves of a bearing. */
    static Take total(String quantity) {
        return new OfPlace(quantity, Slot.Reduce.SUM, false);
    }

    /** The least and the greatest of them as the two ends of one value: each must hold. */
    static Take ends(String quantity) {
        return new Ends(quantity);
    }

    /** All of them, at least so many. */
    static Take all(String quantity, int atLeast) {
        return new Several(quantity, atLeast);
    }

    /** Those of every place of the quantity's own group: nothing is said of a set that is not whole. */
    static Take every(String quantity) {
        return new Every(quantity);
    }

    /** The same, of the whole engine, wherever the sum is worked out. */
    static Take everyOfAll(String quantity) {
        Take every = new Every(quantity);
        return new Take(quantity) {
            @Override
            String quantity() {
                return quantity;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                return every.at(site, "engine");
            }
        };
    }

    /** Those of every place of the group where they were read, at least two. */
    static Take known(String quantity) {
        return new Known(quantity);
    }

    /** Those at both places of a pair: at 1 and at 2 for `1 and 2`. */
    static Take ofBoth(String quantity) {
        return new OfBoth(quantity);
    }

    /** A line of the sheet that is a size: {@code sheet("standard", "bore")}. */
    static Take sheet(String of, String what) {
        return new SheetLine("sheet " + of + " " + what, of, what);
    }

    /** A line of the sheet that may stand in any section: {@code sheetLine("intake face angle")}. */
    static Take sheetLine(String what) {
        return by("sheet " + what, (site, place) -> {
            Value found = null;
            for (Statement s : site.build.sheet().statements()) {
                if (s.what().equals(what) && site.store.covers(s.at(), place)) {
                    found = Site.written("sheet " + what, place, s).orElse(found);
                }
            }
            return Optional.ofNullable(found);
        });
    }

    /** The standard size that the sheet's limits give a quantity. */
    static Take sheetStandard(String quantity) {
        return new Standard(quantity);
    }

    /** What the builder asks of the engine: {@code use("rev limit")}. */
    static Take use(String what) {
        return new Said("use " + what, "use", what);
    }

    /** A size said in words of a part, an observation or a section, as {@code said("trigger disc", "play amount")}. */
    static Take said(String of, String what) {
        return new Said(of + " " + what, of, what);
    }

    /** What machining took off a face, all cuts together; none where the record says that it was not machined. */
    static Take removed(String face) {
        return new Removed(face);
    }

    /** The highest reading of a quantity wherever in the engine it was taken. */
    static Take highest(String quantity) {
        return anywhere(quantity, Slot.Reduce.GREATEST);
    }

    /** The lowest reading of a quantity wherever in the engine it was taken. */
    static Take lowest(String quantity) {
        return anywhere(quantity, Slot.Reduce.LEAST);
    }

    private static Take anywhere(String quantity, Slot.Reduce reduce) {
        return new Take(quantity) {
            @Override
            String quantity() {
                return quantity;
            }

            @Override
            boolean placed() {
                return false;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                List<Value> all = new ArrayList<>(site.store.of(quantity));
                all.removeIf(v -> !v.of().equals(quantity));
                return all.isEmpty() ? Optional.empty() : Optional.of(new Slot(name(), all, all.size() == 1 ? Slot.Reduce.ONE : reduce));
            }
        };
    }

    /**
     * What was cut off a face after a reading was taken: nothing where the reading is of the part as it now is. Only a reading
     * whose date lies before the date of the cut was taken before it.
     */
    static Take cutSince(String quantity, String... faces) {
        return new Take("cut since " + quantity) {
            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> reading = reading(quantity).at(site, place);
                if (reading.isEmpty()) {
                    return Optional.empty();
                }
                String read = reading.get().values().get(0).asides().getOrDefault("date", "");
                double off = 0;
                List<Where> where = new ArrayList<>();
                for (String face : faces) {
                    for (Cut cut : Cut.of(site, face, place)) {
                        if (!cut.after(read)) {
                            continue;
                        }
                        if (cut.ofUnknownDepth()) {
                            return Optional.empty();
                        }
                        if (cut.depth().isPresent()) {
                            off += cut.depth().get().value().orElseThrow().high();
                            where.add(cut.depth().get().where());
                        }
                    }
                }
                return Optional.of(Slot.of(name(), Site.exact(name(), place, off, Units.usual(Dimension.LENGTH), 2, where)));
            }

            @Override
            String lacks() {
                return "machining " + faces[0] + " removed";
            }
        };
    }

    /** Anything else. */
    static Take by(String name, Finder finder) {
        return new Take(name) {
            @Override
            Optional<Slot> at(Site site, String place) {
                return finder.find(site, place).map(v -> Slot.of(name(), v));
            }
        };
    }

    /** Anything else, and what is said to be lacking where it is not there. */
    static Take by(String name, String lacks, Finder finder) {
        return new Take(name) {
            @Override
            Optional<Slot> at(Site site, String place) {
                return finder.find(site, place).map(v -> Slot.of(name(), v));
            }

            @Override
            String lacks() {
                return lacks;
            }
        };
    }

    /** Finds a value for a place. */
    interface Finder {
        Optional<Value> find(Site site, String place);
    }

    /** Whether a value says nothing but that it lies somewhere among several places. */
    private static boolean isSaid(Value value, String how) {
        return how.equals(value.asides().get(Readings.SAID));
    }

    private abstract static class OfQuantity extends Take {
        OfQuantity(String quantity) {
            super(quantity);
        }

        @Override
        String quantity() {
            return name();
        }

        /** The value that holds at the place; where the quantity has none, that of its kind written alone. */
        Optional<Value> holding(Site site, String place) {
            Optional<Value> value = site.store.at(name(), place);
            return value.isPresent() ? value : kind(site).flatMap(k -> site.store.at(k, place).filter(v -> v.of().equals(k)));
        }

        List<Value> within(Site site, String place) {
            List<Value> values = site.store.within(name(), place);
            if (values.isEmpty() && kind(site).isPresent()) {
                String kind = kind(site).get();
                values = site.store.within(kind, place);
                values.removeIf(v -> !v.of().equals(kind));
            }
            return values;
        }

        Optional<String> kind(Site site) {
            return site.words.quantity(name()).map(Quantity::kind).filter(k -> !k.equals(name()));
        }

        /** Values at the longer places first, for they say more; else the one that holds. */
        List<Value> best(Site site, String place) {
            Optional<Value> here = holding(site, place);
            if (here.isPresent() && here.get().at().equals(place)) {
                return List.of(here.get());
            }
            List<Value> within = within(site, place);
            return within.isEmpty() ? here.map(List::of).orElse(List.of()) : within;
        }
    }

    private static final class OfPlace extends OfQuantity {
        private final Slot.Reduce reduce;
        private final boolean whole;

        OfPlace(String quantity, Slot.Reduce reduce, boolean whole) {
            super(quantity);
            this.reduce = reduce;
            this.whole = whole;
        }

        @Override
        Optional<Slot> at(Site site, String place) {
            List<Value> values = best(site, place);
            if (values.isEmpty() || whole && values.size() < 2) {
                return Optional.empty();
            }
            return Optional.of(new Slot(name(), values, values.size() == 1 ? Slot.Reduce.ONE : reduce));
        }
    }

    private static final class Ends extends OfQuantity {
        Ends(String quantity) {
            super(quantity);
        }

        @Override
        Optional<Slot> at(Site site, String place) {
            List<Value> values = best(site, place);
            if (values.isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(Slot.of(name(), values.size() == 1 ? values.get(0) : ends(place, values)));
        }

        private static Value ends(String place, List<Value> values) {
            Optional<Estimate> low = values.get(0).low();
            Optional<Estimate> high = values.get(0).high();
            List<Where> places = new ArrayList<>();
            boolean usual = false;
            String told = "";
            for (Value v : values) {
                low = low.isEmpty() || v.low().isEmpty() ? Optional.empty()
                        : v.low().get().value() < low.get().value() ? v.low() : low;
                high = high.isEmpty() || v.high().isEmpty() ? Optional.empty()
                        : v.high().get().value() > high.get().value() ? v.high() : high;
                usual |= v.usual();
                told = told.isEmpty() ? v.told() : told;
                for (Where where : v.places()) {
                    if (!places.contains(where)) {
                        places.add(where);
                    }
                }
            }
            Value first = values.get(0);
            return new Value(first.of(), first.kind(), place, low, high, first.unit(), first.figures(), first.gauge(), usual, "",
                    told, first.asides(), places);
        }
    }

    private static final class Several extends OfQuantity {
        private final int atLeast;

        Several(String quantity, int atLeast) {
            super(quantity);
            this.atLeast = atLeast;
        }

        @Override
        Optional<Slot> at(Site site, String place) {
            List<Value> values = within(site, place);
            return values.size() < atLeast ? Optional.empty() : Optional.of(new Slot(name(), values, Slot.Reduce.MEAN));
        }
    }

    /** The values of a set. A range said of them all is its own ends; a least or a most alone says nothing of a set. */
    private abstract static class OfSet extends OfQuantity {
        OfSet(String quantity) {
            super(quantity);
        }

        /** The set at the places; empty where one of them has nothing. */
        List<Value> set(Site site, List<String> places, boolean all) {
            List<Value> set = new ArrayList<>();
            for (String place : places) {
                List<Value> here = best(site, place);
                if (here.isEmpty() && all) {
                    return List.of();
                }
                for (Value value : here) {
                    if (isSaid(value, Readings.RANGE_OF_SEVERAL)) {
                        endsOf(site, value).forEach(end -> once(set, end));
                    } else if (isSaid(value, Readings.BOUND_OF_SEVERAL) || value.low().isEmpty() || value.high().isEmpty()) {
                        return List.of();
                    } else {
                        once(set, value);
                    }
                }
            }
            return set;
        }

        /** One reading said of the whole engine is found at every place, and is one. */
        private static void once(List<Value> set, Value value) {
            for (Value there : set) {
                if (there == value) {
                    return;
                }
            }
            set.add(value);
        }

        private List<Value> endsOf(Site site, Value range) {
            List<Value> ends = new ArrayList<>();
            for (Value value : site.store.of(range.of())) {
                if (Store.untold(value.at()) && value.places().equals(range.places()) && value.plain()) {
                    ends.add(value);
                }
            }
            return ends;
        }

        List<String> placesRead(Site site) {
            List<String> places = new ArrayList<>();
            for (Value value : site.store.of(name())) {
                if (!Store.untold(value.at()) && !places.contains(value.at())) {
                    places.add(value.at());
                }
            }
            return places;
        }
    }

    private static final class Every extends OfSet {
        Every(String quantity) {
            super(quantity);
        }

        @Override
        Optional<Slot> at(Site site, String place) {
            Optional<List<String>> group = site.words.quantity(name()).flatMap(q -> site.places(q.group()));
            List<String> places = new ArrayList<>();
            for (String one : group.orElseGet(() -> placesRead(site))) {
                if (site.store.covers(place, one)) {
                    places.add(one);
                }
            }
            List<Value> set = set(site, places, true);
            return set.size() < 2 ? Optional.empty() : Optional.of(new Slot(name(), set, Slot.Reduce.MEAN));
        }
    }

    private static final class Known extends OfSet {
        Known(String quantity) {
            super(quantity);
        }

        @Override
        Optional<Slot> at(Site site, String place) {
            List<Value> set = set(site, placesRead(site), false);
            return set.size() < 2 ? Optional.empty() : Optional.of(new Slot(name(), set, Slot.Reduce.MEAN));
        }
    }

    private static final class OfBoth extends OfQuantity {
        OfBoth(String quantity) {
            super(quantity);
        }

        @Override
        Optional<Slot> at(Site site, String place) {
            int and = place.indexOf(" and ");
            if (and < 0) {
                return Optional.empty();
            }
            String one = place.substring(0, and);
            String other = place.substring(and + 5);
            String before = one.substring(0, one.lastIndexOf(' ') + 1);
            List<Value> both = new ArrayList<>(best(site, one));
            List<Value> second = best(site, before + other);
            if (both.isEmpty() || second.isEmpty()) {
                return Optional.empty();
            }
            both.addAll(second);
            return Optional.of(new Slot(name(), both, Slot.Reduce.MEAN));
        }
    }

    private static final class SheetLine extends Take {
        private final String of;
        private final String what;

        SheetLine(String name, String of, String what) {
            super(name);
            this.of = of;
            this.what = what;
        }

        @Override
        Optional<Slot> at(Site site, String place) {
            return site.sheet(of, place, what).flatMap(s -> Site.written(name(), place, s)).map(v -> Slot.of(name(), v));
        }
    }

    private static final class Standard extends Take {
        private final String of;

        Standard(String quantity) {
            super("sheet limits " + quantity);
            this.of = quantity;
        }

        @Override
        Optional<Slot> at(Site site, String place) {
            return site.words.quantity(of).flatMap(q -> site.standard(q, place)).map(line -> {
                double size = line.standard().get().low();
                return Slot.of(name(), Site.exact(name(), place, size, line.standard().get().unit(),
                        line.standard().get().figures(), List.of(line.line())));
            });
        }
    }

    private static final class Said extends Take {
        private final String of;
        private final String what;

        Said(String name, String of, String what) {
            super(name);
            this.of = of;
            this.what = what;
        }

        @Override
        Optional<Slot> at(Site site, String place) {
            return site.word(of, place, what).flatMap(s -> Site.written(name(), place, s)).map(v -> Slot.of(name(), v));
        }
    }

    private static final class Removed extends Take {
        private final String face;

        Removed(String face) {
            super("machining " + face + " removed");
            this.face = face;
        }

        @Override
        Optional<Slot> at(Site site, String place) {
            List<Value> cuts = new ArrayList<>();
            List<Where> said = new ArrayList<>();
            for (Cut cut : Cut.of(site, face, place)) {
                if (cut.ofUnknownDepth()) {
                    return Optional.empty();
                }
                cut.said().ifPresent(s -> said.add(s.where()));
                cut.depth().flatMap(d -> Site.written(name(), place, d)).ifPresent(cuts::add);
            }
            if (said.isEmpty() && cuts.isEmpty()) {
                return Optional.empty();
            }
            if (cuts.isEmpty()) {
                return Optional.of(Slot.of(name(), Site.exact(name(), place, 0, Units.usual(Dimension.LENGTH), 2, said)));
            }
            return Optional.of(new Slot(name(), cuts, Slot.Reduce.SUM));
        }
    }

    /** A doubt that a figure of the trade brings along, by source. */
    static TreeMap<String, Double> doubt(String source, double standard) {
        TreeMap<String, Double> parts = new TreeMap<>();
        if (standard > 0) {
            parts.put(source, standard);
        }
        return parts;
    }
}
