package leadlamp.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import leadlamp.audit.Gap;
import leadlamp.facts.Ask;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Dimension;
import leadlamp.rank.Order;
import leadlamp.rank.Want;
import leadlamp.record.Place;
import leadlamp.words.GaugeKind;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** How places, gaps, limits and wants are said. */
public final class Wording {
    /** What is numbered by itself; every other bare number is that of a cylinder. */
    private static final Set<String> NUMBERED = Set.of("turbocharger", "throttle", "carburettor", "injector", "coil",
            "friction disc", "gearbox dowel");
    private static final String EACH = "each ";
    private static final String JOINT = "joint";
    private static final String THE_SHEET = "the engine sheet";

    private final Vocabulary words;

    Wording(Vocabulary words) {
        this.words = words;
    }

    /** A place as it stands alone: `cylinder 1 intake`, `main 3`, `engine`. */
    public static String place(String group, String at) {
        return at.isEmpty() || !digit(at.charAt(0)) ? at : noun(group) + " " + at;
    }

    /** What is asked of, and where: `cylinder bore at cylinder 1`. */
    static String place(String group, Ask ask) {
        if (ask.of().isEmpty() || ask.of().equals(ask.at())) {
            return place(group, ask.at());
        }
        return ask.at().equals(Place.ENGINE) ? ask.of() : ask.of() + " at " + place(group, ask.at());
    }

    private static String noun(String group) {
        String one = group.startsWith(EACH) ? group.substring(EACH.length()) : "";
        return NUMBERED.contains(one) ? one : "cylinder";
    }

    /** Several places as they stand in a record: `cylinder 1, 2 and 3`; nothing for the engine as a whole. */
    static String places(List<String> places) {
        return places("", places);
    }

    /** The same, of a check that is asked of this group. */
    static String places(String group, List<String> places) {
        List<String> said = new ArrayList<>();
        for (String at : places) {
            said.add(place(group, at));
        }
        return together(said);
    }

    /** Several places as they are said, what they share said once: `cylinder 1, 2 and 3, each intake and exhaust`. */
    public static String together(List<String> places) {
        Map<String, List<String>> byHead = new LinkedHashMap<>();
        for (String at : places) {
            if (!at.equals(Place.ENGINE) && !at.isEmpty()) {
                int number = firstNumber(at);
                byHead.computeIfAbsent(number < 0 ? at : at.substring(0, number), h -> new ArrayList<>())
                        .add(number < 0 ? "" : at.substring(number));
            }
        }
        List<String> said = new ArrayList<>();
        for (Map.Entry<String, List<String>> one : byHead.entrySet()) {
            said.add(one.getKey() + numbered(one.getValue()));
        }
        boolean lists = said.size() > 1 && said.stream().anyMatch(text -> text.contains(" and "));
        return lists ? String.join("; ", said) : join(said);
    }

    /** `1`, `2 intake front`: numbers that have the same rests are said together. */
    private static String numbered(List<String> places) {
        Map<String, List<String>> rests = new LinkedHashMap<>();
        for (String place : places) {
            int blank = place.indexOf(' ');
            rests.computeIfAbsent(blank < 0 ? place : place.substring(0, blank), n -> new ArrayList<>())
                    .add(blank < 0 ? "" : place.substring(blank + 1));
        }
        Map<String, List<String>> numbers = new LinkedHashMap<>();
        for (Map.Entry<String, List<String>> one : rests.entrySet()) {
            List<String> named = new ArrayList<>(one.getValue());
            // A number that stands by itself as well as with a rest is said by itself.
            if (named.removeIf(String::isEmpty)) {
                numbers.computeIfAbsent("", r -> new ArrayList<>()).add(one.getKey());
            }
            if (!named.isEmpty()) {
                numbers.computeIfAbsent(join(named), r -> new ArrayList<>()).add(one.getKey());
            }
        }
        List<String> said = new ArrayList<>();
        for (Map.Entry<String, List<String>> one : numbers.entrySet()) {
            boolean several = one.getValue().size() > 1 && one.getKey().length() > 0;
            said.add(join(one.getValue()) + (several ? ", each " : one.getKey().isEmpty() ? "" : " ") + one.getKey());
        }
        return String.join("; ", said);
    }

    /** Where the first word that is a number begins; -1 where there is none. */
    private static int firstNumber(String place) {
        int at = 0;
        while (at >= 0 && at < place.length()) {
            int end = place.indexOf(' ', at);
            if (number(place, at, end < 0 ? place.length() : end)) {
                return at;
            }
            at = end < 0 ? -1 : end + 1;
        }
        return -1;
    }

    private static boolean number(String text, int from, int to) {
        for (int i = from; i < to; i++) {
            if (!digit(text.charAt(i))) {
                return false;
            }
        }
        return to > from;
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }

    /** `a`, `a and b`, `a, b and c`. */
    public static String join(List<String> words) {
        return join(words, " and ");
    }

    private static String join(List<String> words, String last) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < words.size(); i++) {
            text.append(i == 0 ? "" : i == words.size() - 1 ? last : ", ").append(words.get(i));
        }
        return text.toString();
    }

    /** Whose number it is, for the foot of a finding. */
    static String whose(LimitUsed limit) {
        String text = switch (limit.whose()) {
            case SHEET -> "from the engine sheet" + (limit.basis().isEmpty() || limit.basis().equals(THE_SHEET) ? ""
                    : ", " + limit.basis());
            case SUPPLIER -> "from the supplier of the part, before the sheet";
            case TRADE -> "the trade's number, for the sheet is silent: " + limit.basis();
        };
        String reason = limit.reason() ? "; a reason to look, not a limit" : "";
        return text + reason + (limit.note().isEmpty() ? "" : "; " + limit.note());
    }

    /** Whose a limit is, in one word. */
    static String owner(LimitUsed.Whose whose) {
        return switch (whose) {
            case SHEET -> "sheet";
            case SUPPLIER -> "supplier";
            case TRADE -> "trade";
        };
    }

    /** Whose it is, inside a sentence; nothing where it is the sheet's. */
    static String whoseShort(LimitUsed limit) {
        return switch (limit.whose()) {
            case SHEET -> "";
            case SUPPLIER -> " (the supplier's)";
            case TRADE -> " (the trade's number, the sheet is silent)";
        };
    }

    /** How a value was come by: `by bore gauge A`, `worked out`. */
    static String gauge(Value value) {
        if (value.derived()) {
            return "worked out";
        }
        String by = value.gauge().isEmpty() ? "gauge not named" : "by " + value.gauge();
        String usual = value.usual() ? ", usual doubt taken, for the record gives none" : "";
        return by + usual + (value.told().isEmpty() ? "" : ", told by " + value.told());
    }

    /** A value against its limit in one line, with the gauge and whose limit it is. */
    static String against(Verdict verdict) {
        return subject(verdict.of(), verdict.at()) + ": " + Amounts.of(verdict) + ", " + gauge(verdict.value())
                + "; " + Amounts.sides(verdict) + ", " + whose(verdict.limit()) + ".";
    }

    /** A quantity and where: `crankpin diameter at big end 3`. */
    public static String subject(String of, String at) {
        return at.equals(Place.ENGINE) || at.isEmpty() ? of : of + " at " + place("", at);
    }

    /** How a value stands: `below`, `above`, `within`, `undecided`. */
    public static String standing(Verdict verdict) {
        if (verdict.isBelow()) {
            return "below";
        }
        if (verdict.isAbove()) {
            return "above";
        }
        return undecided(verdict.least()) || undecided(verdict.most()) ? "undecided" : "within";
    }

    private static boolean undecided(Optional<Verdict.Side> side) {
        return side.isPresent() && side.get().standing() == Verdict.Standing.UNDECIDED;
    }

    // --- gaps

    /** Why it cannot be told, as a sentence. */
    static String gap(Gap gap) {
        String at = places(gap.places());
        String subject = gap.need() + (at.isEmpty() ? "" : " at " + at);
        String text = switch (gap.why()) {
            case NOT_RECORDED -> subject + " is not recorded";
            case LEFT_OUT -> subject + " is recorded as left out";
            case UNKNOWN -> subject + " is recorded as unknown";
            case FIGURE_NOT_KEPT -> subject + " was found good, and the figure was not kept";
            case ONE_SIDE_ONLY -> subject + " is known from one side only";
            case WHICH_ONE_NOT_TOLD -> subject + " is told of one of several, and not of which";
            case ONLY_TOLD -> subject + " is only told by somebody, not seen or measured";
            case AS_FOUND_ONLY -> subject + " is recorded as found only, not as it goes together";
            case NOT_READABLE -> subject + " stands in the record and could not be read";
            case TOO_COARSE -> subject + " is too near its limit for the doubt of the reading";
            case NO_LIMIT -> "no limit is known for " + subject;
            case SHEET_SILENT -> "the engine sheet does not give " + subject;
            case DUE_LATER -> subject + " is not due yet";
        };
        if (gap.outside().isPresent()) {
            text += "; the chance that it is outside is " + Amounts.share(gap.outside().getAsDouble());
        }
        if (!gap.chief().isEmpty()) {
            text += "; what weighs most is the " + gap.chief();
        }
        if (gap.why() != Gap.Why.TOO_COARSE && !gap.readings().isEmpty()
                && !(gap.readings().size() == 1 && gap.readings().get(0).equals(gap.need()))) {
            text += "; it wants " + join(gap.readings());
        }
        return text;
    }

    /** The same kind of gap of the same need at several places is said once; in the order in which they first stand. */
    static List<String> gaps(List<ReportModel.Because> gaps) {
        Map<String, List<ReportModel.Because>> alike = new LinkedHashMap<>();
        for (ReportModel.Because gap : gaps) {
            String key = gap.why() + "\n" + gap.need() + "\n" + gap.readings()
                    + (gap.outside().isPresent() ? gap.text() : "");
            alike.computeIfAbsent(key, k -> new ArrayList<>()).add(gap);
        }
        List<String> said = new ArrayList<>();
        for (List<ReportModel.Because> same : alike.values()) {
            TreeSet<String> places = new TreeSet<>(Order::natural);
            for (ReportModel.Because gap : same) {
                places.addAll(gap.places());
            }
            ReportModel.Because first = same.get(0);
            said.add(same.size() == 1 ? first.text()
                    : gap(new Gap(why(first.why()), first.need(), List.copyOf(places), first.readings(),
                            first.outside(), "", first.way())));
        }
        return List.copyOf(said);
    }

    private static Gap.Why why(String word) {
        for (Gap.Why why : Gap.Why.values()) {
            if (why.word().equals(word)) {
                return why;
            }
        }
        throw new IllegalArgumentException(word);
    }

    // --- wants

    /** What to do, as an order: `Measure crankpin diameter`. The places stand beside it. */
    String want(Want want, List<String> details) {
        return switch (want.how()) {
            case FINER -> "Measure again with a finer gauge: " + want.word();
            case SHEET -> "Fill in on the engine sheet" + (want.word().startsWith(EACH) ? " what settles "
                    : ": ") + want.word();
            case LOOK -> look(want.word(), details);
            case JOINT -> "Write down of " + (want.word().isEmpty() ? "each joint" : "the joint " + want.word()) + ": "
                    + join(details);
            case RECORD -> record(want.word());
        };
    }

    /** One look: what to look for, and what to write down. */
    private String look(String part, List<String> details) {
        List<String> signs = new ArrayList<>();
        List<String> said = new ArrayList<>();
        for (String detail : details) {
            (words.sign(detail).isPresent() ? signs : said).add(detail);
        }
        if (signs.isEmpty()) {
            return "Write down of " + part + ": " + join(said);
        }
        return "Look at " + part + " for these signs: " + join(signs)
                + (said.isEmpty() ? "" : "; write down its " + join(said));
    }

    private String record(String word) {
        Optional<Quantity> quantity = words.quantity(word);
        if (quantity.isPresent() && !quantity.get().of().equals(JOINT)) {
            return (quantity.get().dimension() == Dimension.COUNT ? "Count: " : "Measure ") + word;
        }
        int blank = word.indexOf(' ');
        if (blank > 0) {
            String rest = word.substring(blank + 1);
            switch (word.substring(0, blank)) {
                case "steps":
                    return "Do this step, or write down that it was done: " + rest;
                case JOINT:
                    return "Write down of the joint: " + rest;
                case "at":
                    return "Write down where it was read: " + word;
                case "gauge":
                    return "Write down under gauges: " + rest;
                case "use", "build", "protection", "machining":
                    return "Write down under " + word.substring(0, blank) + ": " + rest;
                default:
                    break;
            }
        }
        return "Write down " + word;
    }

    /** The gauge that is usual for what is wanted, with its doubt; empty where it is no reading. */
    String gauge(Want want) {
        Optional<String> gauge = want.how() == Want.How.RECORD
                ? words.quantity(want.word()).flatMap(Quantity::gauge) : Optional.empty();
        if (gauge.isEmpty()) {
            return "";
        }
        String doubt = words.gauge(gauge.get()).map(GaugeKind::doubt).orElse("");
        boolean figure = !doubt.isEmpty() && digit(doubt.charAt(0));
        return gauge.get() + (figure ? " (usual doubt ± " + doubt + ")" : "");
    }
}
