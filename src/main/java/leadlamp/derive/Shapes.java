package leadlamp.derive;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.calc.Bearings;
import leadlamp.calc.Sets;
import leadlamp.facts.Value;
import leadlamp.record.Node;
import leadlamp.record.Place;

/** Sets of readings taken round and along one part, and those of its neighbours. */
final class Shapes {
    private Shapes() {
    }

    /** Readings in one direction at two heights or ends, so that a taper shows. */
    static Take along(String quantity) {
        return paired(quantity, true);
    }

    /** Readings at one height or end in two directions or at two angles, so that a shape out of round shows. */
    static Take around(String quantity) {
        return paired(quantity, false);
    }

    private static Take paired(String quantity, boolean along) {
        return new Take(quantity) {
            @Override
            String quantity() {
                return quantity;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> all = Take.all(quantity, 2).at(site, place);
                if (all.isEmpty()) {
                    return all;
                }
                List<Value> values = new ArrayList<>(all.get().values());
                values.removeIf(v -> along && says(v.at(), "unworn"));
                Map<String, Integer> groups = new LinkedHashMap<>();
                for (Value v : values) {
                    groups.merge(along ? way(v.at()) : level(v.at()), 1, Integer::sum);
                }
                values.removeIf(v -> groups.get(along ? way(v.at()) : level(v.at())) < 2);
                return values.size() < 2 ? Optional.empty() : Optional.of(new Slot(quantity, values, Slot.Reduce.MEAN));
            }
        };
    }

    /** Bores in the travel of rings and skirt; the unworn rim above it is left out. */
    static Take inTravel(String quantity, Slot.Reduce reduce) {
        return new Take(quantity) {
            @Override
            String quantity() {
                return quantity;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                Optional<Slot> slot = Take.least(quantity).at(site, place);
                if (slot.isEmpty()) {
                    return slot;
                }
                List<Value> values = new ArrayList<>(slot.get().values());
                values.removeIf(v -> says(v.at(), "unworn"));
                return values.isEmpty() ? Optional.empty()
                        : Optional.of(new Slot(quantity, values, values.size() == 1 ? Slot.Reduce.ONE : reduce));
            }
        };
    }

    /** The bores of the cylinder that a ring runs in: cylinder 2 of `2 first`. */
    static Take boresOfRing() {
        return new Take("cylinder bore") {
            @Override
            String quantity() {
                return "cylinder bore";
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                int blank = place.indexOf(' ');
                List<Value> values = new ArrayList<>(site.store.within("cylinder bore", blank < 0 ? place : place.substring(0, blank)));
                values.removeIf(v -> says(v.at(), "unworn") || !v.of().equals("cylinder bore"));
                return values.size() < 2 ? Optional.empty() : Optional.of(new Slot(name(), values, Slot.Reduce.MEAN));
            }
        };
    }

    /** Readings on both sides of a cap's joint, below and above 90 degrees from it. */
    static Take bothSides(String quantity) {
        return new Take(quantity) {
            @Override
            String quantity() {
                return quantity;
            }

            @Override
            Optional<Slot> at(Site site, String place) {
                return Take.all(quantity, 2).at(site, place).filter(slot -> {
                    boolean one = false;
                    boolean other = false;
                    for (Value v : slot.values()) {
                        one |= angle(v.at()) > 0 && angle(v.at()) < 90;
                        other |= angle(v.at()) > 90 && angle(v.at()) < 180;
                    }
                    return one && other;
                });
            }
        };
    }

    /** Mean of the readings on one side of the joint. */
    static double bySide(In v, String quantity, boolean below) {
        double[] all = v.all(quantity);
        List<String> places = v.placesOf(quantity);
        double sum = 0;
        int count = 0;
        for (int i = 0; i < all.length; i++) {
            double angle = angle(places.get(i));
            if (below ? angle > 0 && angle < 90 : angle > 90 && angle < 180) {
                sum += all[i];
                count++;
            }
        }
        return sum / count;
    }

    private static double angle(String place) {
        int at = (" " + place).indexOf(" at ");
        if (at < 0) {
            return Double.NaN;
        }
        String rest = place.substring(at + 3);
        int blank = rest.indexOf(' ');
        return number(blank < 0 ? rest : rest.substring(0, blank));
    }

    /** The largest of the differences along one direction. */
    static double alongOneWay(double[] readings, List<String> places) {
        int[] pair = taperPair(readings, places);
        return readings[pair[0]] - readings[pair[1]];
    }

    /** The largest of the differences at one height. */
    static double atOneHeight(double[] readings, List<String> places) {
        int[] pair = ovalityPair(readings, places);
        return readings[pair[0]] - readings[pair[1]];
    }

    static int[] taperPair(double[] readings, List<String> places) {
        return widest(readings, places, true);
    }

    static int[] ovalityPair(double[] readings, List<String> places) {
        return widest(readings, places, false);
    }

    private static int[] widest(double[] readings, List<String> places, boolean along) {
        int[] pair = {0, 0};
        double widest = -1;
        String[] lines = new String[readings.length];
        for (int i = 0; i < lines.length; i++) {
            lines[i] = along ? way(places.get(i)) : level(places.get(i));
        }
        for (int i = 0; i < readings.length; i++) {
            for (int j = 0; j < readings.length; j++) {
                if (i != j && readings[i] - readings[j] > widest && lines[i].equals(lines[j])) {
                    widest = readings[i] - readings[j];
                    pair[0] = i;
                    pair[1] = j;
                }
            }
        }
        return pair;
    }

    /** The place without its height or end: the direction or angle that is left. */
    private static String way(String place) {
        StringBuilder way = new StringBuilder();
        for (String word : Place.words(place)) {
            switch (word) {
                case "unworn", "top", "mid", "bottom", "front", "middle", "rear" -> {
                }
                default -> way.append(' ').append(word);
            }
        }
        return way.toString();
    }

    /** The place without its direction, angle or quarter: the height or end that is left. */
    private static String level(String place) {
        StringBuilder level = new StringBuilder();
        List<String> words = Place.words(place);
        for (int i = 0; i < words.size(); i++) {
            switch (words.get(i)) {
                case "thrust", "pin" -> {
                }
                case "at" -> i++;
                default -> level.append(' ').append(words.get(i));
            }
        }
        return level.toString();
    }

    private static boolean says(String place, String word) {
        return (" " + place + " ").contains(" " + word + " ");
    }

    static String greatestLessLeast(In v, String name, int[] pair) {
        double[] all = v.all(name);
        List<String> places = v.placesOf(name);
        return v.show(all[pair[0]], name) + " at " + places.get(pair[0]) + " - " + v.show(all[pair[1]], name) + " at "
                + places.get(pair[1]);
    }

    /** The figures of one name, one after the other. */
    static String list(In v, String name) {
        StringBuilder list = new StringBuilder();
        for (double figure : v.all(name)) {
            list.append(list.length() == 0 ? "" : " and ").append(v.show(figure, name));
        }
        return list.toString();
    }

    /** The figures of one name, each with the same words before it: {@code - wall 1.480 mm - wall 1.480 mm}. */
    static String each(In v, String name, String before) {
        StringBuilder each = new StringBuilder();
        for (double figure : v.all(name)) {
            each.append(before).append(v.show(figure, name));
        }
        return each.toString();
    }

    /** How far two figures lie apart, the greater first, in the unit of a third. */
    static String apart(In v, double one, String nameOfOne, double other, String nameOfOther, String like) {
        String first = nameOfOne + v.show(one, like);
        String second = nameOfOther + v.show(other, like);
        return one >= other ? first + " - " + second : second + " - " + first;
    }

    /** The two runouts as sides of a triangle and the angle between their high spots. */
    static String neighbours(In v) {
        double[] runouts = v.all("main journal runout");
        double[] angles = v.all("main journal runout angle");
        List<String> anglePlaces = v.placesOf("main journal runout angle");
        double worst = -1;
        String text = "";
        for (int i = 1; i < runouts.length; i++) {
            int j = anglePlaces.indexOf(v.placesOf("main journal runout").get(i));
            double apart = j > 0 ? Bearings.adjacentRunout(runouts[0], angles[0], runouts[i], angles[j]) : -1;
            if (apart > worst) {
                worst = apart;
                String one = v.show(runouts[0], "main journal runout");
                String other = v.show(runouts[i], "main journal runout");
                text = "root of (" + one + " squared + " + other + " squared - 2 x " + one + " x " + other + " x cos "
                        + v.show(Math.abs(angles[0] - angles[j]), "main journal runout angle") + ")";
            }
        }
        return text;
    }

    /** Each place's sum of two quantities, as piston and pin; where the second is not there, the first alone. */
    static double[] together(In v, String one, String other) {
        double[] sums = v.all(one);
        if (!v.has(other)) {
            return sums;
        }
        double[] more = v.all(other);
        List<String> places = v.placesOf(one);
        List<String> otherPlaces = v.placesOf(other);
        for (int i = 0; i < sums.length; i++) {
            int j = otherPlaces.indexOf(places.get(i));
            if (j >= 0) {
                sums[i] += more[j];
            }
        }
        return sums;
    }

    /** The readings of a set that are not of this place. */
    static double[] others(In v, String here, String all) {
        double[] figures = v.all(all);
        List<String> places = v.placesOf(all);
        List<Double> rest = new ArrayList<>();
        for (int i = 0; i < figures.length; i++) {
            if (!Place.covers(v.place(), places.get(i))) {
                rest.add(figures[i]);
            }
        }
        double[] others = new double[rest.size()];
        for (int i = 0; i < others.length; i++) {
            others[i] = rest.get(i);
        }
        return others;
    }

    /** The mean of each place of the group, where a place has several readings. */
    static double[] means(In v, String name, String group) {
        double[] figures = v.all(name);
        int[] place = v.sharing(name, group);
        int count = 0;
        for (int p : place) {
            count = Math.max(count, p + 1);
        }
        double[] means = new double[count];
        int[] readings = new int[count];
        for (int i = 0; i < figures.length; i++) {
            means[place[i]] += figures[i];
            readings[place[i]]++;
        }
        for (int i = 0; i < count; i++) {
            means[i] /= readings[i];
        }
        return means;
    }

    /** The greatest runout of a main against one beside it. */
    static double worstNeighbour(In v) {
        double[] runouts = v.all("main journal runout");
        double[] angles = v.all("main journal runout angle");
        List<String> runoutPlaces = v.placesOf("main journal runout");
        List<String> anglePlaces = v.placesOf("main journal runout angle");
        double worst = 0;
        for (int i = 1; i < runouts.length; i++) {
            int j = anglePlaces.indexOf(runoutPlaces.get(i));
            if (j > 0) {
                worst = Math.max(worst, Bearings.adjacentRunout(runouts[0], angles[0], runouts[i], angles[j]));
            }
        }
        return worst;
    }

    /**
     * Difference of two neighbours at their nearest points: six o'clock of the one in front and twelve o'clock of the one
     * behind, twelve being to the front; where they were not read so, of their means.
     */
    static double betweenNeighbours(In v, String name) {
        double[] points = pointsOfNeighbours(v, name);
        return Math.abs(points[0] - points[1]);
    }

    /** The two heights that were held against each other. */
    static String nearestPoints(In v, String name) {
        double[] points = pointsOfNeighbours(v, name);
        return apart(v, points[0], "", points[1], "", name) + " (nearest points of " + v.place() + ")";
    }

    private static double[] pointsOfNeighbours(In v, String name) {
        String pair = v.place();
        String one = pair.substring(0, pair.indexOf(" and "));
        double[] all = v.all(name);
        List<String> places = v.placesOf(name);
        int behind = places.indexOf(one + " six o'clock");
        int front = -1;
        double first = 0;
        double second = 0;
        int firsts = 0;
        int seconds = 0;
        for (int i = 0; i < all.length; i++) {
            if (Place.covers(one, places.get(i))) {
                first += all[i];
                firsts++;
            } else {
                front = places.get(i).endsWith(" twelve o'clock") ? i : front;
                second += all[i];
                seconds++;
            }
        }
        return behind >= 0 && front >= 0 ? new double[] {all[behind], all[front]} : new double[] {first / firsts, second / seconds};
    }

    /** The big ends on one crankpin, this one first. */
    static List<String> sharing(Site site, String bigEnd) {
        List<String> together = new ArrayList<>(List.of(bigEnd));
        if (!bigEnd.startsWith("big end ")) {
            return together;
        }
        String number = bigEnd.substring(8);
        Optional<Node> pins = site.build.sheet().below("layout", "crankpins");
        if (pins.isPresent() && pins.get() instanceof Node.Items items) {
            for (Node pin : items.items()) {
                if (pin instanceof Node.Items cylinders) {
                    List<String> numbers = new ArrayList<>();
                    for (Node cylinder : cylinders.items()) {
                        if (cylinder instanceof Node.Scalar scalar) {
                            numbers.add(scalar.text());
                        }
                    }
                    if (numbers.remove(number)) {
                        numbers.forEach(n -> together.add("big end " + n));
                    }
                }
            }
        }
        return together;
    }

    /** A whole number; nought where the text is none. */
    static int number(String text) {
        int number = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < '0' || c > '9') {
                return number;
            }
            number = Math.min(1_000_000, number * 10 + c - '0');
        }
        return number;
    }
}
