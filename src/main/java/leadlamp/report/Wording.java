package leadlamp.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlamp.audit.Gap;
import leadlamp.facts.Ask;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.rank.Want;
import leadlamp.record.Place;
import leadlamp.words.GaugeKind;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** How places, gaps, limits and wants are said. */
final class Wording {
    /** What is numbered by itself; every other bare number is that of a cylinder. */
    private static final Set<String> NUMBERED = Set.of("turbocharger", "throttle", "carburettor", "injector", "coil",
            "friction disc", "gearbox dowel");
    private static final String EACH = "each ";

    private final Vocabulary words;

    Wording(Vocabulary words) {
        this.words = words;
    }

    /** A place as it stands alone: `cylinder 1 intake`, `main 3`, `engine`. */
    static String place(String group, String at) {
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
        List<String> said = new ArrayList<>();
        for (String at : places) {
            said.add(place("", at));
        }
        return together(said);
    }

    /** Several places as they are said: where all differ in their last number alone, the rest is said once. */
    static String together(List<String> places) {
        List<String> said = new ArrayList<>();
        for (String at : places) {
            if (!at.equals(Place.ENGINE) && !at.isEmpty()) {
                said.add(at);
            }
        }
        String head = said.isEmpty() ? "" : head(said.get(0));
        for (String at : said) {
            if (!head(at).equals(head)) {
                return join(said);
            }
        }
        if (!head.isEmpty()) {
            said.replaceAll(at -> at.substring(head.length() + 1));
        }
        return said.isEmpty() || head.isEmpty() ? join(said) : head + " " + join(said);
    }

    private static String head(String place) {
        int blank = place.lastIndexOf(' ');
        return blank > 0 && blank + 1 < place.length() && number(place, blank + 1) ? place.substring(0, blank) : "";
    }

    private static boolean number(String text, int from) {
        for (int i = from; i < text.length(); i++) {
            if (!digit(text.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }

    /** `a`, `a and b`, `a, b and c`. */
    static String join(List<String> words) {
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
            case SHEET -> "from the sheet, " + limit.basis();
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
    static String subject(String of, String at) {
        return at.equals(Place.ENGINE) || at.isEmpty() ? of : of + " at " + place("", at);
    }

    /** How a value stands: `below`, `above`, `within`, `undecided`. */
    static String standing(Verdict verdict) {
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
            text += "; what weighs most is " + gap.chief();
        }
        if (gap.why() != Gap.Why.TOO_COARSE && !gap.readings().isEmpty()
                && !(gap.readings().size() == 1 && gap.readings().get(0).equals(gap.need()))) {
            text += "; it wants " + join(gap.readings());
        }
        return text;
    }

    // --- wants

    /** What to do, as an order: `Measure crankpin diameter`. The places stand beside it. */
    String want(Want want) {
        return switch (want.how()) {
            case FINER -> "Measure again with a finer gauge: " + want.word();
            case SHEET -> "Fill in on the engine sheet: " + want.word();
            case RECORD -> record(want.word());
        };
    }

    private String record(String word) {
        if (words.quantity(word).isPresent()) {
            return "Measure " + word;
        }
        int blank = word.indexOf(' ');
        if (blank > 0) {
            String first = word.substring(0, blank);
            String rest = word.substring(blank + 1);
            switch (first) {
                case "steps":
                    return "Do this step, or write down that it was done: " + rest;
                case "use", "build", "protection", "machining", "gauge":
                    return "Write down under " + (first.equals("gauge") ? "gauges" : first) + ": " + rest;
                case "joint":
                    return "Write down for the joint: " + rest;
                default:
                    break;
            }
        }
        for (int at = word.lastIndexOf(' '); at > 0; at = word.lastIndexOf(' ', at - 1)) {
            String part = word.substring(0, at);
            String rest = word.substring(at + 1);
            if (words.part(part).isPresent()) {
                return words.sign(rest).isPresent() ? "Look at " + part + " for this sign: " + rest
                        : "Write down the " + rest + " of " + part;
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
