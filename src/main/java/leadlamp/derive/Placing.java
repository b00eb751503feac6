package leadlamp.derive;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlamp.record.Place;
import leadlamp.words.Quantity;

/**
 * Where a value is worked out: the places of its group that the sheet gives, and those that the record names, so that a
 * bore that was read counts however thin the sheet.
 */
final class Placing {
    private final Site site;
    private final Derived entry;
    private final Quantity quantity;

    Placing(Site site, Derived entry, Quantity quantity) {
        this.site = site;
        this.entry = entry;
        this.quantity = quantity;
    }

    Set<String> places() {
        Set<String> places = new LinkedHashSet<>();
        if (entry.places().isPresent()) {
            places.addAll(entry.places().get().of(site));
            return places;
        }
        if (quantity.group().equals(Place.ENGINE)) {
            places.add(Place.ENGINE);
            untold(places);
            return places;
        }
        Optional<List<String>> given = site.places(quantity.group());
        given.ifPresent(places::addAll);
        for (Take take : entry.takes()) {
            if (take.isOptional() || take.quantity().isEmpty() || !take.placed()) {
                continue;
            }
            for (String at : site.store.places(take.quantity())) {
                if (!Store.untold(at) && !at.equals(Place.ENGINE)) {
                    named(places, at);
                }
            }
        }
        untold(places);
        if (places.isEmpty() && given.isEmpty()) {
            places.add(Place.ENGINE);
        }
        return places;
    }

    /** A place that the record names and the sheet does not give. */
    private void named(Set<String> places, String at) {
        String shorter = shortened(at, quantity.group());
        if (shorter.isEmpty() || places.contains(shorter)) {
            return;
        }
        for (String place : places) {
            if (site.related(place, shorter)) {
                return;
            }
        }
        places.add(shorter);
    }

    /** Places of which it is not told which one is meant: there too a figure may stand, as the least of all. */
    private void untold(Set<String> places) {
        for (Take take : entry.takes()) {
            if (!take.quantity().isEmpty() && !take.isOptional()) {
                for (String at : site.store.places(take.quantity())) {
                    if (Store.untold(at)) {
                        places.add(at);
                    }
                }
            }
        }
    }

    /** The part of a place that the group names: cylinder 1 of `1 top thrust`; empty where it is of another kind. */
    static String shortened(String at, String group) {
        List<String> words = Place.words(at);
        boolean main = words.size() > 1 && words.get(0).equals("main") && number(words.get(1));
        boolean bigEnd = words.size() > 2 && words.get(0).equals("big") && words.get(1).equals("end") && number(words.get(2));
        return switch (group) {
            case "each cylinder", "each liner" -> number(words.get(0)) ? words.get(0) : bigEnd ? words.get(2) : "";
            case "each main bearing", "each fed main bearing" -> main ? "main " + words.get(1) : "";
            case "each big end", "each crankpin" -> bigEnd ? "big end " + words.get(2) : "";
            case "each plain bearing", "each roller bearing", "each cap" -> main ? "main " + words.get(1)
                    : bigEnd ? "big end " + words.get(2) : "";
            case "each shell" -> main && words.size() > 2 ? "main " + words.get(1) + " " + words.get(2)
                    : bigEnd && words.size() > 3 ? "big end " + words.get(2) + " " + words.get(3) : "";
            case "each rod bolt" -> bigEnd && words.size() > 3 && number(words.get(3)) ? at : "";
            case "each piston ring" -> number(words.get(0)) && words.size() == 2 ? at : "";
            case "each valve", "each valve with solid lash", "each lash adjuster", "each pushrod" ->
                number(words.get(0)) && words.size() > 1 ? at : "";
            case "each pair of cylinders" -> at.contains(" and ") ? at : "";
            case "each head", "each bank", "each timing drive" -> words.get(0).equals("left") || words.get(0).equals("right")
                    ? words.get(0) : "";
            default -> at;
        };
    }

    private static boolean number(String word) {
        return !word.isEmpty() && Character.isDigit(word.charAt(0));
    }
}
