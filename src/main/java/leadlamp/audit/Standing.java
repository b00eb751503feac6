package leadlamp.audit;

import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import leadlamp.record.Place;

/**
 * How well an event of the past stands. It is worked out here and nowhere else, and is never more than support: no sign
 * proves an event.
 *
 * <p>A sign against answers the signs for the event at its own place, for it speaks of no other. A strong sign for it that
 * one strong sign answers is left as a weak one; two answer it wholly. A weak sign is answered by any sign against; a weak
 * sign never answers a strong one. Signs of one family have one cause and count once. Then: two strong families or more,
 * strongly supported; one, supported; weak signs alone, however many, weakly supported; nothing left, spoken against.
 *
 * <p>So a sign for it never lowers the standing, one against never raises it, and the order is all one.
 */
public enum Standing {
    SPOKEN_AGAINST("spoken against"), WEAKLY_SUPPORTED("weakly supported"), SUPPORTED("supported"),
    STRONGLY_SUPPORTED("strongly supported");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** How an event stands on these voices, of which one at least speaks for it. */
    static Standing of(Collection<Voice> voices) {
        Set<String> strong = new TreeSet<>();
        boolean weak = false;
        for (Voice voice : voices) {
            if (voice.speaksFor()) {
                int answers = answers(voice, voices, true);
                if (voice.strong() && answers == 0) {
                    strong.add(voice.family());
                } else if (voice.strong()) {
                    weak |= answers == 1;
                } else {
                    weak |= answers == 0 && answers(voice, voices, false) == 0;
                }
            }
        }
        if (strong.size() > 1) {
            return STRONGLY_SUPPORTED;
        }
        return !strong.isEmpty() ? SUPPORTED : weak ? WEAKLY_SUPPORTED : SPOKEN_AGAINST;
    }

    /** How many families of strong signs, or of weak ones, speak against the event where this voice stands. */
    private static int answers(Voice voice, Collection<Voice> voices, boolean strong) {
        Set<String> families = new TreeSet<>();
        for (Voice other : voices) {
            if (!other.speaksFor() && other.strong() == strong && Place.related(voice.at(), other.at())) {
                families.add(other.family());
            }
        }
        return families.size();
    }
}
