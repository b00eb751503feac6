package leadlamp.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import leadlamp.words.Listed;

/**
 * The form that the places of a group have, as the vocabulary writes it: `NUMBER`, `main NUMBER`, `NUMBER SIDE`, `NAME`.
 * With it a longer place that the record names is cut to the place that the group asks: `1 top thrust` to `1`.
 */
final class PlaceForm {
    private static final Set<String> SIDES = Set.of("intake", "exhaust");
    private static final Set<String> BANKS = Set.of("left", "right");
    private static final Set<String> ENDS = Set.of("front", "rear", "middle");
    private static final Set<String> HALVES = Set.of("upper", "lower");
    private static final Set<String> RINGS = Set.of("first", "second", "oil");

    private final List<List<String>> forms = new ArrayList<>();
    private final boolean named;

    /** @param written as in groups.yaml: forms parted by a comma or `or`, and words that explain */
    PlaceForm(String written) {
        boolean name = false;
        for (String one : Listed.in(written.replace("; ", ", ").replace(", or ", ", ").replace(" or ", ", "))) {
            List<String> form = new ArrayList<>();
            String[] tokens = one.strip().split(" ");
            for (int i = 0; i < tokens.length; i++) {
                String token = tokens[i];
                if (token.equals("main") && i + 1 < tokens.length && tokens[i + 1].equals("NUMBER")) {
                    form.add("main");
                    i++;
                } else if (token.equals("big") && i + 2 < tokens.length) {
                    form.add("big end");
                    i += 2;
                } else if (isAxis(token)) {
                    form.add(token);
                } else {
                    break;
                }
            }
            name |= form.contains("NAME");
            if (!form.isEmpty() && !form.contains("NAME")) {
                forms.add(form);
            }
        }
        named = name;
        forms.sort((a, b) -> b.size() - a.size());
    }

    private static boolean isAxis(String token) {
        return switch (token) {
            case "NUMBER", "SIDE", "BANK", "END", "HALF", "RING", "NAME" -> true;
            default -> false;
        };
    }

    /** The place of the group that this place is, or belongs to; the place itself where it is of another form. */
    String cut(String place) {
        String[] tokens = place.split(" ");
        if (named) {
            return name(place, tokens);
        }
        List<String> axes = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (int i = 0; i < tokens.length; i++) {
            String token = tokens[i];
            if (token.equals("main") && i + 1 < tokens.length) {
                axes.add("main");
                words.add("main " + tokens[++i]);
            } else if (token.equals("big") && i + 2 < tokens.length && tokens[i + 1].equals("end")) {
                axes.add("big end");
                words.add("big end " + tokens[i + 2]);
                i += 2;
            } else if (token.equals("at")) {
                i++;
            } else {
                axes.add(axis(token));
                words.add(token);
            }
        }
        for (List<String> form : forms) {
            if (axes.containsAll(form)) {
                StringBuilder cut = new StringBuilder();
                for (String axis : form) {
                    cut.append(cut.isEmpty() ? "" : " ").append(words.get(axes.indexOf(axis)));
                }
                return cut.toString();
            }
        }
        return place;
    }

    /** The name of a joint without the number of its bolt, its row or its corner. */
    private static String name(String place, String[] tokens) {
        int to = List.of(tokens).indexOf("to");
        if (to <= 0) {
            return place;
        }
        int end = tokens.length;
        while (end > to + 2 && number(tokens[end - 1])) {
            end--;
        }
        if (end > to + 3 && tokens[end - 1].equals("side") && SIDES.contains(tokens[end - 2])) {
            end -= 2;
        }
        return String.join(" ", List.of(tokens).subList(0, end));
    }

    private static String axis(String token) {
        if (number(token)) {
            return "NUMBER";
        }
        return SIDES.contains(token) ? "SIDE" : BANKS.contains(token) ? "BANK" : ENDS.contains(token) ? "END"
                : HALVES.contains(token) ? "HALF" : RINGS.contains(token) ? "RING" : "";
    }

    private static boolean number(String token) {
        for (int i = 0; i < token.length(); i++) {
            if (token.charAt(i) < '0' || token.charAt(i) > '9') {
                return false;
            }
        }
        return !token.isEmpty();
    }
}
