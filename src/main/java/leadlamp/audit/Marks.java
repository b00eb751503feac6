package leadlamp.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import leadlamp.facts.Fact;
import leadlamp.record.Place;
import leadlamp.record.Where;
import org.kie.api.runtime.rule.Match;

/** Where the rules of the past put what they matched. */
public final class Marks {
    private final List<Mark> marks = new ArrayList<>();

    /**
     * What one rule matched once.
     *
     * @param owner  the sign or the event that the rule belongs to
     * @param way    the rest of the rule's name
     * @param at     the place
     * @param told   who told what it rests on; empty where it is the builder's own knowledge
     * @param places its lines
     */
    record Mark(String owner, String way, String at, String told, List<Where> places) implements Comparable<Mark> {
        @Override
        public int compareTo(Mark other) {
            int order = owner.compareTo(other.owner);
            order = order != 0 ? order : way.compareTo(other.way);
            order = order != 0 ? order : Natural.compare(at, other.at);
            order = order != 0 ? order : told.compareTo(other.told);
            for (int i = 0; order == 0 && i < places.size() && i < other.places.size(); i++) {
                order = places.get(i).compareTo(other.places.get(i));
            }
            return order != 0 ? order : Integer.compare(places.size(), other.places.size());
        }
    }

    void told(Match match) {
        String name = match.getRule().getName();
        int colon = name.indexOf(": ");
        TreeSet<Where> places = new TreeSet<>();
        String told = "";
        for (Object object : match.getObjects()) {
            if (object instanceof Fact fact) {
                places.addAll(fact.places());
                told = told.isEmpty() ? fact.told() : told;
            }
        }
        Object at = match.getDeclarationIds().contains("$at") ? match.getDeclarationValue("$at") : Place.ENGINE;
        marks.add(new Mark(name.substring(0, colon), name.substring(colon + 2), at.toString(), told, List.copyOf(places)));
    }

    /** All, each once, in an order that does not hang on that of the facts. */
    List<Mark> all() {
        return List.copyOf(new TreeSet<>(marks));
    }
}
