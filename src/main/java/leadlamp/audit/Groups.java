package leadlamp.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import leadlamp.facts.Fact;
import leadlamp.facts.NotSeen;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.record.Build;
import leadlamp.record.EngineSheet;
import leadlamp.record.Place;
import leadlamp.words.Part;
import leadlamp.words.Property;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * The places of each group in this build: those that the engine sheet gives and those that the record names. Groups that
 * run over parts, readings or entries of the record have a subject at each place as well.
 */
final class Groups {
    private static final String OF_A_KIND = "of a kind: ";

    private final Vocabulary words;
    private final EngineSheet.Layout layout;
    private final Build build;
    private final Collection<? extends Fact> facts;
    private final Map<String, Members> known = new HashMap<>();
    private final Map<String, List<String>> groupsOf = new HashMap<>();
    private final Map<String, PlaceForm> forms = new HashMap<>();
    private Map<String, Set<String>> named;
    private List<Stated> stated;

    /**
     * One that is asked.
     *
     * @param of the part, joint or reading where the group runs over those, else empty
     * @param at the place
     */
    record Spot(String of, String at) {
    }

    /** A group in this build. */
    static final class Members {
        private final List<Spot> spots;
        private final boolean settled;
        private final List<String> places;

        Members(List<Spot> spots, boolean settled) {
            this.spots = spots;
            this.settled = settled;
            Set<String> all = new LinkedHashSet<>();
            for (Spot spot : spots) {
                if (!Untold.is(spot.at())) {
                    all.add(spot.at());
                }
            }
            this.places = List.copyOf(all);
        }

        /** Who is in it, in the order of sheet and record. */
        List<Spot> spots() {
            return spots;
        }

        /** Whether sheet or record settle it; else there may be more. */
        boolean settled() {
            return settled;
        }

        /** Its places, those left out of which it is not told which they are. */
        List<String> places() {
            return places;
        }
    }

    Groups(Build build, Collection<? extends Fact> facts, Vocabulary words) {
        this.build = build;
        this.layout = build.sheet().layout();
        this.facts = facts;
        this.words = words;
    }

    /** Who is in a group. */
    Members of(String group) {
        Members members = known.get(group);
        if (members == null) {
            members = find(group);
            known.put(group, members);
        }
        return members;
    }

    /** The places of one part, where the sheet gives them. */
    Optional<List<String>> places(Part part) {
        return layout.places(part);
    }

    private Members find(String group) {
        if (group.equals(Place.ENGINE)) {
            return new Members(List.of(new Spot("", Place.ENGINE)), true);
        }
        Optional<List<Spot>> written = ofTheRecord(group);
        if (written.isPresent()) {
            return new Members(written.get(), true);
        }
        Optional<List<String>> given = layout.places(group);
        Set<String> places = new LinkedHashSet<>(given.orElse(List.of()));
        Set<String> more = new TreeSet<>(Natural::compare);
        take(group, named().getOrDefault(group, Set.of()), places, more);
        if (given.isEmpty()) {
            take(group, named().getOrDefault(OF_A_KIND + group, Set.of()), more, more);
        }
        places.addAll(given.isPresent() ? more : single(more));
        List<Spot> spots = new ArrayList<>(places.size());
        boolean parts = group.equals("each part of the sheet");
        for (String place : places) {
            spots.add(parts ? part(place) : new Spot("", place));
        }
        return new Members(List.copyOf(spots), given.isPresent());
    }

    /** A name of the sheet as a part and where what is said of it stands: `belt idler low` is the belt idler at `low`. */
    private Spot part(String name) {
        for (int end = name.length(); end > 0; end = name.lastIndexOf(' ', end - 1)) {
            String word = name.substring(0, end);
            Optional<Part> part = words.part(word).filter(p -> p.name().equals(word));
            if (part.isPresent()) {
                List<String> own = layout.places(part.get()).orElse(List.of());
                String rest = end == name.length() ? "" : name.substring(end + 1);
                String at = own.contains(name) ? name : own.contains(word) ? word : rest.startsWith("at ") ? rest.substring(3)
                        : rest;
                return new Spot(word, at.isEmpty() ? Place.ENGINE : at);
            }
        }
        return new Spot("", name);
    }

    /** Takes the places that the record names and that are not of the known ones already, cut to the form of the group. */
    private void take(String group, Set<String> named, Set<String> known, Set<String> into) {
        List<String> more = new ArrayList<>();
        for (String place : named) {
            if (!known.contains(place)) {
                if (Untold.is(place)) {
                    more.add(place);
                } else if (!related(place, known)) {
                    String cut = group.startsWith("each joint") ? joint(place) : form(group).cut(place);
                    if (!cut.equals(Place.ENGINE)) {
                        more.add(cut);
                    }
                }
            }
        }
        into.addAll(more);
    }

    /** What is said of all that a cylinder has names no one of them where its own are named: `3` beside `3 first`. */
    private static Set<String> single(Set<String> places) {
        Set<String> single = new LinkedHashSet<>();
        for (String place : places) {
            boolean longer = false;
            for (String other : places) {
                longer |= Character.isDigit(place.charAt(0)) && !other.equals(place) && Place.covers(place, other);
            }
            if (!longer) {
                single.add(place);
            }
        }
        return single;
    }

    private static boolean related(String place, Collection<String> places) {
        for (String one : places) {
            if (Place.related(one, place)) {
                return true;
            }
        }
        return false;
    }

    /** Group to the places at which the record says something of what lives in it. */
    private Map<String, Set<String>> named() {
        if (named == null) {
            Map<String, Set<String>> names = new HashMap<>();
            for (Fact fact : facts) {
                String of = subject(fact);
                if (of.isEmpty() || fact.at().equals(Place.ENGINE)) {
                    continue;
                }
                List<String> groups = groupsOf(of);
                for (int i = 0; i < groups.size(); i++) {
                    String group = groups.get(i);
                    if (!group.equals(Place.ENGINE)) {
                        name(names, i == 0 ? group : OF_A_KIND + group, fact.at());
                    }
                }
                if (of.equals("joint") || of.startsWith("joint ")) {
                    joint(names, fact);
                }
                if (fact instanceof Stated said && said.of().equals("cam gear") && said.what().equals("form")) {
                    if (said.says().equals("adjustable")) {
                        name(names, "each adjustable cam gear", fact.at());
                    } else if (said.says().equals("phaser")) {
                        name(names, "each cam phaser", fact.at());
                    }
                }
            }
            named = names;
        }
        return named;
    }

    private static void name(Map<String, Set<String>> names, String under, String at) {
        Set<String> places = names.get(under);
        if (places == null) {
            places = new LinkedHashSet<>();
            names.put(under, places);
        }
        places.add(at);
    }

    private PlaceForm form(String group) {
        PlaceForm form = forms.get(group);
        if (form == null) {
            form = new PlaceForm(words.groups().getOrDefault(group, ""));
            forms.put(group, form);
        }
        return form;
    }

    private void joint(Map<String, Set<String>> names, Fact fact) {
        name(names, "each joint", fact.at());
        String what = fact instanceof Stated said ? said.what() : fact instanceof Value value ? value.of() : "";
        String says = fact instanceof Stated said ? said.says() : "";
        switch (what) {
            case "joint torque", "torque said", "meant" ->
                    name(names, "each joint with a torque", fact.at());
            case "stages", "sequence" -> name(names, "each joint with stages", fact.at());
            case "joint angle" -> {
                name(names, "each joint with stages", fact.at());
                name(names, "each joint with an angle", fact.at());
            }
            case "thread-locker" -> {
                if (!says.equals("none")) {
                    name(names, "each joint with thread-locker", fact.at());
                }
            }
            case "lengths" -> name(names, "each joint with several lengths", fact.at());
            default -> {
            }
        }
    }

    /** The joint that a place is, or belongs to: `head to block 7` to `head to block`. */
    private String joint(String at) {
        for (String joint : layout.places("each joint").orElse(List.of())) {
            if (Place.covers(joint, at)) {
                return joint;
            }
        }
        return form("each joint").cut(at);
    }

    /** The group that a part or reading lives in; after it those of its kinds. */
    private List<String> groupsOf(String of) {
        List<String> groups = groupsOf.get(of);
        if (groups == null) {
            Set<String> found = new LinkedHashSet<>();
            Optional<Part> part = words.part(of).filter(p -> p.name().equals(of));
            if (part.isPresent()) {
                found.add(part.get().group());
                kinds(part.get(), found);
            } else {
                Optional<Quantity> quantity = words.quantity(of).filter(q -> q.name().equals(of));
                if (quantity.isPresent()) {
                    found.add(quantity.get().group());
                    words.part(quantity.get().of()).ifPresent(p -> kinds(p, found));
                }
            }
            groups = List.copyOf(found);
            groupsOf.put(of, groups);
        }
        return groups;
    }

    private void kinds(Part part, Set<String> groups) {
        for (String kind : part.kinds()) {
            words.part(kind).ifPresent(k -> groups.add(k.group()));
        }
    }

    static String subject(Fact fact) {
        if (fact instanceof Stated said) {
            return said.of();
        }
        if (fact instanceof Value value) {
            return value.of();
        }
        if (fact instanceof Seen seen) {
            return seen.of();
        }
        if (fact instanceof Verdict verdict) {
            return verdict.of();
        }
        return fact instanceof NotSeen clear ? clear.of() : "";
    }

    /** Groups that run over what is written in the record; empty for all others. */
    private Optional<List<Spot>> ofTheRecord(String group) {
        Map<String, Spot> spots = new LinkedHashMap<>();
        switch (group) {
            case "each reading" -> {
                for (Fact fact : facts) {
                    if (fact instanceof Value value && !value.derived() && !marked(value.of()) && !Untold.is(value.at())) {
                        put(spots, value.of(), cut(value));
                    }
                }
            }
            case "each set of readings" -> setsOfReadings(spots);
            case "each fit" -> {
                for (Fact fact : facts) {
                    if (fact instanceof Value value && value.derived() && !Untold.is(value.at()) && fit(value.of())) {
                        put(spots, value.of(), value.at());
                    }
                }
            }
            case "each gauge" -> {
                for (String gauge : build.gauges().keySet()) {
                    put(spots, "", gauge);
                }
            }
            case "each joint entry" -> {
                for (Fact fact : facts) {
                    String of = subject(fact);
                    if ((of.equals("joint") || of.startsWith("joint torque")) && !fact.at().equals(Place.ENGINE)) {
                        put(spots, "", joint(fact.at()));
                    }
                }
            }
            case "each observation" -> {
                for (Fact fact : facts) {
                    if (fact instanceof Seen seen) {
                        put(spots, seen.of() + " " + seen.sign(), seen.at());
                    }
                }
            }
            case "each accepted entry" -> build.accepted().forEach(a -> put(spots, a.check(), a.at()));
            case "each protection" -> protections(spots);
            case "each kept part", "each new part", "each deleted part", "each part with a date", "each machined part",
                    "each coated part", "each washed part", "each step" -> {
                for (Stated said : stated()) {
                    stated(group, said, spots);
                }
            }
            default -> {
                return Optional.empty();
            }
        }
        return Optional.of(List.copyOf(spots.values()));
    }

    /** What is stated of parts, work and steps, for the groups that run over that. */
    private List<Stated> stated() {
        if (stated == null) {
            stated = new ArrayList<>();
            for (Fact fact : facts) {
                if (fact instanceof Stated said) {
                    stated.add(said);
                }
            }
        }
        return stated;
    }

    private static void put(Map<String, Spot> spots, String of, String at) {
        spots.putIfAbsent(of + " at " + at, new Spot(of, at));
    }

    private void stated(String group, Stated said, Map<String, Spot> spots) {
        boolean came = said.of().endsWith(FactsOf.AS_FOUND);
        boolean state = said.what().equals("state") && !came;
        String says = said.says();
        boolean in = switch (group) {
            case "each kept part" -> state && (says.equals("kept") || says.equals("second-hand") || says.equals("repaired")
                    || says.equals("there"));
            case "each new part" -> state && says.equals("new");
            case "each deleted part" -> state && says.equals("deleted");
            case "each part with a date" -> !came && (said.what().equals("age") || said.what().equals("date made"));
            default -> false;
        };
        if (in) {
            put(spots, said.of(), said.at());
        } else if (group.equals("each step") && said.of().equals("steps")) {
            put(spots, said.what(), said.at());
        } else if (group.equals("each washed part") && said.of().equals("steps") && said.what().equals("parts washed")
                && !said.at().equals(Place.ENGINE)) {
            put(spots, said.at(), Place.ENGINE);
        } else if (said.of().equals("machining") && words.part(said.what()).isPresent()) {
            boolean coated = says.equals("paint") || says.equals("powder coat") || says.equals("plate")
                    || says.equals("blast");
            if (group.equals("each machined part") && !says.equals("none") || group.equals("each coated part") && coated) {
                put(spots, said.what(), said.at());
            }
        }
    }

    private void setsOfReadings(Map<String, Spot> spots) {
        Map<String, Set<String>> places = new LinkedHashMap<>();
        for (Fact fact : facts) {
            if (fact instanceof Value value && !value.derived() && value.plain() && !marked(value.of())
                    && !Untold.is(value.at())) {
                places.computeIfAbsent(value.of(), q -> new TreeSet<>()).add(value.at());
            }
        }
        for (Map.Entry<String, Set<String>> each : places.entrySet()) {
            if (each.getValue().size() > 2) {
                put(spots, each.getKey(), Place.ENGINE);
            }
        }
    }

    private void protections(Map<String, Spot> spots) {
        Set<String> names = words.property("protection", "names").map(Property::values).map(Map::keySet).orElse(Set.of());
        for (Fact fact : facts) {
            String what = fact instanceof Stated said && said.of().equals("protection") ? said.what()
                    : fact instanceof OnSheet line && line.of().equals("protection") ? line.what() : "";
            if (names.contains(what)) {
                put(spots, what, Place.ENGINE);
            }
        }
    }

    /** Whether a derived value is a hole less a shaft. */
    private boolean fit(String name) {
        Optional<Quantity> quantity = words.quantity(name);
        if (quantity.isEmpty() || quantity.get().from().size() != 2) {
            return false;
        }
        boolean hole = false;
        boolean shaft = false;
        for (String from : quantity.get().from()) {
            hole |= from.endsWith("bore") || from.endsWith("hole diameter") || from.endsWith("with shells");
            shaft |= from.endsWith("diameter") && !from.endsWith("hole diameter");
        }
        return hole && shaft;
    }

    private String cut(Value value) {
        List<String> groups = groupsOf(value.of());
        return groups.isEmpty() ? value.at() : form(groups.get(0)).cut(value.at());
    }

    private static boolean marked(String of) {
        return of.endsWith(FactsOf.AS_FOUND) || of.endsWith(FactsOf.AS_TRIAL);
    }
}
