package leadlamp.past;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import leadlamp.audit.Audit;
import leadlamp.audit.Earlier;
import leadlamp.audit.Past;
import leadlamp.audit.PastEvent;
import leadlamp.audit.Standing;
import leadlamp.audit.Voice;
import leadlamp.facts.Fact;
import leadlamp.facts.OnSheet;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/** Puts the events of an engine's past in order, and finds what else would explain their signs. */
public final class Teller {
    private static final String JOINT = "joint";
    private static final Set<String> OPENED = Set.of("condition", "lengths", "lubricant", "thread-locker");

    private final Past past;
    private final Map<String, Earlier.Happened> happened = new LinkedHashMap<>();
    private final Map<String, Set<String>> reach = new HashMap<>();

    private Teller(Past past, Earlier earlier) {
        this.past = past;
        earlier.happened().forEach(h -> happened.put(h.event().id(), h));
    }

    /** The past of an audited build. */
    public static Story story(Audit audit, Past past) {
        Earlier earlier = past.read(audit.facts());
        return new Teller(past, earlier).tell(earlier, audit);
    }

    private Story tell(Earlier earlier, Audit audit) {
        List<Earlier.Happened> stand = new ArrayList<>();
        List<Story.Chapter> faint = new ArrayList<>();
        List<Story.Chapter> spent = new ArrayList<>();
        List<Story.Chapter> against = new ArrayList<>();
        List<Story.Chapter> claims = new ArrayList<>();
        for (Earlier.Happened one : happened.values()) {
            if (one.event().claim()) {
                boolean said = one.voices().stream().anyMatch(v -> v.sign().equals(Voice.TOLD));
                if (said || one.standing().compareTo(Standing.SUPPORTED) >= 0) {
                    claims.add(chapter(0, one, List.of()));
                }
            } else if (one.standing() == Standing.SPOKEN_AGAINST) {
                against.add(chapter(0, one, List.of()));
            } else if (one.standing() == Standing.WEAKLY_SUPPORTED) {
                Story.Chapter chapter = chapter(0, one, List.of());
                (chapter.explained().isEmpty() ? faint : spent).add(chapter);
            } else {
                stand.add(one);
            }
        }
        List<Story.Chapter> chapters = new ArrayList<>();
        List<PastEvent> told = new ArrayList<>();
        for (Earlier.Happened one : ordered(stand)) {
            List<PastEvent> after = new ArrayList<>();
            for (PastEvent before : told) {
                if (reached(before.id()).contains(one.event().id())) {
                    after.add(before);
                }
            }
            after.removeIf(before -> after.stream().anyMatch(nearer -> reached(before.id()).contains(nearer.id())));
            chapters.add(chapter(chapters.size() + 1, one, after));
            told.add(one.event());
        }
        Comparator<Story.Chapter> inLife = Comparator.comparing((Story.Chapter c) -> c.event().when()).thenComparing(c -> c.event().id());
        faint.sort(inLife);
        spent.sort(inLife);
        against.sort(inLife);
        claims.sort(inLife);
        return new Story(List.copyOf(chapters), List.copyOf(faint), List.copyOf(spent), List.copyOf(against), List.copyOf(claims), hands(audit),
                earlier.setAside(), earlier.steps());
    }

    // --- order

    /** Causes before what they lead to; where neither leads to the other, by the part of an engine's life, then by name. */
    private List<Earlier.Happened> ordered(List<Earlier.Happened> stand) {
        List<Earlier.Happened> ahead = new ArrayList<>(stand);
        ahead.sort(Comparator.comparing((Earlier.Happened h) -> h.event().when()).thenComparing(h -> h.event().id()));
        List<Earlier.Happened> ordered = new ArrayList<>();
        while (!ahead.isEmpty()) {
            for (Earlier.Happened one : ahead) {
                if (ahead.stream().noneMatch(other -> reached(other.event().id()).contains(one.event().id()))) {
                    ordered.add(one);
                    ahead.remove(one);
                    break;
                }
            }
        }
        return ordered;
    }

    /** All that an event leads to, straight or by way of others, whether or not those show a sign of their own. */
    private Set<String> reached(String id) {
        Set<String> known = reach.get(id);
        if (known == null) {
            known = new TreeSet<>();
            List<String> ahead = new ArrayList<>(past.event(id).orElseThrow().leadsTo());
            while (!ahead.isEmpty()) {
                String next = ahead.remove(ahead.size() - 1);
                if (known.add(next)) {
                    ahead.addAll(past.event(next).orElseThrow().leadsTo());
                }
            }
            reach.put(id, known);
        }
        return known;
    }

    // --- one event

    private Story.Chapter chapter(int number, Earlier.Happened one, List<PastEvent> after) {
        return new Story.Chapter(number, one.event(), one.standing(), spoken(one.voices()), after, fits(one), explained(one),
                one.looks());
    }

    /** One sign at several places is told once. */
    private List<Story.Spoken> spoken(List<Voice> voices) {
        Map<String, List<Voice>> alike = new LinkedHashMap<>();
        for (Voice voice : voices) {
            alike.computeIfAbsent(voice.speaksFor() + " " + voice.strong() + " " + voice.sign() + " " + voice.told(),
                    k -> new ArrayList<>()).add(voice);
        }
        List<Story.Spoken> spoken = new ArrayList<>();
        for (List<Voice> same : alike.values()) {
            Set<String> at = new LinkedHashSet<>();
            TreeSet<Where> places = new TreeSet<>();
            for (Voice voice : same) {
                at.add(voice.at());
                places.addAll(voice.places());
            }
            Voice first = same.get(0);
            spoken.add(new Story.Spoken(first.speaksFor(), first.strong(), past.sign(first.sign()).map(List::of).orElse(List.of()),
                    List.copyOf(at), first.told(), idle(same, voices), List.copyOf(places)));
        }
        return List.copyOf(spoken);
    }

    private static boolean idle(List<Voice> same, List<Voice> voices) {
        for (Voice one : same) {
            for (Voice other : voices) {
                if (one.speaksFor() || other.speaksFor() && Place.related(one.at(), other.at())) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Events that are named beside this one, on its page or on theirs, and that something speaks for. */
    private List<Story.Fits> fits(Earlier.Happened one) {
        Map<String, Story.Fits> fits = new LinkedHashMap<>();
        for (PastEvent.Else other : one.event().elses()) {
            fit(other.event(), other.tellApart(), fits);
        }
        for (Earlier.Happened other : happened.values()) {
            for (PastEvent.Else back : other.event().elses()) {
                if (back.event().equals(one.event().id())) {
                    fit(other.event().id(), back.tellApart(), fits);
                }
            }
        }
        List<Story.Fits> sorted = new ArrayList<>(fits.values());
        sorted.sort(Comparator.comparing(Story.Fits::standing).reversed());
        return List.copyOf(sorted);
    }

    private void fit(String id, String tellApart, Map<String, Story.Fits> fits) {
        Earlier.Happened other = happened.get(id);
        if (other != null && other.standing() != Standing.SPOKEN_AGAINST && !other.event().claim()) {
            fits.putIfAbsent(id, new Story.Fits(other.event(), other.standing(), tellApart));
        }
    }

    /** Better supported events, each of which explains every sign for this one, and none of them less strongly. */
    private List<PastEvent> explained(Earlier.Happened one) {
        Map<String, Boolean> signs = signsFor(one);
        List<PastEvent> explained = new ArrayList<>();
        for (Earlier.Happened other : happened.values()) {
            Map<String, Boolean> better = signsFor(other);
            boolean all = other.standing().compareTo(one.standing()) > 0 && !other.event().claim()
                    && other.standing().compareTo(Standing.SUPPORTED) >= 0;
            for (Map.Entry<String, Boolean> sign : signs.entrySet()) {
                all &= better.containsKey(sign.getKey()) && (better.get(sign.getKey()) || !sign.getValue());
            }
            if (all) {
                explained.add(other.event());
            }
        }
        return List.copyOf(explained);
    }

    /** The signs for an event, and whether each is a strong one. */
    private static Map<String, Boolean> signsFor(Earlier.Happened one) {
        Map<String, Boolean> signs = new TreeMap<>();
        for (Voice voice : one.voices()) {
            if (voice.speaksFor()) {
                signs.merge(voice.sign(), voice.strong(), Boolean::logicalOr);
            }
        }
        return signs;
    }

    // --- the earlier hand

    private List<Story.Hand> hands(Audit audit) {
        Map<String, String> behind = new TreeMap<>();
        Set<String> known = new TreeSet<>();
        for (Fact fact : audit.facts()) {
            if (fact instanceof OnSheet line && line.of().equals(JOINT) && line.what().equals("hidden by")) {
                behind.put(line.at(), line.says());
            }
        }
        for (Statement said : audit.build().statements()) {
            if (said.told().isEmpty() && opened(said)) {
                known.add(said.at());
            }
        }
        Map<String, TreeSet<Where>> covers = new TreeMap<>();
        for (Earlier.Happened one : happened.values()) {
            if (one.event().byHand() && one.standing().compareTo(Standing.SUPPORTED) >= 0) {
                for (Voice voice : one.voices()) {
                    if (voice.speaksFor() && !voice.sign().equals(Voice.TOLD)) {
                        cover(voice, behind, audit.build().statements(), covers);
                    }
                }
            }
        }
        List<Story.Hand> hands = new ArrayList<>();
        for (Map.Entry<String, TreeSet<Where>> cover : covers.entrySet()) {
            List<String> joints = new ArrayList<>();
            List<String> unseen = new ArrayList<>();
            for (Map.Entry<String, String> joint : behind.entrySet()) {
                if (joint.getValue().equals(cover.getKey())) {
                    joints.add(joint.getKey());
                    if (known.stream().noneMatch(k -> Place.related(k, joint.getKey()) && !k.equals(Place.ENGINE))) {
                        unseen.add(joint.getKey());
                    }
                }
            }
            hands.add(new Story.Hand(cover.getKey(), List.copyOf(joints), List.copyOf(unseen), List.copyOf(cover.getValue())));
        }
        return List.copyOf(hands);
    }

    /** Whether the line tells of a joint that was opened: its threads, its lengths or its torque. */
    private static boolean opened(Statement said) {
        return said.of().equals(JOINT) && OPENED.contains(said.what())
                || said.form() == Statement.Form.READ && said.of().startsWith(JOINT + " ");
    }

    /** Which closing steps the marked joint, or the joint of the marked part, stands behind. */
    private static void cover(Voice voice, Map<String, String> behind, List<Statement> statements,
            Map<String, TreeSet<Where>> covers) {
        Set<String> named = new TreeSet<>(List.of(voice.at()));
        for (Statement said : statements) {
            if (voice.places().contains(said.where())) {
                named.add(said.of());
            }
        }
        for (Map.Entry<String, String> joint : behind.entrySet()) {
            for (String name : named) {
                boolean at = !name.equals(Place.ENGINE) && name.contains(" to ") && Place.related(name, joint.getKey());
                if (at || joint.getKey().startsWith(name + " to ") || joint.getValue().equals(name + " fitted")) {
                    covers.computeIfAbsent(joint.getValue(), c -> new TreeSet<>()).addAll(voice.places());
                }
            }
        }
    }
}
