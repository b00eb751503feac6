package leadlamp.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import leadlamp.facts.Fact;
import leadlamp.facts.NotSeen;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Seen;
import leadlamp.facts.Shown;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.record.Place;
import leadlamp.record.Where;

/**
 * What the trade knows of the past, and how it is read. Two stages of rules, each run to its end: which signs are shown at
 * which places, those with an innocent cause set aside; then what each of them says for and against which event. How well
 * an event stands is then one sum, {@link Standing}. The rules are made from the pages of signs and events when the project
 * is built.
 */
public final class Past {
    /** How the ways of the rules of signs and events begin. */
    static final String SHOWN = "shown";
    static final String SET_ASIDE = "set aside";
    static final String STRONGLY_FOR = "strongly for: ";
    static final String WEAKLY_FOR = "weakly for: ";
    static final String STRONGLY_AGAINST = "strongly against: ";
    static final String WEAKLY_AGAINST = "weakly against: ";

    /** Words of it that a check may ask for. */
    static final Set<String> WORDS = Set.of("build followed up", "build event without follow-up", "build signs agree",
            "build event in quarrel", "build events by cylinder", "build cylinder struck again");

    private static final String BUILD = "build";

    private final Map<String, PastSign> signs = new LinkedHashMap<>();
    private final Map<String, PastEvent> events = new LinkedHashMap<>();
    private final Rulebase rules;

    Past(Collection<PastSign> signs, Collection<PastEvent> events, Rulebase rules) {
        signs.forEach(s -> this.signs.put(s.id(), s));
        events.forEach(e -> this.events.put(e.id(), e));
        this.rules = rules;
    }

    private static final class Carried {
        private static final Past ONE = PastFile.compiled();
    }

    /** With what the program carries, loaded at the first call. */
    public static Past compiled() {
        return Carried.ONE;
    }

    /** With pages as they stand. */
    public static Past of(PastPages pages) {
        return new Past(pages.signs(), pages.events(), Rulebase.of(pages.rules()));
    }

    /** The sign of this name. */
    public Optional<PastSign> sign(String id) {
        return Optional.ofNullable(signs.get(id));
    }

    /** The event of this name. */
    public Optional<PastEvent> event(String id) {
        return Optional.ofNullable(events.get(id));
    }

    public Collection<PastEvent> events() {
        return events.values();
    }

    public Collection<PastSign> signs() {
        return signs.values();
    }

    /** Reads the past from what a record says. The order of the facts is all one. */
    public Earlier read(Collection<? extends Fact> facts) {
        List<Earlier.Step> steps = new ArrayList<>();
        List<Earlier.Innocent> aside = new ArrayList<>();
        List<Fact> weighed = new ArrayList<>();
        for (Marks.Mark mark : rules.signs(facts).all()) {
            steps.add(new Earlier.Step(mark.owner() + ": " + mark.way(), mark.at(), mark.places()));
            PastSign sign = signs.get(mark.owner());
            if (mark.way().startsWith(SET_ASIDE)) {
                aside(new Earlier.Innocent(sign, mark.at(), sign.setAside().get(number(mark.way()) - 1), mark.places()), aside);
            } else {
                weighed.add(new Shown(mark.owner(), mark.at(), mark.told(), mark.places()));
            }
        }
        for (Fact fact : facts) {
            if (fact instanceof Stated said && said.of().equals(BUILD)) {
                weighed.add(fact);
            }
        }
        Map<String, List<Voice>> voices = new TreeMap<>();
        for (Marks.Mark mark : rules.events(weighed).all()) {
            steps.add(new Earlier.Step(mark.owner() + ": " + mark.way(), mark.at(), mark.places()));
            List<Voice> all = voices.computeIfAbsent(mark.owner(), e -> new ArrayList<>());
            Voice voice = voice(mark);
            if (!all.contains(voice)) {
                all.add(voice);
            }
        }
        List<Earlier.Happened> happened = new ArrayList<>();
        for (Map.Entry<String, List<Voice>> one : voices.entrySet()) {
            if (one.getValue().stream().anyMatch(Voice::speaksFor)) {
                PastEvent event = events.get(one.getKey());
                List<Voice> sorted = sorted(one.getValue());
                happened.add(new Earlier.Happened(event, Standing.of(sorted), sorted, looks(event, sorted, facts)));
            }
        }
        return new Earlier(List.copyOf(happened), List.copyOf(aside), List.copyOf(steps));
    }

    private static void aside(Earlier.Innocent one, List<Earlier.Innocent> all) {
        for (Earlier.Innocent other : all) {
            if (other.sign().equals(one.sign()) && other.at().equals(one.at()) && other.because().equals(one.because())) {
                return;
            }
        }
        all.add(one);
    }

    /** The last number of `set aside 2 by 1`. */
    private static int number(String way) {
        return Integer.parseInt(way.substring(way.lastIndexOf(' ') + 1));
    }

    private Voice voice(Marks.Mark mark) {
        String way = mark.way();
        if (way.equals(Voice.TOLD)) {
            return new Voice(true, false, Voice.TOLD, Voice.TOLD, Place.ENGINE, mark.told().isEmpty() ? "the owner or the papers"
                    : mark.told(), mark.places());
        }
        boolean speaksFor = way.startsWith(STRONGLY_FOR) || way.startsWith(WEAKLY_FOR);
        boolean strong = way.startsWith(STRONGLY_FOR) || way.startsWith(STRONGLY_AGAINST);
        String sign = way.substring(way.indexOf(':') + 2);
        return new Voice(speaksFor, strong, sign, signs.get(sign).family(), mark.at(), mark.told(), mark.places());
    }

    private static List<Voice> sorted(List<Voice> voices) {
        List<Voice> sorted = new ArrayList<>(voices);
        sorted.sort((a, b) -> {
            int order = Boolean.compare(b.speaksFor(), a.speaksFor());
            order = order != 0 ? order : Boolean.compare(b.strong(), a.strong());
            order = order != 0 ? order : a.sign().compareTo(b.sign());
            return order != 0 ? order : Natural.compare(a.at(), b.at());
        });
        return List.copyOf(sorted);
    }

    // --- what checks may ask of it

    /**
     * Whether a record asks its past to be read before any check: one of an engine that is looked at to buy. Elsewhere the
     * checks of each part ask for the looks by name, and nothing of this is loaded.
     */
    static boolean asked(Collection<? extends Fact> facts) {
        for (Fact fact : facts) {
            if (fact instanceof Stated said && said.what().equals("purpose") && said.of().equals(BUILD) && said.says().equals("buying")) {
                return true;
            }
        }
        return false;
    }

    /** The past in words that a check may match. They are facts like any other, and frozen. */
    List<Stated> words(Collection<? extends Fact> facts) {
        TreeMap<String, TreeSet<Where>> open = new TreeMap<>();
        TreeMap<String, TreeSet<Where>> quarrels = new TreeMap<>();
        TreeSet<Where> supported = new TreeSet<>();
        TreeSet<Where> strong = new TreeSet<>();
        TreeMap<String, List<Earlier.Happened>> byCylinder = new TreeMap<>();
        for (Earlier.Happened happened : read(facts).happened()) {
            String word = happened.event().word();
            for (Voice voice : happened.voices()) {
                boolean stands = happened.standing().compareTo(Standing.SUPPORTED) >= 0 && !happened.event().claim();
                if (voice.strong()) {
                    strong.addAll(voice.places());
                }
                if (stands && voice.speaksFor()) {
                    supported.addAll(voice.places());
                    String cylinder = cylinder(voice.at());
                    if (!cylinder.isEmpty() && !byCylinder.computeIfAbsent(cylinder, c -> new ArrayList<>()).contains(happened)) {
                        byCylinder.get(cylinder).add(happened);
                    }
                }
                if (stands && voice.speaksFor() && happened.looks().stream().anyMatch(Earlier.Look::open)) {
                    open.computeIfAbsent(word, w -> new TreeSet<>()).addAll(voice.places());
                }
                if (quarrels(voice, happened.voices())) {
                    quarrels.computeIfAbsent(word, w -> new TreeSet<>()).addAll(voice.places());
                }
            }
        }
        List<Stated> words = new ArrayList<>();
        if (!supported.isEmpty()) {
            words.add(stated("followed up", open.isEmpty() ? "yes" : "no", supported));
        }
        open.forEach((word, places) -> words.add(stated("event without follow-up", word, places)));
        struckAgain(byCylinder, words);
        if (!strong.isEmpty()) {
            words.add(stated("signs agree", quarrels.isEmpty() ? "yes" : "no", strong));
        }
        quarrels.forEach((word, places) -> words.add(stated("event in quarrel", word, places)));
        return words;
    }

    /** The number of the cylinder that a place belongs to; empty where it belongs to none. */
    private static String cylinder(String at) {
        String place = at.startsWith("big end ") ? at.substring("big end ".length()) : at;
        int blank = place.indexOf(' ');
        String first = blank < 0 ? place : place.substring(0, blank);
        return Character.isDigit(first.charAt(0)) ? first : "";
    }

    private void struckAgain(TreeMap<String, List<Earlier.Happened>> byCylinder, List<Stated> words) {
        TreeSet<Where> all = new TreeSet<>();
        List<Stated> again = new ArrayList<>();
        byCylinder.forEach((cylinder, events) -> {
            TreeSet<Where> places = new TreeSet<>();
            for (Earlier.Happened one : events) {
                for (Earlier.Happened other : events) {
                    if (one != other && !leads(one.event(), other.event()) && !leads(other.event(), one.event()) && !alike(one, other)) {
                        one.voices().stream().filter(v -> v.speaksFor() && v.strong()).forEach(v -> places.addAll(v.places()));
                    }
                }
                one.voices().forEach(v -> all.addAll(v.places()));
            }
            if (!places.isEmpty()) {
                again.add(stated("cylinder struck again", cylinder, places));
            }
        });
        if (!byCylinder.isEmpty()) {
            words.add(stated("events by cylinder", again.isEmpty() ? "spread" : "met", all));
            words.addAll(again);
        }
    }

    /** Whether two events share a sign, so that they may be two readings of one. */
    private static boolean alike(Earlier.Happened one, Earlier.Happened other) {
        return one.voices().stream().anyMatch(a -> a.speaksFor() && other.voices().stream()
                .anyMatch(b -> b.speaksFor() && b.sign().equals(a.sign())));
    }

    private boolean leads(PastEvent from, PastEvent to) {
        for (String next : from.leadsTo()) {
            if (next.equals(to.id()) || leads(events.get(next), to)) {
                return true;
            }
        }
        return false;
    }

    private static boolean quarrels(Voice one, List<Voice> voices) {
        for (Voice other : voices) {
            if (one.strong() && other.strong() && one.speaksFor() != other.speaksFor() && Place.related(one.at(), other.at())) {
                return true;
            }
        }
        return false;
    }

    private static Stated stated(String what, String says, Collection<Where> places) {
        return new Stated(BUILD, BUILD, Place.ENGINE, what, says, "", Map.of(), List.copyOf(places));
    }

    // --- the damage that follows

    private static List<Earlier.Look> looks(PastEvent event, List<Voice> voices, Collection<? extends Fact> facts) {
        List<Earlier.Look> looks = new ArrayList<>();
        for (PastEvent.Hidden hidden : event.hidden()) {
            Map<Fact, Earlier.How> by = new LinkedHashMap<>();
            boolean there = true;
            for (Fact fact : facts) {
                for (PastEvent.Looked never : hidden.unless()) {
                    there &= !(fact instanceof OnSheet) || !shows(fact, never);
                }
                if (!fact.places().isEmpty() && there(fact.at(), voices)) {
                    for (PastEvent.Looked looked : hidden.looked()) {
                        if (shows(fact, looked)) {
                            by.merge(fact, how(fact, looked), (x, y) -> x.compareTo(y) < 0 ? x : y);
                        }
                    }
                }
            }
            if (there) {
                List<Fact> sorted = new ArrayList<>(by.keySet());
                sorted.sort((a, b) -> compare(a.places(), b.places()));
                Map<Fact, Earlier.How> inOrder = new LinkedHashMap<>();
                sorted.forEach(f -> inOrder.put(f, by.get(f)));
                looks.add(new Earlier.Look(hidden, Collections.unmodifiableMap(inOrder)));
            }
        }
        return List.copyOf(looks);
    }

    private static Earlier.How how(Fact fact, PastEvent.Looked looked) {
        if (looked.renewed()) {
            return Earlier.How.RENEWED;
        }
        return fact instanceof Seen && looked.fault() ? Earlier.How.FOUND : Earlier.How.LOOKED_FOR;
    }

    private static int compare(List<Where> one, List<Where> other) {
        int order = one.get(0).compareTo(other.get(0));
        return order != 0 ? order : Integer.compare(one.size(), other.size());
    }

    /** Whether a look at this place is one at a place of the event. Cylinder 3 tells nothing of cylinder 2; a main may. */
    private static boolean there(String at, List<Voice> voices) {
        boolean comparable = false;
        for (Voice voice : voices) {
            if (voice.speaksFor()) {
                if (Place.related(voice.at(), at)) {
                    return true;
                }
                comparable |= axis(voice.at()).equals(axis(at));
            }
        }
        return !comparable;
    }

    private static String axis(String place) {
        if (place.startsWith("big end ") || Character.isDigit(place.charAt(0))) {
            return "cylinder";
        }
        return place.startsWith("main ") ? "main" : place;
    }

    private static boolean shows(Fact fact, PastEvent.Looked looked) {
        if (fact instanceof Value value) {
            return looked.fact().equals("Value") && value.told().isEmpty()
                    && (value.of().equals(looked.of()) || value.kind().equals(looked.of()));
        }
        if (fact instanceof Seen seen) {
            return looked.fact().equals("Seen") && seen.told().isEmpty() && seen.sign().equals(looked.what())
                    && (seen.of().equals(looked.of()) || seen.kind().equals(looked.of()));
        }
        if (fact instanceof NotSeen clear) {
            return looked.fact().equals("Seen") && clear.sign().equals(looked.what())
                    && (clear.of().equals(looked.of()) || clear.kind().equals(looked.of()));
        }
        if (fact instanceof OnSheet line) {
            return looked.fact().equals("OnSheet") && line.of().equals(looked.of()) && line.what().equals(looked.what())
                    && looked.says().contains(line.says());
        }
        if (fact instanceof Stated said && said.what().equals("figure")) {
            return looked.fact().equals("Value") && said.of().equals(looked.of()) && said.says().equals("good");
        }
        if (fact instanceof Stated said) {
            return looked.fact().equals("Stated") && said.told().isEmpty() && said.what().equals(looked.what())
                    && (said.of().equals(looked.of()) || said.kind().equals(looked.of()))
                    && (looked.says().isEmpty() || looked.says().contains(said.says()));
        }
        return false;
    }
}
