package leadlamp.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import leadlamp.words.Vocabulary;

/** Reads what stands after `at:` into whole places, against the places that the engine sheet gives. */
final class Places {
    private static final String ENGINE = Place.ENGINE;
    private static final String AND = " and ";
    private static final String ROW = " side";

    private final EngineSheet.Layout layout;
    private final Map<String, String> synonyms;
    private final Set<String> names;
    private final Map<String, String> normal = new HashMap<>();
    private final Complaints complaints;

    /**
     * @param names names that are places of their own: joints, sensors ... of the sheet, and joints that the record names
     */
    Places(EngineSheet.Layout layout, Vocabulary words, Set<String> names, Complaints complaints) {
        this.layout = layout;
        this.synonyms = words.placeSynonyms();
        this.names = names;
        this.complaints = complaints;
    }

    /** The places of a group as far as the sheet gives them. */
    Optional<List<String>> of(String group) {
        return group.equals("engine") ? Optional.of(List.of(ENGINE)) : layout.places(group);
    }

    /**
     * The places meant. Empty where something was wrong, which has then been said.
     *
     * @param at      what stands after `at:`
     * @param group   the group of the subject
     * @param subject what the entry is about, for the message
     * @param here    where the entry stands
     */
    List<String> read(Optional<Node> at, String group, String subject, Where here) {
        Optional<List<String>> known = of(group).map(places -> own(places, subject));
        if (at.isEmpty()) {
            if (known.isEmpty()) {
                return List.of(ENGINE);
            }
            List<String> places = known.get();
            if (places.size() == 1) {
                return places;
            }
            if (places.isEmpty()) {
                return List.of(ENGINE);
            }
            complaints.add(here, subject.length(), "Which " + subject + "? This engine has " + places.size() + ".",
                    "Write `at: each` if it holds of all of them, or `at:` and one of: " + Complaints.some(places),
                    Optional.empty(), "The entry was left out.");
            return List.of();
        }
        Node node = at.get();
        if (node instanceof Node.Scalar scalar) {
            return scalar(scalar, known, group, subject);
        }
        if (node instanceof Node.Items items) {
            Set<String> all = new LinkedHashSet<>();
            for (Node item : items.items()) {
                if (item instanceof Node.Scalar scalar) {
                    List<String> some = scalar(scalar, known, group, subject);
                    if (some.isEmpty()) {
                        return List.of();
                    }
                    all.addAll(some);
                } else {
                    complaints.add(item.where(), 0, "A place is a word or two, not a list or a map.", "", Optional.empty(),
                            "The entry was left out.");
                    return List.of();
                }
            }
            return List.copyOf(all);
        }
        Node.Fields fields = (Node.Fields) node;
        if (fields.fields().size() == 1) {
            Node.Field field = fields.fields().get(0);
            if (field.key().equals("one of") || field.key().equals("some of")) {
                List<String> of = read(Optional.of(field.value()), group, subject, here);
                return of.isEmpty() ? of : List.of(field.key() + " " + String.join(", ", of));
            }
        }
        complaints.add(node.where(), 0, "This is no place.", "A place, a list of places, `each`, or { one of: [places] }.",
                Optional.empty(), "The entry was left out.");
        return List.of();
    }

    /** Of places that are names those that begin with the part's own: `cam seal` lives at cam seal intake, not at rear crank seal. */
    private static List<String> own(List<String> places, String subject) {
        List<String> own = new ArrayList<>();
        for (String place : places) {
            if (place.equals(subject) || goesOn(place, subject)) {
                own.add(place);
            }
        }
        return own.isEmpty() ? places : own;
    }

    private List<String> scalar(Node.Scalar scalar, Optional<List<String>> known, String group, String subject) {
        String text = plain(scalar.text());
        if (text.equals("each") || text.equals("all")) {
            return known.map(List::copyOf).filter(p -> !p.isEmpty()).orElse(List.of(ENGINE));
        }
        for (String untold : List.of("one of ", "some of ")) {
            if (text.startsWith(untold)) {
                String rest = text.substring(untold.length());
                List<String> of = scalar(new Node.Scalar(rest, scalar.where()), known, group, subject);
                return of.isEmpty() ? of : List.of(untold + (of.equals(List.of(ENGINE)) ? "each" : String.join(", ", of)));
            }
        }
        if (names.contains(text) || known.isPresent() && known.get().contains(text)) {
            return List.of(text);
        }
        if (text.startsWith("each ")) {
            String word = normal(text.substring(5));
            List<String> some = new ArrayList<>();
            for (String place : known.orElse(List.of())) {
                if (Place.covers(word, place)) {
                    some.add(place);
                }
            }
            if (known.isEmpty()) {
                return List.of(word);
            }
            if (some.isEmpty()) {
                wrong(scalar, known.get(), subject);
            }
            return some;
        }
        if (text.indexOf(',') >= 0) {
            Set<String> all = new LinkedHashSet<>();
            for (String part : text.split(",")) {
                List<String> one = scalar(new Node.Scalar(part.strip(), scalar.where()), known, group, subject);
                if (one.isEmpty()) {
                    return List.of();
                }
                all.addAll(one);
            }
            return List.copyOf(all);
        }
        List<String> places = one(text, known, group);
        if (places.isEmpty()) {
            wrong(scalar, known.orElse(List.of()), subject);
        }
        return places;
    }

    /** One place in the builder's words: the places that it means; none where it means nothing. */
    List<String> one(String written, Optional<List<String>> known, String group) {
        String plain = plain(written);
        if (names.contains(plain)) {
            return List.of(plain);
        }
        String text = normal(plain);
        if (beyond(text).isPresent()) {
            return List.of();
        }
        if (text.equals(ENGINE)) {
            return List.of(text);
        }
        if (known.isEmpty()) {
            return begunWith(text).isEmpty() || ofName(text, names) ? List.of(prefixed(text, group)) : List.of();
        }
        List<String> places = known.get();
        if (places.contains(text)) {
            return List.of(text);
        }
        List<String> ending = new ArrayList<>();
        String asAnEnd = " ".concat(text);
        for (String place : places) {
            if (place.endsWith(asAnEnd)) {
                ending.add(place);
            }
        }
        if (ending.size() == 1) {
            return ending;
        }
        String full = prefixed(text, group);
        if (places.equals(List.of(ENGINE)) && Place.isOfWords(full) && !Character.isDigit(full.charAt(0))) {
            return bearingThere(full) ? List.of(Place.inOrder(full)) : List.of();
        }
        List<String> within = new ArrayList<>();
        Place wanted = Place.of(full);
        for (String place : places) {
            Place there = Place.of(place);
            boolean holdsThere = wanted.covers(there);
            boolean holdsHere = there.covers(wanted);
            if (holdsThere && holdsHere) {
                return List.of(place);
            }
            if (holdsHere && !place.equals(ENGINE) && (Place.divides(place, full) || group.equals("each camshaft") && camBearing(full))) {
                return List.of(Place.inOrder(full));
            }
            if (holdsThere) {
                within.add(place);
            }
        }
        if (!within.isEmpty()) {
            return within;
        }
        int last = text.lastIndexOf(' ');
        if (last > 0 && Character.isDigit(text.charAt(last + 1)) && !Character.isDigit(text.charAt(0))) {
            List<String> turned = one(text.substring(last + 1) + " " + text.substring(0, last), known, group);
            if (!turned.isEmpty()) {
                return turned;
            }
        }
        if (two(full, known, group) || ofName(full, names)) {
            return List.of(full);
        }
        return List.of();
    }

    /** A camshaft may be looked at by its bearings: `intake 3`. */
    private boolean camBearing(String full) {
        return layout.places("each cam bearing").filter(places -> places.contains(Place.inOrder(full))).isPresent();
    }

    /** Whether the engine has the main or the big end that is named of what it has once: a crankshaft is looked at by them. */
    private boolean bearingThere(String full) {
        for (String word : List.of("main ", "big end ")) {
            boolean named = full.startsWith(word) && full.length() > word.length() && Character.isDigit(full.charAt(word.length()));
            Optional<List<String>> bearings = named ? layout.places(word.equals("main ") ? "each main bearing" : "each big end")
                    : Optional.empty();
            if (bearings.isPresent() && !Place.covered(bearings.get(), full)) {
                return false;
            }
        }
        return true;
    }

    /** Whether it is two places in one, each of which is there: `1 and 2`, `big end 1 and 2`. */
    private boolean two(String full, Optional<List<String>> known, String group) {
        int and = full.indexOf(AND);
        if (and < 0) {
            return false;
        }
        String first = full.substring(0, and);
        String second = first.substring(0, first.lastIndexOf(' ') + 1) + full.substring(and + AND.length());
        return !second.contains(AND) && !one(first, known, group).isEmpty() && !one(second, known, group).isEmpty();
    }

    /** A joint, and the number after it that is above what the sheet counts there. */
    private record Beyond(String joint, int number, int counted) {
    }

    /** Empty where the text names no bolt of a joint, or one that may be there. */
    private Optional<Beyond> beyond(String text) {
        String joint = "";
        for (String name : text.contains(" to ") ? names : Set.<String>of()) {
            joint = name.length() > joint.length() && name.contains(" to ") && goesOn(text, name) ? name : joint;
        }
        if (joint.isEmpty()) {
            return Optional.empty();
        }
        int number = number(text.substring(joint.length() + 1));
        OptionalInt counted = number < 0 ? OptionalInt.empty() : layout.counted(joint);
        return counted.isEmpty() || number > 0 && number <= counted.getAsInt() ? Optional.empty() : Optional.of(new Beyond(joint, number, counted.getAsInt()));
    }

    /** The number that a text begins with; -1 where it begins with none, or with one of more than three digits. */
    static int number(String text) {
        int end = text.indexOf(' ') < 0 ? text.length() : text.indexOf(' ');
        int number = 0;
        for (int i = 0; i < end; i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9 || i > 2) {
                return -1;
            }
            number = 10 * number + digit;
        }
        return end == 0 ? -1 : number;
    }

    /** Says so where the text names a bolt of a joint above the sheet's count; whether it does. */
    boolean refusesBolt(String text, Where where, String rest) {
        Optional<Beyond> beyond = beyond(normal(plain(text)));
        beyond.ifPresent(b -> complaints.add(where, text.length(), "There is no number " + b.number() + " at " + b.joint() + " in this engine.",
                "The engine sheet counts " + b.counted() + " there.", Optional.empty(), rest));
        return beyond.isPresent();
    }

    /** Whether a text begins with a name and goes on with more words. */
    private static boolean goesOn(String text, String name) {
        return text.length() > name.length() && text.charAt(name.length()) == ' ' && text.startsWith(name);
    }

    /** The joints that a text begins with and goes on. */
    private List<String> begunWith(String text) {
        List<String> begun = new ArrayList<>();
        for (String name : names) {
            if (goesOn(text, name) && name.contains(" to ")) {
                begun.add(name);
            }
        }
        return begun;
    }

    /** Whether it begins with one of the names and goes on with words of a place: a bolt, a row, a corner of it. */
    static boolean ofName(String full, Set<String> names) {
        for (String name : names) {
            if (goesOn(full, name)) {
                String rest = full.substring(name.length() + 1);
                if (Place.isOfWords(rest.endsWith(ROW) ? rest.substring(0, rest.length() - ROW.length()) : rest)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static String prefixed(String text, String group) {
        if (!text.isEmpty() && Character.isDigit(text.charAt(0))) {
            if (group.contains("main bearing")) {
                return "main " + text;
            }
            if (group.equals("each big end") || group.equals("each crankpin") || group.equals("each rod bolt")) {
                return "big end " + text;
            }
        }
        return text;
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    /** The words of a place put for their synonyms, the sheet's names of cylinders among them. */
    private String normal(String text) {
        String known = normal.get(text);
        if (known == null) {
            known = put(text);
            normal.put(text, known);
        }
        return known;
    }

    private String put(String text) {
        String[] words = text.split(text.contains("  ") ? " +" : " ");
        StringBuilder normal = new StringBuilder();
        for (int i = 0; i < words.length;) {
            String put = null;
            int length = 1;
            for (int n = Math.min(3, words.length - i); n >= 1 && put == null; n--) {
                String phrase = String.join(" ", List.of(words).subList(i, i + n));
                put = i == 0 && n == 1 && layout.cylinderNames().containsKey(phrase) && !names.contains(text)
                        ? layout.cylinderNames().get(phrase) : synonyms.get(phrase);
                length = put == null ? 1 : n;
            }
            normal.append(normal.isEmpty() ? "" : " ").append(put == null ? words[i] : put);
            i += length;
        }
        return normal.toString();
    }

    private void wrong(Node.Scalar scalar, List<String> known, String subject) {
        if (refusesBolt(scalar.text(), scalar.where(), "The entry was left out.")) {
            return;
        }
        Optional<String> nearest = Vocabulary.nearest(scalar.text(), known);
        String text = plain(scalar.text());
        for (String joint : begunWith(text)) {
            nearest = nearest.isEmpty() || goesOn(text, nearest.get()) && joint.length() > nearest.get().length()
                    ? Optional.of(joint) : nearest;
        }
        complaints.add(scalar.where(), scalar.text().length(),
                "\"" + scalar.text() + "\" is no place of " + subject + (known.isEmpty() ? "" : " in this engine") + ".",
                known.isEmpty() ? "" : "Places of " + subject + ": " + Complaints.some(known), nearest, "The entry was left out.");
    }
}
