package leadlamp.audit;

import java.util.List;
import leadlamp.facts.Ask;
import leadlamp.facts.Condition;
import leadlamp.facts.Fact;
import leadlamp.facts.NotSeen;
import leadlamp.facts.OnSheet;
import leadlamp.facts.Seen;
import leadlamp.facts.Shown;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;

/**
 * What a rule may ask of each fact. Written out by hand, for looking it up by reflection would cost more at every start
 * than the audit itself; a test holds it to the facts.
 */
public final class RulebaseFields {
    private static final List<String> FACTS = List.of("Ask", "Stated", "Seen", "NotSeen", "OnSheet", "Value", "Verdict",
            "Condition", "Shown");
    private static final List<String> WORDS = List.of("of", "at", "what", "says", "sign", "kind", "check", "name", "told",
            "gauge");
    private static final List<String> FLAGS = List.of("below", "above", "outside", "plain", "derived", "usual",
            "within", "left", "still");
    private static final List<String> TIES = List.of("holdsAt", "belongsTo", "near");

    private RulebaseFields() {
    }

    /** Names of the facts. */
    public static List<String> facts() {
        return FACTS;
    }

    /** Fields of a fact that hold a word, which `==`, `in` and a name may be used on. */
    public static List<String> words(String fact) {
        return switch (fact) {
            case "Ask" -> List.of("check", "of", "at");
            case "Stated" -> List.of("of", "kind", "at", "what", "says", "told");
            case "Seen" -> List.of("of", "kind", "at", "sign", "told");
            case "NotSeen" -> List.of("of", "kind", "at", "sign");
            case "OnSheet" -> List.of("of", "kind", "at", "what", "says");
            case "Value" -> List.of("of", "kind", "at", "gauge", "told");
            case "Verdict" -> List.of("of", "kind", "at");
            case "Condition" -> List.of("name", "at");
            case "Shown" -> List.of("sign", "at", "told");
            default -> List.of();
        };
    }

    /** What is so of a fact, or is not. */
    public static List<String> flags(String fact) {
        return switch (fact) {
            case "Value" -> List.of("plain", "derived", "usual");
            case "Verdict" -> List.of("below", "above", "outside", "within");
            case "Seen" -> List.of("left", "still");
            default -> List.of();
        };
    }

    /** How a fact may be tied to a place. */
    public static List<String> ties() {
        return TIES;
    }

    static int fact(String name) {
        return FACTS.indexOf(name);
    }

    static int fact(Fact fact) {
        if (fact instanceof Stated) {
            return 1;
        }
        if (fact instanceof OnSheet) {
            return 4;
        }
        if (fact instanceof Value) {
            return 5;
        }
        if (fact instanceof Verdict) {
            return 6;
        }
        if (fact instanceof Seen) {
            return 2;
        }
        if (fact instanceof NotSeen) {
            return 3;
        }
        if (fact instanceof Ask) {
            return 0;
        }
        return fact instanceof Condition ? 7 : 8;
    }

    static Class<? extends Fact> type(int fact) {
        return switch (fact) {
            case 0 -> Ask.class;
            case 1 -> Stated.class;
            case 2 -> Seen.class;
            case 3 -> NotSeen.class;
            case 4 -> OnSheet.class;
            case 5 -> Value.class;
            case 6 -> Verdict.class;
            case 7 -> Condition.class;
            default -> Shown.class;
        };
    }

    static int word(String field) {
        return WORDS.indexOf(field);
    }

    static String word(int field) {
        return WORDS.get(field);
    }

    static int flag(String flag) {
        return FLAGS.indexOf(flag);
    }

    static String flag(int flag) {
        return FLAGS.get(flag);
    }

    static int tie(String tie) {
        return TIES.indexOf(tie);
    }

    static String tie(int tie) {
        return TIES.get(tie);
    }

    /** The word in this field of the fact. */
    static String read(Fact fact, int field) {
        switch (field) {
            case 1:
                return fact.at();
            case 6:
                return ((Ask) fact).check();
            case 7:
                return ((Condition) fact).name();
            case 9:
                return ((Value) fact).gauge();
            default:
        }
        if (fact instanceof Stated stated) {
            return switch (field) {
                case 0 -> stated.of();
                case 2 -> stated.what();
                case 3 -> stated.says();
                case 5 -> stated.kind();
                default -> stated.told();
            };
        }
        if (fact instanceof OnSheet line) {
            return switch (field) {
                case 0 -> line.of();
                case 2 -> line.what();
                case 3 -> line.says();
                default -> line.kind();
            };
        }
        if (fact instanceof Verdict verdict) {
            return field == 0 ? verdict.of() : verdict.kind();
        }
        if (fact instanceof Seen seen) {
            return switch (field) {
                case 0 -> seen.of();
                case 4 -> seen.sign();
                case 5 -> seen.kind();
                default -> seen.told();
            };
        }
        if (fact instanceof Value value) {
            return switch (field) {
                case 0 -> value.of();
                case 5 -> value.kind();
                default -> value.told();
            };
        }
        if (fact instanceof NotSeen clear) {
            return switch (field) {
                case 0 -> clear.of();
                case 4 -> clear.sign();
                default -> clear.kind();
            };
        }
        if (fact instanceof Shown shown) {
            return field == 4 ? shown.sign() : shown.told();
        }
        return ((Ask) fact).of();
    }

    /** Whether this is so of the fact. */
    static boolean holds(Fact fact, int flag) {
        return switch (flag) {
            case 0 -> ((Verdict) fact).isBelow();
            case 1 -> ((Verdict) fact).isAbove();
            case 2 -> ((Verdict) fact).isOutside();
            case 3 -> ((Value) fact).plain();
            case 4 -> ((Value) fact).derived();
            case 6 -> ((Verdict) fact).isWithin();
            case 7 -> ((Seen) fact).isLeft();
            case 8 -> ((Seen) fact).isStill();
            default -> ((Value) fact).usual();
        };
    }

    /** Whether the fact is tied to the place in this way. */
    static boolean tied(Fact fact, int tie, String place) {
        return switch (tie) {
            case 0 -> fact.holdsAt(place);
            case 1 -> fact.belongsTo(place);
            default -> fact.near(place);
        };
    }
}
